/** The water at a zone and through a reach. */
export const water: Record<string, string> = {
  '{discharge#} stands at {level#} and runs at {velocity#} in the main channel (Froude number {froude#}); at the rock it is {depth#} deep.':
    '{discharge} llegan a la cota {level} y corren a {velocity} en el cauce principal (número de Froude {froude}); sobre la roca el tirante es de {depth}.',
  "At the zone's own place a straight reach would run at {velocity#} with a shear of {shear#}.":
    'En el lugar de la zona, un tramo recto correría a {velocity} con un esfuerzo cortante de {shear}.',
  'Round the bend the outer bank meets {velocity#} and {shear#}, and the water stands {rise#} higher there.':
    'En la curva la margen exterior recibe {velocity} y {shear}, y el agua sube allí {rise} más.',
  'The water stands above an end of the survey: extend the section.':
    'El agua pasa por encima de un extremo del levantamiento: prolongue la sección.',
  'Vertical walls were added at the ends of the survey; level and velocity are only as good as they are.':
    'Se agregaron paredes verticales en los extremos del levantamiento; el nivel y la velocidad valen tanto como ellas.',
  'The flow is rapid here. Bank formulas for tranquil flow do not apply; use a method for steep channels.':
    'Aquí el flujo es rápido. Las fórmulas de márgenes para flujo tranquilo no valen; use un método para cauces de fuerte pendiente.',
  'Low ground apart from the channel is taken to carry water. See whether it is connected at this level; if not, the channel carries more.':
    'Se supone que el terreno bajo aparte del cauce lleva agua. Vea si está conectado a este nivel; si no, el cauce lleva más.',
  'The same discharge would also run uniformly at {level#}: conveyance falls while the water spreads. The lower level is used.':
    'El mismo caudal correría también uniforme a la cota {level}: la capacidad baja mientras el agua se extiende. Se usa el nivel más bajo.',
  'The bank is uneven: sized as {slope#} from toe to top, but a piece of it stands at {steepest#}. Trim it, or size on the steeper piece.':
    'La margen es desigual: se dimensiona con {slope} del pie a lo alto, pero una parte está a {steepest}. Perfílela, o dimensione con la parte más empinada.',
  'Nothing to do; what {zone} needs in this water stands under rock size.':
    'Nada que hacer; lo que {zone} necesita con esta agua está en el tamaño de la roca.',
  'The water at this zone could not be computed.': 'No se pudo calcular el agua en esta zona.',
  'Mend the section, the slope or the discharge; then look again.':
    'Corrija la sección, la pendiente o el caudal; luego mire de nuevo.',
  "A hydraulic jump stands beside this section, from {from#} to {to#}: the rock must suit both, and the jump's travel.":
    'Junto a esta sección hay un resalto hidráulico, de {from} a {to}: la roca debe servir para ambos, y para el recorrido del resalto.',

  '{discharge#} stands at {first#} at {from} and at {last#} at {to}, {length#} further down; it is fastest at {where}, {velocity#} (Froude number {froude#}).':
    '{discharge} llegan a la cota {first} en {from} y a {last} en {to}, {length} más abajo; la mayor velocidad está en {where}, {velocity} (número de Froude {froude}).',
  '{discharge#} stands at {first#} at {from} and at {last#} at {to}, {length#} further down; it is fastest between sections, at {where#}, {velocity#} (Froude number {froude#}).':
    '{discharge} llegan a la cota {first} en {from} y a {last} en {to}, {length} más abajo; la mayor velocidad está entre secciones, en {where}, {velocity} (número de Froude {froude}).',
  'A hydraulic jump stands about {distance#} below the first section, from {from#} to {to#} (Froude number {froude#} before it, {lost#} of energy lost).':
    'Hay un resalto hidráulico a unos {distance} aguas abajo de la primera sección, de {from} a {to} (número de Froude {froude} antes, {lost} de energía perdida).',
  'Nothing to do; the zones at these sections take their water from here.':
    'Nada que hacer; las zonas en estas secciones toman su agua de aquí.',
  'The profile could not be computed.': 'No se pudo calcular el perfil.',
  'Mend the reach, its boundaries or the discharge; then look again.':
    'Corrija el tramo, sus condiciones de borde o el caudal; luego mire de nuevo.',
  'Look at the sections named under reasons: survey further, or add sections.':
    'Revise las secciones que se nombran en las razones: levante más, o agregue secciones.',
  'Decide how the ground is held where the water jumps.':
    'Decida cómo se sostiene el terreno donde el agua salta.',

  'Stated by {source}: {figures*statedWater}.': 'Indicado por {source}: {figures}.',
  'Nothing to do; see that the source of these figures is on record.':
    'Nada que hacer; vea que conste la fuente de estas cifras.',
  'Nothing is stated of the water at this zone in this flow case, and no section gives it.':
    'No se indica nada del agua en esta zona en este caso de caudal, y ninguna sección lo da.',
  'State the water of this flow case at the zone, or give the zone a section.':
    'Indique el agua de este caso de caudal en la zona, o dele una sección.',

  '{case} stands {height#} above the toe and wets {share#} of the slope.':
    '{case} llega {height} por encima del pie y moja el {share} del talud.',
  '{case} stands {height#} above the toe and wets {share#} of the slope ({often*often}).':
    '{case} llega {height} por encima del pie y moja el {share} del talud ({often}).',
  '{case} stays {height#} below the toe.': '{case} queda {height} por debajo del pie.',
  'Nothing to do; soil, plants and blankets are chosen by these heights.':
    'Nada que hacer; el suelo, las plantas y las mantas se eligen por estas alturas.',
  'State days_per_year or return_period_years of {case}: how long the slope is under water decides what can grow on it.':
    'Indique days_per_year o return_period_years de {case}: cuánto tiempo está el talud bajo el agua decide qué puede crecer en él.',
};

/** Figures of the water that are stated. */
export const statedWater: Record<string, string> = {
  'discharge {value#}': 'caudal {value}',
  'velocity {value#}': 'velocidad {value}',
  'depth {value#}': 'tirante {value}',
  'tailwater depth {value#}': 'tirante aguas abajo {value}',
  'water level {value#}': 'nivel del agua {value}',
  'significant wave height {value#}': 'altura significativa de ola {value}',
};

/** How often water comes. */
export const often: Record<string, string> = {
  'about every {years#} years': 'cada {years} años, más o menos',
  'about {times#} times a year': 'unas {times} veces al año',
  '{days#} days a year': '{days} días al año',
};
