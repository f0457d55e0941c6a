/** The desk. What its forms are made of stands in `document_fields.ts` and `document_words.ts`. */
import type { desk as English } from '../english/desk';
import { momentText } from '../sentences';
import { documentFields } from './document_fields';
import { documentHelp } from './document_help';
import { documentWords } from './document_words';
import { studies } from './studies';

const parts: (typeof English)['parts'] = {
  flow_cases: ['Casos de caudal', 'caso de caudal'],
  sections: ['Secciones', 'sección'],
  reaches: ['Tramos', 'tramo'],
  centrelines: ['Ejes del cauce', 'eje del cauce'],
  zones: ['Zonas y revestimientos', 'zona'],
  soils: ['Suelos', 'suelo'],
  sources: ['Procedencias', 'procedencia'],
  submittals: ['Presentaciones', 'presentación'],
  lots: ['Lotes', 'lote'],
  materials: ['Materiales', 'material'],
  mixes: ['Mezclas', 'mezcla'],
  classes: ['Clases propias', 'clase'],
  looks: ['Observaciones', 'observación'],
  loads: ['Viajes', 'viaje'],
  layer_surveys: ['Levantamientos de capas', 'levantamiento de una capa'],
  placing_walks: ['Recorridos de colocación', 'recorrido de colocación'],
  nonconformances: ['Problemas', 'problema'],
  evidence: ['Riesgos y confianza', 'riesgos'],
  ordering: ['Pedido', 'pedido'],
  prices: ['Precios', 'precios'],
  requirements: ['Requisitos de la roca', 'requisitos'],
  placing_tolerances: ['Tolerancias de colocación', 'tolerancias'],
};

