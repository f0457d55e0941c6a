/**
 * What the engine says by itself on the screens, in closed sets known from its code and its schema.
 * The sentences of findings are the record and stay as it wrote them.
 */

/** Topics of findings. */
const topics = {
  document: 'documento',
  'kind of rock': 'tipo de enrocado',
  cover: 'cubierta',
  water: 'agua',
  'rock size': 'tamaño de la roca',
  class: 'clase',
  layer: 'capa',
  toe: 'pie',
  soil: 'suelo',
  filter: 'filtro',
  extent: 'extensión',
  quantities: 'cantidades',
  submittal: 'presentación del proveedor',
  substitution: 'sustitución',
  gradation: 'granulometría',
  'rock in the zone': 'roca en la zona',
  remedy: 'medida correctiva',
  'chance of instability': 'probabilidad de inestabilidad',
  supply: 'suministro',
  placing: 'colocación',
  'placing check': 'verificación de colocación',
  mix: 'mezcla',
};

/** What a source is worth. */
const standings = {
  published: 'publicado',
  memory: 'de memoria',
  computed: 'calculado',
  'common practice': 'práctica común',
  stated: 'indicado en el documento',
};

/** States of the checks of placing. */
export const checkStates = {
  pass: 'cumple',
  fail: 'no cumple',
  'not yet known': 'aún no se sabe',
};

/** Titles of the checks of placing, where they hold no name of the site. */
export const checkTitles = {
  Subgrade: 'Subrasante',
  'Depth of the toe': 'Profundidad del pie',
  'Rock stored at the toe': 'Roca acumulada en el pie',
  'Thickness of the toe': 'Espesor del pie',
  'Key at the top': 'Dentellón superior',
  'Geotextile as delivered': 'Geotextil tal como llega',
  'Laps and pins of the geotextile': 'Traslapes y grapas del geotextil',
  'Width of the bucket': 'Ancho del cucharón',
  'Height from which rock is dropped': 'Altura de caída de la roca',
  'Rock as it comes': 'Roca tal como llega',
  'Tally of the mix': 'Cuenta de la mezcla',
  'Voids filled': 'Vacíos rellenos',
  'Thickness of the rock': 'Espesor de la roca',
  'Finished surface': 'Superficie terminada',
  Topsoil: 'Suelo vegetal',
  Seed: 'Semilla',
  'Trench at the top': 'Zanja superior',
  "Trench at the water's edge": 'Zanja al borde del agua',
  'Laps of the blanket at its sides': 'Traslapes laterales de la manta',
  'Laps of the blanket at its ends': 'Traslapes de la manta en sus extremos',
  'Length of the stakes': 'Longitud de las estacas',
  'Spacing of the stakes': 'Separación de las estacas',
};

/** Cautions that stand on every screen, and on every walk: nobody is to miss them. */
const cautions = {
  'Findings support, and never replace, the judgement of the licensed engineer responsible and the criteria that hold at the place.':
    'Los hallazgos apoyan, y nunca reemplazan, el criterio del ingeniero responsable habilitado ni los criterios que rigen en el lugar.',
  'Rock can hurt: keep off piles and slopes that may slide, out from under loads and buckets, and out of fast or cold water.':
    'La roca puede herir: manténgase lejos de acopios y taludes que puedan deslizarse, nunca bajo cargas suspendidas ni cucharones, y fuera del agua rápida o fría.',
  'At dams and levees, nothing here settles their safety.':
    'En presas y diques, nada de lo que hay aquí resuelve su seguridad.',
  'Stay out of the swing of machines, off loose rock and from under loads; nobody stands below rock that is being placed.':
    'Manténgase fuera del giro de las máquinas, de la roca suelta y de debajo de las cargas; nadie se pone más abajo de la roca que se está colocando.',
};

/** How stones are picked. */
const pickings = {
  'The stone under every knot of a net over the face of the pile, or under the toe at every so many steps of a random walk over it':
    'La piedra bajo cada nudo de una red puesta sobre la cara del acopio, o bajo la punta del pie cada tantos pasos de una caminata al azar sobre él',
  'Every stone that a tape laid over the face touches':
    'Toda piedra que toca una cinta tendida sobre la cara',
  'Every stone at the surface of a marked piece of the face':
    'Toda piedra en la superficie de un pedazo marcado de la cara',
  'Every stone of a load, or of a pile spread out':
    'Toda piedra de un viaje, o de un acopio extendido',
};

export const engineWords: Record<string, string> = {
  ...topics,
  ...standings,
  ...checkStates,
  ...checkTitles,
  ...cautions,
  ...pickings,
};
