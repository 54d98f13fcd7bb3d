// How the report of a check looks: on the screen as the other pages do, on paper black on white, on A4 and letter alike.

export const reportSheet = `
.report dl { display: grid; grid-template-columns: max-content 1fr; gap: .3rem 1.25rem; margin: 1rem 0 }
.report dt { font-weight: 600 } .report dd { margin: 0; overflow-wrap: anywhere }
.report .ruling { font-size: 1.5rem; font-weight: 700; border: 3px solid currentColor; padding: .6rem 1rem; margin: .75rem 0 }
.report .standing { font-weight: 600 }
.report table { margin: .5rem 0 1rem; font-variant-numeric: tabular-nums } .report tbody tr:last-child { border-bottom: 2px solid var(--rule) }
.report .signed { display: flex; gap: 2rem; margin-top: 2rem } .report .signed span { flex: 1; border-bottom: 1px solid currentColor }
.report .wide { overflow-x: auto } .report .made-in { display: none }
@media (max-width: 36rem) { .report dl { grid-template-columns: 1fr; gap: 0 } .report dd { margin-bottom: .5rem } }
@media print {
  @page { margin: 13mm }
  :root, body, main { background: #fff !important; color: #000 !important }
  :root { --paper: #fff; --sheet: #fff; --ink: #000; --quiet: #000; --rule: #555; font-size: 9.5pt !important; line-height: 1.35 }
  .top, footer, dialog, .report .ways { display: none !important }
  main { max-width: none; margin: 0; padding: 0 }
  h1 { font-size: 16pt; margin: 0 } h2 { font-size: 11pt; margin: 9pt 0 3pt; break-after: avoid } th, td { padding: 1.2pt 5pt } .report table { margin: 4pt 0 8pt } .report dl { gap: 1pt 12pt; margin: 6pt 0 } .report p { margin: 4pt 0 }
  .report .made-in { display: block; margin: 0; font-weight: 600 } .report .key { min-height: 0; padding: 0; border: 0; background: none; color: #000 }
  .report .ruling { font-size: 13pt; padding: 4pt 8pt } .report .wide { overflow: visible }
  .report .signed { margin-top: 14pt }
  tr, .report .signed, .report dl { break-inside: avoid } thead { display: table-header-group }
}
`