export const desk: typeof English = {
  name: 'Gabinete',
  opening: 'Abriendo el gabinete …',
  notOpened: 'No se pudo cargar el gabinete. Revise la conexión y cargue de nuevo esta página.',
  navigation: 'Partes de esta obra',
  groups: { site: 'La obra', works: 'Las protecciones', rock: 'La roca', record: 'El registro' },
  board: 'Tablero de hallazgos',
  timeline: 'Registro',
  siteItself: 'Nombre y notas',
  newItem: (one) => `Agregar: ${one}`,
  none: 'Todavía no hay.',
  inField: 'En el campo',
  onPhotos: 'Medir en fotos',
  noSuchItem: 'Esta obra no tiene ese elemento.',
  noSuchPart: 'Una obra no tiene esa parte.',
  backTo: (name) => `Volver a: ${name}`,
  history: 'Su historia',
  keys: 'Teclado',
  keysHeading: 'Teclas en el gabinete',
  keysList: [
    ['Ctrl S', 'Guardar lo que tiene el formulario'],
    ['Ctrl Z', 'Deshacer lo último que se guardó'],
    ['Ctrl Mayús Z', 'Rehacerlo'],
    ['Ctrl Intro', 'Guardar, desde dentro de un texto de varias líneas'],
    ['?', 'Mostrar estas teclas'],
    ['Flechas, +, −, 0', 'En una planta: moverla, ampliarla, verla entera'],
    ['Tab, Mayús Tab', 'Al campo siguiente, y al anterior'],
    [
      'Ctrl V en una tabla',
      'Toma las celdas copiadas de una hoja de cálculo, desde la celda del cursor',
    ],
  ],
  keysByMark: 'La tecla ? abre esta lista',
  close: 'Cerrar',

  parts,

  teaches: {
    flow_cases:
      'Un caso de caudal es un caudal con su propósito: la crecida que la roca debe resistir, lo que viene a menudo, lo que siempre corre.',
    sections:
      'Una sección es una línea levantada a través del cauce, mirando aguas abajo. Tráigala como archivo CSV o escriba sus puntos.',
    reaches:
      'Un tramo es una serie ordenada de secciones. El agua se sigue entonces de una a la siguiente.',
    centrelines:
      'Un eje es el recorrido del cauce en planta. Da a las zonas sus curvas y sus longitudes.',
    zones:
      'Una zona es una parte de la protección con un solo revestimiento: una margen, un lecho, un delantal, una pila. Dice qué roca, de qué espesor, sobre qué filtro y bajo qué cubierta.',
    soils: 'El suelo bajo la roca, según sus ensayos, decide el filtro.',
    sources: 'Una procedencia es una cantera o un banco con los resultados de sus ensayos.',
    submittals:
      'Lo que un proveedor presenta de la roca de una procedencia se lee frente a lo que se exige.',
    lots: 'Un lote es roca que se juzga en conjunto, por ejemplo un acopio.',
    materials:
      'Los materiales son las existencias disponibles: capa de apoyo, suelo y grava para rellenar la roca.',
    mixes: 'Una mezcla dice con qué se llenan los vacíos de la roca, y en qué proporción.',
    classes:
      'El catálogo contiene las clases publicadas. Aquí van las clases de una especificación local.',
  },

  fieldGroups: {
    place: 'Ubicación',
    lining: 'Revestimiento',
    below: 'Bajo la roca',
    toe: 'Pie y socavación',
    cover: 'Cubierta',
    design: 'Decisiones de diseño',
    more: 'Más',
    supply: 'Suministro y precio',
    tests: 'Ensayos',
  },

  fields: documentFields,
  words: documentWords,
  fieldHelp: documentHelp,
  form: {
    notStated: 'sin indicar',
    needed: 'necesario',
    usual: (value) => `Si no se indica nada: ${value}.`,
    add: (name) => `Agregar: ${name}`,
    remove: (name) => `Quitar: ${name}`,
    up: (name) => `Subir: ${name}`,
    row: (number) => `fila ${number}`,
    rowOf: (name, number) => `${name}, fila ${number}`,
    addRow: 'Agregar una fila',
    removeRow: (number) => `Quitar la fila ${number}`,
    which: (name) => `${name}: ¿cuál?`,
    key: (name) => `${name}: ¿de qué?`,
    keep: 'Guardar',
    asItWas: 'Como estaba',
    remove_: 'Quitarlo de la obra',
    changed: (note) => `Cambiado: ${note}`,
    added: (note) => `Nuevo: ${note}`,
    removed: (note) => `Quitado: ${note}`,
    kept: 'Aquí todo está guardado.',
    notKept: 'Los cambios de aquí aún no están guardados.',
    looking: 'Revisando …',
    stopped: (number) => (number === 1 ? 'Una cosa lo impide:' : `${number} cosas lo impiden:`),
    goTo: (name) => `Ir a: ${name}`,
    removeWhat: (name) =>
      `«${name}» sale de la obra tal como está. El registro lo conserva, y deshacer lo trae de vuelta.`,
    removeYes: 'Quitarlo',
    removeNo: 'Dejarlo',
    elsewhere: 'En otra parte de la obra',
    leftFromBefore: 'Vuelve a estar lo que antes se escribió aquí y no se guardó.',
    tooLong: (number) => `${number} filas: demasiadas para mostrarlas. Guárdelas como archivo.`,
  },

  file: {
    choose: 'Elegir un archivo CSV',
    drop: 'o suéltelo en cualquier parte de esta página.',
    dropHere: 'Suelte la tabla aquí',
    none: 'Todavía no hay archivo.',
    inFile: (name) => `Guardado en ${name}`,
    edit: (name) => `La tabla ${name} como texto`,
    missing: 'Este archivo no vino con la obra.',
    notRead: 'Este archivo no se pudo leer como texto UTF-8 de hasta 8 MB.',
  },

  beside: {
    heading: 'Qué resulta de ello',
    asItWouldBe: 'Como sería con lo que tiene el formulario',
    asKept: 'Como está guardado',
    needs: 'Antes de que el motor de cálculo pueda decir qué resultaría:',
    andMore: (number) => `… y ${number} más.`,
    was: (outcome) => `antes: ${outcome}`,
    fresh: 'nuevo',
    nothing: 'El motor de cálculo aún no dice nada de ello.',
    change: 'Cambie algo, y lo que resulta aparece aquí antes de guardarlo.',
    all: (number) => `Sus ${number} hallazgos`,
  },

  boardPage: {
    intro: 'Lo que exige actuar, y quién, antes que lo demás.',
    columns: {
      'falls short': 'No cumple',
      'not yet known': 'Aún no se sabe',
      'ask the designer': 'Decide el proyectista',
    },
    emptyColumn: 'Nada.',
    people: 'A la espera de alguien',
    toDecide: 'Espera la decisión de quien responde por el diseño.',
    toClose: (decision) => `Decidido: ${decision}. Espera que se haga y se cierre.`,
    crossing: 'Dos entradas se cruzan: alguien dice cuál es la correcta.',
    nobody: 'No se espera a nadie.',
    allMeet: 'Todo lo que el motor de cálculo revisó cumple.',
    more: (number) => `${number} más`,
    edit: (name) => `Editar ${name}`,
  },

  timelinePage: {
    heading: 'El registro',
    of: (name) => `Historia: ${name}`,
    intro: 'Todas las revisiones, la última primero. Nunca se reescribe nada.',
    whole: 'Todo el registro',
    by: (author, when) => `${author}, ${momentText(when)}`,
    touched: (number) => (number === 1 ? 'una entrada' : `${number} entradas`),
    removed: 'quitado',
    earlier: (number) => `Mostrar ${number} anteriores`,
    upon: (id) => `Revisión ${id}`,
    nothing: 'Nada en el registro trata de esto.',
  },

  start: {
    heading: 'Una obra nueva en tres pasos',
    step: (number) => `Paso ${number} de 3`,
    steps: ['La obra', 'El agua', 'Las protecciones'],
    floodHeading: 'La crecida que la roca debe resistir',
    sectionHeading: 'Una sección a través del cauce',
    sourceHeading: 'De dónde viene la roca',
    zoneHeading: 'La primera zona de la protección',
    next: 'Guardar y seguir',
    later: 'Dejarlo para después',
    done: 'La obra tiene lo que el motor de cálculo necesita para revisarla.',
    notes: ['Una obra nueva', 'El agua de una obra nueva', 'La primera zona de la protección'],
    design: 'Crecida de diseño',
  },

  studies,
};
