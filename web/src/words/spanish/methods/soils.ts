/** Methods for soils: classification, conductivity, gradients, internal stability. */
import type { MethodTexts } from './method_texts';

export const soils: MethodTexts = {
  labels: {
    'passes the No. 4 sieve, 4.75 mm': 'pasa el tamiz No. 4, 4.75 mm',
    'liquid limit of what passes No. 40': 'límite líquido de lo que pasa el No. 40',
    'plasticity index; 0 for what is not plastic': 'índice de plasticidad; 0 para lo no plástico',
    'what the fines are, where no limits were tested':
      'qué son los finos, donde no se ensayaron límites',
    'not known': 'no se sabe',
    'silt by look and feel': 'limo, al tacto y a la vista',
    'clay by look and feel': 'arcilla, al tacto y a la vista',
    'liquid limit after oven drying below 0.75 of the one before':
      'límite líquido tras secado en horno menor que 0.75 del anterior',
    'mineral soil': 'suelo mineral',
    'organic soil': 'suelo orgánico',
    'larger than No. 4': 'mayor que No. 4',
    'between No. 4 and No. 200': 'entre No. 4 y No. 200',
    'smaller than No. 200': 'menor que No. 200',
    'D60/D10; 0 where a size is not given': 'D60/D10; 0 donde no se da un tamaño',
    'D30²/(D10·D60); 0 where a size is not given': 'D30²/(D10·D60); 0 donde no se da un tamaño',
    'plasticity index of the A-line; 0 without a liquid limit':
      'índice de plasticidad de la línea A; 0 sin límite líquido',
    'group, by its number: 1 GW, 2 GP, 3 GM, 4 GC, 5 SW, 6 SP, 7 SM, 8 SC, 9 ML, 10 CL, 11 OL, 12 MH, 13 CH, 14 OH':
      'grupo, por su número: 1 GW, 2 GP, 3 GM, 4 GC, 5 SW, 6 SP, 7 SM, 8 SC, 9 ML, 10 CL, 11 OL, 12 MH, 13 CH, 14 OH',
    'second half of a dual symbol, by its number; 0 without':
      'segunda mitad de un símbolo doble, por su número; 0 sin ella',
    'in cm/s for each cm²': 'en cm/s por cada cm²',
    'share of the volume between the grains, 0 to 1':
      'parte del volumen entre los granos, de 0 a 1',
    'size of the grains': 'tamaño de los granos',
    'of the water': 'del agua',
    'openings of the sieves, rising or falling':
      'aberturas de los tamices, en orden creciente o decreciente',
    'percent by mass that passes each': 'porcentaje en masa que pasa cada una',
    'volume of voids over volume of grains': 'volumen de vacíos sobre volumen de granos',
    'shape of the grains, for the shape factor': 'forma de los granos, para el factor de forma',
    'smallest grain below the finest sieve': 'grano más pequeño por debajo del tamiz más fino',
    'effective size': 'tamaño efectivo',
    'factor of safety': 'factor de seguridad',
    'difference of the water levels': 'diferencia de los niveles del agua',
    'depth of the cutoff at the downstream end':
      'profundidad de la pantalla en el extremo de aguas abajo',
    'width of the floor along the flow': 'ancho del piso a lo largo del flujo',
    'critical gradient of the soil': 'gradiente crítico del suelo',
    'exit gradient': 'gradiente de salida',
    'critical over exit gradient; 0 without the former':
      'gradiente crítico sobre el de salida; 0 sin el primero',
    'least H/F of a stable gradation': 'menor H/F de una granulometría estable',
    'ratio over its limit': 'relación sobre su límite',
    'largest ratio of a stable gradation': 'mayor relación de una granulometría estable',
    'limit over ratio': 'límite sobre relación',
    "least h' that is stable": "menor h' estable",
    "largest h' that is stable": "mayor h' estable",
    'to the nearer limit; below 1 outside': 'hasta el límite más cercano; menor que 1, fuera',
    'largest over smallest size of the gap; 0 without one':
      'tamaño mayor sobre menor del salto; 0 sin salto',
    'to the limit that decides; below 1 is unstable':
      'hasta el límite que decide; menor que 1 es inestable',
    '10/Cu: 1 and more safe, below 0.5 unstable':
      '10/Cu: 1 y más es seguro, menos de 0.5 inestable',
  },
  cautions: {
    'Percents are of the material smaller than 3 in (75 mm).':
      'Los porcentajes son del material menor que 3 in (75 mm).',
    'An estimate within a factor of ten: coefficients between 1 and 1000 are in print.':
      'Una estimación dentro de un factor de diez: hay impresos coeficientes de 1 a 1000.',
    'Measure where it matters.': 'Mida donde importa.',
    'Not for plastic soil, and not for stones above about 10 mm: flow between them is not laminar.':
      'No para suelo plástico, ni para piedras de más de unos 10 mm: entre ellas el flujo no es laminar.',
    'What is smaller than the finest sieve is left out unless its smallest grain is given: with 5 % of fines that alone may change the answer by 2.4 times.':
      'Lo menor que el tamiz más fino se deja fuera si no se da su grano menor: con 5 % de finos solo eso puede cambiar la respuesta 2.4 veces.',
    'Holds for deep uniform ground; layers of clay below a sand turn it round.':
      'Vale para terreno uniforme y profundo; capas de arcilla bajo una arena lo invierten.',
    'The uniformity that decides how far up the curve is looked at should be that of the coarse fabric; here it is that of the whole curve.':
      'La uniformidad que decide hasta dónde se mira la curva debería ser la del esqueleto grueso; aquí es la de toda la curva.',
    'Not meant for uniform rock, which falls just below the band.':
      'No es para roca uniforme, que cae justo debajo de la banda.',
    'The later limits of Wan and Fell (2008) on d90/d60 and d20/d5 are not applied: they are recalled with doubt, and nobody has read the paper for this engine yet.':
      'No se aplican los límites posteriores de Wan y Fell (2008) sobre d90/d60 y d20/d5: se recuerdan con dudas, y nadie ha leído aún el artículo para este motor de cálculo.',
    'Between the ranges that the abstract names, nothing is said here.':
      'Entre los rangos que nombra el resumen aquí no se dice nada.',
    'Fines are taken as what passes 0.075 mm.': 'Se toma por finos lo que pasa 0.075 mm.',
  },
};
