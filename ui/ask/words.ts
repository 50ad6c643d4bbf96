/**
 * The one file of words: how people say what the bench has a name for, in the workshops of several
 * countries and by slips that are common. Each row: the bench's term, then what is meant by it; several
 * words are one phrase. Which words are used where is common knowledge of the trade and was gathered
 * from public threads, words only. A word of several meanings stands in a phrase, never alone.
 */
const rows: readonly (readonly [term: string, said: string])[] = [
  // The brake and its parts
  [
    'drum',
    'drum, drums, brake drum, drum brake, rear drum, brake hub, rotor, pot, casing, trommel, tambour, drumm, durm',
  ],
  [
    'bore',
    'bore, inside diameter, inner diameter, inner dia, diameter, diametre, diamiter, dia, inner wall, size of drum',
  ],
  [
    'face',
    'swept face, braking surface, friction surface, running surface, machined surface, contact surface',
  ],
  [
    'lip',
    'lip, ridge, wear ridge, rust ridge, step at the edge, edge of the drum, burr, pocketed, collar, shoulder',
  ],
  [
    'plate',
    'backing plate, backplate, back plate, baking plate, brake plate, anchor plate, dust shield, splash guard',
  ],
  [
    'hole',
    'access hole, inspection hole, adjusting hole, viewing hole, slot in the plate, grommet, bung, rubber plug, plug at the back, hole, window, port in the plate',
  ],
  [
    'hub',
    'hub, boss, spigot, register, mating face, flange, centre of the drum, center of the drum, stub axle, spindle',
  ],
  [
    'fastening',
    'retaining screw, locating screw, countersunk screw, drum screw, hub nut, castle nut, split pin, cotter pin, stake nut, grease cap, big nut',
  ],
  [
    'jackscrew',
    'jacking hole, threaded hole, extractor hole, jack bolt, jacking bolt, jack screw, screw bolts in, threads in the drum, tapped hole, holes with a thread, bolts into the drum, screws into the drum, threads in the face',
  ],
  ['bearing', 'bearing, wheel bearing, hub bearing'],
  [
    'shoe',
    'shoe, shoes, brake shoe, shoe set, axle set, pad, pads, rear pad, drum pad, jaw, jaws, segment, sheos, shoos, brake block',
  ],
  [
    'lining',
    'lining, linings, liner, brake liner, friction material, facing, meat, covering, linning, lineing, pad material, asbestos, material',
  ],
  [
    'table',
    'shoe table, platform, shoe frame, bare metal, down to metal, down to the metal, down to the backing plate, metal on metal, on the rivets, rivet, rivets',
  ],
  [
    'leading',
    'leading, leeding, self energising, self energizing, forward shoe, front facing, primary, primary shoe, first shoe',
  ],
  [
    'trailing',
    'trailing, receding, rear facing, non energised, secondary, secondary shoe, trailling',
  ],
  ['arc', 'arced, arc, arcd, radiused, ground radius, contour, fit of the shoe'],
  ['anchor', 'anchor pin, anchor, pivot post, fulcrum, bottom pin, hinge pin'],
  ['abutment', 'abutment, anchor block, bottom block, floating end, sliding anchor, flats'],
  [
    'spring',
    'spring, springs, return spring, pull off spring, retracting, retractor, top spring, bottom spring, big spring, sping, srping',
  ],
  [
    'holddown',
    'hold down, steady spring, steady pin, pin and cup, spring cap, shoe clip, dished washer, quarter turn, nail',
  ],
  [
    'pads',
    'raised pad, land, lands, ledge, ledges, shoe rest, contact point, six bumps, pads on the plate, pad on the plate, backing plate groove, grooved plate, groove in the plate, groove in the backing plate, catch in a groove',
  ],
  [
    'cylinder',
    'wheel cylinder, wheel cyl, slave, slave cylinder, brake cylinder, cylinder, cylnder, cilinder, cyclinder, w c, caliper piston',
  ],
  ['piston', 'piston, pistons, plunger, bucket'],
  [
    'seal',
    'seal, seals, cup seal, rubbers, lip seal, dust boot, dust cover, gaiter, boot, repair kit',
  ],
  [
    'nipple',
    'bleed nipple, bleed screw, bleeder, bleeder screw, bleeder valve, bleed point, bleed valve, nipple, bleading',
  ],
  [
    'fluid',
    'brake fluid, fluid, brake oil, hydraulic oil, juice, dot 4, dot 3, topping up, low level',
  ],
  [
    'hose',
    'hose, flexi, flexi hose, flexible hose, rubber line, rubber hose, brake hose, hose pipe, flexible pipe',
  ],
  [
    'master',
    'master cylinder, master, m c, main cylinder, main pump, compensating port, return port, pushrod too long, pedal rod, rod adjustment',
  ],
  [
    'adjuster',
    'adjuster, adjusters, self adjuster, auto adjuster, automatic adjuster, self adjusting, self adjust, adjustor, ajuster, adjsuter, adjster, addjuster, adjust, adjustment, adjusting mechanism, gizmo, slack adjuster',
  ],
  [
    'strut',
    'strut, spreader bar, spreader, push rod, pushrod, cross bar, connecting bar, brace, long bar, rod between the shoes',
  ],
  [
    'pawl',
    'toothed lever, pawl, pall, paul, prawl, ratchet lever, quadrant, sector, stepped cam, latch, catch, adjuster lever, adjusting lever, clicker, little lever, spring loaded catch, little arm, small arm, small lever, thin lever, finger of the adjuster',
  ],
  ['tooth', 'tooth, teeth, theeth, serration, cog tooth'],
  [
    'star',
    'star wheel, star, starwheel, star adjuster, adjuster wheel, gear wheel, sprocket, serrated nut, knurled nut, start wheel, stair wheel, cog',
  ],
  [
    'screw',
    'screw strut, threaded rod, adjuster bolt, screw and sleeve, turnbuckle, threaded part, thread',
  ],
  ['wedge', 'wedge, adjusting key, sliding wedge, taper key'],
  ['hotlock', 'hot lock, bimetal, bi metal, thermal clip, heat strip, temperature guard'],
  ['slot', 'lost motion, slot play, end play of the strut, free travel, dead travel'],
  [
    'backoff',
    'back off, back it off, back them off, backed off, slacken off, slack off, slacken, wind in, wind back, wind it back, wound in, wound back, retract, set back, set it back, reset, de adjust, unwind, let it back, back the adjuster off, loosen the adjuster, release the adjuster, right in, ease the shoes',
  ],
  [
    'takeup',
    'take up, takes up, tighten up, wind out, wound out, adjust up, wind up, snug up, expand, crank out, take up the slack, taking up',
  ],
  [
    'preset',
    'shoe gauge, setting gauge, drum gauge, preset, light drag, slight drag, slight scrape, hint of drag, so many clicks back, lock and back off, initial setting, initial adjustment',
  ],
  [
    'centre',
    'centralise, centralize, centring, centering, centre the shoes, center the shoes, square up, sits to one side',
  ],
  ['clearance', 'clearance, gap, running clearance, shoe to drum, air gap, space between'],
  [
    'overadjusted',
    'over adjusted, overadjusted, over adjust, overtightened, over tightened, too tight, too far out, adjusted too far, wound right out, keeps tightening, over adjusting',
  ],
  // Parking
  [
    'handbrake',
    'handbrake, hand brake, parking brake, parking break, park brake, e brake, ebrake, emergency brake, p brake, hb, h b, hanbrake, handbreak, hand break, stop brake, hand braking, parkbrake, pbrake',
  ],
  ['lever', 'hand lever, lever, handle, leaver'],
  [
    'notch',
    'notch, notches, handbrake click, clicks on the handbrake, clicks on the lever, clicks of the lever, clicks of the handbrake, clicks up, clicks before, number of clicks',
  ],
  [
    'roof',
    'pulls up to the roof, up to the roof, in the roof, nearly vertical, vertical, comes right up, comes up high, goes right up, all the way up, pulls up too far, goes too far, comes up too far, too high, travels too far, too many, very high',
  ],
  [
    'parkinglever',
    'parking lever, handbrake arm, lever on the shoe, actuating lever, operating lever, shoe lever, trailing lever, handbrake lever inside the drum, lever inside the drum, parking brake arm, pivot of the lever, lever in the drum',
  ],
  ['stop', 'off its stop, lever stop, peg, nib, not going back all the way'],
  [
    'cable',
    'cable, cables, handbrake cable, brake wire, inner cable, outer cable, sheath, conduit, cabel, cabal, bowden',
  ],
  [
    'slack',
    'slack, loose, floppy, baggy, no tension, lose, loosing, stretched, stretch, streched, hangs down',
  ],
  ['equaliser', 'equaliser, equalizer, compensator, balance bar, yoke, swivel, y piece'],
  ['hold', 'hold, holds, holding, grip, grips, catching'],
  [
    'not_hold',
    'not catching, wont catch, not gripping, not working, doesnt work, dont work, not work, wont work',
  ],
  ['crooked', 'crooked, askew, tilted, at an angle, cocked, not straight'],
  [
    'creep',
    'rolls, rolls away, roll away, roll back, rolls back, creeps, creep, slips, crawls, rolled away, rolling away, rolls forward',
  ],
  [
    'slope',
    'slope, hill, incline, gradient, grade, ramp, driveway, steep, uphill, downhill, nose up, nose down, facing down, facing up',
  ],
  // The pedal
  ['pedal', 'pedal, brake pedal, peddle, petal, padel'],
  [
    'long',
    'long pedal, low pedal, pedal low, goes far, goes far down, goes a long way, long way down, half way, halfway, half way down, nearly to the floor, to the floor, on the floor, way down, bites late, lots of travel, too much travel, excessive travel, dead spot, far down, long travel, deep, goes down a long way, sits low, travel has got longer, excess travel, to the carpet, to the boards, to the mat, hits the floor, hits the carpet',
  ],
  [
    'soft',
    'spongy, spungy, soft, springy, mushy, squishy, squidgy, soggy, bouncy, elastic, spongey',
  ],
  [
    'hard',
    'wooden, hard pedal, rock hard, like a brick, stiff pedal, pedal is hard, pedal hard, pedal feels dead, pedal stiff',
  ],
  [
    'sink',
    'sinks, sinking, drops slowly, creeps down, bleeds down, goes down slowly, slowly goes down, leaks down, sinks to the floor, goes down at the lights, pedal drops',
  ],
  [
    'throb',
    'pulsing, pulsates, pulsate, pulsation, judder, shudder, shutter, kick back, kicks back, surging, throb, throbs, pedal shakes, pedal vibrates, vibration, vibrates, wobbles',
  ],
  [
    'pump',
    'pump, pumped, pumping, pump it, pump up, pumped up, several times, second press, press again, two presses, pump twice',
  ],
  ['press', 'press, push, step on, stamp, tread, stand on, half press'],
  // How it brakes
  [
    'grab',
    'grab, grabs, grabby, bites, snatch, snatches, fierce, sharp, digs in, over keen, sprag, lock up, locks up under braking, skids, grabbing, touchy',
  ],
  [
    'weak',
    'weak, poor, no brakes, low effort, no bite, long stopping, lazy, useless, hopeless, rubbish, no good, doesnt stop, dont stop, bad brakes, low brake force, feeble, pathetic, inefficient, low efficiency',
  ],
  [
    'pull',
    'pulls left, pulls right, pulls to one side, pull to one side, pulls to the left, pulls to the right, pulling to the left, pulling to the right, pulling left, pulling right, pulls to, veers, goes sideways, dives, one side stronger, imbalance, imbalanced, unbalanced, imballance, uneven braking, difference left and right, drags to one side, swerves, yanks, tugs, darts, drifts, dives to one side, jerks to one side',
  ],
  [
    'drag',
    'drag, drags, dragging, binding, binds, bind, rubs, rub, rubbing, catches, scrapes, hangs on, hanging on, stays on, stay on, heavy to push, not free, brakes by itself, brake jam, sticking, sticks on, stick on, not releasing, stiff to turn, stiff to spin, hard to turn, tight to turn, wont let go, wont release, slow to release, slow to let go, late release, lingers, not letting go, brakes sticking, resistance',
  ],
  [
    'wontturn',
    'locked, locked on, locked up, seized on, frozen, jammed, stuck on, solid, wont turn, will not turn, wont move, wont roll, doesnt turn, not turning, cant turn, skids along, stuck fast, wheel locked, wheel stuck, wheel is stuck, brake stuck, brakes stuck, brakes seized, brake seized, brakes locked, brakes frozen, handbrake stuck, handbrake stuck on, handbrake seized, wheel will not move, wheel seized, not rotating',
  ],
  [
    'seized',
    'seized, siezed, seazed, ceased, rusted up, dead, frozen up, stuck, struck, stcuk, stuk, jam tight, seize, rusted solid, idle',
  ],
  [
    'freeup',
    'wear free, wears free, free itself, frees itself, free off, loosen itself, wear off, wear in by itself, work itself free, settle down, sort itself out, drive it off, ease off by itself, burn off, will it ease',
  ],
  [
    'wearrate',
    'how long will they last, how long last, life left, how much left, how many km left, how many miles left, how long have i got, km left, miles left',
  ],
  // Noises
  ['squeal', 'squeal, squeak, screech, chirp, whistle, howl, squeel, squeek, squeaky, shriek'],
  [
    'grind',
    'grind, grinding, grating, graunching, graunch, scratching, rasp, crunch, metal on metal noise, scraping',
  ],
  ['groan', 'groan, moan, creak, honk, hum, growl, drone, foghorn'],
  ['clunk', 'clunk, clonk, knock, thud, bang, pop, snap, ping, knocking'],
  [
    'swish',
    'swish, shh, whoosh, wuh wuh, scuff, one spot, tight spot, same place every time, once per turn, once a turn, once each turn, once every turn, every revolution, once per revolution, every turn, each rotation, once per rotation, once a revolution',
  ],
  [
    'twice',
    'twice a turn, twice per turn, two spots, two places, twice per revolution, twice a revolution',
  ],
  ['noise', 'noise, noisy, sound, voice'],
  ['rattle', 'rattle, rattles, rattling, tinkle, chatter'],
  // Heat, wet, smell
  [
    'hot',
    'hot, boiling, scorching, red hot, too hot, too hot to touch, burns my finger, heats up, heating, overheat, over heat, overheating, heat, glowing, warm, blue, hotter, sizzles, smoke, smoking, steam',
  ],
  [
    'smell',
    'smell, smells, burning, burnt, stinks, stink, pong, burnt hair, hot metal, smelling, smelly',
  ],
  [
    'fade',
    'fade, fades, goes away on hills, nothing left, cooked, after the descent, descent, mountain, mountains, pass, ghats, long hill, long downhill, down a hill',
  ],
  [
    'wet',
    'wet, rain, rainy, water, puddle, deep water, flood, car wash, washing, washed, washed the car, drowned, river',
  ],
  [
    'damp',
    'damp, humid, morning, mornings, overnight, first stop, first stops, dew, frost, cold morning, first thing',
  ],
  [
    'leak',
    'leak, leaks, weeping, seeping, dripping, soaked, greasy, contaminated, gunk, black goo, fluid down the tyre, losing fluid, oily, milky, seep, wet inside',
  ],
  [
    'huboil',
    'gear oil, diff oil, axle oil, half shaft seal, hub seal, wheel seal, axle seal, grease on the lining, grease on the shoe, oil on the shoe, oil on the lining, oil from the hub, diff leak',
  ],
  [
    'rustbond',
    'rusted on, rusted to the drum, stuck to the drum, welded itself, stuck after washing, stuck after rain, freed with a bang, with a bang, with a jerk, stood for months, parked for months, stood for weeks, standing for months, been standing, been sitting, sat for months, parked up, laid up, months of standing, long time parked, stood for six months, stood six months, stood all winter, stood for a year, storage, winter storage, sitting all winter',
  ],
  ['rust', 'rust, rusty, corroded, corrosion, surface rust, rusted'],
  // Wear and measuring
  ['worn', 'worn, wear, thin, finished, gone, worn out, wore down, worn down, wearing'],
  [
    'limit',
    'limit, maximum diameter, max dia, discard, minimum thickness, min thickness, wear limit, service limit, legal, stamped on it, stamped on the drum, cast on the drum, how thin, spec, tolerance, mark on the drum, minimum, min',
  ],
  [
    'glazed',
    'glazed, glaze, shiny, polished, glassy, hardened, roughen, sand them, sanding, sandpaper',
  ],
  [
    'score',
    'score, scored, groove, grooved, scratches, deep marks, like a record, scoring, grooves',
  ],
  [
    'oval',
    'oval, ovality, ovel, oviality, egg shaped, warped, bent, out of round, not round, elliptical, distorted, oval drum, ovalised',
  ],
  [
    'offcentre',
    'off centre, off center, eccentric, excentric, runout, run out of the drum, not true, not concentric, swing of the drum, offcentre, offcenter',
  ],
  ['bell', 'taper, bell mouth, bell mouthed, belled, conical, barrel, tapered drum'],
  ['crack', 'crack, cracked, hairline, heat check, crazed, cracks'],
  [
    'machine',
    'skim, skimmed, skimming, machine the drum, machined, machining, turn the drum, turned down, cut the drum, lathe, resurface, rectify, bore out, regrind, turning the drum, true up',
  ],
  [
    'measure',
    'measure, measured, vernier, micrometer, mic, bore gauge, depth gauge, feeler, dial gauge, clock, dti, dial indicator, calliper, caliper, measuring',
  ],
  [
    'roller',
    'roller, rollers, roller test, brake rollers, rolling road, rbt, brake machine, dyno, plate tester, brake test, effort, print out, tester',
  ],
  [
    'inspection',
    'mot, nct, doe, cvrt, wof, warrant, cof, roadworthy, rwc, pink slip, rego, fitness, state inspection, safety inspection, technical inspection, main inspection, advisory, retest, defect notice, inspector, failed, fail, test failed, tuv',
  ],
  // Work
  [
    'comeoff',
    'come off, come of, comes off, comes of, coming off, get off, get it off, get the drum off, take off, take the drum off, taking off, remove, removal, pull off, pull the drum, pop off, drum off, drum removal, prise, drag it off, off the car, wont come, get the rear drum off, getting the drum off, getting off, to come off, came off, get it free, drum free',
  ],
  [
    'goon',
    'half way on, halfway on, part way on, go on, goes on, only goes, go back on, goes back on, put back on, wont go on, wont fit over, fit over, refit the drum, slide back on, slide on, go over, drum on, put the drum on, drum back on, get the drum on, get it back on, seat the drum, fit the drum, get back on',
  ],
  ['apart', 'take apart, strip down, dismantle, open up, disassemble, strip'],
  [
    'together',
    'put back, put together, reassemble, assembly, assemble, reassembly, put it back together',
  ],
  [
    'fit',
    'fit, fitting, fitted, install, installed, installing, replace, replaced, replacing, change, changed, changing, swap, swapped, renew, renewed, new, brake job, reline, overhaul, overhauled, rebuild, rebuilt, put in',
  ],
  [
    'bleed',
    'bleed, bleeding, bled, purge, flush, get the air out, gravity bleed, two person bleed',
  ],
  ['air', 'air, air in the system, air in the line, air bubble, bubbles'],
  [
    'bed',
    'bed in, bedding in, bedding, break in, breaking in, burnish, run in, running in, wear in, bet in, bedded, settle in',
  ],
  [
    'spin',
    'by hand, spin, spins, rotate, free wheel, freewheel, coast, coasts, spun, how free, turn freely, turns freely, spins freely, how many turns, turn the wheel',
  ],
  ['click', 'click, clicks, clicking, tick, snick, ratchet, ratchets, ratcheting, clix, ticks'],
  ['reverse', 'reverse, reversing, backing up, backwards, backward, in reverse, going back'],
  ['forward', 'forward, forwards, going forward'],
  [
    'oneside',
    'one side, one wheel, one corner, left side, right side, one drum, one rear, nearside, offside, only one, lefthand, driver side, passenger side, single wheel, one of the rear, left rear, right rear, rear left, rear right, left wheel, right wheel, back left, back right, left back, right back',
  ],
  [
    'allwheels',
    'all four, all wheels, all four wheels, every wheel, all brakes, front and rear, front too, all the brakes',
  ],
  ['bothwheels', 'both sides, both rear, both wheels, both drums, both back'],
  [
    'wrongside',
    'left and right, wrong side, other side parts, mixed up, swapped left and right, left right swapped, sides mixed',
  ],
  [
    'upsidedown',
    'upside down, wrong way round, wrong way up, backwards on, on backwards, back to front, wrong way',
  ],
  ['towing', 'tow, towing, trailer, caravan, horse float'],
  ['laden', 'loaded, laden, fully loaded, heavy load, under load, full load'],
  [
    'direction',
    'which way, direction, clockwise, anticlockwise, counterclockwise, up or down, which direction',
  ],
  ['howmuch', 'how much, how many, how far, how big, what size, how wide'],
  [
    'tool',
    'tool, tools, brake spoon, spoon, adjuster spanner, screwdriver, puller, slide hammer, hammer, mallet, pliers, spring pliers',
  ],
  ['heatit', 'blowtorch, torch, flame, heat gun, heat the drum'],
  ['dust', 'dust, brake dust, blow out, compressed air, air line, vacuum, brake cleaner'],
  [
    'stand',
    'axle stand, axle stands, jack stand, jack stands, jack, safety stand, chock, chocks, jacked up, jack it up, on stands, on the jack',
  ],
  [
    'safe',
    'safe to drive, safe, can i drive, ok to drive, drive it, drive on it, drive home, keep driving, dangerous, still drive, leave it, limp home, risky',
  ],
  [
    'servo',
    'duo servo, dual servo, servo brake, servo kind, self servo, big anchor at the top, adjusts in reverse, short and long lining, adjust in reverse, adjusts when reversing',
  ],
  ['booster', 'brake booster, booster, vacuum servo, vacuum booster, brake servo'],
  [
    'indisc',
    'drum in disc, drum in hat, drum in rotor, drum inside disc, drum inside the disc, handbrake shoes inside the disc, shoes inside the disc, inside the rotor, disc brake handbrake shoes, top hat, drum in disk, inside disc, inside the disk',
  ],
  [
    'disc',
    'disc, discs, disk, disk brake, front disc, front brake, front brakes, front pads, calipers',
  ],
  [
    'twinleading',
    'twin leading, two leading, twin leading shoe, 2ls, cam brake, s cam, air brake, electric magnet, electric trailer brake, band brake, motorcycle, motorbike, scooter, bicycle, washing machine',
  ],
  [
    'kind',
    'which kind, what kind, which type, what type, type of brake, kind of brake, identify, simplex, non servo',
  ],
  ['electric', 'electric parking brake, electronic parking brake, epb, electric handbrake'],
  [
    'lamp',
    'warning light, warning lamp, abs light, abs, brake light, dashboard light, light on the dash, esp',
  ],
  [
    'price',
    'price, cost, how much does it cost, cheap, brand, part number, where to buy, which shoes to buy, buy',
  ],
  [
    'torque',
    'torque setting, tightening torque, nut torque, how tight is the nut, torque wrench, nm for the nut',
  ],
  ['grease', 'grease, lubricate, lube, copper grease, copper slip, anti seize, ceramic grease'],
  [
    'explain',
    'how does, explain, what is, what are, whats, meaning, works, how it works, principle, show me, why does, why do',
  ],
  ['teach', 'lesson, class, students, pupils, teach, teaching, worksheet, exam, homework, course'],
];

