/** Methods for rock at piers, abutments, guide banks and spurs. */
import type { MethodTexts } from './method_texts';

export const bridges: MethodTexts = {
  labels: {
    'velocity just upstream of the pier': 'velocidad justo aguas arriba de la pila',
    "shape of the pier's nose": 'forma de la nariz de la pila',
    'factor for the place of the pier in the channel': 'factor por el lugar de la pila en el cauce',
    'form of the abutment': 'forma del estribo',
    'sloping fill in front': 'terraplén inclinado al frente',
    'vertical wall': 'pared vertical',
    'characteristic average velocity in the contracted section':
      'velocidad media característica en la sección contraída',
    'cover of the slope above the design water level':
      'cuánto sube el revestimiento sobre el nivel de agua de diseño',
    'median size of the class chosen': 'tamaño mediano de la clase elegida',
    'width of the pier': 'ancho de la pila',
    'length of the pier along its axis': 'longitud de la pila a lo largo de su eje',
    "angle of the flow to the pier's axis": 'ángulo del flujo con el eje de la pila',
    'contraction scour': 'socavación por contracción',
    'long-term lowering of the bed': 'descenso del lecho a largo plazo',
    'width of the pier across the flow': 'ancho de la pila a través del flujo',
    "rock from the pier's face, on all sides": 'roca desde la cara de la pila, por todos los lados',
    "filter from the pier's face": 'filtro desde la cara de la pila',
    'thickness of the layer, placed in the dry': 'espesor de la capa, colocada en seco',
    'volume of the layer, pier in line with the flow':
      'volumen de la capa, con la pila alineada con el flujo',
    'length of the bank upstream of the abutment': 'longitud del dique aguas arriba del estribo',
    'distance upstream of the abutment': 'distancia aguas arriba del estribo',
    'offset of the bank there': 'desplazamiento del dique allí',
    'offset at the abutment': 'desplazamiento en el estribo',
    'whether water passes through': 'paso del agua a través',
    'rock or earth': 'de roca o tierra',
    'fences, piles': 'cercas, pilotes',
    'length of the spur perpendicular to the flow': 'longitud del espigón perpendicular al flujo',
    'expansion angle of the flow behind the spur':
      'ángulo de expansión del flujo detrás del espigón',
    'width of the channel when it is full': 'ancho del cauce lleno',
    'expansion angle': 'ángulo de expansión',
    'spacing of the spurs': 'separación de los espigones',
    'the abutment whose velocity is asked for': 'el estribo cuya velocidad se pide',
    'left, looking downstream': 'izquierdo, mirando hacia aguas abajo',
    'right, looking downstream': 'derecho, mirando hacia aguas abajo',
    'discharge of the main channel': 'caudal del cauce principal',
    'flow area of the main channel': 'área de flujo del cauce principal',
    'left abutment from the edge of the main channel':
      'estribo izquierdo desde el borde del cauce principal',
    'discharge of the left overbank in the opening':
      'caudal de la llanura izquierda en la abertura',
    'flow area of the left overbank in the opening':
      'área de flujo de la llanura izquierda en la abertura',
    'right abutment from the edge of the main channel':
      'estribo derecho desde el borde del cauce principal',
    'discharge of the right overbank in the opening': 'caudal de la llanura derecha en la abertura',
    'flow area of the right overbank in the opening':
      'área de flujo de la llanura derecha en la abertura',
    'setback ratio of the left abutment': 'relación de retiro del estribo izquierdo',
    'setback ratio of the right abutment': 'relación de retiro del estribo derecho',
    'characteristic average velocity at the abutment':
      'velocidad media característica en el estribo',
  },
  cautions: {
    'Lay its top level with the bed; do not heap it above.':
      'Deje su tope a nivel con el lecho; no la amontone encima.',
    'Placed under water the layer is half as thick again.':
      'Colocada bajo el agua la capa es la mitad más gruesa.',
    'Where dunes pass, its bottom lies below the passing trough.':
      'Donde pasan dunas, su fondo queda por debajo del seno que pasa.',
    'The filter ends at two thirds of the distance to the edge of the rock.':
      'El filtro termina a dos tercios de la distancia al borde de la roca.',
    'In a bed with dunes use a geotextile, not a granular filter.':
      'En un lecho con dunas use geotextil, no un filtro granular.',
    "The length comes from the guideline's chart by the share of flow on the floodplain; the chart is not held here.":
      'La longitud sale del gráfico de la guía según la parte del caudal en la llanura de inundación; aquí no está el gráfico.',
    'Crest at least 2 ft above the design water level.':
      'Cresta al menos 2 ft sobre el nivel de agua de diseño.',
    'Downstream, where it is needed, 50 ft straight.':
      'Aguas abajo, donde hace falta, 50 ft rectos.',
    'Size the rock for the velocity at the nose and carry the same rock all round.':
      'Dimensione la roca para la velocidad en la nariz y lleve la misma roca alrededor.',
    'The heads of spurs are attacked most: size their rock for the turbulence there.':
      'Las cabezas de los espigones son las más atacadas: dimensione su roca para la turbulencia de allí.',
    "For permeable spurs the expansion angle grows with what passes through; take it from the guideline's chart.":
      'En espigones permeables el ángulo de expansión crece con lo que dejan pasar; tómelo del gráfico de la guía.',
    'Leave flow over the road out of every discharge.':
      'Excluya de todo caudal el flujo sobre el camino.',
    'The guideline leaves a setback ratio of exactly 5 open; here it counts as a near abutment.':
      'La guía deja abierto el caso de una relación de retiro de exactamente 5; aquí cuenta como estribo cercano.',
  },
};
