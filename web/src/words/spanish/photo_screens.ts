/** Measuring on photos. */
import type { photoScreens as English } from '../english/photo_screens';
import { counted } from '../sentences';

const photos = (number: number) => counted(number, 'foto', 'fotos');

export const photoScreens: typeof English = {
  heading: (lot) => `Fotos: ${lot}`,
  name: 'Fotos',
  nameAt: (place) => `Fotos, ${place}`,
  note: (number) => `Medido en ${photos(number)}`,

  how: '¿Cómo se miden las piedras?',
  ways: {
    outlines: {
      name: 'Hallar las piedras',
      what: 'En este equipo se traza el contorno de las piedras de cada foto; usted los revisa y los corrige.',
    },
    taps: {
      name: 'Tocar las piedras',
      what: 'Usted toca los dos extremos de los dos ejes visibles de la piedra bajo cada punto de una cuadrícula: unos tres minutos por foto.',
    },
  },
  lies: '¿Cómo está la roca?',
  lying: { heap: 'En un montón o acopio', layer: 'En una capa colocada' },
  place: '¿En qué parte?',
  caution:
    'Manténgase lejos de taludes que puedan deslizarse, y nunca bajo cargas suspendidas ni cucharones.',
  begin: 'Comenzar',

  guide: {
    heading: 'Cómo tomar la foto',
    points: [
      'Póngase de frente a la cara de la roca: una foto oblicua dice menos.',
      'Que la imagen abarque de 12 a 14 piedras medianas de ancho, y llénela de roca.',
      'Ponga sobre la roca dos bolas de tamaño conocido, una arriba y otra abajo, o una mira con dos marcas. Deben estar sobre la roca, no delante de ella.',
      'También sirve un tablero de marcas impreso y pegado en una placa rígida, tendido sobre la roca; dos de ellos en una vista oblicua.',
      'Mejor nublado o a la sombra que al sol. No se mueva; limpie el lente.',
      'Tome tres fotos o más, de lugares que no se repitan.',
    ],
  },
  printBoards: 'Tableros de marcas para imprimir, en una hoja Carta o A4',
  printBoard: (board) => `Tablero ${board}`,
  boardFile: (board) => `tablero-de-marcas-${board}.svg`,
  take: 'Tomar o elegir una foto',
  another: 'Otra foto',
  working: (share) => `Hallando las piedras: ${Math.round(100 * share)} %`,
  readingPhoto: 'Leyendo la foto …',
  cancel: 'Detener',
  cancelled: 'Detenido. No se midió nada en esa foto.',
  twice: 'Esta foto ya está medida aquí.',
  refused: (file, why) => `${file}: ${why}`,
  photos: 'Fotos',
  photo: (number) => `Foto ${number}`,
  leaveOut: 'Omitir esta foto',
  elsewhere: 'La imagen está guardada en otro equipo; lo que se trazó en ella está aquí.',

  steps: {
    scale: 'Escala',
    stones: 'Piedras',
    largest: 'Piedra más grande',
    check: 'Verificación',
  },
  step: 'Qué se traza',
  zoomIn: 'Acercar',
  zoomOut: 'Alejar',
  whole: 'Foto entera',
  keys: 'Las flechas mueven la cruz, Intro toca, más y menos acercan y alejan, 0 muestra la foto entera, Esc abandona una línea.',
  picture: (number, tool) => `Foto ${number}: ${tool}`,

  view: '¿Cómo miró la roca?',
  views: {
    'straight on': 'De frente a su cara, hasta 30° de desvío',
    oblique: 'Oblicua, como al estar de pie ante un acopio',
  },
  scaleBy: '¿Qué da la escala?',
  scales: { balls: 'Bolas sobre la roca', staffs: 'Una mira sobre la roca' },
  tapBall: 'Toque el centro de una bola y luego su borde. Arrastre cualquiera para corregirlo.',
  tapStaff: 'Toque las dos marcas de la mira. Arrastre cualquiera para corregirla.',
  ball: (number) => `Bola ${number}: diámetro`,
  staff: (number) => `Mira ${number}: longitud entre sus marcas`,
  unitOf: (label) => `Unidad: ${label}`,
  boardOn: (board, edge) => (edge === '' ? `Tablero ${board}` : `Tablero ${board}: ${edge}`),
  board: (board) => `Tablero ${board}: lado de un cuadrado oscuro, tal como se imprimió`,
  knownBoard: (board) =>
    `El tablero ${board} está en esta foto. Su tamaño ya consta en esta obra; mida la hoja impresa si no está seguro de que sea la misma.`,
  newBoard: (board) =>
    `El tablero ${board} está en esta foto y esta obra no lo conoce: mida en la hoja impresa el lado de uno de sus cuadrados oscuros.`,
  takeEdge: (edge) => `Es de ${edge}, como ya consta`,
  removeBoard: (board) => `Quitar el tablero ${board}`,
  removeBall: (number) => `Quitar la bola ${number}`,
  removeStaff: (number) => `Quitar la mira ${number}`,
  scaleError: '¿Cuánto puede errar la escala, en dos casos de cada tres?',
  scaleErrors: {
    '': 'Elija',
    '2 %': '2 %',
    '3 %': '3 %',
    '5 %': '5 %',
    '8 %': '8 %',
    '10 %': '10 %',
  },
  noMark: 'Todavía nada da la escala.',
  statedBalls: 'Revise que cada círculo calce con su bola e indique su diámetro.',
  largest: 'Piedra más grande a la vista, con cinta',

  largestStart:
    'Toque un extremo de la piedra más grande a la vista, donde es más larga. Arrastre un extremo para corregirlo.',
  largestEnd: 'Toque su otro extremo.',
  largestElsewhere:
    'La piedra más grande está marcada en otra foto: toque aquí si esta muestra una mayor.',
  removeLargest: 'Quitar la piedra más grande',

  check: {
    what: '¿Son buenos los contornos? Usted mira 30 de ellos, repartidos por las fotos, y dice de cada uno si está bien. Luego se le dice cuánto se desvían los tamaños y si el resultado vale.',
    begin: 'Mirar 30 contornos',
    anew: 'Empezar la verificación de nuevo',
    nothing: 'No hay nada que mirar: ninguna piedra tiene contorno.',
    done: (done, all) => `${done} de ${all} contornos mirados`,
    look: '¿El contorno amarillo rodea la piedra bajo la cruz? Si no, toque un extremo del eje visible más largo de esa piedra.',
    answers: {
      'as outlined': 'El contorno está bien',
      'mostly hidden': 'Casi oculta: saltar',
      'not rock': 'Aquí no hay roca',
    },
    back: 'Deshacer la última respuesta',
  },

  tool: 'Herramienta',
  tools: {
    look: { name: 'Mirar', what: 'Arrastre para mover; dos dedos o la rueda acercan y alejan.' },
    join: { name: 'Unir', what: 'Toque los pedazos de una misma piedra, uno tras otro.' },
    cut: { name: 'Cortar', what: 'Trace una línea a través de una piedra, de lado a lado.' },
    remove: { name: 'Quitar', what: 'Toque un contorno que no es una piedra.' },
    draw: { name: 'Trazar', what: 'Dé una vuelta alrededor de una piedra que faltó.' },
    'not rock': {
      name: 'No es roca',
      what: 'Rodee lo que no es roca: se van todos los contornos de adentro.',
    },
  },
  undo: 'Deshacer',
  stones: (number) =>
    `${counted(number, 'piedra con contorno', 'piedras con contorno')} en esta foto.`,
  missed: 'Ahí no hay ningún contorno.',

  ends: [
    'Toque un extremo del eje visible más largo de la piedra bajo la cruz.',
    'Toque su otro extremo.',
    'Ahora a lo ancho: toque un extremo del eje visible más ancho, transversal al primero.',
    'Toque su otro extremo.',
  ],
  tapBack: 'Deshacer el toque',
  hidden: 'Casi oculta: saltar',
  noRock: 'Aquí no hay roca',
  nodesDone: (done, all) => `${done} de ${all} puntos`,
  allDone: 'Ya están todos los puntos de esta foto. Tome otra foto, o guarde.',

  waiting: 'Aún no hay nada medido: fije la escala y toque la primera piedra.',
  mind: 'Qué tener en cuenta',
  keep: 'Guardar',
  notKept: 'Aún no está guardado:',
  drop: 'Descartar esto',
  dropWhat: (number) => `Se perderá lo trazado en ${photos(number)}. Esto no se puede deshacer.`,
  dropYes: 'Descartarlo',
  dropNo: 'Seguir midiendo',
};
