/** Texts of the page, in one place. */
export const applyHint = {
  released: 'Hold the pedal, or drag along it. Keys: space holds 40 bar, arrows set it bar by bar.',
  forward: 'Turn the drum backward and press again: the two shoes swap roles.',
  backward: 'Turn it forward again: leading is a role, not a place.',
  stopped: 'Nothing turns, so nothing rubs: no torque and no factor. Both shoes press alike.',
} as const;

/** Said in place of forces where no balance was found. */
export const lostText =
  'No balance was found: with this fit and friction the drum carries a shoe off its anchor. No force can be told.';

/** What the Wear station shows, by the kind of adjuster. */
export const wearIdea = {
  'toothed lever':
    'When a stroke carries the shoe past the slot play by a whole tooth, the lever drops into the next one',
  incremental:
    'When a stroke carries the shoe past the slot play by a whole tooth, the lever drops in, one tooth a press',
  'screw strut':
    'When a stroke passes the play by a whole tooth, the lever catches and turns the star wheel',
  wedge:
    'When a stroke has used the play behind the hook, the wedge drops as far as there is room: no teeth, no click',
} as const;

/** Why a run ended, where that is not what was asked for. */
export const ends = {
  distance: '',
  click: '',
  'lining limit': 'Ended: a lining is at its limit.',
  'drum limit': 'Ended: the drum is past its largest diameter.',
  'worn through': 'Ended: a lining is worn through to its table.',
  'piston run-out': 'Ended: a piston has left its bore.',
  'no balance': 'Ended: the drum carries a shoe off its anchor; nothing balances.',
  locks: 'Not driven: a shoe would lock by itself.',
} as const;
