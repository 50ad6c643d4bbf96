import { askGerman } from './ask-german.ts';
import type * as english from './en.ts';

/** German, made by machine and not yet read by a teacher: ui/decisions/2026-11-29-german-made-by-machine.md. */
export type Words = { readonly [Section in keyof typeof english]: (typeof english)[Section] };

/** Begins a name, and is no noun and none of the words with an ending that ADJECTIVE knows. */
const SMALL =
  /^(ab|also|alle|alles|als|am|an|anders|angehalten|auf|aus|außen|bei|beide|beim|bereits|bis|blind|das|dem|den|der|des|die|dies|dort|drei|drehbar|durch|ein|eine|einem|einen|einer|eines|einfach|einmal|erst|es|fertig|frei|für|ganz|gebremst|gefahren|gelöst|gemessen|geparkt|gerade|gleich|gleitend|halb|hier|hinten|hinter|hoch|höchstens|im|in|innen|innerhalb|jede|jeder|jedes|kalt|kein|keine|keiner|klein|kurz|lang|langsam|leer|leicht|links|mehr|mein|meine|mindestens|mit|nach|nass|neben|neu|nicht|nichts|nie|noch|nur|oben|offen|ohne|quer|rechts|richtig|rückwärts|schwach|schwer|sehr|seit|senkrecht|sofort|sonst|starr|still|stufenlos|trocken|über|überholt|um|und|unrund|unter|unten|verdeckt|viel|vier|vom|von|vor|vorn|vorwärts|wann|warum|was|weiter|wenig|wie|wo|worauf|woran|zu|zuerst|zum|zur|zurück|zwei|zwischen|ja|nein|so|sein|seine|etwas|oder|falsch|zehn|fünf|sechs|sieben|acht|neun|zieht|hält|klemmt|schleift|dreht|leistet|wird|kann|liegt|sitzt|trägt|lässt|schwingt|gedreht|gefragt|geschliffen|eingestellt|wohin|woher|wenn|beginnen|gewünscht|bestimmt)$/iu;
/** A word with an adjective's ending, before a noun that may have other such words before it, but no article: that makes it a noun. */
const ADJECTIVE =
  /^\p{Lu}[\p{Ll}-]*e[mnrs]? (?:(?!(?:de[mnrs]|die|eine[mnrs]?|jede[mnrs]?|ihre[mnrs]?|oder|aber|über|unter|hinter) )[\p{Ll}-]+e[mnrs]? )*(?:und [\p{Ll}-]+e[mnrs]? )?\p{Lu}\p{Ll}/u;
/** Nouns with such an ending that a name puts another noun behind, and the word that is capital wherever it stands. */
const NOUN =
  /^(backe|backen|bilder|bolzen|ende|enden|ihre|kurven|namen|zähne|bremse|bremsen|drehen|feder|federn|fehler|handbremse|hebel|länge|höhe|lager|leiste|nachsteller|neigung|reihenfolge|seite|seiten|stange|stufe|taste|trommel|zylinder)$/iu;

/** A name as it stands inside a sentence: nouns keep their capitals, all other words lose that of the beginning. */
function withinSentence(name: string): string {
  const first = /^\p{L}+/u.exec(name)?.[0] ?? '';
  const small = SMALL.test(first) || (ADJECTIVE.test(name) && !NOUN.test(first));
  return small && first.length > 1 ? `${name.charAt(0).toLowerCase()}${name.slice(1)}` : name;
}

/** What the teaching brakes' scenes say: their names, what they are, their springs, states and roads. */
const SCENE_NAMES = nameTable({
  New: 'Neu',
  'Worn-in': 'Eingelaufen',
  'Before a click': 'Vor einem Klick',
  'Just clicked': 'Eben geklickt',
  'Near the limit': 'Nahe der Grenze',
  'At its limit': 'An der Grenze',
  'Second set': 'Zweiter Satz',
  'Half worn': 'Halb verschlissen',
  'Mixed town': 'Gemischt in der Stadt',
  'Parcel rounds': 'Paketrunden',
  'Hill descents': 'Bergabfahrten',
  Motorway: 'Autobahn',
  'With a trailer': 'Mit Anhänger',
  'Mostly parked': 'Meist geparkt',
  'Bench driving': 'Fahrt auf der Werkbank',
  'School run': 'Schulweg',
  'Hill farm': 'Berghof',
  'Farm tracks': 'Feldwege',
  'Ferry lane': 'Fährgasse',
  'Ferry rounds': 'Fährrunden',
  'upper return spring': 'obere Rückzugfeder',
  'lower return spring': 'untere Rückzugfeder',
  'Quay van': 'Kai-Transporter',
  'Bench brake': 'Werkbankbremse',
  'Farm trailer': 'Hofanhänger',
  'Ferry runabout': 'Fährwagen',
  "Cut-open brake on the trade school's bench: two shoes on pins, a toothed lever that takes one tooth a press.":
    'Aufgeschnittene Bremse auf der Werkbank der Berufsschule: zwei Backen auf Bolzen, ein Zahnhebel, der je Tritt einen Zahn nimmt.',
  'Overrun-braked trailer of a hill farm: two shoes on pins, a screw strut with a star wheel, one tooth a press.':
    'Auflaufgebremster Anhänger eines Berghofs: zwei Backen auf Bolzen, eine Gewindedruckstange mit Sternrad, ein Zahn je Tritt.',
  'Loan car of the Ferry Lane garage: shoes that slide on sloped abutments, a stepless wedge.':
    'Leihwagen der Werkstatt an der Fährgasse: Backen, die auf schrägen Widerlagern gleiten, ein stufenloser Keil.',
  "Rear brake of the parcel co-operative's small vans in Varrow Harbour: two shoes on pins, a toothed lever that takes up all passed teeth in one press.":
    'Hinterradbremse der kleinen Transporter der Paketgenossenschaft von Varrow Harbour: zwei Backen auf Bolzen, ein Zahnhebel, der alle überstiegenen Zähne in einem Tritt nimmt.',
  'All stops alike, forward, the drum cool at each.':
    'Alle Bremsungen gleich, vorwärts, die Trommel jedes Mal kühl.',
  'As if it were on the road: stops of the town, a few in reverse.':
    'Als wäre sie auf der Straße: Bremsungen der Stadt, einige rückwärts.',
  'A long slope again and again, to see the drum grow.':
    'Ein langes Gefälle, immer wieder, um die Trommel wachsen zu sehen.',
  'Laden down, empty up: wet tracks, and reversing into yards.':
    'Beladen hinunter, leer hinauf: nasse Wege, und rückwärts in Höfe.',
  "From the hill farm to the harbour with the trailer's own brakes holding it.":
    'Vom Berghof zum Hafen, gehalten von den eigenen Bremsen des Anhängers.',
  'Short stops in the lanes, the ramp in reverse, the hand lever on deck.':
    'Kurze Bremsungen in den Gassen, die Rampe rückwärts, der Handhebel an Deck.',
  'Few stops, from speed.': 'Wenige Bremsungen, aus hoher Fahrt.',
  'Left out on the quay: damp linings and short errands.':
    'Auf dem Kai stehen gelassen: feuchte Beläge und kurze Wege.',
  "The harbour's streets: many gentle stops, yards in and out, one wet day in four, the hand lever at every door.":
    'Die Straßen am Hafen: viele sanfte Bremsungen, in Höfe hinein und hinaus, jeder vierte Tag nass, an jeder Tür der Handhebel.',
  'The roads down to the harbour, most of them gentle, now and then the steep one.':
    'Die Straßen hinunter zum Hafen, die meisten flach, ab und zu die steile.',
  'Long runs inland: few stops, from speed.':
    'Lange Fahrten ins Land: wenige Bremsungen, aus hoher Fahrt.',
  'A laden trailer without brakes behind: more to stop, and hotter drums.':
    'Ein beladener Anhänger ohne Bremsen dahinter: mehr anzuhalten, und heißere Trommeln.',
  'Short errands from the quay: damp linings, a cold drum, and a pull of the lever each time.':
    'Kurze Wege vom Kai: feuchte Beläge, eine kalte Trommel, und jedes Mal ein Zug am Hebel.',
});

function nameTable(names: Record<string, string>): Readonly<Record<string, string>> {
  return names;
}

const german: Words = {
  language: {
    /** Names, one after the other. */
    and: (all: readonly string[]) => all.join(' und '),
    inside: (name: string) => withinSentence(name),
  },

  /* Single words of several parts. */
  readingNames: {
    clearanceBothLinings: 'Lüftspiel, beide Beläge',
    clearanceAtRestBoth: 'Lüftspiel in Ruhe, beide Beläge',
    strutForce: 'Kraft in der Druckstange',
    strutPlaySensed: 'Gefühltes Spiel der Druckstange',
    drumDiameter: 'Durchmesser der Trommel',
    drum: 'Trommel',
    drumsFaceInStop: 'Lauffläche bei einer solchen Bremsung',
    distance: 'Strecke',
    leverOffStop: 'Bremshebel von seinem Anschlag',
    waterOnDrum: 'Wasser auf der Trommel',
    rustOnDrum: 'Rost auf der Trommel',
    frontGlazed: 'Vorderer Belag verglast',
    rearGlazed: 'Hinterer Belag verglast',
    pedalTravel: 'Pedalweg',
    ofItFreePlay: 'davon Leerspiel',
    ofItGaps: 'davon zum Schließen der Spalte',
    ofItGive: 'davon Nachgeben im Kreis',
    pedalForce: 'Pedalkraft',
    fluidTaken: 'Flüssigkeit für diese Bremse',
    travelLeft: 'Kolbenweg bis zum Austritt',
    brakeFactor: 'Bremsenkennwert, nach den Federn',
    brakeFactorFull: 'Bremsenkennwert, volle Kolbenkraft',
    leading: 'Auflaufend',
    trailing: 'Ablaufend',
    brakeTorque: 'Bremsmoment',
    linePressure: 'Leitungsdruck',
    pistonForceEach: 'Kolbenkraft, je Kolben',
    leftOnToe: 'Nach den Federn an der Spitze',
    pistonTravel: 'Kolbenweg',
    drag: 'Reibkraft am Umfang',
    highestPressure: 'Höchste Pressung',
    clearance: 'Lüftspiel',
    clearanceAtRest: 'Lüftspiel in Ruhe',
    liningLeft: 'Restbelag',
    liningLeftAbove: 'Restbelag über der Grenze',
    forceAtAnchor: 'Kraft am Widerlager',
    adjusterTooth: 'Zahn des Nachstellers',
    adjusterStep: 'Schritt des Nachstellers',
    neededTooth: 'Nötig für den nächsten Zahn',
    neededStep: 'Nötig für den nächsten Schritt',
    toothClimbed: 'Zahn erstiegen',
    stepClimbed: 'Schritt erstiegen',
    ofTeeth: (all: string) => `von ${all}`,
    pullOf: (spring: string) => `Zug: ${SCENE_NAMES[spring] ?? spring}`,
    spring: 'Feder',
  },

  readingFormulas: {
    strut: 'S aus dem Gleichgewicht beider Backen',
    toNextTooth: 'Totgang + (2 − Feder) · (L(n+1) − L(n))',
    climbed: '(s − L − Totgang) / (L(n+1) − L(n))',
    driven: 'Summe der gefahrenen Abschnitte',
    hook: 'Weg des Hakens',
    spring: 'F_s = eingebaut + Federrate · Dehnung',
    pedal: 'x_pedal = i · (Leerspiel + (V_pistons + C · p) / A_master)',
    freePlay: 'i · Leerspiel',
    helped: 'F_pedal = (p · A_master − Hilfe) / i',
    stroke: 'Hub − x',
    toe: 'x = Spitze jetzt − Spitze in Ruhe',
    pressure: 'p = E / t · Eindringung',
    gap: 'g = R − Fläche des Belags',
    gapAtRest: 'g_0 = R − Fläche des Belags',
    lining: 't = t_new − Verschleiß',
    anchor: 'R_a = −Σ aller anderen Kräfte auf die Backe',
    water: 'Film − E / (ρ · A · (c · 80 K + L))',
    rust: 'Film − E · k_r / (A · μ)',
    glaze: 'heiße leichte Bremsungen − abgetragene Tiefe',
  },
  studyNames: {
    stoppingDistance: 'Bremsweg',
    meanDeceleration: 'Mittlere Verzögerung',
    timeOfStop: 'Dauer der Bremsung',
    gripNeeded: 'Haftung, die die Reifen brauchen',
    brakingOfAxle: 'Bremskraft dieser Achse auf der Straße',
    shareOfAxle: 'Anteil dieser Achse',
    energyOfStop: 'Energie der Bremsung in dieser Bremse',
    drumWarmer: 'Trommel davon wärmer',
    faceWarmer: 'Lauffläche davon wärmer, am heißesten',
    torqueNeeded: 'Moment, das jede Bremse braucht',
    pressureNeeded: 'Nötiger Leitungsdruck',
    pedalForceNeeded: 'Nötige Pedalkraft',
    dragReleased: 'Schleifmoment der gelösten Bremse',
    itsPower: 'Seine Leistung bei dieser Geschwindigkeit',
    moreRolling: 'Mehr Rollwiderstand am Reifen',
    ofLevelRoad: 'Vom Bedarf der ebenen Straße',
    drumSettles: 'Trommel erreicht',
    slipForward: 'Rutschmoment, rollt vorwärts',
    slipBackward: 'Rutschmoment, rollt rückwärts',
    slopeDown: 'Gehaltene Steigung, Nase bergab',
    slopeUp: 'Gehaltene Steigung, Nase bergauf',
    pivotOnShoe: 'Drehzapfen auf seiner Backe',
    handNotches: 'Rasten des Handhebels',
    pullAtHand: 'Zug am Handhebel',
    torqueOfSlope: 'Moment, das die Steigung fordert, je Rad',
    linePressure: 'Leitungsdruck',
    pullOfCable: 'Zug am Handbremsseil',
    toothOfAdjuster: 'Zahn des Nachstellers',
    wornEvenly: 'Von beiden Belägen verschlissen, gleichmäßig',
    drumAsIs: 'Durchmesser der Trommel, wie sie ist',
    temperatureOfDrum: 'Temperatur der Trommel',
    leverHeldOff: 'Bremshebel vom Anschlag gehalten',
    strengthOfSprings: 'Stärke aller Rückzugfedern',
    frictionOfCups: 'Reibung jeder Manschette über die der Bremse hinaus',
    drumOval: 'Trommel unrund, Radius ±',
    drumOffCentre: 'Trommel außermittig',
    pressureKept: 'Druck, der in der Leitung bleibt',
    teethTaken: 'Zähne, die eine solche Betätigung nimmt',
    drivenToClick: 'Fahrt bis zum nächsten Klick',
    gapAtClick: 'Lüftspiel kurz vor dem nächsten Klick',
    drivenToLimit: 'Fahrt bis zur ersten Grenze',
    hillTeeth: 'Zähne zu viel nach der heißesten Abfahrt',
    hillGap: 'Lüftspiel am Morgen nach der heißesten Abfahrt',
  },
  labelWords: {
    adjuster: 'Nachsteller',
    axis: 'Achse',
    back: 'Zurück',
    backward: 'Rückwärts',
    bar: 'Hebel',
    bearing: 'Lager',
    before: 'Davor',
    begin: 'Beginnen',
    board: 'Tafel',
    bore: 'Bohrung',
    brake: 'Bremse',
    browse: 'Durchsehen',
    cable: 'Seilzug',
    caption: 'Bildunterschrift',
    captions: 'Untertitel',
    caution: 'Vorsicht',
    clearance: 'Lüftspiel',
    click: 'Klick',
    clip: 'Clip',
    comb: 'Kamm',
    cylinder: 'Zylinder',
    dark: 'Dunkel',
    data: 'Daten',
    date: 'Datum',
    density: 'Dichte',
    dials: 'Stellgriffe',
    diameter: 'Durchmesser',
    difference: 'Unterschied',
    distance: 'Strecke',
    done: 'Fertig',
    drawing: 'Zeichnung',
    drum: 'Trommel',
    equaliser: 'Ausgleichshebel',
    events: 'Ereignisse',
    explain: 'Erklären',
    faces: 'Flächen',
    factor: 'Faktor',
    fade: 'Fading',
    figure: 'Bild',
    file: 'Datei',
    forces: 'Kräfte',
    forward: 'Vorwärts',
    friction: 'Reibwert',
    from: 'Von',
    gapOfCuts: 'Spiel',
    ghost: 'Schattenbild',
    group: 'Gruppe',
    hand: 'Hand',
    heat: 'Wärme',
    hose: 'Schlauch',
    kept: 'Behalten',
    kerf: 'Schnittbreite',
    key: 'Schlüssel',
    leading: 'Auflaufend',
    left: 'Links',
    legend: 'Legende',
    lessons: 'Lektionen',
    light: 'Hell',
    lining: 'Belag',
    lip: 'Grat',
    look: 'Aussehen',
    loop: 'Schleife',
    loupe: 'Lupe',
    mass: 'Masse',
    moment: 'Augenblick',
    name: 'Name',
    names: 'Namen',
    notch: 'Raste',
    notches: 'Rasten',
    now: 'Jetzt',
    observe: 'Sehen',
    off: 'Ab',
    pedal: 'Pedal',
    picture: 'Bild',
    pins: 'Stifte',
    pistons: 'Kolben',
    pivot: 'Drehpunkt',
    plate: 'Platte',
    play: 'Abspielen',
    polygons: 'Kraftecke',
    predict: 'Vermuten',
    pressure: 'Druck',
    rate: 'Federrate',
    reading: 'Messwert',
    readings: 'Messwerte',
    right: 'Rechts',
    rigid: 'Starr',
    row: 'Zeile',
    share: 'Teilen',
    sheet: 'Blatt',
    sheets: 'Blätter',
    shoe: 'Backe',
    shoes: 'Backen',
    shortly: 'In Kürze',
    size: 'Größe',
    slope: 'Steigung',
    spring: 'Feder',
    springs: 'Federn',
    stations: 'Stationen',
    step: 'Schritt',
    stop: 'Anhalten',
    stopped: 'Steht',
    strip: 'Bildstreifen',
    strut: 'Druckstange',
    studs: 'Radbolzen',
    table: 'Tabelle',
    talks: 'Vorträge',
    temperature: 'Temperatur',
    thickness: 'Dicke',
    title: 'Titel',
    tooth: 'Zahn',
    trailing: 'Ablaufend',
    transcript: 'Mitschrift',
    turned: 'Gedreht',
    undo: 'Rückgängig',
    undone: 'Rückgängig gemacht',
    unit: 'Einheit',
    value: 'Wert',
    vehicle: 'Fahrzeug',
    web: 'Steg',
    wedge: 'Keil',
    what: 'Was',
    why: 'Warum',
    width: 'Breite',
    with: 'Mit',
    without: 'Ohne',
    yours: 'Eigene',
  },

  /* Groups of questions, in ui/questions/. */
  questionGroups: {
    off: 'Trommel geht nicht ab',
    on: 'Trommel geht nicht drauf',
    how: 'Wie der Nachsteller arbeitet',
    far: 'Zu weit nachgestellt',
    drag: 'Schleifen und Hitze',
    ways: 'Vorwärts und rückwärts',
    park: 'Handbremse',
    cylinder: 'Zylinder und Undichtigkeit',
    round: 'Trommel verschlissen oder unrund',
    grab: 'Rupfen und Blockieren',
    limits: 'Grenzen und Lebensdauer',
    noises: 'Geräusche',
    pedal: 'Pedal',
    side: 'Zieht zur Seite',
    setting: 'Einstellen',
    wear: 'Verschleiß',
    which: 'Welche Backe wohin',
  },

  /* sim/scene/adjuster.ts */
  sceneAdjuster: {
    strutFromSeatToSeat: 'Druckstange von Sitz zu Sitz bei Zahn 0',
    slotPlay: 'Spiel im Langloch',
    stepsFromZeroToThe: 'Schritte von null bis zum Ende',
    mostStepsInOneApplication:
      'Höchste Zahl der Schritte bei einer Betätigung; ohne Angabe so, wie es die Art vorsieht',
    forceAtTheStrutWhile: 'Kraft an der Druckstange, während ein Zahn überstiegen wird',
    temperatureAboveWhichTheLever: 'Temperatur, über der der Hebel festgehalten wird',
    whatItStepsOn: 'Worauf er einen Schritt macht',
    evenGrowthOfTheStrut: 'Gleichmäßige Verlängerung der Druckstange je Schritt',
    springThatPressesTheLever:
      'Feder, die den Hebel in seine Zähne drückt; aus ihr folgt die Kraft beim Übersteigen',
    rateAlongTheSlot: 'Federrate längs des Langlochs',
    forceAlongTheSlotWith: 'Kraft längs des Langlochs, der Hebel in seinen Zähnen',
    whereItsCoilSitsOn: 'Wo ihre Windung auf der Druckstange sitzt, vom Hebelbolzen aus',
    geometryOfTheToothedLever: 'Geometrie des Zahnhebels, anstelle einer Teilung',
    leverPinInTheZero: 'Hebelbolzen in der Nullstellung',
    pinToNose: 'Bolzen bis Nase',
    noseFromTheStrutAxis: 'Nase bis Achse der Druckstange bei Zahn 0',
    turnOfOneTooth: 'Drehung um einen Zahn',
    pinToToothRoot: 'Bolzen bis Zahnfuß',
    heightOfATooth: 'Höhe eines Zahns',
    directionOfTooth0From:
      'Richtung von Zahn 0 vom Bolzen aus; wird in alten Dateien gelesen, die Zähne stehen quer zur Druckstange',
    fingerWidth: 'Breite des Fingers',
    windowHeight: 'Höhe des Fensters',
    kindOfAdjuster: 'Art des Nachstellers',
    noInA: (input: unknown, kind: unknown) => `kein ${input} bei der Art ${kind}`,
    aKind: (adjusterKinds: string) => `eine Art: ${adjusterKinds}`,
    strutAndAdjusterWhichKeys:
      'Druckstange und Nachsteller; welche Schlüssel es gibt, hängt von der Art ab',
  },

  /* sim/scene/duty.ts */
  sceneDuty: {
    howOften: (about: string) => `Wie oft ${about}`,
    aDuty: 'Ein Einsatz',
    atMostLetters: (long: number) => `höchstens ${long} Zeichen`,
    whatItIs: 'Was es ist',
    trueOrFalse: 'true oder false',
    whetherTheDrumHeatsAnd:
      'Ob die Trommel sich erwärmt und abkühlt; sonst bleibt sie, wie sie ist',
    massThatIsStoppedThe: 'Masse, die angehalten wird; ohne Angabe die des Fahrzeugs',
    itsKindsOfStops: 'Seine Arten von Bremsungen',
    oneKindOfStop: 'Eine Art von Bremsung',
    stoppedFrom: 'Gebremst aus',
    linePressureOrGiveA: 'Leitungsdruck; oder eine Verzögerung angeben',
    decelerationOrGiveAPressure: 'Verzögerung; oder einen Druck angeben',
    itComes: 'es vorkommt',
    shareOfThemInReverse: 'Anteil davon rückwärts, 0 bis 1',
    hillsDrivenDownWithThe: 'Gefällestrecken, auf denen die Bremsen die Geschwindigkeit halten',
    aHill: 'Eine Gefällestrecke',
    lengthAlongTheRoad: 'Länge entlang der Straße',
    speedHeld: 'Gehaltene Geschwindigkeit',
    leavingTheVehicleParked: 'Abstellen des Fahrzeugs',
    pullOfEachCable: 'Zug an jedem Seilzug',
    itIsLeft: 'es abgestellt wird',
    whatTheCableIsTightened: 'Um wie viel der Seilzug gespannt wird',
    filmOfRustThatA: 'Rostfilm, den eine Trommel nach dem Stehen hat',
    surfacesThatAShareOf: 'Oberflächen, die ein Teil der Bremsungen vorfindet',
    aSurface: 'Eine Oberfläche',
    stateOfTheLinings: 'Zustand der Beläge',
    shareOfTheStops0: 'Anteil der Bremsungen, 0 bis 1',
    filmThatThoseStopsFind:
      'Film, den diese Bremsungen auf der Trommel vorfinden, Wasser bei Nässe und Rost bei Feuchte, und der sich in den folgenden verliert; ohne Angabe bleibt die Oberfläche nur für eben diese Bremsungen',
  },

  /* sim/scene/films.ts */
  sceneFilms: {
    usual: 'schwach: daraus errechnet, wie bald nasse und rostige Bremsen wieder sind wie zuvor',
    filmsOfWaterRustAnd: 'Filme aus Wasser, Rost und Verglasung, und wie sie vergehen',
    waterOnTheDrum: 'Wasser auf der Trommel',
    thicknessFromWhichItCounts: 'Dicke, ab der er voll zählt',
    rustOnTheDrum: 'Rost auf der Trommel',
    archardCoefficientOfTheRust: 'Archard-Koeffizient des Rosts',
    glazeOfTheLiningsIt: 'Verglasung der Beläge; ohne Angabe kommt sie nicht und geht nicht',
    drumHotterThanThis: 'Trommel heißer als dies',
    liningPressedLessThanThis: 'Belag schwächer gepresst als dies, im Mittel',
    energyBrakedSoThatMakes: 'So gebremste Energie, die sie vollständig macht',
    depthWornOffALining: 'Abgetragene Belagdicke, mit der sie verschwindet',
    whereTheseNumbersComeFrom: 'Woher diese Zahlen stammen',
  },

  /* sim/scene/finding.ts */
  sceneFinding: {
    foundAllowed: (path: string, found: string, allowed: string, reason: string) =>
      `${path}: gefunden ${found}; erlaubt: ${allowed}${reason}`,
  },

  /* sim/scene/heat.ts */
  sceneHeat: {
    usual: 'übliche Größenordnungen für Grauguss und gepresste Beläge, aus dem Gedächtnis',
    conductivityOfHeat: 'Wärmeleitfähigkeit',
    specificHeat: 'Spezifische Wärme',
    howHeatGoesThroughDrum: 'Wie die Wärme durch Trommel, Beläge und Backen geht',
    stuffOfTheDrumGrey: 'Werkstoff der Trommel; ohne Angabe Grauguss',
    stuffOfTheLiningsA: 'Werkstoff der Beläge; ohne Angabe ein gepresster',
    shoesThatWarmThroughTheir: 'Backen, die sich durch ihre Beläge erwärmen; ohne Angabe kalt',
    heatCapacityOfBothShoes:
      'Wärmekapazität beider Backen; ohne Angabe die von Stahl gleicher Masse',
    heatThatBothShoesGive: 'Wärme, die beide Backen an die Luft abgeben',
    thermalExpansionOfTheirSteel: 'Wärmedehnung ihres Stahls',
    thermalExpansionOfTheLinings: 'Wärmedehnung der Beläge',
    whereTheseNumbersComeFrom: 'Woher diese Zahlen stammen',
  },

  /* sim/scene/hydraulics.ts */
  sceneHydraulics: {
    growthOfThisAxlesPressure:
      'Anstieg des Drucks dieser Achse gegenüber dem des Hauptzylinders oberhalb des Knicks',
    pedalAndCircuit: 'Pedal und Bremskreis',
    boreOfTheMasterCylinder: 'Bohrung des Hauptzylinders',
    pedalRatio: 'Pedalübersetzung',
    freePlayAtThePush: 'Leerspiel an der Kolbenstange',
    giveOfTheRestOf: 'Nachgiebigkeit des übrigen Bremskreises',
    strokeOfTheMasterCylinder: 'Hub des Hauptzylinders bis zum Ende',
    boosterNoneWhenLeftOut: 'Bremskraftverstärker; ohne Angabe keiner',
    pushOnTheMastersPiston: 'Kraft am Hauptzylinderkolben gegenüber der vom Fuß',
    forceOfTheFootAt: 'Fußkraft, bei der seine Hilfe erschöpft ist',
    travelAtThePushRod: 'Weg an der Kolbenstange, bevor er hilft',
    aKneeThatStays: 'Ein Knick, der bleibt',
    theKneeIsAlwaysThe: 'Der Knick ist immer derselbe',
    pressureFromWhichItHolds: 'Druck, ab dem es mindert',
    aKneeThatGoesWith: 'Ein Knick, der mit der Last geht',
    aRodOrSpringTo: 'Eine Stange oder Feder zur Achse verschiebt den Knick',
    pressureFromWhichItHolds2: 'Druck, ab dem es mindert, Fahrzeug leer',
    theSameWithTheVehicle: 'Dasselbe, Fahrzeug beladen',
    load0EmptyTo1: 'Last, 0 leer bis 1 beladen',
    aKindFixedOrLoad: 'eine Art: fixed oder load',
    valveThatHoldsThisAxles: 'Ventil, das den Druck dieser Achse mindert; ohne Angabe keines',
    twoCircuitsFromATandem:
      'Zwei Bremskreise aus einem Tandem-Hauptzylinder; ohne Angabe einer für alle',
    oneCircuitAnAxleOr: 'Ein Kreis je Achse, oder jeder mit einer Bremse von beiden Achsen',
    giveOfTheLinesOf:
      'Nachgiebigkeit der Leitungen zu den Bremsen dieser Achse, als Teil der gesamten',
    strokeOfThePistonOf: 'Hub des Kolbens im Kreis dieser Achse bis zum Ende',
    circuitThatHoldsNoPressure: 'Kreis, der keinen Druck hält',
    pressureThatAValveKeeps:
      'Druck, den ein Ventil nach dem Lösen in der Leitung dieser Achse hält',
    howFarItsSealDraws:
      'Wie weit die Dichtung jeden Kolben beim Lösen von seiner Backe zurückzieht',
  },

  /* sim/scene/issues.ts */
  sceneIssues: {
    moreFindings: (length: number) =>
      length === 1 ? `${length} weiterer Befund` : `${length} weitere Befunde`,
    anUnknownKey: 'ein unbekannter Schlüssel',
    thisKeyIsNeeded: 'dieser Schlüssel ist nötig',
  },

  /* sim/scene/migrations/from-1.ts */
  sceneMigrationsFrom1: {
    allStopsAlikeForwardThe: 'Alle Bremsungen gleich, vorwärts, die Trommel jedes Mal kühl.',
  },

  /* sim/scene/migrations/migrate.ts */
  sceneMigrationsMigrate: {
    theFileWasMadeBy: (version: number) =>
      `${version}: die Datei stammt von einem neueren Programm`,
    of1To: (version: number) => `1 bis ${version}`,
  },

  /* sim/scene/parts.ts */
  sceneParts: {
    plain: 'reine Zahl',
    whole: 'ganze Zahl',
    text: 'Text',
    oneOf: (of: readonly string[]) => [of.slice(0, -1).join(', '), ...of.slice(-1)].join(' oder '),
    aNumber: 'eine Zahl',
    aFiniteNumber: 'eine endliche Zahl',
    atLeast: (min: number) => `mindestens ${min}`,
    atMost: (max: number) => `höchstens ${max}`,
    moreThan0: 'mehr als 0',
    aWholeNumber: 'eine ganze Zahl',
    textThatIsNotEmpty: 'Text, der nicht leer ist',
    atMostLetters: (most: number) => `höchstens ${most} Zeichen`,
    anObject: 'ein Objekt',
    thisKeyIsNeeded: 'dieser Schlüssel ist nötig',
    onlyTheKeysOfThe: (meant: string) =>
      `nur die Schlüssel des Formats; am nächsten kommt ${meant}`,
    onlyTheKeysOfThe2: (known: string) => `nur die Schlüssel des Formats: ${known}`,
    aList: 'eine Liste',
    atLeast2: (least: number) => `mindestens ${least}`,
    atMost2: (most: number) => `höchstens ${most}`,
  },

  /* sim/scene/rubbing.ts */
  sceneRubbing: {
    frictionOnTheDrumCold: 'Reibwert auf der Trommel, kalt',
    twoLetters: 'zwei Buchstaben',
    twoLettersFromCTo: 'zwei Buchstaben von C bis H, etwa FF',
    lettersOfTheLiningsEdge:
      'Buchstaben des Kantencodes am Belag, kalt und heiß (SAE J866): genommen wird die Mitte des kalten Bands; die Tabellen müssen zum heißen führen',
    aNumberOrTwoLetters: 'eine Zahl oder zwei Buchstaben, etwa FF',
    frictionOnTheDrumCold2: 'Reibwert auf der Trommel, kalt: eine Zahl oder zwei Buchstaben',
    frictionThatHangsOnPressure:
      'Reibung, die von Druck und Geschwindigkeit abhängt: F = K·P^a·V^b; ohne Angabe konstant',
    a1WhenFrictionGoes: 'a: 1, wenn die Reibung mit dem Druck geht',
    b0WhenItDoes: 'b: 0, wenn sie nicht von der Geschwindigkeit abhängt',
    meanPressureOfALining: 'Mittlere Pressung eines Belags, für die sein Reibwert angegeben ist',
    speedOfTheVehicleAt: 'Fahrgeschwindigkeit, für die sein Reibwert angegeben ist',
    whereTheExponentsComeFrom: 'Woher die Exponenten stammen',
  },

  /* sim/scene/rules/adjuster.ts */
  sceneRulesAdjuster: {
    strutBetweenSeatsName: 'Druckstange zwischen den Sitzen',
    strutBetweenSeatsReason:
      'Ganz zurückgestellt liegt die Druckstange mit wenig Spiel zwischen ihren Sitzen und lässt die Trommel aufsetzen.',
    betweenSeatsApartInThe: (lengthAtZero: string, seats: string) =>
      `${lengthAtZero} zwischen Sitzen im Abstand ${seats} in der Bezugsstellung`,
    to: (seats: string, seats2: string) => `${seats} bis ${seats2}`,
    pitchOrLeverName: 'Teilung oder Hebel',
    pitchOrLeverReason: 'Die Verlängerung je Schritt wird nur einmal angegeben.',
    pitchAndLeverBothGiven: 'Teilung und Hebel beide angegeben',
    eitherAPitchOrA: 'entweder eine Teilung oder ein Hebel, nicht beides',
    neitherPitchNorLever: 'weder Teilung noch Hebel',
    aPitchInMmA: 'eine Teilung in mm je Schritt oder die Geometrie des Hebels',
    climbToldOnceName: 'Übersteigkraft nur einmal',
    climbToldOnceReason:
      'Was die Sitze vom Übersteigen eines Zahns spüren, folgt aus der Feder des Hebels.',
    nBesideTheLeversSpring: (climbForce: number) => `${climbForce} N neben der Feder des Hebels`,
    eitherASpringOrA: 'entweder eine Feder oder eine Übersteigkraft, nicht beides',
    teethRunForwardName: 'Zähne laufen vorwärts',
    teethRunForwardReason: 'Jeder Schritt macht die Druckstange länger.',
    atLeastAStep: (finest: string) => `mindestens ${finest} je Schritt`,
    theTeethWouldRunBackwards: (toothAngle: unknown) =>
      `${toothAngle}°: die Zähne liefen rückwärts`,
    moreThan0: 'mehr als 0°',
    theLastToothAt: (last: string) => `der letzte Zahn bei ${last}°`,
    atMost175PastThat: 'höchstens 175°: darüber lässt die Nase die Druckstange kürzer werden',
    growthInReachName: 'Verlängerung im Rahmen',
    growthInReachReason:
      'Eine Druckstange, die noch länger wird, würde die Backen durch die Trommel drücken.',
    thatMakeTheStrutLonger: (teeth: number, growth: string) =>
      `${teeth}, die die Druckstange um ${growth} verlängern`,
    atMostHalfAsMuch: (most: string) =>
      `höchstens ${most}, das Anderthalbfache dessen, was zwei durchverschlissene Beläge brauchen`,
    stepsInOneName: 'Schritte bei einem Tritt',
    stepsInOneReason: 'Es werden nicht mehr Schritte gemacht, als es gibt.',
    atMostTheTeethThere: (teeth: number) => `höchstens ${teeth}, die vorhandenen Zähne`,
    slotPlayName: 'Spiel im Langloch',
    slotPlayReason:
      'Mit mehr Spiel, als ein verschlissenes Paar aufnimmt, würde der Nachsteller nie einen Schritt machen.',
    atMostWhatTwoLinings: (most: string) =>
      `höchstens ${most}, was zwei durchverschlissene Beläge brauchen`,
    leverInDrumName: 'Hebel in der Trommel',
    leverInDrumReason: 'Der Zahnhebel dreht sich innerhalb der Trommel.',
    withTeethOutToFrom: (place: string, reach: string) =>
      `${place}, mit Zähnen bis ${reach} von der Achse`,
    insideTheDrumUnder: (bore: string) => `innerhalb der Trommel, unter ${bore}`,
    noseAtTheName: 'Nase an der Druckstange',
    noseAtTheReason:
      'Die Nase des Hebels drückt die vordere Backe durch deren Fenster, dort, wo die Druckstange liegt.',
    aNoseAboveTheAxle: (y: string) => `eine Nase ${y} über der Achse`,
    theFrontSeatsToWithin: (seat: string, window: string) =>
      `wie der vordere Sitz, ${seat}, bis auf die halbe Höhe des Fensters, ${window}`,
    teethToHoldName: 'Zähne, die halten',
    teethToHoldReason:
      'Zähne müssen grob genug sein, um zu halten, und niedrig genug, um überstiegen zu werden.',
    teethApart: (pitch: string) => `Zähne im Abstand ${pitch}`,
    atLeast: (finesttooth: string) => `mindestens ${finesttooth}`,
    atMostOnTeethApart: (steepest: string, pitch: string) =>
      `höchstens ${steepest} bei Zähnen im Abstand ${pitch}`,
  },

  /* sim/scene/rules/cylinder.ts */
  sceneRulesCylinder: {
    wallOfTheName: 'Wand des Zylinders',
    wallOfTheReason: 'Die Wand um die Bohrung hält den Druck.',
    atMostInACylinder: (outerDiameter: string, outerDiameter2: string) =>
      `höchstens ${outerDiameter} in einem Zylinder von ${outerDiameter2}`,
    cylinderInDrumName: 'Zylinder in der Trommel',
    cylinderInDrumReason: 'Der Radzylinder sitzt innerhalb der Trommel, über der Nabe.',
    aCornerFromTheAxis: (place: string, far: string) =>
      `${place}, eine Ecke ${far} von der Achse entfernt`,
    insideTheDrumUnder: (bore: string) => `innerhalb der Trommel, unter ${bore}`,
    downToAboveTheAxis: (place: string, low: string) =>
      `${place}, bis ${low} über der Achse herunter`,
    overTheHubMoreThan: (hubRadius: string) => `über der Nabe, mehr als ${hubRadius}`,
    cylinderBetweenTablesName: 'Zylinder zwischen den Kränzen',
    cylinderBetweenTablesReason: 'Die Kränze enden neben dem Radzylinder.',
    anEndAtXOver: (inner: string, far: string) =>
      `ein Ende bei x ${inner}, über einem Zylinder, der bis ${far} hinausreicht`,
    anEndBesideTheCylinder: (at: string) => `ein Ende neben dem Zylinder, jenseits von x ${at}`,
    strutUnderCylinderName: 'Druckstange unter dem Zylinder',
    strutUnderCylinderReason:
      'Die Druckstange geht zwischen Nabe und Radzylinder von Steg zu Steg.',
    aboveTheAxle: (strutSeat: string) => `${strutSeat} über der Achse`,
    underTheCylinder: (low: string) => `unter dem Zylinder, ${low}`,
    pistonsInCylinderName: 'Kolben im Zylinder',
    pistonsInCylinderReason:
      'Jeder Kolben hat seine Hälfte des Zylinders und bleibt über seinen ganzen Hub darin.',
    atMostHalfOfThe: (length: string) => `höchstens ${length}, die halbe Länge des Zylinders`,
    toeOnTheName: 'Spitze auf der Zylinderachse',
    toeOnTheReason:
      'Ein Kolben drückt längs seiner Achse; eine Spitze daneben würde ihn verkanten.',
    aboveTheAxle2: (toe: string) => `${toe} über der Achse`,
    theCylindersToWithin: (y: string, off: string) => `wie der Zylinder, ${y}, bis auf ${off}`,
    toeOutsideTheName: 'Spitze außerhalb des Zylinders',
    toeOutsideTheReason: 'Die Spitzen stehen an den beiden Enden des Zylinders.',
    outsideTheCylindersEndAt: (end: string) => `außerhalb des Zylinderendes bei x ${end}`,
    travelWithinStrokeName: 'Weg innerhalb des Hubs',
    travelWithinStrokeReason:
      'Mit neuen Belägen müssen die Kolben diese andrücken, bevor sie aus dem Zylinder treten.',
    thePistonTravelsToThe: (clearance: string, side: 'front' | 'rear', travel: string) =>
      `${clearance}: der ${side === 'front' ? 'vordere' : 'hintere'} Kolben legt ${travel} bis zur ersten Berührung zurück`,
    aTravelWithinTheStroke: (stroke: string) => `ein Weg innerhalb des Hubs von ${stroke}`,
  },

  /* sim/scene/rules/drum.ts */
  sceneRulesDrum: {
    drumLimitOverName: 'Trommelgrenze über neu',
    drumLimitOverReason: 'Eine Trommel wird immer nur größer.',
    atLeastDiameterNew: (diameterNew: string) => `mindestens diameterNew, ${diameterNew}`,
    drumLimitWithinName: 'Trommelgrenze innerhalb der Wand',
    drumLimitWithinReason: 'Ist mehr als die halbe Wand abgedreht, platzt oder reißt eine Trommel.',
    atMostHalfOfThe: (diameterNew: string, rim: string) =>
      `höchstens ${diameterNew}, auf jeder Seite die Hälfte der Wand von ${rim}`,
    rimOnDrumName: 'Wand der Trommel',
    rimOnDrumReason: 'Das ist die Wand der Trommel, nicht die ganze Trommel.',
    atMost: (bore: string) => `höchstens ${bore}`,
    lipUnderLimitName: 'Grat unter der Grenze',
    lipUnderLimitReason: 'Der Grat ist der Rand, den kein Belag abgetragen hat.',
    atMostDiameterMax: (diameterMax: string) => `höchstens diameterMax, ${diameterMax}`,
    lipAsWideName: 'Grat so weit wie neu',
    lipAsWideReason:
      'Eine neue Trommel hat keinen Grat: ihr Rand ist so weit wie ihre Bohrung, bis auf die Gusshaut.',
    atLeast98OfDiameter: (diameterNew: string) => `mindestens ${diameterNew}, 98 % von diameterNew`,
    outOfRoundName: 'Unrundheit in der Grenze',
    outOfRoundReason:
      'Eine Trommel, die um mehr als ihren Verschleiß unrund läuft, ist nicht mehr dieselbe Trommel.',
    atMost2OfDiameter: (diameterNew: string) => `höchstens ${diameterNew}, 2 % von diameterNew`,
    hubInsideDrumName: 'Nabe in der Trommel',
    hubInsideDrumReason:
      'Backen, Zylinder und Druckstange stehen um die Nabe, innerhalb der Trommel.',
    atMostSixTenthsOf: (bore: string) => `höchstens ${bore}, sechs Zehntel des Trommelradius`,
    webClearOfName: 'Steg frei von der Nabe',
    webClearOfReason: 'Die Nabe dreht sich zwischen den Stegen der Backen.',
    inToFromTheAxis: (webDepth: string, inner: string) =>
      `${webDepth}, nach innen bis ${inner} von der Achse`,
    underClearOfTheHub: (webRadius: string) => `unter ${webRadius}, frei von der Nabe`,
    studsOnHubName: 'Radbolzen auf der Nabe',
    studsOnHubReason: 'Die Radbolzen sitzen in der Nabe, nebeneinander.',
    studsOutTo: (studCircle: string) => `Radbolzen bis ${studCircle} nach außen`,
    atMostTheHub: (hubRadius: string) => `höchstens die Nabe, ${hubRadius}`,
    ofOnACircleOf: (studs: number, studRadius: string, pi: string) =>
      `${studs} von ${studRadius} auf einem Kreis von ${pi}`,
    asManyAsHaveRoom: 'so viele, wie nebeneinander Platz haben',
    plateBehindDrumName: 'Ankerplatte hinter der Trommel',
    plateBehindDrumReason: 'Die Ankerplatte schließt die Trommel: sie ist etwa gleich groß.',
    toForThisDrum: (bore: string, bore2: string) => `${bore} bis ${bore2} für diese Trommel`,
    accessHoleInName: 'Schauloch in der Trommel',
    accessHoleInReason: 'Das Loch führt zum Nachsteller, innerhalb der Trommel.',
    aHoleOutToFrom: (reach: string) => `ein Loch bis ${reach} von der Achse nach außen`,
    insideTheDrumUnder: (bore: string) => `innerhalb der Trommel, unter ${bore}`,
    anchorPinInName: 'Lagerbolzen im Auge',
    anchorPinInReason: 'Das Auge der Backe dreht sich auf dem Bolzen, der Bolzen geht hindurch.',
    underTheEyes: (eyeRadius: string) => `unter dem des Auges, ${eyeRadius}`,
    pinsBesideEachName: 'Bolzen nebeneinander',
    pinsBesideEachReason: 'Zwei Bolzen können nicht an derselben Stelle stehen.',
    fromTheFrontOne: (off: string) => `${off} vom vorderen`,
    atLeastApart: (bore: string) => `mindestens ${bore} Abstand`,
    wheelOverDrumName: 'Rad über der Trommel',
    wheelOverDrumReason: 'Das Rad geht über die Trommel.',
    moreThanTheDrumsOutside: (outside: string) => `mehr als die Außenseite der Trommel, ${outside}`,
    ironOfTheName: 'Eisen der Trommel',
    ironOfTheReason:
      'Eisen hält die Wärme: eine Trommel mit weniger als einem Zehntel dessen, was ihre Wand hat, wäre Folie.',
    atLeastJKA: (ceil: number) =>
      `mindestens ${ceil} J/K, ein Zehntel einer Eisenwand dieser Größe`,
  },

  /* sim/scene/rules/duty.ts */
  sceneRulesDuty: {
    dutyOfItsName: 'Einsatz mit eigenem Namen',
    dutyOfItsReason: 'Ein Einsatz wird nach seinem Namen gewählt.',
    pressureOrDecelerationName: 'Druck oder Verzögerung',
    pressureOrDecelerationReason: 'Eins folgt aus dem anderen.',
    neitherPressureNorDeceleration: 'weder Druck noch Verzögerung',
    pressureAndDeceleration: 'Druck und Verzögerung',
    oneOfTheTwo: 'eins von beiden',
    pressureToLockName: 'Druck für das Blockieren',
    pressureToLockReason:
      'Bei der ersten Bremsung des ersten Einsatzes wird gefragt, ob die Backen blockieren.',
    aDeceleration: 'eine Verzögerung',
    aPressure: 'ein Druck',
    sharesOfTheName: 'Anteile des Wetters',
    sharesOfTheReason: 'Die übrigen Bremsungen sind trocken.',
    sharesThatAddUpTo: (shares: number) => `Anteile, die zusammen ${shares} ergeben`,
    atMost1Together: 'zusammen höchstens 1',
    filmsOfWaterName: 'Filme aus Wasser und Rost',
    filmsOfWaterReason:
      'Regen und Rost liegen auf einer Trommel und vergehen; Verglasung und Fett kommen nicht mit einer Bremsung.',
    aFilmOf: (surface: 'damp' | 'dry' | 'glazed' | 'greasy' | 'wet') => `ein Film bei ${surface}`,
    aFilmOfWetOr: 'ein Film bei wet oder damp',
    descentsOnTheName: 'Gefällestrecken auf der Straße',
    descentsOnTheReason: 'Es geht nicht mehr Straße bergab, als es gibt.',
    kmOfDescentInEach: (down: number) => `${down} km Gefälle je km`,
  },

  /* sim/scene/rules/friction.ts */
  sceneRulesFriction: {
    cAfterC: (row: number, before: unknown) => `${row} °C nach ${before} °C`,
    risingTemperatures: 'steigende Temperaturen',
    tablesRiseName: 'Tabellen steigen',
    tablesRiseReason: 'Eine Tabelle wird von kalt nach heiß gelesen.',
    lettersAsTheName: 'Buchstaben wie in den Tabellen',
    lettersAsTheReason:
      'Der zweite Buchstabe eines Belags ist sein heißer Reibwert, und den geben die Tabellen an.',
    byFrictionAgainstTemperature: (friction: string, letters: string, hot: string) =>
      `"${friction}", nach frictionAgainstTemperature ${letters} (${hot} heiß)`,
    orATableThatLeads: (letters: string, friction: string) =>
      `${letters}, oder eine Tabelle, die zu ${friction} führt`,
    frictionOfAName: 'Reibwert eines Belags',
    frictionOfAReason: 'Kein Belag greift härter als das, heiß oder feucht.',
    upToByItsTables: (friction: string | number, friction2: string) =>
      `${friction}, nach seinen Tabellen bis ${friction2}`,
    atMostWithAllFactors: (most: number) => `mit allen Faktoren höchstens ${most}`,
  },

  /* sim/scene/rules/hydraulics.ts */
  sceneRulesHydraulics: {
    linesOfTheName: 'Leitungen des ganzen Bremskreises',
    linesOfTheReason: 'Die Leitungen dieser Achse sind ein Teil des ganzen Bremskreises.',
    atMostTheWholeCircuits: (circuit: number) =>
      `höchstens die des ganzen Bremskreises, ${circuit} mm³/MPa`,
    strokeForBothName: 'Hub für beide Kreise',
    strokeForBothReason: 'Jeder Kreis hat seinen Teil vom Hub des Hauptzylinders.',
    lessThanTheWholeStroke: (masterStroke: string) => `weniger als der ganze Hub, ${masterStroke}`,
    kneeThatRisesName: 'Knick, der mit der Last steigt',
    kneeThatRisesReason: 'Eine beladene Achse darf stärker gebremst werden als eine leere.',
    atLeastTheEmptyVehicles: (kind: number) =>
      `mindestens so viel wie beim leeren Fahrzeug, ${kind} bar`,
    residualPressureUnderName: 'Restdruck unter den Federn',
    residualPressureUnderReason:
      'Die Federn ziehen die Backen gegen den Druck zurück, der in der Leitung bleibt.',
    atMostBarWithThe: (a: string, side: 'front' | 'rear') =>
      `höchstens ${a} bar mit den Federn der ${side === 'front' ? 'vorderen' : 'hinteren'} Backe`,
  },

  /* sim/scene/rules/lining.ts */
  sceneRulesLining: {
    liningArcName: 'Bogen des Belags',
    liningArcReason:
      'Eine Backe belegt höchstens die halbe Trommel und einen Streifen von einiger Länge.',
    afterFrom: (to: number, from: number) => `${to}° nach from ${from}°`,
    moreThanFromBy2: 'mehr als from, um 2° bis 175°',
    liningOnItsName: 'Belag auf seiner Seite',
    liningOnItsReason:
      'Die vordere Backe steht links der Achse, die hintere rechts: sonst liegen beide an einer Stelle.',
    allowed: (low: number, high: number) => `${low}° bis ${high}°, die eigene Hälfte der Trommel`,
    tableUnderLiningName: 'Kranz unter dem Belag',
    tableUnderLiningReason: 'Der Belag ist auf ganzer Länge auf den Kranz geklebt oder genietet.',
    toUnderALiningFrom: (tableArc: number, tableArc2: number, from: number, to: number) =>
      `${tableArc}° bis ${tableArc2}° unter einem Belag von ${from}° bis ${to}°`,
    atLeastTheLiningsArc: 'mindestens der Bogen des Belags',
    tableOnItsName: 'Kranz auf seiner Seite',
    tableOnItsReason: 'Die Kränze der beiden Backen reichen nicht über die Linie zwischen ihnen.',
    to: (tableArc: number, tableArc2: number) => `${tableArc}° bis ${tableArc2}°`,
    fromLessThanToWithin: (low: number, high: number) =>
      `from kleiner als to, innerhalb ${low}° bis ${high}°`,
    liningWidthName: 'Breite des Belags',
    liningWidthReason: 'Keine Trommel ist tiefer als das Anderthalbfache ihres Radius.',
    atMostInThisDrum: (bore: string) => `höchstens ${bore} in dieser Trommel`,
    websUnderLiningName: 'Stege unter dem Belag',
    websUnderLiningReason: 'Die Stege stehen nebeneinander unter dem Kranz.',
    ofWeb: (webs: string) => `${webs} Steg`,
    atMostTheLiningsWidth: (width: string) => `höchstens die Breite des Belags, ${width}`,
    liningLimitReason: 'Ein Belag verschleißt von neu bis auf seine Grenze.',
    lessThanThicknessNew: (thicknessNew: string) => `weniger als thicknessNew, ${thicknessNew}`,
    liningInDrumName: 'Belag in der Trommel',
    liningInDrumReason: 'Belag, Kranz und Steg müssen zwischen Trommel und Nabe passen.',
    onATableOf: (thicknessNew: string, tableThickness: string) =>
      `${thicknessNew} auf einem Kranz von ${tableThickness}`,
    atMostTogetherInThis: (bore: string) => `zusammen höchstens ${bore} in dieser Trommel`,
    rivetsInLiningName: 'Niete im Belag',
    rivetsInLiningReason: 'Nietköpfe sind im Belag versenkt.',
    slopeInLiningName: 'Schräge im Belag',
    slopeInLiningReason:
      'Ein abgeschrägtes Ende ist in den Belag geschnitten, nicht durch ihn hindurch.',
    atEachEnd: (chamferArc: number) => `${chamferArc}° an jedem Ende`,
    lessThanHalfTheArc: 'weniger als der halbe Bogen',
    atEachEnd2: (cutEdgeArc: number) => `${cutEdgeArc}° an jedem Ende`,
    groundRadiusName: 'Schleifradius',
    groundRadiusReason:
      'So weit neben dem Radius der Trommel geschliffen, würde er nie in sie passen.',
    toForThisDrum: (r: string, r2: string) => `${r} bis ${r2} für diese Trommel`,
    liningEndsOverName: 'Belagenden über der Grenze',
    liningEndsOverReason:
      'Zu klein geschliffen, wären seine neuen Enden so dünn wie ein verschlissener Belag.',
    whichLeavesAtTheEnds: (groundRadius: string, ends: string) =>
      `${groundRadius}, das lässt an den Enden ${ends}`,
    asMuchAsLeavesMore: (thicknessMin: string) =>
      `so viel, dass dort mehr als thicknessMin bleibt, ${thicknessMin}`,
    drumGoesOnName: 'Trommel geht auf',
    drumGoesOnReason:
      'Mit neuen Belägen und ganz zurückgestelltem Nachsteller muss sich die Trommel aufsetzen lassen.',
    atRestAnEndStands: (groundRadius: string, worst: string) =>
      `${groundRadius}: in Ruhe steht ein Ende ${worst} außerhalb der neuen Trommel`,
    atMost: (bears: string) => `höchstens ${bears}`,
    liningGoesOutwardName: 'Belag geht nach außen',
    liningGoesOutwardReason: 'Eine Backe, die sich öffnet, drückt ihren ganzen Belag nach außen.',
    pastTheAnchorAt: (end: number, at: number, at2: number) =>
      `${end}°, hinter dem Lager bei (${at}, ${at2})`,
    anEndBeforeTheLine: 'ein Ende vor der Linie von der Achse zum Lager',
  },

  /* sim/scene/rules/parking.ts */
  sceneRulesParking: {
    parkingLeverInName: 'Bremshebel in der Trommel',
    parkingLeverInReason: 'Hebel und Seilende liegen innerhalb der Trommel, neben der Nabe.',
    fromTheAxis: (place: string, fromAxis: string) =>
      `${place}, ${fromAxis} von der Achse entfernt`,
    toFromTheAxisBetween: (hubRadius: string, room: string) =>
      `${hubRadius} bis ${room} von der Achse, zwischen Nabe und Kranz`,
    pivotOnRearName: 'Drehpunkt an der hinteren Backe',
    pivotOnRearReason: 'Der Drehpunkt des Hebels ist an den Steg der hinteren Backe genietet.',
    rightOfTheAxleOn: 'rechts der Achse, an der hinteren Backe',
    guideOffTheName: 'Führung weg vom Haken',
    guideOffTheReason:
      'Der Seilzug zieht den Haken zu seiner Führung hin: an der Nabe vorbei und aus einigem Abstand.',
    withACableFromThe: (place: string, off: string) =>
      `${place}, mit einem Seilzug ${off} von der Achse entfernt`,
    aCablePastTheHub: (hubRadius: string) => `ein Seilzug an der Nabe vorbei, ${hubRadius}`,
    fromTheHook: (place: string, apart: string) => `${place}, ${apart} vom Haken entfernt`,
    atLeastFromIt: (swing: string) => `mindestens ${swing} von ihm entfernt`,
    pullPushesTheName: 'Zug drückt die Druckstange',
    pullPushesTheReason:
      'Ein Zug am Seil dreht den Hebel so, dass er die Druckstange drückt, und zwar mit einem längeren Hebelarm als dem der Druckstange.',
    fromTheStrutsLine: (notch: string) => `${notch} von der Linie der Druckstange`,
    atLeast1MmElse: 'mindestens 1 mm: sonst kann der Hebel sie nicht drücken',
    whereThePullHasAn: (place: string, way: string) =>
      `${place}, wo der Zug einen Hebelarm von ${way} um den Drehpunkt hat`,
    atLeastTheStrutsTurning: (notch: string) =>
      `mindestens der der Druckstange, ${notch}, und zur Druckstange hin drehend`,
    slackToTakeName: 'Lose, die aufzunehmen ist',
    slackToTakeReason: 'Der Handhebel muss den Seilzug innerhalb seines Wegs spannen.',
    atMostFortyNotches: (perNotch: string) => `höchstens ${perNotch}, vierzig Rasten`,
  },

  /* sim/scene/rules/rule.ts */
  sceneRulesRule: {
    again: (name: string) => `noch einmal "${name}"`,
    aNameOfItsOwn: 'ein eigener Name',
  },

  /* sim/scene/rules/shoe.ts */
  sceneRulesShoe: {
    shoeOnItsName: 'Backe auf ihrer Seite',
    shoeOnItsReason: 'Die vordere Backe steht links der Achse, die hintere rechts.',
    xOf0OrLess: 'x von 0 oder weniger, links der Achse',
    xOf0OrMore: 'x von 0 oder mehr, rechts der Achse',
    shoeInDrumName: 'Backe in der Trommel',
    shoeInDrumReason: 'Die ganze Backe liegt innerhalb der Trommel.',
    outToFromTheAxis: (place: string, fromAxis: string) =>
      `${place}, bis ${fromAxis} von der Achse nach außen`,
    theTable: 'des Kranzes',
    theDrum: 'der Trommel',
    underInside: (room: string, theTable: string) => `unter ${room}, innerhalb ${theTable}`,
    shoeClearOfName: 'Backe frei von der Nabe',
    shoeClearOfReason: 'Die Nabe dreht sich zwischen den Backen.',
    fromTheAxis: (place: string, fromAxis: string) =>
      `${place}, ${fromAxis} von der Achse entfernt`,
    moreThanClearOfThe: (hubRadius: string) => `mehr als ${hubRadius}, frei von der Nabe`,
    anchorBelowAxleName: 'Lager unter der Achse',
    anchorBelowAxleReason:
      'Näher zur Mitte dreht sich eine Backe an der Trommel entlang und nicht an sie heran: die Kolben laufen heraus, bevor sie anliegt.',
    belowTheAxle: (at: string) => `${at} unter der Achse`,
    atLeastBelowItFour: (bore: string) =>
      `mindestens ${bore} darunter, vier Zehntel des Trommelradius`,
    aMiddleAtWhichGoes: (from: number, openingMiddle: string) =>
      `eine Mitte bei ${from}°, die je Radiant um ${openingMiddle} nach außen geht`,
    atLeastARadianA: (bore: string) =>
      `mindestens ${bore} je Radiant: eine Mitte weiter weg vom Lager`,
    toeOverAnchorName: 'Spitze über dem Lager',
    toeOverAnchorReason: 'Sonst kann der Kolben die Backe nicht drehen.',
    aboveTheAnchor: (over: string) => `${over} über dem Lager`,
    atLeastAboveIt: (bore: string) => `mindestens ${bore} darüber`,
    seatOverAnchorName: 'Sitz über dem Lager',
    seatOverAnchorReason: 'Sonst kann die Druckstange die Backe nicht halten.',
    heelOnItsName: 'Ferse auf ihrer Fläche',
    heelOnItsReason:
      'Die Fläche steht innen an der Ferse und hält sie nach außen: die Trommel drückt die Backe nach innen.',
    of135To225Outward: '135° bis 225°, nach außen',
    of45To45Outward: '-45° bis 45°, nach außen',
    webHolesInName: 'Löcher im Steg',
    webHolesInReason:
      'Ein Loch ist in den Steg der Backe geschnitten: innerhalb des Kranzes, frei von der Nabe, auf der eigenen Seite.',
    toFromTheAxis: (place: string, r: string, r2: string) =>
      `${place}, ${r} bis ${r2} von der Achse`,
    onTheShoesSideTo: (hubRadius: string, webRadius: string) =>
      `auf der Seite der Backe, ${hubRadius} bis ${webRadius} von der Achse`,
    steelOfTheName: 'Stahl des Kranzes',
    steelOfTheReason: 'Kranz und Steg sind Blech oder Stahlguss von einiger Dicke.',
    atLeast03Mm: 'mindestens 0,3 mm',
    atLeast: (bore: string) => `mindestens ${bore}`,
    weightOfTheName: 'Gewicht der Backe',
    weightOfTheReason: 'Das Gewicht der Backe liegt innerhalb der Trommel, um ihr Lager.',
    kgMmWithKgAs: (inertia: number, mass: number, arm: string) =>
      `${inertia} kg·mm² bei ${mass} kg: als läge sie ${arm} vom Lager entfernt`,
    toTheRootOfInertia: (bore: string, bore2: string) =>
      `${bore} bis ${bore2}: die Wurzel aus Trägheitsmoment durch Masse`,
    strutBetweenShoesName: 'Druckstange zwischen den Backen',
    strutBetweenShoesReason: 'Die Druckstange geht von Backe zu Backe, über der Nabe.',
    withTheRearOneAt: (place: string, place2: string) => `${place}, der hintere bei ${place2}`,
    leftOfTheRearSeat: (bore: string) =>
      `links vom hinteren Sitz, um ${bore} oder mehr, und etwa gleich hoch`,
    aStrutFromTheAxis: (off: string) => `eine Druckstange ${off} von der Achse entfernt`,
    overTheHubMoreThan: (hubRadius: string) =>
      `über der Nabe, mehr als ${hubRadius} von der Achse entfernt`,
  },

  /* sim/scene/rules/springs.ts */
  sceneRulesSprings: {
    springOfSomeName: 'Feder mit einer Länge',
    springOfSomeReason: 'Eine Feder ohne Länge zieht nirgendwohin.',
    apart: (apart: string) => `${apart} Abstand`,
    atLeast5MmApart: 'mindestens 5 mm Abstand',
    springBetweenTwoName: 'Feder zwischen zwei Teilen',
    springBetweenTwoReason: 'Eine Feder mit beiden Enden an einem Teil bewegt nichts.',
    bothOn: (on: 'front' | 'plate' | 'rear') => `beide an ${on}`,
    twoDifferentParts: 'zwei verschiedene Teile',
    springEndsInName: 'Federenden in der Trommel',
    springEndsInReason:
      'Eine Feder ist im Steg der Backe oder in der Ankerplatte eingehängt, innerhalb der Trommel.',
    fromTheAxis: (place: string, fromAxis: string) =>
      `${place}, ${fromAxis} von der Achse entfernt`,
    theDrum: 'der Trommel',
    theTable: 'des Kranzes',
    underInside: (room: string, theDrum: string) => `unter ${room}, innerhalb ${theDrum}`,
    left: 'links',
    right: 'rechts',
    onTheShoeOfThe: (on: 'front' | 'plate' | 'rear', left: string) =>
      `an der ${on === 'front' ? 'vorderen' : 'hinteren'} Backe, ${left} der Achse`,
    springClearOfName: 'Feder frei von der Nabe',
    springClearOfReason: 'Die Nabe dreht sich zwischen den Federn.',
    aSpringFromTheAxis: (off: string) => `eine Feder ${off} von der Achse entfernt`,
    moreThanPastTheHub: (hubRadius: string) => `mehr als ${hubRadius}, an der Nabe vorbei`,
    springsPullBackName: 'Federn ziehen zurück',
    springsPullBackReason: 'Die Rückzugfedern ziehen die Backen von der Trommel weg.',
    theShoesSpringsTogetherPress: (side: 'front' | 'rear', inward: number) =>
      `die Federn der ${side === 'front' ? 'vorderen' : 'hinteren'} Backe drücken sie zusammen mit ${inward} N·mm an die Trommel`,
    springsThatPullItBack: 'Federn, die sie zurückziehen',
  },

  /* sim/scene/rules/start.ts */
  sceneRulesStart: {
    toothThatIsName: 'Zahn, den es gibt',
    toothThatIsReason: 'Der Nachsteller steht auf einem seiner Zähne.',
    of0ToTheTeethThere: (teeth: number) => `0 bis ${teeth}, die vorhandenen Zähne`,
    drumAtTheName: 'Trommel am Anfang',
    drumAtTheReason: 'Eine Trommel verschleißt von neu an.',
    asNewToTwoPast: (diameterNew: string, diameterMax: string) =>
      `${diameterNew} wie neu bis ${diameterMax}, zwei über ihrer Grenze`,
    liningAtTheName: 'Belag am Anfang',
    liningAtTheReason: 'Etwas Belag ist noch da.',
    lessThanTheLining: (thicknessNew: string) => `weniger als der Belag, ${thicknessNew}`,
    wearThatTakesName: 'Verschleiß, der abträgt',
    wearThatTakesReason:
      'Verschleiß trägt überall ab: eine Parabel durch die Tiefen darf nicht über einen neuen Belag steigen.',
    betweenTheDepths: (least: string) => `${least} zwischen den Tiefen`,
    depthsWhoseParabolaStaysAt: 'Tiefen, deren Parabel bei 0 mm oder mehr bleibt',
    strutAtTheName: 'Druckstange am Anfang',
    strutAtTheReason:
      'Die Trommel geht über Backen, die von der Druckstange nicht weiter auseinander gehalten werden.',
    aStrutOf: (tooth: number, bare: string) => `${tooth}, eine Druckstange von ${bare}`,
    withItAStrutOf: (leverOffStop: string, length: string) =>
      `${leverOffStop}, damit eine Druckstange von ${length}`,
    aStrutOfAtMost: (room: string) =>
      `eine Druckstange von höchstens ${room} bei diesen Belägen in dieser Trommel`,
  },

  /* sim/scene/rules/states.ts */
  sceneRulesStates: {
    stateOfItsName: 'Zustand mit eigenem Namen',
    stateOfItsReason: 'Ein Zustand wird nach seinem Namen gewählt.',
    drumsOfTheName: 'Trommeln der Zustände',
    drumsOfTheReason: 'Ein fester Zustand hat eine Trommel innerhalb ihrer Grenze.',
    toMm: (diameterNew: number, diameterMax: number) => `${diameterNew} bis ${diameterMax} mm`,
    lessOrMoreName: 'weniger oder mehr',
    lessOrMoreReason: 'Ein Zustand liegt vor seinem Ziel oder dahinter.',
    lessAndMore: 'weniger und mehr',
    oneOfTheTwo: 'eins von beiden',
    clickThatComesName: 'Klick, der kommt',
    clickThatComesReason: 'Der Nachsteller klickt einmal je Zahn.',
    of1ToTheTeethThere: (teeth: number) => `1 bis ${teeth}, die vorhandenen Zähne`,
  },

  /* sim/scene/schema.ts */
  sceneSchema: {
    holdDown: 'Niederhalter',
    rowsCFactorStraightBetween: (about: string) =>
      `${about}: Zeilen [°C, Faktor], dazwischen gerade`,
    liningsThatAreCommonPractice: (name: 'damp' | 'dry' | 'glazed' | 'greasy' | 'wet') =>
      `Beläge im Zustand ${name}; ohne Angabe wie allgemein üblich`,
    factorOnTheFrictionOf: (name: 'damp' | 'dry' | 'glazed' | 'greasy' | 'wet') =>
      `Faktor auf den Reibwert eines trockenen Belags im Zustand ${name}`,
    whereTheFactorsComeFrom: 'Woher die Faktoren stammen',
    heelOnAPin: 'Ferse auf einem Bolzen',
    hingedOnAPin: 'Drehbar auf einem Bolzen',
    pinCentre: 'Mitte des Bolzens',
    heelOnAnAbutment: 'Ferse an einem Widerlager',
    slidingOnAnAbutment: 'Gleitend an einem Widerlager',
    centreOfTheRoundHeel: 'Mitte der runden Ferse',
    radiusOfTheHeel: 'Radius der Ferse',
    directionFromTheFlatTowards: 'Richtung von der Fläche zur Ferse, von +x aus',
    frictionOfHeelOnFlat: 'Reibung der Ferse auf der Fläche',
    stiffnessOfHeelAndBracket: 'Steifigkeit von Ferse und Halter, quer zur Fläche',
    aKindPinOrAbutment: 'eine Art: pin oder abutment',
    whatHoldsTheHeel: 'Was die Ferse hält',
    firstEndOfTheArc: 'Erstes Ende des Bogens, von +x aus',
    otherEndOfTheArc: 'Anderes Ende des Bogens, mehr als from',
    widthAlongTheAxle: 'Breite längs der Achse',
    thicknessWhenNew: 'Dicke im Neuzustand',
    limitOfTheLining: 'Grenze des Belags',
    radiusTheRubbingFaceIs: 'Radius, auf den die Reibfläche geschliffen ist',
    arcOfTheSlopedEnds: 'Bogen der abgeschrägten Enden',
    depthOfTheSlopeAt: 'Tiefe der Schräge ganz am Ende',
    arcAtEachEndWhere: 'Bogen an jedem Ende, wo die Kante neben dem Grat zurückgenommen ist',
    compressiveModulusAsPressed: 'Druckmodul, so wie auf seiner Backe gepresst',
    archardCoefficient: 'Archard-Koeffizient',
    rivetHeadsOverTheTable: 'Nietköpfe über dem Kranz; 0, wenn geklebt',
    theShoe: (side: string) => `Die ${side === 'front' ? 'vordere' : 'hintere'} Backe`,
    whereThePistonPushes: 'Wo der Kolben drückt',
    whereTheStrutPushesOn:
      'Wo die Druckstange drückt (bei der Backe, die den Hebel trägt, auf dessen Kerbe)',
    whereItPresses: 'Wo er drückt',
    frictionOfHoldDownAnd: 'Reibung von Niederhalter und Auflagen der Ankerplatte',
    itsGripBeforeItSlips: 'Ihr Haften, bevor sie rutscht',
    shareOfItATurning:
      'Anteil davon, den eine drehende Trommel abschüttelt, sobald die Druckstange entlastet ist, 0 bis 1',
    webAndTable: 'Steg und Kranz',
    thicknessOfTheTable: 'Dicke des Kranzes',
    firstEnd: 'Erstes Ende',
    otherEnd: 'Anderes Ende',
    thicknessOfAWeb: 'Dicke eines Stegs',
    depthOfTheWebUnder: 'Tiefe des Stegs unter dem Kranz',
    numberOfWebs: 'Zahl der Stege',
    elasticModulus: 'Elastizitätsmodul',
    poissonRatio: 'Querkontraktionszahl',
    massWithItsLining: 'Masse mit Belag',
    momentOfInertiaAboutPin: 'Trägheitsmoment um Bolzen oder Fersenmitte',
    holesInTheWebDrawn: 'Löcher im Steg, nur gezeichnet',
    aHole: 'Ein Loch',
    itsCentre: 'Seine Mitte',
    itsRadius: 'Sein Radius',
    oneEnd: 'Ein Ende',
    whatItIsHookedTo: 'Woran es eingehängt ist',
    springHole: 'Federloch',
    aBrakeHowItIs: 'Eine Bremse, wie sie gefahren wird und in welchen Zuständen sie gezeigt wird',
    whereAnEditorFindsThe:
      'Wo ein Editor das Schema dieser Datei findet; sagt nichts über die Bremse',
    whatKindOfFileThis: 'Was für eine Datei das ist',
    theNumber: (version: number) => `die Zahl ${version}`,
    versionOfTheFormatOlder: 'Version des Formats; ältere Dateien werden weiter gelesen',
    shortName: 'Kurzname',
    smallLettersDigitsAnd: 'Kleinbuchstaben, Ziffern und -',
    nameShown: 'Angezeigter Name',
    whatThisBrakeIs: 'Was das für eine Bremse ist',
    whereItsValuesComeFrom: 'Woher ihre Werte stammen',
    onWhichSideOfThe: 'Auf welcher Seite des Fahrzeugs sie sitzt',
    innerDiameterWhenNew: 'Innendurchmesser im Neuzustand',
    discardDiameter: 'Aussonderungsdurchmesser',
    innerDiameterOfTheUnworn: 'Innendurchmesser des unverschlissenen Rands',
    largestOutOfRoundAllowed: 'Größte erlaubte Unrundheit, im Durchmesser',
    radialThicknessOfTheRim: 'Wanddicke, radial',
    momentOfInertiaOfThe: 'Trägheitsmoment der Trommel und dessen, was mit ihr dreht',
    heatCapacity: 'Wärmekapazität',
    heatGivenToTheAir: 'An die Luft abgegebene Wärme',
    atRest: 'Im Stand',
    growthWithSpeed: 'Zunahme mit der Geschwindigkeit',
    thermalExpansion: 'Wärmedehnung',
    bothShoes: 'Beide Backen',
    wheelCylinder: 'Radzylinder',
    middleOfTheWheelCylinder: 'Mitte des Radzylinders',
    strokeOfEachPistonTo: 'Hub jedes Kolbens bis zum Austritt',
    frictionOfEachCup: 'Reibung jeder Manschette',
    gripOfACupBefore: 'Haften einer Manschette, bevor sie rutscht',
    pushOfTheSpringBetween: 'Kraft der Feder zwischen den Manschetten',
    outerDiameterDrawnOnly: 'Außendurchmesser, nur gezeichnet',
    lengthDrawnOnly: 'Länge, nur gezeichnet',
    returnSprings: 'Rückzugfedern',
    aReturnSpring: 'Eine Rückzugfeder',
    itsTwoEnds: 'Ihre beiden Enden',
    forceAsFittedReferencePose: 'Kraft im Einbau (Bezugsstellung)',
    parkingLeverAndItsCable: 'Bremshebel und sein Seilzug',
    pivotOnTheRearWeb: 'Drehpunkt am hinteren Steg',
    cableHook: 'Haken des Seilzugs',
    whereTheCableLeaves: 'Wo der Seilzug austritt',
    directionOfThePullFrom: 'Richtung des Zugs, von +x aus; ohne Angabe zur Führung hin',
    ratioOfTheHandLever: 'Übersetzung des Handhebels',
    efficiencyOfLeverAndCable: 'Wirkungsgrad von Hebel und Seilzug, bis 1',
    cableForOneNotch: 'Seilweg je Raste',
    slackOfTheCable: 'Lose des Seilzugs',
    stiffnessOfEachCable: 'Steifigkeit jedes Seilzugs',
    rollingRadiusOfTheTyre: 'Rollradius des Reifens',
    numberOfSuchBrakes: 'Zahl solcher Bremsen',
    shareOfTheBrakingOn: 'Anteil der Bremsung an diesen Rädern, 0 bis 1',
    rollingResistanceOverWeight: 'Rollwiderstand durch Gewicht',
    dragOfTheAirOver: 'Luftwiderstand durch Geschwindigkeit im Quadrat',
    whatItIsDrivenBy: 'Womit sie gefahren wird; die festen Zustände entstehen aus dem ersten',
    factorOnFriction: 'Faktor auf den Reibwert',
    factorOnWear: 'Faktor auf den Verschleiß',
    frictionOfLiningsThatAre: 'Reibwert von Belägen, die nicht trocken sind',
    sizesAlongTheAxleOutward:
      'Maße längs der Achse, von der Ankerplatte nach außen; nur das Abziehen der Trommel braucht sie',
    thicknessOfTheBackingPlate: 'Dicke der Ankerplatte',
    fromThePlateToThe: 'Von der Ankerplatte zur Kante der Beläge',
    widthOfTheDrumsUnworn: 'Breite des unverschlissenen Trommelrands',
    playBetweenThatEdgeAnd: 'Spiel zwischen diesem Rand und den Belägen',
    fromTheLiningsToThe: 'Von den Belägen zum Boden der Trommel',
    thicknessOfTheDisc: 'Dicke des Bodens',
    springAndPinOfA: 'Feder und Stift eines Niederhalters',
    rateOfItsSpring: 'Federrate',
    travelOfThatSpringUntil: 'Federweg, bis die Windungen aufeinander liegen',
    diameterOfItsPin: 'Durchmesser des Stifts',
    sizesThatCarryNoForce: 'Maße, die keine Kraft tragen und nur gezeichnet werden',
    radiusOfTheBackingPlate: 'Radius der Ankerplatte',
    radiusOfTheHub: 'Radius der Nabe',
    radiusOfTheCircleOf: 'Radius des Lochkreises der Radbolzen',
    radiusOfAStud: 'Radius eines Radbolzens',
    numberOfStuds: 'Zahl der Radbolzen',
    radiusOfAnAnchorPin: 'Radius eines Lagerbolzens',
    radiusOfTheEyeAround: 'Radius des Auges um ihn',
    holeThatAToolReaches: 'Loch, durch das ein Werkzeug an den Nachsteller kommt',
    itsMiddle: 'Seine Mitte',
    directionOfItsLengthFrom: 'Richtung seiner Länge, von +x aus',
    itsLength: 'Seine Länge',
    radiusOfItsEnds: 'Radius seiner Enden',
    howTheBrakeStandsWhen: 'Wie die Bremse steht, wenn die Szene geöffnet wird',
    howTheBrakeOfThe: 'Wie dann die Bremse am anderen Rad der Achse steht; ohne Angabe wie diese',
    standingStatesEachMadeFrom: 'Feste Zustände, jeder von neu an durch den ersten Einsatz erzeugt',
    theTextTakeupScene: 'der Text "takeup-scene"',
  },

  /* sim/scene/sizes.ts */
  sceneSizes: {
    xy: ['nach rechts', 'nach oben'],
    frontTheRearsMirrorsIt: (name: string) => `${name}, vorn; hinten gespiegelt`,
  },

  /* sim/scene/start.ts */
  sceneStart: {
    depthWornOffAt: (where: string) => `Abgetragene Dicke: ${where}`,
    depthWornEvenlyOffThe: (side: string) =>
      `Gleichmäßig abgetragene Dicke am ${side === 'front' ? 'vorderen' : 'hinteren'} Belag`,
    depthsAlongTheArcA: 'Tiefen längs des Bogens, eine Parabel durch sie',
    theToeEnd: 'am Ende bei der Spitze',
    theMiddleHalfwayBetweenThe: 'in der Mitte; ohne Angabe der Mittelwert der Enden',
    theHeelEnd: 'am Ende bei der Ferse',
    aDepthOrDepthsBy: 'eine Tiefe, oder Tiefen nach toe, middle und heel',
    wearOfTheLining: (side: string) =>
      `Verschleiß des ${side === 'front' ? 'vorderen' : 'hinteren'} Belags`,
    toothTheAdjusterStandsOn: 'Zahn, auf dem der Nachsteller steht',
    innerDiameterOfTheCold: 'Innendurchmesser der kalten Trommel; ohne Angabe neu',
    wearOfTheLinings: 'Verschleiß der Beläge',
    temperatureOfTheDrum: 'Temperatur der Trommel',
    parkingLeverHeldOffIts: 'Bremshebel von seinem Anschlag abgehalten, am Haken',
  },

  /* sim/scene/states.ts */
  sceneStates: {
    innerDiameterOfTheDrum: 'Innendurchmesser der Trommel, in die neue Backen kommen',
    stopThisLongBefore: 'So weit davor anhalten',
    driveOnByThis: 'Um so viel weiterfahren',
    toTheNearestWholeOf: 'Auf das nächste Ganze hiervon',
    whatTheBrakeIsDriven: 'Bis wohin die Bremse gefahren wird',
    drivenByADistance: 'Um eine Strecke gefahren',
    fromNew: 'Ab neu',
    drivenToAClickOf: 'Bis zu einem Klick des Nachstellers gefahren',
    whichOneCountedFromNew: 'Der wievielte, ab neu gezählt',
    drivenUntilALiningHas: 'Gefahren, bis ein Belag verschlissen ist um',
    ofWhatALiningMay:
      'Von dem, was ein Belag verlieren darf, an dem, der am meisten verloren hat; 0 bis 1',
    drivenUntilALiningIs: 'Gefahren, bis ein Belag an seiner Grenze ist',
    drivenUntilTheDrumIs: 'Gefahren, bis die Trommel an ihrer Grenze ist',
    aGoalDistanceClickWorn: 'ein Ziel: distance, click, worn, lining limit oder drum limit',
    aStateThatTheBrake:
      'Ein Zustand, in den die Bremse versetzt werden kann, soweit sie dahin gefahren werden kann',
  },

  /* sim/scene/strut-path.ts */
  sceneStrutPath: {
    thicknessOfItsPlate: 'Blechdicke',
    depthInThePlaneOf: 'Höhe in der Biegeebene',
    sizesOfWhatBearsThe: 'Maße dessen, was die Kraft der Druckstange trägt; ohne Angabe starr',
    barOfTheStrut: 'Stab der Druckstange',
    widthOfItsSlot0: 'Breite des Langlochs; 0 ohne eines',
    lengthOfItsSlot: 'Länge des Langlochs',
    adjusterLeverWhereTheAdjuster: 'Hebel des Nachstellers, falls er einen hat',
    fromItsPinToIts: 'Von seinem Bolzen zu seiner Nase',
    fromItsPinToIts2: 'Von seinem Bolzen zu seinen Zähnen',
    roundingOfEdgesAndNotches: 'Rundung tragender Kanten und Kerben',
    parkingLeverAsABeam: 'Bremshebel als Balken',
    fromTheSeatOfThe: 'Vom Sitz der Druckstange zu seinem Anschlag',
    anchorPinsWhereTheShoes: 'Lagerbolzen, falls die Backen auf Bolzen drehen',
    fromThePlateToThe: 'Von der Ankerplatte zur Mitte des Stegs',
    radiusAroundThePinAt: 'Radius um den Bolzen, auf dem die Ankerplatte gehalten ist',
    giveOfBothSteelShoes: 'Nachgiebigkeit beider Stahlbacken, an der Druckstange gespürt',
    giveOfTheDrumFelt: 'Nachgiebigkeit der Trommel, an der Druckstange gespürt',
    yieldOfLeversAndPins: 'Streckgrenze der Hebel und Bolzen',
    yieldOfTheStrutsBar: 'Streckgrenze des Stabs der Druckstange',
    whereTheSizesComeFrom: 'Woher die Maße stammen',
    lessThanTheBarMm: (width: number) => `weniger als der Stab, ${width} mm`,
    shorterThanTheStrut: 'kürzer als die Druckstange',
    sizesByWhichItGives: (toPrecision: string) =>
      `Maße, mit denen sie um ${toPrecision} mm/N nachgibt`,
    atMostMmN: (mostgive: number) => `höchstens ${mostgive} mm/N`,
    found: (name: 'lever arm' | 'lever nose' | 'lever teeth' | 'strut', toPrecision: string) =>
      `Maße, mit denen ${name === 'lever arm' ? 'der Hebelarm' : name === 'lever nose' ? 'die Hebelnase' : name === 'lever teeth' ? 'der Zahn des Hebels' : 'die Druckstange'} bei ${toPrecision} N fließt`,
    atLeastN: (leastforce: number) => `mindestens ${leastforce} N`,
  },

  /* sim/workshop/axle.ts */
  workshopAxle: {
    drumOutOfRound: 'Unrundheit der Trommel',
    drumTwoDepths: 'Trommel, zwei Tiefen',
    deepestScore: 'Tiefste Riefe',
    leadingLining: 'Auflaufender Belag',
    trailingLining: 'Ablaufender Belag',
    parkingLever: 'Bremshebel',
    differsByBetweenTheWheels: (nameOf: string, by: string) =>
      `${nameOf}: Unterschied von ${by} zwischen den Rädern. Nach festgegangenem Kolben, Seilzug oder Nachsteller suchen.`,
    handLever: (a: string, action: string) => `Handhebel: ${a}. ${action}`,
    doNotRefitYet: 'Noch nicht wieder einbauen',
    line: 'Zeile',
    lines: 'Zeilen',
    notCompleteToGo: (open: number, line: string) => `Nicht vollständig: noch ${open} ${line}`,
    refitOnlyWithADate: 'Einbau nur mit einem Termin',
    withinTheLimitsMindWhat: 'Innerhalb der Grenzen; auf das Markierte achten',
    withinTheLimitsOnThis: 'Auf diesem Blatt innerhalb der Grenzen',
  },

  /* sim/workshop/cases.ts */
  workshopCases: {
    pedalGoesHalfwayDownThen:
      'Das Pedal geht halb durch, dann ist es fest. Handbremse fast bis unters Dach.',
    likeSteppingOnASponge: 'Wie auf einen Schwamm getreten, seit die Leitung neu ist.',
    pedalsLovelyLeversHopeless: 'Pedal prima, Handbremse zum Vergessen.',
    badEachMorningFirstPress:
      'Jeden Morgen schlecht, der erste Tritt geht durch, tick-tick, dann passt’s.',
    nearsideStaysCoolTheOther: 'Die linke bleibt kalt, die andere stinkt.',
    fineTillIBrakeThen: 'Alles gut, bis ich bremse, dann schleift er eine Weile.',
    afterThePassItWas: 'Nach dem Pass lief er frei, am nächsten Morgen rollte er nicht mehr.',
    justClicked: 'Just clicked',
    allOfThemWarmWorse: 'Alle sind warm, und es wird schlimmer, je länger ich fahre.',
    throbsThroughThePedalRubs:
      'Das Pedal pulsiert; schleift, seit einen Zahn weiter nachgestellt ist.',
    swishSwishOnceEachTurn: 'Wisch, wisch, einmal je Umdrehung, seit die Nabe ab war.',
    spinsFreeOnTheJack: 'Aufgebockt dreht es frei, auf der Straße wird’s heiß.',
    comesABitThenIts: 'Kommt ein Stück, dann ist es wie eine Wand.',
    hitItAllDayNot: 'Den ganzen Tag draufgehauen, kein Haarbreit.',
    cameOffLastYearAnd:
      'Letztes Jahr ging sie noch runter, und ich hab nur die Handbremse nachgezogen.',
    pullsLeftForwardsButBacking: 'Zieht vorwärts nach links, aber rückwärts viel weniger.',
    pulledLeftSinceTheWinter: 'Zieht seit dem Winter nach links.',
    alwaysPulledRightSinceThe: 'Zieht seit der Reparatur immer nach rechts.',
    creepsEitherWayUpAnd: 'Kriecht am Berg, egal wie herum, und das Pedal fühlt sich hölzern an.',
    holdsFacingTheSeaSlides: 'Mit der Nase zum Meer hält er, mit der Nase zum Berg rutscht er.',
    holdsOnTheFlatBeen: 'In der Ebene hält er. Löst auch nur noch langsam.',
  },

  /* sim/workshop/cut.ts */
  workshopCut: {
    renewTheDrumAndThe: (wheel: 'left' | 'right', other: 'left' | 'right') =>
      `${wheel === 'left' ? 'Linke' : 'Rechte'} Trommel erneuern, die ${other === 'left' ? 'linke' : 'rechte'} mit ihr`,
    aCutThatClearsThe: (more: string) =>
      `Ein Ausdrehen, das die Riefe beseitigt, geht um ${more} über die Marke an der Trommel hinaus.`,
    aCutThatClearsThe2: (more: string) =>
      `Ein Ausdrehen, das die Riefe beseitigt, geht um ${more} über die Ausdrehgrenze hinaus.`,
    theMarkOnTheDrum: 'die Marke an der Trommel',
    theMachiningLimit: 'die Ausdrehgrenze',
    noVerdictOnACut: 'Noch kein Urteil über ein Ausdrehen',
    notSetALimitThat: (open: string) =>
      `Nicht eingetragen: ${open}. Eine Grenze, für die niemand einsteht, gibt kein Urteil.`,
    cutToBothDrumsStand: (more: string) =>
      `Auf ${more} ausgedreht, stehen beide Trommeln an ihrer Marke`,
    nothingIsLeftToWear:
      'Nach einem solchen Ausdrehen bleibt nichts mehr zum Verschleißen: lieber erneuern.',
    bothDrumsCanBeCut: (more: string) =>
      `Beide Trommeln lassen sich ausdrehen, gleich, auf ${more}`,
    isThenLeftToWear: (less: string) =>
      `${less} bleiben dann bis zur Marke zum Verschleißen. Beläge, die bleiben, müssen neu einlaufen; eine leichte Riefe lässt man deshalb am besten bei dem Paar, das in ihr gelaufen ist.`,
  },

  /* sim/workshop/examinations.ts */
  workshopExaminations: {
    storyAndFeel: 'Fragen und fühlen',
    hearWhichWheelAndWhen: 'Hören, welches Rad und wann; auf das Pedal treten.',
    pumpThePedal: 'Pedal pumpen',
    afterANightParkedMeasure:
      'Nach einer Nacht im Stand: Pedalweg bei 10 und 40 bar messen, und noch einmal.',
    notchesAt300N: 'Rasten bei 300 N',
    countTheHandLeversClicks:
      'Die Rasten des Handhebels zählen, bis 300 N in jedem Seilzug liegen.',
    heatOfTheDrumsAfter: 'Wärme der Trommeln nach einer Fahrt',
    driveAt50KmH: 'Mit 50 km/h fahren, ohne zu bremsen; fühlen oder messen.',
    wheelsUpTurnBothWays: 'Räder hoch, in beide Richtungen drehen',
    onStandsTurnEachWheel: 'Auf Böcken: jedes Rad von Hand drehen, an der Trommel ziehen.',
    rockTheWheelTapThe: 'Am Rad wackeln, Trommel anklopfen',
    playAtTheRimA: 'Spiel am Felgenrand; heller oder dumpfer Klang.',
    treadSlowlyLetGo: 'Langsam treten, loslassen',
    wheelsUpAGaugeIn:
      'Räder hoch, ein Manometer in der Leitung: wann es zu schleifen beginnt, wann es frei ist.',
    openTheBleedPoint: 'Entlüfter öffnen',
    withTheWheelsUpWhat: 'Bei angehobenen Rädern: was sich ändert, wenn der Druck weg kann.',
    seeAndFlexTheParking: 'Bremshebel ansehen und bewegen',
    isItOnItsStop: 'Liegt er an seinem Anschlag; kommt er sofort zurück.',
    rollerTest20Bar: 'Rollenprüfstand, 20 bar',
    eachWheelOnThePedal:
      'Jedes Rad mit dem Pedal, dann mit der Handbremse bei 300 N, in beide Richtungen.',
    drumOffAnd1A: 'Trommel ab, dazu 1 je Zahn',
    backOffAsFarAs: 'Zurückstellen, so weit es nötig ist, Trommel abziehen, an den Backen wackeln.',
    measureDrumAndLinings: 'Trommel und Beläge messen',
    twoPointGaugeAtSeveral:
      'Zweipunkt-Messgerät unter mehreren Winkeln, Beläge an der dünnsten Stelle.',
    dialGaugeOnTheDrum: 'Messuhr an der Trommel',
    swingOfTheBoreAs: 'Ausschlag der Bohrung beim Drehen auf der Nabe.',
    countTheTooth: 'Zahn zählen',
    atWhichToothDoesThe: 'Auf welchem Zahn steht die Druckstange; fällt der Hebel ein.',
    lookBehindTheBoots: 'Hinter die Staubkappen sehen',
    wetOrDryCylinderAnd: 'Nass oder trocken, Zylinder und Nabe.',
    boreMarkBehindThePlate: 'Bohrungsmaß hinter der Ankerplatte',
    readTheMarkOnThe: 'Die Angabe am Zylinder ablesen.',
  },

  /* sim/workshop/fault-names.ts */
  workshopFaultNames: {
    faultNames: {
      'seized short': 'Nachsteller festgegangen, zu kurz',
      'worn teeth': 'Abgenutzte Zähne geben nach',
      'broken lever spring': 'Feder des Zahnhebels gebrochen',
      'stepped hot': 'Heiß weitergestellt',
      'shoes swapped': 'Gelaufene Backen vorn und hinten vertauscht',
      'wrong side': 'Nachsteller links und rechts vertauscht',
      'strut mis-seated': 'Druckstange nicht in ihrem Sitz',
      'dead adjuster to the end': 'Kolben über das Hubende hinaus',
      'short cable': 'Seilzug zu kurz eingestellt',
      'kept pull': 'Seilzug behält seinen Zug',
      'stretched cable': 'Seilzug gelängt oder lose',
      'stiff pivot': 'Bremshebel schwergängig im Drehpunkt',
      'weak springs': 'Rückzugfedern schwach',
      'strong springs': 'Rückzugfedern zu stark',
      'stuck piston': 'Ein Kolben fest',
      'sluggish pistons': 'Kolben schwergängig',
      'leaning part': 'Etwas lehnt an einer Backe',
      hose: 'Schlauch sperrt den Rückweg',
      'port shut': 'Kein Leerspiel am Hauptzylinder',
      'other bore': 'Falscher Radzylinder: Bohrung zu groß',
      air: 'Luft im Bremskreis',
      'fluid on linings': 'Bremsflüssigkeit auf beiden Belägen eines Rads',
      'oil on one lining': 'Öl auf einem Belag',
      glazed: 'Verglaste Beläge',
      damp: 'Flugrost auf der Trommel, erste Bremsungen',
      'water inside': 'Wasser in der Trommel',
      'hot fade': 'Fading nach langem Gefälle',
      'oversize bore': 'Normale Backen in verschlissener Trommel',
      'lining ends': 'Beläge zu groß geschliffen',
      'oval drum': 'Trommel unrund',
      'drum off centre': 'Trommel außermittig',
      lip: 'Grat hinter den Belägen',
      'hub rust': 'Rost an der Nabe',
      groove: 'Rille in einer Auflage',
      bearing: 'Radlager lässt die Trommel steigen',
      'rusted on': 'Beläge angerostet',
    },
  },

  /* sim/workshop/faults-adjuster.ts */
  workshopFaultsAdjuster: {
    seizedShortShort: 'die Druckstange bleibt bei Zahn 0',
    seizedShortChange: 'Nachsteller festgegangen, Zahn 0 bei Belägen, verschlissen wie sie sind',
    seizedShortMechanism:
      'Beläge und Trommel verschleißen, die Druckstange folgt nicht: der ganze Verschleiß steht als Spalt da. Das Pedal schließt ihn bei jedem Tritt neu. Liegt der Belag einmal an, bremst es wie zuvor.',
    seizedShortTells:
      'Ein langes, aber hartes Pedal, fast der ganze Weg ist schon bei 10 bar da, dazu viele Rasten.',
    seizedShortRemedy:
      'Hebel und Druckstange gangbar machen oder erneuern, neu einstellen, auch das andere Rad ansehen. Nicht am Seilzug nachstellen.',
    wornTeethShort: 'die Druckstange rutscht unter dem Zug der Handbremse zurück',
    wornTeethChange: 'Zähne halten 1 000 N, an der Handbremse zwei Zähne verloren',
    wornTeethMechanism:
      'Mit angezogener Handbremse trägt die Druckstange weit mehr als in Ruhe. Verrundete Zähne rutschen darunter zurück; den Federn allein halten sie stand. Der nächste kräftige Tritt klickt sie wieder heraus.',
    wornTeethTells: 'Der erste Tritt nach dem Parken ist lang und klickt, der nächste ist gut.',
    wornTeethRemedy: 'Hebel und Druckstange als Paar erneuern.',
    brokenLeverSpringShort: 'der Hebel fällt nie ein',
    brokenLeverSpringChange: 'Hebelfeder auf 0, Zahn 0 bei Belägen, verschlissen wie sie sind',
    brokenLeverSpringMechanism:
      'Der Hebel wird über den Zahn gehoben, aber nichts zieht ihn hinein: kein Klick, und der Spalt wächst mit dem Verschleiß.',
    brokenLeverSpringTells:
      'Wie ein festgegangener Nachsteller, aber bei abgenommener Trommel schwingt der Hebel frei.',
    brokenLeverSpringRemedy: 'Feder erneuern, Nachsteller neu einstellen.',
    steppedHotShort: 'Zähne genommen, als die Trommel gewachsen war',
    steppedHotChange: (descent: number) =>
      `ein kräftiger Tritt bei um ${descent} K heißerer Trommel, dann wieder kalt`,
    steppedHotMechanism:
      'Eine heiße Trommel ist weiter. Der Hebel spürt Weg und kann den Grund nicht kennen: er nimmt Zähne, für die in der kalten Trommel kein Platz ist.',
    steppedHotTells:
      'Heiß frei, kalt stramm, beide Räder; der Bremshebel liegt an, und am Entlüfter ändert sich nichts.',
    steppedHotRemedy:
      'Nachsteller zurückstellen, prüfen, ob die Heißsperre arbeitet, falls es eine gibt, nach Gefällestrecken fragen.',
    shoesSwappedShort: 'jeder Belag läuft, wo der andere eingelaufen war',
    shoesSwappedChange: 'Verschleißprofile der beiden Beläge vertauscht',
    shoesSwappedMechanism:
      'Der dicke Belag läuft nun auf und der dünne ab. Anlage und Anteile stimmen nicht, bis beide neu eingelaufen sind, und der dünne Belag sitzt dort, wo wenig verschleißt.',
    shoesSwappedTells:
      'Das Moment ist anfangs etwas daneben; gemessen sind die Beläge an der ablaufenden Backe am dünnsten.',
    shoesSwappedRemedy:
      'Jede Backe dorthin zurück, wo sie lief, oder auf beiden Seiten ein neuer Satz.',
    wrongSideShort: 'ein überstiegener Zahn dreht die Druckstange zurück',
    wrongSideChange: 'ein Schritt geht in die falsche Richtung; wieder bei Zahn 0',
    wrongSideMechanism:
      'Auf der anderen Seite eingebaut, arbeitet der Nachsteller rückwärts oder läuft leer. Der Spalt wächst schneller als durch Verschleiß.',
    wrongSideTells:
      'Wie ein festgegangener Nachsteller; bei abgenommener Trommel zeigt es die Händigkeit der Teile.',
    wrongSideRemedy: 'Tauschen, neu einstellen, treten, bis nichts mehr klickt.',
    strutMisSeatedShort: 'die Backen werden außen gehalten',
    strutMisSeatedChange: 'Druckstange 1,5 mm länger zwischen ihren Sitzen',
    strutMisSeatedMechanism:
      'Ein Ende der Druckstange, das auf der Kante seiner Kerbe reitet, spreizt die Backen um so viel mehr.',
    strutMisSeatedTells:
      'Spalt gleich nach der Arbeit weg, bei jedem Zahn; die Trommel geht kaum auf.',
    strutMisSeatedRemedy:
      'Druckstange neu einsetzen; beide Enden in ihre Kerben, bevor die Trommel aufgesetzt wird.',
    deadAdjusterToTheEndShort: 'Beläge weg, Trommel verschlissen, Druckstange bei 0',
    deadAdjusterToTheEndChange:
      'Beläge bis auf den Kranz verschlissen, Trommel im Radius 1 mm über neu, Zahn 0',
    deadAdjusterToTheEndMechanism:
      'Jeder Kolben macht etwa den doppelten Weg des Spalts in der Belagmitte. Ist nichts nachgestellt und alles verschlissen, tritt seine Manschette aus der Bohrung. Das kommt von zu lose, nie von zu stramm.',
    deadAdjusterToTheEndTells:
      'Verbleibender Weg bis zum Austritt, abgelesen, bevor er aufgebraucht ist.',
    deadAdjusterToTheEndRemedy: 'Alles: Zylinder, Backen, Nachsteller, Trommel, auf beiden Seiten.',
  },

  /* sim/workshop/faults-cable.ts */
  workshopFaultsCable: {
    shortCableShort: 'der Hebel kommt nie ganz zurück',
    shortCableChange: 'Hebel 6 mm von seinem Anschlag abgehalten',
    shortCableMechanism:
      'Der Hebel steht in einer Linie mit der Druckstange, deshalb bestimmt der Seilzug und nicht der Anschlag die Ruhelage. Das Spiel im Langloch ist aufgebraucht, und der Nachsteller macht keinen Schritt mehr.',
    shortCableTells: 'Wenige Rasten, und der Hebel steht von seinem Anschlag weg.',
    shortCableRemedy: 'Seilzug lockern, Backen einstellen, den Seilzug zuletzt.',
    keptPullShort: 'in der Hülle festgegangen: der Hebel kommt nie ganz zurück',
    keptPullChange: 'nach dem Lösen bleiben 40 N in einem Seilzug',
    keptPullMechanism:
      'Ein Seilzug, der in seiner Hülle klemmt, zieht nach dem Lösen weiter. Druckstange und Drehpunkt drücken beide Backen, deshalb schleift es in beide Richtungen gleich.',
    keptPullTells:
      'Ein Rad; der Hebel steht von seinem Anschlag weg, und am Entlüfter ändert sich nichts.',
    keptPullRemedy: 'Seilzug erneuern.',
    stretchedCableShort: 'der Hub des Hebels geht vor dem Haken verloren',
    stretchedCableChange: 'Seilzug 10 mm mehr Lose',
    stretchedCableMechanism:
      'Der Handhebel nimmt die Lose auf, bevor sich in der Trommel etwas bewegt. Die Backen sind, wie sie waren.',
    stretchedCableTells:
      'Viele Rasten bei gutem Pedal: das Pedal urteilt über den Spalt, der Hebel über Spalt und Seilzug.',
    stretchedCableRemedy:
      'Seilzug einstellen oder erneuern, sobald die Backen stimmen. Nie die Backen mit ihm einstellen.',
    stiffPivotShort: 'die halbe Zugkraft kommt nie bei den Backen an',
    stiffPivotChange: 'halbe Zugkraft des Seilzugs im Drehpunkt des Hebels verloren',
    stiffPivotMechanism:
      'Ein verrosteter Drehpunkt nimmt einen Teil der Zugkraft weg, auf dem Hinweg und auf dem Rückweg.',
    stiffPivotTells:
      'Handbremse schwach, in beide Richtungen gleich, bei gutem Pedal; der Hebel bewegt sich langsam.',
    stiffPivotRemedy: 'Hebel gangbar machen oder erneuern, die andere Seite prüfen.',
  },

  /* sim/workshop/faults-drum.ts */
  workshopFaultsDrum: {
    ovalDrumShort: 'schleift zweimal je Umdrehung',
    ovalDrumChange: 'Radius ± 0,12 mm, Nachsteller einen Zahn weiter',
    ovalDrumMechanism:
      'So eingestellt, dass sie an einer Stelle gerade frei läuft, schleift sie dort, wo die Bohrung enger ist, und beim Bremsen wird das Pedal zweimal je Umdrehung zurückgedrückt. Von selbst stellt der Nachsteller hier nicht weiter: ein langer Belag trifft eine unrunde Bohrung zuerst mit seinen Enden, das verkürzt seinen Hub.',
    ovalDrumTells: 'Das Zweipunkt-Messgerät zeigt je nach Winkel anderes.',
    ovalDrumRemedy: 'Erneuern oder innerhalb der eingeschlagenen Grenze ausdrehen; paarweise.',
    drumOffCentreShort: 'schleift einmal je Umdrehung',
    drumOffCentreChange: 'Achse der Bohrung 0,20 mm neben der Radachse',
    drumOffCentreMechanism:
      'Schmutz oder Rost am Flansch versetzt die ganze Bohrung. Sie ist rund, dreht sich aber um einen anderen Punkt. Auf den Rollen bremst sie deshalb stärker, nicht schwächer: die Kolben drücken nicht stärker, aber jeder Belag trägt mit nur einem Ende, mal mit der Spitze, mal mit der Ferse, und wird dort in die Trommel gekeilt.',
    drumOffCentreTells: 'Das Zweipunkt-Messgerät zeigt ringsum dasselbe, die Messuhr schlägt aus.',
    drumOffCentreRemedy:
      'Beide Flächen reinigen und wieder aufsetzen. Kein Hammer auf die Trommelwand.',
    lipShort: 'der unverschlissene Rand hält die Trommel',
    lipChange: 'Lauffläche und Beläge 0,15 mm tiefer verschlissen, der Rand wie neu',
    lipMechanism:
      'Die Lauffläche verschleißt, der Rand nicht. Beläge, die außerhalb vom Radius des Rands ruhen, kommen nicht an ihm vorbei.',
    lipTells:
      'Sie dreht frei, rutscht ein wenig, dann steht sie an; um Zähne zurückgestellt, kommt sie.',
    lipRemedy:
      'Um Zähne zurückstellen, dann Trommel und Belag beurteilen. Nicht an der Ankerplatte hebeln.',
    hubRustShort: 'die Trommel sitzt auf ihrem Zentrierbund fest',
    hubRustChange: 'Rostverbindung an der Nabe gesetzt',
    hubRustMechanism:
      'Trommel und Nabe sind an ihrem Sitz zusammengerostet. Das wirkt längs der Achse, in der Bremse ändert sich nichts.',
    hubRustTells: 'Sie dreht frei und rutscht überhaupt nicht.',
    hubRustRemedy: 'Rostlöser, und die Abdrückgewinde, falls sie welche hat.',
    grooveShort: 'die Kante der Backe hakt, dann springt sie',
    grooveChange: 'eine Kante bricht bei 150 N aus ihrer Rille',
    grooveMechanism:
      'Die Backe sitzt in einer Rille und kommt spät und mit einem Ruck heraus. Wie tief, und wie sie kippt, liegt längs der Achse und wird nicht gezeigt.',
    grooveTells: 'Erst nichts, dann alles auf einmal; Spuren an den Auflagen.',
    grooveRemedy: 'Ankerplatte instand setzen oder erneuern.',
    bearingShort: 'frei auf Böcken, heiß auf der Straße',
    bearingChange: 'die belastete Trommel steigt 0,30 mm gegen die Ankerplatte',
    bearingMechanism:
      'Unter Last geht die Trommel nach oben, gegen Backen, die bei der Ankerplatte bleiben: die Fersenenden verlieren den größten Teil ihres Spalts.',
    bearingTells: 'Auf Böcken kein Schleifen; das Rad wackelt; Bohrung und Messuhr sind gut.',
    bearingRemedy: 'Das Radlager, nach Angabe des Herstellers.',
    rustedOnShort: 'sitzt fest, bis es einmal bricht',
    rustedOnChange: 'Rostverbindung zwischen Belag und Bohrung gesetzt',
    rustedOnMechanism:
      'Nass geparkt, hält Eisenrost den Belag fest. Er schert einmal ab und ist weg. Seine Festigkeit ist eine Größenordnung, aus dem Gedächtnis.',
    rustedOnTells: 'Sie dreht gar nicht, dann kommt sie mit einem Ruck frei.',
    rustedOnRemedy:
      'Freiwippen, durch leichtes Bremsen trocknen, nicht nass mit angezogener Handbremse parken.',
  },

  /* sim/workshop/faults-friction.ts */
  workshopFaultsFriction: {
    common: 'Faktor auf den Reibwert: allgemein üblich, ohne veröffentlichte Tabelle.',
    fluidOnLiningsShort: 'halbe Reibung, beide Backen',
    fluidOnLiningsChange: 'Reibwert × 0,5 an beiden Belägen',
    fluidOnLiningsMechanism: (common: string) =>
      `Ein Film halbiert die Reibung; das Moment fällt stärker, denn die Selbstverstärkung geht mit verloren. ${common}`,
    fluidOnLiningsTells: 'Schwach, in beide Richtungen gleich, und eine nasse Staubkappe.',
    fluidOnLiningsRemedy: 'Radzylinder, und Backen auf beiden Seiten.',
    oilOnOneLiningShort: 'die hintere Backe greift nicht mehr',
    oilOnOneLiningChange: 'Reibwert × 0,5 am hinteren Belag eines Rads',
    oilOnOneLiningMechanism: (common: string) =>
      `Öl, das am Nabendichtring vorbeikommt, benetzt einen Belag. Diese Backe fehlt dort, wo sie auflaufen würde. ${common}`,
    oilOnOneLiningTells:
      'Geparkt hält er in einer Richtung und gibt in der anderen nach; rückwärts schwach heißt: die hintere Backe.',
    oilOnOneLiningRemedy: 'Das Leck finden, Backen auf beiden Seiten.',
    glazedShort: 'poliert, ein Viertel der Reibung verloren',
    glazedChange: 'Reibwert × 0,75 an allen Belägen',
    glazedMechanism: (common: string) =>
      `Viele sanfte Bremsungen polieren die Fläche. Spalt und Weg bleiben, wie sie waren, die Kraft nicht. ${common}`,
    glazedTells:
      'Pedal so hart und kurz wie immer, Moment niedrig an beiden Rädern und in beide Richtungen.',
    glazedRemedy: 'Die Ursache finden, neu einlaufen lassen oder erneuern.',
    dampShort: 'mehr Reibung für einige Bremsungen',
    dampChange: 'Reibwert × 1,45 an allen Belägen',
    dampMechanism: (common: string) =>
      `Ein Hauch von Rost hebt die Reibung, und die Selbstverstärkung der auflaufenden Backe macht mehr als das Doppelte daraus. Nach einigen Bremsungen ist er weg. ${common}`,
    dampTells: 'Nur kalt und feucht, nur die ersten Bremsungen; jedes Lüftspiel normal.',
    dampRemedy: 'Durch leichtes Bremsen trocknen. Blockiert sie, Belagsorte und Federn prüfen.',
    waterInsideShort: 'ein Film für einige Bremsungen',
    waterInsideChange: 'Reibwert × 0,4 an allen Belägen',
    waterInsideMechanism: (common: string) =>
      `In der Trommel steht Wasser, und ein Film trägt den Belag. ${common}`,
    waterInsideTells:
      'Gleich nach tiefem Wasser oder Regen, weg, sobald durch leichtes Bremsen getrocknet ist.',
    waterInsideRemedy: 'Mit leicht betätigter Bremse trocknen.',
    hotFadeShort: 'weniger Reibung in einer weiteren Trommel',
    hotFadeChange: 'Trommel 287 K heißer',
    hotFadeMechanism:
      'Die Reibung fällt mit der Hitze, und die Trommel ist gewachsen: der Belag trägt auf seinem Scheitel. So wird das Pedal zugleich härter und länger.',
    hotFadeTells: 'Temperatur; beim Abkühlen kommt alles wieder.',
    hotFadeRemedy: 'Abkühlen lassen. Beim nächsten Gefälle mit dem Motor bremsen.',
    oversizeBoreShort: 'trägt in der Mitte, bis eingelaufen',
    oversizeBoreChange:
      'neue Backen in einer im Radius 0,30 mm größeren Trommel, getreten, bis nichts mehr klickt',
    oversizeBoreMechanism:
      'Beläge, die für eine neue Trommel geschliffen sind, sind für eine größere zu stark gekrümmt: nur ihre Mitte trägt.',
    oversizeBoreTells:
      'Neue Beläge, Anlage nur in der Mitte; mit Tuschierfarbe am Belag sieht man es.',
    oversizeBoreRemedy: 'Einlaufen lassen, oder Backen und Trommel, die zueinander passen.',
    liningEndsShort: 'trägt nur an Spitze und Ferse',
    liningEndsChange: 'Beläge im Radius 0,20 mm größer als eine neue Trommel geschliffen',
    liningEndsMechanism:
      'Die Enden liegen zuerst an. Pressung an der Spitze zählt am meisten, deshalb packt sie giftig zu.',
    liningEndsTells: 'Schwer aufzusetzen, und Anlage nur an den Enden.',
    liningEndsRemedy: 'Die richtigen Backen.',
  },

  /* sim/workshop/faults-pistons.ts */
  workshopFaultsPistons: {
    weakSpringsShort: 'die Backen lösen sich zu früh von der Druckstange',
    weakSpringsChange: 'halbe Rate und Kraft aller Rückzugfedern',
    weakSpringsMechanism:
      'Federn klemmen die Backen auf die Druckstange. Schwächere lassen den Spalt in Ruhe, wie er ist, aber die Backen gehen beim halben Druck auseinander, und es bleibt weniger, um Kolben und Hebel zurückzuholen.',
    weakSpringsTells: 'Erste Berührung beim halben Druck, der Spalt unverändert.',
    weakSpringsRemedy: 'Ein neuer Satz Federn auf beiden Seiten.',
    strongSpringsShort: 'falsche Federn, oder in den falschen Löchern eingehängt',
    strongSpringsChange: 'Rate und Kraft aller Rückzugfedern um die Hälfte größer',
    strongSpringsMechanism:
      'Jeder Kolben muss die Feder überwinden, bevor sein Belag drückt. Mehr Feder lässt weniger für die Trommel.',
    strongSpringsTells:
      'Das Rad bremst bei leichtem Pedal später und schwächer, sonst ist alles in Ordnung.',
    strongSpringsRemedy: 'Nach dem Bild oder nach der anderen Seite neu einhängen.',
    stuckPistonShort: 'die vordere Backe wird nicht gedrückt',
    stuckPistonChange: 'vorderer Kolben bewegt sich nicht',
    stuckPistonMechanism:
      'Nur die hintere Backe wird gedrückt: vorwärts läuft sie ab und tut wenig, rückwärts läuft sie auf.',
    stuckPistonTells:
      'Vorwärts schwach, rückwärts viel weniger schwach; eine Backe lässt sich nicht wippen.',
    stuckPistonRemedy: 'Radzylinder erneuern, die andere Seite ansehen.',
    sluggishPistonsShort: 'trockene Manschetten bremsen hin und zurück',
    sluggishPistonsChange: 'jede Manschette reibt mit 100 N mehr',
    sluggishPistonsMechanism:
      'Die Reibung der Manschette nimmt ihren Teil der Kraft und hält den Kolben nach dem Lösen gegen die Federn draußen.',
    sluggishPistonsTells:
      'Weniger Moment bei gleichem Druck; nach dem Lösen vergeht das Schleifen langsam.',
    sluggishPistonsRemedy: 'Radzylinder erneuern.',
    leaningPartShort: 'ein klemmendes Teil drückt auf die vordere Spitze',
    leaningPartChange: '100 N auf die vordere Spitze',
    leaningPartMechanism:
      'Die Federn hängen zwischen den Backen, deshalb geht das Paar zur Seite, und ein Belag liegt an der Trommel. In der einen Richtung läuft er auf, in der anderen ab.',
    leaningPartTells: 'Von Hand in einer Richtung dreimal so schwer wie in der anderen.',
    leaningPartRemedy: 'Das Teil finden: Kolben, Hebel, Kante auf ihrer Auflage.',
    hoseShort: 'die Leitung bleibt unter Druck',
    hoseChange: '8 bar bleiben nach dem Lösen minutenlang in einer Leitung',
    hoseMechanism:
      'Ein gequollener Schlauch lässt Druck hinein und kaum heraus. Oberhalb der Schwelle der Federn lässt die Selbstverstärkung das Schleifen schnell wachsen.',
    hoseTells:
      'Ein Rad; der Bremshebel liegt an, und es ist in dem Moment frei, in dem der Entlüfter öffnet.',
    hoseRemedy: 'Schläuche paarweise erneuern.',
    portShutShort: 'die Bohrung bleibt verdeckt, alle Räder halten Druck',
    portShutChange:
      'kein Leerspiel; 8 bar bleiben in der Leitung, sobald die Flüssigkeit warm ist (6 kalt)',
    portShutMechanism:
      'Der Hauptzylinderkolben verdeckt seine Ausgleichsbohrung. Flüssigkeit, die warm wird, kann nirgendwohin, und der Druck steigt beim Fahren.',
    portShutTells: 'Alle Räder gleich; kein Leerspiel am Pedal; jeder Entlüfter macht alle frei.',
    portShutRemedy: 'Leerspiel einstellen. Probefahrt zuletzt.',
    otherBoreShort: 'derselbe Druck drückt stärker',
    otherBoreChange: 'Bohrung 20,64 mm an einem Rad',
    otherBoreMechanism:
      'Kraft ist Druck mal Fläche. Die Federn nehmen beiden gleich viel, deshalb ist der Unterschied bei leichtem Pedal am größten.',
    otherBoreTells:
      'Ein Rad zu stark, in beide Richtungen gleich, und trocken; mit der Handbremse ist es wie das andere.',
    otherBoreRemedy: 'Nach dem Bohrungsmaß zuordnen, nach der Liste des Herstellers.',
    airShort: 'das Pedal drückt zuerst Gas zusammen',
    airChange: 'der übrige Bremskreis gibt um 600 mm³ je MPa nach',
    airMechanism:
      'Gas schrumpft mit steigendem Druck, deshalb wächst der Weg mit dem Druck, statt vor ihm zu kommen.',
    airTells: 'Ein federndes Pedal: kurz bei 10 bar, lang bei 40, bei normalen Rasten und Spalten.',
    airRemedy: 'Entlüften und die Ursache finden.',
  },

  /* sim/workshop/faults.ts */
  workshopFaults: {
    stepTooCoarse: {
      name: 'Schritt zu grob für den Spalt',
      because:
        'der Zahn gehört zur Bremse: wählen Sie eine mit feineren Zähnen; bei einer unrunden Trommel zeigt es sich als „Trommel unrund“',
    },
    bellMouthedOrTapered: {
      name: 'Trommel trichterförmig oder konisch',
      because: 'die Bohrung ändert sich längs der Achse, und diese Ansicht blickt an ihr entlang',
    },
    holdDownLost: {
      name: 'Niederhalter verloren',
      because: 'die Backe kippt aus dieser Ebene heraus: die Ebene „Von der Kante“ zeigt es',
    },
    liningLooseOn: {
      name: 'Belag lose auf seinem Kranz',
      because:
        'ein loser Belag verkeilt sich irgendwo; hier sitzen die Beläge fest auf ihren Backen',
    },
    pinOrAbutment: {
      name: 'Bolzen oder Widerlager verschlissen',
      because:
        'Bolzen haben hier kein Spiel; das einzelne Klacken nach einem Richtungswechsel ist das Zeichen dafür',
    },
  },

  /* sim/workshop/finding-text.ts */
  workshopFindings: {
    wheels: {
      left: 'links',
      right: 'rechts',
    },
    names: {
      trouble: 'Störung',
      pedal: 'Pedal',
      'in a stop': 'beim Bremsen',
      'at 10 bar': 'bei 10 bar',
      'at 40 bar': 'bei 40 bar',
      'next press': 'nächster Tritt',
      clicks: 'Klicken',
      'pumped quickly up by': 'schnell gepumpt höher um',
      notches: 'Rasten',
      'hotter by': 'heißer um',
      'front wheels': 'Vorderräder',
      turns: 'dreht',
      forward: 'vorwärts',
      backward: 'rückwärts',
      rubs: 'schleift',
      drum: 'Trommel',
      'wheel rocks': 'Kippspiel',
      wheel: 'Rad',
      drags: 'schleift',
      'drags from': 'schleift ab',
      'comes on': 'greift',
      'goes back in': 'löst sich in',
      'goes back': 'löst sich',
      'off its stop': 'Abstand vom Anschlag',
      lever: 'Hebel',
      flexed: 'beim Bewegen',
      'pedal forward': 'Pedal vorwärts',
      'pedal backward': 'Pedal rückwärts',
      'parked forward': 'Handbremse vorwärts',
      'parked backward': 'Handbremse rückwärts',
      'held by': 'gehalten durch',
      'overlap at the lip': 'Überdeckung am Grat',
      'teeth back': 'Zähne zurück',
      pads: 'Auflagen',
      shoes: 'Backen',
      'least bore': 'kleinster Innendurchmesser',
      greatest: 'größter',
      'front lining': 'vorderer Belag',
      'rear lining': 'hinterer Belag',
      swing: 'Ausschlag',
      tooth: 'Zahn',
    },
    says: {
      'hand does not turn it': 'von Hand nicht zu drehen',
      'stands still': 'steht still',
      'at the left rear only': 'nur hinten links',
      'at the right rear only': 'nur hinten rechts',
      'not at one wheel alone': 'nicht nur an einem Rad',
      'as it should be': 'wie es sein soll',
      'far and springy': 'weit und federnd',
      'far and firm': 'weit und fest',
      throbs: 'pulsiert',
      steady: 'ruhig',
      heard: 'zu hören',
      none: 'nicht zu hören',
      'too hot to touch': 'zu heiß zum Anfassen',
      cool: 'kühl',
      'warm too': 'auch warm',
      'as ever': 'wie immer',
      'slides off': 'lässt sich abziehen',
      'slides, then stops': 'rutscht, bleibt dann hängen',
      'does not slide': 'rutscht nicht',
      'not at all, then frees with one jerk': 'gar nicht, dann mit einem Ruck frei',
      freely: 'frei',
      'once a turn': 'einmal je Umdrehung',
      'twice a turn': 'zweimal je Umdrehung',
      'here and there': 'hier und da',
      'does not rock': 'ohne Kippspiel',
      dull: 'klingt dumpf',
      rings: 'klingt hell',
      already: 'schon',
      'not up to 40 bar': 'nicht bis 40 bar',
      'late, all at once': 'spät, auf einmal',
      smoothly: 'gleichmäßig',
      'not by itself': 'nicht von selbst',
      'nothing changes': 'ändert nichts',
      'frees at once': 'sofort frei',
      eases: 'dreht leichter',
      home: 'am Anschlag',
      'comes slowly': 'langsam zurück',
      'comes and goes': 'hin und zurück',
      nothing: 'nichts',
      lip: 'den Grat',
      'lever off its stop': 'den vom Anschlag abstehenden Hebel',
      'shoes not centred': 'Backen außer Mitte',
      'adjuster too far out': 'den zu weit gestellten Nachsteller',
      'pressure in the line': 'Druck in der Leitung',
      'cable keeps its pull': 'bleibenden Zug im Seilzug',
      'part leans on a shoe': 'ein an einer Backe anliegendes Teil',
      'rust at the hub': 'Rost an der Nabe',
      'linings rusted on': 'festgerostete Beläge',
      'all are not enough': 'alle reichen nicht',
      grooved: 'mit Rillen',
      smooth: 'glatt',
      'one will not rock': 'eine bewegt sich nicht',
      'rock alike': 'bewegen sich gleich',
      stiff: 'schwergängig',
      'swings free': 'schwingt frei',
      'of the other side': 'von der anderen Seite',
      'drops in': 'fällt ein',
      dry: 'trocken',
      'boot wet': 'Staubkappe nass',
      'oil from the hub': 'Öl aus der Nabe',
    },
  },

  /* sim/workshop/forecast-text.ts */
  workshopForecastText: {
    one: { mm: 'mm', teeth: 'Zahn', steps: 'Schritt' },
    many: { mm: 'mm', teeth: 'Zähne', steps: 'Schritte' },
    limitOfMm: (limit: number) => `zur Grenze von ${limit} mm`,
    largestDiameterOfMm: (limit: number) => `zum größten Durchmesser von ${limit} mm`,
    lastOf: (limit: number) => `zum letzten von ${limit}`,
    leftToThe: (margin: string, to: string) => `noch ${margin} bis ${to}`,
    noneLeftToThe: (to: string) => `nichts mehr bis ${to}`,
    theRateMayBeHalf: '; die Rate kann halb oder doppelt so groß sein',
    lostInKmIsIn: (
      lost: string,
      distance: string,
      each: string,
      unit: 'mm' | 'steps' | 'teeth',
      left: string,
      theRate: string,
    ) =>
      `${lost} Verlust auf ${distance} km sind ${each} ${unit === 'mm' ? 'mm' : unit === 'steps' ? 'Schritte' : 'Zähne'} auf 1000 km; ${left}${theRate}.`,
  },

  /* sim/workshop/inspection.ts */
  workshopInspection: {
    noScore: 'keine',
    facesSound: 'in Ordnung',
    springsSound: 'in Ordnung',
    dry: 'trocken',
    leaks: 'undicht',
    theLimit: (more: string, past: 'over' | 'under') =>
      `${more} ${past === 'over' ? 'über' : 'unter'} der Grenze`,
    left: (less: string) => `noch ${less}`,
    refitOnlyWithADate: 'Einbau nur mit einem Termin zum Nachmessen.',
    renewDrum: 'Trommel erneuern, die des anderen Rads passend dazu.',
    noLimitSet: 'keine Grenze eingetragen',
    typeInTheMarkCast: 'Die eingegossene Marke der Trommel eintragen.',
    noLimitSet2: (more: string) => `${more}, keine Grenze eingetragen`,
    overTheLimit: (more: string, more2: string) => `${more}: ${more2} über der Grenze`,
    seenLikely: (more: string, more2: string) => `${more} gesehen, ${more2} wahrscheinlich`,
    threeAnglesCanMissThe:
      'Drei Winkel können die weiteste Stelle verfehlen: Messgerät drehen, um größten und kleinsten Wert zu finden.',
    inLimit: (more: string) => `${more}: in der Grenze`,
    fromEdgeToDeepNo: (more: string) => `${more} vom Rand zur Tiefe, keine Grenze eingetragen`,
    alikeAtBothDepths: 'in beiden Tiefen gleich',
    backOffBeforePulling: 'vor dem Abziehen zurückstellen',
    backTheAdjusterOffBefore:
      'Den Nachsteller zurückstellen, bevor die Trommel aufgesetzt oder abgezogen wird.',
    tooLowToCatch: 'zu niedrig, um zu haken',
    cutOrRenewBothDrums: 'Beide Trommeln ausdrehen oder erneuern.',
    deepCutBelow: (more: string) => `${more} tief: Ausdrehen siehe unten`,
    lightlyScoredItMayStay:
      'Leicht riefig, darf sie mit den Belägen bleiben, die in ihr gelaufen sind; bei neuen ausdrehen oder erneuern.',
    thinnestPointNotMeasured: 'dünnste Stelle nicht gemessen',
    lookAlongTheWholeArc: 'Am ganzen Bogen danach suchen.',
    typeInTheMakersLeast: 'Die Mindestdicke des Belags nach Hersteller eintragen.',
    renewTheLiningsOnBoth: 'Beläge an beiden Rädern erneuern.',
    notSound: 'nicht in Ordnung',
    renewWhatIsCrackedLoose:
      'Erneuern, was gerissen, lose, tief riefig oder mit Flüssigkeit in Berührung gekommen ist.',
    renewTheCylinderAndAny:
      'Radzylinder erneuern, dazu jeden Belag, an den Flüssigkeit gekommen ist, an beiden Rädern.',
    stretchedOrBroken: 'gelängt oder gebrochen',
    renewTheSpringsOnBoth: 'Federn an beiden Rädern erneuern.',
    movesFreely: 'leichtgängig',
    stuckOrWorn: 'fest oder verschlissen',
    freeOrRenewLeverAnd:
      'Hebel und Druckstange als Paar gangbar machen oder erneuern, dann neu einstellen.',
    numberOfAllNotSet: (tooth: number) => `${tooth}; Gesamtzahl nicht eingetragen`,
    wordsWord: (tooth: number, teeth: number) => `${tooth} von ${teeth}`,
    noneLeft: (a: string) => `${a}: keiner mehr übrig`,
    fromHereTheClearanceGrows: 'Von hier an wächst das Lüftspiel.',
    offItsStop: (more: string) => `${more} vom Anschlag weg`,
    slackenTheCableUntilThe:
      'Seilzug lockern, bis der Hebel anliegt; Backen einstellen, den Seilzug zuletzt.',
    onItsStop: 'am Anschlag',
    noLimitSet3: (now: number, change: string) => `${now}${change}, keine Grenze eingetragen`,
    overTheLimit2: (now: number, change: string) => `${now}${change}: über der Grenze`,
    shoesFirstLeverHomeCable: 'Erst Backen, Hebel anliegend, Seilzug zuletzt.',
    inLimit2: (now: number, change: string) => `${now}${change}: in der Grenze`,
  },

  /* sim/workshop/letters-text.ts */
  workshopLettersText: {
    youTypedItsFirstLetter: (own: string, letters: string | undefined, own2: string | undefined) =>
      ` Sie haben ${own} eingetippt: Der erste Buchstabe wird übernommen. Wie weit die Reibung in der Hitze fällt, kommt aus der Tabelle. Sie führt auf ${letters}, wo Ihrer ${own2} hat; was hier für heiß steht, gilt also nicht für Ihren Belag.`,
    itsLiningsGripAsWould: (letters: string, cold: string, hot: string, other: string) =>
      `Seine Beläge greifen wie ${letters}: ${cold} kalt, ${hot} heiß.${other} Die zwei Buchstaben stehen auf der Kante des Belags, jeder für ein Band von einem Zehntel Breite: Ihrer kann um ein Viertel abweichen und dieselben tragen.`,
  },

  /* sim/workshop/life-text.ts */
  workshopLifeText: {
    at: (grouped: string) => `bei ${grouped} km`,
    woundBackToTooth: (tooth: number, at: string) => `Auf Zahn ${tooth} zurückgestellt ${at}`,
    clickTooth: (tooth: number, at: string) => `Klick: Zahn ${tooth} ${at}`,
    noneItDrags: 'keines, sie schleift',
    steppedOnADrumOf: (temperature: number, at: string, noneIt: string) =>
      `Nachgestellt bei einer Trommel von ${temperature} °C ${at}: Ein kalter Tritt hätte das nicht getan; Lüftspiel kalt ${noneIt}`,
    aWornToothLetGo: (at: string, tooth: number) =>
      `Ein verschlissener Zahn ist unter dem Zug der Handbremse übergesprungen ${at}: zurück auf Zahn ${tooth}`,
    lastToothUsedFromHere: (stop: number, at: string) =>
      `Letzter Zahn, ${stop}, verbraucht ${at}: Ab hier wächst das Lüftspiel`,
    liningAtItsLimitOf: (cap: string, thicknessMin: number, at: string) =>
      `${cap === 'Front' ? 'Vorderer' : 'Hinterer'} Belag an seiner Grenze von ${thicknessMin} mm ${at}`,
    liningWornToItsRivets: (cap: string, at: string) =>
      `${cap === 'Front' ? 'Vorderer' : 'Hinterer'} Belag bis auf die Niete verschlissen ${at}: Nietköpfe reiben an der Trommel`,
    liningWornThroughTheTable: (cap: string, at: string) =>
      `${cap === 'Front' ? 'Vorderer' : 'Hinterer'} Belag durchgescheuert ${at}: Der Kranz reibt an der Trommel`,
    drumPastItsLargestDiameter: (radiusMax: number, at: string) =>
      `Trommel über ihrem größten Durchmesser von ${radiusMax} mm ${at}`,
    pistonOutOfItsBore: (cap: string, at: string, stroke: number) =>
      `${cap === 'Front' ? 'Vorderer' : 'Hinterer'} Kolben aus seiner Bohrung ${at}: Er geht weiter als ${stroke} mm`,
    noBalanceFoundTheDrum: (at: string) =>
      `Kein Gleichgewicht gefunden ${at}: Die Trommel nimmt eine Backe von ihrem Lager mit; nicht weitergefahren`,
    dragsAtRestWithA: (at: string, value: string, torque: number) =>
      `Schleift gelöst bei kalter Trommel ${at}: Ein Belag steht ${value} mm in ihr, und ${torque} N·m drehen sie`,
    freeAgainAtRestWith: (at: string) => `Gelöst bei kalter Trommel wieder frei ${at}`,
    seizedTheWheelWouldSlide: (at: string, value: number) =>
      `Festgegangen ${at}: Das Rad würde eher rutschen als drehen, ${value} N·m je Bremse; nicht weitergefahren`,
    clampedMoreThanTheStrut: (at: string, value: string) =>
      `Stärker geklemmt, als die Druckstange aushält ${at}, ${value} kN: Ein Teil gibt nach; nicht weitergefahren`,
    parkingLeverHeldMmOff: (value: string, at: string) =>
      `Bremshebel ${value} mm von seinem Anschlag gehalten ${at}: Der Seilzug stellt die Backen, und der nächste Klick kommt spät`,
    theShoeWouldLockBy: (side: 'front' | 'rear', at: string) =>
      `Die ${side === 'front' ? 'vordere' : 'hintere'} Backe würde von selbst blockieren ${at}: nicht weitergefahren`,
  },

  /* sim/workshop/limits.ts */
  workshopLimits: {
    thisTeachingBrake: (title: string) => `Diese Lehrbremse: ${title}`,
    thisTeachingBrake2: 'diese Lehrbremse',
    inventedForThisBrakeThey: 'Für diese Bremse erfunden. Es sind nicht die Werte Ihres Fahrzeugs.',
    myBrake: (title: string) => `Meine Bremse: ${title}`,
    myBrakeAsTyped: 'meine Bremse, wie eingetippt',
    asYouTypedThemIn:
      'Wie Sie sie unter Meine Bremse eingetippt haben. Was dort nicht eingetippt ist, hat keine Grenze.',
    makerName: 'Meine eigene Bremse, hier eingetippt',
    makerWhose: 'meine eigenen, wie eingetippt',
    makerAbout:
      'Aus der Angabe auf der Trommel und den Wartungsdaten des Fahrzeugs. Nichts ist gesetzt, bis es eingetippt ist.',
    regulationName: 'US-Verkehrsvorschrift, Lkw und Anhänger',
    regulationWhose: 'US 49 CFR 393.47(d)',
    regulationAbout:
      '49 CFR 393.47(d): hydraulische Trommelbremsen mindestens 1,6 mm (1/16 Zoll) in der Mitte der Backe; hier an der dünnsten Stelle verlangt. 570.59(b): die Trommel innerhalb der eingegossenen Angabe; tippen Sie sie ein.',
    testName: 'Britischer Prüftext von 2012',
    testWhose: 'Britische Prüfung, 2012',
    testAbout:
      'Beanstandet einen Belag unter 1,5 mm an irgendeiner Stelle, gelesen in einem Text von 2012; neuere können abweichen. Tippen Sie die Angabe auf der Trommel ein.',
  },

  /* sim/workshop/measured-notes.ts */
  workshopMeasuredNotes: {
    noDrumDiameterLoadedAs: 'Kein Durchmesser der Trommel: als neu geladen.',
    noThicknessOfTheLining: (side: 'front' | 'rear') =>
      `Keine Dicke des ${side === 'front' ? 'vorderen' : 'hinteren'} Belags: als neu geladen.`,
    notAllOfTheLining: (side: 'front' | 'rear', thinnest: number) =>
      `${side === 'front' ? 'Vorderer' : 'Hinterer'} Belag nicht überall gemessen: gleichmäßig ab ${thinnest} mm angenommen.`,
    toothNotCountedWherePresses: (tooth: number) =>
      `Zahn nicht gezählt: ${tooth}, wo Tritte nicht mehr klicken.`,
  },

  /* sim/workshop/new-parts.ts */
  workshopNewParts: {
    theDrumDoesNotGo: 'Die Trommel geht bei kürzester Druckstange nicht über sie: falsches Teil.',
    bearsAllAlong: 'Trägt auf ganzer Länge',
    bearsAtTheFirstOff: (where: 'crown' | 'ends' | 'heel' | 'toe', gap: string) =>
      `Trägt zuerst ${where === 'crown' ? 'in der Mitte' : where === 'ends' ? 'an den Enden' : where === 'heel' ? 'an der Ferse' : 'an der Spitze'}, sonst ${gap} Abstand`,
    locksDoNotFit: (bears: string) => `${bears}: blockiert. Nicht einbauen.`,
    first: (torque: string, right: string) =>
      `${torque} N·m beim ersten Tritt, wo die richtigen ${right} geben`,
    itGrabsDoNotFit: (bears: string, first: string) =>
      `${bears}: ${first}. Sie beißt; nicht einbauen.`,
    weakUntilBeddedInSome: (bears: string, first: string) =>
      `${bears}: ${first}. Schwach bis eingelaufen, einige hundert km.`,
    noVerdictOfYourBrake: (what: string) =>
      `Kein Urteil: ${what} Ihrer Bremse ist nur angenommen. Unter Meine Bremse eintippen.`,
    drumOrNewLining: 'Trommel oder neuer Belag',
    madeForTheOtherSide: 'Für die andere Seite gemacht: Paar tauschen, nicht einbauen.',
    forThisSide: 'Für diese Seite.',
    forEitherSide: 'Für beide Seiten.',
    liningsWidth: 'Breite des Belags',
    asWideAsTheOld: (right: string) => `So breit wie der alte, ${right}.`,
    widerThanLookWhetherIt: (by: string, right: string) =>
      `${by} breiter als ${right}: Prüfen, ob er von der Ankerplatte frei bleibt und in der Laufspur der Trommel liegt.`,
    narrowerThanPressedHarder: (by: string, right: string, right2: string) =>
      `${by} schmaler als ${right}: um ${right2} % stärker gepresst, also um so viel schneller verschlissen.`,
    cylindersBore: 'Bohrung des Zylinders',
    theBoreOfTheOld: (right: string) => `Die Bohrung des alten, ${right}.`,
    anotherCylinderForceOnBoth: (share: string, right: string) =>
      `Ein anderer Zylinder: ${share} Kraft auf beide Backen gegenüber ${right}. Das Fahrzeug zieht schief, oder die Achse bremst zu viel oder zu wenig.`,
    names: {
      lining: 'Beläge',
      ground: 'Schleifradien',
      width: 'Breiten',
      bore: 'Zylinderbohrungen',
    },
    unlikeLeftAndRightOne: (names: string, left: string, right: string) =>
      `${names} ungleich, links ${left} und rechts ${right}: Eines davon ist das falsche Teil.`,
    oneIsMadeForOne: 'Eines ist für eine bestimmte Seite gemacht, das andere für beide: kein Paar.',
  },

  /* sim/workshop/own-brake.ts */
  workshopOwnBrake: {
    ownBrakeMadeFrom: (title: string) => `Eigene Bremse, abgeleitet von ${title}.`,
    nothingYet: 'noch nichts',
    measuredByItsOwnerAll: (ownKeys: string, title: string) =>
      `Vom Besitzer gemessen: ${ownKeys}. Alles andere angenommen in den Verhältnissen von ${title}.`,
  },

  /* sim/workshop/own-says.ts */
  workshopOwnSays: {
    theDrumIsSmallerThan: (fresh: string) => `Die Trommel ist ${fresh} kleiner als neu.`,
    itCannotBeMeasureIn:
      'Das kann nicht sein. Messen Sie in der Laufspur, nicht auf dem Grat, und sehen Sie noch einmal nach dem Ø neu.',
    drumNoMarkTyped: (drumNow: string) => `Trommel ${drumNow}, keine Angabe eingetippt.`,
    noVerdictTypeTheLargest: 'Kein Urteil: Tippen Sie den größten Ø ein, der eingegossen ist.',
    theDrumIsOverIts: (drumNow: string) => `Die Trommel ist ${drumNow} über ihrer Angabe.`,
    foundCastOnItRenew: (drumNow: string, mark: string) =>
      `Gefunden ${drumNow}, eingegossen ${mark}: erneuern, und die am anderen Rad passend dazu.`,
    drumLeftToTheMark: (floor: string) => `Trommel: noch ${floor} bis zur Angabe.`,
    foundCastOnIt: (drumNow: string, mark: string) => `Gefunden ${drumNow}, eingegossen ${mark}.`,
    theLiningIsThickerThan: (name: 'leading' | 'trailing', t: string) =>
      `Der ${name === 'leading' ? 'auflaufende' : 'ablaufende'} Belag ist ${t} dicker als neu.`,
    asAssumed: ' wie angenommen',
    foundNewMeasureTheLining: (t: string, thicknessNew: string, asAssumed: string) =>
      `Gefunden ${t}, neu ${thicknessNew}${asAssumed}: Messen Sie den Belag ohne den Stahlkranz und tippen Sie seine Dicke im Neuzustand ein.`,
    theLiningIsUnderIts: (name: 'leading' | 'trailing', liningMin: string) =>
      `Der ${name === 'leading' ? 'auflaufende' : 'ablaufende'} Belag ist ${liningMin} unter seinem Mindestmaß.`,
    foundLeastAsYouTyped: (t: string, liningMin: string) =>
      `Gefunden ${t}, Mindestmaß ${liningMin}, wie Sie es eingetippt haben: Beläge an beiden Rädern erneuern.`,
    aDrumAsNew: 'einer Trommel wie neu',
    aBoreOf: (drumNow: string) => `einem Innendurchmesser von ${drumNow}`,
    worn: (leading: string, trailing: string, bore: string) =>
      `Beläge von ${leading} und ${trailing} in ${bore}`,
    should: (as: number, clearance: string) => `Zahn ${as} mit ${clearance}`,
    toothIsWhereItShould: (as: number) => `Auf Zahn ${as} sollte er stehen.`,
    leaveThereCountTheTeeth: (worn: string, clearance: string) =>
      `${worn} lassen dort ${clearance}. Zählen Sie die Zähne und tippen Sie sie ein.`,
    here: (tooth: number, clearanceFound: string) => `Zahn ${tooth} lässt ${clearanceFound}.`,
    thereIsNoTooth: (tooth: number) => `Es gibt keinen Zahn ${tooth}.`,
    thisAdjusterHasCountAgain: (teeth: number) =>
      `Dieser Nachsteller hat ${teeth}: Zählen Sie noch einmal, oder tippen Sie ein, wie viele er hat.`,
    shouldStandAtItHas: (worn: string, should: string) =>
      `${worn} sollten auf ${should} stehen: Er stellt nicht mehr nach oder lässt seine Zähne durchrutschen.`,
    shouldStandAtSetOn: (worn: string, should: string) =>
      `${worn} sollten auf ${should} stehen: von Hand vorgestellt, bei heißer Trommel nachgestellt, oder es sind nicht die Beläge, für die er nachgestellt hat.`,
    shouldStandAtTheAdjuster: (worn: string, should: string) =>
      `${worn} sollten auf ${should} stehen: Der Nachsteller arbeitet.`,
    withTheLeverAsAssumed: ', mit dem Hebel wie angenommen',
    computed: (as: string, hand: number, withThe: string) =>
      `${as} berechnet bei ${hand} N im Seilzug${withThe}`,
    notchesFitThatGap: (notches: number) =>
      `${notches} ${notches === 1 ? 'Raste passt' : 'Rasten passen'} zu diesem Spalt.`,
    theCableIsNotThe: (computed: string) => `${computed}. Am Seilzug liegt es nicht.`,
    notchesAreMoreThanThat: (notches: number) =>
      `${notches} ${notches === 1 ? 'Raste ist' : 'Rasten sind'} mehr, als dieser Spalt braucht.`,
    thePedalIsLongToo: (computed: string) =>
      `${computed}. Auch das Pedal ist lang: Der Spalt ist größer als gemessen.`,
    thePedalFits: 'Das Pedal passt',
    whereThePedalIsGood: 'Wenn das Pedal gut ist',
    cableStretchedOrSetWith: (computed: string, thePedal: string) =>
      `${computed}. ${thePedal}: Seilzug gelängt oder zu locker eingestellt.`,
    notchesAreFewerThanThat: (notches: number) =>
      `${notches} ${notches === 1 ? 'Raste ist' : 'Rasten sind'} weniger, als dieser Spalt braucht.`,
    lookWhetherTheParkingLever: (computed: string) =>
      `${computed}. Prüfen, ob der Bremshebel an seinem Anschlag liegt: Ein zu kurzer Seilzug hält ihn davon ab.`,
    withMasterCylinderAndPedal: ', mit Hauptzylinder und Pedal wie angenommen',
    computed2: (as: string, firm: number, withMaster: string) =>
      `${as} mm berechnet bei ${firm} bar${withMaster}`,
    mmOfPedalFitThat: (pedal: string) => `${pedal} mm Pedalweg passen zu diesem Spalt.`,
    mmOfPedalAreMore: (pedal: string) =>
      `${pedal} mm Pedalweg sind mehr, als dieser Spalt braucht.`,
    theNotchesFitAirIn: (computed: string) =>
      `${computed}. Die Rasten passen: Luft in der Leitung, oder ein anderer Spalt als an diesen Backen.`,
    countTheNotchesWithThem: (computed: string) =>
      `${computed}. Zählen Sie die Rasten: Sind es zu viele, ist es der Spalt; stimmen sie, ist es Luft.`,
    mmOfPedalAreLess: (pedal: string) =>
      `${pedal} mm Pedalweg sind weniger, als dieser Spalt braucht.`,
    liningsStandNearerThanMeasured: (computed: string) =>
      `${computed}. Die Beläge stehen näher als gemessen, oder der Tritt war leichter.`,
    head: (a: string, b: string) => `${a} und ${b} verschlissen`,
    model: (ratio: string) => `Diese Bremse verschleißt ${ratio} zu 1`,
    theNewThicknessIsAssumed: ' Die Dicke im Neuzustand ist angenommen.',
    theTrailingLiningIsThe: (head: string) => `${head}: Der ablaufende Belag ist der dünnere.`,
    theLeadingOneMoreShoes: (model: string, fresh: string) =>
      `${model}, den auflaufenden mehr. Backen vertauscht, oder die auflaufende wurde nicht gedrückt: beide von Hand bewegen.${fresh}`,
    to1: (a: string) => `${a} zu 1`,
    theTrailingOneHardly: 'der ablaufende kaum',
    theTrailingShoeDoesLess: (model: string, fresh: string) =>
      `${model}. Die ablaufende Backe tut weniger als ihren Teil: nach einem festsitzenden Kolben suchen oder nach etwas, das sie hält.${fresh}`,
    nearlyAlike: (head: string, found1: string) => `${head}: ${found1}, fast gleich.`,
    theTrailingShoeDoesMore: (model: string, fresh: string) =>
      `${model}. Die ablaufende Backe tut mehr als ihren Teil: viel rückwärts gefahren, Handbremse im Rollen gezogen, oder eine Backe schleift.${fresh}`,
    theLeadingShoeDoesThe: (model: string, fresh: string) =>
      `Die auflaufende Backe tut mehr. ${model}; das ist der Mechanismus, kein Fehler.${fresh}`,
  },

  /* sim/workshop/parking-rules.ts */
  workshopParkingRules: {
    of20What:
      'Pkw, in beiden Richtungen, fünf Minuten (FMVSS 135; UN R13-H beladen, aus dem Gedächtnis)',
    of30What: 'Pkw nach einer älteren Regel, in beiden Richtungen, fünf Minuten (FMVSS 105)',
    of18wWhat: 'Prüfung von Bausatzautos im Vereinigten Königreich: Haltekraft zu Gewicht',
    of16wWhat: 'Oft bei der jährlichen Prüfung verlangt: Haltekraft zu Gewicht',
    of12What: 'Zugfahrzeug und Anhänger zusammen gehalten (EU-Regel)',
  },

  /* sim/workshop/reading-text.ts */
  workshopReadingText: {
    plain: {
      brakeFactor:
        'Wie viel Newton Reibkraft an der Trommel ein Newton an jeder Backenspitze macht, die Federn schon abgezogen.',
      brakeFactorFull:
        'Dieselbe Reibkraft auf die ganze Kraft des Kolbens bezogen, die Federn nicht abgezogen.',
      shoeFactorLeading:
        'Reibkraft der Backe, die von der Trommel fester angezogen wird, je Newton an ihrer Spitze.',
      shoeFactorTrailing:
        'Reibkraft der Backe, die von der Trommel weggedrückt wird, je Newton an ihrer Spitze.',
      torque: 'Beide Backen zusammen gegen das Drehen der Trommel.',
      linePressure: 'Druck der Bremsflüssigkeit hinter den Kolben.',
      pistonForce: 'Kraft der Bremsflüssigkeit auf jeden Kolben.',
      clearanceMean: 'Mittel der beiden Spalte an den Mitten der Beläge, jetzt.',
      restClearanceMean:
        'Mittel der beiden Spalte an den Mitten der Beläge bei gelöstem Pedal; unter null: So weit stehen sie in der Trommel.',
      tooth: 'Wie viele Zähne der Nachsteller ausgefahren hat.',
      strutForce:
        'Klemmkraft der Backen auf die Druckstange; null, sobald die Kolben sie gespreizt haben.',
      separation: 'Wie weit sich die Sitze der Druckstange über ihre Länge hinaus entfernt haben.',
      toNextTooth:
        'Leerweg, ein Zahn und die Verspätung durch eine schwache Feder: das Spiel, bei dem der Hebel einfällt.',
      climb: 'Teil des nächsten Zahns, den der Hebel schon hochgestiegen ist.',
      drumDiameter: 'Innendurchmesser der kalten Trommel in der Laufspur.',
      temperature: 'Temperatur der Trommel.',
      stopFace:
        'So heiß wird die Reibfläche der Trommel höchstens bei einer Bremsung mit diesem Moment aus der Geschwindigkeit der ersten Bremsung der Szene, während das Mittel der Trommel viel weniger gestiegen ist. Über Bremsungen, die so lange dauern, dass die Wärme vor ihrem Ende durch den Kranz ist, wird nichts gesagt.',
      distance: 'Gefahren, seit sie neu ist.',
      leverOffStop:
        'Wie weit der Seilzug den Bremshebel von seinem Anschlag hält, am Haken gemessen.',
      waterFilm:
        'Wasser auf der Laufspur der Trommel: Die Wärme der nächsten Bremsungen trocknet es.',
      rustFilm:
        'Rost auf der Laufspur der Trommel: Die Beläge reiben ihn bei den nächsten Bremsungen ab.',
      glazeOfFront:
        'Wie weit der vordere Belag verglast ist; es vergeht, wenn der Belag unter festerem Fuß verschleißt.',
      glazeOfRear:
        'Wie weit der hintere Belag verglast ist; es vergeht, wenn der Belag unter festerem Fuß verschleißt.',
      pedalTravel:
        'Wie weit das Pedal hinuntergeht: Leerweg, dann die Spalte, dann was der Kreis nachgibt, und was davor liegt.',
      pedalFree: 'Pedalweg, bevor sich der Kolben des Hauptzylinders bewegt.',
      pedalGaps: 'Pedalweg, der die Radkolben beider Bremsen bewegt.',
      pedalCircuit:
        'Pedalweg, der in Schläuche und Bremsflüssigkeit geht: Er wächst mit dem Druck.',
      pedalForce:
        'Kraft des Fußes für diesen Druck; die Hilfe eines Bremskraftverstärkers, wo es einen gibt, ist abgezogen.',
      fluid: 'Volumen, das beide Kolben dieser Bremse verschoben haben.',
      runOut:
        'Wie weit der weiter ausgefahrene Kolben noch gehen darf, bis seine Manschette die Bohrung verlässt.',
      stopDistance:
        'Vom Tritt bis zum Stand, das Moment auf dem ganzen Weg wie jetzt gehalten; die Zeit, die Fuß und Bremsflüssigkeit brauchen, ist nicht darin.',
      stopDeceleration:
        'Wie das Fahrzeug verzögert, wenn die andere Achse im Verhältnis mitbremst und jeder Reifen hält; Luft- und Rollwiderstand weggelassen.',
      stopTime: 'Von dieser Geschwindigkeit bis zum Stand.',
      stopGrip:
        'Reibung zwischen Reifen und Straße, unter der Räder rutschen, wäre jede Achse so belastet, wie sie bremst: Eine trockene Straße gibt etwa 0,8, eine nasse 0,5.',
      stopForce: 'Womit alle Bremsen dieser Achse zusammen am Reifenaufstand zurückhalten.',
      stopShare:
        'Teil der ganzen Bremsung, der für diese Achse angegeben ist; die andere Achse tut den Rest.',
      stopEnergy: 'Wärme, die diese eine Bremse bei der Bremsung aufnimmt.',
      stopRise:
        'Um wie viel die Bremsung die Trommel wärmer macht, noch nichts von der Luft abgeführt.',
      stopFaceRise:
        'Um wie viel die Reibfläche mitten in der Bremsung wärmer wird, bevor die Wärme durch den Kranz ist; über längere Bremsungen wird nichts gesagt.',
      stopTorque:
        'Was jede Bremse dieser Achse geben muss, wenn die andere Achse im Verhältnis den Rest tut.',
      stopPressure: 'Druck in den Radzylindern, bei dem diese Bremse dieses Moment gibt.',
      stopPedal: 'Kraft des Fußes, die diesen Druck macht.',
      dragTorque: 'Was das Rad bei gelöstem Pedal zurückhält, die Trommel so warm wie jetzt.',
      dragPower:
        'Wärme, die eine schleifende Bremse die ganze Zeit macht, während so gefahren wird.',
      dragShare:
        'Alle solchen Bremsen zusammen, neben Rollen und Luft: höchstens so viel mehr Kraftstoff.',
      dragSettles:
        'Sie wächst von ihren Backen weg, bis sie so viel verliert, wie sie bekommt; höchstens 300 K über der Luft werden angegeben.',
      dragForce: 'Um so viel mehr muss der Reifen geschoben werden.',
      wheelLeft: 'Beide Backen des linken Rads zusammen gegen sein Drehen.',
      wheelRight: 'Beide Backen des rechten Rads zusammen gegen sein Drehen.',
      wheelDifference:
        'Wie viel der schwächeren Bremse der Achse fehlt: Das Fahrzeug zieht zur stärkeren.',
      partFree: 'Bevor die Kolbenstange etwas bewegt.',
      partBooster: 'Bevor der Bremskraftverstärker zu helfen beginnt.',
      partLost: 'Der Kolben des Kreises, der keinen Druck hält, läuft zuerst bis an sein Ende.',
      partRollBack:
        'Dichtungen haben die Kolben beim Lösen von ihren Backen zurückgezogen: Sie müssen erst wieder vor.',
      partToDrum:
        'Bis beide Beläge an der Trommel liegen: Ist es mehr, haben das der Nachsteller oder verschlissene Beläge zu verantworten.',
      partElastic: 'Um was Backen und Beläge von da an zusammengedrückt werden.',
      partLines: 'Leitungen und Schläuche dieser Achse weiten sich mit dem Druck.',
      partRest:
        'Bremsen, Schläuche und Bremsflüssigkeit der anderen Achse: alles, was nicht zu dieser Achse gehört, wie die Szene es hat.',
      partOwn: 'Wie viel von einem langen Pedal diese Achse zu verantworten haben kann.',
      pedalTouch: 'Wo ein Belag zu reiben beginnt, sei es auch nur an einem Ende.',
      pedalTouchForce: 'Kraft des Fußes dort: Sie überwindet den Leerweg und die Rückzugfedern.',
      pedalSeated:
        'Wo beide Beläge an der Trommel liegen: Von hier an wird das Pedal nur noch härter.',
      pedalSeatedForce: 'Kraft des Fußes dort.',
      pedalFloor:
        'Wie weit das Pedal überhaupt gehen kann; der Hub des Hauptzylinders ist der der Szene.',
      pedalReserve:
        'Weg, der bei dieser Kraft übrig ist; keiner heißt, das Pedal geht bis zum Boden.',
      slipForward: 'Moment, bis zu dem ein Rad stillsteht, Nase nach unten.',
      slipBackward: 'Moment, bis zu dem ein Rad stillsteht, Nase nach oben.',
      slopeDown: 'Steilstes Gefälle, auf dem das Fahrzeug bergab gerichtet steht.',
      slopeUp: 'Steilste Steigung, auf der das Fahrzeug bergauf gerichtet steht.',
      pivotForce: 'Kraft des Hebelbolzens auf die Backe, die ihn trägt.',
      notches: 'Rasten, die Spiel, Dehnung und Weg des Hebels brauchen.',
      handForce: 'Zug am Griff für alle Seilzüge zusammen.',
      slopeTorque:
        'Moment, das jedes gebremste Rad halten muss, damit das Fahrzeug auf dieser Steigung steht.',
      cableNoseDown:
        'Zug jedes Seilzugs, bei dem das Fahrzeug auf dem Gefälle bergab gerichtet gerade steht.',
      cableNoseUp:
        'Zug jedes Seilzugs, bei dem das Fahrzeug auf der Steigung bergauf gerichtet gerade steht.',
      handNoseDown: 'Zug am Griff für alle Seilzüge zusammen.',
      handNoseUp: 'Zug am Griff für alle Seilzüge zusammen.',
      marginNoseDown:
        'Was die Bremse mehr halten kann, als die Steigung verlangt; negativ: Es rollt.',
      marginNoseUp:
        'Was die Bremse mehr halten kann, als die Steigung verlangt; negativ: Es rollt.',
      turnFrontLeast: 'Spalt in der Mitte des Belags, während die Trommel umläuft.',
      turnFrontGreatest: 'Spalt in der Mitte des Belags, während die Trommel umläuft.',
      turnRearLeast: 'Spalt in der Mitte des Belags, während die Trommel umläuft.',
      turnRearGreatest: 'Spalt in der Mitte des Belags, während die Trommel umläuft.',
      turnTorqueLeast:
        'Moment gegen das Drehen, während die Trommel umläuft: was ein Fuß als Pulsieren spürt.',
      turnTorqueGreatest:
        'Moment gegen das Drehen, während die Trommel umläuft: was ein Fuß als Pulsieren spürt.',
      turnBoreLeast:
        'Was eine Zweipunkt-Messuhr quer misst: Eine unrunde Trommel zeigt sich, eine außermittige nicht.',
      turnBoreGreatest:
        'Was eine Zweipunkt-Messuhr quer misst: Eine unrunde Trommel zeigt sich, eine außermittige nicht.',
    },
    whatThePistonHasLeft: (where: 'front' | 'rear') =>
      `Was dem Kolben bleibt, um die ${where === 'front' ? 'vordere' : 'hintere'} Backe zu drücken, wenn die Rückzugfedern überwunden sind.`,
    howFarThePistonHas: (where: 'front' | 'rear') =>
      `Wie weit der ${where === 'front' ? 'vordere' : 'hintere'} Kolben seit der Ruhelage herausgekommen ist.`,
    frictionOfTheLiningAt: (where: 'front' | 'rear') =>
      `Reibung des ${where === 'front' ? 'vorderen' : 'hinteren'} Belags an der Fläche der Trommel.`,
    greatestPressureAnywhereOn: (where: 'front' | 'rear') =>
      `Größte Pressung irgendwo auf dem ${where === 'front' ? 'vorderen' : 'hinteren'} Belag.`,
    gapBetweenTheMiddleOf: (where: 'front' | 'rear') =>
      `Spalt zwischen der Mitte des ${where === 'front' ? 'vorderen' : 'hinteren'} Belags und der Trommel, jetzt.`,
    gapAtTheMiddleOf: (where: 'front' | 'rear') =>
      `Spalt in der Mitte des ${where === 'front' ? 'vorderen' : 'hinteren'} Belags, wenn das Pedal gelöst ist; unter null: So weit stehen beide in der Trommel.`,
    thicknessOfTheLiningAt: (where: 'front' | 'rear') =>
      `Dicke des ${where === 'front' ? 'vorderen' : 'hinteren'} Belags an seiner dünnsten Stelle.`,
    partOfTheUsableLining: (where: 'front' | 'rear') =>
      `Teil des nutzbaren ${where === 'front' ? 'vorderen' : 'hinteren'} Belags, der noch übrig ist.`,
    forceOfThePinOn: (where: 'front' | 'rear') =>
      `Kraft des Lagerbolzens auf die ${where === 'front' ? 'vordere' : 'hintere'} Backe.`,
    whatThePullsWithNow: (name: string) => `So stark zieht jetzt: ${SCENE_NAMES[name] ?? name}.`,
  },

  /* sim/workshop/see/signs.ts */
  seeSigns: {
    hot: {
      name: 'Heiß',
      ask: 'Nach einer Fahrt mit wenig Bremsen: Welche Trommeln sind heiß?',
      how: 'Die Hand an jede halten, nicht darauf.',
      values: {
        none: 'keine',
        one: 'eine hinten',
        both: 'beide hinten',
        all: 'alle vier',
      },
    },
    heat: {
      name: 'Wie heiß',
      ask: 'Wie heiß?',
      how: 'Mit der Hand aus der Nähe oder mit einem berührungslosen Thermometer.',
      values: {
        cool: 'kühl',
        warm: 'warm',
        'too hot': 'zu heiß zum Anfassen',
      },
    },
    travel: {
      name: 'Pedalweg',
      ask: 'Wie weit geht das Pedal bei festem Tritt?',
      how: 'Gegenüber dem Gewohnten.',
      values: {
        short: 'kürzer',
        ever: 'wie immer',
        long: 'länger',
        half: 'bis zur Hälfte',
        floor: 'bis zum Boden',
      },
    },
    feel: {
      name: 'Pedalgefühl',
      ask: 'Wie fühlt sich das Pedal an?',
      how: 'Motor läuft, fest treten und halten.',
      values: {
        firm: 'fest',
        springy: 'federnd, weich',
        throbs: 'pulsiert',
        wooden: 'hart, und bremst schlecht',
        sinks: 'sinkt langsam ab',
      },
    },
    pumped: {
      name: 'Gepumpt',
      ask: 'Zwei, drei schnelle Tritte: Kommt das Pedal hoch?',
      how: 'Im Stand.',
      values: {
        up: 'kommt hoch',
        same: 'keine Änderung',
      },
    },
    first: {
      name: 'Erster Tritt',
      ask: 'Der erste Tritt nach einer Nacht: wie der nächste?',
      how: 'Mit angezogener Handbremse geparkt.',
      values: {
        like: 'wie der nächste',
        long: 'lang, dann gut',
      },
    },
    clicks: {
      name: 'Klicken',
      ask: 'Hören Sie beim Treten den Nachsteller klicken?',
      how: 'An ruhiger Stelle, Fenster offen.',
      values: {
        none: 'nie',
        heard: 'ja',
      },
    },
    notches: {
      name: 'Rasten',
      ask: 'Wie viele Rasten braucht der Handhebel bis zu festem Zug?',
      how: 'Die Klicks zählen.',
    },
    turns: {
      name: 'Von Hand',
      ask: 'Auf Böcken: Wie dreht das schlechteste Rad von Hand?',
      how: 'Nichts getreten, Handbremse gelöst, Gang heraus.',
      values: {
        freely: 'frei',
        rubs: 'schleift leicht',
        stiff: 'schwer',
        not: 'gar nicht',
        jerk: 'nicht, dann ein Ruck',
      },
    },
    ways: {
      name: 'Beide Richtungen',
      ask: 'Vorwärts und rückwärts gleich?',
      how: 'Dasselbe Rad.',
      values: {
        alike: 'gleich',
        unlike: 'in eine Richtung viel schwerer',
      },
    },
    force: {
      name: 'Schwergängig',
      ask: 'Mit welchem Zug am Reifen bleibt es in Drehung?',
      how: 'Eine Kofferwaage an einem Gurt um den Reifen; 10 N sind ein Kilogramm.',
    },
    rubs: {
      name: 'Schleift',
      ask: 'Schleift es beim Drehen an bestimmten Stellen?',
      how: 'Eine langsame Umdrehung.',
      values: {
        no: 'nein',
        once: 'einmal je Umdrehung',
        twice: 'zweimal je Umdrehung',
      },
    },
    slides: {
      name: 'Trommel gezogen',
      ask: 'Die Trommel gerade ziehen: Wie weit kommt sie?',
      how: 'Ihre Schraube oder Klammer ist heraus.',
      values: {
        off: 'ganz ab',
        some: 'ein paar mm',
        not: 'gar nicht',
      },
    },
    rocks: {
      name: 'Kippspiel',
      ask: 'Hat das Rad oben und unten Kippspiel?',
      how: 'Hände auf zwölf und sechs Uhr.',
      values: {
        no: 'nein',
        yes: 'ja',
      },
    },
    tap: {
      name: 'Angeklopft',
      ask: 'Die Trommel anklopfen: Klingt sie hell?',
      how: 'Leichter Hammer auf die Stirnseite.',
      values: {
        rings: 'hell',
        dull: 'dumpf',
      },
    },
    comes: {
      name: 'Greift',
      ask: 'Pedal langsam getreten: Wie greift die Bremse?',
      how: 'Dabei das Rad von Hand drehen.',
      values: {
        smooth: 'gleichmäßig',
        jump: 'spät, auf einmal',
      },
    },
    touch: {
      name: 'Anlegen',
      ask: 'Ab welchem Druck beginnt sie zu schleifen?',
      how: 'Ein Manometer am Entlüfter.',
    },
    release: {
      name: 'Löst sich',
      ask: 'Pedal losgelassen: Wann ist das Rad wieder frei?',
      how: 'Von Hand gedreht.',
      values: {
        once: 'sofort',
        seconds: 'nach Sekunden',
        not: 'nach Minuten oder gar nicht',
      },
    },
    bleed: {
      name: 'Entlüfter',
      ask: 'Den Entlüfter am schwergängigen Rad öffnen: Was ändert sich?',
      how: 'Einen Schlauch darauf und in ein Glas; wieder schließen.',
      values: {
        nothing: 'nichts',
        frees: 'sofort frei',
      },
    },
    lever: {
      name: 'Hebel in der Trommel',
      ask: 'Handbremse gelöst: Liegt der Bremshebel an seinem Anschlag?',
      how: 'Durch das Loch oder am Seilzug hinter der Ankerplatte.',
      values: {
        home: 'liegt an',
        off: 'steht ab',
      },
    },
    flexed: {
      name: 'Seilzug bewegt',
      ask: 'Den Seilzug an der Ankerplatte ziehen und loslassen: Folgt der Bremshebel?',
      how: 'Von Hand.',
      values: {
        comes: 'folgt hin und zurück',
        slow: 'kommt langsam zurück',
      },
    },
    bite: {
      name: 'Bremswirkung',
      ask: 'Wie bremst sie vorwärts?',
      how: 'Nach dem Fuß oder auf dem Rollenprüfstand: gegenüber dem Gewohnten.',
      values: {
        right: 'wie immer',
        weak: 'schwach',
        strong: 'greift zu scharf',
      },
    },
    pull: {
      name: 'Zieht',
      ask: 'Zieht sie zur Seite, oder sind die Hinterräder auf den Rollen ungleich?',
      how: 'Mehr als ein Zehntel zählt.',
      values: {
        no: 'nein',
        yes: 'ja',
      },
    },
    back: {
      name: 'Rückwärts',
      ask: 'Auf den Rollen, rückwärts gegenüber vorwärts?',
      how: 'Das abweichende Rad.',
      values: {
        alike: 'gleich',
        less: 'rückwärts viel schwächer',
        more: 'rückwärts viel stärker',
      },
    },
    parked: {
      name: 'Geparkt',
      ask: 'Wie hält die Handbremse?',
      how: 'Am Hang oder auf dem Rollenprüfstand.',
      values: {
        right: 'hält',
        weak: 'schwach',
        strong: 'stärker als vorher',
      },
    },
    oneway: {
      name: 'Hält',
      ask: 'Geparkt, bergauf und bergab stehend gleich?',
      how: 'Ein Hang, an dem sie gerade noch hält.',
      values: {
        alike: 'gleich',
        one: 'nur in eine Richtung',
      },
    },
    unlike: {
      name: 'Ungleich',
      ask: 'Rollen, mit dem Pedal: Wie viel fehlt dem schwächeren Rad?',
      how: 'In Prozent des stärkeren.',
    },
    share: {
      name: 'Stärke',
      ask: 'Rollen: Wie stark ist das abweichende Rad gegenüber früher?',
      how: 'In Prozent; 100 ist wie früher.',
    },
    backshare: {
      name: 'Rückwärts gegen vorwärts',
      ask: 'Rollen: Das abweichende Rad rückwärts, gegenüber vorwärts?',
      how: 'In Prozent; 100 ist gleich.',
    },
    swing: {
      name: 'Schwankung',
      ask: 'Rollen: Wie stark schwankt die Kraft je Umdrehung?',
      how: 'Oft als Unrundheit in Prozent ausgedruckt.',
    },
    holder: {
      name: 'Zähne zurück',
      ask: 'Trommel hängt: Nach wie vielen Zähnen zurück kommt sie frei?',
      how: '0, wenn sie von selbst kam.',
    },
    shoes: {
      name: 'Backen',
      ask: 'Beide Backen von Hand bewegen: Bewegen sich beide?',
      how: 'Trommel ab. Nie mit dem Pedal.',
      values: {
        both: 'beide gleich',
        one: 'eine nicht',
      },
    },
    pads: {
      name: 'Auflagen',
      ask: 'Die erhabenen Auflagen der Ankerplatte?',
      how: 'Wo die Kante der Backe gleitet.',
      values: {
        smooth: 'glatt',
        grooved: 'mit Rillen',
      },
    },
    round: {
      name: 'Innendurchmesser',
      ask: 'Zweipunkt-Messgerät rings in der Trommel?',
      how: 'Unter drei Winkeln.',
      values: {
        same: 'ringsum gleich',
        differs: 'verschieden',
      },
    },
    swings: {
      name: 'Messuhr',
      ask: 'Messuhr an der drehenden Trommel?',
      how: 'Trommel auf sauberer Nabe.',
      values: {
        still: 'steht still',
        swings: 'schlägt aus',
      },
    },
    thin: {
      name: 'Dünnerer Belag',
      ask: 'Welcher Belag ist der dünnere?',
      how: 'An der dünnsten Stelle.',
      values: {
        lead: 'der vordere',
        trail: 'der hintere',
        alike: 'gleich',
        gone: 'beide weg',
      },
    },
    drumsize: {
      name: 'Trommel',
      ask: 'Innendurchmesser der Trommel gegenüber dem eingegossenen Grenzmaß?',
      how: 'Der größte abgelesene Wert.',
      values: {
        within: 'deutlich darunter',
        large: 'nahe daran oder darüber',
      },
    },
    tooth: {
      name: 'Zahn',
      ask: 'Auf welchem Zahn steht der Nachsteller?',
      how: '0 ist am kürzesten.',
    },
    pawl: {
      name: 'Sein Hebel',
      ask: 'Der Hebel des Nachstellers, mit dem Finger bewegt?',
      how: 'Trommel ab, Druckstange entlastet.',
      values: {
        drops: 'fällt ein',
        stiff: 'schwergängig',
        free: 'schwingt frei',
        other: 'von der anderen Seite',
      },
    },
    wet: {
      name: 'Nass',
      ask: 'Etwas Nasses hinter der Trommel?',
      how: 'Unter den Staubkappen des Zylinders und an der Nabe.',
      values: {
        dry: 'trocken',
        fluid: 'Bremsflüssigkeit an einer Staubkappe',
        oil: 'Öl aus der Nabe',
      },
    },
    mark: {
      name: 'Zylinder',
      ask: 'Bohrungsmaße beider Radzylinder?',
      how: 'Eingegossen oder eingeschlagen hinter der Ankerplatte.',
      values: {
        same: 'gleich',
        other: 'ungleich',
      },
    },
  },

  /* sim/workshop/see/told.ts */
  seeTold: {
    whenName: 'Wann',
    whenAsk: 'Wann tritt es auf?',
    justAfterBraking: 'gleich nach dem Bremsen',
    worseTheLongerIDrive: 'schlimmer, je länger ich fahre',
    onlyCold: 'nur kalt',
    afterParking: 'nach dem Parken',
    onlyLaden: 'nur beladen',
    afterALongDescent: 'nach einem langen Gefälle',
    dampFirstStops: 'feucht, erste Bremsungen',
    sinceName: 'Seit',
    sinceAsk: 'Seit wann?',
    allAtOnce: 'auf einmal',
    monthsSlowlyWorse: 'Monate, langsam schlimmer',
    sinceSomeWork: 'seit einer Arbeit daran',
    afterName: 'Nach Arbeit an',
    afterAsk: 'Nach welcher Arbeit?',
    wheelCylinder: 'Radzylinder',
    hoseOrPipe: 'Schlauch oder Leitung',
    cableLever: 'Seilzug, Hebel',
    hubBearing: 'Nabe, Radlager',
    masterBoosterPedal: 'Hauptzylinder, Verstärker, Pedal',
    washingRain: 'Waschen, Regen',
    stoodForMonths: 'stand monatelang',
    noiseName: 'Geräusch',
    noiseAsk: 'Welches Geräusch?',
    groanHonk: 'Stöhnen, Hupen',
    oneClunkChangeOfDirection: 'ein Schlag, Richtungswechsel',
    rubSwish: 'Reiben, Wischen',
    popAtTheFirstTouch: 'Knacken bei der ersten Berührung',
    bangThenLocksOneWay: 'Knall, dann blockiert in einer Richtung',
    smellName: 'Geruch',
    smellAsk: 'Ein Geruch?',
    burntLining: 'verbrannter Belag',
    fluidFishy: 'Bremsflüssigkeit, fischig',
    always: 'immer',
    weeks: 'Wochen',
    nothing: 'keine',
    shoes: 'Backen',
    drum: 'Trommel',
    noNoise: 'keins',
    squeal: 'Quietschen',
    grinding: 'Mahlen',
    rattle: 'Klappern',
    noSmell: 'keiner',
    oil: 'Öl',
    feelSinksText:
      'Ein Pedal, das absinkt, ist eine Dichtung im Hauptzylinder oder ein Leck: nicht auf dieser Werkbank. Nicht damit fahren.',
    noiseSquealText:
      'Geräusche werden nicht berechnet. Glänzende Beläge, lose Niederhalter, trockene Auflagen prüft man zuerst.',
    noiseGrindText:
      'Mahlen kann Metall auf Metall sein, außerhalb dieser Ebene. Nicht damit fahren, bevor die Trommel ab war.',
    noiseClunkText:
      'Ein Schlag beim Richtungswechsel ist ein verschlissener Lagerbolzen oder ein verschlissenes Widerlager: Die Bolzen haben hier kein Spiel.',
    noiseRattleText:
      'Klappern kann ein verlorener Niederhalter sein: Die Backe kippt aus dieser Ebene.',
    noiseBangText:
      'Ein loser Belag verkeilt sich in einer Richtung: nicht auf dieser Werkbank. Nicht damit fahren.',
    travelFloorText: 'Ein Pedal am Boden: nicht damit fahren, was auch die Ursache ist.',
    thinGoneText: 'Kein Belag ist übrig: nicht damit fahren.',
    wetFluidText: 'Bremsflüssigkeit tritt aus: nicht damit fahren.',
    neverSeen:
      'Auf dieser Werkbank nie zu sehen: eine trichterförmige Trommel, ein verlorener Niederhalter, ein loser Belag, ein verschlissener Lagerbolzen.',
  },

  /* sim/workshop/stop-text.ts */
  workshopStopText: {
    onlyThisAxlesBrakesAre: (share: string) =>
      `Nur die Bremsen dieser Achse sind bekannt: Ihr Anteil an der Bremsung ist mit ${share} angegeben, und die andere Achse soll im Verhältnis den Rest tun.`,
    theTorqueIsThatOf:
      'Das Moment ist das der Trommel, so warm wie jetzt. Die Zeit, die Fuß und Bremsflüssigkeit brauchen, Luft- und Rollwiderstand sind nicht darin.',
    aValveHoldsThisAxles:
      'Ein Ventil hält den Druck dieser Achse zurück; die andere Achse bekommt den ganzen des Pedals.',
    oneOfTheTwoCircuits:
      'Einer der beiden Kreise ist ausgefallen: Nur die Bremsen des anderen bremsen.',
    noTyreIsLikelyTo: (grip: string, dryroad: number) =>
      `Das gibt wohl kein Reifen her: Es verlangt einen Reibwert von ${grip}, und eine trockene Straße gibt etwa ${dryroad}. Die Räder rutschen vorher.`,
    noLiningTouchesTheDrum: 'Bis zu diesem Druck berührt kein Belag die Trommel.',
    thePedalStandsOnIts: 'Das Pedal steht am Boden, bevor dieser Druck da ist.',
    aPistonsCupLeavesIts:
      'Die Manschette eines Kolbens verlässt ihre Bohrung, bevor dieser Druck da ist.',
    itIsSeizedTheWheel:
      'Sie ist festgegangen: Das Rad würde eher auf der Straße rutschen als drehen. Zum Fahren damit wird nichts gesagt.',
    noForceCanBeTold:
      'Für diese Bremse lässt sich keine Kraft angeben, also wird auch zum Fahren damit nichts gesagt.',
  },

  /* sim/workshop/working-text.ts */
  workshopWorkingText: {
    laws: {
      definition: 'Per Definition: ein Verhältnis, das sagt, was eines vom anderen ist.',
      given: 'Nicht ausgerechnet: So wurde es eingestellt oder beim Fahren der Bremse gezählt.',
      geometry: 'Ebene Geometrie der Lage der Teile.',
      statics: 'Teile einer Kraft im rechten Winkel: Pythagoras.',
      moments:
        'Momente eines ruhenden Körpers um einen Punkt ergeben zusammen null (Statik; jedes Lehrbuch der Technischen Mechanik).',
      coulomb:
        'Trockene Reibung: Die Reibkraft ist Reibwert mal dem, was drückt (Coulomb), summiert über 48 Elemente jedes Belags.',
      winkler:
        'Der Belag als Bett aus Federn: Die Pressung ist sein Modul durch seine Dicke mal der Eindrückung (Winkler). Gegen ein Ende hin läuft die Gerade durch die letzten zwei Elemente weiter.',
      hooke:
        'Eine Feder zieht mit ihrer Einbaukraft und ihrer Federrate mal ihrer Dehnung (Hooke) und drückt nie.',
      pascal:
        'Bremsflüssigkeit trägt den Druck überall gleich, und Volumen geht dahin, wohin Kolben gehen (Pascal).',
      lever: 'Ein Hebel gibt Kraft für Weg: Verhältnis seiner Arme.',
      booster:
        'Ein Bremskraftverstärker vervielfacht die Fußkraft, bis seine Hilfe erschöpft ist (Limpert, Brake Design and Safety, Kapitel 5, aus dem Gedächtnis).',
      stack: 'Wege in einer Linie addieren sich.',
      ratchet:
        'Der Hebel fällt ein, sobald sich die Sitze um den Leerweg und einen ganzen Zahn entfernt haben.',
      kinematics: 'Gleichmäßige Verzögerung von einer Geschwindigkeit bis zum Stand.',
      newton: 'Kraft ist Masse mal Beschleunigung (Newton), alles Bremsen an der Straße.',
      energy: 'Bewegungsenergie, oder Arbeit der Reibkraft über den Weg.',
      heat: 'Wärme durch Wärmekapazität: In so kurzer Zeit wird nichts abgeführt.',
      flash:
        'Wärme, die an der Oberfläche in einen dicken Körper eintritt und gleichmäßig auf null fällt (Carslaw & Jaeger, Conduction of Heat in Solids, Kapitel 2).',
      power: 'Leistung ist Moment mal Winkelgeschwindigkeit.',
      slope: 'Der Teil des Gewichts, der bergab zieht, verteilt auf die gebremsten Räder.',
      cable:
        'Spiel, Dehnung und Weg des Hebels liegen im Seilzug in einer Linie, also addieren sie sich.',
      search:
        'Durch Probieren gefunden: Bei jedem Versuch wird die Bremse neu durchgerechnet. Die zwei Versuche daneben ergeben es wieder durch die Gerade zwischen ihnen.',
      turn: 'Die Bremse an 72 Stellen einer Umdrehung durchgerechnet; dies ist die, die zählt.',
      settles:
        'Eine Trommel pendelt sich ein, wo die Luft so viel Wärme nimmt, wie das Schleifen macht.',
    },
    from: {
      scene: 'die Größe der Bremse',
      state: 'wie sie steht',
      asked: 'wie getreten oder gefragt',
      balance: 'aus dem Gleichgewicht beider Backen',
      reading: 'ein Messwert',
      worked: 'unterwegs ausgerechnet',
      constant: 'eine Konstante',
    },
    steps: {
      'sine sum':
        'Die Pressung geht wie der Sinus des Winkels vom Lagerbolzen aus; über den Bogen des Belags summiert ist das',
      'pressure arm': 'Hebelarm der Pressung um den Lagerbolzen, je Einheit dieser Pressung',
      'friction arm': 'Hebelarm der Reibung um den Lagerbolzen',
      'closed pressure': 'Momente um den Lagerbolzen ergeben die Pressung bei 90° von ihm',
      'closed normal moment': 'Also drückt die Pressung der Trommel die Backe zurück mit',
      'closed friction moment': 'und ihre Reibung dreht die Backe mit',
      'closed factor': 'Reibkraft durch Spannkraft, der Backenkennwert nach der geschlossenen Form',
      'closed lock':
        'Die Backe würde blockieren, was auch immer sie drückt, bei einem Reibwert von',
      'element drag':
        'Dasselbe ohne ein Gesetz für die Pressung: Reibung aller Elemente, wie sie tragen',
      'element balance':
        'Momente um das Lager lassen für Niederhalter, Druckstange und Ferse übrig',
      'element factor': 'Backenkennwert aus den eigenen Momenten der Elemente',
      'read factor': 'Backenkennwert wie abgelesen, Reibkraft durch das, was an der Spitze bleibt',
    },
    theShoesHeelSlidesOn:
      'Die Ferse der Backe gleitet auf einer Fläche: Sie dreht sich um keinen Punkt, also ist die geschlossene Form einer gelagerten Backe keine für sie.',
    theShoeBendsPointsOf:
      'Die Backe biegt sich: Punkte ihrer Fläche gehen nicht wie der Sinus ihres Winkels in die Trommel.',
    thePressureIsNotThe: (share: string) =>
      `Die Pressung ist nicht der Sinus des Winkels: Sie weicht um bis zu ${share} ihrer Spitze davon ab, weil die Fläche geschliffen, verschlissen oder gebogen ist.`,
    ofTheLiningDoNot: (share: string) => `${share} des Belags berühren die Trommel nicht.`,
    otherPartsPushOnThe: (share: string) =>
      `Auch andere Teile drücken auf die Backe: Niederhalter, Druckstange oder die Reibung der Ferse selbst, ${share} vom Moment der Spannkraft.`,
    alikeText:
      'Geschlossene Form und Summe der Elemente stimmen überein: Die Backe ist steif und auf einem Lagerbolzen, ihre Fläche liegt überall an der Trommel, und nichts sonst drückt auf sie. Was übrig bleibt, kommt von der Anzahl der Elemente.',
  },

  /* sim/workshop/yield-text.ts */
  workshopYieldText: {
    parts: {
      'lever arm': 'der Arm des Nachstellhebels biegt sich',
      'lever nose': 'die Nase des Nachstellhebels biegt sich',
      'lever teeth': 'der Zahn des Hebels schert ab',
      strut: 'die Druckstange wird gestaucht',
    },
    moreThanTheStrutCan: (parts: string, force: number) =>
      `Mehr, als die Druckstange aushält: ${parts} bei etwa ${force} kN. Darüber lässt sich keine Kraft angeben.`,
  },

  /* sim/study/both-wheels.ts */
  studyBothWheels: {
    leftWheel: 'Moment des linken Rads',
    rightWheel: 'Moment des rechten Rads',
    weakerLacks: 'Dem schwächeren Rad fehlen',
  },

  /* sim/study/lesson-values-drum.ts */
  studyLessonValuesDrum: {
    liningLimit: 'Grenze des Belags',
    liningAboveLimit: 'Belag über seiner Grenze',
    frontAtToe: 'Vorderer Belag an der Spitze',
    frontAtThinnest: 'Vorderer Belag an der dünnsten Stelle',
    frontAtHeel: 'Vorderer Belag an der Ferse',
    wornOffFront: 'Vom vorderen Belag verschlissen',
    wornOffRear: 'Vom hinteren Belag verschlissen',
    drumLimit: 'Grenze der Trommel',
    drumUnderLimit: 'Trommel unter ihrer Grenze',
    wornOffDrum: 'Vom Radius der Trommel verschlissen',
    heightOfLip: 'Höhe des Grats',
    liningsOverLip: 'Beläge über dem Grat',
    overLipAtToe: 'Über dem Grat an der Spitze',
    overLipInMiddle: 'Über dem Grat in der Mitte',
    overLipAtHeel: 'Über dem Grat an der Ferse',
    teethThatFree: 'Zähne zurück, die sie freigeben',
    drumSlides: 'Die Trommel rutscht',
    boreLessSize: 'Bohrung minus Maß über die Beläge',
    sizeAcross: 'Maß über die Beläge',
    overLipASide: 'Über dem Grat, je Seite',
    roomAtLip: 'Platz am Grat, je Seite',
    longestStrut: 'Längste Druckstange, mit der die Trommel aufgeht, Zahn',
  },

  /* sim/study/lesson-values-life.ts */
  studyLessonValuesLife: {
    clearanceWhenNew: 'Lüftspiel im Neuzustand',
    clearanceOnStrut: 'Lüftspiel, Backen auf ihrer Druckstange',
    driven: 'Gefahren',
    drivenFromNew: 'Seit neu gefahren',
    clicks: 'Klicks',
    lastClickAt: 'Letzter Klick bei',
    clickToClick: 'Von Klick zu Klick',
    lastToothAt: 'Letzter Zahn genommen bei',
    clearanceBeforeClick: 'Lüftspiel vor dem Klick',
    leastClearance: 'Kleinstes Lüftspiel zwischen Klicks',
    greatestClearance: 'Größtes Lüftspiel zwischen Klicks',
    liningLasts: 'Belag hält noch',
    atTheLeast: 'mindestens',
    atTheMost: 'höchstens',
    clickLateBy: 'Nächster Klick verspätet um, Hebel 3 mm vom Anschlag weg',
  },

  /* sim/study/lesson-values-press.ts */
  studyLessonValuesPress: {
    bothTouchAt: 'Beide Beläge berühren bei',
    firstTouchesAt: 'Der erste Belag berührt bei',
    strutUnloadedAt: 'Druckstange entlastet bei',
    lostMotion: 'Totgang',
    teeth: 'Zähne',
    strutLength: 'Länge der Druckstange',
    strutLongerBy: 'Druckstange länger um',
    dragOfLeading: 'Reibkraft der auflaufenden Backe',
    arcFront: 'Tragender Bogen, vorn',
    arcRear: 'Tragender Bogen, hinten',
    handForward: 'Moment von Hand, vorwärts',
    handBackward: 'Moment von Hand, rückwärts',
    pullInCable: 'Zug im Seilzug',
    leverNotches: 'Rasten des Handhebels',
    springsTip: 'Federn kippen die Backe mit',
    holdDownRights: 'Niederhalter richtet sie auf mit',
    leansWithout: 'Ohne Niederhalter geneigt um',
  },

  /* sim/study/measured.ts */
  studyMeasured: {
    toPastMark: (low: string, high: string, past: number) =>
      `${low} mm (neu) bis ${high} mm, ${past} über der Marke dieser Bremse`,
    toNewLining: (fresh: string) => `0 bis ${fresh} mm, der neue Belag dieser Bremse`,
    atMostAsEnds: (ends: string) => `höchstens ${ends} mm, wie eines seiner Enden`,
    wholeTo: (teeth: number) => `eine ganze Zahl, 0 bis ${teeth}`,
    toMostOffStop: '0 bis 50 mm',
  },

  /* sim/study/parked-readings.ts */
  studyParkedReadings: {
    notches: 'z = (Seilspiel + F_cable / k + Weg) / Raste',
  },

  /* sim/study/pedal-readings.ts */
  studyPedalReadings: {
    pedalAtTouch: 'Pedal bei der ersten Berührung',
    footAtTouch: 'Fuß bei der ersten Berührung',
    pedalSeated: 'Pedal, beide Beläge an der Trommel',
    footSeated: 'Fuß, beide Beläge an der Trommel',
    pedalAtEnd: 'Pedal, Hauptzylinder an seinem Ende',
    travelLeft: 'Pedalweg, der bis dahin bleibt',
    travelAtTouch: 'x_pedal bei N > 0',
    forceAtTouch: 'F_pedal bei N > 0',
    travelSeated: 'x_pedal bei g = 0',
    forceSeated: 'F_pedal bei g = 0',
    toEnd: 'i · (Leerspiel + Hub)',
    reserve: 'Boden − x_pedal',
    freePlay: 'Leerspiel',
    freePlayTravel: 'i · Leerspiel',
    playOfBooster: 'Spiel des Bremskraftverstärkers',
    playTravel: 'i · Spiel',
    strokeOfFailed: 'Hub des ausgefallenen Kreises',
    strokeTravel: 'i · Hub',
    pistonsDrawnBack: 'Zurückgezogene Kolben',
    shoesToDrum: 'Backen dieser Achse bis zur Trommel',
    giveOfShoes: 'Nachgeben ihrer Backen und Beläge',
    giveOfLines: 'Nachgeben ihrer Leitungen',
    restOfCircuit: 'Rest des Kreises',
    partOfAxle: 'Teil dieser Achse',
    ownOfAll: 'eigene Teile / x_pedal',
  },

  /* sim/study/slope-readings.ts */
  studySlopeReadings: {
    cableThatHolds: (nose: 'down' | 'up') =>
      `Zug im Seilzug, der gerade hält, Nase ${nose === 'down' ? 'bergab' : 'bergauf'}`,
    handForIt: (nose: 'down' | 'up') =>
      `Zug am Handhebel dafür, Nase ${nose === 'down' ? 'bergab' : 'bergauf'}`,
    marginOfCable: (nose: 'down' | 'up') =>
      `Reserve des Seilzugs, Nase ${nose === 'down' ? 'bergab' : 'bergauf'}`,
  },

  /* sim/study/stop-readings.ts */
  studyStopReadings: {
    share: 'Anteil',
    deceleration: 'a = n T / (r m Anteil)',
    energy: 'E = ½ m v² Anteil / n',
    torque: 'T = m a Anteil r / n',
    ofLevelRoad: 'n T_0 v / r durch (c m g + k v²) v',
  },

  /* sim/study/turn.ts */
  studyTurn: {
    clearanceFront: 'Lüftspiel, vorn',
    clearanceRear: 'Lüftspiel, hinten',
    torque: 'Moment',
    bore: 'Bohrung',
    leastInATurn: (name: string) => `${name}, Kleinstwert je Umdrehung`,
    greatestInATurn: (name: string) => `${name}, Größtwert je Umdrehung`,
  },

  /* ui/adjusters.ts */
  adjusters: {
    inWord: (many: string) => `in ${many}`,
    teethBack: 'Zähne zurück',
    oneToothBack: 'Einen Zahn zurück',
    oneToothOnAgain: 'Einen Zahn wieder vor',
    toothNow: 'Zahn jetzt',
    of1Tooth: 'von 1 Zahn',
    ofTeeth: (back: number) => `von ${back} Zähnen`,
    by1Tooth: '1 Zahn',
    byTeeth: (back: number) => `${back} Zähnen`,
    byMm: (shorter: string) => `${shorter}\u00a0mm`,
    of: (teeth: number) => `von ${teeth}`,
    oneStep: 'ein Schritt',
    steps: (to: number) => `${to} Schritte`,
    backOffTheAdjusterThrough: 'Nachsteller durch das Schauloch zurückstellen',
    backItOff: 'Zurückstellen',
    tooth: (at: string) => `Zahn ${at}`,
    noClick: 'kein Klick',
    pushTheWedgeUpThrough:
      'Keil durch das Schauloch nach oben drücken; das verkürzt die Druckstange',
    shorterByMm: 'Kürzer um, mm',
    aLittleBack: 'Ein wenig zurück',
    aLittleOnAgain: 'Ein wenig wieder vor',
    strutNow: 'Druckstange jetzt',
    ofMm: (shorter: string) => `von ${shorter}\u00a0mm`,
    toothedLeverName: 'Zahnhebel, alle überlaufenen Zähne',
    toothedLeverIdea:
      'Führt ein Hub die Backe um einen ganzen Zahn über das Spiel im Langloch hinaus, fällt der Hebel in den nächsten',
    incrementalName: 'Zahnhebel, einer je Tritt',
    incrementalIdea:
      'Führt ein Hub die Backe um einen ganzen Zahn über das Spiel im Langloch hinaus, fällt der Hebel ein, ein Zahn je Tritt',
    screwStrutName: 'Gewinde\u00addruckstange, Sternrad',
    screwStrutIdea:
      'Geht ein Hub um einen ganzen Zahn über das Spiel hinaus, greift der Hebel und dreht das Sternrad',
    turnTheStarWheelBack: 'Sternrad durch das Schauloch zurückdrehen, seinen Hebel dabei weghalten',
    wedgeName: 'Keil, stufenlos',
    wedgeIdea:
      'Hat ein Hub das Spiel hinter dem Haken verbraucht, fällt der Keil, so weit Platz ist: keine Zähne, kein Klick',
    wedgeUnlisted:
      'Der Keil geht in zu kleinen Schritten, um sie einzeln zu nennen; das Diagramm zeigt sie.',
    strutLongerBy: 'Druckstange länger um',
    ofMm2: (growth: string) => `von ${growth} mm`,
    theWedgeMadeTheStrut: (growth: string) =>
      `der Keil hat die Druckstange um ${growth} mm länger gemacht`,
    wedgeSetBack: 'Keil nach oben drücken',
    strutMm: (at: string) => `Druckstange ${at} mm`,
    noStep: 'kein Schritt',
    strutMmLonger: (longer: string, inPresses: string) =>
      `Druckstange ${longer} mm länger ${inPresses}`,
  },

  /* ui/app/announcer.ts */
  appAnnouncer: {
    pedalReleased: 'Pedal gelöst',
    pedalPressedToBarAnd: (most: number) => `Pedal bis ${most} bar getreten und gelöst`,
    pedalPressedBar: (bar: number) => `Pedal getreten: ${bar} bar`,
  },

  /* ui/pieces/language-choice.ts */
  piecesLanguageChoice: {
    language: 'Sprache',
    germanIsMadeByMachine: 'Maschinell übersetzt; noch von keiner Lehrkraft gelesen.',
  },
  /* ui/app/bench-sheet.ts */
  appBenchSheet: {
    wall: 'Wand',
    showOnTheDrawing: 'Auf der Zeichnung zeigen',
    notHere: 'nicht hier',
    on: 'an',
    off: 'aus',
    bench: 'Werkbank',
    done: 'Fertig',
    brakeOnTheBench: 'Bremse auf der Werkbank',
    view: 'Ansicht',
    wallHalfDrawingHalfWords: 'Wand: halb Zeichnung, halb Text, für einen Beamer. Taste w.',
    wheelSeenFromOutside: 'Rad, von außen gesehen',
    leftHand: 'Linkes',
    rightHand: 'Rechtes',
    theWheelsOfTheAxle: 'Die Räder der Achse',
    eachItsOwn: 'Jedes für sich',
    bothAlike: 'Beide gleich',
    twoWheelsOfOneAxle:
      'Zwei Räder einer Achse, jedes mit eigenem Verschleiß, Zahn und eigener Laufleistung: Das oben gewählte steht auf der Werkbank, und was getan wird, wird an ihm getan. Parken und Alle Messwerte nennen beide.',
    shoes: 'Backen',
    thatBend: 'Biegsam',
    rigid: 'Starr',
    shoesThatBendWebAnd:
      'Biegsame Backen: Steg und Kranz aus Stahl geben nach wie in Wirklichkeit, und alles wird damit gerechnet, die starren Werte daneben. Verschlissene Beläge laufen neu ein, und eine bisher gefahrene Laufleistung beginnt neu. Taste b.',
    takeAway: 'Mitnehmen…',
    picturesFiguresThisMoment:
      'Bilder, Abbildungen, dieser Augenblick für ein Handy und mehr. Taste e.',
    wordsOfTheTradeHere: 'Fachwörter hier',
    wordsWithADottedLine:
      'Wörter mit gepunkteter Linie werden auf Antippen erklärt, britisch und amerikanisch. Taste d.',
    thisMoment: 'Dieser Augenblick',
    keepAsGhost: 'Als Schattenbild behalten',
    sideBySide: 'Nebeneinander',
    aKeptMomentIsDrawn:
      'Ein behaltener Augenblick wird dünn und grau über das Folgende gezeichnet, seine Werte daneben. Tasten g und x.',
    allReadings: 'Alle Messwerte…',
    keys: 'Tasten (?)',
    soundOfTheClick: 'Ton des Klicks',
    on2: 'An',
    off2: 'Aus',
    whatHasChangedOnThis: 'Was sich an dieser Werkbank geändert hat',
    licencesOfTakeupAndOf: 'Lizenzen von Takeup und von dem, womit es gebaut ist',
    allOfTakeupAsOne:
      'Ganz Takeup als eine Datei, für einen USB-Stick: öffnet mit Doppelklick, ohne Netz',
  },

  /* ui/app/bending.ts */
  appBending: {
    clicksOfAPressTo: (mostbar: number) => `Klicks eines Tritts bis ${mostbar} bar`,
    toothByThisMuchWear: 'Zahn bei so viel Verschleiß',
    shoesThatBend: 'biegsamen Backen',
    rigidShoes: 'starren Backen',
    shoesThatBend2: 'Biegsame Backen',
    theLiningsAreBeddedIn: (kind: string) => `Die Beläge laufen ein mit ${kind}`,
    shoesThatBendBesideRigid: 'Biegsame Backen neben starren',
    shoes: 'Backen',
    thatBend: 'biegsam',
    rigid: 'starr',
    webAndTableOfYour:
      ' Steg und Kranz Ihrer Bremse sind die ihrer Vorlage, entsprechend vergrößert; nur was sie wirklich messen, sagt, wie sie sich biegt.',
    outlinesTheBowOfEach: (bowscale: number, webAnd: string) =>
      `Umrisse: die Durchbiegung jeder Backe, ×${bowscale}.${webAnd}`,
    theSameWearUnderRigid: 'Derselbe Verschleiß mit starren Backen wird ausgerechnet',
    bendingRigid: (name: string, bend: string, rigid: string) =>
      `${name}: ${bend} biegsam, ${rigid} starr`,
  },

  /* ui/app/case-bar.ts */
  appCaseBar: {
    yourCase: 'Ihr Fall',
    whatISee: 'Was ich sehe',
  },

  /* ui/app/class-kit.ts */
  appClassKit: {
    keepThisMomentAsA: 'Diesen Augenblick als dünnes graues Schattenbild behalten (g)',
    keep: 'Behalten',
  },

  /* ui/app/dials/dials.ts */
  appDialsDials: {
    anchors: {
      pin: { front: 'Vorderer Bolzen', rear: 'Hinterer Bolzen' },
      heel: { front: 'Vordere Ferse', rear: 'Hintere Ferse' },
    },
    name: (name: string, side: 'front' | 'rear') =>
      `${name}, ${side === 'front' ? 'vordere' : 'hintere'} Backe`,
    pedalLinePressure: 'Pedal, Leitungsdruck',
    boreOfTheWheelCylinder: 'Bohrung des Radzylinders',
    forceAsFitted: (charAt: string, name: string) => `${charAt}${name}, Einbaukraft`,
    ofTheAdjuster: (step: string) => `${step} des Nachstellers`,
    frictionOfTheLiningsCold: 'Reibwert der Beläge, kalt',
    thicknessOfTheLiningsWhen: 'Dicke der Beläge, neu',
    lining: 'Belag',
    temperatureOfTheDrum: 'Temperatur der Trommel',
  },

  /* ui/app/dials/handles.ts */
  appDialsHandles: {
    yours: (dial: string) => `; Ihr Wert ${dial}`,
    dragItOrArrowKeys: (name: string, dial: string) =>
      `${name}: ${dial}. Ziehen oder Pfeiltasten; ein Doppelklick setzt zurück`,
  },

  /* ui/app/dials/index.ts */
  appDials: {
    notTold: 'nicht angegeben',
    theShoeLocks: (locked: string) =>
      `die ${locked === 'front' ? 'vordere' : locked === 'rear' ? 'hintere' : locked} Backe blockiert`,
    pressIt: 'Treten',
    brakeFactorAtBar: (bar: string) => `Bremsenkennwert C* bei ${bar} bar:`,
    backTo: (name: string, dial: string) => `${name}: zurück auf ${dial}`,
    back: 'Zurück',
    dials: 'Stellgriffe',
    theyTurnYourOwnBrake: 'Sie verstellen Ihre eigene Bremse, und auf der Werkbank steht ein Gast.',
    makeItMine: 'Zu meiner machen',
    backToMine: 'Zurück zu meiner',
    dragItOrArrowKeys: 'Ziehen oder Pfeiltasten.',
    dragItAcrossOrArrow: 'Quer ziehen oder Pfeiltasten.',
    aDoubleClickOrBackspace: (dragIt: string) =>
      `${dragIt} Ein Doppelklick oder die Rücktaste setzt zurück.`,
    takeAHandleOnThe:
      'Fassen Sie einen Griff auf der Zeichnung: ziehen, oder mit Tab hin und die Pfeiltasten nehmen.',
    noFurtherThereIsNo: (refused: string) =>
      `Weiter geht es nicht: Eine solche Bremse gibt es nicht. ${refused}.`,
    esc: 'Esc',
    allBack: 'Alle zurück',
  },

  /* ui/app/drop.ts */
  appDrop: {
    wasNotOpenedNothingElse: (name: string, error: string) =>
      `${name} wurde nicht geöffnet; sonst hat sich nichts geändert. ${error}`,
    letGoToOpenIt: 'Loslassen zum Öffnen',
  },

  /* ui/app/edge-card.ts */
  appEdgeCard: {
    stops: {
      pads: 'Sie steht auf allen ihren Auflagen.',
      'hold-down spring': 'Die Niederhalterfeder hat nachgegeben, bis sie gegenhält.',
      guides: 'Nur ihre Führungen halten sie auf.',
    },
    edgeOnFrontShoeTilt: (tiltdrawn: number) =>
      `Von der Kante, vordere Backe; Kippung gezeichnet ×${tiltdrawn}`,
    mmAcrossTheLining: (degrees: string, acrossLining: string) =>
      `${degrees}°, ${acrossLining} mm quer über den Belag.`,
    upright: 'Aufrecht.',
    nPullMmBesideThe: (
      pull: string,
      beside: string,
      moment: string,
      righting: string,
      mmAcross: unknown,
      stops: string,
    ) => [
      pull,
      ' N ziehen ',
      beside,
      ' mm neben der Mitte des Stegs: ',
      moment,
      ' N·mm kippen sie, der Niederhalter hält gegen bis ',
      righting,
      '. ',
      mmAcross,
      ' ',
      stops,
    ],
    holdDownLost: 'Niederhalter verloren',
    endPadsWornMm: (hollow: number) => `Endauflagen ${hollow} mm verschlissen`,
  },

  /* ui/app/forces-beside.ts */
  appForcesBeside: {
    front: 'Vordere',
    rear: 'Hintere',
    shoe: (front: string) => `${front} Backe`,
    leftOverN: (gap: string) => `Rest: ${gap}\u00a0N`,
    allForcesOnEachShoe: 'Alle Kräfte an jeder Backe',
    headToTailTheyClose:
      'Aneinandergesetzt schließen sie sich: eine Backe in Ruhe. Solange sie sich bewegt, ist der Rest ihre Trägheit.',
    noForceIsToldHere: 'Hier wird keine Kraft angegeben.',
  },

  /* ui/app/guest-bar.ts */
  appGuestBar: {
    tooth: (tooth: number) => `, Zahn ${tooth}`,
    makeItMine: 'Zu meiner machen',
    backToMine: 'Zurück zu meiner',
    guestOnTheBenchYours: (guest: unknown, yours: string) => [
      'Gast auf der Werkbank: ',
      guest,
      '. Ihre wartet, wie Sie sie verlassen haben: ',
      yours,
      '.',
    ],
    yourQuestion: 'Ihre Frage',
    questions: 'Fragen',
    close: 'Schließen',
    guestOnTheBench: 'Gast auf der Werkbank',
    guestOnTheBench2: 'Gast auf der Werkbank:',
    yoursWaitsAsYouLeft: (yours: string) => `Ihre wartet, wie Sie sie verlassen haben: ${yours}.`,
  },

  /* ui/app/kept.ts */
  appKept: {
    thePedal: 'das Pedal',
    keptAsAGhost: 'Als Schattenbild behalten',
    nothingDiffersYet: 'Noch kein Unterschied.',
    oneThingDiffers: (names: string | undefined) => `Ein Unterschied: ${names}.`,
    thingsDiffer: (count: number) => `${count} Unterschiede`,
    kept: 'behalten',
    now: 'jetzt',
    sideBySide: (x: unknown) => ['Nebeneinander', x],
    hideIt: 'Ausblenden',
    drawIt: 'Zeichnen',
    forget: 'Vergessen',
  },

  /* ui/app/keys-sheet.ts */
  appKeysSheet: {
    space: 'Leertaste',
    theBrake: 'Die Bremse',
    holdThePedalDownWhere: 'Pedal getreten halten, wo es eines gibt',
    and: '. und ,',
    brackets: '[ und ]',
    oneStepOnOneStep: 'einen Schritt vor, einen Schritt zurück',
    slowerFaster: 'langsamer, schneller',
    lookBackOverTheLast: 'auf die letzten zehn Sekunden zurückblicken, und wieder jetzt',
    theLastClickSlowly: 'der letzte Klick, langsam',
    shoesThatBendOrRigid: 'biegsame Backen oder starre',
    theDrawing: 'Die Zeichnung',
    arrowKeys: 'Pfeiltasten',
    onceItHasTheFocus: 'sobald sie den Fokus hat: von Teil zu Teil',
    shiftAndArrows: 'Umschalt und Pfeile',
    moveItWhileItIs: 'sie verschieben, wenn sie vergrößert ist',
    nearerFartherWhole: 'näher, weiter, ganz',
    allForcesOnEachShoe: 'alle Kräfte an jeder Backe, aneinandergesetzt, und wieder weg',
    dialsHandlesOnTheBrake: 'Stellgriffe: Griffe an der Bremse, und wieder weg',
    keepThisMomentAsA: 'diesen Augenblick als Schattenbild behalten',
    hAndN: 'H und N',
    hideTheNamesShowThe: 'die Namen ausblenden; den nächsten zeigen',
    thePage: 'Die Seite',
    theTableOfAllReadings: 'die Tabelle aller Messwerte',
    wordsOfTheTradeThat: 'Fachwörter, die hier stehen',
    takeAwayWhatStandsHere: 'mitnehmen, was hier steht: Abbildung, Link, Code, Datei',
    shiftE: 'Umschalt E',
    aFigureAtOnceWith: 'sofort eine Abbildung, mit der letzten Auswahl',
    whatTellsMostOrAll: 'was am meisten sagt, oder alles',
    theWallAndBack: 'die Wand, und zurück',
    fullScreen: 'Vollbild',
    ctrlZCtrlY: 'Strg Z, Strg Y',
    undoRedo: 'rückgängig, wiederholen',
    letGoBackToNow: 'loslassen, zurück zu jetzt, zurück zu meiner',
    theseKeys: 'diese Tasten',
    keys: 'Tasten',
    close: 'Schließen',
    keysOfOneSign: 'Tasten mit einem Zeichen',
    onOffOnlyTabEnter:
      'An. Aus, dann tun nur Tab, Eingabe, Pfeile, Esc, die Leertaste und Tasten mit Strg etwas.',
    offKeptOnThisDevice:
      'Aus, auf diesem Gerät gemerkt. Mit Tab, Eingabe und Pfeilen ist weiter alles zu erreichen.',
    aFieldKeepsItsKeys:
      'Ein Feld behält seine Tasten. Die Wand und eine Lektion haben eigene Tasten, und ? listet sie dort auf.',
  },

  /* ui/app/layer-names.ts */
  appLayerNames: {
    edgeOn: 'Seitenansicht',
    gapFan: (magnification: number) => `Spaltfächer ×${magnification}`,
    pressureComb: 'Pressungskamm',
    restGhost8: 'Ruhelage als Schattenbild ×8',
    forcePolygons: 'Kraftecke',
  },

  /* ui/app/legend.ts */
  appLegend: {
    visibleEdge: 'Sichtbare Kante',
    leaderDimensionHatching: 'Bezugslinie, Maß, Schraffur',
    hiddenEdge: 'Verdeckte Kante',
    whereAMovingPartRests: 'Wo ein bewegtes Teil in Ruhe liegt',
    drumCut: 'Trommel, geschnitten',
    cylinderBodyCut: 'Zylindergehäuse, geschnitten',
    pistonCut: 'Kolben, geschnitten',
    frictionLining: 'Reibbelag',
    brakeFluid: 'Bremsflüssigkeit',
    rubberSeen: 'Gummi, in Ansicht',
    rubberCutThin: 'Gummi, dünn geschnitten',
    springWire: 'Federdraht',
    leadingSolid: 'Auflaufend: gefüllt',
    trailingOpen: 'Ablaufend: offen',
  },

  /* ui/app/moment-file.ts */
  appMomentFile: {
    thisMomentOfTheBench: 'Dieser Augenblick der Werkbank',
    copyItsLink: 'Seinen Link kopieren',
    saveAsAFile: 'Als Datei speichern',
    openAFile: 'Datei öffnen',
    openAMomentsFile: 'Datei eines Augenblicks öffnen',
    undo: (canUndo: string) => `Rückgängig${canUndo}`,
    redo: 'Wiederholen',
  },

  /* ui/app/more-readings.ts */
  appMoreReadings: {
    aStopFromKmH: (town: number, hard: string) => `Eine Bremsung aus ${town} km/h bei ${hard} bar`,
    bothWheelsAtThatPress: 'Beide Räder bei diesem Tritt',
    drivenAtKmHWith: (town: number) => `Gefahren mit ${town} km/h bei gelöstem Pedal`,
    thePedalPushedToBar: (most: string) => `Das Pedal getreten bis ${most} bar`,
    whereThatTravelGoes: 'Wohin dieser Weg geht',
    parkedWithNInThe: (cable: number) => `Geparkt mit ${cable} N im Seilzug`,
    onceAroundTheDrum: 'Einmal um die Trommel',
  },

  /* ui/app/names-bar.ts */
  appNamesBar: {
    namesOfTheParts: 'Namen der Teile',
    showAllNames: 'Alle Namen zeigen',
    hideTheNames: 'Namen ausblenden',
    whatIsIt: (number: unknown) => [number, 'was ist das?'],
  },

  /* ui/app/names-beside.ts */
  appNamesBeside: {
    yes: (part: string) => `Ja: ${part}.`,
    justShown: 'Gerade gezeigt:',
    is: (number: number) => `${number} ist:`,
    the: (justShown: string, last: string) => `${justShown} ${last}.`,
    score: (hits: number, found: number) => `${hits} von ${found} beim ersten Antippen`,
    allFound: (found: number) => `Alle ${found} gefunden`,
    tapThe: (sought: string) => `Antippen: ${sought}`,
    thatIsThe: (wrong: string) => `Das ist: ${wrong}.`,
    toGo: (score: string, length: number) => `${score}, noch ${length}`,
    showIt: 'Zeigen',
    onceMore: 'Noch einmal',
    stopAsking: 'Nicht mehr fragen',
    showAllNames: 'Alle Namen zeigen',
    hideTheNames: 'Namen ausblenden',
    askMe: 'Frag mich ab',
    nextName: 'Nächster Name',
    hidden: (hidden: number) => `${hidden} ausgeblendet`,
    askForAPart: 'Nach einem Teil fragen',
    namesOfTheParts: 'Namen der Teile',
    namesInApply: 'Namen unter Betätigen',
    offHere: 'Hier aus',
    whatIsIt: (no: unknown) => [no, 'was ist das?'],
    linesAndMarks: 'Linien und Zeichen',
  },

  /* ui/app/offline.ts */
  appOffline: {
    aNewerTakeupIsReady: 'Ein neueres Takeup ist bereit; was auf der Werkbank steht, bleibt.',
    openIt: 'Öffnen',
    later: 'Später',
  },

  /* ui/app/part-pointer.ts */
  appPartPointer: {
    shoe: (side: 'front' | 'rear') => `, ${side === 'front' ? 'vordere' : 'hintere'} Backe`,
    enterThisOne: (partNames: string) => `${partNames} Eingabe: dieses.`,
  },

  /* ui/app/pedal.ts */
  appPedal: {
    pedal: 'Pedal',
    ofBar: (bar: number, mostbar: number) => `${bar} von ${mostbar} bar`,
    holdOrDrag: 'halten oder ziehen',
  },

  /* ui/app/print-page.ts */
  appPrintPage: {
    brakeDrawing: 'Zeichnung der Bremse',
    teachingBrakeItsFiguresAre: 'Lehrbremse: Ihre Werte sind nicht die Ihres Fahrzeugs.',
  },

  /* ui/app/readings-table.ts */
  appReadingsTable: {
    shoesBend: 'Backen biegen sich',
    whatItMeans: 'Was es bedeutet',
    oneThingChanged: (name: string) => `eines geändert: ${name}`,
    whatIf: (name: unknown) => ['Was wäre, wenn', name],
    of: (name: string) => `von ${name}`,
    working: (name: unknown) => ['Rechenweg', name],
    allReadings: 'Alle Messwerte',
    done: 'Fertig',
  },

  /* ui/app/stage-drawing.ts */
  appStageDrawing: {
    shoesBend: 'Backen biegen sich',
    rigidShoesStill: 'Backen noch starr',
    left: 'Linkes',
    right: 'Rechtes',
    handWheelFromOutsideDrum: (left: string) => `${left} Rad von außen, Trommel weggeschnitten`,
    time: (paceName: string) => ` · Zeit ${paceName}`,
    gapFanMm: (magnification: number, slowed: string) =>
      `Spaltfächer ×${magnification}, mm${slowed}`,
  },

  /* ui/app/stage-view.ts */
  appStageView: {
    brakeArrowKeysGoFrom:
      'Bremse: Pfeiltasten gehen von Teil zu Teil; vergrößert verschieben Umschalt und Pfeiltasten sie',
    zoom: 'Zoom',
    zoomOut: 'Verkleinern',
    zoomOut2: 'Verkleinern (−)',
    zoomIn: 'Vergrößern',
    zoomIn2: 'Vergrößern (+)',
    of0WholeBrake: '0: Ganze Bremse',
    wholeBrake0: 'Ganze Bremse (0)',
  },

  /* ui/app/takeup-app.ts */
  appTakeupApp: {
    linkOpened: 'Link geöffnet',
    sheet: 'Blatt',
    board: 'Tafel',
    view: (sheet: string) => `Ansicht: ${sheet}`,
    takeup: 'Takeup',
    station: 'Bereich',
    stations: 'Bereiche',
    brakeOnTheBench: (onBench: string) => `Bremse auf der Werkbank: ${onBench}`,
    brake: 'Bremse',
    table: 'Tabelle',
    view2: 'Ansicht:',
    start: 'Start',
    lessons: 'Lektionen',
    ask: 'Fragen',
    takeAway: 'Mitnehmen',
    takeAwayE: 'Mitnehmen (e)',
    show: 'Zeigen',
    bench: 'Werkbank',
    shoesThatBendB: 'biegsame Backen (b)',
    allLayersReadingsAndSteps: 'Alle Ebenen, Messwerte und Zeitschritte (m)',
    more: 'Mehr',
    nothingWord: 'nichts',
    on: (on: string) => `An: ${on}`,
    less: 'Weniger',
    brakeDrawing: 'Zeichnung der Bremse',
    twoWaysToTheSame: (agreement: string) =>
      `Zwei Wege zum selben Gleichgewicht unterscheiden sich um ${agreement} %`,
  },

  /* ui/app/teacher.ts */
  appTeacher: {
    takeupForTheTeacher: 'Takeup: für die Lehrkraft',
    theWall: 'Die Wand',
    onTheWallNow: 'Jetzt an der Wand',
    nothingTheWallIsBlank: 'Nichts: Die Wand ist leer.',
    theQuestion: 'Die Frage.',
    whatHappens: 'Was geschieht.',
    theOutcome: 'Das Ergebnis.',
    theEnd: 'Das Ende.',
    theDeskView: 'Die Pultansicht.',
    covered: 'Verdeckt:',
    blank: 'Leer (.)',
    deskView: 'Pultansicht',
    wall: 'Wand',
    moments: 'Augenblicke',
    steps: 'Schritte',
    theStep: 'Der Schritt',
    minutes: (minutes: number) => `, ${minutes} ${minutes === 1 ? 'Minute' : 'Minuten'}`,
    holds: ' (stimmt)',
    itShows: (shows: string) => `Es zeigt: ${shows}.`,
    giveBack: (back: string) => `Rückmeldung: ${back}`,
    behindIt: 'Dahinter',
    itShows2: 'Es zeigt',
    pointAt: 'Hinweisen auf',
    askNext: 'Als Nächstes fragen',
    valuesBeforeAndNow: 'Werte, vorher und jetzt',
    whatComesNext: 'Was als Nächstes kommt',
    handsFor: 'Handzeichen für',
    oneHandLessFor: (letter: string) => `Ein Handzeichen weniger für ${letter}`,
    oneHandMoreFor: (letter: string) => `Ein Handzeichen mehr für ${letter}`,
    hand: 'Handzeichen',
    hands: 'Handzeichen',
    theCountsStayBesideThe: (all: number, hand: string) =>
      `${all} ${hand}. Die Zahlen bleiben neben dem Ergebnis stehen.`,
    next: 'Weiter',
    stepBack: 'Schritt zurück',
    showAgain: 'Noch einmal zeigen',
    thenWord: 'Dann',
    noLessonIsOpenIn:
      'Im anderen Fenster ist keine Lektion offen. Öffnen Sie dort eine; dieses Fenster folgt ihr.',
    lesson: (clock: unknown) => ['Lektion', clock],
    thisStep: (clock: unknown) => ['dieser Schritt', clock],
    stopTheClock: 'Uhr anhalten',
    goOn: 'Weiterlaufen',
  },

  /* ui/app/trouble-bar.ts */
  appTroubleBar: {
    close: 'Schließen',
  },

  /* ui/app/undo-bar.ts */
  appUndoBar: {
    undo: (lastDone: string) => `Rückgängig: ${lastDone}`,
    ctrlZ: (name: string) => `${name} (Strg+Z)`,
    undo2: 'Rückgängig',
    redo: 'Wiederholen',
  },

  /* ui/part.ts */
  part: {
    notLoaded:
      'Was dafür gebraucht wird, konnte nicht geladen werden: Ist das Netz da? Was getippt wurde, bleibt; öffnen Sie es noch einmal, oder laden Sie die Seite neu.',
  },

  /* ui/app/wall-code.ts */
  appWallCode: {
    codeForPhones: 'Code für Handys',
    thisMomentOnYourPhone: 'Dieser Augenblick auf Ihrem Handy',
    closeQ: 'Schließen Q',
    thereIsTooMuchOn:
      'Auf der Werkbank ist zu viel für einen Code, den ein Handy von hier liest. Am Pult speichert Mitnehmen es als Datei.',
    thatIsTheBenchThis: (length: number) =>
      `Das ist die Werkbank; dieser Augenblick von ihr steckt nur im Code (${length} Zeichen mehr).`,
    thisPageRunsOnThis:
      'Diese Seite läuft nur auf diesem Rechner: Ein Handy kann ihr nicht folgen.',
  },

  /* ui/app/wall.ts */
  appWall: {
    blankShowItAgain: (key: unknown) => ['Leer: wieder zeigen ', key],
  },

  /* ui/app/wall-ghost.ts */
  wallGhost: {
    hideTheGhost: 'Schattenbild ausblenden',
    drawTheGhost: 'Schattenbild zeichnen',
    forgetTheGhost: 'Schattenbild vergessen',
    compare: (pair: string) => `Vergleichen: ${pair}`,
    keepThisMomentInstead: 'Stattdessen diesen Augenblick behalten',
    keepThisMoment: 'Diesen Augenblick behalten',
    ghostAndNow: 'Schattenbild und Jetzt nebeneinander',
    sideBySide: 'Nebeneinander',
    ghostAndCompare: 'Schattenbild und Vergleich',
    close: 'Schließen',
  },

  /* ui/app/wall-keys.ts */
  appWallKeys: {
    gapFan: 'Spaltfächer',
    brackets: '[ und ]',
    stations: 'Stationen',
    lessons: 'Lektionen',
    desk: 'Pult',
    space: 'Leertaste, →',
    theFilledButton: 'der gefüllte Knopf',
    pageDown: 'Bild ab',
    theSameByARemote: 'dasselbe, mit einem Presenter',
    bPageUp: 'B, ←, Bild auf',
    theOtherButton: 'der andere Knopf',
    layersAndLoupe: 'Ebenen und Lupe',
    keepAGhostChooseMore: 'ein Schattenbild behalten; mehr wählen',
    compareWithAChoiceOf: 'vergleichen, mit Auswahl, was',
    theLastClickSlowly: 'der letzte Klick, langsam',
    slowerFaster: 'langsamer, schneller',
    lookBackAndNow: 'zurückblicken, und jetzt',
    of1To9: '1 bis 9',
    blankAndShownAgain: 'leer, und wieder gezeigt',
    thisMomentAsACode: 'dieser Augenblick als Code für Handys',
    fullScreen: 'Vollbild',
    wEsc: 'W, Esc',
    theseKeys: 'diese Tasten',
  },

  /* ui/app/wall-side.ts */
  appWallSide: {
    space: 'Leertaste',
    pressName: 'Treten',
    letGo: 'Loslassen',
    turnRoundName: 'Andersherum drehen',
    timeAt: (agoText: string, paceName: string) => `${agoText}, Zeit ${paceName}.`,
    keysOfTheWall: 'Tasten der Wand',
    keysOfOneLetterWork: 'Tasten mit einem Buchstaben gelten',
    close: (piece: unknown) => ['Schließen ', piece],
    forTheClass: 'Für die Klasse',
    guest: (guest: string) => `Gast: ${guest}`,
    show: 'Zeigen',
    backToMine: 'Zurück zu meiner',
    keys: '? Tasten',
    keys2: ' Tasten',
    mCompareAndGhost: 'M Vergleichen und Schattenbild',
    compare: (m: unknown) => [m, ' Vergleichen'],
    escDeskLeaveTheWall: 'Esc Pult: die Wand verlassen',
    esc: 'Esc',
    desk: ' Pult',
  },

  /* ui/app/words-here.ts */
  appWordsHere: {
    first: (l: 'American' | 'British') =>
      `${l === 'American' ? 'Amerikanisch' : 'Britisch'} zuerst`,
    wordsOfTheTrade: 'Fachwörter',
    close: 'Schließen',
    whoseWordsFirst: 'Wessen Wörter zuerst',
  },

  /* How what people ask is read. */
  askPatterns: {
    fold: askGerman.fold,
    words: askGerman.words,
    stem: askGerman.stem,
    turnsBack: askGerman.turnsBack,
    neverMixed: askGerman.neverMixed,
    twofold: askGerman.twofold,
    figures: askGerman.figures,
  },

  /* What people say beside the lists, in German alone. */
  askMore: {
    lines: {
      'station:drum-off': [
        'Bremstrommel lässt sich nicht abziehen',
        'Trommel geht nicht runter',
        'Trommel bekomme ich nicht ab',
      ],
      'fault:hub rust': [
        'Trommel an der Nabe festgegammelt',
        'Trommel festgerostet an der Radnabe',
      ],
      'fault:lip': ['Backen hängen hinter dem Grat der Trommel', 'Rostrand hält die Trommel fest'],
      'order:back': ['Nachsteller durch das Loch zurückdrehen', 'wie entspanne ich die Backen'],
      'question:q072': ['Trommelbremse quietscht beim Bremsen', 'hinten quietscht es'],
      'check:pedal': [
        'Bremspedal lässt sich zu weit durchtreten',
        'Bremse kommt erst spät',
        'langer Weg bis sie bremst',
      ],
      'question:q095': ['erst nach zweimal Treten bremst er richtig'],
      'check:lever': [
        'Handbremse zieht nicht richtig',
        'Handbremse greift kaum',
        'Handbremswirkung zu schwach bei der Hauptuntersuchung',
      ],
      'question:q105': [
        'Handbremse zieht nur an einem Rad',
        'Handbremse ungleichmäßig links rechts',
      ],
      'question:q099': [
        'bei welcher Raste soll die Handbremse halten',
        'Handbremse kommt erst bei der achten Raste',
      ],
      'question:q102': ['Handbremse geht nicht mehr los', 'Handbremse sitzt fest nach dem Winter'],
      'question:q017': [
        'Nachstellung arbeitet nicht',
        'Nachsteller klickt gar nicht',
        'automatische Nachstellung ohne Funktion',
      ],
      'question:q021': [
        'stellt die Bremse beim Rückwärtsfahren nach',
        'rückwärts bremsen damit sie nachstellt',
      ],
      'question:q055': ['welche Backe läuft auf', 'woran erkenne ich die auflaufende Backe'],
      'question:q051': [
        'warum bremst die vordere Backe stärker',
        'warum leistet die auflaufende Backe mehr',
      ],
      'question:q057': ['eine Backe nutzt sich schneller ab als die andere'],
      'question:q111': ['wann sind die Beläge fällig', 'wie lange reichen die Bremsbeläge noch'],
      'question:q112': ['reichen drei Millimeter Belag noch', 'wie dick muss der Belag noch sein'],
      'question:q114': [
        'wo steht das Verschleißmaß der Trommel',
        'wie groß darf der Durchmesser der Trommel sein',
      ],
      'question:q045': [
        'Rad wird beim Fahren heiß und riecht',
        'verbrannter Geruch an einem Hinterrad',
      ],
      'check:drag': ['Bremse löst nicht ganz', 'Rad läuft schwer nach dem Bremsen'],
      'question:q039': ['wie leicht muss sich das Rad drehen lassen'],
      'check:braking': ['Bremswirkung hinten zu gering', 'bremst hinten schlecht'],
      'fault:oval drum': ['Trommel hat einen Schlag', 'Trommel eiert'],
      'fault:fluid on linings': [
        'Radzylinder undicht Bremsflüssigkeit in der Trommel',
        'Beläge nass von Bremsflüssigkeit',
      ],
    },
  },

  /* ui/ask/also.ts */
  askAlso: {
    theHandLeversNotches: 'die Rasten des Handbremshebels',
    handbrakeNotchesTooMany: 'Handbremse zu viele Rasten',
    theAdjustersClick: 'das Klicken des Nachstellers',
    adjusterClickWhenIPress: 'Nachsteller klickt beim Treten',
    theAdjusterClicksTooOften: 'der Nachsteller klickt zu oft',
    adjusterClicksEveryPress: 'Nachsteller klickt bei jedem Tritt',
    theDrumWillNotCome: 'die Trommel geht nicht ab',
    drumWillNotComeOff: 'Trommel geht nicht ab',
    theWheelWillNotTurn: 'das Rad dreht sich nicht',
    wheelWillNotTurn: 'Rad dreht sich nicht',
    thePedalGoesFar: 'das Pedal geht weit durch',
    lowPedal: 'langer Pedalweg',
    weakOnTheRollers: 'schwach auf dem Rollenprüfstand',
    lowEffortOnTheRoller: 'zu wenig Bremskraft auf dem Bremsenprüfstand',
    thePedalSinks: 'das Pedal sinkt ab',
    pedalSinksSlowly: 'Pedal sinkt langsam ab',
    setTheCable: 'den Seilzug einstellen',
    adjustTheHandbrakeCable: 'Handbremsseil einstellen',
    aHardPedal: 'ein hartes Pedal',
    hardPedalWeakBrakes: 'hartes Pedal schwache Bremsen',
    theWheelIsHardTo: 'das Rad dreht sich schwer',
    wheelHardToTurnBy: 'Rad von Hand schwer zu drehen',
    aServoKindOfBrake: 'eine Servobremse',
    duoServoBrake: 'Duo-Servo-Bremse',
  },

  /* ui/ask/entries.ts */
  askEntries: {
    kindNames: {
      question: 'Frage',
      fault: 'Fehler',
      station: 'Bereich',
      check: 'Was ich sehe',
      reading: 'Messwert',
      part: 'Teil',
      word: 'Wort',
      lesson: 'Lektion',
      caution: 'Vorsicht',
      'take away': 'Mitnehmen',
      'not here': 'Nicht auf dieser Werkbank',
    },
    notShown: (because: string) => `Nicht gezeigt: ${because}.`,
    whereIsThe: (id: string) => `wo ist ${id}`,
  },

  /* ui/ask/figures.ts */
  askFigures: {
    saidOf: {
      drum: 'Trommel',
      mark: 'Marke',
      score: 'Riefe',
      lip: 'Grat',
      new: 'neu',
      lining: 'Belag',
      slope: 'Steigung',
      unlike: 'Unterschied',
    },
    inWord: (text: string) => `${text} in`,
    acrossTheOtherWay: 'quer in der anderen Richtung',
    trailingLining: 'ablaufender Belag',
    swingInATurn: 'Ausschlag bei einer Umdrehung',
    notches: (text: string) => `${text} ${text === '1' ? 'Raste' : 'Rasten'}`,
    nToTurnIt: (text: string) => `${text} N zum Drehen`,
    theMarkIsTheLimit: 'Die Angabe auf der Trommel ist die Grenze, die sie selbst nennt.',
    noVerdictBeforeItsLimit:
      'Kein Urteil, bevor klar ist, von wem die Grenze stammt: Angabe auf der Trommel, Wert des Herstellers.',
    judgeIt: 'Beurteilen',
    onTheSheetOfInspect: (owner: string) => `Auf dem Blatt von Prüfen, ausgefüllt. ${owner}`,
    whatItPointsTo: 'Worauf es hinweist',
    whatISeeWithThe:
      'Was ich sehe, mit dem Wert ausgefüllt: wahrscheinliche Ursachen und die einfachste nächste Prüfung.',
    willItHold: 'Hält sie?',
    parkWithThisSlopeThe:
      'Parken, mit dieser Steigung: der nötige Zug, Nase nach oben und Nase nach unten.',
  },

  /* ui/ask/rank.ts */
  askRank: {
    bothwheelsAllwheelsHowmuch: 'bothwheels allwheels howmuch explain right press',
    hotSmellDragSpinCoast: 'hot smell drag spin coast wontturn',
    handbrakeNotchCableSlopeCreep: 'handbrake notch cable slope creep roll lever',
    pedalSoftLongSinkHard: 'pedal soft long sink hard throb',
    pullGrabWeakYankSkid: 'pull grab weak yank skid wet fade damp',
    noiseSquealGrindGroanClunk: 'noise squeal grind groan clunk swish rattle',
    comeoffSlidStudDrumSeized: 'comeoff slid stud drum seized',
    limitThickScoreMachineMeasure: 'limit thick score machine measure worn mark',
    fitShoeTogetherBedLining: 'fit shoe together bed lining goon',
  },

  /* ui/ask/read.ts */
  askRead: {
    theAAnMyYour:
      'der die das den dem des ein eine einen einem einer eines mein meine meinen meinem meiner dein deine deinen deiner sein seine ihr ihre ihren ihrer unser unsere unseren dies diese diesen dieser dieses es ihn sie beide beiden hintere hinteren hinterer alte alten alter gerade nur richtig wirklich sogar mal doch alle allen von verdammt verdammte verdammten verflixt verflixte verflixten blöde blöden kleine kleinen kleiner bisschen',
    not: (as: string) => `nicht ${as}`,
    adjusterStarPawlPedalPress: 'adjuster star pawl pedal press backoff noise tooth',
  },

  /* ui/ask/readings.ts */
  askReadings: {
    saidOf: {
      clearanceMean: ['Spalt zwischen Backe und Trommel in mm'],
      restClearanceMean: ['Spalt bei gelöstem Pedal', 'Lüftspiel in mm'],
      pedalTravel: ['wie weit geht das Pedal in mm'],
      runOut: ['wie weit darf ein Kolben heraus', 'Kolbenweg noch übrig'],
      torque: ['Bremsmoment', 'Bremskraft in Newtonmeter'],
      notches: ['Rasten des Hebels'],
      drumDiameter: ['Trommeldurchmesser jetzt'],
      strutForce: ['Kraft auf die Druckstange'],
    },
  },

  /* ui/ask/said/away.ts */
  askSaidAway: {
    theDrawingAsAPicture: 'Die Zeichnung als Bild: Linien (SVG) oder Punkte (PNG), maßstäblich.',
    saveTheDrawingAsA: 'Zeichnung als Bild speichern',
    exportPicture: 'Bild exportieren',
    exportSvg: 'svg exportieren',
    exportPng: 'png exportieren',
    pictureForMySlides: 'Bild für meine Folien',
    screenshotOfTheDrawing: 'Screenshot der Zeichnung',
    imageForADocument: 'Bild für ein Dokument',
    saveImage: 'Bild speichern',
    downloadDrawing: 'Zeichnung herunterladen',
    figureForABook: 'Abbildung für ein Buch',
    posterOfTheDrawing: 'Poster der Zeichnung',
    whatTheBrakeDoesAs:
      'Was die Bremse tut, als Film mit ihren Klicks, als kurze Schleife oder als Streifen.',
    makeAVideo: 'Video machen',
    makeAFilm: 'Film machen',
    recordAClip: 'Clip aufnehmen',
    exportVideo: 'Video exportieren',
    saveAsMp4: 'als mp4 speichern',
    animationForMySlides: 'Animation für meine Folien',
    gifOfTheBrake: 'gif der Bremse',
    shortLoopForAWeb: 'kurze Schleife für eine Webseite',
    filmStrip: 'Filmstreifen',
    movieOfTheClick: 'Film vom Klick',
    worksheetsMeasurementsReports:
      'Arbeitsblätter, Messungen, Berichte und Arbeitsfolgen, für A4 und Letter.',
    printAWorksheet: 'Arbeitsblatt drucken',
    handoutForPupils: 'Handout für Schüler',
    printTheMeasurements: 'Messwerte drucken',
    printOnPaper: 'auf Papier drucken',
    blankMeasuringSheetToPrint: 'leeres Messblatt zum Drucken',
    pdfToHandOut: 'pdf zum Austeilen',
    wearReportToPrint: 'Verschleißbericht zum Drucken',
    printableSheets: 'Blätter zum Ausdrucken',
    testPaperWithAnswers: 'Klassenarbeit mit Lösungen',
    checklistToPrint: 'Checkliste zum Drucken',
    cutOutModel: 'Ausschneidemodell',
    theBrakeAsFlatParts:
      'Die Bremse als flache Teile, zum Ausschneiden aus Karton, Sperrholz oder Acryl.',
    cutOutModel2: 'Modell zum Ausschneiden',
    paperModelOfTheBrake: 'Papiermodell der Bremse',
    cardboardModel: 'Modell aus Pappe',
    laserCutParts: 'Teile lasern',
    exportDxf: 'dxf exportieren',
    buildAModelOfPlywood: 'Modell aus Sperrholz bauen',
    acrylicModel: 'Acrylmodell',
    templateToCutOut: 'Schablone zum Ausschneiden',
    makeAModelForThe: 'Modell für die Klasse bauen',
    cncFileOfTheParts: 'cnc Datei der Teile',
    readingsALifeCurvesAs:
      'Messwerte, eine Laufleistung, Kurven: als Tabelle für eine Tabellenkalkulation oder ein Programm.',
    exportData: 'Daten exportieren',
    exportCsv: 'csv exportieren',
    openInASpreadsheet: 'in Tabellenkalkulation öffnen',
    downloadTheReadings: 'Messwerte herunterladen',
    saveTheNumbersAsA: 'Zahlen als Tabelle speichern',
    copyTheTable: 'Tabelle kopieren',
    exportJson: 'json exportieren',
    dataOfTheCurve: 'Daten der Kurve',
    saveTheReadingsToA: 'Messwerte in einer Datei speichern',
    thisMomentAsALink:
      'Dieser Augenblick als Link, als Code für die Kamera eines Handys oder als Datei.',
    shareALink: 'Link teilen',
    copyLink: 'Link kopieren',
    qrCode: 'qr code',
    sendThisToAFriend: 'an einen Freund schicken',
    sendThisToMyPhone: 'auf mein Handy schicken',
    openThisOnMyPhone: 'auf meinem Handy öffnen',
    codeForPhones: 'Code für Handys',
    emailThisBrake: 'diese Bremse per E-Mail schicken',
    saveTheMomentAsA: 'Augenblick als Datei speichern',
    saveMyWork: 'meine Arbeit speichern',
    openASavedFile: 'gespeicherte Datei öffnen',
    linkForMyStudents: 'Link für meine Schüler',
    awayOneFileTitle: 'Alles als eine Datei',
    awayOneFileText:
      'Eine Datei zum Mitnehmen, auf dem Blatt Werkbank: Sie öffnet mit Doppelklick, ohne Netz.',
    awayOneFileSays: [
      'takeup herunterladen',
      'das ganze Programm herunterladen',
      'eine Datei',
      'alles in einer Datei',
      'usb',
      'usb stick',
      'speicherstick',
      'einzelne html datei',
    ],
    awayOfflineTitle: 'Ohne Netz, als App',
    awayOfflineText:
      'Nach einem Besuch öffnet es ohne Netz. Das Menü des Browsers installiert es als App; auf dem Blatt Werkbank gibt es das auch als eine Datei.',
    useItOffline: 'offline nutzen',
    withoutInternet: 'ohne Internet',
    noInternetInTheWorkshop: 'kein Internet in der Werkstatt',
    noWifi: 'kein WLAN',
    noNetwork: 'kein Netz',
    installAsAnApp: 'als App installieren',
    installOnMyPhone: 'auf dem Handy installieren',
    isThereAnApp: 'gibt es eine App',
    addToHomeScreen: 'zum Startbildschirm hinzufügen',
    stationWriteALessonTitle: 'Lektionen: eine eigene schreiben',
    stationWriteALessonText:
      'Auf der Bühne tun, was ein Schritt zeigen soll, es übernehmen, die Frage eintippen. Lektion schreiben steht unter Lektionen.',
    stationWriteALessonSays: [
      'Lektion schreiben',
      'eigene Lektion schreiben',
      'Lektion erstellen',
      'Lektionseditor',
      'Unterrichtsstunde anlegen',
      'eigene Aufgabe für die Klasse',
      'eigenes Quiz für meine Schüler',
      'Lektion bearbeiten',
    ],
    wordListTitle: 'Fachwörter hier',
    wordListText:
      'Jedes Wort, das neben der Zeichnung steht, in einem Satz, britisch und amerikanisch. Taste d.',
    wordListSays: [
      'Wörterliste',
      'Fachwörter',
      'Glossar',
      'Wörterbuch',
      'Vokabeln',
      'was bedeuten diese Wörter',
      'britische und amerikanische Wörter',
      'Fachbegriffe erklären',
    ],
  },

  /* ui/ask/said/faults.ts */
  askSaidFaults: {
    faultsSaid: {
      'seized short': [
        'Nachsteller ist fest',
        'Nachsteller total festgegangen',
        'automatische Nachstellung geht nicht',
        'Nachsteller funktioniert nicht mehr',
        'Pedal geht halb durch und ist dann fest',
        'langer Pedalweg, hart, kommt beim Pumpen hoch',
        'Pedal tief und Handbremse zu hoch',
        'klickt überhaupt nicht mehr',
        'Nachsteller stellen nicht nach',
        'Pedalweg und Handbremsweg wurden über Monate länger',
        'Nachsteller klemmt und klickt nicht',
        'Bremsen stellen sich nicht selbst nach',
      ],
      'worn teeth': [
        'morgens langer Pedalweg dann gut',
        'erster Tritt lang mit Klicken danach gut',
        'klickt jeden Morgen',
        'klickt jedes Mal nach dem Parken',
        'Zähne vom Nachsteller rund verschlissen',
        'Zähne ausgefressen springt zurück',
        'Handbremse jeden Tag anders',
        'Pedal lang nach dem Parken kommt dann hoch',
        'Nachsteller rutscht durch hält nicht',
      ],
      'broken lever spring': [
        'kleine Feder am Nachsteller gerissen',
        'Feder vom Nachsteller gebrochen',
        'kleine Feder der Nachstellung kaputt',
        'Hebel vom Nachsteller hängt lose',
        'Klinke hängt frei',
        'gebrochene Nachstellerfeder',
        'Klinke rastet nicht ein',
        'Feder am Rasthebel fehlt',
      ],
      'stepped hot': [
        'Räder blockiert am Morgen nach einer Passabfahrt',
        'Bremse sitzt fest nach langer Bergabfahrt',
        'Bremsen heiß frei und kalt fest',
        'heiß zu weit nachgestellt',
        'rollt am nächsten Morgen nach dem Pass nicht',
        'hat sich selbst zu weit nachgestellt',
        'automatische Nachstellung stellt zu viel nach',
        'Nachsteller zu weit an beiden Trommeln',
        'Bremse kalt fest am Tag nach starkem Bremsen',
      ],
      'shoes swapped': [
        'Backen am falschen Platz',
        'Backen vorne und hinten verkehrt eingebaut',
        'auflaufende und ablaufende Backe verwechselt',
        'ablaufender Belag dünner als auflaufender',
        'gebrauchte Backen vertauscht',
        'vordere und hintere Backe vertauscht',
      ],
      'wrong side': [
        'Nachsteller links und rechts vertauscht',
        'Nachsteller dreht in die falsche Richtung',
        'Nachsteller auf der falschen Seite',
        'linker Nachsteller rechts eingebaut',
        'Nachsteller wird kürzer statt länger',
        'automatische Nachstellung arbeitet verkehrt herum',
        'Linksgewinde und Rechtsgewinde verwechselt',
      ],
      'strut mis-seated': [
        'Druckstange sitzt nicht',
        'Druckstange nicht in der Nut',
        'Trommel geht nach dem Backenwechsel auf einer Seite kaum drauf',
        'Rad dreht nicht seit dem Zusammenbau',
        'Druckstange aus dem Schlitz gesprungen',
        'Druckstrebe sitzt schief',
        'ein Rad blockiert nach neuen Backen',
      ],
      'dead adjuster to the end': [
        'Kolben aus dem Radzylinder gesprungen',
        'Pedal fällt bis zum Boden durch',
        'Beläge bis auf nichts verschlissen',
        'schleift Metall und Pedal am Boden',
        'Trommel verschlissen und Backen weg',
        'jahrelang nichts gemacht Pedal geht bis zum Boden',
        'Kolben zu weit ausgefahren',
      ],
      'short cable': [
        'Seilzug zu stramm',
        'Handbremsseil zu stramm eingestellt',
        'Handbremse nur zwei Klicks und schleift',
        'Handbremsseil nachgestellt und jetzt geht die Trommel nicht ab',
        'Hebel in der Trommel wird vom Seil vom Anschlag gehalten',
        'wenige Klicks an der Handbremse',
        'Handbremse zieht schon bei der ersten Raste',
        'Seil vor den Backen eingestellt',
        'stellt nicht mehr nach seit das Seil gespannt wurde',
      ],
      'kept pull': [
        'Handbremsseil fest',
        'Seil klemmt in der Hülle',
        'Seilzug geht nicht zurück',
        'Handbremse bleibt an einem Rad fest nach dem Lösen',
        'ein Hinterrad heiß Handbremse löst nicht',
        'Handbremse hängt',
        'Handbremse löst nicht',
        'Handbremse löst bei Frost nicht',
        'Handbremsseil eingefroren',
        'eine Trommel stinkt und ist heiß Hebel ist unten',
        'Hinterradbremse hängt auf einer Seite nach der Handbremse',
        'ein Hinterrad wird heiß',
      ],
      'stretched cable': [
        'Handbremse kommt zu hoch aber Pedal ist gut',
        'Handbremsseil gelängt',
        'Handbremsseil locker',
        'zu viele Klicks',
        'Hebel geht ganz hoch Pedal gut',
        'Handbremse locker',
        'Handbremshebel geht bis unters Dach',
        'Handbremsweg zu lang',
        'keine Spannung im Handbremsseil',
      ],
      'stiff pivot': [
        'Hebel an der Backe verrostet',
        'Handbremse auf einer Seite schwach Hebel schwergängig',
        'Drehpunkt vom Bremshebel verrostet',
        'Hebel in der Trommel fest',
        'Handbremse löst langsam',
        'Handbremse an einem Rad schwach Pedal gut',
        'Handbremshebel in der Backe festgerostet',
        'Handbremse auf einer Seite schlecht',
        'Hebel an der Backe geht schwer',
        'Handbremse zieht nur auf einer Seite',
      ],
      'weak springs': [
        'Rückzugfedern schwach',
        'Federn ausgeleiert',
        'Rückzugfeder gebrochen',
        'Feder gerissen',
        'bremst auf einer Seite früher',
        'alte Federn',
        'Feder angelaufen und ohne Spannung',
        'ein Rad beißt bei leichtem Tritt',
      ],
      'strong springs': [
        'falsche Rückzugfedern',
        'Federn zu stark',
        'Federn im falschen Loch',
        'ein Rad bremst spät bei leichtem Tritt',
        'Feder falsch eingehängt',
      ],
      'stuck piston': [
        'ein Kolben fest',
        'Radzylinder klemmt',
        'Radzylinder festgegangen',
        'nur eine Backe bewegt sich',
        'Bremse vorwärts schwach rückwärts besser',
        'Kolben bewegt sich nicht',
        'zieht vorwärts zur Seite aber rückwärts nicht',
        'eine Backe kaum verschlissen',
      ],
      'sluggish pistons': [
        'löst langsam',
        'Bremsen gehen langsam auf',
        'schleift nach dem Bremsen ein paar Sekunden dann frei',
        'Kolben schwergängig',
        'Radzylinder geht langsam zurück',
        'Radzylinder hängt',
        'hängt noch einen Moment wenn ich vom Pedal gehe',
        'kommt spät bei leichtem Tritt auf einer Seite',
      ],
      'leaning part': [
        'schleift nur in einer Richtung',
        'vorwärts viel schwerer als rückwärts',
        'dreht rückwärts aber nicht vorwärts',
        'Rad dreht in einer Richtung leicht in der anderen schwer',
        'etwas drückt auf eine Backe',
        'eine Backe steht vor',
        'eine Backe schleift die andere ist frei',
      ],
      hose: [
        'schleift nach dem Bremsen und wird langsam frei',
        'Bremse bleibt fest nach dem Loslassen',
        'Bremsschlauch zugequollen',
        'Schlauch innen aufgequollen',
        'ein Rad schleift und wird frei wenn ich die Entlüftungsschraube öffne',
        'Bremsschlauch verstopft',
        'Druck bleibt in der Leitung',
        'Rad fest bis ich den Entlüfter öffne',
        'Bremse schleift minutenlang nach dem Bremsen',
        'ein Rad hängt nach dem Bremsen',
      ],
      'port shut': [
        'kalt frei und heiß blockiert',
        'Rad dreht kalt aber heiß ist es fest',
        'alle vier Räder schleifen',
        'alle Bremsen werden heiß und schleifen je länger ich fahre',
        'kein Leerweg am Pedal',
        'Bremsen gehen von selbst zu',
        'Bremsen schleifen wenn sie warm sind',
        'Bremsen ziehen sich beim Warmwerden fest',
        'seit neuem Hauptbremszylinder schleifen die Bremsen',
        'Kolbenstange zu lang',
        'Pedal wird beim Fahren höher und härter',
        'alle Räder fest',
      ],
      'other bore': [
        'falscher Radzylinder',
        'Bohrung vom Zylinder anders',
        'Zylinder in anderer Größe',
        'zieht zur Seite seit neuem Radzylinder',
        'eine Seite stärker seit der Reparatur',
        'Radzylinder nicht gleich',
        'größeren Radzylinder eingebaut',
      ],
      air: [
        'schwammiges Pedal',
        'weiches Pedal',
        'Pedal federt seit dem Entlüften',
        'Luft in der Bremse',
        'Pedal wie ein Schwamm',
        'Pedal teigig nach neuem Radzylinder',
        'Pedal weich nach neuer Bremsleitung',
        'muss pumpen Pedal weich',
        'matschige Bremse',
        'bekomme nach dem Entlüften kein festes Pedal',
        'Bremse entlüftet und trotzdem schwammig',
        'Pedal weich nach neuem Bremsschlauch',
      ],
      'fluid on linings': [
        'Bremsflüssigkeit in der Trommel',
        'Radzylinder leckt auf die Backen',
        'Radzylinder undicht',
        'Bremsflüssigkeit auf den Backen',
        'nass in der Trommel',
        'Beläge vollgesogen',
        'Flüssigkeit läuft am Reifen herunter',
        'verliert Bremsflüssigkeit',
        'Rad innen nass',
        'eine Seite schwach und Staubkappe nass',
        'Bremsflüssigkeitsstand sinkt',
        'fischiger Geruch am Rad',
        'Bremsflüssigkeit tritt am Hinterrad aus',
        'verschmutzte Backen reinigen',
      ],
      'oil on one lining': [
        'Achssimmerring undicht auf die Bremse',
        'Öl auf den Backen',
        'Getriebeöl in der Trommel',
        'Fett auf dem Belag',
        'Handbremse hält nur in einer Richtung',
        'Nabendichtung undicht',
        'Differentialöl in der Bremstrommel',
        'Simmerring der Steckachse undicht',
        'hält bergab gerichtet rollt bergauf gerichtet',
        'Öl in der Trommel',
      ],
      glazed: [
        'muss mich aufs Pedal stellen zum Anhalten',
        'brauche viel Kraft am Pedal',
        'glänzende Beläge',
        'verglaste Backen',
        'hartes Pedal und schwache Bremsen',
        'Pedal wie Holz',
        'Beläge glatt wie Glas',
        'Bremse auf beiden Seiten schwach Pedal fest',
        'muss fest treten',
        'Bremsen hupen und Beläge glänzen',
        'Beläge mit Schleifpapier anrauen',
        'Bremse packt nicht zu aber Pedal ist hart',
        'schlechte Bremsen obwohl alles eingestellt ist',
      ],
      damp: [
        'beißt am Morgen',
        'Bremse packt bei Feuchtigkeit beim ersten Bremsen',
        'blockiert kalt und nass beim ersten Bremsen',
        'morgens giftige Bremse danach normal',
        'hinten blockiert bei Nässe',
        'packt nach Regen zu stark',
        'morgens als Erstes bissig',
        'rupft kalt und feucht',
        'Hinterräder blockieren nach der Autowäsche',
      ],
      'water inside': [
        'keine Bremse nach Wasserdurchfahrt',
        'schwach nach tiefem Wasser',
        'Bremse schwach nach einer Pfütze',
        'Wasser in der Trommel',
        'Bremse geht nach der Waschanlage nicht',
        'keine Bremse nach Hochwasser',
        'Bremse am Bootsanhänger schwach',
        'Bremse nach Regen weg für ein paar Bremsungen',
        'bremst schlecht bei Nässe',
      ],
      'hot fade': [
        'Bremse lässt am langen Berg nach',
        'keine Bremse nach der Abfahrt',
        'Pedal lang und schwach wenn heiß',
        'Bremse wird den Berg hinunter immer weniger',
        'Bremse bergab verloren',
        'Bremsfading',
        'schwach nach starkem Bremsen kommt dann wieder',
        'Bremse wird heiß schwach',
        'mit Anhänger bergab Fading',
      ],
      'oversize bore': [
        'neue Backen schwache Bremse',
        'schwach nach neuen Bremsbacken',
        'neue Backen in verschlissener Trommel',
        'Backen passen nicht zur Trommel tragen nur in der Mitte',
        'Trommel auf Übermaß gedreht und normale Backen',
        'Trommel ausgedreht und jetzt bremst sie schlecht',
        'neue Backen tragen nur in der Mitte',
        'Bremse schlechter seit neuen Backen',
      ],
      'lining ends': [
        'Backen liegen nur an den Enden an',
        'beißt seit neuen Backen',
        'neue Backen rupfen',
        'Tragbild nur an den Enden vom Belag',
        'Beläge berühren nur an Spitze und Ferse',
        'neue Backen Radius zu groß',
        'giftige Bremse nach neuen Backen',
        'Backen müssen auf Radius geschliffen werden',
        'Radius der Backen zu groß für die Trommel',
      ],
      'oval drum': [
        'Pedal pulsiert',
        'Trommel ist oval',
        'Trommel verzogen',
        'Trommel unrund',
        'schleift zweimal je Umdrehung',
        'rubbelt beim Bremsen',
        'Bremspedal zittert',
        'pulsierendes Bremspedal',
        'bumm bumm beim Bremsen',
        'Trommel wie ein Ei',
        'beim Drehen von Hand an zwei Stellen schwer',
        'Rad hat schwere Stellen',
      ],
      'drum off centre': [
        'schleift einmal je Umdrehung',
        'Trommel hat Schlag',
        'Trommel nicht mittig',
        'wischt einmal pro Umdrehung',
        'Rost unter dem Trommelflansch',
        'Trommel läuft exzentrisch',
        'Schleifgeräusch bei jeder Umdrehung',
        'hakt bei jeder Umdrehung an einer Stelle',
        'Trommel eiert seit die Nabe ab war',
        'schwere Stelle einmal pro Umdrehung',
        'Trommel läuft auf der Nabe nicht rund',
      ],
      lip: [
        'Trommel kommt ein Stück und bleibt dann stehen',
        'Grat an der Trommel hält sie',
        'Verschleißrand hält die Trommel',
        'Trommel geht ein paar mm und steht dann',
        'Kante in der Trommel hakt an den Backen',
        'Trommel hängt beim Abziehen an den Backen',
        'Trommel kommt etwas heraus aber geht nicht ab',
        'Rostkante am Trommelrand',
      ],
      'hub rust': [
        'Trommel dreht sich aber kommt nicht heraus',
        'dreht frei aber geht nicht ab',
        'Trommel an der Nabe festgerostet',
        'Trommel rührt sich nicht',
        'Trommel auf der Nabe fest',
        'Trommel klebt auf der Nabe dreht aber kommt nicht',
        'mit dem Hammer geschlagen und sie bewegt sich nicht',
        'Trommel sitzt bombenfest am Flansch',
        'Trommel festgerostet geht nicht ab',
        'Trommel dreht aber lässt sich nicht abziehen',
        'Trommel festgebacken',
      ],
      groove: [
        'Bremse kommt spät und springt dann',
        'Backe hakt in einer Rille der Ankerplatte',
        'Knacken bei der ersten Berührung beim Bremsen',
        'Backen hängen an der Ankerplatte',
        'Rillen in der Ankerplatte eingelaufen',
        'Backe klemmt und springt dann',
        'knackt wenn ich trete',
        'eingelaufene Auflagen an der Ankerplatte',
        'Bremse schnappt plötzlich zu',
      ],
      bearing: [
        'schleift nur beladen',
        'reibt wenn das Auto voll ist',
        'aufgebockt frei aber auf der Straße heiß',
        'Radlagerspiel',
        'Rad eiert',
        'Rad wackelt',
        'Nabe heiß und Brummen',
        'Brummen vom Hinterrad',
        'dreht auf Böcken frei wird beim Fahren heiß',
        'Spiel im Rad',
        'Geräusch ändert sich in Kurven',
        'Radlager kaputt',
      ],
      'rusted on': [
        'Räder blockiert nach monatelangem Stehen',
        'Auto stand ein halbes Jahr Räder fest',
        'Bremse fest seit es geparkt ist',
        'nach Regen fest löst sich dann mit einem Knall',
        'Bremsen fest nach Monaten Standzeit',
        'Backen an der Trommel festgerostet',
        'Auto hat gestanden und Rad dreht nicht',
        'Hinterrad fest nach Waschen und Parken',
        'den ganzen Winter mit Handbremse geparkt bewegt sich nicht',
        'Hinterräder rutschen mit drehen nicht nach dem Stehen',
        'Bremsen beim Parken festgegangen',
        'Backen kleben an der Trommel',
        'über Nacht fest Handbremse angezogen nass',
      ],
    },
  },

  /* ui/ask/said/lessons.ts */
  askSaidLessons: {
    howThisBrakeWorks: {
      title: 'Wie diese Bremse arbeitet, in vier Minuten',
      idea: 'Teil für Teil und Ursache für Ursache; es läuft von selbst, lässt sich überall anhalten und anfassen und geht dann weiter.',
      says: [
        'erkläre mir eine Trommelbremse von Anfang bis Ende',
        'spiel mir das Ganze vor',
        'Vortrag wie eine Trommelbremse funktioniert',
        'alles von selbst zeigen',
        'Erklärung in vier Minuten',
        'Überblick für Anfänger',
      ],
    },
    partsAndNames: {
      title: 'Teile und Namen',
      idea: 'Ein Teil kennt man an dem, was ohne es nicht mehr geht.',
      says: [
        'Lektion über die Teile einer Trommelbremse',
        'die Namen der Teile lernen',
        'Unterricht über die Teile und was sie tun',
        'was passiert wenn ein Teil fehlt',
      ],
    },
    restPosition: {
      title: 'Was die Ruhelage bestimmt',
      idea: 'Gelöst klemmen die Rückzugfedern die Backen auf die Druckstange; die Druckstange entscheidet.',
      says: [
        'Lektion über die Ruhelage',
        'was bestimmt den Spalt wenn die Bremse gelöst ist',
        'Lektion über Rückzugfedern und Druckstange',
        'Unterricht warum die Backen dort stehen bleiben wo sie stehen',
      ],
    },
    thePress: {
      title: 'Der Tritt',
      idea: 'Ein Tritt ist eine Kette: Leerspiel, Federn, Spalt, Kraft.',
      says: [
        'Lektion über das Treten des Pedals',
        'was passiert Schritt für Schritt wenn das Pedal nach unten geht',
        'Unterricht über den Pedalweg',
        'Lektion über die Hydraulik am Radzylinder',
      ],
    },
    selfEnergising: {
      title: 'Selbstverstärkung und Drehrichtung',
      idea: 'Die Trommel hilft der einen Backe und hemmt die andere.',
      says: [
        'Lektion über Selbstverstärkung',
        'Unterricht über auflaufende und ablaufende Backe',
        'einer Klasse erklären warum eine Backe mehr leistet',
        'Lektion über die Drehrichtung',
      ],
    },
    whyItGrows: {
      title: 'Warum das Lüftspiel wächst',
      idea: 'Der Verschleiß beider Beläge und der Trommel wird am Ende immer zu Weg.',
      says: [
        'Lektion über Verschleiß und Lüftspiel',
        'Unterricht warum der Spalt größer wird',
        'Lektion warum der Pedalweg länger wird',
      ],
    },
    theClick: {
      title: 'Der Klick und der Totgang',
      idea: 'Der Nachsteller schaltet, wenn ein Tritt die Backen um einen ganzen Zahn über das Spiel im Schlitz hinaus bewegt.',
      says: [
        'Lektion über den Klick',
        'Lektion über die selbsttätige Nachstellung',
        'Unterricht wie der Nachsteller schaltet',
        'Lektion über den Totgang',
      ],
    },
    holdingTheTooth: {
      title: 'Was den Zahn hält',
      idea: 'Der Zahn trägt in Ruhe Last, am meisten beim Parken, beim Bremsen gar keine.',
      says: [
        'Lektion über verschlissene Zähne',
        'was belastet den Zahn am Nachsteller',
        'Unterricht wann der Zahn hält',
      ],
    },
    wearAndLimits: {
      title: 'Verschleißanteile und Grenzen',
      idea: 'Dünnste Stelle, Rate, Grenze und eine ehrliche Spanne.',
      says: [
        'Lektion über Verschleißgrenzen',
        'Unterricht wie man Beläge misst',
        'Lektion wie lange Backen halten',
      ],
    },
    drumOff: {
      title: 'Die Trommel geht nicht ab',
      idea: 'Vier Sperren, vier Zeichen; stärker ziehen gehört nicht dazu.',
      says: [
        'Lektion über eine festsitzende Trommel',
        'Unterricht Trommel abziehen',
        'Übung zu einer Trommel die nicht abgeht',
      ],
    },
    newShoes: {
      title: 'Neue Backen, gleich beim ersten Mal richtig',
      idea: 'Nachsteller zurück, voreinstellen, treten, Seilzug zuletzt, einlaufen lassen.',
      says: [
        'Lektion über den Einbau von Backen',
        'Unterricht neue Backen einbauen',
        'Lektion über das Einstellen der Backen',
        'Bremsbacken wechseln lernen',
      ],
    },
    parkingBothWays: {
      title: 'Die Handbremse in beide Richtungen',
      idea: 'Ein Seilzug betätigt über die Druckstange beide Backen.',
      says: [
        'Lektion über die Handbremse',
        'Unterricht wie die Handbremse funktioniert',
        'Lektion über Parken am Hang',
        'Unterrichtsstunde über die Handbremse am Berg',
      ],
    },
    heat: {
      title: 'Hitze: Dehnung, ein Zahn zu viel, Fading',
      idea: 'Eine heiße Trommel sieht aus wie eine verschlissene.',
      says: [
        'Lektion über Hitze und Fading',
        'Unterricht über Bremsfading',
        'Lektion über heiße Trommeln',
      ],
    },
    cheapestReading: {
      title: 'Der billigste Messwert',
      idea: 'Wählen Sie den Messwert, der die Ursachen trennt, nicht den, der Ihnen gefällt.',
      says: [
        'Lektion über Fehlersuche',
        'Unterricht Diagnose',
        'Lektion welche Prüfung zuerst kommt',
        'Diagnoseübung für Schüler',
      ],
    },
    verdict: {
      title: 'Vom Messwert zum Urteil',
      idea: 'Gemessen, Grenze, Reserve, nächster Termin, wessen Grenze.',
      says: [
        'Lektion über die Prüfung',
        'Unterricht eine Bremse beurteilen',
        'Lektion über Messen und Beurteilen',
      ],
    },
  },

  /* ui/ask/said/order.ts */
  askSaidOrder: {
    orderSaid: {
      back: [
        'wie stelle ich den Nachsteller Schritt für Schritt zurück',
        'durch das Schauloch zurückstellen',
        'der Nachsteller lässt sich im Schauloch nicht anheben',
        'in welche Richtung drücke ich den Hebel im Schauloch',
        'anderer Weg ohne Schauloch',
        'wie bekomme ich die Backen zusammen',
        'Nachsteller kürzer stellen bei montierter Trommel',
        'der Hebel im Schauloch bewegt sich nicht',
        'Schraubendreher im Schauloch aber der Nachsteller bewegt sich nicht',
        'wie viel bringt ein Zahn',
      ],
      apart: [
        'Bremse Schritt für Schritt zerlegen',
        'in welcher Reihenfolge kommen die Teile ab',
        'Bremse auseinandernehmen',
        'Trommelbremse zerlegen',
        'wie bekomme ich die Federn ab',
        'Rückzugfeder gefahrlos aushängen',
        'Werkzeug für die Niederhalter',
        'wie löse ich die Stifte der Niederhalter',
        'was zuerst fotografieren',
        'Kolben am Herausrutschen hindern',
        'Klammer auf dem Radzylinder',
        'was kann beim Zerlegen wegspringen',
        'welche Feder zuerst',
      ],
      together: [
        'Bremse wieder zusammenbauen',
        'in welcher Reihenfolge wird zusammengebaut',
        'Zusammenbau der Bremse',
        'wie herum kommt die Druckstange hinein',
        'Federn und Backen wieder einbauen',
        'wie bekomme ich die obere Feder drauf',
        'wo werden die Federn eingehängt',
        'was wird beim Zusammenbau gefettet',
      ],
      set: [
        'Backen der Reihe nach einstellen',
        'neue Backen Schritt für Schritt einstellen',
        'treten bis es nicht mehr klickt dann der Seilzug',
        'wie oft treten nach neuen Backen',
        'wie schwer soll sich das Rad nach dem Einbau drehen',
        'wie leicht soll das Rad laufen wenn alles zusammen ist',
        'Seilzug beim Einstellen zuerst oder zuletzt',
        'wie viele Rasten nach dem Einstellen',
      ],
      bed: [
        'Schritt für Schritt einbremsen',
        'wie viele Bremsungen bis neue Backen eingelaufen sind',
        'reichen zehn Bremsungen zum Einlaufen',
        'wie weit mit neuen Backen vorsichtig fahren',
        'neue Beläge einfahren',
        'erste Fahrt nach neuen Backen',
        'wie heiß werden neue Backen beim Einlaufen',
        'Probefahrt nach der Bremsenreparatur',
      ],
    },
  },

  /* ui/ask/said/other.ts */
  askSaidOther: {
    apply: [
      'wie funktioniert eine Trommelbremse',
      'zeig mir wie sie funktioniert',
      'Pedal treten',
      'Trommelbremse erklärt',
      'wie drücken die Backen an die Trommel',
      'Selbstverstärkung',
      'Kräfte an den Backen',
      'auflaufende und ablaufende Backe',
      'Bremsmoment',
      'Druck auf dem Belag',
    ],
    wear: [
      'wie verschleißen Beläge',
      'wie lange halten Bremsbeläge',
      'wann klickt es das nächste Mal',
      'Laufleistung der Bremse',
      'verschleißen lassen',
      'wie viele km halten Bremsbacken',
      'Verschleiß über km',
      'Verschleißrate der Backen',
    ],
    drumOff: [
      'Trommel festgegangen',
      'festsitzende Trommel abbekommen',
      'Bremstrommel sitzt fest',
      'Trommel klemmt',
      'hintere Trommel sitzt fest',
      'Trommel fest',
      'Trommel geht nicht ab',
      'ich kriege die Trommel nicht runter',
      'Trommel lässt sich nicht abziehen',
      'Trommel abnehmen',
      'wie baut man eine Bremstrommel aus',
      'hintere Bremstrommel geht nicht runter',
      'was hält die Trommel',
      'Trommel ist festgerostet',
      'Reihenfolge beim Lösen einer festsitzenden Trommel',
      'Trommel abziehen',
      'Trommel ausbauen',
    ],
    park: [
      'Handbremse am Hang',
      'hält sie am Berg',
      'welche Steigung hält die Handbremse',
      'wie fest muss man die Handbremse ziehen',
      'wie viele Klicks soll die Handbremse haben',
      'Auto rollt trotz Handbremse zurück',
      'Handbremse einstellen Rasten',
      'wie viele Rasten sind normal',
      'Wirkung der Handbremse',
      'wo bleiben die Rasten',
    ],
    inspect: [
      'sind diese Teile noch gut',
      'Trommel und Beläge messen',
      'sind meine Bremsbacken verschlissen',
      'wie dünn dürfen Beläge sein',
      'größter Trommeldurchmesser',
      'kann ich die Trommel weiterverwenden',
      'Verschleißgrenze der Trommel',
      'Mindestdicke der Beläge',
      'Bremsen vor der Hauptuntersuchung prüfen',
      'Messblatt',
      'wie viel Belag ist noch da',
      'ist die Trommel noch gut',
      'Bremsen prüfen',
      'wann Bremsbacken wechseln',
      'max. Durchmesser auf der Trommel',
      'was bedeutet die eingeschlagene Zahl auf der Trommel',
      'Zahl eingegossen auf der Trommel',
      'Mindestdicke der Bremsbacken',
    ],
    newShoes: [
      'neue Bremsbacken einbauen',
      'wie wechsle ich die Bremsbacken',
      'Trommelbremse Backen wechseln',
      'Backen Schritt für Schritt ersetzen',
      'neue Backen montieren',
      'wie erneuert man Bremsbacken',
      'Bremsbacken wechseln',
      'Backen einstellen',
      'neue Backen nachstellen',
      'Grundeinstellung',
      'Trommel geht mit neuen Backen nicht drauf',
      'Backen mit einer Lehre voreinstellen',
      'neue Backen einlaufen lassen',
      'wie stellt man Trommelbremsen ein',
      'wieder zusammenbauen',
      'Bremsen machen',
      'Nachsteller für neue Beläge zurückstellen',
      'wie stramm sollen neue Backen sein',
      'einbremsen',
    ],
    faults: [
      'welche Fehler gibt es',
      'Liste der Fehler',
      'Fehler ansehen',
      'defekte Bremse',
      'Übung Fehler finden',
      'Fehlersuche üben',
      'Diagnose',
    ],
    own: [
      'meine eigene Bremse',
      'meine Maße eingeben',
      'meine Trommel hat 8 Zoll',
      'meine Bremse ist anders',
      'Abmessungen eingeben',
      'andere Trommelgröße',
      'Maße von meinem Auto',
    ],
    questions: ['häufige Fragen', 'Liste der Fragen', 'FAQ', 'alle Fragen'],
    see: [
      'was ist mit meiner Bremse los',
      'meine Bremse diagnostizieren',
      'sagen was ich sehe',
      'ich weiß nicht was kaputt ist',
      'hilf mir den Fehler zu finden',
      'Symptome',
      'Störungssuche',
      'mehrere Sachen gleichzeitig kaputt',
    ],
    vary: [
      'was wäre wenn ich eine Sache ändere',
      'was passiert bei höherer Reibung',
      'Belag mit mehr Reibung was bewirkt das',
      'größerer Radzylinder was ändert sich',
      'Kurve des Bremsenkennwerts zeichnen',
      'Diagramm Moment über Druck',
      'ein Maß über einen Bereich verändern',
      'wie hängt der Bremsenkennwert von der Reibung ab',
      'Kurven zweier Bremsen vergleichen',
      'Empfindlichkeit der Bremse gegen ein Maß',
      'bei welcher Reibung blockiert eine Backe von selbst',
      'Formel mit eingesetzten Zahlen',
    ],
    apart: [
      'Nachsteller zerlegt',
      'wie wird der Nachsteller zusammengebaut',
      'Teile der selbsttätigen Nachstellung',
      'was ist hinter dem Nachsteller',
      'wie herum kommt der Zahnhebel',
      'wofür ist die kleine Feder am Nachsteller',
      'Nachsteller auf der Werkbank',
    ],
    compare: [
      'zwei Bremsen nebeneinander vergleichen',
      'zwei Bremsen mit einem Pedal',
      'das als Schattenbild behalten',
      'zeig wie es vorher war neben dem wie es jetzt ist',
      'neu gegen verschlissen nebeneinander',
      'heiße Bremse neben kalter',
      'vorher und nachher nebeneinander',
      'Unterschied zwischen zwei Bremsen',
    ],
    kind: [
      'welche Art Trommelbremse habe ich',
      'welche Bauart habe ich',
      'Servo oder Simplex',
      'meine Bremse erkennen',
      'welchen Nachsteller habe ich',
      'stellt sich meine selbst nach',
      'Bauarten von Trommelbremsen',
      'Arten von Nachstellern',
    ],
    lessons: [
      'Lektionen für eine Klasse',
      'Liste der Lektionen',
      'meine Schüler unterrichten',
      'Trommelbremsen lernen',
      'Lehrgang',
      'Unterrichtsmaterial für Schüler',
      'Übungen',
    ],
    whereDoIBegin: 'wo fange ich an',
    firstPage: 'Startseite',
    topicsSaid: {
      drag: [
        'Bremse schleift',
        'Rad wird heiß',
        'ein Rad heiß',
        'Bremse geht schwer',
        'Hinterrad nach der Fahrt heiß',
        'Brandgeruch vom Rad',
        'Auto fühlt sich gebremst an',
        'Auto rollt nicht frei aus',
        'Rauch aus dem Rad',
        'Bremse löst nicht',
        'Trommel so heiß dass man sie nicht anfassen kann',
        'hintere Bremsen schleifen',
        'Rad lässt sich schwer drehen',
      ],
      pedal: [
        'langer Pedalweg',
        'weiches Pedal',
        'Pedal lässt sich bis zum Boden durchtreten',
        'Bremspedal geht tief runter',
        'Pedal pulsiert',
        'Pedal stimmt nicht',
        'Pedal zu tief',
        'Pedalweg zu lang',
      ],
      lever: [
        'Auto rollt mit angezogener Handbremse weg',
        'Handbremse angezogen aber Auto bewegt sich',
        'Handbremse greift nicht',
        'Handbremse geht zu weit hoch',
        'Handbremse hält nicht',
        'Handbremse zu viele Klicks',
        'Handbremse hält nicht am Berg',
        'Handbremse schwach',
        'Handbremse taugt nichts',
        'Handbremse ohne Wirkung',
        'Feststellbremse funktioniert nicht',
        'durchgefallen wegen Handbremse',
        'Handbremswirkung nicht ausreichend',
      ],
      braking: [
        'Bremsen schwach',
        'Bremse packt zu',
        'zieht beim Bremsen zur Seite',
        'Auto zieht schief',
        'Hinterrad blockiert',
        'ungleiche Bremskraft auf dem Rollenprüfstand',
        'Bremsprüfung nicht bestanden wegen Ungleichheit',
        'zu wenig Bremskraft',
        'Bremsen beißen nicht',
        'ungleichmäßige Bremswirkung',
        'ein Hinterrad blockiert',
      ],
      noise: [
        'Bremse macht Geräusche',
        'es quietscht beim Bremsen',
        'Mahlgeräusch',
        'Schlag aus der Hinterradbremse',
        'Geräusch vom Hinterrad',
        'Schleifgeräusch',
        'Kratzen aus der Trommel',
        'Bremse knarrt',
      ],
    },
    computedSaid: {
      free: [
        'schleift sich das von selbst frei',
        'neue Backen schleifen laufen sie ein und werden frei',
        'geht das Schleifen weg wenn ich fahre',
        'zu stramm lockert sich das von selbst',
        'kann ich fahren bis sie frei ist',
        'wie weit fahren bis sie sich freigeschliffen hat',
        'wie heiß wird eine schleifende Trommel',
        'wie heiß darf eine Trommel werden',
        'Backen etwas stramm laufen die sich ein',
        'wie viele km bis das Schleifen weg ist',
        'wie heiß wird die Trommel wenn sie schleift',
        'macht leichtes Schleifen etwas aus',
        'Spritverbrauch bei schleifender Bremse',
      ],
    },
    stay: 'Nicht fahren: Eine Bremse, die vielleicht nicht hält, verlässt den Hof nicht.',
    sinkingTitle: 'Pedal sinkt unter ruhigem Fuß',
    sinkingText: (stay: string) =>
      `${stay} Eine Manschette im Hauptzylinder oder ein Leck lässt Flüssigkeit durch: nicht in diesem Modell. An allen vier Rädern und entlang der Leitungen nach Nässe suchen; auf einem Anhänger wegbringen und instand setzen lassen.`,
    sinkingSays: [
      'Pedal sinkt langsam bis zum Boden',
      'Pedal kriecht nach unten während ich drauf stehe',
      'Pedal sackt an der Ampel durch',
      'Pedal gibt nach wenn ich den Fuß drauf lasse',
      'Pedal verliert Druck',
      'Pedal geht bei laufendem Motor langsam bis zum Boden',
    ],
    safeTitle: 'Kann man damit sicher fahren?',
    safeText: (stay: string) =>
      `Von hier aus kann niemand ja sagen. ${stay} Nur im Schritttempo auf ebener, leerer Fläche probieren oder auf einem Anhänger wegbringen lassen; eine Fachkraft entscheidet.`,
    safeSays: [
      'kann man damit sicher fahren',
      'kann ich so fahren',
      'kann ich noch nach Hause fahren',
      'ist das gefährlich',
      'darf man mit nur einer Bremse fahren',
      'kann ich es so lassen',
      'kann ich mit mahlenden Bremsen weiterfahren',
      'wie lange kann ich so noch fahren',
      'reicht es noch für eine Fahrt',
    ],
    looseLiningTitle: 'Loser Belag, oder Blockieren in einer Richtung mit Knall',
    looseLiningText: (stay: string) =>
      `${stay} Ein Belag, der sich von der Backe gelöst hat, verkeilt sich irgendwo; hier sitzen die Beläge fest auf den Backen. Trommel ab und neue Backen an beiden Rädern.`,
    looseLiningSays: [
      'Belag von der Backe abgegangen',
      'Belag hat sich abgelöst',
      'Belag abgeplatzt',
      'Bremsbelag losgebrochen',
      'Knall und das Rad blockierte in einer Richtung',
      'Belag hat sich von der Klebung gelöst',
      'Stück vom Belag aus der Trommel gefallen',
    ],
    crackTitle: 'Gerissene Trommel',
    crackText:
      'Eine gerissene Trommel ist Schrott: nie schweißen, nie wieder einbauen. Klingt sie beim Anklopfen hell, ist sie ganz; klingt sie dumpf, noch einmal hinsehen. Beide Trommeln der Achse erneuern.',
    crackSays: [
      'Trommel ist gerissen',
      'Riss in der Trommel',
      'kann man eine gerissene Trommel schweißen',
      'Haarrisse in der Trommel',
      'Hitzerisse',
      'Trommel klingt dumpf beim Anklopfen',
    ],
    discs: {
      id: 'discs',
      title: 'Scheibenbremsen',
      text: 'Nicht auf dieser Werkbank: Sie berechnet Trommeln mit einer auflaufenden und einer ablaufenden Backe. Vordere Scheiben gehören in das Handbuch ihres Herstellers.',
      says: [
        'Scheibenbremse vorne',
        'Bremsklötze vorne',
        'Bremssattel fest',
        'Bremsscheibe verzogen',
        'Scheibenbremsen hinten',
        'vordere Bremsen quietschen',
      ],
    },
    inDiscTitle: 'Trommel in der Scheibe',
    inDiscText:
      'Kleine Backen im Topf der Scheibe dienen nur zum Parken: Pedal, Anteile und Klicks gelten dafür nicht. Grat, Rost und ein festgegangener Seilzug schon. Sehen Sie nach, welche Art Ihre ist.',
    inDiscSays: [
      'Handbremse Trommel in der Scheibe',
      'Handbremsbacken in der Bremsscheibe',
      'Topfbremse Handbremse',
      'Feststellbremse Backen in der hinteren Scheibe',
      'hintere Bremsscheibe geht nicht ab Handbremsbacken',
    ],
    servoTitle: 'Servobremse (Duo-Servo)',
    servoText:
      'Nicht hier: Eine Backe schiebt die andere herum. Richtungen, Anteile der Backen und was den Nachsteller dreht, lassen sich nicht übertragen; Grat, Rost, Seilzug und Trommel schon. Sehen Sie nach, welche Art Ihre ist.',
    servoSays: [
      'Duo-Servo-Bremse',
      'Primärbacke und Sekundärbacke welche kommt nach vorne',
      'Primärbacke kürzerer Belag',
      'langer Belag nach vorne oder der kurze',
      'Nachsteller stellt beim Rückwärtsfahren nach',
      'stellt beim Zurücksetzen nach',
      'rückwärts fahren und bremsen zum Nachstellen',
      'Servo-Trommelbremse',
      'Sternrad unten Lagerbolzen oben',
    ],
    otherKindsTitle: 'Duplex-, Nocken-, Druckluft-, Elektro- und Bandbremsen',
    otherKindsText:
      'Nicht hier. Was über Grat, Rost, Hitze und verschlissene Trommeln gesagt ist, gilt auch für sie; Pedal, Anteile und Nachsteller nicht.',
    otherKindsSays: [
      'Duplexbremse',
      'Druckluftbremse S-Nocken',
      'elektrische Anhängerbremse Magnet',
      'Motorrad Trommelbremse',
      'Fahrrad Trommelbremse',
      'Nockenbremse',
      'Waschmaschinentrommel',
      'kleine Trommel Schlagzeug',
      'Auflaufbremse Anhänger Rückfahrautomatik',
    ],
    boosterTitle: 'Bremskraftverstärker',
    boosterText: (stay: string) =>
      `Sein Inneres ist nicht in diesem Modell. Hartes Pedal bei schwacher Bremse: Motor aus, pumpen, bis es fest wird, halten, starten: Das Pedal soll etwas nachgeben. Wenn nicht, instand setzen lassen. ${stay}`,
    boosterSays: [
      'Bremskraftverstärker',
      'Bremskraftverstärker funktioniert nicht',
      'zischt wenn ich auf die Bremse trete',
      'Pedal hart kein Unterdruck',
      'hartes Pedal bei Motor aus',
    ],
    lamp: {
      id: 'lamp',
      title: 'Warnleuchten, ABS, Bremslicht',
      text: 'Nicht auf dieser Werkbank. Eine Bremsleuchte kann heißen, dass zu wenig Flüssigkeit da ist: dünne Beläge oder ein Leck. Zuerst den Stand ansehen, dann nach Nässe; das Handbuch nennt die Leuchte.',
      says: [
        'Bremswarnleuchte an',
        'ABS-Leuchte an',
        'Warnleuchte',
        'Bremslicht bleibt an',
        'Handbremsleuchte geht nicht aus',
        'rote Bremsleuchte',
      ],
    },
    electric: {
      id: 'electric',
      title: 'Elektrische Parkbremse',
      text: 'Nicht hier: Ein Motor zieht oder drückt, wo diese Werkbank einen Hebel und einen Seilzug hat. Vor jeder Arbeit nach Vorschrift des Herstellers in Servicestellung bringen.',
      says: ['elektrische Parkbremse', 'elektronische Handbremse löst nicht', 'EPB Motor'],
    },
    noise: {
      id: 'noise',
      title: 'Quietschen und andere Geräusche',
      text: 'Geräusche werden nicht berechnet. Zuerst ansehen: glänzende Beläge, lose Niederhalter, trockene Auflagen der Ankerplatte. Ein dünner Film Hochtemperaturfett auf Auflagen und Gelenke, keines auf einen Belag. Mahlt Metall auf Metall: nicht fahren.',
      says: [
        'Bremsen quietschen',
        'quietschende Bremsen',
        'Bremse kreischt',
        'Quietschen beim Loslassen des Pedals',
        'wie bekomme ich das Quietschen weg',
        'Zwitschern vom Hinterrad',
        'Bremsen jaulen',
        'Rubbeln und Knarren bei langsamer Fahrt',
      ],
    },
    rattle: {
      id: 'rattle',
      title: 'Klappern: Niederhalter verloren oder lose',
      text: 'Eine Backe, die kippt, liegt außerhalb dieser Ebene: Die Ebene „Von der Kante“ zeigt es. Stifte, Teller und Federn ansehen: Fehlt einer, klappert die Backe und verschleißt an einer Kante.',
      says: [
        'Klappern aus der Trommel',
        'etwas Loses klappert in der Trommel',
        'Niederhaltefeder abgegangen',
        'Stift vom Niederhalter verloren',
        'Stift und Teller fehlen',
        'Klimpern aus der Bremse',
        'eine Kante vom Belag verschlissen',
        'Belag an der Innenkante verschlissen',
        'Backe sitzt schief gekippt',
      ],
    },
    clunk: {
      id: 'clunk',
      title: 'Ein Schlag nach dem Richtungswechsel',
      text: 'Eine Backe durchläuft das Spiel an einem verschlissenen Bolzen oder Widerlager. Die Bolzen hier haben keines, darum wird es nicht gezeigt; bei abgenommener Trommel die Backe auf ihrem Bolzen hin und her bewegen.',
      says: [
        'Schlag beim Richtungswechsel',
        'Schlag bei der ersten Bremsung nach dem Rückwärtsfahren',
        'einmal Klacken von vorwärts auf rückwärts',
        'Klopfen beim Bremsen nach dem Zurücksetzen',
        'einzelner Schlag beim Rückwärtsfahren und dann Bremsen',
      ],
    },
    bell: {
      id: 'bell',
      title: 'Aufgeweitete oder konische Trommel',
      text: 'Der Innendurchmesser ändert sich entlang der Achse, und diese Ansicht blickt längs der Achse. In drei Tiefen messen; das Blatt unter Prüfen nimmt zwei und beurteilt die Konizität.',
      says: [
        'Trommel trichterförmig aufgeweitet',
        'Trommel läuft konisch zu',
        'Trommel konisch',
        'Bohrung am offenen Ende größer',
      ],
    },
    prices: {
      id: 'prices',
      title: 'Preise, Marken, Teilenummern',
      text: 'Nicht hier. Was das Teil haben muss, steht auf dem Blatt unter Prüfen: Trommel-Ø, Belagbreite und -dicke, Zylinderbohrung, Seite. Für beide Räder der Achse kaufen.',
      says: [
        'was kosten Bremsbacken',
        'welche Marke Bremsbacken',
        'Teilenummer',
        'wo Bremsbacken kaufen',
        'welche Bremsbacken soll ich kaufen',
        'Preis einer Trommel',
        'beste Bremsbacken',
      ],
    },
    torqueTitle: 'Anzugsdrehmoment',
    torqueText:
      'Nur der Wert des Herstellers, nie einer von anderswo. Radmuttern nach der Strecke des Herstellers noch einmal nachziehen; eine Nabenmutter ist oft nur einmal verwendbar.',
    torqueSays: [
      'Drehmoment Radmuttern',
      'Drehmoment Nabenmutter',
      'wie fest Nabenmutter anziehen',
      'Anzugsmoment Schrauben Radzylinder',
      'wie viel Nm',
      'Anzugsmoment Trommelmutter',
    ],
    fluidGrade: {
      id: 'fluid grade',
      title: 'Welche Bremsflüssigkeit',
      text: 'Die Sorte, die der Hersteller auf dem Deckel nennt, aus einem verschlossenen Gebinde; Sorten werden nie gemischt. Stand zu niedrig: Beläge sind verschlissen oder es leckt.',
      says: [
        'welche Bremsflüssigkeit',
        'DOT 4 oder DOT 5',
        'kann man Bremsflüssigkeit mischen',
        'kann ich Öl statt Bremsflüssigkeit nehmen',
        'Bremsflüssigkeit nachfüllen',
        'wann Bremsflüssigkeit wechseln',
      ],
    },
    legal: {
      id: 'legal',
      title: 'Gesetzliche Grenzen und amtliche Prüfungen',
      text: 'Grenzen gelten je nach Ort: Fragen Sie die Stelle, die prüft. Prüfen führt jede Grenze mit dem, von dem sie stammt; die Werte vom Rollenprüfstand werden unter Was ich sehe gelesen.',
      says: [
        'was ist der gesetzliche Grenzwert',
        'Mindestwert für die Hauptuntersuchung',
        'wie viel Prozent Handbremse bei der Prüfung',
        'fällt man damit durch',
        'zulässige Ungleichheit',
        'wie viel Prozent braucht die Handbremse',
        'Vorschrift Belagdicke',
      ],
    },
    cleaning: {
      id: 'cleaning',
      title: 'Getränkte Beläge reinigen',
      text: 'Macht man nicht: kein Schleifen, Ausbrennen oder Waschen. Das Leck suchen, dann neue Backen an beiden Rädern.',
      says: [
        'kann man Öl von Bremsbacken entfernen',
        'Bremsflüssigkeit aus den Belägen ausbrennen',
        'Bremsenreiniger auf verölte Backen',
        'verölte Backen mit Benzin auswaschen',
        'Bremsbacken im Backofen ausheizen',
        'Beläge entfetten',
      ],
    },
    heatItTitle: 'Festsitzende Trommel erhitzen oder schlagen',
    heatItText:
      'Keine Flamme neben Bremsflüssigkeit, kein Schlag auf den Rand: Er reißt oder verbiegt sich. Zuerst benennen, was sie hält: Trommel ab unterscheidet Grat, Rost, Nachsteller, Seilzug und Druck.',
    heatItSays: [
      'Trommel mit dem Brenner erhitzen',
      'Lötlampe an festsitzender Trommel',
      'mit dem großen Hammer auf die Trommel schlagen',
      'Hammer auf den Rand',
      'mit dem Vorschlaghammer runterschlagen',
      'kann ich einen Abzieher an der Trommel benutzen',
      'mit dem Montiereisen abhebeln',
    ],
    bleeding: {
      id: 'bleeding',
      title: 'Wie man entlüftet',
      text: 'Zuerst Backen einstellen, Trommeln drauf, Behälter nie leer, die vorgeschriebene Flüssigkeit, Rad für Rad in der Reihenfolge des Herstellers, bis keine Blase mehr kommt; dann eine Minute lang fest getreten halten: Das Pedal darf nicht sinken. Wer es noch nie gemacht hat, macht es mit jemandem, der es kann.',
      says: [
        'wie entlüftet man die hinteren Bremsen',
        'welches Rad zuerst entlüften',
        'Reihenfolge beim Entlüften',
        'Bremsen allein entlüften',
        'muss ich nach dem Wechsel des Radzylinders entlüften',
        'Entlüften durch Schwerkraft',
        'Entlüfternippel abgerissen',
        'Entlüfterschraube festgerostet',
      ],
    },
    dustTitle: 'Staub in der Trommel',
    dustText:
      'Schädlich bei jedem Belag. Nass machen oder mit einem Sauger mit Feinfilter aufnehmen; keine Druckluft, keine trockene Bürste, kein Haushaltsstaubsauger.',
    dustSays: [
      'Bremsstaub ausblasen',
      'Staub mit Druckluft reinigen',
      'ist Bremsstaub Asbest',
      'Asbest in alten Bremsbacken',
      'Bremsstaub absaugen',
      'Trommel innen reinigen',
    ],
    grease: {
      id: 'grease',
      title: 'Was gefettet wird',
      text: 'Ein dünner Film Hochtemperaturfett auf die Auflagen der Ankerplatte, die Gelenke und das Gewinde des Nachstellers; keines auf Zähne, Beläge oder Trommel.',
      says: [
        'wo Trommelbremse fetten',
        'welches Fett für Bremsbacken',
        'Kupferpaste auf der Ankerplatte',
        'Nachsteller schmieren',
        'Sternrad fetten',
        'kann man den Nachsteller ölen',
      ],
    },
    oneSide: {
      id: 'one side',
      title: 'Nur eine Seite erneuert',
      text: 'Beide Räder der Achse gleich: Backen, Federn, Trommeln, Zylinder einer Größe. Ein neu belegtes Rad bremst schwächer, bis es eingelaufen ist, und das Auto zieht zur anderen Seite.',
      says: [
        'kann ich die Backen nur auf einer Seite wechseln',
        'nur einen Radzylinder ersetzen',
        'muss ich beide Seiten machen',
        'nur eine neue Trommel',
        'eine Trommel ersetzen',
      ],
    },
    chamfer: {
      id: 'chamfer',
      title: 'Beläge feilen, kerben oder anfasen',
      text: 'Macht man nicht: Ungleicher Verschleiß gehört zur Arbeitsweise, etwa drei zu eins. Ein Geräusch oder ein Zupacken hat eine Ursache; suchen Sie sie unter Was ich sehe.',
      says: [
        'Belagkanten anfasen',
        'auflaufende Kante abfeilen',
        'Enden der Backen abschleifen',
        'Belag einkerben',
        'Backen anschrägen',
      ],
    },
    airBags: {
      id: 'air bags',
      title: 'Andere Achse, Reifen, Fahrwerk',
      text: 'Ein Ziehen ohne Bremsen oder von der Vorderachse kommt nicht von dieser Bremse: zuerst Reifen, Spur und vordere Bremsen.',
      says: [
        'Auto zieht ohne zu bremsen',
        'Spur einstellen',
        'Reifen ungleich abgefahren',
        'Lenkrad flattert',
        'Fahrwerk poltert',
      ],
    },
    bendingSaid: {
      title: 'Backen, die sich biegen',
      text: 'Steg und Kranz geben nach wie Stahl, und die ganze Werkbank rechnet damit, die starren Werte daneben. Taste b, oder auf dem Blatt Werkbank.',
      says: [
        'sich biegende Backen',
        'Backen die sich biegen',
        'biegen sich Bremsbacken',
        'nachgiebige Backen',
        'Backe federt',
        'starre oder nachgiebige Backe',
        'wie stark biegt sich eine Backe',
        'Durchbiegung der Backe unter Druck',
        'elastische Backen',
        'Steifigkeit der Backe',
        'Biegelinie der Backe',
      ],
    },
    dialsOnTheBrake: 'Regler an der Bremse',
    handlesOnTheDrawingDrag:
      'Griffe an der Zeichnung: einen Bolzen, die Reibung, eine Feder, die Bohrung ziehen und den Kennwert beobachten. Jeder rastet beim Wert Ihrer Bremse wieder ein. Taste u.',
    handlesOnTheDrawing: 'Griffe an der Zeichnung',
    dragAPin: 'Bolzen ziehen',
    moveTheAnchorPin: 'Lagerbolzen verschieben',
    moveThePivotOfThe: 'Drehpunkt der Backe verschieben',
    changeTheFriction: 'Reibung ändern',
    whatIfTheFrictionWere: 'was wäre wenn die Reibung höher wäre',
    changeTheBoreByHand: 'Bohrung von Hand ändern',
    turnASizeAndWatch: 'ein Maß ändern und den Kennwert beobachten',
    slidersOnTheBrake: 'Schieberegler an der Bremse',
    makeTheSpringStronger: 'Feder stärker machen',
    playWithTheSizes: 'mit den Maßen spielen',
    dragTheSizesOfThe: 'Maße der Bremse ziehen',
    polygonsSaid: {
      title: 'Kraftecke',
      text: 'Alle Kräfte an jeder Backe als Pfeile, Spitze an Ende: Sie schließen sich, wie bei jedem ruhenden Körper. Taste p.',
      says: [
        'Krafteck',
        'Kräftepolygon',
        'freigeschnittene Backe',
        'Freikörperbild der Backe',
        'Pfeile aneinandergereiht',
        'Pfeilspitze an Pfeilende',
        'Vektorsumme der Kräfte',
        'gehen die Kräfte auf',
        'Gleichgewicht der Backe',
        'Kräfte an einer Backe im Gleichgewicht',
      ],
    },
    leadingShoe: 'Auflaufende Backe',
    theShoeThatTheTurning:
      'Die Backe, die von der drehenden Trommel fester angezogen wird. Drehen Sie die Trommel andersherum, ist es die andere.',
    whatIsALeadingShoe: 'was ist eine auflaufende Backe',
    primaryShoeMeaning: 'Primärbacke Bedeutung',
    whichShoeIsLeading: 'welche Backe ist auflaufend',
    frontShoeOrRearShoe: 'ist die vordere oder die hintere Backe auflaufend',
    trailingShoe: 'Ablaufende Backe',
    theShoeThatTheTurning2:
      'Die Backe, die von der drehenden Trommel weggedrückt wird; sie leistet etwa ein Viertel der Arbeit.',
    whatIsATrailingShoe: 'was ist eine ablaufende Backe',
    secondaryShoeMeaning: 'Sekundärbacke Bedeutung',
    whyDoesOneShoeWear: 'warum verschleißt eine Backe weniger',
    theDrumsDragPressesThe:
      'Die Reibung der Trommel drückt die auflaufende Backe stärker an als der Kolben allein.',
    selfEnergisingWord: 'Selbstverstärkung',
    whatIsSelfEnergising: 'was ist Selbstverstärkung',
    servoEffectInDrumBrakes: 'Servowirkung bei Trommelbremsen',
    whyIsADrumBrake: 'warum ist eine Trommelbremse so stark',
    theToothedLeverDropsInto:
      'Der Zahnhebel fällt in den nächsten Zahn: Die Druckstange ist um einen Zahn länger.',
    whatIsTheClickWhen: 'was klickt da wenn ich das Pedal trete',
    whyDoesItClick: 'warum klickt es',
    clickingWhenIPressThe: 'Klicken beim Bremsen nach neuen Backen',
    oneClickOfTheHand: 'Ein Klick des Handhebels.',
    whatIsANotchOn: 'was ist eine Raste der Handbremse',
    howManyClicksIsNormal: 'wie viele Klicks sind normal',
    theGapBetweenLiningAnd:
      'Der Spalt zwischen Belag und Trommel, wenn nichts getreten ist: einige Zehntelmillimeter.',
    howMuchGapBetweenShoe: 'wie viel Spalt zwischen Backe und Trommel',
    runningClearance: 'Lüftspiel',
    whatClearanceShouldBrakeShoes: 'welches Lüftspiel sollen Bremsbacken haben',
    gapOfBrakeShoesIn: 'Spalt der Bremsbacken in mm',
    lostMotion: 'Totgang',
    playInTheSlotThat:
      'Spiel im Schlitz, um das die Backen auseinandergehen dürfen, bevor ein Zahn überstiegen wird.',
    lostMotionMeaning: 'Totgang Bedeutung',
    slotPlay: 'Spiel im Schlitz',
    playInTheStrut: 'Spiel in der Druckstange',
    strutEndPlay: 'Längsspiel der Druckstange',
    toeAndHeel: 'Spitze und Ferse',
    toeTheEndOfA:
      'Spitze: das Ende der Backe am Zylinder. Ferse: das Ende am Bolzen oder Widerlager.',
    toeOfTheShoe: 'Spitze der Backe',
    heelOfTheShoe: 'Ferse der Backe',
    whichEndIsTheToe: 'welches Ende ist die Spitze',
    theUnwornEdgeOfThe:
      'Der unverschlissene Rand der Trommel, der innerhalb der eingelaufenen Bahn steht.',
    whatIsTheLip: 'was ist der Grat',
    ridgeAtTheEdgeOf: 'Kante am Rand der Trommel',
    hotLock: 'Heißsperre',
    aStripOfTwoMetals:
      'Ein Streifen aus zwei Metallen, der verhindert, dass der Nachsteller schaltet, solange die Trommel heiß ist.',
    whatIsTheBimetalFor: 'wofür ist das Bimetall',
    thermalClipOnTheAdjuster: 'Thermoclip am Nachsteller',
    runOutOfAPiston: 'Auslauf eines Kolbens',
    soFarAPistonMay: 'So weit darf ein Kolben gehen, bevor seine Manschette die Bohrung verlässt.',
    pistonComingOutOfCylinder: 'wie weit kommt der Kolben aus dem Zylinder',
    outOfRound: 'Unrund',
    theBoreIsLongerOne:
      'Die Bohrung ist in einer Richtung länger als in der anderen: Sie schleift zweimal je Umdrehung.',
    whatDoesOvalityMean: 'was bedeutet Unrundheit',
    ovalityPercentOnTheBrake: 'Unrundheit Prozent bei der Bremsprüfung',
    howMuchOutOfRound: 'wie viel Unrundheit ist erlaubt',
    frictionFallsAndTheDrum:
      'Bei Hitze sinkt die Reibung und die Trommel wächst: schwach und lang zugleich.',
    whatIsBrakeFade: 'was ist Bremsfading',
    beddingIn: 'Einlaufen',
    newLiningsWearUntilThey:
      'Neue Beläge verschleißen, bis sie auf ihrem ganzen Bogen tragen: Hunderte Kilometer, nicht zehn Bremsungen.',
    howToBedInBrake: 'wie lässt man Bremsbacken einlaufen',
    howLongDoesBeddingIn: 'wie lange dauert das Einlaufen',
    breakInNewShoes: 'neue Backen einbremsen',
    runningInNewBrakeShoes: 'neue Bremsbacken einfahren',
    howManyStopsToBed: 'wie viele Bremsungen zum Einlaufen',
    driveGentlyForTheFirst: 'die ersten hundert Kilometer vorsichtig fahren',
    brakeFactor: 'Bremsenkennwert C*',
    howManyNewtonsOfDrag:
      'Wie viel Newton Reibkraft an der Trommel ein Newton an den Spitzen erzeugt.',
    whatIsBrakeFactor: 'was ist der Bremsenkennwert',
    shoeFactor: 'Backenkennwert',
    theBarThatSharesThe: 'Der Bügel, der den Zug des Handhebels auf beide Seilzüge verteilt.',
    whatIsTheEqualiser: 'was ist der Ausgleichsbügel',
    compensatorOnTheCable: 'Ausgleich am Seilzug',
    yPieceOfTheHandbrake: 'Y-Stück der Handbremse',
    leadAndTrailSwap: 'Auflaufend und ablaufend tauschen',
    backwardsTheRearShoeLeads:
      'Rückwärts läuft die hintere Backe auf: Es zählt die Rolle, nicht der Ort.',
    whichShoeLeadsInReverse: 'welche Backe ist beim Rückwärtsfahren auflaufend',
    doTheShoesSwapIn: 'tauschen die Backen beim Rückwärtsfahren die Rollen',
    backOff: 'Zurückstellen',
    makingTheAdjusterShorterLift:
      'Den Nachsteller kürzer machen: erst den Hebel abheben, dann zurückbewegen.',
    whatDoesBackOffMean: 'was heißt zurückstellen',
    backOffTheAdjusterHow: 'Nachsteller zurückstellen wie',
    rollerTest: 'Rollenprüfung',
    eachWheelIsDrivenOn:
      'Jedes Rad wird auf Rollen angetrieben, während Sie bremsen: Kraft je Rad, in beide Richtungen, und ihr Schwanken je Umdrehung.',
    whatIsARollerTest: 'was ist eine Rollenprüfung',
    rollingRoadBrakeTest: 'Bremsprüfung auf dem Rollenprüfstand',
    howDoesTheBrakeTester: 'wie funktioniert der Bremsenprüfstand',
    brakeTestPrintOutExplained: 'Ausdruck der Bremsprüfung erklärt',
  },

  /* ui/ask/said/parts.ts */
  askSaidParts: {
    partsSaid: {
      plate: ['Blech hinter den Backen', 'Ankerplatte was ist das'],
      'access hole': [
        'Loch zum Erreichen des Nachstellers',
        'wo ist das Schauloch für den Nachsteller',
        'Gummistopfen hinten an der Trommel',
        'wo stecke ich den Schraubendreher hinein',
        'ich finde das Loch nicht',
      ],
      hub: ['worauf die Trommel sitzt', 'Nabenflansch'],
      drum: ['Bremstrommel'],
      web: ['Rippe der Backe'],
      table: ['Blech auf das der Belag geklebt ist', 'Backe aus Stahl'],
      lining: ['Reibmaterial auf der Backe', 'Bremsbelag'],
      'hold-down': [
        'Stift der die Backe an der Ankerplatte hält',
        'wie bekomme ich die Niederhaltefeder ab',
        'Nagel mit Feder und Teller',
        'Teller mit Vierteldrehung',
      ],
      cylinder: ['Radzylinder wo ist er', 'Radbremszylinder'],
      'bleed port': ['Entlüfternippel wo', 'Entlüfterschraube'],
      piston: ['Kolben im Radzylinder'],
      cup: ['Gummimanschette im Zylinder'],
      boot: ['Gummikappe am Zylinder'],
      strut: [
        'Stange zwischen den Backen',
        'Druckstange wofür ist die',
        'lange Stange quer durch die Bremse',
        'wie herum kommt die Druckstange',
      ],
      'toothed lever': [
        'Hebel mit Zähnen',
        'Klinke wo ist sie',
        'Rasthebel',
        'Zahnsegment',
        'kleiner Hebel mit Zähnen wofür ist der',
      ],
      'lever spring': ['dünne Feder an der Klinke', 'kleine Feder am Nachsteller'],
      'star wheel': [
        'Sternrad wo ist es',
        'Zahnrad an der Druckstange',
        'in welche Richtung drehe ich das Sternrad',
        'Rädchen in der Mitte der Druckstange',
      ],
      wedge: ['keilförmiges Stück', 'Keil zwischen Druckstange und Backe'],
      'hot lock': ['Bimetallstreifen'],
      'return spring': ['Feder zwischen den Backen', 'Rückzugfedern wie herum'],
      'upper spring': ['obere Feder'],
      'lower spring': ['untere Feder'],
      'parking lever': [
        'Handbremshebel an der Backe',
        'Hebel in den der Seilzug eingehängt ist',
        'Handbremshebel hinter der Backe',
      ],
      cable: [
        'Handbremsseil',
        'Nippel am Ende des Seilzugs',
        'wie hänge ich das Handbremsseil aus',
      ],
      'anchor pin': ['unterer Bolzen der Backen', 'Drehpunkt der Backe'],
      abutment: ['Block unten', 'Flächen auf denen die Backen stehen'],
    },
    cautionsSaid: {
      wear: ['Bremsstaub Gefahr', 'ist der Staub giftig'],
      drumOff: [
        'wie bocke ich das Auto sicher auf',
        'Räder mit Keilen sichern',
        'wo kommen die Unterstellböcke hin',
        'bevor die Trommel abkommt',
      ],
      park: ['Handbremse am Hang gelöst Gefahr', 'Auto kann beim Arbeiten wegrollen'],
      piston: [
        'darf ich bei abgenommener Trommel das Pedal treten',
        'Bremse treten ohne Trommel',
        'jemand hat das Pedal getreten während die Trommel ab war',
      ],
      springs: [
        'Federn springen weg Gefahr',
        'wie bekomme ich die Federn gefahrlos ab',
        'Federwerkzeug Augenschutz',
      ],
      hot: [
        'Trommel zu heiß zum Anfassen Verbrennung',
        'Wasser auf eine heiße Trommel gießen',
        'Trommel mit Wasser kühlen',
      ],
      fluid: [
        'Bremsflüssigkeit auf der Haut',
        'Bremsflüssigkeit auf dem Lack',
        'Bremsflüssigkeit im Auge',
      ],
      stands: ['unter dem Wagenheber arbeiten', 'Unterstellböcke'],
      doubt: ['ich bin mir bei meiner Arbeit nicht sicher', 'soll ich in die Werkstatt fahren'],
    },
  },

  /* ui/ask/said/questions.ts */
  askSaidQuestions: {
    questionsSaid: {
      q001: [
        'Trommel rutscht ein paar mm heraus und stoppt Handbremsseil locker',
        'Trommel kommt 6 mm heraus und stoppt',
        'Trommel bewegt sich etwas geht aber nicht ab Seil ist ab',
      ],
      q002: [
        'wie halte ich den Hebel weg um den Nachsteller zurückzudrehen',
        'Klinke weghalten beim Drehen am Sternrad',
      ],
      q003: [
        'kein Schauloch wie Nachsteller zurückstellen',
        'es gibt kein Loch um an den Nachsteller zu kommen',
        'finde kein Loch in Trommel oder Ankerplatte',
      ],
      q004: [
        'hält ein Grat oder Rost die Trommel',
        'ist es der Grat oder der Rost an der Nabe',
        'in welche Richtung drehe ich den Nachsteller um die Trommel zu lösen',
        'welche Richtung zum Zurückstellen des Nachstellers',
        'Nachsteller im oder gegen den Uhrzeigersinn lösen',
      ],
      q005: [
        'Rostlöser Abzieher Hitze und Hammer probiert Trommel sitzt noch',
        'alles versucht Trommel geht nicht ab',
        'Trommel sitzt trotz Hämmern noch fest',
      ],
      q006: [
        'Gewindelöcher in der Trommel wofür',
        'Trommel mit Abdrückschrauben abdrücken',
        'zwei Schrauben um die Trommel abzudrücken',
        'wie bekomme ich die Trommel mit den Gewindelöchern ab',
      ],
      q007: [
        'Backen nach Radumdrehungen eingestellt und Trommel sitzt fest',
        'auf zwei Radumdrehungen eingestellt jetzt geht die Trommel nicht ab',
      ],
      q008: [
        'finde den Nachsteller durch das Loch nicht',
        'wonach taste ich durch das Schauloch',
        'wo sitzt der Hebel hinter der Trommel durch das Loch gesehen',
      ],
      q009: [
        'Handbremse nachgestellt und jetzt geht die Trommel nicht ab',
        'Trommel ging ab bevor ich das Handbremsseil eingestellt habe',
      ],
      q010: [
        'Trommel hängt nach neuen Backen an einer Backe',
        'kein Sternrad wie stelle ich den Nachsteller zurück',
        'kein Gewinde am Nachsteller nur einer mit Feder wie zurückstellen',
      ],
      q011: [
        'Trommel sitzt schief',
        'Trommel geht nur teilweise drauf',
        'Trommel sitzt nicht richtig Nachsteller ganz zurück',
        'Trommel geht nicht ganz drauf',
        'Trommel geht nicht wieder drauf alles zurückgestellt',
        'Rad dreht sehr schwer nachdem die Trommel mit Gewalt drauf ist',
      ],
      q012: [
        'Trommel zu stramm über neuen Backen',
        'neue Backen Trommel zu eng',
        'neue Backen Trommel passt nicht drüber',
        'Trommel ging mit alten Backen drauf mit neuen nicht',
        'neue Backen zu dick für die Trommel',
        'Trommel geht nicht über die neuen Backen',
      ],
      q013: [
        'Radzylinder gewechselt und jetzt Trommel zu stramm',
        'nach neuem Radzylinder sitzen die Backen zu stramm',
        'neuer Radzylinder Trommel geht nicht drauf',
      ],
      q014: [
        'neue Trommel ging stramm drauf und ist fest',
        'Ersatztrommel zu eng',
        'neue Trommel ist stramm auf alten Backen',
      ],
      q015: ['Grat der Trommel abgeschliffen jetzt langes Pedal', 'Grat an der Trommel entfernt'],
      q016: [
        'wie funktioniert die selbsttätige Nachstellung',
        'wie nimmt die gestufte Nachstellung den Verschleiß auf',
        'wann klickt der Nachsteller',
        'wie funktioniert der Rastnachsteller',
        'automatische Nachstellung erklärt',
      ],
      q017: [
        'was bewegt den Nachsteller',
        'Nachsteller stellt nicht nach was soll ihn drehen',
        'wodurch dreht sich der Nachsteller',
      ],
      q018: [
        'Klicken beim Treten des Bremspedals',
        'es klickt beim Treten ist das normal',
        'Klick von hinten beim Bremsen',
        'klickt beim Treten nach neuen Backen',
      ],
      q019: [
        'neue Backen Handbremse geht senkrecht hoch und rastet nicht',
        'Nachsteller schaltet nach neuen Backen nicht egal wie fest ich ziehe',
      ],
      q020: [
        'stellt es die Backen oder den Seilzug nach',
        'kürzt die selbsttätige Nachstellung den Seilzug',
        'stellt die automatische Nachstellung das Seil nach',
      ],
      q021: [
        'muss ich rückwärts fahren damit die Bremsen nachstellen',
        'rückwärts bremsen zum Nachstellen',
        'rückwärts fahren und stark bremsen damit sie sich nachstellt',
        'durch Rückwärtsfahren nachstellen',
      ],
      q022: [
        'automatische Nachstellung kam nicht hinterher',
        'beide Trommeln fünfzehn Klicks zu weit nichts kaputt',
        'warum sind die Nachsteller nicht mitgekommen',
      ],
      q023: [
        'loses Gewindeteil in der Trommel gefunden',
        'Teil aus der Trommel gefallen',
        'Druckstange herausgefallen',
        'loses Teil in der Bremse',
      ],
      q024: [
        'Nachsteller arbeitet über die Handbremse',
        'benutze nie die Handbremse stellt sie sich trotzdem nach',
        'stellt sich mit dem Handbremshebel nach',
        'ziehe nie die Handbremse also stellt sie nie nach',
      ],
      q025: [
        'Nachsteller lässt sich unter Last nicht anheben',
        'Nachsteller klemmt lässt sich nicht anheben',
        'Nachsteller lässt sich trotz weggedrücktem Hebel nicht zurückstellen',
        'Nachsteller festgeklemmt geht nicht zurück',
        'herausgedreht bis er blockierte jetzt fest',
      ],
      q026: [
        'Nachsteller falsch herum gedreht Backen blockieren',
        'Sternrad in die falsche Richtung gedreht',
        'falsch herum gedreht und jetzt blockiert es',
      ],
      q027: [
        'wie weit drehe ich den Nachsteller zurück',
        'wie viele Klicks drehe ich das Sternrad zurück',
        'wie viele Klicks zurückstellen',
        'wie viele Zähne zurück bis das Rad frei ist',
        'wie weit stelle ich den Nachsteller zurück',
      ],
      q028: [
        'stellt immer zu weit nach',
        'Nachsteller stellt immer strammer bis es heiß wird',
        'leichtes Schleifen eingestellt dann wird die Trommel wieder glühend heiß',
        'automatische Nachstellung immer wieder zu stramm',
      ],
      q029: [
        'ein Klick mehr und das Rad ist fest',
        'Handbremse noch einmal gezogen und jetzt stramm',
      ],
      q030: [
        'zu weit nachgestellt schleift es sich frei',
        'kann ich einfach fahren bis es frei wird',
        'Backen zu stramm gibt sich das von selbst',
      ],
      q031: [
        'Sternrad dreht in eine Richtung und federt zurück',
        'Rad am Nachsteller federt zurück',
      ],
      q032: [
        'Nachsteller passt in beide Richtungen hinein',
        'wie herum kommt der Nachsteller',
        'welche Richtung nimmt das Spiel auf',
      ],
      q033: [
        'wie stramm soll ich die Backen einstellen',
        'wie viel Schleifen beim Einstellen der Trommelbremse',
        'welcher Spalt bei neuen Backen',
        'soll es beim Einstellen leicht schleifen',
        'leichtes Schleifen wie viel',
      ],
      q034: [
        'nachgestellt bis fest einmal getreten und es dreht frei Pedal tief',
        'Rad blockiert Pedal treten dann wieder frei',
      ],
      q035: ['neuer strammer Seilzug kriecht trotzdem', 'neues Handbremsseil hält trotzdem nicht'],
      q036: [
        'zuerst Backen oder Handbremsseil einstellen',
        'Reihenfolge Backen oder Seilzug zuerst',
        'wann stelle ich das Handbremsseil ein',
        'Handbremsseil einstellen nach neuen Backen',
        'stelle ich den Seilzug vor den Backen ein',
        'Seilzug vor oder nach dem Treten des Pedals',
        'wird der Seilzug zuletzt eingestellt',
      ],
      q037: [
        'Rad auf Böcken frei aber auf der Straße heiß',
        'dreht aufgebockt frei wird aber beim Fahren heiß',
      ],
      q038: [
        'heiß und raucht dann kalt wieder in Ordnung',
        'rauchende Bremse Seilzug oder Zylinder',
        'Rauch vom Hinterrad nach dem Abkühlen in Ordnung',
      ],
      q039: [
        'wie leicht soll sich das Rad drehen',
        'wie viel Schleifen ist beim Drehen von Hand normal',
        'soll sich das Rad frei drehen',
        'wie viele Umdrehungen soll das Rad nachlaufen',
      ],
      q040: [
        'eine Trommel warm die andere kalt nach der Fahrt',
        'wie warm sollen Trommeln sein',
        'eine Trommel kühl soll ich sie nachstellen',
      ],
      q041: [
        'eine Seite 50 die andere 68 Grad',
        'Infrarotthermometer Temperaturunterschied Trommeln',
        'normale Trommeltemperatur',
        'welche Temperatur sollen Trommeln haben',
      ],
      q042: [
        'alle vier Bremsen ziehen sich beim Fahren zu',
        'Bremsen werden strammer je länger ich fahre',
        'Bremsen schleifen warm nach dem Stehen frei',
      ],
      q043: [
        'neue Backen eine Trommel nach zwanzig Minuten zu heiß',
        'Trommel heiß nach Einbau neuer Backen',
        'neue Backen werden heiß normal',
        'heiße Trommeln nach der Bremsenreparatur',
      ],
      q044: [
        'Handbremse nie ganz gelöst Beläge innen abgefahren wieder heiß',
        'nur auf der Seite zur Ankerplatte verschlissen',
      ],
      q045: [
        'Brandgeruch von einem Rad',
        'ein Rad riecht nach dem Fahren',
        'Bremse riecht verbrannt',
      ],
      q046: ['Backen von ihren Auflagen gerutscht', 'Backen und Trommeln früh verbrannt'],
      q047: [
        'mit angezogener Handbremse gefahren',
        'Handbremse beim Fahren angezogen gelassen',
        'Handbremse vergessen habe ich etwas kaputt gemacht',
        'mit angezogener Feststellbremse losgefahren',
      ],
      q048: [
        'Bremse hängt nach jedem Halt Schlauch oder Zylinder',
        'Bremse schleift nach dem Anhalten eine Weile dann lässt sie los',
      ],
      q049: [
        'hält bergab aber nicht bergauf',
        'hält nur in einer Richtung am Hang',
        'Handbremse hält vorwärts nicht rückwärts',
        'Handbremse hält nur in eine Richtung',
        'rollt zurück hält aber vorwärts',
        'Feststellbremse hält rückwärts nicht',
      ],
      q050: [
        'blockiert vorwärts dreht rückwärts',
        'Rad blockiert nur vorwärts',
        'Rad dreht rückwärts blockiert aber vorwärts',
      ],
      q051: [
        'warum leistet die vordere Backe mehr',
        'warum bremst die auflaufende Backe mehr',
        'welche Backe macht die meiste Arbeit',
        'warum ist vorwärts eine Backe stärker',
        'warum beißt eine Backe stärker als die andere',
      ],
      q052: [
        'nach Rückwärtsfahren Bremse vorwärts blockiert',
        'blockiert nachdem ich zurückgesetzt habe',
      ],
      q053: [
        'Handbremse hält wenn vor dem Stillstand gezogen kriecht aber wenn im Stand gezogen',
        'Handbremse hält beim Rollen nicht im Stand',
      ],
      q054: [
        'vorwärts schwach rückwärts besser',
        'Bremsen rückwärts besser als vorwärts',
        'Bremsen wirken rückwärts besser',
      ],
      q055: [
        'was ist die auflaufende Backe',
        'auflaufende Backe berührt zuerst',
        'welche Backe ist die auflaufende',
        'Unterschied auflaufende und ablaufende Backe',
      ],
      q056: [
        'vorwärts schwer rückwärts leicht zu drehen',
        'von Hand nur in einer Richtung schwergängig',
      ],
      q057: [
        'eine Backe mehr verschlissen als die andere',
        'vordere Backe doppelt so stark verschlissen',
        'auflaufende Backe dünner als ablaufende',
        'ungleicher Verschleiß der beiden Backen',
        'eine Backe runter die andere wie neu',
      ],
      q058: [
        'Backe an einem Ende dick am anderen dünn',
        'Belag an einem Ende verschlissen',
        'Belag nur oben verschlissen schräg abgefahren',
      ],
      q059: [
        'Backe nur in der oberen Hälfte bis aufs Metall',
        'obere Hälfte der Backe bis aufs Metall runter',
      ],
      q060: [
        'linke Backen mehr verschlissen als rechte',
        'ein Rad verschleißt schneller',
        'Backen auf einer Seite runter andere Seite wie neu',
      ],
      q061: ['Backe an der Außenkante verschlissen', 'Belagkante verschlissen kreischt'],
      q062: [
        'Backen vertauschen damit sie gleich verschleißen',
        'kann ich auflaufende und ablaufende Backe tauschen',
        'kann ich die verschlissene Backe nach hinten setzen',
      ],
      q063: [
        'packt am feuchten Morgen bei der ersten Bremsung zu',
        'Bremsen beißen morgens beim ersten Mal dann gut',
      ],
      q064: [
        'nach nassen Tagen hielt die Bremse und riss dann los',
        'Bremse klebte nach Regen und löste sich beim Zurücksetzen',
      ],
      q065: ['Hinterrad blockiert nach Regen Ursachen', 'Rad blockiert bei Nässe'],
      q066: ['packt seit neuen Backen zu läuft sich das ein', 'neue Backen packen zu geht das weg'],
      q067: [
        'packt stark zu pulsiert bei leichtem Bremsen',
        'eine Seite packt beim festen Treten zu',
      ],
      q068: [
        'Schlag nur bei der ersten Bremsung nach Richtungswechsel',
        'einmal Schlag beim Wechsel von rückwärts auf vorwärts',
      ],
      q069: [
        'Knacken beim Treten nach dem Stehen',
        'Knackgeräusch beim ersten Treten',
        'Knall aus der Bremse beim Anfahren',
      ],
      q070: [
        'Trommel hupt Beläge glänzen',
        'kann ich glänzende Beläge aufrauen',
        'verglaste Bremsbacken abschleifen',
      ],
      q071: [
        'Mahlen blanke Stelle an Backenkante und Nieten',
        'blanker Ring in der Trommel Mahlen',
      ],
      q072: [
        'wie stelle ich das Quietschen der Trommelbremse ab',
        'Mittel gegen quietschende Trommeln',
      ],
      q073: ['quietscht wenn ich das Pedal loslasse', 'Quietschen beim Lösen im Stand'],
      q074: ['Mahlen beim Pedal keines mit der Handbremse'],
      q075: [
        'Klappern in der Trommel auf schlechter Straße',
        'etwas Loses in der Trommel klappert',
      ],
      q076: [
        'hakt an einer Stelle beim Drehen von Hand',
        'schleift beim Bremsen an einer Stelle',
        'Belag Radlager oder Trommel schleift',
      ],
      q077: [
        'zog in eine Richtung jetzt in die andere',
        'zieht andersherum nachdem Backen gemacht sind',
      ],
      q078: ['zieht seit neuem Radzylinder', 'neuer Radzylinder auf einer Seite Auto zieht'],
      q079: [
        'nur eine Backe bewegt sich beim Treten bei abgenommener Trommel',
        'eine Backe bewegt sich die andere nicht Trommel ab',
      ],
      q080: [
        'Prüfung ergab eine Seite schwach Seilzug nachgestellt',
        'geringe Bremskraft auf einer Seite Handbremse und Pedal',
      ],
      q081: [
        'Rollenprüfstand Ungleichheit',
        'durchgefallen wegen ungleicher Bremskraft',
        'ungleiche Bremskraft an der Achse',
        'zu großer Unterschied zwischen links und rechts auf den Rollen',
      ],
      q082: [
        'alles neu hält am Hang nicht',
        'alle Teile neu Handbremse hält trotzdem nicht Trommel verschlissen',
      ],
      q083: [
        'neue Trommel misst über zwei Durchmesser verschieden',
        'Trommel unrund oder außermittig',
        'Trommel schlägt einen halben Millimeter',
      ],
      q084: [
        'kann man die Trommel ausdrehen',
        'wie weit darf man die Trommel ausdrehen',
        'Trommel ausdrehen oder erneuern',
        'Trommel ausdrehen oder ersetzen',
        'Trommel hat Riefen kann man sie abdrehen',
        'wie tief darf eine Rille in der Trommel sein',
        'tiefe Riefen in der Trommel',
      ],
      q085: [
        'woran erkenne ich dass die Trommel ersetzt werden muss',
        'ist meine Trommel verschlissen sieht glatt aus',
        'wann eine Bremstrommel wechseln',
        'prüfen ob die Trommel verschlissen ist',
      ],
      q086: [
        'zurückgestellt frei schleift nach dem Pumpen an manchen Stellen',
        'wie viel unrund ist in Ordnung',
        'schleift nach dem Nachstellen stellenweise',
      ],
      q087: [
        'nass hinter der Ankerplatte Bremsflüssigkeit oder Achsöl',
        'ist das Bremsflüssigkeit oder Getriebeöl',
        'Öl oder Bremsflüssigkeit in der Trommel',
      ],
      q088: [
        'Kolben kommt beim Treten aus dem Zylinder',
        'Kolben springt bei verschlissenen Backen heraus',
      ],
      q089: [
        'Radzylinder nach neuen Backen geplatzt',
        'Radzylinder undicht zu stramm eingestellt',
        'Radzylinder leckt seit neuen Backen',
      ],
      q090: [
        'schwammig seit Radzylinder gewechselt',
        'woran erkenne ich Luft in der Bremse',
        'Luft oder Einstellung weiches Pedal',
      ],
      q091: [
        'Pedal geht tief runter Hauptzylinder zweimal ersetzt',
        'neuer Hauptzylinder Pedal trotzdem tief',
      ],
      q092: [
        'neue Zylinder Backen Trommeln entlüftet trotzdem halbes Pedal',
        'alles ersetzt Pedal trotzdem tief',
        'dreimal entlüftet Pedal trotzdem tief',
      ],
      q093: ['erster Tritt am Tag ist lang dann in Ordnung', 'Pedal jeden Morgen lang'],
      q094: [
        'Trommel sitzt stramm aber langes Pedal',
        'Trommel stramm über den Backen aber Pedal lang Grat',
      ],
      q095: [
        'Pedal tief kommt beim Pumpen hoch',
        'Pedal lässt sich hochpumpen',
        'zweimal pumpen dann ist das Pedal gut',
      ],
      q096: [
        'Pedal pulsiert bei leichtem Bremsen',
        'rubbelt die hintere Trommel oder die vordere Scheibe',
        'Pedal pulsiert beim sanften Bremsen',
      ],
      q097: [
        'Hebel locker Backen oder Seilzug',
        'Handbremse zu viele Klicks Backen oder Seilzug',
        'liegt es an den Backen oder am Seilzug',
        'Handbremse kommt zu hoch Seilzug oder Backen',
      ],
      q098: [
        'kriecht am Hang zurück egal wie fest ich ziehe',
        'rollt am Berg auch fest angezogen',
        'Handbremse hält nicht am steilen Berg',
      ],
      q099: [
        'wie viele Klicks hat die Handbremse',
        'wie viele Rasten soll die Handbremse haben',
        'Handbremse Klicks normal',
      ],
      q100: [
        'neue Backen Räder blockieren aber Rollenprüfstand zeigt nichts an',
        'Handbremse auf den Rollen durchgefallen mit neuen Backen',
      ],
      q101: [
        'hält an leichten Hängen rutscht an steilen',
        'Handbremse am sanften Hang gut am steilen nicht',
      ],
      q102: [
        'Handbremse bleibt bei Frost fest',
        'Handbremse festgefroren',
        'Handbremse nach festem Ziehen fest',
        'Handbremse löst sich nicht',
      ],
      q103: [
        'Handbremse überholt ging einmal dann locker',
        'Handbremse nach einem Zug wieder locker',
      ],
      q104: [
        'Handbremse ohne Wirkung was ist meistens fest',
        'wie setze ich die Nachsteller der Handbremse zurück',
        'Handbremse macht nichts wo fange ich an',
      ],
      q105: [
        'Handbremse hält nur an einem Rad',
        'Handbremse eine Seite schwach Seilzug oder Trommel',
        'Handbremse ungleich links rechts',
      ],
      q106: [
        'Ausgleich bleibt beim Loslassen stehen',
        'Ausgleichsbügel geht nicht zurück',
        'ziehen die Federn in der Trommel das Seil zurück',
      ],
      q107: ['am Hang geparkt Bremse hängt nach dem Lösen', 'hängt nach dem Parken am Berg'],
      q108: [
        'welche Steigung soll die Handbremse halten',
        'welches Gefälle muss die Feststellbremse halten',
        'zwanzig Prozent Steigung Handbremse',
      ],
      q109: [
        'beide Räder bewegen sich etwas und blockieren nach Monaten',
        'monatelang gestanden beide Hinterräder blockiert',
      ],
      q110: [
        'nach zwei Monaten schleift ein Rad über den Boden',
        'ein Rad nach dem Stehen fest Hebel gelöst',
      ],
      q111: [
        'wie lange halten diese Backen noch',
        'wie viele km haben meine Beläge noch',
        'wann brauche ich neue Backen',
        'noch 3 mm wie lange',
      ],
      q112: [
        '4 mm Belag übrig kann ich es lassen',
        'Belag 4 mm noch gut',
        'noch 2 mm auf den Backen',
        'wie viele mm Rest vor dem Wechsel',
      ],
      q113: [
        'Trommeln seit Jahren nie ab',
        'Trommeln seit 100000 km nie ab so lassen',
        'nie in die Trommeln geschaut Handbremse stark',
        'muss ich die Trommeln öffnen',
      ],
      q114: [
        'ist die Markierung auf der Trommel das Ausdrehmaß',
        'wo steht der größte Durchmesser auf der Trommel',
        'max. Durchmesser auf der Trommel eingeschlagen',
      ],
      q115: [
        'Prüfer sagt Backe ist verkehrt herum',
        'Backe verkehrt herum eingebaut ist das schlimm',
      ],
      q116: [
        'welche Backe kommt nach vorne',
        'welche Backe kommt nach hinten',
        'Backe auf dem Kopf',
        'woran erkennt man das auflaufende Ende',
        'wie herum kommt die Backe',
        'welche Backe gehört wohin',
      ],
      q117: [
        'wie herum kommen die Federn',
        'in welches Loch wird die Feder eingehängt',
        'wie kommt die Druckstange wieder hinein',
        'wo gehört diese Feder hin',
        'wie herum zusammenbauen',
        'Zeichnung wie es zusammengehört',
      ],
      q118: ['Angst vor den Federn und dem Einstellen', 'fünfzig Fotos gemacht trotzdem unsicher'],
    },
  },

  /* ui/ask/said/told-faults.ts */
  askSaidToldFaults: {
    told: {
      'seized short': `
    Pedal tief an beiden Hinterrädern und die Handbremse kommt auch hoch
    Handbremse dreizehn Rasten und Pedal lang
    Nachsteller auf beiden Seiten fest der Spalt wird immer größer
    alle paar Monate muss ich die Bremsen von Hand nachstellen
    ich muss die Handbremse immer wieder nachziehen
    Schraube am Nachsteller verrostet lässt sich von Hand nicht drehen
    Gewinde vom Nachsteller festgegangen
    Mutter am Nachsteller bewegt sich nicht
    Sternrad verrostet lässt sich nicht drehen
    Nachsteller tun gar nichts mehr
    erst beim Pumpen kommt das Pedal hoch weil der Spalt zu groß ist
    Bremsen sind ständig verstellt
    seit Jahren keinen Klick gehört
    automatische Nachstellung hat aufgegeben`,
      'worn teeth': `
    Zähne am Nachsteller abgenagt
    Raste überspringt Zähne
    Nachsteller verliert beim Parken seine Einstellung
    Rasten sind jeden Tag anders
    Handbremse an einem Tag gut am nächsten lang
    klickt nach jedem Parken wieder
    erster Tritt am Tag ist tief der zweite gut und ich höre Klicks
    Zähne am Nachsteller rund er rutscht durch
    morgens langes Pedal dann den Rest vom Tag normal
    Zahl der Klicks am Hebel ändert sich täglich`,
      'broken lever spring': `
    Hebel am Nachsteller hängt lose herunter
    keine Feder am Hebel vom Nachsteller
    kleine Feder am Nachsteller fehlt
    winzige Feder gebrochen unten in der Trommel gefunden
    Hebel vom Nachsteller liegt nicht an den Zähnen an
    Klinke schlackert
    nichts drückt den Hebel an das Sternrad
    dünne Feder durchgerostet`,
      'stepped hot': `
    Bremsen nach dem Abkühlen blockiert
    über Nacht beide Hinterräder stramm nach starkem Bremsen
    Handbremse plötzlich nur zwei Rasten und Räder stramm
    Nachsteller hat geklickt als die Trommel heiß war
    am Berg geklickt und jetzt zu stramm
    über die Berge gefahren und am nächsten Tag ging er nicht von der Stelle
    zu weit nachgestellt weil die Trommel heiß war
    Räder heiß frei aber kalt drehen sie nicht
    mit Anhänger bergab am nächsten Tag Bremsen stramm`,
      'shoes swapped': `
    langer Belag auf der falschen Seite
    Backen verkehrt eingebaut vorne und hinten vertauscht
    jemand hat die vordere Backe hinten eingebaut
    die hintere Backe ist verschlissen und die vordere dick
    auflaufender Belag dicker als ablaufender
    auflaufende und ablaufende Backe vertauscht
    verschlissene Backe auf die andere Seite der Bremse gesetzt
    Prüfer sagt die Backen sind verkehrt herum drin`,
      'wrong side': `
    linker Nachsteller in der rechten Bremse
    Nachsteller links und rechts vertauscht
    Nachsteller vom anderen Rad
    Rechtsgewinde auf der linken Seite
    Nachsteller mit L rechts eingebaut
    Nachsteller dreht sich von selbst zurück
    Sternrad dreht beim Nachstellen in die falsche Richtung
    Pedal wird jedes Mal länger wenn es nachstellen sollte
    beim Zusammenbau die beiden Seiten verwechselt
    Teile mit L und R gestempelt welche Seite`,
      'strut mis-seated': `
    Druckstange aus dem Schlitz gesprungen
    Ende der Druckstange steht auf der Kante der Backe
    Druckstange sitzt nicht im Schlitz der Backe
    Trommel geht nur gerade so drauf und das Rad blockiert
    Stange zwischen den Backen verrutscht
    ein Rad fest nach dem Zusammenbau
    Trommel geht nach neuen Backen auf einer Seite schwer drauf
    Druckstange sitzt nicht im Hebel
    Druckstange verrutscht als ich die Trommel aufgesetzt habe`,
      'dead adjuster to the end': `
    Kolben ganz herausgekommen
    Kolben aus der Bohrung vom Zylinder Bremsflüssigkeit überall
    Backen und Trommel völlig runter Pedal geht bis zum Boden
    bis aufs blanke Metall runter und Pedal am Boden
    Beläge weg mahlt und Pedal fällt bis zum Boden
    über die Grenze verschlissen und Bremsflüssigkeit kam heraus
    nie danach geschaut jetzt kein Pedal und es mahlt
    Pedal bis aufs Blech und Metallgeräusch`,
      'short cable': `
    Handbremse greift beim ersten Klick
    zuerst den Seilzug eingestellt jetzt stellen die Backen nie nach
    Seil so stramm dass der Hebel in der Trommel nicht in Ruhelage kommt
    nach neuem Seilzug schleifen die Räder
    neues Handbremsseil zu kurz
    jemand hat das Seil gespannt statt der Backen
    Handbremse greift sofort und die Räder sind stramm
    seit das Seil gespannt ist wird das Pedal länger
    kein Spiel im Seil bei gelöster Handbremse
    Hebel in der Trommel auf beiden Seiten nicht am Anschlag`,
      'kept pull': `
    Hinterrad bleibt gebremst nachdem die Handbremse gelöst ist
    Hebel unten aber Seil noch stramm
    rostiges Seil rutscht nicht zurück
    Seil in der Hülle festgegangen
    Rad wird frei wenn ich am Seil rüttle
    Hebel von Hand zurückdrücken macht das Rad frei
    ein Rad heiß nach dem Parken mit Handbremse
    Handbremse im Winter festgefroren
    Wasser im Seil über Nacht gefroren
    Handbremsleuchte aus aber schleift noch
    Seil muss von Hand zurückgedrückt werden
    Hinterrad gebremst bei gelöstem Hebel
    Hebel an der Trommel geht an einem Rad nicht zurück`,
      'stretched cable': `
    Handbremse hoch aber Fußbremse gut
    Handbremshebel steht fast senkrecht
    viele Klicks bis sie hält Bremsen sind gut
    Handbremsseil hat sich gelängt
    Seil der Handbremse locker
    Handbremse muss ganz hoch gezogen werden
    Mutter am Ausgleichsbügel muss nachgezogen werden
    Handbremsweg länger geworden Backen sind gut
    Handbremse braucht mehr Klicks als früher Pedal unverändert
    Seil hängt locker unter dem Auto`,
      'stiff pivot': `
    Hebel an der Backe schwergängig
    Hebel in der Trommel bewegt sich schwer
    Handbremshebel an der Backe geht langsam zurück
    Seil läuft frei aber der Hebel in der Trommel sitzt fest
    Handbremse wirkt nur auf einer Seite Hebel verrostet
    Bolzen vom Handbremshebel verrostet
    ging einmal und dann locker
    Hebel in der Trommel bleibt nach dem ersten Ziehen draußen
    Hebel federt nicht zurück
    Handbremshebel in der Trommel klemmt nach Regen
    Bremshebel an der Backe muss gangbar gemacht und gefettet werden`,
      'weak springs': `
    Federn ziehen die Backen nicht richtig zurück
    müde Federn
    Federn haben ihre Spannung verloren
    Backen klappern an der Trommel Federn sind schwach
    Rückzugfeder ausgeleiert
    eine Feder ist länger als die andere
    Federn wurden heiß und weich
    Bremse greift auf einer Seite zu früh
    Rückzugfeder fehlt
    gebrochene Feder in der Trommel gefunden
    Backe geht nicht von selbst zurück`,
      'strong springs': `
    neue Federn sind zu hart
    Federn von einem anderen Auto eingebaut
    Backen werden zu stark zurückgezogen
    stärkere Federn eingebaut und die Bremse kommt spät
    eine Seite kommt bei leichtem Bremsen spät seit neuen Federn
    Feder mit falscher Farbe eingebaut
    Bremsen brauchen mehr Pedal seit dem Federsatz`,
      'stuck piston': `
    ein Kolben im Zylinder festgerostet
    Kolben drückt auf einer Seite nicht heraus
    Backe bewegt sich nicht wenn jemand tritt
    niedriger Wert auf den Rollen ein Rad rückwärts besser
    Auto zieht beim Bremsen vorwärts zur Seite
    Zylinder halb fest
    nur eine der beiden Backen verschlissen die andere wie neu
    Kolben sitzt in der Bohrung fest
    ein Zylinder drückt nicht
    lange gestanden Zylinder innen verrostet`,
      'sluggish pistons': `
    Bremsen lösen langsam
    dauert ein paar Sekunden bis er nach dem Bremsen frei rollt
    Kolben gehen träge
    Zylinder verschmutzt Kolben bewegen sich langsam
    Bremse hinkt beim Lösen hinterher
    löst langsam
    Backen gehen langsam zurück
    schleift nach jedem Halt noch einen Moment
    Radzylinder klemmt
    Backe geht beim Loslassen des Pedals nicht zurück
    Backe stellt sich nicht zurück`,
      'leaning part': `
    etwas drückt eine Backe an die Trommel
    Rad vorwärts schwerer zu drehen als rückwärts
    schleift nur in einer Richtung
    ein verbogenes Teil drückt auf die Backe
    verbogene Ankerplatte drückt eine Backe
    lässt sich vorwärts schwer drehen rückwärts leicht
    eine Backe liegt immer an
    eine Backe geht nicht in die Ruhelage zurück`,
      hose: `
    Rad schleift nach dem Treten und wird nach Minuten frei
    Entlüfter geöffnet und das Rad wurde frei
    Nippel aufgemacht und es ließ los
    Druck im Rad eingeschlossen
    Bremsschlauch innen zugequollen
    alter Gummischlauch wirkt wie ein Rückschlagventil
    Bremse hält nach dem Anhalten fest und lässt langsam los
    ein Hinterrad heiß Bremse löst nach dem Treten nicht
    Bremsschlauch innen kaputt
    Rad nach dem Bremsen blockiert am Morgen frei
    Bremsschlauch abgeklemmt und vergessen
    schleift mal mehr mal weniger wenn sie warm ist ein Rad
    Backe geht nach dem Treten erst zurück wenn der Entlüfter offen ist`,
      'port shut': `
    Bremsen ziehen sich beim Fahren langsam fest
    Bremsen greifen immer mehr und sind kalt wieder frei
    alle vier Räder heiß
    Pedal kommt hoch und wird unterwegs hart
    seit der Bremskraftverstärker gewechselt ist schleifen die Bremsen
    seit das Pedal eingestellt ist schleifen die Bremsen
    kein Leerweg oben am Pedal
    Hauptzylinder lösen macht die Bremsen frei
    eine Entlüfterschraube öffnen macht alle Räder frei
    muss warten bis es abkühlt bevor er rollt
    neuer Hauptzylinder und Bremsen bleiben fest
    Druckstange am Pedal zu lang eingestellt
    nach ein paar Kilometern schleift jedes Rad`,
      'other bore': `
    Zylinder links und rechts verschieden
    ein Radzylinder größer als der andere
    falsche Größe vom Radzylinder
    zieht mit dem neuen Zylinder zur Seite
    ungleiche Bremskraft nach neuem Zylinder
    eingeschlagene Bohrung am Zylinder ist nicht dieselbe
    auf dem neuen Zylinder steht 22 auf dem alten 19`,
      air: `
    Pedal schwammig nach Arbeiten an der Bremse
    Blasen in der Leitung
    weiches Pedal wird beim Pumpen etwas besser
    Hydraulik geöffnet und jetzt ist das Pedal weich
    Pedal fühlt sich an als wäre eine Feder drin
    Entlüften hat nicht geholfen Pedal federt immer noch
    Zylinder gewechselt und jetzt Pedal schwammig
    Pedal hat keinen festen Druckpunkt
    Pedal weich nach Wechsel der Bremsflüssigkeit
    Pedal wie Gummi
    Behälter leer laufen lassen`,
      'fluid on linings': `
    Zylinder schwitzt unter der Staubkappe
    Staubkappe voll Bremsflüssigkeit
    Bremsflüssigkeit tropft aus der Trommel
    Rad innen nass
    Backen nass von Bremsflüssigkeit
    ein Rad bremst schlecht und ist innen nass
    muss oft Bremsflüssigkeit nachfüllen
    Flüssigkeitsstand sinkt kein Leck zu sehen
    Manschetten im Radzylinder hinüber
    Radzylinder sifft wie verrückt
    eine Seite schwach Ankerplatte nass
    auf den Rollen ein Rad schwach und nass`,
      'oil on one lining': `
    Öl von der Achse auf einer Backe
    Achsfett auf den Belag gekommen
    Radlagerfett auf den Backen
    schwarzes Öl in der Trommel
    riecht in der Trommel nach Getriebeöl
    Simmerring der Hinterachse hin Öl auf der Bremse
    Handbremse an dem Rad in einer Richtung schwach
    Differenzialöl läuft in die Bremse
    hält vorwärts aber nicht rückwärts und innen ölig
    ein Belag fettig der andere trocken`,
      glazed: `
    Beläge wie Glas
    Pedal hart aber er bremst nicht gut
    Backen hart und glänzend geworden
    Bremswirkung schlecht nach viel leichtem Bremsen
    Bremsen fühlen sich an wie Holz
    trete mit aller Kraft und er wird nur langsamer
    beide Hinterräder auf dem Prüfstand schwach Pedal fest
    Beläge überhitzt und poliert
    verbrannte Beläge beißen nicht
    glänzende Stellen auf den Backen`,
      damp: `
    morgens beim ersten Mal sehr giftig
    erste Bremsung am Tag blockiert fast die Räder
    nach Stehen im Nassen packt der erste Tritt zu
    Flugrost in der Trommel packt einmal zu
    Bremsen reißen am nassen Morgen an dann normal
    Heck rutscht nach Regen beim ersten Antippen
    Hinterräder blockieren auf feuchter Straße beim ersten Bremsen
    quietscht und packt morgens zu dann ist es weg
    bissig nach dem Autowaschen`,
      'water inside': `
    durch Hochwasser gefahren und keine Bremse
    Bremsen griffen nach einer Wasserdurchfahrt nicht
    Wasser hineingespritzt und Bremsen eine Weile wirkungslos
    nach Regen Bremsen schwach bis sie trocken sind
    Bremsen kommen bei Nässe nach ein paar Tritten wieder
    nach der Waschanlage kaum Bremswirkung
    nach dem Slippen des Bootes bremst es schlecht
    tiefe Pfütze keine Bremse`,
      'hot fade': `
    unten am Berg keine Bremse mehr
    Pedal wird bergab im Gebirge länger
    Bremsen heiß schwach kalt gut
    Bremse wurde auf der langen Abfahrt immer schwächer
    Gestank und keine Bremse nach dem Pass
    schwerer Anhänger bergab Bremse weg
    Bremsen nach der Abfahrt verbrannt
    nach dem Abkühlen wieder in Ordnung
    Bremsen lassen nach wenn ich viel bremse`,
      'oversize bore': `
    neue Backen berühren nur in der Mitte
    Tragbild in der Mitte vom Belag
    Trommel ist größer als die Backen dafür gemacht sind
    Trommel ausgedreht und die neuen Backen passen nicht
    neue Beläge passen nicht zur Rundung der Trommel
    Bremsen schlecht nach neuen Backen in alten Trommeln
    bremst schlechter seit die Backen gewechselt sind
    Rundung der Backe enger als die Trommel
    alte Trommel mit neuen Backen muss einlaufen`,
      'lining ends': `
    Beläge berühren an beiden Enden und nicht in der Mitte
    Enden der Beläge verschlissen Mitte unberührt
    neue Backen packen seit dem Einbau zu
    Rundung der Backe zu flach für die Trommel
    Backen für eine größere Trommel gemacht
    Radius vom Belag größer als die Trommel
    Bremse packt kalt zu seit den neuen Backen
    neu belegte Backen nicht auf die Trommel geschliffen
    Bogen der Backe größer als die Trommel`,
      'oval drum': `
    Pedal pumpt unter meinem Fuß
    schleift bei jeder Umdrehung an zwei Stellen
    zweimal je Umdrehung stramm
    Bremswirkung kommt und geht zweimal je Radumdrehung
    Trommel misst quer verschieden
    zwei Durchmesser nicht gleich
    Trommel durch die Handbremse heiß unrund geworden
    Rubbeln beim Bremsen bei langsamer Fahrt
    Auto schüttelt beim Bremsen von hinten
    wupp wupp im Sitz beim Bremsen
    Unrundheit auf dem Prüfprotokoll ist hoch
    Bremskraft schwankt auf den Rollen auf und ab
    harte Stellen in der Trommel`,
      'drum off centre': `
    einmal Kratzen je Radumdrehung
    streift bei jeder Umdrehung an derselben Stelle
    Trommel sitzt außermittig seit sie wieder drauf ist
    Schmutz oder Rost unter der Trommel beim Aufsetzen
    Trommel liegt nicht plan auf der Nabe an
    Messuhr schlägt einmal je Umdrehung aus
    an einer Stelle stramm sonst frei
    Streifgeräusch einmal je Umdrehung
    neues Radlager und jetzt schleift die Trommel
    pulsiert einmal je Umdrehung`,
      lip: `
    Trommel kommt etwas heraus und stößt dann an
    Trommel kommt einen Zentimeter heraus und bleibt dann hart stehen
    rutscht ein Stück herunter und hängt an den Backen
    Verschleißkante in der Trommel hakt an den Belägen
    sie kommt bis dahin und nicht weiter
    Backen sitzen hinter dem Grat
    Trommel lässt sich ziehen bis sie an die Backen stößt
    Grat am offenen Rand der Trommel
    Kanten der Beläge vom Trommelrand angefressen
    eingelaufene Rille in der Trommel hält die Backen fest
    Trommel geht bei richtig eingestellten Backen wegen des Grats schwer ab`,
      'hub rust': `
    Trommel dreht sich geht aber nicht von der Nabe
    in der Mitte an der Nabe festgerostet
    Rad dreht frei aber Trommel sitzt auf der Nabe fest
    Rost rund um das Mittelloch
    Trommel bewegt sich überhaupt nicht nach außen
    sitzt am Zentrierbund fest
    am Flansch angerostet
    Trommel ist von den Backen frei geht aber nicht von der Nabe
    Rostlöser an der Nabe hilft nicht
    keinerlei Bewegung wenn ich an der Trommel ziehe`,
      groove: `
    Backen haken an der Ankerplatte
    Kerben eingelaufen wo die Backen gleiten
    Ankerplatte verschlissen wo die Backenkante aufliegt
    Backe hängt in einer Rille und lässt dann los
    erst passiert nichts dann beißt sie plötzlich
    Bremse hängt nach Rückwärtsfahren in einer Rille der Ankerplatte
    Knacken aus der Bremse beim ersten Treten
    Riefen auf den Auflagen der Ankerplatte`,
      bearing: `
    Nabe hat oben und unten Spiel
    Rad wackelt wenn ich daran rüttle
    Rad klackt beim Rütteln
    Brummen das mit der Geschwindigkeit lauter wird
    Brummen von hinten das sich in Kurven ändert
    Nabe wird bei freier Bremse heiß
    Trommel schleift wenn das Auto voll besetzt ist
    Radlager hinten verschlissen
    Spiel im Radlager lässt die Backen schleifen
    Radlagergeräusch oder Bremsgeräusch`,
      'rusted on': `
    Rad fest nachdem das Auto wochenlang draußen stand
    einen Monat nicht bewegt und jetzt ist ein Hinterrad blockiert
    mit angezogener Handbremse abgestellt und er rollt nicht
    Backen an der Trommel festgerostet
    am Meer gestanden Räder fest
    nass geparkt und jetzt geht er nicht von der Stelle
    Bremsen nach dem Winter fest
    löste sich mit einem Knall
    ließ beim Anfahren mit einem Krachen los
    Anhänger stand jahrelang Bremsen fest
    Hinterrad rutscht über den Boden ohne zu drehen
    gewaschen und abgestellt am nächsten Tag Räder blockiert
    gewaschen und über Nacht an der Trommel festgefroren
    Backen bei Frost an den Trommeln festgefroren`,
    },
  },

  /* ui/ask/said/told-other.ts */
  askSaidToldOther: {
    toldOther: {
      'station:apply': `
    wie funktioniert das in einfachen worten
    trommelbremse für anfänger erklärt
    zeig mir die kräfte
    was drückt worauf
    wo drückt der belag am stärksten
    druck entlang des belags
    druck auf der backe zeigen
    beim bremsen langsam zusehen`,
      'station:wear': `
    dem verschleiß über jahre zusehen
    fahren bis alles verschlissen ist
    wie schnell verschleißen beläge
    hunderttausend kilometer laufen lassen`,
      'station:drum-off': `
    trommeln rühren sich nicht
    hintere trommel sitzt bombenfest
    versuche schon den ganzen morgen die trommel runterzukriegen
    trommel bewegt sich überhaupt nicht
    wie bekomme ich eine festgerostete trommel ab
    trommel vom alten pritschenwagen abbekommen
    trommel muss runter was muss ich lösen
    trommel wird von den backen gehalten
    backen halten die trommel fest
    trommel klemmt was hält sie
    muss die handbremse gelöst sein um die trommel abzuziehen
    mit dem hammer draufgehauen und sie bleibt drauf
    trommel kam halb runter
    trommel vom anhänger geht nicht ab`,
      'station:park': `
    hält sie am berg
    wie steil darf ich parken
    halten am hang
    zug am hebel für eine steigung
    newton am hebel zum halten`,
      'station:inspect': `
    nieten zu sehen ist das verschlissen
    wo messe ich den belag
    wie messe ich trommel und backen
    noch gut oder schrott
    wie dick muss der belag mindestens sein
    blatt zum messen ausdrucken
    arbeitsblatt zum eintragen der maße
    messprotokoll für die werkstatt
    ist das verschlissen
    trommel über ihrem maß
    trommel misst mehr als eingeprägt
    mindestdicke der backen
    mit wie wenig belag darf ich fahren
    brauche ich neue trommeln
    sind die trommeln fertig
    belag bröckelt oder ist gerissen
    zylinder auf rost und undichtheit prüfen
    sieht alles gut aus was noch prüfen
    wie prüfe ich ob eine backe verbogen ist
    steg der backe verbogen`,
      'station:new-shoes': `
    neue backen einbauen
    anleitung backen wechseln
    neue backen einstellen
    nachstellen ohne das rad abzunehmen
    hinterradbremse einstellen
    bremsen müssen nachgestellt werden wie
    wie einstellen nach dem einbau
    backen an die trommel anpassen schleifen
    passen neue backen in eine alte trommel`,
      'station:faults': `
    ansehen was jeder fehler bewirkt
    fehlersuche üben für schüler
    fehler im transporter finden
    fehler raten spiel
    meiner klasse einen fehler stellen`,
      'station:own': `
    meine bremse fotografieren und ausrechnen
    ein foto von meiner bremse machen
    ein bild von meiner bremse verwenden
    eigene messwerte eingeben
    maße meiner bremse eingeben
    mein auto hat andere maße
    kamera`,
      'station:questions': `
    was fragen andere leute
    häufige fragen`,
      'station:see': `
    irgendwas stimmt nicht was ist es
    den fehler an meinem auto finden
    eingeben was mir auffällt
    hilf mir die ursache zu finden
    ich weiß nicht wie das heißt`,
      'station:vary': `
    wie verändert die reibung die bremse
    kennwert über reibwert kurve
    was bringt eine größere trommel
    was passiert bei einem längeren belag
    ein maß ändern und die wirkung sehen
    diagramm`,
      'station:kind': `
    welche nachstellung habe ich
    was für eine trommelbremse ist das
    unterschied zwischen simplex und duo servo
    keilnachstellung mit kleiner feder
    nachsteller arbeitet beim rückwärtsfahren oder über die handbremse
    woran erkenne ich welche bauart ich habe`,
      'station:lessons': `
    etwas für azubis
    trommelbremse unterrichten
    unterrichtsentwurf
    material für den unterricht`,
      'check:drag': `
    rad glühend heiß
    felge nach kurzer fahrt zu heiß zum anfassen
    rad kocht
    auto fühlt sich an als ob es etwas festhält
    es wird von selbst langsamer wenn ich vom gas gehe
    auto rollt nicht wenn ich vom gas gehe
    es rollt nicht von allein weiter
    mehr verbrauch als früher und bleibt beim ausrollen schnell stehen
    bremsen schleifen
    ein rad heißer als die anderen
    rauch vom hinterrad in der einfahrt
    verbrennt mir die hand
    rad blockiert
    bremse klemmt
    rad dreht schwer
    rad lässt sich nicht drehen
    hinterradbremse geht nicht mehr auf
    schleift und riecht
    schleift ab und zu nach neuen backen und trommeln
    schleift zeitweise wenn warm
    thema schleifen backen schleifen seit der bremsenreparatur
    fühlt sich an wie fahren mit angezogener handbremse
    rad dreht nicht mehr seit die backen gewechselt sind`,
      'check:pedal': `
    pedalweg zu lang
    pedal fast am boden bevor es greift
    halber pedalweg tut nichts
    muss zweimal treten
    pedal greift erst ganz unten
    pedal fühlt sich falsch an
    bremspedal fällt durch
    pedal oben ohne wirkung
    pedal hart
    pedal zittert
    bremspedal ist schlecht
    pedal bis aufs bodenblech`,
      'check:lever': `
    handbremse taugt nichts
    handbremse geht zu weit
    handbremse zu weit hoch
    feststellbremse schwach
    auto rollt beim anfahren am berg zurück
    handbremse greift auf der rampe nicht
    feststellbremse ganz durchgetreten und rollt trotzdem
    handbremse bis unters dach
    hebel kommt zu weit hoch
    nur ein paar klicks und sie schleift
    hebel hat keinen widerstand
    sie hält ein rad nicht
    eine seite hält die andere nicht`,
      'check:braking': `
    bremst nicht gut
    schlechte bremswirkung
    langer bremsweg
    bremse zu giftig
    auto zieht beim bremsen schief
    heck bricht beim bremsen aus
    ein hinterrad auf dem prüfstand schwächer
    bremskraft links und rechts verschieden
    auf einer seite stärker
    prüfstand zeigt an einem hinterrad nichts`,
      'check:noise': `
    komisches geräusch von hinten
    kratzendes geräusch
    metallisches geräusch beim rückwärtsfahren
    brummen wird mit dem tempo lauter
    sch sch bei jeder umdrehung
    quietscht beim rollen nicht beim bremsen
    tickt während der fahrt
    geräusch verschwindet wenn ich das pedal antippe
    was ist das für ein geräusch
    kratzen das weggeht wenn ich das pedal antippe`,
      'check:free': `
    kann es sich freischleifen
    schleift nach dem einstellen ein wenig
    stramme backen geben die noch nach
    wie heiß wird sie wenn ich so fahre
    wie weit komme ich mit einer schleifenden bremse
    leichtes schleifen nach dem einstellen in ordnung
    mehrverbrauch durch schleifende bremse`,
      'not here:sinking': `
    pedal sinkt beim warten an der ampel
    pedal geht immer tiefer wenn ich drauf bleibe
    pedal gibt langsam nach wenn ich es halte
    geht beim halten langsam bis zum boden`,
      'not here:safe': `
    kann ich das auto noch benutzen
    darf ich damit fahren
    wie weit kann ich damit noch fahren
    ist das fahren gefährlich
    hat das bis nächste woche zeit`,
      'not here:loose lining': `
    belag lose auf der backe
    kleber hat sich gelöst belag abgefallen
    reibbelag hat sich von der backe gelöst`,
      'not here:crack': `
    trommel klingt nicht beim anschlagen
    trommel angeklopft und sie klingt tot
    trommel klingt dumpf statt hell
    kleine risse innen in der trommel`,
      'not here:rattle': `
    backen schlagen gegen die trommel
    niederhalterfedern schwach oder gebrochen
    stift vom niederhalter hat keine spannung`,
      'not here:in disc': `
    trommel in einer scheibenbremse
    kleine trommel in der hinteren scheibe`,
      'not here:servo': `
    großer lagerbolzen oben auf der bremse
    eine backe kurzer belag eine langer belag
    beide backen hängen oben an einem bolzen
    welche backe ist die primärbacke`,
      'not here:booster': `
    pedal hart seit dem motor
    keine bremskraftverstärkung
    unterdruckschlauch zur bremse`,
      'not here:legal': `
    wie viel prozent zum bestehen nötig
    was ist bei der hauptuntersuchung erlaubt
    beim tüv wegen der feststellbremse durchgefallen`,
      'not here:cleaning': `
    fett von den backen abwaschen
    beläge mit benzin reinigen
    kann man verölte backen retten
    bremsbacken verölt kann ich sie reinigen`,
      'not here:dust': `
    ist der staub giftig
    wie reinige ich die trommel vom staub`,
      'not here:grease': `
    wo kommt fett hin
    fett auf die ankerplatte wo
    die stellen schmieren wo die backen gleiten`,
      'not here:one side': `
    muss ich beide seiten wechseln
    nur die linke
    nur eine trommel ausgedreht`,
      'not here:noise': `
    quietscht wie ein schwein
    stöhnt wie ein schiff
    quietschen am morgen`,
      'order:back': `
    durch das loch hinten einstellen bei montiertem rad
    die backen von hinten lösen
    den nachsteller mit dem schraubendreher zurückstellen
    den hebel weghalten und das rädchen zurückdrehen
    kein loch wie stelle ich zurück`,
      'order:apart': `
    was kommt zuerst ab
    backen der reihe nach ausbauen
    welches werkzeug brauche ich für die federn
    stift und teller vom niederhalter abnehmen
    trommelbremse zerlegen ohne etwas zu verlieren
    federn aushängen`,
      'order:together': `
    teile übrig nach dem zusammenbau
    welche feder kommt zuerst
    wohin gehört welche feder
    stift und teller vom niederhalter wieder einsetzen
    in welcher reihenfolge kommen die federn drauf
    alles wieder einbauen
    federn wieder einhängen`,
      'order:set': `
    handbremsseil nach den backen einstellen
    was wird zuerst eingestellt backen oder seilzug
    richtig eingestellt wie viele umdrehungen soll das rad drehen
    wie stramm soll das rad nach dem einstellen sein
    gewicht am reifen um das rad zu drehen
    endgültige einstellung`,
      'order:bed': `
    wie lange bis neue backen greifen
    wie viele kilometer bis neue backen beißen
    mit neuen backen vorsichtig fahren
    neue backen einfahren`,
      'word:leading shoe': `
    welche ist die auflaufende
    vordere oder hintere`,
      'word:self-energising': `
    was heißt selbstverstärkung
    warum zieht sie sich selbst an`,
      'word:clearance': `
    normaler spalt
    wie weit steht die backe von der trommel ab`,
      'word:bedding in': `
    wie viele km bis neue backen richtig greifen
    wann werden neue bremsen gut
    neue beläge beißen noch nicht`,
      'word:run-out of a piston': `
    wie weit darf ein kolben herauskommen`,
      'word:out of round': `
    wie viel unrund ist zu viel`,
      'word:fade': `
    warum werden heiße bremsen schwach`,
      'word:equaliser': `
    wippe wo die zwei seile zusammenkommen
    ein seil länger als das andere`,
      'word:roller test': `
    werte vom bremsenprüfstand was bedeuten sie
    maschine die bremsen prüft
    kraft links und rechts auf dem prüfstand`,
      'caution:springs': `
    feder weggeflogen
    feder quer durch die werkstatt geschossen
    feder ist abgesprungen worauf achten
    federn verletzen augen`,
      'caution:wear': `
    schwarzer staub in der trommel gefährlich`,
      'caution:hot': `
    finger am rad verbrannt
    zu heiß zum arbeiten`,
      'caution:piston': `
    pedal ohne trommel getreten
    kolben herausgedrückt`,
      'caution:stands': `
    nur auf dem wagenheber
    auto vom wagenheber gefallen`,
      'caution:drumOff': `
    wie sichere ich das auto wenn die handbremse gelöst ist`,
      'part:hot lock': `
    warum klickt es nicht wenn die trommel heiß ist
    keine klicks solange heiß`,
      'reading:toeForceFront': `
    kraft an der spitze der backe
    kraft auf die spitze`,
      'reading:linePressure': `
    druck in der bremsleitung
    bei welchem druck berühren die backen
    bar oder psi in der leitung`,
      'reading:pistonForce': `
    kraft des radzylinders
    wie stark drückt der kolben`,
      'reading:fluid': `
    wie viel flüssigkeit braucht ein tritt
    volumen der bremsflüssigkeit für eine betätigung`,
      'reading:temperature': `
    wie heiß ist die trommel jetzt`,
      'reading:toNextTooth': `
    wie weit bis zum nächsten klick
    wie weit muss die backe gehen bis es klickt`,
      'reading:brakeFactor': `
    bremsenkennwert zahl`,
    },
  },

  /* ui/ask/said/told-questions.ts */
  askSaidToldQuestions: {
    toldQuestions: {
      q001: `
    trommel kommt ein stück und nicht weiter seilzug ist schon gelöst
    kommt einen fingerbreit heraus dann wird sie gehalten
    eine seite ging ab die andere kommt ein stück und bleibt hängen`,
      q002: `
    da ist ein kleiner hebel den man vom rädchen weghalten muss wie
    wie drücke ich die klinke weg während ich drehe
    brauche zwei schraubendreher zum zurückdrehen
    klinke vom sternrad fernhalten
    hebel lässt mich das rädchen nicht zurückdrehen
    muss man eine klammer oder ein blech wegdrücken damit das sternrad frei ist
    muss ich etwas drücken damit sich das sternrad dreht`,
      q003: `
    meine ankerplatte hat kein loch wie löse ich die backen
    nirgends ein schauloch
    man kommt nirgends mit dem schraubendreher rein
    nachsteller von außen nicht zu erreichen
    backen ohne loch zurückstellen`,
      q004: `
    zum lösen nach oben oder nach unten
    in welche richtung drehe ich das rädchen um die backen zu lösen
    linke seite im uhrzeigersinn oder nicht
    drehrichtung zum lösen des nachstellers auf jeder seite
    rost an der nabe oder grat woran erkenne ich das`,
      q005: `
    heiß gemacht rostlöser gehämmert sie sitzt immer noch
    abzieher bewegt sie nicht
    trommel verbiegt sich am abzieher es kommt nichts
    seit tagen dran mit allem was ich habe
    was ist das letzte mittel um sie abzubekommen`,
      q006: `
    trommel mit zwei schrauben abdrücken
    was für ein gewinde haben die löcher in der trommel
    schrauben in die stirnseite der trommel zum abdrücken`,
      q007: `
    eingestellt durch zählen der radumdrehungen
    welche einstellregel stimmt umdrehungen oder lehre
    regel rad muss zwei umdrehungen drehen`,
      q008: `
    stochere im loch und finde den nachsteller nicht
    wie sieht das durch das loch aus
    wo hinter dem loch ist der hebel
    blind durch den schlitz was spüre ich da`,
      q009: `
    seilzug wurde gespannt und jetzt wird die trommel gehalten
    trommel ging gut ab bevor die handbremse eingestellt wurde`,
      q010: `
    nachsteller mit feder wie stelle ich ihn auf null zurück
    rasten druckstange für neue backen zurücksetzen
    eine backe steht zu weit außen trommel hängt daran
    wie stelle ich den zahnhebel ganz zurück`,
      q011: `
    trommel geht nicht ganz drauf alles zurückgestellt
    trommel steht ein paar mm ab
    musste die trommel mit gewalt draufdrücken und jetzt geht das rad schwer
    trommel sitzt nicht ganz auf warum`,
      q012: `
    backen gekauft und die trommel ist zu klein dafür
    backen dicker als die alten
    neue backen passen nicht in die trommel
    trommel geht nicht über die neuen beläge nachsteller ganz zurück
    sind das die falschen backen
    neue backen breiter als die alten
    neue beläge schleifen an der ankerplatte`,
      q013: `
    nur der zylinder ist neu und jetzt ist es stramm
    radzylinder getauscht und die trommel geht nicht drüber`,
      q014: `
    neue trommel gekauft jetzt ist sie blockiert
    neue trommel stramm ist der seilzug zu kurz eingestellt
    trommel ersetzt und jetzt geht es schwer`,
      q015: `
    grat weggefeilt und jetzt ist mehr weg
    gebrauchte trommel mit abgedrehtem grat`,
      q016: `
    was ist das gestufte ding mit der feder am arm
    wie stellt der zahnhebel den verschleiß nach
    woher weiß er wann er weiterspringen muss
    was bewegt den nachsteller einen zahn weiter`,
      q017: `
    nichts dreht den nachsteller
    sternrad dreht nur durch und tut nichts
    was soll es eigentlich bewegen
    selbstnachsteller tut nichts wie soll er arbeiten`,
      q018: `
    ticken wenn ich aufs pedal trete
    ist das klicken normal
    klick von hinten bei jedem tritt
    wie viele klicks bis ruhe ist`,
      q019: `
    seit den neuen backen kommt der hebel ganz hoch und es rastet nichts
    handbremse ziehen stellt nichts nach
    wie bringe ich den nachsteller in gang`,
      q020: `
    werden die backen oder der seilzug von selbst nachgestellt
    stellt die automatik auch das handbremsseil nach
    wo passiert die selbsttätige nachstellung`,
      q021: `
    muss ich zum nachstellen rückwärts fahren
    rückwärts kräftig bremsen damit es nachstellt
    stellt es beim rückwärtsfahren nach`,
      q022: `
    nichts kaputt aber beide seiten weit weg
    warum haben sie sich nicht nachgestellt
    nachsteller in ordnung und doch ein großer spalt`,
      q023: `
    was ist wenn die druckstange fehlt
    bremse ohne druckstange was passiert
    gewindestange fiel beim öffnen heraus
    lose stange in der trommel wo gehört sie hin`,
      q024: `
    stellt sie über die handbremse nach
    nachstellen durch mehrmals hebel ziehen
    handbremse nie benutzt ist sie verstellt`,
      q025: `
    ganz herausgedreht und geht nicht mehr zurück
    nachsteller unter spannung lässt sich nicht zurückdrehen
    hebel weggedrückt und er dreht trotzdem nicht
    zu viel last auf den zähnen`,
      q026: `
    falsch herum gedreht und jetzt sitzt alles fest
    sternrad in die falsche richtung geklickt jetzt blockiert
    festgezogen statt gelöst
    backen aus versehen fest an der trommel`,
      q027: `
    wie viele zähne muss ich zurück
    anzahl klicks zurück bis die trommel frei ist
    wie viel löst ein zahn`,
      q028: `
    wird alle paar tage von selbst stramm
    bremse stellt sich nach dem einstellen von allein fester
    richtig eingestellt und zwei tage später wieder heiß
    stellt sich immer wieder zu weit nach
    warum stellt sie zu weit nach`,
      q029: `
    ein zahn zu viel und es ist stramm
    der letzte klick hat sie zum schleifen gebracht
    war frei bis ich noch einmal gezogen habe`,
      q030: `
    nach dem einstellen zu stramm schleift sich das ein
    kann ich fahren bis sie sich freischleift
    stramm lassen und verschleißen lassen`,
      q031: `
    sternrad federt zurück wenn ich drehe
    dreht nur in eine richtung
    rädchen klickt in eine richtung und geht nicht in die andere`,
      q032: `
    zum spannen nach oben oder nach unten
    welche richtung ist fester
    rechtsgewinde oder linksgewinde am nachsteller
    nachsteller verkehrt herum macht das was`,
      q033: `
    wie viel spalt soll ich lassen
    wie stramm einstellen
    soll es ein bisschen schleifen
    ist leichtes schleifen bei neuen backen richtig
    rad drehen und nachstellen bis es gerade schleift
    leichtes schleifen bei neuen backen ok oder zurückstellen`,
      q034: `
    rad mit dem nachsteller blockiert einmal getreten und wieder frei
    pedal treten und die backen rücken in die mitte
    backen nach dem einstellen nicht in der mitte`,
      q035: `
    neuer seilzug und es rollt immer noch
    seilzug so stramm wie es geht und es kriecht`,
      q036: `
    handbremse zuerst am hebel oder an der trommel einstellen
    was wird zuerst eingestellt
    erst die backen und dann den seilzug
    reihenfolge beim einstellen von backen und handbremse`,
      q037: `
    von hand frei und doch heiß nach der fahrt
    dreht frei auf den böcken und kocht auf der straße
    nichts schleift am wagenheber aber es wird heiß`,
      q038: `
    rauch dann wieder gut als es abgekühlt war
    eingesperrter druck oder seilzug oder zylinder
    heiß und fest dann frei wenn kalt`,
      q039: `
    wie leicht soll das rad drehen
    wie schwer ist zu schwer
    ist es normal dass es von hand etwas schleift
    kraft am reifen um das rad zu drehen
    wie oft soll es sich drehen wenn ich es anschubse
    rad dreht schwer wie viel ist zu viel
    kilo um das rad zu drehen
    ein rad läuft länger nach als das andere
    schwer von hand zu drehen aber es rollt beim fahren`,
      q040: `
    eine seite warm die andere eiskalt
    ist es normal dass eine trommel heißer ist
    temperatur links und rechts verschieden`,
      q041: `
    wie heiß ist zu heiß für eine trommel
    welche temperatur ist nach der fahrt normal
    mit dem infrarotthermometer gemessen
    grad celsius der trommel nach der fahrt`,
      q042: `
    bremsen ziehen beim fahren an und sind nach einer stunde frei
    stramm wenn warm frei wenn kalt alle räder
    schleift immer mehr je weiter ich fahre`,
      q043: `
    neue backen und ein rad zu heiß ist das einlaufen
    heiß nach der ersten fahrt mit neuen backen
    schleift seit neuen backen und trommeln
    bremsen überholt und jetzt schleifen und rauchen beide
    neue backen haben das schleifen schlimmer gemacht`,
      q044: `
    handbremse geht nie ganz auf
    beläge nur innen verschlissen und wieder heiß`,
      q045: `
    geruch wenn ich an der ampel halte
    gestank von einem rad was prüfe ich zuerst
    verbrannter geruch nach dem bremsen`,
      q046: `
    backen von den auflagen gerutscht
    backe von ihrer auflage gesprungen`,
      q047: `
    kilometerweit mit angezogener handbremse gefahren was ist kaputt
    vergessen die handbremse zu lösen
    handbremse war beim fahren halb angezogen`,
      q048: `
    bremse hängt nach jedem halt eine minute
    löst direkt nach dem anhalten nicht`,
      q049: `
    hält bergab aber nicht bergauf
    rollt in der einfahrt rückwärts aber nicht vorwärts
    handbremse gut in einer richtung`,
      q050: `
    blockiert vorwärts dreht rückwärts ohne druck
    sperrt in eine richtung`,
      q051: `
    warum ist sie vorwärts stärker
    welche backe arbeitet mehr und warum
    warum kommt es auf die richtung an
    warum ist die bremse rückwärts schwächer`,
      q052: `
    klemmt nachdem ich rückwärts gefahren bin
    rückwärts ausgeparkt und dann vorwärts blockiert
    heiß nach dem rückwärts rausfahren
    trommel blockiert nach dem rückwärtsfahren
    zurückgesetzt und dann war das rad fest
    sie blockiert wenn ich rückwärts in die garage fahre`,
      q053: `
    hält wenn ich im rollen ziehe
    erst angehalten dann gezogen und es kriecht`,
      q054: `
    bremse rückwärts stärker
    schlecht vorwärts gut rückwärts`,
      q055: `
    auflaufend heißt berührt zuerst
    woran erkenne ich die auflaufende backe
    was ist der unterschied zwischen auflaufend und ablaufend`,
      q056: `
    auf dem bock rückwärts leichter zu drehen als vorwärts
    von hand vorwärts schwer und rückwärts frei`,
      q057: `
    ist es normal dass die vordere backe mehr verschleißt
    eine backe dünn die andere dick
    auflaufende backe viel mehr verschlissen normal
    vordere backe ganz runter die andere fast neu`,
      q058: `
    belag ist der länge nach keilförmig
    oben dicker als unten
    schräg abgenutzt ein ende dick`,
      q059: `
    obere hälfte bis aufs metall der rest ist gut
    nur oben durchgeschliffen`,
      q060: `
    eine seite vom auto verschleißt die backen schneller
    backen links runter rechts gut`,
      q061: `
    an einer kante verschlissen und macht geräusche
    äußere kante vom belag dünn`,
      q062: `
    backen vertauschen damit sie gleichmäßig verschleißen
    die weniger verschlissene backe nach vorne`,
      q063: `
    erstes bremsen am morgen packt zu
    giftig wenn kalt und feucht ist das gefährlich`,
      q064: `
    rad nach regen fest dann mit einem knacks frei
    hing nach nassem wetter einen augenblick fest`,
      q065: `
    hinterrad rutscht bei regen
    hinterräder blockieren sobald es nass ist
    warum blockiert ein hinterrad bei nässe`,
      q066: `
    neue backen beißen zu stark
    gibt sich das zupacken beim einlaufen
    bremse zu giftig nach neuen backen`,
      q067: `
    packt zu und pulsiert ist die trommel unrund
    nach dem überholen packt eine seite zu`,
      q068: `
    lauter knall wenn ich nach dem rückwärtsfahren vorwärts fahre und bremse
    schlag beim ersten halt nach dem richtungswechsel`,
      q069: `
    knacken beim ersten tritt nach dem parken
    knacks aus der trommel beim ersten treten`,
      q070: `
    glänzende backen abschleifen
    trommel hupt was ist das
    klingt beim anhalten wie eine hupe`,
      q071: `
    nieten schleifen an der trommel
    blanke stelle wo metall berührt
    was berührt in der trommel metall auf metall`,
      q072: `
    trommelbremse quietscht was hilft
    quietschen bei jedem bremsen
    quietschen abstellen`,
      q073: `
    geräusch wenn ich das pedal loslasse
    quietschen beim loslassen
    knarren beim lösen der bremse`,
      q074: `
    schabt mit dem fuß nicht mit der handbremse
    geräusch nur mit dem pedal`,
      q075: `
    klappern aus der trommel auf unebener straße
    etwas rappelt in der bremse auf schlechten straßen`,
      q076: `
    schleift an einer stelle ist es die trommel oder das radlager
    hakt an einer stelle wenn ich drehe
    kratzt bei jeder umdrehung an einer stelle`,
      q077: `
    backen in ordnung gebracht und jetzt zieht es zur anderen seite
    zog nach links jetzt nach rechts`,
      q078: `
    auto zieht zur seite seit ein zylinder gewechselt wurde
    zieht schief nach zylinderreparatur`,
      q079: `
    trommel ab jemand tritt und eine backe bleibt stehen
    nur eine seite vom zylinder bewegt sich
    ein kolben bewegt sich der andere nicht`,
      q080: `
    prüfstand zeigt an einem rad wenig
    nichts an einem rad mit fuß und hebel
    niedriger wert an einem hinterrad nach dem einstellen des seilzugs`,
      q081: `
    zu großer unterschied links rechts am bremsenprüfstand
    durchgefallen wegen ungleicher bremswirkung
    ungleichheit prozent bei der prüfung
    linkes rad bremst auf den rollen halb so viel wie das rechte`,
      q082: `
    alles ersetzt und hält immer noch nicht am berg
    nachsteller am ende und es rollt trotzdem`,
      q083: `
    nagelneue trommel ist nicht rund
    neue trommel misst sich über kreuz verschieden
    schlagen von einer neuen trommel`,
      q084: `
    ist die riefe zu tief
    rille in der der fingernagel hängen bleibt
    beide trommeln gleich ausgedreht
    wie viel darf man ausdrehen
    trommel ausdrehen oder neue trommel`,
      q085: `
    woran erkenne ich ob die trommel fertig ist
    trommel sieht mit dem auge gut aus
    trommel messen wo und wie
    kann ich mit dem maßband messen`,
      q086: `
    wie unrund darf eine trommel sein
    schleift nach dem pumpen hier und da
    0,1 mm unrund ist das zu viel`,
      q087: `
    was ist das nasse hinter der bremse
    braunes öl oder klare flüssigkeit
    fett oder bremsflüssigkeit in der trommel
    undicht an der ankerplatte welche flüssigkeit`,
      q088: `
    kolben aus dem radzylinder gefallen
    kolben kommt zu weit heraus
    kolben aus versehen herausgedrückt`,
      q089: `
    radzylinder undicht seit den neuen backen
    zu stramm eingestellt und den zylinder kaputt gemacht`,
      q090: `
    weich seit ich den radzylinder gewechselt habe
    ist es luft oder die einstellung
    pedal schwammig was ist das`,
      q091: `
    pedal tief und hauptzylinder ist neu
    können schlecht eingestellte trommeln das pedal lang machen
    langer weg bei jedem bremsen`,
      q092: `
    pedal immer noch halb unten obwohl alles neu ist
    dreimal entlüftet nicht besser`,
      q093: `
    der erste tritt am tag geht durch
    morgens pedal tief danach gut`,
      q094: `
    trommel stramm über den backen aber pedal tief
    grat täuscht vor dass sie eingestellt ist`,
      q095: `
    zweiter tritt kommt hoch
    nach dem pumpen gut brauche ich neue backen
    tiefes pedal wird beim pumpen besser
    pedal erst fast am boden und beim zweiten mal gut`,
      q096: `
    rubbeln ist es vorne oder hinten
    pedal pulsiert bei leichtem bremsen
    pedal schlägt gegen den fuß`,
      q097: `
    ist das seil gelängt oder sind die backen verschlissen
    hebel schlaff was ist das
    seilzug oder backen woran erkenne ich das`,
      q098: `
    rollt beim anfahren am berg zurück bei ganz gezogenem hebel
    fest angezogen und rollt trotzdem
    hält auf der rampe nicht
    auto rollt in der einfahrt
    hebel ganz oben und der wagen rollt trotzdem`,
      q099: `
    zu viele rasten am hebel
    normale anzahl rasten
    vierzehn rasten bis sie hält
    nur zwei rasten
    rasten von drei auf sieben verändert
    werkstatt hat die anzahl der rasten verändert`,
      q100: `
    am rollenprüfstand durchgefallen aber räder blockieren auf der straße
    wirkung der feststellbremse gering mit neuen backen
    neue backen bei der handbremsprüfung durchgefallen`,
      q101: `
    gut in der ebene aber nicht am steilen
    hält auf einem sehr steilen berg nicht`,
      q102: `
    eingefrorene handbremse bei kälte
    bremse löst nach einer frostnacht nicht
    handbremse geht nicht auf`,
      q103: `
    erst gut dann wieder schlaff
    handbremse nach einmal ziehen locker geworden`,
      q104: `
    gar keine handbremse
    hebel geht hoch ohne wirkung
    wo anfangen bei einer toten handbremse
    handbremse geht weit hoch und tut nichts`,
      q105: `
    ein hinterrad hält und das andere dreht
    handbremse wirkt links nicht rechts
    hebel ziehen und nur ein rad blockiert`,
      q106: `
    wippe unter dem auto geht nicht zurück
    ausgleich bleibt nach dem lösen schief stehen
    seile gehen nicht von selbst zurück`,
      q107: `
    bleibt fest nachdem es am berg stand
    bremse hält nach dem lösen am hang bis ich zurückrolle`,
      q108: `
    welche steigung muss sie nach vorschrift halten
    steigung in prozent für die feststellbremse`,
      q109: `
    beide hinterräder rutschen blockiert nach langem stehen
    wenig spiel dann fest nach dem einlagern`,
      q110: `
    ein rad schleift nach zwei monaten stehen
    einzelnes rad fest nach dem einlagern`,
      q111: `
    wie viele kilometer habe ich noch
    laufleistung der beläge
    wann muss ich sie wechseln
    wie lange halten die backen noch`,
      q112: `
    reichen 2 mm
    backen dünn können sie bis zum sommer bleiben
    wie dünn dürfen sie sein
    nieten fast zu sehen
    belag fast bis auf die nieten herunter
    kein belag mehr auf der backe
    kein material mehr auf einer backe`,
      q113: `
    bremsen nie geöffnet handbremse gut
    viele kilometer und trommeln nie ab
    handbremse stark trommeln nie geöffnet so lassen
    trommeln seit jahren nicht ab ist das in ordnung`,
      q114: `
    was ist die eingegossene zahl in der trommel
    MAX auf der trommel was bedeutet das
    wo lese ich das größte zulässige maß
    auf der trommel steht max`,
      q115: `
    backe verkehrt herum macht das was
    wie sieht man dass eine backe falsch herum ist`,
      q116: `
    lange backe nach vorne oder nach hinten
    kommt der größere belag nach vorne
    linke und rechte backen gleich
    wie unterscheide ich die backen
    welches ende der backe ist oben`,
      q117: `
    federn sehen gleich aus welche gehört wohin
    wie herum wird es zusammengebaut
    wo wird welche feder eingehängt
    druckstange welches ende nach vorne
    hat der nachsteller ein links und ein rechts`,
      q118: `
    angst vor dem zusammenbau
    angst vor den federn
    fotos gemacht und trotzdem ratlos`,
    },
  },

  /* ui/ask/texts.ts */
  askTexts: {
    start: { title: 'Start', text: 'Sieben Wege hinein, je nachdem, was nicht stimmt.' },
    apply: {
      title: 'Betätigen: wie sie arbeitet',
      text: 'Pedal treten und jede Kraft sehen, in beiden Richtungen.',
    },
    wear: {
      title: 'Verschleiß: verschleißen und klicken lassen',
      text: 'Weiterfahren, Tritt für Tritt, bis an die Grenzen.',
    },
    drumOff: {
      title: 'Trommel ab: was sie hält',
      text: 'Ein paar einfache Fragen, dann die Reihenfolge zum Lösen.',
    },
    park: {
      title: 'Parken: Rasten und Gefälle',
      text: 'Wo die Rasten bleiben und welches Gefälle sie hält.',
    },
    inspect: {
      title: 'Prüfen: sind diese Teile noch gut?',
      text: 'Messwerte eingeben, Urteil lesen.',
    },
    newShoes: {
      title: 'Neue Backen: einbauen und einstellen',
      text: 'Der Reihe nach, mit den Maßen zum Einstellen.',
    },
    faults: {
      title: 'Fehler: was jeder bewirkt',
      text: 'Messwerte in Ordnung und mit dem Fehler.',
    },
    own: { title: 'Meine Bremse', text: 'Die Maße der eigenen Bremse eingeben.' },
    questions: { title: 'Fragen', text: 'Alle Fragen mit ihren Antworten.' },
    lessons: {
      title: 'Lektionen',
      text: 'Eine Frage, eine Vermutung, dann die Bremse selbst; und ein Vortrag, der von selbst abläuft.',
    },
    see: {
      title: 'Was ich sehe',
      text: 'Antippen, was auffällt: wahrscheinliche Ursachen und die billigste nächste Prüfung.',
    },
    vary: {
      title: 'Was wäre, wenn: eines ändern',
      text: 'Jedes Maß über einen Bereich, was daraus folgt als Kurve, und die Bremse zu jedem Punkt.',
    },
    apart: {
      title: 'Der Nachsteller, zerlegt',
      text: 'Seine Teile von beiden Seiten, der Reihe nach zusammengesetzt, und was jede Feder tut.',
    },
    compare: {
      title: 'Vergleichen: zwei Bremsen, ein Pedal',
      text: 'Vorwärts gegen rückwärts, heiß gegen kalt, neu gegen verschlissen, Zahn für Zahn, nebeneinander.',
    },
    kind: {
      title: 'Welche Bauart ist Ihre?',
      text: 'Bilder von Bauarten und Nachstellern, und was sich übertragen lässt.',
    },
    back: {
      title: 'Durch das Loch zurückstellen, Schritt für Schritt',
      text: 'Erst anheben, dann zurück: was man sieht und spürt, was ein Zahn bringt, und Wege ohne Loch.',
    },
    apart2: {
      title: 'Zerlegen, der Reihe nach',
      text: 'Teil für Teil: welches Werkzeug, wie herum, was wegfliegen kann, worauf zu achten ist.',
    },
    together: {
      title: 'Zusammenbauen, der Reihe nach',
      text: 'Teil für Teil, jedes mit seiner Prüfung vor dem nächsten.',
    },
    set: {
      title: 'Neue Backen einstellen, der Reihe nach',
      text: 'Lehre, Tritte bis Ruhe ist, Hebel am Anschlag, Seilzug zuletzt, Rasten; wie schwer ein Rad drehen darf.',
    },
    bed: {
      title: 'Einlaufen lassen',
      text: 'Was zehn Bremsungen bewirken und was nicht; die erste Fahrt, und wenn es nicht weggeht.',
    },
    drag: {
      title: 'Sie schleift oder wird heiß',
      text: 'Ein Rad oder alle, wann und wie: antippen, was Sie sehen.',
    },
    pedal: {
      title: 'Langes oder weiches Pedal',
      text: 'Weit, federnd, sinkend, pulsierend: antippen, was Sie spüren.',
    },
    lever: {
      title: 'Hebel geht zu weit, hält nicht',
      text: 'Rasten, Halten, eine Richtung oder beide: antippen, was Sie sehen.',
    },
    braking: {
      title: 'Sie bremst schlecht: schwach, packt zu, zieht schief',
      text: 'Mit oder ohne Werte vom Rollenprüfstand.',
    },
    noise: {
      title: 'Sie macht ein Geräusch',
      text: 'Welches Geräusch, und wann; das Geräusch selbst wird nicht berechnet.',
    },
    free: {
      title: 'Schleift sie sich frei, wie weit, wie heiß?',
      text: 'Für die Bremse auf der Werkbank berechnet.',
    },
  },

  /* ui/ask/words.ts */
  askWords: {
    drumDrumsBrakeDrumDrum:
      'trommel, trommeln, bremstrommel, bremstrommeln, trommelbremse, trommelbremsen, hintere trommel, bremsnabe, topf, bremstopf, tromel, tommel, drum',
    boreInsideDiameterInnerDiameter:
      'bohrung, innendurchmesser, innen durchmesser, innenmaß, durchmesser, durchmeser, durchmeßer, dm, innenwand, größe der trommel',
    sweptFaceBrakingSurfaceFriction:
      'reibfläche, bremsfläche, lauffläche, reibflächen, bearbeitete fläche, kontaktfläche, trommelfläche, fläche der trommel, harte stellen, harte stelle',
    lipRidgeWearRidgeRust:
      'grat, verschleißgrat, rostgrat, rostrand, stufe am rand, rand der trommel, wulst, eingelaufen, kragen, absatz, absatz in der trommel, trommelrand, verschlissene kante, kante der trommel, stufe in der trommel',
    backingPlateBackplateBack:
      'ankerplatte, ankerblech, bremsträger, bremsträgerplatte, bremsplatte, trägerblech, bremsankerplatte, spritzblech, rückseite der bremse, blech hinten, trägerplatte, blech hinter der bremse',
    accessHoleInspectionHoleAdjusting:
      'schauloch, inspektionsloch, einstellloch, sichtloch, schlitz in der platte, gummistopfen, stopfen, gummistöpsel, stopfen hinten, loch, fenster, öffnung in der platte, loch hinten, stopfenloch, schlitz hinten, schlitz, guckloch, öffnung hinten, kleines loch, ovales loch, loch in der rückseite',
    hubBossSpigotRegisterMating:
      'nabe, radnabe, zentrierung, zentrierbund, anlagefläche, flansch, mitte der trommel, trommelmitte, achszapfen, achsstummel',
    retainingScrewLocatingScrew:
      'halteschraube, sicherungsschraube, senkschraube, trommelschraube, nabenmutter, kronenmutter, splint, sicherungssplint, achsmutter, fettkappe, große mutter',
    jackingHoleThreadedHoleExtractor:
      'abdrückgewinde, gewindeloch, abdrückloch, abdrückschraube, abdrückschrauben, abdrückbohrung, schrauben eindrehen, gewinde in der trommel, gewindebohrung, löcher mit gewinde, schrauben in die trommel, schrauben in der trommel, gewinde in der stirnseite, zwei gewindelöcher, gewindelöcher, zwei löcher in der trommel, schraublöcher, m8, schraubenlöcher in der trommel',
    bearingWheelBearingHubBearing:
      'radlager, lager, nabenlager, radlagern, lagerspiel, nabenspiel, wackliges rad, radspiel, spiel in der nabe, wackelt oben und unten, am rad wackeln',
    shoeShoesBrakeShoeShoe:
      'backe, backen, bremsbacke, backensatz, bremsbackensatz, bremsbacken, bremsklotz, bremsklötze, klotz, klötze, bremsschuh, bremsschuhe, baken, bremsbaken, bremsbackn',
    liningLiningsLinerBrakeLiner:
      'belag, beläge, bremsbelag, bremsbeläge, reibbelag, reibmaterial, reibbeläge, fleisch, belege, belagmaterial, bremsbelege, asbest, material, trommelbelag, restbelag, backenbelag, belagdicke, belagstärke, belags',
    shoeTablePlatformShoeFrame:
      'kranz der backe, backenkranz, backenkörper, blankes metall, bis aufs metall, auf dem metall, bis auf den träger, metall auf metall, auf den nieten, niete, nieten, metallträger, belagträger, metall zu sehen, nieten zu sehen, nietköpfe',
    leadingLeedingSelfEnergising:
      'auflaufend, auflaufende, auflaufenden, selbstverstärkung, selbstverstärkend, nach vorne zeigend, primär, primärbacke, erste backe, vordere backe, backe vorne, backe nach vorne, auflaufbacke',
    trailingRecedingRearFacing:
      'ablaufend, ablaufende, ablaufenden, nicht selbstverstärkend, sekundär, sekundärbacke, ablaufbacke, hintere backe, backe hinten, backe nach hinten, zweite backe',
    arcedArcArcdRadiusedGround:
      'angepasst, radius, radius angepasst, auf radius, radius geschliffen, kontur, passung der backe',
    anchorPinAnchorPivotPost:
      'lagerbolzen, ankerbolzen, drehpunkt, drehbolzen, unterer bolzen, gelenkbolzen',
    abutmentAnchorBlockBottom:
      'widerlager, abstützung, stützlager, schwimmendes ende, gleitende abstützung, stützflächen',
    springSpringsReturnSpring:
      'feder, federn, rückzugfeder, rückholfeder, rückzugsfeder, rückzugfedern, obere feder, untere feder, große feder, fedder, rückstellfeder, spiralfeder, zugfeder, rückholfedern',
    holdDownSteadySpringSteady:
      'niederhalter, haltefeder, haltestift, stift und teller, federteller, backenklammer, druckfeder und teller, vierteldrehung, nagel, niederhaltern, niederhaltefeder, niederhaltestift, niederhalteklammer, haltestift mit feder, nagelding, halteklammer, stift mit feder, klammern am niederhalter, niederhalterfeder, niederhalterfedern, backenhalter',
    raisedPadLandLandsLedge:
      'auflage, auflagen, gleitfläche, gleitflächen, auflagefläche, auflageflächen, anlagepunkt, sechs erhebungen, auflagen der ankerplatte, auflage der ankerplatte, rille in der ankerplatte, eingelaufene ankerplatte, kerbe in der ankerplatte, kerbe in der auflage, hakt in einer kerbe, backenauflagen, stellen wo die backe gleitet, reibstellen, gleitstellen, auflagen an der platte, wo die backe gleitet',
    wheelCylinderWheelCylSlave:
      'radzylinder, radbremszylinder, nehmer, nehmerzylinder, bremszylinder, zylinder, zilinder, zylnder, radzilinder, rbz, radzylindern',
    pistonPistonsPlungerBucket: 'kolben, kölbchen, stößel, bremskolben',
    sealSealsCupSealRubbers:
      'dichtung, dichtungen, manschette, manschetten, dichtlippe, staubkappe, staubmanschette, faltenbalg, staubschutz, reparatursatz, gummi, gummimanschetten, gummikappe, staubkappen, gummimanschette, topfmanschetten',
    bleedNippleBleedScrewBleeder:
      'entlüfternippel, entlüftungsschraube, entlüfter, entlüfterschraube, entlüfterventil, entlüftungsnippel, entlüftungsventil, nippel, entlüfternipel, entlüftungsbolzen, entlüfterschrauben, nippel aufgemacht, entlüfterstopfen',
    brakeFluidFluidBrakeOil:
      'bremsflüssigkeit, flüssigkeit, bremsöl, hydrauliköl, brühe, dot 4, dot 3, nachfüllen, stand niedrig, hydraulikflüssigkeit, dot4, dot3, dot5',
    hoseFlexiFlexiHoseFlexible:
      'schlauch, schläuche, bremsschlauch, bremsschläuche, gummileitung, gummischlauch, flexschlauch, schlauchleitung, flexible leitung, biegsame leitung, flexleitung, druckschlauch, hinterer schlauch, flexibler bremsschlauch, schlauch zugequollen',
    masterCylinderMasterMC:
      'hauptbremszylinder, hauptzylinder, hbz, geberzylinder, bremspumpe, ausgleichsbohrung, nachlaufbohrung, druckstange am pedal zu lang, pedalstange, einstellung der pedalstange, geber, neuer hauptzylinder, hz, stößelstange am pedal',
    adjusterAdjustersSelfAdjuster:
      'nachsteller, nachstellern, selbstnachsteller, automatischer nachsteller, nachstellautomatik, selbsttätige nachstellung, selbstnachstellung, nachstelller, nachsteler, nachstellvorrichtung, einsteller, nachstellung, nachstelleinheit, nachstellmechanik, nachstellen, einstellung, nachstellmechanismus, dings, gestängesteller, spanner, automatische nachstellung, nachgestellt, eingestellt',
    strutSpreaderBarSpreaderPush:
      'druckstange, spreizstange, spreize, schubstange, stößelstange, querstange, verbindungsstange, strebe, lange stange, stange zwischen den backen, strebe zwischen den backen, querstrebe, stange quer, nachstellstange, nachstellerstange, drucksteg, drückstange',
    toothedLeverPawlPallPaul:
      'zahnhebel, klinke, sperrklinke, rastklinke, klincke, rasthebel, zahnsegment, segment, stufennocken, sperre, riegel, nachstellerhebel, nachstellhebel, klicker, kleiner hebel, federklinke, ärmchen, kleiner arm, kleinen hebel, dünner hebel, finger am nachsteller, kleine klinke, hebelchen, rastding, kleine sperre, sperrhebel, zahnhebels, hebel der sperrt, klammer hinter dem nachsteller, plättchen, klammer, eine art blech, haltehebel',
    toothTeethTheethSerration: 'zahn, zähne, zähnen, verzahnung, zahn am rad',
    starWheelStarStarwheelStar:
      'sternrad, stern, sternmutter, sternnachsteller, nachstellrad, zahnrad, ritzel, rändelmutter, zahnmutter, sternrads, stellrad, rädchen, kleines rad, zahnrädchen, rad mit zähnen, sternrädchen, nachstellritzel, einstellrad',
    screwStrutThreadedRodAdjuster:
      'gewindedruckstange, gewindestange, nachstellschraube, schraube und hülse, spannschloss, gewindeteil, gewinde',
    wedgeAdjustingKeySlidingWedge: 'keil, nachstellkeil, gleitkeil, keilnachstellung',
    hotLockBimetalBiMetal:
      'heißsperre, bimetall, bi metall, thermoklammer, bimetallstreifen, temperatursperre',
    lostMotionSlotPlayEnd: 'totgang, leerweg im langloch, spiel der druckstange, langloch, leerweg',
    backOffBackItOff:
      'zurückstellen, zurückgestellt, zurück stellen, stelle zurück, lockern, lockerer stellen, gelockert, hineindrehen, zurückdrehen, zurück drehen, eingedreht, zurückgedreht, einfahren lassen, zurücksetzen, ganz zurücksetzen, auf null stellen, entspannen, abdrehen lassen, zurücklassen, nachsteller zurückstellen, nachsteller lösen, nachsteller lockern, ganz hinein, backen lockern, lösen, losmachen, nachlassen, nachsteller aufdrehen, losdrehen, entlasten, reindrehen, zurückschrauben, herunterdrehen, zusammenfahren, backen lösen, backen zurückholen, zurückschieben, kleiner stellen, rückwärts drehen, backen zurückstellen, entspannt, backen zurück, rein drehen, ganz zurückgestellt, nachsteller ganz rein, nachsteller ganz zurück',
    takeUpTakesUpTighten:
      'nachstellt, stellt nach, nachziehen, herausdrehen, herausgedreht, enger stellen, hochdrehen, stramm stellen, auseinanderdrehen, rausdrehen, spiel aufnehmen, nimmt spiel auf, spannen, strammer stellen, fester stellen, festziehen, fester drehen, gespannt, spannt, weiter herausdrehen, strammziehen, weiter auseinander',
    shoeGaugeSettingGaugeDrum:
      'backenlehre, einstelllehre, trommellehre, voreinstellung, leichtes schleifen, schleift leicht, leicht schleifend, ganz leicht schleifen, ein paar klicks zurück, fest und dann zurück, grundeinstellung, erste einstellung',
    centraliseCentralizeCentring:
      'zentrieren, zentriert, ausmitteln, mittig, backen zentrieren, backen mittig stellen, ausrichten, sitzt zu einer seite',
    clearanceGapRunningClearance:
      'lüftspiel, spalt, spiel im lauf, backe zur trommel, luftspalt, abstand dazwischen, spaltmaß, abstand, luft dazwischen, wie nah',
    overAdjustedOveradjustedOver:
      'zu weit nachgestellt, überstellt, stellt zu weit nach, zu fest gezogen, zu fest eingestellt, zu stramm, zu weit außen, zu weit eingestellt, ganz herausgedreht, stellt immer weiter nach, überstellen, zieht sich immer fester, stellt sich selbst fester, wird von selbst stramm, werden von selbst stramm, von selbst strammer, stellen sich fester, stellen sich von selbst fester, stellt sich von selbst fester, selbst fester, wird strammer, stellt zu viel nach, jedes mal strammer, immer strammer, immer fester, zu straff, zu viel gespannt, zu weit gestellt',
    handbrakeHandBrakeParking:
      'handbremse, hand bremse, feststellbremse, parkbremse, standbremse, festellbremse, fußfeststellbremse, notbremse, feststelbremse, handbr, hb, hand brems, hanbremse, handbremmse, handbrems, haltebremse, handbremsen, parkbrems, fsb, feststell bremse, park bremse, stand bremse, fuß feststellbremse, fußfeststeller, feststellpedal, handbremsgriff, handbremsanlage, feststellbremsen, handbremshebels, handbremswirkung',
    handLeverLeverHandleLeaver: 'handbremshebel, hebel, griff, hebl',
    notchNotchesHandbrakeClick:
      'raste, rasten, handbremsklick, klicks an der handbremse, klicks am hebel, klicks des hebels, klicks der handbremse, klicks hoch, klicks bis, anzahl klicks',
    pullsUpToTheRoof:
      'bis unters dach, bis zum dach, bis an die decke, fast senkrecht, senkrecht, kommt ganz hoch, kommt hoch herauf, geht ganz hoch, ganz nach oben, zieht zu weit hoch, geht zu weit, kommt zu weit hoch, zu hoch, weg zu groß, zu viele, sehr hoch, kommt hoch, geht hoch, zu weit hoch, weit oben, meilenweit hoch, himmelhoch, zu weit oben, viel zu hoch, ein langes stück, zieht hoch, hoch oben, weit hoch, bis zum himmel, ganz oben, zu viel weg am hebel, höher, viele klicks, jede menge klicks, ganz hochgezogen, ganz hochziehen',
    parkingLeverHandbrakeArmLever:
      'bremshebel, handbremsarm, hebel an der backe, betätigungshebel, umlenkhebel, backenhebel, hebel der hinteren backe, handbremshebel in der trommel, hebel in der trommel, arm der feststellbremse, drehpunkt des hebels, hebel innen, arm in der trommel, handbremshebel an der backe, arm an der backe, handbremsärmchen, arm innen in der trommel, hebelarm, hebelarm in der trommel, schwenkarm',
    offItsStopLeverStop:
      'liegt nicht am anschlag, hebelanschlag, anschlagnase, nase am hebel, geht nicht ganz zurück',
    cableCablesHandbrakeCable:
      'seilzug, seilzüge, handbremsseil, bremsseil, innenseil, seilhülle, hülle, zughülle, seil, seile, bowdenzug, drahtseil, züge, bowdenzüge, gestänge, handbremszug',
    slackLooseFloppyBaggyNo:
      'schlaff, lose, schlackert, labbrig, keine spannung, locker, durchhängt, gelängt, längt sich, ausgeleiert, hängt durch',
    equaliserEqualizerCompensator:
      'wippe, ausgleich, ausgleichswippe, ausgleichsbügel, waagebalken, ausgleichshebel, y stück, ausgleichsbalken, seilverteiler, querstück unter dem auto, t stück, verteilerstück',
    holdHoldsHoldingGripGrips: 'halten, hält, haltend, greifen, greift, haltekraft',
    notCatchingWontCatchNot:
      'fasst nicht, packt nicht, greift nicht, funktioniert nicht, wirkt nicht, tut nicht, ohne funktion, will nicht greifen, lässt los, ließ los, keine handbremse, keine feststellbremse, bleibt nicht fest, will nicht halten, hält das auto nicht, hält nicht',
    crookedAskewTiltedAtAn: 'schief, schräg, gekippt, im winkel, verkantet, nicht gerade',
    rollsRollsAwayRollAway:
      'rollt, rollt weg, wegrollen, zurückrollen, rollt zurück, kriecht, kriechen, rutscht weg, schleicht, weggerollt, rollt davon, rollt vorwärts, bewegt sich, rollend, rollt los, rollen, haut ab, fängt an zu rollen, sich bewegt, kriechend, rollt ab, rollt von selbst rückwärts, rückrollen, zurück rollen, zurückgerollt',
    slopeHillInclineGradientGrade:
      'gefälle, berg, steigung, neigung, hang, rampe, einfahrt, steil, bergauf, bergab, nase oben, nase unten, nach unten stehend, nach oben stehend, berge, böschung, anhöhe, abschüssig, steigungen, geneigt, hügelig, parkhausrampe, schräge, brückenauffahrt, passstraße',
    pedalBrakePedalPeddlePetal: 'pedal, bremspedal, pedall, petal, bremspedall',
    longPedalLowPedalPedal:
      'langes pedal, tiefes pedal, pedal tief, geht weit, geht weit runter, geht ein langes stück, langes stück runter, halber weg, halb, halb unten, fast bis zum boden, bis zum boden, auf dem boden, weit unten, greift spät, viel pedalweg, zu viel weg, zu langer weg, leerweg am pedal, tief unten, langer weg, tief, geht tief runter, steht tief, weg ist länger geworden, pedalweg zu lang, bis auf den teppich, bis aufs bodenblech, bis auf die matte, schlägt am boden an, schlägt auf dem teppich an, ganz durch, viel pedal, beißt tief, fasst spät, bevor es greift, bevor es beißt, bevor etwas passiert, bevor sie etwas tut, bevor die bremse wirkt, beißt kurz vor dem boden, geht durch, fast durch, zu weit runter, bis ganz unten, viel weg, pedal weit, pedal fällt durch, tiefe bremse, kurz vor dem boden, nahe am boden, langer pedalweg, oben nichts, fast auf dem boden, bis teppich, bis boden, bis aufs blech',
    spongySpungySoftSpringyMushy:
      'schwammig, schwamig, weich, federnd, matschig, teigig, schwabbelig, pampig, federt, elastisch, weiches, nachgiebig, schwamm, wie ein schwamm, wie schwamm, wie pudding, wackelpudding, gummiartig, wie auf einen luftballon treten',
    woodenHardPedalRockHard:
      'hölzern, hartes pedal, steinhart, wie ein stein, steifes pedal, pedal ist hart, pedal hart, pedal fühlt sich tot an, pedal steif, hart wie stein, hart wie ein stein, wie beton, schweres pedal, ziegelstein, steife bremse, sehr fest treten, sehr fest drücken, fest drücken, fest treten, kräftig treten, voll reintreten, viel kraft, jede menge kraft, große kraft, mit beiden füßen, wie holz, pedal bretthart',
    sinksSinkingDropsSlowlyCreeps:
      'sinkt, sinken, fällt langsam, kriecht nach unten, gibt nach, geht langsam runter, langsam nach unten, sackt ab, sinkt bis zum boden, geht an der ampel runter, pedal sackt, fällt langsam ab, fällt weg, geht immer tiefer, bleibt nicht oben, kriecht bis zum boden, langsam bis zum boden, geht von allein runter, geht langsam bis zum boden, sinkt langsam',
    pulsingPulsatesPulsatePulsation:
      'pulsiert, pulsieren, pulsierend, pulsierendes, rubbeln, rubbelt, rubeln, pedal schlägt zurück, schlägt zurück, schubweise, pocht, klopft am fuß, pedal zittert, pedal vibriert, vibration, vibriert, wackelt, pulsiren, bremsrubbeln, hüpft, pedal auf und ab, zittert, zittern, vibrieren, vibrationen, flattern, ruckelig, pedal hüpft, stößt, stöße, drückt den fuß zurück, zurückgedrückt, wummert, wummern, pedal springt',
    pumpPumpedPumpingPumpIt:
      'pumpen, gepumpt, pumpe, mit pumpen, aufpumpen, aufgepumpt, mehrmals, zweiter tritt, noch einmal treten, zweimal treten, zweimal pumpen, zweimal drücken, beim zweiten mal, zwei pumper, zweites treten, zweites pumpen, zweiter versuch, zweiter stoß, zweimal getreten, ein paar mal pumpen, mehrmals treten, ein paar mal treten, pumpt auf, dritter tritt',
    pressPushStepOnStamp:
      'treten, drücken, tritt auf, stampfen, betätigung, drauftreten, halb treten',
    grabGrabsGrabbyBitesSnatch:
      'packt zu, zupacken, giftig, beißt, reißt an, ruckartig, bissig, scharf, krallt, übereifrig, verkeilt sich, blockiert beim bremsen, räder blockieren beim bremsen, rutscht beim bremsen, zupackend, empfindlich, beißen, zu scharf, bissige, heftig, blockiert zu früh, blockiert leicht, blockiert zu leicht, zu empfindlich, überempfindlich, wirft mich nach vorn, warf mich nach vorn, brutal, aggressiv, ruckt, räder blockieren, räder machen zu, blockiert das rad, rutschen, rutscht bei nässe, packt hart zu, überbremst',
    weakPoorNoBrakesLow:
      'schwach, schlecht, keine bremse, wenig kraft, kein biss, langer bremsweg, träge, nutzlos, hoffnungslos, müll, taugt nichts, bremst nicht, bremsen nicht, schlechte bremsen, geringe bremskraft, kraftlos, jämmerlich, unwirksam, geringe wirkung, hält nicht an, kommt nicht zum stehen, bleibt nicht stehen, hält kaum an, wird kaum langsamer, bremst kaum, braucht ewig zum anhalten, lange zum anhalten, anhalteweg, nicht stark, wenig wirkung, niedriger wert, bremskraft, wirkungslos, mist, zweifelhaft, keine kraft, tut nichts, bewirkt nichts, weniger bremswirkung, schwächer, bremsen schlechter, bremst schlecht, keine bremswirkung, bremst weniger, bremsen weniger, nichts passiert, miserabel, furchtbar, schrecklich, länger zum anhalten, braucht länger zum anhalten, braucht lange zum anhalten, verzögert nicht, verzögert kaum',
    pullsLeftPullsRightPulls:
      'zieht links, zieht rechts, zieht zu einer seite, zieht auf eine seite, zieht nach links, zieht nach rechts, nach links ziehen, nach rechts ziehen, zieht beim bremsen links, zieht beim bremsen rechts, schert aus, zieht schief, taucht zur seite, eine seite stärker, ungleichheit, ungleich, ungleichmäßig, ungleiche bremskraft, bremst ungleich, unterschied links und rechts, zieht zur seite, bricht aus, reißt zur seite, zieht weg, macht einen satz zur seite, driftet, kippt zu einer seite, ruckt zu einer seite, auto zieht, auto geht nach, auto will nach, geht nach links, geht nach rechts, will nach links, will nach rechts, zog nach links, zog nach rechts, zieht rüber, zerrt nach, zu einer seite, lenkt von selbst, einseitig, mehr zu einer seite',
    dragDragsDraggingBindingBinds:
      'schleift, schleifen, schleifend, schleifende, bremst ständig, hängt, reibt, reiben, reibung, hakt, streift, hängt fest, hängen bleibt, bleibt hängen, bleibt fest, schwer zu schieben, nicht frei, bremst von selbst, bremse klemmt, klemmt, bremse hängt, bremsen hängen, löst nicht, schwergängig, dreht schwer, schwer zu drehen, stramm zu drehen, geht nicht auf, geht nicht mehr auf, löst langsam, löst sich langsam, löst spät, hängt nach, lässt nicht los, bremsen klemmen, widerstand, gehalten, hält zurück, hält es zurück, hält das auto zurück, hält mich zurück, rollt nicht aus, rollt nicht frei, rollt schwer, rollt nicht leicht, rollt nicht weiter, halb angezogen, leicht angezogen, wird von selbst langsamer, wird von allein langsamer, bleibt von selbst stehen, bleibt stramm, reibt weiter, bremse zieht von selbst an, bremsen ziehen an, bremst von allein, löst nicht ganz, löst sich nicht, löst nicht mehr, nicht gelöst, wird nicht frei, liegt ständig an',
    lockedLockedOnLockedUp:
      'blockiert, rad blockiert, blockierend, sitzt fest, eingefroren, verklemmt, festgebremst, bombenfest, dreht nicht, dreht sich nicht, bewegt sich nicht, rollt nicht, lässt sich nicht drehen, nicht drehbar, kann nicht drehen, rutscht über den boden, sitzt bombenfest, rad steht, rad fest, rad ist fest, bremse fest, bremsen fest, bremsen festgegangen, bremse festgegangen, bremsen blockiert, bremsen eingefroren, handbremse fest, handbremse hängt fest, handbremse festgegangen, rad bewegt sich nicht, rad festgegangen, dreht überhaupt nicht, verkeilt, klemmt fest, festgeklemmt, blockiert total, blockiert ganz, total blockiert, rad rührt sich nicht, räder drehen nicht, rad dreht nicht, rad dreht sich nicht, festes rad, rad bombenfest, reifen rutscht, rad wird geschleift, rutscht blockiert, fest blockiert, völlig blockiert, rad von hand nicht drehen, rad nicht drehen, räder von hand nicht drehen, von hand nicht drehen, friert ein, rad und es rührt sich nicht, am rad drehen und nichts rührt sich',
    seizedSiezedSeazedCeasedRusted:
      'festgegangen, festgerostet, fest gegangen, festgefressen, eingerostet, tot, fest gefressen, steckt, festsitzt, festgegamgen, vergammelt, verharzt, gammelt fest, total festgerostet, ohne bewegung, ungängig, fest gerostet, zugerostet, verklebt, verdreckt, schwer gängig, mit rost verklemmt, von hand nicht zu bewegen',
    wearFreeWearsFreeFree:
      'freischleifen, schleift sich frei, frei schleifen, freigeschleift, schleift sich ein, gibt sich, gibt sich das, schleift sich ab, läuft sich von selbst ein, läuft sich frei, setzt sich, regelt sich, freifahren, gibt von selbst nach, brennt sich frei',
    howLongWillTheyLast:
      'wie lange halten, halten noch, restlaufleistung, wie viel ist noch übrig, wie viele km noch, wie viele kilometer noch, wie lange habe ich noch, noch zu fahren, kilometer noch',
    squealSqueakScreechChirpWhistle:
      'quietschen, quietscht, kreischt, piepst, pfeift, heult, quitscht, quitschen, quietschend, kreischen, gequietsche, pfeifen, piepen, quiekt, quieken, zirpt, winseln, fiept, singen, singt',
    grindGrindingGratingGraunching:
      'mahlen, mahlt, schabt, schaben, knirscht, kratzen, raspelt, knirschen, geräusch metall auf metall, kratzt, sandig, metallisch, metallgeräusch, schrappt, schabendes geräusch, schrabbt, schabend, kratzt metall, raues geräusch, kratzendes metall',
    groanMoanCreakHonkHum:
      'stöhnen, stöhnt, knarren, hupt, brummen, knurrt, dröhnt, nebelhorn, ächzt, brüllt, muht, kuh, surrt, surren, trompetet, brummt, schwirrt, summt, grollt, rumpelt, dröhnen',
    clunkClonkKnockThudBang:
      'klonk, klong, schlagen, dumpfer schlag, knall, knackt, knacken, klopfen, schlägt, klack, klackt, klacken, poltert, poltern, scheppert, rums, schläge, knallt, schlag, knacks, ruck',
    swishShhWhooshWuhWuh:
      'sch sch, schh, wusch, wub wub, wischt, an einer stelle, stramme stelle, immer an derselben stelle, einmal pro umdrehung, einmal je umdrehung, einmal bei jeder umdrehung, bei jeder umdrehung einmal, jede umdrehung, einmal pro radumdrehung, jede radumdrehung, bei jeder umdrehung, einmal je radumdrehung, pro umdrehung, je umdrehung, alle umdrehungen, in jeder umdrehung, einmal herum, einmal pro runde, pro runde, gleiche stelle, eine stelle, bestimmte stelle, bestimmter punkt, ein punkt, einzige stelle, ein teil der umdrehung, teil der umdrehung, manche stellen, rhythmisch, schsch, jede runde, radumdrehung, bei jeder radumdrehung, an einem punkt, an bestimmter stelle, an einer bestimmten stelle',
    twiceATurnTwicePer:
      'zweimal pro umdrehung, zweimal je umdrehung, zwei stellen, zwei punkte, zweimal bei jeder umdrehung, an zwei stellen',
    noiseNoisySoundVoiceRacket:
      'geräusch, laut, ton, krach, lärm, geräusche, töne, klingt, höre, hören',
    rattleRattlesRattlingTinkle:
      'klappern, klappert, rappelt, klimpert, rattert, klingelt, klingeln, geklapper, loses teil, lose teile, schlackern, schlagen gegen, klappernd',
    hotBoilingScorchingRedHot:
      'heiß, heiss, kochend, glühend heiß, zu heiß, zu heiß zum anfassen, verbrennt mir den finger, wird heiß, erhitzt, überhitzt, überhitzen, überhitzung, hitze, glüht, warm, blau, heißer, zischt, rauch, raucht, dampf, glühend, heiße, kochen, brühend heiß, brennend heiß, kochend heiß, kocht, backofen, spiegeleier braten, spiegelei braten, dampft, qualm, qualmt, mollig warm, verbrennt mir die hand, finger verbrannt, hand verbrannt, verbrennt die hand, mir die hand verbrannt, mir die finger verbrannt, nicht anfassen, hand nicht dranhalten, rotglühend, temperatur, überhitzte, brennt, flammen, rauchen, rauchig, heiss gelaufen, heiß beim anfassen',
    smellSmellsBurningBurntStinks:
      'geruch, riecht, verbrannt, verbrannter geruch, stinkt, gestank, mief, verbrannte haare, heißes metall, riechen, stinkend, hauch von, müffelt, miefen, müffeln, angesengt, beißender geruch, duft, stinken, brandgeruch',
    fadeFadesGoesAwayOn:
      'fading, bremsfading, lässt am berg nach, nichts mehr da, verkocht, nach der abfahrt, abfahrt, gebirge, alpen, pass, pässe, langer berg, lange bergab, den berg hinunter, lange abfahrt, vom berg herunter, bergstraße, talfahrt, bergabfahrt, bergab gefahren, hinunterfahren, alpin, gebirgspass, wärmefading',
    wetRainRainyWaterPuddle:
      'nass, regen, regnerisch, wasser, pfütze, tiefes wasser, hochwasser, waschanlage, autowäsche, gewaschen, auto gewaschen, abgesoffen, fluss, nieselregen, wolkenbruch, gewitter, es regnet, regnet, hochdruckreiniger, dampfstrahler, abgespritzt, furt, überflutet, durchs wasser, bach, slipanlage, pfützen, nässe, schnee, salz, streusalz, schneematsch',
    dampHumidMorningMorningsOvernight:
      'feucht, feuchtigkeit, morgen, morgens, über nacht, erster halt, erstes bremsen, tau, frost, kalter morgen, als erstes, frostig, nebelig, taufeucht, erste bremsung, das erste mal am morgen, kaltstart, wintermorgen, nach einer nacht, jeden morgen, am morgen, nacht, kondenswasser',
    leakLeaksWeepingSeepingDripping:
      'undicht, leckt, schwitzt, sickert, tropft, durchtränkt, fettig, verschmutzt, schmiere, schwarze pampe, flüssigkeit am reifen, verliert flüssigkeit, ölig, milchig, sickern, innen nass, undichtigkeit, nässt, siffig, sifft, tritt aus, austritt, tropfen, läuft herunter, läuft runter, rinnsal, rinnt, verliert, stand sinkt, stand fällt, leck, undichtheit, ausgelaufen',
    gearOilDiffOilAxle:
      'getriebeöl, differenzialöl, achsöl, halbwellendichtring, nabendichtring, radnabendichtring, achsdichtring, fett auf dem belag, fett auf der backe, öl auf der backe, öl auf dem belag, öl aus der nabe, differenzial undicht, achsfett, fett aus der achse, fett aus der nabe, lagerfett, nabenfett, hinterachsöl, achse undicht, fett ist auf, öl der hinterachse, öl aus der achse, fett auf den belägen, fett auf den backen, fett auf den bremsbacken',
    rustedOnRustedToThe:
      'angerostet, an der trommel festgerostet, klebt an der trommel, angebacken, fest nach dem waschen, fest nach regen, mit einem knall frei, mit einem knall, mit einem ruck, monatelang gestanden, monatelang geparkt, wochenlang gestanden, seit monaten steht, lange gestanden, herumgestanden, monatelang steht, abgestellt, stillgelegt, monate gestanden, lange geparkt, sechs monate gestanden, halbes jahr gestanden, den ganzen winter gestanden, ein jahr gestanden, eingelagert, überwintert, den winter über gestanden, ewig geparkt, nicht bewegt, nicht bewegt worden, nicht mehr bewegt, stehen gelassen, wochenlang geparkt, einen monat geparkt, draußen gestanden, im hof gestanden, jahrelang gestanden, seit einem jahr steht, abgemeldet, in der scheune, langes stehen, nach dem stehen, zehn jahre gestanden, steht seit, dort gestanden, unbenutzt, nicht gefahren, nicht benutzt seit, standzeit, am strand geparkt, am meer geparkt, am meer, zwei wochen gestanden, langes parken, gestanden, langer standzeit, an der trommel angefroren, backen angefroren, backe angefroren, an der trommel festgefroren, vereist, eis, lange zeit gestanden, lange zeit steht, seit langem steht, lange stand',
    rustRustyCorrodedCorrosion: 'rost, rostig, korrodiert, korrosion, flugrost, verrostet',
    wornWearThinFinishedGone:
      'verschlissen, verschleiß, dünn, fertig, backen runter, abgenutzt, abgefahren, heruntergefahren, verschleißen, dünner, ausgelutscht, belag am ende, abgeschliffen, hauchdünn, verschleißt, durchgeschliffen, nutzt sich ab, abnutzung, backen niedrig, im eimer, hinüber, schrott, kein material, kein belag mehr, kein reibbelag mehr, nichts mehr auf der backe, blank, ganz runter, bis auf null',
    limitMaximumDiameterMaxDia:
      'grenze, größter durchmesser, max durchmesser, aussondern, mindestdicke, mindeststärke, verschleißgrenze, verschleißmaß, zulässig, eingeprägt, auf der trommel eingeprägt, auf der trommel eingegossen, wie dünn, sollmaß, toleranz, marke auf der trommel, minimum, min, wie wenig, mindestens, kleinste, niedrigste, größte, größtes, maximum, max, höchstens, zu dünn, zu verschlissen, zu weit herunter, gut genug, noch in ordnung, noch gut, brauchbar, wiederverwendbar, wiederverwenden, im sollmaß, außerhalb der toleranz, muss ersetzt werden, wann ersetzen, wann wechseln, wann muss ich, wie niedrig, muss erneuert werden, wie schlimm',
    glazedGlazeShinyPolishedGlassy:
      'verglast, verglasung, glänzend, poliert, glasig, verhärtet, aufrauen, anschleifen, abschleifen, schleifpapier',
    scoreScoredGrooveGroovedScratches:
      'riefe, riefig, rille, rillig, kratzer, tiefe spuren, wie eine schallplatte, riefen, rillen, tiefe rille, fingernagel bleibt hängen, fingernagel hängen, nagel bleibt hängen, fingernagel, furche, furchen, rillen in der trommel, linien in der trommel, tiefe linie, ringe in der trommel',
    ovalOvalityOvelOvialityEgg:
      'unrund, oval, unrundheit, unrunde, eiförmig, verzogen, verbogene trommel, unrunde trommel, nicht rund, elliptisch, verformt, ovale trommel, ovalität, ei, schiefgezogen, zerdrückt, verbeult',
    offCentreOffCenterEccentric:
      'außermittig, außer mitte, exzentrisch, exentrisch, rundlauf, schlag der trommel, läuft unrund, nicht konzentrisch, rundlauffehler, rundlaufabweichung, seitenschlag, eiert, eiern, nicht zentriert, nicht mittig, trommel außermittig, hat schlag, läuft nicht rund, höhenschlag',
    taperBellMouthBellMouthed:
      'konisch, glockenförmig, aufgeweitet, trichterförmig, kegelig, tonnenförmig, konische trommel',
    crackCrackedHairlineHeatCheck:
      'riss, gerissen, haarriss, wärmeriss, wärmerisse, risse, klingen lassen, hell klingt, dumpfer klang, klingt nicht, kein klang, klingt tot, klingt dumpf, sprung, bruch, gebrochene trommel',
    skimSkimmedSkimmingMachine:
      'ausdrehen, ausgedreht, überdrehen, trommel ausdrehen, überdreht, drehmaschine, trommel überdrehen, abgedreht, trommel nachdrehen, drehbank, plandrehen, nacharbeiten, ausbohren, nachschleifen, abdrehen der trommel, rund drehen, nachgedreht, überarbeiten, rund gedreht, trommel abdrehen, dreherei, in der werkstatt ausgedreht, zerspaner, auf der drehbank',
    measureMeasuredVernierMicrometer:
      'messen, gemessen, messschieber, mikrometer, bügelmessschraube, innenmessgerät, tiefenmaß, fühlerlehre, messuhr, messuhren, innentaster, fühlhebelmessgerät, schieblehre, schiebelehre, messung, lineal, maßband, bandmaß, zollstock, wie dick ist, nachmessen, messe, maße',
    rollerRollersRollerTestBrake:
      'rolle, rollen des prüfstands, rollenprüfstand, bremsrollen, bremsenprüfstand, bps, prüfmaschine, leistungsprüfstand, plattenprüfstand, bremsenprüfung, bremswert, ausdruck, prüfstand, prüfstraße, bremsprüfstand, prüfstelle, prüfgasse, werte am prüfstand, protokoll, prüfprotokoll, prüfhalle, prüfstation, bremswerte, kgf, bremskräfte, abbremsung',
    motNctDoeCvrtWof:
      'tüv, hu, hauptuntersuchung, tuev, pickerl, mfk, verkehrssicher, plakette, prüfplakette, zulassung, au, technische prüfung, sicherheitsprüfung, technische untersuchung, hauptprüfung, geringer mangel, nachprüfung, mängelbericht, prüfer, durchgefallen, durchfallen, prüfung nicht bestanden, tüf, nicht bestanden, fällt durch, jährliche prüfung, jahresprüfung, sicherheitscheck, prüfern, geprüft, fahrzeugprüfung, prüfung durchgefallen, beanstandet, mangel, durchsicht',
    comeOffComeOfComes:
      'abgehen, ab gehen, geht ab, geht nicht ab, geht runter, abbekommen, bekomme ab, trommel abbekommen, abnehmen, trommel abnehmen, abnahme, ausbauen, ausbau, abziehen, trommel abziehen, runterspringen, trommel ab, trommel ausbauen, hebeln, herunterziehen, vom auto runter, will nicht runter, hintere trommel abbekommen, trommel runterbekommen, runterbekommen, runter bekommen, ging ab, losbekommen, trommel frei, trommel abkriegen, trommeln ab, rührt sich nicht, rührt sich keinen millimeter, rühren sich nicht, verschiebt sich nicht, verschieben lassen, lässt sich nicht abziehen, herunterschieben, schiebt sich runter, schieben lassen, abstreifen, runterziehen, heruntergezogen, lässt sich abziehen, herunterschlagen, runterschlagen, abklopfen, herunterheben, trommel entfernen, herausziehen, trennen, losbrechen, trommel losbekommen, runterkriegen, trommel runterkriegen, trommel runter, sich lösen, löst sich von, geht weg, herauskommen, kommt heraus',
    halfWayOnHalfwayOn:
      'halb drauf, zur hälfte drauf, ein stück drauf, draufgehen, geht drauf, geht nur, wieder draufgehen, geht wieder drauf, wieder aufsetzen, geht nicht drauf, passt nicht drüber, drüber passen, trommel wieder montieren, wieder aufschieben, aufschieben, geht drüber, trommel drauf, trommel aufsetzen, trommel wieder drauf, trommel draufbekommen, wieder draufbekommen, trommel zum sitzen bringen, trommel montieren, wieder draufkriegen, ganz drauf, sitzt ganz auf, sitzt nicht auf, geht nicht ganz drauf, über die backen, drüber schieben, passt drüber, drüberbekommen, rutscht drüber, unter die trommel, wieder in die trommel, trommel passen, trommel passt, sitzt auf, draufdrücken, passen nicht, passt nicht, geht nicht drüber, will nicht drauf',
    takeApartStripDownDismantle:
      'auseinandernehmen, auseinanderbauen, zerlegen, öffnen, demontieren, demontage',
    putBackPutTogetherReassemble:
      'wieder einbauen, zusammensetzen, zusammenbauen, zusammenbau, montieren, wiedereinbau, wieder zusammenbauen, wieder zusammen, übrig, übriggeblieben, montage, wie gehört es zusammen, gehört zusammen, alles wieder einbauen, aufbauen',
    fitFittingFittedInstallInstalled:
      'einbauen, einbau, eingebaut, verbauen, verbaut, montiert, ersetzen, ersetzt, austauschen, wechseln, gewechselt, wechsel, tauschen, getauscht, erneuert, erneuern, neu, bremsenreparatur, neu belegen, überholen, überholt, instandsetzen, instandgesetzt, eingesetzt, aufgezogen, neue rein, neu gemacht, backen gemacht, bremsenwechsel, neue eingebaut, habe gemacht, habe erneuert, neue backen einbauen, nach dem wechseln, nach dem ersetzen, gerade gewechselt, gerade eingebaut',
    bleedBleedingBledPurgeFlush:
      'entlüften, entlüftung, entlüftet, spülen, durchspülen, luft herausbekommen, mit schwerkraft entlüften, zu zweit entlüften',
    airAirInTheSystem: 'luft, luft im system, luft in der leitung, luftblase, blasen',
    bedInBeddingInBedding:
      'einlaufen, eingelaufene beläge, einlaufzeit, einbremsen, eingebremst, einschleifen, einfahren, eingefahren, einlaufen lassen, einlauf, läuft ein, laufen ein, richtig greifen, richtig beißen, gut greifen, einreiben, backen einfahren, beläge einfahren, beläge einlaufen, einzubremsen, einfahrzeit, backen einlaufen, auf form einschleifen',
    byHandSpinSpinsRotate:
      'von hand, drehen, dreht, rotiert, freilauf, frei laufen, ausrollen, rollt aus, drehte, wie frei, frei drehen, dreht frei, dreht sich frei, wie viele umdrehungen, rad drehen, durchdrehen, am rad drehen, rad durchdrehen, leer drehen, zum drehen, umdrehungen, umdrehung, rotation, dreht durch, drehend, drehe',
    clickClicksClickingTickSnick:
      'klick, klicks, klicken, tick, klickt, ratsche, ratscht, rastet, klik, tickt',
    reverseReversingBackingUp:
      'rückwärts, rückwärtsfahren, zurücksetzen des autos, rückwärtsfahrt, rückwärtsgang, im rückwärtsgang, nach hinten, nach hinten fahren, rückwärts raus, rückwärts ausparken, zurückgesetzt, zurückfahren, beim rückwärtsfahren, rückwärtig, rückwärts gefahren, zurückgefahren, rückwärts fahren',
    forwardForwardsGoingForward:
      'vorwärts, vorwärtsfahren, vorwärtsfahrt, geradeaus, losfahren, anfahren, losgefahren, fährt an, beim anfahren, beim losfahren',
    oneSideOneWheelOne:
      'eine seite, ein rad, eine ecke, linke seite, rechte seite, eine trommel, ein hinteres, fahrerseite, beifahrerseite, nur ein, linksseitig, auf der fahrerseite, auf der beifahrerseite, einzelnes rad, eines der hinteren, links hinten, rechts hinten, hinten links, hinten rechts, linkes rad, rechtes rad, linkes hinterrad, rechtes hinterrad, hintere linke, hintere rechte, nur eines, ein hinterrad, einem rad, hl, hr, h l, h r, einer seite, eines rads, lh, rh, nur ein hinterrad, andere seite gut, andere gut, andere seite ist gut, die andere gut, am hinterrad, eines davon, linke trommel, rechte trommel, eine nabe, an einem, das linke, das rechte',
    allFourAllWheelsAll:
      'alle vier, alle räder, alle vier räder, jedes rad, alle bremsen, vorne und hinten, vorne auch, sämtliche bremsen',
    bothSidesBothRearBoth:
      'beide seiten, beide hinten, beide räder, beide trommeln, beide hinterräder',
    leftAndRightWrongSide:
      'links und rechts, falsche seite, teile der anderen seite, vertauscht, links und rechts vertauscht, links rechts vertauscht, seiten verwechselt, aus versehen rechts, seiten vertauscht, vertauschte seiten, linke auf die rechte, nachsteller der anderen seite, falschem gewinde, falsches gewinde, von seite zu seite vertauscht',
    upsideDownWrongWayRound:
      'auf dem kopf, falsch herum, verkehrt, verkehrt herum drauf, verkehrtherum, verkehrt herum, falschrum, hinten vorne vertauscht, andersherum, umgedreht, falsche lage, falsch rum, falsch eingebaut',
    towTowingTrailerCaravanHorse:
      'schleppen, abschleppen, anhänger, wohnwagen, pferdeanhänger, pferdetransporter, bootsanhänger, wohnwagen ziehen, mit anhänger',
    loadedLadenFullyLoadedHeavy:
      'beladen, belastet, voll beladen, schwere ladung, unter last, volle ladung',
    whichWayDirectionClockwise:
      'in welche richtung, richtung, im uhrzeigersinn, gegen den uhrzeigersinn, gegen uhrzeigersinn, nach oben oder nach unten, welche richtung, welche drehrichtung, drehrichtung, wohin drehe ich, wie herum drehe ich, nach links oder rechts, linksherum, welche seite, wie herum dreht es, nach oben zum spannen, nach unten zum spannen',
    howMuchHowManyHow: 'wie viel, wie viele, wie weit, wie groß, welche größe, wie breit',
    toolToolsBrakeSpoonSpoon:
      'werkzeug, werkzeuge, einstellhebel, löffel, einstellschlüssel, schraubendreher, abzieher, gleithammer, hammer, gummihammer, zange, federzange, spezialwerkzeug, welches werkzeug, federhaken, bremsenwerkzeug, zange für federn, schraubenzieher, brecheisen, montiereisen, schraubenschlüssel, schlüssel',
    blowtorchTorchFlameHeatGun: 'lötlampe, brenner, flamme, heißluftpistole, trommel erwärmen',
    dustBrakeDustBlowOut:
      'staub, bremsstaub, ausblasen, druckluft, druckluftschlauch, staubsauger, bremsenreiniger, pulver, atmen, einatmen, eingeatmet, asbeststaub, blaspistole, auspusten, kompressor',
    axleStandAxleStandsJack:
      'unterstellbock, unterstellböcke, bock, böcke, wagenheber, sicherungsbock, unterlegkeil, unterlegkeile, aufgebockt, aufbocken, auf böcken, auf dem wagenheber',
    safeToDriveSafeCan:
      'fahrsicher, sicher, kann ich fahren, darf ich fahren, damit fahren, weiter damit fahren, nach hause fahren, weiterfahren, gefährlich, trotzdem fahren, so lassen, heimfahren, riskant, gefahrlos, darf man fahren, kann man damit fahren, noch fahren, weiter fahren, gefährlich zu fahren, fahrbar, fahrbereit, nach hause kommen, unsicher',
    duoServoDualServoServo:
      'duo servo, duoservo, servobremse, servobauart, selbstverstärkende servobremse, großer bolzen oben, stellt rückwärts nach, kurzer und langer belag, rückwärts nachstellen, stellt beim rückwärtsfahren nach, großer lagerbolzen, großer ankerbolzen, lagerbolzen oben, ankerbolzen oben, bolzen oben, ein großer bolzen oben',
    brakeBoosterBoosterVacuum:
      'bremskraftverstärker, verstärker, unterdruckverstärker, bkv, servounterstützung',
    drumInDiscDrumIn:
      'trommel in der scheibe, duo bremse, topfscheibe, trommel im scheibentopf, trommel innen in der scheibe, handbremsbacken in der scheibe, backen innen in der scheibe, innen in der scheibe, handbremsbacken der scheibenbremse, bremsscheibentopf, trommel in scheibe, in der scheibe, in der bremsscheibe, trommel in der bremsscheibe, trommel innerhalb der scheibe, trommel im topf der scheibe, kleine trommel in der scheibe, backen in der scheibe, feststelltrommel',
    discDiscsDiskDiskBrake:
      'scheibe, scheiben, bremsscheibe, scheibenbremse, vordere scheibe, vorderradbremse, vorderradbremsen, vordere klötze, bremssättel',
    twinLeadingTwoLeadingTwin:
      'duplex, zwei auflaufende, zwei auflaufende backen, duplexbremse, nockenbremse, s nocken, druckluftbremse, elektromagnet, elektrische anhängerbremse, bandbremse, motorrad, motorräder, roller, fahrrad, waschmaschine',
    whichKindWhatKindWhich:
      'welche bauart, was für eine bauart, welcher typ, was für ein typ, bremsentyp, art der bremse, erkennen, simplex, ohne servo, welche ausführung, was für eine, welche art, welches bremsenmodell, welches system',
    electricParkingBrakeElectronic:
      'elektrische feststellbremse, elektronische feststellbremse, epb, elektrische handbremse',
    warningLightWarningLampAbs:
      'warnleuchte, warnlampe, abs leuchte, abs, bremsleuchte, kontrollleuchte, lampe im armaturenbrett, esp',
    priceCostHowMuchDoes:
      'preis, kosten, was kostet, billig, marke, teilenummer, wo kaufen, welche backen kaufen, kaufen, wie teuer, euro, franken, teuer, kostet, welche marke, wo bekomme ich, händler',
    torqueSettingTighteningTorque:
      'drehmoment, anzugsdrehmoment, anziehmoment, anzugsmoment, wie fest die mutter, drehmomentschlüssel, nm für die mutter, wie fest die muttern, newtonmeter für, drehmomentwert, drehmomentangabe',
    greaseLubricateLubeCopper:
      'fett, schmieren, schmierung, kupferpaste, kupferfett, gleitpaste, keramikpaste',
    howDoesExplainWhatIs:
      'wie funktioniert, erklären, was ist, was sind, was ist das, bedeutung, arbeitet, funktion, wie arbeitet, prinzip, zeig mir, warum tut, wieso, weshalb, was macht, verstehen, sag mir wie, warum ist, warum sind, warum es, erkläre, was bedeutet, für anfänger, in einfachen worten, einfach erklärt, grundlagen, aus welchem grund',
    photoPhotographPhotographs:
      'foto, fotografie, fotografieren, bild, bilder, fotos, aufnahme, kamera, abbildung, schnappschuss, ein bild machen',
    whichOrderWhatOrderIn:
      'welche reihenfolge, in welcher reihenfolge, der reihe nach, richtige reihenfolge, reihenfolge, abfolge, schritt für schritt, schritte, zuerst und zuletzt, reihenfolge zum, was zuerst, reihenfolge für',
    toeShoeTipTipOf: 'spitze, backenspitze, spitze der backe, ende am zylinder, zylinderseite',
    forceForcesThrustNewtons: 'kraft, kräfte, schub, newton',
    pressurePsiBarOfPressure: 'druck, psi, bar druck, hydraulikdruck, leitungsdruck',
    touchTouchesContactMakeContact:
      'berühren, berührt, kontakt, berührung, trifft die trommel, liegt an, anliegen, berührt die trommel, beginnt zu berühren, erste berührung',
    thenStopsThenItStops:
      'dann schluss, dann ist schluss, und bleibt stehen, dann geht nichts mehr, dann hakt sie, dann hakt es, und dann hakt es, und hakt, stößt an, stößt an die backen, gegen die backen, dann klemmt sie, und klemmt, verhakt sich, hakt an den backen, bleibt an den backen hängen, dann steckt sie, kommt nicht mehr, kommt nicht weiter, geht nicht weiter, nicht weiter, bleibt plötzlich hängen, und wird gehalten',
    slidesOutSlidesSlidSlide:
      'rutscht heraus, rutscht raus, gleitet, schiebt sich, herausrutschen, kommt etwas heraus, kommt ein stück, kommt ein wenig, kommt ein wenig heraus, kommt leicht heraus, bewegt sich etwas, bewegt sich nach außen, bewegt sich auswärts, lässt sich etwas herausziehen, lässt sich ein stück ziehen, lässt sich etwa, kommt etwa, ein paar mm, ein paar millimeter, einen zentimeter, ein zentimeter, zentimeter heraus, halben zentimeter, paar mm, zwei zentimeter, ein stück weit, stückweise, fingerbreit',
    sameSameLookAlikeLook:
      'das gleiche, sehen gleich aus, sieht gleich aus, alle gleich, identisch, alle dieselben',
    lessonClassStudentsPupils:
      'lektion, klasse, studenten, schüler, unterrichten, unterricht, arbeitsblatt, klassenarbeit, hausaufgabe, kurs, azubi, azubis, auszubildende, lehrlinge, berufsschule, klassenzimmer, meine klasse, meiner klasse zeigen, vortrag, lehrer, ausbilder, lehrling, schülerin',
    empty:
      'ein eine einen einem einer eines der die das den dem des mein meine meinen meinem meiner meins ich mir mich bin wir uns unser unsere es sein seine seinen ihr ihre ihren ist sind war waren wird werden wurde wurden worden gewesen zu und oder so aber dass das dies diese diesen dieser dieses jener jene da dort dann als mit für fur fuer von vom bei beim seit in im ins am um tun tue getan habe haben hat hatte hatten gehabt nur gerade wirklich sehr ganz etwas bisschen irgendein irgendwie bitte hilf hilfe danke hi hallo moin servus leute jemand kumpel liebe lieber hey brauche brauchen muss müssen mussen will würde wurde könnte konnte sollte soll sollen kann können konnen darf mag möchte mochte bekommen bekomme bekommt kriegen kriege kriegt wenn wo was welche welcher welches wer wie warum falls ob etwa über uber ueber auch sogar noch nun jetzt heute nach vor bevor während wahrend wieder immer sie er man ihm ihnen du dein deine dich dir euch weil denn scheint wohl fühlt fuhlt gefühlt gefuhlt auto wagen transporter kombi lkw fahrzeug kiste hinten hintere hinteren bremse bremsen bremst gebremst bremsend rad räder rader reifen seite ding dinge zeug sachen benutzen benutzt benutze machen macht gemacht gehen geht ging gegangen weiß weiss kenne sagen sagt denke denken zwei viel viele alle alles gut ok alt alte alten jahr jahre jahren zeit tag tage tagen woche wochen monat monate monaten stunde stunden minute minuten meile meilen km gekauft vorbei lassen lasse ob erlaubt gestattet mal eben doch ja',
    not: 'nicht kein keine keinen keinem keiner keines keins nie niemals ohne nirgends nirgendwo weder noch nichts nix nicht nimmer kaum selten stoppt aufgehört aufgehort weigert versagt unmöglich unmoglich net nich ned nit keinerlei keineswegs',
    affOffOotOutDoon:
      'net nicht, nich nicht, ned nicht, nit nicht, nisch nicht, nix nichts,  \n  nischt nichts, nuscht nichts, keen kein, keene keine, koa kein, koan keinen, koi kein, isses ist es, is ist, sin sind,\n  wat was, dat das, det das, dit das, et es, ick ich, icke ich, ik ich, isch ich, mei mein,\n  ma mal, ham haben, hamse haben sie, hab habe, haste hast du, hats hat es, kannste kannst du, kannst kann, musste muss, willste willst du,\n  gehts geht es, gibts gibt es, machts macht es, wirds wird es, wenns wenn es, obs ob es, \n  raus heraus, rein hinein, nunter runter, herunter runter, hinunter runter, ruff rauf, uff auf, aufm auf dem, vorm vor dem,\n  hinterm hinter dem, unterm unter dem, ubern uber den, nen einen, nem einem, ner einer, ne eine,\n  bissl bisschen, bissel bisschen, bissle bisschen, bisserl bisschen, bischen bisschen, mins minuten, std stunden, kilometern km, kilometer km, fuer fur,\n  ueber uber, rueckwaerts ruckwarts, vorwaerts vorwarts, zurueck zuruck, haelt halt, laesst lasst, raeder rader, zaehne zahne,\n  belaege belage, duenn dunn, quitscht quietscht, quitschen quietschen, bremmse bremse, bremmsen bremsen, brems bremse, tromel trommel, tromeln trommeln, schleifft schleift,\n  auffem auf dem, inner in der, anner an der, ausm aus dem, hinnen hinten, vorn vorne, wos wo ist',
    aboveAcrossAfterAgainAgainst:
      'aber abend acht alle allein allerdings als also alt andere anderes anfang angst arbeit arbeiten arbeitet arm art auch auge augen außen aussen auto bad bahn bald ball bank bau bauen baum bein beide beim beispiel berg bereits besser beste bett bevor biegen bild billig binden bis bisschen bitte blau bleiben bleibt blick boden boot brauchen braucht braun breit brett bringen bringt bruder brücke brucke buch bund bunt dach dame damit danach dank dann daran darf darum dauert decke denken dick dieser ding doch dorf draußen draussen drei dritte duft dunkel durch ecke eile eilig eins einzeln eis eisen ende enden eng ente erde erst erste essen fach fahren fahrer fahrt fall fallen falls falsch familie farbe fass fast faul februar fehler feier fein feld fenster fern fertig fest finden findet finger fisch flach flasche fragen frau frei freund frisch früh fruh fuß fuss fünf funf gabe gang ganz garten gast geben gegen geld genau gern gestern gewicht gibt glas glatt glaube gleich glück gluck gold grad gras grau greifen groß gross grund grün grun gruppe gut haar halb hand hart hase haus haut heben heim hell her herbst herz heute hier hilfe himmel hinter hoch hof holen holz hund hundert hut immer innen insel jahr jacke jeder jemand jung kaffee kalt kann karte kasten kauf kaufen kaum kein keller kennen kind kiste klar klein kleiden knie kommen kopf korb kosten kraft krank kreis kunde kurz lachen lack lade laden lager land lang lange langsam länger langer lassen laub lauf laufen laut leben leder leer legen leicht leid leider leise leiste lesen letzte leute licht liegen liegt linie links list liste mal mann marke markt maus meer mehr meist meister messer metall miete milch minute mitte monat motor mund mutter nach nachbar nacht nagel nahe name nass natur nebel neben nehmen nein nett neun nicht nie noch nord not nur oben oder ofen oft ohne ohr ort packen packt paar papier park pause person pfad platz plus post preis punkt rand rasten rat raten rauch raum recht reden reich reif reihe rein reise reiten rest richtig ring ruf ruhe rund sache sack sagen sand satt satz schaden schal scharf schauen schief schiff schild schlaf schlange schlecht schnell schon schrank schritt schuh schule schwer seele sehen sehr seit seite selten sieben sicht sinn sitz sitzen sohn sommer sonne spaß spass spät spat spitze sprechen stadt stahl stand stark statt stehen steht stein stelle stellen still stimme stimmt stock straße strasse stück stuck stunde suchen süd sud tag tasche tasse taste teil teile teller teuer tief tier tisch tochter toll tor tragen treffen treppe trinken trocken tun tür tur über uber uhr unten unter vater verein viel vier voll vorn wand wann warm warten wasser weich weil weit welt wenig wenn werk werkstatt west wetter wieder wind winter wissen woche wohl wollen wort wunde zahl zahlen zehn zeigen zeit zelt ziel zimmer zoll zucker zug zwei',
  },

  /* ui/away/clip/clip-way.ts */
  awayClipClipWay: {
    aPress: 'Eine Betätigung',
    theBrakeAsItStands:
      'Die Bremse, wie sie ist, einmal getreten; verlangsamt, wo sie sich schnell bewegt.',
    tenClicks: 'Zehn Klicks',
    itsNextTenClicksEach:
      'Ihre nächsten zehn Klicks, jeder verlangsamt, und der Verschleiß dazwischen.',
    aLifeInTwelveSeconds: 'Eine Laufleistung in zwölf Sekunden',
    fromNewToItsLimit: 'Von neu bis zur Grenze, auf der Straße des Bereichs Verschleiß.',
    aPullAtTheDrum: 'Ein Zug an der Trommel',
    whatHoldsTheDrumOr: 'Was die Trommel hält, oder dass sie kommt.',
    theOpenLessonsStep: 'Der Schritt der offenen Lektion',
    itsQuestionWhatHappensAnd: 'Seine Frage, was geschieht und warum.',
    theWholeTalk: 'Der ganze Vortrag',
    fourMinutesWithWhatIs: 'Vier Minuten, das Gesprochene als Untertitel.',
    h264PlaysNearlyEverywhere: 'H.264: läuft fast überall, auch in Folien.',
    vp9OrVp8PlaysIn: 'VP9 oder VP8: läuft in jedem Browser.',
    anAnimatedPngForA: 'Ein animiertes PNG für eine Webseite: läuft von selbst, ohne Ton.',
    eightPicturesOnASheet: 'Acht Bilder auf einem Blatt für Papier, als SVG und PNG.',
    madeWithTakeup: (address: string) => `Gemacht mit Takeup: ${address}`,
    itIsMade: 'Es ist fertig.',
    stoppedNothingWasKeptOf: 'Angehalten. Nichts davon wurde behalten.',
    whatIsFilmed: 'Was gefilmt wird',
    thisOneIsTooLong: ' Dieser ist zu lang für eine Schleife oder einen Streifen.',
    thisBrowserEncodesNoFilms:
      ' Dieser Browser kodiert keine Filme: Nehmen Sie eine Schleife oder einen Streifen oder einen anderen Browser.',
    picturesASecond: 'Bilder je Sekunde',
    whatIsSaidStandsIn: 'Das Gesprochene steht auch im Bild',
    preview: (title: string) => `Vorschau: ${title}`,
    captions: 'Untertitel',
    sPicturesAtASecond: (lasts: string, pictures: string, rate: number, codecs: string) =>
      `${lasts} s, ${pictures} Bilder, ${rate} je Sekunde, ${codecs}`,
    kBTheSameBench: (title: unknown, told: string, byteLength: string) => [
      title,
      ': ',
      told,
      ', ',
      byteLength,
      ' kB. Dieselbe Werkbank gibt jedes Mal dieselben Bilder.',
    ],
    theFilm: 'Film',
    save: (theFilm: string) => `${theFilm} speichern`,
    saveAsSvg: 'Als SVG speichern',
    saveCaptions: 'Untertitel speichern',
    saveTranscript: 'Mitschrift speichern',
    what: 'Was',
    how: 'Wie',
    howMuchOfItIs: 'Wie viel davon fertig ist',
    stop: 'Anhalten',
    makeIt: 'Herstellen',
    thePageGoesOnMeanwhile: 'Die Seite läuft inzwischen weiter; Schließen hält es an.',
    captionsAreInTheFilms: 'Untertitel stehen auch in der Datei des Films.',
    everyPictureTellsThePace: (captionsAre: string) =>
      `Jedes Bild nennt das Tempo der Zeit und wie stark Spalte vergrößert gezeichnet sind. ${captionsAre}`,
  },

  /* ui/away/clip/film.ts */
  awayClipFilm: {
    time: (paceName: string) => `Zeit ${paceName}`,
    gaps: (magnification: number) => ` · Spalte ×${magnification}`,
  },

  /* ui/away/clip/kinds.ts */
  awayClipKinds: {
    openALessonFirstIts: 'Öffnen Sie zuerst eine Lektion: Ihr offener Schritt wird gefilmt.',
    thisAdjusterGoesInSteps:
      'Dieser Nachsteller geht in Schritten, die zu klein sind, um sie einzeln zu zeigen.',
    aPress: 'Eine Betätigung',
    tenClicks: 'Zehn Klicks',
    theOnlyClick: 'Der einzige Klick',
    clicks: (n: number) => `${n} Klicks`,
    fromNew: ' ab neu',
    aLifeInTwelveSeconds: 'Eine Laufleistung in zwölf Sekunden',
    aPullAtTheDrum: 'Ein Zug an der Trommel',
    step: (title: string, at: number) => `${title}, Schritt ${at}`,
  },

  /* ui/away/clip/loop-sink.ts */
  awayClipLoopSink: {
    animatedPng: 'animiertes PNG',
  },

  /* ui/away/clip/scripts.ts */
  awayClipScripts: {
    thePedalGoesDown: 'Das Pedal geht nach unten',
    theShoesGoOut: 'Die Backen gehen nach außen',
    theLeverClimbsItsTooth: 'Der Hebel steigt an seinem Zahn hoch',
    overTheCrestItDrops: 'Über die Zahnkuppe: Er fällt ein',
    letGoTheStrutIs: 'Losgelassen: Die Druckstange ist länger',
    thePedalGoesDownTo: (bar: number) => `Das Pedal geht nach unten, bis ${bar} bar`,
    thePedalIsLetGo: 'Das Pedal wird losgelassen',
    clickOfWornOnThen: (n: number, length: number) =>
      `Klick ${n} von ${length}: weiter verschlissen, dann getreten`,
    of1SIsKm: (distance: string) => `1 s ist ${distance} km`,
    lining: (side: 'front' | 'rear', down: string, unit: string) =>
      `Belag, ${side === 'front' ? 'vorn' : 'hinten'}: ${down} ${unit}`,
    kmTooth: (distance: string, tooth: string) => `${distance} km · Zahn ${tooth}`,
    ofMm: (needed: string) => ` von ${needed} mm`,
    pressureBar: (bar: string) => `Druck ${bar} bar`,
    shoesApart: (there: string, next: string) => `Backenabstand ${there}${next}`,
    tooth: (tooth: string) => `Zahn ${tooth}`,
    of1SIsKm2: (far: string) => `1 s ist ${far} km`,
    fromNewTheLiningsWear:
      'Ab neu: Die Beläge verschleißen, und Zahn um Zahn wird die Druckstange länger',
    end: 'An der Grenze: Neue Beläge sind fällig',
    pulled: 'Die Trommel wird gerade gezogen',
  },

  /* ui/away/clip/worker-run.ts */
  awayClipWorkerRun: {
    stopped: 'Angehalten.',
    whatMakesFilmsCouldNot: 'Was Filme herstellt, konnte nicht geladen werden.',
    whatMakesFilmsHasEnded:
      'Was Filme herstellt, hat sich von selbst beendet, und von diesem wurde nichts behalten: Stellen Sie ihn noch einmal her.',
  },

  /* ui/away/cut/assembly.ts */
  awayCutAssembly: {
    caution:
      'Klingen und Laser schneiden: Arbeiten Sie, wie es ihre Hersteller sagen, mit Augenschutz. Auch Gummibänder und Federn des Modells klemmen; die Federn einer echten Bremse sind viel stärker und brauchen das richtige Werkzeug.',
    noToothedLeverHereNothing: 'Kein Zahnhebel hier: nichts, was klicken müsste.',
    itWillNotWorkSo: (faults: string) => `So geht es nicht: ${faults}.`,
    checkedAsCutAllTeeth: (last: number, b: string) =>
      `Geprüft, wie geschnitten: Alle ${last} Zähne werden überfahren, genommen und gehalten, der Stift ist frei in seinem Schlitz und der Finger in seinem Fenster. Jeder Einfall kommt bis auf ${b} mm dort, wo ihn die Werkbank hat.`,
    trueSize: 'Wahre Größe',
    timesItsSize: (factor: string) => `${factor}-fache Größe`,
    theSmallestToothIsMm: (size: string, wide: string, high: string) =>
      `${size}: Der kleinste Zahn ist ${wide} mm breit und ${high} mm hoch.`,
    under: (sizeText: string, kerf: string, play: string, pin: string) =>
      `${sizeText} Schnittfuge ${kerf} mm, Spiel ${play} mm, Stifte ${pin} mm.`,
    cutOutModelPuttingIt: 'Ausschneidemodell: Zusammenbau',
    heights: 'Höhen.',
    of0IsTheBoardEach:
      '0 ist das Brett; jede Höhe ist eine Dicke der Platte. Vom Brett aus nach oben bauen.',
    springs: 'Federn.',
    rubberBandsBetweenTheSmall:
      'Gummibänder zwischen den kleinen Löchern der beiden Backen, oben und unten; eines vom Stift des Hebels hinab zu seinem Block.',
    aPress: 'Eine Betätigung.',
    pushBothToesOutWith:
      'Beide Spitzen mit Finger und Daumen nach außen drücken, bis die Beläge an der Trommel anliegen, und loslassen. Den vorderen Belag weiter außen halten, als wäre er verschlissen: Der Hebel steigt und klickt, und die Druckstange ist länger.',
    check: 'Prüfung.',
    no: 'Nr.',
    part: 'Teil',
    pieces: 'Stück',
    height: 'Höhe',
    whatToDoWithIt: 'Was damit zu tun ist',
  },

  /* ui/away/cut/cut-way.ts */
  awayCutCutWay: {
    drawingForACutter: 'Zeichnung für einen Cutter',
    pagesToPrint: 'Seiten zum Drucken',
    kerfPlayPinsMm: (title: string, sizeText: string, kerf: string, play: string, pin: string) =>
      `${title}. ${sizeText} Schnittfuge ${kerf}, Spiel ${play}, Stifte ${pin} mm.`,
    cutOutX: (name: string, factor: number) => `Ausschneidemodell ${name} x${factor}`,
    itCouldNotBeSaved: (error: string) => `Es konnte nicht gespeichert werden (${error}).`,
    toBeCutOf: 'Zu schneiden aus',
    timesItsSize: 'Vielfaches der Größe',
    kerfIsWhatTheCut:
      'Schnittfuge ist, was der Schnitt wegnimmt; Spiel, um wie viel Löcher und Schlitze weiter sind als ihre Stifte.',
    allPartsOnOneSheet: (width: string, height: string) =>
      `Alle Teile auf einer Platte brauchen ${width} × ${height} mm. Geschnitten werden sie nach den Umrissen, die die Werkbank zeichnet und mit denen sie rechnet, so wie diese Bremse jetzt ist.`,
    tryingTheLeverAtEvery: 'Der Hebel wird an jedem Zahn erprobt…',
    forACutter: 'Für einen Cutter',
    svgWord: 'SVG',
    dxf: 'DXF',
    redIsCutBlueAre:
      'Rot wird geschnitten, blau sind Namen. Die Linien laufen eine halbe Schnittfuge außerhalb jedes Teils.',
    onPaper: 'Auf Papier',
    sizeOfPaper: 'Papiergröße',
    pdfToGlueTogether: 'PDF zum Zusammenkleben',
    printHowItGoesTogether: 'Anleitung zum Zusammenbau drucken…',
  },

  /* ui/away/cut/materials.ts */
  awayCutMaterials: {
    card: 'Karton',
    knifeOrScissorsSplitPins:
      'Messer oder Schere, Musterklammern 3 mm. Dicker Karton oder Papier, auf Karton geklebt.',
    plywood: 'Sperrholz',
    laserOrFretsaw3Mm:
      'Laser oder Laubsäge, 3 mm dick, Dübel oder Schrauben M4. Schnittfuge und Spiel zuerst an einem Loch erproben.',
    acrylic: 'Acrylglas',
    laser3MmThickM4:
      'Laser, 3 mm dick, Schrauben M4. Die Absaugung der Maschine laufen lassen: Die Dämpfe sind schädlich.',
  },

  /* ui/away/cut/moves.ts */
  awayCutMoves: {
    everyTooth: 'jeder Zahn',
    tooth: (list: string) => `Zahn ${list}`,
    theLeversPinBindsIn: 'Der Stift des Hebels klemmt in seinem Schlitz',
    theFingersDiscDoesNot: 'Die Scheibe des Fingers passt nicht in das Fenster',
    theSlotIsTooShort: 'Der Schlitz ist zu kurz, um den Hebel hinüberzuheben',
    theLeverStandsOffIts:
      'Der Hebel steht von seinem Zahngrund ab, der Schnitt rundet ihn zu stark',
    theLeverDropsTooLate: 'Der Hebel fällt zu spät oder zu früh ein',
    theToothDoesNotHold: 'Der Zahn hält nicht',
  },

  /* ui/away/cut/parts.ts */
  awayCutParts: {
    turnsOnItsAnchorPin: 'Dreht sich auf ihrem Lagerbolzen im Brett',
    itsRoundHeelStandsOn: 'Ihre runde Ferse steht auf dem Block des Bretts',
    frontShoe: 'Vordere Backe',
    rearShoe: 'Hintere Backe',
    aPinWithAWasher: (turns: string) =>
      `${turns}; ein Stift mit Scheibe durch das weite Loch hält sie flach.`,
    drumRing: 'Trommelring',
    liesLooseBetweenTheFour:
      'Liegt lose zwischen den vier äußeren Stiften des Bretts und dreht sich.',
    parkingLever: 'Bremshebel',
    turnsOnAPinIn:
      'Dreht sich auf einem Stift in der hinteren Backe. Eine Schnur von seinem Haken durch das Loch des Bretts ist der Seilzug.',
    stopOfTheParkingLever: 'Anschlag des Bremshebels',
    gluedUnderTheLeverSo:
      'Unter den Hebel geklebt, sodass er auf der Kante des hinteren Stegs ruht.',
    heelBlock: (side: 'front' | 'rear') => `Fersenblock, ${side === 'front' ? 'vorn' : 'hinten'}`,
    gluedOnTheBoardThe: 'Auf das Brett geklebt; die Ferse gleitet auf seiner Fläche.',
    board: 'Brett',
    carriesAllItsPinsAnchors:
      'Trägt alles. Seine Stifte: Lagerbolzen, Niederhalter, Führungen der Druckstange, vier um die Trommel; das letzte Loch ist für den Seilzug.',
  },

  /* ui/away/cut/pdf.ts */
  awayCutPdf: {
    cutOutModel: 'Ausschneidemodell',
    of100MmMeasureItPrint: '100 mm: nachmessen. Mit 100 % drucken, nicht an die Seite angepasst.',
    ofRowsColumnsCrossesLie: (rows: number, columns: number) =>
      `von ${rows} Zeilen, ${columns} Spalten; Kreuze liegen auf Kreuzen`,
  },

  /* ui/away/cut/picture.ts */
  awayCutPicture: {
    theFlatPartsInTheir: 'Die flachen Teile an ihren Plätzen',
  },

  /* ui/away/cut/strut-other.ts */
  awayCutStrutOther: {
    wedgeSeat: 'Keilsitz',
    gluedOnTheFrontWeb: 'Auf den vorderen Steg geklebt, seine Fläche senkrecht.',
    looseBetweenSeatAndStrut:
      'Lose zwischen Sitz und Druckstange, dickes Ende nach oben. Ein Gummiband von seinem Fuß zum Steg zieht ihn nach unten.',
    itsSlopedEndLiesOn: 'Ihr schräges Ende liegt am Keil an, ihr anderes Ende steht am Bremshebel.',
    gluedOverTheStrutsEnd: (right: string) =>
      `Über das Ende der Druckstange geklebt; er reicht über den Bremshebel bis zur Zinke, an der echten Bremse insgesamt ${right} mm lang.`,
    gluedUnderTheArmsEnd:
      'Unter das Ende des Arms geklebt, hinter dem Bremshebel: Der Raum davor ist der Totgang.',
    strutScrewAtStep: (tooth: number) => `Druckstange, Gewinde auf Schritt ${tooth}`,
    onePieceAThreadCannot:
      'Ein Stück: Ein Gewinde lässt sich nicht flach schneiden, darum behält es die Länge dieses Schritts. Sein Schlitz nimmt den Stift des vorderen Stegs auf, sein anderes Ende steht am Bremshebel. Schneiden Sie ein zweites für einen anderen Schritt und setzen Sie es ein: Das Lüftspiel ändert sich.',
    armOfTheStrut: 'Arm der Druckstange',
    tineOfTheHook: 'Zinke des Hakens',
  },

  /* ui/away/cut/strut-toothed.ts */
  awayCutStrutToothed: {
    strutPlate: 'Druckstange, Platte',
    liesOnTheShoesBlock:
      'Liegt auf den Backen. Block, Abstandsstück und Fuß sind auf sie oder neben sie geklebt, die Stange darüber.',
    blockWithTheTooth: 'Block mit dem Zahn',
    gluedOnThePlatesLower:
      'Auf das untere Ende der Platte geklebt, die kleinen Löcher in Flucht: Ein Stift dort hält das Gummiband des Hebels.',
    spacer: 'Abstandsstück',
    gluedBetweenPlateAndBar: 'Zwischen Platte und Stange geklebt, frei vom ganzen Weg des Hebels.',
    strutFoot: 'Druckstange, Fuß',
    twoOnEachOtherUnder: 'Zwei aufeinander unter dem Ende der Stange: Sie stehen am Bremshebel.',
    strutBarWithTheSlot: 'Druckstange, Stange mit dem Schlitz',
    gluedOverSpacerAndFoot:
      'Über Abstandsstück und Fuß geklebt. Ihr Schlitz nimmt den Stift des Hebels auf, ihr Langloch die zwei Führungsstifte des Bretts.',
    toothedLever: 'Zahnhebel',
    betweenPlateAndBarIts:
      'Zwischen Platte und Stange. Sein Stift sitzt fest in ihm und gleitet im Schlitz der Stange; ein Gummiband vom Stift zum Stift des Blocks drückt ihn in seinen Zahn.',
    discOfTheFinger: 'Scheibe des Fingers',
    twoOnEachOtherGlued:
      'Zwei aufeinander, unter das runde Ende des Hebelfingers geklebt: Sie stehen im Fenster des vorderen Stegs, das um den Totgang weiter ist.',
  },

  /* ui/away/data/collect.ts */
  awayDataCollect: {
    readingsOf: (title: string) => `Messwerte: ${title}`,
    clearanceAtRest: 'Lüftspiel in Ruhe',
    liningLeftFront: 'Restbelag, vorn',
    liningLeftRear: 'Restbelag, hinten',
    brakeFactorAfterSprings: 'Bremsenkennwert C*, nach Abzug der Federn',
    adjusterTooth: 'Zahn des Nachstellers',
    highestDrumTemperature: 'Höchste Trommeltemperatur',
    pedalTravel: 'Pedalweg',
    drumRadius: 'Trommelradius',
    dragReleased: 'Schleifmoment, gelöst',
    powerOfTheDrag: 'Leistung des Schleifens',
    lifeOf: (title: string) => `Laufleistung: ${title}`,
    bandFrom: (name: string) => `${name}, Band von`,
    bandTo: (name: string) => `${name}, Band bis`,
    band95Of100: 'Band, 95 von 100',
    notAllOfThemTold: 'nicht alle davon genannt',
    asFarAsItHas: ', so weit, wie es gekommen ist',
    varied: (name: string, title: string, asFar: string) => `${name} verändert, ${title}${asFar}`,
    curveName: 'Kurve',
    answerWhatIsAskedFirst:
      'Beantworten Sie zuerst, was gefragt ist: Die Messwerte würden es verraten.',
    readingsName: 'Alle Messwerte des Augenblicks',
    lifeName: 'Die gefahrene Laufleistung',
    noneYetLetItWear:
      'Noch keine: Lassen Sie die Bremse in Verschleiß weiter verschleißen und kommen Sie dann wieder.',
    whatIfName: 'Die Kurven von Was wäre, wenn',
    noneHereOpenWhatIf:
      'Keine hier: Öffnen Sie Was wäre, wenn (Taste v), fragen Sie etwas und nehmen Sie es von dort mit.',
  },

  /* ui/away/data/data-way.ts */
  awayDataDataWay: {
    tableCopiedPasteItInto:
      'Tabelle kopiert: in eine Tabellenkalkulation oder einen Text einfügen.',
    theBrowserDoesNotLet: 'Der Browser lässt die Seite nicht kopieren: Speichern Sie die Tabelle.',
    firstRows: (title: string) => `Erste Zeilen: ${title}`,
    theFirstShownRounded: (seen: number) => `, die ersten ${seen} gezeigt, gerundet`,
    shownRounded: ', gerundet gezeigt',
    rowsTheFileHasAll: (length: number, theFirst: string) =>
      `${length} Zeilen${theFirst}; die Datei hat alle Stellen.`,
    theTablesAreBeingMade: 'Die Tabellen werden erstellt.',
    saveCsv: (name: string) => `CSV speichern: ${name}`,
    saveCsv2: 'CSV speichern',
    saveJson: (name: string) => `JSON speichern: ${name}`,
    saveJson2: 'JSON speichern',
    copyTable: (name: string) => `Tabelle kopieren: ${name}`,
    copyTable2: 'Tabelle kopieren',
    unitsStandInTheHeader:
      'Einheiten stehen in der Kopfzeile oder bei jedem Wert. Szene, Version und der Link dieses Augenblicks stehen in jeder Datei: Auf diese Seite gezogen, öffnet sie die Werkbank, wie sie war. Eine Lehrbremse: Ihre Zahlen sind nicht die Ihres Fahrzeugs.',
  },

  /* ui/away/dialog.ts */
  awayDialog: {
    whatToTake: 'Was mitnehmen',
    takeAway: 'Mitnehmen',
    done: 'Fertig',
  },

  /* ui/away/figure/compose.ts */
  awayFigureCompose: {
    told: (scale: string) => `Maßstab ${scale} bei Druck mit 100 %`,
    brakeDrawing: 'Zeichnung der Bremse',
  },

  /* ui/away/figure/facts.ts */
  awayFigureFacts: {
    turns: {
      1: 'Trommel dreht vorwärts',
      0: 'Trommel steht still',
      '-1': 'Trommel dreht rückwärts',
    },
    left: 'Linkes',
    right: 'Rechtes',
    wheel: (left: string) => `${left} Rad von außen, Trommel aufgeschnitten`,
    pedalPressed: 'Pedal getreten',
    pedalReleased: 'Pedal gelöst',
  },

  /* ui/away/figure/figure-way.ts */
  awayFigureFigureWay: {
    asOnTheStage: 'Wie auf der Bühne',
    wholeBrake: 'Ganze Bremse',
    asShown: 'Wie gezeigt',
    blackAndWhite: 'Schwarz-weiß',
    drawingSvg: 'Zeichnung (SVG)',
    picturePng: 'Bild (PNG)',
    scaleBar: 'Maßstabsleiste',
    readingsThatMatter: 'Messwerte, auf die es ankommt',
    pictureCopied: 'Bild kopiert.',
    theBrowserDoesNotLet: 'Der Browser lässt die Seite kein Bild kopieren: Speichern Sie es.',
    smallestWordsPt: (smallest: string) => `, kleinste Schrift ${smallest} pt`,
    mmOnPaper: (wide: string | undefined, high: string | undefined, c: string) =>
      `${wide} × ${high} mm auf Papier${c}.`,
    namesOfTheParts: 'Namen der Teile',
    noGroundWhatLiesBehind: 'Ohne Hintergrund: Was dahinter liegt, scheint durch',
    scaleOnPaperBrakeDrawn: 'Maßstab auf Papier (Bremse gezeichnet : wirklich)',
    title: 'Titel',
    caption: 'Bildunterschrift',
    widthOfThePicturePx: 'Breite des Bildes, px',
    theFigureAsItWill: 'Die Abbildung, wie sie wird',
    theFigureIsBeingMade: 'Die Abbildung wird erstellt.',
    saveFigure: 'Abbildung speichern',
    copyPicture: 'Bild kopieren',
    sceneVersionAndThisMoments:
      'Szene, Version und der Link dieses Augenblicks stehen in der Datei: Auf diese Seite gezogen, öffnet sie die Werkbank, wie sie war. Umschalt und E am Pult speichern sofort eine Abbildung mit dieser Auswahl.',
  },

  /* ui/away/figure/legend.ts */
  awayFigureLegend: {
    hatches: {
      drum: 'Trommel, geschnitten',
      lining: 'Belag',
      cylinder: 'Radzylinder, geschnitten',
      piston: 'Kolben, geschnitten',
      rubber: 'Gummi',
      fluid: 'Bremsflüssigkeit',
      overlap: 'Überdeckung mit dem Grat',
    },
    leadingShoeSolid: 'Auflaufende Backe: gefüllt',
    trailingShoeOpen: 'Ablaufende Backe: offen',
    gapTrueSize: 'Spalt, wahre Größe',
    gapDrawn: (fan: number) => `Spalt, gezeichnet ×${fan}`,
    restPosition: 'Ruhelage',
    heatLargerDotsAreHotter: 'Wärme: Größere Punkte sind heißer',
  },

  /* ui/away/figure/make.ts */
  awayFigureMake: {
    aTeachingBrakeItsFigures: 'Eine Lehrbremse: Ihre Zahlen sind nicht die Ihres Fahrzeugs.',
    thisBrowserCannotPaintSo:
      'Dieser Browser kann kein so großes Bild malen: Wählen Sie ein kleineres.',
  },

  /* ui/away/save.ts */
  awaySave: {
    isWithYourDownloads: (name: string) => `${name} liegt bei Ihren Downloads.`,
    thereIsNoRoomOn: 'auf dem Datenträger ist kein Platz',
    itMayNotBeWritten: 'dorthin darf nicht geschrieben werden',
    isSaved: (name: string) => `${name} ist gespeichert.`,
    wasNotSavedWhatStands: (name: string, whyNot: string) =>
      `${name} wurde nicht gespeichert: ${whyNot}. Was auf der Werkbank steht, bleibt, wie es ist.`,
  },

  /* ui/away/share/dropped.ts */
  awayShareDropped: {
    taken:
      'Ein Augenblick, eine Bremse, eine Lektion, aufbewahrte Blätter, eine Abbildung oder eine Tabelle dieser Werkbank oder ein Foto Ihrer Bremse.',
    opened: (name: string) => `${name} geöffnet`,
    wasNotOpenedNothingElse: (
      name: string,
      path: string | undefined,
      found: string | undefined,
      allowed: string | undefined,
    ) =>
      `${name} wurde nicht geöffnet; sonst hat sich nichts geändert. Ihr Augenblick, ${path}: gefunden ${found}; erlaubt: ${allowed}.`,
    isAPictureStartA: (name: string) =>
      `${name} ist ein Bild: Beginnen Sie hier eine eigene Bremse und ziehen Sie das Bild dann noch einmal her; so lassen sich die Stellen darin antippen.`,
    wasNotOpenedNothingElse2: (name: string, tellFinding: string) =>
      `${name} wurde nicht geöffnet; sonst hat sich nichts geändert. ${tellFinding}`,
    isAmongTheLessons: (name: string) => `${name} ist bei den Lektionen.`,
    oneFileAtATime: (name: string, more: number) =>
      `Eine Datei auf einmal: ${name} wurde genommen, ${more} weitere nicht.`,
    wasNotOpenedFoundBytes: (name: string, size: number, most: number) =>
      `${name} wurde nicht geöffnet: gefunden ${size} Byte; erlaubt: ${most}.`,
  },

  /* ui/away/share/moment.ts */
  awayShareMoment: {
    momentOfTheBench: 'Augenblick der Werkbank',
    tooMuchForALink: 'Zu viel für einen Link: Speichern Sie es als Datei.',
    linkCopied: 'Link kopiert.',
    theBrowserDoesNotLet:
      'Der Browser lässt die Seite nicht kopieren: Nehmen Sie die Adresse aus seiner Adresszeile.',
    wasNotOpenedFoundBytes: (name: string, size: number, mostfile: number) =>
      `${name} wurde nicht geöffnet: gefunden ${size} Byte; erlaubt: ${mostfile}.`,
    wasNotOpenedNothingElse: (name: string, other: string) =>
      `${name} wurde nicht geöffnet; sonst hat sich nichts geändert. ${other}`,
    opened: (name: string) => `${name} geöffnet`,
    allOfIt: 'Alles',
    wasNotOpenedNothingElse2: (
      name: string,
      path: string,
      found: string | undefined,
      allowed: string | undefined,
    ) =>
      `${name} wurde nicht geöffnet; sonst hat sich nichts geändert. ${path}: gefunden ${found}; erlaubt: ${allowed}.`,
  },

  /* ui/away/share/share-way.ts */
  awayShareShareWay: {
    codeWithTheLinkOf: 'Code mit dem Link dieses Augenblicks',
    linkCopied: 'Link kopiert.',
    theBrowserDoesNotLet:
      'Der Browser lässt die Seite nicht kopieren: Markieren Sie den Link und kopieren Sie ihn von Hand.',
    title: (title: string) => `Takeup: ${title}`,
    handedToTheSystem: 'Dem System übergeben.',
    theSystemDidNotTake:
      'Das System hat es nicht angenommen: Kopieren Sie den Link oder speichern Sie die Datei.',
    itOpensThisBenchJust:
      'Er öffnet diese Werkbank genau, wie sie steht: Bremse, Verschleiß, Zahn, Druck, Ebenen. Nichts wird irgendwohin gesendet: Der Link selbst enthält alles.',
    linkLetters: (length: number) => `Link, ${length} Zeichen`,
    copyLink: 'Link kopieren',
    share: 'Teilen…',
    thisPageRunsOnThis: 'Diese Seite läuft nur auf diesem Rechner',
    aFile: 'eine Datei',
    theLinkAndTheCode: (file: string) =>
      `(${file}). Link und Code öffnen sich hier, nicht auf einem Telefon. Für ein anderes Gerät speichern Sie die Datei und öffnen sie dort.`,
    theKeptMomentIsNot:
      'Der aufbewahrte Augenblick ist nicht im Code, damit er sich sofort lesen lässt. Der Link enthält ihn.',
    tooLongForACode: (length: number) =>
      `Zu lang für einen Code, den ein Telefon sofort liest (${length} Zeichen, höchstens 1 273). Kopieren Sie den Link oder senden Sie die Datei.`,
    linkAndCode: 'Link und Code',
    thereIsTooMuchOn:
      'Auf der Werkbank ist zu viel für einen Link (etwa eine eigene Bremse mit langer Laufleistung). Senden Sie es als Datei.',
    file: 'Datei',
    theSameMomentAsA:
      'Derselbe Augenblick als Datei von wenigen Kilobyte, für E-Mail oder USB-Stick, oder wo ein Messenger einen langen Link abschneidet. Ziehen Sie sie auf die Seite oder öffnen Sie sie hier.',
    saveAsAFile: 'Als Datei speichern',
    shareTheFile: 'Datei teilen…',
    openAFile: 'Datei öffnen',
    openAMomentsFile: 'Datei eines Augenblicks öffnen',
  },

  /* ui/away/sheets/sheets-way.ts */
  awaySheetsSheetsWay: {
    onePage: 'Eine Seite',
    pages: (length: number) => `${length} Seiten`,
    of: (onePage: string, paper: string) => `${onePage} ${paper}.`,
    paper: 'Papier',
    blackOnWhiteOfThe:
      'Schwarz auf Weiß, von der Bremse, wie sie auf der Werkbank steht. Das Drucken des Browsers tut dasselbe für den offenen Bereich.',
    lesson: 'Lektion',
    print: (name: string, name2: string) => `Drucken: ${name}, ${name2}`,
  },

  /* ui/away/sheets/sheets.ts */
  awaySheetsSheets: {
    namesName: 'Namen',
    namesTells: 'Die Bremse mit nummerierten Hinweislinien und Zeilen für die Namen.',
    namesName2: 'Zum Ausfüllen',
    namesAnswersName: 'Mit Lösungen',
    predictionsName: 'Vorhersagen',
    predictionsTells:
      'Die Fragen einer Lektion, mit Platz für die Vermutung, für das Beobachtete und für das Warum.',
    answers: 'Lösungen',
    measurementsName: 'Messungen',
    measurementsTells:
      'Das Blatt von Prüfen für beide Räder: zum Mitnehmen ans Fahrzeug, oder wie es dort ausgefüllt wurde.',
    blank: 'Leer',
    asFilledIn: 'Wie ausgefüllt',
    wearName: 'Verschleißbericht',
    wearTells:
      'Die Laufleistung auf der Werkbank: ihre Diagramme, was darin geschah und was zuerst endet.',
    wearName2: 'Drucken',
    logName: 'Protokoll der Fehlersuche',
    logTells:
      'Die Messwerte mit ihren Minuten: leer, oder mit dem, was am offenen Transporter gefunden wurde.',
    logFilledName: 'Wie es steht',
    orderName: 'Reihenfolge der Arbeit',
    orderTells:
      'Jeder Schritt für diese Bremse: was zu tun ist, was wegfliegen kann, worauf zu achten ist, und seine Vorsicht.',
    removalName: 'Zerlegen',
    fittingName: 'Zusammenbauen',
  },

  /* ui/away/ways.ts */
  awayWays: {
    figureName: 'Abbildung',
    figureTells:
      'Die Zeichnung, wie sie steht, für einen Text, eine Folie oder eine Wand: Linien oder Punkte, maßstäblich.',
    dataName: 'Daten',
    dataTells:
      'Messwerte, eine Laufleistung, die Kurven von Was wäre, wenn: als Tabelle für eine Tabellenkalkulation oder ein Programm.',
    shareTells:
      'Dieser Augenblick als Link, als Code für die Kamera eines Telefons oder als Datei.',
    sheetsName: 'Blätter',
    sheetsTells: 'Arbeitsblätter, Messungen, Berichte und Arbeitsfolgen, für A4 und Letter.',
    cutName: 'Ausschneidemodell',
    cutTells:
      'Die Bremse als flache Teile, zu schneiden aus Karton, Sperrholz oder Acrylglas: SVG, DXF, Seiten.',
    clipName: 'Clip',
    clipTells:
      'Was die Bremse tut, als Film mit ihren Klicks, als kurze Schleife oder als Streifen für Papier.',
  },

  /* ui/cautions.ts */
  cautions: {
    cautions: {
      wear: 'Bremsstaub ist beim Einatmen schädlich, gleich welcher Belag. Befeuchten oder mit einem Feinfiltersauger aufnehmen; nie abblasen oder trocken bürsten.',
      wearShort:
        'Bremsstaub ist beim Einatmen schädlich. Befeuchten oder mit einem Feinfiltersauger aufnehmen; nie abblasen oder trocken bürsten.',
      drumOff:
        'Räder mit Keilen sichern und das Fahrzeug auf festem Grund auf Böcke stellen, bevor die Handbremse gelöst wird. Nie auf den Rand schlagen; bleibt die Trommel fest, nach einer anderen Sperre suchen.',
      park: 'Ein Fahrzeug am Hang rollt, wenn die Bremse loslässt. Mit Keilen sichern, bevor erprobt oder ein Seilzug entspannt wird.',
      inspect:
        'Die Grenzen einer Lehrbremse gelten für keine andere Bremse. Nehmen Sie die Zahlen des Herstellers und die Prägung auf der Trommel; mancherorts dürfen nur zugelassene Personen diese Arbeit tun.',
      paper:
        'Nehmen Sie die Zahlen des Herstellers und die Prägung auf der Trommel; mancherorts dürfen nur zugelassene Personen diese Arbeit tun. Bremsstaub ist schädlich: befeuchten oder aufnehmen; nie abblasen oder trocken bürsten.',
      fault:
        'Nur ein Fahrzeug erproben, das sicher bewegt werden kann. Was vielleicht nicht anhält, fährt nicht hinaus.',
      piston:
        'Bei abgenommener Trommel das Pedal nicht treten: Ein Kolben kann aus seiner Bohrung kommen.',
      strut:
        'Die Druckstange entlasten, bevor der Hebel angehoben wird; ein belasteter Zahn lässt plötzlich los. Finger fernhalten und Augenschutz tragen.',
      forecast:
        'Eine Vorhersage ist keine Freigabe. Messen Sie in dem Abstand, den der Hersteller angibt, oder früher.',
      springs: 'Federn speichern Kraft; richtiges Werkzeug und Augenschutz verwenden.',
      fitting:
        'Eine Seite ganz lassen, als Muster, und beide Räder der Achse gleich bestücken. Vor der ersten Fahrt auf der Straße im Schritttempo auf ebenem Grund erproben.',
      proof: 'Eine Bremse, die in diesem Modell hält, beweist nichts über eine echte.',
      hot: 'Eine Trommel kann noch lange nach dem Anhalten die Haut verbrennen und Flüssigkeit entzünden. Abkühlen lassen; nicht abschrecken.',
      doubt: 'Im Zweifel nicht wieder einbauen; eine Fachkraft fragen.',
      hubRust: 'Augenschutz tragen. Keine Hitze in der Nähe von Flüssigkeit.',
      stands: 'Das Fahrzeug auf Böcke stellen, nie nur auf den Wagenheber.',
      fluid:
        'Bremsflüssigkeit schadet Augen, Haut und Lack. Nur die Sorte verwenden, die der Hersteller nennt, aus verschlossenem Behälter.',
      standing:
        'Dies zeigt, wie der Mechanismus arbeitet. Es ist keine Reparaturanleitung: Die Zahlen des Fahrzeugherstellers, örtliche Vorschriften und zugelassene Praxis gehen vor.',
    },
  },

  /* ui/embed/address.ts */
  embedAddress: {
    foundAllowed: (path: string, found: string, allowed: string) =>
      `${path}: gefunden ${found}; erlaubt: ${allowed}.`,
    noneOrSomeOf: (controlNames: string) => `keine oder einige von ${controlNames}`,
    allOfIt: 'alles',
  },

  /* ui/embed/embed.ts */
  embedEmbed: {
    readings: 'Messwerte',
    drum: 'Trommel',
    parts: 'Teile',
    names: 'Namen',
    brakeDrawing: 'Zeichnung der Bremse',
    openItOnTheBench: 'Auf der Werkbank öffnen',
  },

  /* ui/embed/main.ts */
  embedMain: {
    thisBrakeCouldNotBe: (wrong: string) => `Diese Bremse konnte nicht gezeigt werden. ${wrong}`,
  },

  /* ui/format.ts */
  format: {
    decimalMark: ',',
  },

  /* ui/formula-reader.ts */
  formulaReader: {
    noMoreThanParts: (mostparts: number) => `nicht mehr als ${mostparts} Teile`,
    aPlainNumber: 'eine einfache Zahl',
    andBrackets: '+ − · / ^ und Klammern',
    oneOf: (functions: string) => `eines von ${functions}`,
    bracketsAfter: (name: string) => `Klammern nach ${name}`,
    aReadingASizeOr: 'ein Messwert, eine Größe oder eine Einheit',
    numbersNamesUnitsAndBrackets: 'Zahlen, Namen, Einheiten, + − · / ^ und Klammern',
    aSumOfReadingsAnd: 'eine Rechnung mit Messwerten und Größen',
    characters: (length: number) => `${length} Zeichen`,
    atMost: (longest: number) => `höchstens ${longest}`,
    oneNumberAsItsResult: 'eine Zahl als Ergebnis',
    theEnd: 'das Ende',
    aWholeSumSomethingIs: 'eine vollständige Rechnung: Hier fehlt etwas oder ist etwas zu viel',
    unitsThatGoTogetherOnly:
      'Einheiten, die zusammenpassen: Nur gleiche lassen sich addieren, und sin, exp und log nehmen reine Zahlen',
    aSumThatCanBe: 'eine Rechnung, die sich ausrechnen lässt',
  },

  /* sim/study/working/pedal.ts */
  studyWorkingPedal: {
    ratioOfThePedal: 'Pedalübersetzung',
    areaOfTheMasterCylinder: 'Fläche des Hauptzylinders, π·d²/4',
    freePlayAtThePush: 'Leerspiel an der Kolbenstange',
    brakesThatArePressed: 'Bremsen dieser Achse, die betätigt werden',
    fluidThatOneBrakeTakes: 'Flüssigkeit, die eine Bremse aufnimmt',
    giveWithoutThisAxlesLines: 'Nachgiebigkeit des Bremskreises ohne die Leitungen dieser Achse',
    pressureOfTheMasterCylinder: 'Druck des Hauptzylinders',
    giveOfThisAxlesLines: 'Nachgiebigkeit der Leitungen dieser Achse',
    pressureInThisAxlesLine: 'Druck in der Leitung dieser Achse',
    pressureThatStaysInIt: 'Druck, der darin bleibt',
    gainOfTheBooster: 'Verstärkung des Bremskraftverstärkers',
    footAtWhichItsHelp: 'Fußkraft, bei der seine Hilfe erschöpft ist',
    freePlayAtThePedal: 'Leerspiel am Pedal',
    movesThePistons: 'Bewegt die Kolben',
    giveInTheCircuit: 'Nachgeben im Kreis',
    airInTheCircuit: 'Luft im Bremskreis',
    playOfTheBooster: 'Spiel des Bremskraftverstärkers',
    pistonsThatSealsDrewBack: 'Kolben, die Dichtungen zurückgezogen haben',
    strokeOfTheFailedCircuit: 'Hub des ausgefallenen Kreises',
    pistonTravel: (side: 'front' | 'rear') => `Kolbenweg, ${side === 'front' ? 'vorn' : 'hinten'}`,
    areaOfTheWheelCylinder: 'Fläche des Radzylinders, π·d²/4',
    strokeOfEachPiston: 'Hub jedes Kolbens',
    masterCylinderAtItsEnd: 'Hauptzylinder an seinem Ende',
    pedalAtThatPush: 'Pedal bei dieser Kraft',
    playOfTheBoosterAt: 'Spiel des Bremskraftverstärkers an der Kolbenstange',
    strokeOfTheMasterCylinder: 'Hub des Hauptzylinders',
    fluidThatOneBrakeTakesAtTheEnd: 'Flüssigkeit, die eine Bremse am Ende aufnimmt',
    ofItUntilBothLinings: 'Davon, bis beide Beläge anliegen',
    giveOfTheRestOf: 'Nachgiebigkeit des übrigen Bremskreises',
    howFarASealDraws: 'Wie weit eine Dichtung ihren Kolben zurückzieht',
    strokeThatIsLost: 'Hub, der verloren geht',
    pistonsDrawnBack: 'Kolben zurückgezogen',
    shoesToTheDrumAnd: 'Backen bis zur Trommel und ihr Nachgeben',
    giveOfItsLines: 'Nachgeben ihrer Leitungen',
    theWholeTravel: 'Der ganze Weg',
  },

  /* sim/study/working/road.ts, sim/study/working/parked.ts */
  studyWorkingRoad: {
    massOfTheVehicle: 'Masse des Fahrzeugs',
    rollingRadiusOfTheTyre: 'Rollradius des Reifens',
    brakesOfThisAxle: 'Bremsen dieser Achse',
    shareOfTheBrakingOn: 'Anteil dieser Achse an der Bremsung',
    standardGravity: 'Normfallbeschleunigung',
    speedBeforeIt: 'Geschwindigkeit davor',
    meanDeceleration: 'Mittlere Verzögerung',
    torqueOfEachBrakeAt: 'Moment jeder Bremse bei diesem Druck',
    brakingOfThisAxleAt: 'Bremskraft dieser Achse auf der Straße',
    brakingOfTheOtherAxle: 'Bremskraft der anderen Achse auf der Straße',
    brakesThatWork: 'Bremsen, die arbeiten',
    energyOfTheStop: 'Energie der Bremsung',
    heatCapacityOfTheDrum: 'Wärmekapazität der Trommel',
    stoppingDistance: 'Bremsweg',
    theEndOfWhatIs: (name: string) => `${name}: das Ende dessen, was abgesucht wird`,
    aLittleLess: (name: string) => `${name}, etwas weniger`,
    aLittleMore: (name: string) => `${name}, etwas mehr`,
    byTheFirst: (name: string) => `${name} beim ersten`,
    byTheSecond: (name: string) => `${name} beim zweiten`,
    thatIsWanted: (name: string) => `${name}, wie gewünscht`,
    decelerationThatIsWanted: 'Gewünschte Verzögerung',
    torqueAtThePressureThat: 'Moment bei dem Druck, der gefunden wurde',
    itSlowsSoWithThe: 'So verzögert es schon bei gelöstem Pedal',
    linePressure: 'Leitungsdruck',
    deceleration: 'Verzögerung',
    torqueOfTheBrakeLet: 'Moment der gelösten Bremse, während sie dreht',
    speed: 'Geschwindigkeit',
    rollingResistanceOverWeight: 'Rollwiderstand durch Gewicht',
    airsDragOverSpeedSquared: 'Luftwiderstand durch Geschwindigkeit im Quadrat',
    drumAsWarmAsIt: 'Trommel, so warm wie sie ist',
    riseAtWhichItLoses: 'Erwärmung, bei der sie so viel verliert, wie sie bekommt',
    theStrongerWheel: 'Das stärkere Rad',
    theWeakerWheel: 'Das schwächere Rad',
    bothShoesOfTheLeft: 'Beide Backen des linken Rads',
    bothShoesOfTheRight: 'Beide Backen des rechten Rads',
    neitherBrakes: 'Keines bremst',
    ratioOfTheHandLever: 'Übersetzung des Handhebels',
    efficiencyOfCableAndLever: 'Wirkungsgrad von Seilzug und Hebel',
    pullOfEachCable: 'Zug an jedem Seilzug',
    torqueOfTheShoe: (side: 'front' | 'rear') =>
      `Moment der ${side === 'front' ? 'vorderen' : 'hinteren'} Backe`,
    slipTorqueOfEachWheel: 'Rutschmoment jedes Rads',
    pushOfTheStrutMean: 'Kraft der Druckstange, Mittel beider Richtungen',
    slack: 'Lose',
    stiffnessOfTheCable: 'Steifigkeit des Seilzugs',
    travelOfTheHook: 'Weg des Hakens',
    cableThatANotchTakes: 'Seilweg je Raste',
    riseOverLevelDistance: 'Höhe durch waagerechte Strecke',
    torqueAtWhichTheWheel: 'Moment, bei dem das Rad rutscht',
    torqueThatTheSlopeAsks: 'Moment, das die Steigung fordert',
    pullOfTheCable: 'Zug am Seilzug',
    torque: 'Moment',
  },

  /* sim/study/working/turn.ts, sim/study/working/film.ts */
  studyWorkingTurn: {
    gapWithTheDrumAt: (angle: string) => `Spalt bei Trommelstellung ${angle}`,
    torqueWithTheDrumAt: (angle: string) => `Moment bei Trommelstellung ${angle}`,
    meanRadiusOfTheDrum: 'Mittlerer Radius der Trommel jetzt',
    radiusVariesByThisTwice: 'Der Radius ändert sich zweimal je Umdrehung um ± so viel',
    cosineOfTwice: (angle: string) => `Kosinus von zweimal ${angle}`,
    onTheFaceNow: 'Jetzt auf der Fläche',
  },

  /* ui/glossary.ts */
  glossary: {
    terms: {
      drum: {
        word: 'Trommel',
        means: 'Drehender Ring, an den sich die Beläge drücken.',
        forms: ['Trommeln', 'Bremstrommel'],
      },
      bore: { word: 'Bohrung', means: 'Innendurchmesser der Trommel.' },
      lip: {
        word: 'Grat',
        means:
          'Nicht bestrichener Rand der Trommel, der stehen bleibt, während der Rest verschleißt.',
        forms: ['Trommelgrat'],
      },
      'backing plate': {
        word: 'Ankerplatte',
        means: 'Feste Platte, die die Teile trägt.',
        forms: ['Ankerplatten'],
      },
      'access hole': {
        word: 'Schauloch',
        means: 'Verschlossene Öffnung, um bei montierter Trommel an den Nachsteller zu kommen.',
      },
      machining: {
        word: 'Ausdrehen',
        means: 'Die Bohrung der Trommel rund schneiden.',
        forms: ['ausgedreht'],
      },
      shoe: {
        word: 'Backe',
        means: 'Träger eines Belags, aus Stahl.',
        forms: ['Backen', 'Bremsbacke', 'Bremsbacken'],
      },
      web: {
        word: 'Steg',
        means: 'Flache Platte der Backe, in voller Ansicht: Sie nimmt die Kräfte auf.',
        forms: ['Stege'],
      },
      table: { word: 'Kranz', means: 'Gebogener Streifen der Backe, der den Belag trägt.' },
      toe: { word: 'Spitze', means: 'Ende der Backe am Zylinder.', forms: ['Spitzen'] },
      heel: { word: 'Ferse', means: 'Ende der Backe an ihrem Bolzen.', forms: ['Fersen'] },
      lining: {
        word: 'Belag',
        means: 'Reibmaterial auf der Backe.',
        forms: ['Belags', 'Belages', 'Beläge', 'Belägen', 'Bremsbelag', 'Bremsbeläge'],
      },
      'bedding in': {
        word: 'Einlaufen',
        means: 'Verschleiß neuer Beläge, bis ihr ganzer Bogen trägt.',
        forms: ['eingelaufen', 'eingelaufene', 'eingelaufenen'],
      },
      'leading shoe': {
        word: 'auflaufende Backe',
        means: 'Die Trommel zieht sie fester an sich.',
        forms: [
          'auflaufenden Backe',
          'auflaufender Belag',
          'auflaufenden Belag',
          'auflaufende',
          'auflaufend',
        ],
      },
      'trailing shoe': {
        word: 'ablaufende Backe',
        means: 'Die Trommel drückt sie weg.',
        forms: [
          'ablaufenden Backe',
          'ablaufender Belag',
          'ablaufenden Belag',
          'ablaufende',
          'ablaufend',
        ],
      },
      'anchor pin': { word: 'Lagerbolzen', means: 'Drehpunkt einer Backe.', forms: ['Bolzen'] },
      abutment: { word: 'Widerlager', means: 'Fläche, auf der eine Ferse gleitet.' },
      'return spring': {
        word: 'Rückzugfeder',
        means: 'Zieht die Backen zusammen.',
        forms: ['Rückzugfedern', 'Federn'],
      },
      'hold-down': {
        word: 'Niederhalter',
        means: 'Hält eine Backe an der Ankerplatte.',
        forms: ['Niederhalterstift', 'Haltefeder'],
      },
      'wheel cylinder': {
        word: 'Radzylinder',
        means: 'Drückt beide Spitzen auseinander.',
        forms: ['Radzylindern', 'Radzylinders', 'Zylinder', 'Zylinders'],
      },
      piston: {
        word: 'Kolben',
        means: 'Stößel im Zylinder; er drückt seine Backe.',
        forms: ['Kolbens'],
      },
      cup: { word: 'Manschette', means: 'Dichtung eines Kolbens.', forms: ['Manschetten'] },
      'bleed point': {
        word: 'Entlüfter',
        means: 'Lässt Luft und Flüssigkeit heraus.',
        forms: ['Entlüfters'],
      },
      'free play': {
        word: 'Leerspiel',
        means: 'Pedalweg, bevor sich der Kolben des Hauptzylinders bewegt.',
      },
      strut: {
        word: 'Druckstange',
        means: 'Stange, die die Backen auf Abstand hält; ihre Länge bestimmt den Spalt.',
        forms: ['Druckstangen'],
      },
      'toothed lever': {
        word: 'Zahnhebel',
        means: 'Greift in die Zähne der Druckstange und macht sie länger, Zahn um Zahn.',
        forms: ['Hebel', 'Hebels'],
      },
      tooth: {
        word: 'Zahn',
        means: 'Ein Schritt des Nachstellers.',
        forms: ['Zähne', 'Zähnen', 'Zahns'],
      },
      'lost motion': {
        word: 'Totgang',
        means: 'Freier Weg, bevor der Nachsteller etwas merkt.',
        forms: ['Leerweg'],
      },
      click: {
        word: 'Klick',
        means: 'Der Hebel fällt in den nächsten Zahn.',
        forms: ['Klicks', 'klickt'],
      },
      'star wheel': { word: 'Sternrad', means: 'Gezahntes Rad auf einer Gewindedruckstange.' },
      wedge: {
        word: 'Keil',
        means: 'Stufenloses Abstandsstück zwischen Druckstange und Backe.',
        forms: ['Keils'],
      },
      'hot lock': {
        word: 'Heißsperre',
        means: 'Bimetall, das den Nachsteller sperrt, solange die Trommel heiß ist.',
      },
      'back off': {
        word: 'zurückstellen',
        means: 'Den Nachsteller kürzer machen, Zahn um Zahn.',
        forms: ['zurückgestellt'],
      },
      preset: {
        word: 'Voreinstellung',
        means: 'Einstellen der Backen, bevor die Trommel aufgesetzt wird.',
      },
      clearance: {
        word: 'Lüftspiel',
        means: 'Spalt vom Belag zur Trommel in Ruhe.',
        forms: ['Spiel', 'Spalt', 'Spalte', 'Spalts'],
      },
      'parking brake': {
        word: 'Handbremse',
        means: 'Hält das stehende Fahrzeug über einen Seilzug.',
        forms: ['angezogene Bremse', 'Feststellbremse'],
      },
      'parking lever': {
        word: 'Bremshebel',
        means: 'Hebel an der hinteren Backe, an dem der Seilzug zieht.',
      },
      notch: { word: 'Raste', means: 'Ein Klick des Handbremsgriffs.', forms: ['Rasten'] },
      slack: {
        word: 'Lose',
        means: 'Seilweg, der gezogen wird, bevor sich etwas bewegt.',
        forms: ['Seillose'],
      },
      'brake factor': {
        word: 'Bremsenkennwert',
        means: 'Reibkraft beider Beläge, geteilt durch die Kraft auf eine Spitze.',
        forms: ['Kennwert'],
      },
      'self-energising': {
        word: 'Selbstverstärkung',
        means: 'Die Reibung verstärkt die Zuspannung.',
        forms: ['selbstverstärkend'],
      },
      fade: { word: 'Fading', means: 'Verlust an Bremswirkung durch Hitze.' },
      stands: {
        word: 'Unterstellböcke',
        means: 'Tragen das angehobene Fahrzeug.',
        forms: ['Unterstellböcken'],
      },
      'split pin': {
        word: 'Splint',
        means: 'Gebogener Draht, der eine Mutter am Drehen hindert.',
        forms: ['Splints'],
      },
      tyre: { word: 'Reifen', means: 'Gummi auf dem Rad.' },
      gauge: { word: 'Messgerät', means: 'Werkzeug, das misst.', forms: ['Lehre'] },
    },
    britishAmerican: (british: string, american: string) => `Auch: ${british} · ${american}`,
    americanBritish: (american: string, british: string) => `Auch: ${american} · ${british}`,
  },

  /* ui/lessons/act.ts */
  lessonsAct: {
    friction: (front: unknown, rear: unknown) => `Reibung ${front} ${rear}`,
    lip: (lip: number) => `Grat ${lip}`,
    circuit: (mm3PerMPa: number) => `Kreis ${mm3PerMPa}`,
  },

  /* ui/lessons/action-text.ts */
  lessonsActionText: {
    codes: {
      forward: 'vorwärts',
      backward: 'rückwärts',
      stands: 'steht',
      click: 'zum nächsten Klick',
      limit: 'zur ersten Grenze',
      pull: 'ziehen',
      turn: 'drehen',
      rock: 'kippen',
      fitted: 'eingebaut',
      lost: 'verloren',
      on: 'ein',
      off: 'aus',
      names: 'Namen',
    },
    isValue: (name: string, value: string | number) => `${name}: ${value}`,
    no: 'nein',
  },

  /* ui/lessons/actions.ts */
  lessonsActions: {
    aNumber: 'eine Zahl',
    atLeast: (least: number) => `mindestens ${least}`,
    atMost: (most: number) => `höchstens ${most}`,
    trueOrFalse: 'true oder false',
    forceOfTheReturnSprings: 'Kraft der Rückzugfedern, 1: wie neu',
    theAdjusterIsStuckWhere: 'Der Nachsteller ist festgegangen, wo er steht',
    teethLetGoAboveThis: 'Zähne lassen über dieser Last der Druckstange los, N',
    pressureThatStaysInThe: 'Druck, der in der Leitung bleibt, bar',
    aStuckPartLeansOn: 'Ein festgegangenes Teil drückt auf die vordere Backe, N',
    aStuckPartLeansOn2: 'Ein festgegangenes Teil drückt auf die hintere Backe, N',
    drumOffCentreMm: 'Trommel außermittig, mm',
    drumOvalByMm: 'Trommel unrund um ± mm',
    pressesThePedalAndHolds: 'Tritt das Pedal und hält es',
    linePressureBar: 'Leitungsdruck, bar',
    howLongThePedalTakes: 'Wie lange das Pedal braucht, s',
    letsThePedalGo: 'Lässt das Pedal los',
    turnsTheDrum: 'Dreht die Trommel',
    forwardBackwardOrStands: 'forward, backward oder stands',
    drivesTheBrakeOnBy: 'Fährt die Bremse weiter, mit ihrem ersten Fahrprofil',
    soFarKm: 'So weit, km',
    clickOrLimit: 'click oder limit',
    shareOfTheStopsIn: 'Anteil der Bremsungen rückwärts, %',
    onPastTheLimits: 'Weiter über die Grenzen hinaus',
    howLongItIsShown: 'Wie lange es gezeigt wird, s',
    setsTheAdjusterByHand: 'Stellt den Nachsteller von Hand',
    toThisTooth: 'Auf diesen Zahn',
    onBySoManyLess: 'Um so viele weiter; unter 0: zurück',
    letsTheCableHoldThe: 'Lässt den Seilzug den Bremshebel vom Anschlag abhalten',
    atTheHookMm: 'Am Haken, mm',
    pullsTheParkingCable: 'Zieht am Handbremsseil',
    atEachBrakeN0: 'An jeder Bremse, N; 0 lässt los',
    slackBeyondTheBrakesOwn: 'Seilspiel über das der Bremse hinaus, mm',
    goesDownAHillThe: 'Fährt einen Berg hinab, die Bremse hält die Geschwindigkeit',
    slope: 'Gefälle, %',
    lengthKm: 'Länge, km',
    speedKmH: 'Geschwindigkeit, km/h',
    letsTheDrumCoolDown: 'Lässt die Trommel auf Lufttemperatur abkühlen',
    warmsTheDrumBySo: 'Erwärmt die Trommel um so viel',
    putsOnAStandingState: 'Legt einen festen Zustand der Bremse auf',
    itsName: 'Sein Name',
    putsAnotherTeachingBrakeOn: 'Legt eine andere Lehrbremse auf, neu',
    putsSomethingOutOfOrder: 'Macht etwas fehlerhaft',
    liningsOfAnotherFriction: 'Beläge mit anderer Reibung',
    plainNumber: 'Einfache Zahl',
    anotherGiveOfTheRest: 'Andere Nachgiebigkeit des übrigen Bremskreises',
    fitsNewShoes: 'Baut neue Backen ein',
    boreOfTheDrumMm: 'Innendurchmesser der Trommel, mm',
    diameterOfTheUnwornEdge: 'Durchmesser des unverschlissenen Rands, mm',
    toothTheAdjusterStandsAt: 'Zahn, auf dem der Nachsteller steht',
    putsTheWornShoesIn: 'Vertauscht die verschlissenen Backen',
    triesTheDrumByHand: 'Probiert die Trommel von Hand',
    pullTurnOrRock: 'pull, turn oder rock',
    somethingHoldsTheDrumBesides: 'Noch etwas hält die Trommel',
    rustAtTheHub: 'Rost an der Nabe',
    liningsRustedOn: 'Beläge angerostet',
    layersAndWhatIsLooked: 'Ebenen und was betrachtet wird',
    aLayer: 'Eine Ebene',
    of120Or40: '1, 20 oder 40',
    aPart: 'Ein Teil',
    fittedOrLost: 'fitted oder lost',
    keepsTheValuesOfThis: 'Bewahrt die Werte dieses Augenblicks unter einem Namen auf',
    theName: 'Der Name',
    holdsStill: 'Hält still',
    anActionDo: 'eine Handlung: do',
  },

  /* ui/lessons/translated.ts */
  lessonsTranslated: {
    textsOfALesson: 'Texte einer Lektion in einer anderen Sprache',
    nameOfTheLesson: 'Name der Lektion',
    language: 'Sprache',
    aPath: 'ein Pfad, seine Schlüssel durch Punkte getrennt',
    atLeastOneLetter: 'mindestens ein Buchstabe',
    textsByTheirPaths: 'Texte nach ihren Pfaden',
  },
  /* ui/lessons/format.ts */
  lessonsFormat: {
    aLayerOfTheDrawing: 'Eine Ebene der Zeichnung',
    whatTheChoiceSaysPiece: 'Was die Antwort sagt, Stück für Stück',
    aPieceOfIt: 'Ein Stück davon',
    theWords: 'Die Wörter',
    trueOrFalse: 'true oder false',
    doTheseWordsHold: 'Stimmen diese Wörter?',
    aChoice: 'Eine Antwort zur Wahl',
    forTheTeacherWhatChoosing: 'Für die Lehrkraft: was diese Wahl zeigt',
    forTheTeacherTheOne: 'Für die Lehrkraft: der eine Satz zur Rückmeldung',
    aConditionWithoutWhichThe: 'Eine Bedingung, ohne die der Schritt nicht stimmt',
    keyOfTheValueWith:
      'Schlüssel des Werts, davor der Name eines notierten Augenblicks und ein Punkt',
    aSecondKeyTheValue: 'Ein zweiter Schlüssel: Der Wert wird durch dessen Wert geteilt',
    aNumber: 'eine Zahl',
    atLeast: 'Mindestens',
    atMost: 'Höchstens',
    whereToLook: 'Wohin zu schauen ist',
    layersThatAreOn: 'Ebenen, die an sind',
    theNotedMomentThatThey:
      'Der notierte Augenblick, zu dem sie als Vorher genannt werden; fehlt er, der Anfang des Schritts',
    theNotedMomentThatThey2:
      'Der notierte Augenblick, zu dem sie genannt werden; fehlt er, das Ende',
    valuesToldCoveredWhileThe: 'Genannte Werte, verdeckt, solange die Frage offen ist',
    partsNamedAllWithThe: 'Benannte Teile; fehlt es, alle, mit der Ebene der Namen',
    aPartOfTheDrawing: 'ein Teil der Zeichnung',
    theChartOfWhatIs: 'Das Diagramm dessen, was gefahren wird',
    forTheTeacher: 'Für die Lehrkraft',
    whatTheStepIsReally: 'Worum es in dem Schritt wirklich geht',
    whatToPointAt: 'Worauf zu zeigen ist',
    whatToAskNext: 'Was als Nächstes zu fragen ist',
    atLeast0: 'mindestens 0',
    withTheVote: 'Mit der Abstimmung',
    aStep: 'Ein Schritt',
    inTheListOfSteps: 'In der Liste der Schritte',
    whichDrawing: 'Welche Zeichnung',
    howTheStepBeginsFrom: 'Wie der Schritt beginnt, vom Anfang der Lektion aus',
    whatIsDone: 'Was getan wird',
    theQuestion: 'Die Frage',
    whatOneMayChooseFrom: 'Woraus man wählen darf',
    whatTheButtonSaysThat: 'Was auf der Schaltfläche steht, die es tut',
    whatItShows: 'Was es zeigt',
    whatFollowsSaidOnceThe: 'Was folgt: gesagt, sobald der Schritt aufgelöst ist',
    whatIsSaidInA: 'Was gesagt wird, in einem Vortrag',
    atLeast1: 'mindestens 1',
    atMost120: 'höchstens 120',
    howLongItTakesIn: 'Wie lange es dauert, in einem Vortrag, s',
    whatOneMayTryWhen: 'Was man probieren kann, wenn der Vortrag hier angehalten wird',
    holdsIf: 'Stimmt, wenn',
    aLessonOrATalk: 'Eine Lektion oder ein Vortrag',
    whereEditorsFindTheSchema: 'Wo Editoren das Schema finden',
    smallLettersFiguresAndHyphens: 'Kleinbuchstaben, Ziffern und Bindestriche',
    itsNameAmongAllLessons: 'Ihr Name unter allen Lektionen',
    aTalkHasNoQuestions: 'Ein Vortrag hat keine Fragen und läuft von selbst',
    itsPlaceInACourse: 'Ihr Platz in einem Kurs',
    itsOneIdea: 'Ihr einer Gedanke',
    forWhom: 'Für wen',
    howLongItTakes: 'Wie lange sie dauert',
    aTeachingBrake: 'Eine Lehrbremse',
    aWholeSceneInThe: 'Eine ganze Szene, anstelle einer Lehrbremse',
    theStandingStateItBegins: 'Der feste Zustand, in dem sie beginnt',
    cautionInViewAllThe: 'Vorsicht, die ganze Zeit im Blick',
    forTheTeacherBeforeIt: 'Für die Lehrkraft: davor',
    forTheTeacherAfterIt: 'Für die Lehrkraft: danach',
    forTheTeacherWithTen: 'Für die Lehrkraft: mit nur zehn Minuten',
    whatIfTheEndOf: 'Was wäre, wenn: das Ende der Lektion',
    itsSteps: 'Ihre Schritte',
  },

  /* ui/lessons/holds.ts */
  lessonsHolds: {
    atLeast: (least: number) => `mindestens ${least}`,
    atMost: (most: number) => `höchstens ${most}`,
    aValueThatIsTold: 'ein Wert, der hier genannt wird',
    over: (over: string) => ` durch ${over}`,
    found: (value: string, over: string, toPrecision: string) =>
      `${value}${over} von ${toPrecision}`,
    whatTheBrakeCanDo: 'was die Bremse kann',
  },

  /* ui/lessons/read.ts */
  lessonsRead: {
    theNearestIs: (what: string, meant: string) => `${what}; am nächsten kommt ${meant}`,
    aMoment: (moments: string) => `ein Augenblick: ${moments}`,
    theKeyOfAValue: 'der Schlüssel eines Werts',
    aStateOfTheBrake: (own: string) => `ein Zustand der Bremse: ${own}`,
    aTeachingBrake: (brakes: string) => `eine Lehrbremse: ${brakes}`,
    aStateOfTheBrake2: (known: string) => `ein Zustand der Bremse: ${known}`,
    aQuestion: 'eine Frage',
    noneInATalk: 'keine in einem Vortrag',
    whatIsSaid: 'was gesagt wird',
    thisKeyIsNeeded: 'dieser Schlüssel wird gebraucht',
    thatHoldInAllTheir: (right: number) => `${right}, die in allen Wörtern stimmen`,
    exactlyOne: 'genau eine',
    aTeachingBrake2: (known: string) => `eine Lehrbremse: ${known}`,
    allowed: (mostlesson: number) => `höchstens ${mostlesson} Zeichen`,
  },

  /* ui/lessons/recorded.ts */
  lessonsRecorded: {
    size: (path: string, was: string, is: string) =>
      `eine Abmessung der Bremse, ${path}: ${was} auf ${is}`,
    fault: 'ein in die Bremse eingebauter Fehler',
    adjuster: 'eine andere Art von Nachsteller',
    otherWheel: 'wie das andere Rad der Achse beschaffen ist',
    linings: 'Beläge und Trommel anders verschlissen als durch Fahren auf der einfachen Strecke',
    tooth: (tooth: number) =>
      `der Nachsteller auf Zahn ${tooth}, den eine Betätigung sofort verlässt`,
    temperature: (degrees: number) => `die Trommel mit ${degrees} °C`,
    film: 'was auf den Reibflächen liegt',
    condition: (what: string) => `nicht in Ordnung: ${what}`,
    conditions: {
      surface: 'die Oberfläche eines Belags',
      pistonStuck: 'ein festsitzender Kolben',
      cupExtra: 'ein schwergängiger Kolben',
      groove: 'eine eingelaufene Auflage der Ankerplatte',
      teethHold: 'Zähne, die wieder halten',
      leverSpring: 'die Feder des Nachstellhebels',
      adjusterStep: 'der Nachsteller auf der falschen Seite',
      keptCable: 'ein Seil, das seinen Zug behält',
      leverLoss: 'ein schwergängiger Handbremshebel',
      drumRise: 'ein verschlissenes Radlager',
      unhooked: 'eine ausgehängte Rückzugfeder',
    },
    aside: 'das zur Seite geschobene Backenpaar',
    brokenLoose: 'durch einen Schlag gelöste Beläge',
    rightWheel: 'was am rechten Rad nicht in Ordnung ist',
    rolls: 'die weggenommenen Keile',
    groove: 'eine Rille in einer Auflage, von der Seite gesehen',
    bending: 'Backen, die sich biegen',
    hands: 'Hände in der Bremse',
    notOn: 'neue Backen, solange die Trommel nicht aufgesetzt ist',
    drawing: (station: string) => `die Zeichnung von ${station}`,
  },
  /* ui/lessons/wants.ts */
  lessonsWants: {
    step: (clamp: number) => `Schritt ${clamp}`,
    endOfTheLesson: 'Ende der Lektion',
    choice: (a: string) => `Antwort ${a}`,
    handsOfTheClass: 'Handzeichen der Klasse',
    talkGoesOn: 'Vortrag geht weiter',
    whatHappens: 'was geschieht',
    askedAgain: 'noch einmal gefragt',
    lessonLeft: 'Lektion verlassen',
    lessonFromItsStart: 'Lektion von Anfang an',
    lessonKept: 'Lektion aufbewahrt',
    typedIntoYourLesson: 'in Ihre Lektion geschrieben',
    draftPutAway: 'Entwurf weggelegt',
    yourLesson: 'Ihre Lektion',
    lessonTakenOffTheShelf: 'Lektion aus dem Regal genommen',
    wallBlank: 'Wand leer',
    wallShown: 'Wand gezeigt',
  },

  /* ui/life-run.ts */
  lifeRun: {
    itsNewsCouldNotBe: 'die Rückmeldung konnte nicht gelesen werden',
  },

  /* ui/pieces/ago-text.ts */
  piecesAgoText: {
    sAgo: (ago: string) => `vor ${ago}\u00a0s`,
  },

  /* ui/pieces/ask-field.ts */
  piecesAskField: {
    ask: 'Fragen',
    askInYourOwnWords: 'Mit eigenen Worten fragen',
  },

  /* ui/pieces/cells.ts */
  piecesCells: {
    atItsLimit: 'an der Grenze',
    pastItsLimit: 'über der Grenze',
    liningLeft: (side: 'front' | 'rear') => `Restbelag, ${side === 'front' ? 'vorn' : 'hinten'}`,
    brakeFactorAfterSprings: 'Bremsenkennwert C*, nach Abzug der Federn',
    locks: 'blockiert',
    leading: (value: string) => `Auflaufend ${value}`,
    trailing: (value: string) => `Ablaufend ${value}`,
    onFullPistonForce: (value: unknown) => [value, ' auf die volle Kolbenkraft'],
  },

  /* ui/pieces/chart-strip.ts */
  piecesChartStrip: {
    theCurvesCannotBeDrawn: (error: unknown) =>
      `Die Kurven lassen sich in diesem Browser nicht zeichnen (${error}). Alles andere geht.`,
    nothingDriven: 'nichts gefahren',
    kmClearanceMmTooth: (km: string, clearance: string, tooth: number, keptText: string) =>
      `${km} km, Lüftspiel ${clearance} mm, Zahn ${tooth}${keptText}`,
    shownInTheLastLane: 'Gezeigt in der letzten Spur',
    momentOfTheRunArrow:
      'Augenblick der Fahrt: Pfeiltasten gehen darin weiter, Bildtasten von Ereignis zu Ereignis',
    clearanceAndLiningsOverThe: 'Lüftspiel und Beläge über der Strecke',
  },

  /* ui/pieces/few.ts */
  piecesFew: {
    readings: 'Messwerte',
    why: 'Warum',
  },

  /* ui/pieces/icons.ts */
  piecesIcons: {
    caution: 'Vorsicht',
  },

  /* ui/pieces/look-back-rows.ts */
  piecesLookBackRows: {
    msMarked: (to: string) => `${to}\u00a0ms markiert`,
    sMarked: (to: string) => `${to}\u00a0s markiert`,
    click: 'Klick',
    lookBack: 'Rückblick',
    stepBack: 'Schritt zurück',
    stepOn: 'Schritt weiter',
    lastClick: 'Letzter Klick',
    fromHere: 'Ab hier',
    toHere: 'Bis hier',
  },

  /* ui/pieces/marks.ts */
  piecesMarks: {
    inLimit: 'In der Grenze',
    watch: 'Beobachten',
    reject: 'Ausscheiden',
    open: 'Offen',
  },

  /* ui/pieces/names-on-paper.ts */
  piecesNamesOnPaper: {
    theBrakeWithNumberedParts: 'Die Bremse mit nummerierten Teilen',
    under: (wheel: 'Left' | 'Right', front: 'left' | 'right') =>
      `${wheel === 'Left' ? 'Linkes' : 'Rechtes'} Hinterrad von außen, Trommel aufgeschnitten. Die Front des Fahrzeugs ist ${front === 'left' ? 'links' : 'rechts'}.`,
    nameThePartsAnswers: 'Benennen Sie die Teile: Lösungen',
    nameTheParts: 'Benennen Sie die Teile',
    namesAnswers: 'Namen, Lösungen',
    theFrontShoeIsThe: 'Die vordere Backe ist die',
    shoe: (roleOf: 'leading' | 'trailing') =>
      `${roleOf === 'leading' ? 'auflaufende' : 'ablaufende'} Backe`,
    theDrumTurns: 'Die Trommel dreht',
    againstTheClockForward: 'gegen den Uhrzeigersinn, vorwärts',
    withTheClockForward: 'im Uhrzeigersinn, vorwärts',
    theRearShoeIsThe: 'Die hintere Backe ist die',
    chooseThreePartsWhatWould: 'Wählen Sie drei Teile. Was ginge ohne sie schief?',
    withoutPart: (piece: unknown) => ['Ohne Teil ______', piece],
  },

  /* ui/pieces/number-field.ts */
  piecesNumberField: {
    found: (name: string, value: string, least: string, most: string, unit: string) =>
      `${name}: gefunden „${value}“; erlaubt: eine Zahl von ${least} bis ${most}${unit}.`,
  },

  /* ui/pieces/paper-sheet.ts */
  piecesPaperSheet: {
    sceneVersionStepKm: (
      guest: string,
      name: string,
      sceneversion: number,
      tooth: number,
      km: string,
    ) => `${guest}, Szene ${name}, Version ${sceneversion}, Schritt ${tooth}, ${km} km`,
    teachingBrakeItsLimitsAre: (standLine: string) =>
      `${standLine} · Lehrbremse: Ihre Grenzen sind nicht die Ihres Fahrzeugs.`,
    takeup: (kind: string) => `Takeup · ${kind}`,
  },

  /* ui/pieces/picker.ts */
  piecesPicker: {
    none: 'nichts',
    find: (label: string) => `Suchen: ${label}`,
    typeToFind: 'Zum Suchen tippen',
    nothingOfThatNameTry: 'Nichts mit diesem Namen. Versuchen Sie ein Teil: Feder, Belag, Seilzug.',
  },
  /* ui/pieces/press-panel.ts */
  piecesPressPanel: {
    stages: {
      rest: 'Federn halten',
      out: 'Nach außen',
      climb: 'Steigen',
      drop: 'Einfallen',
      ring: 'Klick',
      held: 'Gehalten',
      release: 'Lösen',
    },
    ofItsTooth: (part: string) => `${part} % seines Zahns`,
    nothingOfItsTooth: 'nichts von seinem Zahn',
    itsPlayWasNotUsed: 'Sein Spiel wurde nicht aufgebraucht',
    itClimbed: (share: string) => `Er stieg um ${share}`,
    thePedalGoesDownThe:
      'Das Pedal geht nach unten: Die Federn halten die Backen noch an der Druckstange',
    theShoesGoOutThe: 'Die Backen gehen nach außen; zuerst wird das Spiel aufgebraucht',
    pastThePlayTheLever: 'Ist das Spiel aufgebraucht, steigt der Hebel an seinem Zahn',
    overTheCrestItDrops: 'Über die Zahnkuppe: Er fällt ein',
    tooth: 'Zahn',
    clickTheStrutIsLonger: (tooth: string, tooth2: string) =>
      `Klick: ${tooth === 'step' ? 'Schritt' : tooth} ${tooth2}. Die Druckstange ist länger`,
    andMoreIsNeeded: (back: string) => `${back}, und es braucht mehr`,
    thePedalIsLetGo: 'Das Pedal wird losgelassen: Die Backen ruhen auf der längeren Druckstange',
    andFallsBackNo: (back: string, step: 'click' | 'step') =>
      `${back}; er fällt zurück: kein ${step === 'click' ? 'Klick' : 'Schritt'}`,
    theLastToothIsIn: 'Der letzte Zahn ist genommen: Es wird nichts mehr nachgestellt',
    aPressThatS: (step: 'click' | 'step') =>
      `Eine Betätigung mit ${step === 'click' ? 'Klick' : 'Schritt'}`,
    itClimbs: (share: string) => `Er steigt um ${share}`,
    theLastPressClimbedAnd: (share: string) =>
      `Bei der letzten Betätigung stieg er um ${share} und fiel zurück`,
    pressTheBarShowsHow:
      'Treten Sie: Der Balken zeigt, wie weit die Backen an der Druckstange auseinandergehen',
    there: (there: unknown) => ['da ', there],
    needed: (needed: unknown) => ['nötig ', needed],
    shoesApartAtTheStrut: 'Backenabstand an der Druckstange',
    time: (paceName: string) => `Zeit ${paceName}`,
    skipAnyKey: 'Überspringen (beliebige Taste)',
  },

  /* ui/pieces/reading-name.ts */
  piecesReadingName: {
    side: (side: 'front' | 'rear') => (side === 'front' ? 'vorn' : 'hinten'),
    ofSide: (name: string, side: string) => `${name}, ${side}`,
  },

  /* ui/pieces/time-line.ts */
  piecesTimeLine: {
    timeRunsAt: 'Zeit läuft mit',
    oneStep: 'Ein Schritt',
    goOn: 'Weiter',
    stepBack: 'Schritt zurück',
    lookBack: 'Rückblick',
  },

  /* ui/plot/lanes.ts */
  plotLanes: {
    keptAsAGhostKm: (
      distance: string,
      clearance: string,
      down: string,
      down2: string,
      tooth: number,
    ) =>
      `; als Schattenbild aufbewahrt: ${distance} km, Lüftspiel ${clearance} mm, Beläge ${down} und ${down2} mm, Zahn ${tooth}`,
    brakeFactor: 'Bremsenkennwert C*',
    drumTemperature: 'Trommeltemperatur',
    pedalTravel: 'Pedalweg',
    dragReleased: 'Schleifmoment, gelöst',
    clearance: 'Lüftspiel',
    mmAShoe: 'mm je Backe',
    dragsBelow0: 'schleift unter 0',
    lining: 'Belag',
    front: (down: string) => `vorn ${down}`,
    rear: (down: string) => `hinten ${down}`,
    limit: (thin: string) => `Grenze ${thin}`,
    afterSprings: 'nach Abzug der Federn',
    of: (teeth: number) => `von ${teeth}`,
    cAtThePress: '°C bei der Betätigung',
    mmOfTravel: 'mm Weg',
    drag: 'Schleifen',
    nMTurnTheCold: 'N·m drehen die kalte Trommel',
  },

  /* ui/plot/pedal-plot.ts */
  plotPedalPlot: {
    plotKey:
      'Weiß: Ein Belag beginnt zu schleifen. Grün: Beide liegen an der Trommel an. Schwarz: das Pedal, wie es jetzt steht.',
    forceOfTheFootAgainst: 'Fußkraft über dem Pedalweg',
    pedalTravelMm: 'Pedalweg, mm',
  },

  /* ui/questions/list-one.ts */
  questionsListOne: {
    q001Ask:
      'Die Trommel kommt ein Stück heraus und bleibt dann hängen, obwohl das Handbremsseil schlaff ist. Was hält sie?',
    q001Answer:
      'Der Grat am Rand der Trommel. Beläge, die weiter außen ruhen, müssen zurück, Zahn um Zahn.',
    q001Steps:
      'An der Trommel ziehen; die Überdeckung an Spitze, Mitte und Ferse ablesen und die Zähne, die zurückzustellen sind.',
    q001SetupState: 'Second set',
    q002Ask: 'Wie halte ich den Hebel weg, damit sich der Nachsteller zurückdrehen lässt?',
    q002Answer:
      'Erst den Hebel aus seinen Zähnen heben, dann zurückstellen: Sägezähne halten in einer Richtung.',
    q002Steps:
      'Einen Zahn zurückstellen; die Lupe zeigt, wie sich der Hebel hebt, bevor er sich bewegt.',
    q004Ask: 'Verschleißgrat oder Rost an der Nabe, und wie herum geht der Nachsteller?',
    q004Answer:
      'Ein Grat lässt sie ein wenig gleiten, Rost an der Nabe gar nicht. Kürzer heißt zurück zu Zahn 0, gleich auf welcher Seite.',
    q004Steps:
      'Beantworten Sie die einfachen Fragen von „Welcher ist meiner?“; die wahrscheinlichen Sperren stehen der Reihe nach.',
    q005Ask: 'Rostlöser, Abzieher, Hitze und Hammer haben sie nicht bewegt. Was bleibt noch?',
    q005Answer:
      'Die Kraft geht durch Grat, Belag und Stift des Niederhalters. Suchen Sie die Sperre, die noch da ist, und lösen Sie diese.',
    q005Steps:
      'Jede Sperre einstellen, ziehen und ablesen, was der Zug mit Belag und Niederhaltern macht.',
    q007Ask:
      'Ich habe die Backen nach einer Regel mit Umdrehungen des Rads eingestellt, und jetzt sitzt die Trommel fest. Wie lasse ich sie wieder los, und welche Regel stimmt?',
    q007Answer:
      'Zahn um Zahn zurückstellen, bis die Überdeckung weg ist. Eine Lehre am Innendurchmesser ist die Regel, die nicht vom Gefühl abhängt.',
    q007Steps:
      'Die Zähne ablesen, die zurückzustellen sind; dann Neue Backen öffnen, Schritt Voreinstellen, für die Lehre.',
    q008Ask:
      'Ich taste durch das Loch und finde das Teil nicht, das den Nachsteller freigibt. Wonach suche ich?',
    q008Answer: 'Nach dem Zahnhebel an der vorderen Backe, über der Nabe.',
    q008Steps:
      'Namen sind an: Zahnhebel und Schauloch suchen. „Werkbank“ dreht die Ansicht zum anderen Rad.',
    q010Ask:
      'Neue Backen sind drauf, die Trommel hängt an einer davon, und es gibt keine Schraube zum Zurückdrehen. Wie stellt man das zurück?',
    q010Answer:
      'Den Zahnhebel anheben und auf die ersten Zähne zurückstellen; das Paar zentrieren.',
    q010Steps:
      'Zurückstellen, dann weiter zu „Zentrieren“; ob die Trommel darübergeht, steht daneben.',
    q011Ask:
      'Alles ist an seinem Platz und der Nachsteller ganz drin, trotzdem setzt sich die Trommel nicht. Warum?',
    q011Answer:
      'Druckstange falsch eingesetzt, Hebel nicht am Anschlag, Paar außermittig, Grat oder Belag zu groß: Jedes ändert das Maß über die Backen.',
    q011Steps:
      'Erst die richtigen Teile, dann zurückstellen und zentrieren: Ob die Trommel darübergeht, steht bei jedem Schritt.',
    q013Ask:
      'Ich habe nur den Radzylinder gewechselt, und jetzt sind dieselben Backen zu eng. Was hat sich verschoben?',
    q013Answer:
      'Druck, der in der Leitung geblieben ist, hält die Kolben draußen; öffnen Sie den Entlüfter, und die Federn bringen sie zurück.',
    q013Steps: 'Schlauch sperrt den Rückweg: „Räder angehoben“ und „Entlüfter öffnen“ ansehen.',
    q014Ask: 'Eine Ersatztrommel ging stramm drauf und saß dann fest. Nachsteller oder Seilzug?',
    q014Answer:
      'Der Nachsteller steht noch für die verschlissene Trommel: Eine kleinere Bohrung hat keinen Platz dafür. Zurückstellen; den Seilzug zuletzt.',
    q014Steps:
      'In Schritt 1 die Trommel auf neu setzen: Mit der Druckstange für verschlissene Beläge geht sie nicht darüber. Zurückstellen.',
    q016Ask: 'Wie nimmt der gestufte Nachsteller Verschleiß auf, und wann rastet er ein?',
    q016Answer:
      'Beim Treten gehen die Backen auseinander; über den Totgang hinaus um einen ganzen Zahn, und der Hebel fällt in den nächsten.',
    q016Steps:
      'Bis zum nächsten Klick weiter verschleißen und die Lupe ansehen; er fällt beim Treten ein, an der Zahnkuppe.',
    q016SetupState: 'Before a click',
    q017Ask:
      'Der Nachsteller stellt anscheinend nicht nach. Welche Bewegung soll ihn eigentlich drehen?',
    q017Answer:
      'Die zwei Backen, die auseinandergehen, um den Totgang und einen Zahn mehr. Alles darunter fällt zurück.',
    q017Steps: 'Treten: Die Lupe zeigt, wie viel vom Zahn erstiegen wurde.',
    q019Ask:
      'Seit den neuen Backen geht der Hebel ganz nach oben, und die Nachstellung schaltet nicht, so fest ich auch ziehe. Wie bringe ich sie in Gang?',
    q019Answer:
      'Sie schaltet am Pedal, nicht am Handbremshebel. Von Hand voreinstellen, dann treten, bis es still ist.',
    q019Steps: '„Mit Lehre voreinstellen“, dann „Trommel drauf, treten“: die Klicks zählen.',
    q020Ask: 'Stellt sie die Backen nach oder kürzt sie den Seilzug?',
    q020Answer:
      'Die Backen: Die Länge der Druckstange ist das eine, die Länge des Seilzugs das andere.',
    q020Steps:
      'Das Seilspiel ändern: Die Rasten ändern sich, der Spalt nicht. Den Zahn ändern: beides.',
    q022Ask:
      'Beide Trommeln waren weit verstellt, obwohl nichts kaputt war. Warum kam die Nachstellung nicht mit?',
    q022Answer:
      'Sie lässt einen Bereich zu: Totgang und einen Zahn mehr. Fester treten hilft nicht, nur Spalt hilft.',
    q022Steps:
      'Bis zum nächsten Klick weiter verschleißen und das Lüftspiel kurz davor und danach ablesen.',
    q022SetupState: 'Just clicked',
    q023Ask: 'In der Trommel lag lose ein Teil mit Gewinde. Was macht die Bremse ohne dieses Teil?',
    q023Steps:
      'Nicht abgedeckt: Die Bremsen hier haben immer ihre Druckstange, und was eine Bremse ohne sie tut, wird nicht berechnet. Nicht fahren.',
    q025Ask:
      'Ich habe eine Seite herausgedreht, bis sie blockiert, und bekomme sie nicht zurück, auch nicht mit weggedrücktem Hebel. Was nun?',
    q025Answer:
      'Die Druckstange steht unter Last, und die Reibung in ihren Zähnen folgt der Last. Erst entlasten.',
    q025Steps:
      'Den Bremshebel ziehen: Die Kraft in der Druckstange steigt um ein Vielfaches; loslassen, und sie fällt.',
    q026Ask:
      'Blind gearbeitet und falsch herum gedreht, jetzt liegen die Backen fest an. Bekomme ich das wieder frei?',
    q026Answer:
      'Die Last wegnehmen: Bremshebel an den Anschlag, dann den Hebel aus seinen Zähnen heben. Nie einen belasteten Zahn mit Gewalt bewegen.',
    q026Steps:
      'Mit den zwei Schaltflächen zurück- und weiterstellen und sehen, welche Richtung die Druckstange kürzt.',
    q028Ask:
      'Ich stelle leichtes Schleifen ein, und nach ein paar Fahrten ist die Trommel glühend heiß, immer wieder. Was treibt das an?',
    q028Answer:
      'Ein Tritt bei heißer, gewachsener Trommel nimmt Zähne, für die die kalte Trommel keinen Platz hat; oder der Seilzug hält den Hebel.',
    q028Steps: 'Heiß weitergestellt: Spalt und Zahn vorher und nachher; Doppelgänger daneben.',
    q029Ask:
      'Sie lief frei, und nach einmal Ziehen war sie für immer fest. Hat sie zu weit geschaltet?',
    q029Answer:
      'Ein Zahn bringt jeden Belag um ein gutes Zehntel näher; zwei zu viel lassen nichts übrig.',
    q029Steps: 'Lüftspiel ablesen, dann einmal klicken lassen und wieder ablesen.',
    q031Ask:
      'Das Rad des Nachstellers dreht in eine Richtung und federt in die andere zurück. Wie löst man es?',
    q031Answer: 'Sägezähne und ein Federhebel: erst abheben, dann drehen.',
    q031Steps: 'Einen Zahn zurückstellen und auf die Reihenfolge achten: heben, dann bewegen.',
    q032Ask: 'Der Nachsteller passt auf beide Arten hinein. Wie herum stellt er nach?',
    q032Answer:
      'Sehen Sie, ob die Druckstange länger wird: Das stellt nach. Auf der falschen Seite dreht er zurück.',
    q032Steps: 'Nachsteller links und rechts vertauscht: Zahn und Pedal vorher und nachher.',
    q034Ask:
      'Ich stelle ein, bis nichts mehr geht, trete einmal, und sie läuft frei, das Pedal aber immer noch tief. Was übersehe ich?',
    q034Answer:
      'Das Paar stand außermittig: Eine Backe lag früh an. Ein Tritt zentriert es, und der Spalt ist wieder da.',
    q034Steps: 'Das Paar steht zur Seite: zentrieren und beide Spalte ablesen.',
    q035Ask: 'Ein straffes neues Seil, und er kriecht trotzdem. Zuerst die Backen einstellen?',
    q035Answer:
      'Ja: zuerst die Backen, Hebel an den Anschlag, Seilzug zuletzt. Ein straffer Seilzug nimmt der Nachstellung ihr Spiel und verdeckt den Spalt.',
    q035Steps: 'Den Seilzug zuerst einstellen, dann zuletzt, und das Lüftspiel vergleichen.',
    q037Ask:
      'Auf Böcken ist das Rad frei, und doch wird die Trommel bei jeder Fahrt sehr heiß. Wie kann beides stimmen?',
    q037Answer:
      'Ein verschlissenes Radlager lässt die belastete Trommel auf die Backen steigen; auf Böcken hängt sie frei.',
    q037Steps: 'Radlager lässt die Trommel steigen: auf Böcken drehen, Hitze auf der Straße.',
    q038Ask: 'Heiß und raucht, kalt dann wieder gut. Seilzug, Zylinder oder eingesperrter Druck?',
    q038Answer:
      'Seilzug: Hebel nicht am Anschlag. Druck: frei, sobald der Entlüfter offen ist. Ein Kolben oder Teil: in einer Richtung schwer.',
    q038Steps: 'Fehler suchen: die billigsten Messwerte nehmen, bis ein Name übrig bleibt.',
    q040Ask: 'Nach der Fahrt ist eine Trommel warm, die andere kalt. Wie warm sollen sie sein?',
    q040Answer: 'Ohne Bremsen bleibt eine gelöste Trommel kühl; Wärme ohne Bremsen ist Schleifen.',
    q040Steps: 'Seilzug behält seinen Zug: Wärme der Trommeln nach einer Fahrt.',
    q041Ask: 'Eine Seite zeigt fünfzig Grad, die andere fast siebzig. Zu heiß? Soll sie schleifen?',
    q041Answer:
      'Die Beharrungstemperatur folgt dem Schleifen: Lesen Sie beide beim selben Fehler ab und vergleichen Sie mit Ihren.',
    q041Steps: 'Schlauch sperrt den Rückweg: Schleifmoment von Hand und Wärme bei 50 km/h.',
    q043Ask:
      'Neue Backen, Räder frei, aber eine Trommel ist nach zwanzig Minuten zu heiß zum Anfassen. Einlaufen oder Fehler?',
    q043Answer:
      'Neue Beläge tragen zuerst nur in der Mitte; das schwächt, es schleift nicht. Schleifen ist ein Fehler.',
    q043Steps:
      'Die Trommel ist drauf und still. Weiterfahren bis zum Einlaufen: Anlage und Moment vorher und nachher.',
    q044Ask:
      'Die Handbremse ließ nie ganz los, die Beläge an einer Kante verschlissen, jetzt wieder heiß. Wo weiter?',
    q044Answer:
      'Seilzug oder Druck: Trennen Sie beides mit Hebel und Entlüfter. Verschleiß an einer Kante liegt in Richtung der Achse und wird nicht gezeigt.',
    q044Steps: 'Fehler suchen: Hebel und Entlüfter.',
    q046Ask:
      'Backen und Trommeln früh verbrannt; es heißt, die Backen seien von ihren Auflagen gelaufen. Kann das sein?',
    q046Answer:
      'Eine Rille hält eine Backe, bis sie losspringt. Wie weit eine Backe auf ihren Auflagen wandert, liegt in Richtung der Achse und wird nicht gezeigt.',
    q046Steps: 'Rille in einer Auflage: der Mechanismus und was ihn verrät.',
    q047Ask: 'Wir sind ein paarmal mit angezogener Handbremse losgefahren. Was richtet das an?',
    q047Answer:
      'Sie schleift und heizt; wie viel, steht dort. Eine Kraft, die bleibt, schleift sich nicht frei: Fragen Sie „schleift sie sich frei“ für wie weit und wie heiß.',
    q047Steps: 'Seilzug behält seinen Zug: Moment von Hand, Wärme bei 50 km/h.',
    q049Ask: 'Die Handbremse hält vorwärts, rollt aber rückwärts weg. Wo fange ich an?',
    q049Answer:
      'Gesunde Backen halten in beiden Richtungen fast gleich. Ein großer Unterschied heißt: Eine Backe greift nicht mehr.',
    q049Steps: 'Öl auf einem Belag: geparkt, vorwärts und rückwärts.',
    q050Ask:
      'Kein Druck, und doch blockiert sie vorwärts und dreht rückwärts. Was macht sie einseitig?',
    q050Answer: 'Etwas lehnt an einer Backe: In einer Richtung läuft sie auf, in der anderen ab.',
    q050Steps: 'Etwas lehnt an einer Backe: von Hand in beide Richtungen gedreht.',
    q052Ask: 'Nach dem Rückwärtsfahren ist sie vorwärts manchmal blockiert. Warum?',
    q052Steps:
      'Nicht abgedeckt: Dazu gehört eine Backe, die sich auf verschlissenen Stützen verschiebt. Bolzen haben hier kein Spiel, und eine Backe, die quer auf ihren Auflagen klemmt, wird nicht berechnet. Nicht fahren: Trommel ab, dann Niederhalter, Auflagen der Ankerplatte und Beläge ansehen.',
    q053Ask: 'Kurz vor dem Anhalten gezogen hält sie, im Stand gezogen kriecht er weg. Warum?',
    q053Answer:
      'Dreht die Trommel, setzt ihr Mitziehen die Backen und hilft einer davon; im Stand nicht.',
    q053Steps: 'Bei stehender, dann bei drehender Trommel treten und vergleichen.',
    q055Ask: 'Was ist die auflaufende Backe? Die, die zuerst anliegt?',
    q055Answer: 'Die, die die Trommel fester an sich zieht. Beide liegen beim selben Druck an.',
    q055Steps: 'Vorwärts treten, dann rückwärts: Die Namen wechseln die Seite.',
    q056Ask:
      'Die Trommel ist warm, vorwärts schwer und rückwärts leicht zu drehen. Backen oder etwas anderes?',
    q056Answer:
      'Nur eine Backe wird angedrückt. Beide angedrückt fühlt sich in beiden Richtungen gleich an.',
    q056Steps:
      'Etwas lehnt an einer Backe: von Hand in beide Richtungen, neben seinen Doppelgängern.',
    q058Ask:
      'Eine Backe ist gleichmäßig, die andere an einem Ende dick und am anderen dünn. Warum?',
    q058Answer:
      'Der Druck ändert sich längs des Bogens, und der Verschleiß folgt ihm. Eine gleitende Backe ist anders als eine auf einem Bolzen.',
    q058Steps:
      'Treten und den Pressungskamm längs jedes Bogens ablesen; für gleitende Backen den Fährwagen wählen.',
    q059Ask:
      'Eine Backe ist nur an der oberen Hälfte bis aufs Metall runter, der Rest dick. Warum?',
    q059Answer:
      'Liegt sie nur am Ende der Spitze an, verschleißt sie dort: Sehen Sie, wo der Druck steht.',
    q059Steps: 'Beläge zu groß geschliffen: Anlage an den Enden; Pressungskamm an.',
  },

  /* ui/questions/list-three.ts */
  questionsListThree: {
    thereIsNoHoleIn: 'In Ankerplatte und Trommel ist kein Loch. Wie komme ich an den Nachsteller?',
    lookForAPressedIn:
      'Suchen Sie zuerst einen eingepressten Deckel, eine Ausbrechstelle oder einen Gummistopfen. Ohne das: Seilzug ganz schlaff, Backen zentriert, Trommel gerade ziehen, immer wieder; ganz zuletzt werden Stifte hinter der Ankerplatte abgetrennt.',
    answerWhichIsMineWith:
      'Beantworten Sie „Welcher ist meiner?“ mit „Kein Schauloch“: Die Reihenfolge des Lösens sagt, was übrig ist.',
    secondSet: 'Second set',
    howDoIUseThe: 'Wie benutze ich die Gewindelöcher in der Trommel?',
    aScrewInEachBy:
      'In jedes eine Schraube, abwechselnd, immer ein wenig, mit Rostlöser an der Nabe. Gegen Rost an der Nabe sind sie richtig; gegen einen Grat drücken sie auf Belag und Stifte.',
    setRustAtTheHub:
      'Rost an der Nabe einstellen, dann den Grat, ziehen und ablesen, was der Zug macht.',
    theDrumCameOffLast:
      'Letztes Jahr ging die Trommel ab. Seit ich die Handbremse nachgespannt habe, nicht mehr. Warum?',
    theCableHoldsTheLever:
      'Der Seilzug hält den Hebel vom Anschlag ab, so ruhen die Backen weiter außen und kommen nicht am Grat vorbei. Zuerst den Seilzug entspannen.',
    cableSetTooShortOverlap: 'Seilzug zu kurz eingestellt: Überdeckung am Grat vorher und nachher.',
    itWentOnWithThe: 'Mit den alten Backen ging sie drauf. Mit den neuen nicht. Falsche Backen?',
    newLiningsAreThickerBy:
      'Neue Beläge sind um das dicker, was die alten verloren hatten: Der Nachsteller muss auf seinen ersten Zähnen stehen. Nur wenn er dort steht und alles zentriert ist, die Teile vergleichen.',
    rightPartsFirstThenSet:
      'Erst die richtigen Teile, dann zurückstellen; ob die Trommel darübergeht, steht bei jedem Schritt.',
    iWorkedALipOff:
      'Ich habe an einer gebrauchten Trommel den Grat weggearbeitet. Jetzt passt sie, aber das Pedal ist lang?',
    aHandFeelsTheLip:
      'Eine Hand fühlt den Grat, der Belag arbeitet dahinter: Die bestrichene Bohrung ist größer. Treten, bis es still ist, dann die Bohrung gegen die Prägung messen.',
    drumOnPressCountThe: 'Trommel drauf, treten: die Klicks zählen, bis es still ist.',
    itClicksWhenIPress: 'Es klickt, wenn ich auf die Bremse trete. Ist das richtig?',
    aClickIsATooth:
      'Ein Klick ist ein nachgestellter Zahn. Nach neuen Backen klicken einige Tritte und werden dann still; im Betrieb kommt einer alle paar tausend Kilometer. Klicks bei jedem Tritt oder nach jedem Parken sind ein Fehler.',
    wearOnToTheNext:
      'Bis zum nächsten Klick weiter verschleißen und ihn hören; mit „Abgenutzte Zähne geben nach“ unter Fehler vergleichen.',
    beforeAClick: 'Before a click',
    mustIReverseAndBrake: 'Muss ich rückwärts fahren und bremsen, damit sie nachstellt?',
    notThisKindItSteps:
      'Diese Art nicht: Sie schaltet bei festem Treten in beiden Richtungen. Rückwärtsfahren dreht die Schraube einer Servobremse. „Welche Bauart ist Ihre?“ unterscheidet sie.',
    pressForwardThenBackwardThe:
      'Vorwärts treten, dann rückwärts: Die Backen gehen beide Male gleich weit auseinander.',
    mineAdjustsOnTheParking:
      'Meine stellt über die Handbremse nach. Wenn ich sie nie ziehe, stellt sie dann nach?',
    suchAScrewIsTurned:
      'Eine solche Schraube wird nur vom Bremshebel gedreht: Ein Hebel, der nie gezogen wird, stellt nie nach, und das Pedal wird lang.',
    underTheAdjusterChooseDriven:
      'Unter dem Nachsteller „Vom Zug der Handbremse getrieben“ wählen, dann weiter verschleißen und vergleichen.',
    howManyTeethDoI: 'Wie viele Zähne muss ich zurückstellen, damit das Rad frei wird?',
    asManyAsBringThe:
      'So viele, dass der Ruhespalt wieder da ist: etwa 0,15 mm Lüftspiel und anderthalb Rasten an diesem Transporter. Zuerst Seilzug und Leitung entlasten.',
    backOffOneToothAt: 'Zahn um Zahn zurückstellen und Lüftspiel und Überdeckung ablesen.',
    willAnOverAdjustedBrake:
      'Schleift sich eine zu weit nachgestellte Bremse frei, wenn ich damit fahre?',
    notInAFewKilometres:
      'Nicht in ein paar Kilometern: in Hunderten. Sie wird heiß, verglast und kostet Kraftstoff; stellen Sie sie lieber zurück.',
    readHowTheGapStands:
      'Ablesen, wie der Spalt nach einem Klick steht. Fragen Sie „schleift sie sich frei“ für die Rechnung, wie weit und wie heiß.',
    howTightShouldTheShoes: 'Wie stramm sollen die Backen beim Einstellen sitzen?',
    aGaugeSomeTenthsUnder:
      'Eine Lehre einige Zehntel unter dem Innendurchmesser, oder drehen, bis es blockiert, und zurückstellen, bis sie eben frei dreht; dann nehmen Tritte den Rest auf.',
    stepPresetTheGaugesFigures:
      'Schritt Voreinstellen: die Zahlen der Lehre und was jede Regel als Spalt lässt.',
    shoesFirstOrCableFirst: 'Zuerst die Backen oder zuerst der Seilzug?',
    shoesPressesUntilSilentLever:
      'Backen, treten bis es still ist, Hebel an seinem Anschlag, Seilzug zuletzt. Seilzug zuerst verdeckt den Spalt und hält die Nachstellung auf.',
    theOrderOfTheSteps: 'Die Reihenfolge der Schritte; der Seilzug ist der letzte.',
    howFreelyShouldAWheel: 'Wie leicht soll sich ein Rad von Hand drehen?',
    onStandsItTurnsWith:
      'Auf Böcken dreht es mit zwei Fingern, in beiden Richtungen gleich. Ein paar Newton am Reifen sind Dichtungen und Lager; 50 N sind ein Schleifen, das heizt.',
    hoseShutsOnTheWay:
      'Schlauch sperrt den Rückweg: von Hand gedreht, beide Räder, und die Hitze, die daraus wird.',
    allFourWheelsGrowTight:
      'Alle vier Räder werden beim Fahren fest und im Stand wieder frei. Was ist das?',
    pressureThatCannotGoBack:
      'Druck, der nicht zurückkann: kein Leerspiel am Hauptzylinder. Der Entlüfter macht alle auf einmal frei.',
    noFreePlayAtThe:
      'Kein Leerspiel am Hauptzylinder: alle Räder, Pedal kürzer, wird am Entlüfter frei.',
    oneWheelSmellsAfterA: 'Ein Rad stinkt nach der Fahrt. Was fühle ich zuerst?',
    notTheDrumHoldA:
      'Nicht die Trommel: Halten Sie eine Hand in ihre Nähe. Dann beide Räder von Hand drehen, den Hebel hinter der Ankerplatte ansehen, den Entlüfter öffnen. „Was ich sehe“ ordnet sie, das Billigste zuerst.',
    findTheFaultTakeThe:
      'Fehler suchen: die billigsten Messwerte nehmen, bis ein Name übrig bleibt.',
    brakesHangOnAfterEach:
      'Die Bremsen hängen nach jedem Halt und lassen nach einer Weile los. Schlauch oder Zylinder?',
    secondsSluggishPistonsMinutes:
      'Sekunden: schwergängige Kolben. Minuten, und frei am Entlüfter: der Schlauch.',
    hoseShutsOnTheWay2: 'Schlauch sperrt den Rückweg, neben Kolben schwergängig: was sie trennt.',
    whyDoesTheFrontShoe: 'Warum bremst die vordere Backe vorwärts mehr?',
    theTurningDrumDragsIt:
      'Die drehende Trommel zieht sie fester an: Sie läuft auf. Rückwärts läuft die hintere auf. Beide werden gleich gedrückt.',
    pressForwardThenBackwardShares:
      'Vorwärts treten, dann rückwärts: Die Anteile wechseln die Seite, die Summe bleibt.',
    brakesAreWeakForwardsAnd: 'Vorwärts bremst er schwach und rückwärts besser. Warum?',
    theShoeThatShouldLead:
      'Die Backe, die auflaufen soll, wird nicht gedrückt: ein festgegangener Kolben. Öl auf dem anderen Belag macht es umgekehrt.',
    onePistonStuckRollerTest: 'Ein Kolben fest: Rollenprüfung in beiden Richtungen.',
    oneShoeIsWornTwice: 'Eine Backe ist doppelt so stark verschlissen wie die andere. Ein Fehler?',
    noTheLeadingLiningDoes:
      'Nein: Der auflaufende Belag leistet etwa drei Viertel der Arbeit. Ist der ablaufende der dünnere, wurden Backen vertauscht; einer, der kaum verschlissen ist, wurde nicht gedrückt.',
    wearOnAndReadBoth: 'Weiter verschleißen und beide Beläge ablesen.',
    innerWheelAndOuterWheel: 'Die beiden Räder einer Achse verschleißen verschieden. Wo suche ich?',
    aCableOrPistonThat:
      'Ein Seilzug oder Kolben, der draußen bleibt, verschleißt das eine Rad; eine tote Nachstellung auf einer Seite das andere. Beide Räder messen, dann mit Hebel und Entlüfter trennen.',
    typeBothWheelsWhatDiffers:
      'Beide Räder eingeben: Was zwischen ihnen verschieden ist, steht unter dem Urteil.',
    grabbingAndLocking: 'Rupfen und Blockieren',
    brakesGrabOnTheFirst:
      'An feuchten Morgen packen die Bremsen beim ersten Halt zu, danach ist alles gut. Gefährlich?',
    aBloomOfRustLifts:
      'Ein Hauch von Flugrost hebt die Reibung, und die auflaufende Backe verstärkt das auf mehr als das Doppelte. Nach ein paar Bremsungen ist es weg. Blockiert ein Rad, Belagsorte und Federn ansehen.',
    dampRustTorqueBeforeAnd: 'Flugrost: Moment vorher und nachher.',
    itGrabsSinceTheNew: 'Seit den neuen Backen rupft sie. Läuft sich das ein?',
    liningsGroundTooLargeTouch:
      'Zu groß geschliffene Beläge liegen an ihren Enden an, wo die Trommel sie verkeilt: Es rupft und schleift. Den Radius gegen die Bohrung prüfen, statt zu hoffen.',
    liningsGroundTooLargeWhere: 'Beläge zu groß geschliffen: wo der Druck steht.',
    aPopWhenIPress: 'Nach dem Stehen knackt es, wenn ich trete. Was ist das?',
    liningsRustedOnLetGo:
      'Angerostete Beläge lassen mit einem Ruck los, einmal. Ein Knacken bei jedem ersten Anlegen ist eine Backe, die eine Rille in ihrer Auflage verlässt.',
    grooveInAPlatePad: 'Rille in einer Auflage: Sie kommt spät, auf einmal.',
    howDoIStopBrake: 'Wie bekomme ich das Quietschen weg?',
    notCoveredNoiseIsNot:
      'Nicht abgedeckt: Geräusche werden nicht berechnet. Sehen Sie nach glänzenden Belägen, losen Niederhaltern, trockenen Auflagen der Ankerplatte: dort ein Film Hochtemperaturfett, keines auf einen Belag. Schleifen von Metall auf Metall: nicht fahren.',
    somethingRattlesInTheDrum:
      'Auf schlechten Straßen klappert etwas in der Trommel. Ist das schlimm?',
    aHoldDownLostOr:
      'Ein verlorener Niederhalter oder eine ausgehängte Feder lässt eine Backe kippen: Eine Kante verschleißt, und sie kann klemmen. Trommel ab und hineinsehen.',
    theLayerEdgeOnShows: 'Die Ebene „Von der Kante“ zeigt eine Backe ohne ihren Niederhalter.',
    pullingToOneSide: 'Zieht zur Seite',
    itPullsSinceOneWheel: 'Seit ein Radzylinder erneuert wurde, zieht er zur Seite. Warum?',
    aCylinderOfAnotherBore:
      'Ein Zylinder mit anderer Bohrung drückt bei gleichem Druck stärker: Beide einer Achse sind gleich. Die Prägung hinter der Ankerplatte lesen.',
    wrongCylinderRollerThenThe:
      'Falscher Radzylinder: Rollenprüfung, dann die Prägung der Bohrung.',
    theRollerTestSaysToo: 'Die Rollenprüfung sagt: zu große Differenz. Wo fange ich an?',
    whichWheelIsWeakOn:
      'Welches Rad ist schwach, am Pedal, am Handbremshebel oder an beiden? An beiden und in beiden Richtungen: Reibung. Nur am Hebel: Drehpunkt oder Seilzug. Nur vorwärts: ein Kolben.',
    findTheFaultVan15: 'Fehler suchen: Transporter 15, die Rollenprüfung zuerst.',
    drumWornOrNotRound: 'Trommel verschlissen oder unrund',
    canIHaveTheDrum: 'Kann ich die Trommel ausdrehen lassen, und wie tief darf es gehen?',
    aCutCostsTwiceIts:
      'Ein Schnitt kostet das Doppelte seiner Tiefe im Durchmesser. Die Bohrung muss nach dem Schnitt unter der Ausdrehgrenze bleiben, mit der Reserve des Herstellers für Verschleiß; beide Trommeln gleich.',
    typeTheMarkTheDiameter: 'Prägung, Ø und Tiefe der Riefe eingeben: Urteil und Reserve.',
    cylinderAndLeaks: 'Zylinder und Lecks',
    itIsWetBehindThe: 'Hinter der Ankerplatte ist es nass. Bremsflüssigkeit oder Achsöl?',
    fluidComesFromTheBoot:
      'Flüssigkeit kommt aus der Staubkappe und löst Lack an; Öl aus der Nabe riecht nach Getriebe. Beides tränkt Beläge: das Leck finden, dann Backen an beiden Rädern. Mit einem Leck von Bremsflüssigkeit nicht fahren.',
    fluidOnBothLiningsBeside:
      'Bremsflüssigkeit auf beiden Belägen neben Öl auf einem Belag: Moment in beiden Richtungen und die Staubkappen.',
    thePedalIsSpongySince:
      'Seit ich einen Zylinder gewechselt habe, ist das Pedal schwammig. Woran erkenne ich Luft?',
    travelThatGrowsWithThe:
      'Weg, der mit der Kraft wächst, ist Luft; Weg vor dem ersten Anlegen ist Spalt. Bei Luft bleiben die Rasten, wie sie waren.',
    airInTheCircuitPedal: 'Luft im Bremskreis: Pedal bei 10 und bei 40 bar.',
    firstPressOfTheDay: 'Der erste Tritt am Tag ist lang und klickt, danach ist es gut. Warum?',
    teethThatSlipBackUnder:
      'Zähne, die unter dem Zug der Handbremse zurückrutschen und vom ersten Tritt wieder herausgeklickt werden: Hebel und Druckstange paarweise erneuern.',
    wornTeethLetGoFirst: 'Abgenutzte Zähne geben nach: erster und nächster Tritt.',
    thePedalThrobsWhenI:
      'Das Pedal pulsiert, wenn ich sanft bremse. Hintere Trommel oder vordere Scheibe?',
    slowDownOnTheHand:
      'Nur mit dem Handbremsgriff verzögern, auf leerer Straße, den Knopf gedrückt: Pulsiert es dann, ist es eine Trommel. Zweimal je Umdrehung oval, einmal außermittig.',
    drumOvalStoryAndPedal: 'Trommel unrund: Geschichte und Pedal; dann messen und Messuhr.',
    howManyClicksShouldThe: 'Wie viele Klicks soll der Hebel haben?',
    asTheMakerSaysOften:
      'Wie es der Hersteller sagt; oft vier bis sieben bei festem Zug. Wenige: Der Seilzug ist zu kurz oder zieht noch. Viele bei gutem Pedal: Seilzug; viele bei langem Pedal: Spalt.',
    pullTo300NIn: 'Bis 300 N in jedem Seilzug ziehen: Rasten, und wo sie bleiben.',
    theHandbrakeStaysOnIn:
      'Bei Frost oder nach festem Ziehen bleibt die Handbremse drin. Was hält sie?',
    aCableInItsSheath:
      'Ein Seilzug in seiner Hülle oder der Drehpunkt des Hebels. Den Seilzug an der Ankerplatte bewegen und sehen, ob der Hebel an den Anschlag kommt.',
    cableKeepsItsPullLever: 'Seilzug behält seinen Zug: Hebel nicht am Anschlag.',
    itHoldsWellOnOne: 'An einem Rad hält sie gut, am anderen kaum. Seilzug oder Trommel?',
    ifPedalAndNotchesAre:
      'Stimmen Pedal und Rasten und ist ein Rad geparkt schwach, nimmt der Drehpunkt des Hebels den halben Zug weg. Ist es auch am Pedal schwach, ist es Reibung.',
    parkingLeverStiffInIts: 'Bremshebel schwergängig im Drehpunkt: geparkt und am Pedal.',
    howSteepASlopeShould: 'Wie steil darf es sein, dass sie noch hält?',
    rulesAskForSomethingLike:
      'Vorschriften verlangen etwa ein Fünftel, in beiden Richtungen; von wem die Vorschrift stammt, steht dabei. Mit diesen Backen und 300 N in jedem Seilzug hält der Transporter mit der Nase bergab ein wenig mehr als bergauf.',
    setThePullReadThe:
      'Zug einstellen, gehaltenes Gefälle mit der Nase bergab und bergauf ablesen.',
    limitsAndLife: 'Grenzen und Laufleistung',
    howLongWillTheseShoes: 'Wie lange halten diese Backen noch?',
    whatIsLeftOverWhat:
      'Was übrig ist, geteilt durch das Verlorene, mal der Strecke, mit einem Band so breit wie seine Quellen. Eine Vorhersage ist keine Freigabe.',
    typeThicknessNowAndWhen:
      'Dicke jetzt und beim Einbau eingeben und die Strecke: was zuerst endet und wann.',
    whereIsTheDrumsLimit: 'Wo liegt die Grenze der Trommel, und ist es die Ausdrehgrenze?',
    theMarkCastOnThe:
      'Die in die Trommel gegossene Angabe ist der größte Ø im Betrieb. Eine Ausdrehgrenze, wo genannt, ist kleiner, um Platz für Verschleiß zu lassen.',
    typeTheMarkEachLimit: 'Prägung eingeben; bei jeder Grenze steht, von wem sie stammt.',
    whichShoeWhere: 'Welche Backe wohin',
    howDoIKnowWhich: 'Woran erkenne ich, wie herum Druckstange, Federn und Hebel gehören?',
    byTheOtherWheelLeft:
      'Am anderen Rad, das als Muster ganz bleibt: Es ist das Spiegelbild. Namen sind an; „Werkbank“ dreht die Ansicht zum anderen Rad.',
    namesAreOnStrutSprings: 'Namen sind an: Druckstange, Federn und Hebel, wie sie sitzen.',
  },

  /* ui/questions/list-two.ts */
  questionsListTwo: {
    q061Ask:
      'Eine Backe ist an der Außenkante verschlissen und kreischt. Kann das das Geräusch sein?',
    q061Steps:
      'Nicht abgedeckt: Die Backe kippt aus dieser Ebene heraus, und Geräusche werden nicht berechnet. Sehen Sie ihren Niederhalter und die Auflagen der Ankerplatte an; die Ebene „Von der Kante“ zeigt, wie eine Backe kippt.',
    q062Ask: 'Warum gleicht man den Verschleiß aus, und kann man die Backen tauschen?',
    q062Answer:
      'Der auflaufende Belag trägt etwa den dreifachen Druck und verschleißt um so viel schneller. Tauschen gleicht das nur auf dem Papier aus.',
    q062Steps:
      'Gelaufene Backen vertauscht: was sich sofort ändert; dann Verschleiß an für die Laufleistung.',
    q064Ask: 'Nach nassen Tagen hielt eine Bremse kurz fest und kam dann frei. Öffnen?',
    q064Answer:
      'Festgerostete Beläge reißen einmal los, dann ist es vorbei. Kommt es wieder, sehen Sie hinein.',
    q064Steps: 'Die Beläge sind festgerostet: drehen, dann losbrechen.',
    q065Ask: 'Ein Hinterrad blockiert nach Regen. Ursachen der Reihe nach?',
    q065Answer:
      'Zuerst Flugrost, nach einigen Bremsungen weg; dann ein anliegendes Teil, Federn, ein Seilzug, der nicht zurückgeht.',
    q065Steps:
      'Flugrost: Moment vorher und nachher, und seine Doppelgänger mit dem Messwert, der sie jeweils trennt.',
    q067Ask: 'Eine Seite packt bei kräftigem Treten und pulsiert bei leichtem. Trommel unrund?',
    q067Answer:
      'Eine ovale oder außermittige Trommel pulsiert; Zweipunktmessung und Messuhr zeigen, welche es ist.',
    q067Steps: 'Trommel unrund: Geschichte, drehen, messen, Messuhr.',
    q068Ask: 'Nur die erste Bremsung nach dem Richtungswechsel schlägt. Was bewegt sich da?',
    q068Steps:
      'Nicht abgedeckt: Eine Backe durchläuft das Spiel eines verschlissenen Bolzens oder Widerlagers, und Bolzen haben hier kein Spiel. Ein Schlag je Richtungswechsel ist das Zeichen dafür. Trommel ab, jede Backe auf ihrem Bolzen hin- und herbewegen: Was dort Spiel hat, wird erneuert.',
    q070Ask:
      'Eine Trommel tutet, und die Beläge glänzen. Kann man sie aufrauen, und warum nur eine Seite?',
    q070Answer:
      'Verglasung nimmt Reibung weg, Spalt und Weg bleiben. Das Geräusch selbst wird nicht berechnet.',
    q070Steps: 'Verglaste Beläge: Rollenprüfung vorher und nachher.',
    q071Ask:
      'Ein Schleifgeräusch, dazu eine blanke Stelle an der Backenkante und an Nieten in der Trommel. Wie kommen die aneinander?',
    q071Steps:
      'Nicht abgedeckt: Was sich dort berührt, liegt in Richtung der Achse, und diese Ansicht blickt die Achse entlang. Metall auf Metall: nicht fahren, bevor die Trommel ab war; sehen Sie Niederhalter, Nieten und den Rand der Ankerplatte an.',
    q073Ask: 'Im Stand quietscht die Trommel, wenn das Pedal hochkommt. Was reibt da?',
    q073Steps:
      'Nicht abgedeckt: Geräusche werden nicht berechnet. Träge Kolben und trockene Auflagen halten Backen beim Lösen tatsächlich zurück: siehe Fehler. Die Auflagen bekommen einen Film Hochtemperaturfett, der Belag keines.',
    q074Ask: 'Schleifgeräusch mit dem Pedal, keines mit der Handbremse allein. Was sagt das?',
    q074Answer:
      'Pedal und Seilzug drücken dieselben Backen auf anderen Wegen: Die Kräfte sind verschieden, nicht die Teile.',
    q074Steps: 'Hebel ziehen und die Kräfte beider Backen ablesen; dann unter Betätigen treten.',
    q076Ask:
      'Es schleift beim Bremsen und hakt von Hand gedreht an einer Stelle. Belag, Radlager oder Trommel?',
    q076Answer:
      'Einmal je Umdrehung: außermittig. Zweimal: oval. Aufgebockt nichts, auf der Straße aber heiß: Radlager.',
    q076Steps: 'Fehler suchen: Räder frei, dann Zweipunktmessung oder Messuhr.',
    q077Ask:
      'Er zog zur einen Seite, Backen waren vertauscht, jetzt zieht er zur anderen. Was ist es?',
    q077Answer:
      'Beide Räder auf der Rolle vergleichen, in beiden Richtungen: Trommel, Einstellung und Backen zeigen sich verschieden.',
    q077Steps: 'Gelaufene Backen vertauscht: Rolle und Maße beider Räder.',
    q079Ask: 'Bei abgenommenen Trommeln bewegt sich nur eine Backe, wenn ich trete. Ein Fehler?',
    q079Answer:
      'Die mit der schwächeren Feder bewegt sich zuerst; das sagt wenig. Bei abgenommener Trommel nicht treten: Ein Kolben kann aus seiner Bohrung kommen.',
    q079Steps: 'Ein Kolben fest: was ihn wirklich verrät.',
    q080Ask: 'Die Prüfung fand auf einer Seite wenig Bremskraft. Kam das vom Spannen des Seilzugs?',
    q080Answer:
      'Ein Hebel, der nicht am Anschlag liegt, hält die Nachstellung vom Weiterschalten ab, an beiden Rädern. Ein einzelnes schwaches Rad hat eine andere Ursache.',
    q080Steps: 'Seilzug zu kurz eingestellt: Messwerte und Doppelgänger.',
    q082Ask:
      'Alles neu bis auf die Trommeln, Nachsteller ganz heraus, und er hält am Hang nicht. Eine Verschleißgrenze?',
    q082Answer:
      'Eine Trommel über ihrem eingeprägten Durchmesser verbraucht Zähne und Hebelweg. Das Moment leidet kaum, der Weg schon.',
    q082Steps:
      'Geben Sie die Prägung der Trommel und ihren Durchmesser ein, lesen Sie das Urteil; dann Parken für Rasten und Gefälle.',
    q082SetupState: 'Zweiter Satz',
    q083Ask:
      'Eine neue Trommel weicht über zwei Durchmesser um einen halben Millimeter ab. Oval oder außermittig?',
    q083Answer:
      'Die Zweipunktmessung ändert sich mit dem Winkel nur bei ovaler Trommel; Außermittigkeit bewegt nur die Messuhr.',
    q083Steps: 'Trommel unrund, dann ihr Doppelgänger Trommel außermittig: messen und Messuhr.',
    q085Ask: 'Die Trommel sieht glatt aus. Woran erkenne ich, ob sie erneuert werden muss?',
    q085Answer:
      'An ihrem größten Durchmesser, unter mehreren Winkeln und in mehreren Tiefen, gegen die Prägung auf ihr.',
    q085Steps: 'Geben Sie Ø neu, Prägung und drei Winkel ein; lesen Sie Urteil und Reserve.',
    q086Ask:
      'Frei nach dem Zurückstellen, aber nach dem Pumpen schleift sie an einigen Stellen. Verzogen, und wie viel ist erlaubt?',
    q086Answer:
      'Außermittig oder oval: Der Spalt ist dort aufgebraucht, wo die Bohrung am nächsten ist. Die Grenze für Unrundheit steht unter Prüfen.',
    q086Steps: 'Trommel außermittig: drehen, messen, Messuhr.',
    q088Ask: 'Bei verschlissenen Backen und Trommel kommt ein Kolben aus seinem Zylinder. Warum?',
    q088Answer:
      'Der Weg ist etwa das Doppelte des Spalts in der Belagmitte. Ohne Nachstellung und verschlissen geht er über das Ende der Bohrung hinaus.',
    q088Steps: 'Kolben über das Hubende hinaus: Pedal und Beläge.',
    q089Ask: 'Ein Radzylinder ist gleich nach dem Backenwechsel geplatzt. Zu eng eingestellt?',
    q089Answer:
      'Nein: Zu weit eingestellt läuft ein Kolben zu weit. Eine eng eingestellte Bremse kann das nicht.',
    q089Steps: 'Kolben über das Hubende hinaus, gegen Heiß weitergestellt.',
    q091Ask:
      'Das Pedal geht bei jeder Bremsung weit durch, Hauptzylinder wurden getauscht. Können es schlecht eingestellte Trommeln sein?',
    q091Answer:
      'Ja: Ein offener Spalt muss bei jeder Betätigung neu geschlossen werden. Der größte Teil des Wegs ist dann schon bei 10 bar da.',
    q091Steps: 'Nachsteller festgegangen, zu kurz: Pedal bei 10 und bei 40 bar.',
    q092Ask: 'Zylinder, Backen, Trommeln neu, entlüftet, und trotzdem ist das halbe Pedal weg. Wo?',
    q092Answer:
      'Weg, der vor dem Anlegen kommt, ist Spalt; Weg, der mit dem Druck wächst, ist Nachgiebigkeit im Kreis.',
    q092Steps: 'Luft im Bremskreis neben Nachsteller festgegangen, zu kurz.',
    q094Ask: 'Die Trommel geht stramm drauf, aber das Pedal ist lang. Kann mich ein Grat täuschen?',
    q094Answer: 'Ja: Die Hand spürt den Grat, der Belag arbeitet dahinter.',
    q094Steps: 'Der Grat geht stramm darüber, während der Spalt dahinter daneben steht.',
    q095Ask: 'Das Pedal ist tief, kommt aber beim Pumpen hoch. Neue Bremsen?',
    q095Answer: 'Lang, hart und steigend: Spalt. Federnd: Luft. Beides verraten zwei Tritte.',
    q095Steps: 'Fehler suchen: Geschichte und pumpen.',
    q097Ask: 'Der Handbremshebel ist schlaff, das Auto vier Jahre alt. Backen oder Seilzug?',
    q097Answer: 'Gutes Pedal und viele Rasten: Seilzug. Langes Pedal und viele Rasten: Spalt.',
    q097Steps: 'Seilzug gelängt oder lose, neben Nachsteller festgegangen, zu kurz.',
    q098Ask: 'Er kriecht am Hang rückwärts, so fest ich auch ziehe. Woran fehlt es?',
    q098Answer:
      'Am Moment für dieses Gefälle, in einer Richtung oder in beiden: Reibung, Zug am Haken oder eine Backe.',
    q098Steps:
      'Ziehen, den Wagen mit der Nase bergauf und bergab stellen, gehaltenes Gefälle und Reserve ablesen.',
    q100Ask:
      'Neue Backen, die Räder blockieren beim Probieren, und die Rollenprüfung zeigt fast nichts. Wie das?',
    q100Answer:
      'Neue Beläge tragen in verschlissener Trommel nur auf einem Teil ihres Bogens, bis sie eingelaufen sind. Das kostet etwa ein Zehntel, nicht fast alles.',
    q100Steps:
      'Die Trommel ist drauf und still. Weiterfahren bis zum Einlaufen: Anlage und Moment vorher und nachher.',
    q101Ask: 'Er hält auf sanften Steigungen und rutscht auf steilen. Verglast oder verschlissen?',
    q101Answer: 'Das gehaltene Gefälle folgt der Reibung; Verschleiß ändert die Rasten.',
    q101Steps: 'Verglaste Beläge: Parkmoment vorher und nachher; dann Parken für das Gefälle.',
    q103Ask:
      'Überholt, hielt einmal und war dann für immer schlaff. Alte Druckstange oder alter Hebel?',
    q103Answer:
      'Zähne, die unter dem Zug der Handbremse durchrutschen: eng nach einem Tritt, weit nach einem Zug.',
    q103Steps: 'Abgenutzte Zähne geben nach: pumpen und Rasten.',
    q104Ask:
      'Die Handbremse taugt nichts. Was ist meist festgegangen, und wie stelle ich sie neu ein?',
    q104Answer:
      'Hebel in seinem Drehpunkt, Seilzug in seiner Hülle, Nachsteller. Neu einstellen: Nachsteller zurück, voreinstellen, treten bis es still ist, Seilzug zuletzt.',
    q104Steps:
      'Zurückstellen, zentrieren, voreinstellen, treten bis es still ist, Seilzug zuletzt: fünf Schritte mit gezählten Klicks.',
    q106Ask:
      'Der Ausgleichsbügel bleibt stehen, wenn ich loslasse. Sollen die Federn in der Trommel ihn zurückziehen?',
    q106Answer:
      'Ja, durch die Hebelübersetzung am Haken aber nur wenig. Ein Seilzug, der mehr zurückhält, bleibt draußen.',
    q106Steps: 'Seilzug behält seinen Zug: Hebel nicht am Anschlag, Schleifmoment von Hand.',
    q107Ask: 'Am Hang geparkt hängen die Bremsen nach dem Lösen. Helfen angefaste Belagenden?',
    q107Steps:
      'Nicht abgedeckt: Was ein Hang eingespannt lässt, löst ein kleines Zurückrollen, und das wird hier nicht verfolgt. Die Belagenden sind nicht die Ursache und bleiben, wie sie sind: ein wenig bergauf rollen, dann den Hebel lösen; hängt sie auch in der Ebene, siehe Was ich sehe.',
    q109Ask:
      'Nach Monaten auf der Bremse bewegen sich beide Räder ein wenig und blockieren dann. Seilzug oder Rost?',
    q109Answer:
      'Festgerostete Beläge drehen gar nicht, dann mit einem Ruck frei. Ein Seilzug schleift die ganze Zeit.',
    q110Ask: 'Nach zwei Monaten schleift ein Rad, obwohl der Hebel unten ist. Was klemmt?',
    q110Answer:
      'Ein festgerosteter Belag oder ein Seilzug, der seinen Zug behält: Der Ruck verrät es.',
    q110Steps: 'Beläge angerostet, neben Seilzug behält seinen Zug.',
    q112Ask: 'Es sind noch vier Millimeter Belag da. Kann ich das so lassen?',
    q112Answer:
      'Nur mit Termin: die Reserve geteilt durch die Verschleißrate, mit einer Spanne vom Faktor zwei nach beiden Seiten.',
    q112Steps:
      'Übernehmen Sie die Werte von der Bremse oder geben Sie eigene Werte und Ihre Grenzen ein; lesen Sie Reserve, Strecke und Spanne.',
    q113Ask:
      'Die Trommeln waren in über 100 000 Meilen nie ab, und die Handbremse zieht kräftig. So lassen?',
    q113Answer:
      'Ein kräftiger Hebel sagt nichts über Belag, Leck, Zahn oder Grat: Dafür muss die Trommel ab.',
    q113Steps: 'Nahe der Grenze: starke Bremse, dünner Belag; lesen Sie das Blatt.',
    q115Ask:
      'Ein Prüfer sagt, eine Backe sei verkehrt herum drin. Kann er das sehen, und macht es etwas aus?',
    q115Answer:
      'An Lage und Länge des Belags; hier sind beide Beläge gleich, verschieden sind also nur gelaufene Backen. Moment und Anlage ändern sich.',
    q115Steps: 'Gelaufene Backen vertauscht: Maße und Rolle.',
    q116Ask: 'Eine Backe saß auf dem Kopf. Woran erkenne ich das auflaufende Ende?',
    q116Answer:
      'Die Spitze ist am Zylinder, die Ferse am Lagerbolzen. Eine auf dem Kopf eingebaute Backe wird nicht berechnet.',
    q116Steps: 'Namen sind an: Spitze, Ferse, Bolzen und Zylinder.',
    q118Ask:
      'Fünfzig Fotos und eine Seite noch ganz, und mir graut trotzdem vor Federn und Einstellen. Geht das nur mir so?',
    q118Answer:
      'Lassen Sie eine Seite als Muster stehen und gehen Sie Schritt für Schritt: zurückstellen, zentrieren, voreinstellen, treten, Seilzug zuletzt.',
    q118Steps: 'Alle sechs Schritte; die Werkbank zeigt das andere Rad wie im Spiegel.',
  },

  /* ui/record/across.ts */
  recordAcross: {
    eachWheelItsOwn: 'jedes Rad für sich',
    bothWheelsAlike: 'beide Räder gleich',
  },

  /* ui/record/bench.ts */
  recordBench: {
    onTheBench: (titleOf: string) => `${titleOf} auf der Werkbank`,
    backToNew: 'zurück auf neu',
    stateOfTheBrake: 'Zustand der Bremse',
    toothTo: (tooth: number, tooth2: number) => `Zahn ${tooth} auf ${tooth2}`,
    liningsBeddedIn: 'Beläge eingelaufen',
    adjuster: (kind: string) => `Nachsteller: ${kind}`,
    pedalAtBar: (pedal: number) => `Pedal bei ${pedal} bar`,
    pressToothTo: (tooth: number, tooth2: number) => `Tritt, Zahn ${tooth} auf ${tooth2}`,
    pedalLetGo: 'Pedal losgelassen',
    itsOwn: 'der eigene',
  },

  /* ui/record/dials.ts */
  recordDials: {
    dial: (name: string) => `Regler ${name}`,
    dialsBack: 'Regler zurück',
  },

  /* ui/record/file-kind.ts */
  recordFileKind: {
    itIsAMomentOf: 'Es ist ein Augenblick der Werkbank: „Datei öffnen“ unter Werkbank liest ihn.',
    itIsABrakeRead: 'Es ist eine Bremse: „Szenendatei einlesen“ unter Meine Bremse liest sie.',
    itIsAFileOf:
      'Es ist eine Datei mit aufbewahrten Blättern: „Datei mit Blättern lesen“ unter Prüfen liest sie.',
    itIsNoTextA: 'Es ist kein Text: ein Bild oder eine gepackte Datei.',
    itIsNoMomentOf: 'Es ist kein Augenblick der Werkbank, wie „Als Datei speichern“ ihn schreibt.',
    itIsNoFileOf: 'Es ist keine Datei mit Blättern, wie „Alle Blätter speichern“ sie schreibt.',
    itIsNoJsonAs: 'Es ist kein JSON, wie „Als Datei speichern“ es schreibt.',
  },

  /* ui/record/guest.ts */
  recordGuest: {
    backToMine: 'zurück zu meiner',
    madeMine: 'zu meiner gemacht',
    to: (stationNames: string) => `zu ${stationNames}`,
  },

  /* ui/record/hands.ts */
  recordHands: {
    handsInTheBrake: 'Hände in der Bremse',
    handsOutOfTheBrake: 'Hände aus der Bremse',
    hand: (part: string) =>
      `Hand: ${({ 'front shoe': 'vordere Backe', 'rear shoe': 'hintere Backe', 'both toes': 'beide Spitzen', strut: 'Druckstange', 'adjuster lever': 'Nachstellhebel', 'parking lever': 'Bremshebel', cable: 'Seilzug', 'front piston': 'vorderer Kolben', 'rear piston': 'hinterer Kolben', drum: 'Trommel', 'drum pulled': 'Trommel, gezogen', 'drum rocked': 'Trommel, gekippt' } as Record<string, string>)[part] ?? part}`,
    holdOf: (part: string) =>
      `gehalten: ${({ 'front shoe': 'vordere Backe', 'rear shoe': 'hintere Backe', 'both toes': 'beide Spitzen', strut: 'Druckstange', 'adjuster lever': 'Nachstellhebel', 'parking lever': 'Bremshebel', cable: 'Seilzug', 'front piston': 'vorderer Kolben', 'rear piston': 'hinterer Kolben', drum: 'Trommel', 'drum pulled': 'Trommel, gezogen', 'drum rocked': 'Trommel, gekippt' } as Record<string, string>)[part] ?? part}`,
    pullAt: (part: string) =>
      `Zug an: ${({ 'front shoe': 'vordere Backe', 'rear shoe': 'hintere Backe', 'both toes': 'beide Spitzen', strut: 'Druckstange', 'adjuster lever': 'Nachstellhebel', 'parking lever': 'Bremshebel', cable: 'Seilzug', 'front piston': 'vorderer Kolben', 'rear piston': 'hinterer Kolben', drum: 'Trommel', 'drum pulled': 'Trommel, gezogen', 'drum rocked': 'Trommel, gekippt' } as Record<string, string>)[part] ?? part}`,
    secondHand: (
      part:
        | ''
        | 'cable'
        | 'front piston'
        | 'front shoe'
        | 'parking lever'
        | 'rear piston'
        | 'rear shoe'
        | 'strut',
    ) =>
      `zweite Hand: ${{ '': '', cable: 'Seilzug', 'front piston': 'vorderer Kolben', 'front shoe': 'vordere Backe', 'parking lever': 'Bremshebel', 'rear piston': 'hinterer Kolben', 'rear shoe': 'hintere Backe', strut: 'Druckstange' }[part]}`,
    pullAt2: (
      part:
        | ''
        | 'cable'
        | 'front piston'
        | 'front shoe'
        | 'parking lever'
        | 'rear piston'
        | 'rear shoe'
        | 'strut',
    ) =>
      `Zug an: ${{ '': '', cable: 'Seilzug', 'front piston': 'vorderer Kolben', 'front shoe': 'vordere Backe', 'parking lever': 'Bremshebel', 'rear piston': 'hinterer Kolben', 'rear shoe': 'hintere Backe', strut: 'Druckstange' }[part]}`,
    letGo: (which: string) =>
      `losgelassen: ${({ 'front shoe': 'vordere Backe', 'rear shoe': 'hintere Backe', 'both toes': 'beide Spitzen', strut: 'Druckstange', 'adjuster lever': 'Nachstellhebel', 'parking lever': 'Bremshebel', cable: 'Seilzug', 'front piston': 'vorderer Kolben', 'rear piston': 'hinterer Kolben', drum: 'Trommel', 'drum pulled': 'Trommel, gezogen', 'drum rocked': 'Trommel, gekippt' } as Record<string, string>)[which] ?? which}`,
    letGo2: (part: string) =>
      `losgelassen: ${({ 'front shoe': 'vordere Backe', 'rear shoe': 'hintere Backe', 'both toes': 'beide Spitzen', strut: 'Druckstange', 'adjuster lever': 'Nachstellhebel', 'parking lever': 'Bremshebel', cable: 'Seilzug', 'front piston': 'vorderer Kolben', 'rear piston': 'hinterer Kolben', drum: 'Trommel', 'drum pulled': 'Trommel, gezogen', 'drum rocked': 'Trommel, gekippt' } as Record<string, string>)[part] ?? part}`,
    aBarInTheHand: 'Stange in der Hand',
    bareHand: 'bloße Hand',
    shoesMovements10: 'Backenbewegungen ×10',
    movements1: 'Bewegungen ×1',
    drumOff: 'Trommel ab',
    drumOnAgain: 'Trommel wieder auf',
    returnSpringUnhooked: 'Rückzugfeder ausgehängt',
    returnSpringHookedOn: 'Rückzugfeder eingehängt',
    off: 'ab',
    on: 'an',
    holdDownOfTheShoe: (side: 'front' | 'rear', off: string) =>
      `Niederhalter der ${side === 'front' ? 'vorderen' : 'hinteren'} Backe ${off}`,
  },

  /* sim/study/working/now-adjuster.ts, now-brake.ts, now-shoe.ts */
  studyWorkingNow: {
    clearance: (side: 'front' | 'rear') => `Lüftspiel, ${side === 'front' ? 'vorn' : 'hinten'}`,
    insideDrumBy: 'Beide Beläge innerhalb der Trommel um',
    piston: 'Kolben',
    returnSprings: 'Rückzugfedern',
    climbingLever: 'Hebel beim Übersteigen',
    holdDown: 'Niederhalter',
    otherParts: 'Andere Teile',
    pressureOfDrum: 'Druck der Trommel',
    frictionOfDrum: 'Reibung der Trommel',
    frictionOfHeel: 'Reibung der Ferse',
    closingMoment: (name: string) => `${name}: Moment um das vordere Lager, schließend`,
    shoesOffStrut: 'Die Backen liegen nicht an der Druckstange an',
    armOfStrut: 'Hebelarm der Druckstange um das vordere Lager',
    drumBeforeStop: 'Trommel vor der Bremsung',
    timeOfStop: 'Dauer der Bremsung',
    energyOfStop: 'Energie der Bremsung in dieser Bremse',
    halfTurn: 'Eine halbe Umdrehung in Radiant',
    radiusOfColdDrum: 'Radius der kalten Trommel',
    widthOfWiderLining: 'Breite des breiteren Belags',
    heatShareOfDrum: 'Anteil der Wärme, den die Trommel nimmt',
    effusivityOfDrum: 'Wärmeeindringkoeffizient der Trommel, √(k·ρ·c)',
    strutAtStep: 'Druckstange bei diesem Schritt',
    strutAtNextStep: 'Druckstange beim nächsten Schritt',
    lostMotion: 'Totgang',
    lostMotionSpringOff: 'Totgang: Die Feder der Druckstange ist ab',
    seatsApart: 'Abstand der Sitze der Druckstange',
    lengthOfStrut: 'Länge der Druckstange',
    strengthOfLeverSpring: 'Stärke der Feder des Hebels',
    stepsTaken: 'Genommene Schritte, gezählt',
    nothingClimbed: 'Nichts wird überstiegen',
    noToothFollows: 'Kein Zahn folgt mehr',
    drumAsWarm: 'Trommel, so warm wie sie ist',
    driven: 'Gefahren, gezählt',
    heldOffByCable: 'Vom Seilzug abgehalten',
    eyeToEyeNow: 'Von Öse zu Öse jetzt',
    eyeToEyeFitted: 'Von Öse zu Öse im Einbau',
    pullAsFitted: 'Einbaukraft',
    rate: 'Federrate',
    strengthAsIs: 'Stärke, wie sie ist; neu ist sie 1',
    dragOfShoe: (role: 'leading' | 'trailing') =>
      `Reibkraft der ${role === 'leading' ? 'auflaufenden' : 'ablaufenden'} Backe`,
    leftOnItsToe: (role: 'leading' | 'trailing') =>
      `Nach den Federn an ihrer Spitze, ${role === 'leading' ? 'auflaufend' : 'ablaufend'}`,
    pushOfPiston: (role: 'leading' | 'trailing') =>
      `Kraft des Kolbens, ${role === 'leading' ? 'auflaufend' : 'ablaufend'}`,
    drag: (side: 'front' | 'rear') => `Reibkraft, ${side === 'front' ? 'vorn' : 'hinten'}`,
    radiusOfDrum: 'Radius der Trommel jetzt',
    linePressure: 'Leitungsdruck',
    boreOfWheelCylinder: 'Bohrung des Radzylinders',
    inLineAsPressed: 'In der Leitung, wie getreten',
    pushOnToe: 'Kraft des Kolbens auf die Spitze',
    pistonAboveAnchor: 'Kolbenlinie über dem Lager jetzt',
    momentOfSprings: 'Moment der Rückzugfedern und des Hebels beim Übersteigen, schließend',
    toeAboveAnchor: 'Spitze über dem Lager',
    toeFromAxleNow: 'Abstand der Spitze von der Achse jetzt',
    toeFromAxleLetGo: 'Abstand der Spitze von der Achse, gelöst',
    allThatPresses: 'Alles, was den Belag an die Trommel drückt',
    nothingRubs: 'Nichts reibt',
    frictionNow: 'Reibwert jetzt, mit seiner Wärme und Oberfläche',
    radiusAtWhichItRubs: 'Radius, an dem er reibt, bei eingedrückter Fläche',
    pressureOfMostBearing: 'Pressung des Elements, das am meisten trägt',
    pressureOfLast: 'Pressung des letzten Elements',
    pressureBeside: 'Pressung des Elements daneben',
    gapBeforeMiddle: 'Spalt des Elements vor der Mitte',
    gapAfterMiddle: 'Spalt des Elements dahinter',
    thicknessNew: 'Dicke dort, neu',
    wornOff: 'Dort verschlissen',
    limitOfLining: 'Grenze des Belags',
    liningNew: 'Belag neu',
    levelPart: 'Waagerechter Anteil der Lagerkraft',
    uprightPart: 'Senkrechter Anteil der Lagerkraft',
  },

  /* sim/study/working/shoe-factor.ts */
  studyWorkingShoeFactor: {
    pinFromAxle: 'Abstand des Lagerbolzens von der Achse',
    pistonAbovePin: 'Kolbenlinie über dem Lagerbolzen',
    radiusOfDrum: 'Radius der Trommel jetzt',
    widthOfLining: 'Breite des Belags',
    frictionNow: 'Reibwert des Belags, wie er jetzt ist',
    leftOnToe: 'Nach den Federn an der Spitze',
    cosineOfHeelEnd: (degrees: string) => `Kosinus am Ende zur Ferse, ${degrees}°`,
    cosineOfToeEnd: (degrees: string) => `Kosinus am Ende zur Spitze, ${degrees}°`,
    sineOf: (degrees: string) => `Sinus von ${degrees}°`,
    sineOfTwice: (degrees: string) => `Sinus von zweimal ${degrees}°`,
    arcOfLining: 'Bogen des Belags, rad',
    sumOfSine: 'Summe des Sinus über den Bogen',
    armOfPressure: 'Hebelarm der Pressung',
    armOfFriction: 'Hebelarm der Reibung',
    pressureFromPin: 'Pressung bei 90° vom Lagerbolzen',
    dragSum: 'Reibkraft, Summe über alle Elemente',
    toeAboveAnchor: 'Spitze über dem Lager',
    pressureAboutAnchor: 'Pressung aller Elemente um das Lager, schließend',
    frictionAboutAnchor: 'Reibung aller Elemente um das Lager, öffnend',
    allThatPresses: 'Alles, was drückt, Summe über alle Elemente',
    radiusAtWhichItRubs: 'Radius, an dem er reibt',
  },

  /* ui/record/scene-names.ts */
  recordSceneNames: {
    named: (name: string): string => SCENE_NAMES[name] ?? name,
  },
  /* ui/record/home.ts */
  recordHome: {
    allOfIt: 'alles',
    foundAllowed: (path: string, found: string, allowed: string) =>
      `${path}: gefunden ${found}; erlaubt: ${allowed}`,
    ofBrakesOfYourOwn: (bad: number, length: number) => `${bad} von ${length} eigenen Bremsen`,
    itIsNoListOf: 'es ist keine Liste von Bremsen',
    thisLinkCouldNotBe: (wrong: string) => `Dieser Link ließ sich nicht öffnen. ${wrong}.`,
    theAddressCouldNotBe: (error: string) => `Die Adresse ließ sich nicht schreiben: ${error}`,
    linkOpened: 'Link geöffnet',
    thisLinkCouldNotBe2: (error: string) => `Dieser Link ließ sich nicht öffnen: ${error}`,
  },

  /* ui/record/life-book.ts */
  recordLifeBook: {
    oneStep: 'ein Schritt',
    steps: (stepped: number) => `${stepped} Schritte`,
    hotPressAtCTo: (temperature: number, steps: string, tooth: number) =>
      `Tritt bei heißer Bremse, ${temperature} °C: ${steps} auf Zahn ${tooth}`,
    clickToothOnThePedal: (tooth: number) => `Klick: Zahn ${tooth} mit dem Pedal`,
  },

  /* ui/record/life.ts */
  recordLife: {
    atMostRows: (full: number) => `höchstens ${full} Zeilen`,
    aRowThatWasDriven: 'eine gefahrene Zeile',
  },

  /* ui/record/link.ts */
  recordLink: {
    behind: 'hinter #',
    theRestOfTheLink: 'der Rest des Links: Er wurde abgeschnitten',
    letters: (length: number) => `${length} Zeichen`,
    atMost: (mostpacked: number) => `höchstens ${mostpacked}`,
    lettersThatAreNoWhole: (length: number) => `${length} Zeichen, die kein ganzer Link sind`,
    allOfTheLinkAs: 'der ganze Link, wie er kopiert wurde',
  },

  /* ui/record/moment.ts */
  recordMoment: {
    stationNames: {
      apply: 'Betätigen',
      wear: 'Verschleiß',
      'drum-off': 'Trommel ab',
      park: 'Parken',
      inspect: 'Prüfen',
      'new-shoes': 'Neue Backen',
      faults: 'Fehler',
      own: 'Meine Bremse',
      questions: 'Alle Fragen',
      start: 'Start',
      ask: 'Fragen',
      see: 'Was ich sehe',
      kind: 'Welche Bauart',
      lessons: 'Lektionen',
      vary: 'Was wäre, wenn',
      order: 'Der Reihe nach',
      compare: 'Vergleichen',
      apart: 'Nachsteller zerlegt',
    },
  },

  /* ui/record/naming.ts */
  recordNaming: {
    partsAskedFor: 'Teile abgefragt',
    tapped: (part: string) => `angetippt: ${part}`,
    partShown: 'Teil gezeigt',
    namesTold: 'Namen genannt',
  },

  /* ui/record/old.ts */
  recordOld: {
    aList: 'eine Liste',
    anObject: 'ein Objekt',
    foundAllowedTextsByTheir: (what: string) =>
      `gefunden ${what}, erlaubt: Texte nach ihren Schlüsseln`,
    noSuchPlace: 'diese Stelle gibt es nicht',
    foundAllowedAText: (what: string) => `gefunden ${what}, erlaubt: ein Text`,
    foundCharactersAllowed: (length: number, most: number) =>
      `gefunden ${length} Zeichen, erlaubt: ${most}`,
    foundAllowedABrake: (what: string) => `gefunden ${what}, erlaubt: eine Bremse`,
    foundAllowed: (found: string, allowed: string) => `gefunden ${found}, erlaubt: ${allowed}`,
    myBrake: 'Meine Bremse',
    theseSizesMakeNoSound: 'diese Maße ergeben keine heile Bremse mehr',
    foundAllowedASheet: (what: string) => `gefunden ${what}, erlaubt: ein Blatt`,
    foundAllowed2: (what: string, limitSetIds: string) =>
      `gefunden ${what}, erlaubt: ${limitSetIds}`,
    foundAllowedMmIn: (what: string) => `gefunden ${what}, erlaubt: mm, in`,
    itIsNoJson: 'es ist kein JSON',
    foundAllowedAListOf: (what: string) => `gefunden ${what}, erlaubt: eine Liste von Bremsen`,
    place: (i: number) => `Bremse ${i}`,
    brakesAreKept: (mostbrakes: number) => `${mostbrakes} Bremsen werden aufbewahrt`,
    theDeletedBrake: 'die gelöschte Bremse',
  },

  /* ui/record/pictures.ts */
  recordPictures: {
    thisBrowserCannotReadThis:
      'Dieser Browser kann dieses Bild (HEIC) nicht lesen. Stellen Sie die Kamera auf JPEG oder schicken Sie sich das Bild als JPEG.',
    thisFileIsNoPicture:
      'Diese Datei ist kein Bild, das dieser Browser lesen kann. Erlaubt: JPEG, PNG, WebP.',
  },

  /* ui/record/record.ts */
  recordRecord: {
    of0ToTheTeethOf: (teeth: number) => `0 bis ${teeth}, die Zähne dieser Bremse`,
    toMmThisBrakesDrum: (radiusNew: number, widest: string) =>
      `${radiusNew} bis ${widest} mm, die Trommel dieser Bremse`,
    atMostMmTheLining: (thicknessNew: number) =>
      `höchstens ${thicknessNew} mm, der Belag dieser Bremse`,
    aScene: 'eine Szene',
    aBrakeThatIsKept: 'eine Bremse, die hier aufbewahrt wird',
    aFaultOfTheList: 'ein Fehler aus der Liste',
    whereTheGuestStands: (allowed: string) => `wo der Gast steht: ${allowed}`,
    plainData: 'reine Daten',
  },

  /* ui/record/road.ts */
  recordRoad: {
    aStopThatAScene: 'eine Bremsung, die eine Szene verlangen darf',
  },

  /* ui/record/shelf-merge.ts */
  recordShelfMerge: {
    other: ' (anderes Fenster)',
    wasChangedInTwoWindows: (title: string, fields: string, title2: string) =>
      `${title} wurde in zwei Fenstern zugleich geändert (${fields}): Beide bleiben erhalten, die andere als „${title2}“.`,
    ofBrakesInTwoWindows: (length: number, mostbrakes: number) =>
      `Von ${length} Bremsen in zwei Fenstern werden hier ${mostbrakes} aufbewahrt.`,
  },

  /* ui/record/shelf.ts */
  recordShelf: {
    noScene: 'keine Szene',
  },

  /* ui/record/state.ts */
  recordState: {
    elements: (elements: number) => `${elements} Elemente`,
    of20To50MmEach: 'je -20 bis 50 mm',
  },

  /* ui/record/store.ts */
  recordStore: {
    nothingKept:
      'Dieser Browser bewahrt nichts auf: Was Sie einstellen und eintippen, ist weg, wenn Sie die Seite schließen. Ein Link oder eine Datei bewahrt es (Werkbank).',
    notKept:
      'Dieser Browser hat keinen Platz für das, was Sie einstellen und eintippen. Speichern Sie es als Datei (Werkbank), bevor Sie die Seite schließen.',
    itIsStillInThis: (fullKey: string) =>
      `Es steht noch in diesem Browser unter "${fullKey}-unread".`,
    thereWasNoRoomTo: 'Es war kein Platz, es beiseitezulegen.',
    whatWasKeptUnderCould: (fullKey: string, why: string, where: string) =>
      `Was unter "${fullKey}" aufbewahrt war, ließ sich nicht lesen: ${why}. ${where}`,
  },

  /* ui/record/view.ts */
  recordView: {
    layers: {
      forces: 'Kräfte',
      names: 'Namen',
      heat: 'Wärme',
      loupe: 'Lupe',
      edge: 'Seitenansicht',
      dials: 'Stellgriffe',
    },
    layer: (name: string, on: boolean) => `${name} ${on ? 'ein' : 'aus'}`,
    gapFan: 'Spaltfächer',
    pressureComb: 'Pressungskamm',
    restGhost: 'Ruhelage als Schattenbild',
    forcePolygons: 'Kraftecke',
    gapDrawn: (magnification: number) => `Spalt gezeichnet ×${magnification}`,
    causeOfTheTilt: 'Ursache des Kippens',
    namesHidden: 'Namen verdeckt',
    namesTold: 'Namen genannt',
    nameOf: (partNames: string) => `Name: ${partNames}`,
    sheet: 'Blatt',
    board: 'Tafel',
    view: (sheet: string) => `Ansicht ${sheet}`,
    wallLeft: 'Wand verlassen',
    handWheel: (wheel: unknown) => `${wheel === 'left' ? 'linkes' : 'rechtes'} Rad`,
    wholeBrake: 'ganze Bremse',
    timeAt: (paceName: string) => `Zeit: ${paceName}`,
    shoesThatBend: 'nachgiebige Backen',
    rigidShoes: 'starre Backen',
    soundOn: 'Ton an',
    soundOff: 'Ton aus',
    forward: 'vorwärts',
    backward: 'rückwärts',
    stopped: 'steht',
    drum: (forward: string) => `Trommel ${forward}`,
  },

  /* ui/record/walk.ts */
  recordWalk: {
    to: (guestTitle: unknown) => `zu ${guestTitle}`,
    to2: (stationNames: string) => `zu ${stationNames}`,
  },

  /* ui/session.ts */
  session: {
    hasLeftYoursStandsOn: (guestTitle: unknown) =>
      `${guestTitle} ist gegangen. Ihre Bremse steht wieder auf der Werkbank.`,
    doneAgain: 'Wiederholt',
    clickToothOnThePedal: (tooth: number) => `Klick: Zahn ${tooth} mit dem Pedal`,
  },

  /* ui/stage/edge-on.ts */
  stageEdgeOn: {
    edge: (side: 'front' | 'rear') => `edge ${side}`,
    pad: 'Auflage',
    endPads: 'Endauflagen',
    holdDown: 'Niederhalter',
    springs: 'Federn',
  },

  /* ui/stage/layers/bent.ts */
  stageLayersBent: {
    shoesBendBow: (bowscale: number) => `Backen biegen sich: Biegung ×${bowscale}`,
  },

  /* ui/stage/layers/captions.ts */
  stageLayersCaptions: {
    gapsTimes: (factor: number) => `Spalt ×${factor}`,
    turningText: {
      1: 'Trommel dreht vorwärts',
      0: 'Trommel steht',
      '-1': 'Trommel dreht rückwärts',
    },
    notes: {
      leading: ['Die Trommel zieht sie', 'fester an sich'],
      trailing: ['Die Trommel drückt sie', 'vom Rand weg'],
    },
    role: (side: 'front' | 'rear') => `role ${side}`,
    shoe: (called: 'front' | 'rear' | 'leading' | 'trailing') =>
      `${{ front: 'Vordere', rear: 'Hintere', leading: 'Auflaufende', trailing: 'Ablaufende' }[called]} Backe`,
    alone: { front: 'vorn', rear: 'hinten', leading: 'auflaufend', trailing: 'ablaufend' },
    corner: (side: 'front' | 'rear') => `corner ${side}`,
  },

  /* ui/stage/layers/cut-mark.ts */
  stageLayersCutMark: {
    innerLetter: 'inner letter',
    outerLetter: 'outer letter',
  },

  /* ui/stage/layers/forces.ts */
  stageLayersForces: {
    toe: (side: 'front' | 'rear') => `toe ${side}`,
    drag: (side: 'front' | 'rear') => `drag ${side}`,
    anchor: (side: 'front' | 'rear') => `anchor ${side}`,
  },

  /* ui/stage/layers/heat.ts */
  stageLayersHeat: {
    drumC: (temperature: number) => `Trommel ${temperature}\u00a0°C`,
  },

  /* ui/stage/layers/overlap.ts */
  stageLayersOverlap: {
    clearOfIt: 'frei',
    place: (word: 'heel' | 'centre' | 'toe'): string =>
      ({ heel: 'Ferse', centre: 'Mitte', toe: 'Spitze' })[word],
    clear: (word: 'heel' | 'toe') => `${word === 'heel' ? 'Ferse' : 'Spitze'} frei`,
  },

  /* ui/stage/loupe.ts */
  stageLoupe: {
    loupeTangents: 'loupe tangents',
    loupeName: 'loupe name',
    loupeScale: 'loupe scale',
  },

  /* ui/stage/part-names.ts */
  stagePartNames: {
    partNames: {
      plate: ['Ankerplatte', 'Trägt alle Teile, die sich nicht drehen.'],
      'access hole': [
        'Schauloch, mit Stopfen',
        'Lässt bei aufgesetzter Trommel ein Werkzeug an den Nachsteller.',
      ],
      hub: ['Nabe', 'Dreht sich mit dem Rad und trägt die Trommel.'],
      drum: ['Trommelring, geschnitten', 'Dreht sich mit dem Rad; innen reiben die Beläge.'],
      web: ['Steg der Backe', 'Steife Rippe der Backe, die die Kräfte aufnimmt.'],
      table: ['Kranz der Backe', 'Gebogenes Blech der Backe, das den Belag trägt.'],
      lining: ['Belag', 'Reibt an der Trommel und verschleißt.'],
      'lever window': [
        'Schlitz im Steg',
        'Sein Spiel ist der Totgang, bevor ein Zahn überstiegen wird.',
      ],
      'hold-down': ['Niederhalterstift', 'Hält die Backe an der Ankerplatte.'],
      cylinder: ['Radzylinder', 'Macht aus Flüssigkeitsdruck eine Kraft auf beide Spitzen.'],
      'bleed port': ['Entlüftungsbohrung', 'Lässt eingeschlossene Luft aus der Flüssigkeit.'],
      piston: ['Kolben', 'Drückt seine Backe nach außen.'],
      cup: ['Manschette', 'Dichtet die Flüssigkeit ab; ihre Lippe spreizt sich unter Druck.'],
      boot: ['Staubkappe', 'Hält Staub vom Zylinder fern.'],
      'cup spring': ['Manschettenfeder', 'Hält die Manschetten an ihren Kolben.'],
      fluid: ['Bremsflüssigkeit', 'Drückt beide Kolben gleich stark.'],
      strut: ['Druckstange', 'Hält die Backen auseinander; ihre Länge bestimmt das Lüftspiel.'],
      'toothed lever': [
        'Zahnhebel',
        'Schaltet auf den nächsten Zahn, wenn die Backen zu weit laufen.',
      ],
      'lever pin': [
        'Hebelbolzen in seinem Langloch',
        'Der Hebel dreht sich auf ihm und gleitet, um über einen Zahn zu steigen.',
      ],
      'lever spring': ['Hebelfeder', 'Drückt den Hebel in seinen Zahn.'],
      'strut spring': ['Druckstangenfeder', 'Hält die Druckstange auf ihrem Sitz.'],
      'star wheel': ['Sternrad', 'Dreht das Gewinde, das die Druckstange länger macht.'],
      'wheel lever': [
        'Sternradhebel',
        'Fasst auf dem Hinweg den nächsten Zahn und dreht das Rad auf dem Rückweg.',
      ],
      'wheel lever pin': [
        'Bolzen des Sternradhebels',
        'Verbindet den Hebel mit dem vorderen Steg.',
      ],
      'strut fork': [
        'Gabel der Druckstange',
        'Sitzt über dem Steg; ihre Kerbe hält die Nase des Hebels.',
      ],
      screw: ['Gewindespindel', 'Aus ihrer Hülse herausgedreht macht sie die Druckstange länger.'],
      sleeve: ['Gewindehülse', 'Mutter der Spindel; ihr Ende steht am Bremshebel.'],
      wedge: ['Keil', 'Rutscht so weit nach, wie Platz ist, und macht die Druckstange länger.'],
      'wedge seat': ['Keilsitz', 'Senkrechte Fläche am vorderen Steg, auf der der Keil gleitet.'],
      'wedge spring': ['Keilfeder', 'Zieht den Keil nach unten.'],
      'hot lock': [
        'Heißsperre, Bimetall',
        'Biegt sich bei Hitze und hält den Nachsteller an: kein Schritt zu weit.',
      ],
      'return spring': ['Rückzugfeder', 'Zieht die Backen von der Trommel.'],
      'upper spring': [
        'Obere Rückzugfeder',
        'Zieht die Spitzen zusammen, wenn das Pedal losgelassen wird.',
      ],
      'lower spring': ['Untere Rückzugfeder', 'Hält die Fersen an ihrem Platz.'],
      'parking lever': ['Bremshebel', 'Spreizt die Backen, wenn der Seilzug zieht.'],
      'lever pivot': ['Drehpunkt des Bremshebels', 'Verbindet den Hebel mit dem hinteren Steg.'],
      'lever stop': ['Anschlag des Hebels', 'Liegt am Steg an, wenn der Seilzug schlaff ist.'],
      cable: [
        'Seilzug und Spiralfeder',
        'Zieht den Bremshebel; die Spiralfeder bringt ihn zurück.',
      ],
      'cable guide': ['Seilführung', 'Führt den Seilzug durch die Ankerplatte.'],
      'anchor pin': [
        'Lagerbolzen',
        'Drehpunkt der Backe; nimmt auf, was die Trommel auf sie drückt.',
      ],
      abutment: ['Widerlager', 'Die Ferse gleitet und rollt darauf.'],
      keeper: ['Halteblech', 'Hält die Fersen auf ihren Bolzen.'],
    } satisfies Record<string, readonly [name: string, does: string]>,
  },

  /* ui/stage/parts/parking.ts */
  stagePartsParking: {
    parkingOver: 'parking over',
  },

  /* ui/stage/polygons.ts */
  stagePolygons: {
    aShoeLocksNoForce: 'Eine Backe blockiert: Kraft nicht angebbar',
    noForceIsTold: 'Kraft nicht angebbar',
    nothingPushesOnTheShoes: 'Nichts drückt auf die Backen',
    front: 'Vordere',
    rear: 'Hintere',
    head: (front: string, leftOver: string) => `${front} Backe, Rest ${leftOver}\u00a0N`,
    head2: (side: 'front' | 'rear') => `head ${side}`,
  },

  /* ui/stage/section-bb.ts */
  stageSectionBb: {
    pull: 'ziehen',
    leader: (key: string) => `leader ${key}`,
    lipDiameter: (lipRadius: string) => `Grat Ø\u00a0${lipRadius}`,
    sweptDiameter: (lipRadius: string) => `Laufbahn Ø\u00a0${lipRadius}`,
  },

  /* ui/stations/apart/draw.ts */
  apartDraw: {
    fromOutsideTheWheel: 'Von außen am Rad',
    fromBehindThisSideLies: 'Von hinten: Diese Seite liegt zur Ankerplatte',
  },

  /* ui/stations/apart/index.ts */
  apart: {
    noNamesOfTheBrake:
      'Hier keine Namen der Bremse: Ihr Nachsteller liegt allein auf der Werkbank, jedes Teil mit seinem eigenen Namen. Die Bremse hat sie unter Betätigen.',
    next: (fitted: number, nameOf: string) => `Als Nächstes, ${fitted}: ${nameOf}.`,
    theAdjusterTogether: 'Der Nachsteller, zusammengebaut.',
    takeItApart: 'Zerlegen',
    nextStep: 'Nächster Schritt',
    togetherName: 'Zusammengebaut',
  },

  /* ui/stations/apart/side.ts */
  apartSide: {
    goes: {
      strut: 'flach auf die Werkbank, Gabel zum Bremshebel',
      'toothed lever': 'mit dem Langloch über den Bolzen, Zähne in die der Druckstange',
      'lever pin': 'durch das Langloch, hinten vernietet',
      'lever spring': 'zieht den Hebel in seinen Zahn',
      'strut fork': 'über den vorderen Steg, Kerbe zur Nase des Hebels',
      screw: 'in ihre Hülse, ganz hinein, dann eine halbe Umdrehung zurück',
      sleeve: 'ihr Ende zum Bremshebel',
      'star wheel': 'auf die Spindel, Zähne zum Hebel',
      'wheel lever': 'mit der Nase in die Kerbe, mit der Klinge ans Rad',
      'wheel lever pin': 'verbindet den Hebel mit dem vorderen Steg',
      wedge: 'dünnes Ende nach unten, ganz nach oben',
      'wedge spring': 'zieht den Keil nach unten',
      'hot lock': 'Bimetallseite so, wie sie abkam',
    },
    holdsItBack: {
      goes: 'zuletzt: von der Druckstange zum hinteren Steg',
      why: 'Nichts zieht die Druckstange zurück: Der Hebel nimmt sie mit, statt seinen Zahn zu übersteigen.',
    },
    takesItAlong: {
      goes: 'zuletzt: von der Druckstange zum Keilsitz',
      why: 'Nichts nimmt die Druckstange mit: Der Keil rutscht nach, so weit die Backen auseinandergehen, samt dem Spiel.',
    },
    firstTheThisOneHas: (nameOf: string) =>
      `Erst dieses Teil: ${nameOf}. Für das gewählte gibt es noch keinen Platz.`,
    missing: 'fehlt',
    on: 'dran',
    next: 'als Nächstes',
    strutRow: 'Kraft auf die Druckstange, N',
    strutLongerByMm: 'Druckstange länger um, mm',
    clearanceAtRestMm: 'Lüftspiel in Ruhe, mm',
    dragPedalUpNM: 'Schleifmoment, Pedal oben, N·m',
    pedalAt40BarMm: 'Pedal bei 40 bar, mm',
    brakeTorqueNM: 'Bremsmoment, N·m',
    nothingWord: 'nichts',
    ofMm: (longer: string, longer2: string) => `${longer} von ${longer2} mm`,
    withoutTheTheAdjusterTakes: (name: string, b: string, travel: string, why: string) =>
      `Ohne ${name} nimmt der Nachsteller ${b} auf: Der Spalt bleibt, und das Pedal geht ${travel} mm weiter.${why}`,
    theLiningsLieOnThe: (drag: string) =>
      `: Die Beläge liegen bei gelöstem Pedal an der Trommel und schleifen mit ${drag} N·m`,
    withoutTheTheAdjusterTakes2: (name: string, longer: string, theLinings: string, why: string) =>
      `Ohne ${name} nimmt der Nachsteller ${longer} mm mehr auf${theLinings}.${why}`,
    withoutTheNothingHoldsThe: (name: string) =>
      `Ohne ${name} hält nichts die Backen an der Druckstange: Sie liegen, wo sie gelassen wurden.`,
    withoutTheTheStrutIs: (name: string, strut: string, strut2: string) =>
      `Ohne ${name} hält die Druckstange eine Kraft von ${strut} N statt ${strut2} N.`,
    withoutTheTheseFiguresStay: (name: string) =>
      `Ohne ${name} bleiben diese Zahlen: Die Feder hat eine andere Aufgabe.`,
    withAndWithout: 'Mit und ohne',
    liningsWorn06Mm: 'Beläge um 0,6 mm verschlissen, bei 40 bar getreten, bis es still ist',
    withIt: 'mit',
    without: 'ohne',
    withAndWithout2: 'mit und ohne',
    adjusterApart: 'Nachsteller zerlegt',
    whatIsMissingHereIs: (idea: string) => `${idea}. Was hier fehlt, fehlt in der Bremse.`,
    putTogetherInThisOrder: 'In dieser Reihenfolge zusammenbauen',
    takeASpringAwayAnd: 'Eine Feder wegnehmen und treten',
    bothSideBySide: 'Beide nebeneinander',
    controls: 'Bedienung',
    kindOfAdjuster: 'Bauart des Nachstellers',
    stepBack: 'Schritt zurück',
    nextStep: 'Nächster Schritt',
    takeItApart: 'Zerlegen',
    putItTogether: 'Zusammenbauen',
    stepsTakenUp: 'Nachgestellte Schritte',
  },

  /* ui/stations/apart/wants.ts */
  apartWants: {
    theBrakesOwnAdjuster: 'der eigene Nachsteller der Bremse',
    aPartOff: 'ein Teil ab',
    aPartOn: 'ein Teil dran',
    springPutOn: 'Feder eingehängt',
    springAway: 'Feder weg',
  },

  /* ui/stations/apply.ts */
  apply: {
    locks: 'blockiert',
    atThisFrictionTheDrum: (locked: 'front' | 'rear', locks: unknown) => [
      'Bei dieser Reibung zieht die Trommel die ',
      locked === 'front' ? 'vordere' : 'hintere',
      ' Backe von selbst fest: Sie ',
      locks,
      '. Eine Kraft lässt sich nicht angeben.',
    ],
    seized: 'fest',
    releasedAndYetItIs: (seized: unknown, torque2: string) => [
      'Gelöst, und doch ist sie ',
      seized,
      ': Die Beläge stehen innen an der Trommel an. ',
      torque2,
      ' N·m würden sie drehen, vorher rutscht das Rad.',
    ],
    releasedAndYetItDrags: (torque: unknown) => [
      'Gelöst, und doch schleift sie: Die Beläge stehen innen an der Trommel an, und ',
      torque,
      ' drehen sie.',
    ],
    releasedTheSpringsHoldBoth:
      'Gelöst: Die Federn halten beide Backen an der Druckstange, und die Druckstange bestimmt den Spalt.',
    bothToesGetTheSame: (push: string) =>
      `Beide Spitzen bekommen dieselben ${push} N. Die Trommel steht: Sie hilft keiner Backe.`,
    thePistonsHaveTakenThe:
      'Die Kolben haben die Backen von der Druckstange abgehoben; zuerst schließt sich der Spalt.',
    times: (times: string) => `${times}-mal`,
    bothToesGetTheSame2: (push: string, times: unknown) => [
      'Beide Spitzen bekommen dieselben ',
      push,
      ' N; die drehende Trommel lässt den auflaufenden Belag ',
      times,
      ' so stark drücken.',
    ],
    apply: 'Betätigen',
    readings: 'Messwerte',
    pistonTravelFront: 'Kolbenweg, vorn',
    tryWord: 'Probieren',
    controls: 'Bedienung',
    drum: 'Trommel',
    allReadingsSlowMotionLayers: 'Alle Messwerte, Zeitlupe, Ebenen',
  },

  /* ui/stations/ask/index.ts */
  ask: {
    ask: 'Fragen',
    inYourOwnWordsWhat:
      'In Ihren eigenen Worten: was nicht stimmt, was Sie wissen möchten, oder der Name eines Teils.',
  },

  /* ui/stations/ask/list.ts */
  askList: {
    m33h21v17h12l722v17h3zm99q0: 'M3 3H21V17H12L7 22V17H3ZM9 9q0-3 3-3t3 3q0 2-3 3v1',
    sayItAsYouWould:
      'Sagen Sie es, wie Sie es jemandem neben dem Auto sagen würden. Beliebige Wörter, beliebige Reihenfolge.',
    noneOfTheseWordsIs:
      'Keines dieser Wörter ist hier bekannt. Diese Einstiege kommen am nächsten.',
    readAs: (a: unknown) => ['Gelesen als ', a, '.'],
    or: (label: string) => `oder: ${label}`,
    whatHelpsBestFirst: 'Was hilft, das Beste zuerst',
    noneOfTheseSayWhat: 'Nichts davon: sagen, was ich sehe',
  },

  /* ui/stations/ask/part.ts */
  askPart: {
    whatIsAsked: 'was gefragt ist',
  },

  /* ui/stations/ask/wants.ts */
  askWants: {
    figuresCarriedAlong: 'Zahlen mitgenommen',
  },

  /* ui/stations/compare/choices.ts */
  compareChoices: {
    turningName: 'Vorwärts gegen rückwärts',
    heatName: 'Kalt gegen heiß',
    wearName: 'Neu gegen verschlissen',
    toothName: 'Ein Zahn weiter',
  },

  /* ui/stations/compare/draw.ts */
  compareDraw: {
    gapFan: (magnification: number) => `Spaltfächer ×${magnification}`,
    pressureComb: 'Pressungskamm',
  },

  /* ui/stations/compare/index.ts */
  compare: {
    pressureBar: 'Druck, bar',
    torqueNM: 'Moment, N·m',
    gapAtRestMm: 'Spalt in Ruhe, mm',
    against: (name: string, a: string, b: string) => `${name}: ${a} gegen ${b}.`,
    thingsDiffer: (length: number) =>
      `${length === 1 ? 'Eines ist' : `${length} Dinge sind`} verschieden.`,
    noNamesHereTwoBrakes:
      'Hier keine Namen: Zwei Bremsen teilen sich die Zeichnung, jede ist zu klein für dreißig Nummern. Eine einzelne Bremse hat sie unter Betätigen.',
    letGo: 'Loslassen',
    pressBoth: 'Beide treten',
    aForBName: 'A gegen B tauschen',
  },

  /* ui/stations/compare/side.ts */
  compareSide: {
    gapFan: 'Spaltfächer',
    aAndBAreThe:
      'A und B sind dieselbe Bremse im selben Zustand: Wählen Sie unten, was verschieden sein soll.',
    onePedalForBothPush: 'Ein Pedal für beide: treten und sehen, was jede macht.',
    sameFootSameTravel: 'Gleicher Fuß, gleicher Weg',
    samePressure: 'Gleicher Druck',
    inAShoeLocksAnd: (same: string, b: string) =>
      `${same}: In ${b} blockiert eine Backe, eine Kraft lässt sich nicht angeben.`,
    neitherBrakesYet: (same: string) => `${same}: Noch bremst keine.`,
    aBrakesWithInB: (same: string, a: string) =>
      `${same}: A bremst mit ${a}. In B schließt das Pedal noch den Spalt.`,
    bBrakesWithInA: (same: string, b: string) =>
      `${same}: B bremst mit ${b}. In A schließt das Pedal noch den Spalt.`,
    bothBrakeWith: (same: string, a: string) => `${same}: Beide bremsen mit ${a}.`,
    more: 'mehr',
    less: 'weniger',
    aBrakesWithBWith: (same: string, a: string, b: string, b2: string, more: string) =>
      `${same}: A bremst mit ${a}, B mit ${b}, ${b2} % ${more}.`,
    so: 'also: ',
    inAInB: 'in A, in B',
    nothingDiffers: 'Nichts ist verschieden',
    thingsDiffer: (causes: number) => `${causes} Dinge sind verschieden`,
    oneThingDiffers: 'Eines ist verschieden',
    whatFollowsCannotBeLaid:
      'Was folgt, lässt sich keinem davon allein zuschreiben. Ändern Sie immer nur eines.',
    thisBrakeHasNoTwo: 'Diese Bremse hat keine zwei ruhenden Zustände zum Nebeneinanderstellen.',
    bAtTooth: (tooth: number) => `B auf Zahn ${tooth}`,
    on: 'weiter',
    back: 'zurück',
    bOneTooth: (on: string) => `B einen Zahn ${on}`,
    setAgainstEachOther: 'Gegeneinanderstellen',
    somethingElseInB: 'Etwas anderes in B',
    choose: 'wählen …',
    swap: 'Tauschen',
    bOnTheBench: 'B auf die Werkbank',
    benchIsA: 'Werkbank wird A',
    aIsKeptInEvery:
      'A bleibt aufbewahrt: In jedem anderen Bereich wird es als feines Schattenbild über das dort Stehende gezeichnet (Taste g bewahrt neu auf).',
    forgetIt: 'Vergessen',
    compare: 'Vergleichen',
    alike: 'Gleich',
    pedalTravelMm: 'Pedalweg, mm',
    linePressureBar: 'Leitungsdruck, bar',
    brakeTorqueNM: 'Bremsmoment, N·m',
    brakeFactor: 'Bremsenkennwert C*',
    clearanceNowFrontAndRear: 'Lüftspiel jetzt, vorn und hinten, mm',
    clearanceAtRestMm: 'Lüftspiel in Ruhe, mm',
    figuresOfBoth: 'Zahlen von beiden',
    atThisPedal: 'Bei diesem Pedal',
    controls: 'Bedienung',
    show: 'Zeigen',
    theOnePedal: 'Das gemeinsame Pedal',
    same: (x: 'pressure' | 'travel') => `Gleicher ${x === 'pressure' ? 'Druck' : 'Weg'}`,
    onePedal: (at: unknown) => ['Ein Pedal ', at],
    of40BarAAtMm: (a: string, b: string) => `40 bar: A bei ${a} mm, B bei ${b} mm.`,
    letGo: 'Loslassen',
    pressBoth: 'Beide treten',
  },

  /* ui/stations/compare/wants.ts */
  compareWants: {
    keptAsAGhost: 'als Schattenbild aufbewahrt',
    keptMomentForgotten: 'aufbewahrter Augenblick vergessen',
    drawn: 'gezeichnet',
    notDrawn: 'nicht gezeichnet',
    keptMoment: (drawn: string) => `aufbewahrter Augenblick ${drawn}`,
    sideBySide: 'nebeneinander',
    aForB: 'A gegen B getauscht',
    bOntoTheBench: 'B auf die Werkbank',
    onePedalAt: (at: string, mm: string) => `ein Pedal bei ${at} ${mm}`,
    same: (by: 'pressure' | 'travel') => `gleicher ${by === 'pressure' ? 'Druck' : 'Weg'}`,
  },

  /* ui/stations/compare/words.ts */
  compareWords: {
    ways: { 1: 'vorwärts', 0: 'steht', '-1': 'rückwärts' },
    seized: 'fest',
    free: 'frei',
    all: 'alle',
    on: 'eingehängt',
    off: 'ab',
    sides: { front: 'vorn', rear: 'hinten' },
    noneOff: 'keiner',
    noFault: 'keiner',
    nothingOn: 'nichts',
    bend: 'biegsam',
    rigid: 'starr',
    faultBuiltIn: 'Eingebauter Fehler',
    drumTurning: (said: string) => said.replace(/^Trommel dreht/, 'Trommel dreht sich'),
    rubbingFaces: 'Reibflächen',
    frontRear: (
      front: 'damp' | 'dry' | 'glazed' | 'greasy' | 'wet',
      rear: 'damp' | 'dry' | 'glazed' | 'greasy' | 'wet',
    ) =>
      `vorn ${{ damp: 'feucht', dry: 'trocken', glazed: 'verglast', greasy: 'fettig', wet: 'nass' }[front]}, hinten ${{ damp: 'feucht', dry: 'trocken', glazed: 'verglast', greasy: 'fettig', wet: 'nass' }[rear]}`,
    bothStuck: 'beide klemmen',
    frontStuck: 'vorderer klemmt',
    rearStuck: 'hinterer klemmt',
    bothFree: 'beide frei',
    extraFrictionOfACup: 'Zusatzreibung einer Manschette, N',
    returnSprings: 'Rückzugfedern',
    drumOffCentreMm: 'Trommel außermittig, mm',
    drumOvalMm: 'Trommel oval, mm',
    grooveInThePlateHolds: 'Rille in der Ankerplatte hält, N',
    teethHold: 'Zähne halten',
    springOfTheAdjuster: 'Feder des Nachstellers',
    aToothPassed: 'Ein überschrittener Zahn',
    stepsOut: 'stellt nach',
    doesNothing: 'tut nichts',
    windsBack: 'stellt zurück',
    pressureKeptInTheLine: 'Restdruck in der Leitung, bar',
    pullKeptByTheCable: 'Restzug des Seilzugs, N',
    pullLostInTheLevers: 'Zugverlust im Drehpunkt des Hebels',
    playOfTheBearingMm: 'Spiel des Radlagers, mm',
    leaningOnTheShoesN: 'Anliegekraft an den Backen, N',
    returnSpringsUnhooked: 'Ausgehängte Rückzugfedern',
    springOfTheStrut: 'Feder der Druckstange',
    holdDownsOff: 'Niederhalter ab',
    waterRustGlazeAnd: (water: string, rust: string, front: string, rear: string) =>
      `Wasser ${water}, Rost ${rust}, Verglasung ${front} und ${rear}`,
    kindOfAdjuster: 'Bauart des Nachstellers',
    hotLock: ', Heißsperre',
    drumTurns: 'Trommel dreht',
    liningsMm: 'Beläge, mm',
    and: (left: string, left2: string) => `${left} und ${left2}`,
    drumDiameterMm: 'Trommel-Ø, mm',
    and2: (friction: string, friction2: string) => `${friction} und ${friction2}`,
    warmthC: 'Temperatur, °C',
    onTheFaces: 'Auf den Reibflächen',
    cableHoldsTheLeverOff: 'Seilzug hält den Hebel vom Anschlag ab, mm',
    theSame: 'gleich',
    theSame2: (said: string) => `gleich, ${said}`,
  },

  /* ui/stations/drum-off/complaints.ts */
  drumOffComplaints: {
    comesABitThenIts: 'Kommt ein Stück, dann ist es wie eine Wand.',
    atItsLimit: 'An der Grenze',
    hitItAllDayNot: 'Den ganzen Tag draufgehauen, keinen Millimeter.',
    cameOffLastYearAnd:
      'Ging letztes Jahr noch runter, und ich habe nur die Handbremse nachgespannt.',
    stoodAWetWeekOn:
      'Stand eine nasse Woche mit angezogener Handbremse. Jetzt dreht das Rad nicht mehr.',
  },

  /* ui/stations/drum-off/controls.ts */
  drumOffControls: {
    setAnotherFault: 'Anderen Fehler setzen',
    whichIsMine: 'Welcher ist meiner?',
    howItIsFastened: 'Wie sie befestigt ist',
    putItBackOn: 'Wieder aufsetzen',
    pullTheDrum: 'Trommel abziehen',
    takeItApartInOrder: 'Der Reihe nach zerlegen',
    turnIt: 'Drehen',
    rockIt: 'Kippen',
    slackenTheCable: 'Seilzug entspannen',
    controls: 'Bedienung',
  },

  /* ui/stations/drum-off/desk.ts */
  drumOffDesk: {
    pulledStraight: 'Gerade gezogen …',
  },

  /* ui/stations/drum-off/fastening.ts */
  drumOffFastening: {
    screwOrClip: 'Schraube oder Klammer',
    hubNut: 'Nabenmutter',
    howItIsFastened: 'Wie sie befestigt ist',
    theLipAndTheShoes: (name: string) => `${name}. Grat und Backen sind dahinter immer dieselben.`,
    kind: 'Art',
    backToTheBrake: 'Zurück zur Bremse',
  },

  /* ui/stations/drum-off/faults.ts */
  drumOffFaults: {
    less: (name: string) => `${name}: weniger`,
    more: (name: string) => `${name}: mehr`,
    yes: 'ja',
    no: 'nein',
    front: 'vorn',
    rear: 'hinten',
    mmToThe: (aside: string, aside2: string) => `${aside}\u00a0mm nach ${aside2}`,
    setAnotherFault: 'Anderen Fehler setzen',
    setOneOrMoreThen:
      'Setzen Sie einen oder mehrere, dann ziehen, drehen und kippen. Jede Sperre spricht nur auf ihr eigenes Lösen an.',
    faults: 'Fehler',
    brakeAsItStands: 'Bremse, wie sie steht',
    chooseAState: 'Zustand wählen …',
    orWhatItsDriverSays: 'Oder was ihr Fahrer sagt',
    chooseAComplaint: 'Beanstandung wählen …',
    parkingLeverOffItsStop: 'Bremshebel nicht am Anschlag',
    shoesStandAside: 'Backen stehen außer Mitte',
    rustAtTheHub: 'Rost an der Nabe',
    liningsRustedOn: 'Beläge angerostet',
    done: 'Fertig',
  },

  /* ui/stations/drum-off/index.ts */
  drumOff: {
    whereAHarderPullGoes: 'Wohin stärkeres Ziehen geht, Ebenen',
    sectionBB: 'Schnitt B–B',
    theDrumIsOff: 'Die Trommel ist ab',
    drumDrawnWornLipLine: (overlapTimes: number) =>
      `Trommel verschlissen gezeichnet, Gratlinie gestrichelt · Überdeckung ×${overlapTimes}, Werte in mm`,
    putItBackOn: 'Wieder aufsetzen',
    pullTheDrum: 'Trommel abziehen',
  },

  /* ui/stations/drum-off/marks.ts */
  drumOffMarks: {
    clear: 'Frei',
    holds: 'Hält',
  },

  /* ui/stations/drum-off/mine.ts */
  drumOffMine: {
    oneMore: 'Eine weiter',
    of: (indexOf: number, length: number) => `${indexOf} von ${length}`,
    question: 'Frage',
    aServoBrakeOrA: 'Eine Servobremse oder eine Trommel in einer Scheibe?',
    seeWhichKindYoursIs: 'Sehen, welche Bauart Ihre ist',
    oneBack: 'Eine zurück',
    isTheScrewOrClip:
      'Ist die Schraube oder Klammer heraus? Sie wird leicht übersehen, und kein Zug kommt gegen sie an.',
    isTheHubNutOff:
      'Ist die Nabenmutter ab? Trommel, Nabe und Radlager kommen zusammen herunter. Von Hand und langsam lösen; Magnete und Späne vom Impulsring fernhalten.',
    orderOfRelease: 'Reihenfolge des Lösens',
    backItOffStepBy: 'Zurückstellen, Schritt für Schritt',
    toTheBrake: 'Zur Bremse',
    likelyInTheOrderOf:
      'Wahrscheinlich, in der Reihenfolge des Lösens. Nach jedem Schritt die Trommel probieren; Gewalt gehört nicht dazu.',
    noLockFitsAllYour:
      'Keine Sperre passt zu allen Ihren Antworten. Prüfen Sie Handbremse und Radlager, dann gehen Sie eine zurück.',
    whichIsMine: 'Welcher ist meiner?',
  },

  /* ui/stations/drum-off/nut.ts */
  drumOffNut: {
    hubNutInSectionLeft:
      'Nabenmutter im Schnitt. Links: Ihr gequetschtes Gewinde klemmt auf dem Achszapfen, sie dreht schwer. Rechts: Es ist über das Ende des Achszapfens hinaus, sie dreht sich mit den Fingern.',
    pressedThreadsGrip: 'gequetschtes Gewinde klemmt',
    runOffTheEndFree: 'über das Ende hinaus: frei',
  },

  /* ui/stations/drum-off/part.ts */
  drumOffPart: {
    pairAside: 'Backenpaar außer Mitte',
    nothingHoldsTheDrumBesides: 'sonst hält nichts die Trommel',
    leverMmOffItsStop: (leverOffStop: number) => `Hebel ${leverOffStop} mm vom Anschlag`,
    cableSlackened: 'Seilzug entspannt',
    letGo: (lock: 'cable keeps its pull' | 'part leans on a shoe' | 'pressure in the line') =>
      `${{ 'cable keeps its pull': 'Seilzug behält seinen Zug', 'part leans on a shoe': 'Teil liegt an einer Backe an', 'pressure in the line': 'Druck in der Leitung' }[lock]}: gelöst`,
    aDriversWords: 'Worte eines Fahrers',
    aWornDrumToTry: 'eine verschlissene Trommel zum Probieren',
    toothTo: (tooth: number, tooth2: number) => `Zahn ${tooth} auf ${tooth2}`,
    liningsBrokenLoose: 'Beläge losgebrochen',
    atTheDrum: (what: string | undefined) =>
      `an der Trommel: ${what === 'pull' ? 'ziehen' : what === 'turn' ? 'drehen' : what === 'rock' ? 'kippen' : what}`,
    drumPutOn: 'Trommel aufgesetzt',
    pageOfDrumOff: 'Seite von Trommel ab',
    howTheDrumIsFastened: 'wie die Trommel befestigt ist',
    anAnswer: 'eine Antwort',
    anAnswerTakenBack: 'eine Antwort zurückgenommen',
  },

  /* ui/stations/drum-off/pull.ts */
  drumOffPull: {
    accessHole: 'Schauloch',
  },

  /* ui/stations/drum-off/section.ts */
  drumOffSection: {
    sectionThroughRimLipAnd: (word: 'centre' | 'heel' | 'toe') =>
      `Schnitt durch Trommelring, Grat und Belag ${{ centre: 'in der Mitte', heel: 'an der Ferse', toe: 'an der Spitze' }[word]}, Stufen zehnfach überhöht`,
  },

  /* ui/stations/drum-off/side.ts */
  drumOffSide: {
    drawnOffItsStopBy: 'vom Restzug vom Anschlag gezogen',
    backOnItsStop: 'wieder am Anschlag',
    offItsStopSlackClears: (off: string, leverHome: string) =>
      `${off} vom Anschlag; Entspannen macht um ${leverHome} frei`,
    offItsStopSlackGives: (off: string, by: string) =>
      `${off} vom Anschlag; Entspannen bringt ${by}`,
    noneYetTheDrumIs: 'noch keiner: Die Trommel ist nicht verschlissen',
    pushedOutByWhatIs: ', hinausgedrückt von dem, was übrig ist',
    overlapsByUpToMm: (overlapText: string, some: string) =>
      `überdeckt um bis zu ${overlapText}\u00a0mm${some}`,
    passesWithInHand: (greatest: string) => `geht vorbei, ${greatest} Reserve`,
    whatHoldsIt: 'Was hält sie?',
    holdsTheDrumNoTooth: 'hält die Trommel; kein Zahn macht sie frei',
    lipOnTheDrum: 'Grat an der Trommel',
    furtherOutThanItClicks: 'weiter heraus, als er von selbst klickt',
    parkingLever: 'Bremshebel',
    front: 'vorn',
    rear: 'hinten',
    still: (centred: string) => `noch ${centred}`,
    itClearsBy: (centred: string) => `um ${centred} frei`,
    standToTheCentred: (aside: string, aside2: string, centred: string) =>
      `stehen ${aside} nach ${aside2}; zentriert ${centred}`,
    hubFit: 'Nabensitz',
    rustedOnNoSlideNo: 'festgerostet: kein Gleiten, kein Kippen',
    freeNoRustRing: 'frei, kein Rostring',
    liningToDrum: 'Belag an Trommel',
    rustedOnAboutNM: (forward: string) => `festgerostet: etwa ${forward}\u00a0N·m zum Losbrechen`,
    notStuck: 'nicht fest',
    backOffTheAdjuster: 'Nachsteller zurückstellen',
    evenAllOfItIs: '; selbst alles reicht nicht',
    noneNeeded: '; nichts nötig',
    drumComesOffAt: 'Trommel geht ab bei',
    pullHarder: 'Stärker ziehen?',
    soLittleIsCaughtThat:
      'Es hängt so wenig, dass die Belagkante unter den Händen nachgäbe. Stellen Sie den letzten Zahn trotzdem zurück: Krümel bleiben in der Bremse, und beim nächsten Ziehen kann mehr hängen.',
    theLiningsEdgeCrumbles: 'bröckelt die Belagkante',
    aHoldDownPinStretches: 'dehnt sich ein Niederhalterstift',
    aPullersGoesThroughLip: (
      puller: string,
      onShoe: string,
      pinStress: string,
      edgePressure: string,
      givesAt: string,
      gives: string,
    ) =>
      `Die ${puller} eines Abziehers gehen durch Grat, Belag und Backe in die Niederhalterstifte: je ${onShoe}, ${pinStress}\u00a0MPa im Stift und ${edgePressure}\u00a0MPa auf der Belagkante. Ab etwa ${givesAt} ${gives} (Festigkeiten: nur ihre Größenordnung). Die Nabe spürt davon nichts.`,
    toe: 'Spitze',
    centre: 'Mitte',
    heel: 'Ferse',
    now: 'jetzt',
    sectionBB: 'Schnitt B–B',
    lip: 'Grat',
    holdsTheByMm: (lip: unknown, word2: 'centre' | 'heel' | 'toe', overlapText: unknown) => [
      lip,
      ' hält die ',
      { centre: 'Mitte', heel: 'Ferse', toe: 'Spitze' }[word2],
      ' um ',
      overlapText,
      '\u00a0mm',
    ],
    clearByMm: (greatest: unknown) => ['frei um ', greatest, '\u00a0mm'],
    none: 'keiner',
    sectionBBSteps10: 'Schnitt B–B, Stufen ×10',
    anUnwornDrumHasNo: 'Eine nicht verschlissene Trommel hat keinen Grat.',
    theHeelIsLastTo:
      ' Die Ferse kommt zuletzt frei: Sie liegt ihrem Bolzen am nächsten und bewegt sich deshalb am wenigsten.',
    theLipMeetsTheEdge: (word: string) => `Der Grat trifft die Kante des Belags.${word}`,
    theLiningPassesTheLip: 'Der Belag geht am Grat vorbei.',
    atTheOfTheLining: (bB: unknown, word2: 'centre' | 'heel' | 'toe', roleWord: string) => [
      bB,
      { centre: ' in der Mitte', heel: ' an der Ferse', toe: ' an der Spitze' }[word2],
      ' des ',
      (
        {
          leading: 'auflaufenden',
          trailing: 'ablaufenden',
          front: 'vorderen',
          rear: 'hinteren',
        } as Record<string, string>
      )[roleWord] ?? roleWord,
      ' Belags, Stufen ×10',
    ],
    tryAWornDrum: 'Verschlissene Trommel probieren',
    drumOff: 'Trommel ab',
  },

  /* ui/stations/drum-off/words.ts */
  drumOffWords: {
    heldBy: {
      lip: 'Der Grat hält die Trommel',
      'lever off its stop': 'Der Grat hält die Trommel, weil der Hebel nicht am Anschlag liegt',
      'shoes not centred': 'Der Grat hält die Trommel, weil die Backen außer Mitte stehen',
      'adjuster too far out': 'Die Backen halten die Trommel: Der Nachsteller ist zu weit heraus',
      'pressure in the line': 'Die Backen halten die Trommel: In der Leitung bleibt Druck',
      'cable keeps its pull': 'Die Backen halten die Trommel: Der Seilzug behält seinen Zug',
      'part leans on a shoe': 'Eine Backe hält die Trommel, weil ein Teil an ihr anliegt',
      'rust at the hub': 'Rost an der Nabe hält die Trommel',
      'linings rusted on': 'Die Beläge halten die Trommel: Sie sind festgerostet',
    },
    nothingHoldsItTheLinings: (greatest: string) =>
      `Nichts hält sie. Die Beläge gehen mit ${greatest} Reserve am Grat vorbei.`,
    nothingHoldsItThisDrum:
      'Nichts hält sie. Diese Trommel ist nicht verschlissen: Sie hat keinen Grat.',
    wouldBeCaughtByBesides: (greatest: string) => `würden außerdem um ${greatest} hängen bleiben`,
    passTheLipWithIn: (greatest: string) => `gehen mit ${greatest} Reserve am Grat vorbei`,
    rustHoldsItAtThe: (greatest: string) => `Rost hält sie an der Nabe. Die Beläge ${greatest}.`,
    theLiningsAreRustedOn:
      'Die Beläge sind an der Trommel festgerostet. Sie dreht sich nicht und kommt nicht.',
    noToothFreesItWhile: (heldBy: string) =>
      `${heldBy}. Kein Zahn macht sie frei, solange diese Kraft da ist.`,
    theShoesPressOnThe:
      'Die Backen drücken von innen auf die Trommel. Gerade gezogen bewegt sie sich nicht.',
    theLiningsRestOutsideThe:
      'Die Beläge stehen in Ruhe weiter außen als der Grat. Gerade gezogen kommt die Trommel nicht vorbei.',
    turned: {
      freely: 'Sie dreht sich frei.',
      lightly: 'Sie dreht sich und schleift in beiden Richtungen leicht.',
      stiffly: 'Sie dreht sich in beiden Richtungen schwer.',
      'not at all': 'Sie dreht sich nicht.',
    },
    itFreesWithOneJerk: (forward: string) =>
      `Sie kommt mit einem Ruck frei, bei etwa ${forward}\u00a0N·m, und dreht sich.`,
    itDoesNotTurnThe: (forward: string) =>
      `Sie dreht sich nicht. Der Rost hielte etwa ${forward}\u00a0N·m.`,
    itRocksALittleOn: 'Sie kippt ein wenig auf ihrer Nabe: Der Sitz ist frei.',
    itDoesNotRockNot: 'Sie kippt nicht, keinen Hauch.',
    theDrumIsOffIt: (greatest: string) =>
      `Die Trommel ist ab. Sie ging mit ${greatest} Reserve am Grat vorbei.`,
    theDrumIsOff: 'Die Trommel ist ab.',
    itDoesNotSlideAt: (heldBy: string) => `${heldBy}. Sie gleitet überhaupt nicht.`,
    itSlidesMmSpringsAnd: (heldBy: string, slide: string) =>
      `${heldBy}. Sie gleitet ${slide}\u00a0mm, federt und steht.`,
    leverOffItsStopName: 'Bremshebel nicht am Anschlag',
    leverOffItsStopHow:
      'Handhebel ablassen, dann den Seilzug an seiner Einstellung entspannen, bis der Bremshebel an seinem Anschlag liegt. Das kostet nichts; den Seilzug ganz zuletzt wieder einstellen.',
    leverOffItsStopButton: 'Entspannen',
    pressureInTheLineName: 'Druck in der Leitung',
    pressureInTheLineHow:
      'Den Entlüfter dieses Rads ein wenig öffnen, mit einem Schlauch in ein Gefäß. Kommt die Trommel frei, hat ein Schlauch oder der Hauptzylinder den Druck gehalten: das beheben und danach entlüften.',
    pressureInTheLineButton: 'Druck ablassen',
    cableKeepsItsPullName: 'Seilzug behält seinen Zug',
    cableKeepsItsPullHow:
      'Entspannen am Handhebel ändert nichts, wo er in seiner Hülle festgegangen ist. Das Innenseil aus der Hülle zurückziehen oder aushängen, bis der Bremshebel ganz zurück ist. Es braucht einen neuen Seilzug.',
    cableKeepsItsPullButton: 'Aushängen',
    partLeansOnAShoeName: 'Ein Teil liegt an einer Backe an',
    partLeansOnAShoeHow:
      'Eine Backe steht an der Trommel an, die andere hängt frei. Die Trommel seitlich gegen die anliegende Backe drücken oder diese Backe durch das Schauloch zurückdrücken, während jemand die Trommel abzieht; dann das Teil suchen: Kolben, Hebel, Kante auf ihrer Auflage.',
    partLeansOnAShoeButton: 'Zurückdrücken',
    shoesNotCentred: {
      name: 'Backen nicht zentriert',
      how: 'Die Trommel ein wenig hin- und herdrehen und dabei ganz aufdrücken, dann gerade abziehen, nicht schräg. Die Backen setzen sich, wo die Trommel sie lässt.',
      caution: 'Finger aus dem Spalt zwischen Trommel und Ankerplatte halten.',
      button: 'Zentrieren',
    },
    lipName: 'Grat an der Trommel',
    lipHow:
      'Den Nachsteller durch das Schauloch zurückstellen. Zahnhebel: von seinen Zähnen abheben, dann zurückdrehen. Sternrad: seinen Hebel weghalten und das Rad zurückdrehen. Keil: nach oben schieben. Immer nur wenig; nach jedem Mal die Trommel probieren, und Trommel und Belag beurteilen, sobald sie ab ist.',
    lipButton: 'Zurückstellen',
    adjusterTooFarOutName: 'Nachsteller zu weit heraus',
    adjusterTooFarOutHow:
      'Den Zahnhebel durch das Schauloch von seinen Zähnen abheben und zurückdrehen, oder das Sternrad zurückdrehen, oder den Keil nach oben schieben, bis die Trommel frei dreht. Eine heiße Trommel kann ihn zu weit weiterschalten lassen: nach langen Gefällen fragen und die Heißsperre ansehen.',
    rustAtTheHub: {
      name: 'Rost an der Nabe',
      how: 'Rund um die Nabe säubern, Rostlöser einkriechen lassen, warten. Hat die Trommel Gewindelöcher, in jedes eine Schraube drehen, abwechselnd, immer nur wenig. Sie löst sich mit einem Knacken.',
      caution:
        'Schutzbrille tragen. Keine Flamme und keine Hitze in der Nähe von Bremsflüssigkeit; Rostlöser von den Belägen fernhalten.',
      button: 'Lösen',
    },
    liningsRustedOn: {
      name: 'Beläge angerostet',
      how: 'Die Trommel mit einer Stange über zwei Radmuttern hin- und herdrehen, Handbremse gelöst. Sie bricht einmal mit einem Ruck los und dreht dann.',
      caution:
        'Abstand von der Stange halten. Das Fahrzeug nicht mit blockiertem Rad schleppen; nass nicht mit angezogener Handbremse parken.',
      button: 'Losbrechen',
    },
    studs: {
      name: 'Über die Stehbolzen gesteckt',
      steps: [
        'Rad abnehmen. Eine dünne Federmutter auf einem Stehbolzen hielt die Trommel nur während des Fahrzeugbaus: auch abnehmen.',
        'Bolzen und Trommel markieren, damit sie wieder so aufkommt, wie sie war.',
        'Seilzug und Nachsteller so weit wie nötig entspannen, dann die Trommel gerade abziehen.',
        'Bevor sie wieder aufkommt: beide Flanschflächen sauber und trocken. Schmutz dort setzt die Trommel außermittig.',
      ],
      caution:
        'In Gewindelöcher der Trommel kommen Schrauben, die sie gleichmäßig abdrücken. Abwechselnd drehen; nie auf den Rand schlagen.',
    },
    screw: {
      name: 'Mit Schraube oder Klammer gehalten',
      steps: [
        'Rad abnehmen, dann die kleine Senkschraube oder die Klammer zwischen den Stehbolzen. Sie wird leicht übersehen, und kein Zug kommt gegen sie an.',
        'Schlitz säubern und den Bit gerade ansetzen; ein Schlag auf das Ende des Bits bricht den Rost. Dreht er im Kopf durch, den Kopf abbohren.',
        'Seilzug und Nachsteller so weit wie nötig entspannen, dann die Trommel gerade abziehen.',
        'Bevor sie wieder aufkommt: eine neue Schraube, handfest und etwas mehr. Sie hält die Trommel nur, solange das Rad ab ist.',
      ],
      caution: 'Schutzbrille beim Schlagen und Bohren; Späne und Staub kommen nicht in die Bremse.',
    },
    nutName: 'Ein Stück mit Nabe und Radlager',
    nutSteps: [
      'Staubdeckel abnehmen und die Nabenmutter freimachen; ihr Bund kann in eine Nut des Achszapfens gedrückt sein.',
      'Die Mutter von Hand mit langem Hebel lösen, langsam. Sie dreht schwer bis zu den letzten Umdrehungen, dann läuft sie mit den Fingern ab.',
      'Trommel, Nabe und Radlager zusammen gerade abziehen und auf sauberes Papier legen.',
      'Impulsring am Radlager: Magnete, magnetisches Werkzeug und Eisenspäne fernhalten. Nie mit einem schmutzigen Lappen abwischen.',
      'Wieder drauf: die Mutter, die der Hersteller verlangt, von Hand auf den Wert des Herstellers angezogen, während sich die Nabe dreht.',
    ],
    whyDoesItTurnHard: 'Warum dreht sie schwer bis zu den letzten Umdrehungen?',
    itsOuterThreadsArePressed:
      'Ihre äußeren Gewindegänge sind absichtlich unrund gequetscht und klemmen auf dem Gewinde des Achszapfens. Beim Lösen klemmen sie, bis sie über das Ende des Achszapfens hinaus sind; beim Aufschrauben läuft die Mutter leicht, bis sie aufkommen.',
    whyByHandAndSlowly: 'Warum von Hand und langsam?',
    theGrippingThreadsRubUnder:
      'Die klemmenden Gewindegänge reiben unter Last. Schnell gedreht werden sie heiß, fressen und reißen aus, und dann geht das Gewinde des Achszapfens mit.',
    whyDoesTheMakerSay: 'Warum sagt der Hersteller, wie oft sie wiederverwendet werden darf?',
    eachTimeOnAndOff:
      'Jedes Auf- und Abschrauben drückt die gequetschten Gänge etwas flacher, sie klemmt also weniger. Viele Hersteller verlangen jedes Mal eine neue.',
    nutCaution:
      'Diese Mutter hält das Rad. Art, Drehmoment und wie oft sie wiederverwendet werden darf, sind Angaben des Herstellers; ein falsch eingestelltes Radlager kann ablaufen.',
    fasteningAsk: 'Wie ist Ihre Trommel befestigt?',
    fasteningHint: 'Sehen Sie bei abgenommenem Rad auf ihre Stirnseite.',
    itSitsOverTheWheel: 'Sie sitzt über den Radbolzen, sonst nichts',
    aSmallScrewOrA: 'Eine kleine Schraube oder Klammer hält sie außerdem',
    aBigNutInThe: 'Eine große Mutter in der Mitte, unter einer Kappe',
    turnsAsk: 'Dreht sie sich von Hand?',
    turnsHint:
      'Fahrzeug an einem anderen Rad mit Keilen gesichert, Handbremse gelöst, Gang heraus.',
    yesFreely: 'Ja, frei',
    itTurnsButDragsBoth: 'Sie dreht sich, schleift aber in beiden Richtungen',
    itDragsMuchStifferOne: 'Sie schleift, in einer Richtung viel schwerer als in der anderen',
    noOrOnlyWithGreat: 'Nein, oder nur mit großer Kraft',
    slidesAsk: 'Ziehen Sie gerade, an beiden Rändern. Kommt sie?',
    slidesHint: 'Ein paar Millimeter zählen.',
    aFewMillimetresThenIt: 'Ein paar Millimeter, dann steht sie',
    notAHairAndIt: 'Keinen Hauch, und sie kippt nicht',
    slackAsk: 'Entspannen Sie den Seilzug der Handbremse ganz und probieren Sie es wieder.',
    slackHint: 'Der Bremshebel muss seinen Anschlag hinter der Ankerplatte erreichen.',
    thatChangedItFreerOr: 'Das hat etwas geändert: freier oder weiter',
    noChange: 'Keine Änderung',
    iCannotGetAtIt: 'Ich komme nicht hin oder kann es nicht sagen',
    holeAsk: 'Gibt es ein Schauloch zum Nachsteller?',
    holeHint:
      'Ein Gummistopfen hinter der Ankerplatte, eine eingeprägte Ausbrechscheibe, oder ein Loch in der Stirnseite der Trommel, das sich zum Nachsteller drehen lässt.',
    yesThereIsOne: 'Ja, es gibt eines',
    noAccessHole: 'Kein Schauloch',
    noHole:
      'Kein Schauloch: Der Nachsteller ist von außen nicht zu erreichen. Den Seilzug ganz entspannen, auch an diesem Rad. Die Trommel aufdrücken, drehen, gerade ziehen, immer wieder, damit sich die Backen setzen. Was sie dann noch hält, steht unter „Ganz zuletzt“. Eine Ausbrechscheibe in der Ankerplatte wird nur geöffnet, wo der Hersteller sie markiert hat, und mit einem Stopfen verschlossen.',
    lastResort:
      'Ganz zuletzt, wo sich nichts löst: Die Niederhalterstifte lassen sich hinter der Ankerplatte durchtrennen, Trommel und Backen kommen dann zusammen herunter. Das kostet Stifte, Federn und oft die Beläge; suchen Sie erst nach der anderen Sperre.',
  },

  /* ui/stations/faults/browse.ts */
  faultsBrowse: {
    groups: {
      Adjuster: 'Nachsteller',
      'Cable and lever': 'Seilzug und Hebel',
      'Springs and pistons': 'Federn und Kolben',
      Friction: 'Reibung',
      Drum: 'Trommel',
    },
    chooseAFaultHereStands:
      'Wählen Sie einen Fehler: Hier steht, was er mit den Messwerten der Werkstatt macht.',
    readingsBeforeAndAfter: 'Messwerte vorher und nachher',
    reading: 'Messwert',
    sound: 'In Ordnung',
    withTheFault: 'Mit dem Fehler',
    asSound: 'wie heil',
    ofRigidShoesTillThe:
      'Mit starren Backen, bis die Beläge des Transporters unter nachgiebigen eingelaufen sind.',
    takingTheReadings: 'Messwerte werden genommen …',
    noneOfTheWorkshopsReadings:
      'Keiner der Messwerte der Werkstatt zeigt ihn; sehen Sie, was ihn unterscheidet.',
    notShownInThisView: 'In dieser Ansicht nicht gezeigt',
    onOneWheelTheRight: '; an einem Rad, dem rechten',
    onBothWheels: '; an beiden Rädern',
    howItWorks: 'Wie er wirkt',
    whatTellsItApart: 'Was ihn unterscheidet',
    remedy: 'Abhilfe',
    lookAlikesEachWithThe: 'Doppelgänger, jeder mit der günstigsten Messung, die ihn trennt',
    here: 'hier',
    there: 'dort',
    noReadingOfThisList: 'Keine Messung dieser Liste trennt die beiden.',
    comparing: 'Vergleich läuft …',
    takeItOut: 'Herausnehmen',
    fault: 'Fehler',
    chooseAFault: 'Fehler wählen …',
    previous: 'Vorheriger',
    next: 'Nächster',
  },

  /* ui/stations/faults/desk.ts */
  faultsDesk: {
    nothingElseWasLeft: 'Es war nichts anderes übrig.',
    name: 'Name',
    names: 'Namen',
    rightWithOtherNotYet: (left: number, name: string) =>
      `Richtig, aber noch nicht ausgeschlossen: ${left} ${left === 1 ? 'weiterer' : 'weitere'} ${name}.`,
  },

  /* ui/stations/faults/find-board.ts */
  faultsFindBoard: {
    withTheDrumOff: 'bei abgenommener Trommel',
    withTheWheelsUp: 'bei freien Rädern',
    takeIt: (name: string) => `Messen: ${name}`,
    takeIt2: 'Messen',
    theDriverSays: 'Der Fahrer sagt',
    quayVanKmDrivenIn: (km: string) =>
      `Kai-Transporter, ${km} km, heute Morgen hereingefahren · links heißt in Fahrtrichtung links`,
    readings: 'Messwerte',
    reading: 'Messung',
    minutes: 'Minuten',
    found: 'Gefunden',
  },

  /* ui/stations/faults/find-side.ts */
  faultsFindSide: {
    wouldRead: (line: string) => `ergäbe ${line}`,
    notThatOne: 'Nicht dieser',
    takeItAndSee: ': messen und sehen',
    readingRulesItOut: (placeOf: number, nameOf: string, taken: unknown) => [
      'Messung ',
      placeOf,
      ', ',
      nameOf,
      ', schließt ihn aus',
      taken,
      '.',
    ],
    nothingHereSpeaksForIt: 'nichts hier spricht dafür.',
    overPar: (over: number) => `${over} über Soll`,
    underPar: (over: number) => `${over} unter Soll`,
    par: 'genau im Soll',
    minutes: (text: string, minutes: number, overPar: string) =>
      `${text} ${minutes} ${minutes === 1 ? 'Minute' : 'Minuten'}, ${overPar}.`,
    remedy: 'Abhilfe',
    cheapestWay: 'Günstigster Weg',
    minutes2: (cheapestWay: unknown, minutes2: number, taken: string) => [
      cheapestWay,
      ' ',
      minutes2,
      minutes2 === 1 ? ' Minute: ' : ' Minuten: ',
      taken,
      '.',
    ],
    showTheCheapestWay: 'Günstigsten Weg zeigen',
    workshopMinutes: 'Werkstattminuten',
    minutesPar: (minutes: number, par: number) =>
      `${minutes} ${minutes === 1 ? 'Minute' : 'Minuten'}, Soll ${par}`,
    par2: (par: number) => `Soll ${par}`,
    stillPossible: 'Noch möglich',
    ruledOut: 'Ausgeschlossen',
    ofRigidShoesTillThe:
      'Mit starren Backen, bis die Beläge des Transporters unter nachgiebigen eingelaufen sind.',
    workedOut: 'Wird berechnet …',
    hint: 'Tipp',
    itPartsMostNamesFor: (hint: unknown, placeOf2: number, name: string) => [
      hint,
      ' ',
      placeOf2,
      ' ',
      name,
      ': Sie trennt für ihre Minuten die meisten Namen.',
    ],
  },

  /* ui/stations/faults/on-paper.ts */
  faultsOnPaper: {
    quoted: (said: string) => `„${said}“`,
    findTheFaultVan: (number: number) => `Fehler suchen: Transporter ${number}`,
    findTheFault: 'Fehler suchen',
    theDriverSays: 'Der Fahrer sagt:',
    faultLog: 'Fehlerprotokoll',
    asks: ['Name', 'Datum'],
    no: 'Nr.',
    reading: 'Messung',
    minutes: 'Minuten',
    found: 'Gefunden',
    soItIsNot: 'Also ist es nicht',
    stillPossible: 'Noch möglich',
    iNameIt: 'Ich nenne ihn',
    becauseReading: 'weil Messung',
    minutesInAll: 'Minuten insgesamt',
    cheapestWayToBeSure: 'Günstigster Weg zur Gewissheit',
  },

  /* ui/stations/faults/part.ts */
  faultsPart: {
    justClicked: 'Gerade geklickt',
    fault: (faultNames: string) => `Fehler ${faultNames}`,
    faultTakenOut: 'Fehler herausgenommen',
    van: (van: number) => `Transporter ${van}`,
    findTheFault: 'Fehler suchen',
    browseFaults: 'Fehler durchsehen',
    anotherVan: 'ein anderer Transporter',
    reading: (name: string) => `Messung: ${name}`,
    aNamePicked: 'ein Name gewählt',
    aNameGiven: 'ein Name genannt',
    aHint: 'ein Tipp',
    theCheapestWay: 'der günstigste Weg',
  },

  /* ui/stations/faults/station.ts */
  faultsStation: {
    findTheFault: 'Fehler suchen',
    whichReadingPartsTheNames:
      'Welche Messung trennt die Namen, die übrig sind? Nehmen Sie die günstigste.',
    faults: 'Fehler',
    eachIsAChangeOf:
      'Jeder ändert ein Maß oder einen Zustand. Er ist auf der Werkbank: Treten Sie unter Betätigen das Pedal, um ihn zu spüren.',
    eachIsAChangeOf2:
      'Jeder ändert ein Maß oder einen Zustand. Wählen Sie einen: Er kommt an der Stelle Ihrer Bremse auf die Werkbank und geht wieder.',
    hint: 'Tipp',
    giveMeAHint: 'Gib mir einen Tipp',
    anotherVan: 'Ein anderer Transporter',
    nameIt: 'Nennen',
    nameTheFault: 'Fehler nennen',
    controls: 'Bedienung',
    mode: 'Modus',
  },

  /* ui/stations/faults/text.ts */
  faultsText: {
    noChange: 'keine Änderung',
    theSame: 'gleich',
    rigid: (text: string) => `starr: ${text}`,
  },

  /* ui/stations/faults/van-picture.ts */
  faultsVanPicture: {
    vanFromAboveLeftRear: (a: string, b: string) =>
      `Transporter von oben: links hinten ${a}, rechts hinten ${b}`,
    vanFromAbove: 'Transporter von oben',
    front: 'vorn',
    left: 'links',
    right: 'rechts',
  },

  /* ui/stations/hands-button.ts */
  handsButton: {
    takeHoldOfTheParts: 'Teile anfassen',
    hands: 'Hände',
  },

  /* ui/stations/hands/index.ts */
  hands: {
    shoesMovementsAndGaps: (large: number) => `Backenbewegungen und Spalte ×${large}`,
    drumOffTrueScalePress: 'Trommel ab, wahrer Maßstab: ein Teil drücken und ziehen',
    trueScalePressAPart: 'Wahrer Maßstab: ein Teil drücken und ziehen',
  },

  /* ui/stations/hands/pad.ts */
  handsPad: {
    newtons: (force: string) => `${force} Newton`,
    nothingHeld: 'nichts gehalten',
    pullOfTheHand: 'Zug der Hand',
    arrowsPull: 'Pfeiltasten ziehen',
    drawOrArrows: 'ziehen oder Pfeiltasten',
  },

  /* ui/stations/hands/side.ts */
  handsSide: {
    strutForce: 'Kraft der Druckstange',
    strutLetGo: 'Druckstange, losgelassen',
    toeMoved: (s: 'front' | 'rear') => `Spitze bewegt, ${s === 'front' ? 'vorn' : 'hinten'}`,
    offTheStrut: 'Ab von der Druckstange',
    secondHand: 'Zweite Hand',
    offItsToothsRoot: 'Ab vom Zahngrund',
    toHoldItWhenFree: 'Zum Halten, wenn frei',
    hookMoved: 'Haken bewegt',
    offItsToe: 'Ab von seiner Spitze',
    fluidGoneHome: 'Flüssigkeit zurück',
    leftOnTheToe: 'Bleibt auf der Spitze',
    drumOut: 'Trommel heraus',
    thatSideOut: 'Diese Seite heraus',
    theLipBears: 'Der Grat trägt',
    shoesOffTheirPads: 'Backen ab von ihren Auflagen',
    torqueOfTheHand: 'Moment der Hand',
    dragOfTheLinings: 'Schleifmoment der Beläge',
    readings: 'Messwerte',
    offTookN: (takes: string) => `ab; brauchte ${takes} N`,
    takesNStoresJ: (takes: string, stored: string) => `braucht ${takes} N, speichert ${stored} J`,
    hookOnThe: (name: string) => `Einhängen: ${name}`,
    unhookThe: (name: string) => `Aushängen: ${name}`,
    hookOn: 'Einhängen',
    unhook: 'Aushängen',
    putOn: 'Anbringen',
    takeOff: 'Abnehmen',
    holdDown: (side: 'front' | 'rear') => `Niederhalter, ${side === 'front' ? 'vorn' : 'hinten'}`,
    offTheShoeLeansFree: 'ab: Die Backe kippt frei',
    pressWithNAndTurn: (takes: string) => `mit ${takes} N drücken und drehen`,
    theHoldDown: (does: string, side: 'front' | 'rear') =>
      `${does}: ${side === 'front' ? 'vorderer' : 'hinterer'} Niederhalter`,
    noWayForTheDrum: 'Die Trommel geht nicht drauf',
    windBack: (back: number) => `${back} ${back === 1 ? 'Zahn' : 'Zähne'} zurückstellen`,
    takeHoldOf: 'Anfassen',
    choose: '↑ ↓ wählen',
    theDrumStaysOnSee: (lock: string) =>
      `Die Trommel bleibt drauf: ${({ lip: 'Grat', 'lever off its stop': 'Bremshebel nicht am Anschlag', 'shoes not centred': 'Backen nicht zentriert', 'adjuster too far out': 'Nachsteller zu weit heraus', 'pressure in the line': 'Druck in der Leitung', 'cable keeps its pull': 'Seilzug behält seinen Zug', 'part leans on a shoe': 'ein Teil liegt an einer Backe an', 'rust at the hub': 'Rost an der Nabe', 'linings rusted on': 'Beläge angerostet' } as Record<string, string>)[lock] ?? lock}. Siehe Trommel ab.`,
    springsAndHoldDownsWith: 'Federn und Niederhalter: bei abgenommener Trommel.',
    hands: 'Hände',
    backTo: (stationNames: string) => `Zurück zu ${stationNames}`,
    handScaleAndDrum: 'Hand, Maßstab und Trommel',
    movementsOfTheShoes: 'Bewegungen der Backen',
    drumOn: 'Trommel drauf',
    controls: 'Bedienung',
    esc: 'Esc',
    letGo: (esc: unknown) => ['Loslassen ', esc],
  },

  /* ui/stations/hands/stage.ts */
  handsStage: {
    fist: (key: string) => `Faust ${key}`,
    ofBar1: (limit: string, bararms: number) => `von ${limit}, Hebel ${bararms}:1`,
    ofAHands: (limit: number) => `von ${limit} einer Hand`,
    handForce: 'Handkraft',
    handLimit: 'Grenze der Hand',
    hand: (i: number) => `Hand ${i}`,
  },

  /* ui/stations/hands/words.ts */
  handsWords: {
    pull: 'ziehen',
    frontShoe: 'Vordere Backe',
    pullPushAnywhereOnIt: 'ziehen, drücken, überall an ihr',
    rearShoe: 'Hintere Backe',
    bothToes: 'Beide Spitzen',
    spreadPressTogether: 'spreizen, zusammendrücken',
    itsPlay: 'ihr Spiel',
    toothedLever: 'Zahnhebel',
    liftItTurnItBack: 'anheben, zurückdrehen',
    parkingLever: 'Bremshebel',
    pullAtTheHook: 'am Haken ziehen',
    frontPiston: 'Vorderer Kolben',
    pushBackFluidGoes: 'zurückdrücken: Flüssigkeit weicht',
    rearPiston: 'Hinterer Kolben',
    turnToAndFroFeel: 'hin und her drehen, das Schleifen spüren',
    drumStraight: 'Trommel, gerade',
    pullItOffItsStuds: 'von ihren Bolzen abziehen',
    drumOneSide: 'Trommel, eine Seite',
    rockItAgainstItsLip: 'gegen ihren Grat kippen',
    tells: {
      'front shoe':
        'Druckstange und Federn nehmen die andere Backe mit, bis ein Belag die Trommel trifft. Losgelassen bleibt das Paar dort stehen.',
      'rear shoe':
        'Druckstange und Federn nehmen die andere Backe mit, bis ein Belag die Trommel trifft. Losgelassen bleibt das Paar dort stehen.',
      'both toes':
        'Zwei Hände trennen die Spitzen nur dann von der Druckstange, wenn sie deren Klemmung überwinden. Zusammengedrückt gibt nichts nach: Die Druckstange nimmt es auf.',
      strut: 'Sie liegt geklemmt zwischen den Backen: Ziehen Sie an ihr, geht das Paar mit.',
      'adjuster lever':
        'Im Langloch hochgezogen verlässt er seine Zähne: Dann hält nur noch die Hand die Länge der Druckstange, und sie dreht Zahn für Zahn zurück. Losgelassen fällt er ein, wo er gerade ist.',
      'parking lever':
        'Er dreht sich, sobald der Zug die Federn überwindet, und drückt die Druckstange mit einem Vielfachen der Handkraft.',
      cable: 'Er zieht am Haken des Bremshebels, und er zieht nur.',
      'front piston':
        'Zurückgedrückt verlässt er seine Spitze: Manschette und Druck wirken ihm entgegen, Flüssigkeit fließt zurück.',
      'rear piston':
        'Zurückgedrückt verlässt er seine Spitze: Manschette und Druck wirken ihm entgegen, Flüssigkeit fließt zurück.',
      'drum pulled':
        'Zu Ihnen hin gleitet sie, bis ihr Grat die Beläge trifft: Dann heben Sie beide Backen gegen ihre Niederhalter von den Auflagen ab.',
      'drum rocked':
        'An einer Seite ihres Randes gezogen, kippt sie um die andere: Die Backe dieser Seite bekommt Ihren ganzen Zug.',
      drum: 'Drehen Sie sie rundum oder hin und her. Was Sie spüren, ist das Schleifen der Beläge und die Masse, die in Gang kommen muss.',
    },
  },

  /* ui/stations/inspect/book.ts */
  inspectBook: {
    foundAllowed: (path: string, found: string, allowed: string) =>
      `${path}: gefunden ${found}; erlaubt: ${allowed}`,
    sheetsAreKeptSaveThem: (most: number) =>
      `${most} Blätter sind aufbewahrt. Speichern Sie sie als Datei und nehmen Sie erst einige heraus.`,
    wasNotReadNothingHas: (name: string, other: string) =>
      `${name} wurde nicht gelesen; nichts hat sich geändert. ${other}`,
    sheetsFoundAllowedAList: (a: string) => `sheets: gefunden ${a}; erlaubt: eine Liste`,
    nothingWord: 'nichts',
    versionFoundAllowed: (stringify: string, version: number) =>
      `version: gefunden ${stringify}; erlaubt: ${version}`,
    wasNotReadNothingHas2: (name: string) =>
      `${name} wurde nicht gelesen; nichts hat sich geändert.`,
    sheetsFoundMoreThanAre: (i: number, most: number) =>
      `sheets.${i}: gefunden mehr, als aufbewahrt werden; erlaubt: ${most}`,
    whatCouldNotBeRead:
      ' Was nicht gelesen werden konnte, steht unten; es ist weiterhin in der Datei.',
    hereAlready: (there: number) => `, ${there} schon vorhanden`,
    takenIn: (name: string, plural: string, hereAlready: string, bad: string) =>
      `${name}: ${plural} übernommen${hereAlready}.${bad}`,
  },

  /* ui/stations/inspect/cut.ts */
  inspectCut: {
    noneSetNoVerdict: 'keine gesetzt, kein Urteil',
    tooFar: (up: string) => `${up} zu weit`,
    left: (down: string) => `${down} übrig`,
    found: (wheel: 'left' | 'right') => `${wheel === 'left' ? 'links' : 'rechts'}, gefunden`,
    of2Score: (score: string) => `2 × Riefe ${score}`,
    boreAfterTheCut: 'Innendurchmesser nach dem Ausdrehen',
    toTheMark: 'bis zur Marke',
    toTheMachiningLimit: 'bis zur Ausdrehgrenze',
    cutItOrRenewIt: 'Ausdrehen oder erneuern',
    cutItOrRenewIt2: 'Ausdrehen oder erneuern?',
    boreAfterACut: (each: string, title: string, why: string) =>
      `Innendurchmesser nach dem Ausdrehen: ${each}. ${title}. ${why}`,
  },

  /* ui/stations/inspect/desk.ts */
  inspectDesk: {
    notLoadedAPlaceOn: 'Nicht geladen: Eine Stelle auf dem Blatt ist nicht lesbar.',
    notLoadedNothingIsMeasured: (wheel: 'left' | 'right') =>
      `Nicht geladen: Am ${wheel === 'left' ? 'linken' : 'rechten'} Rad ist noch nichts gemessen.`,
    notLoadedTheSheetStays: 'Nicht geladen. Das Blatt bleibt, wie es ist.',
    foundAllowed: (placeName: string, found: string, allowed: string) =>
      `${placeName}: gefunden ${found}; erlaubt ${allowed}.`,
    theBrakeOnTheBench:
      'Die Bremse auf der Werkbank hat eine andere Trommel. „Meine Bremse“ bringt eine mit Ihren Maßen dorthin.',
    theStageShowsTheWheel: (wheel: 'left' | 'right', tooth: number, notes: string) =>
      `Die Bühne zeigt das ${wheel === 'left' ? 'linke' : 'rechte'} Rad wie gemessen, Zahn ${tooth}. ${notes}`,
    foundAllowed2: (placeOf: string, found: string, allowed: string) =>
      `${placeOf}: gefunden ${found}; erlaubt ${allowed}.`,
  },

  /* ui/stations/inspect/history.ts */
  inspectHistory: {
    leadingLining: 'Auflaufender Belag',
    trailingLining: 'Ablaufender Belag',
    mmAtKmMmAt: (
      nameOf: string,
      before: number,
      km: number,
      after: number,
      km2: number,
      limit: number,
    ) => `${nameOf}: ${before} mm bei ${km} km, ${after} mm bei ${km2} km, Grenze ${limit} mm`,
    max: 'max',
    each: (rate: string) => `${rate} mm auf 1\u202f000 km`,
    newPartsBetweenNoRate: 'dazwischen neue Teile, keine Rate',
    noMoreLostThanThe: 'nicht mehr verloren, als der Messfehler ausmachen kann',
    nothingWasMeasuredOnBoth: 'Kein Maß steht auf beiden Blättern.',
    whereNoLimitIsSet: '. Wo keine Grenze gesetzt ist, wird keine Strecke genannt',
    toKm: (least: string, most: string) => `${least} bis ${most} km`,
    kmOrMuchMore: (least: string) => `${least} km oder viel mehr`,
    mmIn1000Km: (nameOf: string, rate: string) => `${nameOf}: ${rate} mm auf 1\u202f000 km.`,
    toTheLimitOfAbout: (limit: string, whose: string, as: string, to: unknown, error: string) => [
      'Bis zur Grenze von ',
      limit,
      whose,
      ' noch etwa ',
      as,
      ' km: ',
      to,
      ', wenn jeder Messwert um ',
      error,
      ' nach oben oder unten abweicht.',
    ],
    aDayThatCannotBe: 'einem Tag, der sich noch nicht nennen lässt',
    atThePaceSoFar: (writtenDay: unknown, piece: unknown) => [
      'Beim bisherigen Tempo ist das zwischen ',
      writtenDay,
      ' und ',
      piece,
      '.',
    ],
    by: (writtenDay: string) => `bis ${writtenDay}, `,
    nextLookAtKm: (day: string, odometer: string) => `Nächste Kontrolle ${day}bei ${odometer} km`,
    halfOfTheShorterWay: (day: unknown) => [
      day,
      ': die Hälfte der kürzeren Strecke. Das Intervall des Herstellers, wenn es früher liegt.',
    ],
    kmOrMoreLeft: (least: string) => `; noch ${least} km oder mehr`,
    historyOfSheets: 'Verlauf der Blätter',
    history: (vehicle: string) => `Verlauf${vehicle}`,
    itIs: 'es ist',
    theyAre: 'sie sind',
    ofTheKeptSheetsCannot: (length: number, itIs: string) =>
      `${length} der aufbewahrten Blätter nicht lesbar; ${itIs} weiterhin in diesem Browser und in einer gespeicherten Datei.`,
    typeVehicleDateAndOdometer:
      'Fahrzeug, Datum und Kilometerstand eintragen, dann das Blatt aufbewahren. Zwei Blätter eines Fahrzeugs sagen, wie schnell es verschleißt.',
    oneSheetTheNextOne: 'Ein Blatt: Erst das nächste sagt die Rate.',
    theLastTwoSheetsHave:
      'Die letzten beiden Blätter haben denselben Kilometerstand: Eine Rate lässt sich nicht nennen.',
    takeItOut: 'Herausnehmen',
    leaveIt: 'Lassen',
    liesHere: 'Liegt hier',
    openIt: 'Öffnen',
    theSheetOf: (liesHere: string, written: string) => `${liesHere}: das Blatt vom ${written}`,
    takeOutTheSheetOf: (written: string) => `Das Blatt vom ${written} herausnehmen`,
    takeOut: 'Herausnehmen',
    otherVehiclesKeptHereType: (vehicles: string) =>
      `Weitere hier aufbewahrte Fahrzeuge: ${vehicles}. Tragen Sie einen dieser Namen als Fahrzeug ein.`,
    keepThisSheet: 'Dieses Blatt aufbewahren',
    putBackTheSheetOf: (written: string) => `Das Blatt vom ${written} zurücklegen`,
    saveAllSheets: 'Alle Blätter speichern',
    readAFileOfSheets: 'Datei mit Blättern lesen',
    keptInThisBrowserOn:
      'Aufbewahrt in diesem Browser, auf diesem Gerät; eine gespeicherte Datei bewahrt sie anderswo auf. Fotonotizen stehen in keiner Datei.',
  },

  /* ui/stations/inspect/hows.ts */
  inspectHows: {
    drumHow:
      'Innenmessgerät oder Trommel-Messschraube, ein Drittel der Breite vom Rand nach innen. Trommel anzeichnen, das Messgerät jedes Mal um 60° drehen.',
    liningHow:
      'Nur den Belag, ohne den stählernen Kranz; bei genieteten bis auf den Nietkopf. Stahlmaßstab, Tiefenmaß oder Messschieber.',
    firstOfAllWhichDrum:
      'Zuallererst: Welche Trommel ist es? Aus der Teileliste oder mit einem Innentaster am nicht verschlissenen Rand außerhalb des Grats.',
    castOrStampedOnThe:
      'In die Trommel selbst gegossen oder geschlagen, „max dia“ oder „discard“: der größte erlaubte Ø. Ohne ihn wird keine Trommel beurteilt.',
    theMakersFigureForA:
      'Die Angabe des Herstellers für das Ausdrehen, aus den Servicedaten: unter der Marke, damit etwas zum Verschleißen bleibt. Weglassen, wenn niemand sie nennt.',
    theSameGaugeNearThe:
      'Dasselbe Messgerät, nahe am geschlossenen Ende der Reibfläche. Zeigt eine Bohrung, die nach innen weiter wird.',
    theLargestOfThoseAbove:
      'Der größte der Werte darüber. Die Grenze ist das Höchstmaß, das in die Trommel selbst gegossen ist.',
    greatestLessLeastOfThe:
      'Größter minus kleinster Wert der Winkel. Zwei Messwerte sollten der größte und der kleinste sein.',
    stepFromTheSweptFace:
      'Stufe von der Reibfläche zum nicht verschlissenen Rand: Tiefenmaß oder die Hälfte aus Ø der Reibfläche minus Ø des Rands.',
    ruleAcrossTheBoreAnd:
      'Lineal quer über die Bohrung und Fühlerlehre in der Riefe, oder ein Tiefenmaß. Der Fingernagel sortiert nur vor. 0, wo keine ist.',
    leadingIsTheShoeTowards: (liningHow: string) =>
      `Auflaufend ist die Backe zur Fahrzeugfront hin. Am Ende beim Zylinder. ${liningHow}`,
    lookAlongTheWholeArc: (liningHow: string) =>
      `Suchen Sie sie über den ganzen Bogen. ${liningHow}`,
    atTheEndWhereThe: (liningHow: string) =>
      `An dem Ende, an dem die Backe gehalten wird. ${liningHow}`,
    atTheCylindersEnd: (liningHow: string) => `Am Ende beim Zylinder. ${liningHow}`,
    byEyeAndLampCracks:
      'Mit Auge und Lampe: Risse, tiefe Riefen, lose Niete, abhebende Kanten, jede Spur von Flüssigkeit oder Fett.',
    liftTheEdgeOfEach:
      'Den Rand jeder Staubkappe mit einem stumpfen Haken anheben. Jede Nässe dahinter ist ein Leck.',
    coilsClosedHooksWholeNo:
      'Windungen geschlossen, Haken heil, keine Rostnarben. Auf die Werkbank fallen gelassen klingt eine gute Feder dumpf, eine müde klingelt.',
    countTheTeethThatThe:
      'Die Zähne zählen, über die der Hebel schon gegangen ist, von der kürzesten Stellung an.',
    liftTheLeverMoveIt:
      'Hebel anheben, von Hand bewegen, loslassen: Er muss frei gleiten und an jedem Zahn halten.',
    gapAtTheCablesHook:
      'Spalt am Haken des Seilzugs, bis der Bremshebel auf seinem Anschlag liegt: 0, wenn er anliegt. Stahlmaßstab oder Fühlerlehre.',
    countTheClicksToA: 'Die Rasten bis zum festen Halt zählen, bevor irgendetwas angefasst wird.',
    theSamePullWhenAll: 'Derselbe Zug, wenn alles wieder zusammengebaut ist.',
    whatItShowsTodayWith:
      'Was er heute anzeigt. Mit zwei aufbewahrten Blättern eines Fahrzeugs sagt er, wie schnell es verschleißt.',
    fromTheServiceBookWithout:
      'Aus dem Serviceheft. Ohne ihn lässt sich keine verbleibende Strecke nennen.',
    newDiameterWhenLeftOut: 'Neuer Durchmesser, wenn weggelassen.',
    newThicknessWhenLeftOut:
      'Neue Dicke, wenn weggelassen und wenn die Quelle der Grenzen sie nennt.',
  },

  /* ui/stations/inspect/index.ts */
  inspect: {
    inWord: (value: string) => ` · ${value} in`,
    foundAllowed: (found: string, allowed: string) => `gefunden ${found}; erlaubt ${allowed}`,
  },

  /* ui/stations/inspect/lines.ts */
  inspectLines: {
    soundWord: 'in Ordnung',
    dry: 'trocken',
    wet: 'feucht',
    yes: 'ja',
    no: 'nein',
    askName: 'Trommel-Ø, neu',
    askName2: 'Eingegossene Marke, max. Ø',
    askName3: 'Ausgedreht bis, max. Ø',
    sizeName: 'Trommel-Ø, Winkel 1',
    sizeName2: 'Trommel-Ø, Winkel 2',
    sizeName3: 'Trommel-Ø, Winkel 3',
    sizeName4: 'Trommel-Ø, weiter innen',
    workedName: 'Trommel-Ø, größter',
    workedName2: 'Unrundheit',
    sizeName5: 'Grathöhe',
    sizeName6: 'Tiefste Riefe',
    sizeName7: 'Auflaufender Belag, Spitze',
    sizeName8: 'Auflaufender Belag, dünnste Stelle',
    sizeName9: 'Auflaufender Belag, Ferse',
    sizeName10: 'Ablaufender Belag, Spitze',
    sizeName11: 'Ablaufender Belag, dünnste Stelle',
    sizeName12: 'Ablaufender Belag, Ferse',
    lookName: 'Flächen von Trommel und Belägen',
    lookShort: 'Flächen',
    lookBad: 'nicht in Ordnung',
    lookName2: 'Zylinder hinter den Staubkappen',
    lookShort2: 'Zylinder, Kappen',
    lookName3: 'Federn',
    lookBad2: 'Lücken, verbogen oder gebrochen',
    sizeName13: 'Zahn des Nachstellers',
    lookName4: 'Nachsteller bewegt sich und hält',
    sizeName14: 'Bremshebel vom Anschlag ab',
    notchesBeforeName: 'Handhebel, Rasten vorher',
    notchesAfterName: 'Rasten nachher',
    odometerName: 'Kilometerstand',
    distanceName: 'Mit diesen Belägen gefahren',
    drumFittedName: 'Trommel-Ø bei ihrem Einbau',
    liningFittedName: 'Belag bei seinem Einbau',
    newPartNames: {
      lining: 'Belag, Dicke',
      ground: 'Schleifradius seiner Fläche',
      width: 'Belag, Breite',
      bore: 'Zylinder, Bohrung',
      hand: 'Bestimmt für',
    },
    largestDrumDiameterMm: 'Größter Trommel-Ø, mm',
    machinedToDiameterMm: 'Ausgedreht bis, Ø, mm',
    deepestScoreThatMayStay: 'Tiefste Riefe, die bleiben darf, mm',
    outOfRoundMm: 'Unrundheit, mm',
    differenceOfTwoDepthsMm: 'Unterschied zweier Tiefen, mm',
    leastLiningMm: 'Kleinste Belagdicke, mm',
  },

  /* ui/stations/inspect/notes.ts */
  inspectNotes: {
    takeThePhotoAway: 'Foto entfernen',
    anotherPhoto: 'Anderes Foto',
    photoNote: 'Fotonotiz',
    staysOnThisDevice: 'bleibt auf diesem Gerät',
  },

  /* ui/stations/inspect/part.ts */
  inspectPart: {
    wheel: (nameOf: string, wheel: 'left' | 'right') =>
      `${nameOf}, ${wheel === 'left' ? 'linkes' : 'rechtes'} Rad`,
    newPartWheel: (small: string, wheel: 'left' | 'right') =>
      `neues Teil, ${small}, ${wheel === 'left' ? 'linkes' : 'rechtes'} Rad`,
    limit: (small: string) => `Grenze: ${small}`,
    setOfLimits: 'Satz von Grenzen',
    inches: 'Zoll',
    aPlainNumberIsIn: (inches: string) => `eine bloße Zahl gilt in ${inches}`,
    takenFromTheBrakeOn: (wheel: 'left' | 'right') =>
      `Von der Bremse auf der Werkbank auf das ${wheel === 'left' ? 'linke' : 'rechte'} Rad übernommen, wie ein Messgerät auf 0,01 mm ablesen würde.`,
    valuesFromTheBrakeWheel: (wheel: 'left' | 'right') =>
      `Werte von der Bremse, ${wheel === 'left' ? 'linkes' : 'rechtes'} Rad`,
    questionAboutTheSheet: 'Frage zum Blatt',
    questionAboutAKeptSheet: 'Frage zu einem aufbewahrten Blatt',
    theSheetIsClear: 'Das Blatt ist leer.',
    sheetCleared: 'Blatt geleert',
    theSheetIsBackAs: 'Das Blatt ist wieder, wie es war.',
    sheetBroughtBack: 'Blatt zurückgeholt',
    photoNote: 'Fotonotiz',
    before: 'vorher',
    sheetOf: (date: string) => `Blatt vom ${date}`,
    toWheel: (small: string, wheel: 'left' | 'right') =>
      `zu: ${small}, ${wheel === 'left' ? 'linkes' : 'rechtes'} Rad`,
    answerOfInspect: 'Antwort von „Prüfen“',
    wheelAsMeasured: (wheel: 'left' | 'right') =>
      `${wheel === 'left' ? 'linkes' : 'rechtes'} Rad wie gemessen`,
  },

  /* ui/stations/inspect/parts.ts */
  inspectParts: {
    hows: {
      lining: 'Nur der Belag in seiner Mitte, ohne den Kranz.',
      ground:
        'Die Hälfte des Ø, für den er geschliffen ist; auf der Schachtel oder mit einer Schablone in der Fläche.',
      width: 'Quer über die Backe, Stahlmaßstab.',
      bore: 'In den neuen Zylinder gegossen, in mm oder Zoll.',
      hand: 'Zeichen L und R, Pfeile, Seite des Hebels, Gewinderichtung.',
    },
    hands: { alike: 'beide Seiten', this: 'diese Seite', other: 'die andere Seite' },
    label: (newPartNames: string, wheel: 'left' | 'right') =>
      `Neues Teil: ${newPartNames}, ${wheel === 'left' ? 'linkes' : 'rechtes'} Rad`,
    foundAllowed: (found: string, allowed: string) => `gefunden ${found}; erlaubt ${allowed}`,
    makeItInMyBrake: 'In „Meine Bremse“ anlegen',
    newParts: 'Neue Teile',
    newPartsBeforeAnythingGoes: 'Neue Teile, bevor etwas zusammengebaut wird',
    theBrakeOnTheBench: (title: string) =>
      `Die Bremse auf der Werkbank, ${title}, hat eine andere Trommel als das Blatt: Über das Passen wird nichts gesagt.`,
    heldAgainstTheBrakeOn: (title: string) =>
      `Verglichen mit der Bremse auf der Werkbank, ${title}, im vorgefundenen Innendurchmesser.`,
    left: 'Links',
    right: 'Rechts',
    unlikeSides: 'Ungleiche Seiten.',
    theSame: 'gleich',
    rigid: (theSame: string) => `starr: ${theSame}`,
  },

  /* ui/stations/inspect/past.ts */
  inspectPast: {
    vehicleFoundNothingAllowed:
      'Fahrzeug: gefunden nichts; erlaubt: ein Name oder ein Kennzeichen.',
    dateFoundAllowedADay: (dated: string, today: string) =>
      `Datum: gefunden „${dated}“; erlaubt: ein Tag wie ${today} oder 28.11.2026.`,
    odometerFoundNothingThatIs:
      'Kilometerstand: gefunden nichts, was eine Strecke ist; erlaubt: zum Beispiel 84 600 km.',
    measurementsFoundNoneAllowed:
      'Messungen: gefunden keine; erlaubt: mindestens ein Maß eines Rades.',
    notKeptYet: 'Noch nicht aufbewahrt.',
    notKept: 'Nicht aufbewahrt.',
    keptInThisBrowserKm: (vehicle: string, date: string, value: string) =>
      `In diesem Browser aufbewahrt: ${vehicle}, ${date}, ${value} km.`,
    theSheetOfLiesHere: (date: string) =>
      `Das Blatt vom ${date} liegt hier. „Zurückholen“ bringt das andere.`,
    theSheetOfIsTaken: (date: string) => `Das Blatt vom ${date} ist herausgenommen.`,
    theSheetIsBack: 'Das Blatt ist zurück.',
    savedAs: (download: string) => `Gespeichert als ${download}.`,
    thePhotoLastsUntilThe:
      'Das Foto bleibt, bis die Seite geschlossen wird: Dieser Browser hat keinen Platz, es aufzubewahren.',
    wasNotTakenNothingElse: (name: string) =>
      `${name} wurde nicht übernommen; sonst hat sich nichts geändert.`,
  },

  /* ui/stations/inspect/phone.ts */
  inspectPhone: {
    inWord: (value: string) => `${value} in`,
    notLookedAt: 'nicht angesehen',
    less: (step: number) => `${step} weniger`,
    more: (step: number) => `${step} mehr`,
    foundAllowed: (found: string, allowed: string) => `gefunden ${found}; erlaubt ${allowed}`,
    reading: 'Messwert',
    wheel: 'Rad',
    leftWheel: 'Linkes Rad',
    rightWheel: 'Rechtes Rad',
    notSet: '– nicht gesetzt',
    limits: 'Grenzen',
    noneSet: 'keine gesetzt',
    verdictOfTheSheet: 'Urteil des Blatts',
    back: 'Zurück',
    rightWheel2: 'rechtes Rad',
    leftWheel2: 'linkes Rad',
    next: (next: string) => `Weiter: ${next}`,
  },

  /* ui/stations/inspect/print.ts */
  inspectPrint: {
    theBrakeWithThePlaces: 'Die Bremse mit den Messstellen',
    typedIn: '* eingetragen',
    brakeMeasurementSheet: 'Messblatt der Bremse',
    leftRearWheelFromOutside: (title: string) =>
      `${title}, linkes Hinterrad von außen, Trommel aufgeschnitten. Fahrzeugfront links.`,
    limitsOf: (from: string) => `Grenzen von: ${from}`,
    drumDiameterAt3Angles: 'Trommel-Ø in 3 Winkeln, 60° versetzt, 2 Tiefen',
    leadingLiningToeThinnestHeel: 'Auflaufender Belag: Spitze, dünnste Stelle, Ferse',
    trailingLiningFacesOfAll: 'Ablaufender Belag; Flächen von allem',
    adjusterToothMovesAndHolds: 'Nachsteller: Zahn, bewegt sich und hält',
    no: 'Nr.',
    measureMm: 'Maß, mm',
    left: 'Links',
    right: 'Rechts',
    marginVerdict: 'Rest, Urteil',
    limit: 'Grenze',
    verdict: 'Urteil: ______________________________',
    distanceLeftMarginRateKm:
      'Verbleibende Strecke = Rest ÷ Rate = ________ km; niedrig (÷ 2) ________ km; hoch (× 2) ________ km. Wieder messen bis ____________',
    andMoreOnThePage: (length: number) => `und ${length} weitere auf der Seite.`,
    signature: 'Unterschrift ______________________________',
    sceneVersion1TeachingBrake: (title: string, name: string) =>
      `${title}, Szene ${name}, Version 1. Lehrbremse: Ihre Grenzen sind nicht die Ihres Fahrzeugs.`,
  },

  /* ui/stations/inspect/read.ts */
  inspectRead: {
    readAs0MmOn: 'gelesen als 0 mm: auf dem Anschlag',
    readAs: (what: string, value: number) => `gelesen als ${what} ${value}`,
    aWholeNumber0To: (most: number) => `eine ganze Zahl, 0 bis ${most}`,
    readAsNotches: (value: number) => `gelesen als ${value} ${value === 1 ? 'Raste' : 'Rasten'}`,
    aNumberOfNotches0: 'eine Zahl von Rasten, 0 bis 40',
    moreThanMmTheNew: (fresh: string) => `mehr als ${fresh} mm, der neue Ø`,
    atMostMmTheMark: (marked: string) => `höchstens ${marked} mm, die Marke`,
    notForThisDrum: 'nicht für diese Trommel',
    typedWhose: {
      drumMax: 'Marke auf der Trommel, wie eingetragen',
      drumCut: 'Blatt des Herstellers, wie eingetragen',
    },
    wheel: (name: string, wheel: 'left' | 'right') =>
      `${name}, ${wheel === 'left' ? 'linkes' : 'rechtes'} Rad`,
  },

  /* ui/stations/inspect/sheet.ts */
  inspectSheet: {
    titled: { left: 'Linkes Rad', right: 'Rechtes Rad' },
    askedHint: {
      drumNew: 'Beide Räder; wird zuerst gefragt.',
      drumMax: 'Beide Räder; die Grenze, die die Trommel selbst nennt.',
      drumCut: 'Beide Räder; nur für das Ausdrehen. Keine gesetzt, kein Urteil darüber.',
    },
    foundAllowed: (found: string, brief: string) => `gefunden ${found}; erlaubt ${brief}`,
    label: (name: string, wheel: 'left' | 'right') =>
      `${name}, ${wheel === 'left' ? 'linkes' : 'rechtes'} Rad`,
    more: 'mehr',
    less: 'weniger',
    thanLeft: (by: string, more: string) => `${by} ${more} als links`,
    partsListOrItsUnworn: 'Teileliste oder ihr nicht verschlissener Rand',
    noneSet: 'keine gesetzt',
    typeTheMarkAbove: 'oben die Marke eintragen',
    limit: (name: string) => `Grenze: ${name}`,
    foundAllowed2: (found: string, allowed: string) => `gefunden ${found}; erlaubt ${allowed}`,
    balloon: 'Positionsnummer',
    measureMm: 'Maß, mm',
    limitAndWhose: 'Grenze, und wessen',
    wholeAxle: 'Ganze Achse',
    notchesMostAllowed: 'Rasten, höchstens erlaubt',
    theMakersFigureUsualHand: 'Die Angabe des Herstellers; übliche Handhebel 4 bis 7.',
    headingForThePrint: 'Überschrift für den Druck',
    limitsOf: 'Grenzen von',
    aPlainNumberIsIn: 'Eine bloße Zahl gilt in',
    inches: 'Zoll',
    theDrumOnTheSheet: (name: string) =>
      `Die Trommel auf dem Blatt ist eine andere als die von ${name}. Keine ihrer Grenzen wird verwendet: Tragen Sie Ihre eigenen ein.`,
    makeItInMyBrake: 'In „Meine Bremse“ anlegen',
    verdictOfTheSheet: 'Urteil des Blatts',
    reasons: 'Gründe',
    aPassOnASheet: 'Ein „bestanden“ auf einem Blatt ist keine Zulassung eines Fahrzeugs.',
    clearTheSheet: 'Das Blatt leeren?',
    clearBothWheelsAndThe: 'Beide Räder und die Achse leeren?',
    clearTheSheet2: 'Das Blatt leeren',
    keepIt: 'Behalten',
    clearSheet: 'Blatt leeren',
    theSheetAsItWas: 'Das Blatt, wie es vorher war',
    bringBack: 'Zurückholen',
    printSheet: 'Blatt drucken',
    aBlankSheetForThe: 'Ein leeres Blatt für den Drucker',
    blank: 'Leer',
    wheelOnTheStage: 'Rad auf der Bühne',
    left: 'Links',
    right: 'Rechts',
    takeTheValuesFromThe: 'Die Werte von der Bremse übernehmen',
    loadTheWheelIntoThe: (wheel: 'left' | 'right') =>
      `Das ${wheel === 'left' ? 'linke' : 'rechte'} Rad in die Bremse laden`,
    measurements: 'Messungen',
  },

  /* ui/stations/inspect/words.ts */
  inspectWords: {
    leadingLining: 'auflaufender Belag',
    trailingLining: 'ablaufender Belag',
    atItsLimitNowWheel: (what: string, wheel: 'left' | 'right') =>
      `Jetzt an der Grenze: ${what}, ${wheel === 'left' ? 'linkes' : 'rechtes'} Rad.`,
    aboutKmLeftToTo: (
      left: string,
      low: string,
      high: string,
      what: string,
      wheel: 'left' | 'right',
      each: string,
      unit: 'mm' | 'steps' | 'teeth',
    ) =>
      `Noch etwa ${left} km (${low} bis ${high}) bis zur Grenze: ${what}, ${wheel === 'left' ? 'linkes' : 'rechtes'} Rad, bei ${each} ${unit === 'steps' ? 'Schritten' : unit === 'teeth' ? 'Zähnen' : unit} auf 1\u202f000 km; die Rate kann halb oder doppelt so groß sein.`,
  },

  /* ui/stations/kind/card.ts */
  kindCard: {
    pinsName: 'Auflaufend und ablaufend, auf Bolzen',
    pinsTell:
      'Fersen unten auf zwei festen Bolzen. Druckstange und Nachsteller liegen oben, unter dem Zylinder.',
    pinsSays: 'Diese Werkbank. Alles davon gilt.',
    flatsName: 'Auflaufend und ablaufend, auf Flächen',
    flatsTell:
      'Die Fersen stehen unten lose an einem festen Block und können gleiten. Druckstange und Nachsteller oben.',
    flatsSays: 'Diese Werkbank: Der Fährwagen hat so eine.',
    servoName: 'Servo, auch Duo-Servo',
    servoTell:
      'Ein Bolzen oben, über dem Zylinder. Unten ist nichts fest: Eine Schraube mit Sternrad verbindet die Backen. Der vordere (primäre) Belag ist oft kürzer als der hintere (sekundäre).',
    servoSays:
      'Nicht diese Werkbank: Drehrichtungen, Anteile der Backen und was den Nachsteller dreht, lassen sich nicht übertragen. Grat, Rost, Seilzug und verschlissene Trommel schon.',
    inDiscName: 'Trommel in einer Scheibe (Topfscheibe)',
    inDiscTell:
      'Außen eine Scheibe mit Sattel. Kleine Backen im Topf der Scheibe sind nur zum Parken da: Ein Seilzug spreizt sie, einen Radzylinder gibt es nicht.',
    inDiscSays:
      'Nicht diese Werkbank: Pedal, Anteile und Klicks lassen sich nicht übertragen. Grat, Rost und Seilzug gelten.',
    toothedName: 'Zahnhebel',
    toothedTell: 'Rückt weiter, wenn ein Tritt zu weit geht.',
    toothedSays: 'Die des Kai-Transporters',
    shoeName: 'Gewinde, durch die Backen',
    shoeTell: 'Ein Hebel an einer Backe dreht beim Rückweg einer Betätigung ein Sternrad.',
    shoeSays: 'Die des Hofanhängers',
    leverName: 'Gewinde, durch den Bremshebel',
    leverTell: 'Nur durch den Zug der Handbremse gedreht.',
    leverSays: 'In „Verschleiß“: durch den Handbremszug angetrieben',
    reverseName: 'Gewinde, durch Rückwärtsfahren',
    reverseTell: 'Durch Bremsen rückwärts gedreht: so bei einer Servobremse.',
    reverseSays: 'Lässt sich nicht übertragen',
    taperName: 'Keil',
    taperTell: 'Von einer Feder nach unten gezogen: keine Zähne, kein Klick.',
    taperSays: 'Die des Fährwagens',
    handName: 'Von Hand',
    handTell: 'Von Ihnen gedreht, durch das Schauloch oder hinter der Ankerplatte.',
    handSays: 'Nichts klickt: oft einstellen',
    drawnFromOutside: (name: string) => `${name}, von außen gezeichnet`,
    kind: 'Bauart',
    whatSetsItsLength: 'Was stellt ihre Länge ein?',
    whatSetsItsLength2: 'Was ihre Länge einstellt',
    notTold: 'nicht angegeben',
    mine: (kind: string, setBy: string) => `Meine: ${kind}${setBy}`,
    eachAnswerSaysSoAgain: (note: string) => `${note} Jede Antwort sagt es noch einmal.`,
    allThatIsSaidHere: 'Alles, was hier gesagt wird, gilt für Ihre.',
    tapWhatLooksLikeYours:
      'Tippen Sie an, was wie Ihre aussieht. Namen täuschen: „primär“ und „stellt rückwärts nach“ gehören zu Servobremsen.',
  },

  /* ui/stations/kind/carry.ts */
  kindCarry: {
    yoursIsAServoBrake:
      'Ihre ist eine Servobremse: Drehrichtungen, die Anteile der Backen und was den Nachsteller dreht, lassen sich nicht übertragen; Grat, Rost, Seilzug und verschlissene Trommel schon.',
    yoursIsADrumInside:
      'Ihre ist eine Trommel in einer Scheibe: Pedal, Anteile und Klicks lassen sich nicht übertragen; Grat, Rost und Seilzug schon.',
    yourAdjusterIsTurnedBy:
      'Ihr Nachsteller wird durch Bremsen rückwärts gedreht: Was über Klicks gesagt wird, gilt nicht für Ihren.',
    yourAdjusterIsTurnedBy2:
      'Ihr Nachsteller wird nur durch den Bremshebel gedreht: Tritte aufs Pedal stellen nichts nach.',
    yoursIsSetByHand:
      'Ihre wird von Hand eingestellt: Nichts klickt; ein Spalt wächst, bis Sie ihn einstellen.',
    yoursIsAWedgeNo:
      'Ihre hat einen Keil: keine Zähne und keine Klicks; nach oben geschoben ist er zurückgestellt.',
  },

  /* ui/stations/kind/index.ts */
  kind: {
    whichKindIsYours: 'Welche Bauart ist Ihre?',
    lookWithTheDrumOff: 'Schauen Sie bei abgezogener Trommel oder mit einer Lampe durch das Loch.',
    goOn: 'Weiter',
    start: 'Start',
    whatISee: 'Was ich sehe',
  },

  /* ui/stations/kind/part.ts */
  kindPart: {
    whichKindItIs: 'welche Bauart es ist',
    whatSetsItsLength: 'was ihre Länge einstellt',
  },

  /* ui/stations/lessons/chart.ts */
  lessonsChart: {
    clearanceFromToKmNow: (first: string, first2: string, clearance: string) =>
      `Lüftspiel von ${first} bis ${first2} km, jetzt ${clearance} mm`,
    chart: 'Diagramm',
    coveredUntilItIsShown: ': verdeckt, bis es gezeigt wird',
  },

  /* ui/stations/lessons/controls.ts */
  lessonsControls: {
    holdToPress: 'Zum Treten gedrückt halten',
    turnBackward: 'Rückwärts drehen',
    turnForward: 'Vorwärts drehen',
    lesson: 'Lektion',
    stepBack: 'Schritt zurück',
    again: 'Noch einmal',
    allLessons: 'Alle Lektionen',
    stepOn: 'Schritt weiter',
    noGuess: 'Ohne Vermutung',
    onTheWallW: 'An die Wand (W)',
    forTheTeacherI: 'Für die Lehrkraft (I)',
  },

  /* ui/stations/lessons/desk.ts */
  lessonsDesk: {
    firstAGuessAB: 'Erst eine Vermutung: A, B oder C.',
    backToTheLessons: 'Zurück zu den Lektionen',
    goOn: 'Weiter',
    showIt: 'Zeigen',
    firstAGuess: 'Erst vermuten',
    toItsEnd: 'Bis ans Ende',
    nextStep: 'Nächster Schritt',
    toTheEnd: 'Zum Ende',
  },

  /* ui/stations/lessons/editor.ts */
  lessonsEditor: {
    layers: {
      fan: 'Spaltfächer',
      comb: 'Pressungskamm',
      forces: 'Kräfte',
      names: 'Namen',
      ghost: 'Ruhelage als Schattenbild',
      heat: 'Wärme',
      loupe: 'Lupe',
      edge: 'Seitenansicht',
      polygons: 'Kraftecke',
      dials: 'Stellgriffe',
    },
    layersShown: (step: number) => `Schritt ${step}: wohin man sieht, Ebenen der Zeichnung`,
    lesson: {
      title: 'Titel',
      idea: 'Ihr einer Gedanke',
      who: 'Für wen',
      minutes: 'Minuten',
      number: 'Nummer in einem Lehrgang',
      caution: 'Vorsicht, die ganze Zeit zu sehen',
      starter: 'Für die Lehrkraft: davor',
      exit: 'Auf Papier, am Ende',
      shortly: 'Für die Lehrkraft: mit zehn Minuten',
      whatIf: 'Was wäre wenn, am Ende',
      name: 'Ihr Name',
      brake: 'Ihre Bremse',
      scene: 'Die Datei ihrer Bremse',
      state: 'Der Zustand, mit dem sie beginnt',
      steps: 'Ihre Schritte',
    },
    step: {
      title: 'Titel des Schritts',
      ask: 'Frage',
      choices: 'Auswahl',
      say: 'Was gesagt wird',
      seconds: 'Sekunden',
      button: 'Was auf der Taste steht, die es zeigt',
      shows: 'Was sich zeigt',
      why: 'Warum',
      next: 'Was folgt',
      tryIt: 'Was man versuchen kann',
      caution: 'Vorsicht',
      'notes.behind': 'Für die Lehrkraft: was dahinter steckt',
      'notes.point': 'Für die Lehrkraft: worauf zu zeigen ist',
      'notes.ask': 'Für die Lehrkraft: was als Nächstes zu fragen ist',
      'notes.minutes': 'Für die Lehrkraft: Minuten',
      'look.readings': 'Angezeigte Werte',
      'look.names': 'Benannte Teile',
      'look.layers': 'Ebenen der Zeichnung',
      hand: 'Was geschieht',
      start: 'Wie er beginnt',
      checks: 'Seine Bedingungen',
    },
    choice: {
      shows: 'Für die Lehrkraft: was diese Wahl zeigt',
      back: 'Für die Lehrkraft: was darauf zu sagen ist',
    },
    stepPlace: (step: number, place: string) => `Schritt ${step}${place ? `, ${place}` : ''}`,
    choicePlace: (letter: string, place: string) => `Auswahl ${letter}${place ? `, ${place}` : ''}`,
    piece: (piece: number) => `Teil ${piece}`,
    actionPlace: (what: string, place: number) => `${what}, Nummer ${place}`,
    stepChoice: (step: number, letter: string, piece: number) =>
      `Schritt ${step}, Auswahl ${letter}${piece > 1 ? `, Teil ${piece}` : ''}`,
    holdsNamed: (of: string) => `${of}: trifft zu`,
    holds: 'trifft zu',
    away: 'Entfernen',
    awayWith: (what: string) => `${what}: entfernen`,
    onePieceMore: 'Noch ein Teil',
    pieceMoreOf: (letter: string) => `Auswahl ${letter}, noch ein Teil`,
    choiceAway: (letter: string) => `Auswahl ${letter} entfernen`,
    oneMoreChoice: 'Noch eine Auswahl',
    step2: (i: number) => `Schritt ${i}`,
    nothingWord: 'nichts',
    up: 'Nach oben',
    down: 'Nach unten',
    double: 'Verdoppeln',
    stepDoes: (step: number, what: string) => `Schritt ${step}: ${what}`,
    stepIsNow: (from: number, to: number) => `Schritt ${from} ist jetzt Schritt ${to}.`,
    stepGone: (step: number) => `Schritt ${step} ist weg. Rückgängig holt ihn zurück.`,
    doubled: (step: number) => `Schritt ${step} steht zweimal da.`,
    cannotSay: 'Das wurde getan, aber eine Lektion kann es nicht sagen:',
    readingsTold: (step: number, most: number) =>
      `Schritt ${step}: angezeigte Werte, bis zu ${most}`,
    partsNamed: (step: number) => `Schritt ${step}: benannte Teile`,
    mostReadings: (most: number) =>
      `Höchstens ${most} Werte werden angezeigt: zuerst einen wegnehmen.`,
    figures: 'Eine Zahl in den Text, wo die Schreibmarke steht:',
    moment: (name: string) => (name === 'before' ? 'vorher' : name === 'now' ? 'am Ende' : name),
    putIn: (name: string, moment: string, value: string) =>
      `${name} einsetzen, ${moment}: ${value}`,
    readsNow: 'Heißt heute:',
    workOut: 'Seine Zahlen rechnen',
    noFigures: 'Was in diesem Schritt getan wird, lässt sich noch nicht rechnen: keine Zahlen.',
    more: 'Mehr: Titel, was folgt, Notizen der Lehrkraft',
    moreOfLesson: 'Mehr: Minuten, Vorsicht, Notizen der Lehrkraft',
    checksKept: (n: number) =>
      `${n} Bedingungen an seine Zahlen bleiben, wie sie in der Datei stehen.`,
    drawing: 'Zeichnung',
    drawings: { brake: 'die Bremse', drum: 'die Trommel beim Abnehmen', park: 'geparkt' },
    kind: 'Art',
    kinds: {
      lesson: 'eine Lektion, mit Fragen',
      talk: 'ein Vortrag, der von selbst läuft',
    },
    writeALesson: 'Lektion schreiben',
    itBeginsWithTheBrake:
      'Sie beginnt mit der Bremse auf der Werkbank, wie sie steht. Führen Sie auf der Bühne aus, was ein Schritt zeigen soll, übernehmen Sie ihn und schreiben Sie die Frage dazu. Eine Lektion der Liste kann als Anfang dienen.',
    yourLesson: 'Ihre Lektion',
    toTheStageTheNext: 'Zur Bühne: der nächste Schritt',
    stillToDo: 'Noch zu tun',
    foundAllowed: (place: string, found: string, allowed: string) =>
      `${place}: gefunden ${found}; erlaubt: ${allowed}`,
    tryIt: 'Ausprobieren',
    saveTheFile: 'Datei speichern',
    putTheDraftAway: 'Entwurf weglegen',
    savedAsWhoeverGetsIt: (download: string) =>
      `Gespeichert als ${download}: Wer die Datei bekommt, öffnet sie hier unter „Lektionen“.`,
  },
  /* ui/stations/lessons/index.ts */
  lessons: {
    lessons: 'Lektionen',
    aQuestionAGuessThen:
      'Eine Frage, eine Vermutung, dann die Bremse selbst. Was vermutet wurde, bleibt gespeichert; eine Lektion lässt sich verlassen und wieder aufnehmen.',
  },

  /* ui/stations/lessons/keys-card.ts */
  lessonsKeysCard: {
    keys: 'Tasten (?)',
    keysOfOneLetterWork: 'Tasten mit einem Buchstaben wirken',
  },

  /* ui/stations/lessons/keys.ts */
  lessonsKeys: {
    chooseAnAnswerWithShift: 'eine Antwort; mit Umschalt eine Meldung',
    pageDownSpace: 'Bild ab, →, Leertaste',
    theNextThingShowIt: 'der gefüllte Knopf: zeigen, weiter',
    pageUp: 'Bild auf, ←',
    whileAQuestionIsOpen: 'nächste Antwort; danach ein Schritt zurück',
    oneStepBack: 'einen Schritt zurück',
    blankTheWallAndShow: 'Wand leer, und wieder gezeigt',
    of1To9: '1 bis 9',
    onTheWallThatStep: 'an der Wand: dieser Schritt',
    showItAgain: 'noch einmal zeigen',
    wallAndBackToThe: 'Wand und zurück zum Pult',
    onTheWallThisMoment: 'an der Wand: ein Code für Handys',
    fullScreen: 'Vollbild',
    allLessons: 'alle Lektionen',
    toTheDeskThenToAll: 'zum Pult, dann zu allen Lektionen',
    beginTheMarked: 'die markierte Lektion beginnen',
    markTheNext: 'die nächste markieren',
    thatLesson: 'die Lektion dieser Nummer',
    desk: 'Pult',
    windowForTheTeacher: 'Fenster für die Lehrkraft',
    theseKeys: 'diese Tasten',
  },

  /* ui/stations/lessons/list.ts */
  lessonsList: {
    steps: (count: number) => (count === 1 ? '1 Schritt' : `${count} Schritte`),
    moments: (count: number) => (count === 1 ? '1 Moment' : `${count} Momente`),
    bytes: (size: number) => `${size} Byte`,
    atMost: (mostlesson: number) => `höchstens ${mostlesson}`,
    openALessonFile: 'Lektionsdatei öffnen',
    openedItStandsBelow: (name: string) =>
      `${name} ist geöffnet: Die Lektion steht unter „Eigene“.`,
    wasNotOpenedNothingElse: (name: string) =>
      `${name} wurde nicht geöffnet; sonst hat sich nichts geändert.`,
    takeItOff: 'Entfernen',
    takenToItsEnd: 'bis zum Ende durchgearbeitet',
    atOf: (step: number, length: number) => `bei ${step} von ${length}`,
    goOnWith: 'Weiter mit',
    writeFromThis: 'Davon ausgehend schreiben',
    writeOn: 'Weiterschreiben',
    play: 'Abspielen',
    begin: 'Beginnen',
    goOn: 'Weiter',
  },

  /* ui/stations/lessons/wall-list.ts */
  lessonsWallList: {
    taken: 'durchgenommen',
    atOf: (step: number, length: number) => `bei ${step} von ${length}`,
    space: 'Leertaste, Bild ab',
    begin: 'beginnen',
    pageUp: 'Bild auf',
    another: 'eine andere',
    keys: '? Tasten',
    leaveTheWall: 'Esc Pult: die Wand verlassen',
    esc: 'Esc',
  },

  /* ui/stations/lessons/on-paper.ts */
  lessonsOnPaper: {
    iThinkBecause: (piece: unknown) => ['Ich vermute ____, weil', piece],
    iSaw: (piece: unknown) => ['ich sah', piece],
    so: (piece: unknown) => ['also', piece],
    sawTitle:
      'Ab neu: Lüftspiel in mm über der Strecke in km. Zeichnen Sie es und markieren Sie jeden Klick.',
    pageOf: (page: number, count: number) => ` (Seite ${page} von ${count}.)`,
    answers: (number: string | number, title: string) => `${number} ${title}: Antworten`,
    predictionsAnswers: 'Vermutungen, Auswahl',
    seen: 'Gesehen',
    why: 'Warum',
    fromNewClearanceInMm: 'Ab neu: Lüftspiel in mm über der Strecke in km',
  },

  /* ui/stations/lessons/panel.ts */
  lessonsPanel: {
    of: (kind: string, at: number, of: number) => `${kind} ${at} von ${of}`,
    theEnd: 'Das Ende',
    lesson: (number: number) => `Lektion ${number}, `,
    tryWord: 'Ausprobieren:',
    thatWasIt: 'Das war es.',
    thatWasTheLesson: 'Das war die Lektion.',
    whatWasGuessed: 'Was vermutet wurde',
    hands: (votes: string) => ` · Meldungen ${votes}`,
    guessedAsItCame: 'vermutet, wie es kam',
    guessedOtherwise: 'anders vermutet',
    noGuess: 'keine Vermutung',
    onPaper: 'Auf Papier:',
    names: 'Namen',
    keys: '? Tasten',
    leaveTheWall: 'Esc Pult: die Wand verlassen',
    esc: 'Esc',
    space: 'Leertaste',
    guessedBy: 'A B C, Bild ↑',
  },

  /* ui/stations/lessons/part.ts */
  lessonsPart: {
    keysOfTheLesson: 'Tasten der Lektion',
  },

  /* ui/stations/lessons/parts-of-panel.ts */
  lessonsPartsOfPanel: {
    whereTheStepIs: 'Wo der Schritt ist',
    doesNotHold: 'trifft nicht zu:',
    chosen: '(gewählt)',
    countAHandForSo: (letter: string, hands: number) =>
      `Eine Meldung für ${letter} zählen: bisher ${hands}`,
    hands: 'Meldungen:',
    answers: 'Auswahl',
    coveredUntilItIsShown: ': verdeckt, bis es gezeigt wird',
    value: 'Wert',
    before: 'vorher',
    now: 'jetzt',
  },

  /* ui/stations/lessons/take.ts */
  lessonsTake: {
    allowed: 'ein Name, den keine Lektion der Seite hat',
  },

  /* ui/stations/lessons/teacher-link.ts */
  lessonsTeacherLink: {
    thisBrowserDoesNotLet: 'Dieser Browser lässt zwei Fenster nicht miteinander sprechen.',
    theBrowserDidNotOpen:
      'Der Browser hat das Fenster nicht geöffnet: Erlauben Sie es für diese Seite.',
  },

  /* ui/stations/lessons/teacher-words.ts */
  lessonsTeacherWords: {
    step: (i: number) => `Schritt ${i}`,
    lesson: (number: number) => `Lektion ${number}: `,
    moment: 'Augenblick',
    step2: 'Schritt',
    of: (moment: string, at: number, of: number) => `${moment} ${at} von ${of}`,
    theEnd: 'Das Ende',
    beforeIt: 'Davor',
    afterIt: 'Danach',
    whatIf: 'Was wäre, wenn',
  },

  /* ui/stations/lessons/write.ts */
  lessonsWrite: {
    nothingHasChanged: (step: number) =>
      `Seit Schritt ${step} hat sich an der Bremse nichts geändert: Tun Sie dort, was geschehen soll.`,
    stepHasItsBeginning: (title: unknown, step: number) => [
      title,
      `: Schritt ${step} hat seinen Anfang. Tun Sie an der Bremse, was dann geschieht.`,
    ],
    stepWhatTheStageShows: (length: number) => `Schritt ${length}: was die Bühne jetzt zeigt.`,
    stepBeginsSo: (length: number) =>
      `Schritt ${length} beginnt so. Tun Sie nun, was geschehen soll.`,
    stepGoesOn: (length: number) => `Schritt ${length} geht hierzu weiter.`,
    lessonBeingWritten: 'Lektion in Arbeit',
    yourLesson: 'Ihre Lektion',
    step: 'Schritt',
    steps: 'Schritte',
    doOnTheStageWhat: (title: unknown, length: number, step: string) => [
      title,
      ', ',
      length,
      ' ',
      step,
      '. Führen Sie auf der Bühne aus, was der nächste Schritt zeigen soll.',
    ],
    takeThisAsStep: (length: number) => `Dies als Schritt ${length} übernehmen`,
    beginsSo: (length: number) => `Schritt ${length} beginnt so`,
    thenThis: (length: number) => `Dann dies, in Schritt ${length}`,
    writeOn: 'Weiterschreiben',
    cannotSay: 'Das wurde getan, aber eine Lektion kann es nicht sagen:',
    cannotSayIt: (what: string) => `Eine Lektion kann nicht sagen: ${what}.`,
    cannotBeRead: 'Die Bremse der Lektion lässt sich nicht lesen: was noch zu tun ist, sagt warum.',
    tooLong: 'Die Lektion ist zu lang, um behalten zu werden: zuerst etwas wegnehmen.',
    draftTakenAnew: (title: string) =>
      `${title} wird weitergeschrieben. Was vorher geschrieben wurde, holt Rückgängig zurück.`,
  },
  /* ui/stations/new-shoes/controls.ts */
  newShoesControls: {
    less: (name: string) => `${name}: weniger`,
    more: (name: string) => `${name}: mehr`,
    toStep: (first: number, stepNames: string) => `Zu Schritt ${first}: ${stepNames}`,
    drumBore: 'Trommelbohrung',
    liningThick: 'Belagdicke',
    groundForDiameter: 'Geschliffen für Ø',
    theseAreTheParts: 'Das sind die Teile',
    backOffAsFarAs: 'Ganz zurückstellen',
    evenBothSides: 'Beide Seiten angleichen',
    pushItAside: 'Zur Seite schieben',
    wantedSmallerBy: 'Gewünscht kleiner um',
    setByTheGauge: 'Nach der Lehre einstellen',
    leaveItHere: 'So lassen',
    pressOnce: 'Einmal treten',
    pressUntilSilent: 'Treten, bis es still ist',
    drumOffAgain: 'Trommel wieder abziehen',
    notPressedYet: 'noch nicht getreten',
    clicksAPress: (length: string) => `Klicks je Tritt: ${length}`,
    slideTheDrumOn: 'Trommel aufschieben',
    leverHomeThenCable: 'Erst Hebel auf Anschlag, dann Seilzug',
    tightenFirstMmOff: (heldoff: number) => `Zuerst spannen: ${heldoff} mm ab`,
    driveOnToBedIn: 'Weiterfahren, zum Einlaufen',
    newWord: 'neu',
    thisStep: 'Dieser Schritt',
    controls: 'Bedienung',
    next: (stepNames: string) => `Weiter: ${stepNames}`,
    startAgain: 'Von vorn beginnen',
  },

  /* ui/stations/new-shoes/desk.ts */
  newShoesDesk: {
    fitGap: 'Spalt der Passung',
    gapLeftAt40Bar: 'Restspalt bei 40 bar',
    firstTorque: 'erstes Moment',
    firstPress40Bar: 'Erster Tritt, 40 bar',
  },

  /* ui/stations/new-shoes/index.ts */
  newShoes: {
    picture: 'Bild',
    drumOnTrueScale: 'Trommel montiert · maßstäblich',
    drumOffItsOutlineDashed: 'Trommel ab, ihr Umriss gestrichelt · maßstäblich',
  },

  /* ui/stations/new-shoes/part.ts */
  newShoesPart: {
    stepOfNewShoes: 'Schritt von „Neue Backen“',
    step: (step: number) => `Schritt ${step}`,
    newShoesFromTheFirst: 'neue Backen vom ersten Schritt an',
    drumBore: (bore: string) => `Trommelbohrung ${bore}`,
    liningThick: (thickness: string) => `Belag ${thickness} dick`,
    groundForDiameter: (ground: string) => `geschliffen für Ø ${ground}`,
    liesAllAlong: 'liegt überall an',
    crownFirst: 'Mitte zuerst',
    endsFirst: 'Enden zuerst',
    bearsAtTheToe: 'trägt an der Spitze',
    bearsAtTheHeel: 'trägt an der Ferse',
    butTooThick: (says: string) => `${says}, aber zu dick`,
    text: (at: string, at2: string) => `Druckstange von ${at} auf ${at2}`,
    bothSidesEven: 'beide Seiten gleich',
    pairLeftAside: 'Paar außermittig gelassen',
    wantedSmallerBy: (wanted: string) => `gewünscht kleiner um ${wanted}`,
    noToothIsShortEnough: 'kein Zahn ist kurz genug',
    text2: (namedTooth: string, difference: string) =>
      `${namedTooth}, ${difference} kleiner als die Bohrung`,
    drumOnNotPressedYet: 'Trommel montiert, noch nicht getreten',
    theLip: 'den Grat',
    theBore: 'die Bohrung',
    overByASide: (where: string, ceil: string) => `je Seite um ${ceil} über ${where} hinaus`,
    drumOffAgain: 'Trommel wieder ab',
    notPressedTheDrumIs: 'nicht getreten: Die Trommel ist ab',
    thenSilent: (count: string) => `${count}, dann still`,
    pressOn: (count: string) => `${count}, weiter treten`,
    leverMmOffItsStop: (heldoff: number) => `Bremshebel ${heldoff} mm vom Anschlag ab`,
    leverOnItsStop: 'Bremshebel auf dem Anschlag',
    leverOnItsStopBut: 'Bremshebel auf dem Anschlag, aber Backen noch nicht eingestellt',
    beddedInOverKm: (bedat: number) => `über ${bedat} km eingelaufen`,
  },

  /* ui/stations/new-shoes/pictures.ts */
  newShoesPictures: {
    column: { tooth: 'Zahn', strut: 'Druckstange' },
    atTheEnds: 'an den Enden',
    inTheMiddle: 'in der Mitte',
    atTheHeel: 'an der Ferse',
    atTheToe: 'an der Spitze',
    theyLieAllAlong: 'Sie liegen überall an.',
    theyTouchAtTheCrown: 'Sie berühren zuerst in der Mitte.',
    theyTouchAtBothEnds: 'Sie berühren zuerst an beiden Enden.',
    theyBearAtTheToe: 'Sie tragen an der Spitze.',
    theyBearAtTheHeel: 'Sie tragen an der Ferse.',
    theyBearInTheMiddle:
      'Sie tragen in der Mitte, bis sie eingelaufen sind: eine Zeit lang schwächer, dann richtig.',
    groundTooLargeTheEnds:
      'Zu groß geschliffen: Die Enden tragen hart, die Bremse kann rupfen. Verlangen Sie Beläge, die zur Bohrung passen.',
    theShoeComesToThe:
      'Die Backe trifft mit der Spitze zuerst auf die Bohrung; dort angedrückt, rupft sie, bis sie eingelaufen ist. Verlangen Sie Beläge, die um so viel dicker sind, wie die Bohrung größer ist.',
    theShoeComesToThe2:
      'Die Backe trifft mit der Ferse zuerst auf die Bohrung: schwächer, bis sie eingelaufen ist. Verlangen Sie Beläge, die zur Bohrung passen.',
    howTheLiningLiesIn: 'Wie der Belag in der Bohrung liegt',
    gapAlongTheLiningsArc: (where: 'all along' | 'crown' | 'ends' | 'heel' | 'toe', gap: string) =>
      `Spalt entlang des Belagbogens: ${where === 'all along' ? 'überall' : where === 'crown' ? 'Mitte' : where === 'ends' ? 'Enden' : where === 'heel' ? 'Ferse' : 'Spitze'}, ${gap} mm`,
    drumBore: (bore: string) => `Trommel, Bohrung ${bore}`,
    liningGroundFor: (ground: string) => `Belag, geschliffen für ${ground}`,
    heelEnd: 'Ende Ferse',
    toeEnd: 'Ende Spitze',
    mmIsLeftDrawnTo: (gap: string, at: string) =>
      `${gap} mm bleiben ${at}, in eigenem Maßstab gezeichnet.`,
    atTheCrownFirst: 'zuerst in der Mitte',
    atBothEndsFirst: 'zuerst an beiden Enden',
    rigidMmLeft: (lies: string, gap: string) => `Starr: ${lies}, ${gap} mm bleiben.`,
    radiiDrawnAboutCutOff: (times: number) =>
      `Radien etwa ×${times} gezeichnet, unten abgeschnitten`,
    halfAcrossMm: (times: unknown) => ['Halbes Maß über die Beläge, mm ', times],
    halfAcrossTheLiningsAt: (named: string, named2: string) =>
      `Halbes Maß über die Beläge, ${named} bis ${named2}, gegen Grat und Bohrung`,
    drum: 'Trommel',
    binds: 'klemmt',
    lip: 'Grat',
    thePairStandsAsideCentre: (aside: string) =>
      ` Das Paar steht ${aside} außer der Mitte: zentrieren.`,
    isTooLong: (named: string) => `${named} ist zu lang:`,
    theLiningsAreWiderThan: (lipSays: string, aside: string) =>
      `Die Beläge stehen weiter als die Bohrung, am Grat je Seite ${lipSays}.${aside}`,
    doesNotPassTheLip: (named: string) => `${named} kommt nicht am Grat vorbei,`,
    aSide: (named: unknown, lipSays: string, aside: string) => [
      named,
      ' ',
      lipSays,
      ' je Seite.',
      aside,
    ],
    passesTheLip: (named: string, lipSays: string) => `${named} kommt am Grat vorbei, ${lipSays}.`,
    atToeCentreAndHeel: (gaps: string | undefined) => `${gaps} an Spitze, Mitte und Ferse`,
    atToeCentreHeel: (gaps: string) => `${gaps} an Spitze / Mitte / Ferse`,
    snugAtTheLipIs: (atToe: string, aside: string) =>
      `Saugend am Grat ist noch nicht der Spalt: Dahinter hat der Belag ${atToe}.${aside}`,
    across: 'über alles',
    clearance: 'Lüftspiel',
    lipTightest: (lip: string) => `Grat ${lip}, am engsten`,
    contactOnTheDrum: 'Anlage an der Trommel',
    theDrumIsOffNothing: 'Die Trommel ist ab: Nichts berührt. Schieben Sie sie erst auf.',
    now: (share: string) => `, jetzt ${share}`,
    bearsOnOfItsArc: (share: string, now: string) => `trägt auf ${share} ihres Bogens${now}`,
    pressureAlongTheArc: (name: string) => `${name}: Pressung entlang des Bogens`,
    afterKm: (km: string) => `nach ${km} km`,
    theSame: 'dasselbe',
    lineFirstStopFilled: (afterKm: string) => `Linie: erste Bremsung · gefüllt: ${afterKm}`,
    contactAt40Bar: (afterKm: unknown) => ['Anlage bei 40 bar ', afterKm],
    frontLeading: 'Vorn, auflaufend',
    rearTrailing: 'Hinten, ablaufend',
    oneScaleMostMpaArc: (most: string) =>
      `Ein Maßstab, höchstens ${most} MPa; Bogen von einem Ende zum anderen.`,
    rigid: 'starr',
    pedalMm: 'Pedal mm',
    theFirstStopsAreWeaker: (torque: string, km: string) =>
      `Die ersten Bremsungen sind ${torque} % schwächer als nach ${km} km.`,
    theFirstStopsAreStronger: (torque: string, km: string) =>
      `Die ersten Bremsungen sind ${torque} % stärker als nach ${km} km: Die Bremse rupft.`,
    theFirstStopsAreAs: 'Die ersten Bremsungen sind so stark wie spätere.',
    none: 'keiner',
    rigid2: (km: string) => `starr: ${km}`,
    under100: 'unter 100',
    shoesFirstOrCableFirst: 'Erst die Backen oder erst der Seilzug',
    lever: 'Bremshebel',
    nextClickAfter: 'nächster Klick nach',
    onItsStop: 'auf dem Anschlag',
    mmOffIt: (heldoff: number) => `${heldoff} mm davon ab`,
    andTheNextClickComes: (late: string) => `, und der nächste Klick kommt ${late} km zu spät`,
    tightenedFirstTheCableStands: (held0: string, home0: string, andThe: string, home02: string) =>
      `Zuerst gespannt, steht der Seilzug an der Stelle des Nachstellers: ${held0} statt ${home0}${andThe}. Wird er später gelockert, springt der Spalt um ${home02}.`,
  },

  /* ui/stations/new-shoes/side.ts */
  newShoesSide: {
    newShoes: 'Neue Backen',
    readings: 'Messwerte',
    boreLargestOf3: 'Bohrung, größte von 3',
    acrossTheLinings: 'Über die Beläge',
    clearanceEach: 'Lüftspiel, je Backe',
    partByPartApartTogether: 'Teil für Teil: zerlegen, zusammenbauen, einstellen',
    sixStepsInAnyOrder: 'Sechs Schritte, in beliebiger Reihenfolge',
  },

  /* ui/stations/new-shoes/stage.ts */
  newShoesStage: {
    frontShoe: 'Vordere Backe',
    rearShoe: 'Hintere Backe',
    jaw: (side: number) => `Schenkel ${side}`,
    overTheLinings: 'über die Beläge',
  },

  /* ui/stations/new-shoes/words.ts */
  newShoesWords: {
    stepNames: {
      1: 'Richtige Teile',
      2: 'Zurückstellen',
      3: 'Zentrieren',
      4: 'Mit Lehre voreinstellen',
      5: 'Trommel drauf, treten',
      6: 'Seilzug zuletzt',
    },
    thought: {
      1: 'Eine verschlissene Trommel ist größer als das Maß, für das die Beläge geschliffen sind. Messen Sie zuerst die Trommel.',
      2: 'Die Druckstange steht noch für verschlissene Beläge. Alte Länge plus neuer Belag geht nicht drauf.',
      3: 'Das Paar kann auf seinen Bolzen außer der Mitte stehen. Schieben Sie es, bis beide Seiten gleich sind.',
      4: 'Eine verschlissene Trommel behält ihren alten Grat. Die Hand fühlt den Grat; der Belag arbeitet an der Fläche dahinter. Also messen, nicht fühlen.',
      5: 'Jeder Tritt nimmt auf, was noch übrig ist. Treten Sie, bis nichts mehr klickt.',
      6: 'Die Backen bestimmen den Spalt, der Bremshebel liegt auf seinem Anschlag, und erst dann kommt der Seilzug.',
    },
    aWornBrakeItsDrum: (bore: string, born: string, named: string) =>
      `Eine verschlissene Bremse: Ihre Trommel liegt ${bore} über dem Neumaß ${born}, und ihre alten Beläge haben sie bei ${named} zurückgelassen. Messen Sie zuerst Ihre eigene.`,
    itsOldLiningsLeftThe: (named: string) =>
      `Ihre alten Beläge haben die Druckstange lang zurückgelassen, bei ${named}.`,
    setBackFirst: 'Erst zurückstellen.',
    notWithTheseParts: 'Nicht mit diesen Teilen.',
    notYetTheStrutIs: (by: string) =>
      `Noch nicht: Die Druckstange steht noch für verschlissene Beläge, und die Backen stehen ${by} weiter als die Bohrung. Erst zurückstellen.`,
    notWithThesePartsEven: (by: string) =>
      `Nicht mit diesen Teilen: Selbst bei ganz zurückgestellter Druckstange stehen die Backen ${by} weiter als die Bohrung.`,
    boreLiningsThickAndGround: (bore: string, thickness: string, ground: string) =>
      `Bohrung ${bore}, Beläge ${thickness} dick und geschliffen für ${ground}: Liegen sie an?`,
    itStandsAtAsFar: (named: string, back: string) =>
      `Die Druckstange steht bei ${named}. ${back}, so weit es geht, bevor die neuen Backen hineinkommen.`,
    thePairStandsTowardsThe: (aside: string) =>
      `Das Paar steht um ${aside} nach vorn versetzt. Klopfen Sie es hinüber, bis beide Seiten gleich sind.`,
    bothSidesAreEven: 'Beide Seiten sind gleich.',
    measureTheBoreSetThe: (bore: string, difference: string) =>
      `Messen Sie die Bohrung: ${bore}. Stellen Sie die Backen ${difference} kleiner ein, in der Mitte der Beläge.`,
    silentNothingIsLeftOver: 'Still: Nichts ist mehr übrig.',
    pressAndReleaseAndCount: 'Treten und loslassen und die Klicks zählen.',
    slideTheDrumOnWithout: 'Schieben Sie die Trommel ohne Kraft auf.',
    theLeverHangsMmOff: (heldoff: number) =>
      `Der Bremshebel hängt ${heldoff} mm vor seinem Anschlag: Der Seilzug stellt die Backen.`,
    leverHomeOnItsStop:
      'Erst den Bremshebel ganz auf seinen Anschlag, dann den Seilzug nachstellen.',
    overBy: (ceil: string) => `um ${ceil} zu viel`,
    under001ASide: 'unter 0,01 je Seite',
    aSide: (left: string) => `${left} je Seite`,
  },

  /* ui/stations/order/bedding.ts */
  orderBedding: {
    someKmBringSoDo: (hardKm: string, share: string, many: number) =>
      `Etwa ${hardKm} km bringen ${share} %; ebenso ${many} harte Bremsungen aus 80 km/h.`,
  },

  /* ui/stations/order/charts.ts */
  orderCharts: {
    drumCTenFrom50: 'Trommel, °C: zehnmal von 50 auf 10 km/h, dazwischen 90 s',
    drumAfterEachOfTen: (rows: string) => `Trommel nach jeder von zehn Verzögerungen: ${rows} °C`,
    shareThatBearsOverKm: 'Anteil, der trägt, %, über gefahrene km',
    leadingArcThatBears: (rows: string) => `Auflaufender Bogen, der trägt: ${rows}`,
    of10Stops: '10 Bremsungen',
    of200HardStops: '200 harte Bremsungen',
    leadingSolid: 'auflaufend, durchgezogen',
    trailingDashed: 'ablaufend, gestrichelt',
    of10Stops2: (km: string) => `${km} (10 Bremsungen)`,
    of200Hard: (km: string) => `${km} (200 harte)`,
    leadingTrailing: 'auflaufend / ablaufend, %',
    nMAt40Bar: 'N·m bei 40 bar',
    pedalMm: 'Pedal, mm',
    beddingIn: 'Einlaufen',
  },

  /* ui/stations/order/index.ts */
  order: {
    thisStep: 'Dieser Schritt',
    trueScaleWhatIsOff: 'Maßstäblich · was ab ist, ist nicht gezeichnet, die Trommel gestrichelt',
    trueScaleDrumOn: 'Maßstäblich · Trommel montiert',
  },

  /* ui/stations/order/on-paper.ts */
  orderOnPaper: {
    withWord: 'Mit',
    mayFly: 'Kann wegfliegen',
    wayRound: 'Einbaulage',
    takingApartInOrder: 'Zerlegen, der Reihe nach',
    puttingTogetherInOrder: 'Zusammenbauen, der Reihe nach',
    pageOf: (i: number, length: number) => ` Seite ${i} von ${length}.`,
    tickWhatWasLookedAt: (title: string, pageOf: string) =>
      `${title}. Haken Sie ab, was angesehen wurde.${pageOf}`,
  },

  /* ui/stations/order/orders.ts */
  orderOrders: {
    names: {
      right: 'Lehre, Tritte, Seilzug zuletzt',
      'cable first': 'Seilzug zuerst',
      'let off': 'Seilzug zuerst, dann gelockert',
      'no presses': 'Keine Lehre, keine Tritte',
      hot: 'Bei heißer Trommel getreten',
    },
    theShoesSetTheGap:
      'Die Backen bestimmen den Spalt; der Seilzug nimmt nur sein eigenes Spiel auf.',
    pressingNeverClicks: 'Treten klickt nie',
    ofTheTeethDropIn: (teeth: number) =>
      `${teeth} der Zähne ${teeth === 1 ? 'fällt' : 'fallen'} ein`,
    theCableMmDrawnUp: (off: string, pressingNever: string) =>
      `Der um ${off} mm angezogene Seilzug hält die Backen außen: ${pressingNever}. Es fühlt sich richtig an.`,
    whatWasHiddenAndThe: (gapAgainst: string, notches: string) =>
      `Was verborgen war: ${gapAgainst}, und der Handhebel hat ${notches} Rasten mehr.`,
    theStrutStillRightBack: (gapAgainst: string) =>
      `Die Druckstange noch ganz zurückgestellt: ${gapAgainst}.`,
    tooth: 'Zahn',
    teeth: 'Zähne',
    tooMany: (teeth: number, tooth: string) => `${teeth} ${tooth} zu viel, `,
    noToothMoreHere: 'hier kein Zahn mehr, ',
    itDrags: 'sie schleift',
    onlyIsLeft: (gap: string) => `nur ${gap} bleibt`,
    atCTheDrumIs: (hotdrum: number, tooMany: string, itDrags: string) =>
      `Bei ${hotdrum} °C ist die Trommel größer: ${tooMany}${itDrags}, sobald sie kalt ist.`,
    theGapIsTheSame: 'der Spalt ist derselbe',
    aGapOfWhereIs: (gap: string, gap2: string) => `ein Spalt von ${gap}, wo ${gap2} richtig ist`,
    otherOrdersWorkedThrough: 'Andere Reihenfolgen, durchgerechnet',
    order: 'Reihenfolge',
    gapMm: 'Spalt mm',
    pedalMm: 'Pedal mm',
    notches: 'Rasten',
    toTurnN: 'zum Drehen N',
  },

  /* ui/stations/order/plan.ts */
  orderPlan: {
    loadFindLiftPushTry: 'load find lift push try way-out',
    apart: {
      pin: 'before drum picture cable shorten upper clamp hold-front strut hold-rear shoes lower lever plate cylinder',
      abutment:
        'before drum picture cable shorten hold-front hold-rear lower clamp shoes upper lever plate cylinder',
    },
    together: {
      pin: 'clean lever-on lower-on strut-on hold-on toes-in upper-on centre',
      abutment: 'clean lever-on bench-on toes-in lower-on hold-on centre',
    },
    partsGaugeDrumOnSilent: 'parts gauge drum-on silent home cable-last turn',
    stopsFarFirstDriveRefuse: 'stops far first-drive refuse',
  },

  /* ui/stations/order/setting.ts */
  orderSetting: {
    fits: {
      'all along': 'sie liegen überall an',
      crown: 'sie berühren zuerst in der Mitte, schwächer, bis sie eingelaufen sind',
      ends: 'sie berühren zuerst an den Enden: nicht für diese Bohrung',
      toe: 'sie tragen an der Spitze: nicht für diese Bohrung',
      heel: 'sie tragen an der Ferse: nicht für diese Bohrung',
    },
    theSilent: (press: number) => `, der ${press}. Tritt ist still`,
    evenAtTheFirst: ', auch beim ersten Tritt nicht',
    pressAndLetGoUntil: (told: string, theSilent: string) =>
      `Treten und loslassen, bis es still ist: hier ${told}${theSilent}.`,
  },

  /* ui/stations/order/side.ts */
  orderSide: {
    pageNames: {
      back: 'Zurück\u00adstellen',
      apart: 'Zerlegen',
      together: 'Zu\u00adsam\u00admen\u00adbauen',
      set: 'Ein\u00adstellen',
      bed: 'Ein\u00adlaufen',
    },
    lookedAt: 'angesehen',
    partOfTheWork: 'Teil der Arbeit',
    steps: 'Schritte',
    check: 'Prüfen',
    thisOneStandsAtIts: 'Diese steht in ihrer kürzesten Stellung: nichts zurückzustellen.',
    tryAWornBrake: 'Verschlissene Bremse ausprobieren',
    allOfItIsNot: 'alles zusammen reicht nicht',
    comesFree: 'wird frei',
    still: (needText: string) => `frei nach ${needText} mehr`,
    mayFly: 'Kann wegfliegen:',
    goesBack: 'Kommt zurück:',
    whatHoldsIt: (stationNames: string) => `Was hält sie? ${stationNames}`,
    yourSizes: (stationNames: string) => `Ihre Maße: ${stationNames}`,
    inOrder: 'Der Reihe nach',
    thisStep: 'Dieser Schritt',
    controls: 'Bedienung',
    back: 'Zurück',
    next: (word: string, name: string) => `${word}. Weiter: ${name}`,
    stepOf: (at: string, length: number, name: string) => `Schritt ${at} von ${length}: ${name}`,
  },

  /* ui/stations/order/wants.ts */
  orderWants: {
    pageOfInOrder: (page: 'apart' | 'back' | 'bed' | 'set' | 'together') =>
      `Seite von „Der Reihe nach“: ${{ apart: 'Zerlegen', back: 'Zurückstellen', bed: 'Einlaufen', set: 'Einstellen', together: 'Zusammenbauen' }[page]}`,
    stepOf: (placeIn: number, page: 'apart' | 'back' | 'bed' | 'set' | 'together') =>
      `Schritt ${placeIn} von ${{ apart: 'Zerlegen', back: 'Zurückstellen', bed: 'Einlaufen', set: 'Einstellen', together: 'Zusammenbauen' }[page]}`,
    aWornBrakeToTry: 'eine verschlissene Bremse zum Ausprobieren',
    aCheck: 'eine Prüfung',
    back: (back: number) => `${back} zurück`,
  },

  /* ui/stations/order/words-apart.ts */
  orderWordsApart: {
    noPedal: (piston: string) => `${piston} Hängen Sie eine Karte ans Lenkrad.`,
    flies: 'Eine Feder speichert Kraft. Schutzbrille, Gesicht zur Seite, keine Zange am Draht.',
    itHeldTogether: 'Sie hielt, zusammengebaut',
    itHolds: 'Sie hält',
    takesToUnhook: 'Zum Aushängen nötig',
    storesName: 'Speichert',
    itHoldsNow: 'Sie hält jetzt',
    strutIsHeldBy: 'Druckstange wird gehalten mit',
    liftDoes:
      'Die Spitzen nacheinander ein wenig auseinanderdrücken, den Zahnhebel aus seinen Zähnen heben und ganz zurück auf Zahn 0 schieben. Bleibt die Druckstange geklemmt, dies erst nach der oberen Feder tun.',
    thinHookAFlatBlade: 'dünner Haken; eine flache Klinge an der Spitze',
    liftFlies:
      'Der Hebel schnappt in einen Zahn, wenn er losgelassen wird: kein Finger in seinem Fenster.',
    liftBack: 'Die Feder des Hebels: wie ihre Enden liegen.',
    wheelDoes:
      'Zuerst die kleine Feder des Hebels aushängen. Dann das Sternrad drehen, bis die Druckstange am kürzesten ist; die Gewinderichtung notieren und mit Kreide L oder R darauf schreiben.',
    thinHookForTheSpring: 'dünner Haken für die Feder; Finger für das Rad',
    wheelFlies: 'Die kleine Feder, in ihrer eigenen Richtung.',
    wheelBack:
      'Gewinde und Hebel gehören zu dieser Fahrzeugseite: links und rechts sind nicht gleich.',
    wedgeDoes:
      'Notieren, wie weit der Keil herunterhängt: Das zeigt den Verschleiß. Seine Feder aushängen, die Backen zusammendrücken, den Keil nach oben schieben und halten.',
    thinHookForTheSpring2: 'dünner Haken für die Feder; Finger für den Keil',
    wedgeFlies: 'Die Feder des Keils, in ihrer eigenen Richtung.',
    wedgeBack: 'Schmales Ende nach unten, die stufenlose Fläche zur Druckstange, wie im Bild.',
    holdDown: (side: 'front' | 'rear') => `Niederhalter, ${side === 'front' ? 'vorn' : 'hinten'}`,
    aFingerOnThePins:
      'Einen Finger auf den Kopf des Stifts hinter der Ankerplatte. Den Teller eindrücken, eine Vierteldrehung, kommen lassen.',
    cupTurnerOrPliersOn: 'Tellerdreher oder Zange am Tellerrand',
    cupAndSpringStraightOut: 'Teller und Feder, gerade heraus auf Sie zu.',
    checks: [
      'Stift nicht eingeschnürt, sein T heil',
      'Loch in der Ankerplatte nicht länglich ausgeschlagen',
    ],
    pressItInWith: 'Eindrücken mit',
    beforeName: 'Vor allem anderen',
    beforeDoes:
      'Aufschreiben, wie es ist: Pedal bei leichtem und festem Tritt, Rasten, jedes Rad in beide Richtungen, Wärme nach einer Fahrt. Ebener Boden, die Räder der anderen Achse vorn und hinten mit Unterlegkeilen gesichert, Radmuttern angelöst, Wagenheber, beide Stützböcke unter die Punkte des Herstellers; erst dann den Handhebel lösen.',
    chocksJackTwoStandsWheel: 'Unterlegkeile, Wagenheber, zwei Stützböcke, Radschlüssel',
    beforeChecks: [
      'Messwerte aufgeschrieben',
      'Es steht fest, wenn man daran drückt',
      'Dürfen Sie das dort tun, wo Sie leben?',
    ],
    drumName: 'Trommel ab',
    drumDoes:
      'Den Staub anfeuchten, bevor sich die Trommel bewegt, und noch einmal, wenn sie kommt. Schraube, Klammer oder Mutter entfernen, dann gerade abziehen. Bleibt sie sitzen, benennen, was sie hält: „Trommel ab“ nennt die Reihenfolge zum Lösen.',
    lowPressureWashAndTray: 'Niederdruckwäsche und Wanne; Bit für die Schraube',
    drumChecks: [
      'Zu ihrem Radbolzen markiert',
      'Nasses vor dem Waschen gesehen: Staubkappen, Nabe',
    ],
    drumCare: (wear: string) => `${wear} Nie auf den Rand schlagen.`,
    roomAtTheName: 'Platz am Grat',
    pictureName: 'Fünf Bilder, dann waschen',
    pictureDoes:
      'Im ersten ein Maßstab: die ganze Bremse gerade von vorn; Zylinder und obere Feder; Druckstange und Nachsteller schräg; das untere Ende mit Feder, Haken und Seilzug; hinter der Ankerplatte. Mit Kreide F und R und einen Pfeil nach oben auf die Stege. Dann alles nass waschen.',
    cameraChalkSheetToLay: 'Kamera, Kreide, Unterlage für die Teile',
    pictureBack:
      'Das andere Rad bleibt als Muster zusammengebaut. Es ist das Spiegelbild, keine Kopie.',
    pictureChecks: [
      'In welches Loch jede Feder hakt',
      'Wie herum die Druckstange liegt, oben und vorn',
      'Blanke Spuren gesehen, wo Teile reiben',
    ],
    cableName: 'Seilzug locker',
    cableDoes:
      'An seiner Einstellung lockern. Sein Ende vom Haken des Bremshebels nehmen, wenn es leicht kommt; sonst geht es mit der hinteren Backe heraus.',
    pliersOnTheCablesEnd: 'Zange am Ende des Seilzugs, nie am Draht',
    cableFlies: 'Das Ende des Seilzugs, zurück in sein Rohr.',
    cableChecks: [
      'Drähte heil',
      'Er läuft von selbst zurück, wenn man ihn zieht und loslässt',
      'Hebel liegt auf seinem Anschlag',
    ],
    leverOffItsName: 'Hebel vom Anschlag ab',
    shortenName: 'Nachsteller auf kürzeste Stellung',
    shortenChecks: [
      'Zähne und Kanten nicht gerundet',
      'Bewegt sich frei, kommt durch seine Feder zurück',
    ],
    partsAToeFromIt: 'Trennt eine Spitze davon',
    liftsTheLever: 'Hebt den Hebel an',
    upperSpringOnTheBench: 'Obere Feder, auf der Werkbank',
    thePairLiesOnThe:
      'Das Paar liegt auf der Werkbank: zusammenklappen, die obere Feder aushängen und die Druckstange aus ihren Kerben heben.',
    handsAHookedPullerWhere: 'Hände; ein Hakenzieher, wo sie noch spannt',
    littleTheShoesFoldTogether: 'Wenig: Die Backen klappen zusammen, und die Feder wird schlaff.',
    hookSideAndCoilAs: 'Hakenseite und Windung wie in Bild 2; Druckstange wie in Bild 3.',
    checks2: [
      'Abgenommen keine Lücke zwischen den Windungen',
      'Haken nicht dünn geworden, keine Rostnarben',
      'An beiden Rädern gleiche Farbe und Länge',
    ],
    upperReturnSpring: 'Obere Rückzugfeder',
    hookTheToolOnThe:
      'Das Werkzeug am Ende beim hinteren Steg einhaken, die Feder aus ihrem Loch ziehen und langsam zusammengehen lassen. Dann das vordere Ende von Hand.',
    hookedSpringPuller: 'Federzieher mit Haken',
    theFreedHookAlongThe:
      'Der freie Haken, in der Richtung der Feder, zu dem Ende hin, das noch eingehängt ist.',
    endsInTheHolesOf: 'Enden in den Löchern von Bild 2, Windung frei vom Hebel.',
    clampName: 'Klammer auf beide Kolben',
    holdBothPistonsWithA:
      'Beide Kolben mit einem Band halten, bevor die Spitzen sie verlassen, und es dranlassen.',
    atOnceBeforeAnythingElse:
      'Sofort, vor allem anderen: Jetzt hält nur noch die Klammer die Kolben.',
    clampOrBandOverBoth: 'Klammer oder Band über beide Kolben',
    clampFlies: 'Ein Kolben, herausgedrückt von der Feder zwischen den Manschetten.',
    clampChecks: ['Staubkappen heil', 'Rand der Staubkappe angehoben: keine Tropfen dahinter'],
    leftToAName: 'Bis ein Kolben herausläuft, bleiben',
    strutName: 'Druckstange und Nachsteller',
    strutDoes:
      'Zuerst die eigene Feder der Druckstange, dann Druckstange und Nachsteller zusammen aus beiden Kerben.',
    handThinHookForThe: 'Hand; dünner Haken für die kleine Feder',
    strutFlies: 'Die Druckstange fällt, wenn sich die vordere Backe bewegt.',
    strutBack: 'Was oben und was vorn ist: Bild 3. Sie gehört zu dieser Fahrzeugseite.',
    strutChecks: [
      'Enden und Kerben scharfkantig, nicht hohl verschlissen',
      'Nachsteller gleitet und hält',
      'Spiel in seinem Langloch wie am anderen Rad',
    ],
    bothShoesOffAsOne: 'Beide Backen ab, zusammen',
    shoesOffTheirPins: 'Backen von ihren Bolzen',
    drawTheToesOutOf:
      'Die Spitzen aus den Kolben ziehen und beide Backen als Ganzes über die Nabe heben, mit Druckstange und oberer Feder dazwischen. Der Seilzug kommt jetzt von seinem Haken.',
    swingTheToesTowardsEach:
      'Die Spitzen zueinander schwenken und die Fersen von ihren Bolzen heben; klappen, nicht hebeln. Der Seilzug kommt jetzt von seinem Haken.',
    shoesFlies: 'Die Spitzen schlagen zusammen: Finger aus dem Spalt.',
    shoesBack: 'Vordere Backe nach vorn: Die Kreide sagt, welche.',
    heelsRoundsAndTheFlats: 'Rundungen der Fersen und die Flächen ohne Stufe',
    liningsThinnestPlaceWetLoose: 'Beläge: dünnste Stelle, nass, lose',
    eyesNotOvalPinsNot: 'Augen nicht unrund, Bolzen ohne Stufe',
    shoesCare: 'Saubere Hände für die Beläge, oder Klebeband darüber. Kein Fett, kein Öl.',
    lowerEndsOutLowerSpring: 'Untere Enden heraus, untere Feder',
    swingOneHeelOutOf:
      'Eine Ferse aus ihrer Fläche schwenken, dann die andere: Die Feder wird schlaff, wenn sie zusammenkommen. Aushängen.',
    flatLeverAgainstTheAnchor: 'flacher Hebel gegen den Widerlagerblock, Hände',
    aHeelThatSlipsBack: 'Eine Ferse, die zurückrutscht: Finger weg von den Flächen.',
    hooksAsInPicture4: 'Haken wie in Bild 4.',
    checks3: ['Abgenommen keine Lücke zwischen den Windungen', 'Haken nicht dünn geworden'],
    lowerSpringOnTheBench: 'Untere Feder, auf der Werkbank',
    withTheShoesFoldedTogether:
      'Bei zusammengeklappten Backen hängt sie schlaff: von Hand aushängen.',
    handsElseThePuller: 'Hände; sonst der Federzieher',
    littleIsLeftInIt: 'Wenig ist noch in ihr.',
    leverName: 'Bremshebel von seiner Backe',
    leverDoes:
      'Auf der Werkbank: die Klammer vom Bolzen; Hebel, Klammer und Scheibe der Reihe nach ablegen.',
    clipToolANewClip: 'Klammerwerkzeug; eine neue Klammer',
    leverFlies: 'Die Klammer.',
    leverBack: 'Scheibe auf die Seite, auf der sie lag; der Anschlag des Hebels zum Steg hin.',
    leverChecks: [
      'Schwingt durch sein eigenes Gewicht',
      'Anschlag und Kerbe nicht eingedrückt: Der Anschlag bestimmt, wo die Backen ruhen',
    ],
    plateName: 'Ankerplatte',
    plateDoes:
      'Nass abwischen. Ein Haarlineal über die sechs Auflagen; den Fingernagel quer über jede.',
    plateChecks: [
      'Keine Rille in einer Auflage: Bei einer Rille wird erneuert, nicht gefettet',
      'Löcher der Stifte rund',
      'Keine Durchrostung',
    ],
    cylinderName: 'Zylinder, und die Teile nebeneinander',
    cylinderDoes:
      'Die Staubkappen nur am Rand anheben. Dann alte und neue Teile nebeneinanderlegen: Löcher, seitengebundene Stege, wo der Bogen sitzt, Federlängen.',
    bluntToolRuleLiningGauge: 'stumpfes Werkzeug; Maßstab, Belaglehre',
    cylinderChecks: [
      'Keine Tropfen hinter den Staubkappen',
      'Kolben gehen gleich hinein und kommen gleich zurück',
      'Was ungleich ist, ist falsch oder von der anderen Seite',
    ],
    cylinderDone: 'Alles zerlegt: zum Prüfen',
  },

  /* ui/stations/order/words-back.ts */
  orderWordsBack: {
    lift: {
      lift: 'Zuerst den Zahnhebel gegen seine Feder aus seinen Zähnen heben und angehoben halten.',
      push: 'Angehoben halten und zurück Richtung Zahn 0 schieben. Angehoben gleitet er frei, ohne Rasten; losgelassen fällt er mit einem Ticken ein.',
      felt: 'Ein federndes Anheben um etwa eine Zahnhöhe, dann hält nichts mehr.',
      wrong:
        'Sofort strammer und schwerer anzuheben: Es ging in die falsche Richtung, oder die Druckstange steht unter Last. Aufhören; mehr Kraft bricht die Kante des Hebels.',
    },
    wheel: {
      lift: 'Zuerst den kleinen Hebel vom Rad weghalten, mit einem Haken neben der Klinge.',
      push: 'Das Sternrad zurückdrehen, während sein Hebel weggehalten wird. Mit anliegendem Hebel klickt es nur in einer Richtung: Die macht länger. Die Richtung, in der es hart stehen bleibt, macht kürzer, mit weggehaltenem Hebel.',
      felt: 'Der Hebel gibt nach wie eine Blattfeder; das Rad dreht dann in beide Richtungen.',
      wrong: 'Es klickt: Es wird länger. Es steht hart: Der Hebel liegt noch an.',
    },
    wedge: {
      lift: 'Es gibt keinen Hebel anzuheben: Tasten Sie nach dem unteren Ende des Keils.',
      push: 'Den Keil gegen seine Feder nach oben schieben, halten und die Backen hineindrücken.',
      felt: 'Stufenlos, weich; beim nächsten Tritt aufs Pedal sinkt er wieder.',
      wrong:
        'Er bewegt sich nicht: Die Backen sind nicht hineingedrückt, oder es ist noch Druck da.',
    },
    clearanceEachLiningName: 'Lüftspiel, jeder Belag',
    roomAtTheName: 'Platz am Grat',
    notchesName: 'Rasten',
    loadName: 'Seilzug und Druck entlasten',
    loadDoes:
      'Handhebel unten, Seilzug an seiner Einstellung locker. Die Entlüftung ein wenig öffnen, wenn das Rad noch schleift, mit einem Schlauch darauf in ein Glas. Ein belasteter Zahn lässt plötzlich los.',
    spannerAtTheCableFlare: 'Schlüssel am Seilzug; Leitungsschlüssel, Schlauch, Glas',
    loadChecks: ['Hebel auf seinem Anschlag', 'Rad dreht nicht schwerer als vorher'],
    strutIsHeldName: 'Druckstange wird gehalten mit',
    findName: 'Das Loch finden',
    findDoes:
      'Ein Stopfen in der Ankerplatte oder ein Loch in der Stirnseite der Trommel, das über den Nachsteller gedreht wird. Von hinter der Ankerplatte ist alles noch einmal gespiegelt; am anderen Rad ebenso.',
    torchThinHookFlatBlade: 'Lampe, dünner Haken, flache Klinge',
    youSeeOrFeelThe: 'Sie sehen oder fühlen das Teil, das Sie bewegen wollen',
    findCare:
      'Eine vorgestanzte Stelle wird nur geöffnet, wo der Hersteller sie bezeichnet hat; das ausgeschlagene Stück kommt aus der Trommel heraus, und ein Stopfen verschließt sie.',
    liftName: 'Zuerst anheben',
    thinHookFlatBlade: 'dünner Haken, flache Klinge',
    itLiftsWithThatMuch: 'Es hebt sich mit so viel Kraft und nicht mehr',
    toLiftItName: 'Zum Anheben, am Zahn',
    ofItItsName: 'davon seine Feder',
    ofItTheName: 'davon der belastete Zahn',
    pushName: 'Dann zurück, jedes Mal ein wenig',
    hookHoldsBladePushes: 'Haken hält, Klinge schiebt',
    eachOneCountedToSet: 'Jeden gezählt, um das Rad wieder so einzustellen, wie es war',
    tryName: 'Nach jedem die Trommel probieren',
    pressItHomeTurnIt:
      'Ganz andrücken, drehen, gerade abziehen. Hier reicht auch alles zusammen nicht: Etwas anderes hält sie. Benennen Sie es in „Trommel ab“.',
    pressItHomeTurnIt2:
      'Ganz andrücken, drehen, gerade abziehen. Hier ist sie frei, wie sie steht.',
    pressItHomeTurnIt3: (needText: string) =>
      `Ganz andrücken, drehen, gerade abziehen. Hier wird sie nach ${needText} Rückstellung frei.`,
    handsBothEdgesOfThe: 'Hände, an beiden Rändern der Trommel',
    triedThreeTimesAndStill:
      'Dreimal probiert und immer noch fest: aufhören, eine andere Sperre benennen',
    tryCare: (split: string) => `Finger aus dem Spalt. ${split}`,
    wayOutName: 'Kein Loch oder kein Glück: andere Wege',
    wayOutDoes:
      'In dieser Reihenfolge, nach jedem die Trommel probiert. Was jeder kostet, steht daneben.',
    seeEach: 'siehe jeden',
    wayOutCare:
      'Aufhören, wenn sich etwas verbiegt oder reißt, wenn Flüssigkeit läuft, wenn sich das Fahrzeug bewegt. Dann eine Werkstatt, mit einer Notiz, was versucht wurde.',
    wayOutDone: 'Sie ist ab: zerlegen',
    lookForAPressedIn:
      'Nach einem eingepressten Stopfen suchen, einem Gummistopfen in der Stirnseite der Trommel, einer bezeichneten vorgestanzten Stelle.',
    costsNothing: 'Kostet nichts.',
    twoScrewsByTurnsIn:
      'Zwei Schrauben abwechselnd in die eigenen Gewinde der Trommel, jedes Mal ein wenig.',
    atTheLipThisPulls: (pull: string, onShoe: string, givesFirst: string, givesAt: string) =>
      `Am Grat zieht das über Belag und Stifte der Niederhalter, nicht an der Nabe: Die ${pull} eines Abziehers sind ${onShoe} je Backe; zuerst gibt ${givesFirst === 'lining edge' ? 'die Belagkante' : givesFirst === 'hold-down pin' ? 'der Niederhalterstift' : givesFirst} nach, bei etwa ${givesAt} (Festigkeiten: nur die Größenordnung).`,
    rightForRustAtThe:
      'Richtig bei Rost an der Nabe. Wo ein Grat hält, zieht es über Beläge und Stifte der Niederhalter.',
    theCylindersTwoBoltsOut:
      'Die zwei Schrauben des Zylinders von hinten heraus, wo er herunterfallen kann.',
    thePipeMayBreakThen: 'Die Leitung kann brechen; dann wird entlüftet.',
    cutTheHeadsOfThe:
      'Die Köpfe der Niederhalterstifte hinter der Ankerplatte abtrennen und alles zusammen abziehen.',
    pinsSpringsMostlyLiningsSprings:
      'Stifte, Federn, meist die Beläge. Innen fliegen Federn: Schutzbrille.',
    drillAHoleWhereThis: 'Ein Loch bohren, wo diese Bauart eines hat.',
    onlyByTheMakersDrawing: 'Nur nach Zeichnung des Herstellers: hier nicht empfohlen.',
    cutTheDrum: 'Die Trommel aufschneiden.',
    theDrumIsLostFor: 'Die Trommel ist verloren. Etwas für eine Werkstatt.',
  },

  /* ui/stations/order/words-set.ts */
  orderWordsSet: {
    partsName: 'Richtige Teile, beide Räder',
    boreLiningsThickAndGround: (
      bore: string,
      thickness: string,
      ground: string,
      fitWords: string,
    ) =>
      `Bohrung ${bore}, Beläge ${thickness} dick und geschliffen für ${ground}: ${fitWords}. Ihre eigenen Maße tragen Sie in „Neue Backen“ ein.`,
    drumGaugeRule: 'Trommellehre, Maßstab',
    partsChecks: ['Trommel in drei Winkeln gemessen', 'Beide Räder der Achse gleich'],
    partsCare:
      'Grenzen und Lüftspiele sind die des Fahrzeugherstellers. Diese hier gehören zur Lehrbremse.',
    gaugeName: 'Nach der Lehre einstellen',
    cableSlackMeasureTheBore: (difference: string, toothName: string) =>
      `Seilzug locker. Die Bohrung in ihrer Laufspur messen, die Backen in der Mitte der Beläge ${difference} mm kleiner einstellen: ${toothName}.`,
    shoeSettingGauge: 'Backeneinstelllehre',
    gaugeSlidesOverBothLinings: 'Lehre gleitet über beide Beläge gleich',
    smallerThanTheName: 'Kleiner als die Bohrung um',
    gapOfEachName: 'Spalt jedes Belags',
    roomAtTheName: 'Platz am Grat',
    drumOnName: 'Trommel drauf, drehen',
    drumOnDoes:
      'Beide Flächen des Flanschs blank und trocken. Gerade aufschieben, nie aufschlagen; Schraube oder Mutter, wie der Hersteller es sagt. Das andere Rad bis hierher. Jetzt ist das Pedal wieder erlaubt.',
    drumOnChecks: ['Sie gleitet ohne Kraft auf', 'Sie dreht frei oder schleift nur ganz leicht'],
    silentName: 'Treten, bis es still ist',
    oneListensAtEachWheel: (pressText: string) =>
      `An jedem Rad hört jemand: Handhebel ganz unten, Trommel kalt. ${pressText} Getreten bei einem Hebel, der nicht auf seinem Anschlag liegt, rückt es zu wenig weiter; bei heißer Trommel zu weit.`,
    aFootAndAnEar: 'ein Fuß und an jedem Rad ein Ohr',
    silentAtBothWheels: 'Still an beiden Rädern',
    silentCare: 'Nie bei heißer Trommel: Es rückt einen Zahn zu weit.',
    pressesUntilSilentName: 'Tritte, bis es still ist',
    gapThenEachName: 'Spalt danach, je Backe',
    pedalThenName: 'Pedal danach',
    homeName: 'Hebel an beiden Rädern auf Anschlag',
    homeDoes:
      'Schauen Sie nach: Der Bremshebel liegt bei heruntergelassenem Handhebel auf seinem Anschlag, an beiden Rädern.',
    torchThroughTheHole: 'Lampe, durch das Loch',
    homeChecks: ['Links auf seinem Anschlag', 'Rechts auf seinem Anschlag'],
    homeCare:
      'Ein Hebel, der nicht auf seinem Anschlag liegt, stellt die Backen anstelle des Nachstellers: Der klickt nicht mehr, dann wird der Pedalweg lang.',
    cableLastName: 'Seilzug zuletzt',
    slackJustGoneBothLevers: (notches: string) =>
      `Spiel gerade weg, beide Hebel noch auf ihren Anschlägen. Dann Rasten bei festem Zug zählen: hier ${notches} bei 300 N in jedem Seilzug. Für Ihre gilt die Zahl des Herstellers.`,
    spannerAtTheCablesNut: 'Schlüssel an der Mutter des Seilzugs',
    cableLastChecks: ['Rasten, wie der Hersteller sagt', 'Räder bei 0 Rasten wieder frei'],
    notchesAt300Name: 'Rasten bei 300 N',
    turnName: 'Von Hand drehen: wie schwer ist richtig',
    atTheTyreUnderN: (felt: string, stiff: string) =>
      `Am Reifen: Unter ${felt} N ist frei, über ${stiff} N ist falsch, noch einmal nachsehen. Dazwischen schleift es: Einmal getreten und losgelassen, darf es nicht so bleiben.`,
    aHandAtTheTyre: 'eine Hand am Reifen oder eine Federwaage',
    turnChecks: ['In beide Richtungen gleich', 'Beide Räder gleich'],
    freeUnderName: 'Frei: unter',
    wrongOverName: 'Falsch: über',
    hereForwardName: 'Hier, vorwärts / rückwärts',
    turnDone: 'Eingestellt: zum Einlaufen',
    stopsName: 'Zehn mäßige Bremsungen',
    tenSlowDownsFrom50: (rise: string, warmest: string) =>
      `Zehn Bremsungen von 50 auf 10 km/h, nicht bis zum Stand, dazwischen eineinhalb Minuten Fahrt. Jede erwärmt die Trommel um ${rise} K; nach zehn steht sie bei ${warmest} °C, und nicht höher. Sie säubern die Flächen und zeigen, ob die Bremse zieht.`,
    anEmptyLevelRoad: 'eine leere, ebene Straße',
    stopsChecks: [
      'Geradeaus bei lockerer Hand, leicht und fest gebremst',
      'Kein Geruch außer einem schwachen nach Farbe oder neuem Harz',
    ],
    farName: 'Dann sanft fahren',
    tenSlowDownsBedNothing: (tenKm: string, share: string, share2: string, farText: string) =>
      `Zehn Bremsungen lassen nichts einlaufen: Sie sind ${tenKm} km wert, ${share} % des auflaufenden Bogens tragen vorher und ${share2} % nachher. ${farText} Einige hundert km lang nicht härter als nötig, keine Gefälle, keine Last, Handhebel nicht bei heißer Trommel ziehen.`,
    farChecks: [
      'Nach 100 km: Muttern mit dem Moment des Herstellers, Rasten, Wärme links und rechts',
      'Nach 1 000 km: dasselbe; ein Klick kann gekommen sein',
    ],
    firstDriveName: 'Erste Fahrt',
    firstDriveDoes:
      'Bevor es sich bewegt: Pedal bei zehn Tritten fest und sinkt nicht, Handhebel hält beim Anschieben, Flüssigkeitsstand, nichts nass, Räder mit Moment angezogen. Schritttempo auf ebenem, leerem Gelände; dann 30 km/h; dann eine Straße. Zurück: beide Trommeln gleich warm für den Handrücken in ihrer Nähe.',
    levelEmptyGround: 'ebenes, leeres Gelände',
    firstDriveChecks: [
      'Pedal fest, sinkt nicht',
      'Handhebel allein hält bei Schritttempo',
      'Kein Geruch, Räder danach frei',
    ],
    refuseName: 'Es fährt nicht',
    refuseDoes:
      'Solange das Pedal sinkt oder den Boden erreicht, etwas leckt, Trommel, Backe, Ankerplatte oder Stift gerissen ist, ein Belag lose oder unter einer Grenze ist, ein Teil fehlt oder von der anderen Seite ist, die Räder der Achse nicht gleich sind, ein Rad nicht frei ist, eine Angabe des Herstellers nicht bekannt ist. Es wird auf einem Anhänger bewegt.',
    aTrailer: 'ein Anhänger',
    noneOfTheseHolds: 'Nichts davon trifft zu',
    refuseDone: 'Messwerte aufs Blatt: Prüfen',
  },

  /* ui/stations/order/words-together.ts */
  orderWordsTogether: {
    flies: 'Eine Feder speichert Kraft. Schutzbrille, Gesicht zur Seite, keine Zange am Draht.',
    strutHow: {
      lift: 'Nachsteller auf kürzeste Stellung, der Zahnhebel unter seiner Feder: anheben, loslassen, er tickt.',
      wheel:
        'Gewinde ganz eingedreht, ein Film Fett auf dem Gewinde; die Feder des Hebels zuletzt einhängen. Teile dieser Seite, L oder R.',
      wedge: 'Keil ganz nach oben geschoben und gehalten; seine Feder zuletzt einhängen.',
    },
    willHoldName: 'Wird halten',
    cleanName: 'Ankerplatte sauber, dünn Fett',
    theFlats: 'die Flächen',
    thePins: 'die Bolzen',
    cleanDoes: (theFlats: string) =>
      `Trocken und sauber. Ein dünner Film Hochtemperatur-Bremsenfett auf die sechs Auflagen, ${theFlats}, den Drehpunkt des Hebels. Nie auf Belag, Trommel oder Manschetten; auf Zähne nicht mehr als einen Film.`,
    cleanRagHighTemperatureBrake: 'sauberer Lappen, Hochtemperatur-Bremsenfett',
    cleanChecks: [
      'Federn neu oder an beiden Rädern gleich',
      'Neue Teile neben die alten gelegt: die richtigen',
    ],
    leverOnName: 'Bremshebel an seine Backe',
    leverOnDoes: 'Bolzen, Scheibe auf ihrer Seite, eine neue Klammer.',
    clipTool: 'Klammerwerkzeug',
    leverOnBack: 'Der Anschlag des Hebels zum Steg hin.',
    leverOnChecks: ['Er schwingt durch sein eigenes Gewicht', 'Er liegt auf seinem Anschlag'],
    lowerOnName: 'Untere Feder, Backen auf ihre Bolzen',
    lowerOnDoes:
      'Die untere Feder in beide Backen einhängen, solange sie zusammengeklappt sind, Seilzug auf seinen Haken, dann die Fersen über ihre Bolzen und die Spitzen auseinander.',
    lowerOnFlies: 'Die Backen schlagen zusammen: Finger aus dem Spalt.',
    lowerOnBack: 'Vordere Backe nach vorn, Haken wie in Bild 4.',
    lowerOnChecks: ['Beide Fersen sitzen', 'Ende des Seilzugs sitzt auf seinem Haken'],
    strutOnName: 'Druckstange und Nachsteller',
    strutOnDoes: (strutHow: string) => `Beide Enden ganz in ihren Kerben. ${strutHow}`,
    handThinHookForThe: 'Hand; dünner Haken für die kleine Feder',
    strutOnBack: 'Was vorn und was oben ist: Bild 3.',
    strutOnChecks: [
      'Beide Enden sitzen: eines, das auf dem Steg reitet, lässt die Trommel klemmen',
      'Nachsteller auf kürzester Stellung',
    ],
    benchOnName: 'Auf der Werkbank: Druckstange, obere Feder',
    benchOnDoes: (strutHow: string) =>
      `Beide Backen auf die Werkbank legen, Druckstange in ihre Kerben, obere Feder in beide Stege einhängen. ${strutHow}`,
    hookedSpringPuller: 'Federzieher mit Haken',
    benchOnBack: 'Bilder 2 und 3; Seilzug auf seinen Haken, bevor das Paar über die Nabe geht.',
    benchOnChecks: ['Beide Enden der Druckstange sitzen', 'Nachsteller auf kürzester Stellung'],
    holdOnName: 'Niederhalter, beide',
    holdOnDoes:
      'Stift von hinten, Feder und Teller, eindrücken und eine Vierteldrehung, bis sein T quer liegt. Daran ziehen.',
    cupTurnerAFingerOn: 'Tellerdreher, ein Finger auf dem Kopf des Stifts',
    holdOnFlies: 'Teller und Feder, gerade heraus.',
    holdOnChecks: [
      'T liegt in beiden Tellern quer',
      'Beide Backen liegen auf allen ihren Auflagen',
    ],
    pressItInName: 'Eindrücken mit',
    pairOverTheHubToes: 'Paar über die Nabe, Spitzen hinein',
    clampOffToesIn: 'Klammer ab, Spitzen hinein',
    bothShoesOverTheHub:
      'Beide Backen als Ganzes über die Nabe, Spitzen in die Schlitze der Kolben, und erst dann die Klammer ab.',
    toesIntoThePistonsSlots: 'Spitzen in die Schlitze der Kolben, dann die Klammer ab.',
    handsTheClampStaysUntil: 'Hände; die Klammer bleibt, bis beide Spitzen sitzen',
    toesInFlies: 'Ein Kolben, solange nichts ihn hält.',
    toesInChecks: ['Staubkappen nicht eingeklemmt', 'Spitzen ganz in ihren Schlitzen'],
    upperOnName: 'Obere Feder, zuletzt',
    upperOnDoes:
      'Das vordere Ende von Hand, dann das hintere mit dem Werkzeug über sein Loch ziehen und einlassen.',
    springSeaterOrTheHooked: 'Federsetzer oder der Federzieher mit Haken',
    upperOnFlies: 'Der gezogene Haken, in der Richtung der Feder.',
    upperOnBack: 'Zwei Enden wie in Bild 2, in beiden Löchern ganz unten.',
    upperOnChecks: ['Sitzt in beiden Löchern', 'Windung frei von den gezahnten Teilen'],
    centreName: 'Das Paar zentrieren',
    centreDoes:
      'Das Paar auf der Ankerplatte hin und her schieben, bis beide Beläge gleich weit vom Rand der Platte stehen.',
    handsRule: 'Hände, Maßstab',
    centreChecks: ['Kanten rundum gleich', 'Anderes Rad auch bis hierher gebracht'],
    centreCare: (piston: string) => `${piston} Nicht, bevor beide Trommeln drauf sind.`,
    strutIsHeldName: 'Druckstange wird gehalten mit',
    centreDone: 'Zusammengebaut: zum Einstellen',
  },

  /* ui/stations/own/desk.ts */
  ownDesk: {
    notMade: 'Nicht angelegt.',
    drumDiameterFoundAllowed: (found: string, allowed: string) =>
      `Trommel-Ø: gefunden ${found}; erlaubt: ${allowed}`,
    title: (length: number) => `Meine Bremse ${length}`,
    wasNotTakenNothingElse: (fileName: string, other: string) =>
      `${fileName} wurde nicht übernommen; sonst ist nichts verändert. ${other}`,
    wasNotTakenNothingElse2: (fileName: string) =>
      `${fileName} wurde nicht übernommen; sonst ist nichts verändert.`,
  },

  /* ui/stations/own/dimension.ts */
  ownDimension: {
    to: (i: number) => `to ${i}`,
    head: (i: number) => `head ${i}`,
    was: (i: number) => `was ${i}`,
    dashedItWas: (was: string) => `gestrichelt: vorher ${was}`,
  },

  /* ui/stations/own/fields.ts */
  ownFields: {
    ownNames: {
      drumNew: 'Trommel-Ø, neu',
      drumMax: 'Trommel-Ø, größter erlaubter',
      liningWidth: 'Belag, Breite',
      liningNew: 'Belag, Dicke neu',
      liningMin: 'Belag, Mindestdicke',
      liningArc: 'Belag, Länge am Bogen',
      friction: 'Belag, Reibwert oder seine zwei Buchstaben',
      pinsApart: 'Abstand der Fersen',
      pinBelow: 'Fersen unter der Achse',
      toeHeight: 'Zylinder über der Achse',
      strutHeight: 'Druckstange über der Achse',
      bore: 'Radzylinder, Bohrung',
      stroke: 'Kolbenhub bis zum Austreten',
      masterBore: 'Hauptzylinder, Bohrung',
      pedalRatio: 'Pedalübersetzung',
      freePlay: 'Spiel am Stößel',
      strutLength: 'Druckstange, kürzeste Länge',
      lostMotion: 'Spiel im Schlitz',
      teeth: 'Zähne oder Schritte',
      upperForce: 'Obere Feder, Zug eingebaut',
      upperRate: 'Obere Feder, Federrate',
      lowerForce: 'Untere Feder, Zug eingebaut',
      lowerRate: 'Untere Feder, Federrate',
      leverNotch: 'Bremshebel, Drehpunkt bis Kerbe der Druckstange',
      leverHook: 'Bremshebel, Drehpunkt bis Seilhaken',
      perNotch: 'Seilweg für eine Raste',
      tyre: 'Reifenhalbmesser, belastet',
      mass: 'Fahrzeug, Masse',
    },
    foundNames: {
      drumNow: 'Trommel-Ø jetzt, größter',
      leading: 'Auflaufender Belag jetzt, dünnste Stelle',
      trailing: 'Ablaufender Belag jetzt, dünnste Stelle',
      tooth: 'Nachsteller steht auf Zahn',
      notches: 'Handbremse, Rasten',
      pedal: 'Pedalweg, fest getreten',
    },
  },

  /* ui/stations/own/found-fields.ts */
  ownFoundFields: {
    insideCaliperInTheSwept:
      'Innentaster in der Laufbahn, unter drei Winkeln: der größte Wert. Nicht am Grat.',
    theShoeTowardsTheFront:
      'Die Backe, die am Fahrzeug vorn liegt. Über den ganzen Bogen, ohne den Stahlkranz.',
    theOtherShoeOfThe: 'Die andere Backe desselben Rads, ebenso.',
    countThoseItHasPassed:
      'Die schon übersprungenen zählen, vom kürzesten Stand an; Schritte einer Schraube oder eines Keils ebenso.',
    clicksToAFirmHold: 'Rasten bis zum festen Halt, bevor etwas angefasst wird.',
    ruleBesideThePedalPumped:
      'Maßstab neben dem Pedal, vorher zweimal gepumpt: von oben bis fest. Trommeln aufgesetzt.',
  },

  /* ui/stations/own/measures.ts */
  ownMeasures: {
    drumAndLiningsName: 'Trommel und Beläge',
    atTheUnwornEdgeOutside:
      'Am unverschlissenen Rand außerhalb des Grats, mit dem Innentaster; oder aus der Teileliste.',
    castOnTheDrumOften: 'In die Trommel eingegossen, oft „max dia“.',
    acrossTheShoeWithA: 'Quer über die Backe mit dem Stahlmaßstab.',
    onANewShoeLining: 'An einer neuen Backe, nur der Belag, ohne den Stahlkranz.',
    theMakersFigureDownTo:
      'Die Angabe des Herstellers; bei genietetem Belag bis zu den Nietköpfen.',
    paperStripAlongTheRubbing:
      'Papierstreifen an der Reibfläche von Ende zu Ende, dann ein Maßstab.',
    twoLettersAtTheEnd:
      'Zwei Buchstaben am Ende der Kennung auf der Belagkante, etwa FF: genommen wird die Mitte des Bands für kalt.',
    placesOfTheName: 'Maße der Backe',
    betweenTheMiddlesOfBoth:
      'Zwischen den Mitten beider Bolzen oder beider runden Fersen, von Seite zu Seite.',
    fromTheHubsMiddleDown: 'Von der Nabenmitte hinab bis zur Linie der Bolzen.',
    fromTheHubsMiddleUp: 'Von der Nabenmitte hinauf bis zur Mittellinie der Kolben.',
    fromTheHubsMiddleUp2: 'Von der Nabenmitte hinauf bis zur Mittellinie der Druckstange.',
    cylinderAndPedalName: 'Zylinder und Pedal',
    castBehindThePlateIn:
      'Hinter der Ankerplatte eingegossen, in mm oder Zoll: 3/4 in sind 19,05 mm.',
    cylinderOffTheVehicleFrom:
      'Zylinder ausgebaut: von der Ruhelage, bis die Manschette den Rand der Bohrung erreicht.',
    castOnItsBody: 'Auf dem Gehäuse eingegossen.',
    pivotToFootOverPivot: 'Drehpunkt bis Fuß, geteilt durch Drehpunkt bis Stößel.',
    pressByHandUntilIt: 'Von Hand drücken, bis er am Kolben anliegt.',
    seatToSeatWithThe:
      'Von Sitz zu Sitz bei ganz zurückgestelltem Nachsteller, mit dem Messschieber.',
    feelerGaugeBetweenStrutAnd: 'Fühlerlehre zwischen Druckstange und Bremshebel oder im Schlitz.',
    countThemFromShortestTo: 'Vom kürzesten bis zum längsten Stand zählen.',
    returnSpringsName: 'Rückzugfedern',
    luggageScaleAtTheFitted:
      'Kofferwaage bei Einbaulänge zwischen den Löchern; 10 kgf sind 98 N. Schutzbrille tragen.',
    pullIt5MmFurther: 'Um 5 mm weiter ziehen und den Unterschied durch 5 teilen.',
    asTheUpperOne: 'Wie bei der oberen.',
    parkingLeverAndName: 'Bremshebel und Fahrzeug',
    uprightFromThePivotsMiddle: 'Senkrecht, von Mitte Drehpunkt bis Mitte Druckstange.',
    straightMiddleToMiddle: 'Gerade, von Mitte zu Mitte.',
    markTheCablePullTen: 'Seilzug markieren, zehn Rasten ziehen, durch zehn teilen.',
    fromTheHubsMiddleTo: 'Von der Nabenmitte bis zum Boden.',
    fromItsPapers: 'Aus den Fahrzeugpapieren.',
    assumed: [
      'wie der Reibwert der Beläge bei Hitze nachlässt',
      'Steifigkeit der Beläge unter Druck',
      'Verschleißraten von Belägen und Trommel',
      'Reibung an Niederhaltern und Auflagen',
      'Wärmeaufnahme und Abkühlung',
      'Form der Zähne des Nachstellers',
      'Nachgiebigkeit von Schläuchen und Leitungen',
      'Stahldicke, Löcher und Umrisse der Backen',
    ],
  },

  /* ui/stations/own/page.ts */
  ownPage: {
    startABrakeOfYour: 'Eine eigene Bremse anlegen',
    drumDiameterOfYoursNew: 'Ihr Trommel-Ø, neu',
    theNearest: 'der nächstliegenden',
    startFrom: (hasChosen: string) => `Ausgehen von ${hasChosen}`,
    onPins: 'auf Lagerbolzen',
    onAbutments: 'an Widerlagern',
    makeItMine: 'Als meine übernehmen',
    readASceneFile: 'Szenendatei einlesen',
    keptInThisBrowser: 'In diesem Browser aufbewahrt',
    from: (title: string) => `aus ${title}`,
    deleteWord: (title: string) => `${title} löschen`,
    keepIt: 'Behalten',
    onTheBench: 'Auf der Werkbank',
    putOnTheBench: 'Auf die Werkbank legen',
    deleteWord2: 'Löschen',
    bringBack: (title: string) => `${title} zurückholen`,
    assumed: 'angenommen',
    itsPlacesFromAPicture: 'Ihre Maße aus einem Bild',
    withTheDrumOffCable:
      'Bei abgezogener Trommel: Seilzug locker, Pedal losgelassen, nichts von Hand gehalten. Mit dem Doppelten der üblichen Brennweite, aus 0,8 m, genau von vorn; die Bremse füllt das Bild. Dann etwa zwanzig Punkte antippen.',
    goOnTapped: (taps: number) => `Weiter: ${taps} angetippt`,
    anotherPicture: 'Anderes Bild',
    takeOrChooseAPicture: 'Bild aufnehmen oder wählen',
    takeItsPointsAndPicture: 'Punkte und Bild entfernen',
    thePictureStaysOnThis: 'Das Bild bleibt auf diesem Gerät.',
    name: 'Name',
    fromOfMeasuredTheRest: (title: string, count: number, reduce: number) =>
      `Aus ${title}; ${count} von ${reduce} gemessen, der Rest in dessen Verhältnissen angenommen.`,
    assumedSinceItIsNot: 'Angenommen, weil man es zu Hause nicht misst',
    theseAreSWhatFollows: (title: string) =>
      `Diese Werte stammen von ${title}. Was daraus folgt, etwa Moment, Verschleiß und Wärme, ist für Ihre Bremse eine Größenordnung, kein Wert.`,
    saveAsASceneFile: 'Als Szenendatei speichern',
    place: 'Stelle',
    places: 'Stellen',
    toMend: (wrongs: number, place: string) => `${wrongs} ${place} zu berichtigen.`,
    theLastSoundBrakeStays: 'Die letzte stimmige Bremse bleibt auf der Werkbank.',
    drags: 'Schleift:',
    aNewLiningTouchesThe:
      'ein neuer Belag berührt in Ruhe die neue Trommel. Sehen Sie nach Druckstange und Spiel im Schlitz.',
    locks: 'Blockiert',
    atBarNoFactorCan: (locks: unknown, pressbar: number) => [
      locks,
      ' bei ',
      pressbar,
      ' bar: ein Kennwert lässt sich nicht angeben.',
    ],
    withShoesThatBendRigid: (gap: string, factor: unknown) => [
      'mit biegsamen Backen; starr ',
      gap,
      ' mm, ',
      factor,
    ],
    onTheBenchNewClearance: (
      gap: unknown,
      factor: unknown,
      pressbar: number,
      withShoes: unknown,
    ) => [
      'Auf der Werkbank, neu: Lüftspiel ',
      gap,
      ' mm, Bremsenkennwert ',
      factor,
      ' bei ',
      pressbar,
      ' bar',
      withShoes,
      '.',
    ],
    savedAs: (download: string) => `Gespeichert als ${download}.`,
    myBrake: 'Meine Bremse',
    typeWhatYouMeasuredOn:
      'Geben Sie ein, was Sie an Ihrer Bremse gemessen haben; der Rest kommt von einer Lehrbremse und ist als angenommen gekennzeichnet.',
    springsStoreForceUseThe:
      'Federn speichern Kraft: richtiges Werkzeug und Schutzbrille benutzen. Grenzwerte gibt der Hersteller vor; eine Bremse, die in diesem Modell hält, beweist nichts über eine echte.',
  },

  /* ui/stations/own/part.ts */
  ownPart: {
    drumOfOnesOwn: 'eigene Trommel',
    brakeToStartFrom: 'Ausgangsbremse',
    notMadeBrakesAreKept: (mostbrakes: number) =>
      `Nicht angelegt: ${mostbrakes} Bremsen sind hier aufbewahrt. Löschen Sie zuerst eine.`,
    myBrake: 'Meine Bremse',
    made: (titleIn: string) => `${titleIn} angelegt`,
    picture: (word: string) => `Bild: ${word}`,
    picturesPointsTakenAway: 'Punkte des Bilds entfernt',
    pointOfThePicture: 'Punkt des Bilds',
    name: (titleIn: string) => `Name ${titleIn}`,
    questionAboutABrake: 'Frage zu einer Bremse',
    deleted: (titleIn: string) => `${titleIn} gelöscht`,
    notBroughtBackBrakesAre: (mostbrakes: number) =>
      `Nicht zurückgeholt: ${mostbrakes} Bremsen sind hier aufbewahrt. Löschen Sie zuerst eine.`,
    brake: 'Bremse',
    broughtBack: (title: string) => `${title} zurückgeholt`,
    answerOfMyBrake: 'Antwort von Meine Bremse',
  },

  /* ui/stations/own/photo/desk.ts */
  ownPhotoDesk: {
    notSeen: (name: string) => `${name} nicht zu sehen`,
    wasNotTakenNothingElse: (name: string) =>
      `${name} wurde nicht übernommen; sonst ist nichts verändert.`,
    thePictureCouldNotBe:
      'Das Bild ließ sich nicht aufbewahren: dieser Browser hat keinen Platz dafür.',
  },

  /* ui/stations/own/photo/picture.ts */
  ownPhotoPicture: {
    name: (numberOf: number, name: string) =>
      `${numberOf}, ${name}. Pfeiltasten verschieben um einen Bildpunkt, mit Umschalt um zehn; Enter setzt, die Rücktaste geht zurück.`,
    picture: 'Bild',
    thePictureIsNotKept: 'Das Bild ist hier nicht aufbewahrt, wohl aber Ihre Punkte darin.',
    chooseTheSamePictureAgain: 'Dasselbe Bild erneut wählen',
  },

  /* ui/stations/own/photo/points.ts */
  ownPhotoPoints: {
    end: 'Wo seine äußere Kante, die Ihnen nächste, endet.',
    rim: 'Irgendwo auf dem äußersten Rand der Ankerplatte, ringsum.',
    leadingLiningUpperEnd: 'Auflaufender Belag, oberes Ende',
    leadingLiningMiddle: 'Auflaufender Belag, Mitte',
    halfwayDownOnItsOuter: 'Auf halber Höhe abwärts, an seiner äußeren Kante.',
    leadingLiningLowerEnd: 'Auflaufender Belag, unteres Ende',
    trailingLiningLowerEnd: 'Ablaufender Belag, unteres Ende',
    trailingLiningMiddle: 'Ablaufender Belag, Mitte',
    halfwayUpOnItsOuter: 'Auf halber Höhe aufwärts, an seiner äußeren Kante.',
    trailingLiningUpperEnd: 'Ablaufender Belag, oberes Ende',
    middleOfTheHub: 'Mitte der Nabe',
    theMiddleOfItsFlat: 'Die Mitte ihrer ebenen Stirnfläche.',
    platesRimUpperRight: 'Plattenrand, oben rechts',
    platesRimTop: 'Plattenrand, oben',
    platesRimLeft: 'Plattenrand, links',
    platesRimLowerLeft: 'Plattenrand, unten links',
    platesRimLowerRight: 'Plattenrand, unten rechts',
    leadingHeel: 'Auflaufende Ferse',
    middleOfItsPinOr: 'Mitte ihres Bolzens oder der runden Ferse.',
    trailingHeel: 'Ablaufende Ferse',
    leadingToe: 'Auflaufende Spitze',
    whereThePistonBearsOn: 'Wo der Kolben am Steg der Backe anliegt.',
    trailingToe: 'Ablaufende Spitze',
    strutsSeatAtTheParking: 'Sitz der Druckstange am Bremshebel',
    whereTheStrutsNotchBears: 'Wo die Kerbe der Druckstange anliegt.',
    parkingLeversPivot: 'Drehpunkt des Bremshebels',
    middleOfThePinIt: 'Mitte des Bolzens, auf dem er dreht.',
    cablesHook: 'Haken des Seilzugs',
    whereTheCablesEndLies: 'Wo das Seilende im Bremshebel liegt.',
    strutsSeatOnTheLeading: 'Sitz der Druckstange an der auflaufenden Backe',
    itsHeightIsWhatCounts: 'Auf seine Höhe kommt es an.',
    upperSpringLeadingHole: 'Obere Feder, auflaufendes Loch',
    middleOfTheHoleIt: 'Mitte des Lochs, in das sie eingehängt ist.',
    upperSpringTrailingHole: 'Obere Feder, ablaufendes Loch',
    lowerSpringLeadingHole: 'Untere Feder, auflaufendes Loch',
    lowerSpringTrailingHole: 'Untere Feder, ablaufendes Loch',
    holdDownLeadingShoe: 'Niederhalter, auflaufende Backe',
    middleOfItsCup: 'Mitte seines Tellers.',
    holdDownTrailingShoe: 'Niederhalter, ablaufende Backe',
    leadingFlatOneEnd: 'Auflaufende Gleitfläche, ein Ende',
    onTheLineTheHeel: 'Auf der Linie, auf der die Ferse gleitet.',
    leadingFlatOtherEnd: 'Auflaufende Gleitfläche, anderes Ende',
    onTheSameLine: 'Auf derselben Linie.',
    trailingFlatOneEnd: 'Ablaufende Gleitfläche, ein Ende',
    trailingFlatOtherEnd: 'Ablaufende Gleitfläche, anderes Ende',
  },

  /* ui/stations/own/photo/read-photo.ts */
  ownPhotoReadPhoto: {
    acrossName: 'Über beide Beläge',
    acrossHow: 'Messschieber außen über beide Beläge in Höhe der Nabe, in Ruhe.',
    plateName: 'Ankerplatte, Ø',
    plateHow: 'Maßstab von Rand zu Rand durch die Nabe.',
    liningOffName: 'Ankerplatte bis Belag',
    liningOffHow: 'Maßstab von der Plattenfläche bis zur ihr nächsten Belagkante.',
    drumNowName: 'Trommel-Ø heute',
    drumNowHow: 'Innentaster. Leer: wie neu.',
    foundAllowed: (found: string, allowed: string) => `gefunden ${found}; erlaubt: ${allowed}`,
    foundMmInADrum: (across: string, drum: string, mostclearance: number) =>
      `gefunden ${across} mm in einer Trommel von ${drum} mm; erlaubt: kleiner als die Trommel, um höchstens ${mostclearance} mm`,
  },

  /* ui/stations/own/photo/side.ts */
  ownPhotoSide: {
    widestMm: (numberOf: number, name: string, worst: string) =>
      `Am weitesten daneben: ${numberOf}, ${name}, ${worst} mm.`,
    thePictureHasPixelsA: (width: number, height: number) =>
      `Das Bild hat ${width} × ${height} Bildpunkte: ein Antippen darin ist auf etwa 1,5 mm genau.`,
    andItsPartnerAreNo: (nameOf: string, off: string) =>
      `${nameOf} und der Gegenpunkt sind keine Spiegelbilder, ${off} mm auseinander. Einer von beiden ist danebengetippt: beide bleiben außen vor, bis das berichtigt ist.`,
    theTapsDoNotFit: (widest: string) =>
      `Die Punkte passen nicht zusammen. ${widest} Sehen Sie nach diesem Punkt und den Maßen; verwenden Sie das ganze Bild wie aufgenommen, keinen Ausschnitt.`,
    takenTooMuchFromThe:
      'Zu schräg von der Seite aufgenommen. Ein neues Bild genau von vorn ist besser.',
    itLiesOnceTheLinings: (left: number) =>
      `Die Lage steht fest, sobald die Beläge (1–6) und die Nabe oder der Rand angetippt sind; noch ${left} an den Belägen.`,
    nowTheHubsMiddleAnd:
      'Jetzt die Nabenmitte; und den Plattenrand, sobald dessen Ø unten eingegeben ist.',
    liesWithinMm: (within: string) => `Liegt auf ${within} mm genau.`,
    takenAsideFromM: (tilt: string, far: string, widest: string) =>
      `${tilt}° von der Seite aufgenommen, aus ${far} m. ${widest}`,
    point: 'Punkt',
    points: 'Punkte',
    tapped: (count: number, point: string) => `${count} ${point} angetippt.`,
    proposedAsTheMirrorImage:
      ' Vorgeschlagen als Spiegelbild des Gegenpunkts; zählt, sobald Sie ihn setzen.',
    fromTheHubMm: 'Von der Nabe, mm',
    goodToMm: 'Genau auf, mm',
    onePixel: (way: 'down' | 'left' | 'right' | 'up') =>
      `Einen Bildpunkt nach ${way === 'down' ? 'unten' : way === 'left' ? 'links' : way === 'right' ? 'rechts' : 'oben'}`,
    goOn: ', weiter',
    set: (no: number, all: string) => `${no} setzen${all}`,
    back: 'Zurück',
    cannotSeeIt: 'Nicht zu sehen',
    measuredBesideThePicture: 'Neben dem Bild gemessen',
    assumed: 'angenommen',
    drumDiameterAndLiningWidth: 'Trommel-Ø und Belagbreite werden unter Meine Bremse eingegeben.',
    points2: 'Punkte',
    soFar: ' bisher',
    fromThePictureWithFriction: (percent: string, soFar: string, piece: unknown) => [
      'aus dem Bild, ±',
      percent,
      ' %',
      soFar,
      ' ',
      piece,
      ' bei einem auf ±10 % angenommenen Reibwert',
    ],
    brakeFactorAfterSprings: 'Bremsenkennwert, nach Abzug der Federn',
    torqueAtBar: (pressbar: number) => `Moment bei ${pressbar} bar`,
    withShoesThatBendRigid: (factor: string, torque: string) =>
      `Mit biegsamen Backen. Starr: Kennwert ${factor}, ${torque} N·m.`,
    parkingLeverStrutsForceOver: 'Bremshebel, Kraft der Druckstange durch Seilkraft',
    assumed2: ', angenommen',
    notMeasured: 'nicht gemessen',
    clearanceAtRestByCaliper: (notMeasured: unknown) => [
      'Lüftspiel in Ruhe: ',
      notMeasured,
      ' mit dem Messschieber, nie aus dem Bild: ein Millimeter am Sitz der Druckstange ist schon das ganze Spiel.',
    ],
    geometryIsGoodToAbout:
      'Die Geometrie stimmt auf etwa 2 %; der Reibwert ist nicht genauer als auf 10 % bekannt, und an ihm hängt der Bremsenkennwert.',
    aRightHandWheel: 'Ein rechtes Rad',
    aLeftHandWheel: 'Ein linkes Rad',
    itIsTheOther: (rightHand: string) => `${rightHand}: es ist das andere`,
    thePictureIsKeptIn: 'Das Bild wird in diesem Browser aufbewahrt',
    keepThePictureInThis: 'Bild in diesem Browser aufbewahren',
    backToAllSizes: 'Zurück zu allen Maßen',
    myBrakeFromAPicture: 'Meine Bremse aus einem Bild',
    thePictureStaysOnThis:
      'Das Bild bleibt auf diesem Gerät: es steht in keiner Datei, keinem Link und keinem Bericht.',
  },

  /* ui/stations/own/read.ts */
  ownRead: {
    foundAllowed: (found: string, allowed: string) => `gefunden ${found}; erlaubt: ${allowed}`,
    foundAllowed2: (plain: string, plain2: string, reason: string) =>
      `gefunden ${plain}; erlaubt: ${plain2}${reason}`,
    readAsToColdTaken: (least: string, most: string, value: string) =>
      `gelesen als ${least} bis ${most} kalt, ${value} genommen`,
    readAs: (value: number) => `gelesen als ${value}`,
    whole: 'ganze ',
    aNumberTo: (whole: string, range: number, range2: number) =>
      `eine ${whole}Zahl, ${range} bis ${range2}`,
  },

  /* ui/stations/own/told.ts */
  ownTold: {
    asItWas: 'wie vorher',
    to: 'auf',
    clearanceAtRestName: 'Lüftspiel in Ruhe',
    brakeFactorName: 'Bremsenkennwert',
    torqueAtBar: (pressbar: number) => `Moment bei ${pressbar} bar`,
    pedalAtBar: (pressbar: number) => `Pedal bei ${pressbar} bar`,
    firstClickAfterName: 'Erster Klick nach',
    to2: (name: string, figure: string, figure2: string, unit: string) =>
      `${name} ${figure} auf ${figure2}${unit}`,
    withRigidShoes: (rowsOf: string) => `Mit starren Backen: ${rowsOf}.`,
    assumed: 'angenommen',
    whatItChangesItWas: (measured: unknown, was: string, unit: string) => [
      'Was es ändert. Vorher war es',
      measured,
      ' ',
      was,
      unit,
      '.',
    ],
    beingDriven: 'wird gefahren…',
    locking: 'blockierend',
    to3: (low: string, high: string) => `${low} bis ${high}`,
    theBandOfItsTwo: 'das Band seiner zwei Buchstaben',
    aTenthEitherWay: 'ein Zehntel nach beiden Seiten',
    assumedATenthEitherWay: 'angenommen, ein Zehntel nach beiden Seiten',
    friction001Less: 'Reibwert um 0,01 kleiner',
    frictionTo: (value: string, least: string, most: string) =>
      `Reibwert ${value}, ${least} bis ${most}`,
    friction001More: 'Reibwert um 0,01 größer',
    withRigidShoesFromAnd: (span: string, span2: string) =>
      `; mit starren Backen bei ${span} und bei ${span2} N·m`,
    coldToSoTheFactor: (
      value: string,
      least: string,
      most: string,
      whose: string,
      span: unknown,
      pressbar: number,
      span2: unknown,
      withRigid: unknown,
    ) => [
      'Kalt ',
      value,
      ', ',
      least,
      ' bis ',
      most,
      ': ',
      whose,
      '. Damit liegt der Kennwert bei ',
      span,
      ', das Moment bei ',
      pressbar,
      ' bar bei ',
      span2,
      withRigid,
      '.',
    ],
    asItIsNow: 'Wie sie jetzt ist',
    asItIsNowWorn: 'Wie sie jetzt ist: verschlissen und eingestellt',
    forWhatYourNumbersSay:
      'Für das, was Ihre Zahlen sagen, gleich darunter. Die Bremse auf der Werkbank bleibt neu; unter Prüfen gibt es ein ganzes Blatt, das sie auch lädt.',
    foundAllowed: (found: string, allowed: string) => `gefunden ${found}; erlaubt: ${allowed}`,
    whatMyNumbersSay: 'Was meine Zahlen sagen',
    nothingYetTypeBothLinings:
      'Noch nichts. Geben Sie beide Beläge ein, wie sie jetzt sind, dann Zahn, Rasten und Pedal: jeder Wert wird mit dem verglichen, was diese Bremse bei solchem Verschleiß tut.',
    drivingItToSeeHow: 'Wird gefahren, um zu sehen, wie ungleich beide Beläge verschleißen…',
    rigidShoesSayTheSame: 'Starre Backen sagen dasselbe.',
    withRigidShoes2: 'Mit starren Backen:',
    andWithShoesThatBend: ', und mit biegsamen Backen',
    computedWithYourSizesAnd: (andWith: string) =>
      `Berechnet mit Ihren Maßen und, wo keine eingegeben sind, mit angenommenen${andWith}: Hinweise, wo man nachsieht, keine Freigabe.`,
  },

  /* ui/stations/park/controls.ts */
  parkControls: {
    no: 'nein',
    less: (name: string) => `${name}: weniger`,
    more: (name: string) => `${name}: mehr`,
    cableSlack: 'Lose im Seilzug',
    cableTooTight: 'Seilzug zu stramm',
    mmOff: (leverOffStop: string) => `${leverOffStop} mm ab`,
    nose: (n: 'down' | 'up') => (n === 'down' ? 'Bergab' : 'Bergauf'),
    controls: 'Bedienung',
    vehicleStands: 'Fahrzeug steht',
    oneNotchBack: 'Eine Raste zurück',
    notch: '− Raste',
    letGo: 'Lösen',
    pullInEachCable: 'Zug in jedem Seil',
    oneNotchOn: 'Eine Raste weiter',
    notch2: '+ Raste',
  },

  /* ui/stations/park/hill.ts */
  parkHill: {
    standsGaveMm: (way: string) => `steht; gab ${way} mm nach`,
    creepsMmS: (speed: string) => `kriecht ${speed} mm/s`,
    rollsKmHM: (speed: string, way: string) => `rollt ${speed} km/h, ${way} m`,
    canHold: (floor: string) => `hält bis ${floor}`,
    aShoeLocks: 'eine Backe blockiert',
    vehicleNoseOn: (nose: 'down' | 'up', asked: string) =>
      `Fahrzeug steht ${nose === 'down' ? 'bergab' : 'bergauf'} auf ${asked}`,
    drawn: (steepest: number) => `, gezeichnet ${steepest}°`,
    needsNMAWheel: (ceil: string) => `braucht ${ceil} N·m je Rad`,
    rollsThisWay: 'rollt in diese Richtung',
  },

  /* ui/stations/park/hot.ts */
  parkHot: {
    cNotches: (temperature: string, taken: string) => `${temperature} °C, ${taken} Rasten`,
    locks: 'blockiert',
    holds: 'hält',
    rolls: 'rollt',
    withTheHandLeverLocked: (down: unknown, cable: string, down2: string) => [
      'Bei eingerasteter Handbremse nimmt die Trommel beim Rutschen den Haken mit: ',
      down,
      ' bei ',
      cable,
      ' N. Bei gleichbleibendem Zug wären es ',
      down2,
      '.',
    ],
    hotDrumHandLeverLocked: 'Heiße Trommel, Handbremse eingerastet',
    drumHotterBy: 'Trommel heißer um',
    drumCooler: 'Trommel kühler',
    drumHotter: 'Trommel heißer',
    parked: 'Abgestellt',
    cableN: 'Seilzug N',
    nose: (nose: 'down' | 'up') => (nose === 'down' ? 'bergab' : 'bergauf'),
    coldAsUsual: 'Kalt, wie üblich',
    hotSamePull: 'Heiß, gleicher Zug',
    cooledDown: '… abgekühlt',
    hotUsualNotch: 'Heiß, übliche Raste',
    aDrumThatCoolsShrinks:
      'Eine abkühlende Trommel schrumpft auf die Backen und zieht den eingerasteten Seilzug straffer. Eine heiße Trommel steht weiter ab: die übliche Raste gibt weniger Zug.',
    onAHotDrumGo:
      'Bei heißer Trommel nach dem Zug gehen, nicht nach der Raste, Keile unterlegen und noch einmal nachsehen. An einer Trommel kann man sich noch lange nach dem Anhalten verbrennen.',
  },

  /* ui/stations/park/index.ts */
  park: {
    allReadingsWhatIsAsked: 'Alle Messwerte, was verlangt ist',
    forcesAndCable: 'Kräfte und Seilzug',
    chocksAwayTheMovingWheel: 'Keile weg: das bewegte Rad',
    forces125MmPer: 'Kräfte 12,5 mm je kN, kurz vor dem Rutschen · Schattenbild: Hebel in Ruhe, ×1',
    letGoTheLeverRests: 'Gelöst: der Hebel liegt an seinem Anschlag',
    pullOneNotchName: 'Eine Raste ziehen',
    slope: (steeper: number) => `Steigung ${steeper} %`,
  },

  /* ui/stations/park/lever.ts */
  parkLever: {
    strut: 'Druckstange',
    cable: 'Seilzug',
    theLeverAlone: 'Der Hebel allein',
    theHandLeverIsLet:
      'Die Handbremse ist gelöst: kein Zug am Hebel, die Federn halten ihn an seinem Anschlag. Ziehen Sie die Handbremse an, um zu sehen, was wo drückt.',
    parkingLeverCutFreeCable: (cable: string, strut: string, pivotForce: string) =>
      `Bremshebel freigeschnitten: Seilzug ${cable} N, Druckstange ${strut} N, Drehpunkt ${pivotForce} N`,
    itsPivot: 'sein Drehpunkt',
    stillOnItsStopThe: (cable: unknown) => [
      'Noch am Anschlag: die Spannkraft der Backen ist größer, als ',
      cable,
      ' am Seilzug anheben können.',
    ],
    nFrontShoe: (cable: string, cableArm: string, strutArm: string, strut: unknown) => [
      cable,
      ' N × ',
      cableArm,
      ' ÷ ',
      strutArm,
      ' = ',
      strut,
      ' vordere Backe',
    ],
    rearShoe: (strut: string, cable: string, pivotForce: unknown) => [
      strut,
      ' − ',
      cable,
      ' = ',
      pivotForce,
      ' hintere Backe',
    ],
    armsInMmSquareTo: (ratio: string, ratioAtRest: string) =>
      `Hebelarme in mm, senkrecht zu jeder Kraft. Übersetzung ${ratio} in dieser Stellung, ${ratioAtRest} am Anschlag.`,
  },

  /* ui/stations/park/pad.ts */
  parkPad: {
    notchesN: (notches: string, cable: number) => `${notches} Rasten · ${cable} N`,
    letGoDrag: 'gelöst · ziehen',
    parkingLever: 'Handbremse',
    nInEachCableNotches: (cable: number, notches: string) =>
      `${cable} N in jedem Seil, ${notches} Rasten`,
  },

  /* ui/stations/park/panels.ts */
  parkPanels: {
    leverAlone: 'Hebel allein',
    bothWheels: 'Beide Räder',
    hotDrum: 'Heiße Trommel',
    picture: 'Bild',
  },

  /* ui/stations/park/part.ts */
  parkPart: {
    aSlopeOfYourOwn: 'Ein selbst gewähltes Gefälle',
    cableToN: (cable: number, cable2: number) => `Seilzug ${cable} auf ${cable2} N`,
    nose: (nose: 'down' | 'up') => (nose === 'down' ? 'bergab' : 'bergauf'),
    ruleOfTheSlope: 'Vorgabe für die Steigung',
    slope: (slope: number) => `Steigung ${slope} %`,
    cableSlackMmMore: (moreSlack: number) => `Lose im Seilzug, ${moreSlack} mm mehr`,
    leverMmOffItsStop: (leverOffStop: number) => `Hebel ${leverOffStop} mm vom Anschlag ab`,
    rightWheel: 'rechtes Rad',
    panelOfPark: 'Seite von Parken',
    parkedKHot: (rise: number) => `${rise} K heiß abgestellt`,
    chocksAway: 'Keile weg',
  },

  /* ui/stations/park/side.ts */
  parkSide: {
    nose: (nose: 'down' | 'up') => (nose === 'down' ? 'Bergab' : 'Bergauf'),
    locks: 'blockiert',
    torqueAWheelCanHold: 'Moment, das ein Rad bei gleichbleibendem Zug halten kann, N·m',
    askedFor: (ceil: unknown) => ['verlangt ', ceil],
    judgedBy: 'Beurteilt nach',
    aSlope: 'eine Steigung',
    yourOwn: (id: string) => `${id} · selbst gewählt`,
    handAtMostN: (newton: number, sure: string) => `Hand höchstens ${newton} N (${sure}).`,
    verdict: 'Urteil',
    chockIt: 'Keile unterlegen',
    chocksAway: 'Keile weg',
    handLeverWhereItsNotches: 'Handbremse: wohin ihre Rasten gehen, mm Seilweg',
    notches: 'Rasten',
    slack: (slack: string) => `Lose ${slack}`,
    stretch: (stretch: string) => `Dehnung ${stretch}`,
    turningTheLever: (turning: string) => `Drehen des Hebels ${turning}`,
    steepestHeldNose: (nose: 'down' | 'up') =>
      `Steilste gehaltene Steigung, ${nose === 'down' ? 'bergab' : 'bergauf'}`,
    any: 'jede',
    readings: 'Messwerte',
    cablePullEachWheel: 'Seilkraft, je Rad',
    allCablesTogetherOverRatio:
      'Alle Seilkräfte zusammen, geteilt durch Übersetzung und Wirkungsgrad der Handbremse',
    handOnTheLever: 'Handkraft am Hebel',
    over: (newton: number) => `über ${newton}`,
    park: 'Parken',
    oneCableWorksBothShoes:
      'Ein Seilzug betätigt beide Backen: der Hebel drückt auf die Druckstange, sein Drehpunkt drückt in die Gegenrichtung zurück.',
  },

  /* ui/stations/park/stage.ts */
  parkStage: {
    strut: 'Druckstange',
    onTheFrontShoe: 'auf die vordere Backe',
    itsPivot: 'sein Drehpunkt',
    onTheRearShoe: 'auf die hintere Backe',
    cableN: (cable: string) => `Seilzug ${cable}\u00a0N`,
    forward: 'vorwärts',
    backward: 'rückwärts',
    theHillTurnsTheDrum: (forward: string) => `Der Hang dreht die Trommel ${forward}`,
  },

  /* ui/stations/park/stops.ts */
  parkStops: {
    letGoTheLeverAt: 'Gelöst: der Hebel in Ruhe (Skizze)',
    onItsStop: 'am Anschlag',
    clearance: (onIts: unknown, home: string) => [onIts, ' Lüftspiel ', home],
    cableTooTight: 'Seilzug zu stramm',
    mmOffLost: (cableToo: unknown, mm: string, off: string, home: string) => [
      cableToo,
      ' ',
      mm,
      ' mm ab: ',
      off,
      ', ',
      home,
      ' verloren',
    ],
  },

  /* ui/stations/park/wheels.ts */
  parkWheels: {
    locks: 'blockiert',
    anySlope: 'jede Steigung',
    noseTheVehicleHolds: (nose: 'down' | 'up', slope: unknown) => [
      '',
      nose === 'down' ? 'bergab' : 'bergauf',
      ': das Fahrzeug hält ',
      slope,
    ],
    bothWheels: 'Beide Räder',
    oneOutOfOrder: 'Eins nicht in Ordnung',
    torqueAWheelCanHold: 'Moment, das ein Rad halten kann, N·m',
    leftWheel: 'Linkes Rad',
    rightWheel: 'Rechtes Rad',
    eachWheelHoldsByIts: 'Jedes Rad hält nach seinem eigenen Verschleiß und Zahn.',
    theWheelsStandOnOne: (asked: string) =>
      `Die Räder gehören zu einem Fahrzeug, also zählt das Mittel aus beiden gegen ${asked}. Angenommen ist, dass die Reifen haften.`,
  },

  /* ui/stations/park/words.ts */
  parkWords: {
    read: 'gelesen',
    readInPart: 'teilweise gelesen',
    notFirst:
      'Die Backen nie mit dem Seilzug einstellen: erst die Backen, Hebel am Anschlag, zuletzt der Seilzug.',
    ofItsWeight: ' seines Gewichts',
    fromMemoryNotRead: 'aus dem Gedächtnis, nicht nachgelesen',
    yourOwn: 'selbst gewählt',
    way: (nose: 'down' | 'up') => (nose === 'down' ? 'bergab' : 'bergauf'),
    on: (asked: string) => `auf ${asked}`,
    letGoMoreThanIts: 'Gelöst, mehr, als die Druckstange verträgt',
    letGoNMTurn: (torque: string) => `Gelöst, ${torque}\u00a0N·m drehen die Trommel`,
    jammedNotParked: 'Klemmt, nicht abgestellt',
    holds: (on: string) => `Hält ${on}`,
    aShoeLocksByItself: (way: string) => `Eine Backe blockiert von selbst, ${way}`,
    nMAWheelLeft: (left: string, way: string) => `${left}\u00a0N·m je Rad übrig, ${way}`,
    rolls: (on: string) => `Rollt ${on}`,
    shortOf: (on: string) => `Weniger als ${on}`,
    nMAWheelShort: (short: string, way: string) => `${short}\u00a0N·m je Rad zu wenig, ${way}`,
    bothSound: 'beide in Ordnung',
    rightLeverPivotStiffHalf: 'rechts: Hebel schwergängig im Drehpunkt, halber Zug verloren',
    rightOilOnTheRear: 'rechts: Öl auf dem hinteren Belag',
    rightOilOnTheFront: 'rechts: Öl auf dem vorderen Belag',
    bothLiningsGlazed: 'beide: Beläge verglast',
    faultSays: {
      none: 'Beide Räder halten gleich und in beide Richtungen fast dasselbe.',
      'stiff lever':
        'Ein Rad hält in beide Richtungen schwach und löst langsam: vom Zug kommt weniger an. Hebel gangbar machen oder erneuern, beide Seiten prüfen.',
      'oil on rear':
        'Ein Rad hält bergab stark, bergauf schwach: die hintere Backe greift nicht mehr. Undichtigkeit suchen, Backen auf beiden Seiten.',
      'oil on front':
        'Ein Rad hält bergab schwach, bergauf stark: die vordere Backe greift nicht mehr. Undichtigkeit suchen, Backen auf beiden Seiten.',
      glazed:
        'Beide Räder halten in beide Richtungen schwach, Rasten normal: die Beläge haben Reibwert verloren.',
    },
  },

  /* ui/stations/questions/list.ts */
  questionsList: {
    showMe: (ask: string) => `Zeigen: ${ask}`,
    showMe2: 'Zeigen',
    whichKindOfDrumBrake: 'Welche Art Trommelbremse haben Sie?',
    noQuestionWithAllOf:
      'Keine Frage enthält alle diese Wörter: das hier sind die nächstliegenden.',
  },

  /* ui/stations/questions/part.ts */
  questionsPart: {
    question: (ask: string) => `Frage: ${ask}`,
    backToTheQuestions: 'zurück zu den Fragen',
    whichKindOfBrake: 'welche Art Bremse',
    questionClosed: 'Frage geschlossen',
  },

  /* ui/stations/questions/station.ts */
  questionsStation: {
    questions: 'Fragen',
    thatPeopleReallyAskAre: (length: number, covered: number) =>
      `${length}, die wirklich gestellt werden. ${covered} sind hier beantwortet, bei den anderen steht, warum nicht.`,
    search: 'Suchen',
    wordsOfYourQuestion: 'Wörter Ihrer Frage',
    drumPedalLeverRust: 'Trommel, Pedal, Hebel, Rost …',
    of: (length: number, length2: number) => `${length} von ${length2}`,
  },

  /* ui/stations/road-editor.ts */
  roadEditor: {
    perKmName: 'Bremsungen',
    perKmUnit: 'je km',
    speedName: 'Aus',
    pressureName: 'Bei',
    decelerationName: 'Mit',
    foundAllowedTo: (
      name: string,
      name2: string,
      text: string,
      least: string,
      most: string,
      unit: string,
    ) => `${name}, ${name2}: gefunden „${text}“; erlaubt: ${least} bis ${most} ${unit}.`,
    changeTheRoadsStops: 'Bremsungen der Strecke ändern',
    asTheRoadHasIt: 'Wie in der Strecke',
  },

  /* ui/stations/see/desk.ts */
  seeDesk: {
    not: (t: string) => `nicht: ${t}`,
    number: (place: number) => `Platz ${place}`,
    fitsOfWhatWasSaid: (length: number) => `passt zu ${length} der Angaben`,
    cannotBe: 'kommt nicht vor',
    theSame: 'dasselbe',
  },

  /* ui/stations/see/free.ts */
  seeFree: {
    theSame: 'dasselbe',
    rigid: (theSame: string) => `starr: ${theSame}`,
    free: 'frei',
    notByHand: 'nicht von Hand',
    nAtTheTyre: (cold: string) => `${cold}\u00a0N am Reifen`,
    moreThan: (distance: string, working: string) => `mehr als ${distance}${working}`,
    workingItOut: 'Wird berechnet…',
    coldByHand: 'Kalt, von Hand',
    hottestInTheFirstTrip: 'Am heißesten auf der ersten Fahrt',
    settlesAtAtKmH: (kmhon: number) => `Beharrungswert bei ${kmhon}\u00a0km/h`,
    halfOfTheColdDrag: 'Die Hälfte des kalten Schleifens ist weg nach',
    freeColdTooAfter: 'Frei, auch kalt, nach',
    liningGoneByThen: 'Belag bis dahin verbraucht',
    shoesSetTooTight: 'Backen zu eng eingestellt',
    newLiningsThatStandInside:
      'Neue Beläge, die um so viel weiter stehen als die Trommel. Ein Zahn beim Kai-Transporter ist 0,15 mm.',
    howTightMm: 'Wie eng, mm',
    lessTight: 'weniger eng',
    tighter: 'enger',
    notInAFewKilometres: 'Nicht nach ein paar Kilometern: erst nach Hunderten.',
    theDrumGrowsOffIts:
      'Die Trommel dehnt sich beim Erwärmen von den Backen weg. So schleift sie sich bei dieser Temperatur frei und klemmt an jedem kalten Morgen wieder. Besser den Nachsteller zurückstellen.',
    aForceThatStays: 'Eine Kraft, die bleibt',
    cablePressureOrALeaning:
      'Seilzug, Druck oder ein anliegendes Teil drücken weiter, egal wie viel verschlissen ist: das schleift sich nie frei.',
    oneHotWheelToldApart: 'Ein heißes Rad, Ursachen unterschieden',
    cause: 'Ursache',
    at50KmH: 'Bei 50 km/h',
    byHand: 'Von Hand',
    toldApartBy: 'Zu unterscheiden durch',
    mineDragsSayWhatI: 'Meine schleift: sagen, was ich sehe',
  },

  /* ui/stations/see/index.ts */
  see: {
    beginAnew: 'Neu beginnen',
    change: 'Ändern',
    everythingThatCanBeSaid: 'Alles, was man angeben kann',
    withThisCase: 'Mit diesem Fall',
    drumOff: 'Trommel ab',
    newShoes: 'Neue Backen',
    inspect: 'Prüfen',
  },

  /* ui/stations/see/likely.ts */
  seeLikely: {
    because: (fitsTo: string) => `Dafür spricht: ${fitsTo}.`,
    nothingThatYouSaidPoints: 'Keine Ihrer Angaben deutet darauf hin.',
    itDoesNotExplainThat: (against: string) => `Nicht erklärt ist damit: ${against}.`,
    noCheckPartsWhatIs: 'Keine Prüfung unterscheidet, was übrig ist',
    theyAreAlikeInAll: 'In allem, was hier zu sehen ist, sind sie gleich.',
    openTheDrumAndLook:
      'Öffnen Sie die Trommel und sehen Sie jede davon in der Reihenfolge unten nach.',
    minute: 'Minute',
    minutes: 'Minuten',
    cheapestNextCheck: (minutes: number, minute: string, name: string) =>
      `Einfachste nächste Prüfung, ${minutes} ${minute}: ${name}`,
    toBeginWith: 'Für den Anfang',
    askedBecauseTheAnswerParts: 'Gefragt, weil die Antwort sie unterscheidet:',
    theSame: 'dasselbe',
    rigid: (theSame: string) => `starr: ${theSame}`,
    fitsOf5: (fits: number) => `passt ${fits} von 5`,
    thenYouWouldAlsoFind: (also: string) => `Dann fänden Sie auch: ${also}.`,
    rigid2: (rigid: string) => `starr: ${rigid}`,
    ofRigidShoesUntilWhat: 'Mit starren Backen, bis das Ergebnis für biegsame vorliegt',
    figuresOfTheQuayVan: 'Werte des Kai-Transporters, bis die dieser Bremse vorliegen',
    workedOutOf: (ofRigid: string, done: number, of: number) =>
      `${ofRigid}; berechnet: ${done} von ${of}.`,
    noSingleCauseShowsAll: (pair: string) =>
      `Keine einzelne Ursache zeigt das alles. Zwei zugleich schon: ${pair}.`,
    likelyBestFirst: 'Wahrscheinlich, die beste zuerst',
    fitsWhatISee: 'passt zu dem, was ich sehe',
    likelyCauses: 'Wahrscheinliche Ursachen',
  },

  /* ui/stations/see/part.ts */
  seePart: {
    atMost: (mostsaid: number) => `höchstens ${mostsaid}`,
    whatIsWrong: 'was nicht stimmt',
    whatISee: 'was ich sehe',
    seeSay: (key: string) => `see.say ${key}`,
    figuresOfARollerTest: 'Werte vom Rollenprüfstand',
    aNewCase: 'ein neuer Fall',
    theCaseCarriedAlong: 'Fall mitgenommen',
    aLikelyCause: 'eine wahrscheinliche Ursache',
    backToWhatISee: 'zurück zu Was ich sehe',
    mmTight: (tight: number) => `${tight} mm zu eng`,
  },

  /* ui/stations/see/said.ts */
  seeSaid: {
    tapWhatYouNoticeIn:
      'Tippen Sie an, was Ihnen auffällt, in beliebiger Reihenfolge; den Rest lassen Sie aus.',
    nothingSaidYetAnswerBelow: 'Noch nichts angegeben: unten antworten.',
    whatISee: 'Was ich sehe',
    notSure: 'nicht sicher',
    takeItBack: ': zurücknehmen',
    aPrintOutForceA:
      'Ein Ausdruck vom Prüfstand: Kraft je Rad mit dem Pedal, in einer beliebigen Einheit.',
    leftBackwards: 'Links, rückwärts',
    rightBackwards: 'Rechts, rückwärts',
  },

  /* ui/stations/see/sentences.ts */
  seeSentences: {
    hot: {
      none: 'keine Trommel wird heiß',
      one: 'eine hintere Trommel wird heiß',
      both: 'beide hinteren Trommeln werden heiß',
      all: 'alle vier Räder werden heiß',
    },
    heat: {
      cool: 'die Trommel bleibt kühl',
      warm: 'die Trommel wird warm',
      'too hot': 'die Trommel wird zu heiß zum Anfassen',
    },
    travel: {
      short: 'das Pedal geht weniger weit als vorher',
      ever: 'das Pedal geht so weit wie immer',
      long: 'das Pedal geht weiter als vorher',
      half: 'das Pedal geht bis zur Hälfte durch',
      floor: 'das Pedal geht bis zum Boden durch',
    },
    feel: {
      firm: 'das Pedal ist fest',
      springy: 'das Pedal federt',
      throbs: 'das Pedal pulsiert unter dem Fuß',
      wooden: 'das Pedal ist hart und sie bremst schlecht',
      sinks: 'das Pedal sinkt langsam ab',
    },
    pumped: {
      up: 'Pumpen bringt das Pedal hoch',
      same: 'Pumpen ändert nichts',
    },
    first: {
      like: 'der erste Tritt nach einer Nacht ist wie der nächste',
      long: 'der erste Tritt nach einer Nacht ist lang, die nächsten sind gut',
    },
    clicks: {
      none: 'der Nachsteller klickt nie hörbar',
      heard: 'der Nachsteller klickt hörbar',
    },
    turns: {
      freely: 'das Rad dreht von Hand frei',
      rubs: 'das Rad schleift leicht beim Drehen von Hand',
      stiff: 'das Rad dreht von Hand schwer',
      not: 'das Rad lässt sich von Hand nicht drehen',
      jerk: 'das Rad dreht nicht, dann löst es sich mit einem Ruck',
    },
    ways: {
      alike: 'es dreht vorwärts so schwer wie rückwärts',
      unlike: 'es dreht in eine Richtung viel schwerer als in die andere',
    },
    rubs: {
      no: 'es schleift an keiner bestimmten Stelle',
      once: 'es schleift einmal je Umdrehung',
      twice: 'es schleift zweimal je Umdrehung',
    },
    slides: {
      off: 'die Trommel lässt sich abziehen',
      some: 'die Trommel rutscht ein paar Millimeter und bleibt hängen',
      not: 'die Trommel bewegt sich gar nicht nach außen',
    },
    rocks: {
      no: 'das Rad hat kein Kippspiel',
      yes: 'das Rad hat oben und unten Kippspiel',
    },
    tap: {
      rings: 'die Trommel klingt beim Anklopfen hell',
      dull: 'die Trommel klingt beim Anklopfen dumpf',
    },
    comes: {
      smooth: 'die Bremse greift gleichmäßig',
      jump: 'die Bremse greift spät und auf einmal',
    },
    release: {
      once: 'das Rad ist frei, sobald das Pedal losgelassen ist',
      seconds: 'das Rad ist erst Sekunden nach dem Loslassen des Pedals frei',
      not: 'das Rad bleibt nach dem Loslassen des Pedals minutenlang schwergängig',
    },
    bleed: {
      nothing: 'Öffnen der Entlüftungsschraube ändert nichts',
      frees: 'Öffnen der Entlüftungsschraube macht das Rad sofort frei',
    },
    lever: {
      home: 'der Bremshebel in der Trommel liegt am Anschlag',
      off: 'der Bremshebel in der Trommel steht vom Anschlag ab',
    },
    flexed: {
      comes: 'der Bremshebel folgt dem Seilzug hin und zurück',
      slow: 'der Bremshebel kommt langsam zurück',
    },
    bite: {
      right: 'sie bremst wie immer',
      weak: 'sie bremst schwach',
      strong: 'sie greift zu scharf',
    },
    pull: {
      no: 'sie zieht nicht zur Seite',
      yes: 'sie zieht zu einer Seite',
    },
    back: {
      alike: 'sie bremst rückwärts so gut wie vorwärts',
      less: 'sie bremst rückwärts viel schwächer als vorwärts',
      more: 'sie bremst rückwärts viel stärker als vorwärts',
    },
    parked: {
      right: 'die Handbremse hält',
      weak: 'die Handbremse hält schwach',
      strong: 'die Handbremse hält stärker als vorher',
    },
    oneway: {
      alike: 'sie hält bergauf so gut wie bergab',
      one: 'sie hält nur in eine Richtung stehend',
    },
    shoes: {
      both: 'beide Backen lassen sich von Hand bewegen',
      one: 'eine Backe lässt sich von Hand nicht bewegen',
    },
    pads: {
      smooth: 'die Auflagen der Ankerplatte sind glatt',
      grooved: 'die Auflagen der Ankerplatte haben Rillen',
    },
    round: {
      same: 'der Innendurchmesser ist ringsum gleich',
      differs: 'der Innendurchmesser ist von Winkel zu Winkel verschieden',
    },
    swings: {
      still: 'die Messuhr an der drehenden Trommel steht still',
      swings: 'die Messuhr an der drehenden Trommel schlägt aus',
    },
    thin: {
      lead: 'der vordere Belag ist der dünnere',
      trail: 'der hintere Belag ist der dünnere',
      alike: 'beide Beläge sind gleich',
      gone: 'beide Beläge sind weg',
    },
    drumsize: {
      within: 'die Trommel liegt deutlich innerhalb ihres Grenzmaßes',
      large: 'die Trommel ist nahe an ihrem Grenzmaß oder darüber',
    },
    pawl: {
      drops: 'der Hebel des Nachstellers fällt ein',
      stiff: 'der Hebel des Nachstellers ist schwergängig',
      free: 'der Hebel des Nachstellers schwingt frei',
      other: 'der Hebel des Nachstellers gehört auf die andere Seite',
    },
    wet: {
      dry: 'hinter der Trommel ist es trocken',
      fluid: 'die Staubkappe eines Zylinders ist nass von Bremsflüssigkeit',
      oil: 'aus der Nabe kommt Öl',
    },
    mark: {
      same: 'beide Radzylinder haben dieselbe Bohrung',
      other: 'die Radzylinder haben ungleiche Bohrungen',
    },
    when: {
      always: 'es ist immer so',
      braked: 'es kommt gleich nach dem Bremsen',
      longer: 'es wird schlimmer, je länger man fährt',
      cold: 'es ist nur kalt so',
      parked: 'es kommt nach dem Parken',
      laden: 'es kommt nur mit Beladung',
      downhill: 'es kommt nach langer Bergabfahrt',
      damp: 'es kommt bei den ersten Bremsungen bei Nässe',
    },
    since: {
      sudden: 'es kam auf einmal',
      weeks: 'es ist seit Wochen so',
      months: 'es wurde über Monate langsam schlimmer',
      work: 'es ist seit einer Arbeit so',
    },
    after: {
      none: 'vorher wurde nichts gemacht',
      shoes: 'vorher wurde an den Backen gearbeitet',
      drum: 'vorher wurde an der Trommel gearbeitet',
      cylinder: 'vorher wurde an einem Radzylinder gearbeitet',
      pipe: 'vorher wurde an einem Schlauch oder einer Leitung gearbeitet',
      cable: 'vorher wurde am Seilzug oder an der Handbremse gearbeitet',
      hub: 'vorher wurde an der Nabe oder ihrem Radlager gearbeitet',
      master: 'vorher wurde am Hauptzylinder, am Bremskraftverstärker oder am Pedal gearbeitet',
      wash: 'es wurde gewaschen oder stand im Regen',
      stood: 'es stand monatelang',
    },
    noise: {
      none: 'es macht kein Geräusch',
      squeal: 'es quietscht',
      grind: 'es mahlt metallisch',
      groan: 'es brummt oder tutet',
      clunk: 'es schlägt einmal beim Richtungswechsel',
      rattle: 'es klappert',
      rub: 'ein Schleifen oder Wischen ist zu hören',
      pop: 'es knackt bei der ersten Berührung',
      bang: 'es gab einen Knall, und es blockiert in eine Richtung',
    },
    smell: {
      none: 'es riecht nach nichts',
      burnt: 'es riecht nach verbranntem Belag',
      oil: 'es riecht nach Öl',
      fluid: 'es riecht nach Bremsflüssigkeit',
    },
    theHandLeverTakesNotches: (n: string) => `die Handbremse braucht ${n} Rasten`,
    itTakesAtTheTyre: (n: string) => `am Reifen braucht es ${n}, um das Rad in Drehung zu halten`,
    theShoesTouchAt: (n: string) => `die Backen liegen an bei ${n}`,
    theWeakerWheelLacksOn: (n: string) => `dem schwächeren Rad fehlen ${n} auf den Rollen`,
    theOddWheelGivesOf: (n: string) =>
      `das abweichende Rad bringt ${n} von dem, was es vorher brachte`,
    theOddWheelGivesBackwards: (n: string) =>
      `das abweichende Rad bringt rückwärts ${n} von dem, was es vorwärts bringt`,
    theForceOnTheRollers: (n: string) => `die Kraft auf den Rollen schwankt um ${n} je Umdrehung`,
    teethBackLetTheDrum: (n: string) => `${n} Zähne zurück geben die Trommel frei`,
    theAdjusterStandsAtTooth: (n: string) => `der Nachsteller steht auf Zahn ${n}`,
    onOneWheel: ' an einem Rad, ',
    onTheOther: ' am anderen',
    aSoundOne: (text: string, figureOf: string) => `${text}, bei einer intakten ${figureOf}`,
    nothingSaidYet: 'noch nichts angegeben',
  },

  /* ui/stations/see/sign-row.ts */
  seeSignRow: {
    notSure: 'nicht sicher',
    less: 'weniger',
    more: 'mehr',
    thatIsIt: 'Das ist es',
  },

  /* ui/stations/see/words.ts */
  seeWords: {
    titles: {
      drag: 'Sie schleift oder wird heiß',
      pedal: 'Langes oder weiches Pedal',
      lever: 'Hebel geht zu weit oder hält nicht',
      braking: 'Schwach, greift zu scharf oder zieht',
      noise: 'Sie macht ein Geräusch',
      free: 'Schleift sie sich frei?',
      all: 'Was ich sehe',
    },
    onTheRoad: 'Auf der Straße',
    atThePedal: 'Am Pedal',
    atTheHandLever: 'An der Handbremse',
    wheelsUp: 'Räder angehoben',
    onRollers: 'Auf dem Rollenprüfstand',
    drumOff: 'Trommel ab',
    or: ' oder ',
  },

  /* ui/stations/start/index.ts */
  start: {
    drumStuck: 'Trommel sitzt fest',
    willNotComeOffOr: 'geht nicht ab oder nicht wieder drauf',
    itDragsOrGetsHot: 'Sie schleift oder wird heiß',
    oneWheelOrAllWhen: 'ein Rad oder alle, wann und wie',
    longOrSoftPedal: 'Langes oder weiches Pedal',
    farSpringySinkingPulsing: 'weit, federnd, absinkend, pulsierend',
    leverGoesTooFar: 'Handbremse geht zu weit',
    orWillNotHoldOn: 'oder hält nicht am Hang',
    fittingShoes: 'Backen einbauen',
    inOrderWithTheSizes: 'der Reihe nach, mit den Einstellmaßen',
    areThesePartsStillGood: 'Sind diese Teile noch gut?',
    drumLiningsSpringsCylinder: 'Trommel, Beläge, Federn, Zylinder',
    justShowMeHowIt: 'Einfach zeigen, wie sie arbeitet',
    pressThePedalSeeAll: 'das Pedal treten, alles davon sehen',
    waysIn: 'Einstiege',
    whatIsWrong: 'Was stimmt nicht?',
    touchALineOrAsk: 'Tippen Sie eine Zeile an, oder fragen Sie in eigenen Worten.',
  },

  /* ui/stations/start/part.ts */
  startPart: {
    aWayIn: 'ein Einstieg',
  },

  /* ui/stations/vary/beside.ts */
  varyBeside: {
    noOtherBrake: 'keine andere Bremse',
  },

  /* ui/stations/vary/contours.ts */
  varyContours: {
    across: (under: number, j: number) => `across ${under} ${j}`,
    up: (i: unknown, under: number) => `up ${i} ${under}`,
  },

  /* ui/stations/vary/controls.ts */
  varyControls: {
    to: 'Bis',
    rangeFoundToAllowedTwo: (from: string, to: string) =>
      `Bereich: gefunden ${from} bis ${to}; erlaubt: zwei verschiedene Enden.`,
    howItIsAsked: 'Wie gefragt wird',
    drum: 'Trommel',
    theAdjusterWorksInThat:
      'Der Nachsteller arbeitet bei dieser Betätigung; sonst behält er seinen Zahn',
  },

  /* ui/stations/vary/curve.ts */
  varyCurve: {
    from: (from: string) => ` ab ${from}`,
  },

  /* ui/stations/vary/desk.ts */
  varyDesk: {
    withoutTheFaultThatIs: 'ohne den eingebauten Fehler',
    withItsOwnAdjuster: 'mit dem eigenen Nachsteller',
    noSuchBrakeAllowed: (path: string, found: string, allowed: string) =>
      `Keine solche Bremse: ${path} ${found}; erlaubt: ${allowed}.`,
    noSuchBrake: 'Keine solche Bremse.',
  },

  /* ui/stations/vary/index.ts */
  vary: {
    whatDrawsMapsCouldNot:
      'Der Teil, der Karten zeichnet, ließ sich nicht laden: besteht eine Netzverbindung?',
    whatDrawsRegionsCouldNot:
      'Der Teil, der Gebiete zeichnet, ließ sich nicht laden: besteht eine Netzverbindung?',
    stopWorkingItOut: 'Berechnung anhalten',
    theCurvesBrokeOff: (trouble: string) => `Die Kurven brachen ab: ${trouble}`,
    cableN: (cable: string) => `, Seilzug ${cable} N`,
    asItIs: 'Wie sie ist',
    curves: 'Kurven',
    region: 'Gebiet',
    asItIs2: (pressed: string) => `Wie sie ist, ${pressed}`,
    asItIs3: ', wie sie ist',
    asItIs4: (value: string) => `; wie sie ist, ${value}`,
  },

  /* ui/stations/vary/known.ts */
  varyKnown: {
    perCent: '± Prozent',
    byItsGauge: '± nach dem Messmittel',
    timesOrOver: 'mal oder geteilt durch',
    how: 'Wie',
    remove: 'Entfernen',
    whatMattersMostFor: (name: string) => `Was am meisten zählt für ${name}`,
    judged: {
      'cannot be': 'Lässt sich so nicht bauen',
      lost: 'Findet keine Lage: die Trommel lässt keine Stellung zu',
      locks: 'Eine Backe blockiert von selbst',
      yields: 'Ein Teil gibt nach',
      drags: 'Schleift in gelöstem Zustand',
      'front off': 'Vorderer Belag trägt nicht',
      'rear off': 'Hinterer Belag trägt nicht',
      'lining limit': 'Ein Belag ist unter seiner Grenze',
      'drum limit': 'Die Trommel ist über ihrer Grenze',
      clicks: 'Der Nachsteller klickt bei dieser Betätigung',
    },
    howLikely: 'Wie wahrscheinlich',
    inWord: 'in',
    of: 'von',
    slopeDown: 'Gefälle',
    holdsOnNoseDown: (percent: string) => `Hält auf ${percent} %, bergab`,
    slopeUp: 'Steigung',
    holdsOnNoseUp: (percent: string) => `Hält auf ${percent} %, bergauf`,
    inNoneOfThem: (never: string) => `Bei keiner davon: ${never}.`,
    bands: 'Bänder',
    of95Of100Brakes: '95 von 100 Bremsen',
    from: 'von',
    middle: 'Mitte',
    to: 'bis',
    of100SuchBrakesLock: (untold: string) =>
      `${untold} von 100 solchen Bremsen blockieren, geben nach oder lassen sich nicht bauen: sie stehen in keinem Band.`,
    moreBrakesAreBeingDrawn: 'Weitere Bremsen werden gezogen …',
    howWellItIsKnown: 'Wie genau es bekannt ist',
    frictionIsNeverKnownExactly:
      'Der Reibwert ist nie genau bekannt, ein Maß nicht genauer als das Messmittel. Nennen Sie, was ungenau ist, und sehen Sie, was das bewirkt: Bänder statt einzelner Werte.',
    addWhatIsNotKnown: 'Hinzufügen, was nicht genau bekannt ist',
    seedTheSameDrawsAgain: 'Startzahl: dieselben Ziehungen noch einmal',
  },

  /* ui/stations/vary/map-view.ts */
  varyMapView: {
    mapOfArrowKeysGo: (name: string, told: string) =>
      `Karte von ${name}; Pfeiltasten gehen darüber. ${told}`,
  },

  /* ui/stations/vary/own-formula.ts */
  varyOwnFormula: {
    whatReadsFormulasCouldNot:
      'Der Teil, der Formeln liest, ließ sich nicht laden: besteht eine Netzverbindung?',
    namesThatFit: 'Passende Namen',
    itsReaderIsComing: 'Der Formelleser wird geladen …',
    atCharacterFoundAllowed: (at: number, found: string, why: string) =>
      `Bei Zeichen ${at}: gefunden „${found}“; erlaubt: ${why}.`,
    nothingToTell: 'nichts anzugeben',
    asTheBrakeIs: (told: string) => `Wie die Bremse ist: ${told}.`,
    ownFormula: 'Eigene Formel',
    edit: 'Bearbeiten',
    remove: 'Entfernen',
    formulasAreKeptAtMost: (mostformulas: number) =>
      `Höchstens ${mostformulas} Formeln werden aufbewahrt: entfernen Sie eine für eine neue.`,
    name: 'Name',
    readingsSizesAndUnitsSuch:
      'Messwerte, Maße und Einheiten, etwa torque / (drum.diameterNew / 2)',
    readIt: 'Lesen',
  },

  /* ui/stations/vary/own-rows.ts */
  varyOwnRows: {
    ownFormulas: 'Eigene Formeln',
    reading: 'Messwert',
    value: 'Wert',
    from: 'Aus',
    atCharacterFoundAllowed: (at: number, found: string, why: string) =>
      `(bei Zeichen ${at}: gefunden „${found}“; erlaubt: ${why})`,
  },

  /* ui/stations/vary/part.ts */
  varyPart: {
    own: (name: string) => `own ${name}`,
    aToleranceWithinItsBounds: 'eine Toleranz innerhalb ihrer Grenzen',
    twoEndsApart: 'zwei verschiedene Enden',
    whatIsVaried: 'was verändert wird',
    whatIsRead: 'was abgelesen wird',
    aSecondThingVaried: 'eine zweite Größe verändert',
    aMap: 'eine Karte',
    aBrakeBesideIt: 'eine Bremse daneben',
    howItIsPressed: 'wie betätigt wird',
    theAdjusterAtWork: 'Nachsteller arbeitet',
    theAdjusterHeld: 'Nachsteller festgehalten',
    formula: (name: string) => `Formel ${name}`,
    aFormulaLess: 'eine Formel weniger',
    howWellItIsKnown: 'wie genau es bekannt ist',
    whatIf: 'Was wäre, wenn',
    aPointOfTheCurve: 'ein Punkt der Kurve',
    varyPick: (of: string) => `vary.pick ${of}`,
    asItWas: 'wie vorher',
  },

  /* ui/stations/vary/ready.ts */
  varyReady: {
    factorAgainstFrictionName: 'Kennwert über Reibwert',
    leadingShareAgainstName: 'Anteil der auflaufenden Backe über Reibwert',
    clearanceAgainstToothName: 'Lüftspiel über Zahn',
    torqueAgainstBoreName: 'Moment über Bohrung',
    slopeHeldAgainstName: 'Gehaltene Steigung über Seilkraft',
    teethTakenHotName: 'Heiß nachgestellte Zähne',
    distanceToAName: 'Strecke bis zum Klick über Spiel im Schlitz',
    distanceToAName2: 'Strecke bis zum Klick über Teilung',
    distanceToAName3: 'Strecke bis zum Klick über Zahn des Hebels',
    mapTorqueOverName: 'Karte: Moment über Reibwert und Bohrung',
    pedalTravelAgainstName: 'Pedalweg über Verschleiß',
  },

  /* ui/stations/vary/region-view.ts */
  varyRegionView: {
    whereItDoesWhatIs: 'Wo sie tut, was gewünscht ist',
    noneHere: 'hier keine',
    mostRoom: 'am meisten Luft',
    onTheStage: 'auf der Bühne',
    sliceBySlice: (name: string) => `${name}, Schnitt für Schnitt`,
    atLeast: 'mindestens',
    atMost: 'höchstens',
    drumAtC: (hot: string) => `, Trommel bei ${hot} °C`,
    mostRoom2: ', am meisten Luft',
    not: 'nicht ',
    asWished: (name: string, values: string, unit: string, not: string, wishTold: string) =>
      `${name} ${values} ${unit}, ${not}wie gewünscht: ${wishTold}`,
    regionOfTheAnswerArrow: (told: string) =>
      `Gebiet der Antwort; Pfeiltasten gehen darüber. ${told}`,
    hatchedItLocksGivesWay: 'schraffiert: sie blockiert, gibt nach oder lässt sich nicht bauen',
  },

  /* ui/stations/vary/room.ts */
  varyRoom: {
    madeRoomThingsAreRead: (gone: string, mostread: number) =>
      `${gone} hat Platz gemacht: höchstens ${mostread} Größen werden abgelesen.`,
  },

  /* ui/stations/vary/scale.ts */
  varyScale: {
    markWords: {
      drags: 'Beläge schleifen in Ruhe',
      'front off': 'vordere Backe nicht an der Trommel',
      'rear off': 'hintere Backe nicht an der Trommel',
      'lining limit': 'Belag unter seiner Grenze',
      'drum limit': 'Trommel über ihrer Grenze',
    },
    shoeLocks: (locked: unknown) => `${locked === 'front' ? 'vordere' : 'hintere'} Backe blockiert`,
    noSuchBrake: 'keine solche Bremse',
    aPartGivesWay: 'ein Teil gibt nach',
  },

  /* ui/stations/vary/seek-controls.ts */
  varySeekControls: {
    howItIsAsked: 'Wie gefragt wird',
    drum: 'Trommel',
  },

  /* ui/stations/vary/seek-ready.ts */
  varySeekReady: {
    from: (clearance: string) =>
      `${clearance} mm sind frei gewählt; die Abfahrt ist die heißeste der Szene`,
    tooth: 'Zahngröße',
    pitch: 'Teilung',
    whichKeepsClearanceUnderAnd: (tooth: string, clearance: string) =>
      `Welche ${tooth} hält das Lüftspiel unter ${clearance} und stellt nach dieser Abfahrt nie zu weit nach?`,
    theSameWithName: 'Dasselbe, auch das Spiel im Schlitz frei',
    told: (part: string, deceleration: string) =>
      `${part} % einer Bremsung mit ${deceleration} m/s²`,
    from2: (bar: string, within: string) =>
      `Anteil und Bremsung sind die der Szene; ${bar} bar braucht diese Bremse dafür; auf ±${within} %`,
    whichBoreAndArmGive: (told: string) =>
      `Welche Bohrung und welcher Hebelarm bringen dieser Achse ${told}?`,
    theSameWithName2: 'Dasselbe, auch der Reibwert frei',
  },

  /* ui/stations/vary/seek-side.ts */
  varySeekSide: {
    upTo: 'Bis',
    alsoMissed: ', und ',
    nothingYet: 'noch nichts',
    atMost: (most: string) => `höchstens ${most}`,
    atLeast: (least: string) => `mindestens ${least}`,
    to: (least: string, most: string) => `${least} bis ${most}`,
    drumAtC: (ends: string, hot: string) => `${ends}, Trommel bei ${hot} °C`,
    whatIsAsked: 'Was gefragt ist',
    whatFollows: 'Was folgt daraus?',
    whichSizesDoIt: 'Welche Maße leisten es?',
    stopLooking: 'Suche anhalten',
    lookOnceMore: 'Noch einmal suchen',
    lookForThem: 'Suchen',
    looking: 'Wird gesucht …',
    nothingHasBeenLookedFor: 'Noch ist nichts gesucht.',
    nameASizeToChoose: 'Nennen Sie ein Maß zum Wählen und was gewünscht ist.',
    brakes: (brakes: string) => `${brakes} Bremsen berechnet`,
    looking2: ', Suche läuft',
    drawingTheRegion: ', Gebiet wird gezeichnet',
    stopped: ', angehalten',
    noneYet: 'Noch keine',
    noneOfThemDoesIt: 'Keine davon leistet es',
    to2: (name: string, low: string, high: string) => `${name} ${low} bis ${high}`,
    howFarEachSizeReaches: 'Wie weit jedes Maß reicht',
    doesIt: 'Leistet es',
    from: 'von',
    to3: 'bis',
    mostRoom: 'am meisten Luft',
    notEveryPairOfThese:
      'Nicht jedes Paar davon: ein Wert passt nur zu manchen des anderen. Welche, zeigt das Bild.',
    putTheOneWithMost: 'Die mit am meisten Luft auf die Bühne stellen',
    isNot: (name: string, toPrecision: string, wishTold: string) =>
      `${name} ist ${toPrecision}, nicht ${wishTold}`,
    atIts: (name: string, end: 'least' | 'most', value: string) =>
      `${name} am ${end === 'least' ? 'kleinsten' : 'größten'} Wert, ${value}`,
    noneBetweenTheseBoundsDoes: 'Keine zwischen diesen Grenzen leistet es.',
    nearestThere: (place: string, missed: string) => `Am nächsten: ${place}; dort ${missed}.`,
    inTheWay: (bounds: unknown) => ['Im Weg: ', bounds, '.'],
    noBoundIsInThe:
      'Keine Grenze ist im Weg: zwei Wünsche widersprechen sich, oder eine solche Bremse lässt sich nicht berechnen.',
    putTheNearestOnThe: 'Die nächstliegende auf die Bühne stellen',
    asWished: 'wie gewünscht',
    notAsWished: 'nicht wie gewünscht',
    whatCameOfIt: 'Was herauskam',
    itBrokeOff: (trouble: string) => `Abgebrochen: ${trouble}`,
    whatIsWished: 'Was gewünscht ist',
    wished: 'Gewünscht',
    asItIs: 'wie sie ist',
    onTheStage: 'auf der Bühne',
    backToTheBrakeAs: 'Zurück zur Bremse, wie sie ist',
    foundToAllowedTwoEnds: (name: string, from: string, to: string) =>
      `${name}: gefunden ${from} bis ${to}; erlaubt: zwei verschiedene Enden.`,
    now: (named: string, value: string) => `${named}: jetzt ${value}`,
    remove: 'Entfernen',
    foundAllowedANumberFrom: (
      name: string,
      text: string,
      allowed: string,
      allowed2: string,
      unit: string,
    ) =>
      `${name}: gefunden „${text}“; erlaubt: eine Zahl von ${allowed} bis ${allowed2}${unit} oder nichts.`,
    atLeast2: 'Mindestens',
    atMost2: 'Höchstens',
    drumAt: 'Trommel bei',
    sizesToChoose: 'Maße zum Wählen',
    addOneUpTo: (mostfree: number) => `Eins hinzufügen, bis zu ${mostfree}`,
    addAReadingUpTo: (mostwishes: number) => `Messwert hinzufügen, bis zu ${mostwishes}`,
    readyMade: 'Vorbereitet',
    whatIf: 'Was wäre, wenn',
    sayWhatABrakeShall:
      'Sagen Sie, was eine Bremse leisten soll, und sehen Sie, welche Maße das tun: ein Gebiet, nicht eine Zahl.',
  },

  /* ui/stations/vary/side.ts */
  varySide: {
    andOf: '; und für ',
    theShoeLocksTheDrum: (locked: unknown) =>
      `Die ${locked === 'front' ? 'vordere' : 'hintere'} Backe blockiert: die Trommel zieht sie von selbst fest, und eine Kraft lässt sich nicht angeben.`,
    aPartOfTheStruts: 'Ein Teil im Kraftweg der Druckstange gäbe vorher nach.',
    nothingBalancesHere: 'Hier gibt es kein Gleichgewicht.',
    andMore: '; und mehr',
    noSuchBrakeItCould: (told: string, andMore: string) =>
      `„Keine solche Bremse“: sie ließe sich nicht zusammenbauen. Erlaubt ist, für ${told}${andMore}.`,
    whatIsRead: 'Was abgelesen wird',
    backTo: (value: string) => `Zurück auf ${value}`,
    pressOrDragOnThe:
      'Drücken oder ziehen Sie auf dem Bild, oder gehen Sie mit Tab hin und nehmen Sie die Pfeiltasten: die Bremse dieses Punkts steht auf der Bühne.',
    name: 'sonst nichts',
    values: (length: number) => (length === 1 ? `${length} Wert` : `${length} Werte`),
    whole: 'ganze ',
    foundAllowed1ToNumbers: (
      name: string,
      found: string,
      mostcurves: number,
      whole: string,
      range: string,
      range2: string,
      unit: string,
    ) =>
      `${name}: gefunden ${found}; erlaubt: 1 bis ${mostcurves} ${whole}Zahlen von ${range} bis ${range2}${unit}, mit Leerzeichen dazwischen.`,
    aCurveForEachValue: 'Eine Kurve je Wert',
    aMapOfBoth: 'Eine Karte aus beiden',
    aSecondThingVaried: 'Eine zweite Größe verändert',
    picture: 'Bild',
    fromTheLeastToThe: 'Vom kleinsten bis zum größten Wert von',
    itsValues: 'Ihre Werte',
    whatIsAsked: 'Was gefragt ist',
    vary: 'Verändern',
    readUpTo: (mostread: number) => `Ablesen, bis zu ${mostread}`,
    besideIt: 'Daneben',
    howWellItIsKnown: 'Wie genau es bekannt ist',
    ownFormula: 'Eigene Formel',
    readyMade: 'Vorbereitet',
    furtherDown: 'Weiter unten',
    whatIf: 'Was wäre, wenn',
    changeOneThingAndSee:
      'Ändern Sie eine Größe und sehen Sie, was folgt; jeder Punkt ist eine neu berechnete Bremse.',
  },

  /* ui/stations/vary/tap.ts */
  varyTap: {
    itWereAnother: (name: string) => `der Wert anders wäre: ${name}`,
    whatIf: (name: unknown) => ['Was wäre, wenn', name],
    whatIfItWereAnother: 'Was wäre, wenn der Wert anders wäre?',
    whatIfItWereAnother2: ': was wäre, wenn der Wert anders wäre?',
  },

  /* ui/stations/vary/wants.ts */
  varyWants: {
    theQuestionTurnedRound: 'Frage umgedreht',
    oneThingVaried: 'eine Größe verändert',
    sizesToChoose: 'Maße zum Wählen',
    whatIsWished: 'was gewünscht ist',
    aQuestionTurnedRound: 'eine umgedrehte Frage',
  },

  /* ui/stations/wear-events.ts */
  wearEvents: {
    events: 'Ereignisse',
    nothingHasHappenedYetWear:
      'Noch ist nichts geschehen. Weiter verschleißen: Klicks, Grenzen und alles, was schiefgeht, stehen hier, und jede Zeile führt zurück zu ihrem Augenblick.',
    theLastOf: (most: number, length: number) => `Die letzten ${most} von ${length}.`,
    showTheClickAgain: (text: string) => `Den Klick noch einmal zeigen: ${text}`,
    showIt: 'Zeigen',
  },

  /* ui/stations/wear-forecast.ts */
  wearForecast: {
    names: {
      'front lining': 'Vorderer Belag bis zu seiner Grenze',
      'rear lining': 'Hinterer Belag bis zu seiner Grenze',
      drum: 'Trommel bis zum größten Durchmesser',
      teeth: 'Nachsteller bis zu seinem Ende',
    },
    forecast: 'Vorhersage',
    noneYetTooLittleHas: 'Noch keine: zu wenig verschlissen, um eine Rate anzugeben.',
    reached: 'Erreicht.',
    bandToKm: (low: string, high: string) => `Band ${low} bis ${high} km`,
    about: (left: string, km: unknown, low: unknown) => ['etwa ', left, km, low],
  },

  /* ui/stations/wear-hot.ts */
  wearHot: {
    gapOfTheBrakeAs: 'Spalt der neuen Bremse',
    wearOfTheLinings: 'Verschleiß der Beläge',
    wearOfTheDrum: 'Verschleiß der Trommel',
    takenUpByTheAdjuster: 'Vom Nachsteller aufgenommen',
    growthOfTheHotDrum: 'Ausdehnung der heißen Trommel',
    giveUnderThePress: 'Nachgeben unter der Betätigung',
    howFarTheSeatsOf: 'Wie weit die Sitze der Druckstange bei der Betätigung auseinandergehen, mm',
    beyondTheStrut: 'Über die Druckstange hinaus',
    neededForAStep: 'Nötig für einen Schritt',
    theHotLockHeldIt: 'die Heißsperre hielt ihn: kein Schritt',
    noStep: 'kein Schritt',
    andWhatHeatHasLent: (steps: string) =>
      `${steps}, und was die Hitze geliehen hat, geht über Nacht zurück`,
    drumCAtTheFoot: (temperature: string, did: string) =>
      `Trommel ${temperature} °C am Fuß des Bergs: ${did}.`,
    dragsCold: 'Schleift kalt',
    freeCold: 'Kalt frei',
    theLiningsStandMmInside: (gapCold: string) =>
      `Die Beläge stehen ${gapCold} mm weiter als die kalte Trommel.`,
    clearanceMmItWasBefore: (down: string, gapBefore: string, gapHot: string) =>
      `Lüftspiel ${down} mm; vorher ${gapBefore}, heiß ${gapHot}.`,
    atTheFoot: 'Am Fuß des Bergs',
    nextMorning: 'Am nächsten Morgen',
    hotPress: 'Heiß betätigt',
    descentAt40KmH: 'Abfahrt mit 40 km/h, die Bremse hält das Tempo',
    driveDownPressAtThe: 'Hinunterfahren, am Fuß treten, abkühlen lassen',
    onTheStage: 'Auf der Bühne',
  },

  /* ui/stations/wear-on-paper.ts */
  wearOnPaper: {
    overKm: (title: string, unit: string) => `${title}, ${unit}, über km`,
    wearReport: 'Verschleißbericht',
    partOfItIsStill: ' Ein Teil davon wird noch gefahren.',
    fromToKm: (guest: string, distance: string, distance2: string, whole: string) =>
      `${guest}: von ${distance} bis ${distance2} km.${whole}`,
    wearReport2: 'Verschleißbericht',
    asks: ['Name', 'Datum'],
    atTheStart: 'Am Anfang',
    now: 'Jetzt',
    limit: 'Grenze',
    frontLiningThinnest: 'Vorderer Belag, dünnste Stelle',
    least: (thicknessMin: string) => `mindestens ${thicknessMin}`,
    rearLiningThinnest: 'Hinterer Belag, dünnste Stelle',
    drumDiameter: 'Trommel, Durchmesser',
    most: (radiusMax: string) => `höchstens ${radiusMax}`,
    clearanceBothLinings: 'Lüftspiel, beide Beläge',
    pedalTravel: 'Pedalweg',
    stepOfTheAdjuster: 'Schritt des Nachstellers',
    of: (teeth: number) => `von ${teeth}`,
    theLastOf: (events: number, length: number) => `: die letzten ${events} von ${length}`,
    whatHappened: (theLast: string) => `Was geschah${theLast}`,
    nothingYet: 'Noch nichts.',
  },

  /* ui/stations/wear-part.ts */
  wearPart: {
    pageOfWear: 'Seite von Verschleiß',
    howFarToWearOn: 'wie weit verschleißen',
    curveOfTheChart: 'Kurve des Diagramms',
    hillOf: (name: string | undefined) => `Berg ${name}`,
    road: (name: string | undefined) => `Strecke: ${name}`,
    stopsOfTheRoad: 'Bremsungen der Strecke',
    whatWasTyped: 'was eingegeben wurde',
    stopsOfTheRoadShown: 'Bremsungen der Strecke gezeigt',
    stopsInReverse: 'Bremsungen rückwärts',
    wornBy: {
      100: 'um 100 km verschlissen',
      1000: 'um 1\u202f000 km verschlissen',
      click: 'bis zum nächsten Klick verschlissen',
      limit: 'bis zur Grenze verschlissen',
    },
    wornOn: 'weiter verschlissen',
    to: (distance: string) => `bis ${distance}`,
    hotPress: 'heiß betätigt',
    beforeTheHill: 'vor dem Berg',
    atTheFoot: 'am Fuß des Bergs',
    nextMorning: 'am nächsten Morgen',
    startFrom: (name: string) => `Beginn mit ${name}`,
  },

  /* ui/stations/wear-set-up.ts */
  wearSetUp: {
    asTheRoadHasIt: 'wie in der Strecke',
    oneStopInTen: 'eine Bremsung von zehn',
    oneInFour: 'eine von vier',
    halfOfThem: 'die Hälfte davon',
    setUp: 'Einrichten',
    adjuster: 'Nachsteller',
    hotLockABimetalHolds: 'Heißsperre: ein Bimetall hält den Nachsteller bei heißer Trommel',
    onAboveC: (lockAt: number) => `Ein, über ${lockAt} °C`,
    off: 'Aus',
    turnedBy: 'Gedreht durch',
    eachPressOfThePedal: 'jede Betätigung des Pedals',
    thePullOfTheParking: 'nur das Anziehen der Handbremse',
    stopsInReverse: 'Bremsungen rückwärts',
    startFrom: 'Beginnen mit',
    choose: 'wählen…',
    road: 'Strecke',
    secondCurve: 'Zweite Kurve',
  },

  /* ui/stations/wear.ts */
  wear: {
    releasedItDragsALining: (torque: unknown) => [
      'Gelöst schleift sie: ein Belag steht weiter als die kalte Trommel, und es braucht ',
      torque,
      ', um sie zu drehen.',
    ],
    click: 'Klick',
    readings: 'Messwerte',
    distance: 'Strecke',
    sinceTheLast: (step: 'click' | 'step') =>
      `Seit dem letzten ${step === 'click' ? 'Klick' : 'Schritt'}`,
    noYet: (step: 'click' | 'step') => `Noch kein ${step === 'click' ? 'Klick' : 'Schritt'}`,
    clearanceFront: 'Lüftspiel, vorn',
    clearanceRear: 'Lüftspiel, hinten',
    temperature: 'Temperatur',
    afterSpringsAtTheRoads:
      'Nach Abzug der Federn, bei der ersten Art Bremsung der Strecke, vorwärts',
    factorAfterSprings: 'Kennwert nach Abzug der Federn',
    hotPress: 'Heiß betätigt',
    setUp: 'Einrichten',
    wear: 'Verschleiß',
    shownBelow: 'Unten gezeigt',
    toNext: (step: 'click' | 'step') =>
      `bis zum nächsten ${step === 'click' ? 'Klick' : 'Schritt'}`,
    toTheLimit: 'bis zur Grenze',
    wearOn: 'Weiter verschleißen',
    wearOnFromHere: 'Von hier weiter verschleißen',
    stopHere: 'Hier anhalten',
    theLifeSoFarIs: (floor: string) => `Die bisherige Laufleistung wird neu gefahren: ${floor} %.`,
    showTheClickAgain: 'Den Klick noch einmal zeigen',
    pressItHere: 'Hier betätigen',
    controls: 'Bedienung',
    road: 'Strecke',
    gapDrawn: 'Spalt gezeichnet',
    wearOnBy: 'Weiter verschleißen um',
    backToNew: 'Zurück auf neu',
    allReadingsLayers: 'Alle Messwerte, Ebenen',
    toTheNext: (step: 'click' | 'step') =>
      `Bis zum nächsten ${step === 'click' ? 'Klick' : 'Schritt'}`,
    wearOn1Name: 'Um 1\u202f000 km verschleißen',
  },

  /* ui/units.ts */
  units: {
    of0001Inch: '0.001 inch',
    of1Um: '1 um',
    of1MileHour: '1 mile/hour',
    of1CycleMinute: '1 cycle/minute',
    of1000Psi: '1000 psi',
    allowed: (range: number, range2: number, unit: string) =>
      `eine Größe wie ${range} bis ${range2} ${unit} oder in einer anderen Einheit derselben Art`,
    characters: (text: string, length: number) => `${text}…, ${length} Zeichen`,
    withTheUnknownUnit: (text: string, parts: string) =>
      `„${text}“ mit der unbekannten Einheit „${parts}“`,
    whichIsNo: (text: string, unit: string) => `„${text}“, was keine Angabe in ${unit} ist`,
    mIsMilliWasMeant: (value: number, mega: string) =>
      ` (m ist Milli; war ${value} ${mega} gemeint?)`,
    readAs: (text: string, inUnit: string, unit: string, asked: string) =>
      `„${text}“, gelesen als ${inUnit} ${unit}${asked}`,
    readAs2: (inUnit: string, unit: string) => `gelesen als ${inUnit} ${unit}`,
    readAs3: (typed: string, inUnit: string, unit: string) =>
      `gelesen als ${typed} = ${inUnit} ${unit}`,
  },

  /* ui/words.ts */
  wordsPage: {
    applyHint: {
      released:
        'Das Pedal halten oder daran entlangziehen. Tasten: Leertaste hält 40 bar, Pfeile stellen bar für bar.',
      forward:
        'Drehen Sie die Trommel rückwärts und treten Sie noch einmal: die beiden Backen tauschen die Rollen.',
      backward: 'Drehen Sie sie wieder vorwärts: auflaufend ist eine Rolle, kein Platz.',
      stopped:
        'Nichts dreht: kein Moment, kein Kennwert. Beide Kämme gleichen dem der ablaufenden Backe beim Drehen: ein stehender Belag haftet beim Ausfahren an der Trommel, das hält ihn zurück.',
    },
    lostText:
      'Kein Gleichgewicht gefunden: bei dieser Passung und diesem Reibwert hebt die Trommel eine Backe von ihrer Abstützung. Eine Kraft lässt sich nicht angeben.',
    ends: {
      distance: '',
      click: '',
      'lining limit': 'Zu Ende: ein Belag ist an seiner Grenze.',
      'drum limit': 'Zu Ende: die Trommel ist über ihrem größten Durchmesser.',
      'worn through': 'Zu Ende: ein Belag ist bis auf seinen Kranz durchgeschliffen.',
      'piston run-out': 'Zu Ende: ein Kolben ist aus seiner Bohrung ausgetreten.',
      'no balance':
        'Zu Ende: die Trommel hebt eine Backe von ihrer Abstützung; es gibt kein Gleichgewicht.',
      seized: 'Nicht weiter gefahren: festgegangen, das Rad würde rutschen, bevor es dreht.',
      'gave way': 'Nicht weiter gefahren: stärker gespannt, als die Druckstange verträgt.',
      locks: 'Nicht gefahren: eine Backe würde von selbst blockieren.',
    },
    troubles: {
      'no start':
        'Nicht gefahren: der Teil der Seite, der die Laufleistung fährt, wurde nicht geladen. Falls die Seite inzwischen erneuert wurde, laden Sie sie neu.',
      silent:
        'Nicht weiter gefahren: der Teil der Seite, der die Laufleistung fährt, antwortet nicht.',
      error: 'Nicht weiter gefahren: der Teil der Seite, der die Laufleistung fährt, brach ab.',
    },
    whatWasDrivenIsKept: (troubles: string, message: string) =>
      `${troubles} ${message}Was gefahren wurde, bleibt; Weiter verschleißen versucht es noch einmal.`,
  },

  /* ui/working/body-polygon.ts */
  workingBodyPolygon: {
    nothingPushesOnTheShoe: (side: 'front' | 'rear') =>
      `Nichts drückt auf die ${side === 'front' ? 'vordere' : 'hintere'} Backe.`,
    forcesOnTheShoeTip: (side: 'front' | 'rear', told: string) =>
      `Kräfte an der ${side === 'front' ? 'vorderen' : 'hinteren'} Backe, aneinandergereiht: ${told}`,
    front: 'Vordere',
    rear: 'Hintere',
    shoeLeftOverN: (front: string, told: string, hypot: string) =>
      `${front} Backe: ${told}. Rest: ${hypot} N.`,
  },

  /* ui/working/body-words.ts */
  workingBodyWords: {
    piston: 'Kolben',
    climbingLever: 'Hebel beim Übersteigen',
    holdDown: 'Niederhalter',
    strut: 'Druckstange',
    drumsPressure: 'Druck der Trommel',
    drumsFriction: 'Reibung der Trommel',
    anchor: 'Lager',
    parkingCable: 'Handbremsseil',
    hand: 'Hand',
    stopCylinder: 'Anschlag: Zylinder',
    stopHub: 'Anschlag: Nabe',
    stopLever: 'Anschlag: Bremshebel',
    stopPads: 'Anschlag: Auflagen',
  },

  /* ui/working/sheet.ts */
  workingSheet: {
    copiedAs: (what: string) => `Kopiert als ${what}.`,
    thisBrowserLetsNothingBe: (text: string) =>
      `Dieser Browser lässt kein Kopieren zu; hier ist es: ${text}`,
    numbersPutIn: 'Zahlen eingesetzt',
    symbol: 'Zeichen',
    number: 'Zahl',
    whatItIs: 'Was es ist',
    whereFrom: 'Woher',
    wayToTheFactorShoe: (side: 'front' | 'rear') =>
      `Weg zum Kennwert, ${side === 'front' ? 'vordere' : 'hintere'} Backe`,
    front: 'Vordere',
    rear: 'Hintere',
    shoe: (front: string, role: 'leading' | 'trailing') =>
      `${front} Backe, ${role === 'leading' ? 'auflaufend' : 'ablaufend'}`,
    byTheClosedForm: 'Nach der geschlossenen Formel',
    byTheSumOverThe: 'Nach der Summe über die Elemente des Belags',
    closedFormElements: (closed: string) => `Geschlossene Formel ${closed}, Elemente`,
    elements: 'Elemente',
    read: (closedForm: string, elements: string, read: string) =>
      `${closedForm} ${elements}, abgelesen ${read}.`,
    whyTheyDiffer: 'Warum sie sich unterscheiden',
    nothingToTellOfThe: (name: string) =>
      `${name}: für die Bremse, wie sie steht, nichts anzugeben. Meist muss sie betätigt sein: halten Sie das Pedal (Leertaste) und sehen Sie noch einmal nach.`,
    workingOf: (name: string) => `Rechenweg zu ${name}`,
    theBrakeIsStillMoving: 'Die Bremse bewegt sich noch: das ergibt dieselbe Stellung in Ruhe.',
    itIsToldRoundedDown: ' Angegeben ist abgerundet: kein Belag ist dicker, als er ist.',
    copyAsText: 'Als Text kopieren',
    copyAsLaTeX: 'Als LaTeX kopieren',
    fromPressureToFactor: 'Vom Druck zum Kennwert',
    allForcesOnEachShoe: 'Alle Kräfte an jeder Backe, aneinandergereiht',
    theyComeBackToWhere: 'Sie kommen zurück, wo sie begannen: die Backe steht im Gleichgewicht.',
  },

  /* ui/working/whole.ts */
  workingWhole: {
    front: 'Vordere',
    rear: 'Hintere',
    shoe: (front: string, role: 'leading' | 'trailing') =>
      `${front} Backe, ${role === 'leading' ? 'auflaufend' : 'ablaufend'}`,
    byTheSumOverThe: 'nach der Summe über die Elemente des Belags',
    numbersPutIn: 'Zahlen eingesetzt:',
    byTheClosedForm: 'nach der geschlossenen Formel',
  },
};

export default german;
