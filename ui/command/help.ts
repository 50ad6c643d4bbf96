import { adjusterKinds } from '../../sim/index.ts';

const kinds = adjusterKinds.map((k) => (k.includes(' ') ? `"${k}"` : k)).join('|');

export const usage = `takeup: one leading/trailing drum brake, computed

  press SCENE [--pressure 4] [--drum forward|stopped|backward] [--json]
        one application at MPa, its readings
        [--state NAME | --km N]   in a standing state, or worn on by N km
        [--speed 40]              stopped from it, km/h: how hot the drum's face gets, and friction
                                  where it hangs on speed
        [--wheel left|right]      which wheel of a scene with unlike ones
        [--temperature 20]        of the drum, °C
        [--cable 0]               parked: pull of the cable at the hook, N
        [--slope 0]               parked on that slope, %: what it asks for, and the margin
        [--lever-off-stop 0]      parking lever held off its stop, mm at the hook
        [--surface dry|damp|wet|glazed|greasy]   of both linings
        [--stuck front|rear|none] a piston that does not move
        [--cup-friction 0]        of each cup beyond the scene's, N: sluggish pistons
        [--springs 100]           strength of the return springs, %
        [--kept-pressure 0]       what stays in the line after release, MPa
        [--groove 0]              force that breaks a shoe out of a grooved pad, N
        [--oval 0]                drum's radius varies by ± mm, twice a turn
        [--off-centre 0]          drum's centre off by mm, once a turn
        [--flexible]              steel shoes that bend, instead of rigid ones
  Shoes on pins or on abutments, as the scene has them.
  stop SCENE [--speed 50] [--pressure 4 | --pedal N | --deceleration M/S²] [--json]
        a stop from km/h: distance, deceleration, this axle's braking, energy; what the released
        brake costs at that speed; with a deceleration the torque, pressure and foot it needs
        [--failed this|other]     the circuit that holds no pressure, of a scene with two
        [--drum forward|backward], and state and what is out of order as press takes them
  pedal SCENE [--pressure 4] [--drum forward|stopped|backward] [--json]
        force of the foot against pedal travel: first touch, linings on the drum, what is left to the
        floor, and the travel part by part: which of it is this axle's
        [--failed this|other], state and what is out of order as press takes them
  park SCENE [--cable 300] [--slope 20] [--flexible] [--json]
        held by its cable, N at the hook: torque each way, slope held, notches, pull at the grip; on a
        slope, %, what that asks for, and the margin. State and what is out of order as press takes them
  vary SCENE --of ID [--from A --to B] [--points N] [--read KEY,KEY] [--json|--csv]
        any size, state or press of the brake over a range, readings at each point; more points
        where the curve bends unless --points says how many
        [--and ID --values A,B,C]  a curve for each value of a second one
        [--list]                  what can be varied and read, with units and ranges
        [--steps]                 the adjuster does what it does in such a press; else it keeps its tooth
        [--pressure 4] [--cable 0] [--drum …] [--flexible], state and what is out of order as press
        takes them
        [--jobs 2]                so many workers of this machine: worth it from a thousand points on
        [--part 3/16]             the third of sixteen parts, as a file for gather: one a machine
  gather FILE FILE … [--json|--csv]
        all parts of one vary put together: to the bit what the single run tells
  seek SCENE --free ID=FROM..TO,… --wish KEY=LEAST..MOST,… [--json]
        up to three sizes that give what is wished of readings, as a region; none does: how near one
        comes, and the bound in the way, exit code 1. An end may be left out; KEY@300 is read of a
        drum of 300 °C. Press, state and what is out of order as vary takes them
  compare SCENE SCENE … [--read KEY,KEY] [--json|--csv]
        brakes pressed alike, reading beside reading, and how far each is from the first;
        press, state and what is out of order as press takes them
  off SCENE [--hub-rust] [--linings-rusted] [--aside 0] [--json]
        the drum pulled off: what holds it, what hands feel, how many teeth free it; state as press
        takes it
  fit SCENE [--thickness MM] [--ground MM] [--bore MM] [--json]
        new linings, ground to a radius, in a bore of that diameter: where they bear, and what they
        brake before they are bedded in
  figure SCENE [--width 1600] [--height 1100] [--colours print|sheet|board] [--layers forces] [--json]
        the drawing of the pressed brake as SVG; layers: gaps, true-gaps, pressure, forces, names,
        rest, heat, none; press, state and what is out of order as press takes them
  wear SCENE --km N [--wheel left|right] [--flexible] [--json]
        click log and end state, released
  life SCENE [--km N] [--duty NAME] [--wheel left|right] [--json]
        driven by a duty of the scene to its first limit or to N km: events, forecast, end state
        [--reverse 10]            share of every kind of stop in reverse, %
        [--adjuster ${kinds}]
        [--hot-lock 120]          temperature above which its lever is held, °C
        [--driven-by application|"parking pull"]
        [--seized] [--past-limits] [--one-by-one]   stop by stop, not in lumps
  check SCENE [--json]
        findings, exit code 1 if there are any; else its friction tables with their sources
        of a lesson file: what is wrong with it, and where it and the model disagree
  ask "WORDS" [--json]
        what helps with what you say of your brake, best first, as the page's Ask finds it

  help, -h, --help
        this; --version or -v the version

Examples:
  takeup press quay-van --pressure "40 bar" --json
  takeup vary quay-van --of cylinder.bore --points 200 --read torque --csv > torque.csv
  takeup vary quay-van --of shoes.lining.friction --points 10000 --jobs 2 --json
  takeup vary quay-van --of tooth --read restClearanceMean --part 1/2 > part-1.json
  takeup vary quay-van --of tooth --read restClearanceMean --part 2/2 > part-2.json
  takeup gather part-1.json part-2.json --csv
  takeup seek quay-van --free cylinder.bore=15..23 --wish torque=200..240
  takeup seek quay-van --free tooth=0..20 --wish restClearanceMean=..0.4,teethTaken@300=..0
  takeup off quay-van --km 60000
  takeup figure quay-van --pressure 4 --layers forces,pressure > brake.svg

SCENE is a path or a name in scenes/. Sizes may carry a unit: --pressure "40 bar".

--json prints one object:
  press  { scene, command, pressure: {value, unit}, drum, locked, tooth, clicked, readings }
  stop   { scene, command, speed: {value, unit}, pressure: {value, unit}, drum, readings,
           notes: [ text ] }
  pedal  { scene, command, drum, readings,
           curve: { units, points: [ { pressure, line, force, travel, runOut } ] }, notes: [ text ] }
  park   { scene, command, cable: {value, unit}, slope: {value, unit}, readings }
  vary   { scene, command, pressure, drum, of: { id, name, unit }, readings: [ { key, name, unit } ],
           curves: [ { also: { id, value }, points: [ { at, values, told, clicked } ] } ] }
           told says why a point has no values: a shoe locks, a part yields, no such brake can be
  vary --part   one line of JSON, which gather reads
  seek   { scene, command, pressure, drum, free, wishes, brakes, reach: [ { id, least, most } ] or null,
           best: { at, values, missed }, bounds: [ { id, end, value } ] }
  compare { command, pressure, drum, brakes: [ { scene, title, locked, readings } ] }
  off    { scene, command, comesOff, heldBy, locks: [ text ], turns, forward, backward, rocks, slides,
           slide, lip, overlap, rub, backOff: { teeth, rows } }
  fit    { scene, command, thickness, ground, bore, bears, gap, torque, share, slidesOn }
  figure { scene, command, width, height, svg }
  wear   { scene, command, km: {value, unit}, locked,
           events: [ { kind, tooth, distance: {value, unit}, text } ], end }
  life   { scene, command, duty, adjuster, ended, km, stops,
           events: [ { kind, tooth, side, distance, text } ],
           forecast: [ { what, left, low, high, rests } ], end }
  check  { scene, command, findings: [ { path, found, allowed, reason } ] }
  ask    { command, words, read: [ term ], found: [ { kind, title, text, leads } ] }
Any command answers with findings in the scene as check does, and with a call that cannot be carried
out as { error: { place, found, allowed } }.
readings and end hold { name, symbol, value, unit } by key; value is null where there is nothing to
tell. locked is "front" or "rear" for a shoe that holds the drum by itself, else null.

Long work (vary, life) says on the way of errors how far it is, every other second.

Exit codes: 0 done, 1 findings in the scene or none that seek was asked for, 2 a call that cannot be carried out.`;
