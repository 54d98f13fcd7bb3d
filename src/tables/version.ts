// Which formulas and which tables an answer was made with. The engine follows package.json (tested); data counts table changes.
export const engineVersion = '0.1.0'
export const dataVersion = '2026-11-26'
