// How the kiosk looks: paper and ink, large type, large keys; light, dark and print. The colours are those of the figures.

export const stylesheet = `
:root {
  color-scheme: light dark;
  --paper: light-dark(#fbfaf7, #15181a); --sheet: light-dark(#ffffff, #1d2225); --ink: light-dark(#1b1e20, #f1efe9);
  --quiet: light-dark(#5b574e, #b9b5ab); --rule: light-dark(#8a8478, #7b7f80); --hand: light-dark(#8f3909, #ffab66);
  --nut: light-dark(#0a5548, #6fd6c1); --wrong: light-dark(#8d1628, #ff9aa5); --wanted: light-dark(#6f4c00, #ffd479);
  font: 1.125rem/1.5 Inter, system-ui, sans-serif;
}
* { box-sizing: border-box }
body { margin: 0; background: var(--paper); color: var(--ink) }
main, .top, footer { max-width: 60rem; margin: 0 auto; padding: 1rem 1.25rem }
.top { display: flex; flex-wrap: wrap; gap: .5rem 1.25rem; align-items: center; border-bottom: 3px solid var(--ink) }
.home { font-weight: 700; font-size: 1.25rem; color: inherit; text-decoration: none; padding: .75rem 0 }
.shop { color: var(--quiet) }
.languages { margin-inline-start: auto; display: flex; gap: .5rem }
.languages a { padding: .75rem; color: inherit } .languages a[aria-current] { font-weight: 700; text-decoration: none; border-bottom: 3px solid currentColor }
.skip { position: absolute; inset-inline-start: -100vw } .skip:focus { inset-inline-start: 1rem; background: var(--paper); padding: 1rem }
h1 { font-size: 2rem; line-height: 1.2; margin: .5rem 0 } h2 { font-size: 1.2rem; margin: 1.5rem 0 .5rem } h3 { font-size: 1rem; margin: 0 0 .25rem; color: var(--quiet) }
.lead { font-size: 1.2rem; margin: 0 0 1rem }
ul { margin: 0; padding-inline-start: 1.25rem } li { margin: .2rem 0 } .deeper { margin-inline-start: 1.25rem }
.keys { list-style: none; padding: 0; display: grid; grid-template-columns: repeat(auto-fill, minmax(16rem, 1fr)); gap: .75rem }
.keys li { margin: 0; display: grid }
.key, button { display: flex; align-items: center; min-height: 4.5rem; padding: .75rem 1.25rem; border: 2px solid var(--ink); border-radius: .75rem; background: var(--sheet); color: var(--ink); font: inherit; font-weight: 600; text-decoration: none; cursor: pointer }
button { background: var(--ink); color: var(--paper); font-size: 1.25rem }
.key:hover, button:hover { border-color: var(--nut) }
:focus-visible { outline: 4px solid var(--hand); outline-offset: 3px }
form { margin: 1rem 0 } .ask-line { display: grid; gap: .75rem }
fieldset { border: 0; margin: 0; padding: 0; display: grid; grid-template-columns: repeat(auto-fill, minmax(17rem, 1fr)); gap: 1rem 1.5rem }
legend { padding: 0; font-weight: 700; margin-bottom: .5rem } legend.quiet { position: absolute; inset-inline-start: -100vw }
.field { display: grid; align-content: start; gap: .25rem }
label { font-weight: 600 }
input[type=text], select { width: 100%; min-height: 3.75rem; padding: .5rem .9rem; font: inherit; font-size: 1.35rem; color: inherit; background: var(--sheet); border: 2px solid var(--rule); border-radius: .6rem }
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
table { border-collapse: collapse; width: 100% } th, td { text-align: start; padding: .5rem .75rem; border-bottom: 1px solid var(--rule) }
@media (max-width: 36rem) { th, td { padding: .3rem .2rem; font-size: .8rem } }
.board { list-style: none; padding: 0; display: grid; gap: 1rem } .status { margin: .5rem 0 } .status.out-of-limit, .status.check-before-use { color: var(--wrong) }
footer { border-top: 1px solid var(--rule); color: var(--quiet); margin-top: 2rem } footer a { color: inherit; display: inline-block; padding: .75rem 0 }
@media (forced-colors: active) { .key, button { border-color: ButtonText } }
@media print {
  :root { color-scheme: light; font-size: 11pt } form, .languages, .related, footer a, .skip { display: none } details:not([open]) > * { display: block }
  .answer { border: 0 } figure img { max-width: 12cm } body { background: #fff }
}
`
