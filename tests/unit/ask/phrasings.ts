/**
 * How people put it, each with the entry that must be among the first three; where more than one helps
 * alike, any of them. Written from how people talk, not from the entries: as one mutters it on the phone
 * beside a wheel, in the words of several countries, with slips.
 */
const all = `
drum wont come off | station:drum-off
the drum is stuck | station:drum-off
cant get rear drum off | station:drum-off
how do i get a stuck brake drum off | station:drum-off
brake drum seized solid to hub | fault:hub rust
drum spins but won't pull off | fault:hub rust, station:drum-off
drum turns fine but not moving outwards a hair | fault:hub rust, station:drum-off
hammered it for an hour drum still on | question:q005, fault:hub rust
drum slides out half a centimetre then jams | fault:lip, question:q001
drum pulls out a little and hits the shoes | fault:lip, question:q001
ridge on drum catching shoes | fault:lip, question:q004
wear lip wont let the drum past the shoes | fault:lip, question:q001, question:q004
break drum stuk | station:drum-off
drumm wont come of | station:drum-off, fault:hub rust, fault:lip
no hole in backing plate to get at adjuster | question:q003
where is the hole for the adjuster | part:access hole, question:q008
i cant feel the lever through the hole | question:q008, part:access hole
which way to turn star wheel to back off | question:q004, part:star wheel, question:q027
do i turn the adjuster up or down to loosen | question:q004, question:q032
how far back do i wind the adjuster | question:q027
how many teeth back | question:q027
hold pawl away while backing off | question:q002
drum has two threaded holes what are they for | question:q006
can i use bolts to jack the drum off | question:q006
since i tightened the handbrake the drum wont come off | question:q009, fault:short cable
adjusted the handbrake cable now drum stuck | question:q009, fault:short cable
can i heat the drum with a blowtorch | not here:heat it
hit drum with sledge hammer ok? | not here:heat it, question:q005
turned adjuster wrong way and now its locked solid | question:q026
adjuster wont back off | question:q025, question:q002, station:drum-off
adjuster jammed under load cant lift it | question:q025, question:q002
new shoes fitted drum wont go back on | question:q012, station:new-shoes, question:q010, question:q011
drum too tight over new shoes | question:q012, station:new-shoes, question:q010, question:q014
drum wont go on over the new linings | question:q012, station:new-shoes, question:q010
changed wheel cylinder now drum wont fit | question:q013
new drum doesn't fit over old shoes | question:q014, question:q012
drum only goes half way on | question:q011, question:q010, question:q012
drum sits crooked on new shoes | question:q011, question:q010, question:q012, station:new-shoes
how do i fit new brake shoes | station:new-shoes
replacing rear shoes step by step | station:new-shoes
changing drum brake shoes | station:new-shoes
how to adjust drum brakes | station:new-shoes
adjusting new shoes how tight | question:q033, station:new-shoes
how much drag should i leave when adjusting | question:q033
should wheel drag slightly after adjusting | question:q033, question:q039
what clearance for new shoes | question:q033, word:clearance
gap between shoes and drum how much | word:clearance, question:q033, reading:clearanceMean
shoes first or cable first | question:q036
when do i set the handbrake cable after new shoes | question:q036
how do i bed in new shoes | word:bedding in, station:new-shoes
how long to break in brake shoes | word:bedding in, station:new-shoes
how does a drum brake work | station:apply
do the shoes bend when you brake hard | word:shoes that bend
bending shoes | word:shoes that bend
drag a pin and see what the factor does | word:dials
sliders on the drawing | word:dials
move the anchor pin | word:dials
free body diagram of a shoe | word:force polygons
do the forces on the shoe add up to nothing | word:force polygons
show me how it works | station:apply
explain self energising | word:self-energising, station:apply
what is a leading shoe | word:leading shoe, question:q055
primary or secondary shoe which one is front | word:leading shoe, word:trailing shoe, not here:servo, question:q055
why does front shoe do most of the work | question:q051, question:q057
what does the self adjuster do | question:q016, question:q017, question:q020
how does the ratchet adjuster take up wear | question:q016
how does auto adjuster know when to click | question:q016, word:click
my adjuster never clicks any more | fault:seized short, question:q017
self adjusters don't work | fault:seized short, question:q017
self adjuster not adjusting | fault:seized short, question:q017
adjuster siezed | fault:seized short
adjuster wheel rusted solid | fault:seized short
adjuster keeps over adjusting | question:q028, fault:stepped hot
brakes tighten themselves up | question:q028, fault:stepped hot, fault:port shut
it clicks every time i press the brake | question:q018, word:click, fault:worn teeth
clicking from drum when braking new shoes | question:q018, word:click
do i need to brake in reverse to adjust | question:q021, not here:servo
adjusts when you reverse? | question:q021, not here:servo
i never use the handbrake does it adjust | question:q024
little spring on adjuster snapped | fault:broken lever spring
pawl flops about | fault:broken lever spring
teeth on adjuster rounded off | fault:worn teeth
adjuster slips back | fault:worn teeth
left and right adjusters mixed up | fault:wrong side
adjuster fitted on wrong side | fault:wrong side
adjuster winds itself shorter | fault:wrong side
which way up does adjuster go | question:q032
adjuster spring back when turned one way | question:q031
strut not sitting right after assembly | fault:strut mis-seated
spreader bar slipped out of slot | fault:strut mis-seated, question:q023
found a bit of metal loose in the drum | question:q023, question:q075
something fell out when i pulled the drum | question:q023, not here:loose lining
pedal goes nearly to the floor | check:pedal, fault:seized short
pedal goes half way down before anything | check:pedal, fault:seized short, question:q091
low pedal pumps up | question:q095, fault:seized short
pedal long but firm | fault:seized short, question:q095, check:pedal
brake pedal travel too long after new shoes | check:pedal, station:new-shoes, question:q091, question:q092
first press long second ok | fault:worn teeth, question:q093, question:q095
every morning first press goes down then fine | fault:worn teeth, question:q093
spongy brakes | fault:air
brake pedal soft | fault:air, check:pedal
mushy pedal after bleeding | fault:air
pedal spongey since i changed wheel cylinder | fault:air, question:q090
pedal like a sponge | fault:air
air in brakes how to tell | question:q090, fault:air
pedal slowly sinks to floor | not here:sinking
pedal drops at traffic lights | not here:sinking
pedal hard as rock and car doesn't stop | fault:glazed, not here:booster
have to stand on the pedal to stop | fault:glazed, check:braking, not here:booster
wooden pedal poor brakes | fault:glazed
pedal pulses when braking | fault:oval drum, question:q096
brakes judder | fault:oval drum, check:braking, question:q096
shuddering through pedal | fault:oval drum, question:q096
pulsating peddle | fault:oval drum, question:q096
new master cylinder and still low pedal | question:q091
bled and bled still low pedal | question:q092, fault:air
no free play in pedal | fault:port shut
all four wheels hot | fault:port shut, check:drag
all brakes binding the longer i drive | fault:port shut, question:q042
brakes drag more as they get hot | fault:port shut, question:q042
rear wheel gets hot | check:drag, fault:kept pull
one rear drum boiling hot the other cold | check:drag, fault:kept pull, question:q040
back wheel is smoking | check:drag, question:q038, question:q045
burning smell from back wheel | question:q045, check:drag
drum too hot to touch after short drive | check:drag, question:q043
how hot should drums get | question:q041, check:free, question:q040
70 degrees one side 50 the other | question:q041
new shoes getting hot | question:q043, question:q028
wheel hard to turn by hand | check:drag, question:q039
how free should the wheel spin | question:q039
wheel spins free on jack but hot on road | question:q037, fault:bearing
will it loosen up if i just drive it | check:free, question:q030
shoes slightly tight will they wear in | check:free, question:q030
can i drive it till it frees off | check:free, question:q030, not here:safe
brake stays on after i let go of pedal | fault:hose
brake hangs on for a few minutes then lets go | fault:hose, question:q048
brakes slow to release | fault:sluggish pistons
rear brake sticking a few seconds | fault:sluggish pistons, question:q048
frees when i open the bleed nipple | fault:hose
collapsed flexi hose | fault:hose
wheel locks up after braking until i crack the bleeder | fault:hose
handbrake wont release one wheel | fault:kept pull
hand brake stuck on | fault:kept pull, question:q102
parking brake frozen won't let go | fault:kept pull, question:q102
handbrake cable seized in outer | fault:kept pull
handbrake cable wont return | fault:kept pull
e-brake stuck | fault:kept pull, question:q102
ebrake wont hold | check:lever
handbrake too many clicks | check:lever, fault:stretched cable, question:q097
handbreak comes up too high | fault:stretched cable, check:lever, question:q097
handbrake lever nearly vertical | fault:stretched cable, check:lever, question:q019
lever goes all the way up pedal is good | fault:stretched cable
is it the cable or the shoes handbrake slack | question:q097
how many clicks normal for handbrake | question:q099, station:park
how many notches | question:q099, station:park, word:notch
handbrake only one click | fault:short cable
handbrake cable too tight | fault:short cable
handbrake doesn't hold on hills | check:lever, question:q098
car rolls away with handbrake on | check:lever, question:q098
rolls backwards on the driveway handbrake on | question:q098, question:q049, check:lever
handbrake holds going forward but not back | question:q049, fault:oil on one lining
holds nose down not nose up | question:q049, fault:oil on one lining
handbrake weak on one side | fault:stiff pivot, question:q105
handbrake works one wheel only | fault:stiff pivot, question:q105
lever on shoe rusted | fault:stiff pivot
handbrake arm in drum seized | fault:stiff pivot
handbrake slack again after one pull | question:q103, fault:worn teeth
handbrake holds on gentle hill slides on steep one | question:q101
new cable still no handbrake | question:q035
handbrake useless where do i start | question:q104, check:lever
how do i reset handbrake adjusters | question:q104
how steep should it hold | question:q108, station:park
failed handbrake test | check:lever, question:q081, question:q100, not here:legal
mot failed handbrake efficiency | check:lever, not here:legal, question:q100, question:q081
compensator bar doesn't move back | question:q106
handbrake hangs on after parking on a slope | question:q107
left handbrake on while driving | question:q047
drove with handbrake on damage? | question:q047
stood for six months wheels locked | fault:rusted on, question:q109
car sat all winter brakes seized | fault:rusted on, question:q109
rear wheels wont turn been parked for months | fault:rusted on, question:q109
back wheels dragging along locked after standing | fault:rusted on, question:q109
stuck after rain then bang and free | fault:rusted on, question:q064
brakes stick overnight in wet weather | fault:rusted on, question:q064, question:q102, fault:damp
wheel locked in the morning after mountain pass | fault:stepped hot
tight next morning after long descent | fault:stepped hot
brakes grab in the morning | fault:damp, question:q063
grabby first stop when its damp | fault:damp, question:q063
rear locks in rain | fault:damp, question:q065
snatchy when wet | fault:damp
no brakes after driving through deep water | fault:water inside
brakes weak after puddle | fault:water inside
boat trailer brakes no good after launching | fault:water inside
brakes fade going down mountain | fault:hot fade
nothing left at bottom of the hill | fault:hot fade
brakes gone after long downhill with caravan | fault:hot fade
pulls to left when braking | check:braking, fault:other bore, fault:stuck piston
car pulls to one side braking | check:braking, fault:stuck piston
pulls right since new wheel cylinder | fault:other bore, question:q078
pulls one way forwards not in reverse | fault:stuck piston
brakes better in reverse | question:q054, fault:stuck piston
one piston wont move | fault:stuck piston
only one shoe moves | question:q079, fault:stuck piston
wheel cylinder seized | fault:stuck piston
wheel cylinder leaking | fault:fluid on linings, question:q087
brake fluid inside drum | fault:fluid on linings, question:q087
shoes soaked with brake fluid can i clean them | not here:cleaning
oil on brake shoes | fault:oil on one lining
axle seal leak onto brakes | fault:oil on one lining
gear oil in drum | fault:oil on one lining, question:q087
is it brake fluid or diff oil | question:q087
losing brake fluid no puddle | fault:fluid on linings
shoes shiny | fault:glazed, question:q070
can i sand glazed shoes | question:q070, fault:glazed
glazed linings | fault:glazed
grabs since i fitted new shoes | fault:lining ends, question:q066
shoes only touch at ends | fault:lining ends
shoes touch only in the middle | fault:oversize bore
brakes worse since new shoes | fault:oversize bore
drum machined now weak | fault:oversize bore
drum oval | fault:oval drum
warped drum | fault:oval drum, question:q086
how much ovality is ok | word:out of round, question:q086
rubs once every turn | fault:drum off centre
swishing sound once per revolution | fault:drum off centre
rubs in two places when i turn it | fault:oval drum
tight spot when turning wheel | fault:drum off centre, fault:oval drum, question:q076
drum wobbles on the hub | fault:drum off centre, fault:bearing
wheel wobbles play in wheel | fault:bearing
rumbling wheel bearing | fault:bearing
return spring broken | fault:weak springs
wrong springs fitted | fault:strong springs
spring in wrong hole | fault:strong springs
which way do springs go | question:q117, part:return spring
how does it all go back together | question:q117, station:new-shoes
shoes mixed up front and rear | fault:shoes swapped, question:q115, question:q116
can i swap front and rear shoe to even wear | question:q062
one shoe worn more than other | question:q057
shoe worn at one end only | question:q058
left brake worn more than right | question:q060
shoe worn on one edge | not here:rattle, question:q061
shoe upside down does it matter | question:q116, question:q115
which shoe goes to the front | question:q116, question:q055, word:leading shoe
pops when i press brake | fault:groove, question:q069
shoe catches on backing plate | fault:groove
grooves in backing plate | fault:groove
clunk when changing from reverse to forward | not here:clunk, question:q068
squealing drum brakes | not here:noise, question:q072, check:noise
brakes squeak | not here:noise, question:q072, check:noise
squeel from rear brake | not here:noise, question:q072, check:noise
grinding noise rear brakes | check:noise, question:q074, question:q071
metal on metal noise rear | check:noise, question:q071, fault:dead adjuster to the end, question:q059
groaning brakes | not here:noise, check:noise
rattling in drum | not here:rattle, question:q075
hold down pin missing | not here:rattle, part:hold-down
how thin can shoes get | station:inspect
how many mm lining left before change | question:q112, station:inspect, question:q111
3mm left how long will it last | question:q111, question:q112
4 mm left can i leave it | question:q112
max drum diameter where is it | question:q114, station:inspect
what does max dia mean on drum | question:q114, station:inspect
are my drums worn out | question:q085, station:inspect
do i need new drums | question:q085, station:inspect
can drum be skimmed | question:q084
how deep can a score in drum be | question:q084
drum grooved deep can i turn it | question:q084
cracked drum | not here:crack
measure brake drum | station:inspect, question:q085
never had drums off in 80000 miles | question:q113
how long do brake shoes last | question:q111, station:wear
piston popped out of wheel cylinder | fault:dead adjuster to the end, question:q088
wheel cylinder burst after fitting shoes | question:q089
can i press the brake with drum off | caution:piston, question:q079
is it safe to drive with one brake dragging | not here:safe
can i drive home like this | not here:safe
can i drive with grinding brakes | not here:safe
hub nut torque | not here:torque
how tight should hub nut be | not here:torque
which brake fluid do i use | not here:fluid grade
price of brake shoes | not here:prices
abs light on | not here:lamp
brake warning light | not here:lamp
brake booster hissing | not here:booster
electric handbrake stuck | not here:electric
front disc brake pads | not here:discs
caliper sticking | not here:discs
drum inside disc handbrake shoes | not here:in disc
drum in hat parking brake | not here:in disc
duo servo | not here:servo
is mine servo or leading trailing | station:kind, not here:servo
what type of drum brake do i have | station:kind
twin leading shoe brakes | not here:other kinds
how to bleed rear drums | not here:bleeding
which wheel bleed first | not here:bleeding
blow out brake dust with compressor | not here:dust, caution:wear
asbestos shoes | not here:dust
where do i put grease | not here:grease
can i change shoes on one side only | not here:one side
chamfer shoe ends | not here:chamfer
i don't know whats wrong with my brake | station:see
what is wrong with my brakes | station:see
my own sizes | station:own
drum is 203 mm can i enter that | station:own
lining came unstuck from shoe | not here:loose lining
roller test imbalance 40 percent | question:q081, check:braking
low effort one side on rollers | question:q080, question:q081, check:braking
what does the brake test printout mean | word:roller test
wheels lock but tester says low with new shoes | question:q100
steady pin | part:hold-down
what is the spreader bar for | part:strut
what is the pawl | part:toothed lever
starwheel | part:star wheel, question:q031
slave cylinder where | part:cylinder
bleed nipple snapped | not here:bleeding, part:bleed port
brake jam in one wheel | check:drag, fault:kept pull, fault:hose
liner finished | station:inspect, fault:dead adjuster to the end, question:q112
liner is soaked in brake oil | fault:fluid on linings, not here:cleaning
brakes sound like a foghorn | not here:noise, check:noise, question:q070
rear brakes wont bite | check:braking, fault:glazed
back brakes do nothing | check:braking, fault:glazed, fault:seized short, station:see
drum stuck on one side handbrake off | station:drum-off, question:q001, fault:kept pull
e brake pulls up too far | fault:stretched cable, check:lever, question:q097
emergency brake won't hold on incline | check:lever, question:q098
hand brake not catching | check:lever
handbrake feels loose | fault:stretched cable
nearside rear wheel red hot | check:drag, fault:kept pull
tyre burning smell rear nearside binding | check:drag, question:q045, fault:kept pull
one wheel wont turn since i put it back together | fault:strut mis-seated
wheel turns backwards but not forwards | fault:leaning part, question:q050
stiff one way easy the other | fault:leaning part, question:q056
shoes too big for drum | fault:lining ends, question:q012
self adjuster ratchet wont step | fault:seized short, question:q019, question:q017
adjuster wont adjust since new shoes | question:q019, fault:seized short
grease on the linings | fault:oil on one lining, not here:grease
gaiter on cylinder wet | fault:fluid on linings
rear brake drags only when loaded | fault:bearing, check:drag
what tool for the springs | caution:springs, question:q118
scared of springs flying off | caution:springs, question:q118
drum scored like a record | question:q084
brakes dont let go after hand brake used | fault:kept pull, question:q044, fault:stiff pivot
trommel sitzt fest drum stuck | station:drum-off
brake wire loose | fault:stretched cable
one side brake hot after new cable | fault:short cable, fault:kept pull, check:drag
wheel free when cold locks when hot | fault:port shut, question:q042
free when hot tight when cold | fault:stepped hot
`;

export interface Phrasing {
  readonly said: string;
  readonly leads: readonly string[];
}

/** Lines of "what is said | keys of what helps". */
export const listed = (text: string): readonly Phrasing[] =>
  text
    .trim()
    .split('\n')
    .map((line) => {
      const [said = '', leads = ''] = line.split(' | ');
      return { said, leads: leads.split(',').map((s) => s.trim()) };
    });

export const phrasings: readonly Phrasing[] = listed(all);
