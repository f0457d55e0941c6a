/** Methods for rock below conduits. */
import type { MethodTexts } from './method_texts';

export const outlets: MethodTexts = {
  labels: {
    'diameter of the culvert': 'diámetro de la alcantarilla',
    'discharge of the conduit': 'caudal del conducto',
    'depth of the water below the outlet, above its invert':
      'tirante aguas abajo de la salida, sobre su fondo',
    'depth in the barrel where its flow is supercritical':
      'tirante en el tubo donde su flujo es supercrítico',
    'diameter used: D, or (D + yn)/2': 'diámetro usado: D, o (D + yn)/2',
    'class of HEC-14 Table 10.1': 'clase de HEC-14, Tabla 10.1',
    'width at its end': 'ancho en su extremo',
    'shape of the conduit': 'forma del conducto',
    'a pipe': 'un tubo',
    'a box; needs its width': 'un cajón; necesita su ancho',
    'width of the box': 'ancho del cajón',
    'height used: Dc or H, or its mean with yn': 'altura usada: Dc o H, o su media con yn',
    'or Q/(W·H^1.5); ft, ft³/s': 'o Q/(W·H^1.5); ft, ft³/s',
    'discharge of the pipe': 'caudal del tubo',
    'which size form': 'qué forma para el tamaño',
    '0.016·q^1.33/TW': '0.016·q^1.33/TW',
    '0.02·q^(4/3)/TW': '0.02·q^(4/3)/TW',
    'discharge for each unit of conduit width': 'caudal por unidad de ancho del conducto',
    'listed median size': 'tamaño mediano de la lista',
    'width of the apron': 'ancho del delantal',
    'thickness of the apron': 'espesor del delantal',
    'by Berry': 'según Berry',
    'by Searcy': 'según Searcy',
    'the larger of both': 'el mayor de ambos',
    'depth of the water below the outlet': 'tirante aguas abajo de la salida',
    'Froude number at the outlet, by the diameter':
      'número de Froude en la salida, con el diámetro',
    'a pipe: ye is (A/2)^½': 'un tubo: ye es (A/2)^½',
    'a box: ye is the brink depth': 'un cajón: ye es el tirante en el borde',
    'diameter of the pipe, or width of the box': 'diámetro del tubo, o ancho del cajón',
    'depth of the flow where it leaves the conduit': 'tirante donde el flujo sale del conducto',
    'area of flow at the brink': 'área de flujo en el borde',
    'median size of the rock tried': 'tamaño mediano de la roca probada',
    'equivalent depth': 'tirante equivalente',
    'size over equivalent depth': 'tamaño sobre tirante equivalente',
    'tailwater over equivalent depth': 'tirante aguas abajo sobre tirante equivalente',
    'tailwater term': 'término del tirante aguas abajo',
    'scour depth': 'profundidad de socavación',
    'scour depth over size': 'profundidad de socavación sobre tamaño',
    'length of the pool': 'longitud de la poza',
    'length of the basin': 'longitud del cuenco',
    'critical depth at its end': 'tirante crítico en su extremo',
    'thickness on the entry slope': 'espesor en el talud de entrada',
    'thickness elsewhere': 'espesor en el resto',
    'the rock tried': 'la roca probada',
    'a box': 'un cajón',
    'width of the conduit; the diameter of a pipe': 'ancho del conducto; en un tubo, su diámetro',
    'velocity the channel below bears': 'velocidad que resiste el cauce de aguas abajo',
    'expansion factor, read from the chart': 'factor de expansión, leído del gráfico',
    'area of flow at the allowable velocity': 'área de flujo con la velocidad admisible',
    'length by the equation': 'longitud según la ecuación',
    'shortest length': 'longitud mínima',
    'longest length': 'longitud máxima',
    'protection length': 'longitud de protección',
    'diameter of the pipe, or height of the box': 'diámetro del tubo, o altura del cajón',
    'median size of the rock chosen': 'tamaño mediano de la roca elegida',
    'width of the basin': 'ancho del cuenco',
    'least thickness of the rock': 'espesor mínimo de la roca',
    'greatest thickness asked for': 'espesor máximo que se pide',
  },
  cautions: {
    'A deep tailwater is not certain: the lowest that can go with the discharge governs.':
      'Un tirante alto aguas abajo no es seguro: rige el más bajo que puede darse con el caudal.',
    'The extent of the rock follows from the protection length, not from the size.':
      'La extensión de la roca sale de la longitud de protección, no del tamaño.',
    'The quotation is second hand: look the form up in the criteria that apply.':
      'La cita es de segunda mano: busque la forma en los criterios que correspondan.',
    'The apron must be level and the channel below it stable by itself.':
      'El delantal debe ser horizontal, y el cauce de aguas abajo, estable por sí mismo.',
    "A county's own rule: use it where that county's criteria apply.":
      'Regla propia de un condado: úsela donde valgan los criterios de ese condado.',
    'Neither form knows the depth or the tailwater.':
      'Ninguna forma conoce el tirante ni el nivel aguas abajo.',
    'The form jumps where the tailwater passes half the diameter: try both sides of it.':
      'La forma da un salto donde el tirante aguas abajo pasa de medio diámetro: pruebe a ambos lados.',
    'It does not know the density of the rock.': 'No conoce la densidad de la roca.',
    'In SI the unit factor 0.55 divides the discharge; prints that multiply by it give far too small a size.':
      'En SI el factor de unidades 0.55 divide el caudal; los impresos que multiplican por él dan un tamaño demasiado pequeño.',
    'Try sizes until hs/D50 lies between 2 and 4; D50/ye of 0.25 to 0.45 is best.':
      'Pruebe tamaños hasta que hs/D50 quede entre 2 y 4; lo mejor es D50/ye de 0.25 a 0.45.',
    'The local manual prints the equivalent depth with the exponent 1.5; it is a misprint of 0.5, as the units show.':
      'El manual local imprime el tirante equivalente con el exponente 1.5; es errata por 0.5, como muestran las unidades.',
    'With tailwater above 0.75·ye the jet runs on over the basin: rock is needed beyond it, sized for the velocity that the jet keeps.':
      'Con tirante aguas abajo mayor que 0.75·ye el chorro pasa por encima del cuenco: hace falta roca más allá, dimensionada para la velocidad que conserva el chorro.',
    "The expansion factor comes from the manual's chart against Q/D^2.5 and Yt/D; values of 5 to 6 stand in Colorado permits for small parameters.":
      'El factor de expansión sale del gráfico del manual contra Q/D^2.5 y Yt/D; en permisos de Colorado hay valores de 5 a 6 para parámetros pequeños.',
    'A smaller factor gives a shorter apron.': 'Un factor menor da un delantal más corto.',
    'The width W is subtracted; sheets that subtract 1 in its place give another length.':
      'Se resta el ancho W; las planillas que restan 1 en su lugar dan otra longitud.',
    'About 5 ft/s is allowed on erodible ground, up to 7 ft/s on resistant ground.':
      'Se admiten unos 5 ft/s en terreno erosionable, hasta 7 ft/s en terreno resistente.',
    'Recalled with little certainty: look it up in the manual before use.':
      'Recordado con poca certeza: búsquelo en el manual antes de usarlo.',
    'The size of the rock comes from figures of the manual that are not here; the size given is taken as it is.':
      'El tamaño de la roca sale de figuras del manual que no están aquí; el tamaño dado se toma como es.',
    'Side slopes 4H:1V or flatter.': 'Taludes laterales de 4H:1V o más tendidos.',
  },
};
