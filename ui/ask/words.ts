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
    'swept face, braking surface, friction surface, running surface, machined surface, contact surface, drum surface, surface of the drum, hard spots, hard spot',
  ],
  [
    'lip',
    'lip, ridge, wear ridge, rust ridge, step at the edge, edge of the drum, burr, pocketed, collar, shoulder, shelf in the drum, edge of drum, worn edge, rim of the drum, step in the drum',
  ],
  [
    'plate',
    'backing plate, backplate, back plate, baking plate, brake plate, anchor plate, dust shield, splash guard, back of the brake, tin plate, mounting plate, metal plate at the back',
  ],
  [
    'hole',
    'access hole, inspection hole, adjusting hole, viewing hole, slot in the plate, grommet, bung, rubber plug, plug at the back, hole, window, port in the plate, back hole, plug hole, slot in the back, slot, peephole, opening in the back, little hole, oval hole, hole in the back',
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
    'jacking hole, threaded hole, extractor hole, jack bolt, jacking bolt, jack screw, screw bolts in, threads in the drum, tapped hole, holes with a thread, bolts into the drum, screws into the drum, threads in the face, two threaded holes, threaded holes, two holes in the drum, screw holes, m8, bolt holes in the drum',
  ],
  [
    'bearing',
    'bearing, wheel bearing, hub bearing, wheel bearings, bearing play, hub play, wobbly wheel, wheel play, play in the hub, rocks top and bottom, rock the wheel',
  ],
  [
    'shoe',
    'shoe, shoes, brake shoe, shoe set, axle set, pad, pads, rear pad, drum pad, jaw, jaws, segment, sheos, shoos, brake block',
  ],
  [
    'lining',
    'lining, linings, liner, brake liner, friction material, facing, meat, covering, linning, lineing, pad material, asbestos, material, friction lining, linings left, brake linings, lining thickness, stuff on the shoe, friction stuff',
  ],
  [
    'table',
    'shoe table, platform, shoe frame, bare metal, down to metal, down to the metal, down to the backing plate, metal on metal, on the rivets, rivet, rivets, metal backing, steel backing, metal showing, rivets showing, rivet heads',
  ],
  [
    'leading',
    'leading, leeding, self energising, self energizing, forward shoe, front facing, primary, primary shoe, first shoe, front shoe, shoe at the front, shoe in front, forward facing',
  ],
  [
    'trailing',
    'trailing, receding, rear facing, non energised, secondary, secondary shoe, trailling, rear shoe, back shoe, shoe at the back, rearward shoe',
  ],
  ['arc', 'arced, arc, arcd, radiused, ground radius, contour, fit of the shoe'],
  ['anchor', 'anchor pin, anchor, pivot post, fulcrum, bottom pin, hinge pin'],
  ['abutment', 'abutment, anchor block, bottom block, floating end, sliding anchor, flats'],
  [
    'spring',
    'spring, springs, return spring, pull off spring, retracting spring, retractor spring, top spring, bottom spring, big spring, sping, srping, coil spring, pull back spring, return coil',
  ],
  [
    'holddown',
    'hold down, steady spring, steady pin, pin and cup, spring cap, shoe clip, dished washer, quarter turn, nail, hold downs, holddown, hold down pin, hold down clip, cup washer, nail thing, retainer clip, pin with a spring, clips on the hold down, hold down spring, hold down springs, shoe retainer',
  ],
  [
    'pads',
    'raised pad, land, lands, ledge, ledges, shoe rest, contact point, six bumps, pads on the plate, pad on the plate, backing plate groove, grooved plate, groove in the plate, groove in the backing plate, catch in a groove, shoe rests, places where the shoe slides, rubbing points, slide points, pads of the plate, where the shoe slides',
  ],
  [
    'cylinder',
    'wheel cylinder, wheel cyl, slave, slave cylinder, brake cylinder, cylinder, cylnder, cilinder, cyclinder, w c, caliper piston',
  ],
  ['piston', 'piston, pistons, plunger, bucket'],
  [
    'seal',
    'seal, seals, cup seal, rubbers, lip seal, dust boot, dust cover, gaiter, boot, repair kit, rubber, rubber boots, rubber cap, dust cap, rubber boot, cups',
  ],
  [
    'nipple',
    'bleed nipple, bleed screw, bleeder, bleeder screw, bleeder valve, bleed point, bleed valve, nipple, bleading, bleed bolt, bleedscrew, cracked the bleed, bleed plug',
  ],
  [
    'fluid',
    'brake fluid, fluid, brake oil, hydraulic oil, juice, dot 4, dot 3, topping up, low level, hydraulic fluid, dot4, dot3, dot5',
  ],
  [
    'hose',
    'hose, flexi, flexi hose, flexible hose, rubber line, rubber hose, brake hose, hose pipe, flexible pipe, rubber pipe, flex hose, flex line, brake flexi, flexible brake hose, bendy pipe',
  ],
  [
    'master',
    'master cylinder, master, m c, main cylinder, main pump, compensating port, return port, pushrod too long, pedal rod, rod adjustment, main cyl, new master, mc, pedal pushrod',
  ],
  [
    'adjuster',
    'adjuster, adjusters, self adjuster, auto adjuster, automatic adjuster, self adjusting, self adjust, adjustor, ajuster, adjsuter, adjster, addjuster, adjust, adjustment, adjusting mechanism, gizmo, slack adjuster, tightener, adj, auto adjusters, adjusting, adjusts, adjusted',
  ],
  [
    'strut',
    'strut, spreader bar, spreader, push rod, pushrod, cross bar, connecting bar, brace, long bar, rod between the shoes, bar between the shoes, cross strut, rod across, adjuster rod, adjuster bar, long rod, link rod',
  ],
  [
    'pawl',
    'toothed lever, pawl, pall, paul, prawl, ratchet lever, quadrant, sector, stepped cam, latch, catch, adjuster lever, adjusting lever, clicker, little lever, spring loaded catch, little arm, small arm, small lever, thin lever, finger of the adjuster, little catch, wee lever, catch thing, small catch, locking lever, tooth lever, lever that locks, clip behind the adjuster, little plate, clip, sort of plate, retaining lever',
  ],
  ['tooth', 'tooth, teeth, theeth, serration, cog tooth'],
  [
    'star',
    'star wheel, star, starwheel, star adjuster, adjuster wheel, gear wheel, sprocket, serrated nut, knurled nut, start wheel, stair wheel, cog, little wheel, toothed wheel, wheel with teeth, star cog, adjuster cog, cogwheel',
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
    'back off, back it off, back them off, backed off, slacken off, slack off, slacken, wind in, wind back, wind it back, wound in, wound back, retract, set back, set it back, reset, de adjust, unwind, let it back, back the adjuster off, loosen the adjuster, release the adjuster, right in, ease the shoes, loosen, loosen off, let off, undo the adjuster, unscrew, ease off, screw in, screw back, wind down, collapse, release the shoes, bring the shoes in, back it out, make it smaller, run it back, slackened off, slackened, loosening, wind it in, fully in, adjuster in, all the way in',
  ],
  [
    'takeup',
    'take up, takes up, tighten up, wind out, wound out, adjust up, wind up, snug up, expand, crank out, take up the slack, taking up, tighten, tighten it, tighten them, tightening, tightening up, tightened, tightens, turn it out, snug it up, adjust out',
  ],
  [
    'preset',
    'shoe gauge, setting gauge, drum gauge, preset, light drag, slight drag, slight scrape, hint of drag, so many clicks back, lock and back off, initial setting, initial adjustment',
  ],
  [
    'centre',
    'centralise, centralize, centring, centering, centre the shoes, center the shoes, square up, sits to one side',
  ],
  [
    'clearance',
    'clearance, gap, running clearance, shoe to drum, air gap, space between, gap size, spacing, air between, how close',
  ],
  [
    'overadjusted',
    'over adjusted, overadjusted, over adjust, overtightened, over tightened, too tight, too far out, adjusted too far, wound right out, keeps tightening, over adjusting, keeps tightening itself, tightens itself, tighten by itself, tighten by themselves, tightening by itself, tightening themselves, tightening up by themselves, tightening up by itself, self tightening, gets tighter, adjusts too much, tighter every, keep tightening, keep on tightening, over tight, tightened too much, too far adjusted',
  ],
  // Parking
  [
    'handbrake',
    'handbrake, hand brake, parking brake, parking break, park brake, e brake, ebrake, emergency brake, p brake, hb, h b, hanbrake, handbreak, hand break, stop brake, hand braking, parkbrake, pbrake, e break, p break, park break, foot parking brake, foot operated brake, parking pedal, hbrake, handbreaks, handbrakes, hand brakes, brake lever, brake handle',
  ],
  ['lever', 'hand lever, lever, handle, leaver'],
  [
    'notch',
    'notch, notches, handbrake click, clicks on the handbrake, clicks on the lever, clicks of the lever, clicks of the handbrake, clicks up, clicks before, number of clicks',
  ],
  [
    'roof',
    'pulls up to the roof, up to the roof, in the roof, nearly vertical, vertical, comes right up, comes up high, goes right up, all the way up, pulls up too far, goes too far, comes up too far, too high, travels too far, too many, very high, comes up, goes up, up too far, way up, miles up, sky high, too far up, up a lot, a long way, pulls up high, high up, far up, to the sky, up high, too much travel on the lever, higher, lot of clicks, loads of clicks, pulled right up, pull it right up',
  ],
  [
    'parkinglever',
    'parking lever, handbrake arm, lever on the shoe, actuating lever, operating lever, shoe lever, trailing lever, handbrake lever inside the drum, lever inside the drum, parking brake arm, pivot of the lever, lever in the drum, arm in the drum, handbrake lever on the shoe, arm on the shoe, hand brake arm, arm inside the drum, lever arm, lever arm in the drum, swinging arm',
  ],
  ['stop', 'off its stop, lever stop, peg, nib, not going back all the way'],
  [
    'cable',
    'cable, cables, handbrake cable, brake wire, inner cable, outer cable, sheath, conduit, cabel, cabal, bowden, wire rope, wires, bowden cable, linkage, cord',
  ],
  [
    'slack',
    'slack, loose, floppy, baggy, no tension, lose, loosing, stretched, stretch, streched, hangs down',
  ],
  [
    'equaliser',
    'equaliser, equalizer, compensator, balance bar, yoke, swivel, y piece, balance beam, splitter, cross bar under the car, t bar, divider bar',
  ],
  ['hold', 'hold, holds, holding, grip, grips, catching'],
  [
    'not_hold',
    'not catching, wont catch, not gripping, not working, doesnt work, dont work, not work, wont work, lets go, let go on, no handbrake, no parking brake, doesnt keep, wont keep, doesnt hold the car, not keep',
  ],
  ['crooked', 'crooked, askew, tilted, at an angle, cocked, not straight'],
  [
    'creep',
    'rolls, rolls away, roll away, roll back, rolls back, creeps, creep, slips, crawls, rolled away, rolling away, rolls forward, moves, rolling, rolls off, roll, runs away, starts to roll, moving, creeping, moves off, goes backwards by itself, rolling back, run back, runs back',
  ],
  [
    'slope',
    'slope, hill, incline, gradient, grade, ramp, driveway, steep, uphill, downhill, nose up, nose down, facing down, facing up, hills, bank, brae, sloping, slopes, inclined, hilly, car park ramp, slanted, flyover, ghat road',
  ],
  // The pedal
  ['pedal', 'pedal, brake pedal, peddle, petal, padel'],
  [
    'long',
    'long pedal, low pedal, pedal low, goes far, goes far down, goes a long way, long way down, half way, halfway, half way down, nearly to the floor, to the floor, on the floor, way down, bites late, lots of travel, too much travel, excessive travel, dead spot, far down, long travel, deep, goes down a long way, sits low, travel has got longer, excess travel, to the carpet, to the boards, to the mat, hits the floor, hits the carpet, all the way down, lots of pedal, bites low, grips late, before it grips, before it bites, before anything happens, before it does anything, before brakes work, bites near the floor, goes flat, nearly flat, too far down, to the bottom, a lot of travel, pedal far, pedal falls, low brake, near the floor, near floor, long throw, nothing at the top, nearly on the floor, to carpet, to floor, to the metal',
  ],
  [
    'soft',
    'spongy, spungy, soft, springy, mushy, squishy, squidgy, soggy, bouncy, elastic, spongey, squashy, sponge, like a sponge, like sponge, marshmallow, jelly, rubbery, like stepping on a balloon',
  ],
  [
    'hard',
    'wooden, hard pedal, rock hard, like a brick, stiff pedal, pedal is hard, pedal hard, pedal feels dead, pedal stiff, hard as rock, hard as a rock, like concrete, heavy pedal, brick, stiff brake, press very hard, push very hard, push hard, press hard, have to push, stamp hard, lots of force, lot of force, lot of effort, both feet, like wood, solid pedal',
  ],
  [
    'sink',
    'sinks, sinking, drops slowly, creeps down, bleeds down, goes down slowly, slowly goes down, leaks down, sinks to the floor, goes down at the lights, pedal drops, slowly falls, drops away, keeps going down, wont stay up, creeps to the floor, slowly to the floor, goes down on its own, slowly goes to the floor, slowly sinks',
  ],
  [
    'throb',
    'pulsing, pulsates, pulsate, pulsation, judder, shudder, shutter, kick back, kicks back, surging, throb, throbs, pedal shakes, pedal vibrates, vibration, vibrates, wobbles, pulses, wub, bounces, pedal up and down, shakes, shaking, vibrating, vibrate, shimmy, lumpy, hopping, kick, kicks, pushes my foot back, pushed back, thumps, thumping, jumping',
  ],
  [
    'pump',
    'pump, pumped, pumping, pump it, pump up, pumped up, several times, second press, press again, two presses, pump twice, press twice, second time, two pumps, second push, second pump, second go, second stab, stamp twice, few pumps, couple of pumps, pump a few times, pumps up, third press',
  ],
  ['press', 'press, push, step on, stamp, tread, stand on, half press'],
  // How it brakes
  [
    'grab',
    'grab, grabs, grabby, bites, snatch, snatches, fierce, sharp, digs in, over keen, sprag, lock up, locks up under braking, skids, grabbing, touchy, bite, too sharp, snappy, violent, locks too early, locks up easily, locks up too easily, over sensitive, oversensitive, throws me forward, threw me, savage, aggressive, jerks, lock the wheels, wheels lock up, locks the wheel, skid, slides in the wet, grabbing hard, over braking',
  ],
  [
    'weak',
    'weak, poor, no brakes, low effort, no bite, long stopping, lazy, useless, hopeless, rubbish, no good, doesnt stop, dont stop, bad brakes, low brake force, feeble, pathetic, inefficient, low efficiency, not stopping, wont stop, will not stop, barely stops, hardly slows, hardly stops, takes ages to stop, long to stop, stopping distance, not strong, little effort, low reading, stopping power, ineffective, crap, dodgy, no power, doing nothing, does nothing, less braking, weaker, brakes worse, not braking, no braking, brake less, brakes less, nothing happens, sucks, terrible, awful, longer to stop, takes longer to stop, takes long to stop, does not slow, hardly slow',
  ],
  [
    'pull',
    'pulls left, pulls right, pulls to one side, pull to one side, pulls to the left, pulls to the right, pulling to the left, pulling to the right, pulling left, pulling right, pulls to, veers, goes sideways, dives, one side stronger, imbalance, imbalanced, unbalanced, imballance, uneven braking, difference left and right, drags to one side, swerves, yanks, tugs, darts, drifts, dives to one side, jerks to one side, car pulls, car goes to, goes to the left, goes to the right, goes left, goes right, wants to go left, pull left, pull right, pulls over, tugs to, to one side, steers itself, more to one side',
  ],
  [
    'drag',
    'drag, drags, dragging, binding, binds, bind, rubs, rub, rubbing, catches, scrapes, hangs on, hanging on, stays on, stay on, heavy to push, not free, brakes by itself, brake jam, sticking, sticks on, stick on, not releasing, stiff to turn, stiff to spin, hard to turn, tight to turn, wont let go, wont release, slow to release, slow to let go, late release, lingers, not letting go, brakes sticking, resistance, held back, holding back, holding it back, holds back, holds me back, wont coast, doesnt coast, not rolling freely, doesnt roll freely, not rolling on, half on, partly on, slows by itself, slows down by itself, stops by itself, stays tight, rubs on, brake on by itself, brakes coming on, pulling up on its own, not fully releasing, doesnt release, does not release, not released, wont free, touching all the time',
  ],
  [
    'wontturn',
    'locked, locked on, locked up, seized on, frozen, jammed, stuck on, solid, wont turn, will not turn, wont move, wont roll, doesnt turn, not turning, cant turn, skids along, stuck fast, wheel locked, wheel stuck, wheel is stuck, brake stuck, brakes stuck, brakes seized, brake seized, brakes locked, brakes frozen, handbrake stuck, handbrake stuck on, handbrake seized, wheel will not move, wheel seized, not rotating, jam, jams, jamming, get jam, locks solid, jammed up, wheel wont move, wheels dont turn, wheel will not turn, wheel wont budge, stuck wheel, solid wheel, tyre skids along, wheel drags along, skidding along, locked tight, locked solid, turn the wheel by hand cant, cant turn the wheel, cant turn the wheels by hand, turn by hand cant, freezes up, wheel and it wont budge, turn the wheel and it wont budge',
  ],
  [
    'seized',
    'seized, siezed, seazed, ceased, rusted up, dead, frozen up, stuck, struck, stcuk, stuk, jam tight, seize, rusted solid, idle, froze, rusted shut, rusted tight, gummed up, clagged up, seized up, locked with rust, will not budge by hand',
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
  [
    'squeal',
    'squeal, squeak, screech, chirp, whistle, howl, squeel, squeek, squeaky, shriek, screaming, scream, screams, squeaking, squealing, chirps, whine, whining, sing, singing',
  ],
  [
    'grind',
    'grind, grinding, grating, graunching, graunch, scratching, rasp, crunch, metal on metal noise, scraping, gritty, metallic, metal sound, scrape, scraping sound, scrapy, grinds, scrapes metal, rough sound, growling metal',
  ],
  [
    'groan',
    'groan, moan, creak, honk, hum, growl, drone, foghorn, moans, bellow, moo, cow, buzz, buzzing, trumpet, humming, whirr, whirring, rumble, rumbling, roar',
  ],
  [
    'clunk',
    'clunk, clonk, knock, thud, bang, pop, snap, ping, knocking, click clack, donk, tonk, thunk, clank, clanging, bonk, knocks, bangs, smack, crack noise, jolt',
  ],
  [
    'swish',
    'swish, shh, whoosh, wuh wuh, scuff, one spot, tight spot, same place every time, once per turn, once a turn, once each turn, once every turn, every revolution, once per revolution, every turn, each rotation, once per rotation, once a revolution, each turn, every rotation, per turn, once round, once a rev, per rev, same spot, one place, certain spot, certain point, one point, single spot, one part of the turn, part of the turn, some points, rhythmic, sh sh, each revolution, wheel turn, every wheel turn, specific point, specific spot, particular spot',
  ],
  [
    'twice',
    'twice a turn, twice per turn, two spots, two places, twice per revolution, twice a revolution',
  ],
  ['noise', 'noise, noisy, sound, voice, racket, noises, sounds, sounding, hear, hearing'],
  [
    'rattle',
    'rattle, rattles, rattling, tinkle, chatter, jingle, jingling, clatter, loose bit, loose bits, flap, flaps, flapping',
  ],
  // Heat, wet, smell
  [
    'hot',
    'hot, boiling, scorching, red hot, too hot, too hot to touch, burns my finger, heats up, heating, overheat, over heat, overheating, heat, glowing, warm, blue, hotter, sizzles, smoke, smoking, steam, roasting, roasted, baking, scalding, burning hot, blistering, cooking, cooks, fry an egg, fry eggs, steaming, smoulder, smouldering, toasty, burns my hand, burnt my fingers, burnt my hand, burns your hand, burned my hand, burned my fingers, cant touch it, cant keep my hand on, cherry red, temperature, overheats, on fire, flames, smokes, smoky, roasty, hot to the touch',
  ],
  [
    'smell',
    'smell, smells, burning, burnt, stinks, stink, pong, burnt hair, hot metal, smelling, smelly, whiff, reek, reeks, niffs, scorched, acrid, scent, odour, odor',
  ],
  [
    'fade',
    'fade, fades, goes away on hills, nothing left, cooked, after the descent, descent, mountain, mountains, pass, ghats, long hill, long downhill, down a hill, long descent, down the mountain, mountain road, coming down, coming down the hill, downhill run, descending, alpine, mountain pass, heat fade',
  ],
  [
    'wet',
    'wet, rain, rainy, water, puddle, deep water, flood, car wash, washing, washed, washed the car, drowned, river, drizzle, monsoon, storm, raining, rains, jet wash, pressure wash, hosed down, ford, flooded, wading, creek, launch ramp, puddles, soaking, snow, salt, road salt, slush',
  ],
  [
    'damp',
    'damp, humid, morning, mornings, overnight, first stop, first stops, dew, frost, cold morning, first thing, frosty, foggy, dewy, first brake, first time in the morning, cold start, winter morning, after a night, each morning, every morning, night, condensation',
  ],
  [
    'leak',
    'leak, leaks, weeping, seeping, dripping, soaked, greasy, contaminated, gunk, black goo, fluid down the tyre, losing fluid, oily, milky, seep, wet inside, leaking, weepy, sweating, oozing, ooze, drip, running down, runs down, dribble, dribbling, losing, level drops, level goes down, level going down, drips, seepage, leaked',
  ],
  [
    'huboil',
    'gear oil, diff oil, axle oil, half shaft seal, hub seal, wheel seal, axle seal, grease on the lining, grease on the shoe, oil on the shoe, oil on the lining, oil from the hub, diff leak, axle grease, grease from the axle, grease from the hub, bearing grease, hub grease, differential oil, axle leak, grease got on, rear axle oil, oil from the axle, grease on linings, grease on shoes, grease on brake shoes',
  ],
  [
    'rustbond',
    'rusted on, rusted to the drum, stuck to the drum, welded itself, stuck after washing, stuck after rain, freed with a bang, with a bang, with a jerk, stood for months, parked for months, stood for weeks, standing for months, been standing, been sitting, sat for months, parked up, laid up, months of standing, long time parked, stood for six months, stood six months, stood all winter, stood for a year, storage, winter storage, sitting all winter, parked for ages, hasnt moved, not been moved, not moved for, left standing, parked for weeks, parked a month, stood outside, sat in the yard, sat for years, sat for a year, off the road, in the barn, long standing, after standing, sat ten years, sitting for, sat there, unused, not driven, not used for, laid over, parked at the beach, parked by the sea, near the sea, fortnight, long parking, stood for, stood over, frozen to the drum, shoes frozen, shoe frozen, were frozen to, iced up, ice, sat a long time, sitting a long time, sat for a long time, stood a long time',
  ],
  ['rust', 'rust, rusty, corroded, corrosion, surface rust, rusted'],
  // Wear and measuring
  [
    'worn',
    'worn, wear, thin, finished, gone, worn out, wore down, worn down, wearing, thinner, knackered, clapped out, worn away, paper thin, wearing out, worn through, wearing down, wears, low shoes, buggered, had it, toast, no material, no lining left, no friction left, nothing left on the shoe, bald, gone to nothing, down to nothing',
  ],
  [
    'limit',
    'limit, maximum diameter, max dia, discard, minimum thickness, min thickness, wear limit, service limit, legal, stamped on it, stamped on the drum, cast on the drum, how thin, spec, tolerance, mark on the drum, minimum, min, how little, least, smallest, lowest, biggest, largest, maximum, max, permissible, too thin, too worn, too far gone, good enough, still ok, still good, usable, reusable, reuse, within spec, out of spec, must be replaced, when to replace, when to change, when must i, how low, needs replacing, how bad',
  ],
  [
    'glazed',
    'glazed, glaze, shiny, polished, glassy, hardened, roughen, sand them, sanding, sandpaper',
  ],
  [
    'score',
    'score, scored, groove, grooved, scratches, deep marks, like a record, scoring, grooves, deep groove, catch my nail, hang my nail, nail catches, fingernail, gouge, gouged, grooves in drum, lines in the drum, deep line, rings in the drum',
  ],
  [
    'oval',
    'oval, ovality, ovel, oviality, egg shaped, warped, bent drum, out of round, not round, elliptical, distorted, oval drum, ovalised, egg, lopsided, squashed, buckled',
  ],
  [
    'offcentre',
    'off centre, off center, eccentric, excentric, runout, run out of the drum, not true, not concentric, swing of the drum, offcentre, offcenter, wobble, wobbling, not centred, not centered, off center drum, runs out, not running true, out of true',
  ],
  ['bell', 'taper, bell mouth, bell mouthed, belled, conical, barrel, tapered drum'],
  [
    'crack',
    'crack, cracked, hairline, heat check, crazed, cracks, ringing, rings, dull sound, doesnt ring, not ring, sounds dead, no ring, split, fracture, broken drum',
  ],
  [
    'machine',
    'skim, skimmed, skimming, machine the drum, machined, machining, turn the drum, turned down, cut the drum, lathe, resurface, rectify, bore out, regrind, turning the drum, true up, lathed, reface, trued, turn a drum, machining shop, turned at the shop, engineering shop, cut on a lathe',
  ],
  [
    'measure',
    'measure, measured, vernier, micrometer, mic, bore gauge, depth gauge, feeler, dial gauge, clock, dti, dial indicator, calliper, caliper, measuring, ruler, tape, tape measure, callipers, how thick is, gauge it, verniers, sizes',
  ],
  [
    'roller',
    'roller, rollers, roller test, brake rollers, rolling road, rbt, brake machine, dyno, plate tester, brake test, effort, print out, tester, test lane, brake tester, testing station, inspection line, readings on the test, printout, test slip, test centre, test station, brake readings, kgf, efforts, efficiency',
  ],
  [
    'inspection',
    'mot, nct, doe, cvrt, wof, warrant, cof, roadworthy, rwc, pink slip, rego, fitness, state inspection, safety inspection, technical inspection, main inspection, advisory, retest, defect notice, inspector, failed, fail, test failed, tuv, failed its, failed the, annual test, yearly test, safety check, inspectors, tested, vehicle test, test fail, rejected, check over',
  ],
  // Work
  [
    'comeoff',
    'come off, come of, comes off, comes of, coming off, get off, get it off, get the drum off, take off, take the drum off, taking off, remove, removal, pull off, pull the drum, pop off, drum off, drum removal, prise, drag it off, off the car, wont come, get the rear drum off, getting the drum off, getting off, to come off, came off, get it free, drum free, get drum off, drums off, wont budge, will not budge, budge, wont shift, shift it, will not shift, slide off, slides off, slide it off, slip off, pull it off, pulled off, pulls off, knock off, knock it off, tap it off, lift off, remove drum, extract, separate it, break it loose, get drum free, get free, get drum, get drums, come loose, come away, comes away, come out, comes out',
  ],
  [
    'goon',
    'half way on, halfway on, part way on, go on, goes on, only goes, go back on, goes back on, put back on, wont go on, wont fit over, fit over, refit the drum, slide back on, slide on, go over, drum on, put the drum on, drum back on, get the drum on, get it back on, seat the drum, fit the drum, get back on, go home, seat fully, wont seat, will not seat, go over the shoes, slide over, fits over, get over, slides over, under the drum, inside the drum again, drum fit, drum fits, sit on, push on, wont fit, does not fit, doesnt fit, will not fit',
  ],
  ['apart', 'take apart, strip down, dismantle, open up, disassemble, strip'],
  [
    'together',
    'put back, put together, reassemble, assembly, assemble, reassembly, put it back together, back together, left over, leftover, assembling, how it goes back, goes together, fit it all back, build it up',
  ],
  [
    'fit',
    'fit, fitting, fitted, install, installed, installing, replace, replaced, replacing, change, changed, changing, swap, swapped, renew, renewed, new, brake job, reline, overhaul, overhauled, rebuild, rebuilt, put in, put on, put new, redid, done the shoes, brake change, put in new, did the, have done, put new shoes, after changing, after replacing, just changed, just fitted',
  ],
  [
    'bleed',
    'bleed, bleeding, bled, purge, flush, get the air out, gravity bleed, two person bleed',
  ],
  ['air', 'air, air in the system, air in the line, air bubble, bubbles'],
  [
    'bed',
    'bed in, bedding in, bedding, break in, breaking in, burnish, run in, running in, wear in, bet in, bedded, settle in, grip properly, bite properly, grip well, scrub in, run them in, break them in, bed them in, burnishing, bed, break the shoes in, wear to shape',
  ],
  [
    'spin',
    'by hand, spin, spins, rotate, free wheel, freewheel, coast, coasts, spun, how free, turn freely, turns freely, spins freely, how many turns, turn the wheel, turn it, turning the wheel, rotate the wheel, free spin, to turn, turns, turn, rotation, rotates, spinning, spin it',
  ],
  ['click', 'click, clicks, clicking, tick, snick, ratchet, ratchets, ratcheting, clix, ticks'],
  [
    'reverse',
    'reverse, reversing, backing up, backwards, backward, in reverse, going back, going backward, back out, backing out, backed up, back up, going backwards, rearward, reversed, driving back, drive backwards',
  ],
  [
    'forward',
    'forward, forwards, going forward, ahead, driving off, setting off, set off, pull away, pulling away, move off',
  ],
  [
    'oneside',
    'one side, one wheel, one corner, left side, right side, one drum, one rear, nearside, offside, only one, lefthand, driver side, passenger side, single wheel, one of the rear, left rear, right rear, rear left, rear right, left wheel, right wheel, back left, back right, left back, right back, just one, one back wheel, one back, nsr, osr, n s r, o s r, n s, o s, lh rear, rh rear, back wheel only, the other side fine, other is fine, other side is fine, other one fine, one rear wheel, one of them, left drum, right drum, one hub, on one, left one, right one',
  ],
  [
    'allwheels',
    'all four, all wheels, all four wheels, every wheel, all brakes, front and rear, front too, all the brakes',
  ],
  ['bothwheels', 'both sides, both rear, both wheels, both drums, both back'],
  [
    'wrongside',
    'left and right, wrong side, other side parts, mixed up, swapped left and right, left right swapped, sides mixed, on the right side by mistake, sides swapped, swapped sides, left on the right, other side adjuster, wrong hand, wrong handed, side to side mixed',
  ],
  [
    'upsidedown',
    'upside down, wrong way round, wrong way up, backwards on, on backwards, back to front, wrong way, back to front on, other way up, inverted, the wrong way, wrong way around, wrongly fitted',
  ],
  [
    'towing',
    'tow, towing, trailer, caravan, horse float, horsebox, boat trailer, tow a van, pulling a trailer',
  ],
  ['laden', 'loaded, laden, fully loaded, heavy load, under load, full load'],
  [
    'direction',
    'which way, direction, clockwise, anticlockwise, counterclockwise, up or down, which direction, what way, way to turn, way do i turn, way round do i turn, left or right, lefty, which side, way does it turn, up to tighten, down to tighten',
  ],
  ['howmuch', 'how much, how many, how far, how big, what size, how wide'],
  [
    'tool',
    'tool, tools, brake spoon, spoon, adjuster spanner, screwdriver, puller, slide hammer, hammer, mallet, pliers, spring pliers, special tool, which tools, spring hook, brake tool, pliers for springs, screw driver, prybar, pry bar, wrench, spanner',
  ],
  ['heatit', 'blowtorch, torch, flame, heat gun, heat the drum'],
  [
    'dust',
    'dust, brake dust, blow out, compressed air, air line, vacuum, brake cleaner, powder, breathe, breathing, inhale, asbestos dust, air gun, blow it out, compressor',
  ],
  [
    'stand',
    'axle stand, axle stands, jack stand, jack stands, jack, safety stand, chock, chocks, jacked up, jack it up, on stands, on the jack',
  ],
  [
    'safe',
    'safe to drive, safe, can i drive, ok to drive, drive it, drive on it, drive home, keep driving, dangerous, still drive, leave it, limp home, risky, safely, is it ok to drive, can it be driven, drive with it, carry on driving, dangerous to drive, drivable, driveable, get home, unsafe',
  ],
  [
    'servo',
    'duo servo, dual servo, servo brake, servo kind, self servo, big anchor at the top, adjusts in reverse, short and long lining, adjust in reverse, adjusts when reversing, big anchor pin, big anchor, anchor pin on top, anchor at the top, anchor pin at the top, one big pin on top',
  ],
  ['booster', 'brake booster, booster, vacuum servo, vacuum booster, brake servo'],
  [
    'indisc',
    'drum in disc, drum in hat, drum in rotor, drum inside disc, drum inside the disc, handbrake shoes inside the disc, shoes inside the disc, inside the rotor, disc brake handbrake shoes, top hat, drum in disk, inside disc, inside the disk, drum inside of disc, drum inside of disk, drum inside rotor, drum within the disc, shoes in the disc, parking drum',
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
    'which kind, what kind, which type, what type, type of brake, kind of brake, identify, simplex, non servo, which design, what sort, which sort, what model of brake, what system',
  ],
  ['electric', 'electric parking brake, electronic parking brake, epb, electric handbrake'],
  [
    'lamp',
    'warning light, warning lamp, abs light, abs, brake light, dashboard light, light on the dash, esp',
  ],
  [
    'price',
    'price, cost, how much does it cost, cheap, brand, part number, where to buy, which shoes to buy, buy, how expensive, bucks, quid, rupees, rand, which brand, where can i get, supplier',
  ],
  [
    'torque',
    'torque setting, tightening torque, nut torque, how tight is the nut, torque wrench, nm for the nut, how tight the nuts, newton metres for, foot pounds for, torque figure, torque spec',
  ],
  ['grease', 'grease, lubricate, lube, copper grease, copper slip, anti seize, ceramic grease'],
  [
    'explain',
    'how does, explain, what is, what are, whats, meaning, works, how it works, principle, show me, why does, why do, how do, what does, understand, tell me how, why is, why are, why it, whys, meaning of, for dummies, in simple words, simple explanation, basics, reason, how come',
  ],
  [
    'photo',
    'photo, photograph, photographs, picture, pic, pics, photos, camera, image, snapshot, take a picture',
  ],
  [
    'order',
    'which order, what order, in order, right order, order of, sequence, step by step, steps, first and last, order to, in what order, order for',
  ],
  ['toe', 'toe, shoe tip, tip of the shoe, end at the cylinder, cylinder end'],
  ['force', 'force, forces, thrust, newtons'],
  ['pressure', 'pressure, psi, bar of pressure, hydraulic pressure, line pressure'],
  [
    'touch',
    'touch, touches, contact, make contact, meets the drum, bears, bear on, touching the drum, start touching, first contact',
  ],
  [
    'snag',
    'then stops, then it stops, and stops, and then stops, then catches, then it catches, and then it catches, and catches, hits something, hits the shoes, hits shoes, then jams, and jams, snags, catches the shoes, catches on the shoes, then sticks, wont come no more, wont come any more, wont come further, no further, stops dead, and holds',
  ],
  [
    'slid',
    'slides out, slides, slid, slide out, comes out a bit, comes a bit, comes a little, comes out a little, comes out slightly, moves a bit, moves out, moves outwards, pulls out a little, pulls out a bit, pulls off about, comes out about, a few mm, few millimetres, half an inch, half a inch, half inch, half a centimetre, couple of mm, quarter inch, part of the way, partway, part way, finger width',
  ],
  ['same', 'same same, look alike, look the same, all look same, identical, all the same'],
  [
    'teach',
    'lesson, class, students, pupils, teach, teaching, worksheet, exam, homework, course, apprentice, apprentices, trainee, trainees, college, classroom, my class, show my class, presentation, teacher, instructor, pupil, student',
  ],
];

