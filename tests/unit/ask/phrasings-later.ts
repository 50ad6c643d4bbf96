import { listed, type Phrasing } from './phrasings.ts';

/**
 * Phrasings written later, each before it was measured, with what must be among the first three. Of the
 * first 64 the list as it stood found 44 (69 %); after what they lacked was mended by general means
 * (ordinary words are no slips, the way in to which a word belongs, lessons, the work in its order, words
 * of workshops) it finds 61.
 */
const later = `
rear drum froze to the axle and it aint budging | fault:hub rust, station:drum-off
wheel goes round ok with the drum on but i cant slide it off the studs | fault:hub rust, fault:lip, station:drum-off
how do i collapse the shoes so the drum slips over them | question:q012, question:q010, question:q014, station:new-shoes, station:drum-off, order:back, question:q027, question:q004
poked a screwdriver through the slot, the little arm wont move | question:q025, question:q002, question:q008, order:back
is there another way if my backplate has no rubber plug | question:q003, order:back
got two m8 threads in the drum face, use em? | question:q006
ive slackened the handbrake nut right off and it still hangs on | fault:kept pull, question:q110, question:q001, question:q102, check:drag
pedal nearly hits the carpet before it does anything | check:pedal, question:q091, question:q095, fault:seized short
pumped it twice and now its high again | question:q095, check:pedal, fault:seized short
brakes feel like standing on a sponge since i swapped the cylinder | question:q090, fault:air
rock hard pedal and hardly slows | fault:glazed, not here:booster, check:braking, check:pedal
handle pulls up eleven notches before it bites | fault:stretched cable, question:q099, question:q097, check:lever, station:park
car crept down the driveway overnight with the lever up | check:lever, question:q098, station:park, question:q053
lever is fine on the flat but backing down the ramp it lets go | question:q049, question:q101, check:lever, station:park
handbrake only grabs one side | question:q105, fault:stiff pivot
handbrake stays on after i let it down | fault:kept pull, question:q102, question:q110
one back wheel stinks after a ten minute trip | question:q045, check:drag
can fry an egg on the left rear | check:drag, question:q040, question:q045, question:q028, question:q037, caution:hot
back wheel wont coast on the jack, other one spins for ages | check:drag, question:q039, question:q040
scrapes once per revolution when i spin it by hand | fault:drum off centre, question:q086, check:noise
steering wheel straight but it yanks to the right when i stop | check:braking, question:q077, question:q078
back end locks and slides in the wet | question:q065, fault:damp, question:q063, check:braking
after a car wash the first stop nearly threw me through the screen | fault:damp, question:q063
after the river crossing no brakes at all | fault:water inside
brakes went away coming down the pass | fault:hot fade, word:fade
thumping through the pedal at low speed | question:q096, fault:oval drum, fault:drum off centre
squeals like a pig every morning | question:q072, not here:noise, check:noise, fault:damp
metal grating sound from behind | check:noise, not here:noise, question:q071, question:q074
a loud bang when i go from reverse into drive and brake | question:q068, not here:clunk, not here:loose lining
brake fluid running down the inside of the wheel | fault:fluid on linings, question:q087, not here:sinking
rubber thing on the cylinder is torn | part:boot, fault:fluid on linings, question:q087
oil on the shoes from the diff | fault:oil on one lining, question:q087
what thickness do i chuck the shoes at | station:inspect, question:q112
number stamped on the drum, what does it mean | question:q114, station:inspect
drum has deep grooves, skim or bin | question:q084, station:inspect, question:q085
can i fit new shoes in a worn drum | fault:oversize bore, station:new-shoes
only want to do one side is that allowed | not here:one side
front shoe is down to nothing and the rear one looks new | question:q057
which shoe goes to the front | question:q116, fault:shoes swapped, question:q115, word:leading shoe, question:q055
long lining or short lining forward | not here:servo, word:leading shoe, question:q116
which hole does the top spring hook into | question:q117, order:together, part:upper spring
how do i get the return springs off without losing an eye | order:apart, caution:springs, question:q118, part:upper spring, part:return spring
what tool for the little hold down cups | order:apart, part:hold-down
in what order do the bits come off | order:apart, question:q118, question:q117
taking the brake apart step by step | order:apart, station:new-shoes
putting it all back together order | order:together, station:new-shoes
do i need to hold the pistons in | order:apart, caution:piston, question:q088
which way up does the spreader bar go | question:q117, order:together, question:q032
adjuster from the left wheel fitted on the right | fault:wrong side
how many clicks until it stops ratcheting after new shoes | question:q018, station:new-shoes, order:set
set the cable before or after pumping the pedal | question:q036, question:q035
how free should the wheel spin once its all back on | question:q039, order:set
run in procedure for new linings | word:bedding in, order:bed, station:new-shoes
how many stops to bed them | word:bedding in, order:bed, station:new-shoes
do i have to do a hundred miles gently | word:bedding in, order:bed, station:new-shoes
drum 203.4 mark 204 | station:inspect, question:q114, question:q084
lining 2 mm left good enough? | station:inspect, question:q112
handbrake 9 clicks | question:q099, fault:stretched cable, check:lever, station:park, question:q097
explain why the front shoe bites harder | lesson:self-energising, question:q051, word:self-energising, lesson:why-it-grows
a lesson about how the adjuster clicks | lesson:the-click
teach my class about parking on a hill | lesson:parking-both-ways
talk me through the whole thing | lesson:how-this-brake-works, station:apply
is it dangerous to breathe the black dust | caution:wear, not here:dust
can i stamp on the pedal while the drum is off to see it move | caution:piston, question:q079
`;

