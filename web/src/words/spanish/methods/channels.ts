/** Methods for the flow in channels and surveyed sections. */
import type { MethodTexts } from './method_texts';

export const channels: MethodTexts = {
  labels: {
    'stations of the surveyed points, from left to right':
      'progresivas de los puntos levantados, de izquierda a derecha',
    'elevations of the same points': 'cotas de los mismos puntos',
    "Manning's n from each point to the next; one value stands for all":
      'n de Manning de cada punto al siguiente; un solo valor vale para todos',
    'slope of the bed and of the energy line': 'pendiente del lecho y de la línea de energía',
    'stations of vertical division lines, such as bank tops':
      'progresivas de líneas divisorias verticales, como lo alto de las márgenes',
    'how differing roughness inside one part is put together':
      'cómo se combinan rugosidades distintas dentro de una parte',
    'equal velocity in every piece': 'igual velocidad en cada trozo',
    'resisting forces add': 'se suman las fuerzas resistentes',
    'discharges add': 'se suman los caudales',
    'wetted perimeter': 'perímetro mojado',
    'how many levels carry the discharge': 'cuántos niveles llevan el caudal',
    'critical depth, of the least energy when there are several':
      'tirante crítico; si hay varios, el de menor energía',
    'specific energy there': 'energía específica allí',
    'water level there': 'nivel del agua allí',
    'wet area there': 'área mojada allí',
    'top width there': 'ancho superior allí',
    'mean velocity there': 'velocidad media allí',
    'Froude number there, with α': 'número de Froude allí, con α',
    'how many critical depths there are': 'cuántos tirantes críticos hay',
    'the shallowest of them': 'el menor de ellos',
    'the deepest of them': 'el mayor de ellos',
    'hydraulic radius of the whole section': 'radio hidráulico de toda la sección',
    'first moment of the wet area about the water surface':
      'primer momento del área mojada respecto de la superficie del agua',
    'conveyance; it has the unit of a discharge': 'capacidad; tiene la unidad de un caudal',
    'momentum coefficient': 'coeficiente de cantidad de movimiento',
    'horizontal run of the sides for 1 up; 0 for walls':
      'horizontal de los lados por 1 hacia arriba; 0 para muros',
    'known depth': 'tirante conocido',
    'distance from the known depth': 'distancia desde el tirante conocido',
    'energy coefficient of the velocity': 'coeficiente de energía de la velocidad',
    'into how many steps the distance is cut': 'en cuántos pasos se divide la distancia',
    'how the slope of the energy line is averaged over a step':
      'cómo se promedia en un paso la pendiente de la línea de energía',
    'depth at the distance': 'tirante a esa distancia',
    'normal depth': 'tirante normal',
    '1 when the known depth stands above normal and critical depth, 2 between them, 3 below both':
      '1 cuando el tirante conocido supera al normal y al crítico, 2 entre ellos, 3 por debajo de ambos',
    'depth before the jump': 'tirante antes del resalto',
    'depth after the jump': 'tirante después del resalto',
    'energy lost in the jump': 'energía perdida en el resalto',
    'Froude number before the jump': 'número de Froude antes del resalto',
    'Froude number after the jump': 'número de Froude después del resalto',
    'velocity before the jump': 'velocidad antes del resalto',
    'velocity after the jump': 'velocidad después del resalto',
    'specific force': 'fuerza específica',
    'composite roughness after Horton': 'rugosidad compuesta según Horton',
    'composite roughness after Pavlovskii': 'rugosidad compuesta según Pavlovskii',
    'composite roughness after Lotter': 'rugosidad compuesta según Lotter',
    'which formula': 'qué fórmula',
    'gravel and boulder beds with little vegetation':
      'lechos de grava y bolones con poca vegetación',
    'steep mountain streams, by slope and hydraulic radius':
      'cauces de montaña empinados, por pendiente y radio hidráulico',
    'flat gravel beds under deep water': 'lechos planos de grava bajo agua profunda',
    'riprap, mean of the data': 'enrocado, media de los datos',
    'riprap, low side: for velocity and rock size':
      'enrocado, lado bajo: para velocidad y tamaño de la roca',
    'riprap, high side: for capacity and freeboard':
      'enrocado, lado alto: para capacidad y borde libre',
    'rock linings by depth over stone': 'revestimientos de roca, por tirante sobre piedra',
    'shallow water among large stones': 'agua poco profunda entre piedras grandes',
    'mean depth, area over top width': 'tirante medio, área sobre ancho superior',
    'median stone': 'piedra mediana',
    'size that 84 % of the bed are smaller than': 'tamaño que supera al 84 % del lecho',
    'smallest D90 that the class allows': 'menor D90 que la clase admite',
    'discharge between the two lines': 'caudal entre las dos líneas',
    'station of the place': 'progresiva del lugar',
    'station where the first slice begins, such as a bank top':
      'progresiva donde empieza la primera franja, como lo alto de una margen',
    'station where the last slice ends': 'progresiva donde termina la última franja',
    'greatest width of a slice; 0 leaves one for each piece of ground':
      'ancho máximo de una franja; 0 deja una por cada trozo de terreno',
    'depth-averaged velocity of the slice at the station':
      'velocidad media en la vertical de la franja en la progresiva',
    'shear on the ground there': 'esfuerzo cortante en el terreno allí',
    'mean depth of the slice': 'tirante medio de la franja',
    'velocity of the fastest slice': 'velocidad de la franja más rápida',
    'discharge of all slices together': 'caudal de todas las franjas juntas',
    'how many slices carry water': 'cuántas franjas llevan agua',
    'eddy viscosity over depth and shear velocity: about 0.07 in wide channels, up to 0.24 in narrow ones':
      'viscosidad turbulenta sobre tirante y velocidad de corte: cerca de 0.07 en cauces anchos, hasta 0.24 en angostos',
    'Darcy friction factor of each piece of ground, or one for all':
      'factor de fricción de Darcy de cada trozo de terreno, o uno para todos',
    'secondary flow of each piece of ground as a share of ρ·g·H·S, H the greatest depth; or one for all':
      'flujo secundario de cada trozo de terreno como parte de ρ·g·H·S, con H el tirante máximo; o uno para todos',
    gravity: 'gravedad',
    'about how many cells the wet width is cut into':
      'en cuántas celdas, más o menos, se divide el ancho mojado',
    'depth-averaged velocity at the station': 'velocidad media en la vertical en la progresiva',
    'depth there': 'tirante allí',
    'greatest depth-averaged velocity': 'velocidad máxima, media en la vertical',
    'greatest shear on the ground': 'esfuerzo cortante máximo en el terreno',
    'discharge of the section at this level and slope':
      'caudal de la sección con este nivel y pendiente',
    "force of ground and walls over the pull of the water's weight; 1 where there is no secondary flow":
      'fuerza del terreno y los muros sobre la componente del peso del agua; 1 donde no hay flujo secundario',
    'shape of the channel': 'forma del canal',
    'upright walls': 'muros verticales',
    'sloping walls': 'muros inclinados',
    'side slope of a trapezoid, horizontal over vertical':
      'talud lateral de un trapecio, horizontal sobre vertical',
    'share of the shear force on both walls': 'parte de la fuerza cortante en ambos muros',
    'mean wall shear over depth-slope shear':
      'esfuerzo cortante medio en los muros sobre el de tirante y pendiente',
    'mean bed shear over depth-slope shear':
      'esfuerzo cortante medio en el lecho sobre el de tirante y pendiente',
    'mean shear on the walls': 'esfuerzo cortante medio en los muros',
    'mean shear on the bed': 'esfuerzo cortante medio en el lecho',
    "Manning's n of the ground": 'n de Manning del terreno',
    'unit weight of the water': 'peso unitario del agua',
    'shear on the ground': 'esfuerzo cortante en el terreno',
    'shear velocity': 'velocidad de corte',
  },
  cautions: {
    'Uniform flow is an assumption: near bridges, drops, bends and tributaries the level comes from a profile calculation.':
      'El flujo uniforme es una suposición: cerca de puentes, caídas, curvas y afluentes el nivel sale del cálculo de un perfil.',
    'When more than one level is found the lowest is given; divide the section at the bank tops first.':
      'Cuando se halla más de un nivel se da el más bajo; divida antes la sección en lo alto de las márgenes.',
    'Where several critical depths are found, neither the plain nor the α Froude number is 1 at all of them: read the flow regime from the specific energy.':
      'Donde se hallan varios tirantes críticos, ni el número de Froude simple ni el de α es 1 en todos: lea el régimen en la energía específica.',
    'Low ground behind higher ground is taken to carry water; look whether it is connected.':
      'Se supone que el terreno bajo detrás de uno más alto lleva agua; vea si está conectado.',
    'One straight channel without bridges, bends or jumps; a surveyed reach needs its sections.':
      'Un solo canal recto sin puentes, curvas ni resaltos; un tramo levantado necesita sus secciones.',
    'Compare with twice the steps: where the depth moves, the steps were too few.':
      'Compare con el doble de pasos: donde el tirante cambia, los pasos eran muy pocos.',
    'Rock must suit the rapid flow before the jump too, and the whole stretch along which the jump may travel with the tailwater.':
      'La roca debe servir también para el flujo rápido antes del resalto, y para todo el trecho por donde el resalto puede correrse con el nivel aguas abajo.',
    'Slope of the bed and friction in the jump are left out: for slopes below about 0.05.':
      'Se omiten la pendiente del lecho y la fricción en el resalto: para pendientes menores que 0.05, más o menos.',
    "Over a flood plain Horton's and Pavlovskii's n halve the flow: divide the section at the bank tops instead.":
      'Sobre una llanura de inundación las n de Horton y Pavlovskii reducen el flujo a la mitad: divida en cambio la sección en lo alto de las márgenes.',
    'Grain roughness of a stable bed alone: bends, plants, bars and debris add to it.':
      'Solo rugosidad de grano de un lecho estable: curvas, plantas, barras y arrastres la aumentan.',
    'Check the rock with a low n and the freeboard with a high one.':
      'Verifique la roca con una n baja y el borde libre con una alta.',
    "Two constants of Strickler's formula are in print that differ by 14 %; the larger one, 1/21.1 in SI, is used here.":
      'Hay impresas dos constantes de la fórmula de Strickler que difieren en 14 %; aquí se usa la mayor, 1/21.1 en SI.',
    'For straight reaches.': 'Para tramos rectos.',
    'Without mixing between slices the deepest one comes out too fast and the banks too slow; compare the lateral distribution, and use a bend ratio in bends.':
      'Sin mezcla entre franjas, la más profunda sale demasiado rápida y las márgenes demasiado lentas; compare con la distribución transversal, y en curvas use una relación de velocidades.',
    'For straight uniform reaches.': 'Para tramos rectos y uniformes.',
    'The eddy viscosity and the secondary flow are calibrated values: see how much the answer moves between reasonable ones.':
      'La viscosidad turbulenta y el flujo secundario son valores calibrados: vea cuánto cambia la respuesta entre valores razonables.',
    'Means over wall and bed; the greatest shear on them is larger.':
      'Medias en muro y lecho; el esfuerzo cortante máximo es mayor.',
    'Walls rougher or smoother than the bed carry another share.':
      'Muros más rugosos o más lisos que el lecho llevan otra parte.',
  },
};