/** Words that say nothing by themselves. Particles such as on, off, up, not and no are none of them. */
const EMPTY =
  'a an the my me i im ive we our it its is are am was were be been being of to and or so but that this these those there then than with for from by as at in into do does did doing have has had having just really very quite bit some any please help thanks hi hello guys anyone mate dear sir hey need want would could should can will may might like got get gets getting when where what which who how why if about also even still only now today after before while again ever since he she they them his her their you your us because cause seem seems feel feels felt car van truck vehicle ute bakkie rear back brake brakes break braking wheel wheels tyre tire side thing stuff something use used using make makes made go goes going know tell think one two much many lot all well ok old year years ago time day week month months weeks days hours minutes hour mile miles km bought out past let whether allow allowed permitted';

/** Told by their neighbours alone, where nothing else is left of a question. */
const RARE = new Set(EMPTY.split(' '));

/** Words that turn what follows them. */
export const NOT =
  'not no wont dont doesnt didnt cant cannot couldnt isnt aint arent wasnt werent hasnt havent shouldnt wouldnt never without stopped refuses refuse fails nothing neither nor hardly barely wnt dosent doesn t nae';

/**
 * Words as they are spoken or thumbed in several countries, each with its plain spelling: from Scotland
 * and Ireland, the north of England, the south of the United States, India, and from short messages.
 */