/** Written after that and left alone then: 23 of 32. Later mended for too, when newer ones were written. */
const once = `
drum gone solid on the stub after the winter | fault:hub rust, station:drum-off, fault:rusted on, question:q064
pulls off about five mill and then it catches | fault:lip, question:q001
cant find any hole to stick a blade in | question:q003, order:back, question:q008
my foot goes nearly flat before it grips | check:pedal, question:q091, question:q095, fault:seized short
spongy since i bled it | fault:air, question:q090
second push is fine first one is rubbish | question:q093, question:q095, fault:worn teeth, check:pedal
stick comes right up and the truck still rolls | check:lever, question:q098, question:q082, question:q019, question:q104
handle drops but the wheel stays tight | fault:kept pull, question:q102, question:q110, check:drag
left hub roasting after the school run | check:drag, question:q040, question:q045
smell of burning after the motorway | check:drag, question:q045
one wheel spins two turns the other six, ok? | question:q039, question:q040
grabby first thing then ok | question:q063, fault:damp
veers left under braking since new cylinder | question:q078, fault:other bore, check:braking
useless brakes after i drove through a flooded lane | fault:water inside
pedal shudders when slowing | question:q096, fault:oval drum
ticks every wheel turn | check:noise, fault:drum off centre, question:q086
boot on the cylinder is wet underneath | fault:fluid on linings, question:q087
what is the least lining i can run | station:inspect, question:q112
where do i read the biggest size the drum may have | question:q114, station:inspect
shoes ground too big for the drum | fault:lining ends
drum turned out by one mill, standard shoes ok? | fault:oversize bore, question:q084
which is the leading one | word:leading shoe, question:q055, question:q116
does it need reversing to take up | question:q021
order for fitting the springs back | order:together, question:q117
what to do before i take the drum off | order:apart, station:drum-off
how to stop the pistons popping out | order:apart, caution:piston, question:q088
how tight should the cable end up | question:q036, question:q035, order:set, station:park
how long before new linings bite properly | word:bedding in, order:bed, fault:oversize bore
drum 9.05 in, stamped 9.06 | figures:sheet
lining 1.4 mm | figures:sheet
lesson on why the gap grows | lesson:why-it-grows
something for my apprentices about fault finding | lesson:cheapest-reading, station:lessons
`;

export const mendedFor: readonly Phrasing[] = listed(later);
export const heldOut: readonly Phrasing[] = listed(once);