/** Words that say nothing by themselves. Particles such as on, off, up, not and no are none of them. */
const EMPTY =
  'a an the my me i im ive we our it its is are am was were be been being of to and or so but that this these those there then than with for from by as at in into do does did doing have has had having just really very quite bit some any please help thanks hi hello guys anyone mate dear sir hey need want would could should can will may might like got get gets getting when where what which who how why if about also even still only now today after before while again ever since he she they them his her their you your us because cause seem seems feel feels felt car van truck vehicle ute bakkie rear back brake brakes break braking wheel wheels tyre tire side thing stuff something use used using make makes made go goes going know tell think one two much many lot all well ok old year years ago time day week month months weeks days hours minutes hour mile miles km bought out past let whether allow allowed permitted';

/** Told by their neighbours alone, where nothing else is left of a question. */
const RARE = new Set(EMPTY.split(' '));

/** Words that turn what follows them. */
export const NOT =
  'not no wont dont doesnt didnt cant couldnt isnt arent wasnt never without stopped refuses refuse fails nothing neither nor hardly barely wnt dosent doesn t';

/** Ordinary words of the language that are no slip of a word of the trade, though one letter parts them. */
export const PLAIN: ReadonlySet<string> = new Set(
  'above across after again against almost along already also although always another anything around autumn away bad battery because before begin begins below belt best better between bits black board boat bolt boot boots both brother brown burst came care careful carpet cheap check chuck city clean cleaned clear clutch come cost costs country dear done door doors drove during each early easier east easy eight end ended ends engine every everything exhaust fast faster father feet fell final finally find fine finger fingers first five floor foot form found four free friend from full garage gave gear gears give given glass gone good great green grey guess half hand hands harder hardest hear heard hears heavier heavy high higher highest hitting home hour hours house hundred inside iron keep kept large larger last late later least left less light lights listen little long longer longest look looked looking looks loud louder lower lowest matter maybe metal mind minds mine minute mirror money month months more most mother motor near nearly neighbour never next night nights nine normal north nothing odd often older oldest other others outside over paint pair pairs paper part parts people perhaps person piece pieces place places plain plastic plate point points price quick quickly quiet quite read reads ready real really right rights road roads rubber said same sand saying says scared seat seats second seconds seeing seen sees sell sense seven shoot shop shops short shorter shoulder shout show shown shows sides since sits sitting sizes slow slowly small smaller sold some something sometimes soon sooner sound sounds south spring stand start started starts stay stays steel steering still stone stood stop store stores straight strange street summer sure take taken talk talked talks tell tells think thinks though thought thousand threw through till today told tonight took torn town uncle under until usual usually wait waits walk walks wall walls weather week weeks weird west while whilst white whole window windows winter within without wood word words work worked working works worse worst wrong year years young younger'.split(
    ' ',
  ),
);

/** No slip of one is the other. */
export const NEVER_MIXED: readonly (readonly [string, string])[] = [
  ['cable', 'table'],
  ['hose', 'hole'],
  ['heel', 'wheel'],
  ['show', 'shoe'],
  ['drag', 'drum'],
  ['pull', 'pawl'],
  ['bell', 'ball'],
  ['web', 'wet'],
  ['bore', 'bold'],
  ['toe', 'tow'],
];

export const synonyms: readonly { readonly term: string; readonly said: readonly string[] }[] =
  rows.map(([term, said]) => ({ term, said: said.split(',').map((s) => s.trim()) }));

export const isEmpty = (word: string): boolean => RARE.has(word);