export const SPOKEN: ReadonlyMap<string, string> = new Map(
  `aff off, oot out, doon down, roon round, aboot about, cannae cant,  
  dinnae doesnt, dunno doesnt know, didnae doesnt, wilnae wont, willnae wont, winnae wont, wisnae wasnt, doesnae doesnt, isnae isnt,
  wouldnae wont, havnae havent, hasnae hasnt, couldnae cant, heid head, deid dead, ither other, fae from, wi with, tae to,
  ma my, meself myself, summat something, owt anything, nowt nothing, gonna going to, gotta got to,
  wanna want to, gimme give me, lemme let me, kinda kind of, dunt doesnt, aint isnt, yall you, ya you, ur your, 
  thru through, tho though, cos because, coz because, cuz because, bout about, abt about, pls please, plz please, nd and,
  mins minutes, hrs hours, kms km, kilometers km, kilometres km, wudnt wont, wud would, shud should, cud could,
  dosnt doesnt, doesent doesnt, dosent doesnt, wnt wont, wouldent wont, nothin nothing, goin going, comin coming,
  stickin sticking, bindin binding, draggin dragging, grindin grinding, squeakin squeaking, smokin smoking, brakin braking,
  rubbin rubbing, drivin driving, sumthing something, sumtimes sometimes, alot lot, infront in front, abit bit, gunna going to,
  outta out of, offa off, upto up to, inbetween between, tire wheel, tyre wheel, tires wheel, tyres wheel, wheres where is, hows how is`
    .split(',')
    .map((pair) => {
      const [typed = '', ...rest] = pair.trim().split(/\s+/);
      return [typed, rest.join(' ')] as const;
    }),
);

