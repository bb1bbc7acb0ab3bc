<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name></name>
    <message numerus="yes">
        <source>MixWords</source>
        <comment>{solids} solids as mixed, surely between {low} and {high}. Wanted: {target}, give or take {tolerance}.</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>MixWords</source>
        <comment>By a published line for whole milk (0.9984 Brix + 2.08). Milk replacers differ from it: make an own line.</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
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
    <message numerus="yes">
        <source>MixWords</source>
        <comment>This is hot enough to scald skin. Keep hands and children away, and never feed it before it has cooled.</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
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
