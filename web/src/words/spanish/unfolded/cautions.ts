/** Cautions of findings: where rock can hurt, or a figure says less than it seems. */
export const cautions: Record<string, string> = {
  // Water.
  'Uniform flow at the stated energy slope: no backwater, no drawdown. Where a bridge, a confluence or a weir acts, use a computed profile.':
    'Flujo uniforme con la pendiente de energía indicada: sin remanso ni abatimiento. Donde actúa un puente, una confluencia o un vertedero, use un perfil calculado.',
  'One-dimensional steady flow: no bridges, no culverts, no bends; the level is one across each section.':
    'Flujo permanente unidimensional: sin puentes, alcantarillas ni curvas; el nivel es uno solo en cada sección.',
  'The conveyance changes by more than 0.7 to 1.4 times to the next section; shorten the step (common practice).':
    'La capacidad cambia más de 0.7 a 1.4 veces hasta la sección siguiente; acorte el paso (práctica común).',
  '{section}: The conveyance changes by more than 0.7 to 1.4 times to the next section; shorten the step (common practice).':
    '{section}: la capacidad cambia más de 0.7 a 1.4 veces hasta la sección siguiente; acorte el paso (práctica común).',
  'The return period of a bankfull flow differs from stream to stream, often by more than the usual 1 to 2.5 years: go by marks in the field and a gauge.':
    'El período de retorno del cauce lleno difiere de una corriente a otra, a menudo más que los usuales 1 a 2.5 años: guíese por marcas en el campo y un aforo.',
  "Only this zone's own rock is put into its section; all other ground keeps the roughness of the survey.":
    'En la sección se pone solo la roca de esta zona; el resto del terreno conserva la rugosidad del levantamiento.',
  "The slope of the energy line is kept as it is without the rock: where backwater rules, look at the profile with the rock's roughness in the survey.":
    'La pendiente de la línea de energía se mantiene como sin la roca: donde rige el remanso, mire el perfil con la rugosidad de la roca en el levantamiento.',

  // Rock on banks and beds.
  'Do not take bend velocities from the subsections of a one-dimensional water-surface profile.':
    'No tome velocidades en curvas de las subsecciones de un perfil unidimensional.',
  'The bend velocity rises quickly where R/W is below about 3.':
    'La velocidad en la curva sube rápido donde R/W baja de 3, más o menos.',
  'Raise the safety factor for debris, ice, vandalism, poor velocity data or poor control of placing; it is no cover for guessed inputs.':
    'Suba el factor de seguridad por arrastres, hielo, vandalismo, malos datos de velocidad o mal control de la colocación; no ampara datos adivinados.',
  'Below a bend give distance_below_bend: the bend velocity is held for one channel width, then fades. Cv is kept as in the bend, which the manual leaves open. A reach counts as straight 5 to 10 widths below.':
    'Aguas abajo de una curva indique distance_below_bend: la velocidad de la curva se mantiene por un ancho del cauce y luego decae. Cv se deja como en la curva, lo que el manual no define. Un tramo cuenta como recto de 5 a 10 anchos más abajo.',
  'Braided flow: take the stage at or just above the tops of the bars.':
    'Flujo trenzado: tome el nivel en lo alto de las barras o apenas por encima.',
  'Written for roadside channels of regular section. On a natural river read it beside a velocity-based method.':
    'Escrito para cunetas de sección regular. En un río natural, léalo junto a un método basado en la velocidad.',
  'Depth is an input: rock of another size changes the roughness and the depth, so repeat the water level with the rock chosen.':
    'El tirante es un dato: roca de otro tamaño cambia la rugosidad y el tirante; repita el nivel del agua con la roca elegida.',
  'Bend tests of Colorado State University for Reclamation (2012) found 15 to 50 % more bend shear than Kb gives.':
    'Ensayos en curvas de Colorado State University para Reclamation (2012) hallaron de 15 a 50 % más esfuerzo cortante que el que da Kb.',
  'On slopes over 10 % the whole channel takes the size of its sides: give the side slope also for the bed.':
    'Con pendientes de más de 10 % todo el cauce toma el tamaño de sus taludes: indique el talud también para el lecho.',
  'It knows neither depth nor side slope: on a steep bank read it beside a method that does.':
    'No conoce el tirante ni el talud: en una margen empinada, léalo junto a un método que sí los conoce.',
  'The size is that of an equivalent sphere.': 'El tamaño es el de una esfera equivalente.',
  'On the outside of a bend a zone is given the bank velocity of EM 1110-2-1601, which the sheet itself does not state.':
    'En el exterior de una curva la zona recibe la velocidad en la margen de EM 1110-2-1601, que la hoja misma no indica.',
  'Use specific gravity 2.5 unless the quarry is known and better.':
    'Use densidad relativa 2.5, salvo que la cantera se conozca y sea mejor.',
  'Soil-filled rock is sized as plain rock; its voids must be full and the stones must touch.':
    'La roca rellena de suelo se dimensiona como roca simple; sus vacíos deben estar llenos y las piedras tocarse.',
  'Not at structures, drops and outlets.': 'No en estructuras, caídas ni descargas.',
  'Choose the class whose median size is not smaller than d50.':
    'Elija la clase cuyo tamaño mediano no sea menor que d50.',
  'Protect up to the design water level and at least 2 ft more; add waves, superelevation and ice.':
    'Proteja hasta el nivel de diseño y al menos 2 ft más; agregue olas, sobreelevación y hielo.',
  'Carry the toe to the depth of scour, or lay enough rock at it to fall into the scour.':
    'Lleve el pie hasta la profundidad de socavación, o ponga en él roca suficiente para que caiga en ella.',
  'Adjust the protected length by what erosion shows in the field; tie the ends into the bank.':
    'Ajuste la longitud protegida según lo que muestre la erosión en el campo; empotre los extremos en la margen.',
  'The layer is not thinner than d100 and 1.5·d50, nor than 12 in; half as much again under water; 6 to 12 in more where debris, ice or waves strike.':
    'La capa no es más delgada que d100 y 1.5·d50, ni que 12 in; la mitad más bajo el agua; de 6 a 12 in más donde golpean arrastres, hielo u olas.',
  'The layer is not thinner than D100 and 1.5·D50, nor than 12 in.':
    'La capa no es más delgada que D100 y 1.5·D50, ni que 12 in.',
  'The layer is not thinner than 1.5·D50 and D100; half as much again under water; a filter below all of it.':
    'La capa no es más delgada que 1.5·D50 y D100; la mitad más bajo el agua; un filtro debajo de todo.',
  'Superseded by FHWA HEC-23 DG4; it stands here to redo older designs and to compare.':
    'Reemplazado por FHWA HEC-23 DG4; está aquí para rehacer diseños antiguos y comparar.',
  'The base equation already holds a stability factor of 1.2: no other safety factor is put on top.':
    'La ecuación de base ya contiene un factor de estabilidad de 1.2: no se le suma otro factor de seguridad.',
  'It holds no safety factor: put it on the velocity or the turbulence.':
    'No contiene factor de seguridad: póngalo en la velocidad o la turbulencia.',
  'Edges of the protection need twice what its middle does.':
    'Los bordes de la protección necesitan el doble que su centro.',
  'W goes with the sixth power of the velocity: be sure of it.':
    'W va con la sexta potencia de la velocidad: asegúrese de ella.',
  'Families differ in what size and percent mean; a class is only as good as the way it is tested.':
    'Las familias difieren en qué significan tamaño y porcentaje; una clase vale lo que vale el modo de ensayarla.',
  'Rock is a countermeasure at existing piers; a new pier is designed to stand without it.':
    'La roca es una contramedida en pilas existentes; una pila nueva se diseña para sostenerse sin ella.',
  'Contraction scour is not stated for this pier; where it is deeper than three median sizes it and the long-term lowering of the bed make the layer.':
    'Para esta pila no se indica la socavación por contracción; donde pasa de tres tamaños medianos, ella y el descenso del lecho a largo plazo definen la capa.',
  'Carry the apron along the whole toe and round the ends to the tangent points; its top is at or below the bed.':
    'Lleve el delantal a lo largo de todo el pie y alrededor de los extremos hasta los puntos de tangencia; su tope está en el lecho o debajo.',
  'Lay filter and bedding under toe and apron as under the slope.':
    'Ponga filtro y capa de apoyo bajo el pie y el delantal como bajo el talud.',
  'The apron lies level; a sloping outlet channel needs a lining of its own beyond it.':
    'El delantal es horizontal; un cauce de salida con pendiente necesita más allá su propio revestimiento.',
  'A tailwater below 0.4·D is raised to it, as the manual says; a higher one helps.':
    'Un tirante aguas abajo menor que 0.4·D se sube hasta ahí, como dice el manual; uno mayor ayuda.',

  // Filters, kinds of rock, covers.
  'A filter is only as good as its placing: keep it even, whole and clean, and cover it before water runs over it.':
    'Un filtro vale lo que vale su colocación: manténgalo parejo, entero y limpio, y cúbralo antes de que le corra agua.',
  "Rules of the trade; the designer's choice overrules them with a reason.":
    'Reglas del oficio; la decisión del proyectista prevalece con una razón.',
  'The fill of the voids adds no strength here: the rock is sized as if it were bare.':
    'El relleno de los vacíos no agrega resistencia aquí: la roca se dimensiona como desnuda.',
  'The cover is no part of the protection: the rock under it is sized as if it were bare.':
    'La cubierta no es parte de la protección: la roca de abajo se dimensiona como desnuda.',
  'How long plants bear to stand under water is another limit, often the nearer one.':
    'Cuánto aguantan las plantas bajo el agua es otro límite, a menudo el más cercano.',
  "The maker's own pattern stands before these densities.":
    'Lo que indica el fabricante vale antes que estas densidades.',
  'A stake holds in the soil below the topsoil: in loose topsoil alone it pulls out.':
    'Una estaca agarra en el suelo bajo el suelo vegetal: solo en suelo vegetal suelto se sale.',
  'An upper edge that is not held, and water behind a side edge, are how blankets are usually lost.':
    'Las mantas suelen perderse por un borde superior sin sujetar o por agua detrás de un borde lateral.',
  'Voids and shrinking are known by weighing and by a box test, not by tables: make a trial batch before the layer is placed.':
    'Los vacíos y la contracción se conocen pesando y con un ensayo de cajón, no por tablas: haga una tanda de prueba antes de colocar la capa.',
  'Criteria were made for soils: in filled rock the fill can wash out of the face until plants or a cover hold it.':
    'Los criterios se hicieron para suelos: en roca rellena, el relleno puede lavarse de la cara hasta que lo sujeten plantas o una cubierta.',

  // Ends, keys, placing.
  'Lengths are a rule of thumb; signs of erosion on the ground go before them. The downstream end is the more critical one.':
    'Las longitudes son una regla práctica; los signos de erosión en el terreno van antes. El extremo de aguas abajo es el más crítico.',
  'The downstream end is the more critical one.': 'El extremo de aguas abajo es el más crítico.',
  'At the toe a key goes as deep as the toe does.':
    'En el pie, un dentellón baja tanto como el pie.',
  'Key both ends into the bank and found the toe below the scour that is expected; keys have a page of their own.':
    'Empotre ambos extremos en la margen y funde el pie bajo la socavación prevista; los dentellones tienen su propia página.',
  'Carry rock without a gap to where another kind of protection begins, and let the two overlap there.':
    'Lleve la roca sin interrupción hasta donde empieza otra protección, y haga que allí se traslapen.',
  'Training slides of unknown author show keys angled 20 to 30° to the high flow.':
    'Láminas de capacitación de autor desconocido muestran dentellones a 20 a 30° respecto del flujo alto.',
  'Where the bank may be worn back behind an end, carry the key as far into the bank as that; it is not in these figures.':
    'Donde la margen puede erosionarse detrás de un extremo, meta el dentellón hasta allí; no está en estas cifras.',
  'A trench beside a bank can bring the bank down: slope or shore it, and keep people out of unshored trenches.':
    'Una zanja junto a una margen puede hacerla caer: dele talud o entíbela, y que nadie entre en zanjas sin entibar.',
  'Bedding and finished surface are surveyed at the same points; rock is rough, so use a foot of about half a median stone.':
    'La capa de apoyo y la superficie terminada se levantan en los mismos puntos; la roca es rugosa: use una base de más o menos media piedra mediana.',
  'Points nearer to one another than one or two median stones are not independent (common practice).':
    'Puntos a menos de una o dos piedras medianas entre sí no son independientes (práctica común).',
  "The design of the zone must be the designer's own before rock of another gradation is placed in it.":
    'El diseño de la zona debe ser el del propio proyectista antes de colocar en ella roca de otra granulometría.',
  'Thicker rock narrows the waterway and takes a deeper subgrade; check both.':
    'Más espesor de roca estrecha el cauce y pide una subrasante más profunda; revise ambas cosas.',

  // Lots, loads, papers.
  "The other material is taken from its supplier's certificate as exact; the mixed pile must be measured before it is used.":
    'El otro material se toma del certificado de su proveedor como exacto; el acopio mezclado debe medirse antes de usarlo.',
  'An alarm says that the supply has changed, not that the rock is out of its band.':
    'Una alarma dice que el suministro cambió, no que la roca esté fuera de su banda.',
  'Loads of different sources belong on different charts.':
    'Los viajes de distintas procedencias van en gráficos distintos.',
  'Holds where the values of loads are near to normal and the loads were picked at random.':
    'Vale donde los valores de los viajes son casi normales y los viajes se tomaron al azar.',
  'Printed tables give whole percents, rounded up; both values are given.':
    'Las tablas impresas dan porcentajes enteros, redondeados hacia arriba; se dan ambos valores.',
  'Not to differ is no proof of sameness: with few stones only large differences show.':
    'No diferir no prueba que sean iguales: con pocas piedras solo se ven diferencias grandes.',
  'A certificate is of the sample that was tested, at the quarry that day.':
    'Un certificado es de la muestra que se ensayó, ese día en la cantera.',
  'Papers speak of the rock that was tested. What is delivered is judged by the looks at each lot.':
    'Los papeles hablan de la roca que se ensayó. Lo que llega se evalúa con las observaciones de cada lote.',
  'A service record of the same ledge in like water may say more than a test.':
    'Cómo se ha portado la misma veta en aguas parecidas puede decir más que un ensayo.',
  'Quantities are for planning and ordering. What is paid for is measured or weighed at the place, as the contract says.':
    'Las cantidades son para planificar y pedir. Lo que se paga se mide o se pesa en el lugar, como dice el contrato.',
  'Only what the sizing methods know of shape and density is compared. Durability is another question: see the submittal.':
    'Se compara solo lo que los métodos de tamaño saben de forma y densidad. La durabilidad es otra pregunta: vea la presentación.',
  'Rounded stones interlock less and roll more readily under foot and in placing than the formulas show.':
    'Las piedras redondeadas se traban menos y ruedan más, al pisarlas y al colocarlas, de lo que muestran las fórmulas.',
  'The class numbers are those of HEC-14 Table 10.1. They are not the numbers of FP-14 or of the ten FHWA classes, nor letters of a local manual: order rock by its size.':
    'Los números de clase son los de HEC-14, Tabla 10.1. No son los de FP-14 ni los de las diez clases de la FHWA, ni letras de un manual local: pida la roca por su tamaño.',

  // Chances.
  'This is the chance in that flood. Over the life of the works it goes with the chance that such a flood comes.':
    'Es la probabilidad en esa crecida. En la vida de la obra va junto con la probabilidad de que llegue tal crecida.',
  "Coefficients of variation are the designer's statement; what is not stated is taken as certain. Small chances are for comparing designs, not for believing the last digit.":
    'Los coeficientes de variación los indica el proyectista; lo no indicado se toma como cierto. Las probabilidades pequeñas sirven para comparar diseños, no para creer en la última cifra.',
};
