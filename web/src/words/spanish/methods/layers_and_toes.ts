/** Methods for layers, ends, keys, toes and their quantities. */
import type { MethodTexts } from './method_texts';

export const layersAndToes: MethodTexts = {
  labels: {
    'where the layer lies': 'dónde está la capa',
    'of a stream or channel': 'de un río o canal',
    'a steep lining that water runs down': 'un revestimiento empinado por el que baja agua',
    'apron below a conduit': 'delantal aguas abajo de un conducto',
    'scour hole lined with rock below a conduit':
      'fosa de socavación revestida de roca aguas abajo de un conducto',
    'sloping drop or riffle across a channel': 'caída inclinada o rápido a través de un cauce',
    'around a bridge pier': 'alrededor de una pila de puente',
    'at a bridge abutment': 'en un estribo de puente',
    'a slope that waves run at': 'un talud al que llegan olas',
    'median size, upper limit of the band': 'tamaño mediano, límite superior de la banda',
    'largest stone, upper limit of the band': 'piedra más grande, límite superior de la banda',
    'median size the class is named by': 'tamaño mediano que da nombre a la clase',
    'side of the cube of the median mass, for waves': 'lado del cubo de la masa mediana, para olas',
    'side of the cube of the largest mass, for waves': 'lado del cubo de la masa máxima, para olas',
    "multiple of the nominal D50 in the class's own manual":
      'múltiplo del D50 nominal en el manual de la propia clase',
    'contraction scour, at a pier': 'socavación por contracción, en una pila',
    'long-term lowering of the bed, at a pier': 'descenso del lecho a largo plazo, en una pila',
    'equation that sized the rock': 'ecuación que dimensionó la roca',
    'any that asks for no layer of its own': 'cualquiera que no pida capa propia',
    'which presumes 1.5·D100': 'que supone 1.5·D100',
    'through water': 'bajo el agua',
    'least thickness by the general rule, in the dry':
      'espesor mínimo por la regla general, en seco',
    'usual thickness, from 1.75 median sizes': 'espesor usual, desde 1.75 tamaños medianos',
    'usual thickness, to 2 median sizes': 'espesor usual, hasta 2 tamaños medianos',
    'length over which the ends are thickened': 'longitud en que se engruesan los extremos',
    'length of the layer along the bank, ends included':
      'longitud de la capa a lo largo de la margen, con los extremos',
    "depth of a key from the layer's surface, square to it":
      'profundidad de un dentellón desde la superficie de la capa, perpendicular a ella',
    'width of its bottom, along the bank': 'ancho de su fondo, a lo largo de la margen',
    'channel widths between keys': 'anchos del cauce entre dentellones',
    'width at the underside of the layer': 'ancho en la cara inferior de la capa',
    'between keys, at most; 0 where no width is given':
      'entre dentellones, a lo sumo; 0 donde no se da ancho',
    'keys, both ends counted; 0 where no length is given':
      'dentellones, contando ambos extremos; 0 donde no se da longitud',
    'median size of the upstream rock': 'tamaño mediano de la roca de aguas arriba',
    'median size of the downstream rock': 'tamaño mediano de la roca de aguas abajo',
    'thickness of the upstream layer': 'espesor de la capa de aguas arriba',
    'thickness of the downstream layer': 'espesor de la capa de aguas abajo',
    'greatest velocity at the transition': 'velocidad máxima en la transición',
    'of the larger rock into the reach of the smaller':
      'de la roca mayor hacia el tramo de la menor',
    'length over which the thickness changes': 'longitud en que cambia el espesor',
    'larger over smaller median size': 'tamaño mediano mayor sobre menor',
    'velocity to size for; 0 where none is given': 'velocidad para dimensionar; 0 donde no se da',
    "thickness of the bank's layer": 'espesor de la capa de la margen',
    'from the toe as built down to the scoured bed': 'del pie construido hasta el lecho socavado',
    'slope the launched rock takes': 'talud que toma la roca al asentarse',
    'height of the stored toe in layer thicknesses':
      'altura del pie acumulado, en espesores de capa',
    'share of the placed volume between the stones, 0 to 1':
      'parte del volumen colocado entre las piedras, de 0 a 1',
    'length of toe': 'longitud del pie',
    'increase over the launched volume': 'aumento sobre el volumen que se asienta',
    'launched rock for each unit of length': 'roca que se asienta, por unidad de longitud',
    'volume of rock for each unit of toe length': 'volumen de roca por unidad de longitud del pie',
    'volume of rock over the length of toe': 'volumen de roca en la longitud del pie',
    'mass of rock over the length of toe': 'masa de roca en la longitud del pie',
    'height of the stored toe': 'altura del pie acumulado',
    'width of the stored toe': 'ancho del pie acumulado',
    'slope of the water side of the trench': 'talud de la zanja del lado del agua',
    'where the trench is dug': 'dónde se excava la zanja',
    'behind a dam, in the dry': 'detrás de una ataguía, en seco',
    'under water': 'bajo el agua',
    'level bottom of the trench': 'fondo horizontal de la zanja',
    'width of the trench at the bed': 'ancho de la zanja al nivel del lecho',
    'excavation for each unit of length': 'excavación por unidad de longitud',
    'excavation over the length of toe': 'excavación en la longitud del pie',
    'width of the thicker part, along the bed':
      'ancho de la parte más gruesa, a lo largo del lecho',
    "thickness beyond the layer's": 'espesor adicional al de la capa',
    'thickness of the toe': 'espesor del pie',
    'height of the ridge above the bed': 'altura del cordón sobre el lecho',
    'width of its base': 'ancho de su base',
    'volume that the rock fills': 'volumen que llena la roca',
    'length of the layer along the stream': 'longitud de la capa a lo largo de la corriente',
    'length of the layer down the slope': 'longitud de la capa talud abajo',
    'overlap of neighbouring strips': 'traslape de franjas vecinas',
    'of each strip beyond the layer, its two ends together':
      'de cada franja más allá de la capa, en sus dos extremos juntos',
    'whole strips': 'franjas enteras',
    'fabric, overlaps and all': 'geotextil, con sus traslapes',
    'ground covered': 'terreno cubierto',
  },
  cautions: {
    'Add 6 to 12 in, and larger stone with it, where heavy debris, ice or waves strike.':
      'Agregue de 6 a 12 in, y piedra más grande con ello, donde golpean arrastres pesados, hielo u olas.',
    'Quarry-run rock in place of graded rock takes 1.5 to 2 times the thickness.':
      'La roca de cantera sin clasificar, en lugar de roca graduada, lleva de 1.5 a 2 veces el espesor.',
    'In a basin the slope that the water enters by takes 3·D50.':
      'En un cuenco el talud por donde entra el agua lleva 3·D50.',
    'On chutes a local practice takes 1.25·D100; below overtopped faces the water inside the rock can ask for more.':
      'En rápidas una práctica local lleva 1.25·D100; bajo caras que rebosan, el agua dentro de la roca puede pedir más.',
    'The manuals give the factor for placing under water for banks, piers and abutments; elsewhere it is taken over from there.':
      'Los manuales dan el factor de colocación bajo el agua para márgenes, pilas y estribos; en otros lugares se toma de allí.',
    'Change the rock where the water is steady, never on the outside of a bend or just below a structure.':
      'Cambie de roca donde el agua es tranquila, nunca en el exterior de una curva ni justo aguas abajo de una estructura.',
    'Where one rock is much larger than its neighbour, see that the smaller cannot be washed out through the larger: the rules of filters hold between them as well.':
      'Donde una roca es mucho mayor que su vecina, cuide que la menor no pueda salir lavada a través de la mayor: entre ellas valen también las reglas de los filtros.',
    'Beside concrete or sheet piling the water is rougher: size for the raised velocity.':
      'Junto a concreto o tablestacas el agua es más turbulenta: dimensione para la velocidad aumentada.',
    'The volumes hold for beds that do not cohere: clay scours in steps and launches unevenly.':
      'Los volúmenes valen para lechos no cohesivos: la arcilla se socava a saltos y la roca se asienta de modo desigual.',
    'After a flood that launched it, survey the toe and fill it up again.':
      'Después de una crecida que lo asentó, levante el pie y repóngalo.',
    'Stand clear: a loaded toe can slide without warning.':
      'Manténgase lejos: un pie cargado puede deslizar sin aviso.',
    "The layer is not to hang on its toe: the bank's slope must stand by itself.":
      'La capa no debe colgar de su pie: el talud de la margen debe sostenerse solo.',
    'Thin and wide, it launches late and unevenly: a thickness of 2.5 to 4 layers is usual.':
      'Delgado y ancho, se asienta tarde y de modo desigual: lo usual es un espesor de 2.5 a 4 capas.',
    'Tie it into the bank every one or two channel widths, and at the downstream end.':
      'Empótrelo en la margen cada uno o dos anchos del cauce, y en el extremo de aguas abajo.',
    'It holds no rock for launching beyond its own: check it against the depth of scour.':
      'No contiene más roca para asentarse que la suya: verifíquelo con la profundidad de socavación.',
    'Voids depend on how the layer is placed and on where its top and bottom are measured: weigh a measured part of the layer before rock is paid by volume.':
      'Los vacíos dependen de cómo se coloca la capa y de dónde se miden su tope y su fondo: pese una parte medida de la capa antes de pagar la roca por volumen.',
    'What sinks into soft ground, is lost in water or stays in the stockpile is not counted; order spare rock for it.':
      'No se cuenta lo que se hunde en terreno blando, se pierde en el agua o queda en el acopio; pida roca de reserva para ello.',
    'Legal loads on the roads to the place decide what a truck carries.':
      'Las cargas legales en los caminos hasta el lugar deciden cuánto lleva un camión.',
    'Strips of a stream lap like shingles, the upstream one over the downstream one.':
      'Las franjas de un río se traslapan como tejas, la de aguas arriba sobre la de aguas abajo.',
    'Fabric torn in placing is replaced: order some to spare.':
      'El geotextil que se rompe al colocar se reemplaza: pida algo de reserva.',
  },
};
