/** What is taken down of rock in the field. */
import type { field as English } from '../english/field';
import { counted, momentText } from '../sentences';

const stones = (number: number) => counted(number, 'piedra', 'piedras');

export const field: typeof English = {
  field: {
    heading: 'En el campo',
    kept: 'Lo que anote queda guardado en este equipo.',
    notKept: 'Lo que anote queda guardado en este equipo desde el primer toque.',
    whichRock: '¿Qué roca?',
    noLots:
      'Esta obra todavía no tiene lotes. Un lote es roca que se juzga en conjunto, por ejemplo un acopio.',
    whichZone: '¿Qué se está colocando?',
    noZones:
      'Todavía no hay ninguna zona trazada. Sus verificaciones salen de su diseño, que se hace en gabinete.',
    toZones: 'Zonas, en gabinete',
    zoneWalk: 'Verificaciones según su diseño',
    noSuchLot: 'Esta obra no tiene ese lote.',
    noLook: 'aún sin observar',
    back: 'Toda la obra',
    backToLot: 'Volver a esta roca',
    actions: 'Qué hacer',
    count: 'Contar piedras',
    goOnCounting: 'Seguir contando',
    photo: 'Foto',
    goOnPhotos: 'Seguir con las fotos',
    photoNotOpened:
      'No se pudieron cargar las pantallas de fotos. Revise la conexión y cargue de nuevo esta página.',
    quickLook: 'Vistazo',
    weigh: 'Pesar',
    load: 'Viaje',
    problem: 'Problema',
    soFar: 'Anotado hasta ahora',
    nothingYet:
      'Nada todavía. Un vistazo indica dónde contar; un conteo dice tras cada piedra cuántas más podrían hacer falta; los viajes se anotan a medida que llegan.',
    taken: (looks, loads) =>
      `${counted(looks, 'observación', 'observaciones')}, ${counted(loads, 'viaje', 'viajes')}`,
    seen: (when, who) => `${momentText(when)}${who ? `, ${who}` : ''}`,
    who: 'Su nombre',
  },

  count: {
    heading: (lot) => (lot ? `Conteo de ${lot}` : 'Conteo'),
    name: 'Conteo de piedras',
    nameAt: (place) => `Conteo de piedras, ${place}`,
    preparing: 'Preparando …',
    against: (lot, name) => `${lot} se cuenta contra ${name}.`,
    picking: '¿Cómo se eligen las piedras?',
    pickings: { grid: 'Cuadrícula', line: 'Línea', area: 'Área', whole: 'Todas' },
    by: '¿Cómo se miden?',
    ways: {
      bins: { name: 'Por tamaño', what: 'Cada piedra va al botón de su tamaño.' },
      axes: { name: 'Con cinta', what: 'Se escribe el eje intermedio de cada piedra.' },
    },
    measureFirst:
      'Mida el eje intermedio de la primera piedra, ni el más largo ni el más corto, y escríbalo.',
    axis: 'Eje intermedio',
    addStone: 'Agregar esta piedra',
    lastAxes: (axes) => `Últimas: ${axes.join(', ')}`,
    place: '¿En qué parte del acopio?',
    caution:
      'Manténgase lejos de taludes que puedan deslizarse, y nunca bajo cargas suspendidas ni cucharones.',
    begin: 'Comenzar',
    tapFirst:
      'Toque el tamaño de la primera piedra: su eje intermedio, ni el más largo ni el más corto.',
    more: 'Siga: tan pocas piedras aún no dicen nada.',
    stones: (number) => (number === 1 ? 'piedra' : 'piedras'),
    binsLabel: 'Tamaño de la piedra',
    bin: (text) => text.replace('up to ', 'hasta ').replace(' to ', ' a '),
    undo: 'Deshacer',
    finish: 'Listo',
    note: (number) => `Conteo de piedras: ${stones(number)}`,
    drop: 'Descartar este conteo',
    dropWhat: (number) =>
      number === 1
        ? 'Se perderá 1 piedra. Esto no se puede deshacer.'
        : `Se perderán ${number} piedras. Esto no se puede deshacer.`,
    dropYes: 'Descartarlo',
    dropNo: 'Seguir contando',
  },

  form: {
    keep: 'Guardar',
    notKept: 'Aún no está guardado:',
    allowed: 'Se admite:',
    unitOf: (label) => `Unidad: ${label}`,
  },

  tasks: {
    where: '¿Dónde?',
    note: 'Nota',
    quickLook: {
      heading: 'Vistazo',
      name: 'Vistazo',
      caution:
        'Mirar a ojo nunca acepta la roca. Manténgase lejos de taludes que puedan deslizarse.',
      largest: 'Piedra más grande',
      smallest: 'Piedra más chica, sin contar los finos',
      mostCommon: 'Piedra más frecuente',
      shape: 'Forma',
      shapes: {
        blocky: 'En bloques',
        mixed: 'Mixta',
        'flat or long': 'Muchas lajas o alargadas',
      },
      fines: 'Finos',
      amounts: { none: 'Nada', little: 'Poco', much: 'Mucho' },
    },
    load: {
      heading: 'Viaje',
      name: 'Viaje',
      caution: 'Manténgase lejos de los camiones que descargan.',
      ticket: 'Boleta',
      mass: 'Masa',
      medianSize: 'Piedra mediana, a ojo o medida',
    },
  },

  weigh: {
    heading: 'Muestra pesada',
    caution:
      'No suba al acopio ni se ponga bajo cargas suspendidas. Que nadie levante lo que pesa demasiado.',
    how: (lot, name) =>
      `Extienda una muestra de ${lot}, sepárela toda por estos tamaños de ${name}, pese cada grupo y cuente sus piedras. Deje en blanco los grupos vacíos.`,
    mass: (unit) => `Masa, ${unit}`,
    stones: 'Piedras',
  },

  photos: {
    legend: 'Fotos',
    take: 'Tomar o elegir fotos',
    leaveOut: 'Omitir dónde se tomaron',
    leaveOutWhat:
      'Se quitan de los archivos el lugar, el equipo y los comentarios; las imágenes quedan como están.',
    reading: 'Leyendo las fotos …',
    kept: (number) =>
      number === 0 ? '' : `${counted(number, 'foto guardada', 'fotos guardadas')} en este equipo.`,
    photo: (number) => `Foto ${number}`,
    remove: (number) => `Omitir la foto ${number}`,
    elsewhere: 'Esta foto está guardada en otro equipo.',
    refused: (file, why) => `${file}: ${why}`,
    refusals: {
      'too large': 'esta foto pasa de 40 MB y no se guardó.',
      'too many pixels': 'esta foto pasa de 60 megapíxeles y no se guardó. Elija una más chica.',
      'cut off': 'este archivo está cortado y no se guardó. Copie la foto de nuevo.',
      'not readable': 'este navegador no puede leer la imagen y no se guardó. Elija un JPEG.',
      'heic not readable':
        'esta es una foto HEIC, que este navegador no puede leer. Ponga la cámara en JPEG («más compatible») y tómela de nuevo, o envíesela en un mensaje: casi todos los teléfonos hacen de ella un JPEG.',
    },
  },

  points: {
    next: (label, unit) => `${label}: próximo punto, ${unit}`,
    add: 'Agregar',
    soFar: (number, fewest) => `${counted(number, 'punto', 'puntos')} de ${fewest} o más.`,
    takeBack: 'Quitar el último punto',
  },

  newRock: {
    heading: 'Roca nueva',
    reading: 'Leyendo las clases …',
    name: '¿Cómo se llama?',
    rockClass: 'Clase que se pidió',
    source: '¿De dónde viene?',
    newSource: 'Una cantera o un banco que no está en la lista',
    sourceName: 'Nombre de esa cantera o ese banco',
    specificGravity: 'Su densidad relativa, según ensayo',
    angularity: 'Su roca es',
    angularities: { angular: 'Angular', rounded: 'Redondeada' },
    note: (name) => `Roca nueva: ${name}`,
  },
};
