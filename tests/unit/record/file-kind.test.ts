import { expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import { fileKind, otherFile } from '../../../ui/record/file-kind.ts';
import { toText } from '../../../ui/record/json.ts';
import { plainMoment } from '../../../ui/record/start.ts';

const scene = JSON.stringify(quayVan);
const moment = toText(plainMoment());
const png = String.fromCharCode(0xfffd, 0x50, 0x4e, 0x47, 13, 10, 0x1a, 10, 0, 0, 0, 13);

it('tells a moment, a brake, other JSON, other text and pictures apart', () => {
  expect([moment, scene, '{"a":1}', '[]', '7', 'Dear class,', png, ''].map(fileKind)).toEqual([
    'moment',
    'brake',
    'JSON',
    'JSON',
    'JSON',
    'text',
    'no text',
    'text',
  ]);
});

it('says where a file belongs that was opened in the wrong place', () => {
  expect(otherFile(moment, 'moment')).toBeNull();
  expect(otherFile(scene, 'brake')).toBeNull();
  expect(otherFile(scene, 'moment')).toMatch(/My brake reads it|in My brake/);
  expect(otherFile(moment, 'brake')).toMatch(/Open a file, in Bench/);
  expect(otherFile(png, 'moment')).toMatch(/picture/);
  expect(otherFile('{"a":1}', 'moment')).toMatch(/no moment of the bench/);
  // A brake's findings say more than that.
  expect(otherFile('{"a":1}', 'brake')).toBeNull();
});
