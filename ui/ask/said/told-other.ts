/** More of what people say of stations, ways in, pages, words and what is not here, by the entry's key. */
export const toldOther: Readonly<Record<string, string>> = {
  'station:apply': `
    how does it work in simple words
    drum brakes explained for beginners
    show me the forces
    what pushes what
    where does the lining press hardest
    pressure along the lining
    show pressure on the shoe
    watch it brake slowly`,
  'station:wear': `
    watch it wear over the years
    drive it until it is worn out
    how fast do linings wear
    run a hundred thousand kilometres`,
  'station:drum-off': `
    drums wont budge
    back drum stuck fast
    been trying all morning to get the drum off
    drum will not move at all
    how to get a rusted drum off
    get drum off old pickup
    need the drum off what do I undo
    drum held by the shoes
    shoes hold the drum
    drum stuck what holds it
    does the handbrake have to be off to pull the drum
    hit it with a hammer and it stays on
    drum came half way
    trailer drum wont come off`,
  'station:park': `
    does it hold on a hill
    how steep can I park
    hill holding
    pull on the lever for a slope
    newtons at the lever to hold`,
  'station:inspect': `
    rivets showing is it worn out
    where do I measure the lining
    how to measure drum and shoes
    still good or bin
    what is the least lining
    print a sheet for measuring
    worksheet to write the sizes in
    record of measurements for the workshop
    is it worn out
    drum over its mark
    drum measures more than stamped
    minimum shoe thickness
    how little lining can I run
    do I need new drums
    are the drums finished
    lining crumbling or cracked
    check the cylinders for rust and leaks
    all looks good anything else to check
    how to check whether a shoe is bent
    bent shoe web`,
  'station:new-shoes': `
    put new shoes on
    shoe change guide
    set new shoes
    adjust without taking the wheel off
    adjust rear brakes
    brakes need adjusting how
    how to set up after fitting
    arcing shoes to the drum
    fit of new shoes in an old drum`,
  'station:faults': `
    look at what each fault does
    fault finding practice for students
    find the fault in a van
    guess the fault game
    set my class a fault`,
  'station:own': `
    photograph my brake and work it out
    take a photo of my brake
    use a picture of my brake
    put in my own measurements
    put my own brake sizes in
    my car has different sizes
    camera`,
  'station:questions': `
    what do other people ask
    common questions`,
  'station:see': `
    something is wrong what is it
    find the fault on my car
    tell it what I notice
    help me work out the cause
    I do not know what it is called`,
  'station:vary': `
    how does friction change the brake
    brake factor against friction curve
    what does a bigger drum do
    what happens with a longer lining
    change one size and see the effect
    graph`,
  'station:kind': `
    which adjuster is mine
    what sort of drum brake is this
    difference between simplex and duo servo
    wedge adjuster with small spring
    adjuster works when reversing or by handbrake
    how do I know which design I have`,
  'station:lessons': `
    something for apprentices
    teach drum brakes
    lesson plan
    material for the classroom`,
  'check:drag': `
    roasting hot wheel
    rim too hot to touch after a short trip
    wheel cooking
    car feels like something is holding it back
    it slows by itself when I let off
    car does not roll when I lift off
    it will not roll on by itself
    more fuel than before and stops quickly when coasting
    brakes dragging
    one wheel hotter than the others
    smoke from the back wheel in the drive
    burns my hand
    wheel jammed
    brake jamming
    wheel tight to turn
    wheel will not turn
    back brake stuck on
    drags and smells
    drags now and then after new shoes and drums
    intermittent drag once warm
    dragging thread shoes rub since the brake job
    feels like driving with the handbrake on
    wheel will not turn since the shoes were changed`,
  'check:pedal': `
    pedal goes too far
    pedal nearly flat before it grips
    half the pedal does nothing
    have to press twice
    pedal bites at the bottom
    pedal feels wrong
    brake pedal went down
    pedal dead at the top
    pedal hard
    pedal shakes
    brake pedal is bad
    pedal to the carpet`,
  'check:lever': `
    handbrake no use
    handbrake goes too far
    handbrake too far up
    park brake weak
    car rolls back at hill start
    handbrake does not grip on the ramp
    parking brake goes to the floor and still rolls
    handbrake up to the roof
    handle comes up too far
    only a few clicks and it drags
    lever has no resistance
    it will not hold one wheel
    one side holds the other does not`,
  'check:braking': `
    not stopping well
    poor stopping
    takes long to stop
    brakes too sharp
    car goes sideways when braking
    back end slides when I brake
    one rear wheel weaker on the tester
    brake force left and right differ
    stronger on one side
    test says nothing on one rear wheel`,
  'check:noise': `
    funny noise from the back
    scraping noise
    metal noise when reversing
    humming louder with speed
    shh shh each turn
    squeak when rolling not braking
    ticking while driving
    noise goes away when I touch the pedal
    what is this noise
    scraping that goes away when I tap the pedal`,
  'check:free': `
    can it wear itself free
    rubs a little after adjusting
    tight shoes will they ease
    how hot will it get if I drive it so
    how far can I go with a dragging brake
    slight rub after adjusting is it ok
    fuel used by a dragging brake`,
  'not here:sinking': `
    pedal sinks while waiting at a light
    pedal keeps going down while pressed
    pedal slowly falls when I hold it
    goes to the floor slowly when held`,
  'not here:safe': `
    can I still use the car
    may I drive with this
    how far can I drive with it
    is it dangerous to drive
    can it wait until next week`,
  'not here:loose lining': `
    lining loose on the shoe
    glue let go lining fell off
    friction material separated from the shoe`,
  'not here:crack': `
    drum does not ring when I knock it
    tapped the drum and it sounds dead
    drum sounds dull instead of ringing
    small cracks on the inside of the drum`,
  'not here:rattle': `
    shoes flap against the drum
    hold down springs weak or broken
    hold down pin has no tension`,
  'not here:in disc': `
    drum inside of a disc brake
    little drum in the rear disc`,
  'not here:servo': `
    big anchor pin on top of the brake
    one shoe short lining one long lining
    both shoes hang on one pin at the top
    which shoe is primary`,
  'not here:booster': `
    hard pedal since the engine
    no power assistance
    vacuum hose to the brakes`,
  'not here:legal': `
    percent needed to pass
    what do they allow at the inspection
    failed the annual test for the parking brake`,
  'not here:cleaning': `
    wash grease off the shoes
    clean the linings with petrol
    can oily shoes be saved
    brake shoes soaked can I clean them`,
  'not here:dust': `
    is the dust poisonous
    how to clean the drum of dust`,
  'not here:grease': `
    where does grease go
    grease on the backing plate where
    lubricate the points where the shoes slide`,
  'not here:one side': `
    do I change both sides
    just the left one
    only one drum machined`,
  'not here:noise': `
    squeals like a pig
    groan like a ship
    squeak in the morning`,
  'order:back': `
    adjust through the hole at the back with the wheel on
    loosen the shoes from behind
    slacken the adjuster with a screwdriver
    hold the lever off and turn the wheel back
    no hole how do I slacken it`,
  'order:apart': `
    what comes off first
    remove the shoes in order
    which tools do I need for the springs
    take off the hold down pin and cap
    take drum brake apart without losing anything
    unhook the springs`,
  'order:together': `
    parts left over after putting it together
    which spring goes on first
    where does each spring go
    put hold down pin and cap back
    which order to put the springs on
    refit everything
    fitting the springs back`,
  'order:set': `
    set the handbrake cable after the shoes
    what is set first shoes or cable
    correct adjustment how many turns should the wheel spin
    how tight should the wheel be after adjusting
    weight to turn the wheel at the tyre
    final setting`,
  'order:bed': `
    how far until new shoes grip
    how many kilometres until new shoes bite
    do I drive gently with new shoes
    run in new shoes`,
  'word:Leading shoe': `
    which one is leading
    front one or back one`,
  'word:Self-energising': `
    what does self energising mean
    why does it pull itself on`,
  'word:Clearance': `
    normal gap
    how far is the shoe from the drum`,
  'word:Bedding in': `
    how many km before new shoes grip properly
    when do new brakes get good
    new linings do not bite yet`,
  'word:Run-out of a piston': `
    how far may a piston come out`,
  'word:Out of round': `
    how much oval is too much`,
  'word:Fade': `
    why do brakes get weak when hot`,
  'word:Equaliser': `
    bar where the two cables join
    one cable longer than the other`,
  'word:Roller test': `
    brake test figures what do they mean
    machine that tests brakes
    left and right force on the test`,
  'caution:springs': `
    spring flew off
    spring shot across the room
    spring went flying what to watch out for
    springs hurt eyes`,
  'caution:wear': `
    black dust in the drum dangerous`,
  'caution:hot': `
    burnt my fingers on the wheel
    too hot to work on`,
  'caution:piston': `
    pressed the pedal without the drum
    piston pushed out`,
  'caution:stands': `
    only on the jack
    car fell off the jack`,
  'caution:drumOff': `
    how do I hold the car while the handbrake is off`,
  'part:hot lock': `
    why does it not click when the drum is hot
    no clicks while hot`,
  'reading:toeForceFront': `
    force at the tip of the shoe
    force on the toe`,
  'reading:linePressure': `
    pressure in the brake line
    at what pressure do the shoes touch
    bar or psi in the pipe`,
  'reading:pistonForce': `
    force of the wheel cylinder
    how hard does the piston push`,
  'reading:fluid': `
    how much fluid does a press use
    volume of fluid for one press`,
  'reading:temperature': `
    how hot is the drum now`,
  'reading:toNextTooth': `
    how far to the next click
    how far must the shoe move before it clicks`,
  'reading:brakeFactor': `
    brake factor number`,
};
