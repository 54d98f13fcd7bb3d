// What to mind beside an answer, and where the maker’s own figure stands.

export const cautions = {
  'maker-first':
    'Angabe und Verfahren des Herstellers gehen vor; hier wird ausgerechnet, was für eine schon vorliegende Angabe einzustellen ist.',
  'critical-joint':
    'Räder, Bremsen, Lenkung, Sicherheitsgurte, Hebezeug, Druckgeräte, Luftfahrzeuge: eine qualifizierte Person und das Verfahren des Herstellers entscheiden.',
  'one-hand':
    'Nur am Griff ziehen: eine zweite Hand am Kopf ändert das Drehmoment, sobald ein Adapter nach vorn oder zurück reicht.',
  'points-back':
    'Der Adapter zeigt um {reach} zurück zur Hand: der Einstellwert ist HÖHER als das Drehmoment. Die Richtung sicher feststellen.',
  'far-back':
    'Er reicht über mehr als die halbe Hebellänge zurück: kleine Fehler bei Länge oder Hand ändern das Drehmoment stark. Einen anderen Weg nehmen, wenn es einen gibt.',
  'direction-assumed':
    'Wo kein Winkel angegeben war, ist gerade nach vorn angenommen. Steht ein Adapter im Winkel, das angeben: es ändert das Ergebnis.',
  'keep-square':
    'Der Adapter steht zur Seite: rechtwinklig zum Griff ziehen, sonst ändert sich das Drehmoment mit der Zugrichtung.',
  'already-corrected':
    'Ist die Herstellerangabe an ein Sonderwerkzeug oder eine genannte Hebellänge gebunden, oder wurde dem Schlüssel die Länge des Adapters eingegeben, dann ist schon korrigiert: nicht zweimal korrigieren.',
  'side-load':
    'Ein geneigter Kopf drückt die Stecknuss zur Seite: sie rechtwinklig halten und den Griff gerade stellen, wenn Platz ist.',
  'lower-still':
    'Reibung und Seitenkraft nehmen noch mehr weg, zusammen etwa {loss} bei steilem Beugewinkel: das untere Ende ist keine Untergrenze.',
  'no-corrected-setting':
    'Für ein Kardangelenk lässt sich kein korrigierter Einstellwert nennen: wo es in seiner Umdrehung steht, ist nicht bekannt.',
  'square-too-weak':
    'Der schwächste Vierkant des Aufbaus ist {drive} in, geprüft bis {rating}: ein größerer Vierkant ist nötig.',
  'no-impact': 'Nur bei langsamem Zug: ein Schlagschrauber verliert in jeder Verlängerung Drehmoment.',
  'support-the-bar':
    'Die Verlängerung in Linie halten und ihren Kopf stützen: eine schräge Verlängerung verkantet die Stecknuss.',
  'which-ratio':
    'Welches Verhältnis ist aufgedruckt? Ein Drehmomentverhältnis enthält die Verluste schon; eine Übersetzung (Umdrehungen, Getriebe) nicht.',
  'reaction-arm':
    'Der Abstützarm drückt mit dem ganzen Ausgangsdrehmoment zurück: gegen etwas Haltbares setzen und die Hände fernhalten.',
  'run-on-while-turning':
    'Das Klemmdrehmoment ablesen, während sich die Mutter dreht, bevor sie aufliegt; der Hersteller sagt, wie viel erlaubt ist und wann sie zu ersetzen ist.',
  'run-on-through-adapter':
    'Ein Klemmdrehmoment, das über einen Adapter abgelesen wurde, wird zuerst umgerechnet, wie der Rest.',
  'past-strength':
    'Wo die Reibung niedrig ist, geht dieses Drehmoment über die Prüfkraft oder die Streckgrenze der Schraube.',
  'from-snug':
    'Ab Anlage: die Teile liegen an, bevor der Drehwinkel gezählt wird. Ist die Anlage nicht sicher, ist es der Drehwinkel auch nicht.',
  'yield-not-checked':
    'Es war keine Festigkeitsklasse angegeben, darum wurde nicht geprüft, ob das über die Streckgrenze geht.',
  'no-pipe':
    'Ein Rohr auf dem Griff setzt die Hand über den Griff hinaus; dann gilt nicht mehr, was der Hersteller des Schlüssels zusichert.',
  'run-on-large':
    'Das Klemmdrehmoment ({extra}) ist größer als das Drehmoment selbst: beide Einheiten ansehen; eine Mutter, die so schwer läuft, ist verdorben.',
  'friction-wide':
    'Zwischen den Quellen liegt die Reibung dieses Zustands um mehr als den Faktor zwei auseinander: bei diesem Drehmoment kann die Schraube weit loser sein als ihr Anteil. Den Hersteller fragen oder Drehmoment und Vorspannkraft an dieser Verbindung messen.',
  'own-factor-holds-seat':
    'Ein eigener K-Faktor enthält die Auflage, auf der er gemessen wurde: die hier angegebene Auflage ändert daran nichts.',
  'class-of-other-system':
    'Diese Festigkeitsklasse gehört zum anderen System als die Größe: das Kennzeichen auf dem Kopf noch einmal ansehen.',
  'pivot-unusual':
    'Ein Schlüssel dieser Bauart löst in der Regel bei {low} bis {high} aus: den Kipp-Punkt noch einmal ansehen.',
  'floating-grip':
    'Wenn der Griff dieses Biegebalkenschlüssels auf einem Stift kippt, greift der Zug am Stift an, wo die Hand auch ist, und nichts davon gilt.',
  'hard-pull':
    'Niemand zieht {pull} gleichmäßig: eine größere Hebellänge oder einen Drehmomentvervielfältiger verwenden.',
  'points-missing':
    'Nicht die ganze Skala wurde geprüft: die Norm verlangt {shares} % des größten Einstellwerts, steigend.',
  'beyond-range': 'Der Einstellwert {setting} liegt außerhalb des Bereichs des Schlüssels ({limit}).',
  'end-beyond-range':
    'Ein Teil der Vorgabe braucht einen Einstellwert außerhalb des Bereichs des Schlüssels: {setting}, wo er bei {limit} endet. Innerhalb seines Bereichs bleiben.',
  'factor-twelve':
    'War eine andere Einheit gemeint? {got} verlangt einen Einstellwert außerhalb des Bereichs des Schlüssels, {meant} läge innerhalb.',
  'factor-ten':
    'Ist das Komma verrutscht? {got} verlangt einen Einstellwert außerhalb des Bereichs des Schlüssels, {meant} läge innerhalb.',
  'lever-unusual':
    'Eine Hebellänge von {lever} liegt außerhalb dessen, was handbetätigte Schlüssel haben ({low} bis {high}): die Zahl und ihre Einheit noch einmal ansehen.',
  'adapter-longer':
    'Der Adapter ({adapter}) ist länger als der Schlüssel selbst ({lever}): beide Zahlen und ihre Einheiten noch einmal ansehen.',
  'below-a-fifth':
    'Unter einem Fünftel der Skala ({fifth}) ist nichts zugesichert: einen kleineren Schlüssel verwenden.',
  'click-once':
    'Langsam und gleichmäßig ziehen und beim Klick anhalten: ein Ruck, oder noch einmal und weiter über den Klick hinaus zu ziehen, bringt Drehmoment dazu (übliche Praxis).',
  'which-fitting':
    'Hier gilt die Hebellänge als bis zur Mitte des Kopfs gemessen, mit dem der Schlüssel kalibriert wurde. Wurde sie mit dem anderen Kopf gemessen, das angeben.',
  'steady-pull': 'Zu sich hin ziehen, mit festem Stand, darauf gefasst, dass die Schraube nachgibt.',
  'which-condition':
    'Herausfinden, ob die Herstellerangabe für trockenes oder für geschmiertes Gewinde gilt: das entscheidet, ob überhaupt etwas geändert werden darf.',
  'estimate-only':
    'Reibungswerte sind Schätzungen aus Tabellen; sie streuen von Schraube zu Schraube und von Quelle zu Quelle.',
  'k-unlikely':
    'Keine Verbindung mit einem solchen K-Faktor ist bekannt (sie liegen zwischen etwa 0,05 und 0,6): Einheiten, Größe und Messwerte noch einmal ansehen.',
  galling: 'Nichtrostend auf nichtrostend frisst: langsam anziehen, mit einem dafür gemachten Schmiermittel.',
  'yield-fastener':
    'Niemals für Schrauben, die bis in die Streckgrenze oder nach Drehmoment und Drehwinkel angezogen werden: das Verfahren des Herstellers verwenden, wie es dasteht.',
  'one-joint':
    'Dieser K-Faktor gehört zu diesem Gewinde, dieser Auflage, Oberfläche und diesem Schmiermittel, und zu neuen Teilen; wiederverwendete Schrauben sind anders.',
  'gauge-too-coarse':
    'Die Waage ({gauge}) ist zu grob, um einen Schlüssel mit ±4 % zu beurteilen: sie sollte nicht schlechter sein als {quarter}.',
  'gauge-unknown':
    'Die eigene Toleranz der Waage ist nicht angegeben und nicht in der Unsicherheit enthalten: die Waage gegen ein bekanntes Gewicht prüfen.',
  'own-weight':
    'Liegt die Achse des Vierkants waagrecht, zählt auch das Eigengewicht des Schlüssels: wrench-mass (Masse), balance-point (Schwerpunkt), lie (Lage) und pull-direction (Zugrichtung) angeben.',
  'not-accredited': 'Eine Prüfung in der Werkstatt ist keine akkreditierte Kalibrierung.',
  'gauge-runs-out': 'Die Waage endet bei {limit}: bei {distance} vom Vierkant oder weiter außen ziehen.',
  'gauge-quarter': 'Die Waage sollte nicht schlechter sein als {quarter}, ein Viertel der Grenze.',
  'out-of-limit':
    'Diesen Schlüssel nicht verwenden, wo es auf das Drehmoment ankommt, bis er justiert und erneut geprüft ist.',
  'limit-assumed':
    'Die Grenze von ±{limit} wurde angenommen, nicht angegeben: die Toleranz des Herstellers angeben oder iso-type und iso-class.',
  'reference-unknown':
    'Wie gut die Referenz ist, war nicht angegeben: sie sollte nicht schlechter sein als {quarter}, ein Viertel der Grenze.',
  'reference-too-coarse':
    'Die Referenz ({gauge}) ist zu grob für diese Grenze: sie sollte nicht schlechter sein als {quarter}, ein Viertel davon.',
  'few-readings': 'Weniger als 5 Messwerte an einem Punkt: die Norm verlangt 5, und mehr zeigen mehr.',
  'alike-no-resolution':
    'Alle Messwerte von {set} sind gleich: die Auflösung verbirgt, wie sie streuen, und die Antwort ist sicherer, als sie sein dürfte. resolution (Auflösung) angeben.',
  'alike-resolution': 'Alle Messwerte von {set} sind gleich: ihre Streuung ist aus der Auflösung genommen.',
  'mean-near-zero':
    'Der Mittelwert von A hebt sich nicht von 0 ab, sodass ein Prozentsatz davon wenig sagt: andere Messwerte vergleichen.',
  'independent-readings':
    'Das gilt für Messwerte, die nicht voneinander abhängen: A und B in gemischter Reihenfolge nehmen, an frischen Verbindungen; eine Mutter, die schon fest ist, zeigt nur ihr Losbrechmoment.',
  'tolerance-of-scale':
    'Die Toleranz von {wrench} ist {tolerance} vom Skalenendwert, also kann er unter seinem größten Skalenwert um mehr danebenliegen als die hier angenommene Toleranz. tolerance als Anteil dieses Einstellwerts angeben.',
  'wrench-not-to-be-used':
    '{wrench} ist im Verzeichnis beiseitegelegt oder ausgemustert: einen anderen Schlüssel nehmen.',
  'failed-on': 'Die letzte Prüfung von {wrench}, am {date}, fand ihn außerhalb seiner Grenze.',
  'check-before-use': '{wrench} prüfen, bevor er verwendet wird, wo es auf das Drehmoment ankommt. Am {date}: {what}.',
  'never-checked': 'Im Verzeichnis steht keine Prüfung von {wrench}.',
  'due-since': 'Die Prüfung von {wrench} ist seit {date} fällig.',
  'last-check':
    'Bei der letzten Prüfung von {wrench}, am {date}, war er bei {setting} {deviation}. Das wird hier genannt, nicht in die Antwort eingerechnet.',
  'check-due': 'Diesen Schlüssel nicht verwenden, wo es auf das Drehmoment ankommt, bis er geprüft ist.',
  'event-before-check': 'Was vor der letzten Prüfung geschah, ist durch diese Prüfung abgedeckt.',
  'wound-up-briefly':
    'Weniger als ein Monat in gespanntem Zustand ändert wenig; Monate nahe dem Skalenendwert können deutlich über ein Zehntel kosten.',
  'store-low': 'Auf seinem kleinsten Skalenwert lagern, nicht darunter.',
  'uses-not-counted': 'Betätigungen waren nicht angegeben: sie können vor den Monaten aufgebraucht sein.',
  'tolerance-is-not-all': 'Das ist der Schlüssel allein: Hand, Längen und Reibung kommen dazu.',
  'unit-on-wrench':
    'Vor dem Einstellen die Einheit am Schlüssel selbst ablesen: N·m, lbf·ft und lbf·in stehen auf vielen nebeneinander.',
} as const

export const pointers = {
  'multiplier-plate': 'Verhältnis und Grenze: Typenschild oder Zertifikat des Drehmomentvervielfältigers.',
  'torque-figure':
    'Drehmoment: die Werkstattanleitung des Herstellers für genau diese Schraube, mit dem Zustand des Gewindes und dem Werkzeug, für die es gilt.',
  'adapter-rating':
    'Belastbarkeit des Adapters selbst: sein Hersteller; sie begrenzt das Drehmoment an der Schraube, nicht den Einstellwert.',
  'wrench-manual': 'Hebellänge, Bereich und Toleranz: Anleitung oder Kalibrierschein des Schlüssels.',
  'lubricant-maker': 'Das Datenblatt des Schmiermittelherstellers: K-Faktor oder Reibung für diese Oberfläche.',
  'calibration-lab': 'Ein Zertifikat: ein akkreditiertes Kalibrierlabor (ISO 6789).',
} as const
