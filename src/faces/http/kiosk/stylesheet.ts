// How the kiosk looks: paper and ink, large type, large keys; light, dark and print. The colours are those of the figures.

export const stylesheet = `
:root {
  color-scheme: light dark;
  --paper: light-dark(#fbfaf7, #15181a); --sheet: light-dark(#ffffff, #1d2225); --ink: light-dark(#1b1e20, #f1efe9);
  --quiet: light-dark(#5b574e, #b9b5ab); --rule: light-dark(#8a8478, #7b7f80); --hand: light-dark(#8f3909, #ffab66);
  --nut: light-dark(#0a5548, #6fd6c1); --wrong: light-dark(#8d1628, #ff9aa5); --wanted: light-dark(#6f4c00, #ffd479);
  --key: 4.5rem; --far: 1;
  font: calc(1.125rem * var(--far, 1))/1.5 Inter, system-ui, sans-serif;
}
* { box-sizing: border-box } [hidden] { display: none !important }
body { margin: 0; background: var(--paper); color: var(--ink) }
main, .top, footer { max-width: 84rem; margin: 0 auto; padding: 1rem 1.25rem }
.top { display: flex; flex-wrap: wrap; gap: .5rem 1.25rem; align-items: center; border-bottom: 3px solid var(--ink) }
.home { font-weight: 700; font-size: 1.25rem; color: inherit; text-decoration: none; padding: .75rem 0 }
.shop { color: var(--quiet) }
.languages { margin-inline-start: auto; position: relative } .languages summary { padding: .75rem; min-height: 44px; cursor: pointer; font-weight: 600 }
.languages nav { position: absolute; inset-inline-end: 0; z-index: 5; display: grid; min-inline-size: 10rem; background: var(--sheet); border: 2px solid var(--ink); border-radius: .75rem; overflow: hidden }
.languages a { padding: .75rem 1rem; min-height: 44px; color: inherit } .languages a[aria-current] { font-weight: 700; text-decoration: none; border-inline-start: 6px solid currentColor }
.skip { position: absolute; inset-inline-start: -100vw } .skip:focus { inset-inline-start: 1rem; background: var(--paper); padding: 1rem }
h1 { font-size: 2rem; line-height: 1.2; margin: .5rem 0 } h2 { font-size: 1.2rem; margin: 1.5rem 0 .5rem } h3 { font-size: 1rem; margin: 0 0 .25rem; color: var(--quiet) }
.lead, .fact, .means { font-size: 1.2rem; margin: 0 0 1rem }
ul { margin: 0; padding-inline-start: 1.25rem } li { margin: .2rem 0 } .deeper { margin-inline-start: 1.25rem }
.keys { list-style: none; padding: 0; display: grid; grid-template-columns: repeat(auto-fill, minmax(16rem, 1fr)); gap: .75rem }
.keys li { margin: 0; display: grid }
.ways { display: flex; flex-wrap: wrap; gap: .75rem }
.key, button { display: flex; align-items: center; min-height: max(var(--key), 3rem); padding: .75rem 1.25rem; border: 2px solid var(--ink); border-radius: .75rem; background: var(--sheet); color: var(--ink); font: inherit; font-weight: 600; text-decoration: none; cursor: pointer }
button { background: var(--ink); color: var(--paper); font-size: 1.25rem }
@media (hover: hover) { .key:hover, button:hover { border-color: var(--nut) } }
:focus-visible { outline: 4px solid var(--hand); outline-offset: 3px }
form { margin: 1rem 0 } .ask-line { display: grid; gap: .75rem }
fieldset { border: 0; margin: 0; padding: 0; display: grid; grid-template-columns: repeat(auto-fill, minmax(17rem, 1fr)); gap: 1rem 1.5rem }
legend { padding: 0; font-weight: 700; margin-bottom: .5rem } legend.quiet { position: absolute; inset-inline-start: -100vw }
.field { display: grid; align-content: start; gap: .25rem }
label { font-weight: 600 }
input[type=text], input[type=date], input[type=password], select { width: 100%; min-height: max(calc(var(--key) * .85), 3rem); padding: .5rem .9rem; font: inherit; font-size: 1.35rem; color: inherit; background: var(--sheet); border: 2px solid var(--rule); border-radius: .6rem }
::placeholder { color: var(--quiet); opacity: 1; font-style: italic; font-size: 1.05rem }
.about { font-size: .95rem; color: var(--quiet) } .about p { margin: 0 }
.wrong input, .wrong select { border: 4px solid var(--wrong) } .fault { color: var(--wrong); font-weight: 600 }
.wanted input, .wanted select { border: 4px dashed var(--wanted) } .ask { color: var(--wanted); font-weight: 600 }
summary { padding: 1rem 0; font-weight: 600; cursor: pointer }
.actions { display: flex; flex-wrap: wrap; gap: 1rem; margin-top: 1.25rem }
.answer { border-top: 3px solid var(--ink); padding-top: 1rem; scroll-margin-top: .5rem }
.typed { padding: .75rem 1rem; background: var(--sheet); border-inline-start: 6px solid var(--rule); font-size: 1.2rem }
.typed .label { margin: 0; font-size: 1rem; font-weight: 700; color: var(--quiet) }
.answer h2 { font-size: 1.9rem; line-height: 1.25; margin: 1rem 0 }
.refused h2 { color: var(--wrong) } .incomplete h2 { color: var(--wanted) }
figure { margin: 1rem 0 } figure img { width: 100%; max-width: 50rem; height: auto; border: 1px solid var(--rule); border-radius: .75rem; display: block }
.part { margin: 1.25rem 0; overflow-wrap: anywhere } .cautions { padding: .75rem 1rem; border: 3px solid var(--hand); border-radius: .75rem }
/* A narrow screen scrolls a table sideways, by keys as well. */
.wide { overflow-x: auto } @media (max-width: 36rem) { .wide th, .wide td { padding: .4rem .35rem; font-size: .9rem } }
table { border-collapse: collapse; width: 100% } th, td { text-align: start; padding: .5rem .75rem; border-bottom: 1px solid var(--rule) }
@media (max-width: 36rem) { th, td { padding: .3rem .2rem; font-size: .8rem } .checks :is(th, td):nth-child(3) { display: none } }
.next-reading { border: 4px solid var(--ink); border-radius: 1rem; padding: .5rem 1.25rem 1rem; background: var(--sheet) } .next-reading h2 { font-size: 1.6rem } .next-reading input { font-size: 1.8rem }
p > .key { inline-size: fit-content }
.entry-keys a { display: inline-block; padding: .6rem .5rem; color: inherit } textarea { width: 100%; padding: .5rem .9rem; font: inherit; font-size: 1.2rem; color: inherit; background: var(--sheet); border: 2px solid var(--rule); border-radius: .6rem }
.board { list-style: none; padding: 0; display: grid; gap: 1rem } .status { margin: .5rem 0 } .status.out-of-limit, .status.check-before-use { color: var(--wrong) } .status.check-due { color: var(--wanted) } .board li:has(> .retired, > .set-aside) > .key { border-style: dashed; font-weight: 400 }
.entries { list-style: none; padding: 0 } .entries > li { display: flex; flex-wrap: wrap; gap: .25rem 1rem; align-items: center }
.lists { grid-template-columns: repeat(auto-fill, minmax(10rem, 1fr)); margin-bottom: 1.5rem } .lists [aria-current] { background: var(--ink); color: var(--paper) }
.history img { max-width: 60rem }
footer { border-top: 1px solid var(--rule); color: var(--quiet); margin-top: 2rem } footer a { color: inherit; display: inline-block; padding: .75rem 0 }
h3 { scroll-margin-top: 1rem } .topic h3 { font-size: 1.1rem; margin: 1.25rem 0 .5rem; color: var(--ink) }
.key.strong, button.strong { background: var(--nut); border-color: var(--nut); color: var(--paper) }
.key.wrench { flex-direction: column; align-items: flex-start; justify-content: center; line-height: 1.2 } .key .range { font-weight: 400 } .key small { color: var(--wrong); font-weight: 700 }
.bench { display: grid; gap: 0 2rem; align-items: start }
@media (min-width: 64rem) { .bench { grid-template-columns: minmax(20rem, 2fr) 3fr } .bench fieldset { grid-template-columns: 1fr } .bench > form.stays { position: sticky; top: .5rem } .bench .answer { border-top: 0; padding-top: 0 } }
.unseen { position: absolute; inset-inline-start: -100vw; inline-size: 1px; overflow: hidden; margin: 0 }
.echo { font-size: 1.2rem; font-weight: 700; color: var(--nut) } .with-script .typed { display: none }
.offers { display: flex; flex-wrap: wrap; gap: .5rem; margin: 0 } .offers:empty { display: none }
.offer { min-height: max(calc(var(--key) * .7), 2.75rem); padding: .25rem .9rem; background: var(--sheet); color: var(--ink); border: 2px dashed var(--rule); font-size: 1.05rem; inline-size: fit-content }
.slips { padding: 1rem 1.25rem; border: 5px double var(--wrong); border-radius: .75rem } .slips h2 { margin: 0 0 .5rem; color: var(--wrong) }
.held > summary { margin-top: 1rem; padding: 1rem 1.25rem; border: 2px solid var(--ink); border-radius: .75rem; min-height: max(var(--key), 3rem) }
.behind #answer { opacity: .45 } .behind #keypad-headline { visibility: hidden } .signed-in { display: flex; flex-wrap: wrap; gap: 1rem; align-items: center } .behind #answer-slot::before { content: '…'; font-size: 2rem; font-weight: 700 }
#line { margin: 0; padding: .9rem 1.25rem; background: var(--wrong); color: var(--paper); font-weight: 700; position: sticky; top: 0; z-index: 3 }
.cut-off.behind #answer { filter: grayscale(1) }
.code { background: #fff; padding: .5rem; border-radius: .5rem; image-rendering: pixelated } .kept { font-weight: 700; color: var(--nut) }
#card { block-size: 3rem; border: 3px solid var(--ink); border-radius: .6rem; background: var(--sheet); inline-size: 85.6mm; max-inline-size: 100% }
dialog { border: 4px solid var(--ink); border-radius: 1rem; background: var(--paper); color: var(--ink); max-width: min(50rem, 96vw); padding: 1.25rem } dialog::backdrop { background: #000a }
#keypad { position: fixed; inset: auto 0 0; z-index: 2; padding: .6rem 1rem; background: var(--paper); border-top: 4px solid var(--ink); max-height: 80vh; overflow: auto }
body { padding-bottom: var(--pad, 0) } .typing :is(.field, input) { scroll-margin-top: .45rem } #keypad > * { max-width: 60rem; margin-inline: auto }
.pad-told { display: flex; flex-wrap: wrap; gap: .1rem 1.5rem; align-items: baseline; margin-bottom: .4rem } .pad-told p { margin: 0 }
#keypad-echo { font-size: 1.7rem; font-weight: 700; margin-inline-start: .5rem } #keypad-echo.example { font-size: 1.2rem; font-weight: 400; font-style: italic; color: var(--quiet) } #keypad-read { font-size: 1.1rem; font-weight: 600; margin-inline-start: .5rem }
#keypad-headline { font-size: 1.35rem; line-height: 1.25; font-weight: 700; color: var(--nut) } #keypad-headline.refused, #to-answer.refused { color: var(--wrong) } #keypad-headline.incomplete, #to-answer.incomplete { color: var(--wanted) }
#to-answer { position: fixed; inset: auto 0 0; z-index: 1; padding: .75rem 1.25rem; min-height: max(var(--key), 3rem); background: var(--sheet); color: var(--nut); border-top: 4px solid currentColor; font-size: 1.5rem; line-height: 1.25; font-weight: 700; text-decoration: none } .behind #to-answer { visibility: hidden }
main:has(#to-answer) { padding-bottom: 5rem }
.pad { display: grid; grid-template-columns: 6fr auto auto 3fr; gap: .5rem } .pad > div { display: grid; gap: .5rem; align-content: start } .pad > .digits { grid-template-columns: repeat(3, 1fr) } .digits [data-types='0'] { grid-column: 2 }
.secret [data-types='.'], .secret [data-types=','] { display: none } #keypad-units, #keypad-marks { grid-auto-flow: column; grid-template-rows: repeat(4, auto) } #keypad-units button { min-inline-size: 7rem } #keypad-marks button { min-inline-size: 4.5rem }
#keypad-fractions { display: flex; overflow-x: auto; gap: .4rem; margin-top: .5rem } #keypad-fractions > * { flex: none }
#keypad button { min-height: max(var(--key), 2.75rem); padding: .2rem .5rem; justify-content: center; text-align: center; line-height: 1.1; background: var(--sheet); color: var(--ink); font-size: 1.3rem }
#keypad button.unit { font-weight: 700 } #keypad button.strong { background: var(--nut); color: var(--paper) } #keypad summary { padding: .4rem 0 }
.angle { display: grid; grid-template-columns: minmax(14rem, 22rem) 1fr; gap: 1rem }
#angle-drawing { touch-action: none; cursor: pointer; inline-size: 100%; background: var(--sheet); border: 2px solid var(--rule); border-radius: 1rem } #angle-drawing text { fill: currentColor; font-size: 15px }
.ring { fill: none; stroke: var(--rule); stroke-dasharray: 4 6; stroke-width: 2 } .handle { fill: var(--hand) } .pulled { fill: none; stroke: var(--hand); stroke-width: 6 } .arm { stroke: var(--nut); stroke-width: 16; stroke-linecap: round } .drive { fill: var(--ink) } .nut { fill: var(--nut) }
#angle-told { font-size: 2rem; margin: 0 } .steps { display: flex; flex-wrap: wrap; gap: .5rem; margin: .5rem 0 }
dialog button { font-size: 1.1rem } #angle { max-height: 98vh; padding-block: .75rem } #angle > p { margin: 0 0 .5rem } #angle h2 { margin: 0 0 .25rem } #angle .actions { margin-top: .5rem }
@media (max-height: 40rem) {
  .top { padding: .25rem 1.25rem; border-bottom-width: 2px } .home, .languages summary { padding: .5rem 0; font-size: 1.05rem } main { padding-block: .25rem } h1 { font-size: 1.3rem; margin: .25rem 0 } h2 { margin: .75rem 0 .35rem } .lead { display: none } legend { margin: 0 } form { margin: .25rem 0 } fieldset { gap: .5rem 1.25rem }
  .key, button { padding: .4rem 1rem } .answer h2 { font-size: 1.6rem; margin: .5rem 0 }
  #keypad { max-height: 85vh; padding: .2rem .75rem .3rem } .pad-told { margin-bottom: .2rem; line-height: 1.2 } #keypad-echo { font-size: 1.4rem } #keypad-headline, #to-answer { font-size: 1.1rem } #to-answer { min-height: 3rem; padding-block: .5rem } .pad, .pad > div { gap: .35rem } #keypad-fractions { margin-top: .35rem } #keypad-no-unit { display: none }
  dialog { padding: .4rem 1rem; max-height: 98vh } #angle > p { font-size: .95rem; line-height: 1.3 } .angle { grid-template-columns: minmax(12rem, 17rem) 1fr; gap: .25rem 1rem } #angle button { padding: .2rem .7rem } #angle-told { font-size: 1.5rem; line-height: 1.2 } .steps { margin: .3rem 0; gap: .35rem }
}
@media (max-width: 40rem) {
  .angle { grid-template-columns: 1fr; gap: .25rem } #angle-drawing { max-inline-size: 15rem; justify-self: center } .steps { flex-wrap: nowrap; gap: .35rem } .steps button { flex: 1; padding: .2rem; justify-content: center; text-align: center; font-size: 1rem; line-height: 1.15 } #angle .actions { gap: .5rem } #angle .actions button { flex: 1; justify-content: center }
  .top { gap: 0 .75rem; padding: .1rem 1rem } .home, .languages summary { font-size: .95rem; padding: .75rem 0 } .shop, .top a[href="/bench"] { display: none } h1 { font-size: 1.5rem } #keypad-headline, #to-answer { font-size: 1.2rem }
}
@media (max-width: 30rem) {
  #keypad { padding-inline: .6rem } .pad { grid-template-columns: 3fr 1fr } #keypad-units { grid-auto-flow: row; grid-template-rows: none } #keypad-units button, #keypad-marks button { min-inline-size: 0 } .pad > .does, .pad > #keypad-marks { grid-column: 1 / -1; display: flex } .does > button, #keypad-marks > button { flex: 1 } #keypad button { padding: .2rem; font-size: 1.15rem }
}
@media (forced-colors: active) { .key, button { border-color: ButtonText } }
@media print {
  :root { color-scheme: light; font-size: 11pt } form, .languages, .related, footer a, .skip, #keypad, #to-answer, #line, .take-along summary { display: none } .with-script .typed { display: block } details:not([open]) > * { display: block }
  .answer { border: 0 } figure img { max-width: 12cm } body { background: #fff }
}
`
