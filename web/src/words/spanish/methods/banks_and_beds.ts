/** Methods for rock on banks and beds, and against ice, debris and propellers. */
import type { MethodTexts } from './method_texts';

export const banksAndBeds: MethodTexts = {
  labels: {
    'how the water meets the rock': 'cómo llega el agua a la roca',
    'straight reach or inside of a bend': 'tramo recto o interior de una curva',
    'outside of a bend': 'exterior de una curva',
    'just downstream of a concrete channel': 'justo aguas abajo de un canal de concreto',
    'end of a dike': 'extremo de un dique',
    'braided or oblique flow that runs at the bank':
      'flujo trenzado u oblicuo que da contra la margen',
    'which bend curve: natural or trapezoidal channel':
      'qué gráfico de curvas: cauce natural o canal trapezoidal',
    'natural channel': 'cauce natural',
    'trapezoidal channel': 'canal trapezoidal',
    'average velocity of the main channel, at the upstream end of a bend':
      'velocidad media del cauce principal, en el extremo de aguas arriba de una curva',
    'depth-averaged velocity at the rock, on a bank 20 % up the slope':
      'velocidad media en la vertical sobre la roca; en una margen, al 20 % talud arriba',
    'from the end of the bend down to the rock; the bend velocity fades by 0.1 of the average for each width after the first':
      'del final de la curva hasta la roca; la velocidad de la curva baja 0.1 de la media por cada ancho después del primero',
    'water depth at the rock; on a bank 20 % of the slope length up from the toe':
      'tirante sobre la roca; en una margen, al 20 % de la longitud del talud desde el pie',
    'bank angle from horizontal; 0° on a bed':
      'ángulo de la margen con la horizontal; 0° en un lecho',
    'angular rock takes Cs 0.30, rounded rock 0.375':
      'la roca angular toma Cs 0.30, la redondeada 0.375',
    'broken faces, sharp edges': 'caras de fractura, aristas vivas',
    'river cobbles and worn boulders': 'cantos de río y bolones gastados',
    'safety factor on size': 'factor de seguridad sobre el tamaño',
    '1 for a layer of least thickness; smaller for thicker layers, by Plate B-40':
      '1 para una capa de espesor mínimo; menor para capas más gruesas, según Plate B-40',
    'Froude number of the channel': 'número de Froude del cauce',
    'which side-slope factor': 'qué factor de talud lateral',
    "Plate B-39, which returns the manual's own examples":
      'Plate B-39, que reproduce los ejemplos del propio manual',
    'eq. 3-4 with the angle of repose; gives larger rock':
      'ec. 3-4 con el ángulo de reposo; da roca más grande',
    'side-slope factor read by hand': 'factor de talud lateral leído a mano',
    'angle of repose of the rock, for the analytic K1':
      'ángulo de reposo de la roca, para el K1 analítico',
    'how D50 follows from D30': 'cómo se obtiene D50 de D30',
    'how widely the sizes of the rock are spread': 'cuánto se dispersan los tamaños de la roca',
    'velocity that attacks the rock': 'velocidad que ataca la roca',
    'median size that goes with it': 'tamaño mediano que le corresponde',
    'greatest depth of the water beside the rock': 'tirante máximo junto a la roca',
    'slope of the channel or of the energy line': 'pendiente del cauce o de la línea de energía',
    'side slope from horizontal; 0° on a bed': 'talud lateral con la horizontal; 0° en un lecho',
    'water-surface width': 'ancho de la superficie del agua',
    'bottom width': 'ancho del fondo',
    'what the bend radius is divided by': 'entre qué se divide el radio de la curva',
    'Rc/T, HEC-15 3rd ed.; the safe side': 'Rc/T, HEC-15 3rd ed.; el lado seguro',
    'Rc/B, as HEC-22 enters the curve': 'Rc/B, como HEC-22 entra al gráfico',
    'a size to try': 'un tamaño por probar',
    'permissible shear at the size tried': 'esfuerzo cortante admisible con el tamaño probado',
    'stability on the side over that on the bottom': 'estabilidad en el talud sobre la del fondo',
    'particle Reynolds number at the size tried':
      'número de Reynolds de la partícula con el tamaño probado',
    'Shields parameter at the size tried': 'parámetro de Shields con el tamaño probado',
    'safety factor at the size tried': 'factor de seguridad con el tamaño probado',
    'steep-slope factor at the size tried; 0 where no balance exists':
      'factor de fuerte pendiente con el tamaño probado; 0 donde no hay equilibrio',
    'size for this place': 'tamaño para este lugar',
    'average velocity, or the velocity at the stone':
      'velocidad media, o la velocidad en la piedra',
    'velocity at the stone over the velocity given; above 1 outside of a bend':
      'velocidad en la piedra sobre la velocidad dada; mayor que 1 en el exterior de una curva',
    'how rough the water is': 'cuán turbulenta es el agua',
    'ordinary channel flow: C 1.20': 'flujo común en cauce: C 1.20',
    'below stilling basins: C 0.86': 'aguas abajo de cuencos amortiguadores: C 0.86',
    'Isbash coefficient': 'coeficiente de Isbash',
    'with C 1.20': 'con C 1.20',
    'centreline radius, for rock outside of a bend':
      'radio en el eje del cauce, para roca en el exterior de una curva',
    'velocity to design for, raised in a bend': 'velocidad de diseño, aumentada en una curva',
    'the parameter of the printed type limits': 'el parámetro de los límites de tipo impresos',
    'length to protect above the bend, at least':
      'longitud por proteger aguas arriba de la curva, al menos',
    'length to protect below the bend, at least':
      'longitud por proteger aguas abajo de la curva, al menos',
    'stability factor, by Table 1': 'factor de estabilidad, según la Tabla 1',
    'what the rock protects': 'qué protege la roca',
    'a bank or bed': 'una margen o un lecho',
    'a pier or abutment: 3.38 times': 'una pila o un estribo: 3.38 veces',
    'discharge over bottom width': 'caudal sobre el ancho del fondo',
    'factor for flow that gathers in part of the width':
      'factor por flujo que se concentra en parte del ancho',
    'slope of the bed': 'pendiente del lecho',
    'side slope of the channel, for its limit': 'talud lateral del canal, para su límite',
    'shape of the rock, for its limit': 'forma de la roca, para su límite',
    'specific gravity of the rock, for its limit': 'densidad relativa de la roca, para su límite',
    'unit discharge, concentrated': 'caudal unitario, concentrado',
    'which derivation': 'qué deducción',
    'HDS-6: a level bed': 'HDS-6: un lecho horizontal',
    'with the slope of the bed': 'con la pendiente del lecho',
    'velocity one D50 above the bed': 'velocidad a un D50 sobre el lecho',
    'angle of the flow in the slope from horizontal, positive down the slope':
      'ángulo del flujo en el talud con la horizontal, positivo talud abajo',
    "slope of the bed downstream, for Julien's form":
      'pendiente del lecho hacia aguas abajo, para la forma de Julien',
    'stability factor to be reached': 'factor de estabilidad por alcanzar',
    'a size whose own factor is asked for': 'un tamaño cuyo factor se pide',
    'stability number of the size tried, else of that required':
      'número de estabilidad del tamaño probado; si no, del que se pide',
    "angle of the stone's path from the line of steepest fall":
      'ángulo entre el recorrido de la piedra y la línea de máxima pendiente',
    'stability factor of the size tried, else of that required':
      'factor de estabilidad del tamaño probado; si no, del que se pide',
    'largest stability number that reaches the factor':
      'mayor número de estabilidad que alcanza el factor',
    'which published form': 'qué forma publicada',
    'allowable shear 0.4·D75': 'esfuerzo cortante admisible 0.4·D75',
    'water depth; on a bank at its toe': 'tirante; en una margen, en su pie',
    "angle of repose of the rock, for Lane's K": 'ángulo de reposo de la roca, para el K de Lane',
    'shear on the rock': 'esfuerzo cortante sobre la roca',
    'which statement of the curve': 'qué expresión del gráfico',
    '2.6·√d, of the bottom velocity': '2.6·√d, con la velocidad en el fondo',
    '0.0122·V^2.06, of the average velocity': '0.0122·V^2.06, con la velocidad media',
    'velocity at the bottom': 'velocidad en el fondo',
    'average velocity': 'velocidad media',
    'kind of protection': 'tipo de protección',
    'what resists': 'qué resiste',
    'velocity profile': 'perfil de velocidades',
    'logarithmic, fully developed': 'logarítmico, plenamente desarrollado',
    'not fully developed': 'no plenamente desarrollado',
    'roughness of the bed in stones': 'rugosidad del lecho en piedras',
    'depth factor': 'factor de tirante',
    'required median size by sieve': 'tamaño mediano que se pide, por tamiz',
    'turbulence intensity at 10 % of the depth': 'intensidad de turbulencia al 10 % del tirante',
    'loose rock: 12.3·r − 0.20': 'roca suelta: 12.3·r − 0.20',
    'gabion mattress: 12.3·r − 1.65': 'colchón de gaviones: 12.3·r − 1.65',
    'bank angle from horizontal, for its limit':
      'ángulo de la margen con la horizontal, para su límite',
    'velocity near the bed': 'velocidad junto al lecho',
    'average velocity of the channel, or that at the face':
      'velocidad media del cauce, o la de la cara',
    'how the water runs at the face': 'cómo corre el agua en la cara',
    'along the face: 0.67 × average': 'a lo largo de la cara: 0.67 × la media',
    'at the face, as outside of a bend: 1.33 × average':
      'contra la cara, como en el exterior de una curva: 1.33 × la media',
    'the velocity given is that at the face': 'la velocidad dada es la de la cara',
    'bottom width of the channel': 'ancho del fondo del cauce',
    'slope of its sides': 'talud de sus lados',
    'where the rock lies': 'dónde está la roca',
    'on the sides': 'en los lados',
    'on the bottom': 'en el fondo',
    'which bend curve': 'qué gráfico de curvas',
    'read by hand, in place of the bend curve': 'leído a mano, en lugar del gráfico de curvas',
    'how worn the stones are': 'cuán gastadas están las piedras',
    'of roughness, for velocity and rock size': 'de rugosidad, para velocidad y tamaño de la roca',
    'of roughness, for level and freeboard': 'de rugosidad, para nivel y borde libre',
    'of the smallest rock the class allows': 'de la roca más pequeña que la clase admite',
    'where the rock is placed': 'dónde se coloca la roca',
    'above water': 'fuera del agua',
    'through water: 15 % rougher for the level': 'bajo el agua: 15 % más rugosa para el nivel',
    'of the class chosen, smallest allowed': 'de la clase elegida, el menor admitido',
    'D90 with it': 'D90 que le corresponde',
    'depth with it': 'tirante con ella',
    'velocity at the rock with it': 'velocidad en la roca con ella',
    'depth for level and freeboard': 'tirante para nivel y borde libre',
    'of the class, smallest allowed': 'de la clase, el menor admitido',
    "Manning's n as stated, before that of the D90": 'n de Manning indicada, antes que la del D90',
    'of the roughness of rock': 'de la rugosidad de la roca',
    'size that this water asks for': 'tamaño que pide esta agua',
    'greatest ice thickness of the winter': 'espesor máximo del hielo en el invierno',
    'ice thicknesses': 'espesores de hielo',
    'largest stone that ice pushed up does not move':
      'piedra más grande que el hielo al empujar no mueve',
    'median size that ice does not lift out': 'tamaño mediano que el hielo no arranca',
    'thickening of the layer, from': 'engrosamiento de la capa, desde',
    'thickening of the layer, to': 'engrosamiento de la capa, hasta',
    'engine power used, in kW': 'potencia de motor usada, en kW',
    'diameter of the propeller': 'diámetro de la hélice',
    "height of the propeller's axis above the bed": 'altura del eje de la hélice sobre el lecho',
    'free or ducted': 'libre o en tobera',
    'velocity of the jet at the propeller': 'velocidad del chorro en la hélice',
    'velocity at the bed, from': 'velocidad en el lecho, desde',
    'velocity at the bed, to': 'velocidad en el lecho, hasta',
    'required median size, at the upper velocity':
      'tamaño mediano que se pide, con la velocidad más alta',
  },
  cautions: {
    'Lay it 1.5·D100 thick over a filter fabric, with a uniform gradation (D85/D15 not above 2).':
      'Colóquela con espesor 1.5·D100 sobre un geotextil de filtro, con granulometría uniforme (D85/D15 no mayor que 2).',
    'It holds no safety factor, and no term for the density of the rock: tested with rock of 167 lb/ft³.':
      'No contiene factor de seguridad ni término para la densidad de la roca: se ensayó con roca de 167 lb/ft³.',
    'Raise the concentration above 1.25 where the flow comes in askew.':
      'Suba la concentración por encima de 1.25 donde el flujo llega oblicuo.',
    'For a straight channel without tailwater.':
      'Para un canal recto sin tirante aguas abajo que remanse.',
    'Most stones must be of the size or larger, on a graded bedding, in a layer of at least 1.5 times the largest stone.':
      'La mayoría de las piedras deben ser de ese tamaño o mayores, sobre una capa de apoyo graduada, en una capa de al menos 1.5 veces la piedra más grande.',
    'The curve and the fit differ by 12 to 15 %; say which one was used.':
      'El gráfico y el ajuste difieren de 12 a 15 %; diga cuál se usó.',
    'The curve has no term for density: rock of about 165 lb/ft³ is meant.':
      'El gráfico no tiene término para la densidad: se entiende roca de unas 165 lb/ft³.',
    'Where several sizes balance, the largest is taken: every larger size looked at holds.':
      'Donde varios tamaños dan equilibrio se toma el mayor: todo tamaño mayor que se miró resiste.',
    'Uniform flow is an assumption; where a profile calculation gives the depth, use that.':
      'El flujo uniforme es una suposición; donde el tirante sale del cálculo de un perfil, use ese.',
    'K 0.036 is the average; use 0.034 for velocity and rock size, 0.038 for level and freeboard.':
      'K 0.036 es la media; use 0.034 para velocidad y tamaño de la roca, 0.038 para nivel y borde libre.',
    'On small streams ice can ask for far larger stone than the water: rock sized for the water, looked over and mended after each winter, is the other way (common practice).':
      'En cauces pequeños el hielo puede pedir piedra mucho más grande que el agua: la otra vía es roca dimensionada para el agua, revisada y reparada después de cada invierno (práctica común).',
    'Most damage comes where ice piles up at or below the water line.':
      'El mayor daño ocurre donde el hielo se amontona en la línea de agua o por debajo.',
    'Where people carry rock away, W50 of at least 80 lb (WES Streambank Handbook 1997, App. A).':
      'Donde la gente se lleva la roca, W50 de al menos 80 lb (WES Streambank Handbook 1997, App. A).',
    'Recalled with doubt: confirm it against the guideline before anything rests on it.':
      'Recordado con dudas: confírmelo en la guía antes de basar algo en ello.',
    'A manoeuvring ship, a rudder that turns the jet and a quay wall raise the velocity.':
      'Un barco que maniobra, un timón que desvía el chorro y un muro de muelle suben la velocidad.',
  },
};
