// What people read while a wrench is checked and in the report of a check: the plan, what is asked next, the verdict so far.

export const checking = {
  faults: {
    'reading-by-ten': {
      allowed: 'etwa {low} bis {high} bei {setting}; wie eingegeben mit sure: {reading}',
      hint: 'War es {options}? Noch einmal eingeben.',
    },
    'reading-in-other-unit': {
      allowed: 'etwa {low} bis {high} bei {setting}; wie eingegeben mit sure: {reading}',
      hint: 'Welche Einheit zeigt das Prüfmittel: war es {options}?',
    },
    'gauge-not-of-way': {
      allowed: '{options}',
      hint: '{type} misst nicht, was {way} braucht: das Prüfmittel ansehen oder way.',
    },
    'weight-is-enough': {
      allowed: 'ein Schlüssel, den sein Eigengewicht nicht dreht',
      hint: 'Das Eigengewicht des Schlüssels gibt allein schon mehr als den niedrigsten Punkt: den Griff gerade hängen lassen (lie: upright), oder nach oben ziehen.',
    },
    'reading-not-asked': {
      allowed: 'ein Messwert, solange nach einem gefragt ist',
      hint: 'Alles, was der Plan verlangt, ist abgelesen: die Prüfung speichern oder weitere Messwerte hinter einen Punkt setzen.',
    },
  },
  say: {
    planned: '{wrench} in dieser Reihenfolge auf {settings} einstellen, je {readings} Messwerte.',
    asking: '{taken} von {all} Messwerten sind da. Bisher: {verdict}.',
    whole: 'Alle Messwerte sind da: {verdict}.',
    incomplete: 'Für den Plan fehlt noch: {inputs}.',
    refused: 'Das Aufgeführte berichtigen; davon wurde nichts übernommen.',
    prePull: 'Zuerst einmal bis {most} ziehen, ohne aufzuschreiben.',
    prePulls: 'Zuerst {count}-mal bis {most} ziehen, ohne aufzuschreiben.',
    next: 'Auf {setting} einstellen. Messwert {nth} von {of}: was zeigt das Prüfmittel? ({low} bis {high} ist innerhalb der Grenze)',
    point: '{setting} ({share}): das Prüfmittel zeigt {low} bis {high}, am besten {middle}',
    doubt: 'Unsicherheit der Referenz ±{doubt}',
    soFar: '{setting}, {count} abgelesen: Mittelwert {mean}, Abweichung {deviation}, Spannweite {spread}: {verdict}',
    limit: 'Zulässig: ±{limit} {of}, {by}.',
    report: '{wrench}, {state}: {verdict}.',
    runsOut: 'Ab {distance} würde es reichen.',
    gaugeEnds: 'Das Prüfmittel geht bis {most}, dieser Punkt braucht bis {high}: ein anderes Prüfmittel nehmen.',
    gaugeEndsAt:
      'Das Prüfmittel geht bis {most}, dieser Punkt braucht bis {high}: ein anderes Prüfmittel nehmen oder ab {distance} ziehen.',
    order: 'Reihenfolge: steigend. Den Schlüssel je Messwert einmal klicken lassen und vor dem nächsten zurückdrehen.',
  },
  by: {
    card: 'nach der Karte dieses Schlüssels',
    class: 'nach seiner Klasse, ISO 6789-1',
    most: 'nach seinem größten Drehmoment, ISO 6789',
  },
  scale: { reading: 'vom Anzeigewert', 'full-scale': 'vom Skalenendwert' },
  rules: {
    simple:
      'Einfach (simple): bestanden, solange jeder Messwert innerhalb der Grenze liegt; die Unsicherheit der Referenz ist nicht bekannt.',
    guarded:
      'Mit Sicherheitsabstand (guarded): bestanden, solange jeder Messwert innerhalb der Grenze minus der Unsicherheit der Referenz liegt (ILAC-G8); näher daran ist es unsicher.',
  },
  notes: {
    'gauge-runs-out': 'Das Prüfmittel reicht nicht so weit, wie es der höchste Punkt braucht.',
    'gauge-most-unknown': 'Wie weit das Prüfmittel reicht, ist nicht bekannt: vor dem höchsten Punkt nachsehen.',
    'marks-unknown':
      'Die Teilstriche des Schlüssels sind nicht bekannt: den nächsten Teilstrich nehmen und angeben, welchen.',
    'kind-by-type':
      'Ob es ein anzeigendes oder ein auslösendes Werkzeug ist, folgt hier aus seiner Wirkungsweise; seine Karte sagt es nicht.',
    'unit-on-wrench':
      'Ein Messwert liegt um ein Viertel oder mehr daneben: wurde am Schlüssel eine andere Einheit abgelesen?',
    'beyond-most': 'Ein Punkt liegt über dem größten Drehmoment des Schlüssels.',
    'beyond-gauge':
      'Ein Messwert liegt über dem, was das Prüfmittel zeigt: seine Unsicherheit ist dort nicht bekannt, und es heißt nicht glatt bestanden.',
    'below-a-fifth': 'Ein Punkt liegt unter einem Fünftel des größten Drehmoments, wo nichts zugesichert ist.',
    'gauge-unknown': 'Die Unsicherheit des Prüfmittels ist nicht bekannt: das Urteil nimmt sie als null.',
    'gauge-too-coarse':
      'Die Referenz ist gröber als ein Viertel der Grenze: nahe der Grenze bleibt das Urteil unsicher.',
    'gauge-day-unknown': 'Wann das Prüfmittel selbst zuletzt geprüft wurde, ist nicht bekannt.',
    'gauge-overdue': 'Das Prüfmittel selbst ist seit einem Jahr nicht geprüft worden.',
    'own-weight-open': 'Wie der Schlüssel liegt, ist nicht angegeben: sein Eigengewicht ist weggelassen.',
    'distance-not-lever':
      'Es wird nicht an seiner Hebellänge gezogen: was auslöst, kann bei einem anderen Wert auslösen.',
    'temperature-outside': 'Es war nicht zwischen 18 und 28 °C, wie es die Norm verlangt.',
    'few-points': 'Die Norm verlangt mehr Punkte.',
    'few-readings': 'Die Norm verlangt mehr Messwerte je Punkt.',
    'limit-by-most':
      'Auf seiner Karte steht weder Toleranz noch Klasse: die Grenze richtet sich nach seinem größten Drehmoment.',
  },
  /** What a verdict means for whoever holds the wrench. */
  means: {
    pass: 'Nach diesen Messwerten darf er benutzt werden.',
    'pass-in-doubt':
      'Nach diesen Messwerten darf er benutzt werden; so nahe an der Grenze kann es das Prüfmittel nicht sicher sagen. Mit einem feineren noch einmal prüfen.',
    'fail-in-doubt':
      'Nicht benutzen: ein Messwert liegt außerhalb, um weniger als das Prüfmittel sagen kann. Mit einem feineren noch einmal prüfen.',
    fail: 'Nicht benutzen: beiseite legen und einstellen oder instand setzen lassen.',
  },
  states: { 'as-found': 'vorgefunden', 'as-left': 'nach Justierung' },
  ways: {
    hang: 'ein Gewicht am Griff gehängt',
    pull: 'mit einer Waage am Griff gezogen',
    tester: 'ein Prüfgerät unter dem Vierkant',
    laboratory: 'in einem Labor',
  },
  kinds: {
    click: 'Klickschlüssel',
    'split-beam': 'Klickschlüssel mit geteiltem Balken',
    beam: 'Biegebalkenschlüssel',
    dial: 'Messuhrschlüssel',
    electronic: 'elektronischer Schlüssel',
  },
  weights: {
    level: 'eingerechnet: Griff waagrecht, {mass}, Schwerpunkt bei {balance}, gezogen {direction}',
    upright: 'zählt in dieser Lage nicht',
    open: 'weggelassen: die Lage ist nicht angegeben',
    down: 'nach unten',
    up: 'nach oben',
  },
  standing: 'Eigene Prüfung der Werkstatt, keine akkreditierte Kalibrierung.',
  terminal: {
    mend: 'Dies berichtigen',
    needed: 'Fehlt noch',
    retype: 'Noch einmal eingeben; oder yes (ja), wenn das Prüfmittel {reading} zeigte.',
    stop: 'Eine leere Zeile beendet es.',
    keep: 'Diese Prüfung speichern? yes (ja) oder no (nein)',
    kept: 'Gespeichert als {id}. Der Bericht: /wrench/{tag}/check/{id}',
    notKept: 'Nicht gespeichert. Um hier weiterzumachen:',
  },
  page: {
    title: 'Prüfung von {wrench} am {date}',
    wrench: 'Schlüssel',
    serial: 'Nummer',
    lever: 'Hebellänge',
    gauge: 'Geprüft mit',
    noGauge: 'womit, ist nicht angegeben',
    checked: 'selbst geprüft {date}',
    tolerance: 'Toleranz {tolerance}',
    uncertainty: 'Messunsicherheit der Referenz',
    way: 'Wie',
    state: 'Stand',
    distance: 'Gezogen bei',
    weight: 'Eigengewicht des Schlüssels',
    temperature: 'Temperatur',
    remarks: 'Bemerkungen',
    limit: 'Grenze',
    rule: 'Regel',
    verdict: 'Urteil',
    setting: 'Eingestellt',
    window: 'Innerhalb der Grenze',
    read: 'Prüfmittel zeigte',
    torque: 'Drehmoment',
    mean: 'Mittelwert',
    deviation: 'Abweichung',
    spread: 'Spannweite',
    allowed: 'Zulässig',
    doubt: 'Unsicherheit',
    know: 'Zu wissen',
    companion: 'Die Prüfung vom selben Tag, {state}: {verdict}',
    later: 'Eine spätere Prüfung ist als letzte an ihre Stelle getreten.',
    signed: 'Geprüft von',
    kept: 'Eintrag {id}, gespeichert {at}',
    back: 'Alles zu {wrench}',
    link: 'Bericht der Prüfung vom {date}, {state}',
  },
} as const
