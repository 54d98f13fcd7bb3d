// What is said of the way from the hand to the fastener: adapters, heads, swivels, bars, multipliers, pulls, units.

export const sayReach = {
  'adapter.reach': 'Wie weit die Adapter längs des Schlüssels reichen, vor den Vierkant (negativ: zurück zur Hand)',
  'adapter.effective': 'Die Hebellänge, mit der die Hand wirklich an der Schraube zieht',
  'adapter.factor': 'Drehmoment an der Schraube je Einheit am Schlüssel (manche Anleitungen drucken den Kehrwert)',
  'adapter.factor-hand':
    'Drehmoment an der Schraube je Einheit am Schlüssel, mit der Hand abseits der Griffmitte (manche Anleitungen drucken den Kehrwert)',
  'adapter.straight-assumed': 'Mit dem Adapter gerade nach vorn, was nicht angegeben war: {answer}',
  'adapter-setting.set': 'Den Schlüssel auf {setting} einstellen: die Schraube erhält {torque}.',
  'adapter-setting.same':
    'Auf {setting} einstellen, das Drehmoment selbst: dieser Adapter fügt dem Hebel nichts hinzu.',
  'adapter-setting.span':
    'Den Schlüssel auf {setting} einstellen ({low} bis {high} für die Enden): die Schraube erhält {torque}, die Mitte der Vorgabe.',
  'adapter-setting.span-part':
    'Den Schlüssel auf {setting} einstellen: die Schraube erhält {torque}, die Mitte der Vorgabe. Vom Rest kann dieser Schlüssel nur {from} bis {to}.',
  'adapter-setting.open':
    'Den Schlüssel auf {setting} einstellen, das sichere Ende: mit der Hand abseits der Griffmitte liegt der richtige Einstellwert für {torque} zwischen diesem Wert und {high}.',
  'adapter-setting.open-span':
    'Den Schlüssel auf einen Wert von {from} bis {to} einstellen: mit der Hand abseits der Griffmitte bleibt die Schraube damit innerhalb der Vorgabe, wo der Schlüssel auch auslöst.',
  'adapter-setting.open-none':
    'Kein Einstellwert bleibt sicher innerhalb der Vorgabe: mit der Hand abseits der Griffmitte kann {torque} einen Einstellwert von {setting} oder {high} brauchen. An der Griffmitte ziehen oder messen, wo der Schlüssel auslöst.',
  'adapter-setting.part':
    'Dieser Schlüssel kann nur einen Teil der Vorgabe: auf einen Wert von {from} bis {to} einstellen. Die Mitte, {torque}, bräuchte {setting}, außerhalb seines Bereichs.',
  'adapter-setting.beyond':
    'Diesen Schlüssel so nicht verwenden: {torque} an der Schraube bräuchte {setting}, außerhalb seines Bereichs; mit dem Adapter rechtwinklig (90°) ist der Einstellwert das Drehmoment selbst.',
  'adapter-setting.beyond-all':
    'Diesen Schlüssel so nicht verwenden: {torque} an der Schraube bräuchte {setting}, außerhalb seines Bereichs. Einen anderen Schlüssel nehmen.',
  'adapter-setting.setting': 'Was einzustellen ist',
  'adapter-setting.pivot-unknown':
    'Wo der Schlüssel auslöst, ist nicht bekannt, und abseits der Griffmitte macht das etwas aus: der Einstellwert an beiden Enden des Üblichen',
  'adapter-setting.ends': 'Die Einstellwerte für beide Enden der Vorgabe',
  'adapter-setting.tolerance-alone':
    'Was der Schlüssel selbst aus diesem Einstellwert machen kann, allein durch seine Toleranz von {tolerance}',
  'adapter-setting.inside': 'Die Unsicherheit bleibt innerhalb der Vorgabe; Breite des 95-%-Bands',
  'adapter-setting.not-inside':
    'Die Unsicherheit bleibt NICHT innerhalb der Vorgabe: besser messen oder einen besseren Schlüssel nehmen; Breite des 95-%-Bands',
  'adapter-reading.got': 'Mit {reading} am Schlüssel erhielt die Schraube {torque} (95 %: {low} bis {high}).',
  'adapter-reading.torque': 'Was die Schraube erhielt',
  'adapter-reading.pivot-unknown':
    'Wo der Schlüssel auslöst, ist nicht bekannt, und abseits der Griffmitte macht das etwas aus: das Drehmoment an beiden Enden des Üblichen',
  'doubt.one': 'Unsicherheit bei 95 %, größter Beitrag: {first}',
  'doubt.two': 'Unsicherheit bei 95 %, größte Beiträge: {first}, dann {second}',
  'cause.wrench': 'die Toleranz des Schlüssels',
  'cause.lever': 'die Hebellänge',
  'cause.adapter': 'die Länge des Adapters',
  'cause.hand': 'wo die Hand hinkommt',
  'cause.angle': 'der Winkel des Adapters',
  'cause.square': 'ein Zug nicht rechtwinklig zum Griff',
  'cause.pivot': 'wo der Schlüssel auslöst',
  'hand-position.none':
    'Die Schraube erhält {torque}: einem Schlüssel, der am Vierkant misst, ist es gleich, wo er gehalten wird.',
  'hand-position.at-grip':
    'Die Schraube erhält {torque}: gehalten, wo er kalibriert wurde, ist der Einstellwert das Drehmoment.',
  'hand-position.more':
    'Auf {setting} eingestellt und weiter innen gehalten, gibt der Schlüssel {torque}: {change} mehr.',
  'hand-position.less': 'Auf {setting} eingestellt und weiter außen gehalten, gibt der Schlüssel {torque} ({change}).',
  'hand-position.open-more':
    'Auf {setting} eingestellt und weiter innen gehalten, gibt der Schlüssel {low} bis {high}, je nachdem, wo er auslöst (95 %), in der Mitte {torque}: {change} mehr.',
  'hand-position.open-less':
    'Auf {setting} eingestellt und weiter außen gehalten, gibt der Schlüssel {low} bis {high}, je nachdem, wo er auslöst (95 %), in der Mitte {torque} ({change}).',
  'hand-position.torque': 'Was die Schraube erhält',
  'hand-position.change': 'Änderung gegenüber dem Einstellwert',
  'pivot-offset.found': 'Der Schlüssel löst {pivot} hinter seinem Vierkant aus (95 %: {low} bis {high}).',
  'pivot-offset.not-from-zero':
    'Der Kipp-Punkt lässt sich nicht von 0 unterscheiden: {pivot}, mit einer Unsicherheit von {low} bis {high}. Beide Züge wiederholen und Mittelwerte nehmen, die Hand nahe der Mitte des Griffs.',
  'pivot-offset.impossible':
    'Diese zwei Züge passen nicht zu einem Schlüssel: {pivot} ist nicht möglich (95 %: {low} bis {high}). Beide Züge wiederholen.',
  'pivot-offset.ratio': 'Drehmoment mit versetzter Hand, geteilt durch Drehmoment mit der Hand an der Hebellänge',
  'pivot-offset.pivot': 'Abstand vom Vierkant bis zum Kipp-Punkt',
  'pivot-offset.doubt': 'Unsicherheit bei 95 % (halbe Breite)',
  'end-fitting.set': 'Den Schlüssel auf {setting} einstellen: die Schraube erhält {torque} durch diesen Kopf.',
  'end-fitting.span':
    'Den Schlüssel auf {setting} einstellen ({low} bis {high} für die Enden): die Schraube erhält {torque} durch diesen Kopf, die Mitte der Vorgabe.',
  'end-fitting.used': 'Hebellänge mit dem verwendeten Kopf',
  'end-fitting.factor': 'Drehmoment an der Schraube je Einheit am Schlüssel (manche Anleitungen drucken den Kehrwert)',
  'end-fitting.setting': 'Was einzustellen ist',
  'which.best': '{wrench}: auf {setting} einstellen für {torque} an der Schraube.',
  'which.care':
    '{wrench}, mit Vorsicht: auf {setting} einstellen für {torque} an der Schraube, und unten lesen, warum.',
  'which.none': 'Kein Schlüssel der Werkstatt kann heute {torque}; warum, steht bei jedem.',
  'which.empty': 'Noch ist kein Schlüssel im Verzeichnis: einen eintragen, dann wird hier unter ihnen ausgewählt.',
  'which.same': 'Nichts verlängert den Schlüssel: er wird auf das Drehmoment selbst eingestellt',
  'which.step': 'Worauf {wrench} eingestellt wird, mit seiner Hebellänge aus dem Verzeichnis',
  'which.work-out': 'Mit {wrench} ausrechnen, mit der Unsicherheit',
  'pull.pull': 'Mit {pull} ziehen, rechtwinklig zum Griff, {at} vom Vierkant, für {torque}.',
  'pull.step': 'Zugkraft, rechtwinklig zum Griff',
  'convert.is': '{from} = {value}.',
  'convert.span': '{low} bis {high}, in der Mitte {value}.',
  'convert.step': '1 {unit} in {to}, mal die Zahl',
  'flex-head.ahead':
    'Die Schraube erhält {torque}, was der Schlüssel bei {setting} sagt: er misst vor dem Gelenk; nur die Zugkraft wächst.',
  'flex-head.behind':
    'Auf {setting} eingestellt und geneigt, gibt der Schlüssel {torque}: er löst hinter dem Gelenk aus.',
  'flex-head.unknown':
    'Mit dem Schlüssel auf {setting} und geneigt erhält die Schraube {low} bis {high}: es hängt davon ab, ob der Schlüssel vor seinem Gelenk misst oder dahinter.',
  'flex-head.arm': 'Der Hebelarm, den die Neigung übrig lässt',
  'flex-head.torque-ahead':
    'Misst vor dem Gelenk (die meisten anzeigenden und elektronischen Schlüssel): das Drehmoment ist, was er sagt',
  'flex-head.torque-behind': 'Löst hinter dem Gelenk aus: dieselbe Zugkraft an einem kürzeren Hebelarm',
  'flex-head.straight': 'Zugkraft bei geradem Griff',
  'swivel.band':
    'Mit {setting} am Schlüssel und einem Beugewinkel von {angle} erhält die Schraube {low} bis {high}, oder noch weniger: kein Einstellwert kann das ausgleichen.',
  'swivel.straight': 'Ein Kardangelenk, das nicht abgewinkelt ist, gibt {torque} weiter.',
  'swivel.low': 'Der niedrigste Wert einer Umdrehung, ohne Reibung',
  'swivel.high': 'Der höchste Wert einer Umdrehung, ohne Reibung',
  'swivel.allowed': 'Zwei Motorenhandbücher erlauben diesen Beugewinkel ohne Korrektur',
  'swivel.not-allowed':
    'Mehr, als zwei Motorenhandbücher ohne Korrektur erlauben: gerader stellen oder die Schraube auf anderem Weg erreichen',
  'extension-bar.too-thin':
    'Diese Verlängerung nicht verwenden: {torque} beansprucht Stahl von {diameter} stärker, als Vierkante geprüft werden ({stress}); sie würde sich verbiegen oder brechen.',
  'extension-bar.nothing':
    'Die Verlängerung nimmt nichts weg: die Schraube erhält {torque} bei langsamem, geradem Zug. Sie verdreht sich um {twist}.',
  'extension-bar.too-weak':
    'Diesen Aufbau nicht für {torque} verwenden: sein schwächster Vierkant ist nur bis {rating} geprüft.',
  'extension-bar.torque':
    'Eine Verlängerung in Linie dreht sich mit dem Vierkant: Drehmoment hinein ist Drehmoment heraus',
  'extension-bar.twist':
    'Verdrehung der Verlängerung, als rund angenommen; sie verfälscht Winkel, die am Griff abgelesen werden',
  'extension-bar.weakest': 'Bis wohin der schwächste Vierkant, {drive} in, geprüft ist',
  'multiplier.set': '{input} in den Drehmomentvervielfältiger einleiten, für {torque}.',
  'multiplier.lowest':
    'Höchstens {input} einleiten, für {torque} nach der Übersetzung: der niedrigste Wert, beim besten Wirkungsgrad; mit mehr Verlusten können bis zu {high} nötig sein.',
  'multiplier.torque-ratio': 'Was einzuleiten ist, nach dem aufgedruckten Drehmomentverhältnis (Verluste sind darin)',
  'multiplier.lowest-step': 'Was beim besten Wirkungsgrad einzuleiten ist',
  'multiplier.highest-step': 'Was beim schlechtesten Wirkungsgrad einzuleiten ist',
  'prevailing.set': 'Anziehen, bis der Schlüssel {final} zeigt: {torque} und das Klemmdrehmoment von {run}.',
  'prevailing.span': 'Anziehen, bis der Schlüssel {low} bis {high} zeigt, in der Mitte {final}.',
  'prevailing.final': 'Verlangtes Drehmoment und Klemmdrehmoment zusammen (Luftfahrt: immer)',
  'prevailing.army-adds': 'Ein Armeehandbuch zählt es erst ab einem Drittel des verlangten Drehmoments dazu: hier auch',
  'prevailing.army-leaves-out':
    'Ein Armeehandbuch zählt es erst ab einem Drittel des verlangten Drehmoments dazu: hier lässt es das weg. Die Quellen unterscheiden sich; den Hersteller fragen',
  'related.direction': 'Dasselbe mit dem Adapter bei {angle}',
  'related.reading': 'Was die Schraube erhält, wenn der Schlüssel {setting} zeigt',
  'related.setting': 'Was für {torque} einzustellen ist',
  'incomplete.one': 'Eines fehlt noch: {ask}.',
  'incomplete.several': 'Einiges fehlt noch: {ask}.',
  'refused.one': 'So lässt sich das nicht ausrechnen: {hint}',
  'refused.several': 'So lässt sich das nicht ausrechnen; mehrere Eingaben sind noch einmal anzusehen. Zuerst: {hint}',
} as const
