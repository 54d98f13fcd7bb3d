// The weekly digest, and the settings of a server in chat.

export const digest = {
  title: 'Les clés cette semaine, {date}',
  quiet: 'Rien à faire : aucune clé n’est hors limite, en retard ou à contrôler d’ici deux semaines.',
  parts: {
    'out-of-limit': 'Hors limite, à ne pas utiliser',
    'check-before-use': 'À contrôler avant emploi',
    overdue: 'Contrôle en retard',
    soon: 'À contrôler d’ici deux semaines',
    'set-aside': 'Prêtées ou perdues',
  },
  since: 'depuis le {date}',
  due: '{date}',
  settings: {
    channel: 'le salon pour le résumé, le lundi à sept heures',
    none: 'Le résumé de la semaine ne va nulle part.',
    goes: 'Le résumé de la semaine va dans <#{channel}>, le lundi à sept heures à l’horloge de l’atelier.',
  },
} as const
