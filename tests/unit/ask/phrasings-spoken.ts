import { listed, type Phrasing } from './phrasings.ts';

/**
 * Written before the entries were looked at, as people of several countries talk: what these lacked was mended.
 */
export const everyday: readonly Phrasing[] = listed(`
cannae get the drum aff the back wheel, been at it all morning | station:drum-off
me drums won't budge, slackened everything and hit it with a lump hammer | station:drum-off, question:q005, question:q004
drum comes out bout a half inch then hits something and wont come no more | fault:lip, question:q001
how do yall get these rear drums off a pickup thats sat ten years | station:drum-off, fault:hub rust, fault:rusted on, question:q005
is there two threaded holes on the drum to push it off with bolts | question:q006
back wheel is stuck solid after i parked the ute at the beach for a fortnight | fault:rusted on, question:q110, question:q064
handbrake frozen on overnight, minus ten here | fault:rusted on, fault:kept pull, question:q102
bakkie's left rear brake is jamming on me after washing | fault:rusted on, question:q064, question:q063, fault:damp, question:q065
the wheel is getting jam after applying hand brake in rainy season | fault:stiff pivot, fault:kept pull, question:q102, check:lever, check:drag
rear wheel gets roasting after twenty minutes on the motorway | check:drag, question:q040, question:q045, fault:kept pull
one hub is way hotter than the other after a run into town | check:drag, question:q040, question:q041
smell of burning from the back left when i pull up at lights | check:drag, question:q045
my back brakes are smokin when I pull into the driveway | check:drag, question:q045, question:q038, caution:hot
how hot is too hot for a brake drum in fahrenheit | question:q041, question:q040, check:free, reading:temperature, caution:hot, check:drag
car feels like someone holding it back, not rolling on | check:drag
brake pedal goes near floor but second pump it's grand | question:q095, check:pedal, fault:seized short
first push of the day pedal drops, after that ok | question:q093, fault:worn teeth
pedal all soft and squishy since i did the wheel cylinders | question:q090, fault:air
pedal slowly sinking when I wait at the robots | not here:sinking
pedal is hard as rock and car not stopping | fault:glazed, not here:booster, check:pedal, check:braking
brakes kick back at my foot coming down from 100 | question:q096, fault:oval drum, fault:drum off centre
steering doesn't shake but i feel wub wub wub in the seat when braking | fault:oval drum, fault:drum off centre, question:q096, question:q086
handbrake lever coming up nearly to the roof | check:lever, question:q099, question:q097, station:park, question:q019, question:q104
my ebrake handle goes up 14 clicks then it finally holds | question:q099, check:lever, station:park, fault:stretched cable, question:q097
park brake only two clicks and the wheels drag | fault:short cable, fault:kept pull, fault:stepped hot, check:lever, check:drag, question:q099
handbrake does not catch on the ramp at the shopping mall | check:lever, question:q098, station:park, question:q101
the car is rolling backwards in hill start even i pull full | question:q098, check:lever, station:park, question:q101, question:q049
handbrake holds facing down the drive but not facing up | question:q049, check:lever
failed its MOT on parking brake efficiency 11 percent | question:q100, word:roller test, not here:legal, check:lever, question:q080
rear brakes imbalance 38 percent at the NCT | question:q081, word:roller test
brake tester says the n/s/r is doing nothing | question:q080, question:q081, word:roller test, fault:stuck piston, check:braking
clicked the star wheel the wrong way now it's locked up tight | question:q026, question:q025
which way do i turn the star wheel to loosen it up | question:q004, question:q032, order:back, question:q026
is the adjuster up or down to tighten through the back hole | question:q032, question:q004, question:q008, order:set, order:back
there is a wee lever you've to hold off the cog, how | question:q002, order:back
adjuster nut is rusted solid and wont turn by hand | fault:seized short, question:q017, question:q104
auto adjusters never click anymore | fault:seized short, question:q017, question:q018
brakes keep on tightening up by themselves every few days | question:q028, fault:stepped hot
the clicker spring snapped | fault:broken lever spring
i put the left adjuster on the right side by mistake | fault:wrong side
bits left over after putting drum brake back together | order:together, question:q117, question:q118
what order do i put the springs back on | order:together, question:q117
which spring goes where, they all look same same | question:q117, order:together
does the longer shoe go to the front or the back | question:q116, word:leading shoe, question:q115, fault:shoes swapped, question:q055
bought shoes and they wont go under the drum, adjuster is fully in | question:q012, station:new-shoes, question:q011
drum is too small for the new shoes | question:q012, station:new-shoes, question:q014
new linings touching only at the middle | fault:oversize bore
fitted new shoes last week and now stopping distance worse | question:q066, question:q100, word:bedding in, order:bed, fault:oversize bore, question:q092
how many kms before new brake shoes grip properly | word:bedding in, order:bed, station:new-shoes
do i have to drive careful to burnish new shoes | word:bedding in, order:bed, station:new-shoes
how thin can the lining be before i must change | station:inspect, question:q112
shoes got 2mm left is that ok til christmas | question:q112, station:inspect, question:q111
rivets showing on one shoe | station:inspect, question:q112, question:q111
leading shoe way more worn than the other one normal? | question:q057
one shoe is worn skew, thick on top thin on bottom | question:q058, question:q059
drum says MAX 229 and i got 228.7 with verniers | figures:sheet, station:inspect, question:q114, question:q084
can this drum be skimmed, has a deep groove i can hang my nail in | question:q084, station:inspect, question:q085
do both drums need machining the same | question:q084, station:inspect, not here:one side
drum sounds dead not ringing when i knock it | not here:crack
cylinder weeping under the rubber boots | fault:fluid on linings, question:q087
brake fluid running down the inside of the tyre | fault:fluid on linings, question:q087
grease from the axle on the brake shoes can i wash it off | fault:oil on one lining, not here:cleaning, question:q087
linings soaked in brake oil, clean with petrol? | not here:cleaning, fault:fluid on linings
squealing like a pig first thing in the morning then goes away | question:q072, fault:damp, not here:noise, check:noise, question:q063
grinding noise when reversing out of garage | check:noise, not here:noise, question:q071, question:q074
loud bang from rear when first moving forward after reverse | not here:clunk, question:q068
brake drum going shh shh shh each turn | fault:drum off centre, question:q086, question:q076, check:noise
humming noise rear louder with speed is it the bearing or the brake | fault:bearing, check:noise
replaced wheel bearing and now that drum rubs | fault:drum off centre, fault:bearing, question:q076
hose collapsed inside, how would I know | fault:hose, question:q048
brakes lock up gradually as I drive then free after an hour | fault:port shut, question:q042
opened the bleed nipple and wheel came free | fault:hose, fault:port shut, question:q048, question:q042, question:q038
new master cylinder and now all brakes dragging | fault:port shut, question:q042
cable stretched or shoes worn, how do i tell which | question:q097, fault:stretched cable
changed the handbrake cable now it's binding | fault:short cable, question:q009, question:q102, fault:kept pull, question:q110, question:q035, question:q080
lever arm in the drum doesn't spring back | fault:stiff pivot, question:q103, question:q104, question:q106
how tight should the back wheel be when i spin it | question:q039, order:set, question:q033
how many turns should the wheel spin with correct adjustment | question:q039, question:q007, order:set, question:q033
can I adjust rear brakes without taking wheel off | order:back, order:set, question:q002, question:q008, station:new-shoes
no hole in my backplate how do i slacken the shoes | question:q003, order:back
what is self energising and why does the front shoe do more | word:self-energising, lesson:self-energising, question:q051
explain to my class why brake is weaker going backward | question:q051, question:q054, word:self-energising, word:lead and trail swap, lesson:self-energising
show me brake factor vs friction graph | station:vary, word:brake factor, reading:brakeFactor
what clearance between shoe and drum is normal | word:clearance, question:q033, reading:clearanceMean, reading:restClearanceMean, lesson:rest-position
what pressure do the shoes start touching | reading:linePressure, reading:clearanceMean, station:apply, reading:separation, lesson:the-press, lesson:rest-position, station:vary
weight of wheel on stand 30 lb to turn at tyre too much? | question:q039, order:set
my setup has the big anchor pin on top, does this apply | not here:servo, station:kind
it is a drum inside of disc brake | not here:in disc, station:kind
can i photograph my brake and let this work it out | station:own
i want to put in my own brake sizes | station:own
print a measuring sheet for the workshop | station:inspect
`);

