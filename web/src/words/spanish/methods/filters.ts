/** Methods for granular filters and geotextiles. */
import type { MethodTexts } from './method_texts';

export const filters: MethodTexts = {
  labels: {
    'of the upper, coarser layer': 'de la capa superior, más gruesa',
    'of the lower, finer layer': 'de la capa inferior, más fina',
    limits: 'límites',
    'D15/d85 < 5, D15/d15 > 5 and < 40, D50/d50 < 40':
      'D15/d85 < 5, D15/d15 > 5 y < 40, D50/d50 < 40',
    'retention ratio': 'relación de retención',
    'permeability ratio': 'relación de permeabilidad',
    'ratio of medians; 0 where a size is not given':
      'relación de medianas; 0 donde no se da un tamaño',
    'limit of retention over the ratio': 'límite de retención sobre la relación',
    'criteria that are kept': 'criterios que se cumplen',
    'criteria that were asked': 'criterios que se pidieron',
    'of the soil': 'del suelo',
    'of the rock': 'de la roca',
    'more than': 'más de',
    'less than': 'menos de',
    'does the soil disperse': 'dispersión del suelo',
    'tested: no': 'ensayado: no',
    'tested: yes': 'ensayado: sí',
    'not tested': 'no ensayado',
    'issue that gives the permeability criterion': 'edición que da el criterio de permeabilidad',
    'is a soil with gravel regraded to what passes No. 4':
      'cuándo se recompone un suelo con grava a lo que pasa el No. 4',
    always: 'siempre',
    'never: for gravel that is neither gap-graded nor broadly graded, with less than 15 % of fines':
      'nunca: para grava sin salto ni granulometría muy amplia, con menos de 15 % de finos',
    'passes No. 200 after regrading': 'pasa el No. 200 después de recomponer',
    'of the base soil, 1 to 4': 'del suelo de base, de 1 a 4',
    'largest (control point 1)': 'máximo (punto de control 1)',
    'least to let the water out': 'mínimo para que salga el agua',
    'least in a band no wider than five (control point 2)':
      'mínimo en una banda no más ancha que cinco (punto de control 2)',
    'least (control point 4)': 'mínimo (punto de control 4)',
    'largest, against segregation (control point 7)':
      'máximo, contra la segregación (punto de control 7)',
    'median of the soil': 'mediana del suelo',
    'D60/D10 of the soil': 'D60/D10 del suelo',
    'D60/D10 of the filter': 'D60/D10 del filtro',
    'read from the chart': 'leído del gráfico',
    'largest median of the filter': 'mayor mediana del filtro',
    'largest grain of the layer': 'grano más grande de la capa',
    'granular layers under the rock': 'capas granulares bajo la roca',
    one: 'una',
    'more than one': 'más de una',
    'where it is placed': 'dónde se coloca',
    'least thickness of the layer': 'espesor mínimo de la capa',
    'of the soil, passing No. 200': 'del suelo, lo que pasa el No. 200',
    'hydraulic conductivity of the soil': 'conductividad hidráulica del suelo',
    'is the soil gap-graded': 'granulometría del suelo con salto',
    no: 'no',
    yes: 'sí',
    'thickness of the fabric': 'espesor del geotextil',
    'kind of fabric': 'tipo de geotextil',
    nonwoven: 'no tejido',
    'woven, monofilament': 'tejido, monofilamento',
    'woven, slit film: not allowed': 'tejido, de cinta plana: no se admite',
    'water over and in it': 'el agua sobre él y en él',
    'steady flow, a bedding layer over the fabric':
      'flujo estable, una capa de apoyo sobre el geotextil',
    'waves, reversing flow, or rock straight on the fabric':
      'olas, flujo alternante, o roca directa sobre el geotextil',
    'what clogging would do': 'qué efecto tendría la colmatación',
    'largest, steady flow': 'máximo, flujo estable',
    'largest, dynamic flow': 'máximo, flujo dinámico',
    'largest, default of M 288': 'máximo, valor por omisión de M 288',
    'largest: what governs': 'máximo: lo que rige',
    'least, against clogging; 0 where nothing is asked':
      'mínimo, contra la colmatación; 0 donde no se pide nada',
    'least, default of M 288': 'mínimo, valor por omisión de M 288',
    'least: what governs': 'mínimo: lo que rige',
    'rules that ask for larger openings than hold the soil':
      'reglas que piden aberturas mayores que las que retienen el suelo',
    'reasons to prefer granular bedding': 'razones para preferir una capa de apoyo granular',
    'of the largest stones': 'de las piedras más grandes',
    'from which stones fall': 'desde la que caen las piedras',
    'a layer of bedding between fabric and rock': 'una capa de apoyo entre geotextil y roca',
    'rock on the fabric': 'roca sobre el geotextil',
    'bedding on the fabric': 'capa de apoyo sobre el geotextil',
    'class needed; 1 is the strongest': 'clase necesaria; 1 es la más resistente',
  },
  cautions: {
    'Of a band, take the coarsest D15 above with the finest d85 below.':
      'De una banda, tome el D15 más grueso de arriba con el d85 más fino de abajo.',
    'The printed example slips twice: "D50 < 2 mm" stands where its own line gives 20 mm, and "D15 > 20" where the inequality gives less.':
      'El ejemplo impreso tiene dos deslices: dice «D50 < 2 mm» donde su propia línea da 20 mm, y «D15 > 20» donde la desigualdad da menos.',
    'What is recomputed stands here.': 'Aquí está lo recalculado.',
    'Fines of a filter must not be plastic.': 'Los finos de un filtro no deben ser plásticos.',
    'A soil that was not tested for dispersion is taken as one that does not disperse; test clays and silts.':
      'Un suelo cuya dispersión no se ensayó se toma como no dispersivo; ensaye arcillas y limos.',
    'Not known until the chart is digitised: the engine holds none of its points.':
      'No se sabe mientras no se digitalice el gráfico: el motor de cálculo no tiene ninguno de sus puntos.',
    'Thicker where the curves of filter and soil are less alike: HEC-11 goes to 15 in for a single layer, 8 in for each of several (from memory).':
      'Más gruesa donde las curvas de filtro y suelo se parecen menos: HEC-11 llega a 15 in para una sola capa, 8 in para cada una de varias (de memoria).',
    'The retention tree of HEC-23 Design Guideline 16, by clay, currents and waves, is not applied: it is recalled with doubt and one of its branches not at all.':
      'No se aplica el árbol de retención de HEC-23 Design Guideline 16, por arcilla, corrientes y olas: se recuerda con dudas y una de sus ramas no se recuerda.',
    'The rules of NHI-07-092 and M 288 stand in its place.':
      'En su lugar están las reglas de NHI-07-092 y M 288.',
    'An opening is a largest average of rolls; permittivity and strength are least averages.':
      'Una abertura es un promedio máximo de rollos; la permitividad y la resistencia son promedios mínimos.',
    'Fabric lies loose, without stretching; overlap 1 ft dry and 3 ft under water, the upstream piece on top; key it in at toe and top; never push rock uphill across it (from memory).':
      'El geotextil va suelto, sin estirar; traslape de 1 ft en seco y 3 ft bajo el agua, la pieza de aguas arriba encima; empótrelo en el pie y arriba; nunca empuje roca talud arriba sobre él (de memoria).',
    'Stones above 100 kg want a cushion of 4 to 6 in of bedding on the fabric (common practice).':
      'Las piedras de más de 100 kg piden un colchón de 4 a 6 in de capa de apoyo sobre el geotextil (práctica común).',
    'At least half the strength must be left after 500 hours of ultraviolet light (from memory).':
      'Debe quedar al menos la mitad de la resistencia tras 500 horas de luz ultravioleta (de memoria).',
  },
};
