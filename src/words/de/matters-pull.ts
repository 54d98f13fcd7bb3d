// Does it matter: the pull, what reaches the fastener, and the tool itself. A verdict, what to do, why, and how much for each topic.

export const mattersPull = {
  'matter.clicked-twice.verdict':
    'Es kommt darauf an, wie: ein langsamer, bewusster zweiter Klick bringt meist wenig dazu; ein ruckartiger oder wiederholter Zug, oder einer über den Klick hinaus, bringt Drehmoment dazu.',
  'matter.clicked-twice.what-to-do':
    'Einmal klicken, langsam, und kennzeichnen, was fertig ist. Ein späterer Zug zeigt, wann die Mutter losbricht, nicht, wie fest sie angezogen wurde.',
  'matter.clicked-twice.mechanism':
    'Eine ruhende Mutter braucht zum Anlaufen mehr als zum Weiterdrehen, also bleibt sie beim selben langsamen Klick meist stehen. Ein Ruck bringt Schwung mit, und nach dem Klick begrenzt nichts mehr den Zug als die Hand.',
  'matter.clicked-twice.size':
    'Keine Formel nennt es: wenig, wo die Mutter stehen blieb, mehr, wo man sie sich drehen sah.',
  'matter.hand-position.verdict':
    'Es kommt auf den Schlüssel an: einem, der am Vierkant misst, ist es gleich, bei einem Klickschlüssel macht es ein wenig aus, bei einem Biegebalken ohne beweglichen Griff mehr, und mit einem Adapter zählt es voll.',
  'matter.hand-position.what-to-do':
    'Mit einer Hand an der Markierung oder der Mitte des Griffs ziehen, rechtwinklig zum Griff.',
  'matter.hand-position.mechanism':
    'Ein Klickschlüssel löst an einem Kipp-Punkt hinter seinem Vierkant aus, und ein Balken biegt sich dahinter, also liefert eine Hand weiter innen mehr und eine weiter außen weniger. Ein Adapter verlängert den Hebelarm der Hand, aber nicht das, was der Schlüssel spürt.',
  'matter.hand-position.size':
    'T/S = (L − p)/L · (H + X)/(H − p), wobei p 0 ist für einen Schlüssel, der am Vierkant misst, und gewöhnlich {low} bis {high} von L für einen Klickschlüssel, {beamlow} bis {beamhigh} für einen Biegebalken ohne beweglichen Griff.',
  'matter.jerked.verdict':
    'Ja, das macht etwas aus: ein ruckartiger Zug läuft über den Einstellwert hinaus, bevor irgendwer anhalten kann.',
  'matter.jerked.what-to-do':
    'Das letzte Fünftel des Drehmoments gleichmäßig aufbringen, in einer halben bis vier Sekunden, und beim Klick anhalten.',
  'matter.jerked.mechanism':
    'Der Klick braucht einen Augenblick, die Hand länger, und Arm und Griff laufen mit ihrem eigenen Schwung weiter.',
  'matter.jerked.size': 'Keine Formel nennt es; berichtet wird von bis zu {more} mehr als eingestellt.',
  'matter.pipe-on-the-handle.verdict':
    'Ja, das macht etwas aus: ein Rohr setzt die Hand über den Griff hinaus; damit gilt nicht mehr, was der Hersteller des Schlüssels zusichert, und der Schlüssel kann brechen.',
  'matter.pipe-on-the-handle.what-to-do':
    'Einen längeren Schlüssel verwenden, der für das Drehmoment gemacht ist, oder einen Drehmomentvervielfältiger: wo der Zug zu schwer ist, ist der Schlüssel zu klein.',
  'matter.pipe-on-the-handle.mechanism':
    'Der Zug wird leichter, während das Drehmoment fast gleich bleibt: ein Klickschlüssel liefert etwas zu wenig, und mit einem Adapter ändert sich das Drehmoment mit dem ganzen neuen Hebelarm.',
  'matter.pipe-on-the-handle.size':
    'Ohne Adapter T/S = (L − p)/L · H/(H − p), nie unter (L − p)/L: höchstens etwa {high} zu wenig bei einem Klickschlüssel und {beam} bei einem Biegebalken ohne beweglichen Griff, nichts bei einem, der am Vierkant misst.',
  'matter.adapter-square.verdict':
    'Nein, das macht nichts aus: mit dem Adapter rechtwinklig zum Schlüssel (90°) ist der Einstellwert das Drehmoment selbst, wie lang der Adapter auch ist.',
  'matter.adapter-square.what-to-do':
    'Wirklich rechtwinklig stellen, rechtwinklig zum Griff ziehen, mit einer Hand am Griff, und das Drehmoment selbst einstellen. Jeder andere Winkel braucht einen eigenen Einstellwert.',
  'matter.adapter-square.mechanism':
    'Rechtwinklig zum Griff fügt er längs des Schlüssels nichts hinzu: E cos 90° ist 0. Die Mutter ist weiter von der Hand weg, aber der Zug steht nicht rechtwinklig zu dieser Linie.',
  'matter.adapter-square.size':
    'T/S = (L + E cos θ)/L, das ist 1 bei 90°. Ein um δ schiefer Zug ändert es um ± tan δ · E/L: bei 5°, mit einem Adapter von einem Fünftel der Hebellänge, 1,75 %.',
  'matter.adapter-straight.verdict':
    'Ja, das macht etwas aus: gerade nach vorn verlängert ein Adapter den Hebel, und die Schraube erhält mehr als den Einstellwert; gerade zurück erhält sie weniger.',
  'matter.adapter-straight.what-to-do':
    'Hebellänge und Adapter von Mitte zu Mitte messen und S = T L/(L + E) einstellen, mit E negativ gezählt, wo er zurück zeigt; oder den Adapter rechtwinklig stellen und das Drehmoment selbst einstellen.',
  'matter.adapter-straight.mechanism':
    'Die Hand zieht an der Schraube über Hebellänge und Adapter zusammen, L + E, während der Schlüssel nur sein eigenes L spürt.',
  'matter.adapter-straight.size': 'T/S = (L + E)/L, also E/L mehr als eingestellt: 50 bei 400 sind 12,5 %.',
  'matter.bars.verdict':
    'Nein, das macht nichts aus: eine Verlängerung gerade unter dem Vierkant, in Linie gehalten, nimmt einem langsamen Zug nichts weg.',
  'matter.bars.what-to-do':
    'Den Vierkant mit der anderen Hand stützen, die Verlängerung in Linie halten und so kurz wählen, wie es reicht, und langsam ziehen. Die Formel für einen Krähenfuß gilt hier nicht.',
  'matter.bars.mechanism':
    'Sie liegt auf der Achse, also fügt sie keinen Hebel hinzu; sie verdreht sich wie eine Feder und gibt das ganze Drehmoment weiter. Schaden bringen Schrägstellen, Durchhängen und Schlagen.',
  'matter.bars.size':
    'T = S. Die Verlängerung verdreht sich um θ = T l/(G J), was nur einen Winkel verfälscht, der am Griff abgelesen wird.',
  'matter.changed-head.verdict':
    'Es kommt darauf an, wo seine Mitte liegt: nur ein Kopf, der die Schraube näher oder weiter weg hält als der kalibrierte, ändert das Drehmoment.',
  'matter.changed-head.what-to-do':
    'Beide Köpfe bis zu ihrer Mitte messen. Wo sie gleich sind, das Drehmoment einstellen; wo sie sich unterscheiden, S = T L/(L + Δ) einstellen.',
  'matter.changed-head.mechanism':
    'Der Schlüssel wurde mit der Hebellänge bis zur Mitte seines eigenen Kopfs justiert; eine andere Kopflänge ergibt eine andere Hebellänge.',
  'matter.changed-head.size':
    'T/S = (L + Δ)/L, mit Δ als verwendeter Kopf minus kalibrierter: 30 kürzer bei 360 sind 8,33 % weniger.',
  'matter.chained-spanner.verdict':
    'Es kommt auf seine Richtung an: gerade nach vorn zählt seine ganze Länge, rechtwinklig (90°) nichts davon, und gerade zurück nimmt er weg.',
  'matter.chained-spanner.what-to-do':
    'Von der Mitte des Vierkants bis zur Mitte der Schraube messen, den Winkel vom Schlüssel selbst aus nehmen, und einstellen, was herauskommt. Die Verbindung eben und den Zug rechtwinklig halten.',
  'matter.chained-spanner.mechanism':
    'Ein Schraubenschlüssel, der am Drehmomentschlüssel eingehängt ist, ist ein Adapter: es zählt, wie weit er längs des Drehmomentschlüssels reicht. Die Größe der Mutter spielt keine Rolle.',
  'matter.chained-spanner.size': 'T/S = (L + E cos θ)/L; mehrere Glieder addieren sich, Σ E cos θ.',
  'matter.flex-head.verdict':
    'Es kommt auf die Neigung an und darauf, wo der Schlüssel misst: ein paar Grad machen nichts, eine steile Neigung kann zu wenig liefern.',
  'matter.flex-head.what-to-do':
    'Den Griff in der Ebene halten, in der sich die Schraube dreht, und die Stecknuss rechtwinklig darauf; wo er geneigt sein muss, wenig neigen.',
  'matter.flex-head.mechanism':
    'Ein geneigter Griff hat einen kürzeren Hebelarm um die Schraube. Ein Schlüssel, der vor dem Gelenk misst, braucht nur einen stärkeren Zug; einer, der dahinter auslöst, klickt bei derselben Zugkraft, und das Drehmoment sinkt.',
  'matter.flex-head.size':
    'Zwischen S und S r/L, r = h + (L − h) cos φ: mit dem Gelenk am Vierkant höchstens 3,41 % zu wenig bei 15°.',
  'matter.size-adapters.verdict':
    'Nein, das macht nichts aus: in Linie ändert ein Reduzierstück kein Drehmoment; aber der kleinste Vierkant begrenzt, was der ganze Aufbau tragen kann.',
  'matter.size-adapters.what-to-do':
    'Unter der Belastbarkeit des schwächsten Teils bleiben, jede Verbindung ganz zusammenstecken und den Aufbau in Linie halten.',
  'matter.size-adapters.mechanism':
    'Es liegt auf der Achse und fügt keinen Hebel hinzu. Wie viel ein Vierkant tragen kann, geht mit der dritten Potenz seiner Breite.',
  'matter.size-adapters.size': 'T = S. Von 1/2 auf 3/8 in behält der Vierkant (3/4)³ seiner Festigkeit, 42 %.',
  'matter.swivel.verdict':
    'Es kommt auf den Beugewinkel an: zwei Motorenhandbücher erlauben bis 15° unkorrigiert; steiler schwankt das Drehmoment und geht verloren, und kein Einstellwert gleicht das aus.',
  'matter.swivel.what-to-do':
    'So gerade halten, wie es geht. Wo mehr Beugewinkel nötig ist, einen anderen Weg suchen: ein korrigierter Einstellwert wird nicht angeboten.',
  'matter.swivel.mechanism':
    'Ein abgewinkeltes Kardangelenk gibt das Drehmoment nicht gleichmäßig weiter: zweimal je Umdrehung gibt es mehr und weniger, und Reibung und Seitenkraft nehmen noch etwas weg.',
  'matter.swivel.size':
    'Ohne Reibung zwischen cos β und 1/cos β des Einstellwerts, etwa ±3,5 % bei 15°, und mit Reibung noch niedriger.',
  'matter.digital-or-click.verdict':
    'Nein, das macht nichts aus: mit derselben Toleranz ziehen beide Arten gleich an; letzte Prüfung, Bereich und ein gleichmäßiger Zug zählen mehr.',
  'matter.digital-or-click.what-to-do':
    'Den nehmen, bei dem der Einstellwert gut innerhalb des Bereichs liegt, dessen Prüfung noch gilt, und der sich am Arbeitsplatz ablesen lässt.',
  'matter.digital-or-click.mechanism':
    'Für beide gelten Grenzen von 4 oder 6 %. Sonst unterscheiden sie sich: wo die Hand zieht, verändert einen Klickschlüssel, eine leere Batterie legt den anderen still, und einer, dem die Länge eines Adapters eingegeben wurde, hat sie schon korrigiert.',
  'matter.tool.size':
    'S (1 ± l) für beide. Reibung streut die Vorspannkraft viel weiter, auch mit einem Schlüssel, der stimmt: um ±{low} bis ±{high}, sagen zwei Listen.',
  'matter.price.verdict':
    'Nein, das macht nichts aus: es zählt die Toleranz, die er bei der Prüfung hält; ein billiger Schlüssel, der geprüft wurde, schlägt einen teuren, der es nicht wurde.',
  'matter.price.what-to-do':
    'Toleranz und Bereich vergleichen, und ob ein Zertifikat dabei ist; ihn neu prüfen und danach wie jeden anderen.',
  'matter.price.mechanism':
    'Für Geld gibt es bessere Ausführung, Ersatzteile, feinere Teilstriche und oft Beständigkeit über die Jahre; es hält keine Feder davon ab, sich zu setzen, und rettet keinen Schlüssel, der heruntergefallen ist.',
} as const
