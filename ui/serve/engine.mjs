// @ts-check

/** Tells the bundler that a call does nothing but give its value. */
const PURE = '/* @__PURE__ */';

/**
 * The engine moves bodies that never touch one another: shapes, their contacts, and joints other than our own have no
 * part. It is one file; its classes and working values are made by calls as it is loaded, which a bundler must take for
 * doing something. Here it is told that they do nothing else, and what registers contacts and reads files is taken out;
 * so it can leave out what nothing names.
 *
 * @returns {import('vite').Plugin}
 */
export const engineWithoutShapes = () => ({
  name: 'engine-without-shapes',
  transform(code, id) {
    if (!id.endsWith('/planck.mjs')) return null;
    const less = code
      .replaceAll('/** @class */', PURE)
      .replace(/^(var [\w$]+ = )(?=new |vec2\(|transform\()/gm, `$1${PURE} `)
      .replaceAll('new ClipVertex()', `${PURE} new ClipVertex()`)
      .replace(/^(?:Contact\.addType\(|Serializer\.(?:from|to)Json = ).*$/gm, '')
      // Which class reads which kind of file.
      .replace(/= (\(_a = \{\}.*?, _a\));$/ms, `= ${PURE} (() => $1)();`);
    return { code: less, map: null };
  },
});
