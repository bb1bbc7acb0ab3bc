<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>_Counted</name>
    <message numerus="yes">
        <source>%n fills</source>
        <translation>
            <numerusform>%n fill</numerusform>
            <numerusform>%n fills</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lots</source>
        <translation>
            <numerusform>%n lot</numerusform>
            <numerusform>%n lots</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n trials</source>
        <translation>
            <numerusform>%n trial</numerusform>
            <numerusform>%n trials</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n weighings</source>
        <translation>
            <numerusform>%n weighing</numerusform>
            <numerusform>%n weighings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n scoopfuls</source>
        <translation>
            <numerusform>%n scoopful</numerusform>
            <numerusform>%n scoopfuls</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them to the line before</source>
        <translation>
            <numerusform>%n of them to the line before</numerusform>
            <numerusform>%n of them to the line before</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them to the first try</source>
        <translation>
            <numerusform>%n of them to the first try</numerusform>
            <numerusform>%n of them to the first try</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>And %n more: Set-up, Records, Check now tells each.</source>
        <translation>
            <numerusform>And %n more: Set-up, Records, Check now tells it.</numerusform>
            <numerusform>And %n more: Set-up, Records, Check now tells each.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The server answers. It holds the records of %n farms.</source>
        <translation>
            <numerusform>The server answers. It holds the records of %n farm.</numerusform>
            <numerusform>The server answers. It holds the records of %n farms.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bags</source>
        <translation>
            <numerusform>%n bag</numerusform>
            <numerusform>%n bags</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n calves</source>
        <translation>
            <numerusform>%n calf</numerusform>
            <numerusform>%n calves</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n feedings</source>
        <translation>
            <numerusform>%n feeding</numerusform>
            <numerusform>%n feedings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n checks</source>
        <translation>
            <numerusform>%n check</numerusform>
            <numerusform>%n checks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows saved.</source>
        <translation>
            <numerusform>%n row saved.</numerusform>
            <numerusform>%n rows saved.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n older findings are not listed; their lots are marked in the picture.</source>
        <translation>
            <numerusform>%n older finding is not listed; its lot is marked in the picture.</numerusform>
            <numerusform>%n older findings are not listed; their lots are marked in the picture.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lots without that day not shown; it is entered on the page of the lots.</source>
        <translation>
            <numerusform>%n lot without that day not shown; it is entered on the page of the lots.</numerusform>
            <numerusform>%n lots without that day not shown; it is entered on the page of the lots.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of the whole lot nothing is sure yet: about %n more spot fills, from other bags, would tell.</source>
        <translation>
            <numerusform>Of the whole lot nothing is sure yet: one more spot fill, from another bag, would tell.</numerusform>
            <numerusform>Of the whole lot nothing is sure yet: about %n more spot fills, from other bags, would tell.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minutes</source>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Lot {lot}: enough for %n days</source>
        <translation>
            <numerusform>Lot {lot}: enough for %n day</numerusform>
            <numerusform>Lot {lot}: enough for %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>And %n days in lot {lot}, weighed in.</source>
        <translation>
            <numerusform>And %n day in lot {lot}, weighed in.</numerusform>
            <numerusform>And %n days in lot {lot}, weighed in.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>And %n days in lot {lot}, not weighed in yet.</source>
        <translation>
            <numerusform>And %n day in lot {lot}, not weighed in yet.</numerusform>
            <numerusform>And %n days in lot {lot}, not weighed in yet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Lot {lot}, enough for %n days more, has to be weighed in by then.</source>
        <translation>
            <numerusform>Lot {lot}, enough for %n day more, has to be weighed in by then.</numerusform>
            <numerusform>Lot {lot}, enough for %n days more, has to be weighed in by then.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The next {days} days take %n bags more than there are.</source>
        <translation>
            <numerusform>The next {days} days take %n bag more than there are.</numerusform>
            <numerusform>The next {days} days take %n bags more than there are.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The next {days} days take %n totes more than there are.</source>
        <translation>
            <numerusform>The next {days} days take %n tote more than there are.</numerusform>
            <numerusform>The next {days} days take %n totes more than there are.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bags of lot {number} were counted today. Are they used up?</source>
        <translation>
            <numerusform>%n bag of lot {number} was counted today. Is it used up?</numerusform>
            <numerusform>%n bags of lot {number} were counted today. Are they used up?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>By count and plans about %n bags of lot {number} are left. Are they used up?</source>
        <translation>
            <numerusform>By count and plans about %n bag of lot {number} is left. Is it used up?</numerusform>
            <numerusform>By count and plans about %n bags of lot {number} are left. Are they used up?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>By count and plans about %n bags of lot {old} are left. Do they stay, to be fed later?</source>
        <translation>
            <numerusform>By count and plans about %n bag of lot {old} is left. Does it stay, to be fed later?</numerusform>
            <numerusform>By count and plans about %n bags of lot {old} are left. Do they stay, to be fed later?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Besides, about %n bags of lot {lot} are left. To feed them: Lots, Back into use.</source>
        <translation>
            <numerusform>Besides, about %n bag of lot {lot} is left. To feed it: Lots, Back into use.</numerusform>
            <numerusform>Besides, about %n bags of lot {lot} are left. To feed them: Lots, Back into use.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Powder of lot {lot} for %n days.</source>
        <translation>
            <numerusform>Powder of lot {lot} for %n day.</numerusform>
            <numerusform>Powder of lot {lot} for %n days.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more fills would do, each from a bag not yet dipped.</source>
        <translation>
            <numerusform>%n more fill would do, from a bag not yet dipped.</numerusform>
            <numerusform>%n more fills would do, each from a bag not yet dipped.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more fills would do, from any bag.</source>
        <translation>
            <numerusform>%n more fill would do, from any bag.</numerusform>
            <numerusform>%n more fills would do, from any bag.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{fills} from the %n open bags</source>
        <translation>
            <numerusform>{fills} from the open bag</numerusform>
            <numerusform>{fills} from the %n open bags</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Too close to say whether the old line will do: weigh %n more level fills, or draw the new line.</source>
        <translation>
            <numerusform>Too close to say whether the old line will do: weigh %n more level fill, or draw the new line.</numerusform>
            <numerusform>Too close to say whether the old line will do: weigh %n more level fills, or draw the new line.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cannot tell yet: weigh %n more fills to the line.</source>
        <translation>
            <numerusform>Cannot tell yet: weigh %n more fill to the line.</numerusform>
            <numerusform>Cannot tell yet: weigh %n more fills to the line.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cannot tell yet: weigh %n more fills to the line, each from a bag not yet dipped for it.</source>
        <translation>
            <numerusform>Cannot tell yet: weigh %n more fill to the line, from a bag not yet dipped for it.</numerusform>
            <numerusform>Cannot tell yet: weigh %n more fills to the line, each from a bag not yet dipped for it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n level scoopfuls, then one to a line {down} down the wall from the rim.</source>
        <translation>
            <numerusform>%n level scoopful, then one to a line {down} down the wall from the rim.</numerusform>
            <numerusform>%n level scoopfuls, then one to a line {down} down the wall from the rim.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n equal scoopfuls to one line, {down} down the wall from the rim.</source>
        <translation>
            <numerusform>%n scoopful to a line {down} down the wall from the rim.</numerusform>
            <numerusform>%n equal scoopfuls to one line, {down} down the wall from the rim.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n level scoopfuls, no line needed: {share} against the target.</source>
        <translation>
            <numerusform>%n level scoopful, no line needed: {share} against the target.</numerusform>
            <numerusform>%n level scoopfuls, no line needed: {share} against the target.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The line would be so near the floor that it cannot be read well. Take %n level scoopfuls and no more: that is {share} against the target. Or use a smaller scoop.</source>
        <translation>
            <numerusform>The line would be so near the floor that it cannot be read well. Take %n level scoopful and no more: that is {share} against the target. Or use a smaller scoop.</numerusform>
            <numerusform>The line would be so near the floor that it cannot be read well. Take %n level scoopfuls and no more: that is {share} against the target. Or use a smaller scoop.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>This scale&apos;s step is coarse for one scoopful. Weigh %n scoopfuls together each time, and say so beside the weight.</source>
        <translation>
            <numerusform>This scale&apos;s step is coarse for one scoopful. Weigh %n scoopful each time, and say so beside the weight.</numerusform>
            <numerusform>This scale&apos;s step is coarse for one scoopful. Weigh %n scoopfuls together each time, and say so beside the weight.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>%n entry</numerusform>
            <numerusform>%n entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries were read out of the damaged file and brought over.</source>
        <translation>
            <numerusform>%n entry was read out of the damaged file and brought over.</numerusform>
            <numerusform>%n entries were read out of the damaged file and brought over.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more come from the copy of {day}.</source>
        <translation>
            <numerusform>%n more comes from the copy of {day}.</numerusform>
            <numerusform>%n more come from the copy of {day}.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries are lost:</source>
        <translation>
            <numerusform>%n entry is lost:</numerusform>
            <numerusform>%n entries are lost:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries were brought in.</source>
        <translation>
            <numerusform>%n entry was brought in.</numerusform>
            <numerusform>%n entries were brought in.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were there already.</source>
        <translation>
            <numerusform>%n was there already.</numerusform>
            <numerusform>%n were there already.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new lots.</source>
        <translation>
            <numerusform>%n new lot.</numerusform>
            <numerusform>%n new lots.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new fills.</source>
        <translation>
            <numerusform>%n new fill.</numerusform>
            <numerusform>%n new fills.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lots were brought in.</source>
        <translation>
            <numerusform>%n lot was brought in.</numerusform>
            <numerusform>%n lots were brought in.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fills were brought in.</source>
        <translation>
            <numerusform>%n fill was brought in.</numerusform>
            <numerusform>%n fills were brought in.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lots are there already and stay as they are.</source>
        <translation>
            <numerusform>%n lot is there already and stays as it is.</numerusform>
            <numerusform>%n lots are there already and stay as they are.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fills are there already.</source>
        <translation>
            <numerusform>%n fill is there already.</numerusform>
            <numerusform>%n fills are there already.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cells have to be corrected in the file first; nothing is brought in before.</source>
        <translation>
            <numerusform>%n cell has to be corrected in the file first; nothing is brought in before.</numerusform>
            <numerusform>%n cells have to be corrected in the file first; nothing is brought in before.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The server cannot be reached. %n entries since {since} are kept on this computer and will be sent. Go on weighing; sign-off waits for the server.</source>
        <translation>
            <numerusform>The server cannot be reached. %n entry of {since} is kept on this computer and will be sent. Go on weighing; sign-off waits for the server.</numerusform>
            <numerusform>The server cannot be reached. %n entries since {since} are kept on this computer and will be sent. Go on weighing; sign-off waits for the server.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries since {since} wait on this computer for the server. They stay here and will be sent.</source>
        <translation>
            <numerusform>%n entry of {since} waits on this computer for the server. It stays here and will be sent.</numerusform>
            <numerusform>%n entries since {since} wait on this computer for the server. They stay here and will be sent.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The server did not take %n entries. They are kept on this computer: Set-up, Records tells which and why.</source>
        <translation>
            <numerusform>The server did not take %n entry. It is kept on this computer: Set-up, Records tells which and why.</numerusform>
            <numerusform>The server did not take %n entries. They are kept on this computer: Set-up, Records tells which and why.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries are on this computer alone and count nowhere. Enter again what is still right.</source>
        <translation>
            <numerusform>%n entry is on this computer alone and counts nowhere. Enter it again if it is still right.</numerusform>
            <numerusform>%n entries are on this computer alone and count nowhere. Enter again what is still right.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The wall charts of {name} (print no. {numbers}) are out of date.</source>
        <translation>
            <numerusform>The wall chart of {name} (print no. {numbers}) is out of date.</numerusform>
            <numerusform>The wall charts of {name} (print no. {numbers}) are out of date.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The lot sheets of lot {name} (print no. {numbers}) are out of date: the lot was weighed in anew.</source>
        <translation>
            <numerusform>The lot sheet of lot {name} (print no. {numbers}) is out of date: the lot was weighed in anew.</numerusform>
            <numerusform>The lot sheets of lot {name} (print no. {numbers}) are out of date: the lot was weighed in anew.</numerusform>
        </translation>
    </message>
</context>
</TS>
