/** Texts of the page, in one place. */
export const dust =
  'Brake dust is harmful to breathe, whatever the lining. Wet it or collect it with a fine-filter vacuum; never blow or dry-brush.';

export const standing =
  'This shows how the mechanism works. It is no repair instruction: the vehicle maker’s figures, local rules and licensed practice come first.';

export const applyHint = {
  released: 'Hold the pedal, or drag along it. Keys: space holds 40 bar, arrows set it bar by bar.',
  forward: 'Turn the drum backward and press again: the two shoes swap roles.',
  backward: 'Turn it forward again: leading is a role, not a place.',
  stopped: 'Nothing turns, so nothing rubs: no torque and no factor. Both shoes press alike.',
} as const;
