<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>MixChecks</source>
        <comment>Type the temperature of the mix too: a density tells the solids only with it.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixChecks</source>
        <comment>Enter the jug and its volume under Instruments first.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixChecks</source>
        <comment>The shape of this vessel is not known, so a level tells no volume: type the volume.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>As it should be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Too thin</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Too strong</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Cannot tell yet</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>MixWords</source>
        <comment>{solids} solids as mixed, surely between {low} and {high}. Wanted: {target}, give or take {tolerance}.</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>own line</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>whole milk&apos;s line</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Brix + 2</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>hydrometer</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>weighed jug</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>finished volume</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>By the farm&apos;s own line for this powder, from {count} weighed mixes.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>MixWords</source>
        <comment>By a published line for whole milk (0.9984 Brix + 2.08). Milk replacers differ from it: make an own line.</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>By the rule of thumb Brix + 2, which is rough: make an own line.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>By the hydrometer, through the density of the mix.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>By the weighed jug, through the density of the mix.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>By the finished volume, the powder taken for right: it finds wrong water, never wrong powder.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>{way} {solids} ± {half}</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>This instrument was never checked in plain water: its zero may be off.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Its last check in plain water is more than a week old: do it again.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>It was never checked in a sugar solution.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Its last check in a sugar solution is more than three months old.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>It read the sugar solution wrong. Do not trust it until it was cleaned and checked again.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>It does not compensate for temperature: type how warm the instrument is.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>This reading lies beyond the weighed mixes that the line was made from.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>One more drop would tell, if it reads like these.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>{count} more drops would tell, if they read like these.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Check the instrument in plain water; then this reading tells more.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>More drops do not help. An own line from weighed mixes would tell; see the tab Own line.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Add weighed mixes to the own line; they make it surer.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>It is too near the limit for this instrument. Weigh the powder of the next batch instead.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>A mean reading between {low} and {high} Brix would surely be right.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>The first pail and the last are alike.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>MixWords</source>
        <comment>The first pail is stronger than the last: powder settles. Agitate gently while you feed, and feed at once after mixing.</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>MixWords</source>
        <comment>The last pail is stronger than the first: fat rises, from standing or from over-mixing. Mix no longer than the label says, agitate gently, feed at once.</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>First pail against last: cannot tell. Read three or more drops of each, from fresh samples.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>{what}: that would give {solids}</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Mixed as on the chart, the reading is off by chance</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>The scoop was filled to the line of the lot before</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>One scoopful too few</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>One scoopful too many</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>The finished volume was drawn as water</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Water and powder together were filled up to the mark for the water</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Powder for one calf fewer than the water</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Powder for one calf more than the water</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>The scoop was struck level in place of filled to its line</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>fits well</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>possible</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>does not fit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>MixWords</source>
        <comment>This is hot enough to scald skin. Keep hands and children away, and never feed it before it has cooled.</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Too hot to drink: let it cool. Calves want it at 100 to 101 °F (38 °C).</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Too cool for calves: below 85 °F (29 °C). They want 100 to 101 °F (38 °C).</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Above 17 % solids calves risk scours. Do not feed it like this.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Below 12 % solids: weaker than what is usually aimed at.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>MixWords</source>
        <comment>So much powder brings the osmolality, by an estimate from the label, above 400 mOsm/kg; that can upset the gut. A refractometer does not measure it.</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>MixWords</source>
        <comment>Calves under two weeks are the first to suffer from a strong mix, and all need free water. The label and your veterinarian decide.</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>The vessel would run over. First take out {volume} of mix into another vessel.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Add {volume} of water at mixing temperature and stir gently.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Then there are {volume} in the vessel, at about {temperature}. Read it again.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Add {weight} of powder, weighed, and mix it in.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>Add {weight} of powder ({scoops}) and mix it in.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>{count} × {scoop} struck level</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>{count} × {scoop} to the mark</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MixWords</source>
        <comment>{count} × {scoop} tapped</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>App</name>
    <message>
        <source>Look without writing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something in the program went wrong, and it was written to the log. What you have kept is safe. Go to another page and come back; if it happens again, close the program and start it anew.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Ask</name>
    <message>
        <source>Scoop calibration</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BareField</name>
    <message>
        <source>{count} readings, mean {mean}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BatchForm</name>
    <message>
        <source>Mixed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Powder ÷ mix, as mixed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solids wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give or take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not one of ours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BatchModel</name>
    <message>
        <source>Calves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Powder by weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scoopfuls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{calves}, today</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Medicated powder: the product label and the feed tag say how much, for which calves and for how long; ask the veterinarian before feeding it otherwise. Keep it apart and mark the scoop.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CheckPanel</name>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep this check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clea&amp;r</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot {number} {product}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The check is kept: {verdict}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No lot is in use: sign off a weigh-in first; checks are kept for a lot.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Commands</name>
    <message>
        <source>entering {weight}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>striking out {weight}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counting {weight} again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DayField</name>
    <message>
        <source>2 Mar 2026 or 2026-03-02</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This can be read two ways. Write {one} or {other}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day} is still to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day} is too long ago.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such day. Write it like 2 Mar 2026.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the day with month and full year, like 2 Mar 2026 or 2026-03-02.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FarmForm</name>
    <message>
        <source>Name of the farm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Farm units: oz, lb, qt, gal, in, °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Metric: g, kg, L, mm, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the powder of a feeding may be from its target.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tolerance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water is measured to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You can always type either, like 10 oz or 283 g. What you typed is kept as typed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Numbers are shown in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper in the printer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FarmStep</name>
    <message>
        <source>Name of the farm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Farm units: oz, lb, qt, gal, in, °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Metric: g, kg, L, mm, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Either can be typed at any time, and the choice can be changed later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Numbers are shown in</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FillPlot</name>
    <message>
        <source>Plot of {count} fills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plot of {count} fills, mean {mean}, 95 % interval {low} to {high}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FillTable</name>
    <message>
        <source>No.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typed as {typed}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>struck out: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>odd: look at it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} scoopfuls together</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FillsModel</name>
    <message>
        <source>Bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Struck out because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spot fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{weight} for {count} scoopfuls</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FindingsPanel</name>
    <message>
        <source>mean of {fills} from {bags}
