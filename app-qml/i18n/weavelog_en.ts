<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>AccountButton</name>
    <message numerus="yes">
        <source>Account: %n racket(s) not charged</source>
        <translation>
            <numerusform>Account: %n racket not charged</numerusform>
            <numerusform>Account: %n rackets not charged</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ArrivalAccount</name>
    <message numerus="yes">
        <source>Stayed here: %n player(s) of the list</source>
        <translation>
            <numerusform>Stayed here: %n player of the list</numerusform>
            <numerusform>Stayed here: %n players of the list</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n question(s) need(s) an answer</source>
        <translation>
            <numerusform>%n question needs an answer</numerusform>
            <numerusform>%n questions need an answer</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Set aside: %n entry(s)</source>
        <translation>
            <numerusform>Set aside: %n entry</numerusform>
            <numerusform>Set aside: %n entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Both hold the same, over %n book(s). The other side tells the same words: compare them.</source>
        <translation>
            <numerusform>Both hold the same, over %n book. The other side tells the same words: compare them.</numerusform>
            <numerusform>Both hold the same, over %n books. The other side tells the same words: compare them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ArrivalPage</name>
    <message numerus="yes">
        <source>%n entry(s)</source>
        <translation>
            <numerusform>%n entry</numerusform>
            <numerusform>%n entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Send %n player(s)</source>
        <translation>
            <numerusform>Send %n player</numerusform>
            <numerusform>Send %n players</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ArrivalPeople</name>
    <message numerus="yes">
        <source>The room gains %n player(s)</source>
        <translation>
            <numerusform>The room gains %n player</numerusform>
            <numerusform>The room gains %n players</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s)</source>
        <translation>
            <numerusform>%n racket</numerusform>
            <numerusform>%n rackets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>From the room came %n player(s)</source>
        <translation>
            <numerusform>From the room came %n player</numerusform>
            <numerusform>From the room came %n players</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) stay(s) here</source>
        <translation>
            <numerusform>%n player stays here</numerusform>
            <numerusform>%n players stay here</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to be answered: is it this one?</source>
        <translation>
            <numerusform>%n to be answered: is it this one?</numerusform>
            <numerusform>%n to be answered: is it this one?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Show more; %n still hidden</source>
        <translation>
            <numerusform>Show more; %n still hidden</numerusform>
            <numerusform>Show more; %n still hidden</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ArrivalProgress</name>
    <message numerus="yes">
        <source>About %n second(s) left</source>
        <translation>
            <numerusform>About %n second left</numerusform>
            <numerusform>About %n seconds left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>About %n minute(s) left</source>
        <translation>
            <numerusform>About %n minute left</numerusform>
            <numerusform>About %n minutes left</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ArrivalWords</name>
    <message numerus="yes">
        <source>newer by %n day(s)</source>
        <translation>
            <numerusform>newer by %n day</numerusform>
            <numerusform>newer by %n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BedModel</name>
    <message numerus="yes">
        <source>%n reading(s) are of other players’ rackets that this device holds.</source>
        <translation>
            <numerusform>%n reading is of other players’ rackets that this device holds.</numerusform>
            <numerusform>%n readings are of other players’ rackets that this device holds.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) are left out: on a scale of the instrument’s own, or nothing like this racket.</source>
        <translation>
            <numerusform>%n reading is left out: on a scale of the instrument’s own, or nothing like this racket.</numerusform>
            <numerusform>%n readings are left out: on a scale of the instrument’s own, or nothing like this racket.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BenchTime</name>
    <message numerus="yes">
        <source>%n minute(s) on the machine</source>
        <translation>
            <numerusform>%n minute on the machine</numerusform>
            <numerusform>%n minutes on the machine</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Done again: %n time(s)</source>
        <translation>
            <numerusform>Done again: once</numerusform>
            <numerusform>Done again: %n times</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BenchesModel</name>
    <message numerus="yes">
        <source>%n player(s) moved.</source>
        <translation>
            <numerusform>%n player moved.</numerusform>
            <numerusform>%n players moved.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BenchesView</name>
    <message numerus="yes">
        <source>%n player(s) without a bench</source>
        <translation>
            <numerusform>%n player without a bench</numerusform>
            <numerusform>%n players without a bench</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BundleModel</name>
    <message numerus="yes">
        <source>%n book(s)</source>
        <translation>
            <numerusform>%n book</numerusform>
            <numerusform>%n books</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BundleSheet</name>
    <message numerus="yes">
        <source>%n picture(s) could not be read and are not in it.</source>
        <translation>
            <numerusform>%n picture could not be read and is not in it.</numerusform>
            <numerusform>%n pictures could not be read and are not in it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n player(s)</source>
        <translation>
            <numerusform>%n player</numerusform>
            <numerusform>%n players</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n event</numerusform>
            <numerusform>%n events</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s)</source>
        <translation>
            <numerusform>%n picture</numerusform>
            <numerusform>%n pictures</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stays here: %n book(s)</source>
        <translation>
            <numerusform>Stays here: %n book</numerusform>
            <numerusform>Stay here: %n books</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CarryWords</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CheckSheet</name>
    <message numerus="yes">
        <source>Done again: %n time(s)</source>
        <translation>
            <numerusform>Done again: once</numerusform>
            <numerusform>Done again: %n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) to look at</source>
        <translation>
            <numerusform>%n item to look at</numerusform>
            <numerusform>%n items to look at</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CsvWords</name>
    <message numerus="yes">
        <source>There are more than %n row(s). Split the file.</source>
        <translation>
            <numerusform>There is more than %n row. Split the file.</numerusform>
            <numerusform>There are more than %n rows. Split the file.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>There are more than %n column(s). Leave out what is not needed.</source>
        <translation>
            <numerusform>There is more than %n column. Leave out what is not needed.</numerusform>
            <numerusform>There are more than %n columns. Leave out what is not needed.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The row has %n field(s)</source>
        <translation>
            <numerusform>The row has %n field</numerusform>
            <numerusform>The row has %n fields</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DayModel</name>
    <message numerus="yes">
        <source>%1: %n match(es) played</source>
        <translation>
            <numerusform>%1: %n match played</numerusform>
            <numerusform>%1: %n matches played</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DayView</name>
    <message numerus="yes">
        <source>%n racket(s) to string</source>
        <translation>
            <numerusform>%n racket to string</numerusform>
            <numerusform>%n rackets to string</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them late</source>
        <translation>
            <numerusform>%n of them late</numerusform>
            <numerusform>%n of them late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Tell the room (%n change(s))</source>
        <translation>
            <numerusform>Tell the room (%n change)</numerusform>
            <numerusform>Tell the room (%n changes)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s) late</source>
        <translation>
            <numerusform>%n minute late</numerusform>
            <numerusform>%n minutes late</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DeskFind</name>
    <message numerus="yes">
        <source>%n unfinished drop-off(s)</source>
        <translation>
            <numerusform>%n unfinished drop-off</numerusform>
            <numerusform>%n unfinished drop-offs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DevicesCard</name>
    <message numerus="yes">
        <source>%n entry(s) came later</source>
        <translation>
            <numerusform>%n entry came later</numerusform>
            <numerusform>%n entries came later</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DrawModel</name>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>%n place</numerusform>
            <numerusform>%n places</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n win(s)</source>
        <translation>
            <numerusform>%1: %n win</numerusform>
            <numerusform>%1: %n wins</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>EventSheet</name>
    <message numerus="yes">
        <source>%n racket(s) taken in before belong to it</source>
        <translation>
            <numerusform>%n racket taken in before belongs to it</numerusform>
            <numerusform>%n rackets taken in before belong to it</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>EventsCard</name>
    <message numerus="yes">
        <source>%n racket(s) here</source>
        <translation>
            <numerusform>%n racket here</numerusform>
            <numerusform>%n rackets here</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ExchangeOverview</name>
    <message numerus="yes">
        <source>%1: %n book(s)</source>
        <translation>
            <numerusform>%1: %n book</numerusform>
            <numerusform>%1: %n books</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Set aside: %n entry(s)</source>
        <translation>
            <numerusform>Set aside: %n entry</numerusform>
            <numerusform>Set aside: %n entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n hour</numerusform>
            <numerusform>%n hours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ExchangeState</name>
    <message numerus="yes">
        <source>More than %n action(s) wait to be sent.</source>
        <translation>
            <numerusform>More than %n action waits to be sent.</numerusform>
            <numerusform>More than %n actions wait to be sent.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n action(s) wait to be sent.</source>
        <translation>
            <numerusform>%n action waits to be sent.</numerusform>
            <numerusform>%n actions wait to be sent.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Last agreement: %1, over %n book(s). Both screens show the same words.</source>
        <translation>
            <numerusform>Last agreement: %1, over %n book. Both screens show the same words.</numerusform>
            <numerusform>Last agreement: %1, over %n books. Both screens show the same words.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) stay on this tablet only. Whoever plays here is ticked under “Arrive”.</source>
        <translation>
            <numerusform>%n player stays on this tablet only. Whoever plays here is ticked under “Arrive”.</numerusform>
            <numerusform>%n players stay on this tablet only. Whoever plays here is ticked under “Arrive”.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ForecastView</name>
    <message numerus="yes">
        <source>%n bench(es)</source>
        <translation>
            <numerusform>%n bench</numerusform>
            <numerusform>%n benches</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ForgetSheet</name>
    <message numerus="yes">
        <source>All %n books of this person that are linked go together.</source>
        <translation>
            <numerusform>The %n book of this person goes.</numerusform>
            <numerusform>All %n books of this person that are linked go together.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>IntakeModel</name>
    <message numerus="yes">
        <source>%n player(s)</source>
        <translation>
            <numerusform>%n player</numerusform>
            <numerusform>%n players</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n event</numerusform>
            <numerusform>%n events</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s)</source>
        <translation>
            <numerusform>%n picture</numerusform>
            <numerusform>%n pictures</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stays out, as the players agreed here: %n player(s)</source>
        <translation>
            <numerusform>Stays out, as the player agreed here: %n player</numerusform>
            <numerusform>Stay out, as the players agreed here: %n players</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stays out, because they were forgotten: %n player(s)</source>
        <translation>
            <numerusform>Stays out, because forgotten: %n player</numerusform>
            <numerusform>Stay out, because forgotten: %n players</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new entry(s) came in.</source>
        <translation>
            <numerusform>%n new entry came in.</numerusform>
            <numerusform>%n new entries came in.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(s) were here already.</source>
        <translation>
            <numerusform>%n entry was here already.</numerusform>
            <numerusform>%n entries were here already.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) came in.</source>
        <translation>
            <numerusform>%n picture came in.</numerusform>
            <numerusform>%n pictures came in.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) were lost already where it was made.</source>
        <translation>
            <numerusform>%n picture was lost already where it was made.</numerusform>
            <numerusform>%n pictures were lost already where it was made.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) could not be stored.</source>
        <translation>
            <numerusform>%n picture could not be stored.</numerusform>
            <numerusform>%n pictures could not be stored.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Left out, because they were forgotten: %n player(s)</source>
        <translation>
            <numerusform>Left out, because forgotten: %n player</numerusform>
            <numerusform>Left out, because forgotten: %n players</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Forgotten here too, because they withdrew: %n player(s)</source>
        <translation>
            <numerusform>Forgotten here too, after withdrawing: %n player</numerusform>
            <numerusform>Forgotten here too, after withdrawing: %n players</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It holds %n book(s) of it.</source>
        <translation>
            <numerusform>It holds %n book of it.</numerusform>
            <numerusform>It holds %n books of it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n newer entry(s) here that are not there yet.</source>
        <translation>
            <numerusform>%1: %n newer entry here that is not there yet.</numerusform>
            <numerusform>%1: %n newer entries here that are not there yet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(s) were put aside; the Exchange page tells why.</source>
        <translation>
            <numerusform>%n entry was put aside; the Exchange page tells why.</numerusform>
            <numerusform>%n entries were put aside; the Exchange page tells why.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>IntakeSheet</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Two answers to one question: %n to be settled under Questions.</source>
        <translation>
            <numerusform>Two answers to one question: %n to be settled under Questions.</numerusform>
            <numerusform>Two answers to one question: %n to be settled under Questions.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>JobList</name>
    <message numerus="yes">
        <source>%n job(s), newest first</source>
        <translation>
            <numerusform>%n job, newest first</numerusform>
            <numerusform>%n jobs, newest first</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>JobSheet</name>
    <message numerus="yes">
        <source>Hand over %n bag(s) with the rackets</source>
        <translation>
            <numerusform>Hand over %n bag with the rackets</numerusform>
            <numerusform>Hand over %n bags with the rackets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Came with %n bag(s)</source>
        <translation>
            <numerusform>Came with %n bag</numerusform>
            <numerusform>Came with %n bags</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>KeepCard</name>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ListsModel</name>
    <message numerus="yes">
        <source>Too long to be read at the bench: leave out about %n letter(s).</source>
        <translation>
            <numerusform>Too long to be read at the bench: leave out about %n letter.</numerusform>
            <numerusform>Too long to be read at the bench: leave out about %n letters.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MachinesView</name>
    <message numerus="yes">
        <source>%n racket(s) since its clamps were cleaned</source>
        <translation>
            <numerusform>%n racket since its clamps were cleaned</numerusform>
            <numerusform>%n rackets since its clamps were cleaned</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MatchWords</name>
    <message numerus="yes">
        <source>%n racket(s)</source>
        <translation>
            <numerusform>%n racket</numerusform>
            <numerusform>%n rackets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>%n day ago</numerusform>
            <numerusform>%n days ago</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MetCard</name>
    <message numerus="yes">
        <source>Give %n player(s)</source>
        <translation>
            <numerusform>Give %n player</numerusform>
            <numerusform>Give %n players</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MoneyAccounts</name>
    <message numerus="yes">
        <source>%n player(s) owe something</source>
        <translation>
            <numerusform>%n player owes something</numerusform>
            <numerusform>%n players owe something</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MoneyText</name>
    <message numerus="yes">
        <source>%n decimal(s) at most in this currency.</source>
        <translation>
            <numerusform>%n decimal at most in this currency.</numerusform>
            <numerusform>%n decimals at most in this currency.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>NewTimeSheet</name>
    <message numerus="yes">
        <source>%n rackets were promised together.</source>
        <translation>
            <numerusform>%n racket was promised.</numerusform>
            <numerusform>%n rackets were promised together.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PastJobsSheet</name>
    <message numerus="yes">
        <source>Would come in: %n racket(s)</source>
        <translation>
            <numerusform>Would come in: %n racket</numerusform>
            <numerusform>Would come in: %n rackets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Here already: %n racket(s)</source>
        <translation>
            <numerusform>Here already: %n racket</numerusform>
            <numerusform>Here already: %n rackets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Left out: %n row(s) with a mistake</source>
        <translation>
            <numerusform>Left out: %n row with a mistake</numerusform>
            <numerusform>Left out: %n rows with a mistake</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PastRowsCard</name>
    <message numerus="yes">
        <source>Left out: %n row(s) with a mistake</source>
        <translation>
            <numerusform>Left out: %n row with a mistake</numerusform>
            <numerusform>Left out: %n rows with a mistake</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PersonLinks</name>
    <message numerus="yes">
        <source>%n racket(s)</source>
        <translation>
            <numerusform>%n racket</numerusform>
            <numerusform>%n rackets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PhotoSheet</name>
    <message numerus="yes">
        <source>%n photo(s) kept</source>
        <translation>
            <numerusform>%n photo kept</numerusform>
            <numerusform>%n photos kept</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PlayerPick</name>
    <message numerus="yes">
        <source>%n player(s) chosen</source>
        <translation>
            <numerusform>%n player chosen</numerusform>
            <numerusform>%n players chosen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>QualityChart</name>
    <message numerus="yes">
        <source>Chart of %n racket(s)</source>
        <translation>
            <numerusform>Chart of %n racket</numerusform>
            <numerusform>Chart of %n rackets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>QualityModel</name>
    <message numerus="yes">
        <source>One reading scatters by about %1 % (estimate of %n reading(s)).</source>
        <translation>
            <numerusform>One reading scatters by about %1 % (estimate of %n reading).</numerusform>
            <numerusform>One reading scatters by about %1 % (estimate of %n readings).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 % of the variance (estimate, 95 %: %2 to %3 %), between %n of them</source>
        <translation>
            <numerusform>%1 % of the variance (estimate, 95 %: %2 to %3 %), between %n of them</numerusform>
            <numerusform>%1 % of the variance (estimate, 95 %: %2 to %3 %), between %n of them</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of 100 rackets about %1 lie more than %2 % from what was to be expected (estimate, 95 %: %3 to %4). Of the %n read, %5 did.</source>
        <translation>
            <numerusform>Of 100 rackets about %1 lie more than %2 % from what was to be expected (estimate, 95 %: %3 to %4). Of the %n read, %5 did.</numerusform>
            <numerusform>Of 100 rackets about %1 lie more than %2 % from what was to be expected (estimate, 95 %: %3 to %4). Of the %n read, %5 did.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Machine %1: %2 % (± %3) over %n racket(s)</source>
        <translation>
            <numerusform>Machine %1: %2 % (± %3) over %n racket</numerusform>
            <numerusform>Machine %1: %2 % (± %3) over %n rackets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stringer %1: %2 % (± %3) over %n racket(s)</source>
        <translation>
            <numerusform>Stringer %1: %2 % (± %3) over %n racket</numerusform>
            <numerusform>Stringer %1: %2 % (± %3) over %n rackets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pull(s) noted, too few for a line: at three settings or more, each twice, on one day.</source>
        <translation>
            <numerusform>%n pull noted, too few for a line: pull at three settings or more, each twice, on one day.</numerusform>
            <numerusform>%n pulls noted, too few for a line: pull at three settings or more, each twice, on one day.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>QualityView</name>
    <message numerus="yes">
        <source>The newest first; %n older one(s) are on the chart</source>
        <translation>
            <numerusform>The newest first; %n older one is on the chart</numerusform>
            <numerusform>The newest first; %n older ones are on the chart</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>QuestionsPage</name>
    <message numerus="yes">
        <source>%n open. Ask the player, then close it with the answer.</source>
        <translation>
            <numerusform>%n is open. Ask the player, then close it with the answer.</numerusform>
            <numerusform>%n are open. Ask the players, then close each with the answer.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RoomBoard</name>
    <message numerus="yes">
        <source>%1: %n racket(s)</source>
        <translation>
            <numerusform>%1: %n racket</numerusform>
            <numerusform>%1: %n rackets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RoomList</name>
    <message numerus="yes">
        <source>%1: %n racket(s)</source>
        <translation>
            <numerusform>%1: %n racket</numerusform>
            <numerusform>%1: %n rackets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RoomPage</name>
    <message numerus="yes">
        <source>%n racket(s) here</source>
        <translation>
            <numerusform>%n racket here</numerusform>
            <numerusform>%n rackets here</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n late</source>
        <translation>
            <numerusform>%n late</numerusform>
            <numerusform>%n late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n collected</source>
        <translation>
            <numerusform>%n collected</numerusform>
            <numerusform>%n collected</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StockPage</name>
    <message numerus="yes">
        <source>%n string(s) low</source>
        <translation>
            <numerusform>%n string is low</numerusform>
            <numerusform>%n strings are low</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StockWords</name>
    <message numerus="yes">
        <source>%n set(s)</source>
        <translation>
            <numerusform>%n set</numerusform>
            <numerusform>%n sets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StringUseCard</name>
    <message numerus="yes">
        <source>%n set(s)</source>
        <translation>
            <numerusform>%n set</numerusform>
            <numerusform>%n sets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TakeCardSheet</name>
    <message numerus="yes">
        <source>New here: %n field(s)</source>
        <translation>
            <numerusform>New here: %n field</numerusform>
            <numerusform>New here: %n fields</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ToneModel</name>
    <message numerus="yes">
        <source>Estimate of %n tap(s), nine times of ten %1 to %2 Hz; %3 % sure that it is the bed’s own tone to half a per cent.</source>
        <translation>
            <numerusform>Estimate of %n tap, nine times of ten %1 to %2 Hz; %3 % sure that it is the bed’s own tone to half a per cent.</numerusform>
            <numerusform>Estimate of %n taps, nine times of ten %1 to %2 Hz; %3 % sure that it is the bed’s own tone to half a per cent.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TonePart</name>
    <message numerus="yes">
        <source>%n second(s) left</source>
        <translation>
            <numerusform>%n second left</numerusform>
            <numerusform>%n seconds left</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>UnchargedCard</name>
    <message numerus="yes">
        <source>Charge %n racket(s): %1</source>
        <translation>
            <numerusform>Charge %n racket: %1</numerusform>
            <numerusform>Charge %n rackets: %1</numerusform>
        </translation>
    </message>
</context>
</TS>