/**
 * Written at the same time, drawn on what people notice and on what is asked of the trade, and not looked at
 * while the others were mended.
 */
export const noticed: readonly Phrasing[] = listed(`
one drum slides oot a bit and stops deid, ither side is fine | fault:lip, question:q001
feeling about thru the hole for ages and cant find that catch thing | question:q008, order:back
puller and torch and big hammer no joy with rear drums | question:q005, station:drum-off
is it rust round the centre or a ridge keeping my drum on | question:q004, fault:lip, fault:hub rust
new shoes fitted, drum catches on one shoe only, where is adjuster on these | question:q010, question:q012
drum wont go home even with everything wound right in | question:q011, question:q012
did the wheel cylinder only and now same drum too tight | question:q013
bought replacement drum, was snug then it locked | question:q014
what's the little stepped thing with spring on the handbrake arm | question:q016, part:toothed lever, lesson:the-click
do the self adjusters shorten the cable or move the shoes | question:q020
both sides fifteen clicks out nothing broke why they dont keep up | question:q022
found a threaded rod loose in the bottom of drum | question:q023
wound it till wheel locked, now will not unwind even holding the pawl off | question:q025
set light drag, two days later hot and tight again | question:q028
wheel turns one way, other way springs back | question:q031
set till wheel solid then one stamp on pedal and it spins free | question:q034
new wire fitted, pulled tight, gaadi still creeping | question:q035, question:q036
spins free on the jack but boiling hot after each drive | question:q037, fault:bearing
after it cools down it's fine again, hot and smoking before | question:q038, fault:hose, fault:kept pull
infrared gun says 50 on one wheel 68 the other | question:q041, question:q040
drove with handbrake on for 5 miles whats ruined | question:q047
rolls back down drive but holds going forward | question:q049
backwards easy, forwards stiff to turn on stands | question:q056, question:q050
pulled the brake while still rolling and it holds, when stopped first it creeps | question:q053
what is leading shoe, the first to touch? | question:q055, word:leading shoe
front shoe down to metal on top half only | question:q059, question:q058
shoe worn on outer edge and screeching | question:q061
wet few days and back brake grabbed then let go with a bang reversing | question:q064, fault:rusted on, question:q065
back tyre skids as soon as I touch brake after rain | question:q065, fault:damp, question:q063
grabs if i push hard, pulsing if soft, is drum egg shaped | question:q067, fault:oval drum
one loud clonk first brake after i change direction | question:q068, not here:clunk
honking drum after town driving, shoes look shiny | question:q070, fault:glazed
squeaks when i let pedal up parked | question:q073
grinds on pedal but not with hand brake | question:q074
swapped shoes about and now it pulls the other way | question:q077, fault:shoes swapped, question:q062
drums off and only one shoe moves when mate presses pedal | question:q079
tester says little effort on one side by foot and by hand | question:q080, question:q081
brand new drum is half a mil different across two ways | question:q083, fault:oval drum
drum looks smooth how to know if it needs replacing | question:q085, question:q114, station:inspect
piston popped out of cylinder when I pressed | question:q088, fault:dead adjuster to the end, caution:piston, question:q089, word:run-out of a piston
twice changed master still goes far down at each stop | question:q091
bled it three ways half the pedal is still gone | question:q092
pedal low but pumping brings it back up, need new shoes? | question:q095, fault:seized short, check:pedal
lever slack on 4 year old car, cable or shoes | question:q097
worked good first time then went slack for good | question:q103, fault:stiff pivot
let lever down and the yoke under the car stays | question:q106
parked on hill, brakes hang on after releasing | question:q107
two months standing, one tyre drags, lever is off | question:q110, fault:rusted on
4mm left at 53 thousand can i leave it | question:q112, question:q111, station:inspect
never had drums off in 100k, handbrake strong, leave it? | question:q113
inspector says shoe is backwards, how he know | question:q115, fault:shoes swapped
scared of these springs, how do i do final setting | question:q118, order:set, order:together, caution:springs
handbrake 13 notches both wheels same and pedal long | fault:seized short, fault:wrong side, fault:broken lever spring, question:q104, check:lever, check:pedal
every couple months i must crank handbrake nut again | fault:seized short, question:q097, fault:stretched cable, question:q104
number of clicks changes day by day | fault:worn teeth
no clicks heard ever and long pedal | fault:seized short, fault:dead adjuster to the end, question:q017, check:pedal, fault:broken lever spring, fault:wrong side
pedal way low, adjuster lever swings loose no spring | fault:broken lever spring
hot drum clicked and now cold it wont turn | fault:stepped hot
wheel wont turn at all, drum on, after fitting shoes | fault:strut mis-seated, question:q011
strut isnt sitting in its slot properly | fault:strut mis-seated
weak springs dont pull shoes back | fault:weak springs
shoe springs too strong, brakes come late | fault:strong springs
wheel freed as soon as i cracked the bleeder | fault:hose, fault:port shut, question:q048, question:q038
all four wheels dragging since brake booster was done | fault:port shut, question:q042
piston on one side stuck in cylinder with rust | fault:stuck piston
brakes let go slow, couple of seconds | fault:sluggish pistons, question:q048
cylinder different size left from right | fault:other bore, question:q078
hind brake weak after crossing flooded road | fault:water inside
no brakes going down the ghat, came back when cold | fault:hot fade, word:fade
brakes grabby on damp mornings first stop only | fault:damp, question:q063
drum rocks when i push top and bottom | fault:bearing
black goo inside the drum and smells like diff oil | fault:oil on one lining, question:q087
rubs once every turn, light scrape | fault:drum off centre, question:q086
rubs two times each turn and pedal throbs | fault:oval drum
turn wheel by hand feels about 15 Nm | question:q039, check:drag, fault:leaning part, fault:hose, order:set
drum sits on spigot rusted, penetrating oil? | fault:hub rust, station:drum-off
lining edges hit ridge in drum | fault:lip
grooves in the plate where shoes sit on | fault:groove, question:q046
shoe lining come unstuck from the metal | not here:lining loose, not here:loose lining
shoes worn at both ends hardly touched middle | fault:lining ends
feels wooden, have to push very hard | fault:glazed, not here:booster, check:pedal, check:braking
car pulls to left each time i brake since i painted the drums | check:braking, question:q077, question:q078
roller print says ovality 32% left | fault:oval drum, word:roller test
effort 1.2 kN left 0.6 kN right rear brake | question:q081, word:roller test, check:braking, figures:see
`);