between {low} and {high} (95 % interval)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more scoopful may weigh {low} to {high}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GroupEditor</name>
    <message>
        <source>Leave this group out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name, like “under two weeks”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feedings a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume for each calf and feeding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finished mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water, powder on top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave group {number} out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose which of the two the volume is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{water} of water, {mix} with its powder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This volume is</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>History</name>
    <message>
        <source>entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bags and their weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>display step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>capacity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shape and dimensions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far it may be filled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in use or retired</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arrived on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>label composition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>medicated or not</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finished or not</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HistoryList</name>
    <message>
        <source>What was kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day}, {who}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{when}: {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{told} ({why})</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LevelPanel</name>
    <message>
        <source>Take two fills each from four bags.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bulk density {density}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LotCard</name>
    <message>
        <source>The line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A lot is in use once its weigh-in is signed off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{scoop}: no line yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{scoop}: {line} down the wall for {target}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line of another lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{scoop}: do not use it for this lot</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LotChooser</name>
    <message>
        <source>Every new lot number is weighed anew: its powder packs differently from the last one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No lot is waiting. A newly delivered one is entered under Lots.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter a newly &amp;delivered lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arrived on {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weigh-in left at: {step}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not weighed in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh in again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LotDetail</name>
    <message>
        <source>Fills of this lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts of the lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label and history</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A weigh-in is under way; it stands at this step: {step}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is signed off yet for this lot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed off on {day} by {who}: {fills} fills from {bags} bags.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{low} to {high} (95 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{scoop}, struck level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bulk density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{scoop}, line down the wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for {target}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrived {arrived}, made {made}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last of it was fed on {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>protein</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label: {parts}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LotForm</name>
    <message>
        <source>Lot number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As printed on the bag or its tag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrived on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Totes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight of each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Often:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Protein</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Medicated powder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comes in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the label, percent of the powder. Leave empty what it does not say; it can follow later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label composition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the lot number: each lot is weighed for itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was made after it arrived. Check both days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Protein, fat, fibre, ash and moisture together are more than 100 %. Check them.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LotsModel</name>
    <message>
        <source>Lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Status</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Density ±, g/mL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LotsPage</name>
    <message>
        <source>Lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct lot {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot {number} is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part of a number, product, status …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>We&amp;igh in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Correct</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Go back without keeping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fi&amp;nd</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No lot yet. Add the one that stands in the store.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back into &amp;use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on we&amp;ighing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Was the last of lot {number} fed? It can be taken back into use at any time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot {number} is entered already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot {number} is entered already. If more of it came, correct its number of bags. Open it? What you typed here stays until you keep it or go back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MixCheckPage</name>
    <message>
        <source>Mix check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts of the mix check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This &amp;mix</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PagePreview</name>
    <message>
        <source>Preview of the print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} pages</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PaperChoice</name>
    <message>
        <source>Scoop l&amp;abels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wall c&amp;hart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L&amp;ot sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pla&amp;n</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copies of each label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>English</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spanish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>English and Spanish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For {scoop}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pape&amp;r</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lang&amp;uage of the paper</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PaperPanel</name>
    <message>
        <source>Print at 100 %, never “fit to page”, then check the bar with a ruler. Where the bar is off, throw the sheet away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as P&amp;DF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Go back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as {name}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sent to {name}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the printer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For lot {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No lot is signed off yet. Weigh one in and sign it off, then print.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose at least one scoop that has a line for this lot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no plan yet. Make one on the page of the batch tables.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A record of what was weighed; it bears no number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This will be no. {number}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This will be no. {number}. It replaces no. {old}: take that one down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{scoop}: {told}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no. {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanForm</name>
    <message>
        <source>Na&amp;me of the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a group of calves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Go back without keeping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put this plan asi&amp;de</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write whole numbers with commas between, like 109, 111, 120.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last count is below the first one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: no limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice: 108–110 °F (42–43 °C) for mixing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperat&amp;ure of the water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mixed on top, for what stays behind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Extra for &amp;hoses and pails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mi&amp;xed in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessels are entered in the set-up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;First count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last c&amp;ount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;In steps of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Always in the table, like 109, 111, 120. Today&apos;s count is in it anyway.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Counts of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water and vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows of the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put {name} aside? It leaves the list; what was printed from it stays in the records.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put aside</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Pourings</name>
    <message>
        <source>Water weighed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water measured in a jug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour water in by steps, the last one up to the rim. At each step note all the water that is in the scoop by then, and how high it stands above the floor, along the wall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill in both fields of at least three steps, without a gap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{step}. water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{step}. height</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>QuantityField</name>
    <message>
        <source>like {example}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RateEditor</name>
    <message>
        <source>Rate, counted as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Powder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on this much water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made up to this much mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in this much mix as fed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Powder by weight of mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry matter by weight of mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same mix is:</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RateWords</name>
    <message>
        <source>powder added on top of water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>powder made up with water to a volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>solids of the mix, as mixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry matter of the mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>powder in the mix as fed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} solids by weight of the mix, as mixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} dry matter by weight of the mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{powder} of powder on {volume} of water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{powder} of powder made up with water to {volume} of mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{powder} of powder in every {volume} of mix as fed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume} of water for each calf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume} of finished mix for each calf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{solids} solids as mixed, {dry} dry matter, {grams} g in a litre of mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>osmolality about {value} mOsm/kg (an estimate: give or take {spread})</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReadingsForm</name>
    <message>
        <source>°Brix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SG (sugar scale)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First pail: drops, in °Brix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last pail: drops, in °Brix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Refractometer at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water drawn at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the calf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix in the vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>or its level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hydrometer floating in the mix, SG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix in the jug, without the jug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Refractometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hydrometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First pail: drops, SG of the refractometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last pail: drops, SG of the refractometer</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ScaleForm</name>
    <message>
        <source>Name of the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The smallest change that it shows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step of the display</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As on its plate, after Max.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Most it weighs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Often:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not more than one step of the display. Check both.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ScoopDrawing</name>
    <message>
        <source>New line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Old line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No scoop to draw yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scoop in cross-section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>down the wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stays where it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moves down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moves up</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ScoopForm</name>
    <message>
        <source>Name of the scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As painted on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diameter inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diameter at the rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diameter at the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out the earlier water weighing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number}. weighing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Better still: fill it to the rim with water and weigh the water, three times. Leave these fields empty to go by the dimensions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume from water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing and the volume appear as you type.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By its dimensions it holds {volume}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By water it holds {volume}. This is what counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dimensions and water differ by {percent}. Measure the inside once more, and see that the scale was zeroed with the empty scoop on it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SeasonModel</name>
    <message>
        <source>Lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SeasonPage</name>
    <message>
        <source>Season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arrived</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>were made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>were weighed in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lots stand at the day they</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open the lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Densities over time; the table beneath has the figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to compare yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here every lot that is signed off stands with its density, so that you see how far lots differ and what a new one does to a feeding. It begins with the first sign-off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next lot will show here how far it is from this one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot {lot} is the first one weighed in: {density}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A level scoop of lot {last} weighs {share} more than one of lot {before}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A level scoop of lot {last} weighs {share} less than one of lot {before}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the line of lot {before} a feeding would weigh {mass} in place of {target} (between {low} and {high}). {verdict}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That line could have stayed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That line had to move.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether that line could have stayed, the fills do not tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} without that day not shown; it is entered on the page of the lots.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oz in a quart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g/mL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Density, {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{fills} fills, {bags} bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot {lot}, {scoop}, {day}: {density}, 95 % interval {interval}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{low} – {high}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Densities of the lots, newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Densities are of powder struck level. Each bar is a 95 % interval: in 19 lots out of 20 the true density lies within it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lots stand at the &amp;day they</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SetupPage</name>
    <message>
        <source>Set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts of the set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Farm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sc&amp;oops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;cales</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Vessels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{step} steps, up to {capacity}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume}, by water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume}, by dimensions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume}, filled to {share}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Retire this scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} will no longer be offered; its weighings stay. Retire this scale?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Retire this scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} will no longer be offered; its marks stay. Retire this scoop?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Retire this vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} will no longer be offered for batches. Retire this vessel?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ShapeChoice</name>
    <message>
        <source>Shape of the scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tapered round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any other</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetView</name>
    <message>
        <source>Group of calves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighed in {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line down the wall: {marks}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and {count} more; see each plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, {calves} calves: {now}, as before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, {calves} calves: {before}  →  {now}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only for this lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No lot is signed off, so this table is by weight only: weigh the powder for each batch. Weigh in the lot that is being fed, and the scoopfuls stand here at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start a wei&amp;gh-in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;I have seen this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume}; {rate}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water at {temperature}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} more than the calves drink, for hoses and pails.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One {vessel} serves at most {calves} calves.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SpotCard</name>
    <message>
        <source>Scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Struck le&amp;vel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the &amp;mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wei&amp;ght of the scoopful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>St&amp;rike it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh the lot in &amp;anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say who weighed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a spot fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened another bag? Stir it up, fill the scoop once and weigh it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spot fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mark still holds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mark no longer holds: weigh the lot in anew and move the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level fills leave it open. Fill the next one to the mark: that tells sooner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not sure yet. One more spot fill from another bag would tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not sure yet. About {count} more spot fills from other bags would tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A feeding weighs {mass}, surely {low} to {high}; wanted {target} ± {tolerance}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bulk density now: {density}, from {bags} bags.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last one differs much from the others. Was it read and typed rightly?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last: {weight}, {way}, {day}, {who}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why is {weight} struck out? It stays visible with the reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is more than this scale weighs. Type it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No powder is as heavy as that. Look at the unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No scoopful is as light as that. Look at the unit.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepFills</name>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scoopfuls together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stri&amp;ke out …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fill lies far from the others. If something went wrong with it, select it and strike it out; if not, let it stand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ba&amp;g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scoop&amp;fuls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E&amp;nter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fills, newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why should {typed} from bag {bag} not count?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Count again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepLot</name>
    <message>
        <source>Read the lot number off the bag in front of you. Open four bags if you can, and stir up powder that has caked or settled: bags differ as well as scoopfuls.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This powder is medicated. Follow its label, the veterinarian and local rules; wear gloves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Powder dust irritates lungs and eyes and can burn in the air: pour slowly, keep dust down and flames away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made on {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arrived on {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your &amp;initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who weighs today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room &amp;humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>if known; it is noted, never corrected for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room &amp;temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>if known</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepMark</name>
    <message>
        <source>Measure from the rim down along the wall and draw the line all round, at eye level. Wipe out the old line, or strike it through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line now on the scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line as drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Drawn as proposed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep the old line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn &amp;elsewhere? Distance down the wall from the rim:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New line for this lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>En&amp;ter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn: {where} down the wall from the rim.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For {target} a feeding; give or take {mass} ({length}) at 95 %. A line {step} higher or lower is {slope} more or less.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepSignOff</name>
    <message>
        <source>Look it over. Signing off freezes this weigh-in: its mark replaces the older ones, and charts and labels printed before are out of date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sign off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the scoop &amp;label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Batch tables and wall chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed off by {by}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No fills to the mark yet: the line rests on the level fills alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scoop, scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mean}, between {low} and {high} (95 % interval); {fills} from {bags}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Struck level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bulk density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} down the wall from the rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mean}, between {low} and {high} (90 % interval)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Old line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type your initials, then sign off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign off all the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No fill to the mark was weighed, so settling is not known and the line may be some percent off. Weigh at least two fills to the mark, or sign off all the same?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fills to the mark do not show yet that the line is on target. Sign off all the same?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed off. Now print the label and the wall chart.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepStrip</name>
    <message>
        <source>Step {number} of {count}: {name}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepTools</name>
    <message>
        <source>Stand the scale level, away from draughts. Set the empty scoop on it and zero it, so that it shows the powder alone. If you have a check weight, weigh it too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The scale stands le&amp;vel and shows zero with the empty scoop on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale reads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Old line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;coop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its name is painted on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sc&amp;ale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target &amp;weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>powder for one feeding, from this scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;heck weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>if you have one: what it should weigh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale &amp;reads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with the check weight on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Old line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>down the wall from the rim; empty if there is none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set &amp;up another scoop or scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fills were already weighed with this scoop. To use another scoop, start a new weigh-in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fills were already weighed on this scale. To use another scale, start a new weigh-in.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TableWords</name>
    <message>
        <source>level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tapped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weigh it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weigh it ({count} scoopfuls)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{batches} × {amount}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} short, give or take {spread}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} over, give or take {spread}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{batches} (1 runs over by {over})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{batches} (1 is too full)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{vessel}: one batch would run over by {over}. Mix {batches} equal batches.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{vessel}: one batch would leave no room for stirring. Mix {batches} equal batches.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water at {temperature} scalds skin within minutes, hotter water within seconds. Wear gloves, keep children away, and let the mix cool to 100–101 °F (38 °C) at the calf. The product label comes first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TablesPage</name>
    <message>
        <source>Batch tables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;rint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A plan says which calves are fed, how much each, and how strong. From it comes the table of water, powder and scoopfuls for every number of calves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Make the first plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No plan yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot {new} was weighed in anew on {day}. Scoopfuls before → now:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot {new} took the place of lot {old} on {day}. Scoopfuls before → now:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outdated on the wall: chart no. {numbers}. Print it anew and take the old one down.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TextField</name>
    <message>
        <source>Type a name, so that it can be told from others.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ThingsTab</name>
    <message>
        <source>What is entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;how retired</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;ut back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>retired</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back &amp;into use</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ToMarkPanel</name>
    <message>
        <source>&amp;Move the line there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill to the line, level by a shake, weigh. Two bags or more.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today, {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The set-up is not finished: scale, scoop or first lot is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on with the set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is waiting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where you are needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To mix today: {plan}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weigh-in of lot {number} stands at this step: {step}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on weighing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{scoop} still bears the line of lot {old}; lot {number} is in use.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh in with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot {number} is not weighed in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot {number} came on {day} and is not weighed in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A label still bears the old line: sheet {numbers}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} labels still bear the old line: sheets {numbers}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wall chart is out of date: sheet {numbers}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} wall charts are out of date: sheets {numbers}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the chart</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TodayRow</name>
    <message>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Powder by weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scoopfuls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no lot signed off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no count comes near enough</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fits the {vessel}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;alves today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calves today, {group}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calves today</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Units</name>
    <message>
        <source>Type a value, like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is too long for one value. Type it like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a hidden character in it ({name}). Clear the field and type it like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no number in it. Type it like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” cannot stand there. Type it like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the number out in digits, like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” has more than one decimal sign. Write one number, like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Digits are missing after “{part}”. Type it like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” has a comma. Write decimals with a point: {point}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” can be read two ways. Write {whole} without a comma, or {point} with a decimal point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” can be read two ways. Write {whole} without a point, or {comma} with a decimal comma.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” has two numbers in a row. Write one number, or a unit after each, like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” is not a fraction that can be used. Halves to sixty-fourths can, like 1/4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” is not less than one. Leave a space between whole number and fraction, like 10 1/4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the unit after “{part}” too, like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The unit “{unit}” is not known here. Type it like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{unit} is a weight, and something else belongs here. Type it like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{unit} is a volume, and something else belongs here. Type it like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{unit} is a length, and something else belongs here. Type it like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{unit} is a temperature, and something else belongs here. Type it like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{unit} is a share, and something else belongs here. Type it like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oz is a weight. For a volume write fl oz.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fl oz is a volume. For a weight write oz.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three cups are in use. Write US cup (237 mL), label cup (240 mL) or metric cup (250 mL).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several tons are in use. Write the weight in lb or kg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gr means grain. For grams write g.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the unit as ft or in, like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the larger unit first and each unit once, like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” is 1 {unit} or more. Check both numbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a whole number can stand before a second unit, like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type one value, like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a whole number, like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” is below zero, which cannot be. Type it like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zero cannot be right here. Type it like {example}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” is less than can be right here: at least {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” is more than can be right here: at most {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VerdictPanel</name>
    <message>
        <source>Put it right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Likeliest causes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First pail and last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No verdict yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what solids are wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the drops of the first pail, best three: the verdict comes at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each way: {ways}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two instruments contradict each other: check both in plain water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckoned for the volume on the chart; type what is in the vessel to be sure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number}. {what} ({fits}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No usual slip fits this reading. Weigh the next powder, and look at the scoop.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VesselForm</name>
    <message>
        <source>Name of the vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume to the rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rest is room for stirring.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May be filled to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Often:</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WeighInPage</name>
    <message>
        <source>&amp;Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ne&amp;xt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh in another &amp;lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dip, heap, and strike off with a straight edge. No tapping, no pressing. Two fills from each of four bags: type the weight, press Enter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill to the new line, level it with one shake, read it at eye level. Type the weight, press Enter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WeighInWords</name>
    <message>
        <source>Lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scoop and scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level fills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fills to the mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign-off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the target weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the scale level and zeroed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least two level fills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line drawn on the scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still needed: {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enough: these fills settle it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The interval rests on how these bags differ.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The interval rests on how bags differed in this farm&apos;s earlier lots.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With fewer than three bags, how bags differ cannot be seen: a cautious figure is assumed. Dip a third bag to do without it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the line {down} down the wall from the rim.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line would be so near the floor that it cannot be read well. Use a smaller scoop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line would be so near the rim that it cannot be told from it. Use a larger scoop, or strike it level and take the weight as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the old line a scoopful of this lot would weigh {mass} ({share}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the old line. {delivers}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the line. {delivers}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{words} {delivers}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On target: the line is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the line to {down} down the wall from the rim, and weigh to it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Levelled by a shake, the powder packs {percent} denser than struck level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled to the line, the powder lies {percent} looser than struck level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The scale reads the check weight right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The scale reads {error} too much.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The scale reads {error} too little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zero it, check that it stands level, fit fresh batteries, and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is more than this scale weighs ({capacity}). Type it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No powder is as heavy as that. Look at the unit, or whether the scale was zeroed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No scoopful is as light as that. Look at the unit, or whether the scale was zeroed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh-in of lot {number}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WelcomePage</name>
    <message>
        <source>Welcome</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kitchen scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bac&amp;k</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at an invented &amp;season first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on &amp;later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep and go &amp;on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A second window opens with an invented farm. What is done there is not kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sample season could not be opened. Start the program with --demo.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step {number} of {count}: {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep and weigh it &amp;in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your farm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This program finds out what a scoop of milk replacer weighs, lot by lot, and where its fill line belongs. Four short steps, then the first weigh-in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The one on which scoopfuls will be weighed. Both figures stand on its plate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The scoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose its shape and measure it inside with a ruler. Or fill it with water and weigh that, which is surer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The powder that is fed now or comes next. Only its lot number is needed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>Scoop calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{text}” is typed but not entered. Close without it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close without it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Weigh-in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Batch tables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;eason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+{number}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>not weighed in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>being weighed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scoop and scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level fills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fills to the mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sign-off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>struck level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tapped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} tote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} totes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{packages} of {mass}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 full scoop, then {line}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} full scoops, then {line}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_Counted</name>
    <message numerus="yes">
        <source>%n fill(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bag(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more fill(s) would do, each from a bag not yet dipped.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more fill(s) would do.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cannot tell yet whether the old line will do: weigh %n more level fill(s).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cannot tell yet: weigh %n more fill(s) to the line.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n full scoop(s), then one to a line {down} down the wall from the rim.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>This scale&apos;s step is coarse for one scoopful. Weigh %n scoopful(s) together each time, and say so beside the weight.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
</TS>
