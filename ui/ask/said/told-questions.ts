/** More of how people ask the questions, by their ids, each line as it would be said. */
export const toldQuestions: Readonly<Record<string, string>> = {
  q001: `
    drum comes part way and no further cable already undone
    comes out a finger width then it is held
    one side came off the other comes a bit and stops`,
  q002: `
    there is a little lever to be held off the cog how
    how do I push the catch away while I turn
    need two screwdrivers to wind it back
    keep the pawl clear of the star wheel
    lever stops me turning the wheel back
    is there a clip or plate to push away to free the star wheel
    do I push something to let the star wheel turn`,
  q003: `
    my backplate has no hole how do I loosen the shoes
    no inspection hole anywhere
    nowhere to get a screwdriver in
    adjuster cannot be reached from outside
    slacken the shoes without a hole`,
  q004: `
    is it up or down to loosen
    which way do I turn the wheel to slacken the shoes
    left side clockwise or not
    direction to loosen the adjuster on each side
    hub rust or wear ridge how do I tell`,
  q005: `
    heated it soaked it hammered it still on
    puller does not move it
    bending the drum with the puller nothing comes
    been at it for days with everything I have
    what is the last resort to get it off`,
  q006: `
    use two bolts to push the drum off
    what thread are the holes in the drum for
    screws in the drum face to force it off`,
  q007: `
    adjusted by counting turns of the wheel
    which rule of setting is right turns or gauge
    wheel must spin two turns rule`,
  q008: `
    poking about in the hole and cannot find the adjuster
    what does it look like through the hole
    where behind the hole is the lever
    working blind through the slot what do I feel`,
  q009: `
    cable was tightened and now the drum is held
    drum came off fine before the handbrake was adjusted`,
  q010: `
    spring loaded adjuster how do I put it back to zero
    reset a ratchet strut for new shoes
    one shoe is too far out drum hangs on it
    how do I set the toothed lever right back`,
  q011: `
    drum will not go home everything wound in
    drum stands off by a few mm
    had to force the drum on and now the wheel is stiff
    drum not fully seated why`,
  q012: `
    bought shoes and the drum is too small for them
    shoes thicker than the old ones
    new shoes do not fit inside the drum
    cannot get the drum over the new linings adjuster fully in
    are these the wrong shoes
    new shoes wider than the old ones
    new linings rub the backing plate`,
  q013: `
    only the cylinder is new and now it is tight
    replaced the slave and the drum wont go over`,
  q014: `
    bought a new drum it locked
    new drum tight is the cable too tight
    drum replaced and now it is stiff`,
  q015: `
    filed the lip away and now there is more travel
    second hand drum with the ridge removed`,
  q016: `
    what is the stepped thing with the spring on the arm
    how does the toothed lever take up the wear
    how does it know when to step
    what makes the adjuster move one tooth`,
  q017: `
    nothing turns the adjuster
    star wheel just spins and does nothing
    what is supposed to move it
    self adjuster does nothing how should it work`,
  q018: `
    ticking when I press the pedal
    is the click normal
    click from the back with each press
    how many clicks until it is quiet`,
  q019: `
    since the new shoes the lever comes right up and it does not ratchet
    pulling the handbrake does not adjust anything
    how do I get the adjuster to begin`,
  q020: `
    is it the shoes or the cable that is adjusted by itself
    does the auto adjuster take up the handbrake cable
    where does the self adjusting happen`,
  q021: `
    do I need to drive backwards to adjust
    brake hard in reverse to make it adjust
    does it take up when reversing`,
  q022: `
    nothing broken but both sides far out
    why did they not self adjust
    adjuster good yet there is a big gap`,
  q023: `
    what if the strut is left out
    brake without the strut what happens
    threaded rod fell out when I opened it
    loose bar in the drum where does it belong`,
  q024: `
    does it adjust by the handbrake
    adjust by pulling the lever many times
    handbrake never used is it out of adjustment`,
  q025: `
    wound out solid and it will not come back
    adjuster under tension cannot turn it back
    lever pushed away and still it will not turn
    too much load on the teeth`,
  q026: `
    turned it the wrong way and now it is jammed tight
    clicked the star wheel the wrong direction now locked
    tightened when I meant to loosen
    shoes hard on the drum by my mistake`,
  q027: `
    how many teeth must I go back
    number of clicks back to clear the drum
    how much does one tooth loosen`,
  q028: `
    gets tight by itself every few days
    brakes tighten up on their own after setting
    set it right and two days later it is hot again
    adjusts itself too far again and again
    why does it over adjust`,
  q029: `
    one tooth too many and it is tight
    last click made it drag
    was free until I pulled once more`,
  q030: `
    too tight after adjusting will it wear off
    can I drive until it rubs itself free
    leave it tight and let it wear`,
  q031: `
    star wheel springs back when I turn it
    only turns one way
    cog clicks one way and will not go the other`,
  q032: `
    is it up or down to tighten
    which way is tighter
    right hand or left hand thread on the adjuster
    adjuster upside down does it matter`,
  q033: `
    how much gap should I leave
    how tight to set them
    should it scrape a little
    is a bit of drag right on new shoes
    turn the wheel while adjusting until it just drags
    slight drag on new shoes ok or back it off`,
  q034: `
    locked the wheel with the adjuster pressed once and free again
    press the pedal and the shoes move to the middle
    shoes not in the middle after adjusting`,
  q035: `
    new cable and still it rolls
    cable as tight as it goes and it creeps`,
  q036: `
    tighten the handbrake at the lever or at the drum first
    what is adjusted first
    do the shoes and then the cable
    set up order of shoes and handbrake`,
  q037: `
    free by hand yet hot after a drive
    turns free on the stands and boils on the road
    nothing rubs on the jack but it gets hot`,
  q038: `
    smoke then all right when it cooled
    trapped pressure or cable or cylinder
    hot and stuck then free when cold`,
  q039: `
    how easily should the wheel turn
    how stiff is too stiff
    is it normal that it drags a bit by hand
    force at the tyre to turn the wheel
    how many times should it go round when I spin it
    wheel hard to turn how much is too much
    kilos to turn the wheel
    one wheel spins longer than the other
    hard to turn by hand but it rolls when driven`,
  q040: `
    one side warm the other stone cold
    is it normal that one drum is hotter
    temperature left and right differ`,
  q041: `
    how hot is too hot for a drum
    what temperature is normal after driving
    measured with a temperature gun
    degrees fahrenheit of the drum after a drive`,
  q042: `
    brakes lock on while I drive and free after an hour
    tight when warm free when cold all wheels
    more and more drag the further I go`,
  q043: `
    new shoes and one wheel too hot is that bedding in
    hot after the first drive with new shoes
    drags since new shoes and drums
    rebuilt the brakes and now both drag and smoke
    new shoes made the dragging worse`,
  q044: `
    handbrake never lets go completely
    linings worn on the inner side only and hot again`,
  q045: `
    smell when I stop at the lights
    stink from one wheel what do I check first
    burning smell after braking`,
  q046: `
    shoes slipped off the plate pads
    shoe came off its ledge`,
  q047: `
    drove miles with the handbrake on what is damaged
    forgot to release the parking brake
    handbrake was half on while driving`,
  q048: `
    brake hangs after every stop for a minute
    not letting go straight after a stop`,
  q049: `
    holds facing down but not facing up
    rolls back on the drive but not forward
    handbrake good one direction`,
  q050: `
    locks going forward turns going back no pressure
    one way lock`,
  q051: `
    why is it stronger forward
    which shoe works harder and why
    why does direction matter
    why is the brake weaker backwards`,
  q052: `
    jams after I reverse
    reversed out and then it was locked going forward
    hot after backing out
    drum locks up after going in reverse
    backed up and then the wheel was locked
    it locks when I reverse into the garage`,
  q053: `
    holds when I pull it still rolling
    stopped first then pulled and it creeps`,
  q054: `
    brakes stronger backwards
    poor forwards good backwards`,
  q055: `
    leading means touches first
    how do I recognise the leading shoe
    what is the difference between leading and trailing`,
  q056: `
    easier to turn back than forward on the stand
    stiff forwards and free backwards by hand`,
  q057: `
    is it normal that the front shoe wears more
    one shoe thin other thick
    leading shoe worn much more normal
    shoe at the front down to nothing the other nearly new`,
  q058: `
    lining is tapered along its length
    thicker at the top than at the bottom
    worn skew thick one end`,
  q059: `
    top half worn to the metal the rest is fine
    worn through only at the top`,
  q060: `
    one side of the car wears shoes faster
    shoes on the left gone on the right good`,
  q061: `
    worn on one edge and makes a noise
    outer edge of the lining thin`,
  q062: `
    change the shoes about to even the wear
    put the less worn shoe in front`,
  q063: `
    first brake in the morning grabs
    sharp when cold and damp is it dangerous`,
  q064: `
    wheel stuck after rain then cracked loose
    held on for a moment after wet weather`,
  q065: `
    rear wheel skids in the rain
    back wheels lock as soon as it is wet
    why does one back wheel lock in the wet`,
  q066: `
    new shoes bite too hard
    will grabbing bed in
    brakes too sharp after new shoes`,
  q067: `
    grabs and pulses is the drum oval
    after the rebuild one side grabs`,
  q068: `
    loud bang when I go forward after reversing and brake
    knock at the first stop after changing direction`,
  q069: `
    pop sound first press after parking
    crack from the drum when I first press`,
  q070: `
    sand the shiny shoes
    honking drum what does it
    sounds like a horn when stopping`,
  q071: `
    rivets rub on the drum
    bright spot where metal touches
    what touches metal to metal in the drum`,
  q072: `
    squeaky drum brakes what helps
    squeal every time I brake
    stop it squeaking`,
  q073: `
    noise when I let go the pedal
    squeak on letting up
    creak as the brake is released`,
  q074: `
    grinds with the foot not with the hand brake
    noise by pedal only`,
  q075: `
    rattling on bumps from the drum
    something shakes in the brake on bad roads`,
  q076: `
    rubs at one place is it the drum or the bearing
    catches at one point when I turn it
    scrape at one spot every turn`,
  q077: `
    shoes put right and now it goes to the other side
    pulled left now right`,
  q078: `
    car dives to one side since a cylinder was changed
    pulls after cylinder repair`,
  q079: `
    drum off someone presses and one shoe stays still
    only one side of the cylinder moves
    one piston moves the other does not`,
  q080: `
    tester shows little on one wheel
    nothing on one wheel by foot and lever
    low reading one rear wheel after the cable was adjusted`,
  q081: `
    too much difference left right on the brake test
    failed on brake balance
    imbalance percent at the inspection
    left wheel brakes half of the right on the rollers`,
  q082: `
    everything replaced and still no hold on a hill
    adjuster at its end and it still rolls`,
  q083: `
    brand new drum is not round
    new drum measures different two ways
    knock from a new drum`,
  q084: `
    is the score too deep
    groove I can hang a nail in
    both drums machined the same
    how much can be turned off
    drum lathe or new drum`,
  q085: `
    how do I tell whether the drum is done
    drum looks fine to the eye
    measure the drum where and how
    can I measure it with a tape`,
  q086: `
    how much ovality can a drum have
    rubs here and there after pumping
    0.1 mm out of round is that too much`,
  q087: `
    what is the wet stuff behind the brake
    brown oil or clear fluid
    grease or fluid in the drum
    leak at the back plate which liquid`,
  q088: `
    piston fell out of the wheel cylinder
    piston comes too far out
    pushed the piston out by accident`,
  q089: `
    wheel cylinder started to leak after new shoes
    did I adjust it too tight and burst the cylinder`,
  q090: `
    soft after I changed the slave cylinder
    is it air or is it adjustment
    pedal squishy what is it`,
  q091: `
    pedal low and master cylinder is new
    could badly adjusted drums make the pedal long
    far travel at every stop`,
  q092: `
    pedal still half way down after everything is new
    bled three times no better`,
  q093: `
    first press each day goes down
    morning pedal low then good`,
  q094: `
    drum tight over the shoes but pedal low
    lip makes me think it is adjusted`,
  q095: `
    second press is high
    pump and it is good do I need new shoes
    low pedal gets better when pumped
    pedal near the floor first and fine the second time`,
  q096: `
    shudder is it front or rear
    pedal pulses when slowing gently
    pedal kicks at my foot`,
  q097: `
    is the cable stretched or are the shoes worn
    lever slack what is it
    cable or shoes how do I tell`,
  q098: `
    rolls back at a hill start with the lever fully pulled
    pulled up hard and it still rolls
    does not hold on the ramp
    car rolls on the driveway
    handle right up and the truck still rolls`,
  q099: `
    too many clicks on the lever
    normal number of clicks
    fourteen clicks before it holds
    two clicks only
    clicks changed from three to seven
    garage changed the number of clicks`,
  q100: `
    roller test failed but wheels lock on the road
    parking brake efficiency low with new shoes
    new shoes failed the handbrake test`,
  q101: `
    fine on flat but not on steep
    does not hold on a very steep hill`,
  q102: `
    frozen handbrake in the cold
    brake will not release after a frosty night
    handbrake will not let go`,
  q103: `
    good at first then slack again
    handbrake went loose after one use`,
  q104: `
    no handbrake at all
    lever pulls up with no effect
    where to begin with a dead handbrake
    handbrake pulls up a long way and does nothing`,
  q105: `
    one back wheel holds and the other turns
    handbrake works left not right
    pull the lever and only one wheel locks`,
  q106: `
    bar under the car does not go back
    yoke stays crooked after release
    cables do not return by themselves`,
  q107: `
    stays on after standing on a hill
    brake grips after release on the slope until I roll back`,
  q108: `
    what hill should it hold by rule
    per cent slope for the parking brake`,
  q109: `
    both back wheels slide locked after long standing
    small play then locked after storage`,
  q110: `
    one wheel drags after standing two months
    single wheel stuck after storage`,
  q111: `
    how many miles do I have left
    life of the linings
    when do I have to change them
    how much life is left in the shoes`,
  q112: `
    is 2 mm enough
    shoes thin can they stay until summer
    how thin may they be
    rivets nearly showing
    lining nearly down to the rivets
    no lining left on the shoe
    no material left on one shoe`,
  q113: `
    brakes never opened handbrake fine
    high mileage and drums never off
    handbrake strong drums never opened leave it
    never had the drums off in years is that ok`,
  q114: `
    what is the number cast in the drum
    MAX on the drum what does it mean
    where do I read the biggest allowed size
    drum says max`,
  q115: `
    shoe on backwards does it matter
    how does he see that a shoe is the wrong way`,
  q116: `
    long shoe to the front or the back
    does the bigger lining go forward
    left and right shoes the same
    how do I tell the shoes apart
    which end of the shoe is up`,
  q117: `
    springs look the same which goes where
    which way round does it go together
    where does each spring hook in
    strut which end to the front
    does the adjuster have a left and a right`,
  q118: `
    worried about putting it together
    afraid of the springs
    took pictures and still lost`,
};
