/** Methods for stones counted, weighed and photographed. */
import type { MethodTexts } from './method_texts';

export const stones: MethodTexts = {
  labels: {
    'size of the stone': 'tamaño de la piedra',
    'mass of the stone': 'masa de la piedra',
    'what the size is of': 'de qué es el tamaño',
    "the middle one of the stone's three axes": 'el intermedio de los tres ejes de la piedra',
    'diameter of the sphere of the same mass': 'diámetro de la esfera de igual masa',
    'square opening that the stone passes': 'abertura cuadrada que pasa la piedra',
    'density of the rock, saturated surface-dry':
      'densidad de la roca, saturada con superficie seca',
    'intermediate axis, also the sieve opening': 'eje intermedio, también la abertura del tamiz',
    'sizes that bound the bins, from small to large':
      'tamaños que limitan los intervalos, de menor a mayor',
    'stones in each bin': 'piedras en cada intervalo',
    'how the stones were picked': 'cómo se tomaron las piedras',
    'the stone under each point of a grid, a tape or a random walk: m = 0':
      'la piedra bajo cada punto de una cuadrícula, una cinta o una caminata al azar: m = 0',
    'every stone a line touches: m = 1': 'toda piedra que toca una línea: m = 1',
    'every stone seen on a face: m = 2': 'toda piedra que se ve en una cara: m = 2',
    'every stone of a load: m = 3': 'toda piedra de un viaje: m = 3',
    'the size that stands for a bin': 'el tamaño que representa un intervalo',
    '√(lower·upper)': '√(inferior·superior)',
    '(lower + upper)/2': '(inferior + superior)/2',
    'size at which the percent smaller is asked': 'tamaño al que se pide el porcentaje que pasa',
    'percent smaller at which the size is asked': 'porcentaje que pasa al que se pide el tamaño',
    'percent smaller than X by mass': 'porcentaje en masa menor que X',
    'size of which p is smaller by mass': 'tamaño bajo el cual está p de la masa',
    'equally informative stones behind the curve':
      'piedras de igual información detrás de la curva',
    'heaviest stone allowed in each group, from light to heavy':
      'piedra más pesada admitida en cada grupo, de liviano a pesado',
    'mass of all stones of each group': 'masa de todas las piedras de cada grupo',
    'stone mass at which the percent lighter is asked':
      'masa de piedra a la que se pide el porcentaje más liviano',
    'percent lighter at which the stone mass is asked':
      'porcentaje más liviano al que se pide la masa de piedra',
    'percent of the sample in stones lighter than X':
      'porcentaje de la muestra en piedras más livianas que X',
    'stone mass of which p is lighter': 'masa de piedra bajo la cual está p',
    'diameter of the ball': 'diámetro de la bola',
    'radius of the ball on the picture, in pixels': 'radio de la bola en la foto, en píxeles',
    'focal length in pixels': 'distancia focal en píxeles',
    'line of sight off square to the face':
      'desvío de la línea de visión respecto de la perpendicular a la cara',
    'ball centre above the mean surface, in ball radii':
      'centro de la bola sobre la superficie media, en radios de la bola',
    'length of a pixel at the ball': 'longitud de un píxel en la bola',
    'length of a pixel on the rock': 'longitud de un píxel en la roca',
    "size by the ball's own scale over size": 'tamaño con la escala propia de la bola sobre tamaño',
    'size on the photos, all photos together': 'tamaño en las fotos, todas las fotos juntas',
    'percent of the mass that is smaller': 'porcentaje de la masa que es menor',
    '15 %, indicative': '15 %, indicativo',
    'how the camera looked at the face': 'cómo miraba la cámara la cara',
    'square to the face, up to 30° off': 'perpendicular a la cara, con desvío de hasta 30°',
    'how wide the photos are': 'qué ancho abarcan las fotos',
    '9 D50 or more': '9 D50 o más',
    'less, so that few stones are seen whole': 'menos, de modo que pocas piedras se ven enteras',
    'as somebody sees it who stands before it': 'como la ve quien está parado delante',
    'how the rock lies': 'cómo está la roca',
    'placed in a layer': 'colocada en una capa',
    'poured in a heap': 'vertida en un montón',
    'how stones became sizes': 'cómo las piedras pasaron a tamaños',
    'equal-area diameter, each stone by its visible area':
      'diámetro de igual área, cada piedra por su área visible',
    '√(long·short) of the stone under each node, mostly hidden ones left out':
      '√(largo·corto) de la piedra bajo cada nudo, sin las casi ocultas',
    'error of the scale, standard deviation': 'error de la escala, desviación estándar',
    'size of the whole pile at the percent': 'tamaño de todo el acopio a ese porcentaje',
    'stones smaller than the size': 'piedras menores que el tamaño',
    'stones in all': 'piedras en total',
    'confidence of the two-sided limits': 'confianza de los límites de dos lados',
    'percent smaller asked about': 'porcentaje que pasa por el que se pregunta',
    'lower limit of the percent smaller': 'límite inferior del porcentaje que pasa',
    'upper limit of the percent smaller': 'límite superior del porcentaje que pasa',
    'that the percent smaller is at most p': 'de que el porcentaje que pasa es a lo sumo p',
    'that the percent smaller is at least p': 'de que el porcentaje que pasa es al menos p',
    'stones in each bin, picked on a grid': 'piedras en cada intervalo, tomadas en una cuadrícula',
    'percent smaller': 'porcentaje que pasa',
    'confidence of the two limits together': 'confianza de los dos límites juntos',
    'how the limits of the percent are found': 'cómo se hallan los límites del porcentaje',
    'tails of the binomial distribution': 'colas de la distribución binomial',
    'size at the percent': 'tamaño a ese porcentaje',
    'its lower limit': 'su límite inferior',
    'its upper limit': 'su límite superior',
    'stones measured': 'piedras medidas',
    'rank of the stone at the lower limit, 1 the smallest':
      'orden de la piedra en el límite inferior, 1 la menor',
    'rank of the stone at the upper limit': 'orden de la piedra en el límite superior',
    'confidence reached with whole ranks': 'confianza alcanzada con órdenes enteros',
    'stones in each class, row after row': 'piedras en cada clase, fila por fila',
    'number of rows, one for each look': 'número de filas, una por observación',
    'distance of the rows from common proportions': 'distancia de las filas a proporciones comunes',
    'chance of such a distance when all rows are the same rock':
      'probabilidad de tal distancia si todas las filas son de la misma roca',
  },
  cautions: {
    'The same size means 62 % more mass as an intermediate axis than as a sphere.':
      'El mismo tamaño es 62 % más masa como eje intermedio que como esfera.',
    'Use the meaning that the specification states.':
      'Use el significado que indica la especificación.',
    'The mass of a single stone depends on its shape; these are means of ordinary quarry stone.':
      'La masa de una piedra depende de su forma; estas son medias de piedra común de cantera.',
    'Weigh stones where the mass decides.': 'Pese piedras donde la masa decide.',
    'The conversion takes stones as packed cubes without voids.':
      'La conversión toma las piedras como cubos apilados sin vacíos.',
    'On photographs, where stones hide one another, the true power lies somewhat below 2.':
      'En fotos, donde unas piedras tapan a otras, la potencia verdadera es algo menor que 2.',
    "A grid's spacing should be at least the size of the largest stone, so that no stone is picked twice by chance.":
      'La separación de una cuadrícula debe ser al menos el tamaño de la piedra más grande, para que ninguna se tome dos veces por azar.',
    'Keep clear of steep or loose pile faces and of working machines while counting.':
      'Al contar, manténgase lejos de caras de acopio empinadas o sueltas y de máquinas en trabajo.',
    'One large stone can be several percent of a sample: state the heaviest stone as a percent of the whole.':
      'Una piedra grande puede ser varios por ciento de una muestra: indique la piedra más pesada como porcentaje del total.',
    'Sorting and lifting stones is machine work; nobody stands within reach of a bucket or below a lifted stone.':
      'Clasificar e izar piedras es trabajo de máquina; nadie al alcance de un cucharón ni bajo una piedra izada.',
    'A ball as large as the stones, seen from near by, is wrong by 20 % without the setting back; with it an error of 6 % (standard deviation) was left.':
      'Una bola del tamaño de las piedras, vista de cerca, yerra 20 % sin el retroceso; con él quedó un error de 6 % (desviación estándar).',
    'On an oblique view one ball does not do: use one low and one high on the picture.':
      'En una vista oblicua una bola no basta: use una abajo y otra arriba en la foto.',
    'A photo shows the surface; fines sink out of sight.':
      'Una foto muestra la superficie; los finos se hunden y no se ven.',
    'No factor leads to the largest stone: measure it with a tape.':
      'Ningún factor lleva a la piedra más grande: mídala con cinta.',
    'Holds for stones picked independently, as on a grid wider than the largest stone.':
      'Vale para piedras tomadas de modo independiente, como en una cuadrícula más amplia que la piedra más grande.',
    'Stones of one load are alike: spread the count over loads.':
      'Las piedras de un viaje se parecen: reparta el conteo entre viajes.',
    'What an observer adds by choosing or misreading stones is not in these limits.':
      'Lo que agrega un observador al elegir o leer mal piedras no está en estos límites.',
    "Both limits are read on the sample's own curve: where the curve is coarse, so are they.":
      'Ambos límites se leen en la curva de la propia muestra: donde la curva es basta, ellos también.',
    'Holds for stones picked independently, as on a grid.':
      'Vale para piedras tomadas de modo independiente, como en una cuadrícula.',
    'The order of the sizes is not used; a steady shift of all sizes is seen less well.':
      'No se usa el orden de los tamaños; un corrimiento parejo de todos se ve menos.',
  },
};
