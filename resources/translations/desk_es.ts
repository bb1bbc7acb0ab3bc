<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>AdditiveEditor</name>
    <message>
        <source>Additive, like “electrolyte”</source>
        <translation>Aditivo, como “electrolito”</translation>
    </message>
    <message>
        <source>Each calf and feeding</source>
        <translation>Por becerra y toma</translation>
    </message>
    <message>
        <source>Fat</source>
        <translation>Grasa</translation>
    </message>
    <message>
        <source>Protein</source>
        <translation>Proteína</translation>
    </message>
    <message>
        <source>Ash, salts</source>
        <translation>Ceniza, sales</translation>
    </message>
    <message>
        <source>mOsm in a gram</source>
        <translation>mOsm por gramo</translation>
    </message>
    <message>
        <source>Leave this additive out</source>
        <translation>Quitar este aditivo</translation>
    </message>
    <message>
        <source>What the label does not tell stays empty: osmolality has a wide give or take then.</source>
        <translation>Lo que la etiqueta no diga queda vacío: la osmolalidad se da entonces con un margen amplio.</translation>
    </message>
</context>
<context>
    <name>App</name>
    <message>
        <source>Opening the records</source>
        <translation>Abriendo los registros</translation>
    </message>
    <message>
        <source>Look without writing</source>
        <translation>Abrir solo para ver</translation>
    </message>
    <message>
        <source>Not kept yet: “{text}”. It is lost when other records are opened. Open them now all the same?</source>
        <translation>Todavía sin guardar: “{text}”. Se pierde al abrir otros registros. ¿Abrirlos ahora de todos modos?</translation>
    </message>
    <message>
        <source>Open them now</source>
        <translation>Abrirlos ahora</translation>
    </message>
    <message>
        <source>{trouble}

Bring over what can be read? What the copies hold is added, the damaged file is set aside and kept, and you are told exactly what is lost.</source>
        <translation>{trouble}

¿Traer lo que se pueda leer? Se agrega lo que tengan las copias, el archivo dañado se aparta y se conserva, y se le dice exactamente qué se perdió.</translation>
    </message>
    <message>
        <source>Bring it over</source>
        <translation>Traerlo</translation>
    </message>
    <message>
        <source>{trouble}

The newest copy is of {day}. Put it back now? What was entered after that moment must be entered again.</source>
        <translation>{trouble}

La copia más reciente es del {day}. ¿Reponerla ahora? Lo que se anotó después de ese momento hay que anotarlo de nuevo.</translation>
    </message>
    <message>
        <source>Put the copy back</source>
        <translation>Reponer la copia</translation>
    </message>
    <message>
        <source>Bringing over what can be read</source>
        <translation>Trayendo lo que se puede leer</translation>
    </message>
    <message>
        <source>Putting the copy back</source>
        <translation>Reponiendo la copia</translation>
    </message>
    <message>
        <source>Not kept yet: “{text}”. It is lost when the language changes. Change it now all the same? Otherwise it changes when the program is started next.</source>
        <translation>Todavía sin guardar: “{text}”. Se pierde al cambiar el idioma. ¿Cambiarlo ahora de todos modos? Si no, cambia la próxima vez que se abra el programa.</translation>
    </message>
    <message>
        <source>Change it now</source>
        <translation>Cambiarlo ahora</translation>
    </message>
    <message>
        <source>This computer&apos;s clock says {now}, and it said {before} earlier. Set day and time right: labels, charts and sheets bear them. What is kept stays in its order.</source>
        <translation>El reloj de esta computadora dice {now}, y antes decía {before}. Ponga bien el día y la hora: las etiquetas, tablas y hojas los llevan. Lo guardado sigue en su orden.</translation>
    </message>
    <message>
        <source>Something in the program went wrong. What you have kept is safe. Go to another page and come back; if it happens again, close the program and start it anew.</source>
        <translation>Algo falló en el programa. Lo que usted ha guardado está a salvo. Vaya a otra página y regrese; si vuelve a pasar, cierre el programa y ábralo de nuevo.</translation>
    </message>
    <message>
        <source>What happened was written to the log, {file}.</source>
        <translation>Lo que pasó quedó anotado en el registro de fallas, {file}.</translation>
    </message>
</context>
<context>
    <name>Ask</name>
    <message>
        <source>Often:</source>
        <translation>Lo común:</translation>
    </message>
    <message>
        <source>This happened {times} times.</source>
        <translation>Esto pasó {times} veces.</translation>
    </message>
    <message>
        <source>Scoop calibration</source>
        <translation>Calibración de medidas</translation>
    </message>
</context>
<context>
    <name>BagPanel</name>
    <message>
        <source>Bags of lot</source>
        <translation>Costales del lote</translation>
    </message>
    <message>
        <source>Counted until</source>
        <translation>Contado hasta</translation>
    </message>
    <message>
        <source>Counted since</source>
        <translation>Se cuenta desde</translation>
    </message>
    <message>
        <source>Bags emptied</source>
        <translation>Costales vaciados</translation>
    </message>
    <message>
        <source>Powder in a bag</source>
        <translation>Polvo en un costal</translation>
    </message>
    <message>
        <source>Feedings made, one calf each</source>
        <translation>Tomas preparadas, de una becerra cada una</translation>
    </message>
    <message>
        <source>Powder of a feeding, on average</source>
        <translation>Polvo de una toma, en promedio</translation>
    </message>
    <message>
        <source>From a bag just opened to a bag just emptied</source>
        <translation>De un costal recién abierto a uno vaciado</translation>
    </message>
    <message>
        <source>&amp;Keep this count</source>
        <translation>&amp;Guardar este conteo</translation>
    </message>
    <message>
        <source>Kept: lot {lot}, {since} to {until}. It stays in view until you type the next count.</source>
        <translation>Guardado: lote {lot}, del {since} al {until}. Queda a la vista hasta que escriba el siguiente conteo.</translation>
    </message>
    <message>
        <source>Lot {lot} came only on {day}: count from that day on, or choose the lot fed before.</source>
        <translation>El lote {lot} llegó apenas el {day}: cuente desde ese día o elija el lote que se usaba antes.</translation>
    </message>
    <message>
        <source>It came on {day}.</source>
        <translation>Llegó el {day}.</translation>
    </message>
    <message>
        <source>Lot {lot} is fed only since {day}. Were these its bags? Better count from that day on.</source>
        <translation>El lote {lot} se usa apenas desde el {day}. ¿Eran costales de este lote? Mejor cuente desde ese día.</translation>
    </message>
    <message>
        <source>Fed only since {day}.</source>
        <translation>Se da apenas desde el {day}.</translation>
    </message>
    <message>
        <source>The line of lot {lot} was signed only on {day}. Better count from that day on.</source>
        <translation>La línea del lote {lot} se firmó apenas el {day}. Mejor cuente desde ese día.</translation>
    </message>
    <message>
        <source>Line signed on {day}.</source>
        <translation>Línea firmada el {day}.</translation>
    </message>
    <message>
        <source>Fill in bags, feedings and both weights.</source>
        <translation>Llene los costales, las tomas y los dos pesos.</translation>
    </message>
    <message>
        <source>The count of bags is kept.</source>
        <translation>El conteo de costales quedó guardado.</translation>
    </message>
    <message>
        <source>The count would end on {day}, before it began.</source>
        <translation>El conteo terminaría el {day}, antes de empezar.</translation>
    </message>
    <message>
        <source>In those days the plans make {most} at most: are the day and the feedings right?</source>
        <translation>En esos días los planes hacen {most} cuando mucho: ¿están bien el día y las tomas?</translation>
    </message>
    <message>
        <source>{count} by the plans of {days}</source>
        <translation>{count} según los planes de {days}</translation>
    </message>
    <message>
        <source>No count yet</source>
        <translation>Todavía no hay conteo</translation>
    </message>
    <message>
        <source>No new count yet</source>
        <translation>Todavía no hay conteo nuevo</translation>
    </message>
    <message>
        <source>Type the bags that were emptied and the feedings made from them.</source>
        <translation>Escriba los costales que se vaciaron y las tomas que se hicieron con ellos.</translation>
    </message>
    <message>
        <source>This cannot be</source>
        <translation>Esto no puede ser</translation>
    </message>
    <message>
        <source>Counted like this, a drift of {drift} would never show: count from a bag just opened.</source>
        <translation>Contando así nunca se notaría una desviación de {drift}: cuente desde un costal recién abierto.</translation>
    </message>
    <message>
        <source>With {feedings} a day, counting for {days} tells whether there is a drift of {drift}, in four cases of five.</source>
        <translation>Con {feedings} al día, contar durante {days} dice si hay una desviación de {drift}, en cuatro de cada cinco casos.</translation>
    </message>
    <message>
        <source>Each feeding got {mean} of powder on average (95 % interval {low} to {high}), {share} {side} the target. A bag lasted {lasted}; it should last {should}.</source>
        <translation>Cada toma llevó {mean} de polvo en promedio (intervalo del 95 % de {low} a {high}), {share} {side} de lo deseado. Un costal rindió {lasted}; debe rendir {should}.</translation>
    </message>
    <message>
        <source>above</source>
        <translation>por encima</translation>
    </message>
    <message>
        <source>below</source>
        <translation>por debajo</translation>
    </message>
    <message>
        <source>Whether that is within the {tolerance} allowed, this count does not tell.</source>
        <translation>Este conteo no dice si eso queda dentro del {tolerance} permitido.</translation>
    </message>
    <message>
        <source>That is surely above the target; whether by more than the {tolerance} allowed, this count does not tell.</source>
        <translation>Eso está sin duda por encima de lo deseado; este conteo no dice si por más del {tolerance} permitido.</translation>
    </message>
    <message>
        <source>That is surely below the target; whether by more than the {tolerance} allowed, this count does not tell.</source>
        <translation>Eso está sin duda por debajo de lo deseado; este conteo no dice si por más del {tolerance} permitido.</translation>
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation>Todavía nada.</translation>
    </message>
    <message>
        <source>With&amp;draw the newest</source>
        <translation>Q&amp;uitar el último conteo</translation>
    </message>
    <message>
        <source>{since} to {until}: bags {bags}, {feedings}, {mean} each ({share})</source>
        <translation>{since} a {until}: costales: {bags}, {feedings}, {mean} cada una ({share})</translation>
    </message>
    <message>
        <source>Why does this count of bags count no more?</source>
        <translation>¿Por qué ya no cuenta este conteo de costales?</translation>
    </message>
    <message>
        <source>What to do: under Today weigh a spot fill of the bag in hand. {watch}</source>
        <translation>Qué hacer: en Hoy pese una llenada de control del costal en uso. {watch}</translation>
    </message>
    <message>
        <source>Counts so far</source>
        <translation>Conteos hasta ahora</translation>
    </message>
</context>
<context>
    <name>BareField</name>
    <message>
        <source>like {example}</source>
        <translation>ej. {example}</translation>
    </message>
    <message>
        <source>mean {mean}</source>
        <translation>promedio {mean}</translation>
    </message>
    <message>
        <source>{count} readings, mean {mean}</source>
        <translation>{count} lecturas, promedio {mean}</translation>
    </message>
</context>
<context>
    <name>BatchCard</name>
    <message>
        <source>The batch</source>
        <translation>La mezcla que se revisa</translation>
    </message>
</context>
<context>
    <name>BatchForm</name>
    <message>
        <source>Mixed by</source>
        <translation>Quién mezcló</translation>
    </message>
    <message>
        <source>Solids wanted, as mixed</source>
        <translation>Sólidos que se quieren en la mezcla</translation>
    </message>
    <message>
        <source>Give or take</source>
        <translation>Más o menos</translation>
    </message>
    <message>
        <source>not one of ours</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>Calves</source>
        <translation>Becerras</translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation>Recipiente</translation>
    </message>
    <message>
        <source>{plan}, all together</source>
        <translation>{plan}, todos los grupos</translation>
    </message>
</context>
<context>
    <name>BatchModel</name>
    <message>
        <source>Calves</source>
        <translation>Becerras</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Powder by weight</source>
        <translation>Polvo (peso)</translation>
    </message>
    <message>
        <source>Scoopfuls</source>
        <translation>Medidas</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Tandas</translation>
    </message>
    <message>
        <source>{calves}, today</source>
        <translation>{calves}, hoy</translation>
    </message>
</context>
<context>
    <name>BothLots</name>
    <message>
        <source>lot {lot}: {powder}, {scoops}</source>
        <translation>lote {lot}: {powder}, {scoops}</translation>
    </message>
    <message>
        <source>Into one batch for {calves}: {parts}.</source>
        <translation>En una sola tanda para {calves}: {parts}.</translation>
    </message>
    <message>
        <source>Into one of the {batches} equal batches for {calves}: {parts}.</source>
        <translation>En una de las {batches} tandas iguales para {calves}: {parts}.</translation>
    </message>
    <message>
        <source>The scoop does not bear the line of lot {lot}: never fill that lot to the other lot&apos;s line.</source>
        <translation>La medida no lleva la línea del lote {lot}: nunca llene ese lote hasta la línea del otro.</translation>
    </message>
    <message>
        <source>Each lot by its own line; weigh the powder of lot {lot} if its line is wiped out.</source>
        <translation>Cada lote con su propia línea; si la del lote {lot} ya está borrada, pese ese polvo.</translation>
    </message>
    <message>
        <source>{count} of lot {lot}</source>
        <translation>{count} del lote {lot}</translation>
    </message>
    <message>
        <source>The line of both lots is at one place: fill to the line from either.</source>
        <translation>La línea de los dos lotes está en el mismo lugar: llene hasta la línea con cualquiera de los dos.</translation>
    </message>
    <message>
        <source>The next chart tells it too; empty the field to leave it out there.</source>
        <translation>La próxima tabla también lo dirá; vacíe el campo para que no salga en ella.</translation>
    </message>
    <message>
        <source>{powder} of lot {lot} stay for the next feeding.</source>
        <translation>Del lote {lot} quedan {powder} para la próxima toma.</translation>
    </message>
    <message>
        <source>{powder} of lot {lot} stay for the next batches.</source>
        <translation>Del lote {lot} quedan {powder} para las próximas tandas.</translation>
    </message>
    <message>
        <source>weigh it</source>
        <translation>péselo</translation>
    </message>
</context>
<context>
    <name>BringIn</name>
    <message>
        <source>Reading {file}</source>
        <translation>Leyendo {file}</translation>
    </message>
    <message>
        <source>The lot number is missing. Write it, or say that an empty cell means the one above.</source>
        <translation>Falta el número de lote. Escríbalo, o diga que una celda vacía significa la de arriba.</translation>
    </message>
    <message>
        <source>Two lots of the records have this number. Correct one of them on the page of the lots.</source>
        <translation>Dos lotes de los registros tienen este número. Corrija uno de ellos en la página de lotes.</translation>
    </message>
    <message>
        <source>Row {row} tells {other} for the same lot. Make both alike.</source>
        <translation>La fila {row} dice {other} del mismo lote. Ponga lo mismo en las dos.</translation>
    </message>
    <message>
        <source>This can be {one} or {other}. Choose the order of this column&apos;s days.</source>
        <translation>Puede ser {one} o {other}. Elija el orden de los días de esta columna.</translation>
    </message>
    <message>
        <source>The spreadsheet has no value here: a formula that was not worked out, or an error. Correct it there and save the file anew.</source>
        <translation>La hoja de cálculo no tiene valor aquí: una fórmula sin calcular o un error. Corríjalo allí y guarde el archivo de nuevo.</translation>
    </message>
    <message>
        <source>This day is still to come. Correct it in the file.</source>
        <translation>Este día todavía no llega. Corríjalo en el archivo.</translation>
    </message>
    <message>
        <source>This day is before the year 2000. Correct it in the file.</source>
        <translation>Este día es anterior al año 2000. Corríjalo en el archivo.</translation>
    </message>
    <message>
        <source>There is no such day in the chosen order. Correct it in the file, or choose another order.</source>
        <translation>No existe tal día en el orden elegido. Corríjalo en el archivo o elija otro orden.</translation>
    </message>
    <message>
        <source>This is no day. Write it like 2026-03-02.</source>
        <translation>Esto no es un día. Escríbalo como 2026-03-02.</translation>
    </message>
    <message>
        <source>The day is missing. Write when it was weighed.</source>
        <translation>Falta el día. Escriba cuándo se pesó.</translation>
    </message>
    <message>
        <source>This is no time of day. Write it like 14:30, or leave it empty.</source>
        <translation>Esto no es una hora. Escríbala como 14:30 o déjela vacía.</translation>
    </message>
    <message>
        <source>This is no number. Write one, or leave the cell empty.</source>
        <translation>Esto no es un número. Escriba uno o deje la celda vacía.</translation>
    </message>
    <message>
        <source>This should be a whole number from {lowest} to {highest}.</source>
        <translation>Debe ser un número entero de {lowest} a {highest}.</translation>
    </message>
    <message>
        <source>Write yes or no, or leave the cell empty.</source>
        <translation>Escriba sí o no, o deje la celda vacía.</translation>
    </message>
    <message>
        <source>This does not say how the scoop was filled. Write level, to the line or tapped.</source>
        <translation>Esto no dice cómo se llenó la medida. Escriba al ras, a la línea o golpeada.</translation>
    </message>
    <message>
        <source>This is no kind of package. Write bag or tote.</source>
        <translation>Esto no es un tipo de envase. Escriba costal o supersaco.</translation>
    </message>
    <message>
        <source>That is less than one percent. Where a fifth is meant, write 20.</source>
        <translation>Es menos de uno por ciento. Si quiere decir una quinta parte, escriba 20.</translation>
    </message>
    <message>
        <source>The empty scoop weighs more than the filled one. Correct one of the two.</source>
        <translation>La medida vacía pesa más que la llena. Corrija una de las dos.</translation>
    </message>
    <message>
        <source>The lot was made after it arrived. Correct one of the two days.</source>
        <translation>El lote se fabricó después de recibirse. Corrija uno de los dos días.</translation>
    </message>
    <message>
        <source>The lot was fed before it was made or arrived. Correct one of the days.</source>
        <translation>El lote se dio antes de fabricarse o recibirse. Corrija uno de los días.</translation>
    </message>
    <message>
        <source>The lot was used up before it arrived or was fed. Correct one of the days.</source>
        <translation>El lote se acabó antes de recibirse o darse. Corrija uno de los días.</translation>
    </message>
    <message>
        <source>The lot was weighed before it was made or arrived, on {day}. Correct one of the days.</source>
        <translation>El lote se pesó antes de fabricarse o recibirse, el {day}. Corrija uno de los días.</translation>
    </message>
    <message>
        <source>Protein, fat, fiber, ash and moisture together are more than 100 %. Correct them.</source>
        <translation>Proteína, grasa, fibra, ceniza y humedad juntas pasan de 100 %. Corríjalas.</translation>
    </message>
    <message>
        <source>The weight of the empty scoop is missing in this row.</source>
        <translation>En esta fila falta el peso de la medida vacía.</translation>
    </message>
    <message>
        <source>No scoopful of this scoop is as light as that. Look at the unit and the scoop.</source>
        <translation>Ninguna llenada de esta medida es tan ligera. Revise la unidad y la medida.</translation>
    </message>
    <message>
        <source>No powder is as heavy as that in this scoop. Look at the unit and the scoop.</source>
        <translation>Ningún polvo pesa tanto en esta medida. Revise la unidad y la medida.</translation>
    </message>
    <message>
        <source>That is more than the chosen scale weighs. Look at the unit and the scale.</source>
        <translation>Es más de lo que pesa la báscula elegida. Revise la unidad y la báscula.</translation>
    </message>
    <message>
        <source>This is longer than {most} letters. Shorten it in the file.</source>
        <translation>Pasa de {most} letras. Acórtelo en el archivo.</translation>
    </message>
    <message>
        <source>There is a letter in it that cannot be kept. Write it anew.</source>
        <translation>Tiene una letra que no se puede guardar. Escríbalo de nuevo.</translation>
    </message>
    <message>
        <source>leave out</source>
        <translation>no traer</translation>
    </message>
    <message>
        <source>Lot number</source>
        <translation>Número de lote</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Plant code</source>
        <translation>Clave de planta</translation>
    </message>
    <message>
        <source>Day it arrived</source>
        <translation>Día en que se recibió</translation>
    </message>
    <message>
        <source>Day it was made</source>
        <translation>Día de fabricación</translation>
    </message>
    <message>
        <source>First day fed</source>
        <translation>Primer día de uso</translation>
    </message>
    <message>
        <source>Last day fed</source>
        <translation>Último día de uso</translation>
    </message>
    <message>
        <source>Bag or tote</source>
        <translation>Costal o supersaco</translation>
    </message>
    <message>
        <source>How many bags came</source>
        <translation>Cuántos costales llegaron</translation>
    </message>
    <message>
        <source>Weight of a bag</source>
        <translation>Peso de un costal</translation>
    </message>
    <message>
        <source>Price of a bag</source>
        <translation>Precio de un costal</translation>
    </message>
    <message>
        <source>Protein, %</source>
        <translation>Proteína, %</translation>
    </message>
    <message>
        <source>Fat, %</source>
        <translation>Grasa, %</translation>
    </message>
    <message>
        <source>Fiber, %</source>
        <translation>Fibra, %</translation>
    </message>
    <message>
        <source>Ash, %</source>
        <translation>Ceniza, %</translation>
    </message>
    <message>
        <source>Moisture, %</source>
        <translation>Humedad, %</translation>
    </message>
    <message>
        <source>Medicated, yes or no</source>
        <translation>Medicado, sí o no</translation>
    </message>
    <message>
        <source>Agglomerated, yes or no</source>
        <translation>Aglomerado, sí o no</translation>
    </message>
    <message>
        <source>Note on the lot</source>
        <translation>Nota sobre el lote</translation>
    </message>
    <message>
        <source>Day of the weighing</source>
        <translation>Día de la pesada</translation>
    </message>
    <message>
        <source>Time of the weighing</source>
        <translation>Hora de la pesada</translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>Number of the bag</source>
        <translation>Número del costal</translation>
    </message>
    <message>
        <source>How it was filled</source>
        <translation>Cómo se llenó</translation>
    </message>
    <message>
        <source>Weight of the powder</source>
        <translation>Peso del polvo</translation>
    </message>
    <message>
        <source>Weight of the filled scoop</source>
        <translation>Peso de la medida llena</translation>
    </message>
    <message>
        <source>Weight of the empty scoop</source>
        <translation>Peso de la medida vacía</translation>
    </message>
    <message>
        <source>Weight as it was typed</source>
        <translation>Peso como se escribió</translation>
    </message>
    <message>
        <source>Scoopfuls weighed together</source>
        <translation>Medidas pesadas juntas</translation>
    </message>
    <message>
        <source>Line, below the rim</source>
        <translation>Línea, bajo el borde</translation>
    </message>
    <message>
        <source>Who weighed</source>
        <translation>Quién pesó</translation>
    </message>
    <message>
        <source>Why it does not count</source>
        <translation>Por qué no cuenta</translation>
    </message>
    <message>
        <source>Name of the weigh-in</source>
        <translation>Nombre de la pesada</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>día, mes, año</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>mes, día, año</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>año, mes, día</translation>
    </message>
    <message>
        <source>decimal point</source>
        <translation>punto decimal</translation>
    </message>
    <message>
        <source>decimal comma</source>
        <translation>coma decimal</translation>
    </message>
    <message>
        <source>struck level</source>
        <translation>al ras</translation>
    </message>
    <message>
        <source>to the line</source>
        <translation>hasta la línea</translation>
    </message>
    <message>
        <source>packed by taps</source>
        <translation>golpeada</translation>
    </message>
    <message>
        <source>all fills of a day from one bag</source>
        <translation>todas las del día de un costal</translation>
    </message>
    <message>
        <source>each fill from another bag</source>
        <translation>cada llenada de otro costal</translation>
    </message>
    <message>
        <source>Row {row} settles it: {text}</source>
        <translation>La fila {row} lo decide: {text}</translation>
    </message>
    <message>
        <source>Say which column is the lot number.</source>
        <translation>Diga qué columna es el número de lote.</translation>
    </message>
    <message>
        <source>Days and bags are told, but no weight. Say which column is the weight, or leave out the bag.</source>
        <translation>Hay días y costales, pero ningún peso. Diga qué columna es el peso, o no traiga la del costal.</translation>
    </message>
    <message>
        <source>Say which column is the day of the weighing.</source>
        <translation>Diga qué columna es el día de la pesada.</translation>
    </message>
    <message>
        <source>Say in which unit “{head}” is.</source>
        <translation>Diga en qué unidad está “{head}”.</translation>
    </message>
    <message>
        <source>Say in which order the days of “{head}” are written.</source>
        <translation>Diga en qué orden están escritos los días de “{head}”.</translation>
    </message>
    <message>
        <source>Say which sign “{head}” has before the decimals.</source>
        <translation>Diga qué signo tiene “{head}” antes de los decimales.</translation>
    </message>
    <message>
        <source>Say from which year the days are counted.</source>
        <translation>Diga desde qué año se cuentan los días.</translation>
    </message>
    <message>
        <source>Say how the scoop was filled.</source>
        <translation>Diga cómo se llenó la medida.</translation>
    </message>
    <message>
        <source>Say from how many bags the fills came.</source>
        <translation>Diga de cuántos costales son las llenadas.</translation>
    </message>
    <message>
        <source>Say which scoop “{head}” is.</source>
        <translation>Diga qué medida es “{head}”.</translation>
    </message>
    <message>
        <source>Say on which scale it was weighed.</source>
        <translation>Diga en qué báscula se pesó.</translation>
    </message>
    <message>
        <source>Type what the empty scoop weighs.</source>
        <translation>Escriba cuánto pesa la medida vacía.</translation>
    </message>
    <message>
        <source>Say who weighed, or who brings this in.</source>
        <translation>Diga quién pesó o quién trae esto.</translation>
    </message>
    <message>
        <source>Say which scoop was weighed.</source>
        <translation>Diga qué medida se pesó.</translation>
    </message>
    <message>
        <source>There is nothing in it that is not in the records already.</source>
        <translation>No hay nada que no esté ya en los registros.</translation>
    </message>
    <message>
        <source>Rows that add up others are left out: {rows}.</source>
        <translation>Se dejan fuera las filas que suman otras: {rows}.</translation>
    </message>
    <message>
        <source>Worked out by formulas, taken with the value that the spreadsheet last had: {names}.</source>
        <translation>Calculado con fórmulas, se toma el último valor que tuvo la hoja de cálculo: {names}.</translation>
    </message>
</context>
<context>
    <name>BringInDialog</name>
    <message>
        <source>Bring in lots and weighings</source>
        <translation>Traer lotes y pesadas</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Bac&amp;k</source>
        <translation>A&amp;trás</translation>
    </message>
    <message>
        <source>Ne&amp;xt</source>
        <translation>&amp;Siguiente</translation>
    </message>
    <message>
        <source>Reading {file}</source>
        <translation>Leyendo {file}</translation>
    </message>
    <message>
        <source>Looking through the rows</source>
        <translation>Revisando las filas</translation>
    </message>
    <message>
        <source>Adding lots and weighings</source>
        <translation>Agregando lotes y pesadas</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>A&amp;gregar</translation>
    </message>
    <message>
        <source>1 of 3: is the table read rightly?</source>
        <translation>1 de 3: ¿se leyó bien la tabla?</translation>
    </message>
    <message>
        <source>2 of 3: what do the columns mean? Nothing is guessed; what is not clear is asked.</source>
        <translation>2 de 3: ¿qué significan las columnas? No se adivina nada; lo que no está claro se pregunta.</translation>
    </message>
    <message>
        <source>3 of 3: this is what it comes to. Nothing is added yet.</source>
        <translation>3 de 3: esto es lo que resulta. Todavía no se agrega nada.</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Medicated powder: the product label and the feed tag say how much, for which calves and for how long; ask the veterinarian before feeding it otherwise. Keep it apart and mark the scoop.</source>
        <translation>Polvo medicado: la etiqueta del producto dice cuánto, a cuáles becerras y por cuánto tiempo; pregunte al veterinario antes de darlo de otro modo. Guárdelo aparte y marque la medida.</translation>
    </message>
</context>
<context>
    <name>ChangeOver</name>
    <message>
        <source>Change over, they stay</source>
        <translation>Cambiar; los costales se quedan</translation>
    </message>
    <message>
        <source>Is any of lot {old} left?</source>
        <translation>¿Queda algo del lote {old}?</translation>
    </message>
    <message>
        <source>Change over, some is left</source>
        <translation>Cambiar; todavía queda algo</translation>
    </message>
    <message>
        <source>What stays is fed again under Lots: Back into use.</source>
        <translation>Lo que quede se puede volver a usar desde Lotes, con “De nuevo en uso”.</translation>
    </message>
    <message>
        <source>Change over, none is left</source>
        <translation>Cambiar; ya no queda nada</translation>
    </message>
    <message>
        <source>Lot {number} will be fed from the next feeding on. From then its lines, labels and wall charts hold, those of lot {old} no more.</source>
        <translation>El lote {number} se usará a partir de la próxima toma. Desde entonces valen sus líneas, etiquetas y tablas de pared; las del lote {old} ya no.</translation>
    </message>
    <message>
        <source>Was the last of lot {number} fed?</source>
        <translation>¿Ya se usó lo último del lote {number}?</translation>
    </message>
    <message>
        <source>Taken back: lot {number} is in use.</source>
        <translation>Deshecho: el lote {number} está en uso.</translation>
    </message>
</context>
<context>
    <name>CheckPanel</name>
    <message>
        <source>Batch for</source>
        <translation>Tanda para</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>&amp;Keep this check</source>
        <translation>&amp;Guardar esta revisión</translation>
    </message>
    <message>
        <source>Clea&amp;r</source>
        <translation>&amp;Borrar</translation>
    </message>
    <message>
        <source>Lot {number} {product}</source>
        <translation>Lote {number} {product}</translation>
    </message>
    <message>
        <source>{lot}, {day} at {time}</source>
        <translation>{lot}, {day} a las {time}</translation>
    </message>
    <message>
        <source>{name}: {state}.</source>
        <translation>{name}: {state}.</translation>
    </message>
    <message>
        <source>The check is kept: {verdict}.</source>
        <translation>La revisión quedó guardada: {verdict}.</translation>
    </message>
    <message>
        <source>no verdict</source>
        <translation>sin resultado</translation>
    </message>
    <message>
        <source>Kept on {day} at {time}. It stays in view until you type the next check.</source>
        <translation>Guardada el {day} a las {time}. Queda a la vista hasta que escriba la próxima revisión.</translation>
    </message>
    <message>
        <source>Look at these first. Then:</source>
        <translation>Revise primero esto. Después:</translation>
    </message>
    <message>
        <source>Look at these first, and type the fresh readings. Once something was added:</source>
        <translation>Vea primero estas cosas y escriba las lecturas nuevas. Cuando haya agregado algo:</translation>
    </message>
    <message>
        <source>Stirred only? Type the fresh drops. Once something was added:</source>
        <translation>¿Solo revolvió? Escriba las gotas nuevas. Cuando haya agregado algo:</translation>
    </message>
    <message>
        <source>When this is done:</source>
        <translation>Cuando esté hecho:</translation>
    </message>
    <message>
        <source>after correcting</source>
        <translation>ya corregida</translation>
    </message>
    <message>
        <source>No lot is in use. Choose below which lot this was mixed from, or sign off a weigh-in; checks are kept for a lot.</source>
        <translation>No hay lote en uso. Elija abajo de qué lote se mezcló, o firme una pesada; las revisiones se guardan para un lote.</translation>
    </message>
    <message>
        <source>A hydrometer or a weighed jug tells the solids too.</source>
        <translation>Los sólidos también se ven con un densímetro o pesando una jarra.</translation>
    </message>
    <message>
        <source>En&amp;ter your instruments</source>
        <translation>Regis&amp;tre sus instrumentos</translation>
    </message>
</context>
<context>
    <name>ColdFields</name>
    <message>
        <source>Below</source>
        <translation>Por debajo de</translation>
    </message>
    <message>
        <source>More powder</source>
        <translation>Más polvo</translation>
    </message>
    <message>
        <source>Further feedings a day</source>
        <translation>Tomas adicionales al día</translation>
    </message>
    <message>
        <source>A further feeding keeps the mix as strong as it is; more powder makes it stronger: watch the osmolality, and ask your veterinarian.</source>
        <translation>Una toma adicional deja la mezcla igual de fuerte; más polvo la hace más fuerte: cuide la osmolalidad y pregunte a su veterinario.</translation>
    </message>
    <message>
        <source>Type below which temperature this holds.</source>
        <translation>Escriba por debajo de qué temperatura se aplica esto.</translation>
    </message>
    <message>
        <source>Say what changes: more powder, or a further feeding.</source>
        <translation>Diga qué cambia: más polvo o una toma adicional.</translation>
    </message>
</context>
<context>
    <name>ColumnsStep</name>
    <message>
        <source>from 1900 (most programs)</source>
        <translation>desde 1900 (casi todos los programas)</translation>
    </message>
    <message>
        <source>from 1904 (old Macs)</source>
        <translation>desde 1904 (Macs antiguas)</translation>
    </message>
    <message>
        <source>Who weighed, where no column tells</source>
        <translation>Quién pesó, si ninguna columna lo dice</translation>
    </message>
    <message>
        <source>Weight of the empty scoop</source>
        <translation>Peso de la medida vacía</translation>
    </message>
    <message>
        <source>An empty lot, day, scoop or name means the one above</source>
        <translation>Lote, día, medida o nombre vacío significa el de arriba</translation>
    </message>
    <message>
        <source>The scoop was filled</source>
        <translation>La medida se llenó</translation>
    </message>
    <message>
        <source>Bags</source>
        <translation>Costales</translation>
    </message>
    <message>
        <source>Weighed on</source>
        <translation>Pesado en</translation>
    </message>
    <message>
        <source>Days are counted</source>
        <translation>Los días se cuentan</translation>
    </message>
    <message>
        <source>All is said. Go on to see what it comes to.</source>
        <translation>No falta nada. Siga para ver qué resulta.</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Columna</translation>
    </message>
    <message>
        <source>Means</source>
        <translation>Significa</translation>
    </message>
    <message>
        <source>Written in</source>
        <translation>Escrito en</translation>
    </message>
    <message>
        <source>First cells</source>
        <translation>Primeras celdas</translation>
    </message>
    <message>
        <source>What “{name}” means</source>
        <translation>Qué significa “{name}”</translation>
    </message>
    <message>
        <source>How “{name}” is written</source>
        <translation>Cómo está escrito “{name}”</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>not known: weights without a density</source>
        <translation>no se sabe: pesos sin densidad</translation>
    </message>
    <message>
        <source>Scoop “{name}” is</source>
        <translation>La medida “{name}” es</translation>
    </message>
    <message>
        <source>Weighed with the scoop</source>
        <translation>Pesado con la medida</translation>
    </message>
    <message>
        <source>The file as a whole</source>
        <translation>El archivo entero</translation>
    </message>
</context>
<context>
    <name>Commands</name>
    <message>
        <source>entering {weight}</source>
        <translation>anotar {weight}</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>deshecha</translation>
    </message>
    <message>
        <source>striking out {weight}</source>
        <translation>tachar {weight}</translation>
    </message>
    <message>
        <source>counting {weight} again</source>
        <translation>contar otra vez {weight}</translation>
    </message>
</context>
<context>
    <name>CountField</name>
    <message>
        <source>Only whole numbers go in here, from {least} to {most}.</source>
        <translation>Aquí solo van números enteros, de {least} a {most}.</translation>
    </message>
</context>
<context>
    <name>DayBar</name>
    <message>
        <source>Feeding</source>
        <translation>Toma</translation>
    </message>
    <message>
        <source>&amp;Feeding</source>
        <translation>&amp;Toma</translation>
    </message>
    <message>
        <source>Feeding {number}</source>
        <translation>Toma {number}</translation>
    </message>
    <message>
        <source>{share} more powder</source>
        <translation>{share} más de polvo</translation>
    </message>
    <message>
        <source>one more feeding</source>
        <translation>una toma más</translation>
    </message>
    <message>
        <source>{count} more feedings</source>
        <translation>{count} tomas más</translation>
    </message>
    <message>
        <source>C&amp;old weather, below {limit}: {what}</source>
        <translation>T&amp;iempo frío, por debajo de {limit}: {what}</translation>
    </message>
</context>
<context>
    <name>DayField</name>
    <message>
        <source>{day} or 2026-03-02</source>
        <translation>{day} o 2026-03-02</translation>
    </message>
    <message>
        <source>This can be read two ways. Write {one} or {other}.</source>
        <translation>Esto se puede leer de dos modos. Escriba {one} o {other}.</translation>
    </message>
    <message>
        <source>Was {day} meant? Then write it like this.</source>
        <translation>¿Quiso decir {day}? Entonces escríbalo así.</translation>
    </message>
    <message>
        <source>{day} is too far ahead.</source>
        <translation>Para el {day} falta demasiado.</translation>
    </message>
    <message>
        <source>{day} is still to come.</source>
        <translation>El {day} todavía no llega.</translation>
    </message>
    <message>
        <source>{day} is too long ago.</source>
        <translation>El {day} es de hace demasiado tiempo.</translation>
    </message>
    <message>
        <source>There is no such day. Write it like {day}.</source>
        <translation>Ese día no existe. Escríbalo como {day}.</translation>
    </message>
    <message>
        <source>Write the day with month and full year, like {day} or 2026-03-02.</source>
        <translation>Escriba el día con el mes y el año completo, como {day} o 2026-03-02.</translation>
    </message>
    <message>
        <source>{one} or {other}?</source>
        <translation>¿{one} o {other}?</translation>
    </message>
    <message>
        <source>{day}?</source>
        <translation>¿{day}?</translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>Sending what waits for the server</source>
        <translation>Enviando lo que espera al servidor</translation>
    </message>
    <message>
        <source>Choose another place</source>
        <translation>Elegir otro lugar</translation>
    </message>
    <message>
        <source>Stopped before it was done.</source>
        <translation>Se detuvo antes de terminar.</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>ExportDialog</name>
    <message>
        <source>Save all figures</source>
        <translation>Guardar todos los datos</translation>
    </message>
    <message>
        <source>One workbook, a sheet for each kind (.xlsx)</source>
        <translation>Un libro, con una hoja por tipo (.xlsx)</translation>
    </message>
    <message>
        <source>A text file for each kind (.csv)</source>
        <translation>Un archivo de texto por tipo (.csv)</translation>
    </message>
    <message>
        <source>Decimal comma, cells parted by semicolons</source>
        <translation>Coma decimal, celdas separadas por punto y coma</translation>
    </message>
    <message>
        <source>Mark the letters as UTF-8, as spreadsheets want it</source>
        <translation>Marcar las letras como UTF-8, como piden las hojas de cálculo</translation>
    </message>
    <message>
        <source>&amp;Save …</source>
        <translation>&amp;Guardar …</translation>
    </message>
    <message>
        <source>Gathering the figures</source>
        <translation>Reuniendo los datos</translation>
    </message>
    <message>
        <source>Writing the figures</source>
        <translation>Escribiendo los datos</translation>
    </message>
    <message>
        <source>Files of these names are there already. Write over them?</source>
        <translation>Ya hay archivos con esos nombres. ¿Escribir sobre ellos?</translation>
    </message>
    <message>
        <source>Write over them</source>
        <translation>Escribir sobre ellos</translation>
    </message>
    <message>
        <source>Workbook (*.xlsx)</source>
        <translation>Libro (*.xlsx)</translation>
    </message>
    <message>
        <source>Text (*.csv)</source>
        <translation>Texto (*.csv)</translation>
    </message>
    <message>
        <source>figures</source>
        <translation>cifras</translation>
    </message>
    <message>
        <source>Lots, sign-offs with intervals and budgets, fills, spot fills, lines, checks of the mix, counts of bags and trials, struck-out ones too. Units stand in the headings; masses are grams.</source>
        <translation>Lotes, firmas con intervalos y cuentas de la incertidumbre, llenadas, llenadas de control, líneas, revisiones de la mezcla, conteos de costales y pruebas, también lo tachado. Las unidades están en los encabezados; los pesos, en gramos.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Budgets are of the newest {count} sign-offs; older ones are left out of that sheet alone.</source>
        <translation>Las cuentas de la incertidumbre son de las {count} firmas más recientes; las anteriores faltan solo en esa hoja.</translation>
    </message>
</context>
<context>
    <name>FarmForm</name>
    <message>
        <source>Name of the farm</source>
        <translation>Nombre del establo</translation>
    </message>
    <message>
        <source>Farm units: oz, lb, qt, gal, in, °F</source>
        <translation>Unidades inglesas: oz, lb, qt, gal, in, °F</translation>
    </message>
    <message>
        <source>Metric: g, kg, L, mm, °C</source>
        <translation>Unidades métricas: g, kg, L, mm, °C</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>The most that a feeding may be off.</source>
        <translation>Lo más que puede desviarse una toma.</translation>
    </message>
    <message>
        <source>Tolerance</source>
        <translation>Tolerancia</translation>
    </message>
    <message>
        <source>The page Today says when no wall chart of a plan is up</source>
        <translation>La página Hoy avisa cuando no hay tabla de pared de un plan</translation>
    </message>
    <message>
        <source>You can always type either, like 10 oz or 280 g. What you typed is kept as typed.</source>
        <translation>Siempre puede escribir en unas u otras, como 10 oz o 280 g. Se guarda tal como lo escribió.</translation>
    </message>
    <message>
        <source>Name of the farm kept: {value}</source>
        <translation>Se guardó el nombre del establo: {value}</translation>
    </message>
    <message>
        <source>Currency kept: {value}</source>
        <translation>Se guardó la moneda: {value}</translation>
    </message>
    <message>
        <source>Units kept. {value}</source>
        <translation>Se guardaron las unidades. {value}</translation>
    </message>
    <message>
        <source>Paper in the printer kept: {value}</source>
        <translation>Se guardó el papel de la impresora: {value}</translation>
    </message>
    <message>
        <source>Kept: Today asks for wall charts.</source>
        <translation>Se guardó: Hoy avisa de las tablas de pared.</translation>
    </message>
    <message>
        <source>Kept: Today asks for no wall chart.</source>
        <translation>Se guardó: Hoy no avisa de las tablas de pared.</translation>
    </message>
    <message>
        <source>Tolerance kept: {value}</source>
        <translation>Se guardó la tolerancia: {value}</translation>
    </message>
    <message>
        <source>Kept: water is measured to {value}</source>
        <translation>Se guardó: el agua se mide a {value}</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Guardado.</translation>
    </message>
    <message>
        <source>Sign or letters: $, MXN.</source>
        <translation>Signo o letras: $, MXN.</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>Water is measured to</source>
        <translation>El agua se mide a</translation>
    </message>
    <message>
        <source>Numbers are shown in</source>
        <translation>Los números se muestran en</translation>
    </message>
    <message>
        <source>Paper in the printer</source>
        <translation>Papel de la impresora</translation>
    </message>
</context>
<context>
    <name>FarmStep</name>
    <message>
        <source>Name of the farm</source>
        <translation>Nombre del establo</translation>
    </message>
    <message>
        <source>Farm units: oz, lb, qt, gal, in, °F</source>
        <translation>Unidades inglesas: oz, lb, qt, gal, in, °F</translation>
    </message>
    <message>
        <source>Metric: g, kg, L, mm, °C</source>
        <translation>Unidades métricas: g, kg, L, mm, °C</translation>
    </message>
    <message>
        <source>Either can be typed at any time, and the choice can be changed later.</source>
        <translation>Se puede escribir en unas u otras en cualquier momento, y esto se puede cambiar después.</translation>
    </message>
    <message>
        <source>Numbers are shown in</source>
        <translation>Los números se muestran en</translation>
    </message>
    <message>
        <source>Paper comes in it too; Set-up has a choice for paper.</source>
        <translation>El papel sale en el mismo; en Ajustes se elige otro.</translation>
    </message>
    <message>
        <source>Weigh every new lot</source>
        <translation>Pesar cada lote nuevo</translation>
    </message>
    <message>
        <source>Draw its line</source>
        <translation>Trazar su línea</translation>
    </message>
    <message>
        <source>Mix by its chart</source>
        <translation>Mezclar según su tabla</translation>
    </message>
</context>
<context>
    <name>FarmsDialog</name>
    <message>
        <source>A product across farms</source>
        <translation>Un producto entre establos</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>FarmsMenu</name>
    <message>
        <source>Farms</source>
        <translation>Establos</translation>
    </message>
    <message>
        <source>Choose another farm, or add one</source>
        <translation>Elegir otro establo o agregar uno</translation>
    </message>
    <message>
        <source>What is the further farm called?</source>
        <translation>¿Cómo se llama el otro establo?</translation>
    </message>
    <message>
        <source>Add a farm …</source>
        <translation>Agregar un establo …</translation>
    </message>
    <message>
        <source>Compare a product across farms …</source>
        <translation>Comparar un producto entre establos …</translation>
    </message>
    <message>
        <source>There is a farm named {name} already. Give the further one a name of its own.</source>
        <translation>Ya hay un establo llamado {name}. Dele al otro un nombre propio.</translation>
    </message>
</context>
<context>
    <name>FarmsPanel</name>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>No product was weighed in on two farms yet. Products count as one where their names are the same.</source>
        <translation>Todavía ningún producto se pesó en dos establos. Los productos cuentan como uno si se llaman igual.</translation>
    </message>
    <message>
        <source>Farm</source>
        <translation>Establo</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>Between lots</source>
        <translation>Entre lotes</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Promedio</translation>
    </message>
    <message>
        <source>95 %</source>
        <translation>95 %</translation>
    </message>
    <message>
        <source>The product on each farm</source>
        <translation>El producto en cada establo</translation>
    </message>
    <message>
        <source>No lot was weighed on two of these farms. One that both weigh under its number would tell whether powder or weighing differs.</source>
        <translation>Ningún lote se pesó en dos de estos establos. Uno que ambos pesen con su número diría si difiere el polvo o la forma de pesar.</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} a {high}</translation>
    </message>
    <message>
        <source>{first} and {second}: a farm with one lot cannot be compared yet.</source>
        <translation>{first} y {second}: un establo con un solo lote todavía no se puede comparar.</translation>
    </message>
    <message>
        <source>{first} and {second}: no difference can be told from {lots}.</source>
        <translation>{first} y {second}: de {lots} no se puede distinguir ninguna diferencia.</translation>
    </message>
    <message>
        <source>At {second} it is {share} denser than at {first}, more than the lots&apos; spread explains.</source>
        <translation>En {second} es {share} más denso que en {first}, más de lo que explica la dispersión de los lotes.</translation>
    </message>
    <message>
        <source>At {second} it is {share} lighter than at {first}, more than the lots&apos; spread explains.</source>
        <translation>En {second} es {share} más ligero que en {first}, más de lo que explica la dispersión de los lotes.</translation>
    </message>
    <message>
        <source>Lot {lot}, the same powder: {one} at {first}, {other} at {second}. They weigh it differently: compare scoops, scales and how level is struck.</source>
        <translation>Lote {lot}, el mismo polvo: {one} en {first}, {other} en {second}. Lo pesan distinto: compare medidas, básculas y cómo se rasa.</translation>
    </message>
    <message>
        <source>Lot {lot}, the same powder: {one} at {first}, {other} at {second}. They agree.</source>
        <translation>Lote {lot}, el mismo polvo: {one} en {first}, {other} en {second}. Coinciden.</translation>
    </message>
</context>
<context>
    <name>FedFromQuestion</name>
    <message>
        <source>Choose …</source>
        <translation>Elija …</translation>
    </message>
    <message>
        <source>Fed from which feeding?</source>
        <translation>¿Desde qué toma se usará este lote?</translation>
    </message>
    <message>
        <source>Fed from this day on</source>
        <translation>Se usa desde este día</translation>
    </message>
    <message>
        <source>Fed from this feeding on</source>
        <translation>Se usa desde esta toma</translation>
    </message>
    <message>
        <source>Fe&amp;d from which feeding?</source>
        <translation>¿Des&amp;de qué toma se usará este lote?</translation>
    </message>
    <message>
        <source>Not yet: lot {old} is fed until it is finished</source>
        <translation>Todavía no: se sigue con el lote {old} hasta que se acabe</translation>
    </message>
    <message>
        <source>From the next feeding</source>
        <translation>Desde la toma siguiente</translation>
    </message>
    <message>
        <source>From a day and feeding</source>
        <translation>Desde otro día</translation>
    </message>
</context>
<context>
    <name>FeedingRow</name>
    <message>
        <source>Feeding, like “noon”</source>
        <translation>Toma, como “mediodía”</translation>
    </message>
    <message>
        <source>Volume of this feeding</source>
        <translation>Volumen de esta toma</translation>
    </message>
    <message>
        <source>On the same volume. Empty: the group&apos;s.</source>
        <translation>Sobre el mismo volumen. Vacío: el del grupo.</translation>
    </message>
    <message>
        <source>Powder, if other</source>
        <translation>Polvo, si es otro</translation>
    </message>
    <message>
        <source>Leave this feeding out</source>
        <translation>Quitar esta toma</translation>
    </message>
</context>
<context>
    <name>FillPlot</name>
    <message>
        <source>Each fill becomes a point here; behind them lie the mean and its 95 % interval.</source>
        <translation>Aquí cada llenada será un punto; detrás quedan el promedio y su intervalo del 95 %.</translation>
    </message>
    <message>
        <source>a shape for each bag, corrected</source>
        <translation>un símbolo por costal, con la corrección</translation>
    </message>
    <message>
        <source>a shape for each bag</source>
        <translation>un símbolo por costal</translation>
    </message>
    <message>
        <source>struck out</source>
        <translation>tachada</translation>
    </message>
    <message>
        <source>Plot of {fills}</source>
        <translation>Gráfica de {fills}</translation>
    </message>
    <message>
        <source>Plot of {fills}, mean {mean}, 95 % interval {low} to {high}</source>
        <translation>Gráfica de {fills}, promedio {mean}, intervalo del 95 % de {low} a {high}</translation>
    </message>
</context>
<context>
    <name>FillTable</name>
    <message>
        <source>No.</source>
        <translation>N.º</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Costal</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>look again</source>
        <translation>revisar</translation>
    </message>
    <message>
        <source>struck out: {reason}</source>
        <translation>tachada: {reason}</translation>
    </message>
    <message>
        <source>odd</source>
        <translation>dudosa</translation>
    </message>
    <message>
        <source>{count} scoopfuls together</source>
        <translation>{count} medidas a la vez</translation>
    </message>
</context>
<context>
    <name>FillsModel</name>
    <message>
        <source>Bag</source>
        <translation>Costal</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Llenada</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Pesó</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Struck out because</source>
        <translation>Por qué se tachó</translation>
    </message>
    <message>
        <source>spot fill</source>
        <translation>llenada de control</translation>
    </message>
    <message>
        <source>{weight} for {count} scoopfuls</source>
        <translation>{weight} de {count} medidas</translation>
    </message>
</context>
<context>
    <name>FindingsPanel</name>
    <message>
        <source>Nothing was weighed here.</source>
        <translation>Aquí no se pesó nada.</translation>
    </message>
    <message>
        <source>{mean_of}
between {low} and {high}
(95 % interval)</source>
        <translation>{mean_of}
entre {low} y {high}
(intervalo del 95 %)</translation>
    </message>
    <message>
        <source>Mean of {fills}, ± {mass} (95 %)</source>
        <translation>Promedio de {fills}, ± {mass} (95 %)</translation>
    </message>
    <message>
        <source>One more scoopful may weigh {low} to {high}.</source>
        <translation>Una medida más puede pesar de {low} a {high}.</translation>
    </message>
    <message>
        <source>The fills lie so far apart that one of them looks wrong.</source>
        <translation>Las llenadas están tan lejos una de otra que alguna parece estar mal.</translation>
    </message>
</context>
<context>
    <name>Glossary</name>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Bags that were made together; the number stands on the bag. Each lot has its own density.</source>
        <translation>Costales hechos juntos; el número está en el costal. Cada lote tiene su propia densidad.</translation>
    </message>
    <message>
        <source>Bulk density</source>
        <translation>Densidad aparente</translation>
    </message>
    <message>
        <source>Weight of loose powder by volume. Where it changes, the same scoop holds another weight.</source>
        <translation>Peso del polvo suelto por volumen. Si cambia, la misma medida lleva otro peso.</translation>
    </message>
    <message>
        <source>Agglomerated</source>
        <translation>Aglomerado</translation>
    </message>
    <message>
        <source>Made into larger, airy grains so that it wets fast. Such powder is lighter by the scoop.</source>
        <translation>Hecho en granos más grandes y aireados para que se moje rápido. Ese polvo pesa menos por medida.</translation>
    </message>
    <message>
        <source>Settling</source>
        <translation>Asentamiento</translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>The cup, can or dipper that the powder is measured with.</source>
        <translation>El cucharón, bote o vaso con que se mide el polvo.</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Pesada</translation>
    </message>
    <message>
        <source>Weighing scoopfuls of a new lot from several bags, drawing the line, and checking it.</source>
        <translation>Pesar medidas de un lote nuevo de varios costales, trazar la línea y comprobarla.</translation>
    </message>
    <message>
        <source>Level fill</source>
        <translation>Llenada al ras</translation>
    </message>
    <message>
        <source>A scoop heaped, then struck off at the rim with a straight edge, not tapped.</source>
        <translation>Una medida colmada y rasada al borde con una regla, sin golpear.</translation>
    </message>
    <message>
        <source>Line, or fill mark</source>
        <translation>Línea de llenado</translation>
    </message>
    <message>
        <source>How far to fill the scoop so that it holds the target weight of this lot.</source>
        <translation>Hasta dónde llenar la medida para que lleve el peso deseado de este lote.</translation>
    </message>
    <message>
        <source>Fill to the line</source>
        <translation>Llenada hasta la línea</translation>
    </message>
    <message>
        <source>How much denser or looser powder lies, shaken even at the line, than struck at the rim.</source>
        <translation>Cuánto más apretado o más suelto queda el polvo sacudido hasta la línea que rasado al borde.</translation>
    </message>
    <message>
        <source>Dipped a little over the line, then one shake from side to side, so that the powder lies even there.</source>
        <translation>Se llena un poco por encima de la línea y se da una sacudida de lado a lado, para que el polvo quede parejo en ella.</translation>
    </message>
    <message>
        <source>18 to the line</source>
        <translation>18 hasta la línea</translation>
    </message>
    <message>
        <source>18 scoopfuls, each filled to the line. 4 × 18 to the line: 4 batches of 18 scoopfuls each.</source>
        <translation>18 medidas, cada una llena hasta la línea. 4 × 18 hasta la línea: 4 tandas de 18 medidas cada una.</translation>
    </message>
    <message>
        <source>Target weight</source>
        <translation>Peso deseado</translation>
    </message>
    <message>
        <source>The powder that one calf should get at one feeding. The bag&apos;s label or your veterinarian tells it.</source>
        <translation>El polvo que debe recibir una becerra en una toma. Lo dice la etiqueta del costal o el veterinario.</translation>
    </message>
    <message>
        <source>Two groups, two weights</source>
        <translation>Dos grupos, dos pesos</translation>
    </message>
    <message>
        <source>Where groups get different weights the target is what most calves get, and the line is drawn for it. The other groups are counted in scoopfuls to the same line (half as much again is 1 1/2 scoopfuls a calf), or to a line of their own where the label has one. Batch tables and the wall chart count them for the whole batch.</source>
        <translation>Si los grupos reciben pesos distintos, el peso deseado es el de la mayoría de las becerras y la línea se traza para ese. Los otros grupos se cuentan en medidas hasta la misma línea (si a un grupo le toca una vez y media ese peso, son 1 1/2 medidas por becerra), o hasta una línea propia si la etiqueta la lleva. Las tablas y la tabla de pared las cuentan para toda la tanda.</translation>
    </message>
    <message>
        <source>Half a scoopful, 1 1/2</source>
        <translation>Media medida, 1 1/2</translation>
    </message>
    <message>
        <source>1 1/2 to the line: one scoopful to the line, then one to the half line, ½, which the label can have too. It holds half the target weight; half way down the scoop would be something else. The plan says whether half scoopfuls are allowed.</source>
        <translation>1 1/2 hasta la línea: una medida hasta la línea y luego una hasta la línea de la mitad, ½, que la etiqueta puede llevar también. Ahí cabe la mitad del peso deseado; la mitad de la altura sería otra cosa. El plan dice si se permiten medias medidas.</translation>
    </message>
    <message>
        <source>Tolerance</source>
        <translation>Tolerancia</translation>
    </message>
    <message>
        <source>How far from the target a feeding may be before it matters. Usual: 2 %.</source>
        <translation>Cuánto puede apartarse una toma de lo deseado antes de que importe. Lo usual: 2 %.</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>Intervalo del 95 %</translation>
    </message>
    <message>
        <source>Where the true figure lies, going by the fills: right 19 times out of 20.</source>
        <translation>Dónde está la cifra verdadera según las llenadas: acierta 19 de 20 veces.</translation>
    </message>
    <message>
        <source>Struck out</source>
        <translation>Tachada</translation>
    </message>
    <message>
        <source>A fill that does not count, with the reason. It stays in the records.</source>
        <translation>Una llenada que no cuenta, con el motivo. Queda en los registros.</translation>
    </message>
    <message>
        <source>Check weight</source>
        <translation>Pesa de control</translation>
    </message>
    <message>
        <source>A weight that you know for sure. It shows how far off the scale is.</source>
        <translation>Una pesa de peso conocido. Muestra cuánto falla la báscula.</translation>
    </message>
    <message>
        <source>Sign-off</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>The weigh-in is done and frozen: from here labels and tables go by it.</source>
        <translation>La pesada está terminada y fija: a partir de aquí las etiquetas y tablas se rigen por ella.</translation>
    </message>
    <message>
        <source>Change-over</source>
        <translation>Cambio de lote</translation>
    </message>
    <message>
        <source>The feeding from which the next lot is fed. From there its line and its charts hold.</source>
        <translation>La toma desde la que se usa el lote siguiente. Desde ahí valen su línea y sus tablas.</translation>
    </message>
    <message>
        <source>Spot fill</source>
        <translation>Llenada de control</translation>
    </message>
    <message>
        <source>One scoopful weighed when another bag is opened, to see whether the line still holds.</source>
        <translation>Una medida pesada al abrir otro costal, para ver si la línea todavía sirve.</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Calves that are fed alike: as much of the same mix. Each has its own table.</source>
        <translation>Becerras que se alimentan igual: la misma mezcla, la misma cantidad. Cada grupo tiene su tabla.</translation>
    </message>
    <message>
        <source>Several batches, 2 ×</source>
        <translation>Varias tandas, 2 ×</translation>
    </message>
    <message>
        <source>One feeding mixed in two batches, because all of it would run over the vessel.</source>
        <translation>Una sola toma mezclada en dos tandas, porque toda junta no cabe en el recipiente.</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Tanda</translation>
    </message>
    <message>
        <source>What is mixed at once in one vessel, for one or many calves.</source>
        <translation>Lo que se mezcla de una vez en un recipiente, para una o muchas becerras.</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>Dosis</translation>
    </message>
    <message>
        <source>How much powder to how much water, or to how much finished mix. They are not the same: ask which.</source>
        <translation>Cuánto polvo por cuánta agua, o por cuánta mezcla terminada. No es lo mismo: pregunte cuál.</translation>
    </message>
    <message>
        <source>Solids</source>
        <translation>Sólidos</translation>
    </message>
    <message>
        <source>Powder as a share of the mix by weight. Whole milk has about 12.5 %.</source>
        <translation>El polvo como parte del peso de la mezcla. La leche entera tiene cerca de 12.5 %.</translation>
    </message>
    <message>
        <source>Too thin, too strong</source>
        <translation>Demasiado aguada, demasiado fuerte</translation>
    </message>
    <message>
        <source>Less, or more, powder in the mix than is wanted. The mix check says how to put it right.</source>
        <translation>La mezcla lleva menos polvo, o más, de lo que se desea. La revisión de la mezcla dice cómo corregirla.</translation>
    </message>
    <message>
        <source>Dry matter</source>
        <translation>Materia seca</translation>
    </message>
    <message>
        <source>Solids without the few percent of water that powder itself holds. Laboratories tell this one.</source>
        <translation>Los sólidos sin la poca agua que trae el polvo mismo. Es lo que dan los laboratorios.</translation>
    </message>
    <message>
        <source>Osmolality</source>
        <translation>Osmolalidad</translation>
    </message>
    <message>
        <source>How much is dissolved in the water of the mix; cow&apos;s milk has about 300 mOsm/kg. Too much draws water into the gut and can scour a calf. How much that is, is not agreed on: some advice says 400, other 600. The label and your veterinarian decide.</source>
        <translation>Cuánto hay disuelto en el agua de la mezcla; la leche de vaca tiene unos 300 mOsm/kg. Demasiado jala agua al intestino y puede dar diarrea. No hay acuerdo en cuánto es demasiado: unos dicen 400, otros 600. Deciden la etiqueta y su veterinario.</translation>
    </message>
    <message>
        <source>Brix</source>
        <translation>Brix</translation>
    </message>
    <message>
        <source>What a refractometer reads: degrees made for sugar water. Milk needs a correction.</source>
        <translation>Lo que marca un refractómetro: grados hechos para agua con azúcar. La leche necesita una corrección.</translation>
    </message>
    <message>
        <source>Other instruments for the mix check</source>
        <translation>Otros instrumentos para revisar la mezcla</translation>
    </message>
    <message>
        <source>A hydrometer that floats in the mix, or a jug that you fill with mix and weigh, tell the solids too: enter them under Mix check, Instruments, and the check has their fields. The volume of the finished mix, and bags counted under Bags, need no instrument.</source>
        <translation>Un densímetro que flota en la mezcla, o una jarra que se llena de mezcla y se pesa, también dicen los sólidos: regístrelos en Revisar mezcla, Instrumentos, y la revisión tendrá sus campos. El volumen de la mezcla ya hecha y los costales contados en Costales no necesitan instrumento.</translation>
    </message>
    <message>
        <source>Brix calibration</source>
        <translation>Calibración Brix</translation>
    </message>
    <message>
        <source>A line from two or more mixes that you weighed and read: it turns this refractometer&apos;s reading of this powder into solids.</source>
        <translation>Una recta de dos o más mezclas que usted pesó y leyó: convierte en sólidos la lectura de este refractómetro con este polvo.</translation>
    </message>
</context>
<context>
    <name>GridFields</name>
    <message>
        <source>Labels abreast</source>
        <translation>Etiquetas a lo ancho</translation>
    </message>
    <message>
        <source>Labels down the sheet</source>
        <translation>Etiquetas a lo largo</translation>
    </message>
    <message>
        <source>Width of a label</source>
        <translation>Ancho de una etiqueta</translation>
    </message>
    <message>
        <source>Height of a label</source>
        <translation>Alto de una etiqueta</translation>
    </message>
    <message>
        <source>Left margin</source>
        <translation>Margen izquierdo</translation>
    </message>
    <message>
        <source>Top margin</source>
        <translation>Margen de arriba</translation>
    </message>
    <message>
        <source>Next one across</source>
        <translation>La siguiente a lo ancho</translation>
    </message>
    <message>
        <source>Left edge to left edge</source>
        <translation>De borde izquierdo a borde izquierdo</translation>
    </message>
    <message>
        <source>Next one down</source>
        <translation>La siguiente hacia abajo</translation>
    </message>
    <message>
        <source>Top edge to top edge</source>
        <translation>De borde superior a borde superior</translation>
    </message>
    <message>
        <source>Labels gone already</source>
        <translation>Etiquetas ya usadas</translation>
    </message>
</context>
<context>
    <name>GroupEditor</name>
    <message>
        <source>Leave this group out</source>
        <translation>Quitar este grupo</translation>
    </message>
    <message>
        <source>Name, like “under two weeks”</source>
        <translation>Nombre, como “menos de dos semanas”</translation>
    </message>
    <message>
        <source>Finished mix</source>
        <translation>Mezcla terminada</translation>
    </message>
    <message>
        <source>Water, powder on top</source>
        <translation>Agua, el polvo aparte</translation>
    </message>
    <message>
        <source>Calves</source>
        <translation>Becerras</translation>
    </message>
    <message>
        <source>Feedings a day</source>
        <translation>Tomas al día</translation>
    </message>
    <message>
        <source>How many calves</source>
        <translation>Cuántas becerras</translation>
    </message>
    <message>
        <source>Volume for each calf and feeding</source>
        <translation>Volumen por becerra y toma</translation>
    </message>
    <message>
        <source>Add an additive</source>
        <translation>Agregar un aditivo</translation>
    </message>
    <message>
        <source>Add a feeding that differs</source>
        <translation>Agregar una toma distinta</translation>
    </message>
    <message>
        <source>Add a step</source>
        <translation>Agregar un paso</translation>
    </message>
    <message>
        <source>Day 1 of these calves</source>
        <translation>Día 1 de estas becerras</translation>
    </message>
    <message>
        <source>More about this group: additives, feedings that differ, steps to weaning</source>
        <translation>Más de este grupo: aditivos, tomas distintas, pasos hasta el destete</translation>
    </message>
    <message>
        <source>Less about this group</source>
        <translation>Menos de este grupo</translation>
    </message>
    <message>
        <source>Group {number}</source>
        <translation>Grupo {number}</translation>
    </message>
    <message>
        <source>Leave group {number} out</source>
        <translation>Quitar el grupo {number}</translation>
    </message>
    <message>
        <source>Type how many.</source>
        <translation>Escriba cuántas.</translation>
    </message>
    <message>
        <source>Choose which of the two the volume is.</source>
        <translation>Elija cuál de los dos es el volumen.</translation>
    </message>
    <message>
        <source>Additives change how strong the mix is and how fast a stomach empties: follow the product label, and ask your veterinarian.</source>
        <translation>Los aditivos cambian qué tan fuerte es la mezcla y qué tan rápido se vacía el estómago: siga la etiqueta del producto y pregunte a su veterinario.</translation>
    </message>
    <message>
        <source>Steps: from a day of the calves on they get another volume, up or down to weaning. Before the first step they get what stands above.</source>
        <translation>Pasos: desde un día de las becerras reciben otro volumen, más o menos hasta el destete. Antes del primer paso reciben lo de arriba.</translation>
    </message>
    <message>
        <source>Type the day that counts as day 1, so that the steps find their days.</source>
        <translation>Escriba el día que cuenta como día 1, para que los pasos encuentren sus días.</translation>
    </message>
    <message>
        <source>Today is their day {day}.</source>
        <translation>Hoy es su día {day}.</translation>
    </message>
    <message>
        <source>The lot was signed off for {target} a feeding; the table says how many scoopfuls that is.</source>
        <translation>El lote se firmó para {target} por toma; la tabla dice cuántas medidas tocan.</translation>
    </message>
    <message>
        <source>Choose one: it decides how much powder each calf gets.</source>
        <translation>Elija uno: de eso depende cuánto polvo recibe cada becerra.</translation>
    </message>
    <message>
        <source>Choose one: {volume} of mix has {water} of water and {powder} of powder in it; {volume} of water becomes {mix} with {on_top} of powder.</source>
        <translation>Elija uno: en {volume} de mezcla hay {water} de agua y {powder} de polvo; {volume} de agua con {on_top} de polvo dan {mix}.</translation>
    </message>
    <message>
        <source>Each calf gets {water} of water; with its powder it drinks {mix} of mix.</source>
        <translation>A cada becerra le tocan {water} de agua; con su polvo toma {mix} de mezcla.</translation>
    </message>
    <message>
        <source>Each calf drinks {mix} of mix: {water} of water and its powder.</source>
        <translation>Cada becerra toma {mix} de mezcla: {water} de agua y su polvo.</translation>
    </message>
    <message>
        <source>This volume is</source>
        <translation>Este volumen es de</translation>
    </message>
    <message>
        <source>= {powder} of powder per calf and feeding, {solids} solids</source>
        <translation>= {powder} de polvo por becerra y toma, {solids} de sólidos</translation>
    </message>
    <message>
        <source>Two steps on one day.</source>
        <translation>Dos pasos el mismo día.</translation>
    </message>
    <message>
        <source>The lot in use was signed off for {target} a feeding. Look at both volumes.</source>
        <translation>El lote en uso se firmó para {target} por toma. Revise los dos volúmenes.</translation>
    </message>
</context>
<context>
    <name>Hands</name>
    <message>
        <source>Powder dust irritates: pour low, keep your face away, and air the room. Medicated powder: gloves and mask as its label says, and wash your hands.</source>
        <translation>El polvo en el aire irrita: vierta desde poca altura, aparte la cara y ventile. Polvo medicado: guantes y mascarilla como dice la etiqueta, y lávese las manos.</translation>
    </message>
    <message>
        <source>Get the scale ready</source>
        <translation>Prepare la báscula</translation>
    </message>
    <message>
        <source>Stand it level, out of the draft. Empty scoop on, press zero: it reads 0.</source>
        <translation>Póngala nivelada y sin corriente de aire. Con la medida vacía encima, oprima cero: marca 0.</translation>
    </message>
    <message>
        <source>Put a known weight on, such as a full sealed pack. It should read what it is.</source>
        <translation>Ponga un peso conocido, como un paquete lleno y sellado. Debe marcar lo que es.</translation>
    </message>
    <message>
        <source>Set out four bags of the lot, from different places of the delivery.</source>
        <translation>Aparte cuatro costales del lote, de distintos lugares de la entrega.</translation>
    </message>
    <message>
        <source>Lift with your knees; ask for a second pair of hands for heavy bags.</source>
        <translation>Al levantar, doble las rodillas; pida ayuda con los costales pesados.</translation>
    </message>
    <message>
        <source>Strike a scoop level</source>
        <translation>Rase una medida</translation>
    </message>
    <message>
        <source>Stir the powder up a little, dip, and lift the scoop heaped.</source>
        <translation>Revuelva un poco el polvo, hunda la medida y sáquela colmada.</translation>
    </message>
    <message>
        <source>Draw a straight edge over the rim once: a ruler or the back of a knife.</source>
        <translation>Pase una vez algo recto sobre el borde: una regla o el lomo de un cuchillo.</translation>
    </message>
    <message>
        <source>No tapping, no pressing, no setting down hard: it packs the powder.</source>
        <translation>Sin golpes, sin apretar, sin asentarla con fuerza: eso compacta el polvo.</translation>
    </message>
    <message>
        <source>Set the scoop on the zeroed scale, read it, type, press Enter.</source>
        <translation>Ponga la medida sobre la báscula en cero, lea, escriba y oprima Enter.</translation>
    </message>
    <message>
        <source>Draw the line</source>
        <translation>Trace la línea</translation>
    </message>
    <message>
        <source>Measure from the rim down along the wall, inside or outside, not straight down.</source>
        <translation>Mida desde el borde hacia abajo por la pared, por dentro o por fuera, no en vertical.</translation>
    </message>
    <message>
        <source>Bring the scoop to eye level and draw the line all round, as thin as you can.</source>
        <translation>Suba la medida a la altura de los ojos y trace la línea alrededor, lo más fina posible.</translation>
    </message>
    <message>
        <source>Write the lot on the scoop beside it, and wipe out the old line.</source>
        <translation>Escriba el lote junto a ella en la medida y borre la línea anterior.</translation>
    </message>
    <message>
        <source>Use a marker that the wash does not take off and that may touch feed.</source>
        <translation>Use un marcador que no se borre al lavar y que pueda tocar alimento.</translation>
    </message>
    <message>
        <source>Fill to the line</source>
        <translation>Llene hasta la línea</translation>
    </message>
    <message>
        <source>Dip a little over the line.</source>
        <translation>Hunda hasta un poco más arriba de la línea.</translation>
    </message>
    <message>
        <source>One shake from side to side, always the same, so that the powder lies even.</source>
        <translation>Una sacudida de lado a lado, siempre igual, para que el polvo quede parejo.</translation>
    </message>
    <message>
        <source>Read at eye level. Take out or add until the powder stands at the line.</source>
        <translation>Lea a la altura de los ojos. Quite o agregue hasta que el polvo llegue a la línea.</translation>
    </message>
    <message>
        <source>Mix a batch</source>
        <translation>Mezcle una tanda</translation>
    </message>
    <message>
        <source>Draw the water first and measure its temperature.</source>
        <translation>Primero el agua: sírvala y mida su temperatura.</translation>
    </message>
    <message>
        <source>Powder on the water, whisk until no lumps are left, do not whip froth into it.</source>
        <translation>El polvo sobre el agua; bata hasta que no queden grumos, sin hacer espuma.</translation>
    </message>
    <message>
        <source>Read the level, and check the mix: refractometer, hydrometer or a weighed jug.</source>
        <translation>Lea el nivel y revise la mezcla: con refractómetro, con densímetro o pesando una jarra.</translation>
    </message>
    <message>
        <source>Hot water scalds: over 120 °F (49 °C) it burns skin in minutes, hotter in seconds. Feed at the temperature on the product&apos;s label. With young or sick calves ask your veterinarian.</source>
        <translation>El agua caliente quema: a más de 49 °C (120 °F) quema la piel en minutos, más caliente en segundos. Dé la mezcla a la temperatura de la etiqueta del producto. Con becerras chicas o enfermas pregunte a su veterinario.</translation>
    </message>
    <message>
        <source>Show me how</source>
        <translation>Muéstreme cómo</translation>
    </message>
</context>
<context>
    <name>HappenedPanel</name>
    <message>
        <source>Mix &amp;checks beneath</source>
        <translation>R&amp;evisiones de la mezcla abajo</translation>
    </message>
    <message>
        <source>&amp;Open the lot</source>
        <translation>A&amp;brir el lote</translation>
    </message>
    <message>
        <source>Show &amp;all</source>
        <translation>Most&amp;rar todo</translation>
    </message>
    <message>
        <source>Densities over time; Left and Right go from lot to lot, Enter opens</source>
        <translation>Densidades en el tiempo; Izquierda y Derecha van de lote en lote, Enter abre</translation>
    </message>
    <message>
        <source>Density, {unit}</source>
        <translation>Densidad, {unit}</translation>
    </message>
    <message>
        <source>Nothing to compare yet</source>
        <translation>Todavía no hay nada que comparar</translation>
    </message>
    <message>
        <source>Here every lot that is signed off stands with its density, so that you see how far lots differ and what a new one does to a feeding. It begins with the first sign-off.</source>
        <translation>Aquí aparece cada lote firmado con su densidad, para que vea cuánto difieren los lotes y qué efecto tiene uno nuevo en una toma. Empieza con la primera firma.</translation>
    </message>
    <message>
        <source>Lot {lot} is the first one weighed in: {density}.</source>
        <translation>El lote {lot} es el primero que se pesó: {density}.</translation>
    </message>
    <message>
        <source>The next lot will show here how far it is from this one.</source>
        <translation>El próximo lote mostrará aquí cuánto se aparta de este.</translation>
    </message>
    <message>
        <source>Limits are drawn from the third lot on.</source>
        <translation>Los límites se dibujan desde el tercer lote.</translation>
    </message>
    <message>
        <source>It went on being used level.</source>
        <translation>Se siguió usando al ras.</translation>
    </message>
    <message>
        <source>It could have gone on being used level.</source>
        <translation>Se podía seguir usando al ras.</translation>
    </message>
    <message>
        <source>Level was no longer the right weight.</source>
        <translation>Al ras ya no daba el peso correcto.</translation>
    </message>
    <message>
        <source>Whether level was still right, the fills do not tell.</source>
        <translation>Las llenadas no dicen si al ras seguía siendo correcto.</translation>
    </message>
    <message>
        <source>That line stayed.</source>
        <translation>Esa línea se quedó.</translation>
    </message>
    <message>
        <source>That line stayed, though it had to move.</source>
        <translation>Esa línea se quedó, aunque tenía que moverse.</translation>
    </message>
    <message>
        <source>That line stayed. Whether it was right, the fills do not tell.</source>
        <translation>Esa línea se quedó. Las llenadas no dicen si era la correcta.</translation>
    </message>
    <message>
        <source>That line has to move at the change-over.</source>
        <translation>Esa línea tiene que moverse al cambiar de lote.</translation>
    </message>
    <message>
        <source>That line could have stayed.</source>
        <translation>Esa línea podía quedarse.</translation>
    </message>
    <message>
        <source>That line had to move.</source>
        <translation>Esa línea tenía que moverse.</translation>
    </message>
    <message>
        <source>Whether that line could have stayed, the fills do not tell.</source>
        <translation>Las llenadas no dicen si esa línea podía quedarse.</translation>
    </message>
    <message>
        <source>Nothing out of the ordinary: lots of one kind differ as they always did.</source>
        <translation>Nada fuera de lo común: los lotes de una misma clase difieren como siempre.</translation>
    </message>
    <message>
        <source>Solids off their target, check by check</source>
        <translation>Desviación de los sólidos, revisión por revisión</translation>
    </message>
    <message>
        <source>Mix off, %</source>
        <translation>Mezcla, ± %</translation>
    </message>
    <message>
        <source>{first} – {last}</source>
        <translation>{first} – {last}</translation>
    </message>
    <message>
        <source>arrived</source>
        <translation>llegaron</translation>
    </message>
    <message>
        <source>were made</source>
        <translation>se hicieron</translation>
    </message>
    <message>
        <source>were weighed in</source>
        <translation>se pesaron</translation>
    </message>
    <message>
        <source>struck level</source>
        <translation>al ras</translation>
    </message>
    <message>
        <source>filled to the line</source>
        <translation>hasta la línea</translation>
    </message>
    <message>
        <source>What happened, newest first</source>
        <translation>Qué pasó, lo más reciente primero</translation>
    </message>
    <message>
        <source>Period: Left and Right move it, plus and minus change it, Home shows all</source>
        <translation>Periodo: Izquierda y Derecha lo mueven, más y menos lo cambian, Inicio muestra todo</translation>
    </message>
    <message>
        <source>Lots stand at the &amp;day they</source>
        <translation>Los lotes van en el &amp;día en que</translation>
    </message>
    <message>
        <source>&amp;Powder</source>
        <translation>Pol&amp;vo</translation>
    </message>
</context>
<context>
    <name>HelpPage</name>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>&amp;Find</source>
        <translation>&amp;Buscar</translation>
    </message>
    <message>
        <source>Find in the help</source>
        <translation>Buscar en la ayuda</translation>
    </message>
    <message>
        <source>Parts of the help</source>
        <translation>Partes de la ayuda</translation>
    </message>
    <message>
        <source>&amp;How it is done</source>
        <translation>Cómo se &amp;hace</translation>
    </message>
    <message>
        <source>&amp;What the words mean</source>
        <translation>&amp;Qué significan las palabras</translation>
    </message>
    <message>
        <source>&amp;Manual</source>
        <translation>&amp;Manual</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Lo que se encontró</translation>
    </message>
    <message>
        <source>No place has all of these words. These have some of them:</source>
        <translation>Ningún lugar tiene todas estas palabras. Estos tienen algunas:</translation>
    </message>
    <message>
        <source>Nothing in the help has these words. Try others.</source>
        <translation>Nada en la ayuda tiene estas palabras. Pruebe con otras.</translation>
    </message>
</context>
<context>
    <name>History</name>
    <message>
        <source>brought in from {file}</source>
        <translation>traído de {file}</translation>
    </message>
    <message>
        <source>change-over</source>
        <translation>cambio de lote</translation>
    </message>
    <message>
        <source>today&apos;s count</source>
        <translation>conteo de hoy</translation>
    </message>
    <message>
        <source>water weighed</source>
        <translation>se pesó agua</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>registrado</translation>
    </message>
    <message>
        <source>other entries</source>
        <translation>otros datos</translation>
    </message>
    <message>
        <source>changed {what}</source>
        <translation>se cambió: {what}</translation>
    </message>
    <message>
        <source>{what} {old} → {new}</source>
        <translation>{what} {old} → {new}</translation>
    </message>
    <message>
        <source>fed from {day} on</source>
        <translation>se usa desde el {day}</translation>
    </message>
    <message>
        <source>its change-over was taken back</source>
        <translation>se deshizo el cambio a él</translation>
    </message>
    <message>
        <source>another lot took over on that day</source>
        <translation>ese mismo día otro lote tomó su lugar</translation>
    </message>
    <message>
        <source>fed from another feeding of that day on</source>
        <translation>se usa desde otra toma de ese día</translation>
    </message>
    <message>
        <source>waits for its change-over</source>
        <translation>espera el cambio de lote</translation>
    </message>
    <message>
        <source>waits no longer for its change-over</source>
        <translation>ya no espera el cambio de lote</translation>
    </message>
    <message>
        <source>its line is on {scoop}</source>
        <translation>su línea está en {scoop}</translation>
    </message>
    <message>
        <source>its line is no longer on {scoop}</source>
        <translation>su línea ya no está en {scoop}</translation>
    </message>
    <message>
        <source>its line is still to come on the scoop</source>
        <translation>su línea falta en la medida</translation>
    </message>
    <message>
        <source>counts no more, because: {reason}</source>
        <translation>ya no cuenta, porque: {reason}</translation>
    </message>
    <message>
        <source>counts again</source>
        <translation>vuelve a contar</translation>
    </message>
    <message>
        <source>taken up again</source>
        <translation>retomada</translation>
    </message>
    <message>
        <source>opened again</source>
        <translation>abierta de nuevo</translation>
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
        <source>farm units</source>
        <translation>inglesas</translation>
    </message>
    <message>
        <source>metric</source>
        <translation>métricas</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>bags</source>
        <translation>costales</translation>
    </message>
    <message>
        <source>totes</source>
        <translation>supersacos</translation>
    </message>
    <message>
        <source>bags and their weight</source>
        <translation>costales y su peso</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volumen</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>units</source>
        <translation>unidades</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>papel</translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation>tolerancia</translation>
    </message>
    <message>
        <source>display step</source>
        <translation>división</translation>
    </message>
    <message>
        <source>capacity</source>
        <translation>capacidad</translation>
    </message>
    <message>
        <source>shape and dimensions</source>
        <translation>forma y dimensiones</translation>
    </message>
    <message>
        <source>volume by water</source>
        <translation>volumen con agua</translation>
    </message>
    <message>
        <source>how far it may be filled</source>
        <translation>hasta dónde se puede llenar</translation>
    </message>
    <message>
        <source>in use or retired</source>
        <translation>en uso o retirado</translation>
    </message>
    <message>
        <source>lot number</source>
        <translation>número de lote</translation>
    </message>
    <message>
        <source>product</source>
        <translation>producto</translation>
    </message>
    <message>
        <source>made on</source>
        <translation>día de fabricación</translation>
    </message>
    <message>
        <source>arrived on</source>
        <translation>día en que se recibió</translation>
    </message>
    <message>
        <source>label composition</source>
        <translation>composición de la etiqueta</translation>
    </message>
    <message>
        <source>medicated or not</source>
        <translation>medicado o no</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>finished or not</source>
        <translation>terminado o no</translation>
    </message>
    <message>
        <source>bags counted</source>
        <translation>costales contados</translation>
    </message>
    <message>
        <source>hot water</source>
        <translation>agua caliente</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>proveedor</translation>
    </message>
    <message>
        <source>plant code</source>
        <translation>clave de planta</translation>
    </message>
    <message>
        <source>agglomerated or not</source>
        <translation>aglomerado o no</translation>
    </message>
    <message>
        <source>price</source>
        <translation>precio</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>moneda</translation>
    </message>
    <message>
        <source>wall charts asked for or not</source>
        <translation>si se piden tablas de pared</translation>
    </message>
    <message>
        <source>what to know it by</source>
        <translation>cómo se reconoce</translation>
    </message>
    <message>
        <source>which scoop it replaces</source>
        <translation>a qué medida sustituye</translation>
    </message>
    <message>
        <source>protein</source>
        <translation>proteína</translation>
    </message>
    <message>
        <source>fat</source>
        <translation>grasa</translation>
    </message>
    <message>
        <source>ash</source>
        <translation>ceniza</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>counts of calves</source>
        <translation>números de becerras</translation>
    </message>
    <message>
        <source>groups</source>
        <translation>grupos</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>recipiente</translation>
    </message>
    <message>
        <source>how scoopfuls are counted</source>
        <translation>cómo se cuentan las medidas</translation>
    </message>
    <message>
        <source>warmth</source>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>cold weather</source>
        <translation>clima frío</translation>
    </message>
    <message>
        <source>fiber</source>
        <translation>fibra</translation>
    </message>
    <message>
        <source>how it cools</source>
        <translation>cómo se enfría</translation>
    </message>
    <message>
        <source>division of its scale</source>
        <translation>división de su escala</translation>
    </message>
    <message>
        <source>temperature it is made for</source>
        <translation>temperatura para la que está hecho</translation>
    </message>
    <message>
        <source>step of the water, qt</source>
        <translation>de cuánto en cuánto se mide el agua, qt</translation>
    </message>
    <message>
        <source>step of the water, L</source>
        <translation>de cuánto en cuánto se mide el agua, L</translation>
    </message>
    <message>
        <source>allowance for hoses and pails</source>
        <translation>extra para mangueras y cubetas</translation>
    </message>
    <message>
        <source>temperature of the water, °C</source>
        <translation>temperatura del agua, °C</translation>
    </message>
    <message>
        <source>kind of instrument</source>
        <translation>tipo de instrumento</translation>
    </message>
    <message>
        <source>corrects for temperature or not</source>
        <translation>si corrige la temperatura</translation>
    </message>
    <message>
        <source>target weight</source>
        <translation>peso deseado</translation>
    </message>
    <message>
        <source>check weight</source>
        <translation>pesa de control</translation>
    </message>
    <message>
        <source>check weight as shown</source>
        <translation>lo que marcó la pesa de control</translation>
    </message>
    <message>
        <source>line found</source>
        <translation>línea encontrada</translation>
    </message>
    <message>
        <source>line drawn</source>
        <translation>línea trazada</translation>
    </message>
    <message>
        <source>step</source>
        <translation>paso</translation>
    </message>
    <message>
        <source>by whom</source>
        <translation>quién</translation>
    </message>
    <message>
        <source>scoop</source>
        <translation>medida</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>báscula</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>humidity of the room</source>
        <translation>humedad del cuarto</translation>
    </message>
    <message>
        <source>temperature of the room, °C</source>
        <translation>temperatura del cuarto, °C</translation>
    </message>
    <message>
        <source>scale zeroed</source>
        <translation>báscula en cero</translation>
    </message>
    <message>
        <source>line filled to</source>
        <translation>línea hasta la que se llenó</translation>
    </message>
    <message>
        <source>given up</source>
        <translation>abandonada</translation>
    </message>
    <message>
        <source>came with everything in {file}</source>
        <translation>llegó con todo lo de {file}</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrada</translation>
    </message>
    <message>
        <source>all together</source>
        <translation>todos juntos</translation>
    </message>
    <message>
        <source>bags {bags}</source>
        <translation>costales: {bags}</translation>
    </message>
    <message>
        <source>{day}, lot {lot}</source>
        <translation>{day}, lote {lot}</translation>
    </message>
    <message>
        <source>{which}, {feeder}</source>
        <translation>{which}, {feeder}</translation>
    </message>
    <message>
        <source>{which}: no solids read, wanted {wanted}.</source>
        <translation>{which}: no se midieron sólidos, se deseaba {wanted}.</translation>
    </message>
    <message>
        <source>{which}: {solids} solids, wanted {wanted}. {verdict}.</source>
        <translation>{which}: {solids} de sólidos, se deseaba {wanted}. {verdict}.</translation>
    </message>
    <message>
        <source>{since} to {day}, lot {lot}, {batch}, {feedings}: {powder} each, wanted {wanted}. {verdict}.</source>
        <translation>{since} a {day}, lote {lot}, {batch}, {feedings}: {powder} cada una, se deseaba {wanted}. {verdict}.</translation>
    </message>
    <message>
        <source>{feeder} {share} (give or take {half}, {checks})</source>
        <translation>{feeder} {share} (más o menos {half}, {checks})</translation>
    </message>
    <message>
        <source>Mixed too strong by {who}: mix a batch together.</source>
        <translation>Quien mezcla demasiado fuerte: {who}. Preparen juntos una mezcla.</translation>
    </message>
    <message>
        <source>Mixed too thin by {who}: mix a batch together.</source>
        <translation>Quien mezcla demasiado aguado: {who}. Preparen juntos una mezcla.</translation>
    </message>
    <message>
        <source>Read again with nothing added: {count}. Of such a batch the last reading counts.</source>
        <translation>Medidas otra vez sin agregarles nada: {count}. De esas tandas cuenta la última lectura.</translation>
    </message>
    <message>
        <source>Read again after it was put right: {count}. Such a check counts neither in the running mean nor for who mixed.</source>
        <translation>Medidas otra vez después de corregirlas: {count}. Esas revisiones no cuentan ni en el promedio móvil ni para quien mezcló.</translation>
    </message>
    <message>
        <source>On average off target: {feeders}.</source>
        <translation>En promedio, fuera de lo deseado: {feeders}.</translation>
    </message>
</context>
<context>
    <name>HistoryList</name>
    <message>
        <source>What was kept</source>
        <translation>Lo que se guardó</translation>
    </message>
    <message>
        <source>Show all that was kept</source>
        <translation>Mostrar todo lo guardado</translation>
    </message>
    <message>
        <source>{day}, {who}</source>
        <translation>{day}, {who}</translation>
    </message>
    <message>
        <source>{when}: {what}</source>
        <translation>{when}: {what}</translation>
    </message>
    <message>
        <source>{told} ({why})</source>
        <translation>{told} ({why})</translation>
    </message>
</context>
<context>
    <name>HistoryModel</name>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Tanda</translation>
    </message>
    <message>
        <source>Mixed by</source>
        <translation>Quién mezcló</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Hallado</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Deseado</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Resultado</translation>
    </message>
</context>
<context>
    <name>HistoryPanel</name>
    <message>
        <source>Sa&amp;ve as a table …</source>
        <translation>Guardar ta&amp;bla …</translation>
    </message>
    <message>
        <source>With&amp;draw …</source>
        <translation>Q&amp;uitar …</translation>
    </message>
    <message>
        <source>all lots</source>
        <translation>todos los lotes</translation>
    </message>
    <message>
        <source>everyone</source>
        <translation>todos</translation>
    </message>
    <message>
        <source>Checks over time; the table beneath has the figures</source>
        <translation>Revisiones en el tiempo; la tabla de abajo tiene las cifras</translation>
    </message>
    <message>
        <source>off target, %</source>
        <translation>desvío, %</translation>
    </message>
    <message>
        <source>Here every check stands by its day, so that a lot that is off is found out by the checks. With a Brix calibration and three drops a check, 5 % too much powder is found after about four checks, 8 % after one or two; 2 % often not within a dozen: count the bags too.</source>
        <translation>Aquí queda cada revisión en su día, y así las revisiones descubren un lote desviado. Con una calibración Brix y tres gotas por revisión, 5 % de polvo de más se descubre en unas cuatro revisiones, 8 % en una o dos; 2 % muchas veces ni en doce: cuente también los costales.</translation>
    </message>
    <message>
        <source>The mix of lot {lot} is off since its first check.</source>
        <translation>La mezcla del lote {lot} no es la deseada desde su primera revisión.</translation>
    </message>
    <message>
        <source>Note: {note}.</source>
        <translation>Nota: {note}.</translation>
    </message>
    <message>
        <source>No, another &amp;batch</source>
        <translation>No, es &amp;otra tanda</translation>
    </message>
    <message>
        <source>No, the same &amp;batch</source>
        <translation>No, es la &amp;misma tanda</translation>
    </message>
    <message>
        <source>mix checks</source>
        <translation>revisiones de mezcla</translation>
    </message>
    <message>
        <source>looks right or leans, not sure yet</source>
        <translation>parece correcta o se inclina; aún no se sabe bien</translation>
    </message>
    <message>
        <source>Checks of the mix and counts of bags, newest first</source>
        <translation>Revisiones de la mezcla y conteos de costales, lo más reciente primero</translation>
    </message>
    <message>
        <source>No check yet</source>
        <translation>Todavía no hay revisiones</translation>
    </message>
    <message>
        <source>Saving the checks as a table</source>
        <translation>Guardando las revisiones como tabla</translation>
    </message>
    <message>
        <source>No solids were read in these checks</source>
        <translation>En estas revisiones no se leyeron sólidos</translation>
    </message>
    <message>
        <source>Nothing unusual in the checks of lot {lot}.</source>
        <translation>Nada raro en las revisiones del lote {lot}.</translation>
    </message>
    <message>
        <source>Lot {lot}: {off} of {all} checks off target, without a lasting shift so far.</source>
        <translation>Lote {lot}: {off} de {all} revisiones fuera de lo deseado; hasta ahora no se ve un cambio que se quede.</translation>
    </message>
    <message>
        <source>Lot {lot}, by the bags: {verdict}, {share} a feeding.</source>
        <translation>Lote {lot}, según los costales: {verdict}, {share} por toma.</translation>
    </message>
    <message>
        <source>The mix of lot {lot} has shifted: since check {since} its running mean is beyond the limits.</source>
        <translation>La mezcla del lote {lot} se desvió: desde la revisión {since} su promedio móvil está fuera de los límites.</translation>
    </message>
    <message>
        <source>Taken together, the checks of lot {lot} show a shift; no single one is sure of it.</source>
        <translation>Tomadas juntas, las revisiones del lote {lot} muestran un cambio; ninguna por sí sola lo demuestra.</translation>
    </message>
    <message>
        <source>The newest check of lot {lot} is further off than checks scatter; together they show no shift so far. Check again.</source>
        <translation>La última revisión del lote {lot} se aparta más de lo que suelen variar; juntas no muestran un cambio hasta ahora. Revise otra vez.</translation>
    </message>
    <message>
        <source>The newest check of lot {lot} reads too thin, but is not sure. Check again.</source>
        <translation>La última revisión del lote {lot} parece aguada, pero todavía no se sabe bien. Revise otra vez.</translation>
    </message>
    <message>
        <source>The newest check of lot {lot} reads too strong, but is not sure. Check again.</source>
        <translation>La última revisión del lote {lot} parece fuerte, pero todavía no se sabe bien. Revise otra vez.</translation>
    </message>
    <message>
        <source>Lot {lot}: {leaning} of {all} checks to either side, not surely. Not enough to say.</source>
        <translation>Lote {lot}: {leaning} de {all} revisiones quizás desviadas, a uno y otro lado. Todavía no alcanza para decirlo.</translation>
    </message>
    <message>
        <source>Lot {lot}: {leaning} of {all} checks on the thin side, not surely. Not enough to say.</source>
        <translation>Lote {lot}: {leaning} de {all} revisiones quizás aguadas. Todavía no alcanza para decirlo.</translation>
    </message>
    <message>
        <source>Lot {lot}: {leaning} of {all} checks on the strong side, not surely. Not enough to say.</source>
        <translation>Lote {lot}: {leaning} de {all} revisiones quizás fuertes. Todavía no alcanza para decirlo.</translation>
    </message>
    <message>
        <source>Taken to be the same batch, read again: it was read within {hours} h.</source>
        <translation>Se toma por la misma tanda, medida otra vez: se midió en menos de {hours} h.</translation>
    </message>
    <message>
        <source>Taken to be the same batch, put right: it was read within {hours} h.</source>
        <translation>Se toma por la misma tanda, ya corregida: se midió en menos de {hours} h.</translation>
    </message>
    <message>
        <source>The same batch as the one before it, read again.</source>
        <translation>La misma tanda que la anterior, medida otra vez.</translation>
    </message>
    <message>
        <source>Read again after it was put right.</source>
        <translation>Se midió otra vez después de corregirla.</translation>
    </message>
    <message>
        <source>Another batch than the one before it.</source>
        <translation>Otra tanda que la anterior.</translation>
    </message>
    <message>
        <source>It was read again later, and that counts.</source>
        <translation>Se midió otra vez después, y cuenta esa lectura.</translation>
    </message>
    <message>
        <source>Save the checks as a table</source>
        <translation>Guardar las revisiones como tabla</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabla (*.csv)</translation>
    </message>
    <message>
        <source>Why does this check count no more?</source>
        <translation>¿Por qué ya no cuenta esta revisión?</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>too thin</source>
        <translation>demasiado aguada</translation>
    </message>
    <message>
        <source>too strong</source>
        <translation>demasiado fuerte</translation>
    </message>
    <message>
        <source>bags counted over those days</source>
        <translation>costales contados en esos días</translation>
    </message>
    <message>
        <source>running mean of the lot</source>
        <translation>promedio móvil del lote</translation>
    </message>
    <message>
        <source>its limits</source>
        <translation>sus límites</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Mixed by</source>
        <translation>Quién mezcló</translation>
    </message>
</context>
<context>
    <name>HotWaterForm</name>
    <message>
        <source>Hot water in the tank</source>
        <translation>Agua caliente en el tanque</translation>
    </message>
    <message>
        <source>How hot it is</source>
        <translation>Qué tan caliente está</translation>
    </message>
    <message>
        <source>Cold water</source>
        <translation>Agua fría</translation>
    </message>
    <message>
        <source>With these three the tables say how much hot and cold water to blend, and when the tank will not do.</source>
        <translation>Con estos tres, las tablas dicen cuánta agua caliente y fría mezclar, y cuándo el tanque no alcanza.</translation>
    </message>
    <message>
        <source>Not kept yet: the three go together.</source>
        <translation>Sin guardar: van los tres juntos.</translation>
    </message>
    <message>
        <source>The hot water must be warmer than the cold water.</source>
        <translation>El agua caliente tiene que estar más caliente que la fría.</translation>
    </message>
    <message>
        <source>Hot water kept.</source>
        <translation>Se guardó el agua caliente.</translation>
    </message>
    <message>
        <source>Hot water is no longer told.</source>
        <translation>Se borró el agua caliente.</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Guardado.</translation>
    </message>
</context>
<context>
    <name>How</name>
    <message>
        <source>The weight of a scoopful</source>
        <translation>El peso de una medida</translation>
    </message>
    <message>
        <source>The mean of the bags. How far it may be off follows from how bags and fills differ.</source>
        <translation>El promedio de los costales. Cuánto puede fallar se sabe por lo que difieren costales y llenadas.</translation>
    </message>
    <message>
        <source>Bags of the lot dipped into</source>
        <translation>Costales del lote de los que se tomó</translation>
    </message>
    <message>
        <source>they leave no doubt about themselves: how bags differ counts for the others alone</source>
        <translation>de esos no queda duda: cuánto varían los costales cuenta solo por los demás</translation>
    </message>
    <message>
        <source>Bulk density</source>
        <translation>Densidad aparente</translation>
    </message>
    <message>
        <source>level scoopful ÷ volume of the scoop to its rim: {mass} ÷ {volume}</source>
        <translation>medida al ras ÷ volumen de la medida hasta el borde: {mass} ÷ {volume}</translation>
    </message>
    <message>
        <source>The drops, corrected for their instrument, are turned into solids. What is not known for sure adds up to the interval, and the interval is held against the target.</source>
        <translation>Las gotas, corregidas por su instrumento, se pasan a sólidos. Lo que no se sabe bien hace más ancho el intervalo, y el intervalo se compara con lo deseado.</translation>
    </message>
    <message>
        <source>Solids of the mix, as mixed</source>
        <translation>Sólidos de la mezcla</translation>
    </message>
    <message>
        <source>mean of the drops {shown}, less {taken_off} for zero and temperature</source>
        <translation>promedio de las gotas {shown}, menos {taken_off} por el cero y la temperatura</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Solids</source>
        <translation>Sólidos</translation>
    </message>
    <message>
        <source>whole milk: {slope} × reading + {intercept}, brought to powder as fed</source>
        <translation>leche entera: {slope} × lectura + {intercept}, cambiado a peso de polvo</translation>
    </message>
    <message>
        <source>powder on the chart ÷ (powder + water that leaves room for it in the volume)</source>
        <translation>polvo de la tabla ÷ (polvo + el agua que cabe con él en el volumen)</translation>
    </message>
    <message>
        <source>{way}: density of the mix against that of water, by the room that the powder takes</source>
        <translation>{way}: densidad de la mezcla contra la del agua, por el lugar que ocupa el polvo</translation>
    </message>
    <message>
        <source>Brix calibration turned round: (reading {intercept}) ÷ {slope}, from {count} weighed mixes</source>
        <translation>calibración Brix al revés: (lectura {intercept}) ÷ {slope}, de {count} mezclas pesadas</translation>
    </message>
    <message>
        <source>spread of one reading ÷ √{count}: {spread} ÷ √{count}</source>
        <translation>dispersión de una lectura ÷ √{count}: {spread} ÷ √{count}</translation>
    </message>
    <message>
        <source>Doubt: how the readings differ</source>
        <translation>Incertidumbre: cómo difieren las lecturas</translation>
    </message>
    <message>
        <source>Doubt: instrument and way</source>
        <translation>Incertidumbre: instrumento y método</translation>
    </message>
    <message>
        <source>what more readings would not lessen: zero, scale, temperature, the way itself</source>
        <translation>lo que más lecturas no reducen: cero, escala, temperatura, el método mismo</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>Intervalo del 95 %</translation>
    </message>
    <message>
        <source>times Student&apos;s t for so many degrees of freedom</source>
        <translation>por la t de Student para esos grados de libertad</translation>
    </message>
    <message>
        <source>{low} to {high} against {target} ± {tolerance}</source>
        <translation>{low} a {high} contra {target} ± {tolerance}</translation>
    </message>
    <message>
        <source>from the two doubts above, added as squares: standard uncertainty {u}</source>
        <translation>de las dos incertidumbres de arriba, sumadas cuadráticamente: incertidumbre estándar {u}</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} a {high}</translation>
    </message>
    <message>
        <source>Bag {number}</source>
        <translation>Costal {number}</translation>
    </message>
    <message>
        <source>mean of its fills ({fills})</source>
        <translation>promedio de sus llenadas ({fills})</translation>
    </message>
    <message>
        <source>Mean of the bags</source>
        <translation>Promedio de los costales</translation>
    </message>
    <message>
        <source>every bag counts the same: {sum}</source>
        <translation>cada costal cuenta lo mismo: {sum}</translation>
    </message>
    <message>
        <source>All doubts together</source>
        <translation>Todas las incertidumbres juntas</translation>
    </message>
    <message>
        <source>added as squares; {degrees} degrees of freedom</source>
        <translation>sumadas cuadráticamente; {degrees} grados de libertad</translation>
    </message>
    <message>
        <source>The powder that the scoop holds struck level, by the room that it has there.</source>
        <translation>El polvo que cabe en la medida al ras, entre el lugar que tiene ahí.</translation>
    </message>
    <message>
        <source>Corrected for the scale</source>
        <translation>Corregido por la báscula</translation>
    </message>
    <message>
        <source>less what the scale reads too much at this weight, by the check weight: {error}</source>
        <translation>menos lo que la báscula marca de más a este peso, según la pesa de control: {error}</translation>
    </message>
    <message>
        <source>each doubt widened by Student&apos;s t for its degrees of freedom, then added as squares</source>
        <translation>cada incertidumbre ampliada con la t de Student según sus grados de libertad, y sumadas cuadráticamente</translation>
    </message>
    <message>
        <source>One more scoopful</source>
        <translation>Una medida más</translation>
    </message>
    <message>
        <source>with the spread between bags ({bags}) and between fills ({fills}) on top</source>
        <translation>con la variación entre costales ({bags}) y entre llenadas ({fills}) además</translation>
    </message>
    <message>
        <source>Doubt: {source}</source>
        <translation>Incertidumbre: {source}</translation>
    </message>
    <message>
        <source>already part of what the fills show</source>
        <translation>ya incluida en lo que muestran las llenadas</translation>
    </message>
    <message>
        <source>{spread}, assumed until fills show it</source>
        <translation>{spread}, supuesto hasta que las llenadas lo muestren</translation>
    </message>
    <message>
        <source>{spread}, assumed as of a sound scale until a check weight shows it</source>
        <translation>{spread}, supuesto como de una báscula en buen estado hasta que lo muestre una pesa de control</translation>
    </message>
    <message>
        <source>how the bags differ</source>
        <translation>cuánto difieren los costales</translation>
    </message>
    <message>
        <source>between bags</source>
        <translation>entre costales</translation>
    </message>
    <message>
        <source>between fills</source>
        <translation>entre llenadas</translation>
    </message>
    <message>
        <source>display step, full</source>
        <translation>división de la báscula, medida llena</translation>
    </message>
    <message>
        <source>display step, empty</source>
        <translation>división de la báscula, medida vacía</translation>
    </message>
    <message>
        <source>the scale&apos;s own error</source>
        <translation>error propio de la báscula</translation>
    </message>
    <message>
        <source>the level scoopful</source>
        <translation>la medida al ras</translation>
    </message>
    <message>
        <source>the scoop&apos;s volume</source>
        <translation>el volumen de la medida</translation>
    </message>
    <message>
        <source>how the powder settles</source>
        <translation>cómo se asienta el polvo</translation>
    </message>
    <message>
        <source>Volume to the line</source>
        <translation>Volumen hasta la línea</translation>
    </message>
    <message>
        <source>volume to the rim × weight to the line ÷ (level scoopful × settling): {working}</source>
        <translation>volumen hasta el borde × peso hasta la línea ÷ (medida al ras × asentamiento): {working}</translation>
    </message>
    <message>
        <source>Height above the floor</source>
        <translation>Altura sobre el fondo</translation>
    </message>
    <message>
        <source>where the scoop, by its inner measures, holds that volume</source>
        <translation>donde la medida, por sus dimensiones interiores, contiene ese volumen</translation>
    </message>
    <message>
        <source>Down the wall from the rim</source>
        <translation>Por la pared, desde el borde</translation>
    </message>
    <message>
        <source>along the wall: {exact}, told to the nearest {step}</source>
        <translation>a lo largo de la pared: {exact}, redondeado a {step}</translation>
    </message>
    <message>
        <source>area of the powder there × its density</source>
        <translation>área del polvo en ese punto × su densidad</translation>
    </message>
    <message>
        <source>The scoop&apos;s volume cancels, so here it is that of its inner measures, as is the height: a scoop measured 3 % wrong gets the same line.</source>
        <translation>El volumen de la medida no influye; por eso aquí es el de sus dimensiones interiores, como la altura: aunque se anoten con un error de 3 %, la línea sale igual.</translation>
    </message>
    <message>
        <source>from the doubts in the level scoopful and in the settling: {mass} of a feeding</source>
        <translation>de las incertidumbres en la medida al ras y en el asentamiento: {mass} de una toma</translation>
    </message>
    <message>
        <source>The scoop is filled as high as the wanted weight needs room, at this lot&apos;s density.</source>
        <translation>La medida se llena hasta la altura que necesita el peso deseado con la densidad de este lote.</translation>
    </message>
    <message>
        <source>Where the line for {target} goes</source>
        <translation>Dónde va la línea para {target}</translation>
    </message>
    <message>
        <source>as the fills to the line have it, whose mean it rests on: {mass} of a feeding</source>
        <translation>como en las llenadas hasta la línea, en cuya media se apoya: {mass} de una toma</translation>
    </message>
    <message>
        <source>target in {count} equal scoopfuls: {working}</source>
        <translation>peso deseado en {count} medidas iguales: {working}</translation>
    </message>
    <message>
        <source>Weight to the line</source>
        <translation>Peso hasta la línea</translation>
    </message>
    <message>
        <source>target less the scoopfuls struck level: {working}</source>
        <translation>peso deseado menos las medidas al ras: {working}</translation>
    </message>
    <message>
        <source>density filled to the line ÷ density struck level</source>
        <translation>densidad llena hasta la línea ÷ densidad al ras</translation>
    </message>
    <message>
        <source>as in this farm&apos;s earlier lots</source>
        <translation>como en los lotes anteriores de este establo</translation>
    </message>
    <message>
        <source>taken so until fills to the line show it</source>
        <translation>supuesto así hasta que las llenadas a la línea lo muestren</translation>
    </message>
    <message>
        <source>as the fills to the line show it</source>
        <translation>como lo muestran las llenadas a la línea</translation>
    </message>
    <message>
        <source>Settling</source>
        <translation>Asentamiento</translation>
    </message>
    <message>
        <source>{what}; standard uncertainty {u}</source>
        <translation>{what}; incertidumbre estándar {u}</translation>
    </message>
    <message>
        <source>A feeding to the old line</source>
        <translation>Una toma con la línea anterior</translation>
    </message>
    <message>
        <source>level scoopful × share of the volume below the line × settling</source>
        <translation>medida al ras × parte del volumen bajo la línea × asentamiento</translation>
    </message>
    <message>
        <source>Against the target</source>
        <translation>Contra el peso deseado</translation>
    </message>
    <message>
        <source>from the doubts in the level scoopful and in the settling</source>
        <translation>de las incertidumbres en la medida al ras y en el asentamiento</translation>
    </message>
    <message>
        <source>judged anew after each fill, therefore by the wider interval of {level}. Inside the tolerance with all of it: keep. Outside with all of it: move. Else weigh more.</source>
        <translation>se juzga de nuevo tras cada llenada, por eso con el intervalo más ancho de {level}. Todo él dentro de la tolerancia: dejarla. Todo fuera: moverla. Si no, pesar más.</translation>
    </message>
    <message>
        <source>What a feeding to the old line weighs from this lot, beside what is wanted.</source>
        <translation>Lo que pesa una toma de este lote con la línea anterior, frente a lo que se busca.</translation>
    </message>
    <message>
        <source>Keep or move the old line</source>
        <translation>Dejar o mover la línea anterior</translation>
    </message>
    <message>
        <source>A feeding to this line</source>
        <translation>Una toma con esta línea</translation>
    </message>
    <message>
        <source>mean of the bags, like the level fills; standard uncertainty {u}</source>
        <translation>promedio de los costales, como las llenadas al ras; incertidumbre estándar {u}</translation>
    </message>
    <message>
        <source>inside the tolerance with the whole interval: keep. Else, where the interval leaves out the target and another division of the ruler is nearer: move. Else weigh more.</source>
        <translation>todo el intervalo dentro de la tolerancia: dejarla. Si no, cuando el intervalo deja fuera el peso deseado y otra división de la regla queda más cerca: moverla. Si no, pesar más.</translation>
    </message>
    <message>
        <source>What fills to the line weigh, beside what is wanted.</source>
        <translation>Lo que pesan las llenadas a la línea, junto a lo que se quiere.</translation>
    </message>
    <message>
        <source>two tests of 2.5 % each, one for too light and one for too heavy</source>
        <translation>dos pruebas de 2.5 % cada una, una por ligera y otra por pesada</translation>
    </message>
    <message>
        <source>What a line off by {step} does</source>
        <translation>Lo que cambia una línea corrida {step}</translation>
    </message>
    <message>
        <source>Is the line right?</source>
        <translation>¿Está bien la línea?</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Lo que se busca</translation>
    </message>
    <message>
        <source>the target and the farm&apos;s tolerance</source>
        <translation>lo deseado y la tolerancia del establo</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>How it is computed</source>
        <translation>Cómo se calcula</translation>
    </message>
    <message>
        <source>How is this computed?</source>
        <translation>¿Cómo se calcula?</translation>
    </message>
    <message>
        <source>Source: {sources}</source>
        <translation>Fuente: {sources}</translation>
    </message>
    <message>
        <source>Water and powder for {calves}</source>
        <translation>Agua y polvo para {calves}</translation>
    </message>
    <message>
        <source>One calf&apos;s feeding times the calves, in as few equal batches as the vessel holds, then rounded to what can be measured out.</source>
        <translation>La toma de una becerra por el número de becerras, en el menor número de tandas iguales que quepan en el recipiente, y redondeada a lo que se puede medir.</translation>
    </message>
    <message>
        <source>What rounding does</source>
        <translation>Lo que cambia el redondeo</translation>
    </message>
    <message>
        <source>powder to water as measured out ÷ as wanted − 1</source>
        <translation>polvo por agua como se mide ÷ como se busca − 1</translation>
    </message>
    <message>
        <source>by weight: {powder} ÷ {water}</source>
        <translation>por peso: {powder} ÷ {water}</translation>
    </message>
    <message>
        <source>Powder to water</source>
        <translation>Polvo por agua</translation>
    </message>
    <message>
        <source>water at its temperature weighs {water}</source>
        <translation>el agua a su temperatura pesa {water}</translation>
    </message>
    <message>
        <source>{share} for hoses and pails is in it</source>
        <translation>incluye {share} para mangueras y cubetas</translation>
    </message>
    <message>
        <source>One calf</source>
        <translation>Una becerra</translation>
    </message>
    <message>
        <source>{calves} × one calf</source>
        <translation>{calves} × una becerra</translation>
    </message>
    <message>
        <source>All calves</source>
        <translation>Todas las becerras</translation>
    </message>
    <message>
        <source>finished mix ÷ usable room in the vessel ({vessel}), rounded up: {mix} ÷ {usable}</source>
        <translation>mezcla terminada ÷ lo que cabe en el recipiente ({vessel}), hacia arriba: {mix} ÷ {usable}</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Tandas</translation>
    </message>
    <message>
        <source>Water in a batch</source>
        <translation>Agua en una tanda</translation>
    </message>
    <message>
        <source>drawn to suit whole scoopfuls: {share} of everything</source>
        <translation>ajustada a medidas enteras: {share} de todo</translation>
    </message>
    <message>
        <source>as asked for</source>
        <translation>como se pidió</translation>
    </message>
    <message>
        <source>a batch&apos;s share is {exact}; to the step that this farm draws water in</source>
        <translation>a una tanda le tocan {exact}; redondeado a las cantidades en que este establo mide el agua</translation>
    </message>
    <message>
        <source>a batch&apos;s mix is {exact}, filled up to {volume}; less the powder&apos;s room, a step down</source>
        <translation>la mezcla de una tanda es {exact}, se llena a {volume}; menos el espacio del polvo, al paso de abajo</translation>
    </message>
    <message>
        <source>what so many scoopfuls weigh</source>
        <translation>lo que pesan tantas medidas</translation>
    </message>
    <message>
        <source>a batch&apos;s share is {exact}; to the step of the scale</source>
        <translation>lo que toca a una tanda es {exact}; redondeado a la división de la báscula</translation>
    </message>
    <message>
        <source>water × powder to water: {water} × {ratio}; to the step of the scale</source>
        <translation>agua × polvo por agua: {water} × {ratio}; redondeado a la división de la báscula</translation>
    </message>
    <message>
        <source>powder&apos;s share of all that is weighed in: {share}</source>
        <translation>parte del polvo en todo lo que se pesa: {share}</translation>
    </message>
    <message>
        <source>Powder in a batch</source>
        <translation>Polvo en una tanda</translation>
    </message>
    <message>
        <source>its share of all that is weighed in: {share}</source>
        <translation>su parte en todo lo que se pesa: {share}</translation>
    </message>
    <message>
        <source>What they weigh</source>
        <translation>Lo que pesan</translation>
    </message>
    <message>
        <source>{counts}, each as signed off for this lot</source>
        <translation>{counts}, cada una como se firmó para este lote</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Variación</translation>
    </message>
    <message>
        <source>scoopfuls differ each for itself, the bag in hand differs from the others, and the lot&apos;s mean is known only so far: 95 %, as squares</source>
        <translation>las medidas varían cada una por sí, el costal en uso difiere de los demás y el promedio del lote se conoce solo hasta cierto punto: 95 %, suma cuadrática</translation>
    </message>
    <message>
        <source>The count that people are told lies within the farm&apos;s tolerance of {tolerance}: {rule}</source>
        <translation>El número de medidas que se da está dentro de la tolerancia del establo, {tolerance}: {rule}</translation>
    </message>
    <message>
        <source>whole scoopfuls of one kind, and the water is drawn to suit them.</source>
        <translation>medidas enteras de una sola clase, y el agua se ajusta a ellas.</translation>
    </message>
    <message>
        <source>Scoopfuls</source>
        <translation>Medidas</translation>
    </message>
    <message>
        <source>count ÷ powder by weight − 1: {count} ÷ {powder}</source>
        <translation>medidas ÷ polvo por peso − 1: {count} ÷ {powder}</translation>
    </message>
    <message>
        <source>Off by</source>
        <translation>Diferencia</translation>
    </message>
    <message>
        <source>the same without the powder&apos;s own moisture, {share} (assumed: the label of the lot is silent)</source>
        <translation>lo mismo sin la humedad del propio polvo, {share} (supuesta: la etiqueta anotada del lote no la dice)</translation>
    </message>
    <message>
        <source>Finished mix</source>
        <translation>Mezcla terminada</translation>
    </message>
    <message>
        <source>water + powder × the room that 1 g takes in water: {water} + {powder} × {room}</source>
        <translation>agua + polvo × el lugar que ocupa 1 g en el agua: {water} + {powder} × {room}</translation>
    </message>
    <message>
        <source>Solids, as mixed</source>
        <translation>Sólidos en la mezcla</translation>
    </message>
    <message>
        <source>Dry matter</source>
        <translation>Materia seca</translation>
    </message>
    <message>
        <source>the same without the powder&apos;s own moisture, {share}</source>
        <translation>lo mismo sin la humedad del propio polvo, {share}</translation>
    </message>
    <message>
        <source>filled in one manner over the whole table where that is within it, with no more than twice the fewest scoopfuls; else to the line of one scoop, else the fewest. More than {most} are better weighed.</source>
        <translation>llenadas de una sola manera en toda la tabla cuando queda dentro y no hacen falta más del doble de las mínimas; si no, hasta la línea de una sola medida; si no, las mínimas. Si son más de {most}, es mejor pesar.</translation>
    </message>
    <message>
        <source>Osmolality, an estimate</source>
        <translation>Osmolalidad, una estimación</translation>
    </message>
    <message>
        <source>1000 × powder to water × what 1 g brings: 1000 × {ratio} × {osmoles}</source>
        <translation>1000 × polvo por agua × lo que aporta 1 g: 1000 × {ratio} × {osmoles}</translation>
    </message>
    <message>
        <source>For powder by weight. The room that powder takes follows from fat, protein, lactose and ash on its label; osmolality from lactose and ash. An additive&apos;s laboratory value goes before its estimate.</source>
        <translation>Para polvo por peso. El lugar que ocupa el polvo sale de la grasa, proteína, lactosa y ceniza de su etiqueta; la osmolalidad, de la lactosa y la ceniza. El valor de laboratorio de un aditivo va antes que su estimación.</translation>
    </message>
    <message>
        <source>additive volumes in solution, Walstra et al., Dairy Science and Technology</source>
        <translation>volúmenes aditivos en solución, Walstra et al., Dairy Science and Technology</translation>
    </message>
    <message>
        <source>Strength and room</source>
        <translation>Concentración y lugar</translation>
    </message>
    <message>
        <source>Solids by scoopfuls</source>
        <translation>Sólidos por medidas</translation>
    </message>
    <message>
        <source>the same with what the scoopfuls weigh, and with both ends of their spread</source>
        <translation>lo mismo con lo que pesan las medidas, y con los dos extremos de su variación</translation>
    </message>
    <message>
        <source>Level scoopful</source>
        <translation>Medida al ras</translation>
    </message>
    <message>
        <source>mean of the bags, from {weighed}; standard uncertainty {u}</source>
        <translation>promedio de los costales, de {weighed}; incertidumbre estándar {u}</translation>
    </message>
    <message>
        <source>level scoopful ÷ volume of the scoop to its rim</source>
        <translation>medida al ras ÷ volumen de la medida hasta el borde</translation>
    </message>
    <message>
        <source>from the doubts in the scoopful ({degrees} degrees of freedom) and in the volume</source>
        <translation>de las incertidumbres en la medida ({degrees} grados de libertad) y en el volumen</translation>
    </message>
    <message>
        <source>Density of lot {lot}</source>
        <translation>Densidad del lote {lot}</translation>
    </message>
    <message>
        <source>As it was signed off. The bars of the picture are the intervals.</source>
        <translation>Como se firmó. Las barras de la gráfica son los intervalos.</translation>
    </message>
    <message>
        <source>Lots of one product are held against their own middle. A lot beyond its limits is farther off than lots and weighing explain; the running mean finds what creeps.</source>
        <translation>Los lotes de un producto se comparan con su propio centro. Un lote fuera de sus límites se aparta más de lo que explican los lotes y la pesada; el promedio móvil descubre lo que cambia poco a poco.</translation>
    </message>
    <message>
        <source>Middle of its kind</source>
        <translation>Centro de su clase</translation>
    </message>
    <message>
        <source>mean of the logarithms of the densities of this product&apos;s lots</source>
        <translation>promedio de los logaritmos de las densidades de los lotes de este producto</translation>
    </message>
    <message>
        <source>Off the middle</source>
        <translation>Distancia al centro</translation>
    </message>
    <message>
        <source>logarithm of density ÷ middle: {density} ÷ {middle}</source>
        <translation>logaritmo de densidad ÷ centro: {density} ÷ {middle}</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Marcado</translation>
    </message>
    <message>
        <source>Limits and running mean</source>
        <translation>Límites y promedio móvil</translation>
    </message>
    <message>
        <source>{width} × √(spread between lots² + doubt of weighing²): {width} × √({between}² + {own}²)</source>
        <translation>{width} × √(variación entre lotes² + incertidumbre de la pesada²): {width} × √({between}² + {own}²)</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Límites</translation>
    </message>
    <message>
        <source>the lot itself: it is the first of its kind</source>
        <translation>el lote mismo: es el primero de su tipo</translation>
    </message>
    <message>
        <source>{new} × this lot + {old} × the running mean before: {off}, {before}</source>
        <translation>{new} × este lote + {old} × el promedio móvil anterior: {off}, {before}</translation>
    </message>
    <message>
        <source>Running mean</source>
        <translation>Promedio móvil</translation>
    </message>
    <message>
        <source>from the same spreads, each weighted as it counts in it</source>
        <translation>de las mismas variaciones, cada una según lo que cuenta en ella</translation>
    </message>
    <message>
        <source>Limits of the running mean</source>
        <translation>Límites del promedio móvil</translation>
    </message>
    <message>
        <source>as at the weigh-in, by the spread of bags and fills</source>
        <translation>como en la pesada, según cuánto difieren costales y llenadas</translation>
    </message>
    <message>
        <source>Used level, as with lot {lot}</source>
        <translation>Usada al ras, como con el lote {lot}</translation>
    </message>
    <message>
        <source>What a feeding would have weighed, had the scoop gone on being used level.</source>
        <translation>Cuánto habría pesado una toma si la medida se hubiera seguido usando al ras.</translation>
    </message>
    <message>
        <source>A feeding, used level</source>
        <translation>Una toma, al ras</translation>
    </message>
    <message>
        <source>level scoopful × share of the volume below the line × settling: {level}, {line}, {settling}</source>
        <translation>medida al ras × parte del volumen bajo la línea × asentamiento: {level}, {line}, {settling}</translation>
    </message>
    <message>
        <source>Each bag is held against the mean of the weigh-in, by how bags and fills differed there and in earlier lots where there are any. The limits are for one bag at 99.7 %, not the 95 % of the intervals: of bags as alike as those, 3 in 1,000 lie outside by chance. {bags} so far.</source>
        <translation>Cada costal se compara con el promedio de la pesada, según lo que difirieron costales y llenadas en ella y en lotes anteriores, si los hay. Los límites son para un costal al 99.7 %, no el 95 % de los intervalos: de costales tan parecidos como esos, 3 de cada 1,000 quedan fuera por azar. Hasta ahora {bags}.</translation>
    </message>
    <message>
        <source>With the line of lot {lot}</source>
        <translation>Con la línea del lote {lot}</translation>
    </message>
    <message>
        <source>What a feeding would have weighed, had the scoop kept the line of the lot before.</source>
        <translation>Lo que habría pesado una toma si la medida hubiera conservado la línea del lote anterior.</translation>
    </message>
    <message>
        <source>{scoops} × {level} struck level + {rest}</source>
        <translation>{scoops} × {level} al ras + {rest}</translation>
    </message>
    <message>
        <source>mean of the bags, from {fills} to a line; those to another line in proportion to volume</source>
        <translation>promedio de los costales, de {fills} hasta una línea; las de otra línea, en proporción al volumen</translation>
    </message>
    <message>
        <source>so much powder on the same water: {target} as planned, powder × {mass} ÷ {wanted}</source>
        <translation>tanto polvo en la misma agua: {target} según el plan, polvo × {mass} ÷ {wanted}</translation>
    </message>
    <message>
        <source>{share} of {daily} of powder a day × price ÷ weight of a package: {price} ÷ {package}</source>
        <translation>{share} de {daily} de polvo al día × precio ÷ peso de un envase: {price} ÷ {package}</translation>
    </message>
    <message>
        <source>Money a day</source>
        <translation>Dinero al día</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Promedio</translation>
    </message>
    <message>
        <source>the level scoopful as it was signed off</source>
        <translation>la medida al ras como se firmó</translation>
    </message>
    <message>
        <source>Limits of the first bag</source>
        <translation>Límites del primer costal</translation>
    </message>
    <message>
        <source>Student&apos;s t for {degrees} degrees of freedom × √(spread between bags² + spread between fills² ÷ scoopfuls), spreads {bags} and {fills}</source>
        <translation>t de Student para {degrees} grados de libertad × √(variación entre costales² + variación entre llenadas² ÷ medidas), variaciones {bags} y {fills}</translation>
    </message>
    <message>
        <source>Running mean now</source>
        <translation>Promedio móvil ahora</translation>
    </message>
    <message>
        <source>{new} × this bag + {old} × the running mean before</source>
        <translation>{new} × este costal + {old} × el promedio móvil anterior</translation>
    </message>
    <message>
        <source>Bags of lot {lot}</source>
        <translation>Costales del lote {lot}</translation>
    </message>
    <message>
        <source>Jump</source>
        <translation>Salto</translation>
    </message>
    <message>
        <source>mean of the bags after ÷ mean before − 1; chance of it by chance alone: {p}</source>
        <translation>promedio de los costales después ÷ promedio antes − 1; probabilidad de que sea casualidad: {p}</translation>
    </message>
    <message>
        <source>Drift</source>
        <translation>Deriva</translation>
    </message>
    <message>
        <source>slope by least squares × bags; chance of it by chance alone: {p}</source>
        <translation>pendiente por mínimos cuadrados × costales; probabilidad de que sea casualidad: {p}</translation>
    </message>
    <message>
        <source>One bag off</source>
        <translation>Un costal desviado</translation>
    </message>
    <message>
        <source>that bag ÷ mean − 1</source>
        <translation>ese costal ÷ promedio − 1</translation>
    </message>
    <message>
        <source>Fills of one bag differ, bags differ by more than that, lots by more again. What is more tells the spread between them; a standard deviation each, as a share of a scoopful.</source>
        <translation>Las llenadas de un costal difieren, los costales más que eso, y los lotes todavía más. Lo que hay de más dice cuánto varían entre sí; cada una es una desviación estándar, como parte de una medida.</translation>
    </message>
    <message>
        <source>Where spread comes from</source>
        <translation>De dónde viene la variación</translation>
    </message>
    <message>
        <source>√(sum of squares within bags ÷ degrees of freedom): √({squares} ÷ {df})</source>
        <translation>√(suma de cuadrados dentro de los costales ÷ grados de libertad): √({squares} ÷ {df})</translation>
    </message>
    <message>
        <source>Between fills</source>
        <translation>Entre llenadas</translation>
    </message>
    <message>
        <source>√((mean square of bags − that of fills) ÷ fills a bag): √(({bags} − {fills}) ÷ {each})</source>
        <translation>√((cuadrado medio de costales − el de llenadas) ÷ llenadas por costal): √(({bags} − {fills}) ÷ {each})</translation>
    </message>
    <message>
        <source>Between bags</source>
        <translation>Entre costales</translation>
    </message>
    <message>
        <source>√((mean square of lots − what bags and fills bring) ÷ fills a lot): {lots}, {each} fills a lot</source>
        <translation>√((cuadrado medio de lotes − lo que aportan costales y llenadas) ÷ llenadas por lote): {lots}, {each} llenadas por lote</translation>
    </message>
    <message>
        <source>Between lots</source>
        <translation>Entre lotes</translation>
    </message>
    <message>
        <source>{lots} lots, {bags} bags, {fills} fills</source>
        <translation>{lots} lotes, {bags} costales, {fills} llenadas</translation>
    </message>
    <message>
        <source>Of the whole</source>
        <translation>Del total</translation>
    </message>
    <message>
        <source>each one squared ÷ all squared together</source>
        <translation>cada una al cuadrado ÷ todas al cuadrado juntas</translation>
    </message>
    <message>
        <source>√(work of a bag ÷ work of a fill) × spread of fills ÷ spread of bags: √2 × {fills} ÷ {bags}</source>
        <translation>√(trabajo de un costal ÷ trabajo de una llenada) × variación de llenadas ÷ variación de costales: √2 × {fills} ÷ {bags}</translation>
    </message>
    <message>
        <source>the whole numbers beside it with the least work, for a mean known within {share}</source>
        <translation>los números enteros cercanos con menos trabajo, para un promedio conocido con ± {share}</translation>
    </message>
    <message>
        <source>{bags}, {fills} each</source>
        <translation>{bags}, {fills} de cada uno</translation>
    </message>
    <message>
        <source>The least work</source>
        <translation>El menor trabajo</translation>
    </message>
    <message>
        <source>Fills from a bag</source>
        <translation>Llenadas de un costal</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>What it leaves in doubt</source>
        <translation>La incertidumbre que deja</translation>
    </message>
    <message>
        <source>√((spread of bags² + spread of fills² ÷ fills a bag) ÷ bags)</source>
        <translation>√((variación de costales² + variación de llenadas² ÷ llenadas por costal) ÷ costales)</translation>
    </message>
    <message>
        <source>Opening one more bag is counted as twice the work of one more fill.</source>
        <translation>Abrir un costal más cuenta como el doble de trabajo que una llenada más.</translation>
    </message>
    <message>
        <source>A line, or a step, is laid through the lots so that the squares of what is left are least; lots of one product each about their own middle. What goes together need not be the cause.</source>
        <translation>Se traza una recta, o un escalón, por los lotes de modo que los cuadrados de lo que sobra sean mínimos; los lotes de cada producto, alrededor de su propio centro. Lo que va junto no siempre es la causa.</translation>
    </message>
    <message>
        <source>Lots that tell it</source>
        <translation>Lotes que lo dicen</translation>
    </message>
    <message>
        <source>those where it is entered</source>
        <translation>aquellos en que está anotado</translation>
    </message>
    <message>
        <source>By chance alone</source>
        <translation>Por pura casualidad</translation>
    </message>
    <message>
        <source>how often so large an effect comes where there is none</source>
        <translation>cada cuánto sale un efecto tan grande donde no hay ninguno</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Respuesta</translation>
    </message>
    <message>
        <source>seen where the interval leaves nought out; none where it stays near nought</source>
        <translation>se ve si el intervalo deja fuera el cero; no lo hay si se queda cerca de cero</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <source>Swing</source>
        <translation>Oscilación</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Escalón</translation>
    </message>
    <message>
        <source>logarithm of density, {per}</source>
        <translation>logaritmo de la densidad, {per}</translation>
    </message>
    <message>
        <source>half the height of a yearly wave, a straight drift beside it taken out</source>
        <translation>la mitad de la altura de una onda anual, quitada una deriva recta</translation>
    </message>
    <message>
        <source>logarithm of density, the two that differ most</source>
        <translation>logaritmo de la densidad, los dos que más difieren</translation>
    </message>
    <message>
        <source>Scheffé&apos;s, which holds for the widest of all differences</source>
        <translation>el de Scheffé, que vale para la mayor de todas las diferencias</translation>
    </message>
    <message>
        <source>standard uncertainty × Student&apos;s t</source>
        <translation>incertidumbre estándar × t de Student</translation>
    </message>
    <message>
        <source>What is left, less what the plans take day by day: steps to weaning and the cold count too, and today&apos;s feedings. Each past day counts by the plans as they were on it. What calves leave or spill is not known: count the bags now and then.</source>
        <translation>Lo que queda, menos lo que toman los planes día por día: cuentan también los pasos hasta el destete y el frío, y las tomas de hoy. Cada día pasado cuenta según los planes como eran ese día. No se sabe lo que las becerras dejan o derraman: cuente los costales de vez en cuando.</translation>
    </message>
    <message>
        <source>conservation of mass</source>
        <translation>conservación de la masa</translation>
    </message>
    <message>
        <source>Powder at hand</source>
        <translation>Polvo disponible</translation>
    </message>
    <message>
        <source>counted on {day}: {number} × {mass}, less {fed} by the plans since</source>
        <translation>contado el {day}: {number} × {mass}, menos {fed} según los planes desde entonces</translation>
    </message>
    <message>
        <source>left on {day} by the plans: {number} × {mass}, less {fed} by the plans since</source>
        <translation>quedaba el {day} según los planes: {number} × {mass}, menos {fed} según los planes desde entonces</translation>
    </message>
    <message>
        <source>what came: {number} × {mass}, less {fed} by the plans since {day}</source>
        <translation>lo que llegó: {number} × {mass}, menos {fed} según los planes desde el {day}</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Queda</translation>
    </message>
    <message>
        <source>calves × powder of a feeding × feedings a day, hoses and pails included</source>
        <translation>becerras × polvo de una toma × tomas al día, con mangueras y cubetas</translation>
    </message>
    <message>
        <source>All plans today</source>
        <translation>Todos los planes hoy</translation>
    </message>
    <message>
        <source>added up</source>
        <translation>sumado</translation>
    </message>
    <message>
        <source>full days: {left} less what each day takes, today&apos;s {daily} first</source>
        <translation>días completos: {left} menos lo que pide cada día, primero los {daily} de hoy</translation>
    </message>
    <message>
        <source>Days at hand</source>
        <translation>Días disponibles</translation>
    </message>
    <message>
        <source>full days of what came of it: {number} × {mass}, and of what is left of the lots before</source>
        <translation>días completos de lo que llegó de él: {number} × {mass}, y de lo que queda de los lotes de antes</translation>
    </message>
    <message>
        <source>Days in lot {lot}</source>
        <translation>Días en el lote {lot}</translation>
    </message>
    <message>
        <source>what {days} days take, less what is left and {waiting} of other lots, in whole ones like these</source>
        <translation>lo que piden {days} días, menos lo que queda y {waiting} de otros lotes, en enteros como estos</translation>
    </message>
    <message>
        <source>To order</source>
        <translation>Por pedir</translation>
    </message>
    <message>
        <source>Each person&apos;s mean is held against the mean of all people, and each one&apos;s scatter against the others&apos;. The intervals hold for all people at once.</source>
        <translation>El promedio de cada persona se compara con el de todas, y lo que varía cada una con lo que varían las demás. Los intervalos valen para todas a la vez.</translation>
    </message>
    <message>
        <source>Person by person</source>
        <translation>Persona por persona</translation>
    </message>
    <message>
        <source>Mean of all</source>
        <translation>Promedio de todas</translation>
    </message>
    <message>
        <source>Repeatability</source>
        <translation>Repetibilidad</translation>
    </message>
    <message>
        <source>how the fills of one person scatter, all people pooled</source>
        <translation>cuánto varían las llenadas de una persona, con todas las personas juntas</translation>
    </message>
    <message>
        <source>Between people</source>
        <translation>Entre personas</translation>
    </message>
    <message>
        <source>what the means differ by beyond what that scatter explains</source>
        <translation>lo que difieren los promedios más allá de lo que eso explica</translation>
    </message>
    <message>
        <source>Reproducibility</source>
        <translation>Reproducibilidad</translation>
    </message>
    <message>
        <source>√(between people² + repeatability²)</source>
        <translation>√(entre personas² + repetibilidad²)</translation>
    </message>
    <message>
        <source>A fill is the mean of all, plus what the person adds, plus what differs from fill to fill.</source>
        <translation>Una llenada es el promedio de todas, más lo que pone la persona, más lo que cambia de llenada en llenada.</translation>
    </message>
    <message>
        <source>Fills by everybody</source>
        <translation>Llenadas de todos</translation>
    </message>
    <message>
        <source>standard deviation of that person&apos;s fills, 95 % interval by chi-square</source>
        <translation>desviación estándar de las llenadas de esa persona, intervalo del 95 % por ji cuadrada</translation>
    </message>
    <message>
        <source>Scatter</source>
        <translation>Variación</translation>
    </message>
    <message>
        <source>Warm water gives off what the powder takes up, and hot and cold water meet in between. Heat lost to vessel and air is left out: measure the mix before it is fed.</source>
        <translation>El agua tibia da el calor que toma el polvo, y el agua caliente y la fría se encuentran en medio. No cuenta el calor que se va al recipiente y al aire: mida la mezcla antes de darla.</translation>
    </message>
    <message>
        <source>Warmth of water and mix</source>
        <translation>Temperatura del agua y de la mezcla</translation>
    </message>
    <message>
        <source>as much warmer than the mix as the powder takes: {powder} of powder from {stored}, {water} of water × {heat}</source>
        <translation>más caliente que la mezcla en lo que toma el polvo: {powder} de polvo desde {stored}, {water} de agua × {heat}</translation>
    </message>
    <message>
        <source>Water to draw</source>
        <translation>Agua por sacar</translation>
    </message>
    <message>
        <source>where water at {water} and powder at {powder} meet</source>
        <translation>donde se encuentran agua a {water} y polvo a {powder}</translation>
    </message>
    <message>
        <source>The mix lands at</source>
        <translation>La mezcla queda a</translation>
    </message>
    <message>
        <source>cooling as the vessel&apos;s two readings show, down to {cool}</source>
        <translation>se enfría como muestran las dos lecturas del recipiente, hasta {cool}</translation>
    </message>
    <message>
        <source>Stays warm</source>
        <translation>Se mantiene caliente</translation>
    </message>
    <message>
        <source>water × (drawn − cold) ÷ (hot − cold): {water} × ({drawn} − {cold}) ÷ ({hot} − {cold})</source>
        <translation>agua × (sacada − fría) ÷ (caliente − fría): {water} × ({drawn} − {cold}) ÷ ({hot} − {cold})</translation>
    </message>
    <message>
        <source>Hot water in a batch</source>
        <translation>Agua caliente en una tanda</translation>
    </message>
    <message>
        <source>Cold water in a batch</source>
        <translation>Agua fría en una tanda</translation>
    </message>
    <message>
        <source>the rest</source>
        <translation>el resto</translation>
    </message>
</context>
<context>
    <name>InsidePanel</name>
    <message>
        <source>&amp;Open the lot</source>
        <translation>A&amp;brir el lote</translation>
    </message>
    <message>
        <source>&amp;Choose a lot</source>
        <translation>Eli&amp;ja un lote</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Scoopfuls bag by bag</source>
        <translation>Medidas, costal por costal</translation>
    </message>
    <message>
        <source>{lot}, {scoop}</source>
        <translation>{lot}, {scoop}</translation>
    </message>
    <message>
        <source>No lot is signed off yet</source>
        <translation>Todavía no hay lote firmado</translation>
    </message>
    <message>
        <source>A lot is looked into once it is weighed in.</source>
        <translation>Un lote se examina cuando ya se pesó.</translation>
    </message>
    <message>
        <source>bag of the weigh-in</source>
        <translation>costal de la pesada</translation>
    </message>
    <message>
        <source>spot fill of a bag opened later</source>
        <translation>llenada de control de un costal abierto después</translation>
    </message>
    <message>
        <source>limits for each bag</source>
        <translation>límites de cada costal</translation>
    </message>
    <message>
        <source>running mean</source>
        <translation>promedio móvil</translation>
    </message>
    <message>
        <source>All as one scoopful struck level. The limits hold for one bag each, at 99.7 %: of bags as alike as those weighed, 3 in 1,000 lie outside by chance.</source>
        <translation>Todo calculado como una medida al ras. Los límites son para cada costal, al 99.7 %: de costales tan parecidos como los pesados, 3 de cada 1,000 quedan fuera por azar.</translation>
    </message>
    <message>
        <source>These bags cannot be judged</source>
        <translation>Estos costales no se pueden juzgar</translation>
    </message>
    <message>
        <source>Steady: its bags are as alike as bags are here.</source>
        <translation>Parejo: sus costales se parecen entre sí, como de costumbre.</translation>
    </message>
    <message>
        <source>Its bags jumped by {share} ({low} to {high}).</source>
        <translation>Sus costales dieron un salto de {share} ({low} a {high}).</translation>
    </message>
    <message>
        <source>Its bags drifted by {share} from first to last ({low} to {high}).</source>
        <translation>Sus costales se fueron desviando {share} del primero al último ({low} a {high}).</translation>
    </message>
    <message>
        <source>One bag is {share} off ({low} to {high}).</source>
        <translation>Un costal se aparta {share} ({low} a {high}).</translation>
    </message>
    <message>
        <source>Too few bags to tell. Weigh one scoopful of each bag that is opened.</source>
        <translation>Muy pocos costales para decirlo. Pese una medida de cada costal que se abra.</translation>
    </message>
    <message>
        <source>The scoop goes on being used level. Weigh one scoopful of each bag opened.</source>
        <translation>La medida se sigue usando al ras. Pese una medida de cada costal que se abra.</translation>
    </message>
    <message>
        <source>The mark holds. Go on with one scoopful of each bag opened.</source>
        <translation>La línea sirve. Siga con una medida de cada costal que se abra.</translation>
    </message>
    <message>
        <source>Look whether powder cakes or takes up damp in the store, and stir each bag up. Weigh level fills: level may no longer be the right weight.</source>
        <translation>Vea si el polvo se apelmaza o toma humedad en la bodega, y remueva cada costal. Pese llenadas al ras: puede que al ras ya no dé el peso correcto.</translation>
    </message>
    <message>
        <source>Look whether powder cakes or takes up damp in the store, and stir each bag up. Weigh fills to the line: the mark may have to move.</source>
        <translation>Vea si el polvo se apelmaza o toma humedad en la bodega, y remueva cada costal. Pese llenadas hasta la línea: quizá haya que moverla.</translation>
    </message>
    <message>
        <source>It was weighed on {day}. Look into that bag: caked or damp powder, or a slip of the hand. Weigh it again.</source>
        <translation>Se pesó el {day}. Revise ese costal: polvo apelmazado o húmedo, o un descuido de la mano. Péselo otra vez.</translation>
    </message>
    <message>
        <source>It happened on {day}. Look at the bags since: another run under the same number (read the code on the bag), caking, or another scoop. Until it is clear weigh level fills: level may no longer be the right weight.</source>
        <translation>Pasó el {day}. Vea los costales desde entonces: otra producción con el mismo número (lea el código del costal), polvo apelmazado u otra medida. Mientras no se aclare, pese llenadas al ras: puede que al ras ya no dé el peso correcto.</translation>
    </message>
    <message>
        <source>It happened on {day}. Look at the bags since: another run under the same number (read the code on the bag), caking, or another scoop. Until it is clear weigh fills to the line: the mark may have to move.</source>
        <translation>Pasó el {day}. Revise los costales desde entonces: otra corrida con el mismo número (lea el código del costal), polvo apelmazado u otra medida. Mientras se aclara, pese llenadas hasta la línea: quizá haya que moverla.</translation>
    </message>
    <message>
        <source>The last spot fill, of {day}, is off all the same: its feeding is {share} from the target, and {tolerance} is the tolerance.</source>
        <translation>Aun así, la última llenada de control, del {day}, quedó fuera: su toma se aparta {share} de lo deseado, y la tolerancia es de {tolerance}.</translation>
    </message>
    <message>
        <source>Stir that bag and weigh it again; as far off again, feed from it by the scale.</source>
        <translation>Revuelva ese costal y pese otra vez; si sigue igual, pese en la báscula el polvo de ese costal.</translation>
    </message>
    <message>
        <source>The one before was off to the same side. If they are of two bags, weigh the lot in anew; if of one, weigh a scoopful of another bag.</source>
        <translation>La anterior quedó fuera hacia el mismo lado. Si son de dos costales, pese otra vez el lote; si son de uno, pese una medida de otro costal.</translation>
    </message>
    <message>
        <source>By all spot fills together a feeding is outside the tolerance: weigh the lot in anew.</source>
        <translation>Por todas las llenadas de control juntas, una toma queda fuera de la tolerancia: pese otra vez el lote.</translation>
    </message>
    <message>
        <source>Whether a feeding still lies within the tolerance is not sure yet: weigh one scoopful of each bag opened.</source>
        <translation>Todavía no se sabe si una toma queda dentro de la tolerancia: pese una medida de cada costal que se abra.</translation>
    </message>
    <message>
        <source>oz</source>
        <translation>oz</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>Bags in the order in which they were opened</source>
        <translation>Costales en el orden en que se abrieron</translation>
    </message>
    <message>
        <source>One scoopful, {unit}</source>
        <translation>Una medida, {unit}</translation>
    </message>
    <message>
        <source>{headline} Mean {mean}, spread of bags about {spread}.</source>
        <translation>{headline} Promedio {mean}, los costales varían cerca de {spread}.</translation>
    </message>
</context>
<context>
    <name>InstrumentForm</name>
    <message>
        <source>Name of the instrument</source>
        <translation>Nombre del instrumento</translation>
    </message>
    <message>
        <source>The smallest step of its scale.</source>
        <translation>La división más chica de su escala.</translation>
    </message>
    <message>
        <source>Division of its scale</source>
        <translation>División de su escala</translation>
    </message>
    <message>
        <source>It corrects for temperature by itself (ATC)</source>
        <translation>Compensa la temperatura por sí mismo (ATC)</translation>
    </message>
    <message>
        <source>It stands on the glass, often 60 °F or 20 °C.</source>
        <translation>Está en el vidrio; suele ser 60 °F o 20 °C.</translation>
    </message>
    <message>
        <source>Its scale holds at</source>
        <translation>Escala calibrada a</translation>
    </message>
    <message>
        <source>Up to the brim or a line. Weighing water in it, under Instrument checks, is surer.</source>
        <translation>Hasta el borde o hasta una línea. Es más exacto pesar el agua que le cabe, en Revisar instrumentos.</translation>
    </message>
    <message>
        <source>What it holds</source>
        <translation>Cuánto le cabe</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>Division of its scale, {unit}</source>
        <translation>División de su escala, {unit}</translation>
    </message>
</context>
<context>
    <name>Instruments</name>
    <message>
        <source>refractometer</source>
        <translation>refractómetro</translation>
    </message>
    <message>
        <source>hydrometer</source>
        <translation>densímetro</translation>
    </message>
    <message>
        <source>jug</source>
        <translation>jarra</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>termómetro</translation>
    </message>
    <message>
        <source>{kind}, {state}</source>
        <translation>{kind}, {state}</translation>
    </message>
    <message>
        <source>never checked</source>
        <translation>sin revisar</translation>
    </message>
    <message>
        <source>check overdue</source>
        <translation>falta revisar</translation>
    </message>
    <message>
        <source>checked</source>
        <translation>con revisión</translation>
    </message>
    <message>
        <source>check overdue ({days})</source>
        <translation>revisión atrasada ({days})</translation>
    </message>
    <message>
        <source>checked {day}</source>
        <translation>revisión del {day}</translation>
    </message>
    <message>
        <source>{day}: {typed} of water, so it holds {volume} mL</source>
        <translation>{day}: {typed} de agua, así que le caben {volume} mL</translation>
    </message>
    <message>
        <source>in plain water</source>
        <translation>en agua sola</translation>
    </message>
    <message>
        <source>in ice water</source>
        <translation>en agua con hielo</translation>
    </message>
    <message>
        <source>in the sugar solution</source>
        <translation>en la solución de azúcar</translation>
    </message>
    <message>
        <source>{day}, {where}: {reading}, should be {expected}</source>
        <translation>{day}, {where}: {reading}, debe ser {expected}</translation>
    </message>
</context>
<context>
    <name>InstrumentsTab</name>
    <message>
        <source>&amp;Add an instrument</source>
        <translation>A&amp;gregar un instrumento</translation>
    </message>
    <message>
        <source>New instrument</source>
        <translation>Instrumento nuevo</translation>
    </message>
    <message>
        <source>Instrument kept: {name}</source>
        <translation>Se guardó el instrumento: {name}</translation>
    </message>
    <message>
        <source>&amp;Retire this instrument</source>
        <translation>Retirar este instrument&amp;o</translation>
    </message>
    <message>
        <source>{name} will no longer be offered; its readings stay. Retire this instrument?</source>
        <translation>{name} ya no se ofrecerá; sus lecturas se conservan. ¿Retirar este instrumento?</translation>
    </message>
</context>
<context>
    <name>LanguageForm</name>
    <message>
        <source>English</source>
        <translation>Inglés</translation>
    </message>
    <message>
        <source>Spanish</source>
        <translation>Español</translation>
    </message>
    <message>
        <source>English and Spanish</source>
        <translation>Inglés y español</translation>
    </message>
    <message>
        <source>Language of the &amp;paper</source>
        <translation>Idi&amp;oma del papel</translation>
    </message>
    <message>
        <source>Like this computer</source>
        <translation>Como esta computadora</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark, for a dim barn</source>
        <translation>Oscuro, para un lugar con poca luz</translation>
    </message>
    <message>
        <source>Light or &amp;dark</source>
        <translation>Claro u o&amp;scuro</translation>
    </message>
    <message>
        <source>The paper speaks the language of the screen until you choose one for it here.</source>
        <translation>El papel sale en el idioma de la pantalla mientras no se elija otro para él aquí.</translation>
    </message>
    <message>
        <source>Screen and paper may speak different languages: the office one, the barn another.</source>
        <translation>La pantalla y el papel pueden ir en distinto idioma: la oficina lee uno y el establo otro.</translation>
    </message>
    <message>
        <source>Language of the paper kept: {language}</source>
        <translation>Se guardó el idioma del papel: {language}</translation>
    </message>
</context>
<context>
    <name>LevelPanel</name>
    <message>
        <source>What a level scoopful weighs stands here from the first weight on.</source>
        <translation>Lo que pesa una medida al ras aparece aquí desde el primer peso.</translation>
    </message>
    <message>
        <source>With it: how sure that is, how many fills are still needed, and the bulk density.</source>
        <translation>Junto con qué tan bien se sabe, cuántas llenadas faltan y la densidad aparente.</translation>
    </message>
    <message>
        <source>Bulk density {density}</source>
        <translation>Densidad aparente {density}</translation>
    </message>
    <message>
        <source>wanted: ± {mass}</source>
        <translation>se busca: ± {mass}</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>intervalo del 95 %</translation>
    </message>
</context>
<context>
    <name>LinePanel</name>
    <message>
        <source>Make so much of each</source>
        <translation>Prepare esta cantidad de cada una</translation>
    </message>
    <message>
        <source>Powder weighed</source>
        <translation>Peso del polvo</translation>
    </message>
    <message>
        <source>Water weighed</source>
        <translation>Peso del agua</translation>
    </message>
    <message>
        <source>Its drops, in °Brix</source>
        <translation>Sus gotas, en °Brix</translation>
    </message>
    <message>
        <source>&amp;Add this mix</source>
        <translation>A&amp;gregar esta mezcla</translation>
    </message>
    <message>
        <source>With&amp;draw …</source>
        <translation>Q&amp;uitar …</translation>
    </message>
    <message>
        <source>Weighed mixes of this powder</source>
        <translation>Mezclas pesadas de este polvo</translation>
    </message>
    <message>
        <source>Enter an instrument</source>
        <translation>Registrar un instrumento</translation>
    </message>
    <message>
        <source>Weigh in</source>
        <translation>Pesar</translation>
    </message>
    <message>
        <source>Type this weight.</source>
        <translation>Escriba este peso.</translation>
    </message>
    <message>
        <source>Type what it reads, best three drops.</source>
        <translation>Escriba lo que marca, mejor tres gotas.</translation>
    </message>
    <message>
        <source>The weighed mix is kept.</source>
        <translation>La mezcla pesada quedó guardada.</translation>
    </message>
    <message>
        <source>Why does this weighed mix count no more?</source>
        <translation>¿Por qué ya no cuenta esta mezcla pesada?</translation>
    </message>
    <message>
        <source>Weigh powder and water on the kitchen scale, mix well, and read three drops. Two strengths make a calibration, six mixes make it sure. It holds for this powder and this refractometer.</source>
        <translation>Pese polvo y agua en la báscula de cocina, mezcle bien y lea tres gotas. Con dos concentraciones ya hay calibración; con seis mezclas queda firme. Vale para este polvo y este refractómetro.</translation>
    </message>
    <message>
        <source>No lot is in use yet: a calibration belongs to a powder. Sign off a weigh-in first.</source>
        <translation>Todavía no hay lote en uso: cada calibración es de un polvo. Firme primero una pesada.</translation>
    </message>
    <message>
        <source>A calibration is made with a refractometer, and none is entered yet.</source>
        <translation>La calibración se hace con un refractómetro y todavía no hay ninguno registrado.</translation>
    </message>
    <message>
        <source>Solids: powder + water</source>
        <translation>Sólidos: polvo + agua</translation>
    </message>
    <message>
        <source>{day}: {solids} solids read {brix} °Brix ({powder} in {water})</source>
        <translation>{day}: {solids} de sólidos dio {brix} °Brix ({powder} en {water})</translation>
    </message>
    <message>
        <source>No Brix calibration yet</source>
        <translation>Todavía no hay calibración Brix</translation>
    </message>
    <message>
        <source>{count} of 2 mixes. Until then one for whole milk serves; replacers differ from it.</source>
        <translation>{count} de 2 mezclas. Mientras tanto se usa la conversión de leche entera; los sustitutos no dan exactamente lo mismo.</translation>
    </message>
    <message>
        <source>These mixes make no calibration</source>
        <translation>Estas mezclas no sirven para calibrar</translation>
    </message>
    <message>
        <source>From {count} mixes: {slope} °Brix for each percent of solids. Three drops tell the solids within {half} either way (95 %).</source>
        <translation>De {count} mezclas: {slope} °Brix por cada 1 % de sólidos. Tres gotas dicen los sólidos con {half} de más o de menos (95 %).</translation>
    </message>
    <message>
        <source>Refractometer</source>
        <translation>Refractómetro</translation>
    </message>
    <message>
        <source>1. Weigh these mixes</source>
        <translation>1. Pese estas mezclas</translation>
    </message>
    <message>
        <source>2. Type each one as it was weighed and read</source>
        <translation>2. Escriba cada una como se pesó y se leyó</translation>
    </message>
    <message>
        <source>Weighed mixes</source>
        <translation>Mezclas pesadas</translation>
    </message>
    <message>
        <source>{target} solids: this refractometer shows {brix} °Brix</source>
        <translation>{target} de sólidos: este refractómetro marca {brix} °Brix</translation>
    </message>
    <message>
        <source>With fewer than six mixes that is partly an assumption.</source>
        <translation>Con menos de seis mezclas eso es en parte un supuesto.</translation>
    </message>
</context>
<context>
    <name>LinePicture</name>
    <message>
        <source>solids as mixed, %</source>
        <translation>sólidos de la mezcla, %</translation>
    </message>
    <message>
        <source>The Brix calibration; the list beneath has the weighed mixes</source>
        <translation>La calibración Brix; la lista de abajo tiene las mezclas pesadas</translation>
    </message>
    <message>
        <source>°Brix, zero taken off</source>
        <translation>°Brix, sin el cero</translation>
    </message>
    <message>
        <source>weighed mix</source>
        <translation>mezcla pesada</translation>
    </message>
    <message>
        <source>the target</source>
        <translation>lo deseado</translation>
    </message>
    <message>
        <source>what three drops leave open (95 %)</source>
        <translation>margen de tres gotas (95 %)</translation>
    </message>
    <message>
        <source>Diamond: the mix in hand, {brix} °Brix, {solids} solids ({low} to {high}).</source>
        <translation>Rombo: la mezcla de ahora, {brix} °Brix, {solids} de sólidos ({low} a {high}).</translation>
    </message>
</context>
<context>
    <name>Looking</name>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Look through them</source>
        <translation>Revisarlos</translation>
    </message>
    <message>
        <source>Stopped: not everything was looked through.</source>
        <translation>Detenido: no se revisó todo.</translation>
    </message>
</context>
<context>
    <name>LotBar</name>
    <message>
        <source>Table for the lot</source>
        <translation>Tabla del lote</translation>
    </message>
    <message>
        <source>Table for the l&amp;ot</source>
        <translation>Tabla del l&amp;ote</translation>
    </message>
    <message>
        <source>Fed from this da&amp;y on</source>
        <translation>Se &amp;da desde este día</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>Change &amp;the day</source>
        <translation>Cam&amp;biar el día</translation>
    </message>
    <message>
        <source>Keep that day as the change-o&amp;ver</source>
        <translation>Guardar como el día del cam&amp;bio</translation>
    </message>
    <message>
        <source>{on} is too early: lot {lot} was begun on {day}. Change its day first, or type a later one.</source>
        <translation>El {on} es demasiado pronto: el lote {lot} se empezó el {day}. Cambie primero su día o escriba uno posterior.</translation>
    </message>
    <message>
        <source>Change o&amp;ver to it</source>
        <translation>Cam&amp;biar a él</translation>
    </message>
    <message>
        <source>Powder left of lot {lot}, to be used up first</source>
        <translation>Polvo que queda del lote {lot}, para acabarlo primero</translation>
    </message>
    <message>
        <source>no line</source>
        <translation>sin línea</translation>
    </message>
    <message>
        <source>Bags of lot {lot} (no longer fed): {lines}</source>
        <translation>Línea para los costales del lote {lot} (ya no se usa): {lines}</translation>
    </message>
    <message>
        <source>Bags of lot {lot} (fed since {day}): {lines}</source>
        <translation>Línea para los costales del lote {lot} (se usa desde el {day}): {lines}</translation>
    </message>
    <message>
        <source>Bags of lot {lot} (fed from {day} on): {lines}</source>
        <translation>Línea para los costales del lote {lot} (se usará desde el {day}): {lines}</translation>
    </message>
    <message>
        <source>Bags of lot {lot}: {lines}</source>
        <translation>Línea para los costales del lote {lot}: {lines}</translation>
    </message>
    <message>
        <source>Too early: from {day} on.</source>
        <translation>Demasiado pronto: desde el {day}.</translation>
    </message>
    <message>
        <source>{on} is too early: lot {lot} came only on {day}. Type that day or a later one.</source>
        <translation>El {on} es demasiado pronto: el lote {lot} llegó apenas el {day}. Escriba ese día o uno posterior.</translation>
    </message>
    <message>
        <source>{on} is too early: lot {lot} was first weighed in on {day}. Type that day or a later one.</source>
        <translation>El {on} es demasiado pronto: el lote {lot} se pesó por primera vez el {day}. Escriba ese día o uno posterior.</translation>
    </message>
</context>
<context>
    <name>LotCard</name>
    <message>
        <source>The line</source>
        <translation>La línea</translation>
    </message>
    <message>
        <source>Lot in use</source>
        <translation>Lote en uso</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Todavía ninguno</translation>
    </message>
    <message>
        <source>A lot is in use once its weigh-in is signed off.</source>
        <translation>Un lote está en uso cuando su pesada está firmada.</translation>
    </message>
    <message>
        <source>level no longer does</source>
        <translation>al ras ya no sirve</translation>
    </message>
    <message>
        <source>no longer holds</source>
        <translation>ya no sirve</translation>
    </message>
    <message>
        <source>{scoop}: without a line, {target}</source>
        <translation>{scoop}: sin línea, {target}</translation>
    </message>
    <message>
        <source>{scoop}: no line yet</source>
        <translation>{scoop}: todavía sin línea</translation>
    </message>
    <message>
        <source>The weigh-in of {scoop} is under way: a new line may be drawn on it already. Until it is signed off weigh the powder.</source>
        <translation>La pesada de {scoop} está en curso: puede que ya tenga trazada una línea nueva. Hasta que se firme, pese el polvo.</translation>
    </message>
    <message>
        <source>The weigh-in of {scoop} is under way: it is to be struck level. Until it is signed off weigh the powder.</source>
        <translation>La pesada de {scoop} está en curso: se llenará al ras. Hasta que se firme, pese el polvo.</translation>
    </message>
    <message>
        <source>The weigh-in of {scoop} is under way: its new line is drawn, {line} down the wall. Until it is signed off weigh the powder.</source>
        <translation>La pesada de {scoop} está en curso: su línea nueva ya está trazada, a {line} del borde. Hasta que se firme, pese el polvo.</translation>
    </message>
    <message>
        <source>{scoop} still bears an old line, {line} down the wall: wipe it out, never fill to it.</source>
        <translation>{scoop} todavía lleva una línea anterior, a {line} del borde: bórrela; nunca llene hasta ella.</translation>
    </message>
    <message>
        <source>{scoop} still bears old lines, {line} down the wall: wipe them out, never fill to them.</source>
        <translation>{scoop} todavía lleva líneas anteriores, a {line} del borde: bórrelas; nunca llene hasta ellas.</translation>
    </message>
    <message>
        <source>{scoop} bears the line of lot {next}, {line} down the wall. Do not fill to it yet.</source>
        <translation>{scoop} lleva la línea del lote {next}, a {line} del borde. Todavía no llene hasta esa línea.</translation>
    </message>
    <message>
        <source>{scoop} bears two lines. Today fill to that of lot {lot}, {own} down the wall; that of lot {next}, {line} down the wall, holds from its change-over on.</source>
        <translation>{scoop} lleva dos líneas. Hoy llene hasta la del lote {lot}, a {own} del borde; la del lote {next}, a {line} del borde, sirve desde el cambio de lote.</translation>
    </message>
    <message>
        <source>{scoop} bears {count} lines. Today fill to those of lot {lot}, {own} down the wall; that of lot {next}, {line} down the wall, holds from its change-over on.</source>
        <translation>{scoop} lleva {count} líneas. Hoy llene hasta las del lote {lot}, a {own} del borde; la del lote {next}, a {line} del borde, sirve desde el cambio de lote.</translation>
    </message>
    <message>
        <source>Wipe out</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>New line</source>
        <translation>Línea nueva</translation>
    </message>
    <message>
        <source>Today&apos;s line</source>
        <translation>La línea de hoy</translation>
    </message>
    <message>
        <source>The next lot&apos;s</source>
        <translation>La del otro lote</translation>
    </message>
    <message>
        <source>{scoop}: {line} down the wall for {target}</source>
        <translation>{scoop}: a {line} del borde para {target}</translation>
    </message>
    <message>
        <source>{scoop}: do not use it for this lot</source>
        <translation>{scoop}: no la use con este lote</translation>
    </message>
</context>
<context>
    <name>LotChanges</name>
    <message>
        <source>Lot {new} was weighed in anew on {day}. Scoopfuls before → now:</source>
        <translation>El lote {new} se pesó otra vez el {day}. Medidas antes → ahora:</translation>
    </message>
    <message>
        <source>Lot {new} took the place of lot {old} on {day}. Scoopfuls before → now:</source>
        <translation>El lote {new} tomó el lugar del lote {old} el {day}. Medidas antes → ahora:</translation>
    </message>
    <message>
        <source>Outdated on the wall: chart no. {numbers}. Print it anew and take the old one down.</source>
        <translation>Tabla de pared que ya no sirve: impreso n.º {numbers}. Imprímala otra vez y quite la vieja.</translation>
    </message>
</context>
<context>
    <name>LotChooser</name>
    <message>
        <source>Every new lot number is weighed anew: its powder packs differently from the last one.</source>
        <translation>Cada lote nuevo se pesa otra vez: su polvo se asienta distinto que el anterior.</translation>
    </message>
    <message>
        <source>No lot is waiting. A newly delivered one is entered under Lots.</source>
        <translation>Ningún lote está esperando. El que llega se registra en Lotes.</translation>
    </message>
    <message>
        <source>Enter a newly &amp;delivered lot</source>
        <translation>Registrar un lote recién &amp;recibido</translation>
    </message>
    <message>
        <source>arrived on {day}</source>
        <translation>recibido el {day}</translation>
    </message>
    <message>
        <source>weigh-in left at: {step}</source>
        <translation>la pesada quedó en: {step}</translation>
    </message>
    <message>
        <source>{scoop}: {state}</source>
        <translation>{scoop}: {state}</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Weigh in</source>
        <translation>Pesar</translation>
    </message>
    <message>
        <source>Weigh in again</source>
        <translation>Pesar otra vez</translation>
    </message>
</context>
<context>
    <name>LotDetail</name>
    <message>
        <source>Fills of this lot</source>
        <translation>Llenadas de este lote</translation>
    </message>
    <message>
        <source>Nothing is weighed of this lot yet.</source>
        <translation>Todavía no se ha pesado nada de este lote.</translation>
    </message>
    <message>
        <source>Parts of the lot</source>
        <translation>Partes del lote</translation>
    </message>
    <message>
        <source>Signed off</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Fills</source>
        <translation>Llenadas</translation>
    </message>
    <message>
        <source>Label and history</source>
        <translation>Etiqueta e historial</translation>
    </message>
    <message>
        <source>in use: the only lot weighed in</source>
        <translation>en uso: el único lote pesado</translation>
    </message>
    <message>
        <source>What is weighed and signed off of a lot stands here. Press Add a lot to begin.</source>
        <translation>Aquí se ve lo pesado y lo firmado de un lote. Para empezar, oprima Agregar un lote.</translation>
    </message>
    <message>
        <source>Press Show all and choose a lot: what was weighed and signed off of it stands here.</source>
        <translation>Oprima Mostrar todo y elija un lote: aquí se ve lo que se pesó y se firmó de él.</translation>
    </message>
    <message>
        <source>A weigh-in is under way; it stands at this step: {step}. Press Go on weighing.</source>
        <translation>Hay una pesada en curso; está en este paso: {step}. Oprima Seguir pesando.</translation>
    </message>
    <message>
        <source>Another lot is fed now. Press Finished once none of this one is left.</source>
        <translation>Ahora se da otro lote. Oprima Ya se acabó cuando ya no quede nada de este.</translation>
    </message>
    <message>
        <source>Nothing is signed off yet for this lot. Press Weigh in to weigh fills of it.</source>
        <translation>Todavía no hay nada firmado de este lote. Oprima Pesar para pesar llenadas.</translation>
    </message>
    <message>
        <source>Nothing is signed off yet for this lot.</source>
        <translation>Todavía no hay nada firmado de este lote.</translation>
    </message>
    <message>
        <source>Signed off on {day} by {who}: mean of {bags}, {fills}.</source>
        <translation>Pesada firmada el {day} por {who}: promedio de {bags}, {fills}.</translation>
    </message>
    <message>
        <source>Once the scoop is marked, say so under Today.</source>
        <translation>Cuando la medida esté marcada, dígalo en Hoy.</translation>
    </message>
    <message>
        <source>To feed it again press Back into use.</source>
        <translation>Para volver a usarlo, oprima De nuevo en uso.</translation>
    </message>
    <message>
        <source>Weighed on {day}, brought in from {file}; not signed off.</source>
        <translation>Pesado el {day}, traído de {file}; sin firmar.</translation>
    </message>
    <message>
        <source>{low} to {high} (95 %)</source>
        <translation>{low} a {high} (95 %)</translation>
    </message>
    <message>
        <source>{scoop}, struck level</source>
        <translation>{scoop}, al ras</translation>
    </message>
    <message>
        <source>Bulk density</source>
        <translation>Densidad aparente</translation>
    </message>
    <message>
        <source>{scoop}, line down the wall</source>
        <translation>{scoop}, línea desde el borde</translation>
    </message>
    <message>
        <source>{scoop}, without a line</source>
        <translation>{scoop}, sin línea</translation>
    </message>
    <message>
        <source>for {target}</source>
        <translation>para {target}</translation>
    </message>
    <message>
        <source>Fed from {day} on.</source>
        <translation>Se usó desde el {day}.</translation>
    </message>
    <message>
        <source>Fed since {day}.</source>
        <translation>Se usa desde el {day}.</translation>
    </message>
    <message>
        <source>Is fed from {day} on, as planned.</source>
        <translation>Se usará desde el {day}, como está previsto.</translation>
    </message>
    <message>
        <source>The last of it was fed on {day}.</source>
        <translation>Lo último se usó el {day}.</translation>
    </message>
    <message>
        <source>Arrived {day}.</source>
        <translation>Recibido el {day}.</translation>
    </message>
    <message>
        <source>Made {day}.</source>
        <translation>Fabricado el {day}.</translation>
    </message>
    <message>
        <source>From {supplier}.</source>
        <translation>De {supplier}.</translation>
    </message>
    <message>
        <source>Plant {code}.</source>
        <translation>Planta {code}.</translation>
    </message>
    <message>
        <source>Agglomerated.</source>
        <translation>Aglomerado.</translation>
    </message>
    <message>
        <source>Not agglomerated.</source>
        <translation>No aglomerado.</translation>
    </message>
    <message>
        <source>{price} a tote.</source>
        <translation>{price} por supersaco.</translation>
    </message>
    <message>
        <source>{price} a bag.</source>
        <translation>{price} por costal.</translation>
    </message>
    <message>
        <source>protein</source>
        <translation>proteína</translation>
    </message>
    <message>
        <source>fat</source>
        <translation>grasa</translation>
    </message>
    <message>
        <source>fiber</source>
        <translation>fibra</translation>
    </message>
    <message>
        <source>ash</source>
        <translation>ceniza</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>Label: {parts}.</source>
        <translation>Etiqueta: {parts}.</translation>
    </message>
</context>
<context>
    <name>LotForm</name>
    <message>
        <source>Lot number</source>
        <translation>Número de lote</translation>
    </message>
    <message>
        <source>As printed on the bag or its tag.</source>
        <translation>Como está impreso en el costal o en su etiqueta.</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Arrived on</source>
        <translation>Recibido el</translation>
    </message>
    <message>
        <source>Made on</source>
        <translation>Fabricado el</translation>
    </message>
    <message>
        <source>Bags</source>
        <translation>Costales</translation>
    </message>
    <message>
        <source>Totes</source>
        <translation>Supersacos</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántos</translation>
    </message>
    <message>
        <source>Weight of each</source>
        <translation>Peso de cada uno</translation>
    </message>
    <message>
        <source>Fiber</source>
        <translation>Fibra</translation>
    </message>
    <message>
        <source>Often:</source>
        <translation>Lo común:</translation>
    </message>
    <message>
        <source>Protein</source>
        <translation>Proteína</translation>
    </message>
    <message>
        <source>How many bags or totes</source>
        <translation>Cuántos costales o supersacos</translation>
    </message>
    <message>
        <source>It tells how many bags to open. Leave it empty if not known yet.</source>
        <translation>De eso depende cuántos abrir. Déjelo vacío si aún no se sabe.</translation>
    </message>
    <message>
        <source>As printed on it.</source>
        <translation>Como está impreso.</translation>
    </message>
    <message>
        <source>Fat</source>
        <translation>Grasa</translation>
    </message>
    <message>
        <source>Ash</source>
        <translation>Ceniza</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>The plant or line that made it, where the bag tells.</source>
        <translation>La planta que lo hizo, o su línea de producción, si el costal lo dice.</translation>
    </message>
    <message>
        <source>Plant code</source>
        <translation>Clave de planta</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>Yes: agglomerated, instantized</source>
        <translation>Sí: aglomerado, instantáneo</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Price of each</source>
        <translation>Precio de cada uno</translation>
    </message>
    <message>
        <source>Medicated powder</source>
        <translation>Polvo medicado</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>As the last lot; type over it if not.</source>
        <translation>Como el último lote; si no, escriba encima.</translation>
    </message>
    <message>
        <source>As on the bags of this product before. Check each against the new bag; type over it if not.</source>
        <translation>Como en los costales anteriores; compare cada cifra con el costal nuevo.</translation>
    </message>
    <message>
        <source>Comes in</source>
        <translation>Viene en</translation>
    </message>
    <message>
        <source>From the label, percent of the powder. Leave empty what it does not say; it can follow later.</source>
        <translation>De la etiqueta, por ciento del polvo. Deje vacío lo que no diga; se puede poner después.</translation>
    </message>
    <message>
        <source>Agglomerated</source>
        <translation>Aglomerado</translation>
    </message>
    <message>
        <source>Label composition</source>
        <translation>Composición de la etiqueta</translation>
    </message>
    <message>
        <source>Type the lot number: each lot is weighed for itself.</source>
        <translation>Escriba el número de lote: cada lote se pesa por separado.</translation>
    </message>
    <message>
        <source>It was made after it arrived. Check both days.</source>
        <translation>Se fabricó después de recibirse. Revise las dos fechas.</translation>
    </message>
    <message>
        <source>It was made years before it arrived. Check both days.</source>
        <translation>Se fabricó años antes de llegar. Revise las dos fechas.</translation>
    </message>
    <message>
        <source>It is fed since {day}, before it arrived. Check both days.</source>
        <translation>Se usa desde el {day}, antes de recibirse. Revise las dos fechas.</translation>
    </message>
    <message>
        <source>Protein, fat, fiber, ash and moisture together are more than 100 %. Check them.</source>
        <translation>Proteína, grasa, fibra, ceniza y humedad suman más de 100 %. Revíselas.</translation>
    </message>
</context>
<context>
    <name>LotHistory</name>
    <message>
        <source>{what}; replaces {before}</source>
        <translation>{what}; reemplaza {before}</translation>
    </message>
    <message>
        <source>weigh-in begun</source>
        <translation>pesada iniciada</translation>
    </message>
    <message>
        <source>mix weighed for the Brix calibration: {powder} in {water}, read {readings}</source>
        <translation>mezcla pesada para la calibración Brix: {powder} en {water}, lectura {readings}</translation>
    </message>
    <message>
        <source>{bags} of {mass} emptied over {feedings}</source>
        <translation>{bags} de {mass} vaciados en {feedings}</translation>
    </message>
    <message>
        <source>bags: {count}</source>
        <translation>costales: {count}</translation>
    </message>
    <message>
        <source>trial of feeders begun: {scoop}, {way}</source>
        <translation>prueba de personal iniciada: {scoop}, {way}</translation>
    </message>
    <message>
        <source>lot {number} entered</source>
        <translation>lote {number} registrado</translation>
    </message>
    <message>
        <source>mix read: {readings}</source>
        <translation>lectura de la mezcla: {readings}</translation>
    </message>
    <message>
        <source>mix read: {readings}; solids {solids}, wanted {wanted}</source>
        <translation>lectura de la mezcla: {readings}; sólidos {solids}, deseados {wanted}</translation>
    </message>
    <message>
        <source>counts again: {fill}</source>
        <translation>vuelve a contar: {fill}</translation>
    </message>
    <message>
        <source>the striking out</source>
        <translation>la tachadura</translation>
    </message>
    <message>
        <source>struck out: {fill}, because: {reason}</source>
        <translation>tachada: {fill}, porque: {reason}</translation>
    </message>
    <message>
        <source>{person} filled {weight}</source>
        <translation>{person} llenó {weight}</translation>
    </message>
    <message>
        <source>{weight}, {way}</source>
        <translation>{weight}, {way}</translation>
    </message>
    <message>
        <source>{weight} for {count} scoopfuls</source>
        <translation>{weight} por {count} medidas</translation>
    </message>
    <message>
        <source>{weight}, {way}, bag {bag}</source>
        <translation>{weight}, {way}, costal {bag}</translation>
    </message>
    <message>
        <source>{scoop}, struck level: {mass} ({low} to {high}), mean of {bags}, {fills}</source>
        <translation>{scoop}, al ras: {mass} ({low} a {high}), promedio de {bags}, {fills}</translation>
    </message>
    <message>
        <source>the sign-off of {when} by {who}</source>
        <translation>la firma del {when} por {who}</translation>
    </message>
    <message>
        <source>{scoop}: line for {target} at {line}</source>
        <translation>{scoop}: línea para {target} a {line}</translation>
    </message>
    <message>
        <source>{scoop}: without a line, {target}</source>
        <translation>{scoop}: sin línea, {target}</translation>
    </message>
    <message>
        <source>the line at {line}</source>
        <translation>la línea a {line}</translation>
    </message>
    <message>
        <source>the line of another lot at {line}</source>
        <translation>la línea de otro lote a {line}</translation>
    </message>
    <message>
        <source>number {number}</source>
        <translation>el número {number}</translation>
    </message>
    <message>
        <source>{sheet}: taken down</source>
        <translation>{sheet}: quitada</translation>
    </message>
    <message>
        <source>{sheet}: replaced by something else</source>
        <translation>{sheet}: reemplazada por otra cosa</translation>
    </message>
    <message>
        <source>{sheet}: spoiled, it never got there</source>
        <translation>{sheet}: echada a perder, nunca llegó</translation>
    </message>
    <message>
        <source>{sheet}: stays up</source>
        <translation>{sheet}: se queda puesta</translation>
    </message>
    <message>
        <source>label for {name}, print no. {number}</source>
        <translation>etiqueta para {name}, impreso n.º {number}</translation>
    </message>
    <message>
        <source>wall chart for {name}, print no. {number}</source>
        <translation>tabla de pared para {name}, impreso n.º {number}</translation>
    </message>
    <message>
        <source>lot sheet for {name}, print no. {number}</source>
        <translation>hoja del lote para {name}, impreso n.º {number}</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Impreso</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Change-over</source>
        <translation>Cambio de lote</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Pesada</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Llenada</translation>
    </message>
    <message>
        <source>Sign-off</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Spot fill</source>
        <translation>Llenada de control</translation>
    </message>
    <message>
        <source>Check of the mix</source>
        <translation>Revisión de la mezcla</translation>
    </message>
    <message>
        <source>Count of bags</source>
        <translation>Conteo de costales</translation>
    </message>
    <message>
        <source>Trial of feeders</source>
        <translation>Prueba de personal</translation>
    </message>
</context>
<context>
    <name>LotHistoryDialog</name>
    <message>
        <source>History of lot {number}</source>
        <translation>Historial del lote {number}</translation>
    </message>
    <message>
        <source>Save as a table …</source>
        <translation>Guardar tabla …</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Saving the history as a table</source>
        <translation>Guardando el historial como tabla</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>Brought in from a file</source>
        <translation>Traído de un archivo</translation>
    </message>
    <message>
        <source>{when}, {who}: {what}</source>
        <translation>{when}, {who}: {what}</translation>
    </message>
    <message>
        <source>{when}: {what}</source>
        <translation>{when}: {what}</translation>
    </message>
    <message>
        <source>history</source>
        <translation>historial</translation>
    </message>
    <message>
        <source>Save the history as a table</source>
        <translation>Guardar el historial como tabla</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabla (*.csv)</translation>
    </message>
    <message>
        <source>All that was kept of this lot, newest first</source>
        <translation>Todo lo que se anotó de este lote, lo más reciente primero</translation>
    </message>
    <message>
        <source>Kind of entry</source>
        <translation>Clase de anotación</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Mostrar</translation>
    </message>
</context>
<context>
    <name>LotHistoryModel</name>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>What was kept</source>
        <translation>Qué se anotó</translation>
    </message>
</context>
<context>
    <name>LotsFilterBoxes</name>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>all products</source>
        <translation>todos los productos</translation>
    </message>
    <message>
        <source>all years</source>
        <translation>todos los años</translation>
    </message>
    <message>
        <source>any status</source>
        <translation>todos los estados</translation>
    </message>
</context>
<context>
    <name>LotsModel</name>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation>Recibido</translation>
    </message>
    <message>
        <source>Bags</source>
        <translation>Costales</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Density ±, g/mL</source>
        <translation>Densidad ±, g/mL</translation>
    </message>
    <message>
        <source>Density ±, oz/qt</source>
        <translation>Densidad ±, oz/qt</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Línea</translation>
    </message>
</context>
<context>
    <name>LotsPage</name>
    <message>
        <source>Lots</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>New lot</source>
        <translation>Lote nuevo</translation>
    </message>
    <message>
        <source>Correct lot {number}</source>
        <translation>Corregir el lote {number}</translation>
    </message>
    <message>
        <source>Lot {number} is kept.</source>
        <translation>El lote {number} quedó guardado.</translation>
    </message>
    <message>
        <source>Number, product …</source>
        <translation>Número, producto …</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Mostrar todo</translation>
    </message>
    <message>
        <source>&amp;Add a lot</source>
        <translation>A&amp;gregar un lote</translation>
    </message>
    <message>
        <source>We&amp;igh in</source>
        <translation>P&amp;esar</translation>
    </message>
    <message>
        <source>&amp;Correct</source>
        <translation>&amp;Corregir</translation>
    </message>
    <message>
        <source>&amp;Finished</source>
        <translation>&amp;Ya se acabó</translation>
    </message>
    <message>
        <source>&amp;Print label</source>
        <translation>&amp;Imprimir etiqueta</translation>
    </message>
    <message>
        <source>Lot s&amp;heet</source>
        <translation>Ho&amp;ja del lote</translation>
    </message>
    <message>
        <source>Histor&amp;y …</source>
        <translation>Hist&amp;orial …</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>G&amp;uardar</translation>
    </message>
    <message>
        <source>&amp;Go back without keeping</source>
        <translation>&amp;Regresar sin guardar</translation>
    </message>
    <message>
        <source>Fi&amp;nd</source>
        <translation>&amp;Buscar</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>No lot yet. Add the one that stands in the store.</source>
        <translation>Todavía no hay lotes. Agregue el que está en la bodega.</translation>
    </message>
    <message>
        <source>No lot fits what is asked for.</source>
        <translation>Ningún lote corresponde a lo buscado.</translation>
    </message>
    <message>
        <source>Back into &amp;use</source>
        <translation>De &amp;nuevo en uso</translation>
    </message>
    <message>
        <source>We&amp;igh in again …</source>
        <translation>&amp;Pesar otra vez …</translation>
    </message>
    <message>
        <source>Go on we&amp;ighing</source>
        <translation>S&amp;eguir pesando</translation>
    </message>
    <message>
        <source>Lot {number} is signed off. What was weighed stays in the records. A new sign-off takes its place: the lines, labels and charts made by the old one hold no more then. Weigh it in again?</source>
        <translation>El lote {number} está firmado. Lo pesado queda en los registros. Una firma nueva toma su lugar: las líneas, etiquetas y tablas hechas con la anterior dejan de servir. ¿Pesarlo otra vez?</translation>
    </message>
    <message>
        <source>Weigh in again</source>
        <translation>Pesar otra vez</translation>
    </message>
    <message>
        <source>It can be taken back into use at any time.</source>
        <translation>Se puede volver a poner en uso en cualquier momento.</translation>
    </message>
    <message>
        <source>From the next feeding on lot {number} is fed.</source>
        <translation>Desde la toma siguiente se usa el lote {number}.</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Ya se acabó</translation>
    </message>
    <message>
        <source>Lot {number} is finished.</source>
        <translation>El lote {number} se acabó.</translation>
    </message>
    <message>
        <source>Lot {number} is in use.</source>
        <translation>El lote {number} está en uso.</translation>
    </message>
    <message>
        <source>Lot {number} is no longer finished.</source>
        <translation>El lote {number} ya no está terminado.</translation>
    </message>
    <message>
        <source>Its line comes on the scoop again, and its chart up: Today asks for both.</source>
        <translation>Su línea vuelve a la medida y su tabla a la pared: Hoy pide las dos cosas.</translation>
    </message>
    <message>
        <source>Lot {number} is entered already.</source>
        <translation>El lote {number} ya está registrado.</translation>
    </message>
    <message>
        <source>Lot {number} is entered already. If more of it came, correct its number of bags. Open it? What you typed here stays until you keep it or go back.</source>
        <translation>El lote {number} ya está registrado. Si llegó más de él, corrija su número de costales. ¿Abrirlo? Lo que escribió aquí se queda hasta que lo guarde o regrese.</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Abrirlo</translation>
    </message>
</context>
<context>
    <name>LotsPanel</name>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>&amp;Open the lot</source>
        <translation>A&amp;brir el lote</translation>
    </message>
    <message>
        <source>&amp;Compare two</source>
        <translation>Comparar &amp;dos</translation>
    </message>
    <message>
        <source>a note on a lot</source>
        <translation>una nota sobre un lote</translation>
    </message>
    <message>
        <source>Note on lot {lot} kept.</source>
        <translation>Se guardó la nota del lote {lot}.</translation>
    </message>
    <message>
        <source>Note on lot {lot}</source>
        <translation>Nota sobre el lote {lot}</translation>
    </message>
    <message>
        <source>Here every lot that is signed off stands in a row. It begins with the first sign-off.</source>
        <translation>Aquí cada lote firmado tiene su renglón. Empieza con la primera firma.</translation>
    </message>
    <message>
        <source>The next lot that is signed off can be compared with this one.</source>
        <translation>El próximo lote firmado se podrá comparar con este.</translation>
    </message>
    <message>
        <source>Press Compare two.</source>
        <translation>Para comparar, oprima Comparar dos.</translation>
    </message>
    <message>
        <source>Press Compare two, then click the two lots.</source>
        <translation>Oprima Comparar dos y luego haga clic en los dos lotes.</translation>
    </message>
    <message>
        <source>These are more than two: click those away that are not meant.</source>
        <translation>Son más de dos: quite con un clic los que no van.</translation>
    </message>
    <message>
        <source>Now click one more lot.</source>
        <translation>Ahora haga clic en otro lote.</translation>
    </message>
    <message>
        <source>Now click the two lots.</source>
        <translation>Ahora haga clic en los dos lotes.</translation>
    </message>
    <message>
        <source>End &amp;comparing</source>
        <translation>Terminar de comparar &amp;dos</translation>
    </message>
    <message>
        <source>Number, product, scoop, in use …</source>
        <translation>Número, producto, en uso …</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Densities of the lots, newest first</source>
        <translation>Densidades de los lotes, el más reciente primero</translation>
    </message>
    <message>
        <source>Fin&amp;d</source>
        <translation>Bu&amp;scar</translation>
    </message>
</context>
<context>
    <name>Manual</name>
    <message>
        <source>Manual</source>
        <translation>Manual</translation>
    </message>
</context>
<context>
    <name>Marking</name>
    <message>
        <source>&amp;Old line off, label on</source>
        <translation>&amp;Anterior borrada, etiqueta puesta</translation>
    </message>
    <message>
        <source>The label &amp;is on</source>
        <translation>Etiqueta &amp;puesta</translation>
    </message>
    <message>
        <source>&amp;Line and label are on</source>
        <translation>Línea y etiqueta &amp;puestas</translation>
    </message>
    <message>
        <source>{scoop} is marked for lot {number}.</source>
        <translation>{scoop}: ya tiene su línea del lote {number}.</translation>
    </message>
    <message>
        <source>{scoop} bears the label of lot {number} and is used level.</source>
        <translation>{scoop} lleva la etiqueta del lote {number} y se usa al ras.</translation>
    </message>
    <message>
        <source>The label is not on</source>
        <translation>La etiqueta no está puesta</translation>
    </message>
    <message>
        <source>Not marked after all</source>
        <translation>No, aún sin marcar</translation>
    </message>
    <message>
        <source>Taken back: {scoop} is not marked for lot {number}.</source>
        <translation>Deshecho: {scoop} no está marcada para el lote {number}.</translation>
    </message>
    <message>
        <source>What line is on it now, nobody has told.</source>
        <translation>Qué línea lleva ahora, nadie lo ha dicho.</translation>
    </message>
    <message>
        <source>It bears that of lot {number}.</source>
        <translation>Lleva la del lote {number}.</translation>
    </message>
</context>
<context>
    <name>MeantInstead</name>
    <message>
        <source>Was {mass} meant?</source>
        <translation>¿Quiso decir {mass}?</translation>
    </message>
</context>
<context>
    <name>MixCheckPage</name>
    <message>
        <source>Mix check</source>
        <translation>Revisión de la mezcla</translation>
    </message>
    <message>
        <source>Parts of the mix check</source>
        <translation>Partes de la revisión de la mezcla</translation>
    </message>
    <message>
        <source>This &amp;mix</source>
        <translation>&amp;Esta mezcla</translation>
    </message>
    <message>
        <source>Ba&amp;gs</source>
        <translation>&amp;Costales</translation>
    </message>
    <message>
        <source>Histor&amp;y</source>
        <translation>Hi&amp;storial</translation>
    </message>
    <message>
        <source>Brix calibrati&amp;on</source>
        <translation>Calibració&amp;n Brix</translation>
    </message>
    <message>
        <source>Instrument &amp;checks</source>
        <translation>&amp;Revisar instrumentos</translation>
    </message>
    <message>
        <source>I&amp;nstruments</source>
        <translation>&amp;Instrumentos</translation>
    </message>
</context>
<context>
    <name>MixChecks</name>
    <message>
        <source>Type the temperature of the mix too: a density tells the solids only with it.</source>
        <translation>Escriba también la temperatura de la mezcla: solo con ella la densidad dice los sólidos.</translation>
    </message>
    <message>
        <source>Enter the jug and its volume under Instruments first.</source>
        <translation>Primero registre la jarra y su volumen en Instrumentos.</translation>
    </message>
    <message>
        <source>The shape of this vessel is not known, so a level tells no volume: type the volume.</source>
        <translation>No se conoce la forma de este recipiente, así que un nivel no dice el volumen: escriba el volumen.</translation>
    </message>
</context>
<context>
    <name>MixOdds</name>
    <message>
        <source>For how many calves is this?</source>
        <translation>¿Para cuántas becerras es?</translation>
    </message>
    <message>
        <source>Whose batch is this?</source>
        <translation>¿De quién es esta tanda?</translation>
    </message>
    <message>
        <source>The volume and the instrument cannot both be right. Add nothing before they were read again.</source>
        <translation>El volumen y el instrumento no pueden tener razón los dos. No agregue nada antes de leerlos otra vez.</translation>
    </message>
    <message>
        <source>The batch of {group} for {calves} is about {volume}, and so much was read; for {count} it is {planned}. Was it mixed for {calves}?</source>
        <translation>La tanda de {group} para {calves} es de unos {volume}, y eso se leyó; para {count} es de {planned}. ¿Se mezcló para {calves}?</translation>
    </message>
    <message>
        <source>The volume is that of the batch for {other}, {volume}: is it theirs?</source>
        <translation>El volumen es el de la tanda para {other}, {volume}: ¿es la de ese grupo?</translation>
    </message>
    <message>
        <source>The volume is that of the batch for {other}, {volume}, and the reading fits it: is it theirs?</source>
        <translation>El volumen es el de la tanda para {other}, {volume}, y la lectura concuerda: ¿es la de ese grupo?</translation>
    </message>
    <message>
        <source>Two ways disagree too far for any slip ({one}; {other}): no amount is told to be added. Look at these first:</source>
        <translation>Las dos maneras difieren demasiado para cualquier descuido ({one}; {other}): no se indica ninguna cantidad que agregar. Revise primero:</translation>
    </message>
    <message>
        <source>whether “Batch for” and “Calves” are those of this batch</source>
        <translation>que “Tanda para” y “Becerras” sean los de esta tanda</translation>
    </message>
</context>
<context>
    <name>MixWords</name>
    <message>
        <source>{mass} ({grams})</source>
        <translation>{mass} ({grams})</translation>
    </message>
    <message>
        <source>As it should be</source>
        <translation>Como debe ser</translation>
    </message>
    <message>
        <source>Too thin</source>
        <translation>Demasiado aguada</translation>
    </message>
    <message>
        <source>Too strong</source>
        <translation>Demasiado fuerte</translation>
    </message>
    <message>
        <source>Cannot tell yet</source>
        <translation>Todavía no se sabe</translation>
    </message>
    <message>
        <source>Looks right</source>
        <translation>Parece correcta</translation>
    </message>
    <message>
        <source>Right would be about {brix} °Brix.</source>
        <translation>Lo correcto sería marcar unos {brix} °Brix.</translation>
    </message>
    <message>
        <source>Right would be about {mass} of mix in the full jug, at {warmth}.</source>
        <translation>Lo correcto sería más o menos {mass} de mezcla en la jarra llena, a {warmth}.</translation>
    </message>
    <message>
        <source>Right would be about {sg} on the hydrometer, in a mix of {warmth}.</source>
        <translation>Lo correcto sería más o menos {sg} en el densímetro, con la mezcla a {warmth}.</translation>
    </message>
    <message>
        <source>Type what the hydrometer shows in the mix, and how warm the mix is: the verdict comes at once.</source>
        <translation>Escriba lo que marca el densímetro en la mezcla y la temperatura de la mezcla: el resultado llega enseguida.</translation>
    </message>
    <message>
        <source>Type what the mix in the jug weighs, and how warm it is: the verdict comes at once.</source>
        <translation>Escriba lo que pesa la mezcla en la jarra y su temperatura: el resultado llega enseguida.</translation>
    </message>
    <message>
        <source>Type the drops of the first pail, best three: the verdict comes at once.</source>
        <translation>Escriba las gotas de la primera cubeta, mejor tres: el resultado llega enseguida.</translation>
    </message>
    <message>
        <source>{solids} by {way}</source>
        <translation>{solids} por {way}</translation>
    </message>
    <message>
        <source>stir to the bottom and read again</source>
        <translation>remueva hasta el fondo y lea otra vez</translation>
    </message>
    <message>
        <source>count back the scoopfuls, and look whether they were filled to the line</source>
        <translation>vuelva a contar las medidas y vea si se llenaron hasta la línea</translation>
    </message>
    <message>
        <source>Too little powder</source>
        <translation>Falta polvo</translation>
    </message>
    <message>
        <source>Too much powder</source>
        <translation>Sobra polvo</translation>
    </message>
    <message>
        <source>{solids} solids as mixed (95 % interval {low} to {high}). Wanted: {target}, give or take {tolerance}.</source>
        <translation>{solids} de sólidos en la mezcla (intervalo del 95 %: {low} a {high}). Se desea {target}, más o menos {tolerance}.</translation>
    </message>
    <message>
        <source>hydrometer</source>
        <translation>densímetro</translation>
    </message>
    <message>
        <source>weighed jug</source>
        <translation>jarra pesada</translation>
    </message>
    <message>
        <source>finished volume</source>
        <translation>volumen ya mezclado</translation>
    </message>
    <message>
        <source>By the hydrometer, through the density of the mix.</source>
        <translation>Con el densímetro, por la densidad de la mezcla.</translation>
    </message>
    <message>
        <source>By the weighed jug, through the density of the mix.</source>
        <translation>Pesando la jarra, por la densidad de la mezcla.</translation>
    </message>
    <message>
        <source>By the finished volume, the powder taken for right: it finds wrong water, never wrong powder.</source>
        <translation>Por el volumen ya mezclado, suponiendo que se echó el polvo correcto: descubre errores en el agua, nunca en el polvo.</translation>
    </message>
    <message>
        <source>Solids here are powder as fed ÷ mix, the powder&apos;s own {water} of water counted in. As dry matter that is {dry}.</source>
        <translation>Aquí sólidos = peso del polvo ÷ peso de la mezcla (el polvo trae {water} de agua). En materia seca son {dry}.</translation>
    </message>
    <message>
        <source>This reading lies beyond the weighed mixes that the line was made from.</source>
        <translation>Esta lectura queda fuera de las mezclas pesadas con que se hizo la calibración.</translation>
    </message>
    <message>
        <source>This reading tells no more than {low} to {high} solids. Weighed mixes tell more, once for this powder: two make a start, six a sure verdict; see the tab Brix calibration.</source>
        <translation>Esta lectura solo dice que hay de {low} a {high} de sólidos. Para saber más, prepare mezclas pesando el polvo y el agua, una sola vez para este polvo: con dos se empieza, con seis el resultado es firme; vea la pestaña Calibración Brix.</translation>
    </message>
    <message>
        <source>One more drop would tell, if it reads like these.</source>
        <translation>Con una gota más se sabría, si marca como estas.</translation>
    </message>
    <message>
        <source>{count} more drops would tell, if they read like these.</source>
        <translation>Con {count} gotas más se sabría, si marcan como estas.</translation>
    </message>
    <message>
        <source>Check the instrument in plain water; then this reading tells more.</source>
        <translation>Revise el instrumento en agua sola; entonces esta lectura dice más.</translation>
    </message>
    <message>
        <source>Brix calibration</source>
        <translation>calibración Brix</translation>
    </message>
    <message>
        <source>Probably too thin, not sure yet</source>
        <translation>Quizás demasiado aguada; aún no se sabe bien</translation>
    </message>
    <message>
        <source>Probably too strong, not sure yet</source>
        <translation>Quizás demasiado fuerte; aún no se sabe bien</translation>
    </message>
    <message>
        <source>Two instruments disagree ({one}; {other}). Read with both again before you add anything.</source>
        <translation>Dos instrumentos no concuerdan ({one}; {other}). Lea otra vez con los dos antes de agregar nada.</translation>
    </message>
    <message>
        <source>Two instruments disagree ({one}; {other}). Check both in plain water before you add anything.</source>
        <translation>Dos instrumentos no concuerdan ({one}; {other}). Revise los dos en agua sola antes de agregar nada.</translation>
    </message>
    <message>
        <source>Two ways disagree ({one}; {other}), and wrong powder alone would not make the volume so different. Before you add anything:</source>
        <translation>Dos lecturas no concuerdan ({one}; {other}), y un error de polvo solo no cambiaría tanto el volumen. Antes de agregar nada:</translation>
    </message>
    <message>
        <source>If both then read the same, powder and water were wrong. Only then:</source>
        <translation>Si los dos vuelven a dar lo mismo, fallaron el polvo y el agua. Solo entonces:</translation>
    </message>
    <message>
        <source>rule Brix + 2</source>
        <translation>regla Brix + 2</translation>
    </message>
    <message>
        <source>By the farm&apos;s own Brix calibration for this powder, from {count} weighed mixes.</source>
        <translation>Con la calibración Brix propia del establo para este polvo, de {count} mezclas pesadas.</translation>
    </message>
    <message>
        <source>By a published calibration for whole milk ({slope} Brix + {intercept}). Milk replacers differ from it: make your own.</source>
        <translation>Con una calibración publicada para leche entera ({slope} Brix + {intercept}). Los sustitutos no dan exactamente lo mismo: haga la suya.</translation>
    </message>
    <message>
        <source>By the rule of thumb Brix + 2, which is rough: make your own Brix calibration.</source>
        <translation>Con la regla Brix + 2, que es aproximada: haga su propia calibración Brix.</translation>
    </message>
    <message>
        <source>The conversion for whole milk tells dry matter and was brought to powder as fed; Brix + 2 is taken for powder as fed as it stands. Hence the difference.</source>
        <translation>La conversión de leche entera da materia seca y aquí se pasó a peso de polvo; Brix + 2 se toma tal cual como peso de polvo. De ahí la diferencia.</translation>
    </message>
    <message>
        <source>{way}: {solids} ± {half}</source>
        <translation>{way}: {solids} ± {half}</translation>
    </message>
    <message>
        <source>Before the next check read plain water: that was never done, and the zero may be off.</source>
        <translation>Antes de la próxima revisión lea agua sola: nunca se ha hecho, y el cero puede estar corrido.</translation>
    </message>
    <message>
        <source>The volume alone does not tell it. Read three drops of the mix with a refractometer.</source>
        <translation>El volumen por sí solo no lo dice. Lea tres gotas de la mezcla con un refractómetro.</translation>
    </message>
    <message>
        <source>Add weighed mixes to the Brix calibration; they make it surer.</source>
        <translation>Agregue mezclas pesadas a la calibración Brix; la hacen más precisa.</translation>
    </message>
    <message>
        <source>Probably too thin</source>
        <translation>Quizás aguada</translation>
    </message>
    <message>
        <source>Probably too strong</source>
        <translation>Quizás fuerte</translation>
    </message>
    <message>
        <source>But two instruments disagree: one reads wrong. First read with both again.</source>
        <translation>Pero dos instrumentos no concuerdan: uno lee mal. Primero vuelva a leer con los dos.</translation>
    </message>
    <message>
        <source>But two instruments disagree: one reads wrong. First check both in plain water.</source>
        <translation>Pero dos instrumentos no concuerdan: uno lee mal. Primero revise los dos en agua sola.</translation>
    </message>
    <message>
        <source>But the instrument does not agree with the volume. First stir to the bottom and read both again.</source>
        <translation>Pero el instrumento no concuerda con el volumen. Primero revuelva hasta el fondo y lea otra vez los dos.</translation>
    </message>
    <message>
        <source>stir to the bottom and read three fresh drops</source>
        <translation>remueva hasta el fondo y lea tres gotas nuevas</translation>
    </message>
    <message>
        <source>read the volume again</source>
        <translation>lea otra vez el volumen</translation>
    </message>
    <message>
        <source>count back the scoopfuls, and look whether they were filled to the line of this lot and not of the one before</source>
        <translation>vuelva a contar las medidas y vea si se llenaron hasta la línea de este lote y no la del anterior</translation>
    </message>
    <message>
        <source>check the instrument in plain water</source>
        <translation>revise el instrumento en agua sola</translation>
    </message>
    <message>
        <source>Only once both agree:</source>
        <translation>Solo cuando las dos concuerden:</translation>
    </message>
    <message>
        <source>whole-milk conversion</source>
        <translation>conversión de leche entera</translation>
    </message>
    <message>
        <source>Solids here are powder as fed ÷ mix, the powder&apos;s own water counted in: {water} assumed; type the moisture from the bag under Lots. As dry matter that is {dry}.</source>
        <translation>Aquí sólidos = peso del polvo ÷ peso de la mezcla (se supone que el polvo trae {water} de agua; anote en Lotes la humedad que dice el costal). En materia seca son {dry}.</translation>
    </message>
    <message>
        <source>The scale showed {share} too much at the weigh-in: the jug&apos;s weight is corrected for it.</source>
        <translation>La báscula marcó {share} de más en la pesada: el peso de la jarra está corregido por eso.</translation>
    </message>
    <message>
        <source>The scale showed {share} too little at the weigh-in: the jug&apos;s weight is corrected for it.</source>
        <translation>La báscula marcó {share} de menos en la pesada: el peso de la jarra está corregido por eso.</translation>
    </message>
    <message>
        <source>The instrument was never checked in plain water: its zero may be off.</source>
        <translation>El instrumento nunca se revisó en agua sola: su cero puede estar corrido.</translation>
    </message>
    <message>
        <source>The instrument&apos;s last check in plain water is more than a week old.</source>
        <translation>La última revisión del instrumento en agua sola tiene más de una semana.</translation>
    </message>
    <message>
        <source>The instrument&apos;s last check in plain water is more than a week old: do it again.</source>
        <translation>La última revisión del instrumento en agua sola tiene más de una semana: repítala.</translation>
    </message>
    <message>
        <source>The instrument was never checked in a sugar solution.</source>
        <translation>El instrumento nunca se revisó en una solución de azúcar.</translation>
    </message>
    <message>
        <source>The instrument&apos;s last check in a sugar solution is more than three months old.</source>
        <translation>La última revisión del instrumento en una solución de azúcar tiene más de tres meses.</translation>
    </message>
    <message>
        <source>The instrument read the sugar solution wrong. Do not trust it until it was cleaned and checked again.</source>
        <translation>El instrumento marcó mal la solución de azúcar. No confíe en él hasta limpiarlo y revisarlo otra vez.</translation>
    </message>
    <message>
        <source>The instrument does not compensate for temperature: type how warm it is.</source>
        <translation>El instrumento no compensa la temperatura: anote a qué temperatura está.</translation>
    </message>
    <message>
        <source>The instrument does not compensate for temperature, and nobody told how warm it was in plain water: check it again.</source>
        <translation>El instrumento no compensa la temperatura, y nadie anotó a qué temperatura estaba en agua sola: revíselo otra vez.</translation>
    </message>
    <message>
        <source>An additive is in the mix, and may show in a refractometer otherwise than powder does: this reading is less sure. Hydrometer and weighed jug go by the whole recipe.</source>
        <translation>La mezcla lleva un aditivo, que en el refractómetro puede marcar distinto que el polvo: esta lectura deja más duda. El densímetro y la jarra pesada cuentan con toda la receta.</translation>
    </message>
    <message>
        <source>More drops would not settle it. Weighed mixes would, once for this powder: two make a start, six a sure verdict; see the tab Brix calibration.</source>
        <translation>Con más gotas no se sabría más. Para saberlo, prepare mezclas pesando el polvo y el agua, una sola vez para este polvo: con dos se empieza, con seis el resultado es firme; vea la pestaña Calibración Brix.</translation>
    </message>
    <message>
        <source>The reading is too near the limit for this instrument. Weigh the powder of the next batch instead.</source>
        <translation>La lectura está demasiado cerca del límite para este instrumento. Mejor pese el polvo de la próxima tanda.</translation>
    </message>
    <message>
        <source>The volume alone does not tell it. Float the hydrometer in the mix.</source>
        <translation>El volumen por sí solo no lo dice. Ponga el densímetro a flotar en la mezcla.</translation>
    </message>
    <message>
        <source>The volume alone does not tell it. Weigh a jug full of the mix.</source>
        <translation>El volumen por sí solo no lo dice. Pese una jarra llena de mezcla.</translation>
    </message>
    <message>
        <source>On average nothing speaks against it, but the pails differ: see below.</source>
        <translation>En promedio nada indica que esté mal, pero las cubetas difieren: vea abajo.</translation>
    </message>
    <message>
        <source>It can be fed: nothing speaks against it.</source>
        <translation>Puede darla: nada indica que esté mal.</translation>
    </message>
    <message>
        <source>Feed it if water and powder were measured as the chart says. This reading alone is no proof that it is wrong.</source>
        <translation>Désela si el agua y el polvo se midieron como dice la tabla. Esta lectura sola no prueba que esté mal.</translation>
    </message>
    <message>
        <source>A mean reading between {low} and {high} °Brix would surely be right.</source>
        <translation>Una lectura promedio entre {low} y {high} °Brix estaría bien sin duda.</translation>
    </message>
    <message>
        <source>The first pail and the last are alike.</source>
        <translation>La primera cubeta y la última son iguales.</translation>
    </message>
    <message>
        <source>The first pail is stronger than the last: powder settles. Agitate gently while you feed, and feed at once after mixing.</source>
        <translation>La primera cubeta está más fuerte que la última: el polvo se asienta. Mueva la mezcla suavemente mientras la da, y désela enseguida después de mezclar.</translation>
    </message>
    <message>
        <source>The last pail is stronger than the first: fat rises, from standing or from over-mixing. Mix no longer than the label says, agitate gently, feed at once.</source>
        <translation>La última cubeta está más fuerte que la primera: la grasa sube, por reposar o por mezclar de más. No mezcle más de lo que dice la etiqueta, mueva suavemente y dé la mezcla enseguida.</translation>
    </message>
    <message>
        <source>First pail against last: cannot tell. Read three or more drops of each, from fresh samples.</source>
        <translation>Primera cubeta contra última: no se sabe. Lea tres gotas o más de cada una, de muestras frescas.</translation>
    </message>
    <message>
        <source>{what}, more than people usually lose count of</source>
        <translation>{what}, más de las que suelen perderse en la cuenta</translation>
    </message>
    <message>
        <source>{what}: that would give {solids}</source>
        <translation>{what}: eso daría {solids}</translation>
    </message>
    <message>
        <source>What to add is worked out for the volume in the vessel and up to the solids wanted; what is missing, from the count on the chart to the nearest scoopful. So the two can differ a little.</source>
        <translation>Lo que se agrega se calcula para el volumen del recipiente y hasta los sólidos que se quieren; lo que falta, a partir de las medidas de la tabla y en medidas enteras. Por eso pueden diferir un poco.</translation>
    </message>
    <message>
        <source>{count} scoopfuls too few</source>
        <translation>{count} medidas de menos</translation>
    </message>
    <message>
        <source>{count} scoopfuls too many</source>
        <translation>{count} medidas de más</translation>
    </message>
    <message>
        <source>{volume} of water too much, as the volume in the vessel tells</source>
        <translation>{volume} de agua de más, según el volumen en el recipiente</translation>
    </message>
    <message>
        <source>{volume} of water too little, as the volume in the vessel tells</source>
        <translation>{volume} de agua de menos, según el volumen en el recipiente</translation>
    </message>
    <message>
        <source>Mixed as on the chart, the reading is off by chance</source>
        <translation>Se mezcló como dice la tabla y la lectura se aparta por casualidad</translation>
    </message>
    <message>
        <source>The line or the chart of the lot before was used</source>
        <translation>Se usó la línea o la tabla del lote anterior</translation>
    </message>
    <message>
        <source>One scoopful too few</source>
        <translation>Una medida de menos</translation>
    </message>
    <message>
        <source>One scoopful too many</source>
        <translation>Una medida de más</translation>
    </message>
    <message>
        <source>The finished volume was drawn as water</source>
        <translation>Se puso de agua lo que debía medir la mezcla completa</translation>
    </message>
    <message>
        <source>Water and powder together were filled up to the mark for the water</source>
        <translation>Con todo y polvo se llenó hasta el nivel que era solo para el agua</translation>
    </message>
    <message>
        <source>Powder for one calf fewer than the water</source>
        <translation>Se echó polvo para una becerra menos</translation>
    </message>
    <message>
        <source>Powder for one calf more than the water</source>
        <translation>Se echó polvo para una becerra más</translation>
    </message>
    <message>
        <source>The scoop was struck level in place of filled to its line</source>
        <translation>La medida se rasó en vez de llenarse hasta su línea</translation>
    </message>
    <message>
        <source>The additives were left out</source>
        <translation>Faltaron los aditivos</translation>
    </message>
    <message>
        <source>fits well</source>
        <translation>concuerda bien</translation>
    </message>
    <message>
        <source>possible</source>
        <translation>posible</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation>no concuerda</translation>
    </message>
    <message>
        <source>Perhaps below 12 % solids, which is weaker than what is usually aimed at.</source>
        <translation>Quizás tenga menos de 12 % de sólidos: sería más aguada de lo que se suele buscar.</translation>
    </message>
    <message>
        <source>This is hot enough to scald skin. Keep hands and children away, and never feed it before it has cooled.</source>
        <translation>A esta temperatura el agua o la mezcla quema la piel. No meta las manos, aleje a los niños y nunca la dé antes de que se enfríe.</translation>
    </message>
    <message>
        <source>Too hot to drink: let it cool. Calves want it at 100 to 105 °F (38 to 41 °C).</source>
        <translation>Demasiado caliente para tomarla: déjela enfriar. Las becerras la quieren de 100 a 105 °F (38 a 41 °C).</translation>
    </message>
    <message>
        <source>Too cool for calves: below 85 °F (29 °C or less). They want 100 to 105 °F (38 to 41 °C).</source>
        <translation>Demasiado fría para las becerras: menos de 85 °F (29 °C o menos). La quieren de 100 a 105 °F (38 a 41 °C).</translation>
    </message>
    <message>
        <source>Above 17 % solids calves risk scours. Do not feed it like this.</source>
        <translation>Con más de 17 % de sólidos las becerras corren riesgo de diarrea. No la dé así.</translation>
    </message>
    <message>
        <source>Below 12 % solids: weaker than what is usually aimed at.</source>
        <translation>Menos de 12 % de sólidos: más aguada de lo que se suele buscar.</translation>
    </message>
    <message>
        <source>So much powder brings the osmolality, by an estimate from the label, above 400 mOsm/kg: keep fresh water before the calves. By common practice scours are a risk from there on; other advice sees it only above 600. A refractometer does not measure it.</source>
        <translation>Con tanto polvo la osmolalidad, estimada por la etiqueta, pasa de 400 mOsm/kg: que no les falte agua limpia a las becerras. Según la práctica común, de ahí en adelante hay riesgo de diarrea; otros lo ven solo arriba de 600. Un refractómetro no la mide.</translation>
    </message>
    <message>
        <source>Calves under two weeks are the first to suffer from a strong mix, and all need free water. The label and your veterinarian decide.</source>
        <translation>Las becerras de menos de dos semanas son las primeras en resentir una mezcla fuerte, y todas necesitan agua a libre acceso. Deciden la etiqueta y su veterinario.</translation>
    </message>
    <message>
        <source>Thinner than you want it, and still stronger than what is usually aimed at: calves under two weeks are the first to suffer from that, and all need free water. The label and your veterinarian decide.</source>
        <translation>Más aguada de lo que usted quiere y aun así por encima de lo que se suele buscar: las becerras de menos de dos semanas son las primeras en resentirlo, y todas necesitan agua a libre acceso. Deciden la etiqueta y su veterinario.</translation>
    </message>
    <message>
        <source>That is far off. First stir to the bottom, read again, and count what went in. Only then:</source>
        <translation>Está muy lejos de lo deseado. Primero revuelva hasta el fondo, lea otra vez y vuelva a contar lo que se echó. Solo después:</translation>
    </message>
    <message>
        <source>The vessel would run over. First take out {volume} of mix into another vessel.</source>
        <translation>No cabría en el recipiente. Primero pase {volume} de mezcla a otro.</translation>
    </message>
    <message>
        <source>Add {volume} of water at mixing temperature and stir gently.</source>
        <translation>Agregue {volume} de agua a la temperatura de mezcla y mueva suavemente.</translation>
    </message>
    <message>
        <source>Then there are {volume} in the vessel, at about {temperature}. Read it again.</source>
        <translation>Quedarán {volume} en el recipiente, a unos {temperature}. Lea otra vez la mezcla.</translation>
    </message>
    <message>
        <source>Add {weight} of powder, weighed, and mix it in.</source>
        <translation>Agregue {weight} de polvo, pesado, y mézclelo.</translation>
    </message>
    <message>
        <source>Add {weight} of powder, weighed, and mix it in. By the scoop: {scoops}, that is {total}.</source>
        <translation>Agregue {weight} de polvo, pesado, y mézclelo. Con la medida: {scoops}, o sea {total}.</translation>
    </message>
    <message>
        <source>The recipe has in proportion to it: {others}. Add that only where it is missing too, and never beyond the dose on the label; about a medicine ask your veterinarian first.</source>
        <translation>A eso le corresponde según la receta: {others}. Agréguelo solo si también falta, y nunca más que la dosis de la etiqueta; si es un medicamento, pregunte antes a su veterinario.</translation>
    </message>
    <message>
        <source>{temperatures} (95 %).</source>
        <translation>{temperatures} (95 %).</translation>
    </message>
    <message>
        <source>{warmth}: as calves want it.</source>
        <translation>{warmth}: la temperatura que toman bien las becerras.</translation>
    </message>
    <message>
        <source>{warmth} is cooler than the {low} to {high} that calves want, about as warm as they are themselves. The product&apos;s label decides.</source>
        <translation>La mezcla a {warmth} está más fría de lo que toman bien las becerras: de {low} a {high}, más o menos su propia temperatura. Decide la etiqueta del producto.</translation>
    </message>
    <message>
        <source>{warmth} is warmer than the {low} to {high} that calves want. The product&apos;s label decides.</source>
        <translation>La mezcla a {warmth} está más caliente de lo que toman bien las becerras: de {low} a {high}. Decide la etiqueta del producto.</translation>
    </message>
    <message>
        <source>The water was cooler than the {planned} of the plan.</source>
        <translation>El agua estaba más fría que los {planned} del plan.</translation>
    </message>
    <message>
        <source>The water was as warm as the plan has it.</source>
        <translation>El agua estaba a la temperatura del plan.</translation>
    </message>
    <message>
        <source>The water was warmer than the {planned} of the plan.</source>
        <translation>El agua estaba más caliente que los {planned} del plan.</translation>
    </message>
    <message>
        <source>Water {warmth}</source>
        <translation>Agua {warmth}</translation>
    </message>
    <message>
        <source>Mix {warmth}</source>
        <translation>Mezcla {warmth}</translation>
    </message>
    <message>
        <source>At the calf {warmth}</source>
        <translation>Al darla {warmth}</translation>
    </message>
    <message>
        <source>Check the thermometer in ice water to be surer.</source>
        <translation>Revise el termómetro en agua con hielo para saberlo mejor.</translation>
    </message>
    <message>
        <source>The thermometer showed {degrees} too much in ice water; that is taken off.</source>
        <translation>El termómetro marcó {degrees} de más en agua con hielo; ya está descontado.</translation>
    </message>
    <message>
        <source>The thermometer showed {degrees} too little in ice water; that is added.</source>
        <translation>El termómetro marcó {degrees} de menos en agua con hielo; ya está sumado.</translation>
    </message>
    <message>
        <source>So far off it is not to be trusted: adjust or replace it.</source>
        <translation>Tan desviado no es de fiar: ajústelo o cámbielo.</translation>
    </message>
    <message>
        <source>First read it again, the volume too, and look whose batch it was.</source>
        <translation>Primero lea otra vez, también el volumen, y vea de quién era la tanda.</translation>
    </message>
    <message>
        <source>To put it right: {fix}</source>
        <translation>Para corregirlo: {fix}</translation>
    </message>
    <message>
        <source>To put it right, but only once both ways agree: {fix}</source>
        <translation>Para corregirlo, pero solo cuando las dos lecturas concuerden: {fix}</translation>
    </message>
    <message>
        <source>To put it right, but only if both read the same once more: {fix}</source>
        <translation>Para corregirlo, pero solo si los dos vuelven a dar lo mismo: {fix}</translation>
    </message>
</context>
<context>
    <name>Notice</name>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Carpeta</translation>
    </message>
    <message>
        <source>Show the folder</source>
        <translation>Mostrar la carpeta</translation>
    </message>
    <message>
        <source>Close the notice</source>
        <translation>Cerrar el aviso</translation>
    </message>
    <message>
        <source>Folder: {folder}</source>
        <translation>Carpeta: {folder}</translation>
    </message>
</context>
<context>
    <name>OccasionForm</name>
    <message>
        <source>choose a lot</source>
        <translation>elija un lote</translation>
    </message>
    <message>
        <source>Mixed on</source>
        <translation>Se mezcló el</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>At what time</source>
        <translation>A qué hora</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>Mixed from lot</source>
        <translation>Lote con que se mezcló</translation>
    </message>
    <message>
        <source>{time} on {day} is still to come.</source>
        <translation>Las {time} del {day} aún no llegan.</translation>
    </message>
    <message>
        <source>{on} is too early: lot {lot} came only on {day}. Choose the lot that was fed then, or correct the day.</source>
        <translation>El {on} es demasiado pronto: el lote {lot} llegó apenas el {day}. Elija el lote que se usaba entonces o corrija el día.</translation>
    </message>
    <message>
        <source>Taken as {time}; type it to be exact.</source>
        <translation>Se toma como {time}; escríbala para ser exacto.</translation>
    </message>
    <message>
        <source>Lot {lot} was weighed in only on {day}. Was the mix of this day really made from it?</source>
        <translation>El lote {lot} se pesó apenas el {day}. ¿De veras se hizo con él la mezcla de este día?</translation>
    </message>
    <message>
        <source>Weighed in {day}.</source>
        <translation>Pesado el {day}.</translation>
    </message>
</context>
<context>
    <name>OutcomeStep</name>
    <message>
        <source>What the file comes to</source>
        <translation>Lo que resulta del archivo</translation>
    </message>
    <message>
        <source>New lots</source>
        <translation>Lotes nuevos</translation>
    </message>
    <message>
        <source>New weigh-ins</source>
        <translation>Pesadas nuevas</translation>
    </message>
    <message>
        <source>There already</source>
        <translation>Ya estaban</translation>
    </message>
    <message>
        <source>Cells to correct</source>
        <translation>Celdas por corregir</translation>
    </message>
    <message>
        <source>To correct: {count}</source>
        <translation>Por corregir: {count}</translation>
    </message>
    <message>
        <source>New lots: {count}</source>
        <translation>Lotes nuevos: {count}</translation>
    </message>
    <message>
        <source>New weigh-ins: {count}</source>
        <translation>Pesadas nuevas: {count}</translation>
    </message>
    <message>
        <source>There already: {count}</source>
        <translation>Ya estaban: {count}</translation>
    </message>
    <message>
        <source>The weigh-ins are kept as brought in from {file}. They are not signed off and make no line; where the scoop is known the season shows their density.</source>
        <translation>Las pesadas se guardan como traídas de {file}. No están firmadas y no dan línea; si se conoce la medida, la temporada muestra su densidad.</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Fila</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Columna</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Encontrado</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
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
        <source>Arrived</source>
        <translation>Recibido</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Fabricado</translation>
    </message>
    <message>
        <source>Bags</source>
        <translation>Costales</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Lot {number}</source>
        <translation>Lote {number}</translation>
    </message>
    <message>
        <source>The fill of row {row}</source>
        <translation>La llenada de la fila {row}</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>Fills</source>
        <translation>Llenadas</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Pesos</translation>
    </message>
</context>
<context>
    <name>PagePreview</name>
    <message>
        <source>Preview of the print</source>
        <translation>Vista previa</translation>
    </message>
    <message>
        <source>Page {page} of {pages}</source>
        <translation>Página {page} de {pages}</translation>
    </message>
</context>
<context>
    <name>PaperChoice</name>
    <message>
        <source>Scoop l&amp;abels</source>
        <translation>&amp;Etiquetas para medidas</translation>
    </message>
    <message>
        <source>Wall c&amp;hart</source>
        <translation>Ta&amp;bla de pared</translation>
    </message>
    <message>
        <source>L&amp;ot sheet</source>
        <translation>Ho&amp;ja del lote</translation>
    </message>
    <message>
        <source>Pla&amp;n</source>
        <translation>Pla&amp;n</translation>
    </message>
    <message>
        <source>Strip down the wall</source>
        <translation>Tira vertical en la pared</translation>
    </message>
    <message>
        <source>Wrap, right around</source>
        <translation>Envolvente, todo alrededor</translation>
    </message>
    <message>
        <source>Ready-cut labels</source>
        <translation>Etiquetas precortadas</translation>
    </message>
    <message>
        <source>&amp;Kind of label</source>
        <translation>Cla&amp;se de etiqueta</translation>
    </message>
    <message>
        <source>&amp;Copies of each label</source>
        <translation>&amp;Copias de cada etiqueta</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>English</source>
        <translation>Inglés</translation>
    </message>
    <message>
        <source>Spanish</source>
        <translation>Español</translation>
    </message>
    <message>
        <source>English and Spanish</source>
        <translation>Inglés y español</translation>
    </message>
    <message>
        <source>A wrap is as long as its scoop goes around: cut it from plain paper.</source>
        <translation>La envolvente es tan larga como la vuelta de su medida: córtela de papel normal.</translation>
    </message>
    <message>
        <source>The page Today asks for no wall charts; under Set-up it can be told to again.</source>
        <translation>La página Hoy no pide tablas de pared; en Ajustes se puede volver a pedir.</translation>
    </message>
    <message>
        <source>Pape&amp;r</source>
        <translation>&amp;Formato del papel</translation>
    </message>
    <message>
        <source>Lang&amp;uage of the paper</source>
        <translation>I&amp;dioma del papel</translation>
    </message>
</context>
<context>
    <name>PaperPanel</name>
    <message>
        <source>&amp;Make a plan</source>
        <translation>Ha&amp;cer un plan</translation>
    </message>
    <message>
        <source>&amp;Print</source>
        <translation>&amp;Imprimir</translation>
    </message>
    <message>
        <source>Save as P&amp;DF</source>
        <translation>G&amp;uardar PDF</translation>
    </message>
    <message>
        <source>&amp;Go back</source>
        <translation>At&amp;rás</translation>
    </message>
    <message>
        <source>A size is missing or not understood. Correct it, then print.</source>
        <translation>Falta un tamaño o no se entiende. Corríjalo y luego imprima.</translation>
    </message>
    <message>
        <source>This is print no. {number}, made at {time}. Printed once more it takes a new number.</source>
        <translation>Este es el impreso n.º {number}, hecho a las {time}. Si se imprime otra vez, lleva otro número.</translation>
    </message>
    <message>
        <source>This will be print no. {number}.</source>
        <translation>Será el impreso n.º {number}.</translation>
    </message>
    <message>
        <source>This will be print no. {number}. It replaces no. {old} once this lot is fed.</source>
        <translation>Será el impreso n.º {number}. Reemplaza el n.º {old} cuando se use este lote.</translation>
    </message>
    <message>
        <source>This will be print no. {number}. It replaces no. {old}: take that one off.</source>
        <translation>Será el impreso n.º {number}. Reemplaza el n.º {old}: quítelo.</translation>
    </message>
    <message>
        <source>This will be print no. {number}. It replaces no. {old} in the folder.</source>
        <translation>Será el impreso n.º {number}. Reemplaza el n.º {old} en la carpeta.</translation>
    </message>
    <message>
        <source>This will be print no. {number}. It replaces no. {old}: take that one down.</source>
        <translation>Será el impreso n.º {number}. Reemplaza el n.º {old}: descuélguelo.</translation>
    </message>
    <message>
        <source>Saved as {name}.</source>
        <translation>Guardado como {name}.</translation>
    </message>
    <message>
        <source>Sent to {name}.</source>
        <translation>Enviado a {name}.</translation>
    </message>
    <message>
        <source>the printer</source>
        <translation>la impresora</translation>
    </message>
    <message>
        <source>Print at 100 %, never “fit to page”. Then lay a ruler on the two bars at the foot of the sheet: if they are off, throw it away.</source>
        <translation>Imprima al 100 %, nunca “ajustar a la página”. Luego mida con una regla las dos barras al pie de la hoja: si no miden lo que dicen, tírela.</translation>
    </message>
    <message>
        <source>Saving as PDF</source>
        <translation>Guardando como PDF</translation>
    </message>
    <message>
        <source>Printing</source>
        <translation>Imprimiendo</translation>
    </message>
    <message>
        <source>For lot {number}</source>
        <translation>Para el lote {number}</translation>
    </message>
    <message>
        <source>Making the preview …</source>
        <translation>Preparando la vista previa …</translation>
    </message>
    <message>
        <source>No lot is signed off yet. Weigh one in and sign it off, then print.</source>
        <translation>Todavía no hay lotes firmados. Pese uno y fírmelo; luego imprima.</translation>
    </message>
    <message>
        <source>Choose at least one scoop that has a line for this lot.</source>
        <translation>Elija al menos una medida que tenga línea para este lote.</translation>
    </message>
    <message>
        <source>There is no plan yet. The chart is made from a plan: which calves, how much, how strong.</source>
        <translation>Todavía no hay plan. La tabla de pared sale de un plan: qué becerras, cuánto y qué tan fuerte.</translation>
    </message>
    <message>
        <source>{scoop}: {told}</source>
        <translation>{scoop}: {told}</translation>
    </message>
    <message>
        <source>This chart is not for the powder in use: that is lot {number}.</source>
        <translation>Esta tabla de pared no es para el polvo en uso, que es el lote {number}.</translation>
    </message>
    <message>
        <source>This label is not for the powder in use: that is lot {number}.</source>
        <translation>Esta etiqueta no es para el polvo en uso, que es el lote {number}.</translation>
    </message>
    <message>
        <source>print no. {number}</source>
        <translation>impreso n.º {number}</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
        <source>scoop labels</source>
        <translation>etiquetas para medidas</translation>
    </message>
    <message>
        <source>wall chart</source>
        <translation>tabla de pared</translation>
    </message>
    <message>
        <source>lot sheet</source>
        <translation>hoja del lote</translation>
    </message>
    <message>
        <source>no. {number}</source>
        <translation>n.º {number}</translation>
    </message>
</context>
<context>
    <name>PlanForm</name>
    <message>
        <source>Na&amp;me of the plan</source>
        <translation>&amp;Nombre del plan</translation>
    </message>
    <message>
        <source>More about the water: extra for hoses and pails, warmth, pace of feeding</source>
        <translation>Más sobre el agua: extra para mangueras y cubetas, temperatura, ritmo de las tomas</translation>
    </message>
    <message>
        <source>Less about the water</source>
        <translation>Menos sobre el agua</translation>
    </message>
    <message>
        <source>More about scoopfuls: part fills, one kind, by weight</source>
        <translation>Más sobre las medidas: medias medidas, un solo tipo, por peso</translation>
    </message>
    <message>
        <source>Less about scoopfuls</source>
        <translation>Menos sobre las medidas</translation>
    </message>
    <message>
        <source>More about cold weather: powder, a further feeding</source>
        <translation>Más sobre el tiempo frío: polvo, una toma adicional</translation>
    </message>
    <message>
        <source>Less about cold weather</source>
        <translation>Menos sobre el tiempo frío</translation>
    </message>
    <message>
        <source>&amp;Keep the plan</source>
        <translation>G&amp;uardar el plan</translation>
    </message>
    <message>
        <source>Titles the chart: all calves fed at one time. Groups come below.</source>
        <translation>Título de la tabla: todas las becerras que se alimentan a la vez. Los grupos van abajo.</translation>
    </message>
    <message>
        <source>&amp;Go back without keeping</source>
        <translation>&amp;Regresar sin guardar</translation>
    </message>
    <message>
        <source>Put this plan asi&amp;de</source>
        <translation>Archi&amp;var este plan</translation>
    </message>
    <message>
        <source>Change the plan</source>
        <translation>Cambiar el plan</translation>
    </message>
    <message>
        <source>A new plan</source>
        <translation>Plan nuevo</translation>
    </message>
    <message>
        <source>All calves</source>
        <translation>Todas las becerras</translation>
    </message>
    <message>
        <source>The table would go up to {most}, and today you have {calves}. Keep it so?</source>
        <translation>La tabla llegaría hasta {most}, y hoy tiene {calves}. ¿Guardarla así?</translation>
    </message>
    <message>
        <source>Keep it so</source>
        <translation>Guardarla así</translation>
    </message>
    <message>
        <source>Print the label</source>
        <translation>Imprimir la etiqueta</translation>
    </message>
    <message>
        <source>Each calf in one plan only: powder at hand adds up this one and {plans}.</source>
        <translation>Cada becerra en un solo plan: el polvo disponible suma este y {plans}.</translation>
    </message>
    <message>
        <source>More about the table: first and last count, counts of your own</source>
        <translation>Más sobre la tabla: desde y hasta cuántas becerras, otras cantidades</translation>
    </message>
    <message>
        <source>Less about the table</source>
        <translation>Menos sobre la tabla</translation>
    </message>
    <message>
        <source>The plan “{name}” is kept.</source>
        <translation>El plan “{name}” quedó guardado.</translation>
    </message>
    <message>
        <source>Common practice: 108–110 °F (42–43 °C) for mixing.</source>
        <translation>Práctica común: mezclar a 42–43 °C (108–110 °F).</translation>
    </message>
    <message>
        <source>Temperat&amp;ure of the water</source>
        <translation>T&amp;emperatura del agua</translation>
    </message>
    <message>
        <source>Mixed on top, for what stays behind.</source>
        <translation>Se mezcla de más, por lo que se queda pegado.</translation>
    </message>
    <message>
        <source>Extra for &amp;hoses and pails</source>
        <translation>E&amp;xtra para mangueras y cubetas</translation>
    </message>
    <message>
        <source>Go back without keeping the plan? What you changed here is lost.</source>
        <translation>¿Regresar sin guardar el plan? Lo que cambió aquí se pierde.</translation>
    </message>
    <message>
        <source>Go back without keeping</source>
        <translation>Regresar sin guardar</translation>
    </message>
    <message>
        <source>Put {name} aside? It leaves the list; what was printed from it stays in the records.</source>
        <translation>¿Archivar {name}? Sale de la lista; lo que se imprimió con él queda en los registros.</translation>
    </message>
    <message>
        <source>Put aside</source>
        <translation>Archivar</translation>
    </message>
</context>
<context>
    <name>PlanGroups</name>
    <message>
        <source>&amp;Add a group of calves</source>
        <translation>A&amp;gregar un grupo de becerras</translation>
    </message>
    <message>
        <source>Another group has this name.</source>
        <translation>Otro grupo ya tiene este nombre.</translation>
    </message>
    <message>
        <source>Give each group a name. The first one has a field for it too: it is “{name}” until you do.</source>
        <translation>Ponga nombre a cada grupo, también al primero: se llama “{name}” mientras usted no le ponga otro.</translation>
    </message>
</context>
<context>
    <name>Pourings</name>
    <message>
        <source>Water weighed</source>
        <translation>Agua que se pesó</translation>
    </message>
    <message>
        <source>Water measured in a jug</source>
        <translation>Agua que se midió con jarra</translation>
    </message>
    <message>
        <source>Fill in both fields of at least three steps, without a gap.</source>
        <translation>Llene los dos campos de al menos tres pasos, sin saltarse ninguno.</translation>
    </message>
    <message>
        <source>{step}. water</source>
        <translation>Agua {step}</translation>
    </message>
    <message>
        <source>{step}. height</source>
        <translation>Altura {step}</translation>
    </message>
</context>
<context>
    <name>PowderCard</name>
    <message>
        <source>Keep the co&amp;unt</source>
        <translation>Guar&amp;dar</translation>
    </message>
    <message>
        <source>Enter what came</source>
        <translation>Registrar la entrega</translation>
    </message>
    <message>
        <source>Powder at hand</source>
        <translation>Polvo disponible</translation>
    </message>
    <message>
        <source>How many bags of this lot came, and how heavy they are, is not entered.</source>
        <translation>No está registrado cuántos costales de este lote llegaron ni cuánto pesan.</translation>
    </message>
    <message>
        <source>Totes left this morning</source>
        <translation>Supersacos contados hoy</translation>
    </message>
    <message>
        <source>Enter the bags&apos; weight</source>
        <translation>Anotar el peso del costal</translation>
    </message>
    <message>
        <source>Bags left this morning</source>
        <translation>Costales contados hoy</translation>
    </message>
    <message>
        <source>How heavy the bags of this lot are is not entered.</source>
        <translation>Falta anotar cuánto pesa cada costal de este lote.</translation>
    </message>
    <message>
        <source>How many bags of this lot came is not entered.</source>
        <translation>Falta anotar cuántos costales de este lote llegaron.</translation>
    </message>
    <message>
        <source>a count of bags</source>
        <translation>un conteo de costales</translation>
    </message>
    <message>
        <source>Count of bags kept: {count}</source>
        <translation>Se guardó el conteo de costales: {count}</translation>
    </message>
    <message>
        <source>Only {count} came of this lot. Count again, or correct the lot.</source>
        <translation>De este lote solo llegaron {count}. Cuente otra vez o corrija el lote.</translation>
    </message>
    <message>
        <source>Only {count} came.</source>
        <translation>Solo llegaron {count}.</translation>
    </message>
    <message>
        <source>Lot {lot}: no plan feeds it yet</source>
        <translation>Lote {lot}: todavía no lo usa ningún plan</translation>
    </message>
    <message>
        <source>{number} totes left, {mass}</source>
        <translation>Quedan {number} supersacos, {mass}</translation>
    </message>
    <message>
        <source>{number} bags left, {mass}</source>
        <translation>Quedan {number} costales, {mass}</translation>
    </message>
    <message>
        <source>It does not feed today in full.</source>
        <translation>No alcanza para todo el día de hoy.</translation>
    </message>
    <message>
        <source>A new lot is needed on {day}: weigh it in before the last bag is opened.</source>
        <translation>El {day} hace falta un lote nuevo: péselo antes de abrir el último costal.</translation>
    </message>
    <message>
        <source>Lot {lot} is needed on {day}: weigh it in before the last bag is opened.</source>
        <translation>El {day} hace falta el lote {lot}: péselo antes de abrir el último costal.</translation>
    </message>
    <message>
        <source>Lot {lot} is needed on {day}: it is weighed in and can follow.</source>
        <translation>El {day} hace falta el lote {lot}: ya está pesado y puede seguir.</translation>
    </message>
    <message>
        <source>With lot {lots}, a new lot is needed on {day}.</source>
        <translation>Con el lote {lots}, hace falta un lote nuevo el {day}.</translation>
    </message>
    <message>
        <source>With lots {lots}, a new lot is needed on {day}.</source>
        <translation>Con los lotes {lots}, hace falta un lote nuevo el {day}.</translation>
    </message>
    <message>
        <source>With the bags left of lot {lots} the powder does for more than {days} days, without them until {day}.</source>
        <translation>Con los costales que quedan del lote {lots} el polvo alcanza para más de {days} días; sin ellos, hasta el {day}.</translation>
    </message>
    <message>
        <source>With the bags left of lot {lots} a new lot is needed on {later}, without them on {sooner}: weigh it in before the last bag is opened.</source>
        <translation>Con los costales que quedan del lote {lots} hace falta un lote nuevo el {later}; sin ellos, el {sooner}: péselo antes de abrir el último costal.</translation>
    </message>
    <message>
        <source>With the bags left of lot {lots} lot {lot} is needed on {later}, without them on {sooner}: weigh it in before the last bag is opened.</source>
        <translation>Con los costales que quedan del lote {lots} hace falta el lote {lot} el {later}; sin ellos, el {sooner}: péselo antes de abrir el último costal.</translation>
    </message>
    <message>
        <source>Lot {lot} follows on {fed}, as planned; what is left would do until {day}.</source>
        <translation>El lote {lot} sigue el {fed}, como está previsto; lo que queda alcanzaría hasta el {day}.</translation>
    </message>
    <message>
        <source>What is left does until {day} only, and lot {lot} is planned from {fed} on: change over sooner.</source>
        <translation>Lo que queda alcanza solo hasta el {day}, y el lote {lot} está previsto desde el {fed}: cambie antes.</translation>
    </message>
    <message>
        <source>That counts in {mass} of other lots.</source>
        <translation>Ahí ya se cuentan {mass} de otros lotes.</translation>
    </message>
    <message>
        <source>Lot {lot} is here too, not weighed in yet.</source>
        <translation>También está aquí el lote {lot}, todavía sin pesar.</translation>
    </message>
    <message>
        <source>Lot {lot} is here too, weighed in.</source>
        <translation>También está aquí el lote {lot}, ya pesado.</translation>
    </message>
    <message>
        <source>Counted on {day}.</source>
        <translation>Contado el {day}.</translation>
    </message>
    <message>
        <source>Counted on {day}, less what the plans took since; today they take {daily}.</source>
        <translation>Contado el {day}, menos lo que tomaron los planes desde entonces; hoy toman {daily}.</translation>
    </message>
    <message>
        <source>What was left on {day} by the plans, less what they took since; today they take {daily}. Count the bags to be sure.</source>
        <translation>Lo que quedaba el {day} según los planes, menos lo que tomaron desde entonces; hoy toman {daily}. Cuente los costales para estar seguro.</translation>
    </message>
    <message>
        <source>What came, less what the plans took since {day}; today they take {daily}. Count the bags to be sure.</source>
        <translation>Lo que llegó, menos lo que tomaron los planes desde el {day}; hoy toman {daily}. Cuente los costales para estar seguro.</translation>
    </message>
    <message>
        <source>The plans added up: {plans}. Calves in two of them are counted twice.</source>
        <translation>Suma de los planes: {plans}. Las becerras que están en dos se cuentan doble.</translation>
    </message>
    <message>
        <source>{plan} {powder}</source>
        <translation>{plan} {powder}</translation>
    </message>
</context>
<context>
    <name>PreviewBar</name>
    <message>
        <source>Previous page</source>
        <translation>Página anterior</translation>
    </message>
    <message>
        <source>Pre&amp;vious</source>
        <translation>Anteri&amp;or</translation>
    </message>
    <message>
        <source>Ne&amp;xt</source>
        <translation>Si&amp;guiente</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Página siguiente</translation>
    </message>
    <message>
        <source>True si&amp;ze</source>
        <translation>Ta&amp;maño 1:1</translation>
    </message>
    <message>
        <source>As large as on paper, or fitted to the window</source>
        <translation>Tan grande como en papel, o ajustado a la ventana</translation>
    </message>
    <message>
        <source>Page {page} of {pages}</source>
        <translation>Página {page} de {pages}</translation>
    </message>
</context>
<context>
    <name>PriceField</name>
    <message>
        <source>Prices are in {currency} here. Write the number alone; Set-up changes the currency.</source>
        <translation>Aquí los precios van en {currency}. Escriba solo el número; la moneda se cambia en Ajustes.</translation>
    </message>
</context>
<context>
    <name>Prism</name>
    <message>
        <source>Refractometer at</source>
        <translation>Refractómetro a</translation>
    </message>
</context>
<context>
    <name>QuantityField</name>
    <message>
        <source>like {example}</source>
        <translation>ej. {example}</translation>
    </message>
</context>
<context>
    <name>Rail</name>
    <message>
        <source>Mix check</source>
        <translation>Revisar mezcla</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Ctrl + number opens it</source>
        <translation>Ctrl + número abre la página</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Pesada</translation>
    </message>
    <message>
        <source>Batch tables</source>
        <translation>Tablas de mezcla</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Ctrl+{number}</source>
        <translation>Ctrl+{number}</translation>
    </message>
</context>
<context>
    <name>RateEditor</name>
    <message>
        <source>Powder</source>
        <translation>Polvo</translation>
    </message>
    <message>
        <source>How strong: the recipe says</source>
        <translation>Qué tan fuerte: la receta dice</translation>
    </message>
    <message>
        <source>On this much water</source>
        <translation>Por esta cantidad de agua</translation>
    </message>
    <message>
        <source>Share of the mix</source>
        <translation>Parte de la mezcla</translation>
    </message>
    <message>
        <source>Changed by the choice above.</source>
        <translation>Cambió por lo elegido arriba.</translation>
    </message>
    <message>
        <source>That would be a mix of {percent} powder. Look at both figures and their units.</source>
        <translation>Sería una mezcla con {percent} de polvo. Revise los dos números y sus unidades.</translation>
    </message>
    <message>
        <source>Up to this much mix</source>
        <translation>Hasta completar</translation>
    </message>
    <message>
        <source>In this much mix</source>
        <translation>En esta mezcla</translation>
    </message>
    <message>
        <source>Powder, by weight</source>
        <translation>Polvo, en peso</translation>
    </message>
    <message>
        <source>Dry matter, by weight</source>
        <translation>Materia seca, en peso</translation>
    </message>
    <message>
        <source>The recipe: {recipe}</source>
        <translation>La receta: {recipe}</translation>
    </message>
    <message>
        <source>The same mix, put otherwise:</source>
        <translation>La misma mezcla, dicha de otro modo:</translation>
    </message>
    <message>
        <source>Without the additives, put otherwise:</source>
        <translation>Sin los aditivos, dicho de otro modo:</translation>
    </message>
</context>
<context>
    <name>RateWords</name>
    <message>
        <source>Powder on top of water</source>
        <translation>Polvo agregado al agua</translation>
    </message>
    <message>
        <source>Powder, filled up with water</source>
        <translation>Polvo, y agua hasta completar</translation>
    </message>
    <message>
        <source>Percent powder in the mix</source>
        <translation>Porcentaje de polvo en la mezcla</translation>
    </message>
    <message>
        <source>Percent dry matter in the mix</source>
        <translation>Porcentaje de materia seca</translation>
    </message>
    <message>
        <source>Powder per volume of mix fed</source>
        <translation>Polvo por volumen servido</translation>
    </message>
    <message>
        <source>{share} solids by weight of the mix, as mixed</source>
        <translation>{share} de sólidos en peso de la mezcla</translation>
    </message>
    <message>
        <source>{share} dry matter by weight of the mix</source>
        <translation>{share} de materia seca en peso de la mezcla</translation>
    </message>
    <message>
        <source>{powder} of powder on {volume} of water</source>
        <translation>{powder} de polvo por cada {volume} de agua</translation>
    </message>
    <message>
        <source>{powder} of powder made up with water to {volume} of mix</source>
        <translation>{powder} de polvo y agua hasta completar {volume} de mezcla</translation>
    </message>
    <message>
        <source>{powder} of powder in every {volume} of mix as fed</source>
        <translation>{powder} de polvo en cada {volume} de mezcla servida</translation>
    </message>
    <message>
        <source>{powder} of powder on top of {volume} of water: {mix} of mix.</source>
        <translation>{powder} de polvo además de {volume} de agua: {mix} de mezcla.</translation>
    </message>
    <message>
        <source>{powder} of powder, filled up with water to {volume} of mix: {water} of water.</source>
        <translation>{powder} de polvo, y agua hasta completar {volume} de mezcla: {water} de agua.</translation>
    </message>
    <message>
        <source>{volume} of mix as the calves drink it: {powder} of powder in it, {water} of water.</source>
        <translation>{volume} de mezcla como la toman las becerras: lleva {powder} de polvo y {water} de agua.</translation>
    </message>
    <message>
        <source>{powder} of powder and {water} of water make {mix} of mix.</source>
        <translation>{powder} de polvo y {water} de agua dan {mix} de mezcla.</translation>
    </message>
    <message>
        <source>{mix} of mix hold {dry} of dry matter: {powder} of powder, of which {share} is water.</source>
        <translation>{mix} de mezcla llevan {dry} de materia seca: {powder} de polvo, del que {share} es agua.</translation>
    </message>
    <message>
        <source>{volume} of water for each calf, feed each {mix} of mix</source>
        <translation>{volume} de agua por becerra; dé a cada una {mix} de mezcla</translation>
    </message>
    <message>
        <source>{volume} of finished mix for each calf</source>
        <translation>{volume} de mezcla terminada por becerra</translation>
    </message>
    <message>
        <source>{solids} solids as mixed, {dry} dry matter (without the powder&apos;s own water)</source>
        <translation>{solids} de sólidos en la mezcla, {dry} de materia seca (sin el agua propia del polvo)</translation>
    </message>
    <message>
        <source>{solids} solids as mixed, {dry} dry matter (without the powder&apos;s own water), {grams} g in a liter of mix</source>
        <translation>{solids} de sólidos en la mezcla, {dry} de materia seca (sin el agua propia del polvo), {grams} g por litro de mezcla</translation>
    </message>
    <message>
        <source>osmolality about {value} mOsm/kg (what is dissolved; an estimate: ± {spread})</source>
        <translation>osmolalidad de unos {value} mOsm/kg (lo disuelto; estimada, ± {spread})</translation>
    </message>
</context>
<context>
    <name>ReadingDialog</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>ReadingsForm</name>
    <message>
        <source>°Brix</source>
        <translation>°Brix</translation>
    </message>
    <message>
        <source>SG (sugar scale)</source>
        <translation>SG (escala de azúcar)</translation>
    </message>
    <message>
        <source>Each drop on the refractometer is one reading; best three.</source>
        <translation>Cada gota en el refractómetro es una lectura; mejor tres.</translation>
    </message>
    <message>
        <source>First pail: drops, in °Brix</source>
        <translation>1.ª cubeta: gotas, °Brix</translation>
    </message>
    <message>
        <source>Last pail: drops, in °Brix</source>
        <translation>Última: gotas, °Brix</translation>
    </message>
    <message>
        <source>With a refractometer too</source>
        <translation>También con refractómetro</translation>
    </message>
    <message>
        <source>Water drawn at</source>
        <translation>El agua a</translation>
    </message>
    <message>
        <source>Mix at</source>
        <translation>La mezcla a</translation>
    </message>
    <message>
        <source>At the calf</source>
        <translation>Al darla a</translation>
    </message>
    <message>
        <source>Mix in the vessel</source>
        <translation>Mezcla en el recipiente</translation>
    </message>
    <message>
        <source>or its level</source>
        <translation>o su nivel</translation>
    </message>
    <message>
        <source>Hydrometer floating in the mix, SG</source>
        <translation>Densímetro en la mezcla, densidad relativa</translation>
    </message>
    <message>
        <source>Mix in the jug, without the jug</source>
        <translation>Mezcla en la jarra, sin la jarra</translation>
    </message>
    <message>
        <source>{number} °F or {number} °C? Write {number} F or {number} C.</source>
        <translation>¿{number} °F o {number} °C? Escriba {number} F o {number} C.</translation>
    </message>
    <message>
        <source>Refractometer</source>
        <translation>Refractómetro</translation>
    </message>
    <message>
        <source>Hydrometer</source>
        <translation>Densímetro</translation>
    </message>
    <message>
        <source>Jug</source>
        <translation>Jarra</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Termómetro</translation>
    </message>
    <message>
        <source>Refractometer read in</source>
        <translation>Refractómetro leído en</translation>
    </message>
    <message>
        <source>First pail: drops, sugar SG</source>
        <translation>1.ª cubeta: SG azúcar</translation>
    </message>
    <message>
        <source>Last pail: drops, sugar SG</source>
        <translation>Última: SG azúcar</translation>
    </message>
</context>
<context>
    <name>Records</name>
    <message>
        <source>The records {place} are open in another window of this program. Close that window first, or open them here to look without writing.</source>
        <translation>Los registros {place} están abiertos en otra ventana de este programa. Cierre primero esa ventana, o ábralos aquí solo para ver.</translation>
    </message>
    <message>
        <source>The records {place} are busy with other work. Wait a moment and do it again; nothing was changed.</source>
        <translation>Los registros {place} están ocupados con otro trabajo. Espere un momento y hágalo otra vez; nada cambió.</translation>
    </message>
    <message>
        <source>The drive that holds {place} cannot tell this program whether another computer has the records open. Move them to a drive of this computer.</source>
        <translation>La unidad donde está {place} no puede decirle al programa si otra computadora tiene abiertos los registros. Páselos a un disco de esta computadora.</translation>
    </message>
    <message>
        <source>The records {place} were written by a newer version of this program (layout {found}; this program knows layouts up to {known}). Nothing was changed. Install the newer version to open them.</source>
        <translation>Los registros {place} se escribieron con una versión más nueva de este programa (formato {found}; este programa conoce hasta el formato {known}). Nada cambió. Instale la versión más nueva para abrirlos.</translation>
    </message>
    <message>
        <source>The records {place} have the older layout {found} (this program uses {known}). Open them once for writing, so that they are brought up to date after a backup.</source>
        <translation>Los registros {place} tienen el formato anterior {found} (este programa usa el {known}). Ábralos una vez para escribir; se actualizan después de hacer un respaldo.</translation>
    </message>
    <message>
        <source>The records {place} are damaged: {detail}. Nothing was changed. Set the file aside and restore the newest backup from {backups}.</source>
        <translation>Los registros {place} están dañados: {detail}. Nada cambió. Aparte el archivo y recupere el respaldo más reciente de {backups}.</translation>
    </message>
    <message>
        <source>The records {place} are empty, but backups of them exist in {backups}. Nothing was changed. Restore the newest backup, or move the backups away to start afresh.</source>
        <translation>Los registros {place} están vacíos, pero hay respaldos de ellos en {backups}. Nada cambió. Recupere el respaldo más reciente, o quite de ahí los respaldos para empezar de cero.</translation>
    </message>
    <message>
        <source>The file {place} is not a records file of this program. Nothing was changed. Choose another file.</source>
        <translation>El archivo {place} no es un archivo de registros de este programa. Nada cambió. Elija otro archivo.</translation>
    </message>
    <message>
        <source>The database {place} holds tables of another program. Nothing was changed. Choose another database, or have whoever looks after the server make an empty one.</source>
        <translation>La base de datos {place} contiene tablas de otro programa. No se cambió nada. Elija otra base de datos, o pida a quien cuida el servidor que haga una vacía.</translation>
    </message>
    <message>
        <source>The user {user} may not set up records in {place}. Have whoever looks after the server let this user make tables there, or make a database that belongs to the user.</source>
        <translation>El usuario {user} no puede crear registros en {place}. Pida a quien cuida el servidor que le permita crear tablas ahí, o que haga una base de datos que pertenezca al usuario.</translation>
    </message>
    <message>
        <source>The records {place} hold something already, so nothing was brought over.</source>
        <translation>Los registros {place} ya contienen algo, así que no se pasó nada.</translation>
    </message>
    <message>
        <source>Not everything of {place} came over to {target} as it was, so nothing was kept there. Save everything to a file and ask whoever looks after this program.</source>
        <translation>No todo lo de {place} pasó a {target} tal como estaba, así que ahí no se guardó nada. Guarde todo en un archivo y pregunte a quien cuida este programa.</translation>
    </message>
    <message>
        <source>The password can be kept neither in the system&apos;s keyring nor in {place}. Let this user write there, or leave the password blank and keep it in one of the two by hand.</source>
        <translation>La contraseña no se puede guardar ni en el llavero del sistema ni en {place}. Permita que este usuario escriba ahí, o deje la contraseña en blanco y guárdela a mano en uno de los dos.</translation>
    </message>
    <message>
        <source>There are no records at {place}. Check the name, and that the drive is connected.</source>
        <translation>No hay registros en {place}. Revise el nombre y que la unidad esté conectada.</translation>
    </message>
    <message>
        <source>The records {place} are no longer where they were opened: the file was moved, replaced or removed. Put it back, or close and open the records again; then enter this again.</source>
        <translation>Los registros {place} ya no están donde se abrieron: el archivo se movió, se reemplazó o se borró. Regréselo a su lugar, o cierre los registros y ábralos otra vez; luego anote esto otra vez.</translation>
    </message>
    <message>
        <source>The records {place} cannot be reached. Check the drive or the network, then do it again; what was kept before is safe.</source>
        <translation>No hay acceso a los registros {place}. Revise la unidad o la red y hágalo otra vez; lo guardado antes está a salvo.</translation>
    </message>
    <message>
        <source>The server of {place} did not take the name or the password. Check both; the password is looked for in the system&apos;s keyring and in the password file of PostgreSQL.</source>
        <translation>El servidor de {place} no aceptó el nombre o la contraseña. Revise ambos; la contraseña se busca en el llavero del sistema y en el archivo de contraseñas de PostgreSQL.</translation>
    </message>
    <message>
        <source>The server of {place} is there, but it has no database of that name. Check the name, or have whoever looks after the server make it.</source>
        <translation>El servidor de {place} está ahí, pero no tiene ninguna base de datos con ese nombre. Revise el nombre, o pida a quien cuida el servidor que la cree.</translation>
    </message>
    <message>
        <source>There is no computer of the name in {place}. Check the address, and that the network is connected.</source>
        <translation>No hay ninguna computadora con el nombre que está en {place}. Revise la dirección, y que la red esté conectada.</translation>
    </message>
    <message>
        <source>The computer in {place} is there, but no server answers. Check that it is started, and the port.</source>
        <translation>La computadora de {place} está ahí, pero ningún servidor contesta. Revise que esté encendido, y el puerto.</translation>
    </message>
    <message>
        <source>The records {place} are open to look only, or the file or its folder is write-protected. Nothing was changed. Open them for writing, or ask whoever looks after this computer.</source>
        <translation>Los registros {place} están abiertos solo para ver, o el archivo o su carpeta está protegido contra escritura. Nada cambió. Ábralos para escribir, o pregunte a quien cuida esta computadora.</translation>
    </message>
    <message>
        <source>The disk that holds {place} is full, so this was not kept. Free some space, then enter it again; what was kept before is safe.</source>
        <translation>El disco donde está {place} está lleno, así que esto no se guardó. Libere espacio y anótelo otra vez; lo guardado antes está a salvo.</translation>
    </message>
    <message>
        <source>‘{place}’ does not name records: give the path of a file, or an address that begins with sqlite:/// or postgresql://.</source>
        <translation>‘{place}’ no señala registros: escriba la ruta de un archivo, o una dirección que empiece con sqlite:/// o postgresql://.</translation>
    </message>
    <message>
        <source>Records on a server need an addition to this program: install it with its ‘server’ option.</source>
        <translation>Los registros en un servidor necesitan un complemento de este programa: instálelo con su opción ‘server’.</translation>
    </message>
    <message>
        <source>This {kind} was changed meanwhile on another page or computer. Look at the newer telling, then make your change again.</source>
        <translation>Entretanto esto ({kind}) se cambió en otra página o computadora. Vea cómo quedó y haga su cambio otra vez.</translation>
    </message>
    <message>
        <source>There is no {kind} with the name {id} in these records. Refresh the page.</source>
        <translation>En estos registros no hay nada ({kind}) con el nombre {id}. Abra otra vez la página.</translation>
    </message>
    <message>
        <source>This {kind} names something that is not in these records. Refresh the page and try again.</source>
        <translation>Esto ({kind}) menciona algo que no está en estos registros. Abra otra vez la página y pruebe de nuevo.</translation>
    </message>
    <message>
        <source>This {kind} belongs to another farm and cannot be moved. Enter a new one instead.</source>
        <translation>Esto ({kind}) es de otro establo y no se puede pasar. Registre uno nuevo.</translation>
    </message>
    <message>
        <source>This weigh-in is signed off and cannot be changed. Start a new weigh-in for the lot.</source>
        <translation>Esta pesada está firmada y no se puede cambiar. Empiece otra pesada del lote.</translation>
    </message>
    <message>
        <source>This weigh-in was signed off already by {who}, on another page or computer. What was signed is shown now; if it is wrong, start a new weigh-in for the lot.</source>
        <translation>Esta pesada ya la firmó {who}, en otra página o computadora. Ahora se muestra lo firmado; si está mal, empiece una pesada nueva del lote.</translation>
    </message>
    <message>
        <source>A spot fill belongs to a lot that is signed off. Sign off its weigh-in first.</source>
        <translation>Una llenada de control es de un lote firmado. Firme primero su pesada.</translation>
    </message>
    <message>
        <source>This trial is closed and its fills cannot be changed. Take it up again first.</source>
        <translation>Esta prueba está cerrada y sus llenadas no se pueden cambiar. Primero retómela.</translation>
    </message>
    <message>
        <source>The records {place} are closed. Open them again.</source>
        <translation>Los registros {place} están cerrados. Ábralos otra vez.</translation>
    </message>
    <message>
        <source>This weigh-in was given up and cannot be signed off. Take it up again first.</source>
        <translation>Esta pesada se abandonó y no se puede firmar. Retómela primero.</translation>
    </message>
    <message>
        <source>A mark can only be kept with the sign-off it belongs to. Sign off the weigh-in again.</source>
        <translation>Una línea solo se guarda con su firma. Firme otra vez la pesada.</translation>
    </message>
    <message>
        <source>A different {kind} is already kept under the same name. Refresh the page and enter it anew.</source>
        <translation>Ya hay otro dato distinto ({kind}) guardado con el mismo nombre. Abra otra vez la página y anótelo de nuevo.</translation>
    </message>
    <message>
        <source>This {kind} was changed on two computers, each without the other: ‘{here}’ stays, ‘{there}’ was not taken.</source>
        <translation>Este dato ({kind}) se cambió en dos computadoras por separado: se queda ‘{here}’; ‘{there}’ no se tomó.</translation>
    </message>
    <message>
        <source>This {kind} (‘{here}’) was changed on two computers, each without the other. What these records hold stays.</source>
        <translation>Este dato ({kind}, ‘{here}’) se cambió en dos computadoras por separado. Se queda lo que tienen estos registros.</translation>
    </message>
    <message>
        <source>This {kind} was changed on two computers, each without the other. What these records hold stays.</source>
        <translation>Este dato ({kind}) se cambió en dos computadoras por separado. Se queda lo que tienen estos registros.</translation>
    </message>
    <message>
        <source>{file}, entry {entry}: {fault} Nothing was brought in.</source>
        <translation>{file}, entrada {entry}: {fault} No se trajo nada.</translation>
    </message>
    <message>
        <source>{file}, entry {entry}: {fault} Records that went different ways cannot be put together. To see what the file holds, bring it into new, empty records. Nothing was brought in.</source>
        <translation>{file}, entrada {entry}: {fault} No se pueden juntar registros que tomaron caminos distintos. Para ver lo que tiene el archivo, tráigalo a unos registros nuevos y vacíos. No se trajo nada.</translation>
    </message>
    <message>
        <source>A new {kind} cannot be struck out already. Keep it first, then strike it out.</source>
        <translation>Un dato nuevo ({kind}) no puede venir ya tachado. Guárdelo primero y luego táchelo.</translation>
    </message>
    <message>
        <source>Say why this {kind} is struck out.</source>
        <translation>Diga por qué se tacha esto ({kind}).</translation>
    </message>
    <message>
        <source>Records are only ever added to; what is kept cannot be changed or removed. Enter a correction instead.</source>
        <translation>A los registros solo se les agrega; lo guardado no se cambia ni se quita. Anote una corrección.</translation>
    </message>
    <message>
        <source>The records {place} refused this: {detail}. Nothing was changed.</source>
        <translation>Los registros {place} no lo aceptaron: {detail}. Nada cambió.</translation>
    </message>
    <message>
        <source>{file} cannot be read: {fault}. Nothing was brought in.</source>
        <translation>No se puede leer {file}: {fault}. No se trajo nada.</translation>
    </message>
    <message>
        <source>{file} cannot be read: it has format version {found}, and this program reads {known}. Nothing was brought in.</source>
        <translation>No se puede leer {file}: tiene la versión de formato {found} y este programa lee la {known}. No se trajo nada.</translation>
    </message>
    <message>
        <source>{file} is locked with a password. Open it in the spreadsheet program, save it without one, and choose it again. Nothing was brought in.</source>
        <translation>{file} está protegido con contraseña. Ábralo en la hoja de cálculo, guárdelo sin ella y elíjalo de nuevo. No se trajo nada.</translation>
    </message>
    <message>
        <source>{file} is a file of another program or an older kind (.xls, .xlsb, .ods). Open it in the spreadsheet program, save it as .xlsx or CSV, and choose that file. Nothing was brought in.</source>
        <translation>{file} es un archivo de otro programa o de un tipo anterior (.xls, .xlsb, .ods). Ábralo en la hoja de cálculo, guárdelo como .xlsx o CSV y elija ese archivo. No se trajo nada.</translation>
    </message>
    <message>
        <source>{file} is a web page or XML under the name of a table. Open it in the spreadsheet program, save it as .xlsx or CSV, and choose that file. Nothing was brought in.</source>
        <translation>{file} es una página web o XML con nombre de tabla. Ábralo en la hoja de cálculo, guárdelo como .xlsx o CSV y elija ese archivo. No se trajo nada.</translation>
    </message>
    <message>
        <source>{file} is neither text in columns nor a workbook. Choose a .csv, .txt or .xlsx file. Nothing was brought in.</source>
        <translation>{file} no es texto en columnas ni un libro de cálculo. Elija un archivo .csv, .txt o .xlsx. No se trajo nada.</translation>
    </message>
    <message>
        <source>{file} has nothing in it here. Choose another file or sheet. Nothing was brought in.</source>
        <translation>{file} no tiene nada aquí. Elija otro archivo u otra hoja. No se trajo nada.</translation>
    </message>
    <message>
        <source>{file} is larger than {most} MB. Save the rows that you need as a file of their own. Nothing was brought in.</source>
        <translation>{file} mide más de {most} MB. Guarde las filas que necesita en un archivo aparte. No se trajo nada.</translation>
    </message>
    <message>
        <source>{file} has more than {most} rows, perhaps far below the table. Save the rows that you need as a file of their own. Nothing was brought in.</source>
        <translation>{file} tiene más de {most} filas, quizá muy abajo de la tabla. Guarde las filas que necesita en un archivo aparte. No se trajo nada.</translation>
    </message>
    <message>
        <source>{file} has more than {most} columns, or the sign between its cells is not the one chosen. Nothing was brought in.</source>
        <translation>{file} tiene más de {most} columnas, o el signo entre sus celdas no es el elegido. No se trajo nada.</translation>
    </message>
    <message>
        <source>{file} has more than {most} cells. Save only the rows and columns that you need as a file of their own. Nothing was brought in.</source>
        <translation>{file} tiene más de {most} celdas. Guarde en un archivo aparte solo las filas y columnas que necesita. No se trajo nada.</translation>
    </message>
    <message>
        <source>{file} would unpack to far more than a table needs, so it is not opened. Save the sheet anew as CSV and choose that file. Nothing was brought in.</source>
        <translation>{file} ocuparía al descomprimirse mucho más de lo que necesita una tabla, por eso no se abre. Guarde la hoja de nuevo como CSV y elija ese archivo. No se trajo nada.</translation>
    </message>
    <message>
        <source>{file} declares XML entities, which no spreadsheet program writes, so it is not opened. Save the sheet anew as CSV and choose that file. Nothing was brought in.</source>
        <translation>{file} declara entidades XML, que ninguna hoja de cálculo escribe, por eso no se abre. Guarde la hoja de nuevo como CSV y elija ese archivo. No se trajo nada.</translation>
    </message>
    <message>
        <source>{file} is damaged, or not written as a workbook should be. Open it in the spreadsheet program, save it anew as .xlsx or CSV, and choose that file. Nothing was brought in.</source>
        <translation>{file} está dañado o no está escrito como un libro de cálculo. Ábralo en la hoja de cálculo, guárdelo de nuevo como .xlsx o CSV y elija ese archivo. No se trajo nada.</translation>
    </message>
    <message>
        <source>This {kind} cannot be kept: {fault}. Correct it and try again.</source>
        <translation>Esto ({kind}) no se puede guardar: {fault}. Corríjalo y pruebe otra vez.</translation>
    </message>
    <message>
        <source>{file}, entry {entry}: {fault}. Correct the file and try again; nothing was brought in.</source>
        <translation>{file}, entrada {entry}: {fault}. Corrija el archivo y pruebe otra vez; no se trajo nada.</translation>
    </message>
    <message>
        <source>{file}, row {row}: a quotation mark is opened and not closed, or text follows the closing one. Correct that row, or save the file anew in the spreadsheet program. Nothing was brought in.</source>
        <translation>{file}, fila {row}: una comilla se abre y no se cierra, o sigue texto después de la que cierra. Corrija esa fila o guarde el archivo de nuevo en la hoja de cálculo. No se trajo nada.</translation>
    </message>
    <message>
        <source>{file}, row {row}: the letters cannot be read in the chosen way. Choose another way to read letters. Nothing was brought in.</source>
        <translation>{file}, fila {row}: las letras no se pueden leer del modo elegido. Elija otro modo de leer letras. No se trajo nada.</translation>
    </message>
    <message>
        <source>There is no backup {place}. Choose another one.</source>
        <translation>No hay ningún respaldo {place}. Elija otro.</translation>
    </message>
    <message>
        <source>The backups of a server are made and restored on the server. Ask whoever looks after {place}.</source>
        <translation>Los respaldos de un servidor se hacen y se recuperan en el servidor. Pregunte a quien cuida {place}.</translation>
    </message>
    <message>
        <source>What is left of {place} could not be brought over: {fault}. Nothing was changed. Free some space or check the folder, then try again.</source>
        <translation>Lo que queda de {place} no se pudo traer: {fault}. Nada cambió. Libere espacio o revise la carpeta e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>Nothing could be read in {place}, and no backup of it helps. Nothing was changed. Look for a copy of the file on another drive, or move it away to start afresh.</source>
        <translation>No se pudo leer nada en {place}, y ningún respaldo sirve. Nada cambió. Busque una copia del archivo en otra unidad, o quítelo de ahí para empezar de nuevo.</translation>
    </message>
    <message>
        <source>No backup of {place} could be made in {backups}: {fault}. Free some space or check the folder, then try again.</source>
        <translation>No se pudo hacer el respaldo de {place} en {backups}: {fault}. Libere espacio o revise la carpeta y pruebe otra vez.</translation>
    </message>
    <message>
        <source>The disk is full, so {place} was not written; what was there before still is. Free some space or choose another place.</source>
        <translation>El disco está lleno y {place} no se escribió; lo que había antes sigue ahí. Libere espacio o elija otro lugar.</translation>
    </message>
    <message>
        <source>{place} cannot be written: another program has it open, or you may not write there. Close it there, or choose another name or place.</source>
        <translation>No se puede escribir {place}: otro programa lo tiene abierto o usted no puede escribir ahí. Ciérrelo allá, o elija otro nombre o lugar.</translation>
    </message>
    <message>
        <source>The folder {place} is not there any more. Choose another place.</source>
        <translation>La carpeta {place} ya no existe. Elija otro lugar.</translation>
    </message>
    <message>
        <source>{place} cannot be written: {fault}. Choose another place.</source>
        <translation>No se puede escribir {place}: {fault}. Elija otro lugar.</translation>
    </message>
    <message>
        <source>it has no list of changes</source>
        <translation>no tiene lista de cambios</translation>
    </message>
    <message>
        <source>it holds no .json file</source>
        <translation>no contiene ningún archivo .json</translation>
    </message>
    <message>
        <source>it is not JSON text</source>
        <translation>no es texto JSON</translation>
    </message>
    <message>
        <source>it is not a file</source>
        <translation>no es un archivo</translation>
    </message>
    <message>
        <source>it is not an export of this program</source>
        <translation>no es una exportación de este programa</translation>
    </message>
    <message>
        <source>it is too large for the memory of this computer</source>
        <translation>es demasiado grande para la memoria de esta computadora</translation>
    </message>
    <message>
        <source>no access</source>
        <translation>sin acceso</translation>
    </message>
    <message>
        <source>farm</source>
        <translation>establo</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>báscula</translation>
    </message>
    <message>
        <source>scoop</source>
        <translation>medida</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>weigh-in</source>
        <translation>pesada</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>recipiente</translation>
    </message>
    <message>
        <source>fill</source>
        <translation>llenada</translation>
    </message>
    <message>
        <source>spot fill</source>
        <translation>llenada de control</translation>
    </message>
    <message>
        <source>sign-off</source>
        <translation>firma</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>línea</translation>
    </message>
    <message>
        <source>print</source>
        <translation>impresión</translation>
    </message>
    <message>
        <source>note on a sheet</source>
        <translation>aviso de una hoja</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>instrumento</translation>
    </message>
    <message>
        <source>check of an instrument</source>
        <translation>revisión de un instrumento</translation>
    </message>
    <message>
        <source>weighed mix</source>
        <translation>mezcla pesada</translation>
    </message>
    <message>
        <source>check of the mix</source>
        <translation>revisión de la mezcla</translation>
    </message>
    <message>
        <source>trial of feeders</source>
        <translation>prueba de personal</translation>
    </message>
    <message>
        <source>fill of a trial</source>
        <translation>llenada de una prueba</translation>
    </message>
    <message>
        <source>entry</source>
        <translation>anotación</translation>
    </message>
    <message>
        <source>count of bags</source>
        <translation>conteo de costales</translation>
    </message>
    <message>
        <source>{name} was retired meanwhile on another page or computer. Look at it first, then decide whether to go on.</source>
        <translation>{name} se dio de baja entretanto en otra página o computadora. Véalo primero y luego decida si sigue.</translation>
    </message>
</context>
<context>
    <name>RecordsForm</name>
    <message>
        <source>Copies of the records</source>
        <translation>Copias de los registros</translation>
    </message>
    <message>
        <source>&amp;Put this copy back</source>
        <translation>Reponer e&amp;sta copia</translation>
    </message>
    <message>
        <source>Check now</source>
        <translation>Revisar ahora</translation>
    </message>
    <message>
        <source>Save everyth&amp;ing to a file</source>
        <translation>&amp;Guardar todo en un archivo</translation>
    </message>
    <message>
        <source>Bring in such a file</source>
        <translation>Traer un archivo así</translation>
    </message>
    <message>
        <source>Save a workboo&amp;k</source>
        <translation>G&amp;uardar un libro de cálculo</translation>
    </message>
    <message>
        <source>Save as CSV</source>
        <translation>Guardar como CSV</translation>
    </message>
    <message>
        <source>Bring in a spreadsheet …</source>
        <translation>Traer una hoja de cálculo …</translation>
    </message>
    <message>
        <source>Use another server …</source>
        <translation>Usar otro servidor …</translation>
    </message>
    <message>
        <source>There is no copy yet; one is made each day.</source>
        <translation>Todavía no hay copia; se hace una cada día.</translation>
    </message>
    <message>
        <source>The file on this computer holds what was there before the server was used; nothing is copied back. To take all along, first save everything to a file, and bring that in afterwards. Use the file from now on?</source>
        <translation>El archivo de esta computadora contiene lo que había antes de usar el servidor; no se copia nada de regreso. Para llevarse todo, primero guarde todo en un archivo y tráigalo después. ¿Usar el archivo de ahora en adelante?</translation>
    </message>
    <message>
        <source>Use the file</source>
        <translation>Usar el archivo</translation>
    </message>
    <message>
        <source>Put back the records as they were on {day}? What is there now is set aside and kept, and the program goes on with the copy. What was entered after that moment must be entered again.</source>
        <translation>¿Reponer los registros como estaban el {day}? Lo que hay ahora se aparta y se conserva, y el programa sigue con la copia. Lo que se anotó después de ese momento hay que anotarlo de nuevo.</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Reponerla</translation>
    </message>
    <message>
        <source>Looking through the sign-offs</source>
        <translation>Revisando las firmas</translation>
    </message>
    <message>
        <source>All signed-off weigh-ins are as they were signed.</source>
        <translation>Todas las pesadas firmadas están como se firmaron.</translation>
    </message>
    <message>
        <source>Save everything</source>
        <translation>Guardar todo</translation>
    </message>
    <message>
        <source>Records (*.json)</source>
        <translation>Registros (*.json)</translation>
    </message>
    <message>
        <source>Set this entry aside</source>
        <translation>Poner aparte esta anotación</translation>
    </message>
    <message>
        <source>Save what waits to a file</source>
        <translation>Guardar en un archivo lo que espera</translation>
    </message>
    <message>
        <source>Entries that the server did not take</source>
        <translation>Anotaciones que el servidor no aceptó</translation>
    </message>
    <message>
        <source>Seen, take this one off</source>
        <translation>Vista, quitar esta</translation>
    </message>
    <message>
        <source>Take all off</source>
        <translation>Quitar todas</translation>
    </message>
    <message>
        <source>Save these to a file</source>
        <translation>Guardar estas en un archivo</translation>
    </message>
    <message>
        <source>What waited was sent.</source>
        <translation>Se envió lo que esperaba.</translation>
    </message>
    <message>
        <source>entries not taken</source>
        <translation>anotaciones no aceptadas</translation>
    </message>
    <message>
        <source>entries that wait</source>
        <translation>anotaciones que esperan</translation>
    </message>
    <message>
        <source>Save entries</source>
        <translation>Guardar anotaciones</translation>
    </message>
    <message>
        <source>Saving entries</source>
        <translation>Guardando anotaciones</translation>
    </message>
    <message>
        <source>Workbooks (*.xlsx)</source>
        <translation>Libros de cálculo (*.xlsx)</translation>
    </message>
    <message>
        <source>Save a workbook</source>
        <translation>Guardar un libro de cálculo</translation>
    </message>
    <message>
        <source>ZIP (*.zip)</source>
        <translation>ZIP (*.zip)</translation>
    </message>
    <message>
        <source>records</source>
        <translation>registros</translation>
    </message>
    <message>
        <source>Enter the farm first.</source>
        <translation>Primero registre el establo.</translation>
    </message>
    <message>
        <source>Tables (*.xlsx *.xlsm *.csv *.txt *.tsv);;All files (*)</source>
        <translation>Tablas (*.xlsx *.xlsm *.csv *.txt *.tsv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Bring in a spreadsheet</source>
        <translation>Traer una hoja de cálculo</translation>
    </message>
    <message>
        <source>Bring in records</source>
        <translation>Traer registros</translation>
    </message>
    <message>
        <source>Saving everything</source>
        <translation>Guardando todo</translation>
    </message>
    <message>
        <source>Saving a workbook</source>
        <translation>Guardando un libro de cálculo</translation>
    </message>
    <message>
        <source>Saved as {file}.</source>
        <translation>Guardado como {file}.</translation>
    </message>
    <message>
        <source>Saving as CSV</source>
        <translation>Guardando como CSV</translation>
    </message>
    <message>
        <source>Bringing in {file}</source>
        <translation>Trayendo {file}</translation>
    </message>
    <message>
        <source>{day}, the day&apos;s copy</source>
        <translation>{day}, la copia del día</translation>
    </message>
    <message>
        <source>{day}, before a change of layout</source>
        <translation>{day}, antes de un cambio de formato</translation>
    </message>
    <message>
        <source>Not taken by the server</source>
        <translation>No aceptado por el servidor</translation>
    </message>
    <message>
        <source>From a spreadsheet of your own</source>
        <translation>De una hoja de cálculo propia</translation>
    </message>
    <message>
        <source>The settings of the farm {farm} were changed here and in the file; those of this computer stay. Compare them with those of the other computer.</source>
        <translation>Los ajustes del establo {farm} se cambiaron aquí y en el archivo; se quedan los de esta computadora. Compárelos con los de la otra computadora.</translation>
    </message>
    <message>
        <source>Several computers work on these. Copies of them are made on the server: ask whoever looks after it. While it is away, weigh-ins go on and are sent later.</source>
        <translation>Varias computadoras trabajan con estos. Sus copias se hacen en el servidor: pregunte a quien lo cuida. Mientras no esté, las pesadas siguen y se envían después.</translation>
    </message>
    <message>
        <source>Where the records are</source>
        <translation>Dónde están los registros</translation>
    </message>
    <message>
        <source>Copies</source>
        <translation>Copias</translation>
    </message>
    <message>
        <source>Use a server …</source>
        <translation>Usar un servidor …</translation>
    </message>
    <message>
        <source>Use the file on this computer</source>
        <translation>Usar el archivo de esta computadora</translation>
    </message>
    <message>
        <source>A copy is made each day and before each change of layout, and looked through once it is written. All of the last two weeks are kept, then one of each week for three months, then one of each month; never fewer than the newest fourteen.</source>
        <translation>Se hace una copia cada día y antes de cada cambio de formato, y se revisa en cuanto está escrita. Se conservan todas las de las últimas dos semanas, luego una por semana durante tres meses y después una por mes; nunca menos de las catorce más recientes.</translation>
    </message>
    <message>
        <source>All that was ever kept, with who and when: as a file to take to another computer, or as a workbook or CSV to look at.</source>
        <translation>Todo lo que se ha guardado, con quién y cuándo: como archivo para llevar a otra computadora, o como libro de cálculo o CSV para verlo.</translation>
    </message>
    <message>
        <source>Lots and weighings as you noted them so far, from a workbook (.xlsx) or CSV. You see what it comes to before anything is added.</source>
        <translation>Lotes y pesadas como los anotaba hasta ahora, de un libro de cálculo (.xlsx) o CSV. Usted ve qué resulta antes de que se agregue algo.</translation>
    </message>
    <message>
        <source>As they were signed</source>
        <translation>Como se firmaron</translation>
    </message>
    <message>
        <source>Everything in one file</source>
        <translation>Todo en un archivo</translation>
    </message>
</context>
<context>
    <name>ScaleForm</name>
    <message>
        <source>Name of the scale</source>
        <translation>Nombre de la báscula</translation>
    </message>
    <message>
        <source>The smallest change on its display, in the unit you will read.</source>
        <translation>El menor cambio, en la unidad que va a leer.</translation>
    </message>
    <message>
        <source>Step of the display</source>
        <translation>De cuánto en cuánto marca</translation>
    </message>
    <message>
        <source>As on its plate, after Max.</source>
        <translation>Como en su placa, después de Max.</translation>
    </message>
    <message>
        <source>Most it weighs</source>
        <translation>Capacidad máxima</translation>
    </message>
    <message>
        <source>Often:</source>
        <translation>Lo común:</translation>
    </message>
    <message>
        <source>Yes, that is right</source>
        <translation>Sí, está bien</translation>
    </message>
    <message>
        <source>This is not more than one step of the display. Check both.</source>
        <translation>Esto no es más que una división. Revise los dos.</translation>
    </message>
    <message>
        <source>A scale up to {most} hardly weighs a full scoop. Is {most} right?</source>
        <translation>Una báscula de hasta {most} difícilmente pesa una medida llena. ¿Es correcto {most}?</translation>
    </message>
    <message>
        <source>A scale up to {most} hardly weighs a full scoop; {meant} is usual. Is {most} right?</source>
        <translation>Una báscula de hasta {most} difícilmente pesa una medida llena; lo usual es {meant}. ¿Es correcto {most}?</translation>
    </message>
    <message>
        <source>A scale up to {most} that shows every {step} is rare. Are both figures right?</source>
        <translation>Es raro que una báscula de hasta {most} marque cada {step}. ¿Están bien las dos cifras?</translation>
    </message>
</context>
<context>
    <name>ScaleWire</name>
    <message>
        <source>How the scale&apos;s lines look is not understood. Correct it under Set-up, Scale with a cable.</source>
        <translation>No se entiende cómo son las líneas de la báscula. Corríjalo en Ajustes, Báscula con cable.</translation>
    </message>
    <message>
        <source>A scale with a cable needs an addition to this program: install its ‘scale’ option.</source>
        <translation>Una báscula con cable necesita un añadido de este programa: instálelo con su opción ‘scale’.</translation>
    </message>
    <message>
        <source>No scale at {port}. Plug its cable in and switch it on; the program keeps looking.</source>
        <translation>No hay báscula en {port}. Conecte su cable y enciéndala; el programa sigue buscando.</translation>
    </message>
    <message>
        <source>The scale at {port} is gone. Plug its cable in again; weights can be typed meanwhile.</source>
        <translation>La báscula en {port} ya no está. Conecte otra vez su cable; mientras tanto se pueden teclear los pesos.</translation>
    </message>
    <message>
        <source>The scale sends lines that are not understood: “{line}”. Look at Set-up, Scale with a cable.</source>
        <translation>La báscula envía líneas que no se entienden: “{line}”. Vea Ajustes, Báscula con cable.</translation>
    </message>
</context>
<context>
    <name>Science</name>
    <message>
        <source>A batch needs at least one calf.</source>
        <translation>Una tanda necesita al menos una becerra.</translation>
    </message>
    <message>
        <source>A line lies farther down the wall than these labels are high. Use higher labels.</source>
        <translation>Una línea queda más abajo de lo que miden de alto estas etiquetas. Use etiquetas más altas.</translation>
    </message>
    <message>
        <source>A line must lie below the rim. Choose another scoop or weight.</source>
        <translation>La línea tiene que quedar debajo del borde. Elija otra medida u otro peso.</translation>
    </message>
    <message>
        <source>A line on the floor of the scoop holds no powder.</source>
        <translation>Con una línea en el fondo, la medida no lleva polvo.</translation>
    </message>
    <message>
        <source>A probability must lie between 0 and 1.</source>
        <translation>Una probabilidad va de 0 a 1.</translation>
    </message>
    <message>
        <source>A reading without any spread cannot be judged.</source>
        <translation>Una lectura sin dispersión no se puede juzgar.</translation>
    </message>
    <message>
        <source>A sheet of labels needs at least one label, and sizes above zero.</source>
        <translation>Una hoja de etiquetas necesita al menos una etiqueta y tamaños mayores que cero.</translation>
    </message>
    <message>
        <source>A table goes up to 1,000,000 calves.</source>
        <translation>Una tabla llega hasta 1,000,000 de becerras.</translation>
    </message>
    <message>
        <source>At least one scoopful must have been weighed.</source>
        <translation>Tiene que haberse pesado al menos una medida.</translation>
    </message>
    <message>
        <source>Count one bag at least.</source>
        <translation>Cuente al menos un costal.</translation>
    </message>
    <message>
        <source>Draw the line on the scoop and enter where it is before signing off.</source>
        <translation>Antes de firmar, trace la línea en la medida y anote dónde está.</translation>
    </message>
    <message>
        <source>Each step of poured water must stand higher and hold more than the one before.</source>
        <translation>Cada paso de agua vertida tiene que quedar más alto y tener más agua que el anterior.</translation>
    </message>
    <message>
        <source>Each step of poured water needs its level and its volume.</source>
        <translation>Cada paso de agua vertida necesita su nivel y su volumen.</translation>
    </message>
    <message>
        <source>Give the limits in order: the lowest, the highest, where the risk begins.</source>
        <translation>Dé los límites en orden: el menor, el mayor y dónde empieza el riesgo.</translation>
    </message>
    <message>
        <source>Give the plan at least one group of calves.</source>
        <translation>Ponga en el plan al menos un grupo de becerras.</translation>
    </message>
    <message>
        <source>Give the weight of powder in the mix.</source>
        <translation>Dé el peso del polvo de la mezcla.</translation>
    </message>
    <message>
        <source>It takes two groups or more to compare them.</source>
        <translation>Para comparar hacen falta dos grupos o más.</translation>
    </message>
    <message>
        <source>It takes two people with two fills each to compare them.</source>
        <translation>Se necesitan dos personas con dos llenadas cada una para compararlas.</translation>
    </message>
    <message>
        <source>It takes the same two people or more in two trials or more to compare them over time.</source>
        <translation>Se necesitan las mismas dos personas o más en dos pruebas o más para compararlas en el tiempo.</translation>
    </message>
    <message>
        <source>It takes two fills or more of each person in each trial to compare them over time.</source>
        <translation>Se necesitan dos llenadas o más de cada persona en cada prueba para compararlas en el tiempo.</translation>
    </message>
    <message>
        <source>More powder was fed than came: count the bags that are left.</source>
        <translation>Se dio más polvo del que llegó: cuente los costales que quedan.</translation>
    </message>
    <message>
        <source>No water is hot or cold enough for this: warm the powder or the vessel first.</source>
        <translation>Ninguna agua está tan caliente o tan fría como para esto: temple primero el polvo o el recipiente.</translation>
    </message>
    <message>
        <source>One step of poured water rises far too much for its volume; pour it once more.</source>
        <translation>Un paso de agua vertida sube demasiado para su volumen; viértalo otra vez.</translation>
    </message>
    <message>
        <source>Read one drop at least.</source>
        <translation>Lea al menos una gota.</translation>
    </message>
    <message>
        <source>Read the hydrometer once at least.</source>
        <translation>Lea el densímetro al menos una vez.</translation>
    </message>
    <message>
        <source>Read the mix in one way at least.</source>
        <translation>Lea la mezcla al menos de un modo.</translation>
    </message>
    <message>
        <source>Say how many calves there are in each group.</source>
        <translation>Diga cuántas becerras hay en cada grupo.</translation>
    </message>
    <message>
        <source>So much powder does not fit into this volume: check both.</source>
        <translation>Tanto polvo no cabe en este volumen: revise los dos.</translation>
    </message>
    <message>
        <source>So much powder leaves no room for water in this volume of mix.</source>
        <translation>Tanto polvo no deja lugar para el agua en este volumen de mezcla.</translation>
    </message>
    <message>
        <source>The degrees of freedom of the scale&apos;s error must be above zero.</source>
        <translation>Los grados de libertad del error de la báscula tienen que ser más de cero.</translation>
    </message>
    <message>
        <source>The density of air must be far below that of water.</source>
        <translation>La densidad del aire tiene que ser mucho menor que la del agua.</translation>
    </message>
    <message>
        <source>The folder {folder} is not there any more. Choose another place.</source>
        <translation>La carpeta {folder} ya no existe. Elija otro lugar.</translation>
    </message>
    <message>
        <source>{name} cannot be written: {reason}. Choose another place.</source>
        <translation>No se puede guardar {name}: {reason}. Elija otro lugar.</translation>
    </message>
    <message>
        <source>The disk is full, so {name} was not written. Free some space or choose another place.</source>
        <translation>El disco está lleno y {name} no se guardó. Libere espacio o elija otro lugar.</translation>
    </message>
    <message>
        <source>{name} cannot be written: another program has it open, or you may not write there. Close it there, or choose another name or place.</source>
        <translation>No se puede guardar {name}: otro programa lo tiene abierto, o no tiene permiso para escribir ahí. Ciérrelo allá, o elija otro nombre o lugar.</translation>
    </message>
    <message>
        <source>The fills of this weigh-in do not reach to a result.</source>
        <translation>Las llenadas de esta pesada no alcanzan para un resultado.</translation>
    </message>
    <message>
        <source>The hot water must be warmer than the cold water.</source>
        <translation>El agua caliente tiene que estar más caliente que la fría.</translation>
    </message>
    <message>
        <source>The labels of this sheet overlap: from one to the next must be a label&apos;s size or more.</source>
        <translation>Las etiquetas de esta hoja se enciman: de una a la siguiente tiene que haber el tamaño de una etiqueta o más.</translation>
    </message>
    <message>
        <source>The labels of this sheet reach beyond the paper. Look at its sizes again.</source>
        <translation>Las etiquetas de esta hoja se salen del papel. Revise sus tamaños.</translation>
    </message>
    <message>
        <source>The lot number does not fit around this scoop. Print the strip label instead.</source>
        <translation>El número de lote no cabe alrededor de esta medida. Imprima la etiqueta en tira.</translation>
    </message>
    <message>
        <source>The lot number does not fit on so small a label. Use larger labels or a larger scoop.</source>
        <translation>El número de lote no cabe en una etiqueta tan chica. Use etiquetas más grandes o una medida más grande.</translation>
    </message>
    <message>
        <source>The number of readings must be greater than zero.</source>
        <translation>El número de lecturas tiene que ser más de cero.</translation>
    </message>
    <message>
        <source>The parts on the label add up to more than 100 %.</source>
        <translation>Las partes de la etiqueta suman más de 100 %.</translation>
    </message>
    <message>
        <source>The plan has no calves to print a chart for. Enter how many calves there are.</source>
        <translation>El plan no tiene becerras para imprimir una tabla. Anote cuántas becerras hay.</translation>
    </message>
    <message>
        <source>The powder itself does not hold so much dry matter.</source>
        <translation>El polvo mismo no tiene tanta materia seca.</translation>
    </message>
    <message>
        <source>The printer did not start. See that it is switched on and try again.</source>
        <translation>La impresora no arrancó. Vea que esté encendida y pruebe otra vez.</translation>
    </message>
    <message>
        <source>The printer stopped. See to it and print again.</source>
        <translation>La impresora se detuvo. Revísela e imprima otra vez.</translation>
    </message>
    <message>
        <source>Printing was stopped. Throw away what comes out of the printer all the same: its numbers are not in use.</source>
        <translation>La impresión se detuvo. Tire lo que salga de la impresora de todos modos: sus números no están en uso.</translation>
    </message>
    <message>
        <source>The scale&apos;s error is larger than the weights: check the scale first.</source>
        <translation>El error de la báscula es mayor que los pesos: revise primero la báscula.</translation>
    </message>
    <message>
        <source>The second reading must be cooler than the first and still warmer than the room.</source>
        <translation>La segunda lectura tiene que ser más fría que la primera y todavía más caliente que el cuarto.</translation>
    </message>
    <message>
        <source>The spread must be greater than zero.</source>
        <translation>La dispersión debe ser mayor que cero.</translation>
    </message>
    <message>
        <source>The wanted temperature must lie between the cold and the hot water.</source>
        <translation>La temperatura deseada tiene que estar entre la del agua fría y la del agua caliente.</translation>
    </message>
    <message>
        <source>The weight of powder must be greater than zero.</source>
        <translation>El peso del polvo tiene que ser más de cero.</translation>
    </message>
    <message>
        <source>The weights do not fit around this scoop. Print the strip label instead.</source>
        <translation>Los pesos no caben alrededor de esta medida. Imprima la etiqueta en tira.</translation>
    </message>
    <message>
        <source>The words do not fit around this scoop. Print the strip label instead.</source>
        <translation>Las palabras no caben alrededor de esta medida. Imprima la etiqueta en tira.</translation>
    </message>
    <message>
        <source>There are too few lots for this comparison.</source>
        <translation>Hay muy pocos lotes para esta comparación.</translation>
    </message>
    <message>
        <source>There are too few readings to compare their spreads.</source>
        <translation>Hay muy pocas lecturas para comparar sus dispersiones.</translation>
    </message>
    <message>
        <source>There are too few readings to tell how sure this is.</source>
        <translation>Hay muy pocas lecturas para decir qué tan bien se sabe.</translation>
    </message>
    <message>
        <source>There is no line to print yet. Sign off a weigh-in first.</source>
        <translation>Todavía no hay línea que imprimir. Firme primero una pesada.</translation>
    </message>
    <message>
        <source>There is nothing to average yet.</source>
        <translation>Todavía no hay nada que promediar.</translation>
    </message>
    <message>
        <source>These groups are mixed at different rates: make a table for each group.</source>
        <translation>Estos grupos se mezclan con dosis distintas: haga una tabla para cada grupo.</translation>
    </message>
    <message>
        <source>These lots do not tell one cause from another.</source>
        <translation>Estos lotes no permiten distinguir una causa de otra.</translation>
    </message>
    <message>
        <source>These steps to weaning do not fit one page. Use fewer steps.</source>
        <translation>Estos pasos al destete no caben en una hoja. Use menos pasos.</translation>
    </message>
    <message>
        <source>This chart does not fit the paper. Use fewer kinds of scoops, or larger paper.</source>
        <translation>Esta tabla no cabe en el papel. Use menos tipos de medidas, o papel más grande.</translation>
    </message>
    <message>
        <source>This is more than it holds: only {fl_oz} fl oz ({ml} mL) to the rim.</source>
        <translation>Es más de lo que le cabe: solo {fl_oz} fl oz ({ml} mL) hasta el borde.</translation>
    </message>
    <message>
        <source>This level is above the rim: the inside is {inches} in ({mm} mm) high.</source>
        <translation>Este nivel queda arriba del borde: por dentro mide {inches} in ({mm} mm) de alto.</translation>
    </message>
    <message>
        <source>This line is below the floor: the wall has {inches} in ({mm} mm).</source>
        <translation>Esta línea queda abajo del fondo: la pared mide {inches} in ({mm} mm).</translation>
    </message>
    <message>
        <source>This powder is nearly as light as water, so that density tells nothing of its solids.</source>
        <translation>Este polvo es casi tan ligero como el agua, así que la densidad no dice nada de sus sólidos.</translation>
    </message>
    <message>
        <source>This scale is too coarse for so little sugar: make more of the solution.</source>
        <translation>A esta báscula le falta precisión para tan poca azúcar: prepare más solución.</translation>
    </message>
    <message>
        <source>This scale is too coarse for so small a mix: make more of it.</source>
        <translation>A esta báscula le falta precisión para una mezcla tan chica: prepare más.</translation>
    </message>
    <message>
        <source>This scoop is too large for a wrap on this paper. Print the strip label instead.</source>
        <translation>Esta medida es demasiado grande para una etiqueta envolvente en este papel. Imprima la etiqueta en tira.</translation>
    </message>
    <message>
        <source>This scoop is too tall for a label on this paper. Use larger paper.</source>
        <translation>Esta medida es demasiado alta para una etiqueta en este papel. Use papel más grande.</translation>
    </message>
    <message>
        <source>This sheet has no room for the bars that its scale is checked by. Use plain paper.</source>
        <translation>En esta hoja no caben las barras para revisar su escala. Use papel normal.</translation>
    </message>
    <message>
        <source>This table would have more than 20,000 rows: take a larger step.</source>
        <translation>Esta tabla tendría más de 20,000 filas: use pasos más grandes.</translation>
    </message>
    <message>
        <source>No volume lies in this range: take a smaller step, or a larger last volume.</source>
        <translation>Ningún volumen cae en este rango: tome un paso menor o un último volumen mayor.</translation>
    </message>
    <message>
        <source>This vessel does not hold so much mix: check the volume, or choose the vessel it is in.</source>
        <translation>En este recipiente no cabe tanta mezcla: revise el volumen, o elija el recipiente en el que está.</translation>
    </message>
    <message>
        <source>This would be lighter than water: check the reading, and the instrument in plain water.</source>
        <translation>Esto sería más ligero que el agua: revise la lectura, y el instrumento en agua sola.</translation>
    </message>
    <message>
        <source>Weigh at least one scoop with this lot.</source>
        <translation>Pese al menos una medida con este lote.</translation>
    </message>
    <message>
        <source>Weigh at least one scoopful first.</source>
        <translation>Pese primero al menos una medida.</translation>
    </message>
    <message>
        <source>Weigh level fills and set a target weight before signing off.</source>
        <translation>Antes de firmar, pese llenadas al ras y ponga un peso deseado.</translation>
    </message>
    <message>
        <source>Weigh the jug once at least.</source>
        <translation>Pese la jarra al menos una vez.</translation>
    </message>
    <message>
        <source>Weigh the scoop full of water at least once.</source>
        <translation>Pese la medida llena de agua al menos una vez.</translation>
    </message>
    <message>
        <source>{what} cannot be less than zero.</source>
        <translation>{what}: no puede ser menos de cero.</translation>
    </message>
    <message>
        <source>{what} must be an ordinary number.</source>
        <translation>{what}: tiene que ser un número común.</translation>
    </message>
    <message>
        <source>{what} must be greater than zero.</source>
        <translation>{what}: tiene que ser más de cero.</translation>
    </message>
    <message>
        <source>{what} must lie between {limits}.</source>
        <translation>{what}: tiene que estar entre {limits}.</translation>
    </message>
    <message>
        <source>More powder</source>
        <translation>Más polvo</translation>
    </message>
    <message>
        <source>A Brix reading</source>
        <translation>Una lectura de Brix</translation>
    </message>
    <message>
        <source>A check</source>
        <translation>Una revisión</translation>
    </message>
    <message>
        <source>The weight of a liter of mix</source>
        <translation>El peso de un litro de mezcla</translation>
    </message>
    <message>
        <source>A Brix calibration needs two weighed mixes or more.</source>
        <translation>Una calibración Brix necesita dos mezclas pesadas o más.</translation>
    </message>
    <message>
        <source>The weighed mixes are too alike: let the strongest have 2 % more solids than the weakest.</source>
        <translation>Las mezclas pesadas se parecen demasiado: la más fuerte debe tener 2 % más de sólidos que la más débil.</translation>
    </message>
    <message>
        <source>The weighed mixes must differ in strength: make one weaker and one stronger.</source>
        <translation>Las mezclas pesadas tienen que variar en fuerza: haga una más débil y otra más fuerte.</translation>
    </message>
    <message>
        <source>The weighed mixes scatter so much that they make no calibration: make new ones.</source>
        <translation>Las mezclas pesadas están tan dispersas que no sirven para calibrar: haga otras.</translation>
    </message>
    <message>
        <source>A figure of a weighed mix</source>
        <translation>Una cifra de una mezcla pesada</translation>
    </message>
    <message>
        <source>A hydrometer reading</source>
        <translation>Una lectura de densímetro</translation>
    </message>
    <message>
        <source>A mean</source>
        <translation>Un promedio</translation>
    </message>
    <message>
        <source>A part fill</source>
        <translation>Una medida parcial</translation>
    </message>
    <message>
        <source>A settling factor</source>
        <translation>Un factor de asentamiento</translation>
    </message>
    <message>
        <source>A value</source>
        <translation>Un valor</translation>
    </message>
    <message>
        <source>Each weight of water</source>
        <translation>Cada peso de agua</translation>
    </message>
    <message>
        <source>The Brix of the known solution</source>
        <translation>El Brix de la solución conocida</translation>
    </message>
    <message>
        <source>The Brix of the solution</source>
        <translation>El Brix de la solución</translation>
    </message>
    <message>
        <source>The Brix that one percent of solids adds</source>
        <translation>Los °Brix que agrega cada 1 % de sólidos</translation>
    </message>
    <message>
        <source>The age of a check</source>
        <translation>La antigüedad de una revisión</translation>
    </message>
    <message>
        <source>The air pressure</source>
        <translation>La presión del aire</translation>
    </message>
    <message>
        <source>The air temperature</source>
        <translation>La temperatura del aire</translation>
    </message>
    <message>
        <source>The allowance</source>
        <translation>Lo extra</translation>
    </message>
    <message>
        <source>The ash on the label</source>
        <translation>La ceniza de la etiqueta</translation>
    </message>
    <message>
        <source>The capacity of the scale</source>
        <translation>La capacidad de la báscula</translation>
    </message>
    <message>
        <source>The check weight</source>
        <translation>La pesa de control</translation>
    </message>
    <message>
        <source>The cost of a bag</source>
        <translation>El costo de un costal</translation>
    </message>
    <message>
        <source>The cost of a fill</source>
        <translation>El costo de una llenada</translation>
    </message>
    <message>
        <source>The count of scoopfuls</source>
        <translation>El número de medidas</translation>
    </message>
    <message>
        <source>The density of air</source>
        <translation>La densidad del aire</translation>
    </message>
    <message>
        <source>The density of the mix</source>
        <translation>La densidad de la mezcla</translation>
    </message>
    <message>
        <source>The density of the weights</source>
        <translation>La densidad de las pesas</translation>
    </message>
    <message>
        <source>The display step of the scale</source>
        <translation>La división de la báscula</translation>
    </message>
    <message>
        <source>The distance down the wall</source>
        <translation>La distancia bajo el borde</translation>
    </message>
    <message>
        <source>The division of the scale</source>
        <translation>La división de la escala</translation>
    </message>
    <message>
        <source>The doubt</source>
        <translation>La incertidumbre</translation>
    </message>
    <message>
        <source>The doubt in a dimension</source>
        <translation>La incertidumbre de una dimensión</translation>
    </message>
    <message>
        <source>The doubt in a mean</source>
        <translation>La incertidumbre de un promedio</translation>
    </message>
    <message>
        <source>The doubt in a scoopful</source>
        <translation>La incertidumbre de una medida</translation>
    </message>
    <message>
        <source>The doubt in the check weight</source>
        <translation>La incertidumbre de la pesa de control</translation>
    </message>
    <message>
        <source>The doubt in the jug</source>
        <translation>La incertidumbre de la jarra</translation>
    </message>
    <message>
        <source>The doubt in the level</source>
        <translation>La incertidumbre del nivel</translation>
    </message>
    <message>
        <source>The doubt in the scale&apos;s error</source>
        <translation>La incertidumbre del error de la báscula</translation>
    </message>
    <message>
        <source>The doubt in the scoop&apos;s volume</source>
        <translation>La incertidumbre del volumen de la medida</translation>
    </message>
    <message>
        <source>The doubt in the settling factor</source>
        <translation>La incertidumbre del factor de asentamiento</translation>
    </message>
    <message>
        <source>The doubt in the temperature</source>
        <translation>La incertidumbre de la temperatura</translation>
    </message>
    <message>
        <source>The doubt in the weight of a level scoopful</source>
        <translation>La incertidumbre del peso de una medida al ras</translation>
    </message>
    <message>
        <source>The drift</source>
        <translation>La desviación</translation>
    </message>
    <message>
        <source>The dry matter of the mix</source>
        <translation>La materia seca de la mezcla</translation>
    </message>
    <message>
        <source>The fat on the label</source>
        <translation>La grasa de la etiqueta</translation>
    </message>
    <message>
        <source>The feedings a day</source>
        <translation>Las tomas al día</translation>
    </message>
    <message>
        <source>The fibre on the label</source>
        <translation>La fibra de la etiqueta</translation>
    </message>
    <message>
        <source>The finished volume</source>
        <translation>El volumen terminado</translation>
    </message>
    <message>
        <source>The hot water in the tank</source>
        <translation>El agua caliente del tanque</translation>
    </message>
    <message>
        <source>The humidity</source>
        <translation>La humedad del aire</translation>
    </message>
    <message>
        <source>The inner diameter</source>
        <translation>El diámetro interior</translation>
    </message>
    <message>
        <source>The inner diameter at the floor</source>
        <translation>El diámetro interior en el fondo</translation>
    </message>
    <message>
        <source>The inner diameter at the rim</source>
        <translation>El diámetro interior en el borde</translation>
    </message>
    <message>
        <source>The inner height</source>
        <translation>La altura interior</translation>
    </message>
    <message>
        <source>The inner length</source>
        <translation>El largo interior</translation>
    </message>
    <message>
        <source>The inner width</source>
        <translation>El ancho interior</translation>
    </message>
    <message>
        <source>The laboratory&apos;s osmoles</source>
        <translation>Los osmoles del laboratorio</translation>
    </message>
    <message>
        <source>The level above the floor</source>
        <translation>El nivel sobre el fondo</translation>
    </message>
    <message>
        <source>The moisture on the label</source>
        <translation>La humedad de la etiqueta</translation>
    </message>
    <message>
        <source>The most scoopfuls</source>
        <translation>El máximo de medidas</translation>
    </message>
    <message>
        <source>The number of bags</source>
        <translation>El número de costales</translation>
    </message>
    <message>
        <source>The number of calves</source>
        <translation>El número de becerras</translation>
    </message>
    <message>
        <source>The number of feedings</source>
        <translation>El número de tomas</translation>
    </message>
    <message>
        <source>The number of packages</source>
        <translation>El número de envases</translation>
    </message>
    <message>
        <source>The old line</source>
        <translation>La línea anterior</translation>
    </message>
    <message>
        <source>The pace of feeding</source>
        <translation>El ritmo de las tomas</translation>
    </message>
    <message>
        <source>The powder fed in a day</source>
        <translation>El polvo dado en un día</translation>
    </message>
    <message>
        <source>The powder fed so far</source>
        <translation>El polvo dado hasta ahora</translation>
    </message>
    <message>
        <source>The powder left</source>
        <translation>El polvo que queda</translation>
    </message>
    <message>
        <source>The powder of a feeding</source>
        <translation>El polvo de una toma</translation>
    </message>
    <message>
        <source>The powder per water</source>
        <translation>El polvo por cantidad de agua</translation>
    </message>
    <message>
        <source>The powder that each feeding got</source>
        <translation>El polvo que llevó cada toma</translation>
    </message>
    <message>
        <source>The price of a package</source>
        <translation>El precio de un envase</translation>
    </message>
    <message>
        <source>The protein on the label</source>
        <translation>La proteína de la etiqueta</translation>
    </message>
    <message>
        <source>The ratio of spreads</source>
        <translation>La razón de dispersiones</translation>
    </message>
    <message>
        <source>The reading</source>
        <translation>La lectura</translation>
    </message>
    <message>
        <source>The reading on the SG scale</source>
        <translation>La lectura en la escala SG</translation>
    </message>
    <message>
        <source>The room</source>
        <translation>La temperatura del cuarto</translation>
    </message>
    <message>
        <source>The scale&apos;s error</source>
        <translation>El error de la báscula</translation>
    </message>
    <message>
        <source>The scale&apos;s repeatability</source>
        <translation>La repetibilidad de la báscula</translation>
    </message>
    <message>
        <source>The scoop&apos;s volume</source>
        <translation>El volumen de la medida</translation>
    </message>
    <message>
        <source>The settling factor</source>
        <translation>El factor de asentamiento</translation>
    </message>
    <message>
        <source>The smallest net weight</source>
        <translation>El menor peso neto</translation>
    </message>
    <message>
        <source>The solids</source>
        <translation>Los sólidos</translation>
    </message>
    <message>
        <source>The solids of a weighed mix</source>
        <translation>Los sólidos de una mezcla pesada</translation>
    </message>
    <message>
        <source>The solids of the mix</source>
        <translation>Los sólidos de la mezcla</translation>
    </message>
    <message>
        <source>The solids that this reading stands for</source>
        <translation>Los sólidos que dice esta lectura</translation>
    </message>
    <message>
        <source>The specific heat of the vessel</source>
        <translation>El calor específico del recipiente</translation>
    </message>
    <message>
        <source>The spread</source>
        <translation>La dispersión</translation>
    </message>
    <message>
        <source>The spread of scoopfuls</source>
        <translation>La dispersión de las medidas</translation>
    </message>
    <message>
        <source>The spread of the powder</source>
        <translation>La dispersión del polvo</translation>
    </message>
    <message>
        <source>The step between counts</source>
        <translation>El paso entre cantidades</translation>
    </message>
    <message>
        <source>The step between volumes</source>
        <translation>El paso entre volúmenes</translation>
    </message>
    <message>
        <source>The first volume</source>
        <translation>El primer volumen</translation>
    </message>
    <message>
        <source>The last volume</source>
        <translation>El último volumen</translation>
    </message>
    <message>
        <source>The step of the display</source>
        <translation>La división de la pantalla</translation>
    </message>
    <message>
        <source>The step of the scale</source>
        <translation>La división de la báscula</translation>
    </message>
    <message>
        <source>The step of the scale&apos;s display</source>
        <translation>La división de la pantalla de la báscula</translation>
    </message>
    <message>
        <source>The step of the water</source>
        <translation>De cuánto en cuánto se mide el agua</translation>
    </message>
    <message>
        <source>The strength of the mix</source>
        <translation>La fuerza de la mezcla</translation>
    </message>
    <message>
        <source>The target</source>
        <translation>Lo deseado</translation>
    </message>
    <message>
        <source>The target weight</source>
        <translation>El peso deseado</translation>
    </message>
    <message>
        <source>The temperature</source>
        <translation>La temperatura</translation>
    </message>
    <message>
        <source>The temperature of the mix</source>
        <translation>La temperatura de la mezcla</translation>
    </message>
    <message>
        <source>The temperature of the powder</source>
        <translation>La temperatura del polvo</translation>
    </message>
    <message>
        <source>The temperature of the refractometer</source>
        <translation>La temperatura del refractómetro</translation>
    </message>
    <message>
        <source>The temperature of the vessel</source>
        <translation>La temperatura del recipiente</translation>
    </message>
    <message>
        <source>The time</source>
        <translation>El tiempo</translation>
    </message>
    <message>
        <source>The time between the readings</source>
        <translation>El tiempo entre las lecturas</translation>
    </message>
    <message>
        <source>The tolerance</source>
        <translation>La tolerancia</translation>
    </message>
    <message>
        <source>The usable part of the vessel</source>
        <translation>La parte del recipiente que se usa</translation>
    </message>
    <message>
        <source>The volume</source>
        <translation>El volumen</translation>
    </message>
    <message>
        <source>The volume of finished mix</source>
        <translation>El volumen de mezcla terminada</translation>
    </message>
    <message>
        <source>The volume of mix</source>
        <translation>El volumen de mezcla</translation>
    </message>
    <message>
        <source>The volume of mix in the vessel</source>
        <translation>El volumen de mezcla en el recipiente</translation>
    </message>
    <message>
        <source>The volume of the jug</source>
        <translation>El volumen de la jarra</translation>
    </message>
    <message>
        <source>The volume of the vessel</source>
        <translation>El volumen del recipiente</translation>
    </message>
    <message>
        <source>The volume of water</source>
        <translation>El volumen de agua</translation>
    </message>
    <message>
        <source>The volume per calf</source>
        <translation>El volumen por becerra</translation>
    </message>
    <message>
        <source>The volume that the rate counts on</source>
        <translation>El volumen sobre el que va la dosis</translation>
    </message>
    <message>
        <source>The wall&apos;s thickness</source>
        <translation>El grueso de la pared</translation>
    </message>
    <message>
        <source>The wanted doubt</source>
        <translation>La incertidumbre deseada</translation>
    </message>
    <message>
        <source>The water temperature</source>
        <translation>La temperatura del agua</translation>
    </message>
    <message>
        <source>The weight</source>
        <translation>El peso</translation>
    </message>
    <message>
        <source>The weight of a bag</source>
        <translation>El peso de un costal</translation>
    </message>
    <message>
        <source>The step of the volume</source>
        <translation>El paso del volumen</translation>
    </message>
    <message>
        <source>The volume&apos;s doubt</source>
        <translation>La incertidumbre en el volumen</translation>
    </message>
    <message>
        <source>The weight of a level scoopful</source>
        <translation>El peso de una medida al ras</translation>
    </message>
    <message>
        <source>The weight of a package</source>
        <translation>El peso de un envase</translation>
    </message>
    <message>
        <source>The weight of a scoopful</source>
        <translation>El peso de una medida</translation>
    </message>
    <message>
        <source>The weight of powder</source>
        <translation>El peso del polvo</translation>
    </message>
    <message>
        <source>The weight of the mix</source>
        <translation>El peso de la mezcla</translation>
    </message>
    <message>
        <source>The weight of the mix in the jug</source>
        <translation>El peso de la mezcla en la jarra</translation>
    </message>
    <message>
        <source>The weight of the rest</source>
        <translation>El peso de lo demás</translation>
    </message>
    <message>
        <source>The weight of the solution</source>
        <translation>El peso de la solución</translation>
    </message>
    <message>
        <source>The weight of the vessel</source>
        <translation>El peso del recipiente</translation>
    </message>
    <message>
        <source>The weight of water</source>
        <translation>El peso del agua</translation>
    </message>
    <message>
        <source>What the scale shows</source>
        <translation>Lo que marca la báscula</translation>
    </message>
    <message>
        <source>0 and 100 %</source>
        <translation>0 y 100 %</translation>
    </message>
    <message>
        <source>0 and 50 %</source>
        <translation>0 y 50 %</translation>
    </message>
    <message>
        <source>0 and 60 %</source>
        <translation>0 y 60 %</translation>
    </message>
    <message>
        <source>0 and 60 %; read again</source>
        <translation>0 y 60 %; lea otra vez</translation>
    </message>
    <message>
        <source>0 and 95 %</source>
        <translation>0 y 95 %</translation>
    </message>
    <message>
        <source>0.5 and 1.5; weigh and read anew</source>
        <translation>0.5 y 1.5; pese y lea otra vez</translation>
    </message>
    <message>
        <source>0.9 and 1.2 kg; was the empty jug taken off?</source>
        <translation>0.9 y 1.2 kg; ¿se quitó la jarra vacía?</translation>
    </message>
    <message>
        <source>0.980 and 1.150</source>
        <translation>0.980 y 1.150</translation>
    </message>
    <message>
        <source>0.998 and 1.135</source>
        <translation>0.998 y 1.135</translation>
    </message>
    <message>
        <source>1 and 100 %</source>
        <translation>1 y 100 %</translation>
    </message>
    <message>
        <source>1 and 30</source>
        <translation>1 y 30</translation>
    </message>
    <message>
        <source>1 and 50 % solids</source>
        <translation>1 y 50 % de sólidos</translation>
    </message>
    <message>
        <source>1 and 99 % of a scoop</source>
        <translation>1 y 99 % de una medida</translation>
    </message>
    <message>
        <source>2 and 40 %; check both weights</source>
        <translation>2 y 40 %; revise los dos pesos</translation>
    </message>
    <message>
        <source>32 and 104 °F (0 and 40 °C)</source>
        <translation>32 y 104 °F (0 y 40 °C)</translation>
    </message>
    <message>
        <source>32 and 212 °F (0 and 100 °C)</source>
        <translation>32 y 212 °F (0 y 100 °C)</translation>
    </message>
    <message>
        <source>41 and 104 °F (5 and 40 °C)</source>
        <translation>41 y 104 °F (5 y 40 °C)</translation>
    </message>
    <message>
        <source>5 and 30 % solids</source>
        <translation>5 y 30 % de sólidos</translation>
    </message>
    <message>
        <source>600 and 1100 hPa</source>
        <translation>600 y 1100 hPa</translation>
    </message>
    <message>
        <source>a tenth and ten times of what is wanted</source>
        <translation>la décima parte y diez veces lo deseado</translation>
    </message>
    <message>
        <source>half and twice the target; check bags and feedings</source>
        <translation>la mitad y el doble de lo deseado; revise costales y tomas</translation>
    </message>
    <message>
        <source>−1 and 32</source>
        <translation>−1 y 32</translation>
    </message>
    <message>
        <source>−22 and 140 °F (−30 and 60 °C)</source>
        <translation>−22 y 140 °F (−30 y 60 °C)</translation>
    </message>
    <message>
        <source>−40 and 302 °F (−40 and 150 °C)</source>
        <translation>−40 y 302 °F (−40 y 150 °C)</translation>
    </message>
    <message>
        <source>−90 and 900 %</source>
        <translation>−90 y 900 %</translation>
    </message>
</context>
<context>
    <name>ScoopDoubts</name>
    <message>
        <source>The weighings of water do not fit each other.</source>
        <translation>Las pesadas de agua no concuerdan entre sí.</translation>
    </message>
    <message>
        <source>{name}: {mass} does not fit the others.</source>
        <translation>{name}: {mass} no concuerda con las demás.</translation>
    </message>
    <message>
        <source>Is that right?</source>
        <translation>¿Es correcto?</translation>
    </message>
    <message>
        <source>It would hold {volume}. A scoop for powder usually holds {low} to {high}. Is that right?</source>
        <translation>Le cabrían {volume}. A una medida para polvo suelen caberle de {low} a {high}. ¿Es correcto?</translation>
    </message>
    <message>
        <source>{name}: {size}. A scoop usually has {low} to {high}. Is that right?</source>
        <translation>{name}: {size}. Una medida suele tener de {low} a {high}. ¿Es correcto?</translation>
    </message>
    <message>
        <source>Water of {warmth} was weighed. Usual is {low} to {high}. Is that right?</source>
        <translation>Se pesó agua a {warmth}. Lo usual es de {low} a {high}. ¿Es correcto?</translation>
    </message>
    <message>
        <source>Dimensions and water differ by {percent}. Does {volume} by water count?</source>
        <translation>Las dimensiones y el agua difieren en {percent}. ¿Se toman los {volume} del agua?</translation>
    </message>
</context>
<context>
    <name>ScoopDrawing</name>
    <message>
        <source>New line</source>
        <translation>Línea nueva</translation>
    </message>
    <message>
        <source>Old line</source>
        <translation>Línea anterior</translation>
    </message>
    <message>
        <source>No scoop to draw yet</source>
        <translation>Todavía no hay medida que dibujar</translation>
    </message>
    <message>
        <source>Scoop in cross-section</source>
        <translation>Corte de la medida</translation>
    </message>
    <message>
        <source>down the wall</source>
        <translation>bajo el borde</translation>
    </message>
    <message>
        <source>stays where it is</source>
        <translation>se queda donde está</translation>
    </message>
    <message>
        <source>moves down</source>
        <translation>baja</translation>
    </message>
    <message>
        <source>moves up</source>
        <translation>sube</translation>
    </message>
</context>
<context>
    <name>ScoopForm</name>
    <message>
        <source>Name of the scoop</source>
        <translation>Nombre de la medida</translation>
    </message>
    <message>
        <source>Red tape, a number burned in. May stay empty.</source>
        <translation>Cinta roja, un número grabado. Puede quedar vacío.</translation>
    </message>
    <message>
        <source>Takes the place of</source>
        <translation>Sustituye a</translation>
    </message>
    <message>
        <source>Shape of the scoop</source>
        <translation>Forma de la medida</translation>
    </message>
    <message>
        <source>Water temperature</source>
        <translation>Temperatura del agua</translation>
    </message>
    <message>
        <source>Leave out the earlier water weighing</source>
        <translation>No contar el agua que se pesó antes</translation>
    </message>
    <message>
        <source>Surer: measure it with &amp;water as well</source>
        <translation>Más exacto: medirla también con &amp;agua</translation>
    </message>
    <message>
        <source>As painted on it. What it holds is measured.</source>
        <translation>El nombre que trae escrito. Cuánto le cabe lo calcula el programa.</translation>
    </message>
    <message>
        <source>Pour water in by steps, the last one up to the rim. At each step note all the water that is in the scoop by then, and how high it stands above the floor, along the wall.</source>
        <translation>Vierta agua por pasos, el último hasta el borde. En cada paso anote toda el agua que ya tiene la medida y a qué altura llega sobre el fondo, a lo largo de la pared.</translation>
    </message>
    <message>
        <source>{number}. weighing</source>
        <translation>{number}.ª pesada</translation>
    </message>
    <message>
        <source>Better still: bring the scale to zero with the empty scoop on it, fill it to the rim with water and weigh, three times. Without water the dimensions count.</source>
        <translation>Mejor aún: ponga la báscula en cero con la medida vacía encima, llénela de agua hasta el borde y pese; tres veces. Sin agua cuentan las dimensiones.</translation>
    </message>
    <message>
        <source>By its dimensions it holds {volume}, 95 % sure.</source>
        <translation>Por sus dimensiones le caben {volume} (intervalo del 95 %).</translation>
    </message>
    <message>
        <source>Zero the scale with the empty scoop on it, fill to the rim and weigh again.</source>
        <translation>Ponga la báscula en cero con la medida vacía encima, llénela hasta el borde y pésela otra vez.</translation>
    </message>
    <message>
        <source>By water it holds {volume}, 95 % sure. This is what counts.</source>
        <translation>Con agua le caben {volume} (intervalo del 95 %). Eso es lo que cuenta.</translation>
    </message>
    <message>
        <source>What to know it by</source>
        <translation>Cómo se reconoce</translation>
    </message>
    <message>
        <source>Yes, that is right</source>
        <translation>Sí, está bien</translation>
    </message>
    <message>
        <source>Volume from water</source>
        <translation>Volumen por agua</translation>
    </message>
    <message>
        <source>no other scoop</source>
        <translation>ninguna otra</translation>
    </message>
    <message>
        <source>It is easily taken for {name}. Mark one of them and type here what tells it apart.</source>
        <translation>Se confunde fácilmente con {name}. Marque una de las dos y escriba aquí en qué se distingue.</translation>
    </message>
    <message>
        <source>It would hold {volume}. No scoop does: look at the figures and their units.</source>
        <translation>Cabrían {volume}. Ninguna medida es así: revise los números y sus unidades.</translation>
    </message>
    <message>
        <source>The drawing and the volume appear once every measure is there.</source>
        <translation>El dibujo y el volumen aparecen cuando están todas las dimensiones.</translation>
    </message>
    <message>
        <source>Weighed before: by water it holds {volume}, 95 % sure. It counts until weighed anew.</source>
        <translation>Ya pesada: con agua le caben {volume} (intervalo del 95 %). Eso cuenta hasta que se pese de nuevo.</translation>
    </message>
    <message>
        <source>Dimensions and water differ by {percent}. Measure the inside once more, and see that the scale was zeroed with the empty scoop on it.</source>
        <translation>Las dimensiones y el agua difieren en {percent}. Mida otra vez el interior y vea que la báscula estuviera en cero con la medida vacía.</translation>
    </message>
</context>
<context>
    <name>ScoopPick</name>
    <message>
        <source>For {scoop}</source>
        <translation>Para {scoop}</translation>
    </message>
    <message>
        <source>Thickness of its wall</source>
        <translation>Grueso de su pared</translation>
    </message>
    <message>
        <source>At the rim. A wrap goes around the outside, and that is longer.</source>
        <translation>En el borde. La envolvente va por fuera, y la vuelta es más larga.</translation>
    </message>
    <message>
        <source>Thickness of the wall of {scoop}</source>
        <translation>Grueso de la pared de {scoop}</translation>
    </message>
    <message>
        <source>How {feeding} is filled</source>
        <translation>Cómo se llena {feeding}</translation>
    </message>
    <message>
        <source>{line} (worked out)</source>
        <translation>{line} (calculada)</translation>
    </message>
    <message>
        <source>{mass}: too near the floor</source>
        <translation>{mass}: muy cerca del fondo</translation>
    </message>
    <message>
        <source>{mass}: too near the rim</source>
        <translation>{mass}: muy cerca del borde</translation>
    </message>
    <message>
        <source>{mass}: used level, no line</source>
        <translation>{mass}: se usa al ras, sin línea</translation>
    </message>
    <message>
        <source>{mass}: the main line</source>
        <translation>{mass}: la línea principal</translation>
    </message>
    <message>
        <source>{mass}: half a feeding</source>
        <translation>{mass}: media toma</translation>
    </message>
    <message>
        <source>{count} to the line</source>
        <translation>{count} a la línea</translation>
    </message>
    <message>
        <source>{count} to the line + 1 to ½</source>
        <translation>{count} a la línea + 1 a ½</translation>
    </message>
    <message>
        <source>{count} level + 1 to {mass}</source>
        <translation>{count} al ras + 1 a {mass}</translation>
    </message>
    <message>
        <source>{count} to {mass}</source>
        <translation>{count} a {mass}</translation>
    </message>
    <message>
        <source>{mass}: {plans}</source>
        <translation>{mass}: {plans}</translation>
    </message>
    <message>
        <source>“2 to …”: to a line drawn for that weight. ±: how far one feeding may be off, 95 % sure.</source>
        <translation>“2 a …”: hasta una línea marcada para ese peso. ±: cuánto puede desviarse una toma (intervalo del 95 %).</translation>
    </message>
    <message>
        <source>{mass} = {fills}</source>
        <translation>{mass} = {fills}</translation>
    </message>
    <message>
        <source>{mass} = {count} to the line: {plans}</source>
        <translation>{mass} = {count} hasta la línea: {plans}</translation>
    </message>
    <message>
        <source>{mass} = {count} to the line + 1 to ½: {plans}</source>
        <translation>{mass} = {count} hasta la línea + 1 hasta ½: {plans}</translation>
    </message>
    <message>
        <source>{mass} = {count} to the line</source>
        <translation>{mass} = {count} hasta la línea</translation>
    </message>
</context>
<context>
    <name>ScoopRuleFields</name>
    <message>
        <source>to the line of one scoop where that comes out, else the fewest scoopfuls</source>
        <translation>todas hasta la línea, si da el peso; si no, las menos medidas posibles</translation>
    </message>
    <message>
        <source>whole scoopfuls of one kind, the water trimmed to them</source>
        <translation>medidas enteras de un tipo, con el agua ajustada a ellas</translation>
    </message>
    <message>
        <source>none: weigh the powder</source>
        <translation>ninguna: pesar el polvo</translation>
    </message>
    <message>
        <source>half scoopfuls in any row</source>
        <translation>medias medidas en cualquier renglón</translation>
    </message>
    <message>
        <source>quarter scoopfuls in any row</source>
        <translation>cuartos de medida en cualquier renglón</translation>
    </message>
    <message>
        <source>Which scoopful</source>
        <translation>Cuál medida</translation>
    </message>
    <message>
        <source>A part filled by eye is off by about 5 % of the scoop.</source>
        <translation>Una parte llenada a ojo puede fallar cerca del 5 % de la medida.</translation>
    </message>
    <message>
        <source>whichever changes the water least</source>
        <translation>la que menos cambie el agua</translation>
    </message>
    <message>
        <source>{scoop}, level</source>
        <translation>{scoop}, al ras</translation>
    </message>
    <message>
        <source>{scoop}, to the line</source>
        <translation>{scoop}, hasta la línea</translation>
    </message>
</context>
<context>
    <name>ScreenLanguage</name>
    <message>
        <source>Lan&amp;guage of the screen</source>
        <translation>&amp;Idioma de la pantalla</translation>
    </message>
    <message>
        <source>Like this computer: {language}</source>
        <translation>El de esta computadora: {language}</translation>
    </message>
</context>
<context>
    <name>Season</name>
    <message>
        <source>{low} – {high}</source>
        <translation>{low} – {high}</translation>
    </message>
    <message>
        <source>between {low} and {high}</source>
        <translation>entre {low} y {high}</translation>
    </message>
    <message>
        <source>agglomerated powder came for the first time, with lot {lot}.</source>
        <translation>llegó por primera vez polvo aglomerado, con el lote {lot}.</translation>
    </message>
    <message>
        <source>powder that is not agglomerated came, with lot {lot}.</source>
        <translation>llegó polvo sin aglomerar, con el lote {lot}.</translation>
    </message>
    <message>
        <source>another product came, “{product}”, with lot {lot}.</source>
        <translation>llegó otro producto, “{product}”, con el lote {lot}.</translation>
    </message>
    <message>
        <source>One lot of each does not tell yet how far they differ.</source>
        <translation>Un lote de cada uno todavía no dice cuánto difieren.</translation>
    </message>
    <message>
        <source>Its density cannot be told from that of the lots before.</source>
        <translation>Su densidad no se distingue de la de los lotes anteriores.</translation>
    </message>
    <message>
        <source>A level scoop of it weighs {share} less than before ({between}).</source>
        <translation>Una medida al ras pesa {share} menos que antes ({between}).</translation>
    </message>
    <message>
        <source>A level scoop of it weighs {share} more than before ({between}).</source>
        <translation>Una medida al ras pesa {share} más que antes ({between}).</translation>
    </message>
    <message>
        <source>Old lines do not hold for it: weigh each lot in.</source>
        <translation>Las líneas anteriores no sirven para él: pese cada lote.</translation>
    </message>
    <message>
        <source>scoop “{new}” took the place of “{old}”, from lot {lot} on.</source>
        <translation>la medida “{new}” tomó el lugar de “{old}”, desde el lote {lot}.</translation>
    </message>
    <message>
        <source>Densities are known to ± {after} since, before to ± {before}.</source>
        <translation>Desde entonces la densidad se conoce a ± {after}; antes, a ± {before}.</translation>
    </message>
    <message>
        <source>Densities stepped by {share} with it: one of the two volumes may be wrong. Weigh water in the new scoop. The fill mark holds all the same, for the volume cancels in it.</source>
        <translation>Con ella la densidad dio un salto de {share}: uno de los dos volúmenes puede estar mal. Pese agua en la medida nueva. La línea sirve de todos modos, porque en ella el volumen se cancela.</translation>
    </message>
    <message>
        <source>Density shows no step with it: both volumes agree.</source>
        <translation>La densidad no da ningún salto con ella: los dos volúmenes concuerdan.</translation>
    </message>
    <message>
        <source>Whether densities stepped with it cannot be told yet.</source>
        <translation>Todavía no se sabe si la densidad dio un salto con ella.</translation>
    </message>
    <message>
        <source>humid air at the weigh-in, {humidity} (usually {usual}), lots {lots}.</source>
        <translation>aire húmedo al pesar, {humidity} (lo normal: {usual}), lotes {lots}.</translation>
    </message>
    <message>
        <source>They weigh {share} less than the other lots ({between}).</source>
        <translation>Pesan {share} menos que los otros lotes ({between}).</translation>
    </message>
    <message>
        <source>They weigh {share} more than the other lots ({between}).</source>
        <translation>Pesan {share} más que los otros lotes ({between}).</translation>
    </message>
    <message>
        <source>Their density cannot be told from that of the other lots.</source>
        <translation>Su densidad no se distingue de la de los otros lotes.</translation>
    </message>
    <message>
        <source>Scoopfuls scattered by {now} in place of {usual}.</source>
        <translation>Las medidas variaron {now} en vez de {usual}.</translation>
    </message>
    <message>
        <source>Keep bags closed, stir clinging powder up; weigh, never correct by humidity.</source>
        <translation>Tenga cerrados los costales, remueva el polvo que se pega; pese, nunca corrija por humedad.</translation>
    </message>
    <message>
        <source>lot {lot} is {off} off the average of this powder.</source>
        <translation>el lote {lot} está a {off} del promedio de este polvo.</translation>
    </message>
    <message>
        <source>Weigh a scoopful from two more of its bags before the line is trusted.</source>
        <translation>Pese una medida de otros dos de sus costales antes de confiar en la línea.</translation>
    </message>
    <message>
        <source>It lies outside its limits.</source>
        <translation>Está fuera de sus límites.</translation>
    </message>
    <message>
        <source>It is farther from the lot before than lots are from each other.</source>
        <translation>Está más lejos del lote anterior de lo que los lotes están entre sí.</translation>
    </message>
    <message>
        <source>With it eight lots in a row lie on one side of the middle.</source>
        <translation>Con él van ocho lotes seguidos del mismo lado del centro.</translation>
    </message>
    <message>
        <source>The running mean has left its limits: density has been creeping.</source>
        <translation>El promedio móvil salió de sus límites: la densidad se ha ido corriendo.</translation>
    </message>
    <message>
        <source>A level scoop of lot {last} weighs as much as one of lot {before}.</source>
        <translation>Una medida al ras del lote {last} pesa lo mismo que una del lote {before}.</translation>
    </message>
    <message>
        <source>A level scoop of lot {last} weighs {share} more than one of lot {before}.</source>
        <translation>Una medida al ras del lote {last} pesa {share} más que una del lote {before}.</translation>
    </message>
    <message>
        <source>A level scoop of lot {last} weighs {share} less than one of lot {before}.</source>
        <translation>Una medida al ras del lote {last} pesa {share} menos que una del lote {before}.</translation>
    </message>
    <message>
        <source>With the line of lot {before} a feeding would weigh {mass} in place of {target} (between {low} and {high}).</source>
        <translation>Con la línea del lote {before} una toma pesaría {mass} en vez de {target} (entre {low} y {high}).</translation>
    </message>
    <message>
        <source>With the line of lot {before} a feeding would weigh {mass}, as wanted (between {low} and {high}).</source>
        <translation>Con la línea del lote {before} una toma pesaría {mass}, como se desea (entre {low} y {high}).</translation>
    </message>
    <message>
        <source>Used level, as with lot {before}, a feeding would weigh {mass} in place of {target} (between {low} and {high}).</source>
        <translation>Al ras, como con el lote {before}, una toma pesaría {mass} en vez de {target} (entre {low} y {high}).</translation>
    </message>
    <message>
        <source>Used level, as with lot {before}, a feeding would weigh {mass}, as wanted (between {low} and {high}).</source>
        <translation>Al ras, como con el lote {before}, una toma pesaría {mass}, como se desea (entre {low} y {high}).</translation>
    </message>
    <message>
        <source>Solids would be {solids} in place of {target}.</source>
        <translation>Los sólidos serían {solids} en vez de {target}.</translation>
    </message>
    <message>
        <source>That is {money} more powder a day.</source>
        <translation>Son {money} más de polvo al día.</translation>
    </message>
    <message>
        <source>That is {money} less powder a day, missing from the calves.</source>
        <translation>Son {money} menos de polvo al día, que les falta a las becerras.</translation>
    </message>
    <message>
        <source>By its counted bags a feeding of lot {lot} got {mass}, {share} from the target ({since} to {until}).</source>
        <translation>Según los costales contados, una toma del lote {lot} llevó {mass}, {share} respecto a lo deseado ({since} a {until}).</translation>
    </message>
    <message>
        <source>Solids and money are not told: no feeding plan is entered.</source>
        <translation>No se dicen los sólidos ni el dinero: falta anotar un plan de alimentación.</translation>
    </message>
    <message>
        <source>Money is not told: the lot&apos;s price is not entered.</source>
        <translation>No se dice el dinero: falta anotar el precio del lote.</translation>
    </message>
    <message>
        <source>Money is not told: the weight of the lot&apos;s bags is not entered.</source>
        <translation>No se dice el dinero: falta anotar cuánto pesan los costales del lote.</translation>
    </message>
    <message>
        <source>Lot {lot}, {scoop}, {day}: {density}, 95 % interval {interval}</source>
        <translation>Lote {lot}, {scoop}, {day}: {density}, intervalo del 95 % {interval}</translation>
    </message>
    <message>
        <source>Out of a file, not signed off.</source>
        <translation>De un archivo, sin firmar.</translation>
    </message>
    <message>
        <source>It is fed now.</source>
        <translation>Es el que se da ahora.</translation>
    </message>
    <message>
        <source>It waits and is not fed yet.</source>
        <translation>Está en espera y aún no se da.</translation>
    </message>
    <message>
        <source>{bags}, {fills}</source>
        <translation>{bags}, {fills}</translation>
    </message>
    <message>
        <source>{bags}, {fills}, out of a file</source>
        <translation>{bags}, {fills}, de un archivo</translation>
    </message>
    <message>
        <source>almost surely within (95 % interval)</source>
        <translation>donde está casi siempre (intervalo del 95 %)</translation>
    </message>
    <message>
        <source>where a usual lot of this powder lies</source>
        <translation>donde cae un lote usual de este polvo</translation>
    </message>
    <message>
        <source>average of this powder</source>
        <translation>promedio de este polvo</translation>
    </message>
    <message>
        <source>running mean</source>
        <translation>promedio móvil</translation>
    </message>
    <message>
        <source>out of line</source>
        <translation>fuera de lo normal</translation>
    </message>
    <message>
        <source>out of a file, not signed off</source>
        <translation>viene de un archivo, sin firmar</translation>
    </message>
    <message>
        <source>what happened, see above</source>
        <translation>lo que pasó, vea arriba</translation>
    </message>
</context>
<context>
    <name>SeasonDoors</name>
    <message>
        <source>&amp;Trial of feeders …</source>
        <translation>&amp;Prueba de personal …</translation>
    </message>
    <message>
        <source>&amp;Save all figures …</source>
        <translation>&amp;Guardar los datos …</translation>
    </message>
    <message>
        <source>Season &amp;report …</source>
        <translation>In&amp;forme de la temporada …</translation>
    </message>
    <message>
        <source>Making the season report</source>
        <translation>Haciendo el informe de la temporada</translation>
    </message>
    <message>
        <source>The season report is saved.</source>
        <translation>El informe de la temporada quedó guardado.</translation>
    </message>
    <message>
        <source>Nothing is signed off yet: a report begins with the first sign-off.</source>
        <translation>Aún no hay nada firmado: el informe empieza con la primera firma.</translation>
    </message>
    <message>
        <source>season</source>
        <translation>temporada</translation>
    </message>
    <message>
        <source>Save the season report</source>
        <translation>Guardar el informe de la temporada</translation>
    </message>
    <message>
        <source>Report (*.pdf)</source>
        <translation>Informe (*.pdf)</translation>
    </message>
</context>
<context>
    <name>SeasonModel</name>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation>Recibido</translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidad</translation>
    </message>
    <message>
        <source>95 % within, g/mL</source>
        <translation>95 % entre, g/mL</translation>
    </message>
    <message>
        <source>95 % within, oz/qt</source>
        <translation>95 % entre, oz/qt</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>Filled as before</source>
        <translation>Con la línea anterior</translation>
    </message>
    <message>
        <source>Solids then</source>
        <translation>Sólidos con ella</translation>
    </message>
    <message>
        <source>Money a day</source>
        <translation>Dinero al día</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesado</translation>
    </message>
</context>
<context>
    <name>SeasonPage</name>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>Parts of the season</source>
        <translation>Partes de la temporada</translation>
    </message>
    <message>
        <source>What &amp;happened</source>
        <translation>&amp;Qué pasó</translation>
    </message>
    <message>
        <source>Lots s&amp;ide by side</source>
        <translation>Lotes lad&amp;o a lado</translation>
    </message>
    <message>
        <source>Where spread comes &amp;from</source>
        <translation>De dónde v&amp;iene la variación</translation>
    </message>
    <message>
        <source>Wh&amp;y it moved</source>
        <translation>Por qué &amp;cambió</translation>
    </message>
    <message>
        <source>I&amp;nside a lot</source>
        <translation>De&amp;ntro de un lote</translation>
    </message>
    <message>
        <source>Looking through {lots}, of which none is left out …</source>
        <translation>Revisando {lots}; ninguno queda fuera …</translation>
    </message>
    <message>
        <source>Looking through {lots} and the weighings out of files, of which none is left out …</source>
        <translation>Revisando {lots} y las pesadas traídas de archivos, sin dejar nada fuera …</translation>
    </message>
</context>
<context>
    <name>ServerDialog</name>
    <message>
        <source>Records on a server</source>
        <translation>Registros en un servidor</translation>
    </message>
    <message>
        <source>Computer</source>
        <translation>Computadora</translation>
    </message>
    <message>
        <source>Its name or number, like 192.168.1.20</source>
        <translation>Su nombre o número, como 192.168.1.20</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Puerto</translation>
    </message>
    <message>
        <source>Name of the database</source>
        <translation>Nombre de la base de datos</translation>
    </message>
    <message>
        <source>User</source>
        <translation>Usuario</translation>
    </message>
    <message>
        <source>Password</source>
        <translation>Contraseña</translation>
    </message>
    <message>
        <source>Kept where this computer keeps secrets. Blank: the one kept.</source>
        <translation>Se guarda donde esta computadora guarda sus contraseñas. En blanco: la ya guardada.</translation>
    </message>
    <message>
        <source>Bring the records of this computer&apos;s file over</source>
        <translation>Pasar los registros del archivo de esta computadora</translation>
    </message>
    <message>
        <source>Entries brought over</source>
        <translation>Anotaciones transferidas</translation>
    </message>
    <message>
        <source>&amp;Try it</source>
        <translation>&amp;Probar</translation>
    </message>
    <message>
        <source>&amp;Use these records from now on</source>
        <translation>&amp;Usar estos registros de ahora en adelante</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Detener</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Say which computer the server runs on.</source>
        <translation>Diga en qué computadora está el servidor.</translation>
    </message>
    <message>
        <source>Say what the database is called there.</source>
        <translation>Diga cómo se llama ahí la base de datos.</translation>
    </message>
    <message>
        <source>Say which user the server knows you as.</source>
        <translation>Diga con qué usuario lo conoce el servidor.</translation>
    </message>
    <message>
        <source>A port is a number from 1 to {most}, usually {usual}.</source>
        <translation>Un puerto es un número de 1 a {most}, por lo común {usual}.</translation>
    </message>
    <message>
        <source>The name of a computer has no spaces.</source>
        <translation>El nombre de una computadora no lleva espacios.</translation>
    </message>
    <message>
        <source>Looking for {place} …</source>
        <translation>Buscando {place} …</translation>
    </message>
    <message>
        <source>Making the records ready …</source>
        <translation>Preparando los registros …</translation>
    </message>
    <message>
        <source>Stopped. Nothing was changed.</source>
        <translation>Detenido. No se cambió nada.</translation>
    </message>
    <message>
        <source>Several computers work on the same records when these are on a PostgreSQL server. Whoever looks after it can tell you what to enter here.</source>
        <translation>Varias computadoras trabajan con los mismos registros cuando estos están en un servidor PostgreSQL. Quien lo cuida puede decirle qué escribir aquí.</translation>
    </message>
    <message>
        <source>No answer in time. Check the computer&apos;s name and the network, then try again.</source>
        <translation>No hubo respuesta a tiempo. Revise el nombre de la computadora y la red, y pruebe otra vez.</translation>
    </message>
    <message>
        <source>The server answers. The database is empty: the records will be set up in it.</source>
        <translation>El servidor responde. La base de datos está vacía: los registros se crearán en ella.</translation>
    </message>
    <message>
        <source>The server answers. It has records of this program without a farm yet.</source>
        <translation>El servidor responde. Tiene registros de este programa, todavía sin establo.</translation>
    </message>
    <message>
        <source>They have an older layout and will be brought up to date; then all computers need this version of the program. Have a copy made on the server first.</source>
        <translation>Tienen un formato anterior y se pondrán al día; después todas las computadoras necesitan esta versión del programa. Haga que antes se saque una copia en el servidor.</translation>
    </message>
</context>
<context>
    <name>ServerDoor</name>
    <message>
        <source>Scoop calibration</source>
        <translation>Calibración de medidas</translation>
    </message>
    <message>
        <source>Waiting for the server</source>
        <translation>Esperando al servidor</translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>&amp;Probar otra vez</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Detener</translation>
    </message>
    <message>
        <source>&amp;Change address or password …</source>
        <translation>&amp;Cambiar dirección o contraseña …</translation>
    </message>
    <message>
        <source>&amp;Go on without the server</source>
        <translation>&amp;Seguir sin el servidor</translation>
    </message>
    <message>
        <source>&amp;Use the file on this computer</source>
        <translation>&amp;Usar el archivo de esta computadora</translation>
    </message>
    <message>
        <source>Opening the records on the server</source>
        <translation>Abriendo los registros del servidor</translation>
    </message>
    <message>
        <source>You stopped waiting for {place}.</source>
        <translation>Usted dejó de esperar respuesta de {place}.</translation>
    </message>
    <message>
        <source>The file holds what was on this computer before the server was used. What is entered there is not on the server; the next start asks for the server again.</source>
        <translation>El archivo contiene lo que había en esta computadora antes de usar el servidor. Lo que se anote ahí no queda en el servidor; al iniciar la próxima vez se busca de nuevo el servidor.</translation>
    </message>
    <message>
        <source>You see what this computer last read of the server. Weighings and checks of the mix wait here and are sent when it is back; all other changes need it.</source>
        <translation>Verá lo último que esta computadora leyó del servidor. Las pesadas y las revisiones de la mezcla esperan aquí y se envían cuando vuelva; para todo lo demás hace falta el servidor.</translation>
    </message>
    <message>
        <source>The records on the server are not open</source>
        <translation>Los registros del servidor no están abiertos</translation>
    </message>
</context>
<context>
    <name>SetupPage</name>
    <message>
        <source>Set-up</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Back to the plan</source>
        <translation>Volver al plan</translation>
    </message>
    <message>
        <source>Parts of the set-up</source>
        <translation>Partes de los ajustes</translation>
    </message>
    <message>
        <source>&amp;Farm</source>
        <translation>&amp;Establo</translation>
    </message>
    <message>
        <source>Sc&amp;oops</source>
        <translation>Me&amp;didas</translation>
    </message>
    <message>
        <source>S&amp;cales</source>
        <translation>&amp;Básculas</translation>
    </message>
    <message>
        <source>&amp;Vessels</source>
        <translation>&amp;Recipientes</translation>
    </message>
    <message>
        <source>Instru&amp;ments</source>
        <translation>Instru&amp;mentos</translation>
    </message>
    <message>
        <source>Scale with a ca&amp;ble</source>
        <translation>Báscula con cab&amp;le</translation>
    </message>
    <message>
        <source>Record&amp;s</source>
        <translation>Regis&amp;tros</translation>
    </message>
    <message>
        <source>Scale with a cable</source>
        <translation>Báscula con cable</translation>
    </message>
    <message>
        <source>Each setting is kept as soon as you leave it.</source>
        <translation>Cada ajuste se guarda en cuanto usted pasa a otra cosa.</translation>
    </message>
    <message>
        <source>Kept when you press Keep and listen.</source>
        <translation>Se guarda al oprimir Guardar y escuchar.</translation>
    </message>
    <message>
        <source>Kept when you press Keep.</source>
        <translation>Se guarda al oprimir Guardar.</translation>
    </message>
    <message>
        <source>{step} steps, up to {capacity}</source>
        <translation>división de {step}, hasta {capacity}</translation>
    </message>
    <message>
        <source>{volume}, by water</source>
        <translation>{volume}, con agua</translation>
    </message>
    <message>
        <source>{volume}, by dimensions</source>
        <translation>{volume}, por dimensiones</translation>
    </message>
    <message>
        <source>{name} is in use: lot {lot} is weighed in with it.</source>
        <translation>{name} está en uso: el lote {lot} se pesó con ella.</translation>
    </message>
    <message>
        <source>{name} is in use: lot {lot} is weighed in with it alone. Without it the powder has to be weighed until the lot is weighed in with another scoop.</source>
        <translation>{name} está en uso: el lote {lot} se pesó solo con ella. Sin ella hay que pesar el polvo hasta que el lote se pese con otra medida.</translation>
    </message>
    <message>
        <source>{name} is in use. These plans mix in it and need another vessel then: {plans}.</source>
        <translation>{name} está en uso. Estos planes se mezclan ahí y necesitarán otro recipiente: {plans}.</translation>
    </message>
    <message>
        <source>{volume}, filled to {share}</source>
        <translation>{volume}, se llena hasta {share}</translation>
    </message>
    <message>
        <source>&amp;Add a scale</source>
        <translation>A&amp;gregar una báscula</translation>
    </message>
    <message>
        <source>New scale</source>
        <translation>Báscula nueva</translation>
    </message>
    <message>
        <source>Scale kept: {name}</source>
        <translation>Se guardó la báscula: {name}</translation>
    </message>
    <message>
        <source>&amp;Retire this scale</source>
        <translation>Ret&amp;irar esta báscula</translation>
    </message>
    <message>
        <source>{name} will no longer be offered; its weighings stay. Retire this scale?</source>
        <translation>{name} ya no se ofrecerá; sus pesadas se conservan. ¿Retirar esta báscula?</translation>
    </message>
    <message>
        <source>&amp;Add a scoop</source>
        <translation>A&amp;gregar una medida</translation>
    </message>
    <message>
        <source>New scoop</source>
        <translation>Medida nueva</translation>
    </message>
    <message>
        <source>Scoop kept: {name}</source>
        <translation>Se guardó la medida: {name}</translation>
    </message>
    <message>
        <source>&amp;Retire this scoop</source>
        <translation>Ret&amp;irar esta medida</translation>
    </message>
    <message>
        <source>{name} will no longer be offered; its marks stay. Why is it retired: worn, lost, broken, replaced?</source>
        <translation>{name} ya no se ofrecerá; sus líneas se conservan. ¿Por qué se retira: gastada, perdida, rota, sustituida?</translation>
    </message>
    <message>
        <source>&amp;Add a vessel</source>
        <translation>A&amp;gregar un recipiente</translation>
    </message>
    <message>
        <source>New vessel</source>
        <translation>Recipiente nuevo</translation>
    </message>
    <message>
        <source>Vessel kept: {name}</source>
        <translation>Se guardó el recipiente: {name}</translation>
    </message>
    <message>
        <source>&amp;Retire this vessel</source>
        <translation>Ret&amp;irar este recipiente</translation>
    </message>
    <message>
        <source>{name} will no longer be offered for batches. Retire this vessel?</source>
        <translation>{name} ya no se ofrecerá para las tandas. ¿Retirar este recipiente?</translation>
    </message>
</context>
<context>
    <name>ShapeChoice</name>
    <message>
        <source>Shape of the scoop</source>
        <translation>Forma de la medida</translation>
    </message>
    <message>
        <source>Straight round</source>
        <translation>Redonda recta</translation>
    </message>
    <message>
        <source>Tapered round</source>
        <translation>Redonda cónica</translation>
    </message>
    <message>
        <source>Square</source>
        <translation>Cuadrada</translation>
    </message>
    <message>
        <source>Any other</source>
        <translation>Cualquier otra</translation>
    </message>
</context>
<context>
    <name>ShapeFields</name>
    <message>
        <source>Diameter inside</source>
        <translation>Diámetro interior</translation>
    </message>
    <message>
        <source>Diameter at the rim</source>
        <translation>Diámetro en el borde</translation>
    </message>
    <message>
        <source>Diameter at the floor</source>
        <translation>Diámetro en el fondo</translation>
    </message>
    <message>
        <source>Length inside</source>
        <translation>Largo interior</translation>
    </message>
    <message>
        <source>Width inside</source>
        <translation>Ancho interior</translation>
    </message>
    <message>
        <source>Height inside</source>
        <translation>Altura interior</translation>
    </message>
</context>
<context>
    <name>SheetView</name>
    <message>
        <source>Group of calves</source>
        <translation>Grupo de becerras</translation>
    </message>
    <message>
        <source>Rows of the table</source>
        <translation>Renglones de la tabla</translation>
    </message>
    <message>
        <source>By calves</source>
        <translation>Por becerras</translation>
    </message>
    <message>
        <source>By volume of water</source>
        <translation>Por agua</translation>
    </message>
    <message>
        <source>More than {most} scoopfuls are easily miscounted: better weigh the powder.</source>
        <translation>Más de {most} medidas es fácil contarlas mal: mejor pese el polvo.</translation>
    </message>
    <message>
        <source>Lot {number}</source>
        <translation>Lote {number}</translation>
    </message>
    <message>
        <source>weighed in {day}</source>
        <translation>pesado el {day}</translation>
    </message>
    <message>
        <source>line down the wall: {marks}</source>
        <translation>línea desde el borde: {marks}</translation>
    </message>
    <message>
        <source>without a line: {marks}</source>
        <translation>sin línea: {marks}</translation>
    </message>
    <message>
        <source>{scoop}: not marked for this lot yet. Weigh the powder until its line is on.</source>
        <translation>{scoop}: todavía sin marcar para este lote. Pese el polvo hasta que tenga su línea.</translation>
    </message>
    <message>
        <source>and {count} more; see each plan</source>
        <translation>y {count} más; vea cada plan</translation>
    </message>
    <message>
        <source>{name}, {calves}: {now}, as before</source>
        <translation>{name}, {calves}: {now}, como antes</translation>
    </message>
    <message>
        <source>{name}, {calves}: {now}, as many as before, each to the new line</source>
        <translation>{name}, {calves}: {now}, tantas como antes, cada una hasta la línea nueva</translation>
    </message>
    <message>
        <source>{name}, {calves}: {now}, as many as before, to the same line</source>
        <translation>{name}, {calves}: {now}, tantas como antes, hasta la misma línea</translation>
    </message>
    <message>
        <source>{name}, {calves}: {before}  →  {now}</source>
        <translation>{name}, {calves}: {before}  →  {now}</translation>
    </message>
    <message>
        <source>only for this lot</source>
        <translation>solo para este lote</translation>
    </message>
    <message>
        <source>No lot is signed off, so this table is by weight only: weigh the powder for each batch. Weigh in the lot that is being fed, and the scoopfuls stand here at once.</source>
        <translation>No hay lotes firmados, así que esta tabla va solo por peso: pese el polvo de cada tanda. Pese el lote en uso y las medidas aparecen aquí enseguida.</translation>
    </message>
    <message>
        <source>Start a wei&amp;gh-in</source>
        <translation>&amp;Empezar una pesada</translation>
    </message>
    <message>
        <source>&amp;I have seen this</source>
        <translation>&amp;Ya lo vi</translation>
    </message>
    <message>
        <source>{volume}; {powder} of powder per calf; {rate}</source>
        <translation>{volume}; {powder} de polvo por becerra; {rate}</translation>
    </message>
    <message>
        <source>One {vessel} serves at most {calves} a batch.</source>
        <translation>Con {vessel} alcanza para {calves} por tanda, no más.</translation>
    </message>
    <message>
        <source>Batch table</source>
        <translation>Tabla de mezcla</translation>
    </message>
    <message>
        <source>Group {number}</source>
        <translation>Grupo {number}</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>Todas juntas</translation>
    </message>
    <message>
        <source>Water at {temperature}.</source>
        <translation>Agua a {temperature}.</translation>
    </message>
    <message>
        <source>{share} more than the calves drink, for hoses and pails.</source>
        <translation>{share} más de lo que toman las becerras, para mangueras y cubetas.</translation>
    </message>
</context>
<context>
    <name>SheetWords</name>
    <message>
        <source>No wall chart of {plan} is up for lot {lot}.</source>
        <translation>No hay tabla de pared de {plan} para el lote {lot}.</translation>
    </message>
    <message>
        <source>The wall chart of {plan} (print no. {number}) is of lot {old}; lot {lot} is in use.</source>
        <translation>La tabla de pared de {plan} (impreso n.º {number}) es del lote {old}; está en uso el lote {lot}.</translation>
    </message>
    <message>
        <source>The wall chart of {plan} (print no. {number}) is older than the last weigh-in of lot {lot}.</source>
        <translation>La tabla de pared de {plan} (impreso n.º {number}) es anterior a la última pesada del lote {lot}.</translation>
    </message>
    <message>
        <source>The wall chart of {plan} (print no. {number}) was printed before a scoop that it may count by was retired: take it down.</source>
        <translation>La tabla de pared de {plan} (impreso n.º {number}) se imprimió antes de retirar una medida con la que quizá cuenta: quítela.</translation>
    </message>
    <message>
        <source>The wall chart of {plan} (print no. {number}) counts by other lines than the label printed since has.</source>
        <translation>La tabla de pared de {plan} (impreso n.º {number}) cuenta con otras líneas que las de la etiqueta impresa después.</translation>
    </message>
    <message>
        <source>The wall chart of {plan} (print no. {number}) has no row for today&apos;s calves.</source>
        <translation>La tabla de pared de {plan} (impreso n.º {number}) no tiene renglón para las becerras de hoy.</translation>
    </message>
    <message>
        <source>The wall chart of {plan} (print no. {number}) was printed before the plan was changed.</source>
        <translation>La tabla de pared de {plan} (impreso n.º {number}) se imprimió antes de cambiar el plan.</translation>
    </message>
    <message>
        <source>The wall chart of {plan} (print no. {number}) was printed before its vessel was changed.</source>
        <translation>La tabla de pared de {plan} (impreso n.º {number}) se imprimió antes de cambiar su recipiente.</translation>
    </message>
    <message>
        <source>The wall chart of {plan} (print no. {number}) was printed before the farm&apos;s units, its step for water or its tolerance were changed.</source>
        <translation>La tabla de pared de {plan} (impreso n.º {number}) se imprimió antes de cambiar las unidades del establo, de cuánto en cuánto se mide el agua o la tolerancia.</translation>
    </message>
    <message>
        <source>Print no. {number} of lot {lot} holds: hang it up again if you have it.</source>
        <translation>El impreso n.º {number} del lote {lot} sirve: cuélguelo otra vez si lo tiene.</translation>
    </message>
    <message>
        <source>The label of {scoop} (print no. {number}) is older than the plan for {feedings}. Printed anew it has also: {added}. Or let it stay.</source>
        <translation>La etiqueta de {scoop} (impreso n.º {number}) es anterior al plan de {feedings}. Impresa de nuevo lleva además: {added}. O deje la que está.</translation>
    </message>
    <message>
        <source>a line for {mass}</source>
        <translation>una línea para {mass}</translation>
    </message>
    <message>
        <source>“{mass} = {count} to the line”</source>
        <translation>“{mass} = {count} hasta la línea”</translation>
    </message>
    <message>
        <source>“{mass} = {count} to the line + 1 to ½”</source>
        <translation>“{mass} = {count} hasta la línea + 1 hasta ½”</translation>
    </message>
    <message>
        <source>“{held}: {count} struck at the rim + 1 to here = {mass}”</source>
        <translation>“{held}: {count} al ras del borde + 1 hasta aquí = {mass}”</translation>
    </message>
    <message>
        <source>“{held}: {count} to here = {mass}”</source>
        <translation>“{held}: {count} hasta aquí = {mass}”</translation>
    </message>
    <message>
        <source>{name} (wall chart, print no. {number})</source>
        <translation>{name} (tabla de pared, impreso n.º {number})</translation>
    </message>
    <message>
        <source>{name} (lot sheet, print no. {number})</source>
        <translation>{name} (hoja del lote, impreso n.º {number})</translation>
    </message>
    <message>
        <source>{name} (label, print no. {number})</source>
        <translation>{name} (etiqueta, impreso n.º {number})</translation>
    </message>
    <message>
        <source>wall chart</source>
        <translation>tabla de pared</translation>
    </message>
    <message>
        <source>scoop</source>
        <translation>medida</translation>
    </message>
</context>
<context>
    <name>SheetsDown</name>
    <message>
        <source>Old sheets still to take down</source>
        <translation>Hojas viejas que falta quitar</translation>
    </message>
    <message>
        <source>&amp;Taken down, nothing in its place</source>
        <translation>&amp;Quitada, sin nada en su lugar</translation>
    </message>
    <message>
        <source>&amp;Replaced: a new sheet is there</source>
        <translation>&amp;Reemplazada: hay una hoja nueva</translation>
    </message>
    <message>
        <source>Thrown away &amp;unused: jammed, or its bars were off</source>
        <translation>Tirada sin &amp;usar: se atascó o sus barras estaban mal</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Iniciales</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Go back</source>
        <translation>Regre&amp;sar</translation>
    </message>
    <message>
        <source>Which of them did you take down?</source>
        <translation>¿Cuáles quitó usted?</translation>
    </message>
    <message>
        <source>Your &amp;initials</source>
        <translation>Sus &amp;iniciales</translation>
    </message>
    <message>
        <source>Kept: taken down.</source>
        <translation>Guardado: ya se quitó.</translation>
    </message>
</context>
<context>
    <name>SideBySide</name>
    <message>
        <source>Lots {first} and {second} cannot be told apart: the difference lies between {low} and {high}.</source>
        <translation>Los lotes {first} y {second} no se distinguen: la diferencia está entre {low} y {high}.</translation>
    </message>
    <message>
        <source>A level scoop weighs {share} more ({between}) with lot {second} than with lot {first}.</source>
        <translation>Una medida al ras pesa {share} más ({between}) con el lote {second} que con el lote {first}.</translation>
    </message>
    <message>
        <source>A level scoop weighs {share} less ({between}) with lot {second} than with lot {first}.</source>
        <translation>Una medida al ras pesa {share} menos ({between}) con el lote {second} que con el lote {first}.</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Made, arrived</source>
        <translation>Fabricado, recibido</translation>
    </message>
    <message>
        <source>Density (± 95 %)</source>
        <translation>Densidad (± 95 %)</translation>
    </message>
    <message>
        <source>Settles to the line by</source>
        <translation>Asentamiento hasta la línea</translation>
    </message>
    <message>
        <source>Line down the wall</source>
        <translation>Línea desde el borde</translation>
    </message>
    <message>
        <source>Filled as for the lot before</source>
        <translation>Con la línea del lote anterior</translation>
    </message>
    <message>
        <source>Room humidity</source>
        <translation>Humedad del cuarto</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Se pesó</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Báscula</translation>
    </message>
    <message>
        <source>{line}, for {feeding}</source>
        <translation>{line}, para {feeding}</translation>
    </message>
    <message>
        <source>none, for {feeding}</source>
        <translation>sin línea, para {feeding}</translation>
    </message>
    <message>
        <source>{mass} in place of {target}</source>
        <translation>{mass} en vez de {target}</translation>
    </message>
    <message>
        <source>{product}, plant {plant}</source>
        <translation>{product}, planta {plant}</translation>
    </message>
</context>
<context>
    <name>SideTable</name>
    <message>
        <source>Side by side</source>
        <translation>Lado a lado</translation>
    </message>
</context>
<context>
    <name>Sign</name>
    <message>
        <source>Scoop calibration</source>
        <translation>Calibración de medidas</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Stopping …</source>
        <translation>Deteniendo …</translation>
    </message>
</context>
<context>
    <name>SpotCard</name>
    <message>
        <source>Scoop</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>Struck le&amp;vel</source>
        <translation>Al &amp;ras</translation>
    </message>
    <message>
        <source>Wei&amp;ght of the scoopful</source>
        <translation>P&amp;eso de la medida</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Sus iniciales</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>St&amp;rike it out</source>
        <translation>Ta&amp;char</translation>
    </message>
    <message>
        <source>Weigh the lot in &amp;anew</source>
        <translation>Pesar &amp;otra vez el lote</translation>
    </message>
    <message>
        <source>Say who weighed.</source>
        <translation>Escriba quién pesó.</translation>
    </message>
    <message>
        <source>a spot fill</source>
        <translation>una llenada de control</translation>
    </message>
    <message>
        <source>Spot fill</source>
        <translation>Llenada de control</translation>
    </message>
    <message>
        <source>Strike out {weight}</source>
        <translation>Tachar {weight}</translation>
    </message>
    <message>
        <source>Struck level only, until it is told above that the line of this lot is on.</source>
        <translation>Solo al ras, hasta que se diga arriba que la línea de este lote está puesta.</translation>
    </message>
    <message>
        <source>For the whole lot level scoopfuls still do.</source>
        <translation>Para todo el lote la medida al ras todavía sirve.</translation>
    </message>
    <message>
        <source>Level scoopfuls no longer do: weigh the lot in anew.</source>
        <translation>La medida al ras ya no sirve: pese otra vez el lote.</translation>
    </message>
    <message>
        <source>The mark no longer holds: weigh the lot in anew and move the line.</source>
        <translation>La línea ya no sirve: pese otra vez el lote y mueva la línea.</translation>
    </message>
    <message>
        <source>Of the whole lot nothing is sure, for no check weight told at the weigh-in how right the scale is: weigh one fill from each bag you open.</source>
        <translation>Del lote entero no se sabe lo suficiente, porque en la pesada ninguna pesa de control dijo qué tan bien marca la báscula: pese una llenada de cada costal que abra.</translation>
    </message>
    <message>
        <source>The spot fills came out right, yet by the bags counted each feeding gets too much powder.</source>
        <translation>Las llenadas de control salieron bien, pero según los costales contados cada toma lleva demasiado polvo.</translation>
    </message>
    <message>
        <source>The spot fills came out right, yet by the bags counted each feeding gets too little powder.</source>
        <translation>Las llenadas de control salieron bien, pero según los costales contados cada toma lleva muy poco polvo.</translation>
    </message>
    <message>
        <source>A feeding from this bag ({made_of}): {mass}, {off} less than {target}.</source>
        <translation>Una toma de este costal ({made_of}): {mass}, {off} menos que {target}.</translation>
    </message>
    <message>
        <source>A feeding from this bag ({made_of}): {mass}, {off} more than {target}.</source>
        <translation>Una toma de este costal ({made_of}): {mass}, {off} más que {target}.</translation>
    </message>
    <message>
        <source>Stir this bag and weigh it again.</source>
        <translation>Revuelva este costal y pese otra vez.</translation>
    </message>
    <message>
        <source>As far off again? Feed from this bag by the scale.</source>
        <translation>¿Sigue igual? Pese en la báscula el polvo de este costal.</translation>
    </message>
    <message>
        <source>Off again to the same side. The same bag as before? Feed from it by the scale and weigh one of another bag: two fills of one bag tell no more of the lot than one. Another bag? Weigh the lot in anew: it may have changed.</source>
        <translation>Otra vez fuera hacia el mismo lado. ¿Es el mismo costal? Pese en la báscula el polvo de ese costal y pese una llenada de otro: dos llenadas de un costal no dicen del lote más que una. ¿Es otro costal? Pese otra vez el lote: puede haber cambiado.</translation>
    </message>
    <message>
        <source>Was {weight} read and typed rightly? If not, strike it out.</source>
        <translation>¿Se leyó y se escribió bien {weight}? Si no, táchela.</translation>
    </message>
    <message>
        <source>The same bag as before? Then strike out {weight}.</source>
        <translation>¿Es el mismo costal de antes? Entonces tache {weight}.</translation>
    </message>
    <message>
        <source>A feeding weighs {mass}, between {low} and {high} (95 %); wanted {target} ± {tolerance}.</source>
        <translation>Una toma pesa {mass}, entre {low} y {high} (95 %); se desean {target} ± {tolerance}.</translation>
    </message>
    <message>
        <source>{weight} is more than this scale weighs. Type it again.</source>
        <translation>{weight} es más de lo que pesa esta báscula. Escríbalo otra vez.</translation>
    </message>
    <message>
        <source>Opened another bag? Stir it up, fill the scoop once and weigh it: a spot fill tells whether the line still holds.</source>
        <translation>¿Abrió otro costal? Revuélvalo, llene la medida una vez y pésela: esa llenada de control dice si la línea todavía sirve.</translation>
    </message>
    <message>
        <source>To the li&amp;ne</source>
        <translation>Hasta la lí&amp;nea</translation>
    </message>
    <message>
        <source>Struck level only, until the weigh-in under way is signed off.</source>
        <translation>Solo al ras, hasta que se firme la pesada en curso.</translation>
    </message>
    <message>
        <source>Several lines are on the scoop: fill to the one for {target}, {line} down the wall.</source>
        <translation>La medida lleva varias líneas: llene hasta la de {target}, a {line} del borde.</translation>
    </message>
    <message>
        <source>Two lines are on the scoop: fill to the one {line} down the wall.</source>
        <translation>La medida lleva dos líneas: llene hasta la de {line} del borde.</translation>
    </message>
    <message>
        <source>For the whole lot the mark still holds.</source>
        <translation>Para todo el lote la línea todavía sirve.</translation>
    </message>
    <message>
        <source>What was signed off no longer holds: go on with the weigh-in that is under way.</source>
        <translation>Lo firmado ya no sirve: siga con la pesada en curso.</translation>
    </message>
    <message>
        <source>Level fills leave it open. Fill the next one to the line: that tells sooner.</source>
        <translation>Las llenadas al ras no lo deciden. Llene la siguiente hasta la línea: eso lo dice antes.</translation>
    </message>
    <message>
        <source>Of the whole lot nothing is sure yet: weigh one fill from each bag you open.</source>
        <translation>Del lote entero todavía no se sabe lo suficiente: pese una llenada de cada costal que abra.</translation>
    </message>
    <message>
        <source>This bag: {mass}, {off} less than {target}.</source>
        <translation>Este costal: {mass}, {off} menos que {target}.</translation>
    </message>
    <message>
        <source>This bag: {mass}, {off} more than {target}.</source>
        <translation>Este costal: {mass}, {off} más que {target}.</translation>
    </message>
    <message>
        <source>That is within the tolerance of {tolerance}.</source>
        <translation>Queda dentro de la tolerancia de {tolerance}.</translation>
    </message>
    <message>
        <source>The steps of this scale alone make ± {mass}, more than the tolerance of {tolerance}: one fill cannot show this bag to be off, nor right. A scale with finer steps would tell.</source>
        <translation>Solo los pasos de esta báscula hacen ± {mass}, más que la tolerancia de {tolerance}: una sola llenada no puede mostrar que este costal esté mal, ni que esté bien. Una báscula de pasos más finos lo diría.</translation>
    </message>
    <message>
        <source>The tolerance is {tolerance}.</source>
        <translation>La tolerancia es de {tolerance}.</translation>
    </message>
    <message>
        <source>{weight} is what the other line gives, {other} down the wall: was it filled to that one? Then strike it out and fill to the line {line} down. If not:</source>
        <translation>{weight} es lo que da la otra línea, a {other} del borde: ¿se llenó hasta esa? Entonces táchelo y llene hasta la línea a {line} del borde. Si no:</translation>
    </message>
    <message>
        <source>Is it a bag of lot {lot}? Read the number on it; here too: {others}.</source>
        <translation>¿Es un costal del lote {lot}? Vea el número del costal; también hay aquí: {others}.</translation>
    </message>
    <message>
        <source>Bulk density by the level fills: {density}, from {bags}.</source>
        <translation>Densidad aparente según las llenadas al ras: {density}, de {bags}.</translation>
    </message>
    <message>
        <source>Let {weight} count again</source>
        <translation>Contar otra vez {weight}</translation>
    </message>
    <message>
        <source>Last: {weight}, {way}, {day}, {who}.</source>
        <translation>Última: {weight}, {way}, {day}, {who}.</translation>
    </message>
    <message>
        <source>Why is {weight} struck out? It stays visible with the reason.</source>
        <translation>¿Por qué se tacha {weight}? Queda a la vista con el motivo.</translation>
    </message>
    <message>
        <source>No powder is as heavy as that. Look at the unit.</source>
        <translation>Ningún polvo pesa tanto. Revise la unidad.</translation>
    </message>
    <message>
        <source>No scoopful is as light as that. Look at the unit.</source>
        <translation>Ninguna medida pesa tan poco. Revise la unidad.</translation>
    </message>
</context>
<context>
    <name>SpreadPanel</name>
    <message>
        <source>Spread between lots, bags and fills</source>
        <translation>Variación entre lotes, costales y llenadas</translation>
    </message>
    <message>
        <source>How scoopfuls of one bag scatter, by person and by scoop</source>
        <translation>Cuánto varían las medidas de un costal, por persona y por medida</translation>
    </message>
    <message>
        <source>From lot to lot, bag to bag, fill to fill</source>
        <translation>De lote a lote, de costal a costal, de llenada a llenada</translation>
    </message>
    <message>
        <source>Scoopfuls of one bag, by person and by scoop</source>
        <translation>Medidas de un mismo costal, por persona y por medida</translation>
    </message>
    <message>
        <source>Weigh in a lot first.</source>
        <translation>Pese primero un lote.</translation>
    </message>
    <message>
        <source>The spread cannot be told yet</source>
        <translation>Todavía no se conoce la variación</translation>
    </message>
    <message>
        <source>Each bar is a standard deviation, its line the 95 % interval: between lots of one kind, between bags of a lot, between scoopfuls of one bag. Two thirds of all lie within it, nearly all within twice.</source>
        <translation>Cada barra es una desviación estándar y su línea el intervalo del 95 %: entre lotes de una clase, entre costales de un lote, entre medidas de un costal. Dos tercios quedan dentro de ella, casi todos dentro del doble.</translation>
    </message>
    <message>
        <source>Overlapping lines mean: nobody can be told from the others. It is what to practice, not who to blame.</source>
        <translation>Si las líneas se enciman, nadie se distingue de los demás. Sirve para practicar, no para culpar.</translation>
    </message>
    <message>
        <source>So far one person alone weighed in: whoever else does stands here beside them.</source>
        <translation>Hasta ahora pesó una sola persona: quien más pese aparecerá aquí a su lado.</translation>
    </message>
    <message>
        <source>between lots</source>
        <translation>entre lotes</translation>
    </message>
    <message>
        <source>cannot be told from so few lots</source>
        <translation>no se sabe con tan pocos lotes</translation>
    </message>
    <message>
        <source>between bags</source>
        <translation>entre costales</translation>
    </message>
    <message>
        <source>between fills</source>
        <translation>entre llenadas</translation>
    </message>
    <message>
        <source>lots</source>
        <translation>lotes</translation>
    </message>
    <message>
        <source>bags</source>
        <translation>costales</translation>
    </message>
    <message>
        <source>fills</source>
        <translation>llenadas</translation>
    </message>
    <message>
        <source>So few lots do not tell yet where most of the spread comes from</source>
        <translation>Con tan pocos lotes aún no se sabe de dónde viene la mayor parte de la variación</translation>
    </message>
    <message>
        <source>The largest part of the spread lies between {what}: {share} of it.</source>
        <translation>La parte más grande de la variación está entre {what}: {share}.</translation>
    </message>
    <message>
        <source>One lot does not show how lots differ, and its few bags tell little: weigh in more.</source>
        <translation>Un solo lote no muestra cuánto varían los lotes, y sus pocos costales dicen poco: pese más lotes.</translation>
    </message>
    <message>
        <source>Go on as each weigh-in says. From about five lots of one powder on it is told here.</source>
        <translation>Siga como lo diga cada pesada. A partir de unos cinco lotes del mismo polvo, aquí se dice de dónde viene.</translation>
    </message>
    <message>
        <source>For a mean known within {share}: {fills} from each of {bags} are the least work. So far a weigh-in had {usual_bags} with {usual_fills} each, which knows it within {reach}.</source>
        <translation>Para conocer el promedio a {share}, lo menos trabajoso son {fills} de cada uno de {bags}. Hasta ahora una pesada tuvo {usual_bags} con {usual_fills} cada uno, con lo que se conoce a {reach}.</translation>
    </message>
    <message>
        <source>Weigh fewer fills of more bags: bags differ more than scoopfuls of one bag.</source>
        <translation>Pese menos llenadas de más costales: los costales difieren más que las medidas de un mismo costal.</translation>
    </message>
    <message>
        <source>Weigh more fills of each bag: bags are alike, scoopfuls are not.</source>
        <translation>Pese más llenadas de cada costal: los costales son parejos, las medidas no.</translation>
    </message>
    <message>
        <source>Bags and fills of each are well balanced: go on as now.</source>
        <translation>Costales y llenadas están bien repartidos: siga como ahora.</translation>
    </message>
    <message>
        <source>Practice scooping: scoopfuls of one bag scatter more than 2.5 %. Fill heaped, strike off once, do not tap.</source>
        <translation>Practique la llenada: las medidas de un costal varían más de 2.5 %. Llene con copete, rase una vez, no golpee.</translation>
    </message>
    <message>
        <source>Practice scooping with {name}: those scoopfuls scatter more than the others&apos;. Fill heaped, strike off once, do not tap.</source>
        <translation>Practique la llenada con {name}: esas medidas varían más que las de los demás. Llene con copete, rase una vez, no golpee.</translation>
    </message>
    <message>
        <source>Look at the scale: its step makes up most of the scatter. Weigh several scoopfuls together, or use a finer scale.</source>
        <translation>Revise la báscula: su división causa la mayor parte de la variación. Pese varias medidas juntas, o use una báscula más fina.</translation>
    </message>
    <message>
        <source>{low} or more</source>
        <translation>{low} o más</translation>
    </message>
</context>
<context>
    <name>StepFills</name>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Costal</translation>
    </message>
    <message>
        <source>Scoopfuls together</source>
        <translation>Medidas en esta pesada</translation>
    </message>
    <message>
        <source>Str&amp;ike out …</source>
        <translation>Tachar &amp;una …</translation>
    </message>
    <message>
        <source>Re&amp;do</source>
        <translation>Reha&amp;cer</translation>
    </message>
    <message>
        <source>Read from across the roo&amp;m</source>
        <translation>Leer desde le&amp;jos</translation>
    </message>
    <message>
        <source>Not entered yet: press Enter, or clear it.</source>
        <translation>Aún no se anotó: oprima Enter o bórrelo.</translation>
    </message>
    <message>
        <source>Wei&amp;ght</source>
        <translation>P&amp;eso</translation>
    </message>
    <message>
        <source>B&amp;ag</source>
        <translation>Co&amp;stal</translation>
    </message>
    <message>
        <source>Scoop&amp;fuls at once</source>
        <translation>Med&amp;idas juntas</translation>
    </message>
    <message>
        <source>Ente&amp;r</source>
        <translation>A&amp;notar</translation>
    </message>
    <message>
        <source>Each weight is listed here, the newest on top.</source>
        <translation>Aquí queda cada peso, el más reciente arriba.</translation>
    </message>
    <message>
        <source>The scale typed {weight} while the cursor was elsewhere: not taken, {typed} is in the field.</source>
        <translation>La báscula escribió {weight} con el cursor en otro lugar: no se tomó, en el campo está {typed}.</translation>
    </message>
    <message>
        <source>A number alone is in {unit}.</source>
        <translation>Un número solo está en {unit}.</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>Esc brings back the usual view.</source>
        <translation>Con Esc se vuelve a la vista normal.</translation>
    </message>
    <message>
        <source>Fills, newest first</source>
        <translation>Llenadas, la más reciente primero</translation>
    </message>
    <message>
        <source>The scale typed while the cursor was elsewhere; its weight is in the field now.</source>
        <translation>La báscula escribió mientras el cursor estaba en otro lugar; su peso está ahora en el campo.</translation>
    </message>
    <message>
        <source>It weighs that all the same</source>
        <translation>De todos modos pesa eso</translation>
    </message>
    <message>
        <source>Back to the nor&amp;mal size</source>
        <translation>De&amp;jar el tamaño grande</translation>
    </message>
    <message>
        <source>Now bag {bag}</source>
        <translation>Ahora el costal {bag}</translation>
    </message>
    <message>
        <source>{now}
Last kept: {mass}</source>
        <translation>{now}
Último guardado: {mass}</translation>
    </message>
    <message>
        <source>Why should {typed} from bag {bag} not count?</source>
        <translation>¿Por qué no debe contar {typed} del costal {bag}?</translation>
    </message>
    <message>
        <source>&amp;Count again</source>
        <translation>Contar otra ve&amp;z</translation>
    </message>
    <message>
        <source>Nothing to take back. To take a fill out of the count, select it and strike it out.</source>
        <translation>No hay nada que deshacer. Para que una llenada no cuente, selecciónela y táchela.</translation>
    </message>
</context>
<context>
    <name>StepLot</name>
    <message>
        <source>Read the lot number off the bag in front of you. Open four bags if you can, for bags differ as well as scoopfuls; stir up powder that has caked or settled.</source>
        <translation>Lea el número de lote en el costal que tiene enfrente. Abra cuatro costales si puede, porque el polvo de cada costal puede pesar distinto en la misma medida; revuelva el polvo apelmazado o asentado.</translation>
    </message>
    <message>
        <source>This powder is medicated. Follow its label, the veterinarian and local rules; wear gloves.</source>
        <translation>Este polvo es medicado. Siga la etiqueta, lo que diga el veterinario y las reglas locales; use guantes.</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Sus iniciales</translation>
    </message>
    <message>
        <source>Room humidity</source>
        <translation>Humedad del cuarto</translation>
    </message>
    <message>
        <source>Room temperature</source>
        <translation>Temperatura del cuarto</translation>
    </message>
    <message>
        <source>Powder dust irritates lungs and eyes and can burn in the air: pour slowly, keep dust down and flames away.</source>
        <translation>El polvo en el aire irrita pulmones y ojos y puede arder: vierta despacio, no levante polvo y nada de llamas.</translation>
    </message>
    <message>
        <source>made on {day}</source>
        <translation>fabricado el {day}</translation>
    </message>
    <message>
        <source>arrived on {day}</source>
        <translation>recibido el {day}</translation>
    </message>
    <message>
        <source>Your &amp;initials</source>
        <translation>Sus &amp;iniciales</translation>
    </message>
    <message>
        <source>who weighs today</source>
        <translation>quién pesa hoy</translation>
    </message>
    <message>
        <source>Room &amp;humidity</source>
        <translation>H&amp;umedad del cuarto</translation>
    </message>
    <message>
        <source>if known; only noted, no weight is changed for it</source>
        <translation>si la sabe; solo se anota y no cambia ningún peso</translation>
    </message>
    <message>
        <source>Room tem&amp;perature</source>
        <translation>T&amp;emperatura del cuarto</translation>
    </message>
    <message>
        <source>if known</source>
        <translation>si la sabe</translation>
    </message>
</context>
<context>
    <name>StepMark</name>
    <message>
        <source>The line now on the scoop</source>
        <translation>La línea que tiene la medida</translation>
    </message>
    <message>
        <source>Line as drawn</source>
        <translation>Línea trazada</translation>
    </message>
    <message>
        <source>Keep the &amp;old line</source>
        <translation>&amp;Conservar la anterior</translation>
    </message>
    <message>
        <source>Drawn elsewhere? Distance down the wall &amp;from the rim:</source>
        <translation>¿La trazó &amp;en otro lugar? A qué distancia del borde:</translation>
    </message>
    <message>
        <source>For this lot</source>
        <translation>Para este lote</translation>
    </message>
    <message>
        <source>Ente&amp;r</source>
        <translation>A&amp;notar</translation>
    </message>
    <message>
        <source>{target} a feeding is wanted. With the line there a feeding weighs {mass}, give or take {half} at 95 %.</source>
        <translation>Se desean {target} por toma. Con la línea ahí una toma pesa {mass}, más o menos {half} al 95 %.</translation>
    </message>
    <message>
        <source>A line {step} higher or lower makes a feeding {slope} more or less.</source>
        <translation>Una línea {step} más arriba o más abajo cambia la toma en {slope}.</translation>
    </message>
    <message>
        <source>Fills to the line, the next step, make it surer.</source>
        <translation>Con las llenadas hasta la línea, el paso siguiente, se sabe mejor.</translation>
    </message>
    <message>
        <source>The line is there all the same</source>
        <translation>La línea sí está ahí</translation>
    </message>
    <message>
        <source>New line</source>
        <translation>Línea nueva</translation>
    </message>
    <message>
        <source>First try</source>
        <translation>Primer intento</translation>
    </message>
    <message>
        <source>Old line</source>
        <translation>Línea anterior</translation>
    </message>
    <message>
        <source>before it, struck level: {count}</source>
        <translation>antes, al ras: {count}</translation>
    </message>
    <message>
        <source>struck level: {count}</source>
        <translation>al ras: {count}</translation>
    </message>
    <message>
        <source>filled to it for a feeding: {count}</source>
        <translation>medidas por toma: {count}</translation>
    </message>
    <message>
        <source>&amp;Drawn at {where}</source>
        <translation>&amp;Ya la tracé a {where}</translation>
    </message>
    <message>
        <source>&amp;Use it level</source>
        <translation>&amp;Usarla al ras</translation>
    </message>
    <message>
        <source>Struck level, without a line.</source>
        <translation>Al ras, sin línea.</translation>
    </message>
    <message>
        <source>Old line, {target}</source>
        <translation>Anterior, {target}</translation>
    </message>
    <message>
        <source>The line stays {down} down the wall from the rim.</source>
        <translation>La línea se queda a {down} del borde.</translation>
    </message>
    <message>
        <source>First try the old line, {down} down the wall from the rim.</source>
        <translation>Primero pruebe la línea anterior, a {down} del borde.</translation>
    </message>
    <message>
        <source>The old line is right for this lot too: leave it, and press Keep the old line.</source>
        <translation>La línea anterior también sirve para este lote: déjela y oprima Conservar la anterior.</translation>
    </message>
    <message>
        <source>Leave the old line for now: press Keep the old line, and weigh two fills to it.</source>
        <translation>Deje por ahora la línea anterior: oprima Conservar la anterior y pese dos llenadas hasta ella.</translation>
    </message>
    <message>
        <source>Leave the old line for now, and go back to weigh more level fills.</source>
        <translation>Deje por ahora la línea anterior y regrese a pesar más llenadas al ras.</translation>
    </message>
    <message>
        <source>More level fills are advised first; a line drawn now is preliminary.</source>
        <translation>Conviene pesar antes más llenadas al ras; la línea que se trace ahora es provisional.</translation>
    </message>
    <message>
        <source>{target} a feeding is wanted. Level it weighs {mass}, give or take {half} at 95 %. A line could not be read there.</source>
        <translation>Se desean {target} por toma. Al ras pesa {mass}, más o menos {half} al 95 %. Tan cerca del borde no se puede leer una línea.</translation>
    </message>
    <message>
        <source>{target} a feeding is wanted.</source>
        <translation>Se desean {target} por toma.</translation>
    </message>
    <message>
        <source>Fill the scoop and strike it level with a straight edge; it needs no line.</source>
        <translation>Llene la medida y rásela con una regla; no necesita línea.</translation>
    </message>
    <message>
        <source>Leave the old line while lot {lot} is fed to it, then wipe it out.</source>
        <translation>Deje la línea anterior mientras se siga sirviendo con ella el lote {lot}; después bórrela.</translation>
    </message>
    <message>
        <source>Leave the old lines ({lines}) while lot {lot} is fed to them, then wipe them out.</source>
        <translation>Deje las líneas anteriores ({lines}) mientras se siga sirviendo con ellas el lote {lot}; después bórrelas.</translation>
    </message>
    <message>
        <source>Measure from the rim down along the wall and draw the line all round, at eye level; lightly at first, for fills to it may still move it.</source>
        <translation>Mida desde el borde hacia abajo por la pared y trace la línea todo alrededor, a la altura de los ojos; primero con trazo leve, porque las llenadas hasta ella aún pueden moverla.</translation>
    </message>
    <message>
        <source>Wipe out the line drawn first for this lot.</source>
        <translation>Borre la línea que trazó primero para este lote.</translation>
    </message>
    <message>
        <source>Leave that of lot {lot} as long as it is fed.</source>
        <translation>Deje la del lote {lot} mientras se siga usando.</translation>
    </message>
    <message>
        <source>Leave the old line while lot {lot} is fed to it, and write its lot beside each line.</source>
        <translation>Deje la línea anterior mientras se siga sirviendo con ella el lote {lot}, y escriba junto a cada línea su lote.</translation>
    </message>
    <message>
        <source>Leave the old lines ({lines}) while lot {lot} is fed to them, and write its lot beside each line.</source>
        <translation>Deje las anteriores ({lines}) mientras sirvan para el lote {lot}, con el lote escrito junto a cada una.</translation>
    </message>
    <message>
        <source>Wipe out the old line, or strike it through.</source>
        <translation>Borre la línea anterior o táchela.</translation>
    </message>
    <message>
        <source>Wipe out the old lines ({lines}), or strike them through.</source>
        <translation>Borre o tache las anteriores ({lines}).</translation>
    </message>
    <message>
        <source>Drawn: {where} down the wall from the rim.</source>
        <translation>Trazada a {where} del borde.</translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation>Todavía no se sabe</translation>
    </message>
</context>
<context>
    <name>StepRow</name>
    <message>
        <source>From day</source>
        <translation>Desde el día</translation>
    </message>
    <message>
        <source>Volume for each calf</source>
        <translation>Volumen por becerra</translation>
    </message>
    <message>
        <source>Feedings a day</source>
        <translation>Tomas al día</translation>
    </message>
    <message>
        <source>0: weaned</source>
        <translation>0: destetadas</translation>
    </message>
    <message>
        <source>Leave this step out</source>
        <translation>Quitar este paso</translation>
    </message>
    <message>
        <source>Type how much.</source>
        <translation>Escriba cuánto.</translation>
    </message>
</context>
<context>
    <name>StepSignOff</name>
    <message>
        <source>Initials</source>
        <translation>Iniciales</translation>
    </message>
    <message>
        <source>&amp;Initials</source>
        <translation>Ini&amp;ciales</translation>
    </message>
    <message>
        <source>Si&amp;gn off</source>
        <translation>&amp;Firmar</translation>
    </message>
    <message>
        <source>&amp;Print the scoop label</source>
        <translation>&amp;Imprimir la etiqueta</translation>
    </message>
    <message>
        <source>Lot s&amp;heet</source>
        <translation>Ho&amp;ja del lote</translation>
    </message>
    <message>
        <source>Batch tables and wall &amp;chart</source>
        <translation>Ta&amp;blas de mezcla y de pared</translation>
    </message>
    <message>
        <source>No fills to the line yet: the line rests on the level fills alone.</source>
        <translation>Todavía no hay llenadas hasta la línea: la línea se basa solo en las llenadas al ras.</translation>
    </message>
    <message>
        <source>Signed off by {by}.</source>
        <translation>Firmada por {by}.</translation>
    </message>
    <message>
        <source>{signed} No fills to the line were weighed.</source>
        <translation>{signed} No se pesó ninguna llenada hasta la línea.</translation>
    </message>
    <message>
        <source>To the line</source>
        <translation>Hasta la línea</translation>
    </message>
    <message>
        <source>No fill to the line was weighed, so settling is not known and the line may be a few percent off. Weigh at least two fills to the line, or sign off all the same?</source>
        <translation>No se pesó ninguna llenada hasta la línea, así que no se conoce el asentamiento y la línea puede fallar por un 2 o 3 %. ¿Pesar al menos dos llenadas hasta la línea, o firmar de todos modos?</translation>
    </message>
    <message>
        <source>&amp;Fill to the line</source>
        <translation>Lle&amp;nar hasta la línea</translation>
    </message>
    <message>
        <source>Signed. Lot {old} is fed until the change-over under Today. Print label and wall chart now if you like; put them up at the change-over.</source>
        <translation>Pesada firmada. Por ahora se sigue con el lote {old}; el cambio se hace en la página Hoy. Puede imprimir ya la etiqueta y la tabla de pared; póngalas el día del cambio.</translation>
    </message>
    <message>
        <source>Look it over. Signing off freezes this weigh-in. Once the lot is fed, its mark replaces the older ones, and charts and labels printed before are out of date.</source>
        <translation>Revísela. Una vez firmada, la pesada ya no se puede cambiar. Cuando empiece a usar este lote, su línea reemplaza las anteriores, y las tablas y etiquetas ya impresas ya no sirven.</translation>
    </message>
    <message>
        <source>Print the wall chart.</source>
        <translation>Imprima la tabla de pared.</translation>
    </message>
    <message>
        <source>Signed.</source>
        <translation>Pesada firmada.</translation>
    </message>
    <message>
        <source>Signed. Lot {number} is fed from {from_when}, lot {old} until then. Print label and wall chart now if you like; put them up at the change-over.</source>
        <translation>Firmado. El lote {number} se usa desde el {from_when}; hasta entonces, el lote {old}. Si quiere, imprima ahora la etiqueta y la tabla de pared; póngalas al hacer el cambio.</translation>
    </message>
    <message>
        <source>Signed. This lot is not fed now.</source>
        <translation>Pesada firmada. Este lote no se está usando.</translation>
    </message>
    <message>
        <source>All of it is done. The label of this line was not printed here.</source>
        <translation>Está todo hecho. La etiqueta de esta línea no se imprimió aquí.</translation>
    </message>
    <message>
        <source>All of it is done.</source>
        <translation>Está todo hecho.</translation>
    </message>
    <message>
        <source>Make the plan first, under “{button}”: then the label can bear a line for each group at once. Nothing is lost otherwise: a label can be printed anew.</source>
        <translation>Haga primero el plan, en “{button}”: así la etiqueta puede llevar de una vez una línea para cada grupo. Si no, no se pierde nada: una etiqueta se puede volver a imprimir.</translation>
    </message>
    <message>
        <source>Make a plan for the batch tables and the wall chart.</source>
        <translation>Haga un plan para las tablas de mezcla y la tabla de pared.</translation>
    </message>
    <message>
        <source>Once that is done, press “{button}”.</source>
        <translation>Cuando esté listo, oprima “{button}”.</translation>
    </message>
    <message>
        <source>The line stays where it is.</source>
        <translation>La línea se queda donde está.</translation>
    </message>
    <message>
        <source>Wipe out the line drawn first for this lot.</source>
        <translation>Borre la línea que trazó primero para este lote.</translation>
    </message>
    <message>
        <source>Put this lot&apos;s label on.</source>
        <translation>Pegue la etiqueta de este lote.</translation>
    </message>
    <message>
        <source>Print this lot&apos;s label and put it on.</source>
        <translation>Imprima la etiqueta de este lote y péguela.</translation>
    </message>
    <message>
        <source>Put the label on.</source>
        <translation>Pegue la etiqueta.</translation>
    </message>
    <message>
        <source>Print the label.</source>
        <translation>Imprima la etiqueta.</translation>
    </message>
    <message>
        <source>Wipe out the old line.</source>
        <translation>Borre la línea anterior.</translation>
    </message>
    <message>
        <source>Wipe out the old line and go over the new one with a pen that lasts.</source>
        <translation>Borre la línea anterior y repase la nueva con un marcador que no se borre.</translation>
    </message>
    <message>
        <source>Go over the line with a pen that lasts.</source>
        <translation>Repase la línea con un marcador que no se borre.</translation>
    </message>
    <message>
        <source>Wipe out {old} and go over the new one with a pen that lasts.</source>
        <translation>Borre {old} y repase la nueva con un marcador que no se borre.</translation>
    </message>
    <message>
        <source>Wipe out {old}.</source>
        <translation>Borre {old}.</translation>
    </message>
    <message>
        <source>{signed} When it was signed: {verdict}</source>
        <translation>{signed} Al firmarla: {verdict}</translation>
    </message>
    <message>
        <source>Scoop, scale</source>
        <translation>Medida, báscula</translation>
    </message>
    <message>
        <source>{mean}, between {low} and {high} (95 % interval); {fills} from {bags}</source>
        <translation>{mean}, entre {low} y {high} (intervalo del 95 %); {fills} de {bags}</translation>
    </message>
    <message>
        <source>Struck level</source>
        <translation>Al ras</translation>
    </message>
    <message>
        <source>Check weight</source>
        <translation>Pesa de control</translation>
    </message>
    <message>
        <source>Bulk density</source>
        <translation>Densidad aparente</translation>
    </message>
    <message>
        <source>{where} down the wall from the rim</source>
        <translation>a {where} del borde</translation>
    </message>
    <message>
        <source>{where}; scoopfuls to it a feeding: {count}</source>
        <translation>{where}; medidas hasta ella por toma: {count}</translation>
    </message>
    <message>
        <source>Fill mark</source>
        <translation>Línea de llenado</translation>
    </message>
    <message>
        <source>Target weight</source>
        <translation>Peso deseado</translation>
    </message>
    <message>
        <source>{mean}, between {low} and {high} (95 % interval)</source>
        <translation>{mean}, entre {low} y {high} (intervalo del 95 %)</translation>
    </message>
    <message>
        <source>Against the target</source>
        <translation>Contra el peso deseado</translation>
    </message>
    <message>
        <source>How it settles</source>
        <translation>Cómo se asienta el polvo</translation>
    </message>
    <message>
        <source>Not needed: the scoop is used level.</source>
        <translation>No hace falta: la medida se usa al ras.</translation>
    </message>
    <message>
        <source>Kept. What fills to it weighed stands above.</source>
        <translation>Se queda. Arriba está lo que pesaron las llenadas hasta ella.</translation>
    </message>
    <message>
        <source>Old line</source>
        <translation>Línea anterior</translation>
    </message>
    <message>
        <source>Weighed by</source>
        <translation>Quién pesó</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Firmado por</translation>
    </message>
    <message>
        <source>Type your initials, then sign off.</source>
        <translation>Escriba sus iniciales y firme.</translation>
    </message>
    <message>
        <source>Say from which feeding on the lot is fed, then sign off.</source>
        <translation>Diga desde qué toma se usará el lote y luego firme.</translation>
    </message>
    <message>
        <source>Sign off all the same</source>
        <translation>Firmar de todos modos</translation>
    </message>
    <message>
        <source>{name} is retired. Sign off a line weighed with it all the same?</source>
        <translation>{name} está fuera de uso. ¿Firmar de todos modos una línea pesada con esto?</translation>
    </message>
    <message>
        <source>{verdict} {reason}

Sign off all the same? The record will say so.</source>
        <translation>{verdict} {reason}

¿Firmar de todos modos? Quedará en el registro.</translation>
    </message>
    <message>
        <source>Signed off.</source>
        <translation>Pesada firmada.</translation>
    </message>
    <message>
        <source>Signed off. Lot {number} is in use.</source>
        <translation>Pesada firmada. El lote {number} está en uso.</translation>
    </message>
    <message>
        <source>Signed off. Lot {number} is fed from {from_when}.</source>
        <translation>Pesada firmada. El lote {number} se usa desde el {from_when}.</translation>
    </message>
</context>
<context>
    <name>StepStrip</name>
    <message>
        <source>Step {number} of {count}: {name}</source>
        <translation>Paso {number} de {count}: {name}</translation>
    </message>
</context>
<context>
    <name>StepTools</name>
    <message>
        <source>Stand the scale level, away from drafts. Set the empty scoop on it and zero it, so that it shows the powder alone. If you have a check weight, weigh it too.</source>
        <translation>Ponga la báscula a nivel, lejos de corrientes de aire. Ponga encima la medida vacía y deje la báscula en cero, para que muestre solo el polvo. Si tiene una pesa de control, pésela también.</translation>
    </message>
    <message>
        <source>The scale stands le&amp;vel and shows zero with the empty scoop on it</source>
        <translation>La báscula está ni&amp;velada y marca cero con la medida vacía</translation>
    </message>
    <message>
        <source>Target weight</source>
        <translation>Peso deseado</translation>
    </message>
    <message>
        <source>Check weight</source>
        <translation>Pesa de control</translation>
    </message>
    <message>
        <source>Scale reads</source>
        <translation>La báscula marca</translation>
    </message>
    <message>
        <source>Old line</source>
        <translation>Línea anterior</translation>
    </message>
    <message>
        <source>S&amp;coop</source>
        <translation>Me&amp;dida</translation>
    </message>
    <message>
        <source>Sc&amp;ale</source>
        <translation>&amp;Báscula</translation>
    </message>
    <message>
        <source>Tar&amp;get weight</source>
        <translation>Peso de&amp;seado</translation>
    </message>
    <message>
        <source>all the powder a calf gets at one feeding; of several groups, what most get</source>
        <translation>todo el polvo que recibe una becerra por toma; con varios grupos, lo que recibe la mayoría</translation>
    </message>
    <message>
        <source>C&amp;heck weight</source>
        <translation>Pesa de &amp;control</translation>
    </message>
    <message>
        <source>if you have one: what it should weigh</source>
        <translation>si tiene una: lo que debe pesar</translation>
    </message>
    <message>
        <source>Scale &amp;reads</source>
        <translation>La básc&amp;ula marca</translation>
    </message>
    <message>
        <source>with the check weight on it</source>
        <translation>con la pesa de control encima</translation>
    </message>
    <message>
        <source>&amp;Old line</source>
        <translation>Línea a&amp;nterior</translation>
    </message>
    <message>
        <source>down the wall from the rim; empty if there is none</source>
        <translation>por la pared, debajo del borde; vacío si no hay</translation>
    </message>
    <message>
        <source>Set &amp;up another scoop or scale</source>
        <translation>Con&amp;figurar otra medida o báscula</translation>
    </message>
    <message>
        <source>choose</source>
        <translation>elija</translation>
    </message>
    <message>
        <source>A level scoopful of usual powder weighs about {mass} here: two or more may be needed.</source>
        <translation>Con un polvo común, esta medida al ras pesa unos {mass}: tal vez hagan falta dos o más.</translation>
    </message>
    <message>
        <source>The target is more than this scoop holds (about {mass} level): two or more scoopfuls a feeding.</source>
        <translation>El peso deseado es más de lo que cabe en esta medida (unos {mass} al ras): dos o más medidas por toma.</translation>
    </message>
    <message>
        <source>The target weight is proposed from your plan ({plan}). Type another over it if need be.</source>
        <translation>El peso deseado se propone según su plan ({plan}). Si hace falta, escriba otro encima.</translation>
    </message>
    <message>
        <source>The target weight stays {mass}, for which the line is drawn, until another is typed.</source>
        <translation>El peso deseado sigue en {mass}, para el que se trazó la línea, hasta que escriba otro.</translation>
    </message>
    <message>
        <source>The line was drawn for another weight: the step Mark tells where it goes now.</source>
        <translation>La línea se trazó para otro peso: el paso Línea dice dónde va ahora.</translation>
    </message>
    <message>
        <source>Fills were already weighed with this scoop. To use another scoop, start a new weigh-in.</source>
        <translation>Ya se pesaron llenadas con esta medida. Para usar otra medida, empiece otra pesada.</translation>
    </message>
    <message>
        <source>Fills were already weighed on this scale. To use another scale, start a new weigh-in.</source>
        <translation>Ya se pesaron llenadas en esta báscula. Para usar otra báscula, empiece otra pesada.</translation>
    </message>
    <message>
        <source>Zero this scale too.</source>
        <translation>Ponga en cero también esta báscula.</translation>
    </message>
    <message>
        <source>The check weight is back as it was read on it: {reading}.</source>
        <translation>Vuelve lo que marcó en ella la pesa de control: {reading}.</translation>
    </message>
    <message>
        <source>Weigh the check weight on it: {reading} was read on {scale}.</source>
        <translation>Pese en ella la pesa de control: {reading} lo marcó {scale}.</translation>
    </message>
    <message>
        <source>Press the space bar to tick it, once it is so.</source>
        <translation>Cuando sea así, oprima la barra espaciadora para marcar la casilla.</translation>
    </message>
</context>
<context>
    <name>StepView</name>
    <message>
        <source>Signed off: it can be looked at here, and changed no more. To weigh anew, weigh in the lot again.</source>
        <translation>Ya está firmada: aquí se puede ver, pero ya no cambiar. Para pesar de nuevo, pese otra vez el lote.</translation>
    </message>
</context>
<context>
    <name>StrengthWords</name>
    <message>
        <source>The label and your veterinarian decide.</source>
        <translation>Deciden la etiqueta y su veterinario.</translation>
    </message>
    <message>
        <source>{value} solids is above {risk}: calves may scour. The aim is {low} to {high}.</source>
        <translation>{value} de sólidos pasa de {risk}: las becerras pueden tener diarrea. La meta es {low} a {high}.</translation>
    </message>
    <message>
        <source>{value} solids is below the usual aim of {low} to {high}.</source>
        <translation>{value} de sólidos está por debajo de la meta de {low} a {high}.</translation>
    </message>
    <message>
        <source>{value} solids is above the usual aim of {low} to {high}.</source>
        <translation>{value} de sólidos está por encima de la meta de {low} a {high}.</translation>
    </message>
    <message>
        <source>Osmolality of about {value} (give or take {spread}) is above the usual aim of {low} to {high} mOsm/kg.</source>
        <translation>Una osmolalidad de unos {value} (más o menos {spread}) está por encima de la meta de {low} a {high} mOsm/kg.</translation>
    </message>
    <message>
        <source>Osmolality of about {value} (give or take {spread}) is above {risk} mOsm/kg: keep fresh water before the calves. By common practice scours are a risk from there on.</source>
        <translation>Una osmolalidad de unos {value} (más o menos {spread}) pasa de {risk} mOsm/kg: que no les falte agua limpia a las becerras. Según la práctica común, de ahí en adelante hay riesgo de diarrea.</translation>
    </message>
    <message>
        <source>Osmolality of about {value} (give or take {spread}) may be above the usual aim of {low} to {high} mOsm/kg.</source>
        <translation>Una osmolalidad de unos {value} (más o menos {spread}) puede pasar de lo que se busca, de {low} a {high} mOsm/kg.</translation>
    </message>
    <message>
        <source>Osmolality of about {value} (give or take {spread}) may be above {risk} mOsm/kg: keep fresh water before the calves. By common practice scours are a risk from there on.</source>
        <translation>Una osmolalidad de unos {value} (más o menos {spread}) puede pasar de {risk} mOsm/kg: que no les falte agua limpia a las becerras. Según la práctica común, de ahí en adelante hay riesgo de diarrea.</translation>
    </message>
    <message>
        <source>Other advice sees it only above {other} mOsm/kg.</source>
        <translation>Otras fuentes solo lo ven por encima de {other} mOsm/kg.</translation>
    </message>
</context>
<context>
    <name>Suggestions</name>
    <message>
        <source>The Down key goes to what is often chosen.</source>
        <translation>La tecla Abajo lleva a lo que se elige a menudo.</translation>
    </message>
</context>
<context>
    <name>TableCells</name>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>costal</translation>
    </message>
    <message>
        <source>tote</source>
        <translation>supersaco</translation>
    </message>
    <message>
        <source>on target</source>
        <translation>en el peso deseado</translation>
    </message>
    <message>
        <source>move it</source>
        <translation>moverla</translation>
    </message>
    <message>
        <source>as near as the ruler allows</source>
        <translation>lo más cerca que permite la regla</translation>
    </message>
    <message>
        <source>weigh more</source>
        <translation>pesar más</translation>
    </message>
    <message>
        <source>keep it</source>
        <translation>dejarla</translation>
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
        <source>refractometer</source>
        <translation>refractómetro</translation>
    </message>
    <message>
        <source>refractometer, SG (sugar scale)</source>
        <translation>refractómetro, SG (escala de azúcar)</translation>
    </message>
    <message>
        <source>hydrometer</source>
        <translation>densímetro</translation>
    </message>
    <message>
        <source>mix in the jug</source>
        <translation>mezcla en la jarra</translation>
    </message>
    <message>
        <source>temperature of the refractometer</source>
        <translation>temperatura del refractómetro</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezcla</translation>
    </message>
    <message>
        <source>at the calf</source>
        <translation>en la becerra</translation>
    </message>
    <message>
        <source>finished volume</source>
        <translation>volumen terminado</translation>
    </message>
    <message>
        <source>finished level</source>
        <translation>nivel terminado</translation>
    </message>
    <message>
        <source>first pail</source>
        <translation>primera cubeta</translation>
    </message>
    <message>
        <source>last pail</source>
        <translation>última cubeta</translation>
    </message>
</context>
<context>
    <name>TableHeadings</name>
    <message>
        <source>agglomerated</source>
        <translation>aglomerado</translation>
    </message>
    <message>
        <source>arrived on</source>
        <translation>fecha de llegada</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>tal como se escribió</translation>
    </message>
    <message>
        <source>ash</source>
        <translation>ceniza</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>supuesto</translation>
    </message>
    <message>
        <source>at</source>
        <translation>cuándo</translation>
    </message>
    <message>
        <source>at the calf as shown</source>
        <translation>en la becerra según el termómetro</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>costal</translation>
    </message>
    <message>
        <source>bags</source>
        <translation>costales</translation>
    </message>
    <message>
        <source>budgets</source>
        <translation>cuentas de incertidumbre</translation>
    </message>
    <message>
        <source>bulk density</source>
        <translation>densidad aparente</translation>
    </message>
    <message>
        <source>by</source>
        <translation>por</translation>
    </message>
    <message>
        <source>calves</source>
        <translation>becerras</translation>
    </message>
    <message>
        <source>checked by</source>
        <translation>revisado por</translation>
    </message>
    <message>
        <source>contained in another row</source>
        <translation>incluido en otra fila</translation>
    </message>
    <message>
        <source>contribution (unit of the result)</source>
        <translation>contribución (unidad del resultado)</translation>
    </message>
    <message>
        <source>counted since</source>
        <translation>contado desde</translation>
    </message>
    <message>
        <source>counts as a batch</source>
        <translation>cuenta como tanda</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation>grados de libertad</translation>
    </message>
    <message>
        <source>density 95 % high</source>
        <translation>densidad, 95 % alto</translation>
    </message>
    <message>
        <source>density 95 % low</source>
        <translation>densidad, 95 % bajo</translation>
    </message>
    <message>
        <source>density standard uncertainty</source>
        <translation>incertidumbre estándar de la densidad</translation>
    </message>
    <message>
        <source>distribution</source>
        <translation>distribución</translation>
    </message>
    <message>
        <source>fat</source>
        <translation>grasa</translation>
    </message>
    <message>
        <source>fed from</source>
        <translation>se usa desde</translation>
    </message>
    <message>
        <source>feedings</source>
        <translation>tomas</translation>
    </message>
    <message>
        <source>fibre</source>
        <translation>fibra</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>llenado</translation>
    </message>
    <message>
        <source>fills</source>
        <translation>llenadas</translation>
    </message>
    <message>
        <source>finished level</source>
        <translation>nivel terminado</translation>
    </message>
    <message>
        <source>finished on</source>
        <translation>terminado</translation>
    </message>
    <message>
        <source>finished volume</source>
        <translation>volumen terminado</translation>
    </message>
    <message>
        <source>group</source>
        <translation>grupo</translation>
    </message>
    <message>
        <source>its unit</source>
        <translation>su unidad</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>clase</translation>
    </message>
    <message>
        <source>kind of package</source>
        <translation>tipo de envase</translation>
    </message>
    <message>
        <source>level 95 % high</source>
        <translation>al ras, 95 % alto</translation>
    </message>
    <message>
        <source>level 95 % low</source>
        <translation>al ras, 95 % bajo</translation>
    </message>
    <message>
        <source>level scoopful</source>
        <translation>medida al ras</translation>
    </message>
    <message>
        <source>level scoops before</source>
        <translation>medidas al ras antes</translation>
    </message>
    <message>
        <source>level standard uncertainty</source>
        <translation>incertidumbre estándar al ras</translation>
    </message>
    <message>
        <source>line above the floor</source>
        <translation>línea sobre el fondo</translation>
    </message>
    <message>
        <source>line below the rim</source>
        <translation>línea bajo el borde</translation>
    </message>
    <message>
        <source>lines</source>
        <translation>líneas</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>lots</source>
        <translation>lotes</translation>
    </message>
    <message>
        <source>made on</source>
        <translation>fecha de fabricación</translation>
    </message>
    <message>
        <source>mean hydrometer</source>
        <translation>densímetro, promedio</translation>
    </message>
    <message>
        <source>mean mix in the jug</source>
        <translation>mezcla en la jarra, promedio</translation>
    </message>
    <message>
        <source>mean reading</source>
        <translation>lectura promedio</translation>
    </message>
    <message>
        <source>mean reading (SG, sugar scale)</source>
        <translation>lectura promedio (SG, escala de azúcar)</translation>
    </message>
    <message>
        <source>medicated</source>
        <translation>medicado</translation>
    </message>
    <message>
        <source>mix as shown</source>
        <translation>mezcla según el termómetro</translation>
    </message>
    <message>
        <source>mix checks</source>
        <translation>revisiones de mezcla</translation>
    </message>
    <message>
        <source>mixed by</source>
        <translation>mezclado por</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>note of the trial</source>
        <translation>nota de la prueba</translation>
    </message>
    <message>
        <source>number</source>
        <translation>número</translation>
    </message>
    <message>
        <source>of</source>
        <translation>de</translation>
    </message>
    <message>
        <source>packages</source>
        <translation>cantidad</translation>
    </message>
    <message>
        <source>person</source>
        <translation>persona</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>plant code</source>
        <translation>clave de planta</translation>
    </message>
    <message>
        <source>powder (g a feeding)</source>
        <translation>polvo (g por toma)</translation>
    </message>
    <message>
        <source>powder high (g a feeding)</source>
        <translation>polvo, alto (g por toma)</translation>
    </message>
    <message>
        <source>powder low (g a feeding)</source>
        <translation>polvo, bajo (g por toma)</translation>
    </message>
    <message>
        <source>powder wanted (g a feeding)</source>
        <translation>polvo buscado (g por toma)</translation>
    </message>
    <message>
        <source>price of a package</source>
        <translation>precio de cada uno</translation>
    </message>
    <message>
        <source>product</source>
        <translation>producto</translation>
    </message>
    <message>
        <source>program version</source>
        <translation>versión del programa</translation>
    </message>
    <message>
        <source>protein</source>
        <translation>proteína</translation>
    </message>
    <message>
        <source>readings as typed</source>
        <translation>lecturas tal como se escribieron</translation>
    </message>
    <message>
        <source>refractometer</source>
        <translation>refractómetro</translation>
    </message>
    <message>
        <source>replaces</source>
        <translation>reemplaza</translation>
    </message>
    <message>
        <source>room humidity</source>
        <translation>humedad del cuarto</translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation>temperatura del cuarto</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>báscula</translation>
    </message>
    <message>
        <source>scoop</source>
        <translation>medida</translation>
    </message>
    <message>
        <source>scoopfuls</source>
        <translation>número de medidas</translation>
    </message>
    <message>
        <source>sensitivity</source>
        <translation>sensibilidad</translation>
    </message>
    <message>
        <source>settling factor</source>
        <translation>factor de asentamiento</translation>
    </message>
    <message>
        <source>settling standard uncertainty</source>
        <translation>incertidumbre estándar del asentamiento</translation>
    </message>
    <message>
        <source>share of variance</source>
        <translation>parte de la varianza</translation>
    </message>
    <message>
        <source>sign-offs</source>
        <translation>firmas</translation>
    </message>
    <message>
        <source>signed off at</source>
        <translation>firmado</translation>
    </message>
    <message>
        <source>solids as mixed</source>
        <translation>sólidos en la mezcla</translation>
    </message>
    <message>
        <source>solids high</source>
        <translation>sólidos, alto</translation>
    </message>
    <message>
        <source>solids low</source>
        <translation>sólidos, bajo</translation>
    </message>
    <message>
        <source>solids wanted</source>
        <translation>sólidos buscados</translation>
    </message>
    <message>
        <source>source</source>
        <translation>fuente</translation>
    </message>
    <message>
        <source>spot fills</source>
        <translation>llenadas de control</translation>
    </message>
    <message>
        <source>spread between bags</source>
        <translation>variación entre costales</translation>
    </message>
    <message>
        <source>spread between fills</source>
        <translation>variación entre llenadas</translation>
    </message>
    <message>
        <source>standard uncertainty</source>
        <translation>incertidumbre estándar</translation>
    </message>
    <message>
        <source>struck out because</source>
        <translation>no cuenta porque</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>proveedor</translation>
    </message>
    <message>
        <source>target</source>
        <translation>peso buscado</translation>
    </message>
    <message>
        <source>to the line</source>
        <translation>hasta la línea</translation>
    </message>
    <message>
        <source>to the line, standard uncertainty</source>
        <translation>hasta la línea, incertidumbre estándar</translation>
    </message>
    <message>
        <source>tolerance (% solids)</source>
        <translation>tolerancia (% de sólidos)</translation>
    </message>
    <message>
        <source>trial begun</source>
        <translation>prueba comenzada</translation>
    </message>
    <message>
        <source>trial withdrawn because</source>
        <translation>prueba retirada porque</translation>
    </message>
    <message>
        <source>trials</source>
        <translation>pruebas</translation>
    </message>
    <message>
        <source>typed by</source>
        <translation>escrito por</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>resultado</translation>
    </message>
    <message>
        <source>verdict of the new line</source>
        <translation>resultado de la línea nueva</translation>
    </message>
    <message>
        <source>verdict of the old line</source>
        <translation>resultado de la línea anterior</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>recipiente</translation>
    </message>
    <message>
        <source>water as shown</source>
        <translation>agua según el termómetro</translation>
    </message>
    <message>
        <source>way</source>
        <translation>método</translation>
    </message>
    <message>
        <source>weigh-in</source>
        <translation>pesada</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>peso</translation>
    </message>
    <message>
        <source>weight of a package</source>
        <translation>peso de cada uno</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>why</source>
        <translation>por qué</translation>
    </message>
    <message>
        <source>newest {count}</source>
        <translation>las {count} más recientes</translation>
    </message>
</context>
<context>
    <name>TableRows</name>
    <message>
        <source>Last c&amp;ount</source>
        <translation>Hasta &amp;cuántas</translation>
    </message>
    <message>
        <source>Always in the table, like 109, 111, 120. Today&apos;s count is in it anyway.</source>
        <translation>Siempre en la tabla, como 109, 111, 120. Las de hoy ya están.</translation>
    </message>
    <message>
        <source>&amp;Counts of your own</source>
        <translation>Otras cantidades &amp;fijas</translation>
    </message>
    <message>
        <source>&amp;First count</source>
        <translation>&amp;Desde cuántas becerras</translation>
    </message>
    <message>
        <source>&amp;In steps of</source>
        <translation>En pas&amp;os de</translation>
    </message>
    <message>
        <source>{group}: {counts}</source>
        <translation>{group}: {counts}</translation>
    </message>
    <message>
        <source>Rows – {rows}.</source>
        <translation>Filas – {rows}.</translation>
    </message>
    <message>
        <source>They follow today&apos;s number of calves.</source>
        <translation>Siguen el número de becerras de hoy.</translation>
    </message>
    <message>
        <source>A count of your own goes to the group with the nearest number of calves.</source>
        <translation>Una cantidad fija va al grupo cuyo número de becerras se le acerca más.</translation>
    </message>
    <message>
        <source>Write whole numbers with commas between, like 109, 111, 120.</source>
        <translation>Escriba números enteros con comas entre ellos, como 109, 111, 120.</translation>
    </message>
    <message>
        <source>The last count is below the first one.</source>
        <translation>La última cantidad es menor que la primera.</translation>
    </message>
    <message>
        <source>Type the last count too, or leave both empty.</source>
        <translation>Escriba también el último número, o deje los dos vacíos.</translation>
    </message>
</context>
<context>
    <name>TableStep</name>
    <message>
        <source>The table as it was read</source>
        <translation>La tabla como se leyó</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Letras</translation>
    </message>
    <message>
        <source>Between cells</source>
        <translation>Entre celdas</translation>
    </message>
    <message>
        <source>Row of the headings</source>
        <translation>Fila de los encabezados</translation>
    </message>
    <message>
        <source>Choose the sheet.</source>
        <translation>Elija la hoja.</translation>
    </message>
    <message>
        <source>{rows} rows. Look whether the letters, the columns and the headings are right.</source>
        <translation>{rows} filas. Vea si las letras, las columnas y los encabezados están bien.</translation>
    </message>
    <message>
        <source>{name} (hidden)</source>
        <translation>{name} (oculta)</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>punto y coma</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulador</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>barra vertical</translation>
    </message>
    <message>
        <source>there are no headings</source>
        <translation>no hay encabezados</translation>
    </message>
</context>
<context>
    <name>TableWords</name>
    <message>
        <source>weigh it as {portions}</source>
        <translation>péselo en {portions}</translation>
    </message>
    <message>
        <source>weigh each batch as {portions}</source>
        <translation>cada tanda en {portions}</translation>
    </message>
    <message>
        <source>and {amount} of {name}</source>
        <translation>y {amount} de {name}</translation>
    </message>
    <message>
        <source>Additives lighter than {least}: the scale&apos;s step is too coarse for them. Use a finer scale, or the product&apos;s own spoon.</source>
        <translation>Aditivos de menos de {least}: la división de la báscula es demasiado gruesa para ellos. Use una báscula más fina, o la cucharita del propio producto.</translation>
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
        <source>to the {mass} line</source>
        <translation>hasta la línea de {mass}</translation>
    </message>
    <message>
        <source>weigh it</source>
        <translation>péselo</translation>
    </message>
    <message>
        <source>weigh it, or {count}</source>
        <translation>péselo, o {count}</translation>
    </message>
    <message>
        <source>fill up to {volume}</source>
        <translation>llene a {volume}</translation>
    </message>
    <message>
        <source>{batches} × {amount}</source>
        <translation>{batches} × {amount}</translation>
    </message>
    <message>
        <source>{batches} batches of {amount}</source>
        <translation>{batches} tandas de {amount}</translation>
    </message>
    <message>
        <source>The scale showed {share} too much at the weigh-in: set it right before powder is weighed by it. The scoopfuls are corrected for it.</source>
        <translation>La báscula marcó {share} de más en la pesada del lote: ajústela antes de pesar polvo con ella. Las medidas ya están corregidas.</translation>
    </message>
    <message>
        <source>The scale showed {share} too little at the weigh-in: set it right before powder is weighed by it. The scoopfuls are corrected for it.</source>
        <translation>La báscula marcó {share} de menos en la pesada del lote: ajústela antes de pesar polvo con ella. Las medidas ya están corregidas.</translation>
    </message>
    <message>
        <source>Mix off</source>
        <translation>Dif. de la mezcla</translation>
    </message>
    <message>
        <source>Count off</source>
        <translation>Dif. al contar</translation>
    </message>
    <message>
        <source>water trimmed, {share} of everything; ± {spread}</source>
        <translation>agua ajustada, {share} de todo; ± {spread}</translation>
    </message>
    <message>
        <source>within {bound} of the weight (± {spread})</source>
        <translation>a menos de {bound} del peso (± {spread})</translation>
    </message>
    <message>
        <source>{share} short of the weight (± {spread})</source>
        <translation>{share} menos que el peso (± {spread})</translation>
    </message>
    <message>
        <source>{share} over the weight (± {spread})</source>
        <translation>{share} más que el peso (± {spread})</translation>
    </message>
    <message>
        <source>Solids {solids}.</source>
        <translation>Sólidos: {solids}.</translation>
    </message>
    <message>
        <source>Solids {solids} ({low} to {high}).</source>
        <translation>Sólidos: {solids} ({low} a {high}).</translation>
    </message>
    <message>
        <source>Solids {solids} ({low} to {high}), wanted {wanted}.</source>
        <translation>Sólidos: {solids} ({low} a {high}), meta {wanted}.</translation>
    </message>
    <message>
        <source>Rounding of water and powder, also by weight: strength {share}.</source>
        <translation>Redondeo de agua y polvo, también por peso: fuerza {share}.</translation>
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
        <source>{batches} equal batches: a single one would run over by {over}</source>
        <translation>{batches} tandas iguales: una sola se pasaría por {over}</translation>
    </message>
    <message>
        <source>{batches} equal batches: a single one would leave no room for stirring</source>
        <translation>{batches} tandas iguales: una sola no dejaría lugar para revolver</translation>
    </message>
    <message>
        <source>Powder heavier than {most}: weigh it in portions. The scale weighs {capacity}, {pail} of it for the pail.</source>
        <translation>Polvo de más de {most}: péselo en porciones. La báscula pesa {capacity}, de los que {pail} son para la cubeta.</translation>
    </message>
    <message>
        <source>Volumes are rounded to {step}; in small batches the powder goes with them, so the strength holds.</source>
        <translation>Los volúmenes se redondean a {step}; en tandas pequeñas el polvo se ajusta a ellos para que la concentración no cambie.</translation>
    </message>
    <message>
        <source>{vessel}: {why}</source>
        <translation>{vessel}: {why}</translation>
    </message>
    <message>
        <source>Water to {water} above the floor.</source>
        <translation>Agua hasta {water} sobre el fondo.</translation>
    </message>
    <message>
        <source>Water to {water} above the floor, the mix stands at {mix}.</source>
        <translation>Agua hasta {water} sobre el fondo; la mezcla queda a {mix}.</translation>
    </message>
    <message>
        <source>Water at {temperature} scalds skin within seconds.</source>
        <translation>El agua a {temperature} quema la piel en segundos.</translation>
    </message>
    <message>
        <source>Water at {temperature} scalds skin within minutes, hotter water within seconds.</source>
        <translation>El agua a {temperature} quema la piel en minutos, y más caliente en segundos.</translation>
    </message>
    <message>
        <source>Wear gloves, keep children away, and let the mix cool to {feeding} at the calf. The product label comes first.</source>
        <translation>Use guantes, aleje a los niños y deje enfriar la mezcla a {feeding} para darla. La etiqueta del producto manda.</translation>
    </message>
</context>
<context>
    <name>TablesPage</name>
    <message>
        <source>Batch tables</source>
        <translation>Tablas de mezcla</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>&amp;New plan</source>
        <translation>N&amp;uevo</translation>
    </message>
    <message>
        <source>&amp;Change plan</source>
        <translation>&amp;Cambiar</translation>
    </message>
    <message>
        <source>&amp;Print</source>
        <translation>&amp;Imprimir</translation>
    </message>
    <message>
        <source>P&amp;lan</source>
        <translation>Pla&amp;n</translation>
    </message>
    <message>
        <source>A plan says which calves are fed, how much each, and how strong. From it comes the table of water, powder and scoopfuls for every number of calves.</source>
        <translation>Un plan dice qué becerras se alimentan, cuánto toma cada una y qué tan fuerte va la mezcla. De ahí sale la tabla de agua, polvo y medidas para cada número de becerras.</translation>
    </message>
    <message>
        <source>&amp;Make the first plan</source>
        <translation>Hacer el p&amp;rimer plan</translation>
    </message>
    <message>
        <source>No plan yet</source>
        <translation>Todavía no hay plan</translation>
    </message>
    <message>
        <source>From {day} on lot {number} is fed.</source>
        <translation>Desde el {day} se usa el lote {number}.</translation>
    </message>
    <message>
        <source>{before} before. Is {now} right?</source>
        <translation>Antes: {before}. ¿Está bien {now}?</translation>
    </message>
    <message>
        <source>Labels, charts and sheets</source>
        <translation>Etiquetas, tablas y hojas</translation>
    </message>
</context>
<context>
    <name>TextField</name>
    <message>
        <source>Give it a name.</source>
        <translation>Póngale un nombre.</translation>
    </message>
</context>
<context>
    <name>ThingsTab</name>
    <message>
        <source>What is entered</source>
        <translation>Lo registrado</translation>
    </message>
    <message>
        <source>S&amp;how retired</source>
        <translation>&amp;Ver lo retirado</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>G&amp;uardar</translation>
    </message>
    <message>
        <source>P&amp;ut back</source>
        <translation>De&amp;jar como estaba</translation>
    </message>
    <message>
        <source>retired</source>
        <translation>ya no se usa</translation>
    </message>
    <message>
        <source>retired: {why}</source>
        <translation>ya no se usa: {why}</translation>
    </message>
    <message>
        <source>Take back &amp;into use</source>
        <translation>V&amp;olver a usar</translation>
    </message>
    <message>
        <source>Not kept yet</source>
        <translation>Sin guardar</translation>
    </message>
</context>
<context>
    <name>TimeField</name>
    <message>
        <source>There is no such time of day. Write it like 6:30 or 6:30 pm.</source>
        <translation>No existe esa hora del día. Escríbala como 6:30 o 6:30 pm.</translation>
    </message>
    <message>
        <source>Write the time like 6:30, 18:30 or 6:30 pm.</source>
        <translation>Escriba la hora como 6:30, 18:30 o 6:30 pm.</translation>
    </message>
</context>
<context>
    <name>ToMarkPanel</name>
    <message>
        <source>Fill to the line, even it with one shake, weigh. {fills}.</source>
        <translation>Llene hasta la línea, empareje con una sacudida y pese. {fills}.</translation>
    </message>
    <message>
        <source>Two fills tell it, for those to the earlier line count</source>
        <translation>Bastan dos llenadas, porque cuentan las de la línea anterior</translation>
    </message>
    <message>
        <source>Whether the line is right stands here from the first weight on.</source>
        <translation>Desde el primer peso aparece aquí si la línea está bien.</translation>
    </message>
    <message>
        <source>With it: what a feeding weighs beside the tolerance, and how many fills are still needed.</source>
        <translation>Y con eso, lo que pesa una toma frente a la tolerancia y cuántas llenadas faltan.</translation>
    </message>
    <message>
        <source>See ho&amp;w to use it level</source>
        <translation>&amp;Ver cómo usarla al ras</translation>
    </message>
    <message>
        <source>See &amp;where to draw it</source>
        <translation>&amp;Ver dónde trazarla</translation>
    </message>
    <message>
        <source>What was filled to the earlier line counts too, converted to this one.</source>
        <translation>Las llenadas hasta la línea anterior también cuentan, ajustadas a esta.</translation>
    </message>
    <message>
        <source>tolerance: ± {mass}</source>
        <translation>tolerancia: ± {mass}</translation>
    </message>
    <message>
        <source>a feeding, 95 % interval</source>
        <translation>una toma, intervalo del 95 %</translation>
    </message>
    <message>
        <source>a scoopful, 95 % interval</source>
        <translation>una medida, intervalo del 95 %</translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Today, {day}</source>
        <translation>Hoy, {day}</translation>
    </message>
    <message>
        <source>The set-up is not finished: scale, scoop or first lot is missing.</source>
        <translation>Los ajustes no están completos: falta la báscula, la medida o el primer lote.</translation>
    </message>
    <message>
        <source>A spot fill was off, and the whole lot is not sure yet: more spot fills are wanted.</source>
        <translation>Una llenada de control salió mal y del lote completo todavía no se sabe: hacen falta más llenadas de control.</translation>
    </message>
    <message>
        <source>Nothing is waiting.</source>
        <translation>No hay nada pendiente.</translation>
    </message>
    <message>
        <source>Where you are needed</source>
        <translation>Lo que hace falta</translation>
    </message>
    <message>
        <source>Go on with the &amp;set-up</source>
        <translation>&amp;Seguir con los ajustes</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Lo que sigue</translation>
    </message>
    <message>
        <source>To mix today: {plan}</source>
        <translation>Para mezclar hoy: {plan}</translation>
    </message>
    <message>
        <source>Open the &amp;table</source>
        <translation>Abrir la &amp;tabla</translation>
    </message>
    <message>
        <source>&amp;Make a plan</source>
        <translation>&amp;Hacer un plan</translation>
    </message>
    <message>
        <source>To mix today: no plan yet. From one come the batch tables and the wall chart.</source>
        <translation>Para mezclar hoy: todavía no hay plan. De él salen las tablas de mezcla y la tabla de pared.</translation>
    </message>
    <message>
        <source>{powder} No other lot has come.</source>
        <translation>{powder} No ha llegado otro lote.</translation>
    </message>
    <message>
        <source>Mark {scoop} for lot {number}: draw the line {line} down the wall, put the label on.</source>
        <translation>Marque {scoop} para el lote {number}: trace la línea a {line} del borde, por la pared, y ponga la etiqueta.</translation>
    </message>
    <message>
        <source>Change &amp;over</source>
        <translation>Cambiar de lo&amp;te</translation>
    </message>
    <message>
        <source>The weigh-in of lot {number} stands at this step: {step}.</source>
        <translation>La pesada del lote {number} está en este paso: {step}.</translation>
    </message>
    <message>
        <source>{scoop} still bears the line of lot {old}; lot {number} is in use.</source>
        <translation>{scoop} todavía tiene la línea del lote {old}; está en uso el lote {number}.</translation>
    </message>
    <message>
        <source>By its spot fills the lot in use is no longer as it was when weighed in.</source>
        <translation>Según las llenadas de control, el lote en uso ya no es como cuando se pesó.</translation>
    </message>
    <message>
        <source>The last two spot fills were off to the same side. Of one bag? Weigh one of another bag. Of two bags? Weigh the lot in anew.</source>
        <translation>Las dos últimas llenadas de control quedaron fuera hacia el mismo lado. ¿Son de un solo costal? Pese una de otro. ¿De dos costales? Pese otra vez el lote.</translation>
    </message>
    <message>
        <source>The last spot fill was off: stir that bag and weigh it again.</source>
        <translation>La última llenada de control quedó fuera: revuelva ese costal y pese otra vez.</translation>
    </message>
    <message>
        <source>{powder} Bags of lot {lots} are left: change over to it in its table.</source>
        <translation>{powder} Todavía hay costales del lote {lots}: cambie a él en su tabla.</translation>
    </message>
    <message>
        <source>Lot {lot} has to be weighed in by then.</source>
        <translation>El lote {lot} tiene que estar pesado para entonces.</translation>
    </message>
    <message>
        <source>{scoop} is to be struck level for lot {number}. Put the label on.</source>
        <translation>Con el lote {number}, {scoop} se usa al ras. Pegue la etiqueta.</translation>
    </message>
    <message>
        <source>{scoop}: its line stays ({line} down the wall). Put the label of lot {number} on.</source>
        <translation>{scoop}: su línea se queda (a {line} del borde). Ponga la etiqueta del lote {number}.</translation>
    </message>
    <message>
        <source>{scoop}: the line of lot {number} is drawn since its weigh-in, {line} down the wall. Go over it with a pen that lasts and put the label on.</source>
        <translation>{scoop}: la línea del lote {number} está trazada desde su pesada, a {line} del borde. Repásela con un marcador que no se borre y ponga la etiqueta.</translation>
    </message>
    <message>
        <source>{scoop}: is the line of lot {number} drawn ({line} down the wall) and the label on it?</source>
        <translation>{scoop}: ¿ya está trazada la línea del lote {number} (a {line} del borde) y puesta la etiqueta?</translation>
    </message>
    <message>
        <source>Lot {number} is weighed in; change over when lot {old} is finished.</source>
        <translation>El lote {number} ya está pesado; cambie a él cuando se acabe el lote {old}.</translation>
    </message>
    <message>
        <source>Lot {number} is fed from {day} on, {feeding}; lot {old} until then.</source>
        <translation>El lote {number} se usa desde el {day}, {feeding}; hasta entonces, el lote {old}.</translation>
    </message>
    <message>
        <source>It was to be fed from {day} on, {feeding}: that is given up.</source>
        <translation>Estaba previsto usarlo desde el {day}, {feeding}: eso queda sin efecto.</translation>
    </message>
    <message>
        <source>Lot {number} is in use.</source>
        <translation>Está en uso el lote {number}.</translation>
    </message>
    <message>
        <source>Since {day} lot {number} is fed, as planned.</source>
        <translation>Desde el {day} se usa el lote {number}, como estaba previsto.</translation>
    </message>
    <message>
        <source>Kept: what is left of lot {old} stays.</source>
        <translation>Guardado: lo que queda del lote {old} se queda.</translation>
    </message>
    <message>
        <source>Kept: none of lot {old} is left.</source>
        <translation>Guardado: del lote {old} ya no queda nada.</translation>
    </message>
    <message>
        <source>&amp;Weigh a spot fill</source>
        <translation>&amp;Pesar una llenada</translation>
    </message>
    <message>
        <source>Weigh &amp;in anew</source>
        <translation>Pesar otra &amp;vez</translation>
    </message>
    <message>
        <source>Open the &amp;tables</source>
        <translation>Abrir las &amp;tablas</translation>
    </message>
    <message>
        <source>&amp;Enter a delivery</source>
        <translation>Reg&amp;istrar una entrega</translation>
    </message>
    <message>
        <source>Go on &amp;weighing</source>
        <translation>&amp;Seguir pesando</translation>
    </message>
    <message>
        <source>&amp;Weigh in</source>
        <translation>&amp;Pesar</translation>
    </message>
    <message>
        <source>Change the &amp;plan</source>
        <translation>Cambiar el &amp;plan</translation>
    </message>
    <message>
        <source>&amp;Weigh in with it</source>
        <translation>&amp;Pesar con ella</translation>
    </message>
    <message>
        <source>&amp;Check again</source>
        <translation>Revisar otra &amp;vez</translation>
    </message>
    <message>
        <source>Look at the &amp;bags</source>
        <translation>Ver los co&amp;stales</translation>
    </message>
    <message>
        <source>Check the &amp;mix</source>
        <translation>Revisar la &amp;mezcla</translation>
    </message>
    <message>
        <source>&amp;Print the label</source>
        <translation>&amp;Imprimir la etiqueta</translation>
    </message>
    <message>
        <source>{scoop} is to be struck level for lot {number}. Wipe out {old} and put the label on.</source>
        <translation>Con el lote {number}, {scoop} se usa al ras. Borre {old} y pegue la etiqueta.</translation>
    </message>
    <message>
        <source>{scoop}: its line stays ({line} down the wall). Wipe out {old} and put the label of lot {number} on.</source>
        <translation>{scoop}: su línea se queda (a {line} del borde). Borre {old} y ponga la etiqueta del lote {number}.</translation>
    </message>
    <message>
        <source>{scoop}: the line of lot {number} is drawn since its weigh-in, {line} down the wall. Wipe out {old} and put the label on.</source>
        <translation>{scoop}: la línea del lote {number} está trazada desde su pesada, a {line} del borde. Borre {old} y ponga la etiqueta.</translation>
    </message>
    <message>
        <source>{scoop}: wipe out {old}. Is the line of lot {number} drawn ({line} down the wall) and the label on?</source>
        <translation>{scoop}: borre {old}. ¿Está trazada la línea del lote {number} (a {line} del borde) y puesta la etiqueta?</translation>
    </message>
    <message>
        <source>Mark {scoop} for lot {number}: draw the line {line} down the wall, wipe out {old}, put the label on.</source>
        <translation>Marque {scoop} para el lote {number}: trace la línea a {line} del borde, borre {old} y ponga la etiqueta.</translation>
    </message>
    <message>
        <source>It &amp;stays</source>
        <translation>&amp;Se queda la que está</translation>
    </message>
    <message>
        <source>They &amp;stay</source>
        <translation>&amp;Se quedan</translation>
    </message>
    <message>
        <source>&amp;Some is left</source>
        <translation>Queda &amp;algo</translation>
    </message>
    <message>
        <source>None is &amp;left</source>
        <translation>&amp;Ya no queda nada</translation>
    </message>
    <message>
        <source>&amp;Taken down</source>
        <translation>&amp;Ya se quitó</translation>
    </message>
    <message>
        <source>&amp;Print the lot sheet</source>
        <translation>&amp;Imprimir la hoja del lote</translation>
    </message>
    <message>
        <source>&amp;Taken out</source>
        <translation>&amp;Ya se sacó</translation>
    </message>
    <message>
        <source>&amp;Print the chart</source>
        <translation>&amp;Imprimir la tabla</translation>
    </message>
    <message>
        <source>&amp;We use none</source>
        <translation>No &amp;usamos</translation>
    </message>
    <message>
        <source>&amp;Hung up again</source>
        <translation>Ya colgada otra &amp;vez</translation>
    </message>
    <message>
        <source>No wall chart is asked for any more. Set-up can ask again.</source>
        <translation>Ya no se pide tabla de pared. En Ajustes se puede volver a pedir.</translation>
    </message>
    <message>
        <source>No scoop in use has a line for lot {number}: weigh it in with another scoop.</source>
        <translation>Ninguna medida en uso tiene línea para el lote {number}: péselo con otra medida.</translation>
    </message>
    <message>
        <source>The plan {plan} counts by a scoop that is retired: choose another one for it.</source>
        <translation>El plan {plan} cuenta con una medida que está fuera de uso: elíjale otra.</translation>
    </message>
    <message>
        <source>The plan {plan} mixes in {vessel}, which is retired: choose another vessel for it.</source>
        <translation>El plan {plan} se mezcla en {vessel}, que está fuera de uso: elíjale otro recipiente.</translation>
    </message>
    <message>
        <source>The mix with lot {number} was too thin on {day}. It stays here until a check reads right, or until the lot is no longer fed.</source>
        <translation>La mezcla con el lote {number} salió demasiado aguada el {day}. Este aviso sigue aquí hasta que una revisión salga bien o se deje de usar el lote.</translation>
    </message>
    <message>
        <source>The mix with lot {number} was too strong on {day}. It stays here until a check reads right, or until the lot is no longer fed.</source>
        <translation>La mezcla con el lote {number} salió demasiado fuerte el {day}. Este aviso sigue aquí hasta que una revisión salga bien o se deje de usar el lote.</translation>
    </message>
    <message>
        <source>By the bags counted until {day} each feeding of lot {number} gets too little powder. It stays here until a count comes out right, or a sure check of the mix of each group.</source>
        <translation>Según los costales contados hasta el {day}, cada toma del lote {number} lleva muy poco polvo. Este aviso sigue aquí hasta que un conteo salga bien o hasta que la revisión de la mezcla de cada grupo dé un resultado firme y bueno.</translation>
    </message>
    <message>
        <source>By the bags counted until {day} each feeding of lot {number} gets too much powder. It stays here until a count comes out right, or a sure check of the mix of each group.</source>
        <translation>Según los costales contados hasta el {day}, cada toma del lote {number} lleva demasiado polvo. Este aviso sigue aquí hasta que un conteo salga bien o hasta que la revisión de la mezcla de cada grupo dé un resultado firme y bueno.</translation>
    </message>
    <message>
        <source>The mix with lot {number} was probably too thin on {day}. It stays here until a check or a count of bags comes out right, or until the lot is no longer fed.</source>
        <translation>La mezcla con el lote {number} quizás salió demasiado aguada el {day}. Este aviso sigue aquí hasta que una revisión o un conteo de costales salga bien, o se deje de usar el lote.</translation>
    </message>
    <message>
        <source>The mix with lot {number} was probably too strong on {day}. It stays here until a check or a count of bags comes out right, or until the lot is no longer fed.</source>
        <translation>La mezcla con el lote {number} quizás salió demasiado fuerte el {day}. Este aviso sigue aquí hasta que una revisión o un conteo de costales salga bien, o se deje de usar el lote.</translation>
    </message>
    <message>
        <source>{lot} (batch for {whose})</source>
        <translation>{lot} (mezcla para {whose})</translation>
    </message>
    <message>
        <source>The mix with lot {number} was not checked yet.</source>
        <translation>Todavía no se revisa la mezcla con el lote {number}.</translation>
    </message>
    <message>
        <source>The mix with lot {number} was last checked on {day}.</source>
        <translation>La mezcla con el lote {number} se revisó por última vez el {day}.</translation>
    </message>
    <message>
        <source>Lot {number} is not weighed in.</source>
        <translation>El lote {number} está sin pesar.</translation>
    </message>
    <message>
        <source>Lot {number} came on {day} and is not weighed in.</source>
        <translation>El lote {number} llegó el {day} y está sin pesar.</translation>
    </message>
</context>
<context>
    <name>TodayRow</name>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Powder by weight</source>
        <translation>Polvo (peso)</translation>
    </message>
    <message>
        <source>Scoopfuls</source>
        <translation>Medidas</translation>
    </message>
    <message>
        <source>weaned: no more milk</source>
        <translation>destetadas: ya sin leche</translation>
    </message>
    <message>
        <source>Yes, it is</source>
        <translation>Sí, está bien</translation>
    </message>
    <message>
        <source>not at this feeding</source>
        <translation>en esta toma no</translation>
    </message>
    <message>
        <source>Type how many calves there are today.</source>
        <translation>Escriba cuántas becerras hay hoy.</translation>
    </message>
    <message>
        <source>goes by the rounded volume</source>
        <translation>ajustado al volumen redondeado</translation>
    </message>
    <message>
        <source>as the plan says</source>
        <translation>como dice el plan</translation>
    </message>
    <message>
        <source>no scoop in use is weighed in for this lot</source>
        <translation>ninguna medida en uso está pesada para este lote</translation>
    </message>
    <message>
        <source>no lot signed off</source>
        <translation>ningún lote firmado</translation>
    </message>
    <message>
        <source>the plan&apos;s scoop is retired, or not weighed in for this lot</source>
        <translation>la medida del plan está fuera de uso, o no está pesada para este lote</translation>
    </message>
    <message>
        <source>no count comes near enough</source>
        <translation>ninguna cantidad se acerca lo suficiente</translation>
    </message>
    <message>
        <source>Many to count: weighing is surer.</source>
        <translation>Son muchas para contarlas: pesar es más exacto.</translation>
    </message>
    <message>
        <source>Water, {count} batches</source>
        <translation>Agua, {count} tandas</translation>
    </message>
    <message>
        <source>Powder, {count} batches</source>
        <translation>Polvo, {count} tandas</translation>
    </message>
    <message>
        <source>Scoopfuls, {count} batches</source>
        <translation>Medidas, {count} tandas</translation>
    </message>
    <message>
        <source>fits the {vessel}</source>
        <translation>cabe en {vessel}</translation>
    </message>
    <message>
        <source>C&amp;alves today</source>
        <translation>Bece&amp;rras hoy</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Calves today, {group}</source>
        <translation>Becerras hoy, {group}</translation>
    </message>
    <message>
        <source>Calves today</source>
        <translation>Becerras hoy</translation>
    </message>
</context>
<context>
    <name>ToolChecks</name>
    <message>
        <source>Enter an instrument</source>
        <translation>Registrar un instrumento</translation>
    </message>
    <message>
        <source>Checks begin once an instrument is entered.</source>
        <translation>Las revisiones empiezan cuando hay un instrumento registrado.</translation>
    </message>
    <message>
        <source>Shown in plain water</source>
        <translation>Marca en agua sola</translation>
    </message>
    <message>
        <source>Temperature of it</source>
        <translation>Temperatura del agua</translation>
    </message>
    <message>
        <source>Make so much of it</source>
        <translation>Prepare esta cantidad</translation>
    </message>
    <message>
        <source>Shown in the sugar solution, °Brix</source>
        <translation>Marca en la solución de azúcar, °Brix</translation>
    </message>
    <message>
        <source>Shown in ice water, well stirred</source>
        <translation>Marca en agua con hielo, bien revuelta</translation>
    </message>
    <message>
        <source>Water that fills it, without the jug</source>
        <translation>Agua que la llena, sin la jarra</translation>
    </message>
    <message>
        <source>How warm that water is</source>
        <translation>A qué temperatura está esa agua</translation>
    </message>
    <message>
        <source>Type how warm the water is.</source>
        <translation>Escriba qué tan caliente está el agua.</translation>
    </message>
    <message>
        <source>It does not compensate for temperature: type how warm it is.</source>
        <translation>No compensa la temperatura: anote a qué temperatura está.</translation>
    </message>
    <message>
        <source>Type what the water in it weighs.</source>
        <translation>Escriba cuánto pesa el agua que tiene.</translation>
    </message>
    <message>
        <source>Why does this check count no more?</source>
        <translation>¿Por qué ya no cuenta esta revisión?</translation>
    </message>
    <message>
        <source>The check of {name} is kept.</source>
        <translation>La revisión de {name} quedó guardada.</translation>
    </message>
    <message>
        <source>Type what it shows.</source>
        <translation>Escriba lo que marca.</translation>
    </message>
    <message>
        <source>&amp;Keep this check</source>
        <translation>&amp;Guardar esta revisión</translation>
    </message>
    <message>
        <source>Keep the sol&amp;ution&apos;s check</source>
        <translation>Guardar la prueba con a&amp;zúcar</translation>
    </message>
    <message>
        <source>&amp;Keep what it holds</source>
        <translation>&amp;Guardar cuánto le cabe</translation>
    </message>
    <message>
        <source>In plain water</source>
        <translation>En agua sola</translation>
    </message>
    <message>
        <source>In a sugar solution</source>
        <translation>En una solución de azúcar</translation>
    </message>
    <message>
        <source>Half crushed ice, half water, stirred: that is 32 °F (0 °C).</source>
        <translation>Mitad hielo picado, mitad agua, revueltos: eso es 32 °F (0 °C).</translation>
    </message>
    <message>
        <source>In ice water</source>
        <translation>En agua con hielo</translation>
    </message>
    <message>
        <source>Fill it with water to the brim, or to the line that you will use, and weigh the water.</source>
        <translation>Llénela de agua hasta el borde, o hasta la línea que va a usar, y pese el agua.</translation>
    </message>
    <message>
        <source>What the jug holds</source>
        <translation>Cuánto le cabe a la jarra</translation>
    </message>
    <message>
        <source>Found so far</source>
        <translation>Resultado hasta ahora</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
    <message>
        <source>Shown in plain water, °Brix</source>
        <translation>Marca en agua sola, °Brix</translation>
    </message>
    <message>
        <source>Shown in ice water, well stirred, °F</source>
        <translation>Marca en agua con hielo, bien revuelta, °F</translation>
    </message>
    <message>
        <source>Shown in ice water, well stirred, °C</source>
        <translation>Marca en agua con hielo, bien revuelta, °C</translation>
    </message>
    <message>
        <source>Float it in plain water and type how warm that is.</source>
        <translation>Póngalo a flotar en agua sola y escriba qué tan caliente está.</translation>
    </message>
    <message>
        <source>A drop of plain water should read 0 °Brix. Weekly, and whenever it was dropped.</source>
        <translation>Una gota de agua sola debe marcar 0 °Brix. Cada semana, y siempre que se haya caído.</translation>
    </message>
    <message>
        <source>Every three months: table sugar is a standard by weight. More than {off} °Brix off: clean it first.</source>
        <translation>Cada tres meses, pesando azúcar de mesa: se sabe cuánto debe marcar. Si se aparta más de {off} °Brix, límpielo primero.</translation>
    </message>
    <message>
        <source>Weigh {sugar} of sugar and {water} of water: {brix} °Brix.</source>
        <translation>Pese {sugar} de azúcar y {water} de agua: {brix} °Brix.</translation>
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation>Todavía nada.</translation>
    </message>
    <message>
        <source>With&amp;draw the newest</source>
        <translation>Q&amp;uitar la última revisión</translation>
    </message>
</context>
<context>
    <name>Trial</name>
    <message>
        <source>That is more than this scale weighs. Type it again.</source>
        <translation>Es más de lo que pesa esta báscula. Escríbalo otra vez.</translation>
    </message>
    <message>
        <source>No powder is as heavy as that. Look at the unit.</source>
        <translation>Ningún polvo pesa tanto. Revise la unidad.</translation>
    </message>
    <message>
        <source>No scoopful is as light as that. Look at the unit.</source>
        <translation>Ninguna medida pesa tan poco. Revise la unidad.</translation>
    </message>
    <message>
        <source>Not all fill alike</source>
        <translation>No todos llenan igual</translation>
    </message>
    <message>
        <source>All fill alike</source>
        <translation>Todos llenan igual</translation>
    </message>
    <message>
        <source>Cannot tell yet who fills alike</source>
        <translation>Aún no se sabe quiénes llenan igual</translation>
    </message>
    <message>
        <source>{name}&apos;s scoops run {share} heavier than the mean of all.</source>
        <translation>Las medidas de {name} pesan {share} más que el promedio de todos.</translation>
    </message>
    <message>
        <source>{name}&apos;s scoops run {share} lighter than the mean of all.</source>
        <translation>Las medidas de {name} pesan {share} menos que el promedio de todos.</translation>
    </message>
    <message>
        <source>{name} fills as the others do.</source>
        <translation>{name} llena como los demás.</translation>
    </message>
    <message>
        <source>Whether {name} fills as the others do, these fills cannot tell ({low} to {high}).</source>
        <translation>Con estas llenadas no se sabe si {name} llena como los demás ({low} a {high}).</translation>
    </message>
    <message>
        <source>Practice: shake once, read at eye level, take out what stands above the line.</source>
        <translation>Practique: sacuda una vez, lea a la altura de los ojos y quite lo que pase de la línea.</translation>
    </message>
    <message>
        <source>Practice: no tapping, and strike level once with the back of a knife.</source>
        <translation>Practique: no golpee, y rase de una sola pasada con el lomo de un cuchillo.</translation>
    </message>
    <message>
        <source>Practice: shake once, read at eye level, add until the powder stands at the line.</source>
        <translation>Practique: sacuda una vez, lea a la altura de los ojos y agregue hasta que el polvo llegue a la línea.</translation>
    </message>
    <message>
        <source>Practice: heap the scoop well before striking it level, so that no corner stays empty.</source>
        <translation>Practique: colme bien la medida antes de rasarla, para que no quede hueco.</translation>
    </message>
    <message>
        <source>The fills scatter more than the others&apos; ({sd}): do every move the same way.</source>
        <translation>Sus llenadas varían más que las de los demás ({sd}): haga siempre igual cada movimiento.</translation>
    </message>
    <message>
        <source>The fills scatter by {sd}: a few practice fills would steady the hand.</source>
        <translation>Sus llenadas varían {sd}: unas cuantas de práctica darían firmeza a la mano.</translation>
    </message>
    <message>
        <source>A steady hand ({sd}).</source>
        <translation>Mano firme ({sd}).</translation>
    </message>
    <message>
        <source>Weigh {fills} from each person to tell the scatter.</source>
        <translation>Pese {fills} de cada persona para saber cuánto varían.</translation>
    </message>
    <message>
        <source>Repeatability: one person&apos;s fills scatter by {repeat} ({repeat_low} to {repeat_high}). Reproducibility: fills by anybody scatter by {whole} ({whole_low} to {whole_high}). One standard deviation each, 95 % intervals.</source>
        <translation>Repetibilidad: las llenadas de una persona varían {repeat} ({repeat_low} a {repeat_high}). Reproducibilidad: las de cualquiera varían {whole} ({whole_low} a {whole_high}). Una desviación estándar cada una, intervalos del 95 %.</translation>
    </message>
    <message>
        <source>unknown: too few people</source>
        <translation>no se sabe: pocas personas</translation>
    </message>
    <message>
        <source>Say whose fills these are, then weigh the first one.</source>
        <translation>Diga de quién son las llenadas y pese la primera.</translation>
    </message>
    <message>
        <source>{name}: {fills} to go.</source>
        <translation>{name}: {fills} por pesar.</translation>
    </message>
    <message>
        <source>{name} is done. Type the next person&apos;s name.</source>
        <translation>{name} terminó. Escriba el nombre de la siguiente persona.</translation>
    </message>
    <message>
        <source>Over {trials}: a habit that lasts</source>
        <translation>En {trials}: una costumbre que dura</translation>
    </message>
    <message>
        <source>Over {trials}: hands changed</source>
        <translation>En {trials}: las manos cambiaron</translation>
    </message>
    <message>
        <source>Over {trials}: all fill alike</source>
        <translation>En {trials}: todos llenan igual</translation>
    </message>
    <message>
        <source>Over {trials}: habits cannot be told yet</source>
        <translation>En {trials}: aún no se sabe qué costumbres hay</translation>
    </message>
    <message>
        <source>{share} on {day}</source>
        <translation>{share} el {day}</translation>
    </message>
    <message>
        <source>{name}: {each}.</source>
        <translation>{name}: {each}.</translation>
    </message>
    <message>
        <source>Nearer to the others by {share} (between {low} and {high}): practice pays.</source>
        <translation>Más cerca de los demás en {share} (entre {low} y {high}): practicar sirve.</translation>
    </message>
    <message>
        <source>Moved by {share} (between {low} and {high}): go through the moves once more.</source>
        <translation>Cambió en {share} (entre {low} y {high}): repase los movimientos una vez más.</translation>
    </message>
    <message>
        <source>A heavy hand each time (between {low} and {high}).</source>
        <translation>Mano pesada cada vez (entre {low} y {high}).</translation>
    </message>
    <message>
        <source>A light hand each time (between {low} and {high}).</source>
        <translation>Mano ligera cada vez (entre {low} y {high}).</translation>
    </message>
    <message>
        <source>Fills as the others do, each time.</source>
        <translation>Cada vez llena como los demás.</translation>
    </message>
    <message>
        <source>Whether that is a habit, so few trials cannot tell.</source>
        <translation>Tan pocas pruebas no dicen si es una costumbre.</translation>
    </message>
    <message>
        <source>Whether that is a habit, these trials cannot tell (between {low} and {high}).</source>
        <translation>Estas pruebas no dicen si es una costumbre (entre {low} y {high}).</translation>
    </message>
    <message>
        <source>Repeatability: one person&apos;s fills in one trial scatter by {repeat} ({repeat_low} to {repeat_high}). Person by trial: hands differ from one trial to the next by {by_trial} more. Reproducibility: fills by anybody in any trial scatter by {whole} ({whole_low} to {whole_high}). One standard deviation each, 95 % intervals; each trial&apos;s own scoop, line and powder are taken out.</source>
        <translation>Repetibilidad: las llenadas de una persona en una prueba varían {repeat} ({repeat_low} a {repeat_high}). Persona por prueba: de una prueba a otra las manos difieren {by_trial} más. Reproducibilidad: las llenadas de cualquiera en cualquier prueba varían {whole} ({whole_low} a {whole_high}). Una desviación estándar cada una, intervalos del 95 %; la medida, la línea y el polvo de cada prueba están descontados.</translation>
    </message>
</context>
<context>
    <name>TrialChoice</name>
    <message>
        <source>struck level</source>
        <translation>al ras</translation>
    </message>
    <message>
        <source>to the line</source>
        <translation>hasta la línea</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Báscula</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Llenada</translation>
    </message>
    <message>
        <source>Trial of</source>
        <translation>Prueba del día</translation>
    </message>
    <message>
        <source>a new trial</source>
        <translation>una prueba nueva</translation>
    </message>
    <message>
        <source>{day}, lot {lot}</source>
        <translation>{day}, lote {lot}</translation>
    </message>
    <message>
        <source>{day}, lot {lot} (withdrawn)</source>
        <translation>{day}, lote {lot} (retirada)</translation>
    </message>
</context>
<context>
    <name>TrialDialog</name>
    <message>
        <source>Trial of feeders</source>
        <translation>Prueba de personal</translation>
    </message>
    <message>
        <source>Who fills</source>
        <translation>Quién llena</translation>
    </message>
    <message>
        <source>Weight of the scoopful</source>
        <translation>Peso de la medida</translation>
    </message>
    <message>
        <source>Typed by</source>
        <translation>Anota</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Say whose fill this is.</source>
        <translation>Diga de quién es esta llenada.</translation>
    </message>
    <message>
        <source>Say who types.</source>
        <translation>Diga quién anota.</translation>
    </message>
    <message>
        <source>This scoop has no line for this lot yet. Fill it struck level.</source>
        <translation>Esta medida aún no tiene línea para este lote. Llénela al ras.</translation>
    </message>
    <message>
        <source>A weight is typed but not entered. Close without it?</source>
        <translation>Hay un peso escrito sin anotar. ¿Cerrar sin él?</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>This trial is withdrawn.</source>
        <translation>Esta prueba está retirada.</translation>
    </message>
    <message>
        <source>This trial is closed.</source>
        <translation>Esta prueba está cerrada.</translation>
    </message>
    <message>
        <source>The scoop or the scale of this trial is no longer used: begin a new trial.</source>
        <translation>La medida o la báscula de esta prueba ya no se usa: empiece una prueba nueva.</translation>
    </message>
    <message>
        <source>Enter a lot, a scoop and a scale first: on the pages of the lots and of the setup.</source>
        <translation>Primero registre un lote, una medida y una báscula: en las páginas de lotes y de ajustes.</translation>
    </message>
    <message>
        <source>Why should this trial not count?</source>
        <translation>¿Por qué no debe contar esta prueba?</translation>
    </message>
    <message>
        <source>{number}.  {name}  {mass}</source>
        <translation>{number}.  {name}  {mass}</translation>
    </message>
    <message>
        <source>Ente&amp;r</source>
        <translation>A&amp;notar</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>Str&amp;ike out …</source>
        <translation>Tac&amp;har …</translation>
    </message>
    <message>
        <source>&amp;New trial</source>
        <translation>Prueba n&amp;ueva</translation>
    </message>
    <message>
        <source>En&amp;d the trial</source>
        <translation>&amp;Terminar la prueba</translation>
    </message>
    <message>
        <source>&amp;Withdraw …</source>
        <translation>&amp;Retirar …</translation>
    </message>
    <message>
        <source>&amp;Go on with it</source>
        <translation>&amp;Seguir con ella</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>deshecha</translation>
    </message>
    <message>
        <source>{fill} – does not count: {reason}</source>
        <translation>{fill} – no cuenta: {reason}</translation>
    </message>
    <message>
        <source>Why should {mass} by {name} not count?</source>
        <translation>¿Por qué no debe contar la llenada de {mass} de {name}?</translation>
    </message>
    <message>
        <source>Count again</source>
        <translation>Contar otra vez</translation>
    </message>
    <message>
        <source>Fills, newest first</source>
        <translation>Llenadas, la más reciente primero</translation>
    </message>
</context>
<context>
    <name>TrialTold</name>
    <message>
        <source>This trial does not count</source>
        <translation>Esta prueba no cuenta</translation>
    </message>
    <message>
        <source>It was withdrawn: {reason}</source>
        <translation>Se retiró: {reason}</translation>
    </message>
    <message>
        <source>Five fills each, two people or more</source>
        <translation>Cinco llenadas cada quien, dos personas o más</translation>
    </message>
    <message>
        <source>Everybody fills the same scoop from the same bag, one after another. It is no test of people: it shows which move to practice.</source>
        <translation>Todos llenan la misma medida del mismo costal, uno tras otro. No es un examen: muestra qué movimiento practicar.</translation>
    </message>
    <message>
        <source>Each person&apos;s fills</source>
        <translation>Las llenadas de cada persona</translation>
    </message>
    <message>
        <source>a fill</source>
        <translation>una llenada</translation>
    </message>
    <message>
        <source>mean of a person</source>
        <translation>promedio de la persona</translation>
    </message>
    <message>
        <source>mean of all</source>
        <translation>promedio de todos</translation>
    </message>
</context>
<context>
    <name>Trust</name>
    <message>
        <source>fill struck out</source>
        <translation>llenada tachada</translation>
    </message>
    <message>
        <source>fill that counts again</source>
        <translation>llenada que vuelve a contar</translation>
    </message>
    <message>
        <source>Its disk is full: have whoever looks after it free some space.</source>
        <translation>Su disco está lleno: pida a quien lo cuida que libere espacio.</translation>
    </message>
    <message>
        <source>It lets this user write nothing: ask whoever looks after it.</source>
        <translation>No deja escribir a este usuario: pregunte a quien lo cuida.</translation>
    </message>
    <message>
        <source>It is busy with other work.</source>
        <translation>Está ocupado con otro trabajo.</translation>
    </message>
    <message>
        <source>Sending stops at this entry, because the others may rest on it. {entry} If it stays so, set it aside: it is listed here, and the others are sent.</source>
        <translation>El envío se detiene en esta anotación, porque las demás pueden depender de ella. {entry} Si sigue así, póngala aparte: queda en la lista de aquí, y las demás se envían.</translation>
    </message>
    <message>
        <source>an entry that this version of the program cannot read</source>
        <translation>una anotación que esta versión del programa no puede leer</translation>
    </message>
    <message>
        <source>lot {lot}</source>
        <translation>lote {lot}</translation>
    </message>
    <message>
        <source>Each signed-off weigh-in has a fingerprint that rests on the one before. An edit by another program is noticed by it.</source>
        <translation>Cada pesada firmada tiene una huella que depende de la anterior. Con ella se nota si otro programa la modificó.</translation>
    </message>
    <message>
        <source>Weigh-ins that were signed off before {when} are watched from then on; an edit made earlier cannot be told.</source>
        <translation>Las pesadas firmadas antes del {when} se vigilan desde entonces; un cambio hecho antes no se puede notar.</translation>
    </message>
    <message>
        <source>Watched for later edits from {when} on.</source>
        <translation>Desde el {when} se vigila si algo cambia después.</translation>
    </message>
    <message>
        <source>Lot {lot}, signed off {when} by {who}: another program changed it after it was signed.</source>
        <translation>Lote {lot}, firmado el {when} por {who}: otro programa lo cambió después de la firma.</translation>
    </message>
    <message>
        <source>Lot {lot}, signed off {when} by {who}: the weigh-in is no longer there. After an older copy was put back this may be as it should be.</source>
        <translation>Lote {lot}, firmado el {when} por {who}: la pesada ya no está. Si se repuso una copia más antigua, puede estar bien así.</translation>
    </message>
    <message>
        <source>Lot {lot}, signed off {when} by {who}: this program did not sign it, it has no fingerprint.</source>
        <translation>Lote {lot}, firmado el {when} por {who}: este programa no lo firmó, no tiene huella.</translation>
    </message>
    <message>
        <source>Lot {lot}, signed off {when} by {who}: a weigh-in signed off before it is missing.</source>
        <translation>Lote {lot}, firmado el {when} por {who}: falta una pesada firmada antes que esta.</translation>
    </message>
    <message>
        <source>Lot {lot}, signed off {when} by {who}: the newest copy of the records tells it otherwise.</source>
        <translation>Lote {lot}, firmado el {when} por {who}: la copia más reciente de los registros dice otra cosa.</translation>
    </message>
    <message>
        <source>It happened between the copies of {right} and {wrong}.</source>
        <translation>Ocurrió entre las copias del {right} y del {wrong}.</translation>
    </message>
    <message>
        <source>In the copy of {right} it was still right.</source>
        <translation>En la copia del {right} todavía estaba bien.</translation>
    </message>
    <message>
        <source>Signed-off weigh-ins are not as they were signed. You can go on working; look at these lots before you rely on them, and weigh them in again where in doubt.</source>
        <translation>Hay pesadas firmadas que no están como se firmaron. Puede seguir trabajando; mire estos lotes antes de confiar en ellos y, si hay duda, péselos de nuevo.</translation>
    </message>
    <message>
        <source>Where the figures differ and nobody can say why, weigh the lot in again.</source>
        <translation>Si las cifras difieren y nadie sabe por qué, pese el lote otra vez.</translation>
    </message>
    <message>
        <source>No copy holds it as it was signed: look at a lot sheet on paper.</source>
        <translation>Ninguna copia la tiene como se firmó: mire una hoja del lote en papel.</translation>
    </message>
    <message>
        <source>What to do: print the lot sheet as it is now. Then choose the copy of {day} under Set-up, Records, Copies, put it back, and compare. What is there now is set aside and kept.</source>
        <translation>Qué hacer: imprima la hoja del lote como está ahora. Luego elija la copia del {day} en Ajustes, Registros, Copias, repóngala y compare. Lo que hay ahora se aparta y se conserva.</translation>
    </message>
    <message>
        <source>an entry</source>
        <translation>una anotación</translation>
    </message>
    <message>
        <source>{what} of lot {lot}</source>
        <translation>{what} del lote {lot}</translation>
    </message>
    <message>
        <source>{what}, number {number}; when and by whom is lost too</source>
        <translation>{what}, número {number}; también se perdió cuándo y de quién</translation>
    </message>
    <message>
        <source>{what}, entered {when} by {who}</source>
        <translation>{what}, anotado el {when} por {who}</translation>
    </message>
    <message>
        <source>The damaged file is kept as {file}.</source>
        <translation>El archivo dañado se conserva como {file}.</translation>
    </message>
    <message>
        <source>The newest entry there is of {when}; enter again what came after it.</source>
        <translation>La anotación más reciente es del {when}; anote de nuevo lo que vino después.</translation>
    </message>
    <message>
        <source>Up to there nothing is lost.</source>
        <translation>Hasta ahí no se perdió nada.</translation>
    </message>
</context>
<context>
    <name>Units</name>
    <message>
        <source>{one} or {other}?</source>
        <translation>¿{one} o {other}?</translation>
    </message>
    <message>
        <source>Type a value, like {example}.</source>
        <translation>Escriba un valor, como {example}.</translation>
    </message>
    <message>
        <source>That is too long for one value. Type it like {example}.</source>
        <translation>Es demasiado largo para un solo valor. Escríbalo como {example}.</translation>
    </message>
    <message>
        <source>There is a hidden character in it ({name}). Clear the field and type it like {example}.</source>
        <translation>Hay un carácter oculto ({name}). Borre el campo y escríbalo como {example}.</translation>
    </message>
    <message>
        <source>There is no number in it. Type it like {example}.</source>
        <translation>No hay ningún número. Escríbalo como {example}.</translation>
    </message>
    <message>
        <source>“{part}” cannot stand there. Type it like {example}.</source>
        <translation>“{part}” no va ahí. Escríbalo como {example}.</translation>
    </message>
    <message>
        <source>Write the number out in digits, like {example}.</source>
        <translation>Escriba el número con todas sus cifras, como {example}.</translation>
    </message>
    <message>
        <source>“{part}” has more than one decimal sign. Write it like {example}.</source>
        <translation>“{part}” tiene más de un signo decimal. Escríbalo como {example}.</translation>
    </message>
    <message>
        <source>Digits are missing after “{part}”. Type it like {example}.</source>
        <translation>Faltan cifras después de “{part}”. Escríbalo como {example}.</translation>
    </message>
    <message>
        <source>“{part}” can be {whole} or {point}. Write the one that is meant.</source>
        <translation>“{part}” puede ser {whole} o {point}. Escriba el que quiso decir.</translation>
    </message>
    <message>
        <source>“{part}” can be {whole} or {comma}. Write the one that is meant.</source>
        <translation>“{part}” puede ser {whole} o {comma}. Escriba el que quiso decir.</translation>
    </message>
    <message>
        <source>“{part}” has two numbers in a row. Write one number, or a unit after each, like {example}.</source>
        <translation>“{part}” tiene dos números seguidos. Escriba un solo número, o una unidad después de cada uno, como {example}.</translation>
    </message>
    <message>
        <source>“{part}” is not a fraction that can be used. Halves to sixty-fourths can, like 1/4.</source>
        <translation>“{part}” no es una fracción que se pueda usar. Se puede desde medios hasta sesentaicuatroavos, como 1/4.</translation>
    </message>
    <message>
        <source>“{part}” is not less than one. Leave a space between whole number and fraction, like 10 1/4.</source>
        <translation>“{part}” no es menor que uno. Deje un espacio entre el entero y la fracción, como 10 1/4.</translation>
    </message>
    <message>
        <source>“{part}” is not less than one. Was {meant} meant?</source>
        <translation>“{part}” no es menor que uno. ¿Quiso decir {meant}?</translation>
    </message>
    <message>
        <source>“{part}” can be {one} or {other}. Write the one that is meant.</source>
        <translation>“{part}” puede ser {one} o {other}. Escriba el que quiso decir.</translation>
    </message>
    <message>
        <source>Write the unit after “{part}” too, like {example}.</source>
        <translation>Escriba también la unidad después de “{part}”, como {example}.</translation>
    </message>
    <message>
        <source>Its unit is missing: write {part} {unit} or {part} {other}.</source>
        <translation>Falta la unidad: escriba {part} {unit} o {part} {other}.</translation>
    </message>
    <message>
        <source>The unit “{unit}” is not known here. Type it like {example}.</source>
        <translation>La unidad “{unit}” no se conoce aquí. Escríbalo como {example}.</translation>
    </message>
    <message>
        <source>{unit} is a weight, and something else belongs here. Type it like {example}.</source>
        <translation>{unit} es un peso, y aquí va otra cosa. Escríbalo como {example}.</translation>
    </message>
    <message>
        <source>{unit} is a volume, and something else belongs here. Type it like {example}.</source>
        <translation>{unit} es un volumen, y aquí va otra cosa. Escríbalo como {example}.</translation>
    </message>
    <message>
        <source>{unit} is a length, and something else belongs here. Type it like {example}.</source>
        <translation>{unit} es un largo, y aquí va otra cosa. Escríbalo como {example}.</translation>
    </message>
    <message>
        <source>{unit} is a temperature, and something else belongs here. Type it like {example}.</source>
        <translation>{unit} es una temperatura, y aquí va otra cosa. Escríbalo como {example}.</translation>
    </message>
    <message>
        <source>{unit} is a share, and something else belongs here. Type it like {example}.</source>
        <translation>{unit} es un porcentaje, y aquí va otra cosa. Escríbalo como {example}.</translation>
    </message>
    <message>
        <source>oz is a weight. For a volume write fl oz.</source>
        <translation>oz es un peso. Para un volumen escriba fl oz.</translation>
    </message>
    <message>
        <source>fl oz is a volume. For a weight write oz.</source>
        <translation>fl oz es un volumen. Para un peso escriba oz.</translation>
    </message>
    <message>
        <source>Three cups are in use. Write US cup (237 mL), label cup (240 mL) or metric cup (250 mL).</source>
        <translation>Se usan tres tazas. Escriba US cup (237 mL), label cup (240 mL) o metric cup (250 mL).</translation>
    </message>
    <message>
        <source>Several tons are in use. Write the weight in lb or kg.</source>
        <translation>Se usan varias toneladas. Escriba el peso en lb o kg.</translation>
    </message>
    <message>
        <source>gr means grain. For grams write g.</source>
        <translation>gr quiere decir grano. Para gramos escriba g.</translation>
    </message>
    <message>
        <source>Write the unit as ft or in, like {example}.</source>
        <translation>Escriba la unidad como ft o in, como {example}.</translation>
    </message>
    <message>
        <source>Write the larger unit first and each unit once, like {example}.</source>
        <translation>Escriba primero la unidad mayor y cada unidad una sola vez, como {example}.</translation>
    </message>
    <message>
        <source>“{part}” is 1 {unit} or more. Check both numbers.</source>
        <translation>“{part}” es 1 {unit} o más. Revise los dos números.</translation>
    </message>
    <message>
        <source>Only a whole number can stand before a second unit, like {example}.</source>
        <translation>Antes de una segunda unidad solo va un número entero, como {example}.</translation>
    </message>
    <message>
        <source>Type one value, like {example}.</source>
        <translation>Escriba un solo valor, como {example}.</translation>
    </message>
    <message>
        <source>Type a whole number, like {example}.</source>
        <translation>Escriba un número entero, como {example}.</translation>
    </message>
    <message>
        <source>“{part}” is below zero, which cannot be. Type it like {example}.</source>
        <translation>“{part}” es menor que cero, y eso no puede ser. Escríbalo como {example}.</translation>
    </message>
    <message>
        <source>Zero cannot be right here. Type it like {example}.</source>
        <translation>Aquí no puede ser cero. Escríbalo como {example}.</translation>
    </message>
    <message>
        <source>Too little: at least {limit}.</source>
        <translation>Muy poco: mínimo {limit}.</translation>
    </message>
    <message>
        <source>Too little: at least {limit}. Was {meant} meant?</source>
        <translation>Muy poco: mínimo {limit}. ¿Quiso decir {meant}?</translation>
    </message>
    <message>
        <source>Too much: at most {limit}.</source>
        <translation>Demasiado: máximo {limit}.</translation>
    </message>
    <message>
        <source>Too much: at most {limit}. Was {meant} meant?</source>
        <translation>Demasiado: máximo {limit}. ¿Quiso decir {meant}?</translation>
    </message>
</context>
<context>
    <name>VerdictPanel</name>
    <message>
        <source>Check in plain water</source>
        <translation>Revisar en agua sola</translation>
    </message>
    <message>
        <source>Brix calibration</source>
        <translation>Calibración Brix</translation>
    </message>
    <message>
        <source>Yes, that batch</source>
        <translation>Sí, es esa tanda</translation>
    </message>
    <message>
        <source>No, as chosen</source>
        <translation>No, la elegida</translation>
    </message>
    <message>
        <source>Read again, corrected</source>
        <translation>Leer otra vez, ya corregida</translation>
    </message>
    <message>
        <source>Put it right</source>
        <translation>Cómo corregirlo</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Leer otra vez</translation>
    </message>
    <message>
        <source>Likeliest causes</source>
        <translation>Causas más probables</translation>
    </message>
    <message>
        <source>First pail and last</source>
        <translation>Primera cubeta y última</translation>
    </message>
    <message>
        <source>Taken to be the batch for {group}. If it is another&apos;s, choose that at “Batch for”.</source>
        <translation>Se toma como la tanda para {group}. Si es de otro grupo, elíjalo en “Tanda para”.</translation>
    </message>
    <message>
        <source>The batch for {group}</source>
        <translation>Tanda para {group}</translation>
    </message>
    <message>
        <source>Counted as the same batch as at {time}, put right.</source>
        <translation>Cuenta como la misma tanda de las {time}, ya corregida.</translation>
    </message>
    <message>
        <source>Counted as another batch than that of {time}.</source>
        <translation>Cuenta como otra tanda, no la de las {time}.</translation>
    </message>
    <message>
        <source>No verdict yet</source>
        <translation>Todavía no hay resultado</translation>
    </message>
    <message>
        <source>Say what solids are wanted.</source>
        <translation>Diga qué sólidos se desean.</translation>
    </message>
    <message>
        <source>The volume takes the powder for right: powder so far off hardly shows in it.</source>
        <translation>El volumen da por bueno el polvo: un error así de polvo casi no se nota en él.</translation>
    </message>
    <message>
        <source>Worked out for the volume on the chart; type what is in the vessel to be sure.</source>
        <translation>Calculado para el volumen de la tabla; escriba lo que hay en el recipiente para estar seguro.</translation>
    </message>
    <message>
        <source>{what} ({fits}).</source>
        <translation>{what} ({fits}).</translation>
    </message>
    <message>
        <source>Each way: {ways}.</source>
        <translation>Por cada método: {ways}.</translation>
    </message>
    <message>
        <source>No, the same batch</source>
        <translation>No, es la misma tanda</translation>
    </message>
    <message>
        <source>No, another batch</source>
        <translation>No, es otra tanda</translation>
    </message>
    <message>
        <source>Counted as the same batch as at {time}, read again.</source>
        <translation>Cuenta como la misma tanda de las {time}, leída otra vez.</translation>
    </message>
    <message>
        <source>No usual slip fits this reading. Weigh the next powder, and look at the scoop.</source>
        <translation>Ningún descuido común explica esta lectura. Pese el polvo de la próxima tanda y revise la medida.</translation>
    </message>
</context>
<context>
    <name>VesselChoice</name>
    <message>
        <source>Enter a &amp;vessel</source>
        <translation>Registrar un recipien&amp;te</translation>
    </message>
    <message>
        <source>Two vessels? Make a plan for each, with only the calves that are fed from it: each gets its own table and chart.</source>
        <translation>¿Dos recipientes? Haga un plan para cada uno, solo con las becerras que se alimentan de él: cada plan tiene su tabla y su tabla de pared.</translation>
    </message>
    <message>
        <source>Mi&amp;xed in</source>
        <translation>&amp;Se mezcla en</translation>
    </message>
    <message>
        <source>None: no limit</source>
        <translation>Ninguno: sin límite</translation>
    </message>
    <message>
        <source>{name} (retired)</source>
        <translation>{name} (fuera de uso)</translation>
    </message>
</context>
<context>
    <name>VesselForm</name>
    <message>
        <source>Name of the vessel</source>
        <translation>Nombre del recipiente</translation>
    </message>
    <message>
        <source>Volume to the rim</source>
        <translation>Volumen hasta el borde</translation>
    </message>
    <message>
        <source>The rest is room for stirring.</source>
        <translation>Lo demás es lugar para revolver.</translation>
    </message>
    <message>
        <source>May be filled to</source>
        <translation>Se puede llenar hasta</translation>
    </message>
    <message>
        <source>Often:</source>
        <translation>Lo común:</translation>
    </message>
    <message>
        <source>Tell how high the water must stand in it</source>
        <translation>Indicar a qué altura debe llegar el agua</translation>
    </message>
    <message>
        <source>Shape of the vessel</source>
        <translation>Forma del recipiente</translation>
    </message>
    <message>
        <source>Tell how long a mix stays warm in it</source>
        <translation>Indicar cuánto se mantiene caliente la mezcla</translation>
    </message>
    <message>
        <source>Take this volume</source>
        <translation>Tomar este volumen</translation>
    </message>
    <message>
        <source>Lines painted on a vessel are often wrong. Stand it where it is used, pour weighed or measured water in by steps, the last one up to the rim. At each step note all the water that is in it by then, and how high it stands above the floor.</source>
        <translation>Las líneas pintadas en un recipiente muchas veces están mal. Póngalo donde se usa y vierta por pasos agua que haya pesado o medido, el último hasta el borde. En cada paso anote toda el agua que ya tiene y a qué altura llega sobre el fondo.</translation>
    </message>
    <message>
        <source>Just mixed</source>
        <translation>Recién mezclada</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Más tarde</translation>
    </message>
    <message>
        <source>Minutes between</source>
        <translation>Minutos entre las dos</translation>
    </message>
    <message>
        <source>Air around it</source>
        <translation>Aire alrededor</translation>
    </message>
    <message>
        <source>In this air a mix never gets below {cool}.</source>
        <translation>Con este aire una mezcla nunca baja de {cool}.</translation>
    </message>
    <message>
        <source>From {warm} it takes {minutes} to get below {cool}, too cool for calves.</source>
        <translation>De {warm} tarda {minutes} en bajar de {cool}, demasiado fría para las becerras.</translation>
    </message>
    <message>
        <source>By this shape it holds {volume} to the rim.</source>
        <translation>Con esta forma le caben {volume} hasta el borde.</translation>
    </message>
    <message>
        <source>The volume to the rim and this shape differ by {percent}. Measure once more, or take the volume that the shape gives.</source>
        <translation>El volumen hasta el borde y esta forma difieren en {percent}. Mida otra vez, o tome el volumen que da la forma.</translation>
    </message>
    <message>
        <source>Read a mix just mixed, and once more when it has stood for some minutes.</source>
        <translation>Lea una mezcla recién hecha y otra vez cuando haya reposado unos minutos.</translation>
    </message>
</context>
<context>
    <name>VolumeModel</name>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Powder by weight</source>
        <translation>Polvo (peso)</translation>
    </message>
    <message>
        <source>Scoopfuls</source>
        <translation>Medidas</translation>
    </message>
    <message>
        <source>Finished mix</source>
        <translation>Mezcla terminada</translation>
    </message>
    <message>
        <source>Enough for</source>
        <translation>Alcanza para</translation>
    </message>
</context>
<context>
    <name>VolumeTable</name>
    <message>
        <source>Water from</source>
        <translation>Agua desde</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>in steps of</source>
        <translation>en pasos de</translation>
    </message>
    <message>
        <source>First volume of water</source>
        <translation>Primer volumen de agua</translation>
    </message>
    <message>
        <source>Last volume of water</source>
        <translation>Último volumen de agua</translation>
    </message>
    <message>
        <source>Step of the water</source>
        <translation>Paso del agua</translation>
    </message>
    <message>
        <source>Table by volume</source>
        <translation>Tabla por volumen</translation>
    </message>
</context>
<context>
    <name>WarmthFields</name>
    <message>
        <source>Powder is stored at</source>
        <translation>El polvo se guarda a</translation>
    </message>
    <message>
        <source>Empty: the water is drawn as told above.</source>
        <translation>Vacío: el agua se sirve como se dijo arriba.</translation>
    </message>
    <message>
        <source>The mix is to land at</source>
        <translation>La mezcla debe quedar a</translation>
    </message>
    <message>
        <source>Calves fed in ten minutes</source>
        <translation>Becerras alimentadas en diez minutos</translation>
    </message>
    <message>
        <source>Groups are fed in the order in which they stand here; youngest first is common practice. How long a mix stays warm is told by its vessel, in the set-up.</source>
        <translation>Los grupos se alimentan en el orden en que están aquí; primero las más chicas es práctica común. Cuánto se mantiene caliente una mezcla lo dice su recipiente, en Ajustes.</translation>
    </message>
    <message>
        <source>Type how warm the powder is too: it takes its warmth from the water.</source>
        <translation>Escriba también la temperatura del polvo: le quita calor al agua.</translation>
    </message>
</context>
<context>
    <name>WarmthWords</name>
    <message>
        <source>Draw water at {temperature}. {trouble}</source>
        <translation>Sirva el agua a {temperature}. {trouble}</translation>
    </message>
    <message>
        <source>Draw water at {temperature}.</source>
        <translation>Sirva el agua a {temperature}.</translation>
    </message>
    <message>
        <source>Draw water at {temperature}: {hot} hot and {cold} cold.</source>
        <translation>Sirva el agua a {temperature}: {hot} de caliente y {cold} de fría.</translation>
    </message>
    <message>
        <source>The mix lands at {temperature}.</source>
        <translation>La mezcla queda a {temperature}.</translation>
    </message>
    <message>
        <source>The mix lands at {temperature} and stays above {cool}.</source>
        <translation>La mezcla queda a {temperature} y no baja de {cool}.</translation>
    </message>
    <message>
        <source>The mix lands at {temperature}; {minutes} until it is below {cool}, too cool.</source>
        <translation>La mezcla queda a {temperature}; en {minutes} baja de {cool}, demasiado fría.</translation>
    </message>
    <message>
        <source>The hot water will not do: this feeding takes {needed} at {temperature}, the tank gives {tank}. {missing} are missing; feed in two goes, or heat more first.</source>
        <translation>El agua caliente no alcanza: esta toma lleva {needed} a {temperature} y el tanque da {tank}. Faltan {missing}; dé la toma en dos partes o caliente más primero.</translation>
    </message>
    <message>
        <source>Order of feeding:</source>
        <translation>Orden de las tomas:</translation>
    </message>
    <message>
        <source>The last calves of a batch would get it below {cool}: mix smaller batches, one after another.</source>
        <translation>A las últimas becerras de una tanda les llegaría a menos de {cool}: mezcle tandas más chicas, una tras otra.</translation>
    </message>
    <message>
        <source>{group}, minute {begin} to {end}</source>
        <translation>{group}, del minuto {begin} al {end}</translation>
    </message>
    <message>
        <source>{group}, minute {begin} to {end}, the last calf of a batch at {temperature}</source>
        <translation>{group}, del minuto {begin} al {end}, la última becerra de una tanda a {temperature}</translation>
    </message>
</context>
<context>
    <name>WeighInPage</name>
    <message>
        <source>Ne&amp;xt</source>
        <translation>Si&amp;guiente</translation>
    </message>
    <message>
        <source>Bac&amp;k</source>
        <translation>At&amp;rás</translation>
    </message>
    <message>
        <source>Weigh in a&amp;nother lot</source>
        <translation>Pesar &amp;otro lote</translation>
    </message>
    <message>
        <source>G&amp;o on without</source>
        <translation>Seguir sin e&amp;llas</translation>
    </message>
    <message>
        <source>G&amp;o on with this line</source>
        <translation>Dejar la línea así &amp;y seguir</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Pesada</translation>
    </message>
</context>
<context>
    <name>WeighInWords</name>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Scoop and scale</source>
        <translation>Medida y báscula</translation>
    </message>
    <message>
        <source>Level fills</source>
        <translation>Llenadas al ras</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Sign-off</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Still needed: your word that it is used level</source>
        <translation>Falta confirmar que se usa al ras</translation>
    </message>
    <message>
        <source>your initials</source>
        <translation>sus iniciales</translation>
    </message>
    <message>
        <source>a scoop</source>
        <translation>una medida</translation>
    </message>
    <message>
        <source>a scale</source>
        <translation>una báscula</translation>
    </message>
    <message>
        <source>the target weight</source>
        <translation>el peso deseado</translation>
    </message>
    <message>
        <source>the scale level and zeroed</source>
        <translation>la báscula a nivel y en cero</translation>
    </message>
    <message>
        <source>at least two level fills</source>
        <translation>dos llenadas al ras</translation>
    </message>
    <message>
        <source>the line</source>
        <translation>la línea</translation>
    </message>
    <message>
        <source>Still needed: {what}</source>
        <translation>Todavía falta: {what}</translation>
    </message>
    <message>
        <source>Early: two fills to this line are wanted. You can go on all the same.</source>
        <translation>Todavía es pronto: faltan dos llenadas hasta esta línea. Aun así puede oprimir Siguiente.</translation>
    </message>
    <message>
        <source>Early: more fills are advised. You can go on all the same.</source>
        <translation>Todavía es pronto: se recomiendan más llenadas. Aun así puede oprimir Siguiente.</translation>
    </message>
    <message>
        <source>Early: {more} are still planned. You can go on all the same.</source>
        <translation>Todavía es pronto: el plan pide {more}. Aun así puede oprimir Siguiente.</translation>
    </message>
    <message>
        <source>Within ± {mass} already; the plan still asks for {more}.</source>
        <translation>Ya está dentro de ± {mass}; el plan todavía pide {more}.</translation>
    </message>
    <message>
        <source>Enough: a level scoopful is known within ± {mass}.</source>
        <translation>Basta: lo que pesa una medida al ras se sabe con un margen de ± {mass}.</translation>
    </message>
    <message>
        <source>First decide about the fill that lies far from the others.</source>
        <translation>Primero decida qué hacer con la llenada que queda lejos de las demás.</translation>
    </message>
    <message>
        <source>{weighings}, {scoopfuls}</source>
        <translation>{weighings}, {scoopfuls}</translation>
    </message>
    <message>
        <source>{mass} taken off for the scale</source>
        <translation>menos {mass} por la báscula</translation>
    </message>
    <message>
        <source>{mass} added for the scale</source>
        <translation>más {mass} por la báscula</translation>
    </message>
    <message>
        <source>{fills} from {count} of the open bags</source>
        <translation>{fills} de {count} de los costales ya abiertos</translation>
    </message>
    <message>
        <source>{fills} from the open bags, {count} of them without any</source>
        <translation>{fills} de los costales ya abiertos, {count} de ellos aún sin ninguna</translation>
    </message>
    <message>
        <source>Weigh one scoopful to the line at a time, about {mass}; {count} are a feeding.</source>
        <translation>Pese una sola medida hasta la línea cada vez, unos {mass}; {count} son una toma.</translation>
    </message>
    <message>
        <source>At the weigh-in before, this scale showed {reading} for {nominal}. Weigh the check weight again: without it nothing is corrected here, and the two lots do not compare.</source>
        <translation>En la pesada anterior esta báscula marcó {reading} por {nominal}. Vuelva a pesar la pesa de control: sin ella aquí no se corrige nada y los dos lotes no se pueden comparar.</translation>
    </message>
    <message>
        <source>The scale reads the check weight right, as far as its display tells.</source>
        <translation>La báscula marca bien la pesa de control, hasta donde da su pantalla.</translation>
    </message>
    <message>
        <source>Look at both figures: {reading} for {nominal} is hardly meant. If the scale does show that, weigh on another one. Without a check weight leave both empty.</source>
        <translation>Vea los dos datos: {reading} por {nominal} no puede ser. Si la báscula de verdad marca eso, pese con otra. Sin pesa de control, deje los dos vacíos.</translation>
    </message>
    <message>
        <source>It shows {error} too much, within what its display tells: that counts as doubt.</source>
        <translation>Marca {error} de más, dentro de lo que da su pantalla: se cuenta como duda.</translation>
    </message>
    <message>
        <source>It shows {error} too little, within what its display tells: that counts as doubt.</source>
        <translation>Marca {error} de menos, dentro de lo que da su pantalla: se cuenta como duda.</translation>
    </message>
    <message>
        <source>The scale reads {error} too much ({share} of the check weight).</source>
        <translation>La báscula marca {error} de más ({share} de la pesa de control).</translation>
    </message>
    <message>
        <source>The scale reads {error} too little ({share} of the check weight).</source>
        <translation>La báscula marca {error} de menos ({share} de la pesa de control).</translation>
    </message>
    <message>
        <source>That is as near as good scales are; the means are corrected for it.</source>
        <translation>También las buenas básculas se apartan así de poco; los promedios se corrigen por eso.</translation>
    </message>
    <message>
        <source>Zero it, check that it stands level, fit fresh batteries, and try again. If it stays so, the means are corrected for it.</source>
        <translation>Póngala en cero, vea que esté nivelada, cambie las pilas y pruebe otra vez. Si sigue así, los promedios se corrigen por eso.</translation>
    </message>
    <message>
        <source>{weight} is more than this scale weighs ({capacity}).</source>
        <translation>{weight} es más de lo que pesa esta báscula ({capacity}).</translation>
    </message>
    <message>
        <source>Type it again.</source>
        <translation>Escríbalo otra vez.</translation>
    </message>
    <message>
        <source>That is more than this scoop holds struck level ({level}); to the line it holds less.</source>
        <translation>Es más de lo que cabe al ras en esta medida ({level}); hasta la línea cabe menos.</translation>
    </message>
    <message>
        <source>No powder is so heavy in this scoop.</source>
        <translation>Ningún polvo pesa tanto en esta medida.</translation>
    </message>
    <message>
        <source>No powder is so light in this scoop.</source>
        <translation>Ningún polvo pesa tan poco en esta medida.</translation>
    </message>
    <message>
        <source>Check unit, zero and the scoop&apos;s measures.</source>
        <translation>Revise unidad, cero y tamaño de la medida.</translation>
    </message>
    <message>
        <source>More fills would hardly tell it better: go on with what is known.</source>
        <translation>Con más llenadas casi no se sabría más: siga con lo que hay.</translation>
    </message>
    <message>
        <source>Known within ± {now}; within ± {wanted} is wanted.</source>
        <translation>Margen hasta ahora: ± {now}; se busca ± {wanted}.</translation>
    </message>
    <message>
        <source>Stir both, weigh them again, and dip a third bag.</source>
        <translation>Revuelva los dos, péselos de nuevo y use un tercer costal.</translation>
    </message>
    <message>
        <source>With fewer than three bags, how bags differ cannot be seen: a cautious figure is assumed.</source>
        <translation>Con menos de tres costales no se ve cuánto difieren: se supone una cifra prudente.</translation>
    </message>
    <message>
        <source>Dip a third bag to do without it.</source>
        <translation>Use un tercer costal para no necesitarla.</translation>
    </message>
    <message>
        <source>With the old line a feeding of this lot would weigh {mass} ({share}).</source>
        <translation>Con la línea anterior una toma de este lote pesaría {mass} ({share}).</translation>
    </message>
    <message>
        <source>It is not needed: use the scoop level. With the old line a feeding would weigh {mass} ({share}).</source>
        <translation>No hace falta: use la medida al ras. Con la línea anterior una toma pesaría {mass} ({share}).</translation>
    </message>
    <message>
        <source>Not for this lot: it was drawn for {before}. A feeding to it would weigh {mass}.</source>
        <translation>No es para este lote: se trazó para {before}. Una toma hasta ella pesaría {mass}.</translation>
    </message>
    <message>
        <source>Not for this lot: a feeding to it would weigh {mass} ({share}).</source>
        <translation>No es para este lote: una toma hasta ella pesaría {mass} ({share}).</translation>
    </message>
    <message>
        <source>A feeding to a line at {line} would weigh {mass} ({share}): outside the tolerance.</source>
        <translation>Una toma hasta una línea a {line} pesaría {mass} ({share}): fuera de la tolerancia.</translation>
    </message>
    <message>
        <source>A feeding to a line at {line} would weigh {mass} ({share}): within the tolerance.</source>
        <translation>Una toma hasta una línea a {line} pesaría {mass} ({share}): dentro de la tolerancia.</translation>
    </message>
    <message>
        <source>Keep the line: a feeding is within the tolerance.</source>
        <translation>Deje la línea: la toma está dentro de la tolerancia.</translation>
    </message>
    <message>
        <source>The interval rests on how these bags differ.</source>
        <translation>El intervalo se basa en cuánto varían estos costales.</translation>
    </message>
    <message>
        <source>{fills} and {bags}</source>
        <translation>{fills} y {bags} más</translation>
    </message>
    <message>
        <source>The interval rests on how bags differed in this farm&apos;s earlier lots.</source>
        <translation>El intervalo se basa en cuánto variaron los costales en los lotes anteriores de este establo.</translation>
    </message>
    <message>
        <source>Fills to the line</source>
        <translation>Hasta la línea</translation>
    </message>
    <message>
        <source>the check weight</source>
        <translation>la pesa</translation>
    </message>
    <message>
        <source>More fills would hardly tell it better, but a heavier check weight would: weigh that, or more scoopfuls together.</source>
        <translation>Con más llenadas casi no se sabría más, pero con una pesa de control más pesada sí: pésela, o pese varias medidas juntas.</translation>
    </message>
    <message>
        <source>More fills would hardly tell it better, for the scale was not checked: weigh a check weight, or more scoopfuls together.</source>
        <translation>Con más llenadas casi no se sabría más, porque la báscula no se revisó: pese una pesa de control, o varias medidas juntas.</translation>
    </message>
    <message>
        <source>Scale not checked: ± {mass} of doubt assumed. A check weight makes this surer.</source>
        <translation>Báscula sin revisar: se suponen ± {mass} de incertidumbre. Con una pesa de control se sabe mejor.</translation>
    </message>
    <message>
        <source>Check weight light beside the powder: ± {mass} of doubt assumed. A heavier one makes this surer.</source>
        <translation>La pesa de control pesa poco: se suponen ± {mass} de incertidumbre. Con una más pesada se sabe mejor.</translation>
    </message>
    <message>
        <source>{fills} from {bags} so far; {all} from {planned} are planned.</source>
        <translation>Hasta ahora {fills} de {bags}; el plan son {all} de {planned}.</translation>
    </message>
    <message>
        <source>mean of {bags}, {fills}</source>
        <translation>promedio de {bags}, {fills}</translation>
    </message>
    <message>
        <source>mean of {bags}, {fills}, {before}</source>
        <translation>promedio de {bags}, {fills}, {before}</translation>
    </message>
    <message>
        <source>Dip, heap, and strike off with a straight edge. No tapping, no pressing. {fills}: type the weight, press Enter.</source>
        <translation>Meta la medida en el polvo, llénela con copete y rase con una regla. Sin golpear, sin apretar. {fills}: escriba el peso y oprima Enter.</translation>
    </message>
    <message>
        <source>Fill as at every feeding: to the line, evened with one shake, read at eye level. Type the weight, press Enter.</source>
        <translation>Llene como en cada toma: hasta la línea, con una sacudida, a la altura de los ojos. Escriba el peso y Enter.</translation>
    </message>
    <message>
        <source>Two fills from each of four bags</source>
        <translation>Dos llenadas de cada uno de cuatro costales</translation>
    </message>
    <message>
        <source>Eight fills from all over the bag</source>
        <translation>Ocho llenadas de distintas partes del costal</translation>
    </message>
    <message>
        <source>Eight fills, shared over the {bags} of the lot</source>
        <translation>Ocho llenadas, repartidas entre los {bags} del lote</translation>
    </message>
    <message>
        <source>That rests on earlier lots; the plan is to see how bags and fills of this one differ.</source>
        <translation>Eso se basa en lotes anteriores; el plan es para ver cuánto varían los costales y las llenadas de este.</translation>
    </message>
    <message>
        <source>These two bags differ more than bags usually do; the range takes that in.</source>
        <translation>Estos dos costales difieren más de lo usual; el rango ya lo toma en cuenta.</translation>
    </message>
    <message>
        <source>The range rests on how these two bags differ.</source>
        <translation>El rango se basa en lo que difieren estos dos costales.</translation>
    </message>
    <message>
        <source>Every bag of the lot was dipped, so only how fills differ counts; until more are weighed, a cautious figure is assumed for it.</source>
        <translation>Se tomó de todos los costales del lote, así que solo cuenta cuánto varían las llenadas; mientras no se pesen más, se supone para eso una cifra cautelosa.</translation>
    </message>
    <message>
        <source>Every bag of the lot was dipped, so the interval rests on how fills differ. Take them from all over the bag, not from its top alone.</source>
        <translation>Se tomó de todos los costales del lote, así que el intervalo se basa en cuánto varían las llenadas. Tómelas de distintas partes del costal, no solo de arriba.</translation>
    </message>
    <message>
        <source>Draw the line {down} down the wall from the rim.</source>
        <translation>Trace la línea a {down} del borde, midiendo por la pared.</translation>
    </message>
    <message>
        <source>The line would be so near the floor that it cannot be read well. Use a smaller scoop.</source>
        <translation>La línea quedaría tan cerca del fondo que no se lee bien. Use una medida más chica.</translation>
    </message>
    <message>
        <source>The line would be so near the rim that it cannot be told from it. Use a larger scoop, or strike it level and take the weight as it is.</source>
        <translation>La línea quedaría tan cerca del borde que no se distingue de él. Use una medida más grande, o llénela al ras y tome el peso que dé.</translation>
    </message>
    <message>
        <source>Keep the old line. {delivers}</source>
        <translation>Conserve la línea anterior. {delivers}</translation>
    </message>
    <message>
        <source>Draw a new line for this lot; leave the old one until the change-over. {delivers}</source>
        <translation>Trace una línea nueva para este lote; deje la anterior hasta el cambio de lote. {delivers}</translation>
    </message>
    <message>
        <source>Move the line. {delivers}</source>
        <translation>Mueva la línea. {delivers}</translation>
    </message>
    <message>
        <source>Draw the new line: the fills do not tell whether the old one will do.</source>
        <translation>Trace la línea nueva: las llenadas no dicen si la anterior sirve.</translation>
    </message>
    <message>
        <source>{words} {delivers}</source>
        <translation>{words} {delivers}</translation>
    </message>
    <message>
        <source>It was drawn for {before} at the last lot; now the target is {target}. Draw the new line. With the old line a feeding of this lot would weigh {mass}.</source>
        <translation>En el último lote se trazó para {before}; ahora el peso deseado es {target}. Trace la línea nueva. Con la línea anterior una toma de este lote pesaría {mass}.</translation>
    </message>
    <message>
        <source>That is {count} to the old line.</source>
        <translation>Son {count} hasta la línea anterior.</translation>
    </message>
    <message>
        <source>Replaced, though it could have stayed: a feeding to it would weigh {mass} ({share}).</source>
        <translation>Se cambió, aunque podía quedarse: una toma hasta ella pesaría {mass} ({share}).</translation>
    </message>
    <message>
        <source>Replaced. Whether it could have stayed, the fills do not tell: a feeding to it would weigh {mass} ({share}).</source>
        <translation>Se cambió. Las llenadas no dicen si podía quedarse: una toma hasta ella pesaría {mass} ({share}).</translation>
    </message>
    <message>
        <source>That takes in how it settled in the fills to the line.</source>
        <translation>Ya toma en cuenta cómo se asentó el polvo en las llenadas hasta la línea.</translation>
    </message>
    <message>
        <source>That is {count} struck at the rim + 1 to the old line.</source>
        <translation>Son {count} al ras del borde + 1 hasta la línea anterior.</translation>
    </message>
    <message>
        <source>By the level fills it does not do for this lot: draw the new line.</source>
        <translation>Según las llenadas al ras no sirve para este lote: trace la línea nueva.</translation>
    </message>
    <message>
        <source>By the level fills it would do. Only how this powder settles under the shake is not known: leave the old line, and weigh two fills to it.</source>
        <translation>Según las llenadas al ras, serviría. Solo falta saber cómo se asienta este polvo al sacudirlo: deje la línea anterior y pese dos llenadas hasta ella.</translation>
    </message>
    <message>
        <source>Weigh fills to the old line first: they tell whether it can stay.</source>
        <translation>Pese primero llenadas hasta la línea anterior: dicen si puede quedarse.</translation>
    </message>
    <message>
        <source>A feeding to a line there would weigh {mass} ({share} against the target). Measure from the rim down along the wall, not from the bottom up. Is the line really there?</source>
        <translation>Una toma hasta una línea ahí pesaría {mass} ({share} contra lo deseado). Mida desde el borde hacia abajo por la pared, no desde el fondo hacia arriba. ¿De veras está ahí la línea?</translation>
    </message>
    <message>
        <source>The new line is right: a feeding is within the tolerance.</source>
        <translation>La línea nueva es la correcta: una toma queda dentro de la tolerancia.</translation>
    </message>
    <message>
        <source>Move the line to {down} down the wall from the rim, and weigh to it again.</source>
        <translation>Mueva la línea a {down} del borde y pese otra vez hasta ella.</translation>
    </message>
    <message>
        <source>Better move the line to {down} down the wall, and weigh to it again.</source>
        <translation>Conviene mover la línea a {down} por la pared y pesar otra vez.</translation>
    </message>
    <message>
        <source>Keep the line, though a feeding is outside the tolerance: no other division of the ruler is nearer. A narrower scoop would do better.</source>
        <translation>Deje la línea, aunque la toma está fuera de la tolerancia: ninguna otra división de la regla queda más cerca. Con una medida más angosta saldría mejor.</translation>
    </message>
    <message>
        <source>The new line is as near as the ruler has it, though a feeding is outside the tolerance: no other division is nearer. A narrower scoop would do better.</source>
        <translation>La línea nueva queda tan cerca como la regla lo permite, aunque la toma está fuera de la tolerancia: ninguna otra división queda más cerca. Con una medida más angosta saldría mejor.</translation>
    </message>
    <message>
        <source>The mean is within the tolerance, but not yet known closely enough.</source>
        <translation>El promedio queda dentro de la tolerancia, pero aún no se sabe con suficiente precisión.</translation>
    </message>
    <message>
        <source>The mean is outside the tolerance, but not yet known closely enough.</source>
        <translation>El promedio queda fuera de la tolerancia, pero aún no se sabe con suficiente precisión.</translation>
    </message>
    <message>
        <source>That is inside it, but each feeding of the lot would stay {share} too little; with the new line it would be about {mass}.</source>
        <translation>Está dentro, pero cada toma quedaría {share} corta; con la línea nueva daría unos {mass}.</translation>
    </message>
    <message>
        <source>That is inside it, but each feeding of the lot would stay {share} too much; with the new line it would be about {mass}.</source>
        <translation>Está dentro, pero cada toma quedaría {share} pasada; con la línea nueva daría unos {mass}.</translation>
    </message>
    <message>
        <source>That is the mean of the lot: out of one bag it may be {mass} more or less. Weigh a spot fill of each bag that is opened.</source>
        <translation>Ese es el promedio del lote: de un solo costal puede ser {mass} más o menos. Pese una llenada de cada costal que se abra.</translation>
    </message>
    <message>
        <source>The plan still asks for {more}, to see how bags and fills of this lot differ.</source>
        <translation>El plan todavía pide {more}, para ver cuánto varían los costales y las llenadas de este lote.</translation>
    </message>
    <message>
        <source>No fill to the line was weighed yet, so how the powder settles in it is not known and the line may be some percent off. Weigh at least two fills to it, or go on without?</source>
        <translation>Aún no se pesó ninguna llenada hasta la línea: no se sabe cómo se asienta el polvo y la línea puede fallar por un 2 o 3 %. ¿Pesar al menos dos llenadas hasta ella, o seguir sin ellas?</translation>
    </message>
    <message>
        <source>{verdict} What would be signed is the line at {line}, with {mass} in a feeding. Go on with it?</source>
        <translation>{verdict} Se firmaría la línea a {line}, con {mass} por toma. ¿Seguir con ella?</translation>
    </message>
    <message>
        <source>Tolerance: {from_mass} to {to_mass} ({target} ± {share}).</source>
        <translation>Tolerancia: {from_mass} a {to_mass} ({target} ± {share}).</translation>
    </message>
    <message>
        <source>A feeding weighs {mean}, between {low} and {high} (95 %). {tolerance}</source>
        <translation>Una toma pesa {mean}, entre {low} y {high} (95 %). {tolerance}</translation>
    </message>
    <message>
        <source>Filled to the line, the powder lies as dense as struck level.</source>
        <translation>Llenado hasta la línea, el polvo queda tan denso como al ras.</translation>
    </message>
    <message>
        <source>Evened by a shake, the powder packs {percent} denser than struck level.</source>
        <translation>Con la sacudida queda {percent} más denso que al ras.</translation>
    </message>
    <message>
        <source>Filled to the line, the powder lies {percent} looser than struck level.</source>
        <translation>Llenado hasta la línea, el polvo queda {percent} más suelto que al ras.</translation>
    </message>
    <message>
        <source>One calf usually gets {low} to {high} of powder at a feeding. Look at the unit and the decimal point.</source>
        <translation>Una becerra suele recibir de {low} a {high} de polvo por toma. Revise la unidad y el punto decimal.</translation>
    </message>
    <message>
        <source>These two fills lie far apart, and nothing tells yet which one went wrong. Weigh another: it will show.</source>
        <translation>Estas dos llenadas difieren mucho y nada dice aún cuál salió mal. Pese otra y se verá.</translation>
    </message>
    <message>
        <source>A fill lies far from the others. If something went wrong with it, select it and strike it out; if not, let it stand.</source>
        <translation>Una llenada queda lejos de las demás. Si algo salió mal con ella, selecciónela y táchela; si no, déjela.</translation>
    </message>
    <message>
        <source>Look again at {weight}: was {meant} meant? If so, strike it out and type it anew; if not, let it stand.</source>
        <translation>Revise {weight}: ¿no será {meant}? Si es así, tache esa llenada y anótela otra vez; si no, déjela.</translation>
    </message>
    <message>
        <source>{weight} looks like {scoopfuls}. If so, strike it out, set how many were on the scale, and type it anew; if not, let it stand.</source>
        <translation>{weight} parece de {scoopfuls}. Si es así, táchela, ponga cuántas había en la báscula y escríbala otra vez; si no, déjela.</translation>
    </message>
    <message>
        <source>Weigh-in of lot {number}</source>
        <translation>Pesada del lote {number}</translation>
    </message>
</context>
<context>
    <name>WelcomePage</name>
    <message>
        <source>Welcome</source>
        <translation>Bienvenidos</translation>
    </message>
    <message>
        <source>Kitchen scale</source>
        <translation>Báscula de cocina</translation>
    </message>
    <message>
        <source>Bac&amp;k</source>
        <translation>At&amp;rás</translation>
    </message>
    <message>
        <source>Look at an invented &amp;season first</source>
        <translation>Ver primero una temporada de e&amp;jemplo</translation>
    </message>
    <message>
        <source>Finish setting up &amp;later</source>
        <translation>Terminar &amp;después</translation>
    </message>
    <message>
        <source>Keep and go &amp;on</source>
        <translation>&amp;Guardar y seguir</translation>
    </message>
    <message>
        <source>A second window opens with an invented farm. What is done there is not kept.</source>
        <translation>Se abre otra ventana con un establo inventado. Lo que se haga ahí no se guarda.</translation>
    </message>
    <message>
        <source>The sample season could not be opened. Start the program with --demo.</source>
        <translation>No se pudo abrir la temporada de ejemplo. Abra el programa con --demo.</translation>
    </message>
    <message>
        <source>Keep and weigh it &amp;in</source>
        <translation>&amp;Guardar y pesar</translation>
    </message>
    <message>
        <source>Your farm</source>
        <translation>Su establo</translation>
    </message>
    <message>
        <source>This program finds out what a scoop of milk replacer weighs, lot by lot, and where its fill line belongs. Four short steps, then the first weigh-in.</source>
        <translation>Este programa averigua cuánto pesa una medida (el cucharón o bote) de sustituto de leche, lote por lote, y dónde va su línea de llenado. Cuatro pasos cortos y luego la primera pesada.</translation>
    </message>
    <message>
        <source>The scale</source>
        <translation>La báscula</translation>
    </message>
    <message>
        <source>The one on which scoopfuls will be weighed. Look at its plate or its manual.</source>
        <translation>En la que se pesarán las medidas. Vea su placa o su manual.</translation>
    </message>
    <message>
        <source>Choose its shape and measure it inside with a ruler.</source>
        <translation>Elija su forma y mídala por dentro con una regla.</translation>
    </message>
    <message>
        <source>The powder that is fed now or comes next. Only its lot number is needed; price and the rest of the label can be told later, on Lots.</source>
        <translation>El polvo que se usa ahora o el que sigue. Solo hace falta su número de lote; el precio y lo demás de la etiqueta se pueden anotar después, en Lotes.</translation>
    </message>
    <message>
        <source>The scoop</source>
        <translation>La medida</translation>
    </message>
    <message>
        <source>The first lot</source>
        <translation>El primer lote</translation>
    </message>
</context>
<context>
    <name>Why</name>
    <message>
        <source>Room humidity at weigh-in</source>
        <translation>Humedad del cuarto al pesar</translation>
    </message>
    <message>
        <source>Age since made</source>
        <translation>Tiempo desde que se hizo</translation>
    </message>
    <message>
        <source>Drift over time</source>
        <translation>Cambio con el tiempo</translation>
    </message>
    <message>
        <source>Time of year</source>
        <translation>Época del año</translation>
    </message>
    <message>
        <source>Supplier&apos;s plant</source>
        <translation>Planta del proveedor</translation>
    </message>
    <message>
        <source>Agglomerated or not</source>
        <translation>Aglomerado o no</translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>for 10 points more humidity</source>
        <translation>por 10 puntos más de humedad</translation>
    </message>
    <message>
        <source>for 30 days more</source>
        <translation>por 30 días más</translation>
    </message>
    <message>
        <source>for 30 days later</source>
        <translation>por 30 días después</translation>
    </message>
    <message>
        <source>up and down over the year</source>
        <translation>arriba y abajo en el año</translation>
    </message>
    <message>
        <source>goes with it</source>
        <translation>varía con esto</translation>
    </message>
    <message>
        <source>no effect worth a thought</source>
        <translation>sin efecto que importe</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>no se puede saber</translation>
    </message>
    <message>
        <source>cannot tell: too few lots</source>
        <translation>no se puede saber: muy pocos lotes</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} a {high}</translation>
    </message>
    <message>
        <source>agglomerated</source>
        <translation>aglomerado</translation>
    </message>
    <message>
        <source>not agglomerated</source>
        <translation>sin aglomerar</translation>
    </message>
    <message>
        <source>{cause}: cannot tell. {why}</source>
        <translation>{cause}: no se puede saber. {why}</translation>
    </message>
    <message>
        <source>{cause}: cannot tell. {share} {per} agrees with these lots, and so does none ({interval}).</source>
        <translation>{cause}: no se puede saber. {share} {per} concuerda con estos lotes, pero también que no haya efecto ({interval}).</translation>
    </message>
    <message>
        <source>{cause}: no effect worth a thought, {share} {per} ({interval}).</source>
        <translation>{cause}: sin efecto que importe, {share} {per} ({interval}).</translation>
    </message>
    <message>
        <source>{cause}: density goes with it, {share} {per} ({interval}).</source>
        <translation>{cause}: la densidad varía con esto, {share} {per} ({interval}).</translation>
    </message>
    <message>
        <source>Densest about {day}.</source>
        <translation>Más denso hacia el {day}.</translation>
    </message>
    <message>
        <source>for {high} above {low}</source>
        <translation>{high} frente a {low}</translation>
    </message>
    <message>
        <source>Enter the room&apos;s humidity at each weigh-in.</source>
        <translation>Anote la humedad del cuarto en cada pesada.</translation>
    </message>
    <message>
        <source>Enter the day on which each lot was made.</source>
        <translation>Anote el día en que se hizo cada lote.</translation>
    </message>
    <message>
        <source>It takes ten lots over a whole year.</source>
        <translation>Se necesitan diez lotes en un año entero.</translation>
    </message>
    <message>
        <source>Enter the plant code of each lot; it takes two plants.</source>
        <translation>Anote la clave de planta de cada lote; se necesitan dos plantas.</translation>
    </message>
    <message>
        <source>Enter for each lot whether it is agglomerated; it takes both.</source>
        <translation>Anote de cada lote si es aglomerado; se necesitan de los dos.</translation>
    </message>
    <message>
        <source>It takes lots weighed with two scoops.</source>
        <translation>Se necesitan lotes pesados con dos medidas.</translation>
    </message>
    <message>
        <source>It takes five lots or more.</source>
        <translation>Se necesitan cinco lotes o más.</translation>
    </message>
</context>
<context>
    <name>WhyPanel</name>
    <message>
        <source>What goes together need not be the cause, and one answer in twenty is chance. A density is never corrected by humidity: weigh.</source>
        <translation>Que dos cosas vayan juntas no quiere decir que una cause la otra, y una de cada veinte respuestas es casualidad. La densidad nunca se corrige por la humedad: pese.</translation>
    </message>
    <message>
        <source>These lots tell no cause yet</source>
        <translation>Con estos lotes todavía no se ve la causa</translation>
    </message>
    <message>
        <source>Density goes with: {causes}</source>
        <translation>La densidad varía con: {causes}</translation>
    </message>
    <message>
        <source>Room humidity, %</source>
        <translation>Humedad del cuarto, %</translation>
    </message>
    <message>
        <source>Days since made</source>
        <translation>Días desde que se hizo</translation>
    </message>
    <message>
        <source>Day of the weigh-in</source>
        <translation>Día de la pesada</translation>
    </message>
    <message>
        <source>Day of the year</source>
        <translation>Día del año</translation>
    </message>
    <message>
        <source>Days since {day}</source>
        <translation>Días desde el {day}</translation>
    </message>
    <message>
        <source>off the average, %</source>
        <translation>frente al promedio, %</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Causa</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Respuesta</translation>
    </message>
    <message>
        <source>Effect</source>
        <translation>Efecto</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>Intervalo del 95 %</translation>
    </message>
    <message>
        <source>What density may go with</source>
        <translation>Con qué puede variar la densidad</translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>Scoop calibration</source>
        <translation>Calibración de medidas</translation>
    </message>
    <message>
        <source>Opening …</source>
        <translation>Abriendo …</translation>
    </message>
    <message>
        <source>Not kept yet: “{text}”. Keep it or put it back, then go to another farm.</source>
        <translation>Todavía sin guardar: “{text}”. Guárdelo o déjelo como estaba, y después vaya a otro establo.</translation>
    </message>
    <message>
        <source>Not kept yet: “{text}”. Close without it?</source>
        <translation>Todavía sin guardar: “{text}”. ¿Cerrar sin guardarlo?</translation>
    </message>
    <message>
        <source>Close without it</source>
        <translation>Cerrar sin guardarlo</translation>
    </message>
    <message>
        <source>The server cannot be reached. You see what this computer last read of it; weighings and checks of the mix wait here and are sent when it is back.</source>
        <translation>No hay conexión con el servidor. Se ve lo último que esta computadora leyó de él; las pesadas y las revisiones de la mezcla esperan aquí y se envían cuando vuelva.</translation>
    </message>
    <message>
        <source>No program on this computer opens it. It is here: {place}</source>
        <translation>Ningún programa de esta computadora lo abre. Está aquí: {place}</translation>
    </message>
</context>
<context>
    <name>WireForm</name>
    <message>
        <source>How its lines loo&amp;k</source>
        <translation>Cómo son s&amp;us líneas</translation>
    </message>
    <message>
        <source>Try a line, as the scale sen&amp;ds it</source>
        <translation>Pruebe una línea, tal &amp;y como la manda la báscula</translation>
    </message>
    <message>
        <source>Keep and l&amp;isten</source>
        <translation>&amp;Guardar y escuchar</translation>
    </message>
    <message>
        <source>A scale that works as a keyboard needs nothing here: put the cursor into the weight field and press its key. If it types more than the weight, say below how its lines look. For a scale on a serial port choose the port, and its speed as its handbook says.</source>
        <translation>Una báscula que funciona como teclado no necesita nada aquí: ponga el cursor en el campo del peso y oprima su tecla. Si escribe más que el peso, diga abajo cómo son sus líneas. Para una báscula en un puerto serie elija el puerto, y su velocidad como dice su manual.</translation>
    </message>
    <message>
        <source>Leave it blank when a line holds only the number and its unit. Else write the line with names for what changes: {weight} the number, {unit} the unit, {any} anything, {still:ST} a word (here ST) that stands there only while the scale stands still. Example: {still:ST},{any},{weight} {unit} reads “{sample}”.</source>
        <translation>Déjelo en blanco cuando una línea tiene solo el número y su unidad. Si no, escriba la línea y, en lugar de lo que cambia, estos nombres tal cual, en inglés y entre llaves: {weight} el número, {unit} la unidad, {any} cualquier cosa, {still:ST} una palabra (aquí ST) que está ahí solo mientras la báscula está quieta. Ejemplo: {still:ST},{any},{weight} {unit} lee “{sample}”.</translation>
    </message>
    <message>
        <source>S&amp;peed and frame</source>
        <translation>&amp;Velocidad y trama</translation>
    </message>
    <message>
        <source>Enter each wei&amp;ght at once, without the Enter key</source>
        <translation>&amp;Anotar cada peso al instante, sin la tecla Enter</translation>
    </message>
    <message>
        <source>&amp;Use no scale</source>
        <translation>&amp;Sin báscula</translation>
    </message>
    <message>
        <source>Po&amp;rt</source>
        <translation>Puert&amp;o</translation>
    </message>
    <message>
        <source>Not kept yet</source>
        <translation>Sin guardar</translation>
    </message>
    <message>
        <source>Write {weight} once, where the number stands.</source>
        <translation>Escriba {weight} una vez, donde está el número.</translation>
    </message>
    <message>
        <source>{part} stands there twice. Write it once.</source>
        <translation>{part} aparece dos veces. Escríbalo una vez.</translation>
    </message>
    <message>
        <source>“{part}” is no name of a place. Use weight, unit, any or still:ST.</source>
        <translation>“{part}” no es el nombre de ningún campo. Use weight, unit, any o still:ST.</translation>
    </message>
    <message>
        <source>A brace is not closed. Write each place like {weight}.</source>
        <translation>Una llave no está cerrada. Escriba cada campo como {weight}.</translation>
    </message>
    <message>
        <source>Write {any} two times at most.</source>
        <translation>Escriba {any} dos veces como máximo.</translation>
    </message>
    <message>
        <source>That is too long for a line of a scale.</source>
        <translation>Es demasiado largo para una línea de báscula.</translation>
    </message>
    <message>
        <source>This line does not fit: it would be passed over.</source>
        <translation>Esta línea no coincide: se pasaría por alto.</translation>
    </message>
    <message>
        <source>“{text}” is no weight: it would be passed over.</source>
        <translation>“{text}” no es un peso: se pasaría por alto.</translation>
    </message>
    <message>
        <source>{weight}, but the scale moves: it would be passed over.</source>
        <translation>{weight}, pero la báscula se mueve: se pasaría por alto.</translation>
    </message>
    <message>
        <source>Understood: {weight}</source>
        <translation>Entendido: {weight}</translation>
    </message>
    <message>
        <source>Last line: “{line}”, {meaning}</source>
        <translation>Última línea: “{line}”, {meaning}</translation>
    </message>
    <message>
        <source>Listening at {port}.</source>
        <translation>Escuchando en {port}.</translation>
    </message>
    <message>
        <source>No scale with a cable.</source>
        <translation>Sin báscula con cable.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>not weighed in</source>
        <translation>sin pesar</translation>
    </message>
    <message>
        <source>from a file</source>
        <translation>de un archivo</translation>
    </message>
    <message>
        <source>being weighed</source>
        <translation>en pesada</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>en espera</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>en uso</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>terminado</translation>
    </message>
    <message>
        <source>line drawn, label to come</source>
        <translation>línea trazada, falta la etiqueta</translation>
    </message>
    <message>
        <source>used level</source>
        <translation>se usa al ras</translation>
    </message>
    <message>
        <source>used level, label to come</source>
        <translation>se usa al ras, falta la etiqueta</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>marcada</translation>
    </message>
    <message>
        <source>not marked yet</source>
        <translation>aún sin marcar</translation>
    </message>
    <message>
        <source>being weighed in anew</source>
        <translation>se está pesando otra vez</translation>
    </message>
    <message>
        <source>no line</source>
        <translation>sin línea</translation>
    </message>
    <message>
        <source>{state} (once that is done, say so under Today)</source>
        <translation>{state} (cuando esté lista, dígalo en Hoy)</translation>
    </message>
    <message>
        <source>Weigh only the one scoopful to the line, about {mass}, without the level ones before it.</source>
        <translation>Pese solo la llenada hasta la línea, unos {mass}, sin las que van antes al ras.</translation>
    </message>
    <message>
        <source>the lot</source>
        <translation>el lote</translation>
    </message>
    <message>
        <source>scoop and scale</source>
        <translation>medida y báscula</translation>
    </message>
    <message>
        <source>level fills</source>
        <translation>llenadas al ras</translation>
    </message>
    <message>
        <source>the mark</source>
        <translation>la línea</translation>
    </message>
    <message>
        <source>fills to the line</source>
        <translation>llenadas hasta la línea</translation>
    </message>
    <message>
        <source>to the line</source>
        <translation>hasta la línea</translation>
    </message>
    <message>
        <source>{lines} and {last}</source>
        <translation>{lines} y {last}</translation>
    </message>
    <message>
        <source>the old line ({lines})</source>
        <translation>la línea anterior ({lines})</translation>
    </message>
    <message>
        <source>the old lines ({lines})</source>
        <translation>las líneas anteriores ({lines})</translation>
    </message>
    <message>
        <source>{count} struck at the rim + 1 to the line</source>
        <translation>{count} al ras del borde + 1 hasta la línea</translation>
    </message>
    <message>
        <source>{line} for {target}</source>
        <translation>a {line} para {target}</translation>
    </message>
    <message>
        <source>The label has one more line to draw: {lines}.</source>
        <translation>La etiqueta tiene otra línea por trazar: {lines}.</translation>
    </message>
    <message>
        <source>The label has more lines to draw: {lines}.</source>
        <translation>La etiqueta tiene más líneas por trazar: {lines}.</translation>
    </message>
    <message>
        <source>was of another lot</source>
        <translation>era de otro lote</translation>
    </message>
    <message>
        <source>bag not stirred</source>
        <translation>costal sin revolver</translation>
    </message>
    <message>
        <source>Watch a batch being mixed: is each scoopful filled as the label says, are as many taken as the chart says?</source>
        <translation>Vea cómo se hace una mezcla: ¿se llena cada medida como dice la etiqueta?, ¿se echan tantas como dice la tabla?</translation>
    </message>
    <message>
        <source>sign-off</source>
        <translation>firma</translation>
    </message>
    <message>
        <source>put aside</source>
        <translation>apartado</translation>
    </message>
    <message>
        <source>bears another lot&apos;s line now</source>
        <translation>ya lleva la línea de otro lote</translation>
    </message>
    <message>
        <source>struck level</source>
        <translation>al ras</translation>
    </message>
    <message>
        <source>tapped</source>
        <translation>golpeada</translation>
    </message>
    <message>
        <source>{count} tote</source>
        <translation>{count} supersaco</translation>
    </message>
    <message>
        <source>{count} totes</source>
        <translation>{count} supersacos</translation>
    </message>
    <message>
        <source>{count} bag</source>
        <translation>{count} costal</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation>{count} costales</translation>
    </message>
    <message>
        <source>{packages} of {mass}</source>
        <translation>{packages} de {mass}</translation>
    </message>
    <message>
        <source>{count} level</source>
        <translation>{count} al ras</translation>
    </message>
    <message>
        <source>{held} ({count} for {target})</source>
        <translation>{held} ({count} para {target})</translation>
    </message>
    <message>
        <source>typed wrong</source>
        <translation>mal anotado</translation>
    </message>
    <message>
        <source>spilled</source>
        <translation>se derramó</translation>
    </message>
    <message>
        <source>not struck level</source>
        <translation>no quedó al ras</translation>
    </message>
    <message>
        <source>not filled to the line</source>
        <translation>no llegó justo a la línea</translation>
    </message>
    <message>
        <source>scale not at zero</source>
        <translation>báscula sin cero</translation>
    </message>
</context>
<context>
    <name>_Counted</name>
    <message numerus="yes">
        <source>%n fills</source>
        <translation>
            <numerusform>%n llenada</numerusform>
            <numerusform>%n llenadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The server cannot be reached. %n entries since {since} are kept on this computer and will be sent. Go on weighing; sign-off waits for the server.</source>
        <translation>
            <numerusform>No hay conexión con el servidor. %n anotación del {since} está guardada en esta computadora y se enviará. Siga pesando; la firma espera al servidor.</numerusform>
            <numerusform>No hay conexión con el servidor. %n anotaciones desde el {since} están guardadas en esta computadora y se enviarán. Siga pesando; la firma espera al servidor.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries since {since} wait on this computer for the server. They stay here and will be sent.</source>
        <translation>
            <numerusform>%n anotación espera al servidor en esta computadora desde el {since}. Se queda aquí y se enviará.</numerusform>
            <numerusform>%n anotaciones esperan al servidor en esta computadora desde el {since}. Se quedan aquí y se enviarán.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lots</source>
        <translation>
            <numerusform>%n lote</numerusform>
            <numerusform>%n lotes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n trials</source>
        <translation>
            <numerusform>%n prueba</numerusform>
            <numerusform>%n pruebas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n weighings</source>
        <translation>
            <numerusform>%n pesada</numerusform>
            <numerusform>%n pesadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n scoopfuls</source>
        <translation>
            <numerusform>%n medida</numerusform>
            <numerusform>%n medidas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them to the line before</source>
        <translation>
            <numerusform>%n de ellas hasta la línea anterior</numerusform>
            <numerusform>%n de ellas hasta la línea anterior</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them to the first try</source>
        <translation>
            <numerusform>%n de ellas hasta el primer intento</numerusform>
            <numerusform>%n de ellas hasta el primer intento</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The server did not take %n entries. They are kept on this computer: Set-up, Records tells which and why.</source>
        <translation>
            <numerusform>El servidor no aceptó %n anotación. Está guardada en esta computadora: Ajustes, Registros dice cuál y por qué.</numerusform>
            <numerusform>El servidor no aceptó %n anotaciones. Están guardadas en esta computadora: Ajustes, Registros dice cuáles y por qué.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries are on this computer alone and count nowhere. Enter again what is still right.</source>
        <translation>
            <numerusform>%n anotación está solo en esta computadora y no cuenta en ninguna parte. Anótela de nuevo si sigue siendo correcta.</numerusform>
            <numerusform>%n anotaciones están solo en esta computadora y no cuentan en ninguna parte. Anote de nuevo lo que siga siendo correcto.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>And %n more: Set-up, Records, Check now tells each.</source>
        <translation>
            <numerusform>Y %n más: la dice Revisar ahora, en Ajustes, Registros.</numerusform>
            <numerusform>Y %n más: las dice Revisar ahora, en Ajustes, Registros.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The server answers. It holds the records of %n farms.</source>
        <translation>
            <numerusform>El servidor responde. Contiene los registros de %n establo.</numerusform>
            <numerusform>El servidor responde. Contiene los registros de %n establos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bags</source>
        <translation>
            <numerusform>%n costal</numerusform>
            <numerusform>%n costales</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n calves</source>
        <translation>
            <numerusform>%n becerra</numerusform>
            <numerusform>%n becerras</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The wall charts of {name} (print no. {numbers}) are out of date.</source>
        <translation>
            <numerusform>La tabla de pared de {name} (impreso n.º {numbers}) ya no sirve.</numerusform>
            <numerusform>Las tablas de pared de {name} (impresos n.º {numbers}) ya no sirven.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The lot sheets of lot {name} (print no. {numbers}) are out of date: the lot was weighed in anew.</source>
        <translation>
            <numerusform>La hoja del lote {name} (impreso n.º {numbers}) ya no sirve: el lote se pesó otra vez.</numerusform>
            <numerusform>Las hojas del lote {name} (impresos n.º {numbers}) ya no sirven: el lote se pesó otra vez.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n feedings</source>
        <translation>
            <numerusform>%n toma</numerusform>
            <numerusform>%n tomas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n checks</source>
        <translation>
            <numerusform>%n revisión</numerusform>
            <numerusform>%n revisiones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows saved.</source>
        <translation>
            <numerusform>Se guardó %n fila.</numerusform>
            <numerusform>Se guardaron %n filas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n older findings are not listed; their lots are marked in the picture.</source>
        <translation>
            <numerusform>%n hallazgo anterior no aparece en la lista; su lote está marcado en la gráfica.</numerusform>
            <numerusform>%n hallazgos anteriores no aparecen en la lista; sus lotes están marcados en la gráfica.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lots without that day not shown; it is entered on the page of the lots.</source>
        <translation>
            <numerusform>%n lote sin ese día no aparece; el día se anota en la página de lotes.</numerusform>
            <numerusform>%n lotes sin ese día no aparecen; el día se anota en la página de lotes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of the whole lot nothing is sure yet: about %n more spot fills, from other bags, would tell.</source>
        <translation>
            <numerusform>Del lote entero todavía no se sabe lo suficiente: lo diría %n llenada de control más, de otro costal.</numerusform>
            <numerusform>Del lote entero todavía no se sabe lo suficiente: lo dirían unas %n llenadas de control más, de otros costales.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minutes</source>
        <translation>
            <numerusform>%n minuto</numerusform>
            <numerusform>%n minutos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Lot {lot}: enough for %n days</source>
        <translation>
            <numerusform>El lote {lot} alcanza para %n día</numerusform>
            <numerusform>El lote {lot} alcanza para %n días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>And %n days in lot {lot}, weighed in.</source>
        <translation>
            <numerusform>Y %n día en el lote {lot}, ya pesado.</numerusform>
            <numerusform>Y %n días en el lote {lot}, ya pesado.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>And %n days in lot {lot}, not weighed in yet.</source>
        <translation>
            <numerusform>Y %n día en el lote {lot}, todavía sin pesar.</numerusform>
            <numerusform>Y %n días en el lote {lot}, todavía sin pesar.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Lot {lot}, enough for %n days more, has to be weighed in by then.</source>
        <translation>
            <numerusform>El lote {lot}, que alcanza para %n día más, tiene que estar pesado para entonces.</numerusform>
            <numerusform>El lote {lot}, que alcanza para %n días más, tiene que estar pesado para entonces.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The next {days} days take %n bags more than there are.</source>
        <translation>
            <numerusform>En los próximos {days} días falta %n costal.</numerusform>
            <numerusform>En los próximos {days} días faltan %n costales.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The next {days} days take %n totes more than there are.</source>
        <translation>
            <numerusform>En los próximos {days} días falta %n supersaco.</numerusform>
            <numerusform>En los próximos {days} días faltan %n supersacos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>By count and plans about %n bags of lot {old} are left. Do they stay, to be fed later?</source>
        <translation>
            <numerusform>Según la cuenta y los planes queda cerca de %n costal del lote {old}. ¿Se queda, para usarlo después?</numerusform>
            <numerusform>Según la cuenta y los planes quedan unos %n costales del lote {old}. ¿Se quedan, para usarlos después?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bags of lot {number} were counted today. Are they used up?</source>
        <translation>
            <numerusform>Hoy se contó %n costal del lote {number}. ¿Ya se acabó?</numerusform>
            <numerusform>Hoy se contaron %n costales del lote {number}. ¿Ya se acabaron?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>By count and plans about %n bags of lot {number} are left. Are they used up?</source>
        <translation>
            <numerusform>Según la cuenta y los planes queda cerca de %n costal del lote {number}. ¿Ya se acabó?</numerusform>
            <numerusform>Según la cuenta y los planes quedan unos %n costales del lote {number}. ¿Ya se acabaron?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Besides, about %n bags of lot {lot} are left. To feed them: Lots, Back into use.</source>
        <translation>
            <numerusform>Además, queda cerca de %n costal del lote {lot}. Para usarlo: Lotes, De nuevo en uso.</numerusform>
            <numerusform>Además, quedan unos %n costales del lote {lot}. Para usarlos: Lotes, De nuevo en uso.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Powder of lot {lot} for %n days.</source>
        <translation>
            <numerusform>Hay polvo del lote {lot} para %n día.</numerusform>
            <numerusform>Hay polvo del lote {lot} para %n días.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more fills would do, each from a bag not yet dipped.</source>
        <translation>
            <numerusform>Bastaría %n llenada más, de otro costal todavía sin pesar.</numerusform>
            <numerusform>Bastarían %n llenadas más, cada una de otro costal todavía sin pesar.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more fills would do, from any bag.</source>
        <translation>
            <numerusform>Bastaría %n llenada más, de cualquier costal.</numerusform>
            <numerusform>Bastarían %n llenadas más, de cualquier costal.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{fills} from the %n open bags</source>
        <translation>
            <numerusform>{fills} del mismo costal abierto</numerusform>
            <numerusform>{fills} de los mismos %n costales abiertos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Too close to say whether the old line will do: weigh %n more level fills, or draw the new line.</source>
        <translation>
            <numerusform>Está muy justo para decir si la línea anterior sirve: pese %n llenada más al ras, o trace la línea nueva.</numerusform>
            <numerusform>Está muy justo para decir si la línea anterior sirve: pese %n llenadas más al ras, o trace la línea nueva.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cannot tell yet: weigh %n more fills to the line.</source>
        <translation>
            <numerusform>Todavía no se sabe: pese %n llenada más hasta la línea.</numerusform>
            <numerusform>Todavía no se sabe: pese %n llenadas más hasta la línea.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cannot tell yet: weigh %n more fills to the line, each from a bag not yet dipped for it.</source>
        <translation>
            <numerusform>Todavía no se sabe: pese %n llenada más hasta la línea, de otro costal todavía sin pesar hasta ella.</numerusform>
            <numerusform>Todavía no se sabe: pese %n llenadas más hasta la línea, cada una de otro costal todavía sin pesar hasta ella.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n level scoopfuls, then one to a line {down} down the wall from the rim.</source>
        <translation>
            <numerusform>%n medida al ras y luego una hasta la línea, {down} bajo el borde.</numerusform>
            <numerusform>%n medidas al ras y luego una hasta la línea, {down} bajo el borde.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n equal scoopfuls to one line, {down} down the wall from the rim.</source>
        <translation>
            <numerusform>%n medida hasta una línea, {down} bajo el borde.</numerusform>
            <numerusform>%n medidas iguales hasta una línea, {down} bajo el borde.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n level scoopfuls, no line needed: {share} against the target.</source>
        <translation>
            <numerusform>%n medida al ras, sin línea: {share} respecto al peso deseado.</numerusform>
            <numerusform>%n medidas al ras, sin línea: {share} respecto al peso deseado.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The line would be so near the floor that it cannot be read well. Take %n level scoopfuls and no more: that is {share} against the target. Or use a smaller scoop.</source>
        <translation>
            <numerusform>La línea quedaría tan cerca del fondo que no se lee bien. Tome %n medida al ras y nada más: eso es {share} respecto al peso deseado. O use una medida más chica.</numerusform>
            <numerusform>La línea quedaría tan cerca del fondo que no se lee bien. Tome %n medidas al ras y nada más: eso es {share} respecto al peso deseado. O use una medida más chica.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>This scale&apos;s step is coarse for one scoopful. Weigh %n scoopfuls together each time, and say so beside the weight.</source>
        <translation>
            <numerusform>La división de esta báscula es gruesa para una sola medida. Pese %n medida cada vez y anótelo junto al peso.</numerusform>
            <numerusform>La división de esta báscula es gruesa para una sola medida. Pese %n medidas a la vez y anótelo junto al peso.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>%n anotación</numerusform>
            <numerusform>%n anotaciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries were read out of the damaged file and brought over.</source>
        <translation>
            <numerusform>Se leyó %n anotación del archivo dañado y se trajo.</numerusform>
            <numerusform>Se leyeron %n anotaciones del archivo dañado y se trajeron.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more come from the copy of {day}.</source>
        <translation>
            <numerusform>%n más viene de la copia del {day}.</numerusform>
            <numerusform>%n más vienen de la copia del {day}.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries are lost:</source>
        <translation>
            <numerusform>Se perdió %n anotación:</numerusform>
            <numerusform>Se perdieron %n anotaciones:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries were brought in.</source>
        <translation>
            <numerusform>Se trajo %n anotación.</numerusform>
            <numerusform>Se trajeron %n anotaciones.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were there already.</source>
        <translation>
            <numerusform>%n ya estaba.</numerusform>
            <numerusform>%n ya estaban.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new lots.</source>
        <translation>
            <numerusform>%n lote nuevo.</numerusform>
            <numerusform>%n lotes nuevos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new fills.</source>
        <translation>
            <numerusform>%n llenada nueva.</numerusform>
            <numerusform>%n llenadas nuevas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lots were brought in.</source>
        <translation>
            <numerusform>Se trajo %n lote.</numerusform>
            <numerusform>Se trajeron %n lotes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fills were brought in.</source>
        <translation>
            <numerusform>Se trajo %n llenada.</numerusform>
            <numerusform>Se trajeron %n llenadas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lots are there already and stay as they are.</source>
        <translation>
            <numerusform>%n lote ya estaba y queda como está.</numerusform>
            <numerusform>%n lotes ya estaban y quedan como están.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fills are there already.</source>
        <translation>
            <numerusform>%n llenada ya estaba.</numerusform>
            <numerusform>%n llenadas ya estaban.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cells have to be corrected in the file first; nothing is brought in before.</source>
        <translation>
            <numerusform>Primero hay que corregir %n celda en el archivo; antes no se trae nada.</numerusform>
            <numerusform>Primero hay que corregir %n celdas en el archivo; antes no se trae nada.</numerusform>
        </translation>
    </message>
</context>
</TS>
