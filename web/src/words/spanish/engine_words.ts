/**
 * Words of the engine that stand by themselves on the screens, in closed sets known from its code
 * and its schema. Its sentences are the record and stay as it wrote them.
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
const checkStates = {
  pass: 'cumple',
  fail: 'no cumple',
  'not yet known': 'aún no se sabe',
};

/** Titles of the checks of placing, where they hold no name of the site. */
const checkTitles = {
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

export const engineWords: Record<string, string> = {
  ...topics,
  ...standings,
  ...checkStates,
  ...checkTitles,
};