/** Ordinary words of the language that are no slip of a word of the trade, though one letter parts them. */
export const PLAIN: ReadonlySet<string> = new Set(
  'above across after again against almost along already also although always another anything around autumn away bad battery because before begin begins below belt bend bending bends best better between bits black board boat bolt boot boots both brother brown burst came care careful carpet cheap check chuck city clean cleaned clear clutch come cost costs country dear done door doors drove during each early easier east easy eight end ended ends engine every everything exhaust fast faster father feet fell final finally find fine finger fingers first five floor foot form found four free friend from full garage gave gear gears give given glass gone good great green grey guess half hand hands harder hardest hear heard hears heavier heavy high higher highest hitting home hour hours house hundred inside iron keep kept large larger last late later least left less light lights listen little long longer longest look looked looking looks loud louder lower lowest matter maybe metal mind minds mine minute mirror money month months more most mother motor near nearly neighbour never next night nights nine normal north nothing odd often older oldest other others outside over paint pair pairs paper part parts people perhaps person piece pieces place places plain plastic plate point points price quick quickly quiet quite read reads ready real really right rights road roads rubber said same sand saying says scared seat seats second seconds seeing seen sees sell sense seven shoot shop shops short shorter shoulder shout show shown shows sides since sits sitting sizes slow slowly small smaller sold some something sometimes soon sooner sound sounds south spring stand start started starts stay stays steel steering still stone stood stop store stores straight strange street summer sure take taken talk talked talks tell tells think thinks though thought thousand threw through till today told tonight took torn town uncle under until usual usually wait waits walk walks wall walls weather week weeks weird west while whilst white whole window windows winter within without wood word words work worked working works worse worst wrong year years young younger'.split(
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

export const synonyms: readonly {
  readonly term: string;
  readonly said: readonly string[];
}[] = rows.map(([term, said]) => ({
  term,
  said: said.split(',').map((s) => s.trim()),
}));

export const isEmpty = (word: string): boolean => RARE.has(word);
