import type { FaultId } from '../../../sim/index.ts';

/**
 * What is noticed of each fault, as it is told: by the pedal, the lever, the wheel in the hand, heat,
 * smell, noise, the rollers, the drum off, and what was done before. Written from what each fault shows.
 */
const told: Readonly<Record<FaultId, string>> = {
  'seized short': `
    pedal is low on both rear wheels and handbrake comes up high too
    handbrake thirteen notches and pedal long
    adjuster stuck solid both sides gap keeps growing
    every few months I have to adjust the brakes by hand
    I have to tighten the handbrake again and again
    adjuster screw rusted will not turn by hand
    threads of the adjuster frozen
    adjuster nut will not move
    star wheel rusted cannot turn it
    adjusters not doing anything any more
    pump the pedal and it comes up because of too much gap
    brakes out of adjustment all the time
    not heard a click for years
    auto adjusters gave up`,
  'worn teeth': `
    teeth of the adjuster chewed off
    ratchet jumps teeth
    adjuster loses its setting when parked
    notches differ from one day to the next
    handbrake good one day long the next
    clicks again after each parking
    first push of the day is low second is fine and I hear clicks
    adjuster teeth stripped it slips
    long pedal first thing then normal the rest of the day
    number of clicks on the lever changes daily`,
  'broken lever spring': `
    adjuster lever hangs down loose
    no spring on the adjuster lever
    little spring missing from the adjuster
    tiny spring found broken at the bottom of the drum
    lever of the adjuster does not touch the teeth
    pawl floppy
    nothing holds the lever against the star wheel
    thin spring rusted through`,
  'stepped hot': `
    brakes locked after they cooled down
    over night both rear wheels tight after hard braking
    handbrake suddenly only two notches and wheels tight
    adjuster clicked while the drum was hot
    clicked on the hill and now too tight
    went over the mountains and next day it would not move
    adjusted too much because the drum was hot
    wheels free while hot but wont turn when they are cold
    towing down the hill then brakes on tight next day`,
  'shoes swapped': `
    long shoe at the wrong end
    shoes on the wrong way front for back
    someone put the front shoe at the back
    the rear shoe is worn and the front one is thick
    leading lining thicker than trailing
    leading and trailing shoes wrong way round
    worn shoe put on the other side of the brake
    inspector says shoes are on backwards`,
  'wrong side': `
    left adjuster in the right brake
    adjusters crossed over
    adjuster from the other wheel
    right hand screw on the left side
    adjuster marked L fitted on the right
    adjuster unwinds itself
    star wheel goes the wrong direction when it adjusts
    pedal gets longer each time it should adjust
    mixed the two sides up when rebuilding
    parts stamped L and R which side`,
  'strut mis-seated': `
    strut jumped out of its slot
    end of the strut stands on the edge of the shoe
    spreader bar not in the slot of the shoe
    drum will only just go on and the wheel locks
    bar between the shoes came out of place
    one wheel solid after reassembly
    drum hard to get on one side after new shoes
    strut not sitting in the lever
    push rod slipped when I put the drum on`,
  'dead adjuster to the end': `
    piston came right out
    cylinder piston out of its bore fluid everywhere
    shoes and drum worn right out pedal hits the floor
    down to bare metal and pedal on the floor
    linings gone grinding and pedal drops to the floor
    worn past the limit and fluid came out
    never looked after and now no pedal and grinding
    pedal to the carpet and metal noise`,
  'short cable': `
    handbrake on at the first click
    adjusted the cable first now the shoes never adjust
    cable so tight the lever in the drum cannot go home
    after new cable wheels drag
    new handbrake cable too short
    someone tightened the cable instead of the shoes
    handbrake bites at once and wheels are tight
    since the cable was tightened the pedal gets longer
    no slack in the cable at rest
    arm in the drum not back on its stop both sides`,
  'kept pull': `
    rear wheel stays braked after the handbrake is let down
    lever down but cable still tight
    rusty cable does not slide back
    cable frozen inside the sleeve
    wheel frees when I shake the cable
    pushing the arm back by hand frees the wheel
    one wheel hot after parking with the handbrake
    handbrake frozen on in winter
    water in the cable froze overnight
    handbrake light off but still dragging
    cable has to be pushed back by hand
    rear wheel binding lever off
    arm at the drum not going back one wheel`,
  'stretched cable': `
    handbrake high but foot brake fine
    lever up to the elbow
    lots of clicks before it holds brakes are fine
    cable has gone long
    slack wire on the handbrake
    handbrake needs to be pulled right up
    nut at the equaliser needs tightening
    handbrake travel grew shoes are good
    handbrake needs more clicks than before pedal unchanged
    cable hangs loose under the car`,
  'stiff pivot': `
    arm on the shoe hard to move
    lever inside the drum moves stiffly
    handbrake arm returns slowly
    cable moves freely but the arm in the drum is stuck
    handbrake only works one side arm rusted
    pin of the handbrake lever rusted
    worked once and then slack
    lever in the drum stays out after the first pull
    arm does not spring back
    handbrake lever in the drum jammed after rain
    parking lever needs to be freed and greased`,
  'weak springs': `
    springs do not pull the shoes back properly
    tired springs
    springs have lost their tension
    shoes rattle against the drum springs are weak
    stretched return spring
    one spring is longer than the other
    springs got hot and went soft
    brake comes on too soon one side
    pull off spring missing
    spring found broken in the drum
    shoe does not retract by itself`,
  'strong springs': `
    new springs are too hard
    springs from another car fitted
    shoes pulled back too hard
    heavier springs fitted and brake comes in late
    one side late at gentle braking since new springs
    wrong colour of spring fitted
    brakes need more pedal since the spring kit`,
  'stuck piston': `
    one piston rusted into the cylinder
    piston will not push out on one side
    shoe does not move when someone presses
    low figure on the rollers one wheel better backwards
    car pulls to one side when braking forwards
    cylinder half seized
    only one shoe of the two is worn the other like new
    piston solid in the bore
    one cylinder does not push
    stood a long time cylinders rusty inside`,
  'sluggish pistons': `
    brakes come off slowly
    takes a few seconds to roll free after braking
    pistons move sluggish
    dirty cylinder pistons move slowly
    brake lags behind when released
    releases slow
    slow return of the shoes
    drags a moment after each stop
    sticky wheel cylinder
    shoe does not go back when the pedal is let go
    shoe does not retract`,
  'leaning part': `
    something is pushing one shoe against the drum
    wheel stiffer to turn forward than back
    drags in one direction only
    a bent part pushes the shoe
    bent backing plate pushes a shoe
    hard to turn forward easy backward
    one shoe always touching
    one shoe does not go back to rest`,
  hose: `
    wheel drags after the pedal and frees in minutes
    opened the bleeder and wheel came free
    cracked the nipple and it let go
    pressure trapped in the wheel
    hose is swollen closed inside
    old rubber hose acts as a one way valve
    brake holds on after stop and slowly lets go
    one rear wheel hot brake not releasing after pedal
    flexible hose failed inside
    wheel locked after braking free in the morning
    clamped the flexi and forgot
    drags on and off once it is warm one wheel
    shoe does not come back after pressing until the bleeder is opened`,
  'port shut': `
    brakes lock on gradually while driving
    brakes come on more and more then free when cool
    all four wheels hot
    pedal rises and gets hard on the road
    since the servo was changed brakes bind
    since the pedal was adjusted the brakes drag
    no play at the top of the pedal
    loosening the master cylinder frees the brakes
    opening a bleed screw frees all the wheels
    have to wait until it cools before it rolls
    new master cylinder and brakes stay on
    pedal rod adjusted too long
    every wheel drags after a few miles`,
  'other bore': `
    cylinders left and right are different
    one wheel cylinder bigger than the other
    wrong size slave cylinder
    pulls to the side with the new cylinder
    imbalance after a new cylinder
    bore stamped on the cylinder is not the same
    new cylinder says 22 the old one 19`,
  air: `
    pedal squashy after work on the brakes
    bubbles in the pipe
    soft pedal gets a bit better when pumped
    opened the hydraulics and now pedal is soft
    pedal feels like there is a spring in it
    bleeding did not help pedal still springy
    changed the cylinder and now pedal spongy
    pedal has no firm point
    pedal soft after fluid change
    rubbery pedal
    let the reservoir run dry`,
  'fluid on linings': `
    cylinder weeps under the boot
    boot full of fluid
    brake fluid dripping from the drum
    inside of the wheel is wet
    shoes wet with fluid
    one wheel brakes badly and it is wet inside
    have to top up the fluid often
    fluid level going down no leak to see
    wheel cylinder seals gone
    slave cylinder pissing out
    weak one side wet backing plate
    low on the rollers one wheel and wet`,
  'oil on one lining': `
    oil from the axle on one shoe
    axle grease got on the lining
    wheel bearing grease on the shoes
    black oil in the drum
    smells of gear oil in the drum
    rear axle seal gone oil on brakes
    handbrake weak one way on that wheel
    differential oil leaking into the brake
    holds going forward but not backward and oily inside
    one lining greasy the other dry`,
  glazed: `
    linings like glass
    pedal hard but it does not stop well
    shoes gone hard and shiny
    braking poor after lots of light braking
    brakes feel like wood
    press with all my might and it only slows
    both rear wheels weak on the tester pedal firm
    linings overheated and polished
    burnt linings no bite
    shiny spots on the shoes`,
  damp: `
    very sharp first thing in the morning
    first stop of the day nearly locks the wheels
    after standing in the wet the first press grabs
    light rust in the drum grabs once
    brakes snatch on a wet morning then normal
    rear skids at the first touch after rain
    locks the back wheels on a damp road first brake
    squeals and grabs in the morning then goes away
    fierce after washing the car`,
  'water inside': `
    drove through a flood and no brakes
    brakes did not bite after wading through water
    water splash and brakes useless for a while
    after rain brakes weak until dried
    brakes come back after a few presses in the wet
    after the car wash hardly any brakes
    after launching the boat brakes are poor
    deep puddle no braking`,
  'hot fade': `
    brakes gone at the bottom of the hill
    pedal gets longer going down the mountain
    brakes weak when hot fine when cold
    brake got weaker and weaker on the long descent
    smell and no brakes after the pass
    heavy trailer downhill lost the brakes
    brakes cooked after the descent
    fine again after they cooled
    brakes die when I use them a lot`,
  'oversize bore': `
    new shoes only touch in the middle
    contact patch in the centre of the lining
    drum is bigger than the shoes are made for
    drum was turned and the new shoes dont match
    new linings dont match the curve of the drum
    brakes poor after new shoes in old drums
    stopping worse since shoes were changed
    shoe curve tighter than the drum
    old drum with new shoes needs bedding`,
  'lining ends': `
    linings touch at both ends and not in the middle
    ends of the linings worn the middle untouched
    new shoes grab since fitting
    shoe curve too flat for the drum
    shoes made for a bigger drum
    lining radius larger than the drum
    brake grabs when cold since the new shoes
    relined shoes not ground to the drum
    arc of the shoe bigger than the drum`,
  'oval drum': `
    pedal pumps under my foot
    rubs in two places each turn
    tight twice per turn
    braking comes and goes twice each turn of the wheel
    drum measures different across
    two diameters not the same
    drum went oval from the handbrake while hot
    shudder at low speed when braking
    car shakes when I brake from the back
    wub wub in the seat when braking
    ovality figure on the test sheet is high
    brake force swings up and down on the rollers
    hard spots in the drum`,
  'drum off centre': `
    one scrape each turn of the wheel
    scuffs at the same place each time round
    drum sits off centre since it was refitted
    dirt or rust under the drum when it was fitted
    drum does not sit flush on the hub
    dial gauge moves once per turn
    tight at one spot and free for the rest
    brushing sound once each turn
    new bearing and now the drum rubs
    throbs once per turn`,
  lip: `
    drum comes out a bit and then hits something
    drum moves out half an inch and then stops dead
    slides off part way and catches on the shoes
    wear edge in the drum catches the linings
    it comes so far and no further
    shoes sit behind the ridge
    drum pulls out until it touches the shoes
    ridge on the open edge of the drum
    edges of the linings chewed by the drum edge
    worn groove in the drum keeps the shoes in
    drum hard to get off when the shoes are adjusted right because of the lip`,
  'hub rust': `
    drum goes round but will not come off the hub
    rusted in the middle at the hub
    wheel turns freely but drum is fast on the hub
    rust around the centre hole
    drum does not move outward at all
    stuck at the spigot
    corroded to the flange
    drum is off the shoes but will not leave the hub
    penetrating oil around the hub does not help
    no movement whatever when I pull the drum`,
  groove: `
    shoes catch in the backing plate
    notches worn where the shoes slide
    plate worn where the shoe edge rests
    shoe hangs in a groove then lets go
    nothing happens then it bites suddenly
    brake sticks in a groove of the plate after reversing
    pop from the brake on the first press
    ridges on the plate pads`,
  bearing: `
    hub has play top and bottom
    wheel wobbles when I shake it
    rocking the wheel clicks
    humming that gets louder with speed
    drone from the rear that changes in bends
    hub gets hot with the brake free
    drum rubs when the car is full of people
    rear wheel bearing worn
    play in the bearing makes the shoes rub
    bearing noise or brake noise`,
  'rusted on': `
    wheel stuck after the car stood outside for weeks
    not moved for a month and now a back wheel is locked
    left with the handbrake on and it will not roll
    shoes stuck to the drum with rust
    stood by the sea wheels stuck
    parked wet and now it wont move
    brakes stuck on after the winter
    came free with a bang
    let go with a crack when I drove off
    trailer stood for years brakes stuck
    back wheel slides along the ground without turning
    washed it and parked it next day wheels locked
    washed it and overnight it froze to the drum
    shoes frozen to the drums in the frost`,
};

/** Lines of a text, each without its margin. */
export const linesOf = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

export const toldOf = (id: FaultId): readonly string[] => linesOf(told[id]);
