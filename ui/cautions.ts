/**
 * Cautions, in view at the hazard and never a dialog. Two sentences at most. Wording of the teaching
 * content; every station takes its own from here.
 */
export const cautions = {
  wear: 'Brake dust is harmful to breathe, whatever the lining. Wet it or collect it with a fine-filter vacuum; never blow or dry-brush.',
  /** The same where there is less room. */
  wearShort:
    'Brake dust is harmful to breathe. Wet it or collect it with a fine-filter vacuum; never blow or dry-brush.',
  drumOff:
    'Chock the wheels and set the vehicle on stands on firm ground before the parking brake is let off. Never strike the rim; if it stays, look for another lock.',
  park: 'A vehicle on a slope rolls when the brake lets go. Chock it before testing or slackening a cable.',
  inspect:
    'A teaching brake’s limits are no other brake’s. Use the maker’s figures and the mark on the drum; some places allow only licensed people to do this work.',
  /** At the foot of a printed sheet, above `standing`. */
  paper:
    'Use the maker’s figures and the mark on the drum; some places allow only licensed people to do this work. Brake dust is harmful: wet it or collect it; never blow or dry-brush.',
  fault: 'Test only a vehicle that is safe to move. If it may not stop, it does not leave.',
  /** Before the pedal with the drum off. */
  piston: 'With the drum off, do not press the pedal: a piston can leave its bore.',
  /** Before a toothed lever is lifted. */
  strut:
    'Unload the strut before lifting the lever; a loaded tooth lets go suddenly. Keep fingers clear and wear eye protection.',
  /** Beside a forecast. */
  forecast: 'A forecast is no approval. Measure at the interval the maker gives, or sooner.',
  /** With a drum off, beside `drumOff`. */
  springs: 'Springs store force; use the proper tool and eye protection.',
  /** New shoes. */
  fitting:
    'Leave one side whole as your pattern and fit both wheels of the axle alike. Test at walking pace on level ground before any road.',
  /** Parking, beside `park`. */
  proof: 'A brake that holds in this model proves nothing about a real one.',
  hot: 'A drum can burn skin and set fluid alight long after the stop. Let it cool; do not quench it.',
  /** Beside `inspect`. */
  doubt: 'In doubt, do not refit; ask a qualified person.',
  hubRust: 'Wear eye protection. No heat near fluid.',
  stands: 'Set the vehicle on stands, never on the jack alone.',
  fluid:
    'Brake fluid harms eyes, skin and paint. Use only the grade the maker names, from a sealed container.',
  /** Standing foot of Inspect, Drum off and all prints. */
  standing:
    'This shows how the mechanism works. It is no repair instruction: the vehicle maker’s figures, local rules and licensed practice come first.',
} as const;
