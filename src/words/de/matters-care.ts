// Does it matter: the care of a wrench, and the joint. A verdict, what to do, why, and how much for each topic.

export const mattersCare = {
  'matter.calibration.verdict':
    'Ja, das macht etwas aus: ein Schlüssel verändert sich mit dem Gebrauch, und von außen sieht man es ihm nicht an.',
  'matter.calibration.what-to-do':
    'Alle 12 Monate oder alle 5000 Betätigungen prüfen lassen, je nachdem, was zuerst eintritt, und nach einem Sturz, einer Überlastung oder einer Reparatur; der Hersteller des Schlüssels oder die eigene Regel kann mehr verlangen. Dazwischen hilft eine Prüfung mit der Waage.',
  'matter.calibration.mechanism':
    'Federn setzen sich, Drehpunkte verschleißen, Fett geht verloren. Zwei Schlüssel, die übereinstimmen, oder eine feste Mutter, an der noch einmal gezogen wird, beweisen von keinem, dass er stimmt.',
  'matter.calibration.size':
    'Innerhalb seiner Grenze l liefert er S (1 ± l): 96 bis 104 bei Einstellwert 100 und ±4 %. Außerhalb seiner Grenze kann er um beliebig viel danebenliegen.',
  'matter.dropped.verdict':
    'Ja, das macht etwas aus: ein Sturz beendet die letzte Prüfung, was auch auf dem Aufkleber steht.',
  'matter.dropped.what-to-do':
    'Beiseitelegen. Bei einem Fünftel, drei Fünfteln und dem vollen größten Skalenwert prüfen, und nur wieder verwenden, wenn jeder Messwert innerhalb seiner Grenze liegt. Wenn nicht, noch einmal ansehen, was seither damit angezogen wurde.',
  'matter.dropped.mechanism':
    'Ein Schlag kann Feder, Auslösung oder Zeiger verstellen und den Kopf verbiegen, während der Schlüssel aussieht und klickt wie zuvor.',
  'matter.dropped.size': 'Keine Formel nennt es: alles von nichts bis weit außerhalb der Grenze, darum wird gemessen.',
  'matter.loosening-with-it.verdict':
    'Ja, das macht etwas aus: nicht mit einem Drehmomentschlüssel lösen; eine festsitzende Mutter kann ihn ohne jedes Anzeichen überlasten.',
  'matter.loosening-with-it.what-to-do':
    'Mit einem einfachen Steckgriff oder einer Ratsche lösen. Wurde der Schlüssel doch dazu benutzt, erst recht über seinen größten Skalenwert hinaus oder rückwärts, ihn prüfen, bevor man ihm wieder traut.',
  'matter.loosening-with-it.mechanism':
    'Eine Mutter kann zum Losbrechen mehr brauchen, als beim Anziehen aufgebracht wurde; viele Klickschlüssel lösen rückwärts nicht aus, also zeigt nichts, wie stark gezogen wird.',
  'matter.loosening-with-it.size':
    'Keine Formel nennt es: Losbrechen braucht, was Rost, Sicherung und Ruhe daraus gemacht haben. Überlastet ist der Schlüssel, sobald das über seinen größten Skalenwert geht.',
  'matter.stored-wound-up.verdict':
    'Es kommt darauf an, wie hoch und wie lange: Wochen ändern wenig, Monate nahe dem oberen Ende der Skala können einen Klickschlüssel weit zu wenig liefern lassen.',
  'matter.stored-wound-up.what-to-do':
    'Einen Klickschlüssel zum Lagern auf seinen kleinsten Skalenwert zurückdrehen, nicht darunter. Nach Monaten in gespanntem Zustand ihn bei einem niedrigen Einstellwert einige Male klicken lassen und prüfen, bevor er verwendet wird.',
  'matter.stored-wound-up.mechanism':
    'Die Feder eines Klickschlüssels setzt sich unter Last und drückt dann weniger, also löst der Schlüssel früh aus und liefert zu wenig.',
  'matter.stored-wound-up.size':
    'Keine Formel nennt es: wenig nach Wochen; deutlich über ein Zehntel zu wenig nach Monaten nahe dem Skalenendwert ist bekannt.',
  'matter.under-a-fifth.verdict':
    'Ja, das macht etwas aus: unter einem Fünftel seines größten Skalenwerts sichern die Normen für einen Schlüssel nichts zu; nur sein Hersteller kann das.',
  'matter.under-a-fifth.what-to-do':
    'Einen kleineren Schlüssel verwenden, bei dem dieser Einstellwert gut innerhalb des Bereichs liegt.',
  'matter.under-a-fifth.mechanism':
    'Reibung und Spiel im Schlüssel bleiben etwa gleich, während das Drehmoment klein wird, also wächst ihr Anteil daran; eine Toleranz vom Skalenendwert wächst ebenso.',
  'matter.under-a-fifth.size':
    'Eine Toleranz l vom Skalenendwert ist l · größter Skalenwert/S bei einem Einstellwert S: 4 % von 250 sind ein Drittel von 30. Eine Toleranz vom Anzeigewert ist erst ab einem Fünftel zugesichert.',
  'matter.anti-seize.verdict':
    'Ja, außer die Herstellerangabe gilt schon für diese Paste: beim selben Klick ist die Schraube in der Regel fester gespannt.',
  'matter.anti-seize.what-to-do':
    'Herausfinden, für welchen Zustand des Gewindes die Angabe gilt, und sie für diesen Zustand wie gedruckt verwenden. Sonst den Hersteller fragen oder messen: ein Prozentsatz von anderswo gehört zu einer anderen Paste und einer anderen Verbindung. Bei Rädern sagen die Hersteller zu Gewinde und Auflage Verschiedenes: dem Hersteller dieses Fahrzeugs oder Rads folgen, und wo der sauber und trocken sagt, sauber und trocken lassen.',
  'matter.anti-seize.mechanism':
    'Das Drehmoment ist, was der Schlüssel sagt, mit Paste oder ohne; weniger davon geht in Reibung, also dehnt mehr davon die Schraube.',
  'matter.anti-seize.size':
    'F = T/(K d): die Vorspannkraft ändert sich um K_from/K_to (vorher/nachher). Die Quellen nennen K {drylow} bis {dryhigh} trocken und {low} bis {high} mit Paste: kein einzelner Prozentsatz passt dazu.',
  'matter.oil.verdict':
    'Ja, außer die Herstellerangabe gilt schon für geöltes Gewinde: beim selben Klick ist die Schraube in der Regel fester gespannt.',
  'matter.oil.what-to-do':
    'Herausfinden, für welchen Zustand des Gewindes die Angabe gilt, und sie für diesen Zustand wie gedruckt verwenden. Sonst den Hersteller fragen oder messen. Bei Rädern sagen die Hersteller zu Gewinde und Auflage Verschiedenes: dem Hersteller dieses Fahrzeugs oder Rads folgen, und wo der sauber und trocken sagt, sauber und trocken lassen.',
  'matter.oil.mechanism':
    'Öl oder Fett nimmt Gewinde und Auflage Reibung; der Schlüssel klickt beim selben Drehmoment, aber die Schraube ist weiter gedehnt. Auf dem Gewinde allein macht es weniger aus als auf beiden.',
  'matter.oil.size':
    'F = T/(K d): die Vorspannkraft ändert sich um K_from/K_to (vorher/nachher). Die Quellen nennen K {drylow} bis {dryhigh} trocken und {low} bis {high} geölt: kein einzelner Prozentsatz passt dazu.',
  'matter.re-used-nut.verdict':
    'Es kommt auf die Mutter an: eine einfache in gutem Zustand kann noch einmal dienen, eine Sicherungsmutter verliert ihre Klemmung, und manche sind nur für einmal gemacht.',
  'matter.re-used-nut.what-to-do':
    'Neue verwenden, wo der Hersteller das sagt, und immer anstelle von Schrauben, die bis in die Streckgrenze angezogen waren. Sonst reinigen, auf Schäden ansehen, und das Klemmdrehmoment einer Sicherungsmutter ablesen, während sie sich frei dreht, eine Umdrehung bevor sie aufliegt: unter dem, was ihr Hersteller verlangt, wird sie ersetzt.',
  'matter.re-used-nut.mechanism':
    'Gebrauchte Gewinde und Auflagen sind glatter oder rauer als neue, also ergibt dasselbe Drehmoment eine andere Vorspannkraft; ein Klemmteil verschleißt mit jeder Benutzung.',
  'matter.re-used-nut.size':
    'F = T/(K d) mit einem K, das nicht mehr das neue ist. Eine Sicherungsmutter bringt ihr Klemmdrehmoment dazu, Endwert = Zielwert + Klemmdrehmoment: in der Luftfahrt immer; ein Armeehandbuch zählt es erst ab einem Drittel des Zielwerts dazu.',
  'matter.washers.verdict':
    'Es kommt darauf an, was gleitet: eine Scheibe macht dort etwas aus, wo sie ändert, was sich unter der Mutter oder dem Kopf dreht.',
  'matter.washers.what-to-do':
    'Einbauen, was der Hersteller zeigt und wo er es zeigt, keine dazu und keine weggelassen, eben und hart genug; darauf achten, dass sie sich nicht mitdreht.',
  'matter.washers.mechanism':
    'Viel vom Drehmoment geht in die Reibung unter dem, was sich dreht; eine Scheibe ändert diese Fläche und ihren mittleren Radius, oder dreht sich selbst.',
  'matter.washers.size':
    'T = F [P/2π + μ_t d2/(2 cos 30°) + μ_s r_s]; der letzte Teil, unter dem, was sich dreht, ist {seat} des Drehmoments einer M10 bei einer Reibung von 0,12.',
  'matter.wheel-re-torque.verdict':
    'Ja, das macht etwas aus: nach einer Radmontage setzen sich die Flächen; wann noch einmal rundum zu ziehen ist, sagt der Hersteller des Fahrzeugs.',
  'matter.wheel-re-torque.what-to-do':
    'Der Anleitung des Fahrzeugs folgen. Flächen sauber, Rad kalt, Gewinde in dem Zustand, für den die Angabe gilt, in der Reihenfolge der Anleitung, je ein langsamer Klick, keine vorher lösen. Einer Mutter, die sich weit weiterdrehte, wird nachgegangen, sie wird nicht nur nachgezogen.',
  'matter.wheel-re-torque.mechanism':
    'Lack, Schmutz und neue Flächen setzen sich auf der ersten Fahrt, und ein wenig Setzen nimmt kurzen, steifen Bolzen viel Vorspannkraft.',
  'matter.wheel-re-torque.size':
    'Keine Formel nennt es, und die Quellen unterscheiden sich: nach {first} bis {last} nach der Radmontage; eine nennt auch {minutes} Minuten Stehen.',
} as const
