export const usage = `takeup: one leading/trailing drum brake, computed

  press SCENE [--pressure 4] [--drum forward|stopped|backward] [--json]
        one application at MPa, its readings
        [--state NAME | --km N]   in a standing state, or worn on by N km
        [--temperature 20]        of the drum, °C
        [--cable 0]               pull of the parking cable at the hook, N
        [--surface dry|damp|wet|glazed|greasy]   of both linings
        [--stuck front|rear|none] a piston that does not move
        [--flexible]              steel shoes that bend, instead of rigid ones
  wear SCENE --km N [--flexible] [--json]
        click log and end state, released
  check SCENE [--json]
        findings; exit code 1 if there are any

SCENE is a path or a name in scenes/. Sizes may carry a unit: --pressure "40 bar".

--json prints one object:
  press  { scene, command, pressure: {value, unit}, drum, locked, tooth, clicked, readings }
  wear   { scene, command, km: {value, unit}, locked,
           events: [ { kind, tooth, distance: {value, unit}, text } ], end }
  check  { scene, command, findings: [ { path, found, allowed } ] }
readings and end hold { name, symbol, value, unit } by key; value is null where there is nothing to
tell. locked is "front" or "rear" for a shoe that holds the drum by itself, else null.

Exit codes: 0 done, 1 findings in the scene, 2 a fault in what was typed.`;
