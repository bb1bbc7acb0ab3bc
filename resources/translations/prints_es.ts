<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
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
            <translation>Hoja {page} de {pages}</translation>
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
            <source>Scoop: {name}</source>
            <translation>Medida: {name}</translation>
        </message>
        <message>
            <source>Label {number}</source>
            <translation>Etiqueta {number}</translation>
        </message>
        <message>
            <source>Label {number} · replaces {old}</source>
            <translation>Etiqueta {number} · reemplaza la {old}</translation>
        </message>
        <message>
            <source>+ {count} level</source>
            <translation>+ {count} al ras</translation>
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
            <source>Cut along the thin lines. Dry the scoop, put the black edge flush with the rim and press down the wall. Take off every older label and line.</source>
            <translation>Corte por las líneas delgadas. Seque la medida, ponga la orilla negra pareja con el borde y pegue hacia abajo por la pared. Quite toda etiqueta y línea anterior.</translation>
        </message>
        <message>
            <source>Cut along the thin lines. Dry the scoop, put the black edge flush with the rim all round and let each end overlap to the dashed line, lines level. Take off every older label and line.</source>
            <translation>Corte por las líneas delgadas. Seque la medida, ponga la orilla negra pareja con el borde todo alrededor y traslape cada extremo hasta la línea punteada, con las líneas a nivel. Quite toda etiqueta y línea anterior.</translation>
        </message>
        <message>
            <source>Measure both bars first: one 50 mm, one 2 in. If either is off, throw the sheet away and print again at 100 %, without “fit to page”.</source>
            <translation>Primero mida las dos barras: una de 50 mm, una de 2 pulg. Si alguna no mide eso, tire la hoja e imprima otra vez al 100 %, sin “ajustar a la página”.</translation>
        </message>
        <message>
            <source>Mixing chart</source>
            <translation>Tabla de mezcla</translation>
        </message>
        <message>
            <source>Chart {number}</source>
            <translation>Tabla {number}</translation>
        </message>
        <message>
            <source>Take down chart {old}</source>
            <translation>Quite la tabla {old}</translation>
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
            <source>TODAY</source>
            <translation>HOY</translation>
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
            <source>water line {length} below the rim</source>
            <translation>línea del agua a {length} bajo el borde</translation>
        </message>
        <message>
            <source>mix line {length} below the rim</source>
            <translation>línea de la mezcla a {length} bajo el borde</translation>
        </message>
        <message>
            <source>makes {volume}</source>
            <translation>rinde {volume}</translation>
        </message>
        <message>
            <source>{volume} of water per calf</source>
            <translation>{volume} de agua por becerra</translation>
        </message>
        <message>
            <source>{solids} solids, powder by weight of mix</source>
            <translation>{solids} de sólidos, polvo en peso de la mezcla</translation>
        </message>
        <message>
            <source>{solids} dry matter by weight of mix</source>
            <translation>{solids} de materia seca en peso de la mezcla</translation>
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
            <source>{volume} of mix per calf</source>
            <translation>{volume} de mezcla por becerra</translation>
        </message>
        <message>
            <source>{powder} of powder on top of every {volume} of water</source>
            <translation>{powder} de polvo por cada {volume} de agua, aparte del agua</translation>
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
            <source>Water of {limit} or hotter scalds. Keep people and calves away from it.</source>
            <translation>El agua a {limit} o más quema. Aleje de ella a la gente y a las becerras.</translation>
        </message>
        <message>
            <source>Follow the product's label. It comes before this sheet.</source>
            <translation>Siga la etiqueta del producto: manda sobre esta hoja.</translation>
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
            <translation>Nada de leche ni sustituto por sonda, salvo que lo indique el veterinario.</translation>
        </message>
        <message>
            <source>Feed at once and keep the mix moving.</source>
            <translation>Dé la mezcla enseguida y no deje de moverla.</translation>
        </message>
        <message>
            <source>Do not breathe the dust; no flames near it.</source>
            <translation>No respire el polvo; nada de llamas cerca.</translation>
        </message>
    </context>
</TS>