/**
 * A third lot of that hour, over all that the bench has.
 */
export const further: readonly Phrasing[] = listed(`
drums stuck fast on a trailer thats been in the shed | station:drum-off, fault:rusted on, fault:hub rust
the drum turns but wont slide off the axle | fault:hub rust, fault:lip, station:drum-off
need to get drum off but brake is holding it | station:drum-off, question:q004, order:back, question:q001
gave it heat and still not coming, where else is it fixed | station:drum-off, question:q005, not here:heat it, fault:lip, fault:hub rust
does the handbrake need to be let off to pull the drum | station:drum-off, order:apart, question:q001, question:q009
how much teeth must i go back before drum clears the edge | question:q027, fault:lip, question:q001
drum came off but lining edges all chewed | fault:lip, question:q001
hot wheel only on the nearside rear, no handbrake used | check:drag, question:q040, question:q045
my rim burns my fingers after a short drive | check:drag, question:q040, question:q045, caution:hot
the brake heats the wheel and then the car stops by itself | fault:port shut, question:q042, check:drag, fault:hose
bit of rubbing after adjusting, will it wear in | check:free, question:q030
is slight drag ok on new shoes or back it off | question:q033, question:q039, order:set
fuel use is up and car stops quick when I put clutch in | check:drag
wheel hot after reversing out only | question:q052, check:drag, fault:groove
how far can i drive on a binding brake | not here:safe, check:free, question:q030, question:q047
brake is not leaving after release | check:drag, question:q048, fault:hose, fault:sluggish pistons, fault:kept pull
handbrake won't let go in the frost | question:q102, fault:kept pull
cable is seized in its sleeve | fault:kept pull, question:q104, question:q102
the brake cord is too slack, where i tighten it | fault:stretched cable, question:q036, order:set, question:q097
should I tighten handbrake at lever or at the drum first | question:q036, question:q035, order:set
set cable first or shoes first mate | question:q036, order:set, question:q035
handbrake pulls up miles and does naff all | check:lever, question:q104, question:q098, question:q082, question:q019
foot operated parking brake goes to the floor and truck still rolls | check:lever, question:q098, station:park, question:q104, question:q082
holds on flat not on 1 in 4 hill | question:q101, question:q098, station:park, question:q108, check:lever, figures:slope
how steep a hill will it hold | station:park, question:q108
one side holds and other side no when i pull lever | question:q105, check:lever
equalizer is crooked one cable longer | word:equaliser, question:q106, question:q105
pedal travels a lot before it bites | check:pedal, question:q091, question:q095
dead pedal top half then firm | check:pedal, question:q091, question:q095, question:q092
petal feels like sponge | fault:air, question:q090, check:pedal
pedal went to carpet this morning | check:pedal, question:q091, question:q095, not here:safe, not here:sinking
pedal goes up and down under my foot on slow braking | question:q096, fault:oval drum, fault:drum off centre
stiff pedal nothing happens | fault:glazed, not here:booster, check:pedal, check:braking
how much fluid do the rear cylinders use for one press | reading:fluid
brakes bite very sharp at first touch | question:q066, check:braking, fault:damp, question:q067, fault:lining ends
rear wheels lock up too easy when its wet | question:q065, fault:damp, check:braking
back end steps out when braking in rain | question:q065, fault:damp, check:braking
brake gone on long descent with caravan | fault:hot fade, word:fade
no stopping power after going through water | fault:water inside
one brake is stronger, car go sideways | check:braking, question:q077, question:q078
poor braking rear left only at test lane | word:roller test, check:braking, fault:stuck piston, question:q080, question:q081
failed warrant for rear brake balance | question:q081, word:roller test, not here:legal
rear brake reading 90 left and 150 right kgf | question:q081, word:roller test, check:braking, figures:see
does it matter if rollers only turn forward | word:roller test, question:q100
squeak every wheel turn when not braking | check:noise, not here:noise, question:q076, question:q086, fault:drum off centre
scraping goes away when i tap the brake | check:noise, question:q086, check:drag, question:q076
ticking sound each time I lift the pedal | question:q018, word:click, check:noise
creaking when i let the handbrake off | check:noise, question:q073, not here:noise
metal to metal grinding, is it finish | question:q071, not here:noise, check:noise, station:inspect, not here:safe
noise like a ship horn when stopping | question:q070, not here:noise, check:noise
shoes shiny like glass, sand them? | fault:glazed, question:q070
lining cracked along rivets | station:inspect, not here:loose lining, not here:lining loose, question:q085, question:q112, caution:doubt, not here:crack
one shoe is thinner than the other | question:q057
top of shoe worn more | question:q059, question:q058
how much life is left in 3.1 mm | question:q111, question:q112, station:inspect, figures:sheet
where do I measure the lining | station:inspect
drum wear limit where is it stamped | question:q114, station:inspect
drum measures 204.2 but it says 203.5 max | figures:sheet, station:inspect, question:q114
measure drum with a tape is ok? | station:inspect, question:q085
is 0.15 mm out of round too much | fault:oval drum, word:out of round, question:q086, station:inspect, question:q083
cut drums then new shoes dont fit the curve | fault:oversize bore, question:q084
what is arcing brake shoes | fault:oversize bore, fault:lining ends, word:bedding in, station:new-shoes, station:inspect
cheap shoes dont match the drum curve | fault:oversize bore, fault:lining ends, station:new-shoes, station:inspect
fluid level drops but i see no leak outside | fault:fluid on linings, question:q087, not here:sinking
wet inside of drum | question:q087, fault:fluid on linings, fault:oil on one lining
one piston moves other doesnt | question:q079, fault:stuck piston
pushed piston out by accident what now | question:q088, caution:piston, question:q079, word:run-out of a piston
star adjuster just spins and does nothing | question:q017, fault:seized short, fault:worn teeth, fault:wrong side
ratchet teeth are rounded off | fault:worn teeth
adjuster lever sits above the star and misses it | fault:wrong side, fault:broken lever spring, question:q017
adjuster screw left hand or right hand thread | fault:wrong side, question:q032, question:q004, question:q117, station:kind
self adjuster works when reversing? | question:q021, station:kind
how far should shoe move before it clicks | reading:toNextTooth, word:click, question:q016, question:q017, lesson:the-click
why wont it click when the drum is hot | part:hot lock, word:hot lock
one more click made it too tight | question:q029
wedge type adjuster with little spring | station:kind, part:wedge
which tools for the springs | order:apart, order:together, caution:springs
how to put hold down pin and cap back | order:together, part:hold-down
spring shot across garage, what to watch out | caution:springs
is the dust poison | caution:wear, not here:dust
grease where on the back plate | not here:grease
left and right shoes the same? | fault:wrong side, question:q117, question:q116, question:q115
part with number stamped L goes on which side | fault:wrong side, question:q117, question:q116
which shoe is primary | word:leading shoe, not here:servo, question:q055, station:kind
what would happen if i left strut out | question:q023
how does drum brake work for dummies | station:apply, lesson:how-this-brake-works
difference between simplex and duo servo | station:kind, not here:servo, not here:other kinds
what force at the shoe tip | reading:pistonForce, reading:toeForceFront, reading:toeForceRear
show pressure along the lining | station:apply, reading:peakFront, reading:peakRear, reading:dragFront
how does friction change the brake | station:vary, word:brake factor
teacher wants us to find the fault in a van | station:faults
lesson about drum brakes for apprentices | station:lessons, lesson:how-this-brake-works
`);
