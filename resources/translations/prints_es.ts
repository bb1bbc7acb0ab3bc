<?xml version='1.0' encoding='utf-8'?>
<TS version="2.1" language="es_MX" sourcelanguage="en_US">
    <context>
        <name>Prints</name>
        <message>
            <source>LOT</source>
            <translation>LOTE</translation>
        </message>
        <message>
            <source>ONLY FOR THIS LOT</source>
            <translation>SOLO PARA ESTE LOTE</translation>
        </message>
        <message>
            <source>STOP</source>
            <translation>ALTO</translation>
        </message>
        <message>
            <source>Weighed in {date}</source>
            <translation>Pesado el {date}</translation>
        </message>
        <message>
            <source>Made {date}</source>
            <translation>Fabricado el {date}</translation>
        </message>
        <message>
            <source>Arrived {date}</source>
            <translation>Recibido el {date}</translation>
        </message>
        <message>
            <source>by {who}</source>
            <translation>por {who}</translation>
        </message>
        <message>
            <source>Page {page} of {pages}</source>
            <translation>Página {page} de {pages}</translation>
        </message>
        <message>
            <source>Printed {date}</source>
            <translation>Impreso el {date}</translation>
        </message>
        <message>
            <source>RIM EDGE</source>
            <translation>BORDE DE LA MEDIDA</translation>
        </message>
        <message>
            <source>Line {length} below the rim</source>
            <translation>Línea a {length} del borde</translation>
        </message>
        <message>
            <source>Lines below the rim</source>
            <translation>Líneas desde el borde</translation>
        </message>
        <message>
            <source>Scoop: {name}</source>
            <translation>Medida: {name}</translation>
        </message>
        <message>
            <source>{count} level</source>
            <translation>{count} al ras</translation>
        </message>
        <message>
            <source>Cut along the thin lines. Dry the scoop and stick the label on its outside, the black edge flush with the rim. Fill the scoop and strike it level. Take off labels and lines of lots that are no longer fed.</source>
            <translation>Corte por las líneas delgadas. Seque la medida y pegue la etiqueta por fuera, con la orilla negra pareja con el borde. Llene la medida y rásela. Quite las etiquetas y líneas de lotes que ya no se usan.</translation>
        </message>
        <message>
            <source>Struck level: no line</source>
            <translation>Al ras: sin línea</translation>
        </message>
        <message>
            <source>{mass} = {count} to the line</source>
            <translation>{mass} = {count} hasta la línea</translation>
        </message>
        <message>
            <source>{mass} = {count} to the line + 1 to ½</source>
            <translation>{mass} = {count} hasta la línea + 1 hasta ½</translation>
        </message>
        <message>
            <source>piece {piece} of {pieces}</source>
            <translation>parte {piece} de {pieces}</translation>
        </message>
        <message>
            <source>Scoop labels</source>
            <translation>Etiquetas para medidas</translation>
        </message>
        <message>
            <source>Cut along the thin lines. Dry the scoop and stick the label on its outside, the black edge flush with the rim. Where the powder does not show through, copy the lines to the inside with the marker. Take off labels and lines of lots that are no longer fed.</source>
            <translation>Corte por las líneas delgadas. Seque la medida y pegue la etiqueta por fuera, con la orilla negra pareja con el borde. Si el polvo no se ve a través de la pared, copie las líneas por dentro con el marcador. Quite las etiquetas y líneas de lotes que ya no se usan.</translation>
        </message>
        <message>
            <source>Cut along the thin lines. Dry the scoop, put the black edge flush with the rim all round its outside and let each end overlap to the dashed line, lines level. Where the powder does not show through, copy the lines to the inside with the marker. Take off labels and lines of lots that are no longer fed.</source>
            <translation>Corte por las líneas delgadas. Seque la medida, ponga la orilla negra pareja con el borde todo alrededor, por fuera, y traslape cada extremo hasta la línea punteada, con las líneas a nivel. Si el polvo no se ve a través de la pared, copie las líneas por dentro con el marcador. Quite las etiquetas y líneas de lotes que ya no se usan.</translation>
        </message>
        <message>
            <source>Measure both bars first: one 50 mm, one 2 in (50.8 mm). If either is off, throw the sheet away and print again at 100 %, without “fit to page”.</source>
            <translation>Primero mida las dos barras: una de 50 mm, una de 2 in (50.8 mm). Si alguna no mide eso, tire la hoja e imprima otra vez al 100 %, sin “ajustar a la página”.</translation>
        </message>
        <message>
            <source>Measure both bars first: each is 50 mm. If either is off, throw the sheet away and print again at 100 %, without “fit to page”.</source>
            <translation>Primero mida las dos barras: cada una de 50 mm. Si alguna no mide eso, tire la hoja e imprima otra vez al 100 %, sin “ajustar a la página”.</translation>
        </message>
        <message>
            <source>Wall chart</source>
            <translation>Tabla de pared</translation>
        </message>
        <message>
            <source>Take down no. {old}</source>
            <translation>Quite el impreso n.º {old}</translation>
        </message>
        <message>
            <source>Another lot number on the bag? Stop. Weigh in again.</source>
            <translation>¿Otro lote en el costal? ¡Alto! Lote nuevo: pese otra vez.</translation>
        </message>
        <message>
            <source>Calves</source>
            <translation>Becerras</translation>
        </message>
        <message>
            <source>Batches</source>
            <translation>Tandas</translation>
        </message>
        <message>
            <source>better weigh {times}</source>
            <translation>mejor pese {times}</translation>
        </message>
        <message>
            <source>a feeding</source>
            <translation>por toma</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>Agua</translation>
        </message>
        <message>
            <source>Water each</source>
            <translation>Agua por tanda</translation>
        </message>
        <message>
            <source>Water at</source>
            <translation>Agua a</translation>
        </message>
        <message>
            <source>Powder</source>
            <translation>Polvo</translation>
        </message>
        <message>
            <source>Powder each</source>
            <translation>Polvo por tanda</translation>
        </message>
        <message>
            <source>or scoopfuls</source>
            <translation>o medidas</translation>
        </message>
        <message>
            <source>or scoopfuls each</source>
            <translation>o medidas por tanda</translation>
        </message>
        <message>
            <source>Printed {date}; framed: that day's calves</source>
            <translation>Impreso {date}; en el recuadro: las becerras de ese día</translation>
        </message>
        <message>
            <source>level</source>
            <translation>al ras</translation>
        </message>
        <message>
            <source>to the line</source>
            <translation>hasta la línea</translation>
        </message>
        <message>
            <source>tapped</source>
            <translation>golpeada</translation>
        </message>
        <message>
            <source>95 % interval</source>
            <translation>Intervalo del 95 %</translation>
        </message>
        <message>
            <source>weigh it</source>
            <translation>péselo</translation>
        </message>
        <message>
            <source>better weighed</source>
            <translation>mejor péselo</translation>
        </message>
        <message>
            <source>weigh {times}</source>
            <translation>pese {times}</translation>
        </message>
        <message>
            <source>The scale weighs {capacity} at most, pail included.</source>
            <translation>La báscula pesa hasta {capacity} con cubeta.</translation>
        </message>
        <message>
            <source>Over {most} scoopfuls are easily miscounted: weigh the powder.</source>
            <translation>Es fácil equivocarse al contar más de {most} medidas: pese el polvo.</translation>
        </message>
        <message>
            <source>A row without scoopfuls: no count comes near enough, weigh it.</source>
            <translation>Fila sin medidas: ninguna cantidad se acerca lo suficiente; péselo.</translation>
        </message>
        <message>
            <source>For cold weather, below {limit}</source>
            <translation>Para tiempo frío, bajo {limit}</translation>
        </message>
        <message>
            <source>water {length} deep</source>
            <translation>agua: {length} de hondo</translation>
        </message>
        <message>
            <source>mix {length} deep</source>
            <translation>mezcla: {length} de hondo</translation>
        </message>
        <message>
            <source>makes {volume}</source>
            <translation>rinde {volume}</translation>
        </message>
        <message>
            <source>mix to {volume}</source>
            <translation>llene a {volume}</translation>
        </message>
        <message>
            <source>{volume} of water per calf</source>
            <translation>{volume} de agua por becerra</translation>
        </message>
        <message>
            <source>{solids} solids (powder by weight)</source>
            <translation>{solids} de sólidos (polvo, por peso)</translation>
        </message>
        <message>
            <source>{solids} dry matter (by weight)</source>
            <translation>{solids} de materia seca (por peso)</translation>
        </message>
        <message>
            <source>Lot sheet</source>
            <translation>Hoja del lote</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Lote</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Producto</translation>
        </message>
        <message>
            <source>Made on</source>
            <translation>Fabricado el</translation>
        </message>
        <message>
            <source>Arrived on</source>
            <translation>Recibido el</translation>
        </message>
        <message>
            <source>Packages</source>
            <translation>Envases</translation>
        </message>
        <message>
            <source>{count} bags, {mass} each</source>
            <translation>{count} costales de {mass}</translation>
        </message>
        <message>
            <source>{count} totes, {mass} each</source>
            <translation>{count} supersacos de {mass}</translation>
        </message>
        <message>
            <source>Label analysis</source>
            <translation>Análisis de etiqueta</translation>
        </message>
        <message>
            <source>protein {percent}</source>
            <translation>proteína {percent}</translation>
        </message>
        <message>
            <source>fat {percent}</source>
            <translation>grasa {percent}</translation>
        </message>
        <message>
            <source>fiber {percent}</source>
            <translation>fibra {percent}</translation>
        </message>
        <message>
            <source>ash {percent}</source>
            <translation>ceniza {percent}</translation>
        </message>
        <message>
            <source>moisture {percent}</source>
            <translation>humedad {percent}</translation>
        </message>
        <message>
            <source>Medicated</source>
            <translation>Medicado</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>sí</translation>
        </message>
        <message>
            <source>no</source>
            <translation>no</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>{value} (entered after the sign-off)</source>
            <translation>{value} (anotado después de la firma)</translation>
        </message>
        <message>
            <source>{value}; corrected after the sign-off: {new}</source>
            <translation>{value}; corregido después de la firma: {new}</translation>
        </message>
        <message>
            <source>Scoop and scale</source>
            <translation>Medida y báscula</translation>
        </message>
        <message>
            <source>Scoop</source>
            <translation>Medida</translation>
        </message>
        <message>
            <source>Inside measures</source>
            <translation>Medidas interiores</translation>
        </message>
        <message>
            <source>round, {diameter} across, {height} high</source>
            <translation>redonda, {diameter} de diámetro, {height} de alto</translation>
        </message>
        <message>
            <source>tapered, rim {rim}, floor {floor}, {height} high</source>
            <translation>cónica, borde {rim}, fondo {floor}, {height} de alto</translation>
        </message>
        <message>
            <source>box, {length} × {width}, {height} high</source>
            <translation>caja, {length} × {width}, {height} de alto</translation>
        </message>
        <message>
            <source>water poured in {count} steps, {height} high</source>
            <translation>agua vertida en {count} pasos, {height} de alto</translation>
        </message>
        <message>
            <source>Struck-level volume</source>
            <translation>Volumen al ras</translation>
        </message>
        <message>
            <source>from weighed water</source>
            <translation>pesando agua</translation>
        </message>
        <message>
            <source>from its dimensions</source>
            <translation>por sus dimensiones</translation>
        </message>
        <message>
            <source>Scale</source>
            <translation>Báscula</translation>
        </message>
        <message>
            <source>Display step</source>
            <translation>División</translation>
        </message>
        <message>
            <source>Capacity</source>
            <translation>Capacidad</translation>
        </message>
        <message>
            <source>Level and zeroed</source>
            <translation>Nivelada y en cero</translation>
        </message>
        <message>
            <source>Check weight</source>
            <translation>Pesa de control</translation>
        </message>
        <message>
            <source>{nominal} showed {reading}, error {error} g</source>
            <translation>{nominal} marcó {reading}, error {error} g</translation>
        </message>
        <message>
            <source>none used: the scale is taken for a sound one</source>
            <translation>no se usó: la báscula se toma por buena</translation>
        </message>
        <message>
            <source>none used: an error of the scale is not in the intervals</source>
            <translation>no se usó: el error de la báscula no está en los intervalos</translation>
        </message>
        <message>
            <source>How it was weighed</source>
            <translation>Cómo se pesó</translation>
        </message>
        <message>
            <source>Started</source>
            <translation>Inicio</translation>
        </message>
        <message>
            <source>Weighed by</source>
            <translation>Pesó</translation>
        </message>
        <message>
            <source>Room</source>
            <translation>Cuarto</translation>
        </message>
        <message>
            <source>{percent} humidity</source>
            <translation>{percent} de humedad</translation>
        </message>
        <message>
            <source>Target weight</source>
            <translation>Peso deseado</translation>
        </message>
        <message>
            <source>Tolerance</source>
            <translation>Tolerancia</translation>
        </message>
        <message>
            <source>Powder stirred up, scoop dipped and heaped, struck off with a straight edge without tapping; the scale zeroed before each weighing. Fills to the line were evened by a shake and read at eye level. Weights are as the scale showed them, in air.</source>
            <translation>Polvo revuelto, medida llena con copete y rasada con una regla, sin golpear; báscula en cero antes de cada pesada. Las llenadas hasta la línea se emparejaron con una sacudida y se leyeron a la altura de los ojos. Los pesos son como los mostró la báscula, en aire.</translation>
        </message>
        <message>
            <source>Fills, all of them</source>
            <translation>Llenadas, todas</translation>
        </message>
        <message>
            <source>Spot fills from bags opened later</source>
            <translation>Llenadas de control de costales abiertos después</translation>
        </message>
        <message>
            <source>No.</source>
            <translation>N.º</translation>
        </message>
        <message>
            <source>Bag</source>
            <translation>Costal</translation>
        </message>
        <message>
            <source>Filled</source>
            <translation>Llenada</translation>
        </message>
        <message>
            <source>Scoops</source>
            <translation>Medidas</translation>
        </message>
        <message>
            <source>As read</source>
            <translation>Lectura</translation>
        </message>
        <message>
            <source>g</source>
            <translation>g</translation>
        </message>
        <message>
            <source>Line at</source>
            <translation>Línea a</translation>
        </message>
        <message>
            <source>Who</source>
            <translation>Quién</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
        </message>
        <message>
            <source>struck out: {reason}</source>
            <translation>tachada: {reason}</translation>
        </message>
        <message>
            <source>Results</source>
            <translation>Resultados</translation>
        </message>
        <message>
            <source>Level scoopful</source>
            <translation>Medida al ras</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <translation>{low} a {high}</translation>
        </message>
        <message>
            <source>Bulk density, level</source>
            <translation>Densidad aparente, al ras</translation>
        </message>
        <message>
            <source>Settling factor</source>
            <translation>Factor de asentamiento</translation>
        </message>
        <message>
            <source>Spread</source>
            <translation>Variación</translation>
        </message>
        <message>
            <source>between bags {bags}, between fills {fills}</source>
            <translation>entre costales {bags}, entre llenadas {fills}</translation>
        </message>
        <message>
            <source>Counted</source>
            <translation>Contadas</translation>
        </message>
        <message>
            <source>mean of {bags} bags, {fills} fills</source>
            <translation>promedio de {bags} costales, {fills} llenadas</translation>
        </message>
        <message>
            <source>One more scoopful</source>
            <translation>Una medida más</translation>
        </message>
        <message>
            <source>Degrees of freedom</source>
            <translation>Grados de libertad</translation>
        </message>
        <message>
            <source>Interval from</source>
            <translation>Intervalo según</translation>
        </message>
        <message>
            <source>the means of this lot's bags</source>
            <translation>los promedios de los costales de este lote</translation>
        </message>
        <message>
            <source>this lot and the farm's earlier lots</source>
            <translation>este lote y los lotes anteriores</translation>
        </message>
        <message>
            <source>the fills of this lot, of which every bag was dipped</source>
            <translation>las llenadas de este lote, tomadas de todos sus costales</translation>
        </message>
        <message>
            <source>a cautious guess of the spread, for want of fills</source>
            <translation>una variación supuesta con cautela, por falta de llenadas</translation>
        </message>
        <message>
            <source>Uncertainty budget of the level scoopful</source>
            <translation>Cuenta de incertidumbre de la medida al ras</translation>
        </message>
        <message>
            <source>Uncertainty budget of the bulk density</source>
            <translation>Cuenta de incertidumbre de la densidad aparente</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Fuente</translation>
        </message>
        <message>
            <source>Distribution</source>
            <translation>Distribución</translation>
        </message>
        <message>
            <source>u</source>
            <translation>u</translation>
        </message>
        <message>
            <source>Sensitivity</source>
            <translation>Sensibilidad</translation>
        </message>
        <message>
            <source>Contribution</source>
            <translation>Aporte</translation>
        </message>
        <message>
            <source>Share</source>
            <translation>Parte</translation>
        </message>
        <message>
            <source>d.f.</source>
            <translation>g.l.</translation>
        </message>
        <message>
            <source>normal</source>
            <translation>normal</translation>
        </message>
        <message>
            <source>rectangular</source>
            <translation>rectangular</translation>
        </message>
        <message>
            <source>assumed</source>
            <translation>supuesto</translation>
        </message>
        <message>
            <source>in another row</source>
            <translation>en otra fila</translation>
        </message>
        <message>
            <source>bags and fills together</source>
            <translation>costales y llenadas juntos</translation>
        </message>
        <message>
            <source>between bags</source>
            <translation>entre costales</translation>
        </message>
        <message>
            <source>between fills of a bag</source>
            <translation>entre llenadas de un costal</translation>
        </message>
        <message>
            <source>display step, full</source>
            <translation>división, medida llena</translation>
        </message>
        <message>
            <source>display step, empty</source>
            <translation>división, medida vacía</translation>
        </message>
        <message>
            <source>error of the scale</source>
            <translation>error de la báscula</translation>
        </message>
        <message>
            <source>weight of the level scoopful</source>
            <translation>peso de la medida al ras</translation>
        </message>
        <message>
            <source>volume of the scoop</source>
            <translation>volumen de la medida</translation>
        </message>
        <message>
            <source>settling factor</source>
            <translation>factor de asentamiento</translation>
        </message>
        <message>
            <source>Lines as signed off</source>
            <translation>Líneas firmadas</translation>
        </message>
        <message>
            <source>Target</source>
            <translation>Peso deseado</translation>
        </message>
        <message>
            <source>Level scoops before</source>
            <translation>Medidas al ras antes</translation>
        </message>
        <message>
            <source>Below the rim</source>
            <translation>Bajo el borde</translation>
        </message>
        <message>
            <source>Above the floor</source>
            <translation>Sobre el fondo</translation>
        </message>
        <message>
            <source>To the line</source>
            <translation>Hasta la línea</translation>
        </message>
        <message>
            <source>Verdicts</source>
            <translation>Dictámenes</translation>
        </message>
        <message>
            <source>New line</source>
            <translation>Línea nueva</translation>
        </message>
        <message>
            <source>Old line</source>
            <translation>Línea anterior</translation>
        </message>
        <message>
            <source>on target</source>
            <translation>en el peso deseado</translation>
        </message>
        <message>
            <source>move it</source>
            <translation>muévala</translation>
        </message>
        <message>
            <source>weigh more before judging</source>
            <translation>pese más antes de decidir</translation>
        </message>
        <message>
            <source>as near as the ruler allows, outside the tolerance</source>
            <translation>lo más cerca que permite la regla, fuera de la tolerancia</translation>
        </message>
        <message>
            <source>signed off although the fills said: {verdict}</source>
            <translation>firmada aunque las llenadas decían: {verdict}</translation>
        </message>
        <message>
            <source>keep it</source>
            <translation>consérvela</translation>
        </message>
        <message>
            <source>not checked</source>
            <translation>sin comprobar</translation>
        </message>
        <message>
            <source>{verdict} (found {length} below the rim)</source>
            <translation>{verdict} (estaba a {length} bajo el borde)</translation>
        </message>
        <message>
            <source>Rule of decision: a line is on target when the whole {judged} interval of what it delivers lies within the tolerance (two one-sided tests at {tail}); it is to be moved when the interval leaves out the target and another division of the ruler is nearer. An old line is judged anew after each level fill, therefore by a {old} interval: kept when that lies within the tolerance, moved when it lies outside.</source>
            <translation>Regla de decisión: una línea está en el peso deseado cuando todo el intervalo de {judged} de lo que entrega cae dentro de la tolerancia (dos pruebas de una cola al {tail}); se mueve cuando el intervalo deja fuera el peso deseado y otra división de la regla queda más cerca. Una línea anterior se juzga de nuevo tras cada llenada al ras, por eso con un intervalo de {old}: se queda si cae dentro de la tolerancia y se mueve si cae fuera.</translation>
        </message>
        <message>
            <source>These results hold for this lot, this scoop and this way of filling only. The record is laid out after ISO/IEC 17025:2017, 7.8, as far as it applies to a farm; it is no certificate of an accredited laboratory, and weights are traceable only as far as the check weight is.</source>
            <translation>Estos resultados valen solo para este lote, esta medida y esta forma de llenar. El registro sigue ISO/IEC 17025:2017, 7.8, hasta donde se aplica en un establo; no es certificado de un laboratorio acreditado, y los pesos son trazables solo hasta donde lo es la pesa de control.</translation>
        </message>
        <message>
            <source>Signed off {date} by {who}</source>
            <translation>Firmado el {date} por {who}</translation>
        </message>
        <message>
            <source>calibrator {version} · scoop {scoop} · scale {scale} · lot {lot} · weigh-in {weigh_in}</source>
            <translation>calibrator {version} · medida {scoop} · báscula {scale} · lote {lot} · pesada {weigh_in}</translation>
        </message>
        <message>
            <source>What these figures mean</source>
            <translation>Qué significan estas cifras</translation>
        </message>
        <message>
            <source>Signature</source>
            <translation>Firma</translation>
        </message>
        <message>
            <source>too much for {vessel}</source>
            <translation>no cabe en {vessel}</translation>
        </message>
        <message>
            <source>the vessel</source>
            <translation>el recipiente</translation>
        </message>
        <message>
            <source>MEDICATED powder: see the bag's label</source>
            <translation>Polvo MEDICADO: vea la etiqueta del costal</translation>
        </message>
        <message>
            <source>each feeding: {volume} of mix a calf</source>
            <translation>cada toma: {volume} de mezcla por becerra</translation>
        </message>
        <message>
            <source>{powder} of powder per calf</source>
            <translation>{powder} de polvo por becerra</translation>
        </message>
        <message>
            <source>{volume} of mix per calf</source>
            <translation>{volume} de mezcla por becerra</translation>
        </message>
        <message>
            <source>{powder} of powder on top of every {volume} of water</source>
            <translation>{powder} de polvo agregado a cada {volume} de agua</translation>
        </message>
        <message>
            <source>{powder} of powder made up with water to {volume}</source>
            <translation>{powder} de polvo y agua hasta completar {volume}</translation>
        </message>
        <message>
            <source>{powder} of powder in every {volume} of mix as fed</source>
            <translation>{powder} de polvo en cada {volume} de mezcla servida</translation>
        </message>
        <message>
            <source>mixed in {vessel}</source>
            <translation>se mezcla en {vessel}</translation>
        </message>
        <message>
            <source>Water of {limit} or hotter scalds: keep people and calves away.</source>
            <translation>El agua a {limit} o más quema: aleje a la gente y a las becerras.</translation>
        </message>
        <message>
            <source>The product's label comes before this sheet.</source>
            <translation>La etiqueta del producto manda sobre esta hoja.</translation>
        </message>
        <message>
            <source>MEDICATED powder: feed only as its label and your veterinarian say. Mind the withdrawal time.</source>
            <translation>Polvo MEDICADO: délo solo como digan su etiqueta y el veterinario. Respete el tiempo de retiro.</translation>
        </message>
        <message>
            <source>Sick or weak calf? Ask the veterinarian.</source>
            <translation>¿Becerra enferma o débil? Llame al veterinario.</translation>
        </message>
        <message>
            <source>No milk or replacer by tube unless the veterinarian says so.</source>
            <translation>Ni leche ni sustituto por sonda, salvo que lo indique el veterinario.</translation>
        </message>
        <message>
            <source>Calves need fresh water too.</source>
            <translation>Dé también agua limpia.</translation>
        </message>
        <message>
            <source>Feed at once and keep the mix moving.</source>
            <translation>Dé la mezcla enseguida, sin dejar de moverla.</translation>
        </message>
        <message>
            <source>Do not breathe the dust; no flames near it.</source>
            <translation>No respire el polvo; sin llamas cerca.</translation>
        </message>
        <message>
            <source>± is the half-width of a 95 % interval, as on the screens: each doubt is widened by Student's factor for its own degrees of freedom, then added as squares. For the scoop's volume and for settling the factor is 2 (JCGM 100:2008). In the budgets u is one standard uncertainty.</source>
            <translation>± es la mitad de un intervalo del 95 %, igual que en las pantallas: cada incertidumbre se amplía con el factor de Student para sus propios grados de libertad y luego se suman los cuadrados. Para el volumen de la medida y para el asentamiento el factor es 2 (JCGM 100:2008). En las cuentas de incertidumbre, u es una incertidumbre estándar.</translation>
        </message>
        <message>
            <source>ONE BATCH FROM TWO LOTS</source>
            <translation>UNA TANDA DE DOS LOTES</translation>
        </message>
        <message>
            <source>{calves} calves</source>
            <translation>{calves} becerras</translation>
        </message>
        <message>
            <source>one of {batches} batches for {calves} calves</source>
            <translation>una de {batches} tandas para {calves} becerras</translation>
        </message>
        <message>
            <source>from bags of lot {lot}, by its own line: {powder}, {how}</source>
            <translation>de los costales del lote {lot}, con su propia línea: {powder}, {how}</translation>
        </message>
        <message>
            <source>Steps to weaning, each calf</source>
            <translation>Pasos al destete, cada becerra</translation>
        </message>
        <message>
            <source>without what is added for cold weather</source>
            <translation>sin lo que se agrega por el tiempo frío</translation>
        </message>
        <message>
            <source>Days</source>
            <translation>Días</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Desde</translation>
        </message>
        <message>
            <source>Feedings</source>
            <translation>Tomas</translation>
        </message>
        <message>
            <source>Mix a feeding</source>
            <translation>Mezcla por toma</translation>
        </message>
        <message>
            <source>Powder a feeding</source>
            <translation>Polvo por toma</translation>
        </message>
        <message>
            <source>Powder a day</source>
            <translation>Polvo al día</translation>
        </message>
        <message>
            <source>weaned</source>
            <translation>destetada</translation>
        </message>
        <message>
            <source>Season report</source>
            <translation>Informe de la temporada</translation>
        </message>
        <message>
            <source>Sign-offs: {count}, {first} to {last}</source>
            <translation>Pesadas firmadas: {count}, {first} a {last}</translation>
        </message>
        <message>
            <source>Sign-offs: {count}, {first}</source>
            <translation>Pesadas firmadas: {count}, {first}</translation>
        </message>
        <message>
            <source>Bulk density by lot, struck level</source>
            <translation>Densidad aparente por lote, al ras</translation>
        </message>
        <message>
            <source>{unit}, at the day of the weigh-in</source>
            <translation>{unit}, en el día de la pesada</translation>
        </message>
        <message>
            <source>Dot: a lot, its bar a 95 % interval.</source>
            <translation>Punto: un lote, su barra es un intervalo del 95 %.</translation>
        </message>
        <message>
            <source>Gray steps: the limits within which lots of its kind of powder are expected, wider where a lot is known less well. Line: the running mean.</source>
            <translation>Escalones grises: los límites en que se esperan los lotes de su tipo de polvo, más anchos donde un lote se conoce menos. Línea: el promedio móvil.</translation>
        </message>
        <message>
            <source>A ring marks a lot that stands out.</source>
            <translation>Un círculo señala un lote que llama la atención.</translation>
        </message>
        <message>
            <source>What happened</source>
            <translation>Qué pasó</translation>
        </message>
        <message>
            <source>Nothing out of the ordinary was found in these lots.</source>
            <translation>No se halló nada fuera de lo común en estos lotes.</translation>
        </message>
        <message>
            <source>By the scoop, lot {lot} weighs {share} more than lot {before}.</source>
            <translation>Por medida, el lote {lot} pesa {share} más que el lote {before}.</translation>
        </message>
        <message>
            <source>By the scoop, lot {lot} weighs {share} less than lot {before}.</source>
            <translation>Por medida, el lote {lot} pesa {share} menos que el lote {before}.</translation>
        </message>
        <message>
            <source>How lots differ cannot be told from so few lots.</source>
            <translation>Con tan pocos lotes no se sabe cuánto varían los lotes.</translation>
        </message>
        <message>
            <source>So few lots do not tell yet what is ordinary here.</source>
            <translation>Con tan pocos lotes aún no se sabe qué es lo normal aquí.</translation>
        </message>
        <message>
            <source>{count} earlier findings are on the page of the season.</source>
            <translation>{count} hallazgos anteriores están en la página de la temporada.</translation>
        </message>
        <message>
            <source>{date}, lot {lot}: powder of another kind, {product}. {step}</source>
            <translation>{date}, lote {lot}: polvo de otro tipo, {product}. {step}</translation>
        </message>
        <message>
            <source>{date}, lot {lot}: agglomerated powder came for the first time. {step}</source>
            <translation>{date}, lote {lot}: llegó por primera vez polvo aglomerado. {step}</translation>
        </message>
        <message>
            <source>{date}, lot {lot}: scoop {new} took the place of {old}. {step}</source>
            <translation>{date}, lote {lot}: la medida {new} tomó el lugar de {old}. {step}</translation>
        </message>
        <message>
            <source>{date}, lot {lot}: weighed in humid air, {humidity} where {usual} is usual. {step}</source>
            <translation>{date}, lote {lot}: pesado con aire húmedo, {humidity} donde lo usual es {usual}. {step}</translation>
        </message>
        <message>
            <source>{date}, lot {lot}: {share} from the middle of its kind: {rules}.</source>
            <translation>{date}, lote {lot}: a {share} del centro de su tipo: {rules}.</translation>
        </message>
        <message>
            <source>Density is {share} higher with it ({low} to {high}).</source>
            <translation>Con eso la densidad es {share} mayor ({low} a {high}).</translation>
        </message>
        <message>
            <source>Density is {share} lower with it ({low} to {high}).</source>
            <translation>Con eso la densidad es {share} menor ({low} a {high}).</translation>
        </message>
        <message>
            <source>outside its limits</source>
            <translation>fuera de sus límites</translation>
        </message>
        <message>
            <source>far from the lot before</source>
            <translation>lejos del lote anterior</translation>
        </message>
        <message>
            <source>eight in a row on one side</source>
            <translation>ocho seguidos de un lado</translation>
        </message>
        <message>
            <source>a slow drift</source>
            <translation>un cambio lento</translation>
        </message>
        <message>
            <source>Where the spread comes from</source>
            <translation>De dónde viene la variación</translation>
        </message>
        <message>
            <source>lots</source>
            <translation>lotes</translation>
        </message>
        <message>
            <source>bags of a lot</source>
            <translation>costales de un lote</translation>
        </message>
        <message>
            <source>fills of a bag</source>
            <translation>llenadas de un costal</translation>
        </message>
        <message>
            <source>Standard deviations in percent of a scoopful, with 95 % intervals.</source>
            <translation>Desviaciones estándar en por ciento de una medida, con intervalos del 95 %.</translation>
        </message>
        <message>
            <source>There are too few fills to tell.</source>
            <translation>Hay muy pocas llenadas para saberlo.</translation>
        </message>
        <message>
            <source>What to do</source>
            <translation>Qué hacer</translation>
        </message>
        <message>
            <source>Dip more bags, with fewer fills from each: the bags differ more than the fills of a bag.</source>
            <translation>Tome de más costales, con menos llenadas de cada uno: los costales difieren más que las llenadas de un costal.</translation>
        </message>
        <message>
            <source>Take more fills from each bag: the fills of a bag differ more than the bags.</source>
            <translation>Tome más llenadas de cada costal: las llenadas de un costal difieren más que los costales.</translation>
        </message>
        <message>
            <source>Go on weighing as many bags and fills as now.</source>
            <translation>Siga pesando tantos costales y llenadas como ahora.</translation>
        </message>
        <message>
            <source>Practice the scooping: fills of one bag scatter more than they need to.</source>
            <translation>Practique el llenado: las llenadas de un costal varían más de lo necesario.</translation>
        </message>
        <message>
            <source>Practice the scooping with {who}: these fills scatter more than the others'.</source>
            <translation>Practique el llenado con {who}: sus llenadas varían más que las de los demás.</translation>
        </message>
        <message>
            <source>The scale's step is coarse for one scoopful: weigh several together, or use a finer scale.</source>
            <translation>La división de la báscula es gruesa para una sola medida: pese varias juntas o use una báscula más fina.</translation>
        </message>
        <message>
            <source>Weigh in every new lot before it is fed: an old line does not hold for another powder.</source>
            <translation>Pese cada lote nuevo antes de darlo: una línea anterior no sirve para otro polvo.</translation>
        </message>
        <message>
            <source>Least work for the tolerance of {tolerance}: bags: {bags}, fills from each: {fills}. So far a weigh-in had bags: {usual_bags}, fills from each: {usual_fills}.</source>
            <translation>Lo menos trabajoso para la tolerancia de {tolerance}: costales: {bags}, llenadas de cada uno: {fills}. Hasta ahora se pesaron costales: {usual_bags}, llenadas de cada uno: {usual_fills}.</translation>
        </message>
        <message>
            <source>No check of the mix was kept.</source>
            <translation>No se guardó ninguna revisión de la mezcla.</translation>
        </message>
        <message>
            <source>Weighed in</source>
            <translation>Pesado</translation>
        </message>
        <message>
            <source>From the average</source>
            <translation>Frente al promedio</translation>
        </message>
        <message>
            <source>What stands out</source>
            <translation>Qué llama la atención</translation>
        </message>
        <message>
            <source>Lots, newest first</source>
            <translation>Lotes, el más reciente primero</translation>
        </message>
        <message>
            <source>{count} older ones are in the tables that the program saves.</source>
            <translation>{count} lotes anteriores están en las tablas que guarda el programa.</translation>
        </message>
        <message>
            <source>Densities are weighed, never corrected by humidity. Feed by the product's label; the veterinarian decides for sick calves.</source>
            <translation>Las densidades se pesan, sin corregir por humedad. Siga la etiqueta del producto; con becerras enfermas decide el veterinario.</translation>
        </message>
        <message>
            <source>What a feeding would weigh, the scoop filled as for the lot before</source>
            <translation>Cuánto pesaría una toma si la medida se llenara como con el lote anterior</translation>
        </message>
        <message>
            <source>Filled as for</source>
            <translation>Llena como con</translation>
        </message>
        <message>
            <source>{lot}, level</source>
            <translation>{lot}, al ras</translation>
        </message>
        <message>
            <source>A feeding would be</source>
            <translation>Una toma sería de</translation>
        </message>
        <message>
            <source>Off target</source>
            <translation>Fuera de lo deseado</translation>
        </message>
        <message>
            <source>Solids</source>
            <translation>Sólidos</translation>
        </message>
        <message>
            <source>Powder a day, {currency}</source>
            <translation>Polvo al día, {currency}</translation>
        </message>
        <message>
            <source>It takes two lots signed off with one scoop.</source>
            <translation>Hacen falta dos lotes firmados con la misma medida.</translation>
        </message>
        <message>
            <source>One recipe for all groups: {mix}</source>
            <translation>Una receta para todos los grupos: {mix}</translation>
        </message>
        <message>
            <source>to the {mass} line</source>
            <translation>hasta la línea de {mass}</translation>
        </message>
        <message>
            <source>Worked out as if the scoop were still filled so; where its line was moved, that did not happen. More than 0: powder beyond the target, to be paid for; less than 0: powder that the calves would not have got.</source>
            <translation>Calculado como si la medida se siguiera llenando así; donde se movió la línea, eso no pasó. Más de 0: polvo de más que se paga; menos de 0: polvo que las becerras no habrían recibido.</translation>
        </message>
        <message>
            <source>Weigh as many bags and fills as each weigh-in asks for. After about five lots of one powder this report can tell how few are enough.</source>
            <translation>Pese tantos costales y llenadas como pida cada pesada. Después de unos cinco lotes del mismo polvo, este informe podrá decir con cuántos basta.</translation>
        </message>
        <message>
            <source>Solids and powder a day are not told: no feeding plan is entered.</source>
            <translation>No se dicen los sólidos ni el polvo al día: falta anotar un plan de alimentación.</translation>
        </message>
        <message>
            <source>Powder a day is not told where the price of the lot is not entered.</source>
            <translation>No se dice el polvo al día donde falta anotar el precio del lote.</translation>
        </message>
        <message>
            <source>Powder a day is not told where the weight of the lot's bags is not entered.</source>
            <translation>No se dice el polvo al día donde falta anotar cuánto pesan los costales del lote.</translation>
        </message>
        <message>
            <source>Whether the density changed with it cannot be told from these lots.</source>
            <translation>Con estos lotes no se sabe si con eso cambió la densidad.</translation>
        </message>
        <message>
            <source>too few to tell</source>
            <translation>muy pocos para saberlo</translation>
        </message>
        <message>
            <source>Arrived</source>
            <translation>Llegó</translation>
        </message>
        <message>
            <source>from bags of lot {lot}: {powder}, {how}</source>
            <translation>de los costales del lote {lot}: {powder}, {how}</translation>
        </message>
        <message>
            <source>{count} bags</source>
            <translation>{count} costales</translation>
        </message>
        <message>
            <source>{count} totes</source>
            <translation>{count} supersacos</translation>
        </message>
        <message>
            <source>Print no. {number}</source>
            <translation>Impreso n.º {number}</translation>
        </message>
        <message>
            <source>Print no. {number} · replaces no. {old}</source>
            <translation>Impreso n.º {number} · reemplaza el {old}</translation>
        </message>
        <message>
            <source>Print no. {number} (replaces no. {old})</source>
            <translation>Impreso n.º {number} (reemplaza el {old})</translation>
        </message>
        <message>
            <source>THE LAST OF LOT {lot}</source>
            <translation>LO ÚLTIMO DEL LOTE {lot}</translation>
        </message>
        <message>
            <source>Other lines: worked out, not weighed</source>
            <translation>Las demás líneas: calculadas, no pesadas</translation>
        </message>
        <message>
            <source>in batches: the nearest whole scoopful</source>
            <translation>en tandas: la medida entera más cercana</translation>
        </message>
        <message>
            <source>Lot {lot}: {mass} a level scoopful taken off for the scale.</source>
            <translation>Lote {lot}: {mass} por medida al ras restados por la báscula.</translation>
        </message>
        <message>
            <source>Lot {lot}: {mass} a level scoopful added for the scale.</source>
            <translation>Lote {lot}: {mass} por medida al ras sumados por la báscula.</translation>
        </message>
        <message>
            <source>By the scoop, lot {lot} weighs as much as lot {before}.</source>
            <translation>Por medida, el lote {lot} pesa lo mismo que el lote {before}.</translation>
        </message>
        <message>
            <source>Volumes are rounded to {step}; in small batches the powder goes with them, so the strength holds.</source>
            <translation>Los volúmenes se redondean a {step}; en tandas pequeñas el polvo se ajusta a ellos para que la concentración no cambie.</translation>
        </message>
        <message>
            <source>1/2 to the line: fill to the ½ line on the label; where it has none, by eye or by weight.</source>
            <translation>1/2 hasta la línea: hasta la línea ½ de la etiqueta; si no la hay, a ojo o pesando.</translation>
        </message>
        <message>
            <source>A part of a scoopful without a line is filled by eye; weighing is surer.</source>
            <translation>Una parte de medida sin línea se llena a ojo; es mejor pesar.</translation>
        </message>
        <message>
            <source>All calves</source>
            <translation>Todas las becerras</translation>
        </message>
        <message>
            <source>Group {number}</source>
            <translation>Grupo {number}</translation>
        </message>
        <message>
            <source>Even it at the line with one shake</source>
            <translation>Emparéjela en la línea con una sacudida</translation>
        </message>
        <message>
            <source>{count} struck at the rim + 1 to here</source>
            <translation>{count} al ras del borde + 1 hasta aquí</translation>
        </message>
        <message>
            <source>{count} to here</source>
            <translation>{count} hasta aquí</translation>
        </message>
        <message>
            <source>Bags counted, spot fills and mixes checked</source>
            <translation>Costales contados, llenadas de control y tandas revisadas</translation>
        </message>
        <message>
            <source>Batches checked: {count}. As they were mixed: as it should be: {inside}, looks right: {likely}, probably too thin or too strong: {leaning}, too thin or too strong: {outside}.</source>
            <translation>Tandas revisadas: {count}. Tal como se prepararon: como debe ser: {inside}, parece correcta: {likely}, quizás aguada o fuerte: {leaning}, demasiado aguada o fuerte: {outside}.</translation>
        </message>
        <message>
            <source>Put right and read again: {count}, of which right or likely right then: {right}.</source>
            <translation>Corregidas y vueltas a medir: {count}; de ellas, ya bien o probablemente bien: {right}.</translation>
        </message>
        <message>
            <source>As mixed, on average {off} off target.</source>
            <translation>Tal como se prepararon, en promedio a {off} de lo deseado.</translation>
        </message>
        <message>
            <source>A check tells of its batch; what the calves get over days only bags counted tell.</source>
            <translation>Una revisión habla de su tanda; lo que reciben las becerras en varios días solo lo dicen los costales contados.</translation>
        </message>
        <message>
            <source>By the bags counted, a feeding got on average (from the target): {lots}.</source>
            <translation>Según los costales contados, una toma llevó en promedio (respecto a lo deseado): {lots}.</translation>
        </message>
        <message>
            <source>{lot}: {mass} ({share}, over {count} feedings)</source>
            <translation>{lot}: {mass} ({share}, en {count} tomas)</translation>
        </message>
        <message>
            <source>The line moved from {old} to {new} below the rim.</source>
            <translation>La línea pasó de {old} a {new} bajo el borde.</translation>
        </message>
        <message>
            <source>The line stayed at {new} below the rim.</source>
            <translation>La línea quedó igual, a {new} bajo el borde.</translation>
        </message>
        <message>
            <source>The line was {old} below the rim; now the scoop is used level.</source>
            <translation>La línea estaba a {old} bajo el borde; ahora la medida se usa al ras.</translation>
        </message>
        <message>
            <source>The scoop was used level; now its line is {new} below the rim.</source>
            <translation>La medida se usaba al ras; ahora su línea está a {new} bajo el borde.</translation>
        </message>
        <message>
            <source>The scoop went on being used level.</source>
            <translation>La medida se siguió usando al ras.</translation>
        </message>
        <message>
            <source>Lot {lot} was weighed in anew on {date}.</source>
            <translation>El lote {lot} se pesó otra vez el {date}.</translation>
        </message>
        <message>
            <source>Spot fills from bags opened later: {count}.</source>
            <translation>Llenadas de control de costales abiertos después: {count}.</translation>
        </message>
        <message>
            <source>Spot fills from bags opened later: {count}. By weigh-in and spot fills together, a feeding weighs (from the target): {lots}.</source>
            <translation>Llenadas de control de costales abiertos después: {count}. Según la pesada y las llenadas de control juntas, una toma pesa (respecto a lo deseado): {lots}.</translation>
        </message>
        <message>
            <source>{lot}: {mass} ({share}, spot fills: {fills}), {verdict}</source>
            <translation>{lot}: {mass} ({share}, llenadas de control: {fills}), {verdict}</translation>
        </message>
        <message>
            <source>the mark holds</source>
            <translation>la línea todavía sirve</translation>
        </message>
        <message>
            <source>the mark no longer holds: weigh the lot in anew</source>
            <translation>la línea ya no sirve: pese otra vez el lote</translation>
        </message>
        <message>
            <source>not yet sure whether the mark holds</source>
            <translation>todavía no se sabe si la línea sirve</translation>
        </message>
        <message>
            <source>In use: lot {lot}</source>
            <translation>En uso: lote {lot}</translation>
        </message>
        <message>
            <source>Line below the rim</source>
            <translation>Línea bajo el borde</translation>
        </message>
        <message>
            <source>Additives lighter than {least}: the scale's step is too coarse for them. Use a finer scale, or the product's own spoon.</source>
            <translation>Aditivos de menos de {least}: la división de la báscula es demasiado gruesa para ellos. Use una báscula más fina, o la cucharita del propio producto.</translation>
        </message>
        <message>
            <source>The scale showed {share} too much at the weigh-in: set it right before powder is weighed by it.</source>
            <translation>La báscula marcó {share} de más en la pesada del lote: ajústela antes de pesar polvo con ella.</translation>
        </message>
        <message>
            <source>The scale showed {share} too little at the weigh-in: set it right before powder is weighed by it.</source>
            <translation>La báscula marcó {share} de menos en la pesada del lote: ajústela antes de pesar polvo con ella.</translation>
        </message>
    </context>
</TS>