/** Methods for scour, troughs and the lowering of beds. */
import type { MethodTexts } from './method_texts';

export const scour: MethodTexts = {
  labels: {
    'lowering of the bed over the years': 'descenso del lecho con los años',
    'contraction scour; of several the largest': 'socavación por contracción; de varias, la mayor',
    'general scour by regime formulas, with their factor':
      'socavación general por fórmulas de régimen, con su factor',
    'bend scour; of several the largest': 'socavación en curva; de varias, la mayor',
    'troughs of dunes or antidunes': 'senos de dunas o antidunas',
    'local scour at piers, wall ends, spurs and drops':
      'socavación local en pilas, extremos de muros, espigones y caídas',
    'estimates of the whole toe depth, compared with the sum':
      'estimaciones de toda la profundidad del pie, comparadas con la suma',
    'whether the general scour holds the troughs already': 'los senos y la socavación general',
    'troughs are added': 'se suman los senos',
    'the general scour holds them already': 'la socavación general ya los contiene',
    'factor on the sum of the allowances': 'factor sobre la suma de los componentes',
    'least toe depth that local criteria ask':
      'profundidad mínima del pie que piden los criterios locales',
    'sum of the allowances': 'suma de los componentes',
    'sum with its factor': 'suma con su factor',
    'toe depth below the existing bed': 'profundidad del pie bajo el lecho existente',
    'design discharge': 'caudal de diseño',
    'mean grain size of the bed': 'tamaño medio de grano del lecho',
    'what the water meets': 'con qué se encuentra el agua',
    'a straight reach': 'un tramo recto',
    'a moderate bend': 'una curva moderada',
    'a severe bend': 'una curva fuerte',
    'a right-angle bend': 'una curva en ángulo recto',
    'a vertical rock bank or wall': 'una margen vertical de roca o un muro',
    'the nose of a pier': 'la nariz de una pila',
    'the nose of a guide bank': 'la nariz de un dique de encauzamiento',
    'a small dam or control across the river': 'una presa pequeña o un control a través del río',
    'what the factor multiplies, and from where scour is counted':
      'qué multiplica el factor, y desde dónde se cuenta la socavación',
    'Z times the regime depth, below the existing bed':
      'Z por el tirante de régimen, bajo el lecho existente',
    'a factor of 1 or more times the regime depth, below the water, less the existing depth':
      'un factor de 1 o más por el tirante de régimen, bajo el agua, menos el tirante existente',
    'factor in place of the tabulated one': 'factor en lugar del tabulado',
    'existing mean depth at the design flow': 'tirante medio existente con el caudal de diseño',
    'depth the formula gives the flow': 'tirante que la fórmula da al flujo',
    'factor used': 'factor usado',
    'general scour below the existing bed': 'socavación general bajo el lecho existente',
    'design discharge for each unit of width': 'caudal de diseño por unidad de ancho',
    'median grain size of the bed': 'tamaño mediano de grano del lecho',
    "zero bed factor in ft/s², from Blench's chart":
      'factor de lecho cero en ft/s², del gráfico de Blench',
    'mean depth of the incised reach, bank-full': 'tirante medio del tramo encajado, a cauce lleno',
    'discharge for each unit of width of the incised reach, bank-full':
      'caudal por unidad de ancho del tramo encajado, a cauce lleno',
    '0.67 for sand to 0.85 for coarse gravel': 'de 0.67 para arena a 0.85 para grava gruesa',
    'water-surface width at the upstream end of the bend':
      'ancho del agua en el extremo de aguas arriba de la curva',
    'mean depth of the crossing upstream of the bend':
      'tirante medio del paso de aguas arriba de la curva',
    '1.00, 1.08 and 1.19 left about 25, 10 and 2 % of the observed depths above the prediction (recalled with doubt)':
      '1.00, 1.08 y 1.19 dejaron un 25, 10 y 2 % de los tirantes observados por encima de lo previsto (recordado con dudas)',
    'greatest depth in the bend as it stands': 'tirante máximo actual en la curva',
    'overbank depth over channel depth': 'tirante en la llanura sobre tirante en el cauce',
    'greatest depth in the bend, from the water surface':
      'tirante máximo en la curva, desde la superficie del agua',
    'bend scour below the bed': 'socavación en curva bajo el lecho',
    'water-surface width upstream of the bend': 'ancho del agua aguas arriba de la curva',
    'mean depth upstream of the bend': 'tirante medio aguas arriba de la curva',
    'which of the two formulas': 'cuál de las dos fórmulas',
    'scour below the mean bed over the mean depth':
      'socavación bajo el lecho medio sobre el tirante medio',
    'greatest depth from the water over the mean depth':
      'profundidad máxima desde el agua sobre el tirante medio',
    'by the extra-depth form': 'por la forma de profundidad adicional',
    'by the total-depth form': 'por la forma de profundidad total',
    'bend scour below the mean bed': 'socavación en curva bajo el lecho medio',
    'greatest depth upstream of the bend': 'tirante máximo aguas arriba de la curva',
    'area over top width': 'área sobre ancho superior',
    'general scour': 'socavación general',
    'bend scour': 'socavación en curva',
    'both together': 'ambas juntas',
    'depth in the channel upstream': 'tirante en el cauce de aguas arriba',
    'discharge of the channel upstream': 'caudal del cauce de aguas arriba',
    'discharge of the contracted channel': 'caudal del cauce contraído',
    'bottom width upstream': 'ancho del fondo aguas arriba',
    'bottom width in the contraction, less piers':
      'ancho del fondo en la contracción, menos las pilas',
    'depth in the contraction before scour': 'tirante en la contracción antes de la socavación',
    'fall velocity of the median grain': 'velocidad de caída del grano mediano',
    'slope of the energy line upstream': 'pendiente de la línea de energía aguas arriba',
    'mean velocity upstream': 'velocidad media aguas arriba',
    'shear velocity over fall velocity': 'velocidad de corte sobre velocidad de caída',
    'exponent of the width': 'exponente del ancho',
    'velocity at which the bed upstream begins to move':
      'velocidad con que empieza a moverse el lecho de aguas arriba',
    'mean depth in the contraction after scour':
      'tirante medio en la contracción tras la socavación',
    'discharge through the contraction': 'caudal por la contracción',
    'depth upstream': 'tirante aguas arriba',
    'depth of flow': 'tirante del flujo',
    'velocity at which the grains begin to move': 'velocidad con que los granos empiezan a moverse',
    'existing depth of flow': 'tirante existente del flujo',
    'depth at which the water moves the grains no more':
      'tirante con que el agua ya no mueve los granos',
    'competent depth less the existing depth': 'tirante competente menos el tirante existente',
    'how easily the bed erodes': 'con qué facilidad se erosiona el lecho',
    'easily erodible': 'fácilmente erosionable',
    average: 'medio',
    resistant: 'resistente',
    'mean velocity the bed stands': 'velocidad media que resiste el lecho',
    'trough below the mean bed': 'seno bajo el lecho medio',
    'size that 90 % of the bed is finer than': 'tamaño que supera al 90 % del lecho',
    'specific gravity of the grains': 'densidad relativa de los granos',
    'by how much the shear exceeds the critical one':
      'cuánto supera el esfuerzo cortante al crítico',
    'height of the dunes': 'altura de las dunas',
    'share of the bed by mass that is coarser, 0 to 1':
      'parte en masa del lecho que es más gruesa, de 0 a 1',
    'thickness of the armour': 'espesor de la coraza',
    'lowering of the bed': 'descenso del lecho',
    'width of the bed': 'ancho del lecho',
    'discharge that forms the channel': 'caudal que forma el cauce',
    'slope at which the bed moves no more': 'pendiente con que el lecho ya no se mueve',
    'whole discharge over that above the bed': 'caudal total sobre el que pasa encima del lecho',
    "Manning's n of the bed": 'n de Manning del lecho',
    'mean depth': 'tirante medio',
    'present slope of the bed': 'pendiente actual del lecho',
    'distance down to what holds the bed':
      'distancia hasta lo que sostiene el lecho, hacia aguas abajo',
    'lowering of the bed here': 'descenso del lecho aquí',
    'depth directly upstream of the pier': 'tirante justo aguas arriba de la pila',
    'velocity directly upstream of the pier': 'velocidad inmediatamente aguas arriba de la pila',
    'length of the pier': 'longitud de la pila',
    'shape of the nose': 'forma de la nariz',
    'angle between the flow and the pier': 'ángulo entre el flujo y la pila',
    'condition of the bed': 'estado del lecho',
    'factor of the nose': 'factor de la nariz',
    'factor of the angle of attack': 'factor del ángulo de ataque',
    'factor of the bed': 'factor del lecho',
    'factor of wide piers': 'factor de pilas anchas',
    'Froude number upstream': 'número de Froude aguas arriba',
    'pier scour': 'socavación en la pila',
    'toe scour below the lowest point of the bed':
      'socavación al pie bajo el punto más bajo del lecho',
  },
  cautions: {
    'An allowance nobody gave counts as nothing: the list of what was left out is part of the result.':
      'Un componente que nadie indicó cuenta como nada: la lista de lo omitido es parte del resultado.',
    'Rock or another layer that does not scour may end the toe earlier: that is for the responsible engineer.':
      'La roca u otro estrato que no se socava puede terminar el pie antes: eso lo decide el ingeniero responsable.',
    'The factor Z holds bend scour already: do not add bend scour to this result.':
      'El factor Z ya contiene la socavación en curva: no se la sume a este resultado.',
    'Z times the regime depth (below the bed) and the factor times the regime depth less the existing depth are different calculations; the choice is yours and is shown.':
      'Z por el tirante de régimen (bajo el lecho) y el factor por el tirante de régimen menos el existente son cálculos distintos; la elección es suya y queda a la vista.',
    'Where the table prints a range of Z, its upper end is taken.':
      'Donde la tabla imprime un rango de Z se toma su extremo superior.',
    "It knows nothing of local scour at piers, walls' ends and drops, nor of long-term lowering of the bed.":
      'No sabe nada de la socavación local en pilas, extremos de muros y caídas, ni del descenso del lecho a largo plazo.',
    'The depth is from the water surface: it holds the existing depth.':
      'La profundidad es desde la superficie del agua: contiene el tirante existente.',
    'A fit of observed bends: at a safety factor of 1, one bend in four scoured deeper.':
      'Un ajuste a curvas observadas: con factor de seguridad 1, una de cada cuatro se socavó más.',
    'One form gives the extra depth below the mean bed, the other the whole depth from the water; for flat bends they part, and the whole-depth form is the deeper.':
      'Una forma da la profundidad adicional bajo el lecho medio; la otra, toda la profundidad desde el agua; en curvas suaves se separan, y la de toda la profundidad es mayor.',
    'Made for sand-bed washes of the American Southwest.':
      'Hecho para cauces secos de lecho de arena del suroeste de Estados Unidos.',
    'The discharges are those of the channels that move bed material, without the flood plains.':
      'Los caudales son los de los cauces que mueven material del lecho, sin las llanuras de inundación.',
    'Where the bed is coarse, an armour may hold it: compare with the clear-water equation; the smaller scour may be taken by the responsible engineer.':
      'Donde el lecho es grueso puede sostenerlo una coraza: compare con la ecuación de agua clara; el ingeniero responsable puede tomar la socavación menor.',
    'The bed is taken as one grain size all the way down: look at the borings.':
      'El lecho se toma de un solo tamaño de grano hasta abajo: mire los sondeos.',
    'The critical velocity is a mean one; turbulence moves grains below it.':
      'La velocidad crítica es una media; la turbulencia mueve granos por debajo de ella.',
    'Cohesive beds need the other table: see cohesive-competent-velocity.':
      'Los lechos cohesivos necesitan la otra tabla: vea cohesive-competent-velocity.',
    'It takes the water to bring no bed material along; where it does, the scour is less.':
      'Supone que el agua no trae material del lecho; donde lo trae, la socavación es menor.',
    'A guide only: test the soil where the works depend on it.':
      'Solo una guía: ensaye el suelo donde la obra depende de él.',
    'Weathering and frost loosen a clay bank to far below these values.':
      'La meteorización y las heladas aflojan una margen de arcilla muy por debajo de estos valores.',
    'Antidunes form over sand in rapid or nearly rapid flow; in tranquil flow look at dunes.':
      'Las antidunas se forman en arena con flujo rápido o casi rápido; en flujo tranquilo mire las dunas.',
    'Half the height is taken below the mean bed; single troughs go deeper.':
      'Se toma media altura bajo el lecho medio; algunos senos llegan más hondo.',
    'A flood that moves the armour starts the lowering anew: take Dc of the design flood.':
      'Una crecida que mueve la coraza reinicia el descenso: tome el Dc de la crecida de diseño.',
    'Sample the bed to the depth computed; the share of coarse grains must hold all the way.':
      'Muestree el lecho hasta la profundidad calculada; la proporción de granos gruesos debe mantenerse hasta abajo.',
    'It holds for a bed that gets no sediment; supply makes the slope steeper.':
      'Vale para un lecho que no recibe sedimento; el aporte aumenta la pendiente.',
    'What holds the bed must itself stand.': 'Lo que sostiene el lecho debe sostenerse a su vez.',
    'Where the control lowers, the whole reach above it follows.':
      'Donde baja el control, lo sigue todo el tramo aguas arriba.',
    'Rock at a pier is a countermeasure: a bridge stands on foundations below the scour.':
      'La roca en una pila es una contramedida: un puente se apoya en cimientos por debajo de la socavación.',
    'Add contraction scour and long-term lowering of the bed; debris widens the pier.':
      'Sume la socavación por contracción y el descenso del lecho a largo plazo; los arrastres ensanchan la pila.',
    'It knows neither discharge nor bend: use it beside, not in place of, a scour analysis.':
      'No conoce ni el caudal ni la curva: úsela junto a un análisis de socavación, no en su lugar.',
    'Counted from the lowest point of the bed, not from the toe of the bank.':
      'Se cuenta desde el punto más bajo del lecho, no desde el pie de la margen.',
  },
};
