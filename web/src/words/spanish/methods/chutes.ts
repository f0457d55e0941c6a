/** Methods for chutes, overtopped faces and spillways. */
import type { MethodTexts } from './method_texts';

export const chutes: MethodTexts = {
  labels: {
    'discharge for each unit of width, where it runs deepest':
      'caudal por unidad de ancho, donde corre más profundo',
    'discharge down the chute': 'caudal por la rápida',
    'width it runs over: the bottom of the chute': 'ancho por el que corre: el fondo de la rápida',
    'slope of the chute': 'pendiente de la rápida',
    'multiplies the size that just holds': 'multiplica el tamaño que apenas resiste',
    'median size that just holds': 'tamaño mediano que apenas resiste',
    "Manning's n of that rock": 'n de Manning de esa roca',
    'depth of uniform flow': 'tirante de flujo uniforme',
    'velocity there': 'velocidad allí',
    'level apron at the foot': 'delantal horizontal en el pie',
    'slope of the face': 'pendiente de la cara',
    'discharge of failure over that of no movement; 1 sizes for failure':
      'caudal de falla sobre el de ningún movimiento; 1 dimensiona para la falla',
    'how far the flow gathers; 1 for sheet flow':
      'cuánto se concentra el flujo; 1 para una lámina pareja',
    'shape of the stones': 'forma de las piedras',
    'crushed rock': 'roca triturada',
    '1.4 times the size': '1.4 veces el tamaño',
    'unit discharge with both factors': 'caudal unitario con ambos factores',
    'angular rock that fails at the gathered q': 'roca angular que falla con el q concentrado',
    'angular rock that does not move': 'roca angular que no se mueve',
    'slope of the face, tan α': 'pendiente de la cara, tan α',
    'porosity of the layer': 'porosidad de la capa',
    'velocity in the pores': 'velocidad en los poros',
    'depth over the rock that it can carry': 'tirante sobre la roca que puede llevar',
    'roughness of the surface': 'rugosidad de la superficie',
    'discharge over the rock': 'caudal sobre la roca',
    'discharge within the rock': 'caudal dentro de la roca',
    'depth within the rock': 'tirante dentro de la roca',
    'the same in median sizes': 'lo mismo en tamaños medianos',
    'depth within the rock if all of q ran there':
      'tirante dentro de la roca si todo el q corriera allí',
    'layer thickness': 'espesor de la capa',
    'crushed rock: C 0.27': 'roca triturada: C 0.27',
    'rounded gravel and cobbles: C 0.22': 'grava y cantos redondeados: C 0.22',
    'allowance on the discharge, 1.2 to 1.8': 'mayoración del caudal, de 1.2 a 1.8',
    'coefficient of the rock': 'coeficiente de la roca',
    'unit discharge with the allowance': 'caudal unitario mayorado',
    'layer thickness, when it is fixed': 'espesor de la capa, cuando está fijado',
    'layer thickness where it is not fixed': 'espesor de la capa donde no está fijado',
    'layer thickness the size belongs to': 'espesor de capa que va con el tamaño',
    'head over the crest': 'carga sobre la cresta',
    'weir coefficient, ft units': 'coeficiente de vertedero, unidades en ft',
    'how far the flow gathers': 'cuánto se concentra el flujo',
    'unit discharge to size for': 'caudal unitario de diseño de la roca',
    'discharge over the crest': 'caudal sobre la cresta',
    'discharge coefficient, SI, from Fig. 8-18': 'coeficiente de descarga, SI, de la Fig. 8-18',
    'bottom width of the crest': 'ancho del fondo de la cresta',
    "Manning's n: 0.040 turf, 0.015 paved": 'n de Manning: 0.040 césped, 0.015 pavimentado',
    'slope of the face below the crest': 'pendiente de la cara aguas abajo de la cresta',
    'critical slope': 'pendiente crítica',
    'length of the level crest, across the flow':
      'longitud de la cresta horizontal, a través del flujo',
    'horizontal for 1 vertical at the ends': 'horizontal por 1 vertical en los extremos',
    'over the level crest': 'sobre la cresta horizontal',
    'over both sloping ends': 'sobre ambos extremos inclinados',
    'over each unit of the level crest': 'por unidad de la cresta horizontal',
  },
  cautions: {
    'Angular rock of nearly one size (D60/D10 1.25 to 1.75); rounded rock needs more.':
      'Roca angular casi de un solo tamaño (D60/D10 de 1.25 a 1.75); la roca redondeada necesita más.',
    'Tailwater must stand at or above the height of the jump at the foot.':
      'El tirante aguas abajo debe llegar al menos a la altura del resalto en el pie.',
    'Use the discharge of the deepest strip, not the total over the full width, where flow gathers.':
      'Use el caudal de la franja más profunda, no el total sobre todo el ancho, donde el flujo se concentra.',
    'A local practice thickens the layer to 1.25·D100, about 2.5·D50.':
      'Una práctica local engrosa la capa a 1.25·D100, unas 2.5·D50.',
    'Flow gathers on any real face; a concentration factor of 1 stands for perfect sheet flow, 2 to 3 are used where it may gather.':
      'En toda cara real el flujo se concentra; un factor de concentración de 1 es una lámina perfecta, y se usan de 2 a 3 donde puede concentrarse.',
    'How much larger rounded rock must be grows with discharge and slope; 1.4 is a mean.':
      'Cuánto más grande debe ser la roca redondeada crece con el caudal y la pendiente; 1.4 es un promedio.',
    'Overtopping of a dam is a matter for the licensed engineer and the dam-safety authority.':
      'El rebose de una presa es asunto del ingeniero habilitado y de la autoridad de seguridad de presas.',
    'From 25 % slope on the guideline wants all the flow within the rock: compare the layer with the depth for that.':
      'Desde una pendiente de 25 % la guía quiere todo el flujo dentro de la roca: compare la capa con el tirante para ello.',
    'A flat face gives rock and layer that do not go together; the depth over D50 shows it.':
      'Una cara tendida da roca y capa que no concuerdan; el tirante sobre D50 lo muestra.',
    'The coefficient is for the threshold of movement: an allowance of 1.2 to 1.8 on the discharge is customary.':
      'El coeficiente es el del umbral de movimiento: se acostumbra mayorar el caudal de 1.2 a 1.8.',
    'A fit to tests within about ±20 %, without a safety factor.':
      'Un ajuste a ensayos, con unos ±20 %, sin factor de seguridad.',
    'The size belongs to the layer thickness in it: change one and the other changes.':
      'El tamaño va con su espesor de capa: si cambia uno, cambia el otro.',
    'A cover of soil adds no strength: it is taken to be gone when the rock is needed.':
      'Una cubierta de suelo no agrega resistencia: se supone que ya no está cuando la roca hace falta.',
    'Faces are often steeper than the 20 % of the tests: read the rock-chute equation beside it.':
      'Las caras suelen ser más empinadas que el 20 % de los ensayos: compare con la ecuación de rápidas de roca.',
    'Spillways of dams are a matter for the licensed engineer and the dam-safety authority.':
      'Los vertedores de presas son asunto del ingeniero habilitado y de la autoridad de seguridad de presas.',
    'Crest 0.3 to 0.6 m (1 to 2 ft) above the largest design storage; freeboard 0.6 m (2 ft), at the very least 0.3 m (1 ft) on small basins.':
      'Cresta de 0.3 a 0.6 m (1 a 2 ft) sobre el mayor almacenamiento de diseño; borde libre de 0.6 m (2 ft), y como mínimo 0.3 m (1 ft) en cuencas pequeñas.',
    'The coefficient depends on head and breadth of the crest; 3.0 is a usual value for a broad one, less for rough cover.':
      'El coeficiente depende de la carga y del ancho de la cresta; 3.0 es usual para una cresta ancha, menos para una cubierta rugosa.',
  },
};
