<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AccountButton</name>
    <message>
        <source>Account: %1 due</source>
        <translation>Konto: %1 offen</translation>
    </message>
    <message numerus="yes">
        <source>Account: %n racket(s) not charged</source>
        <translation>
            <numerusform>Konto: %n Schläger nicht berechnet</numerusform>
            <numerusform>Konto: %n Schläger nicht berechnet</numerusform>
        </translation>
    </message>
    <message>
        <source>Account</source>
        <translation>Konto</translation>
    </message>
</context>
<context>
    <name>AccountDetails</name>
    <message>
        <source>Due</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>To give back</source>
        <translation>Zurückzugeben</translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation>Nichts ist offen</translation>
    </message>
    <message>
        <source>Charged %1, paid %2</source>
        <translation>Berechnet %1, bezahlt %2</translation>
    </message>
    <message>
        <source>The event has no currency yet</source>
        <translation>Das Turnier hat noch keine Währung</translation>
    </message>
    <message>
        <source>Give it one in the price list; then rackets can be charged.</source>
        <translation>Legen Sie sie in der Preisliste fest; dann lassen sich Schläger berechnen.</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Preisliste</translation>
    </message>
    <message>
        <source>Two tablets charged different amounts</source>
        <translation>Zwei Tablets haben Verschiedenes berechnet</translation>
    </message>
    <message>
        <source>Until somebody closes that under Questions, the newer amount counts here, and nothing is taken off it.</source>
        <translation>Bis das jemand unter Fragen klärt, gilt hier der neuere Betrag, und nichts wird davon abgezogen.</translation>
    </message>
    <message>
        <source>Charge something else</source>
        <translation>Etwas anderes berechnen</translation>
    </message>
</context>
<context>
    <name>AccountModel</name>
    <message>
        <source>It has to be more than nothing.</source>
        <translation>Es muss mehr als nichts sein.</translation>
    </message>
</context>
<context>
    <name>AccountPart</name>
    <message>
        <source>A racket</source>
        <translation>Ein Schläger</translation>
    </message>
    <message>
        <source>Together %1</source>
        <translation>Zusammen %1</translation>
    </message>
    <message>
        <source>two tablets differ</source>
        <translation>zwei Tablets weichen ab</translation>
    </message>
    <message>
        <source>reversed</source>
        <translation>storniert</translation>
    </message>
    <message>
        <source>Give a discount</source>
        <translation>Nachlass geben</translation>
    </message>
</context>
<context>
    <name>AgreedCard</name>
    <message>
        <source>Agreed now: rackets %1</source>
        <translation>Vereinbart: Schläger %1</translation>
    </message>
    <message>
        <source>Agreed now</source>
        <translation>Vereinbart</translation>
    </message>
    <message>
        <source>Last strung %1, %2</source>
        <translation>Zuletzt bespannt: %1, %2</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Längssaiten</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Quersaiten</translation>
    </message>
    <message>
        <source>Taken in %1, %2; not yet strung</source>
        <translation>Angenommen: %1, %2; noch nicht bespannt</translation>
    </message>
</context>
<context>
    <name>AlikeCard</name>
    <message>
        <source>This player is known here</source>
        <translation>Dieser Spieler ist hier bekannt</translation>
    </message>
    <message>
        <source>Is it one of these players?</source>
        <translation>Ist es einer von diesen Spielern?</translation>
    </message>
    <message>
        <source>Written down: %1</source>
        <translation>Aufgeschrieben: %1</translation>
    </message>
    <message>
        <source>None of these: somebody else</source>
        <translation>Keiner davon: jemand anders</translation>
    </message>
</context>
<context>
    <name>AnswersForm</name>
    <message>
        <source>Another answer</source>
        <translation>Eine andere Antwort</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>If the player says none of these</source>
        <translation>Falls der Spieler keine davon sagt</translation>
    </message>
</context>
<context>
    <name>ArrivalAccount</name>
    <message>
        <source>Came and went</source>
        <translation>Gekommen und gegangen</translation>
    </message>
    <message>
        <source>Players who were not here before</source>
        <translation>Spieler, die vorher nicht hier waren</translation>
    </message>
    <message>
        <source>Rackets that came</source>
        <translation>Schläger, die kamen</translation>
    </message>
    <message>
        <source>Players who went to the room</source>
        <translation>Spieler, die an den Raum gingen</translation>
    </message>
    <message>
        <source>Rackets that went</source>
        <translation>Schläger, die gingen</translation>
    </message>
    <message numerus="yes">
        <source>Stayed here: %n player(s) of the list</source>
        <translation>
            <numerusform>Hier geblieben: %n Spieler der Liste</numerusform>
            <numerusform>Hier geblieben: %n Spieler der Liste</numerusform>
        </translation>
    </message>
    <message>
        <source>Nobody of the list stayed behind</source>
        <translation>Niemand von der Liste blieb zurück</translation>
    </message>
    <message>
        <source>Everybody else on this tablet stayed too; the event server does not learn of them.</source>
        <translation>Auch alle anderen auf diesem Tablet blieben hier; der Turnierserver erfährt nichts von ihnen.</translation>
    </message>
    <message>
        <source>Have not agreed to it: %1</source>
        <translation>Haben nicht zugestimmt: %1</translation>
    </message>
    <message>
        <source>Nobody said whether it is them: %1</source>
        <translation>Niemand hat gesagt, ob sie es sind: %1</translation>
    </message>
    <message>
        <source>Were not ticked: %1</source>
        <translation>Wurden nicht angehakt: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n question(s) need(s) an answer</source>
        <translation>
            <numerusform>%n Frage braucht eine Antwort</numerusform>
            <numerusform>%n Fragen brauchen eine Antwort</numerusform>
        </translation>
    </message>
    <message>
        <source>Where two rooms gave different answers both stand, until the player is asked.</source>
        <translation>Wo zwei Räume verschieden geantwortet haben, bleiben beide Antworten stehen, bis der Spieler gefragt ist.</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message numerus="yes">
        <source>Set aside: %n entry(s)</source>
        <translation>
            <numerusform>Beiseitegelegt: %n Eintrag</numerusform>
            <numerusform>Beiseitegelegt: %n Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>They broke a rule and were not taken over; the exchange shows them.</source>
        <translation>Sie verletzen eine Regel und wurden nicht übernommen; der Abgleich zeigt sie.</translation>
    </message>
    <message>
        <source>Some books could not be made equal</source>
        <translation>Einige Bücher konnten nicht abgeglichen werden</translation>
    </message>
    <message>
        <source>One side may not hand them on, or holds them otherwise. Nothing is lost and everything else has crossed; compare those players at the desk.</source>
        <translation>Eine Seite darf sie nicht weitergeben oder hält sie anders. Nichts ist verloren, und alles andere ist übertragen; vergleichen Sie diese Spieler an der Annahme.</translation>
    </message>
    <message numerus="yes">
        <source>Both hold the same, over %n book(s). The other side tells the same words: compare them.</source>
        <translation>
            <numerusform>Beide haben dasselbe, in %n Buch. Die andere Seite nennt dieselben Wörter: vergleichen Sie.</numerusform>
            <numerusform>Beide haben dasselbe, in %n Büchern. Die andere Seite nennt dieselben Wörter: vergleichen Sie.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ArrivalMeet</name>
    <message>
        <source>Pairing ...</source>
        <translation>Wird gekoppelt ...</translation>
    </message>
    <message>
        <source>Scan the code with the camera</source>
        <translation>Den Code mit der Kamera scannen</translation>
    </message>
    <message>
        <source>Met before</source>
        <translation>Schon bekannt</translation>
    </message>
    <message>
        <source>Paired already: it only has to be met again.</source>
        <translation>Schon gekoppelt: ein Tippen genügt.</translation>
    </message>
</context>
<context>
    <name>ArrivalPage</name>
    <message>
        <source>Arriving at an event</source>
        <translation>Ankunft bei einem Turnier</translation>
    </message>
    <message>
        <source>Not connected just now</source>
        <translation>Gerade nicht verbunden</translation>
    </message>
    <message>
        <source>Nothing is lost: everything goes on by itself where it stopped, also after the app was closed.</source>
        <translation>Nichts ist verloren: alles geht von selbst da weiter, wo es stehen blieb, auch nachdem die App geschlossen war.</translation>
    </message>
    <message>
        <source>Meet the event server</source>
        <translation>Den Turnierserver treffen</translation>
    </message>
    <message>
        <source>The entry list comes over</source>
        <translation>Die Meldeliste kommt herüber</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(s)</source>
        <translation>
            <numerusform>%n Meldung</numerusform>
            <numerusform>%n Meldungen</numerusform>
        </translation>
    </message>
    <message>
        <source>Who of it is known here, and what each side gains</source>
        <translation>Wer davon hier bekannt ist, und was jede Seite gewinnt</translation>
    </message>
    <message>
        <source>%1 known, %2 to be looked at, %3 new</source>
        <translation>%1 bekannt, %2 anzusehen, %3 neu</translation>
    </message>
    <message>
        <source>Both bring each other up to date</source>
        <translation>Beide bringen sich auf den neuesten Stand</translation>
    </message>
    <message>
        <source>What came of it</source>
        <translation>Was dabei herauskam</translation>
    </message>
    <message>
        <source>Back to the exchange</source>
        <translation>Zurück zum Abgleich</translation>
    </message>
    <message>
        <source>Look at the players again</source>
        <translation>Die Spieler noch einmal ansehen</translation>
    </message>
    <message numerus="yes">
        <source>Send %n player(s)</source>
        <translation>
            <numerusform>%n Spieler senden</numerusform>
            <numerusform>%n Spieler senden</numerusform>
        </translation>
    </message>
    <message>
        <source>Go on, nobody is ticked</source>
        <translation>Weiter, niemand ist angehakt</translation>
    </message>
    <message>
        <source>Go on without an entry list</source>
        <translation>Ohne Meldeliste weiter</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
</context>
<context>
    <name>ArrivalPeople</name>
    <message>
        <source>Nobody is ticked that the room does not have: it gains nothing yet.</source>
        <translation>Niemand ist angehakt, den der Raum nicht hat: er gewinnt noch nichts.</translation>
    </message>
    <message numerus="yes">
        <source>The room gains %n player(s)</source>
        <translation>
            <numerusform>Der Raum gewinnt %n Spieler</numerusform>
            <numerusform>Der Raum gewinnt %n Spieler</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s)</source>
        <translation>
            <numerusform>%n Schläger</numerusform>
            <numerusform>%n Schläger</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 all new to it</source>
        <translation>%1 ganz neu für ihn</translation>
    </message>
    <message>
        <source>%1 with a newer last time</source>
        <translation>%1 mit neuerem letztem Mal</translation>
    </message>
    <message>
        <source>The room had nothing of these players that was not here.</source>
        <translation>Der Raum hatte von diesen Spielern nichts, was hier fehlte.</translation>
    </message>
    <message numerus="yes">
        <source>From the room came %n player(s)</source>
        <translation>
            <numerusform>Aus dem Raum kam %n Spieler</numerusform>
            <numerusform>Aus dem Raum kamen %n Spieler</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 all new here</source>
        <translation>%1 ganz neu hier</translation>
    </message>
    <message>
        <source>never answered: may go, and are asked at their first drop-off</source>
        <translation>nie geantwortet: darf mit, und wird bei der ersten Abgabe gefragt</translation>
    </message>
    <message>
        <source>for this room only</source>
        <translation>nur für diesen Raum</translation>
    </message>
    <message>
        <source>to events that they enter</source>
        <translation>für Turniere, bei denen sie melden</translation>
    </message>
    <message>
        <source>to any room</source>
        <translation>für jeden Raum</translation>
    </message>
    <message>
        <source>What each side gains</source>
        <translation>Was jede Seite gewinnt</translation>
    </message>
    <message>
        <source>Ticked players&apos; histories go to the event server; it learns of nobody else.</source>
        <translation>Die Verläufe angehakter Spieler gehen an den Turnierserver; von niemandem sonst erfährt er.</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) stay(s) here</source>
        <translation>
            <numerusform>%n Spieler bleibt hier</numerusform>
            <numerusform>%n Spieler bleiben hier</numerusform>
        </translation>
    </message>
    <message>
        <source>They have not agreed that their history goes to this room: %1. Ask them at the desk; their card there has the question.</source>
        <translation>Sie haben nicht zugestimmt, dass ihr Verlauf an diesen Raum geht: %1. Fragen Sie sie an der Annahme; auf ihrer Karte dort steht die Frage.</translation>
    </message>
    <message>
        <source>Entry list</source>
        <translation>Meldeliste</translation>
    </message>
    <message numerus="yes">
        <source>%n to be answered: is it this one?</source>
        <translation>
            <numerusform>%n zu beantworten: ist es dieser?</numerusform>
            <numerusform>%n zu beantworten: ist es dieser?</numerusform>
        </translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Tick all known players</source>
        <translation>Alle bekannten anhaken</translation>
    </message>
    <message numerus="yes">
        <source>Show more; %n still hidden</source>
        <translation>
            <numerusform>Mehr zeigen; noch %n verborgen</numerusform>
            <numerusform>Mehr zeigen; noch %n verborgen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 × agreed: %2</source>
        <translation>%1 × zugestimmt: %2</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Bekannt</translation>
    </message>
    <message>
        <source>To look at</source>
        <translation>Anzusehen</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
</context>
<context>
    <name>ArrivalProgress</name>
    <message>
        <source>Waits for the connection</source>
        <translation>Wartet auf die Verbindung</translation>
    </message>
    <message>
        <source>This event has no entry list yet</source>
        <translation>Dieses Turnier hat noch keine Meldeliste</translation>
    </message>
    <message>
        <source>Coming and going</source>
        <translation>Es kommt und geht</translation>
    </message>
    <message>
        <source>It comes by itself as soon as the room has one. You can go on without it and arrive once more later.</source>
        <translation>Sie kommt von selbst, sobald der Raum eine hat. Sie können ohne sie weitergehen und die Ankunft später wiederholen.</translation>
    </message>
    <message>
        <source>Players that are here can be used already; the app may be closed meanwhile.</source>
        <translation>Wer schon hier ist, kann benutzt werden; die App darf inzwischen geschlossen werden.</translation>
    </message>
    <message numerus="yes">
        <source>About %n second(s) left</source>
        <translation>
            <numerusform>Noch etwa %n Sekunde</numerusform>
            <numerusform>Noch etwa %n Sekunden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>About %n minute(s) left</source>
        <translation>
            <numerusform>Noch etwa %n Minute</numerusform>
            <numerusform>Noch etwa %n Minuten</numerusform>
        </translation>
    </message>
    <message>
        <source>From the room to this tablet: books</source>
        <translation>Vom Raum auf dieses Tablet: Bücher</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>From this tablet to the room: entries</source>
        <translation>Von diesem Tablet an den Raum: Einträge</translation>
    </message>
    <message>
        <source>Finding out what either side lacks</source>
        <translation>Sucht, was jeder Seite fehlt</translation>
    </message>
</context>
<context>
    <name>ArrivalRow</name>
    <message>
        <source>Known</source>
        <translation>Bekannt</translation>
    </message>
    <message>
        <source>Is it this one?</source>
        <translation>Ist es dieser?</translation>
    </message>
    <message>
        <source>New here</source>
        <translation>Neu hier</translation>
    </message>
    <message>
        <source>Has not agreed that this history goes to other events: ask the player</source>
        <translation>Hat nicht zugestimmt, dass dieser Verlauf zu anderen Turnieren geht: den Spieler fragen</translation>
    </message>
    <message>
        <source>Both have it</source>
        <translation>Beide haben es</translation>
    </message>
    <message>
        <source>None of these: the room&apos;s %1 is somebody else</source>
        <translation>Keiner davon: %1 im Raum ist jemand anders</translation>
    </message>
</context>
<context>
    <name>ArrivalStepHead</name>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>later</source>
        <translation>später</translation>
    </message>
</context>
<context>
    <name>ArrivalWords</name>
    <message>
        <source>newer by hours</source>
        <translation>um Stunden neuer</translation>
    </message>
    <message numerus="yes">
        <source>newer by %n day(s)</source>
        <translation>
            <numerusform>um %n Tag neuer</numerusform>
            <numerusform>um %n Tage neuer</numerusform>
        </translation>
    </message>
    <message>
        <source>The room has this already</source>
        <translation>Der Raum hat das schon</translation>
    </message>
    <message>
        <source>All new to the room</source>
        <translation>Ganz neu für den Raum</translation>
    </message>
    <message>
        <source>All new to the room: %1</source>
        <translation>Ganz neu für den Raum: %1</translation>
    </message>
    <message>
        <source>The room gets what was agreed</source>
        <translation>Der Raum bekommt, was vereinbart ist</translation>
    </message>
    <message>
        <source>The room gets %1 more</source>
        <translation>Der Raum bekommt dazu: %1</translation>
    </message>
    <message>
        <source>Came from the room</source>
        <translation>Kam aus dem Raum</translation>
    </message>
    <message>
        <source>Came from the room: %1</source>
        <translation>Kam aus dem Raum: %1</translation>
    </message>
    <message>
        <source>Came from the room: %1 more</source>
        <translation>Kam aus dem Raum dazu: %1</translation>
    </message>
</context>
<context>
    <name>AskedCard</name>
    <message>
        <source>What does the player want? %1</source>
        <translation>Was will der Spieler? %1</translation>
    </message>
    <message>
        <source>Rackets: %1</source>
        <translation>Schläger: %1</translation>
    </message>
    <message>
        <source>Different answers stand here. Ask which one holds; nothing is read back before.</source>
        <translation>Hier stehen verschiedene Antworten. Fragen, welche gilt; erst dann geht es weiter.</translation>
    </message>
    <message>
        <source>The yes to the read-back closes this question for everybody.</source>
        <translation>Das Ja zum Rücklesen schließt diese Frage für alle.</translation>
    </message>
    <message>
        <source>It was answered elsewhere meanwhile: %1 (%2). That holds, not %3, which was chosen here.</source>
        <translation>Inzwischen anderswo beantwortet: %1 (%2). Das gilt, nicht %3, das hier gewählt war.</translation>
    </message>
    <message>
        <source>It was answered elsewhere meanwhile: %1 (%2). That holds.</source>
        <translation>Inzwischen anderswo beantwortet: %1 (%2). Das gilt.</translation>
    </message>
</context>
<context>
    <name>BandRow</name>
    <message>
        <source>%1: %2, between %3 and %4</source>
        <translation>%1: %2, zwischen %3 und %4</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
</context>
<context>
    <name>BarCard</name>
    <message>
        <source>%1 late</source>
        <translation>%1 zu spät</translation>
    </message>
</context>
<context>
    <name>BedDrawing</name>
    <message>
        <source>What is drawn</source>
        <translation>Was gezeichnet ist</translation>
    </message>
    <message>
        <source>Stiffness map</source>
        <translation>Härtekarte</translation>
    </message>
    <message>
        <source>Strings</source>
        <translation>Saiten</translation>
    </message>
    <message>
        <source>Stiffness over the string bed. %1</source>
        <translation>Härte über das Saitenbett. %1</translation>
    </message>
    <message>
        <source>The string bed as it is strung: %1</source>
        <translation>Das Saitenbett, wie es bespannt ist: %1</translation>
    </message>
</context>
<context>
    <name>BedFigures</name>
    <message>
        <source>Estimates</source>
        <translation>Schätzungen</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>At the match, %1</source>
        <translation>Beim Spiel, %1</translation>
    </message>
    <message>
        <source>%1: estimate %2, %3; at the match %4, %5</source>
        <translation>%1: Schätzung %2, %3; beim Spiel %4, %5</translation>
    </message>
    <message>
        <source>The true figure lies in the band nine times of ten, as far as is known.</source>
        <translation>Der wahre Wert liegt in neun von zehn Fällen in der Spanne, soweit bekannt.</translation>
    </message>
</context>
<context>
    <name>BedModel</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>string not named</source>
        <translation>Saite nicht genannt</translation>
    </message>
    <message>
        <source>pulled with %1 / %2</source>
        <translation>gezogen mit %1 / %2</translation>
    </message>
    <message>
        <source>Stiffness in the centre</source>
        <translation>Härte in der Mitte</translation>
    </message>
    <message>
        <source>Tone</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>Tension in the mains</source>
        <translation>Spannung in den Längssaiten</translation>
    </message>
    <message>
        <source>Tension in the crosses</source>
        <translation>Spannung in den Quersaiten</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) are of other players’ rackets that this device holds.</source>
        <translation>
            <numerusform>%n Messung ist von Schlägern anderer Spieler auf diesem Gerät.</numerusform>
            <numerusform>%n Messungen sind von Schlägern anderer Spieler auf diesem Gerät.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) are left out: on a scale of the instrument’s own, or nothing like this racket.</source>
        <translation>
            <numerusform>%n Messung bleibt außen vor: auf einer eigenen Skala des Geräts, oder ganz anders als dieser Schläger.</numerusform>
            <numerusform>%n Messungen bleiben außen vor: auf einer eigenen Skala des Geräts, oder ganz anders als dieser Schläger.</numerusform>
        </translation>
    </message>
    <message>
        <source>A head of %1 cm²</source>
        <translation>Ein Kopf von %1 cm²</translation>
    </message>
    <message>
        <source>A pattern of %1 x %2</source>
        <translation>Ein Saitenbild von %1 x %2</translation>
    </message>
    <message>
        <source>A synthetic gut, where the stock does not say the material</source>
        <translation>Ein synthetischer Darm, wo der Vorrat das Material nicht sagt</translation>
    </message>
    <message>
        <source>A gauge of 1.30 mm, where none is said</source>
        <translation>Eine Stärke von 1,30 mm, wo keine gesagt ist</translation>
    </message>
    <message>
        <source>Mains and crosses pulled alike</source>
        <translation>Längs- und Quersaiten gleich gezogen</translation>
    </message>
    <message>
        <source>Two pieces of string</source>
        <translation>Zwei Saitenstücke</translation>
    </message>
    <message>
        <source>It comes off the machine now</source>
        <translation>Er kommt jetzt von der Maschine</translation>
    </message>
    <message>
        <source>Its material is not said in the stock</source>
        <translation>Ihr Material steht nicht im Vorrat</translation>
    </message>
    <message>
        <source>1 min</source>
        <translation>1 min</translation>
    </message>
    <message>
        <source>10 min</source>
        <translation>10 min</translation>
    </message>
    <message>
        <source>1 h</source>
        <translation>1 h</translation>
    </message>
    <message>
        <source>6 h</source>
        <translation>6 h</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>1 week</source>
        <translation>1 Woche</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>match</source>
        <translation>Spiel</translation>
    </message>
    <message>
        <source>%1: estimate %2, nine times of ten %3 to %4; now %5</source>
        <translation>%1: Schätzung %2, in neun von zehn Fällen %3 bis %4; jetzt %5</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Längssaiten</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Quersaiten</translation>
    </message>
    <message>
        <source>Stiffness of a firm stroke at the match: %1 N/mm, before %2 N/mm</source>
        <translation>Härte bei einem festen Schlag im Spiel: %1 N/mm, vorher %2 N/mm</translation>
    </message>
    <message>
        <source>Mean tension %1, nine times of ten %2 to %3</source>
        <translation>Mittlere Spannung %1, in neun von zehn Fällen %2 bis %3</translation>
    </message>
    <message>
        <source>That is %1 % of what was pulled, %2 to %3 %</source>
        <translation>Das sind %1 % von dem, was gezogen wurde, %2 bis %3 %</translation>
    </message>
    <message>
        <source>Stiffness in the centre %1 N/mm, %2 to %3</source>
        <translation>Härte in der Mitte %1 N/mm, %2 bis %3</translation>
    </message>
    <message>
        <source>A match at %1</source>
        <translation>Ein Spiel um %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>In the middle %1 N/mm, near the tip %2, near the throat %3, near the sides %4 and %5 (estimates)</source>
        <translation>In der Mitte %1 N/mm, nahe der Spitze %2, nahe dem Herz %3, nahe den Seiten %4 und %5 (Schätzungen)</translation>
    </message>
    <message>
        <source>Estimates of the stiffness now in N/mm, pressed on a disc of %1 mm radius, as a ball flattens. In the middle %2, nine times of ten %3 to %4; one place against another is good to %5 %.</source>
        <translation>Schätzungen der jetzigen Härte in N/mm, gedrückt auf einer Scheibe von %1 mm Radius, wie ein Ball sich abplattet. In der Mitte %2, in neun von zehn Fällen %3 bis %4; ein Ort gegen den anderen stimmt auf %5 %.</translation>
    </message>
</context>
<context>
    <name>BenchHead</name>
    <message>
        <source>Late: %1</source>
        <translation>Zu spät: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Bis %1</translation>
    </message>
    <message>
        <source>promised</source>
        <translation>zugesagt</translation>
    </message>
</context>
<context>
    <name>BenchPage</name>
    <message>
        <source>Bench</source>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>Tag %1: %2</source>
        <translation>Schild %1: %2</translation>
    </message>
    <message>
        <source>Nothing waits for a bench</source>
        <translation>Nichts wartet auf einen Platz</translation>
    </message>
    <message>
        <source>The racket to be strung next lies here with its setup in large figures, as soon as the desk has taken one in.</source>
        <translation>Hier liegt der nächste Schläger mit seiner Bespannung in großen Ziffern, sobald die Annahme einen angenommen hat.</translation>
    </message>
    <message>
        <source>On-court rush: %1</source>
        <translation>Eilt vom Platz: %1</translation>
    </message>
    <message>
        <source>It goes before the racket on this bench. A racket already on the machine is finished first.</source>
        <translation>Er geht dem Schläger an diesem Platz vor. Ein Schläger, der schon auf der Maschine liegt, wird erst fertig gemacht.</translation>
    </message>
    <message>
        <source>It goes before the racket on this bench.</source>
        <translation>Er geht dem Schläger an diesem Platz vor.</translation>
    </message>
    <message>
        <source>Take it up</source>
        <translation>Annehmen</translation>
    </message>
    <message>
        <source>Two answers: %1</source>
        <translation>Zwei Antworten: %1</translation>
    </message>
    <message>
        <source>Ask the desk which one the player wants before you string it; they are under Questions.</source>
        <translation>Fragen Sie vor dem Bespannen die Annahme, welche der Spieler will; beide stehen unter Fragen.</translation>
    </message>
    <message>
        <source>Note to the stringer</source>
        <translation>Hinweis an den Bespanner</translation>
    </message>
    <message>
        <source>Written beside this racket</source>
        <translation>Zu diesem Schläger notiert</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Getan</translation>
    </message>
    <message>
        <source>Choose another racket (%1)</source>
        <translation>Anderen Schläger wählen (%1)</translation>
    </message>
    <message>
        <source>Rackets that wait</source>
        <translation>Wartende Schläger</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Schild %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
    <message>
        <source>Late: %1</source>
        <translation>Zu spät: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Bis %1</translation>
    </message>
    <message>
        <source>Inspect the frame</source>
        <translation>Rahmen prüfen</translation>
    </message>
    <message>
        <source>Machine %1 does not pull what is set</source>
        <translation>Maschine %1 zieht nicht, was eingestellt ist</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its rackets come here by themselves.</source>
        <translation>Koppeln Sie unter Abgleich mit einem Turnierserver; seine Schläger kommen von selbst hierher.</translation>
    </message>
</context>
<context>
    <name>BenchPeople</name>
    <message>
        <source>pinned</source>
        <translation>festgesteckt</translation>
    </message>
    <message>
        <source>Carry %1 to another bench</source>
        <translation>%1 zu einer anderen Bank tragen</translation>
    </message>
</context>
<context>
    <name>BenchTime</name>
    <message numerus="yes">
        <source>%n minute(s) on the machine</source>
        <translation>
            <numerusform>%n Minute auf der Maschine</numerusform>
            <numerusform>%n Minuten auf der Maschine</numerusform>
        </translation>
    </message>
    <message>
        <source>on the machine</source>
        <translation>auf der Maschine</translation>
    </message>
    <message numerus="yes">
        <source>Done again: %n time(s)</source>
        <translation>
            <numerusform>Neu gemacht: %n-mal</numerusform>
            <numerusform>Neu gemacht: %n-mal</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BenchTop</name>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
    <message>
        <source>Late: %1</source>
        <translation>Zu spät: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Bis %1</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Schild %1</translation>
    </message>
    <message>
        <source>The racket</source>
        <translation>Der Schläger</translation>
    </message>
    <message>
        <source>%1 was taken on by %2 at another bench</source>
        <translation>%1: %2 hat den Schläger an einer anderen Bank übernommen</translation>
    </message>
    <message>
        <source>%1 was taken on at another bench</source>
        <translation>%1: an einer anderen Bank übernommen</translation>
    </message>
    <message>
        <source>%1 was taken on at two benches while apart. Look where it is; its stage is settled in the room.</source>
        <translation>%1: zwei Bänke haben den Schläger unabhängig übernommen. Nachsehen, wo er ist; seine Stufe wird im Raum geklärt.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 waits for its player’s answer</source>
        <translation>%1 wartet auf die Antwort des Spielers</translation>
    </message>
    <message>
        <source>%1 was put aside</source>
        <translation>%1 wurde beiseitegelegt</translation>
    </message>
    <message>
        <source>%1 was collected</source>
        <translation>%1 wurde abgeholt</translation>
    </message>
    <message>
        <source>The drop-off of %1 was taken back</source>
        <translation>Die Abgabe von %1 wurde zurückgenommen</translation>
    </message>
    <message>
        <source>%1: the player withdrew, and the book was erased. Ask at the desk.</source>
        <translation>%1: Der Spieler hat zurückgezogen, sein Buch ist gelöscht. Bei der Annahme fragen.</translation>
    </message>
    <message>
        <source>Next racket</source>
        <translation>Nächster Schläger</translation>
    </message>
</context>
<context>
    <name>BenchTray</name>
    <message>
        <source>Moved, and pinned there</source>
        <translation>Verschoben und dort festgesteckt</translation>
    </message>
    <message>
        <source>Let %1 go over a bench. The number says what the plan loses by it.</source>
        <translation>%1 über einer Bank loslassen. Die Zahl sagt, was der Plan dadurch verliert.</translation>
    </message>
    <message>
        <source>here</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>a wish forbids it</source>
        <translation>ein Wunsch verbietet es</translation>
    </message>
</context>
<context>
    <name>BenchesModel</name>
    <message>
        <source>There is no event yet.</source>
        <translation>Es gibt noch kein Turnier.</translation>
    </message>
    <message>
        <source>%1: %2, %3 %</source>
        <translation>%1: %2, %3 %</translation>
    </message>
    <message>
        <source>Proven: no plan is better.</source>
        <translation>Bewiesen: Kein Plan ist besser.</translation>
    </message>
    <message>
        <source>No plan is better by more than %1 %.</source>
        <translation>Kein Plan ist um mehr als %1 % besser.</translation>
    </message>
    <message>
        <source> Nobody shares a bench with somebody they can meet late in the draw.</source>
        <translation> Niemand teilt eine Bank mit jemandem, auf den er spät im Tableau treffen kann.</translation>
    </message>
    <message>
        <source> Some who can meet late in the draw share a bench: there are too few benches to hold all apart.</source>
        <translation> Einige, die spät im Tableau aufeinandertreffen können, teilen eine Bank: Es gibt zu wenige Bänke, um alle zu trennen.</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) moved.</source>
        <translation>
            <numerusform>%n Name umgesetzt.</numerusform>
            <numerusform>%n Namen umgesetzt.</numerusform>
        </translation>
    </message>
    <message>
        <source>The draw or the team changed meanwhile.</source>
        <translation>Tableau oder Team haben sich inzwischen geändert.</translation>
    </message>
    <message>
        <source>Plan again.</source>
        <translation>Noch einmal planen.</translation>
    </message>
    <message>
        <source>never with %1</source>
        <translation>nie bei %1</translation>
    </message>
    <message>
        <source>only with %1</source>
        <translation>nur bei %1</translation>
    </message>
</context>
<context>
    <name>BenchesView</name>
    <message>
        <source>There can be no plan yet</source>
        <translation>Noch kann es keinen Plan geben</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) without a bench</source>
        <translation>
            <numerusform>%n Name ohne Bank</numerusform>
            <numerusform>%n Namen ohne Bank</numerusform>
        </translation>
    </message>
    <message>
        <source>A plan gives everybody one stringer and one machine for the event, and keeps apart who may soon meet.</source>
        <translation>Ein Plan gibt allen für das Turnier eine Person und eine Maschine und hält auseinander, wer bald aufeinandertreffen kann.</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Es wird geplant …</translation>
    </message>
    <message>
        <source>Plan anew</source>
        <translation>Neu planen</translation>
    </message>
    <message>
        <source>Plan the benches</source>
        <translation>Bänke planen</translation>
    </message>
    <message>
        <source>Benches planned</source>
        <translation>Bänke geplant</translation>
    </message>
    <message>
        <source>%1 rackets to come</source>
        <translation>%1 Schläger zu erwarten</translation>
    </message>
    <message>
        <source>Nobody yet</source>
        <translation>Noch niemand</translation>
    </message>
    <message>
        <source>Move to, and what it costs the plan</source>
        <translation>Umsetzen, und was es den Plan kostet</translation>
    </message>
    <message>
        <source>here</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>a wish forbids it</source>
        <translation>ein Wunsch verbietet es</translation>
    </message>
    <message>
        <source>Moved, and pinned there</source>
        <translation>Umgesetzt und dort festgelegt</translation>
    </message>
    <message>
        <source>Take the pin out</source>
        <translation>Nicht mehr festlegen</translation>
    </message>
    <message>
        <source>The next plan may move them</source>
        <translation>Der nächste Plan darf umsetzen</translation>
    </message>
    <message>
        <source>Nobody shares a bench with somebody they can meet from here on</source>
        <translation>Niemand teilt eine Bank mit jemandem, auf den er ab hier treffen kann</translation>
    </message>
    <message>
        <source>Quarter-finals</source>
        <translation>Viertelfinale</translation>
    </message>
    <message>
        <source>Semi-finals</source>
        <translation>Halbfinale</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Finale</translation>
    </message>
    <message>
        <source>No rule</source>
        <translation>Keine Regel</translation>
    </message>
    <message>
        <source>The next plan goes by it</source>
        <translation>Der nächste Plan hält sich daran</translation>
    </message>
    <message>
        <source>What the plan goes by</source>
        <translation>Wonach der Plan geht</translation>
    </message>
    <message>
        <source>Wishes</source>
        <translation>Wünsche</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>streichen</translation>
    </message>
    <message>
        <source>The wish is dropped</source>
        <translation>Der Wunsch gilt nicht mehr</translation>
    </message>
    <message>
        <source>Add a wish</source>
        <translation>Wunsch hinzufügen</translation>
    </message>
    <message>
        <source>Only with</source>
        <translation>Nur bei</translation>
    </message>
    <message>
        <source>Never with</source>
        <translation>Nie bei</translation>
    </message>
    <message>
        <source>What is wished for</source>
        <translation>Was gewünscht ist</translation>
    </message>
    <message>
        <source>Who wins a match</source>
        <translation>Wer ein Match gewinnt</translation>
    </message>
    <message>
        <source>As known best</source>
        <translation>Wie am besten bekannt</translation>
    </message>
    <message>
        <source>Rating</source>
        <translation>Wertung</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Setzplatz</translation>
    </message>
    <message>
        <source>Even odds</source>
        <translation>Gleiche Chancen</translation>
    </message>
    <message>
        <source>What a meeting on one bench costs, the final’s first</source>
        <translation>Was ein Treffen an einer Bank kostet, das Finale zuerst</translation>
    </message>
    <message>
        <source>The last number stands for all rounds before. Empty: as is usual.</source>
        <translation>Die letzte Zahl gilt für alle Runden davor. Leer: wie üblich.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
</context>
<context>
    <name>BringDrawSheet</name>
    <message>
        <source>Bring a draw in</source>
        <translation>Tableau einlesen</translation>
    </message>
    <message>
        <source>Name of the draw</source>
        <translation>Name des Tableaus</translation>
    </message>
    <message>
        <source>Women’s singles</source>
        <translation>Damen Einzel</translation>
    </message>
    <message>
        <source>So many come through</source>
        <translation>So viele kommen weiter</translation>
    </message>
    <message>
        <source>Choose the table (CSV)</source>
        <translation>Tabelle wählen (CSV)</translation>
    </message>
    <message>
        <source>Columns: line (from 1), player; if they are known partner, seed, rating, entry. A free line of the draw is called bye.</source>
        <translation>Spalten: line (ab 1), player; falls bekannt partner, seed, rating, entry. Ein Freilos heißt bye.</translation>
    </message>
    <message>
        <source>Bring it in</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <source>Draw brought in</source>
        <translation>Tableau eingelesen</translation>
    </message>
    <message>
        <source>Tables (*.csv *.CSV)</source>
        <translation>Tabellen (*.csv *.CSV)</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>Main draw</source>
        <translation>Hauptfeld</translation>
    </message>
    <message>
        <source>Qualifying</source>
        <translation>Qualifikation</translation>
    </message>
    <message>
        <source>Round-robin group</source>
        <translation>Gruppe, jeder gegen jeden</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>Woher es kommt</translation>
    </message>
    <message>
        <source>A table</source>
        <translation>Eine Tabelle</translation>
    </message>
    <message>
        <source>Typed in</source>
        <translation>Eingetippt</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <source>From top to bottom. Leave empty who is not known yet; they can be put in later.</source>
        <translation>Von oben nach unten. Wer noch nicht bekannt ist, bleibt leer und kann später eingesetzt werden.</translation>
    </message>
    <message>
        <source>bye</source>
        <translation>Freilos</translation>
    </message>
    <message>
        <source>Player, or player / partner</source>
        <translation>Spieler oder Spieler / Partner</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Setzplatz</translation>
    </message>
    <message>
        <source>Seed of line %1</source>
        <translation>Setzplatz von Zeile %1</translation>
    </message>
    <message>
        <source>Line %1 is free</source>
        <translation>Zeile %1 ist frei</translation>
    </message>
    <message>
        <source>Columns: player; if they are known partner, seed, rating. Three to eight rows.</source>
        <translation>Spalten: player; wenn bekannt partner, seed, rating. Drei bis acht Zeilen.</translation>
    </message>
    <message>
        <source>Draw made</source>
        <translation>Tableau angelegt</translation>
    </message>
</context>
<context>
    <name>BundleModel</name>
    <message>
        <source>Your private kit</source>
        <translation>Ihre private Tasche</translation>
    </message>
    <message>
        <source>Whoever knows a passphrase</source>
        <translation>Wer eine Passphrase kennt</translation>
    </message>
    <message>
        <source>whoever knows the passphrase</source>
        <translation>alle, die die Passphrase kennen</translation>
    </message>
    <message>
        <source>taken in by %1, %2</source>
        <translation>aufgenommen von %1, %2</translation>
    </message>
    <message>
        <source>taken in by %1 in part, %2</source>
        <translation>zum Teil aufgenommen von %1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n book(s)</source>
        <translation>
            <numerusform>%n Buch</numerusform>
            <numerusform>%n Bücher</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, for %2</source>
        <translation>%1, für %2</translation>
    </message>
</context>
<context>
    <name>BundleSeal</name>
    <message>
        <source>Who can open it</source>
        <translation>Wer sie öffnen kann</translation>
    </message>
    <message>
        <source>Only that device can read it. Nobody has to remember anything.</source>
        <translation>Nur dieses Gerät kann sie lesen. Niemand muss sich etwas merken.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <source>Four or five words that do not belong together.</source>
        <translation>Vier oder fünf Wörter, die nicht zusammengehören.</translation>
    </message>
    <message>
        <source>The same once more</source>
        <translation>Noch einmal dasselbe</translation>
    </message>
    <message>
        <source>It is not the same yet.</source>
        <translation>Es ist noch nicht dasselbe.</translation>
    </message>
    <message>
        <source>Write them down now, and tell them; do not leave them beside the stick. They are shown this once.</source>
        <translation>Jetzt aufschreiben und weitersagen, nicht neben den Stick legen. Sie werden nur dieses Mal gezeigt.</translation>
    </message>
    <message>
        <source>Nobody can open the file without it, this tablet neither.</source>
        <translation>Ohne sie öffnet niemand die Datei, auch dieses Tablet nicht.</translation>
    </message>
    <message>
        <source>Make up others</source>
        <translation>Andere ausdenken</translation>
    </message>
    <message>
        <source>Make five words up</source>
        <translation>Fünf Wörter ausdenken</translation>
    </message>
    <message>
        <source>Hide what is typed</source>
        <translation>Eingabe verbergen</translation>
    </message>
    <message>
        <source>Show what is typed</source>
        <translation>Eingabe zeigen</translation>
    </message>
    <message>
        <source>Type my own</source>
        <translation>Eigene eingeben</translation>
    </message>
</context>
<context>
    <name>BundleSheet</name>
    <message numerus="yes">
        <source>%n picture(s) could not be read and are not in it.</source>
        <translation>
            <numerusform>%n Bild ließ sich nicht lesen und ist nicht darin.</numerusform>
            <numerusform>%n Bilder ließen sich nicht lesen und sind nicht darin.</numerusform>
        </translation>
    </message>
    <message>
        <source>Everything, as a backup</source>
        <translation>Alles, als Sicherung</translation>
    </message>
    <message>
        <source>Take this event with me</source>
        <translation>Dieses Turnier mitnehmen</translation>
    </message>
    <message>
        <source>Hand players to a colleague</source>
        <translation>Spieler an Kollegen geben</translation>
    </message>
    <message>
        <source>All players, jobs, events, pictures and your private kit, for this tablet or for a new one that takes its place. Other tablets do not take it in. The pairing with event servers is not in it: pair again after putting it back.</source>
        <translation>Alle Spieler, Aufträge, Turniere, Bilder und Ihre private Tasche, für dieses Tablet oder ein neues an seiner Stelle. Andere Tablets nehmen sie nicht auf. Die Kopplung mit Turnierservern ist nicht dabei: nach dem Zurückspielen neu koppeln.</translation>
    </message>
    <message>
        <source>%1 with its draws, order of play and the books of its players.</source>
        <translation>%1 mit Tableaus, Spielplan und den Büchern der Spieler.</translation>
    </message>
    <message>
        <source>Whoever gets it works in the room of %1</source>
        <translation>Wer sie bekommt, arbeitet im Raum von %1</translation>
    </message>
    <message>
        <source>Players who agreed to that room only go along then.</source>
        <translation>Dann gehen auch Spieler mit, die nur diesem Raum zugestimmt haben.</translation>
    </message>
    <message>
        <source>Note for whoever opens it</source>
        <translation>Notiz für alle, die sie öffnen</translation>
    </message>
    <message>
        <source>Working out how large it is ...</source>
        <translation>Die Größe wird ermittelt ...</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s)</source>
        <translation>
            <numerusform>%n Spieler</numerusform>
            <numerusform>%n Spieler</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n Turnier</numerusform>
            <numerusform>%n Turniere</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s)</source>
        <translation>
            <numerusform>%n Bild</numerusform>
            <numerusform>%n Bilder</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, about %2</source>
        <translation>%1, etwa %2</translation>
    </message>
    <message numerus="yes">
        <source>Stays here: %n book(s)</source>
        <translation>
            <numerusform>Bleibt hier: %n Buch</numerusform>
            <numerusform>Bleiben hier: %n Bücher</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weiteres</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>It is being made ...</source>
        <translation>Sie wird gemacht ...</translation>
    </message>
    <message>
        <source>It is on its way to %1</source>
        <translation>Unterwegs nach %1</translation>
    </message>
    <message>
        <source>The file is whole on this tablet (%1, for %2). What has arrived at %3 stays; put the stick in again and go on, also later.</source>
        <translation>Die Datei liegt ganz auf diesem Tablet (%1, für %2). Was bei %3 angekommen ist, bleibt; Stick wieder einstecken und fortfahren, auch später.</translation>
    </message>
    <message>
        <source>It is written: %1, for %2</source>
        <translation>Geschrieben: %1, für %2</translation>
    </message>
    <message>
        <source>Keep it apart from this tablet, and its passphrase apart from it.</source>
        <translation>Getrennt von diesem Tablet aufbewahren, und die Passphrase getrennt davon.</translation>
    </message>
    <message>
        <source>Whoever brings it in gets a receipt beside it. Bring that in here, and you know that it came.</source>
        <translation>Wer sie aufnimmt, bekommt eine Quittung daneben. Nehmen Sie diese hier auf, und Sie wissen, dass sie ankam.</translation>
    </message>
    <message>
        <source>Choose folder or stick</source>
        <translation>Ordner oder Stick wählen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Fortfahren</translation>
    </message>
    <message>
        <source>Another place</source>
        <translation>Anderer Ort</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
</context>
<context>
    <name>CameraModel</name>
    <message>
        <source>No camera was found. Type the number that stands on the tag.</source>
        <translation>Keine Kamera gefunden. Geben Sie die Nummer ein, die auf dem Schild steht.</translation>
    </message>
    <message>
        <source>The camera can’t be used: %1. Another program may hold it; or type the number that stands on the tag.</source>
        <translation>Die Kamera lässt sich nicht benutzen: %1. Vielleicht hält sie ein anderes Programm; oder geben Sie die Nummer auf dem Schild ein.</translation>
    </message>
    <message>
        <source>The pictures of this camera can’t be read. Type the number that stands on the tag.</source>
        <translation>Die Bilder dieser Kamera sind nicht lesbar. Geben Sie die Nummer ein, die auf dem Schild steht.</translation>
    </message>
    <message>
        <source>Several codes are in sight: hold one before the camera.</source>
        <translation>Mehrere Codes sind im Bild: halten Sie einen vor die Kamera.</translation>
    </message>
    <message>
        <source>No camera was found. Add a photo from a file.</source>
        <translation>Keine Kamera gefunden. Ein Foto aus einer Datei hinzufügen.</translation>
    </message>
    <message>
        <source>The camera can’t be used: %1. Another program may hold it; or add a photo from a file.</source>
        <translation>Die Kamera lässt sich nicht benutzen: %1. Vielleicht hält sie ein anderes Programm; oder ein Foto aus einer Datei hinzufügen.</translation>
    </message>
    <message>
        <source>The pictures of this camera can’t be read. Add a photo from a file.</source>
        <translation>Die Bilder dieser Kamera lassen sich nicht lesen. Ein Foto aus einer Datei hinzufügen.</translation>
    </message>
</context>
<context>
    <name>CameraSheet</name>
    <message>
        <source>Scan with the camera</source>
        <translation>Mit der Kamera scannen</translation>
    </message>
    <message>
        <source>Hold the code of one tag or card in the frame.</source>
        <translation>Den Code eines Anhängers oder einer Karte in den Rahmen halten.</translation>
    </message>
</context>
<context>
    <name>CandidateRow</name>
    <message>
        <source>Alike: %1</source>
        <translation>Gleich: %1</translation>
    </message>
    <message>
        <source>Differs: %1</source>
        <translation>Verschieden: %1</translation>
    </message>
    <message>
        <source>Others are alike: a relative, or somebody of the same name</source>
        <translation>Andere sind ähnlich: Verwandte, oder jemand gleichen Namens</translation>
    </message>
</context>
<context>
    <name>CardDifferences</name>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Here: %1</source>
        <translation>Hier: %1</translation>
    </message>
    <message>
        <source>Card: %1</source>
        <translation>Karte: %1</translation>
    </message>
</context>
<context>
    <name>CardLines</name>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
    <message>
        <source>No setup and no racket</source>
        <translation>Kein Bespannungswunsch und kein Schläger</translation>
    </message>
</context>
<context>
    <name>CardPicksSheet</name>
    <message>
        <source>Cards for several players</source>
        <translation>Karten für mehrere Spieler</translation>
    </message>
    <message>
        <source>A whole team</source>
        <translation>Eine ganze Mannschaft</translation>
    </message>
    <message>
        <source>Everybody of a country</source>
        <translation>Alle eines Landes</translation>
    </message>
    <message>
        <source>Everybody in the room</source>
        <translation>Alle, deren Schläger hier sind</translation>
    </message>
    <message>
        <source>Nobody</source>
        <translation>Niemand</translation>
    </message>
    <message>
        <source>Find a player</source>
        <translation>Spieler suchen</translation>
    </message>
    <message>
        <source>There are more: type a name.</source>
        <translation>Es gibt mehr: einen Namen tippen.</translation>
    </message>
    <message>
        <source>Nobody of that name</source>
        <translation>Niemand mit diesem Namen</translation>
    </message>
    <message>
        <source>Make the cards (%1)</source>
        <translation>Karten machen (%1)</translation>
    </message>
    <message>
        <source>Make the cards</source>
        <translation>Karten machen</translation>
    </message>
</context>
<context>
    <name>CarryCard</name>
    <message>
        <source>Without a network</source>
        <translation>Ohne Netz</translation>
    </message>
    <message>
        <source>In one file on a stick, sealed for one tablet or by a passphrase. It can be brought in twice without harm.</source>
        <translation>In einer Datei auf einem Stick, versiegelt für ein Tablet oder mit einer Passphrase. Zweimal aufgenommen schadet sie nicht.</translation>
    </message>
    <message>
        <source>A file has not arrived yet</source>
        <translation>Eine Datei ist noch nicht angekommen</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation>Damit fortfahren</translation>
    </message>
    <message>
        <source>Take this event with me</source>
        <translation>Dieses Turnier mitnehmen</translation>
    </message>
    <message>
        <source>Hand players to a colleague</source>
        <translation>Spieler an Kollegen geben</translation>
    </message>
    <message>
        <source>Everything, as a backup</source>
        <translation>Alles, als Sicherung</translation>
    </message>
    <message>
        <source>Bring in a file</source>
        <translation>Datei aufnehmen</translation>
    </message>
    <message>
        <source>Made here</source>
        <translation>Hier gemacht</translation>
    </message>
    <message>
        <source>Words of this tablet’s key, for whoever brings in a file of it and does not know it: %1</source>
        <translation>Wörter des Schlüssels dieses Tablets, für alle, die eine Datei von ihm aufnehmen und es nicht kennen: %1</translation>
    </message>
    <message>
        <source>Bundles and receipts (*.weavelog *.bundle *.receipt)</source>
        <translation>Bündel und Quittungen (*.weavelog *.bundle *.receipt)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
</context>
<context>
    <name>CarryWords</name>
    <message>
        <source>The file could not be brought in</source>
        <translation>Die Datei konnte nicht aufgenommen werden</translation>
    </message>
    <message>
        <source>The file could not be written</source>
        <translation>Die Datei konnte nicht geschrieben werden</translation>
    </message>
    <message>
        <source>Try again; if it stays, show the line below to whoever looks after the tablets.</source>
        <translation>Noch einmal versuchen; bleibt es so, die Zeile darunter denen zeigen, die die Tablets betreuen.</translation>
    </message>
    <message>
        <source>It was made by a newer Weavelog</source>
        <translation>Sie stammt von einem neueren Weavelog</translation>
    </message>
    <message>
        <source>Update Weavelog on this tablet, then bring the file in again. Nothing was taken.</source>
        <translation>Weavelog auf diesem Tablet aktualisieren, dann die Datei noch einmal aufnehmen. Es wurde nichts übernommen.</translation>
    </message>
    <message>
        <source>There is no room left</source>
        <translation>Es ist kein Platz mehr</translation>
    </message>
    <message>
        <source>Make room on the stick or on this tablet, then go on. What is there already stays.</source>
        <translation>Platz auf dem Stick oder auf diesem Tablet schaffen, dann fortfahren. Was schon da ist, bleibt.</translation>
    </message>
    <message>
        <source>The folder or stick is not there</source>
        <translation>Der Ordner oder Stick ist nicht da</translation>
    </message>
    <message>
        <source>Put the stick in again and go on, or choose another place. Nothing is lost.</source>
        <translation>Stick wieder einstecken und fortfahren, oder einen anderen Ort wählen. Verloren ist nichts.</translation>
    </message>
    <message>
        <source>There is a file of that name already</source>
        <translation>Es gibt schon eine Datei dieses Namens</translation>
    </message>
    <message>
        <source>Choose another place; the file that is there stays as it is.</source>
        <translation>Einen anderen Ort wählen; die vorhandene Datei bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>It does not open here</source>
        <translation>Sie öffnet sich hier nicht</translation>
    </message>
    <message>
        <source>It is for another tablet, the passphrase is another one, or somebody altered it. Nothing was taken.</source>
        <translation>Sie ist für ein anderes Tablet, die Passphrase ist eine andere, oder jemand hat sie verändert. Es wurde nichts übernommen.</translation>
    </message>
    <message>
        <source>It may not be taken in here</source>
        <translation>Sie darf hier nicht aufgenommen werden</translation>
    </message>
    <message>
        <source>It was not written</source>
        <translation>Sie wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>This receipt does not count</source>
        <translation>Diese Quittung zählt nicht</translation>
    </message>
    <message>
        <source>The line below says why. What is known of the bundle stays as it was.</source>
        <translation>Die Zeile darunter sagt, warum. Was von dem Bündel bekannt ist, bleibt, wie es war.</translation>
    </message>
    <message>
        <source>The line below says why and what to do. Nothing was taken.</source>
        <translation>Die Zeile darunter sagt, warum und was zu tun ist. Es wurde nichts übernommen.</translation>
    </message>
    <message>
        <source>The line below says why and what to do.</source>
        <translation>Die Zeile darunter sagt, warum und was zu tun ist.</translation>
    </message>
    <message>
        <source>The file is damaged, or is no bundle</source>
        <translation>Die Datei ist beschädigt oder kein Bündel</translation>
    </message>
    <message>
        <source>Have it copied again from where it was made. What could be read is kept.</source>
        <translation>Dort, wo sie gemacht wurde, noch einmal kopieren lassen. Was lesbar war, bleibt.</translation>
    </message>
    <message>
        <source>The file can&apos;t be read to its end</source>
        <translation>Die Datei lässt sich nicht zu Ende lesen</translation>
    </message>
    <message>
        <source>The stick or disk does not take the file</source>
        <translation>Der Stick oder Speicher nimmt die Datei nicht an</translation>
    </message>
    <message>
        <source>Look at the stick, put it in again and go on. Nothing is lost.</source>
        <translation>Den Stick ansehen, wieder einstecken und fortfahren. Verloren ist nichts.</translation>
    </message>
    <message>
        <source>Something is missing or wrong</source>
        <translation>Etwas fehlt oder stimmt nicht</translation>
    </message>
    <message>
        <source>The line below says what.</source>
        <translation>Die Zeile darunter sagt, was.</translation>
    </message>
    <message>
        <source>private, never goes to others</source>
        <translation>privat, geht nie an andere</translation>
    </message>
    <message>
        <source>withdrew the consent</source>
        <translation>hat die Zustimmung zurückgezogen</translation>
    </message>
    <message>
        <source>agreed to one room only</source>
        <translation>hat nur einem Raum zugestimmt</translation>
    </message>
    <message>
        <source>this tablet</source>
        <translation>dieses Tablet</translation>
    </message>
    <message>
        <source>paired with this tablet</source>
        <translation>mit diesem Tablet gekoppelt</translation>
    </message>
    <message>
        <source>on this tablet&apos;s list</source>
        <translation>auf der Liste dieses Tablets</translation>
    </message>
    <message>
        <source>known by what it wrote</source>
        <translation>bekannt durch seine Einträge</translation>
    </message>
    <message>
        <source>not known here</source>
        <translation>hier nicht bekannt</translation>
    </message>
    <message>
        <source>taken off the list</source>
        <translation>von der Liste genommen</translation>
    </message>
    <message>
        <source>Too short: at least eight characters, better four or five words.</source>
        <translation>Zu kurz: mindestens acht Zeichen, besser vier oder fünf Wörter.</translation>
    </message>
    <message>
        <source>Easy to guess: a stranger with the file opens it. Take more words.</source>
        <translation>Leicht zu erraten: Fremde mit der Datei öffnen sie. Mehr Wörter nehmen.</translation>
    </message>
    <message>
        <source>Good enough against whoever finds the stick.</source>
        <translation>Gut genug gegen alle, die den Stick finden.</translation>
    </message>
    <message>
        <source>Hard to guess, also for somebody who tries for years.</source>
        <translation>Schwer zu erraten, auch in Jahren.</translation>
    </message>
    <message>
        <source>not known to be at that event</source>
        <translation>ist nicht als Teilnehmer dieses Turniers bekannt</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weiterer</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CautionNotes</name>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
    <message>
        <source>Written beside it: %1</source>
        <translation>Daneben geschrieben: %1</translation>
    </message>
</context>
<context>
    <name>ChangesCard</name>
    <message>
        <source>Changed</source>
        <translation>Geändert</translation>
    </message>
    <message>
        <source>Nothing changed: same as last time</source>
        <translation>Nichts geändert: wie beim letzten Mal</translation>
    </message>
</context>
<context>
    <name>CheckRow</name>
    <message>
        <source>In order: %1</source>
        <translation>In Ordnung: %1</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Gesagt</translation>
    </message>
    <message>
        <source>Not in order: %1</source>
        <translation>Nicht in Ordnung: %1</translation>
    </message>
</context>
<context>
    <name>CheckSheet</name>
    <message>
        <source>Check: %1</source>
        <translation>Kontrolle: %1</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Schild %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
    <message>
        <source>A racket is checked once it is strung and before it is collected.</source>
        <translation>Ein Schläger wird kontrolliert, sobald er bespannt und bevor er abgeholt ist.</translation>
    </message>
    <message numerus="yes">
        <source>Done again: %n time(s)</source>
        <translation>
            <numerusform>Neu gemacht: %n-mal</numerusform>
            <numerusform>Neu gemacht: %n-mal</numerusform>
        </translation>
    </message>
    <message>
        <source>The rest is in order</source>
        <translation>Der Rest ist in Ordnung</translation>
    </message>
    <message>
        <source>All is in order</source>
        <translation>Alles ist in Ordnung</translation>
    </message>
    <message>
        <source>The racket goes back to</source>
        <translation>Der Schläger geht zurück zu</translation>
    </message>
    <message>
        <source>Why it is done again</source>
        <translation>Warum er neu gemacht wird</translation>
    </message>
    <message>
        <source>Whoever strings it again reads this at the bench.</source>
        <translation>Wer ihn neu bespannt, liest das am Platz.</translation>
    </message>
    <message>
        <source>Back to: %1</source>
        <translation>Zurück zu: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) to look at</source>
        <translation>
            <numerusform>Noch %n Punkt anzusehen</numerusform>
            <numerusform>Noch %n Punkte anzusehen</numerusform>
        </translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Kontrolliert</translation>
    </message>
    <message>
        <source>Tag %1: %2</source>
        <translation>Schild %1: %2</translation>
    </message>
    <message>
        <source>Earlier checks</source>
        <translation>Frühere Kontrollen</translation>
    </message>
</context>
<context>
    <name>CodeShown</name>
    <message>
        <source>At %1, until %2</source>
        <translation>Unter %1, bis %2</translation>
    </message>
</context>
<context>
    <name>CodeSquare</name>
    <message>
        <source>Code to scan</source>
        <translation>Code zum Scannen</translation>
    </message>
</context>
<context>
    <name>ConfirmScreen</name>
    <message>
        <source>Read-back for %1</source>
        <translation>Rücklesung für %1</translation>
    </message>
</context>
<context>
    <name>ConsentScreen</name>
    <message>
        <source>Consent of %1</source>
        <translation>Einwilligung von %1</translation>
    </message>
</context>
<context>
    <name>CsvWords</name>
    <message>
        <source>The file is larger than %1. Split it, or leave out what is not needed.</source>
        <translation>Die Datei ist größer als %1. Teilen Sie sie, oder lassen Sie weg, was nicht nötig ist.</translation>
    </message>
    <message>
        <source>Its letters can’t be read. Save the file as UTF-8.</source>
        <translation>Die Schrift lässt sich nicht lesen. Speichern Sie die Datei als UTF-8.</translation>
    </message>
    <message>
        <source>This is no text. Choose a table saved as CSV.</source>
        <translation>Das ist kein Text. Wählen Sie eine als CSV gespeicherte Tabelle.</translation>
    </message>
    <message>
        <source>A letter can’t be read. Save the file as UTF-8, or choose its encoding.</source>
        <translation>Ein Buchstabe lässt sich nicht lesen. Speichern Sie die Datei als UTF-8, oder wählen Sie ihre Schrift.</translation>
    </message>
    <message>
        <source>The file is empty. Choose one whose first line names the columns.</source>
        <translation>Die Datei ist leer. Wählen Sie eine, deren erste Zeile die Spalten nennt.</translation>
    </message>
    <message numerus="yes">
        <source>There are more than %n row(s). Split the file.</source>
        <translation>
            <numerusform>Es ist mehr als %n Zeile. Teilen Sie die Datei.</numerusform>
            <numerusform>Es sind mehr als %n Zeilen. Teilen Sie die Datei.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>There are more than %n column(s). Leave out what is not needed.</source>
        <translation>
            <numerusform>Es ist mehr als %n Spalte. Lassen Sie weg, was nicht nötig ist.</numerusform>
            <numerusform>Es sind mehr als %n Spalten. Lassen Sie weg, was nicht nötig ist.</numerusform>
        </translation>
    </message>
    <message>
        <source>The field is too long. Shorten it, or look for a missing quotation mark.</source>
        <translation>Das Feld ist zu lang. Kürzen Sie es, oder suchen Sie ein fehlendes Anführungszeichen.</translation>
    </message>
    <message numerus="yes">
        <source>The row has %n field(s)</source>
        <translation>
            <numerusform>Die Zeile hat %n Feld</numerusform>
            <numerusform>Die Zeile hat %n Felder</numerusform>
        </translation>
    </message>
    <message>
        <source>the first line %1. A separator is missing or too many, or a field that holds one needs quotation marks.</source>
        <translation>die erste %1. Ein Trennzeichen fehlt oder ist zu viel, oder ein Feld, das eines enthält, braucht Anführungszeichen.</translation>
    </message>
    <message>
        <source>A quotation mark stands inside a field. Put the whole field in quotation marks and double those inside it.</source>
        <translation>In einem Feld steht ein Anführungszeichen. Setzen Sie das ganze Feld in Anführungszeichen und verdoppeln Sie die darin.</translation>
    </message>
    <message>
        <source>Text stands after the closing quotation mark. Double the quotation marks inside a field.</source>
        <translation>Nach dem schließenden Anführungszeichen steht noch Text. Verdoppeln Sie Anführungszeichen in einem Feld.</translation>
    </message>
    <message>
        <source>A quotation mark opens here and is never closed.</source>
        <translation>Hier beginnt ein Anführungszeichen und endet nie.</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>Line %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
</context>
<context>
    <name>DayLine</name>
    <message>
        <source>%1 min late</source>
        <translation>%1 min zu spät</translation>
    </message>
    <message>
        <source>on court</source>
        <translation>auf dem Platz</translation>
    </message>
    <message>
        <source>on the machine now</source>
        <translation>jetzt auf der Maschine</translation>
    </message>
    <message>
        <source>not as told</source>
        <translation>nicht wie gesagt</translation>
    </message>
    <message>
        <source>court</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>late %1′</source>
        <translation>%1′ spät</translation>
    </message>
</context>
<context>
    <name>DayModel</name>
    <message>
        <source>there is no event yet</source>
        <translation>es gibt noch kein Turnier</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>%1: no shift has room any more; told was %2</source>
        <translation>%1: keine Schicht hat mehr Platz; gesagt war %2</translation>
    </message>
    <message>
        <source>%1: strung %2 at %3, told was %4</source>
        <translation>%1: bespannt %2 bei %3, gesagt war %4</translation>
    </message>
    <message>
        <source> – late now</source>
        <translation> – jetzt zu spät</translation>
    </message>
    <message>
        <source>%1 has two rackets on the machine. Is %2 strung? Then tap it on.</source>
        <translation>%1 hat zwei Schläger auf der Maschine. Ist %2 bespannt? Dann weitertippen.</translation>
    </message>
    <message>
        <source>%1 is on a machine of somebody who is not in the team.</source>
        <translation>%1 ist auf der Maschine von jemandem, der nicht im Team ist.</translation>
    </message>
    <message>
        <source>%1 has no machine: theirs is out of order, and no other is free.</source>
        <translation>%1 hat keine Maschine: die eigene ist außer Betrieb, und keine andere ist frei.</translation>
    </message>
    <message>
        <source>%1 is planned on %2: their own machine is out of order.</source>
        <translation>%1 ist auf %2 geplant: die eigene Maschine ist außer Betrieb.</translation>
    </message>
    <message>
        <source>There is no machine for %1.</source>
        <translation>Für %1 gibt es keine Maschine.</translation>
    </message>
    <message>
        <source>%1 waits for the player’s answer and is in no plan.</source>
        <translation>%1 wartet auf die Antwort des Spielers und ist in keinem Plan.</translation>
    </message>
    <message>
        <source>No shift has room for %1.</source>
        <translation>Keine Schicht hat Platz für %1.</translation>
    </message>
    <message>
        <source>Nobody has said who is in the room when: everybody counts as there from 8 to 20 o’clock.</source>
        <translation>Niemand hat gesagt, wer wann da ist: Alle gelten von 8 bis 20 Uhr als anwesend.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 will be late: ready %2</source>
        <translation>%1 wird zu spät: fertig %2</translation>
    </message>
    <message>
        <source>%1 will be late: no shift has room</source>
        <translation>%1 wird zu spät: keine Schicht hat Platz</translation>
    </message>
    <message>
        <source>%1 withdrew</source>
        <translation>%1 hat zurückgezogen</translation>
    </message>
    <message>
        <source>%1 moved from %2 to %3</source>
        <translation>%1 ist von %2 zu %3 gezogen</translation>
    </message>
    <message>
        <source>%1: %3 strings it, not %2</source>
        <translation>%1: %3 bespannt ihn, nicht %2</translation>
    </message>
    <message>
        <source>%1: ready %3 instead of %2</source>
        <translation>%1: fertig %3 statt %2</translation>
    </message>
    <message>
        <source>%1 will be ready in time again</source>
        <translation>%1 wird wieder rechtzeitig fertig</translation>
    </message>
    <message>
        <source>%1: already ready %2</source>
        <translation>%1: schon %2 fertig</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n match(es) played</source>
        <translation>
            <numerusform>%1: %n Match gespielt</numerusform>
            <numerusform>%1: %n Matches gespielt</numerusform>
        </translation>
    </message>
    <message>
        <source>Came in: %1</source>
        <translation>Angenommen: %1</translation>
    </message>
    <message>
        <source>Strung or gone: %1</source>
        <translation>Bespannt oder weg: %1</translation>
    </message>
    <message>
        <source>pair with its server, or make one</source>
        <translation>mit seinem Server koppeln oder eines anlegen</translation>
    </message>
    <message>
        <source>%1 is in no plan: it is wanted, or went on the machine, at a time that can’t be. Look at its times.</source>
        <translation>%1 ist in keinem Plan: die Zeit, zu der er gewünscht wird oder auf die Maschine kam, kann nicht stimmen. Sehen Sie seine Zeiten an.</translation>
    </message>
</context>
<context>
    <name>DayMoney</name>
    <message>
        <source>A box can&apos;t hold less than nothing.</source>
        <translation>Weniger als nichts kann nicht in der Kasse liegen.</translation>
    </message>
</context>
<context>
    <name>DayStepper</name>
    <message>
        <source>%1: a day earlier</source>
        <translation>%1: einen Tag früher</translation>
    </message>
    <message>
        <source>%1: a day later</source>
        <translation>%1: einen Tag später</translation>
    </message>
</context>
<context>
    <name>DayView</name>
    <message>
        <source>There can be no plan of the day</source>
        <translation>Es kann keinen Tagesplan geben</translation>
    </message>
    <message>
        <source>Since you last looked (%1)</source>
        <translation>Seit dem letzten Blick (%1)</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) to string</source>
        <translation>
            <numerusform>%n Schläger zu bespannen</numerusform>
            <numerusform>%n Schläger zu bespannen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them late</source>
        <translation>
            <numerusform>davon %n zu spät</numerusform>
            <numerusform>davon %n zu spät</numerusform>
        </translation>
    </message>
    <message>
        <source>all in time</source>
        <translation>alle rechtzeitig</translation>
    </message>
    <message>
        <source>Plan anew</source>
        <translation>Neu planen</translation>
    </message>
    <message>
        <source>Not as it was told</source>
        <translation>Nicht wie gesagt</translation>
    </message>
    <message numerus="yes">
        <source>Tell the room (%n change(s))</source>
        <translation>
            <numerusform>Dem Raum sagen (%n Änderung)</numerusform>
            <numerusform>Dem Raum sagen (%n Änderungen)</numerusform>
        </translation>
    </message>
    <message>
        <source>Tell the room this plan</source>
        <translation>Diesen Plan dem Raum sagen</translation>
    </message>
    <message>
        <source>The room knows</source>
        <translation>Der Raum weiß es</translation>
    </message>
    <message>
        <source>To be looked at</source>
        <translation>Anzusehen</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Bank</translation>
    </message>
    <message>
        <source>On the machine, strung by about</source>
        <translation>Auf der Maschine, bespannt etwa</translation>
    </message>
    <message>
        <source>Strung</source>
        <translation>Bespannt</translation>
    </message>
    <message>
        <source>Promised for</source>
        <translation>Versprochen für</translation>
    </message>
    <message>
        <source>no time</source>
        <translation>keine Zeit</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s) late</source>
        <translation>
            <numerusform>%n Minute zu spät</numerusform>
            <numerusform>%n Minuten zu spät</numerusform>
        </translation>
    </message>
    <message>
        <source>Check, stencil and bag are counted in. Ask the player, or move what can wait.</source>
        <translation>Kontrolle, Schablone und Tasche sind mitgerechnet. Den Spieler fragen oder verschieben, was warten kann.</translation>
    </message>
    <message>
        <source>A rush from the court: it goes before all that waits.</source>
        <translation>Ein Eilauftrag vom Platz: Er geht vor allem, was wartet.</translation>
    </message>
    <message>
        <source>Its home bench is %1; there it would be later.</source>
        <translation>Seine Stammbank ist %1; dort wäre er später fertig.</translation>
    </message>
    <message>
        <source>The room was told something else.</source>
        <translation>Dem Raum war etwas anderes gesagt.</translation>
    </message>
</context>
<context>
    <name>DeskFind</name>
    <message>
        <source>Desk</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>No event yet: rackets get no tag numbers</source>
        <translation>Noch kein Turnier: Schläger erhalten keine Nummern</translation>
    </message>
    <message>
        <source>New player</source>
        <translation>Neuer Spieler</translation>
    </message>
    <message>
        <source>Nobody of that name</source>
        <translation>Niemand mit diesem Namen</translation>
    </message>
    <message>
        <source>No player is known on this device</source>
        <translation>Auf diesem Gerät ist kein Spieler bekannt</translation>
    </message>
    <message>
        <source>Look at the spelling, or begin a new player with this name.</source>
        <translation>Schreibweise prüfen oder einen neuen Spieler mit diesem Namen anlegen.</translation>
    </message>
    <message>
        <source>Players come with an entry list, with an exchange, or are added here.</source>
        <translation>Spieler kommen mit einer Meldeliste, mit einem Abgleich oder werden hier angelegt.</translation>
    </message>
    <message>
        <source>Whose rackets? Name or tag</source>
        <translation>Wessen Schläger? Name oder Schild</translation>
    </message>
    <message>
        <source>Scan a tag with the camera</source>
        <translation>Ein Schild mit der Kamera scannen</translation>
    </message>
    <message>
        <source>Work on your own: make an event</source>
        <translation>Allein arbeiten: ein Turnier anlegen</translation>
    </message>
    <message numerus="yes">
        <source>%n unfinished drop-off(s)</source>
        <translation>
            <numerusform>%n unfertige Abgabe</numerusform>
            <numerusform>%n unfertige Abgaben</numerusform>
        </translation>
    </message>
    <message>
        <source>Unfinished drop-offs</source>
        <translation>Unfertige Abgaben</translation>
    </message>
</context>
<context>
    <name>DeskPlayer</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Ask everything</source>
        <translation>Alles fragen</translation>
    </message>
    <message>
        <source>Take rackets in</source>
        <translation>Schläger annehmen</translation>
    </message>
    <message>
        <source>Same as last time</source>
        <translation>Wie beim letzten Mal</translation>
    </message>
</context>
<context>
    <name>DeviceSheet</name>
    <message>
        <source>Shut out since %1. It comes in again with a new code; what it wrote stays.</source>
        <translation>Ausgeschlossen seit %1 – mit einem neuen Code kommt es wieder herein; was es geschrieben hat, bleibt.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Its role</source>
        <translation>Seine Rolle</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>Desk</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>Stringer</source>
        <translation>Bespanner</translation>
    </message>
    <message>
        <source>Reader</source>
        <translation>Leser</translation>
    </message>
    <message>
        <source>May do everything, invite tablets and shut them out.</source>
        <translation>Darf alles, lädt Tablets ein und schließt sie aus.</translation>
    </message>
    <message>
        <source>Takes rackets in and hands them out, keeps money, stock and plans. Does not change team, prices or lists of steps.</source>
        <translation>Nimmt Schläger an und gibt sie aus, führt Geld, Bestand und Pläne. Ändert weder Team noch Preise noch Schrittlisten.</translation>
    </message>
    <message>
        <source>Strings, checks and takes rackets in. Does not change money, stock, plans or the event.</source>
        <translation>Bespannt, prüft und nimmt Schläger an. Ändert weder Geld noch Bestand, Pläne oder das Turnier.</translation>
    </message>
    <message>
        <source>Sees everything that may come to this room, changes nothing.</source>
        <translation>Sieht alles, was in diesen Raum kommen darf, ändert nichts.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Yes, shut it out now</source>
        <translation>Ja, jetzt ausschließen</translation>
    </message>
    <message>
        <source>Shut it out: it is lost or not ours</source>
        <translation>Ausschließen: verloren oder nicht unseres</translation>
    </message>
</context>
<context>
    <name>DevicesCard</name>
    <message>
        <source>Tablets of this room</source>
        <translation>Tablets dieses Raums</translation>
    </message>
    <message>
        <source>Touch one to give it another name or role, or to shut it out.</source>
        <translation>Eines antippen, um ihm einen anderen Namen oder eine andere Rolle zu geben oder es auszuschließen.</translation>
    </message>
    <message>
        <source>Needs a connection to the event server</source>
        <translation>Braucht eine Verbindung zum Turnierserver</translation>
    </message>
    <message>
        <source>That was not done</source>
        <translation>Das wurde nicht getan</translation>
    </message>
    <message>
        <source>%1 (this tablet)</source>
        <translation>%1 (dieses Tablet)</translation>
    </message>
    <message>
        <source>shut out since %1</source>
        <translation>ausgeschlossen seit %1</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(s) came later</source>
        <translation>
            <numerusform>%n Eintrag kam danach</numerusform>
            <numerusform>%n Einträge kamen danach</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DiscountSheet</name>
    <message>
        <source>Discount: %1</source>
        <translation>Nachlass: %1</translation>
    </message>
    <message>
        <source>Discount</source>
        <translation>Nachlass</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Say why; then choose how much.</source>
        <translation>Sagen Sie, warum; dann wählen Sie, wie viel.</translation>
    </message>
    <message>
        <source>A tenth off</source>
        <translation>Ein Zehntel weniger</translation>
    </message>
    <message>
        <source>A fifth off</source>
        <translation>Ein Fünftel weniger</translation>
    </message>
    <message>
        <source>Free of charge</source>
        <translation>Kostenlos</translation>
    </message>
</context>
<context>
    <name>DoingsBar</name>
    <message>
        <source>I see</source>
        <translation>Verstanden</translation>
    </message>
</context>
<context>
    <name>DrawModel</name>
    <message>
        <source>Last round of qualifying</source>
        <translation>Letzte Runde der Qualifikation</translation>
    </message>
    <message>
        <source>Qualifying, round %1</source>
        <translation>Qualifikation, Runde %1</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Finale</translation>
    </message>
    <message>
        <source>Semi-finals</source>
        <translation>Halbfinale</translation>
    </message>
    <message>
        <source>Quarter-finals</source>
        <translation>Viertelfinale</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>wild card</source>
        <translation>Wildcard</translation>
    </message>
    <message>
        <source>qualifier</source>
        <translation>qualifiziert</translation>
    </message>
    <message>
        <source>lucky loser</source>
        <translation>Lucky Loser</translation>
    </message>
    <message>
        <source>alternate</source>
        <translation>nachgerückt</translation>
    </message>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>%n Bank</numerusform>
            <numerusform>%n Bänke</numerusform>
        </translation>
    </message>
    <message>
        <source>The file can&apos;t be read.</source>
        <translation>Die Datei lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>Choose another one.</source>
        <translation>Eine andere wählen.</translation>
    </message>
    <message>
        <source>The file is larger than a draw can be.</source>
        <translation>Die Datei ist größer, als ein Tableau sein kann.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n win(s)</source>
        <translation>
            <numerusform>%1: %n Sieg</numerusform>
            <numerusform>%1: %n Siege</numerusform>
        </translation>
    </message>
    <message>
        <source>Write round and match as 2/7.</source>
        <translation>Runde und Match als 2/7 schreiben.</translation>
    </message>
</context>
<context>
    <name>DrawView</name>
    <message>
        <source>There is no draw yet</source>
        <translation>Es gibt noch kein Tableau</translation>
    </message>
    <message>
        <source>Bring it in from a table with a line for each place: line, player, and if they are known seed and rating.</source>
        <translation>Aus einer Tabelle mit einer Zeile je Platz einlesen: line, player und, falls bekannt, seed und rating.</translation>
    </message>
    <message>
        <source>Draw: %1</source>
        <translation>Tableau: %1</translation>
    </message>
    <message>
        <source>Bring a draw in</source>
        <translation>Tableau einlesen</translation>
    </message>
    <message>
        <source>Something in this draw does not fit together</source>
        <translation>In diesem Tableau passt etwas nicht zusammen</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>Zeigen: %1</translation>
    </message>
    <message>
        <source>Which draw</source>
        <translation>Welches Tableau</translation>
    </message>
    <message>
        <source>Take this draw away</source>
        <translation>Dieses Tableau wegnehmen</translation>
    </message>
    <message>
        <source>Draw taken away</source>
        <translation>Tableau weggenommen</translation>
    </message>
    <message>
        <source>Standing: %1</source>
        <translation>Stand: %1</translation>
    </message>
</context>
<context>
    <name>DropOffDraft</name>
    <message>
        <source>Rackets taken in: %1</source>
        <translation>Schläger angenommen: %1</translation>
    </message>
    <message>
        <source>another answer has come in</source>
        <translation>eine weitere Antwort ist eingetroffen</translation>
    </message>
    <message>
        <source>choose one of them and read back again</source>
        <translation>eine davon wählen und noch einmal rücklesen</translation>
    </message>
    <message>
        <source>a question was answered at another tablet meanwhile</source>
        <translation>inzwischen wurde eine Frage an einem anderen Tablet beantwortet</translation>
    </message>
    <message>
        <source>look at the answer and read back again</source>
        <translation>die Antwort ansehen und noch einmal rücklesen</translation>
    </message>
</context>
<context>
    <name>DropOffPage</name>
    <message>
        <source>Player</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>Strings</source>
        <translation>Saiten</translation>
    </message>
    <message>
        <source>Tension</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Abschluss</translation>
    </message>
    <message>
        <source>New player</source>
        <translation>Neuer Spieler</translation>
    </message>
    <message>
        <source>Ask what is known; everything but strings and tensions can wait.</source>
        <translation>Fragen, was bekannt ist; alles außer Saiten und Spannungen kann warten.</translation>
    </message>
    <message>
        <source>As last time. Say what is different.</source>
        <translation>Wie beim letzten Mal. Sagen, was anders ist.</translation>
    </message>
    <message>
        <source>%1, page %2 of 4</source>
        <translation>%1, Seite %2 von 4</translation>
    </message>
    <message>
        <source>Something else is different</source>
        <translation>Etwas anderes ist anders</translation>
    </message>
    <message>
        <source>The player is not here: store unconfirmed</source>
        <translation>Der Spieler ist nicht da: unbestätigt speichern</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Leave it unfinished</source>
        <translation>Unfertig lassen</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Read back</source>
        <translation>Rücklesen</translation>
    </message>
</context>
<context>
    <name>EventModel</name>
    <message>
        <source>Give the event a name.</source>
        <translation>Geben Sie dem Turnier einen Namen.</translation>
    </message>
    <message>
        <source>Say which day.</source>
        <translation>Sagen Sie, welcher Tag.</translation>
    </message>
    <message>
        <source>No such day; write it as %1.</source>
        <translation>Diesen Tag gibt es nicht; schreiben Sie ihn wie %1.</translation>
    </message>
    <message>
        <source>It lies before the first day.</source>
        <translation>Er liegt vor dem ersten Tag.</translation>
    </message>
    <message>
        <source>No such currency; write its three letters, such as EUR.</source>
        <translation>Diese Währung gibt es nicht; schreiben Sie ihre drei Buchstaben, etwa EUR.</translation>
    </message>
    <message>
        <source>No such time zone; write it as Europe/Lisbon.</source>
        <translation>Diese Zeitzone gibt es nicht; schreiben Sie sie wie Europe/Lisbon.</translation>
    </message>
</context>
<context>
    <name>EventSheet</name>
    <message>
        <source>Event changed</source>
        <translation>Turnier geändert</translation>
    </message>
    <message>
        <source>Name and days of the event</source>
        <translation>Name und Tage des Turniers</translation>
    </message>
    <message>
        <source>Make an event</source>
        <translation>Ein Turnier anlegen</translation>
    </message>
    <message>
        <source>It is kept on this tablet and needs no network. Rackets get their numbers, and room, bench and money are there at once.</source>
        <translation>Es bleibt auf diesem Tablet und braucht kein Netz. Schläger erhalten ihre Nummern; Raum, Werkbank und Geld sind sofort da.</translation>
    </message>
    <message>
        <source>Name of the event</source>
        <translation>Name des Turniers</translation>
    </message>
    <message>
        <source>Stringing at …</source>
        <translation>Bespannen bei …</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Place, if wanted</source>
        <translation>Ort, wenn gewünscht</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Ihr Name</translation>
    </message>
    <message>
        <source>Promises count with whoever is on the team, from 8 to 20 o&apos;clock until shifts are planned.</source>
        <translation>Zusagen rechnen mit allen im Team, von 8 bis 20 Uhr, bis Schichten geplant sind.</translation>
    </message>
    <message>
        <source>Currency, such as EUR</source>
        <translation>Währung, etwa EUR</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) taken in before belong to it</source>
        <translation>
            <numerusform>%n Schläger von vorher gehört dazu</numerusform>
            <numerusform>%n Schläger von vorher gehören dazu</numerusform>
        </translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Make the event</source>
        <translation>Turnier anlegen</translation>
    </message>
</context>
<context>
    <name>EventsCard</name>
    <message>
        <source>Event</source>
        <translation>Turnier</translation>
    </message>
    <message>
        <source>There is no event yet</source>
        <translation>Es gibt noch kein Turnier</translation>
    </message>
    <message>
        <source>of the event server</source>
        <translation>des Turnierservers</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) here</source>
        <translation>
            <numerusform>%n Schläger hier</numerusform>
            <numerusform>%n Schläger hier</numerusform>
        </translation>
    </message>
    <message>
        <source>Change name and days</source>
        <translation>Name und Tage ändern</translation>
    </message>
    <message>
        <source>Make an event</source>
        <translation>Ein Turnier anlegen</translation>
    </message>
    <message>
        <source>Which one is shown</source>
        <translation>Welches gezeigt wird</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Auswählen</translation>
    </message>
    <message>
        <source>Desk, room, bench, plan, money, stock and team show this one. The others stay here as they are.</source>
        <translation>Annahme, Raum, Werkbank, Plan, Geld, Vorrat und Team zeigen dieses. Die anderen bleiben hier, wie sie sind.</translation>
    </message>
</context>
<context>
    <name>ExchangeModel</name>
    <message>
        <source>That is no whole code. Scan it once more, or type the five words.</source>
        <translation>Das ist kein ganzer Code. Scannen Sie ihn noch einmal, oder tippen Sie die fünf Wörter.</translation>
    </message>
    <message>
        <source>That is no address. One looks like desk.local or 192.168.1.20:26110.</source>
        <translation>Das ist keine Adresse. Eine sieht aus wie desk.local oder 192.168.1.20:26110.</translation>
    </message>
    <message>
        <source>Word %1 can’t be one of a code. Each has five letters; compare it letter by letter.</source>
        <translation>Wort %1 kann nicht zu einem Code gehören. Jedes hat fünf Buchstaben; vergleichen Sie es Buchstabe für Buchstabe.</translation>
    </message>
    <message>
        <source>A code has five words of five letters each. Compare them with the other screen.</source>
        <translation>Ein Code hat fünf Wörter mit je fünf Buchstaben. Vergleichen Sie sie mit dem anderen Bildschirm.</translation>
    </message>
</context>
<context>
    <name>ExchangeOverview</name>
    <message>
        <source>Exchange</source>
        <translation>Abgleich</translation>
    </message>
    <message>
        <source>Everything works without a network; here devices bring each other up to date.</source>
        <translation>Alles geht ohne Netz; hier bringen sich die Geräte gegenseitig auf den neuesten Stand.</translation>
    </message>
    <message>
        <source>This tablet&apos;s clock or theirs is off by %1</source>
        <translation>Die Uhr dieses Tablets oder die andere geht um %1 falsch</translation>
    </message>
    <message>
        <source>This tablet&apos;s clock is ahead. Look at both and set the wrong one; nothing is lost meanwhile.</source>
        <translation>Die Uhr dieses Tablets geht vor. Sehen Sie beide an und stellen Sie die falsche; verloren geht inzwischen nichts.</translation>
    </message>
    <message>
        <source>A clock far ahead: %1</source>
        <translation>Eine Uhr geht weit vor: %1</translation>
    </message>
    <message>
        <source>What was written there carries a time to come. Everything is kept; set that device&apos;s clock before it is used again.</source>
        <translation>Was dort geschrieben wurde, trägt eine Zeit in der Zukunft. Alles bleibt erhalten; stellen Sie die Uhr dieses Geräts, bevor es wieder benutzt wird.</translation>
    </message>
    <message>
        <source>Some books could not be made equal</source>
        <translation>Einige Bücher konnten nicht abgeglichen werden</translation>
    </message>
    <message>
        <source>One side may not hand them on, or holds them otherwise. Nothing is lost and everything else has crossed; compare those players at the desk.</source>
        <translation>Eine Seite darf sie nicht weitergeben oder hält sie anders. Nichts ist verloren, und alles andere ist übertragen; vergleichen Sie diese Spieler an der Annahme.</translation>
    </message>
    <message>
        <source>An arrival is under way</source>
        <translation>Eine Ankunft ist im Gang</translation>
    </message>
    <message>
        <source>Arriving at an event</source>
        <translation>Ankunft bei einem Turnier</translation>
    </message>
    <message>
        <source>It goes on where it stopped.</source>
        <translation>Sie geht da weiter, wo sie stehen blieb.</translation>
    </message>
    <message>
        <source>Step by step: the event server, its entry list, who of it is known here, what goes across, and what came of it.</source>
        <translation>Schritt für Schritt: der Turnierserver, seine Meldeliste, wer davon hier bekannt ist, was hinübergeht und was dabei herauskam.</translation>
    </message>
    <message>
        <source>Go on with the arrival</source>
        <translation>Mit der Ankunft weitermachen</translation>
    </message>
    <message>
        <source>Arrive</source>
        <translation>Ankommen</translation>
    </message>
    <message>
        <source>Copied devices</source>
        <translation>Kopierte Geräte</translation>
    </message>
    <message>
        <source>The data of one device was copied, and both copies wrote on. The words of both are kept; where they differ, a question is open. Go on with one of them only.</source>
        <translation>Die Daten eines Geräts wurden kopiert, und beide Kopien haben weitergeschrieben. Die Angaben beider bleiben erhalten; wo sie abweichen, ist eine Frage offen. Benutzen Sie nur eines davon weiter.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n book(s)</source>
        <translation>
            <numerusform>%1: %n Buch</numerusform>
            <numerusform>%1: %n Bücher</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Set aside: %n entry(s)</source>
        <translation>
            <numerusform>Beiseitegelegt: %n Eintrag</numerusform>
            <numerusform>Beiseitegelegt: %n Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>They came in but break a rule, so they are kept and not taken over. Show them to whoever looks after the event server.</source>
        <translation>Sie kamen an, verletzen aber eine Regel: aufbewahrt, doch nicht übernommen. Zeigen Sie sie der Person, die den Turnierserver betreut.</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n Minute</numerusform>
            <numerusform>%n Minuten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n Stunde</numerusform>
            <numerusform>%n Stunden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>The other clock is ahead. Look at both and set the wrong one; nothing is lost meanwhile.</source>
        <translation>Die andere Uhr geht vor. Sehen Sie beide an und stellen Sie die falsche; inzwischen geht nichts verloren.</translation>
    </message>
    <message>
        <source>Pair with another one</source>
        <translation>Mit einem anderen koppeln</translation>
    </message>
    <message>
        <source>This tablet shows %1</source>
        <translation>Dieses Tablet zeigt %1</translation>
    </message>
    <message>
        <source>The event server’s is %1. Both are kept here; %2 does not go to the server.</source>
        <translation>Das des Turnierservers ist %1. Beide bleiben hier; %2 geht nicht an den Server.</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>%1 zeigen</translation>
    </message>
</context>
<context>
    <name>ExchangeState</name>
    <message>
        <source>No event server yet</source>
        <translation>Noch kein Turnierserver</translation>
    </message>
    <message>
        <source>Work goes on without one. Pair when you arrive at an event.</source>
        <translation>Die Arbeit geht ohne weiter. Koppeln Sie, wenn Sie bei einem Turnier ankommen.</translation>
    </message>
    <message>
        <source>Pairing ...</source>
        <translation>Wird gekoppelt ...</translation>
    </message>
    <message>
        <source>Not connected; tried again in the background.</source>
        <translation>Nicht verbunden; wird im Hintergrund wieder versucht.</translation>
    </message>
    <message>
        <source>Greeting ...</source>
        <translation>Begrüßung ...</translation>
    </message>
    <message>
        <source>Connected, bringing each other up to date.</source>
        <translation>Verbunden, beide bringen sich auf den neuesten Stand.</translation>
    </message>
    <message>
        <source>Connected and up to date; changes cross at once.</source>
        <translation>Verbunden und auf dem neuesten Stand; Änderungen gehen sofort hinüber.</translation>
    </message>
    <message>
        <source>This tablet&apos;s role there: %1</source>
        <translation>Rolle dieses Tablets dort: %1</translation>
    </message>
    <message>
        <source>Players coming in; those that are here can be used already</source>
        <translation>Spieler kommen herein; wer da ist, ist schon nutzbar</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Nothing waits to be sent.</source>
        <translation>Nichts wartet aufs Senden.</translation>
    </message>
    <message numerus="yes">
        <source>More than %n action(s) wait to be sent.</source>
        <translation>
            <numerusform>Mehr als %n Schritt wartet aufs Senden.</numerusform>
            <numerusform>Mehr als %n Schritte warten aufs Senden.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n action(s) wait to be sent.</source>
        <translation>
            <numerusform>%n Schritt wartet aufs Senden.</numerusform>
            <numerusform>%n Schritte warten aufs Senden.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Last agreement: %1, over %n book(s). Both screens show the same words.</source>
        <translation>
            <numerusform>Letzte Übereinstimmung: %1, über %n Buch. Beide Bildschirme zeigen dieselben Wörter.</numerusform>
            <numerusform>Letzte Übereinstimmung: %1, über %n Bücher. Beide Bildschirme zeigen dieselben Wörter.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) stay on this tablet only. Whoever plays here is ticked under “Arrive”.</source>
        <translation>
            <numerusform>%n Spieler bleibt nur auf diesem Tablet. Wer hier spielt, wird unter „Ankommen“ angehakt.</numerusform>
            <numerusform>%n Spieler bleiben nur auf diesem Tablet. Wer hier spielt, wird unter „Ankommen“ angehakt.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ExchangeTrouble</name>
    <message>
        <source>The code does not hold</source>
        <translation>Der Code stimmt nicht</translation>
    </message>
    <message>
        <source>The code has expired</source>
        <translation>Der Code ist abgelaufen</translation>
    </message>
    <message>
        <source>The other side speaks a newer protocol</source>
        <translation>Die Gegenseite spricht ein neueres Protokoll</translation>
    </message>
    <message>
        <source>A clock is too far off</source>
        <translation>Eine Uhr geht zu falsch</translation>
    </message>
    <message>
        <source>This tablet&apos;s disk is full</source>
        <translation>Der Speicher dieses Tablets ist voll</translation>
    </message>
    <message>
        <source>The exchange has stopped</source>
        <translation>Der Austausch ist stehen geblieben</translation>
    </message>
    <message>
        <source>It is not the one this tablet was paired with, or it was set up anew. Ask the head of the room, and pair again only if that is so.</source>
        <translation>Es ist nicht der, mit dem dieses Tablet gekoppelt wurde, oder er wurde neu aufgesetzt. Fragen Sie die Leitung und koppeln Sie nur dann neu.</translation>
    </message>
    <message>
        <source>Ask the head of the room: this tablet may have been taken off the list, or the code was used already.</source>
        <translation>Fragen Sie die Leitung: Das Tablet wurde vielleicht von der Liste genommen, oder der Code ist schon verbraucht.</translation>
    </message>
    <message>
        <source>Update Weavelog on the older device. Work goes on until then.</source>
        <translation>Aktualisieren Sie Weavelog auf dem älteren Gerät. Bis dahin geht die Arbeit weiter.</translation>
    </message>
    <message>
        <source>Make room; nothing that was confirmed is lost. Then try again.</source>
        <translation>Schaffen Sie Platz; nichts Bestätigtes geht verloren. Dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Try now</source>
        <translation>Jetzt versuchen</translation>
    </message>
    <message>
        <source>The other side is out of reach</source>
        <translation>Die andere Seite ist nicht erreichbar</translation>
    </message>
    <message>
        <source>The other side shows another certificate</source>
        <translation>Die andere Seite zeigt ein anderes Zertifikat</translation>
    </message>
    <message>
        <source>The other side does not know this tablet</source>
        <translation>Die andere Seite kennt dieses Tablet nicht</translation>
    </message>
    <message>
        <source>The other side refuses this tablet</source>
        <translation>Die andere Seite weist dieses Tablet ab</translation>
    </message>
    <message>
        <source>Work goes on; this tablet tries again by itself. Are both in one network, and is the address right?</source>
        <translation>Die Arbeit geht weiter; dieses Tablet versucht es von selbst wieder. Sind beide im selben Netz, und stimmt die Adresse?</translation>
    </message>
    <message>
        <source>Ask for a new code and pair again. Nothing on this tablet is lost.</source>
        <translation>Lassen Sie sich einen neuen Code geben und koppeln Sie neu. Auf diesem Tablet geht nichts verloren.</translation>
    </message>
    <message>
        <source>Compare it with the other screen word by word, or ask for a new one.</source>
        <translation>Vergleichen Sie ihn Wort für Wort mit dem anderen Bildschirm, oder lassen Sie sich einen neuen geben.</translation>
    </message>
    <message>
        <source>Ask for a new one: a code is good for fifteen minutes and for one tablet.</source>
        <translation>Lassen Sie sich einen neuen geben: ein Code gilt fünfzehn Minuten und für ein Tablet.</translation>
    </message>
    <message>
        <source>Set the clock of this tablet, and have a look at the other one.</source>
        <translation>Stellen Sie die Uhr dieses Tablets, und sehen Sie auch nach der anderen.</translation>
    </message>
    <message>
        <source>Try again; if it stays, show the line below to whoever looks after the tablets.</source>
        <translation>Versuchen Sie es noch einmal; bleibt es dabei, zeigen Sie die Zeile unten dem, der sich um die Tablets kümmert.</translation>
    </message>
</context>
<context>
    <name>FactsBeside</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Geboren</translation>
    </message>
    <message>
        <source>Country</source>
        <translation>Land</translation>
    </message>
    <message>
        <source>Rackets</source>
        <translation>Schläger</translation>
    </message>
    <message>
        <source>Last setup</source>
        <translation>Zuletzt</translation>
    </message>
    <message>
        <source>Last seen</source>
        <translation>Zuletzt da</translation>
    </message>
    <message>
        <source>On the entry list</source>
        <translation>Auf der Meldeliste</translation>
    </message>
    <message>
        <source>Known here</source>
        <translation>Hier bekannt</translation>
    </message>
</context>
<context>
    <name>FaultPage</name>
    <message>
        <source>What this device holds cannot be opened</source>
        <translation>Was dieses Gerät hält, lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>Nothing was changed. Mend it, then start the app again.</source>
        <translation>Nichts wurde verändert. Beheben, dann die App neu starten.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Beenden</translation>
    </message>
</context>
<context>
    <name>FieldsSheet</name>
    <message>
        <source>Keep</source>
        <translation>Übernehmen</translation>
    </message>
</context>
<context>
    <name>FigureStepper</name>
    <message>
        <source>Between %1 and %2 %3</source>
        <translation>Zwischen %1 und %2 %3</translation>
    </message>
    <message>
        <source>Less: %1</source>
        <translation>Weniger: %1</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Mehr: %1</translation>
    </message>
    <message>
        <source>This is no figure. Between %1 and %2 %3</source>
        <translation>Das ist keine Zahl. Zwischen %1 und %2 %3</translation>
    </message>
</context>
<context>
    <name>FindingCard</name>
    <message>
        <source>The player has not answered yet</source>
        <translation>Noch keine Antwort</translation>
    </message>
    <message>
        <source>Two different answers were taken: ask again</source>
        <translation>Zwei verschiedene Antworten wurden notiert: noch einmal fragen</translation>
    </message>
    <message>
        <source>The player said not to string it</source>
        <translation>Die Antwort war: nicht besaiten</translation>
    </message>
    <message>
        <source>Found earlier: %1</source>
        <translation>Früher gefunden: %1</translation>
    </message>
    <message>
        <source>Proposed: %1</source>
        <translation>Vorgeschlagen: %1</translation>
    </message>
    <message>
        <source>Answer: %1</source>
        <translation>Antwort: %1</translation>
    </message>
    <message>
        <source>Ask again</source>
        <translation>Noch einmal fragen</translation>
    </message>
    <message>
        <source>Ask the player</source>
        <translation>Rückfrage stellen</translation>
    </message>
    <message>
        <source>Go on against it ...</source>
        <translation>Trotzdem weiter ...</translation>
    </message>
    <message>
        <source>Go on without it ...</source>
        <translation>Ohne Antwort weiter ...</translation>
    </message>
    <message>
        <source>It is put right</source>
        <translation>Ist behoben</translation>
    </message>
</context>
<context>
    <name>FindingForm</name>
    <message>
        <source>Tap where it is</source>
        <translation>Stelle antippen</translation>
    </message>
    <message>
        <source>Choose what it is</source>
        <translation>Befund wählen</translation>
    </message>
    <message>
        <source>Write what it is</source>
        <translation>Befund beschreiben</translation>
    </message>
    <message>
        <source>Choose what you propose</source>
        <translation>Vorschlag wählen</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Tap the drawing, or choose here</source>
        <translation>Zeichnung antippen oder hier wählen</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>What is proposed to the player</source>
        <translation>Was vorgeschlagen wird</translation>
    </message>
    <message>
        <source>Nothing, only noted</source>
        <translation>Nichts, nur notiert</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Notieren: %1</translation>
    </message>
    <message>
        <source>Noted: %1</source>
        <translation>Notiert: %1</translation>
    </message>
</context>
<context>
    <name>FindingNote</name>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2. {1:?}</translation>
    </message>
</context>
<context>
    <name>FinishCard</name>
    <message>
        <source>Stencils and notes</source>
        <translation>Schablonen und Notizen</translation>
    </message>
    <message>
        <source>Racket stencil</source>
        <translation>Schlägerschablone</translation>
    </message>
    <message>
        <source>Its ink</source>
        <translation>Deren Farbe</translation>
    </message>
    <message>
        <source>String stencil</source>
        <translation>Saitenschablone</translation>
    </message>
    <message>
        <source>Dampener</source>
        <translation>Dämpfer</translation>
    </message>
    <message>
        <source>Overgrip</source>
        <translation>Übergriffband</translation>
    </message>
    <message>
        <source>Brought by</source>
        <translation>Gebracht von</translation>
    </message>
    <message>
        <source>May be collected by</source>
        <translation>Abholen darf</translation>
    </message>
    <message>
        <source>Note to the stringer</source>
        <translation>Hinweis an den Bespanner</translation>
    </message>
</context>
<context>
    <name>ForecastModel</name>
    <message>
        <source>not known yet</source>
        <translation>noch nicht bekannt</translation>
    </message>
</context>
<context>
    <name>ForecastView</name>
    <message>
        <source>There can be no forecast</source>
        <translation>Es kann keine Vorschau geben</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Wird gerechnet …</translation>
    </message>
    <message>
        <source>Some %1 rackets are still to come (eight times of ten between %2 and %3), %4 for each player and match. Estimates, from the draws and from what came so far.</source>
        <translation>Etwa %1 Schläger kommen noch (acht von zehn Malen zwischen %2 und %3), %4 je Spieler und Match. Schätzungen aus den Tableaus und dem, was bisher kam.</translation>
    </message>
    <message>
        <source>Rackets, by day</source>
        <translation>Schläger je Tag</translation>
    </message>
    <message>
        <source>Tap a day for its hours</source>
        <translation>Einen Tag antippen für seine Stunden</translation>
    </message>
    <message numerus="yes">
        <source>%n bench(es)</source>
        <translation>
            <numerusform>%n Bank</numerusform>
            <numerusform>%n Bänke</numerusform>
        </translation>
    </message>
    <message>
        <source>Rackets brought in each hour, and the benches on which they are ready within three hours</source>
        <translation>Schläger je Stunde und die Bänke, an denen sie in drei Stunden fertig sind</translation>
    </message>
    <message>
        <source>String, metres of all days</source>
        <translation>Saite, Meter aller Tage</translation>
    </message>
    <message>
        <source>By what each player had most at this event</source>
        <translation>Nach dem, was jeder Spieler hier am meisten hatte</translation>
    </message>
</context>
<context>
    <name>ForgetSheet</name>
    <message>
        <source>Forget %1?</source>
        <translation>%1 vergessen?</translation>
    </message>
    <message>
        <source>This can&apos;t be undone</source>
        <translation>Das lässt sich nicht rückgängig machen</translation>
    </message>
    <message>
        <source>Setups, rackets, jobs, notes and the name are erased on this device now, and on every other device at its next exchange. Only a mark stays that keeps them from coming back.</source>
        <translation>Bespannungswünsche, Schläger, Aufträge, Notizen und der Name werden auf diesem Gerät sofort gelöscht, auf jedem anderen beim nächsten Abgleich. Nur ein Vermerk bleibt, der ihre Rückkehr verhindert.</translation>
    </message>
    <message>
        <source>Entry lists of events stay as they are.</source>
        <translation>Meldelisten von Turnieren bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>The player has asked for it</source>
        <translation>Der Spieler hat darum gebeten</translation>
    </message>
    <message>
        <source>Forget this player</source>
        <translation>Diesen Spieler vergessen</translation>
    </message>
    <message numerus="yes">
        <source>All %n books of this person that are linked go together.</source>
        <translation>
            <numerusform>Alle %n verknüpften Bücher dieser Person gehen zusammen.</numerusform>
            <numerusform>Alle %n verknüpften Bücher dieser Person gehen zusammen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FrameDrawing</name>
    <message>
        <source>Drawing of the frame, 12 o&apos;clock at the head</source>
        <translation>Zeichnung des Rahmens, 12 Uhr am Kopf</translation>
    </message>
    <message>
        <source>The arrow keys choose a place; so does the list of places.</source>
        <translation>Die Pfeiltasten wählen eine Stelle, ebenso die Liste der Stellen.</translation>
    </message>
</context>
<context>
    <name>FrameNotes</name>
    <message>
        <source>Frame: %1</source>
        <translation>Rahmen: %1</translation>
    </message>
</context>
<context>
    <name>FrameQuestionScreen</name>
    <message>
        <source>Question to %1 about the frame</source>
        <translation>Frage an %1 zum Rahmen</translation>
    </message>
    <message>
        <source>Answer noted</source>
        <translation>Antwort notiert</translation>
    </message>
    <message>
        <source>This was answered elsewhere meanwhile</source>
        <translation>Das wurde inzwischen anderswo beantwortet</translation>
    </message>
</context>
<context>
    <name>GalleryWindow</name>
    <message>
        <source>Weavelog: every part in every state</source>
        <translation>Weavelog: jedes Teil in jedem Zustand</translation>
    </message>
</context>
<context>
    <name>GiantFigure</name>
    <message>
        <source>Mains %1 %2, crosses %3 %4</source>
        <translation>Längssaiten %1 %2, Quersaiten %3 %4</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Längssaiten</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Quersaiten</translation>
    </message>
    <message>
        <source>String not said</source>
        <translation>Saite nicht gesagt</translation>
    </message>
</context>
<context>
    <name>GiveCardModel</name>
    <message>
        <source>card of %1</source>
        <translation>Karte von %1</translation>
    </message>
</context>
<context>
    <name>GiveCardSheet</name>
    <message>
        <source>Card of %1</source>
        <translation>Karte von %1</translation>
    </message>
    <message>
        <source>There is no card</source>
        <translation>Es gibt keine Karte</translation>
    </message>
    <message>
        <source>The player did not agree that this goes to others. Ask, and record the answer under Consent first.</source>
        <translation>Es fehlt die Zustimmung, dass dies an andere geht. Erst fragen und die Antwort unter Einwilligung festhalten.</translation>
    </message>
    <message>
        <source>Scan it where the next racket is strung. Whoever sees it can read it.</source>
        <translation>Dort scannen, wo der nächste Schläger bespannt wird. Wer ihn sieht, kann ihn lesen.</translation>
    </message>
    <message>
        <source>Signed by %1, as of %2</source>
        <translation>Unterschrieben von %1, Stand %2</translation>
    </message>
    <message>
        <source>What is on it</source>
        <translation>Was darauf steht</translation>
    </message>
    <message>
        <source>Older setups and rackets for which there was no room: %1</source>
        <translation>Ältere Wünsche und Schläger, für die kein Platz war: %1</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Auf Papier</translation>
    </message>
    <message>
        <source>Save as picture</source>
        <translation>Als Bild speichern</translation>
    </message>
    <message>
        <source>Save as text</source>
        <translation>Als Text speichern</translation>
    </message>
    <message>
        <source>Copy the text</source>
        <translation>Text kopieren</translation>
    </message>
    <message>
        <source>The picture is saved</source>
        <translation>Das Bild ist gespeichert</translation>
    </message>
    <message>
        <source>The text is saved</source>
        <translation>Der Text ist gespeichert</translation>
    </message>
    <message>
        <source>The text is copied</source>
        <translation>Der Text ist kopiert</translation>
    </message>
    <message>
        <source>The card was not saved</source>
        <translation>Die Karte wurde nicht gespeichert</translation>
    </message>
</context>
<context>
    <name>GoOnSheet</name>
    <message>
        <source>Go on without the player&apos;s word</source>
        <translation>Ohne Zustimmung weiter</translation>
    </message>
    <message>
        <source>Your name and your reason stay beside this racket. A damaged frame can break under tension; the maker&apos;s advice and the rules of the place come first.</source>
        <translation>Ihr Name und Ihr Grund bleiben bei diesem Schläger stehen. Ein beschädigter Rahmen kann unter Spannung brechen; der Rat des Herstellers und die Regeln vor Ort gehen vor.</translation>
    </message>
    <message>
        <source>Who answers for it</source>
        <translation>Wer dafür einsteht</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>I answer for it</source>
        <translation>Ich stehe dafür ein</translation>
    </message>
    <message>
        <source>Give a name and a reason</source>
        <translation>Namen und Grund angeben</translation>
    </message>
    <message>
        <source>Going on: %1</source>
        <translation>Geht weiter: %1</translation>
    </message>
    <message>
        <source>This was answered elsewhere meanwhile</source>
        <translation>Das wurde inzwischen anderswo beantwortet</translation>
    </message>
    <message>
        <source>Nothing is to be answered here now</source>
        <translation>Hier ist jetzt nichts mehr zu beantworten</translation>
    </message>
</context>
<context>
    <name>HostModel</name>
    <message>
        <source>This tablet is in no network</source>
        <translation>Dieses Tablet ist in keinem Netz</translation>
    </message>
    <message>
        <source>Others can&apos;t reach this tablet</source>
        <translation>Andere können dieses Tablet nicht erreichen</translation>
    </message>
    <message>
        <source>Join the Wi-Fi that the others are in, or open one on this tablet.</source>
        <translation>Dem WLAN der anderen beitreten oder eines auf diesem Tablet öffnen.</translation>
    </message>
    <message>
        <source>Try again; if it stays, show the line below to whoever looks after the tablets.</source>
        <translation>Noch einmal versuchen; bleibt es so, die Zeile darunter denen zeigen, die die Tablets betreuen.</translation>
    </message>
    <message>
        <source>both agree</source>
        <translation>beide stimmen überein</translation>
    </message>
    <message>
        <source>being brought up to date</source>
        <translation>wird abgeglichen</translation>
    </message>
</context>
<context>
    <name>HostPart</name>
    <message>
        <source>What they get</source>
        <translation>Was sie bekommen</translation>
    </message>
    <message>
        <source>This event</source>
        <translation>Dieses Turnier</translation>
    </message>
    <message>
        <source>Chosen players</source>
        <translation>Ausgewählte Spieler</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nichts</translation>
    </message>
    <message>
        <source>%1 and its players; they work at it with this tablet, and both see what the other does.</source>
        <translation>%1 und seine Spieler; sie arbeiten dort mit diesem Tablet, und beide sehen, was das andere tut.</translation>
    </message>
    <message>
        <source>The players that are ticked here, and nobody else: they do not even learn of others.</source>
        <translation>Die hier angehakten Spieler und niemanden sonst: von anderen erfahren sie nicht einmal.</translation>
    </message>
    <message>
        <source>Nothing: what they bring comes here, and they learn of nobody.</source>
        <translation>Nichts: was sie bringen, kommt hierher, und sie erfahren von niemandem.</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Others reach this tablet at %1</source>
        <translation>Andere erreichen dieses Tablet unter %1</translation>
    </message>
    <message>
        <source>They get: %1</source>
        <translation>Sie bekommen: %1</translation>
    </message>
    <message>
        <source>Nobody is here yet. Without a code may come: %1</source>
        <translation>Noch ist niemand da. Ohne Code dürfen kommen: %1</translation>
    </message>
    <message>
        <source>Nobody is here yet. Make a code; on the other tablet it is taken under Exchange, Pair.</source>
        <translation>Noch ist niemand da. Machen Sie einen Code; das andere Tablet nimmt ihn unter Abgleich, Koppeln.</translation>
    </message>
    <message>
        <source>The next tablet</source>
        <translation>Das nächste Tablet</translation>
    </message>
    <message>
        <source>Gets and brings</source>
        <translation>Bekommt und bringt</translation>
    </message>
    <message>
        <source>Only gets</source>
        <translation>Bekommt nur</translation>
    </message>
    <message>
        <source>Code of this tablet</source>
        <translation>Code dieses Tablets</translation>
    </message>
    <message>
        <source>Make a code</source>
        <translation>Code machen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
</context>
<context>
    <name>HostsCard</name>
    <message>
        <source>Forget %1</source>
        <translation>%1 vergessen</translation>
    </message>
    <message>
        <source>The players and jobs stay on this tablet. To exchange with it again you need a new code.</source>
        <translation>Spieler und Bespannungen bleiben auf diesem Tablet. Für einen neuen Austausch braucht es einen neuen Code.</translation>
    </message>
    <message>
        <source>Forget it</source>
        <translation>Vergessen</translation>
    </message>
    <message>
        <source>Paired with</source>
        <translation>Gekoppelt mit</translation>
    </message>
</context>
<context>
    <name>InspectionModel</name>
    <message>
        <source>put right by %1, %2</source>
        <translation>behoben von %1, %2</translation>
    </message>
    <message>
        <source>said by %1, taken by %2, %3</source>
        <translation>gesagt von %1, notiert von %2, %3</translation>
    </message>
    <message>
        <source>%1 answers for going on, %2: %3</source>
        <translation>%1 steht für das Weitermachen ein, %2: %3</translation>
    </message>
    <message>
        <source>The player&apos;s answer: %1</source>
        <translation>Antwort: %1</translation>
    </message>
    <message>
        <source>It is not there any more.</source>
        <translation>Er ist nicht mehr da.</translation>
    </message>
    <message>
        <source>Two different answers were taken: ask again.</source>
        <translation>Zwei verschiedene Antworten wurden notiert: noch einmal fragen.</translation>
    </message>
    <message>
        <source>this was answered elsewhere meanwhile: %1</source>
        <translation>das wurde inzwischen anderswo beantwortet: %1</translation>
    </message>
    <message>
        <source>ask again if it does not hold</source>
        <translation>noch einmal fragen, wenn es nicht gilt</translation>
    </message>
</context>
<context>
    <name>InspectionSheet</name>
    <message>
        <source>Tag %1, %2</source>
        <translation>Schild %1, %2</translation>
    </message>
    <message>
        <source>Frame: %1</source>
        <translation>Rahmen: %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
    <message>
        <source>I see</source>
        <translation>Verstanden</translation>
    </message>
    <message>
        <source>This racket is past its inspection. Step it back with a reason to note something new.</source>
        <translation>Dieser Schläger ist schon über die Prüfung hinaus. Um Neues zu notieren, mit einem Grund zurücksetzen.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Ihr Name</translation>
    </message>
    <message>
        <source>It stands beside what you find and the answers that you take.</source>
        <translation>Er steht bei dem, was Sie finden, und bei den Antworten, die Sie notieren.</translation>
    </message>
    <message>
        <source>Nothing new on the frame</source>
        <translation>Nichts Neues am Rahmen</translation>
    </message>
    <message>
        <source>The frame is sound</source>
        <translation>Der Rahmen ist in Ordnung</translation>
    </message>
    <message>
        <source>%1: inspected</source>
        <translation>%1: geprüft</translation>
    </message>
    <message>
        <source>Note a finding</source>
        <translation>Befund notieren</translation>
    </message>
    <message>
        <source>Note another finding</source>
        <translation>Weiteren Befund notieren</translation>
    </message>
    <message>
        <source>Found on this frame</source>
        <translation>An diesem Rahmen gefunden</translation>
    </message>
    <message>
        <source>Put right: %1</source>
        <translation>Behoben: %1</translation>
    </message>
    <message>
        <source>Put right earlier</source>
        <translation>Früher behoben</translation>
    </message>
</context>
<context>
    <name>IntakeModel</name>
    <message numerus="yes">
        <source>%n player(s)</source>
        <translation>
            <numerusform>%n Spieler</numerusform>
            <numerusform>%n Spieler</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n Turnier</numerusform>
            <numerusform>%n Turniere</numerusform>
        </translation>
    </message>
    <message>
        <source>the private kit</source>
        <translation>die private Tasche</translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s)</source>
        <translation>
            <numerusform>%n Bild</numerusform>
            <numerusform>%n Bilder</numerusform>
        </translation>
    </message>
    <message>
        <source>All of it is here already.</source>
        <translation>Alles davon ist schon hier.</translation>
    </message>
    <message>
        <source>New here: %1 of %2 entries.</source>
        <translation>Neu hier: %1 von %2 Einträgen.</translation>
    </message>
    <message numerus="yes">
        <source>Stays out, as the players agreed here: %n player(s)</source>
        <translation>
            <numerusform>Bleibt draußen, wie hier vereinbart: %n Spieler</numerusform>
            <numerusform>Bleiben draußen, wie hier vereinbart: %n Spieler</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stays out, because they were forgotten: %n player(s)</source>
        <translation>
            <numerusform>Bleibt draußen, weil vergessen: %n Spieler</numerusform>
            <numerusform>Bleiben draußen, weil vergessen: %n Spieler</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new entry(s) came in.</source>
        <translation>
            <numerusform>%n neuer Eintrag kam herein.</numerusform>
            <numerusform>%n neue Einträge kamen herein.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(s) were here already.</source>
        <translation>
            <numerusform>%n Eintrag war schon hier.</numerusform>
            <numerusform>%n Einträge waren schon hier.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) came in.</source>
        <translation>
            <numerusform>%n Bild kam herein.</numerusform>
            <numerusform>%n Bilder kamen herein.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) were lost already where it was made.</source>
        <translation>
            <numerusform>%n Bild war schon dort verloren, wo es gemacht wurde.</numerusform>
            <numerusform>%n Bilder waren schon dort verloren, wo es gemacht wurde.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) could not be stored.</source>
        <translation>
            <numerusform>%n Bild konnte nicht gespeichert werden.</numerusform>
            <numerusform>%n Bilder konnten nicht gespeichert werden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Left out, as the players agreed here: %1</source>
        <translation>Ausgelassen, wie hier vereinbart: %1</translation>
    </message>
    <message numerus="yes">
        <source>Left out, because they were forgotten: %n player(s)</source>
        <translation>
            <numerusform>Ausgelassen, weil vergessen: %n Spieler</numerusform>
            <numerusform>Ausgelassen, weil vergessen: %n Spieler</numerusform>
        </translation>
    </message>
    <message>
        <source>Stays out: the book of another event, which only the head of the room may bring.</source>
        <translation>Bleibt draußen: das Buch eines anderen Turniers, das nur die Leitung bringen darf.</translation>
    </message>
    <message>
        <source>Left out: the book of another event, which only the head of the room may bring.</source>
        <translation>Ausgelassen: das Buch eines anderen Turniers, das nur die Leitung bringen darf.</translation>
    </message>
    <message numerus="yes">
        <source>Forgotten here too, because they withdrew: %n player(s)</source>
        <translation>
            <numerusform>Auch hier vergessen, weil zurückgezogen: %n Spieler</numerusform>
            <numerusform>Auch hier vergessen, weil zurückgezogen: %n Spieler</numerusform>
        </translation>
    </message>
    <message>
        <source>The clock of %1 was far ahead.</source>
        <translation>Die Uhr von %1 ging weit vor.</translation>
    </message>
    <message>
        <source>%1 took all of it in, %2.</source>
        <translation>%1 hat alles aufgenommen, %2.</translation>
    </message>
    <message>
        <source>%1 took a part of it in, %2.</source>
        <translation>%1 hat einen Teil aufgenommen, %2.</translation>
    </message>
    <message numerus="yes">
        <source>It holds %n book(s) of it.</source>
        <translation>
            <numerusform>Es hat davon %n Buch.</numerusform>
            <numerusform>Es hat davon %n Bücher.</numerusform>
        </translation>
    </message>
    <message>
        <source>The event</source>
        <translation>Das Turnier</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n newer entry(s) here that are not there yet.</source>
        <translation>
            <numerusform>%1: %n neuerer Eintrag hier, der dort noch fehlt.</numerusform>
            <numerusform>%1: %n neuere Einträge hier, die dort noch fehlen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: the two devices hold different entries.</source>
        <translation>%1: die beiden Geräte haben verschiedene Einträge.</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(s) were put aside; the Exchange page tells why.</source>
        <translation>
            <numerusform>%n Eintrag wurde beiseitegelegt, siehe Abgleich.</numerusform>
            <numerusform>%n Einträge wurden beiseitegelegt, siehe Abgleich.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>IntakeSheet</name>
    <message>
        <source>Looking into it ...</source>
        <translation>Wird angesehen ...</translation>
    </message>
    <message>
        <source>It is being taken in; the app stays usable.</source>
        <translation>Wird aufgenommen; die App bleibt benutzbar.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <source>Whoever made the file told it to you.</source>
        <translation>Wer die Datei gemacht hat, hat sie Ihnen gesagt.</translation>
    </message>
    <message>
        <source>It does not open with that. Small and large letters count.</source>
        <translation>Damit öffnet sie sich nicht. Groß- und Kleinbuchstaben zählen.</translation>
    </message>
    <message>
        <source>Backup of %1 (%2), made %3</source>
        <translation>Sicherung von %1 (%2), gemacht %3</translation>
    </message>
    <message>
        <source>From %1 (%2), made %3</source>
        <translation>Von %1 (%2), gemacht %3</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>New here: %1</source>
        <translation>Neu hier: %1</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weiteres</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>This tablet takes the place of %1</source>
        <translation>Dieses Tablet tritt an die Stelle von %1</translation>
    </message>
    <message>
        <source>Everything of it comes here, the private kit too. From then on this tablet writes in its own name; pair it with the event servers again.</source>
        <translation>Alles von ihm kommt hierher, auch die private Tasche. Von da an schreibt dieses Tablet in eigenem Namen; koppeln Sie es wieder mit den Turnierservern.</translation>
    </message>
    <message>
        <source>Nobody here knows %1</source>
        <translation>Hier kennt niemand %1</translation>
    </message>
    <message>
        <source>Its Exchange page shows the words of its key. Are they these? %1</source>
        <translation>Seine Seite Abgleich zeigt die Wörter seines Schlüssels. Sind es diese? %1</translation>
    </message>
    <message>
        <source>The words are the same</source>
        <translation>Die Wörter sind dieselben</translation>
    </message>
    <message>
        <source>All of it is here</source>
        <translation>Alles ist hier</translation>
    </message>
    <message numerus="yes">
        <source>Two answers to one question: %n to be settled under Questions.</source>
        <translation>
            <numerusform>Zwei Antworten auf eine Frage: %n unter Fragen zu klären.</numerusform>
            <numerusform>Zwei Antworten auf eine Frage: %n unter Fragen zu klären.</numerusform>
        </translation>
    </message>
    <message>
        <source>The receipt for %1 lies at %2. Give it back with the stick.</source>
        <translation>Die Quittung für %1 liegt unter %2. Geben Sie sie mit dem Stick zurück.</translation>
    </message>
    <message>
        <source>The receipt for %1 could not be put beside the file; save it elsewhere.</source>
        <translation>Die Quittung für %1 ließ sich nicht neben die Datei legen; speichern Sie sie anderswo.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Put it back here</source>
        <translation>Hier zurückspielen</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Aufnehmen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Fortfahren</translation>
    </message>
    <message>
        <source>Save the receipt elsewhere</source>
        <translation>Quittung anderswo speichern</translation>
    </message>
    <message>
        <source>Another file</source>
        <translation>Andere Datei</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Bring in a file</source>
        <translation>Datei aufnehmen</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
</context>
<context>
    <name>InvitePart</name>
    <message>
        <source>Its role</source>
        <translation>Seine Rolle</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>Desk</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>Stringer</source>
        <translation>Bespanner</translation>
    </message>
    <message>
        <source>Reader</source>
        <translation>Leser</translation>
    </message>
    <message>
        <source>Make a code</source>
        <translation>Code machen</translation>
    </message>
    <message>
        <source>Needs a connection to the event server</source>
        <translation>Braucht eine Verbindung zum Turnierserver</translation>
    </message>
    <message>
        <source>Code of the event server %1</source>
        <translation>Code des Turnierservers %1</translation>
    </message>
</context>
<context>
    <name>JobBrief</name>
    <message>
        <source>Mains</source>
        <translation>Längssaiten</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Quersaiten</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Saitenbild</translation>
    </message>
    <message>
        <source>Stencil</source>
        <translation>Schablone</translation>
    </message>
    <message>
        <source>Promised</source>
        <translation>Zugesagt</translation>
    </message>
    <message>
        <source>Late: %1</source>
        <translation>Zu spät: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Bis %1</translation>
    </message>
    <message>
        <source>none agreed</source>
        <translation>keine vereinbart</translation>
    </message>
    <message>
        <source>string stencil: %1</source>
        <translation>Schablone der Saite: %1</translation>
    </message>
</context>
<context>
    <name>JobCard</name>
    <message>
        <source>Late: %1</source>
        <translation>Zu spät: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Bis %1</translation>
    </message>
    <message>
        <source>Tag %1, %2</source>
        <translation>Schild %1, %2</translation>
    </message>
    <message>
        <source>On-court rush</source>
        <translation>Eilt vom Platz</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Eilt</translation>
    </message>
    <message>
        <source>Two people moved it on</source>
        <translation>Zwei haben ihn weitergegeben</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
    <message>
        <source>Look where it is</source>
        <translation>Nachsehen, wo er ist</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The player’s answer</source>
        <translation>Antwort des Spielers</translation>
    </message>
</context>
<context>
    <name>JobLine</name>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
</context>
<context>
    <name>JobList</name>
    <message numerus="yes">
        <source>%n job(s), newest first</source>
        <translation>
            <numerusform>%n Bespannung, neueste zuerst</numerusform>
            <numerusform>%n Bespannungen, neueste zuerst</numerusform>
        </translation>
    </message>
    <message>
        <source>Only this event</source>
        <translation>Nur dieses Turnier</translation>
    </message>
    <message>
        <source>No racket was ever taken in here</source>
        <translation>Hier wurde noch kein Schläger angenommen</translation>
    </message>
    <message>
        <source>What the desk takes in and what comes by an exchange stands here, newest first.</source>
        <translation>Was die Annahme annimmt und was durch einen Austausch kommt, steht hier, das Neueste zuerst.</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Schild %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
</context>
<context>
    <name>JobSheet</name>
    <message>
        <source>Two people moved this racket on while apart</source>
        <translation>Zwei haben diesen Schläger unabhängig weitergegeben</translation>
    </message>
    <message>
        <source>Look where it is, choose its stage below and say why.</source>
        <translation>Sehen Sie nach, wo er ist, wählen Sie unten den Stand und sagen Sie warum.</translation>
    </message>
    <message>
        <source>With a reason</source>
        <translation>Mit einem Grund</translation>
    </message>
    <message>
        <source>Another stage</source>
        <translation>Ein anderer Stand</translation>
    </message>
    <message>
        <source>Put aside, a step back, ...</source>
        <translation>Beiseite, ein Schritt zurück, ...</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Everybody who looks at this racket later reads it.</source>
        <translation>Wer später nach diesem Schläger sieht, liest ihn.</translation>
    </message>
    <message>
        <source>Set to: %1</source>
        <translation>Setzen auf: %1</translation>
    </message>
    <message>
        <source>Choose a stage first</source>
        <translation>Erst einen Stand wählen</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Inspect the frame</source>
        <translation>Rahmen prüfen</translation>
    </message>
    <message>
        <source>Compare the tags on racket and bag</source>
        <translation>Schilder an Schläger und Tasche vergleichen</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>machine %1</source>
        <translation>Maschine %1</translation>
    </message>
    <message numerus="yes">
        <source>Hand over %n bag(s) with the rackets</source>
        <translation>
            <numerusform>Geben Sie %n Tasche mit den Schlägern aus</numerusform>
            <numerusform>Geben Sie %n Taschen mit den Schlägern aus</numerusform>
        </translation>
    </message>
    <message>
        <source>May be collected by %1</source>
        <translation>Darf abgeholt werden von %1</translation>
    </message>
    <message numerus="yes">
        <source>Came with %n bag(s)</source>
        <translation>
            <numerusform>Kam mit %n Tasche</numerusform>
            <numerusform>Kam mit %n Taschen</numerusform>
        </translation>
    </message>
    <message>
        <source>String bed</source>
        <translation>Saitenbett</translation>
    </message>
    <message>
        <source>New time</source>
        <translation>Neue Zeit</translation>
    </message>
    <message>
        <source>Take the player’s answer</source>
        <translation>Antwort des Spielers aufnehmen</translation>
    </message>
    <message>
        <source>It waits for its player’s answer</source>
        <translation>Er wartet auf die Antwort des Spielers</translation>
    </message>
    <message>
        <source>What the player answered</source>
        <translation>Was der Spieler geantwortet hat</translation>
    </message>
    <message>
        <source>It stays beside this racket, for whoever strings it.</source>
        <translation>Das bleibt bei diesem Schläger, für alle, die ihn bespannen.</translation>
    </message>
    <message>
        <source>Write the answer first</source>
        <translation>Zuerst die Antwort aufschreiben</translation>
    </message>
    <message>
        <source>it is not here any more</source>
        <translation>er ist nicht mehr hier</translation>
    </message>
    <message>
        <source>It moved on elsewhere meanwhile: %1</source>
        <translation>Inzwischen anderswo weiter: %1</translation>
    </message>
    <message>
        <source>Look again; nothing was written</source>
        <translation>Neu ansehen; nichts wurde geschrieben</translation>
    </message>
    <message>
        <source>It moved on meanwhile: %1. Look again</source>
        <translation>Inzwischen weiter: %1. Neu ansehen</translation>
    </message>
</context>
<context>
    <name>KeepCard</name>
    <message>
        <source>Players&apos; books on the event server</source>
        <translation>Spielerbücher auf dem Turnierserver</translation>
    </message>
    <message>
        <source>It keeps them. Tablets keep their own in any case.</source>
        <translation>Er behält sie. Tablets behalten ihre eigenen in jedem Fall.</translation>
    </message>
    <message>
        <source>It lets them go after %1. Tablets keep their own in any case.</source>
        <translation>Er löscht sie nach Ablauf von %1. Tablets behalten ihre eigenen in jedem Fall.</translation>
    </message>
    <message>
        <source>Days after the last one</source>
        <translation>Tage nach dem letzten Tag</translation>
    </message>
    <message>
        <source>Keep them</source>
        <translation>Behalten</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>Rule for players&apos; books set</source>
        <translation>Regel für Spielerbücher gesetzt</translation>
    </message>
    <message>
        <source>Bring this tablet up to date before then: afterwards the server exchanges nothing any more.</source>
        <translation>Dieses Tablet vorher abgleichen: Danach tauscht der Server nichts mehr aus.</translation>
    </message>
</context>
<context>
    <name>ListsModel</name>
    <message>
        <source>Say what is to be done.</source>
        <translation>Sagen Sie, was zu tun ist.</translation>
    </message>
    <message numerus="yes">
        <source>Too long to be read at the bench: leave out about %n letter(s).</source>
        <translation>
            <numerusform>Zu lang, um es an der Werkbank zu lesen: lassen Sie etwa %n Buchstaben weg.</numerusform>
            <numerusform>Zu lang, um es an der Werkbank zu lesen: lassen Sie etwa %n Buchstaben weg.</numerusform>
        </translation>
    </message>
    <message>
        <source>Put a word before the equals sign.</source>
        <translation>Setzen Sie ein Wort vor das Gleichheitszeichen.</translation>
    </message>
    <message>
        <source>The list has a step of these words.</source>
        <translation>Die Liste hat einen Schritt mit diesen Worten.</translation>
    </message>
</context>
<context>
    <name>ListsView</name>
    <message>
        <source>Steps at the bench</source>
        <translation>Schritte an der Werkbank</translation>
    </message>
    <message>
        <source>List of the check</source>
        <translation>Liste der Prüfung</translation>
    </message>
    <message>
        <source>Which list</source>
        <translation>Welche Liste</translation>
    </message>
    <message>
        <source>Common practice. What you change holds for every tablet of this event; the makers’ instructions come before it.</source>
        <translation>Übliche Praxis. Was Sie ändern, gilt auf allen Tablets dieses Turniers; die Anleitungen der Hersteller gehen vor.</translation>
    </message>
    <message>
        <source>As this room has it. It holds for every tablet of this event; the makers’ instructions come before it.</source>
        <translation>So, wie dieser Raum sie hat. Sie gilt auf allen Tablets dieses Turniers; die Anleitungen der Hersteller gehen vor.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>added by this room</source>
        <translation>von diesem Raum hinzugefügt</translation>
    </message>
    <message>
        <source>Tap to change the words</source>
        <translation>Antippen, um die Worte zu ändern</translation>
    </message>
    <message>
        <source>Up: %1</source>
        <translation>Nach oben: %1</translation>
    </message>
    <message>
        <source>Down: %1</source>
        <translation>Nach unten: %1</translation>
    </message>
    <message>
        <source>Take off: %1</source>
        <translation>Herausnehmen: %1</translation>
    </message>
    <message>
        <source>Taken off the list</source>
        <translation>Aus der Liste genommen</translation>
    </message>
    <message>
        <source>The list is empty.</source>
        <translation>Die Liste ist leer.</translation>
    </message>
    <message>
        <source>Add a step</source>
        <translation>Schritt hinzufügen</translation>
    </message>
    <message>
        <source>Back to the usual list</source>
        <translation>Zurück zur üblichen Liste</translation>
    </message>
    <message>
        <source>The usual list again</source>
        <translation>Wieder die übliche Liste</translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation>Herausgenommen</translation>
    </message>
    <message>
        <source>Tap to put it on again</source>
        <translation>Antippen, um es wieder aufzunehmen</translation>
    </message>
    <message>
        <source>On the list again</source>
        <translation>Wieder in der Liste</translation>
    </message>
</context>
<context>
    <name>MachineCareSheet</name>
    <message>
        <source>Calibration</source>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <source>Tension that was set, in kg</source>
        <translation>Eingestellte Spannung, in kg</translation>
    </message>
    <message>
        <source>What the gauge showed, in kg</source>
        <translation>Was das Messgerät zeigte, in kg</translation>
    </message>
    <message>
        <source>Hold the gauge as its maker says; eyes protected while it is under tension.</source>
        <translation>Das Messgerät halten, wie sein Hersteller es sagt; Augen schützen, solange es unter Spannung steht.</translation>
    </message>
    <message>
        <source>Keep the calibration</source>
        <translation>Kalibrierung festhalten</translation>
    </message>
    <message>
        <source>Calibration kept</source>
        <translation>Kalibrierung festgehalten</translation>
    </message>
    <message>
        <source>Out of order</source>
        <translation>Außer Betrieb</translation>
    </message>
    <message>
        <source>What is wrong with it</source>
        <translation>Was ihr fehlt</translation>
    </message>
    <message>
        <source>Take it out of order</source>
        <translation>Außer Betrieb nehmen</translation>
    </message>
    <message>
        <source>%1 is out of order</source>
        <translation>%1 ist außer Betrieb</translation>
    </message>
    <message>
        <source>Keep it, and enter another pull</source>
        <translation>Übernehmen und weiteren Zug eingeben</translation>
    </message>
</context>
<context>
    <name>MachineChips</name>
    <message>
        <source>On which machine it is</source>
        <translation>Auf welcher Maschine er ist</translation>
    </message>
    <message>
        <source>On which machine it goes</source>
        <translation>Auf welche Maschine er kommt</translation>
    </message>
    <message>
        <source>%1: machine %2</source>
        <translation>%1: Maschine %2</translation>
    </message>
    <message>
        <source>Take another machine, or ask at the desk; the machine maker’s instructions come first.</source>
        <translation>Nehmen Sie eine andere Maschine oder fragen Sie bei der Annahme; die Anleitung des Maschinenherstellers geht vor.</translation>
    </message>
</context>
<context>
    <name>MachineChoice</name>
    <message>
        <source>Out of order: %1</source>
        <translation>Außer Betrieb: %1</translation>
    </message>
    <message>
        <source>Its clamps are due for cleaning</source>
        <translation>Ihre Klemmen sind zu reinigen</translation>
    </message>
</context>
<context>
    <name>MachineSheet</name>
    <message>
        <source>New machine</source>
        <translation>Neue Maschine</translation>
    </message>
    <message>
        <source>What the room calls it</source>
        <translation>Wie der Raum sie nennt</translation>
    </message>
    <message>
        <source>How it pulls</source>
        <translation>Wie sie zieht</translation>
    </message>
    <message>
        <source>Constant-pull</source>
        <translation>Konstantzug</translation>
    </message>
    <message>
        <source>Lockout</source>
        <translation>Kurbel mit Sperre</translation>
    </message>
    <message>
        <source>Drop-weight</source>
        <translation>Fallgewicht</translation>
    </message>
    <message>
        <source>Maker and model</source>
        <translation>Hersteller und Modell</translation>
    </message>
    <message>
        <source>Highest tension that its maker allows, in kg</source>
        <translation>Höchste Spannung, die ihr Hersteller erlaubt, in kg</translation>
    </message>
    <message>
        <source>Pre-stretch that can be set, per cent: 0 10 20</source>
        <translation>Einstellbare Vordehnung, Prozent: 0 10 20</translation>
    </message>
    <message>
        <source>Clean the clamps after so many rackets (empty: every evening)</source>
        <translation>Klemmen nach so vielen Schlägern reinigen (leer: jeden Abend)</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Machine %1 listed</source>
        <translation>Maschine %1 aufgenommen</translation>
    </message>
</context>
<context>
    <name>MachinesModel</name>
    <message>
        <source>Give a tension such as 25 or 55 lb.</source>
        <translation>Bitte eine Spannung angeben, etwa 25 oder 55 lb.</translation>
    </message>
</context>
<context>
    <name>MachinesView</name>
    <message>
        <source>Constant-pull</source>
        <translation>Konstantzug</translation>
    </message>
    <message>
        <source>Lockout</source>
        <translation>Kurbel mit Sperre</translation>
    </message>
    <message>
        <source>Drop-weight</source>
        <translation>Fallgewicht</translation>
    </message>
    <message>
        <source>New machine</source>
        <translation>Neue Maschine</translation>
    </message>
    <message>
        <source>No machine is listed</source>
        <translation>Keine Maschine aufgenommen</translation>
    </message>
    <message>
        <source>List the machines; then rackets are counted for each, and you see when clamps are due.</source>
        <translation>Nehmen Sie die Maschinen auf; dann werden die Schläger je Maschine gezählt, und Sie sehen, wann Klemmen dran sind.</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>pre-stretch %1 %</source>
        <translation>Vordehnung %1 %</translation>
    </message>
    <message>
        <source>Out of order</source>
        <translation>Außer Betrieb</translation>
    </message>
    <message>
        <source>Clean the clamps</source>
        <translation>Klemmen reinigen</translation>
    </message>
    <message>
        <source>Dirty clamps slip and leave marks. Follow the maker’s instructions.</source>
        <translation>Schmutzige Klemmen rutschen und hinterlassen Spuren. Der Anleitung des Herstellers folgen.</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) since its clamps were cleaned</source>
        <translation>
            <numerusform>%n Schläger seit der Reinigung der Klemmen</numerusform>
            <numerusform>%n Schläger seit der Reinigung der Klemmen</numerusform>
        </translation>
    </message>
    <message>
        <source>Calibration: %1 set, %2 read (%3 %)</source>
        <translation>Kalibrierung: %1 eingestellt, %2 gemessen (%3 %)</translation>
    </message>
    <message>
        <source>Clamps cleaned</source>
        <translation>Klemmen gereinigt</translation>
    </message>
    <message>
        <source>%1: clamps cleaned</source>
        <translation>%1: Klemmen gereinigt</translation>
    </message>
    <message>
        <source>Back in order</source>
        <translation>Wieder in Ordnung</translation>
    </message>
    <message>
        <source>Calibration, or out of order</source>
        <translation>Kalibrierung oder außer Betrieb</translation>
    </message>
    <message>
        <source>%1 is back in order</source>
        <translation>%1 ist wieder in Ordnung</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Desk</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>Players</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>Exchange</source>
        <translation>Abgleich</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Weavelog</source>
        <translation>Weavelog</translation>
    </message>
    <message>
        <source>Team</source>
        <translation>Team</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>Geld</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Vorrat</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
</context>
<context>
    <name>MakingCard</name>
    <message>
        <source>Pre-stretch, lengths and knots</source>
        <translation>Vorstrecken, Saitenlängen und Knoten</translation>
    </message>
    <message>
        <source>Pre-stretch of the mains</source>
        <translation>Vorstrecken der Längssaiten</translation>
    </message>
    <message>
        <source>Pre-stretch of the crosses</source>
        <translation>Vorstrecken der Quersaiten</translation>
    </message>
    <message>
        <source>Lengths of string</source>
        <translation>Saitenlängen</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Nicht gesagt</translation>
    </message>
    <message>
        <source>One</source>
        <translation>Eine</translation>
    </message>
    <message>
        <source>Two</source>
        <translation>Zwei</translation>
    </message>
    <message>
        <source>Knots</source>
        <translation>Knoten</translation>
    </message>
    <message>
        <source>Four</source>
        <translation>Vier</translation>
    </message>
    <message>
        <source>%1: %2 %</source>
        <translation>%1: %2 %</translation>
    </message>
    <message>
        <source>One length for mains and crosses, usually two knots: one string for both. Which end the crosses begin at follows from the pattern; the frame maker’s instructions decide.</source>
        <translation>Eine Länge für Längs- und Quersaiten, meist zwei Knoten: eine Saite für beide. An welchem Ende die Quersaiten beginnen, folgt aus dem Muster; die Anleitung des Rahmenherstellers entscheidet.</translation>
    </message>
    <message>
        <source>Mains and crosses each with a length of their own, usually four knots: the crosses may be another string. Some frames need them strung from the head down, so that the load on the frame stays even; the frame maker’s instructions decide.</source>
        <translation>Längs- und Quersaiten je mit eigener Länge, meist vier Knoten: die Quersaiten können eine andere Saite sein. Bei manchen Rahmen müssen sie vom Kopf nach unten bespannt werden, damit der Rahmen gleichmäßig belastet bleibt; die Anleitung des Rahmenherstellers entscheidet.</translation>
    </message>
    <message>
        <source>Two knots go with one length: each end is tied off once, and nothing parts mains and crosses.</source>
        <translation>Zwei Knoten gehören zu einer Länge: jedes Ende wird einmal geknotet, Längs- und Quersaiten sind nicht getrennt.</translation>
    </message>
    <message>
        <source>Four knots go with two lengths: mains and crosses are tied off apart, so each can have its own string and tension.</source>
        <translation>Vier Knoten gehören zu zwei Längen: Längs- und Quersaiten werden getrennt geknotet, jede kann ihre eigene Saite und Härte haben.</translation>
    </message>
    <message>
        <source>Knot pre-tension</source>
        <translation>Mehrzug am Knoten</translation>
    </message>
    <message>
        <source>So much more on the last string before a knot: it makes up for what the knot gives way. Common practice; the instructions of frame and machine come first.</source>
        <translation>So viel mehr auf der letzten Saite vor einem Knoten: Es gleicht aus, was der Knoten nachgibt. Übliche Praxis; die Anleitungen von Rahmen und Maschine gehen vor.</translation>
    </message>
</context>
<context>
    <name>MatchCard</name>
    <message>
        <source>bye</source>
        <translation>Freilos</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>noch offen</translation>
    </message>
    <message>
        <source>won by %1</source>
        <translation>gewonnen von %1</translation>
    </message>
    <message>
        <source>Not known yet who meets here</source>
        <translation>Noch offen, wer hier aufeinandertrifft</translation>
    </message>
</context>
<context>
    <name>MatchSheet</name>
    <message>
        <source>%1, match %2</source>
        <translation>%1, Match %2</translation>
    </message>
    <message>
        <source>Decided without a match.</source>
        <translation>Ohne Match entschieden.</translation>
    </message>
    <message>
        <source>It is not known yet who meets here.</source>
        <translation>Es steht noch nicht fest, wer hier aufeinandertrifft.</translation>
    </message>
    <message>
        <source>How it ended</source>
        <translation>Wie es endete</translation>
    </message>
    <message>
        <source>Played</source>
        <translation>Gespielt</translation>
    </message>
    <message>
        <source>Retired</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>Walkover</source>
        <translation>Kampflos</translation>
    </message>
    <message>
        <source>Score, if wanted</source>
        <translation>Ergebnis, wenn gewünscht</translation>
    </message>
    <message>
        <source>%1 won</source>
        <translation>%1 hat gewonnen</translation>
    </message>
    <message>
        <source>Result noted</source>
        <translation>Ergebnis notiert</translation>
    </message>
    <message>
        <source>by a walkover</source>
        <translation>kampflos</translation>
    </message>
    <message>
        <source>the other retired</source>
        <translation>durch Aufgabe</translation>
    </message>
    <message>
        <source>Won by %1</source>
        <translation>Gewonnen von %1</translation>
    </message>
    <message>
        <source>Take the result back</source>
        <translation>Ergebnis zurücknehmen</translation>
    </message>
    <message>
        <source>Result taken back</source>
        <translation>Ergebnis zurückgenommen</translation>
    </message>
    <message>
        <source>not before %1</source>
        <translation>nicht vor %1</translation>
    </message>
    <message>
        <source>Court and time</source>
        <translation>Platz und Zeit</translation>
    </message>
    <message>
        <source>Court</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>Nicht vor</translation>
    </message>
    <message>
        <source>A time such as 14:05, or a day with it: 2031-05-26T14:05</source>
        <translation>Eine Uhrzeit wie 14:05, oder mit Tag: 2031-05-26T14:05</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Court and time kept</source>
        <translation>Platz und Zeit gespeichert</translation>
    </message>
    <message>
        <source>%1 withdraws</source>
        <translation>%1 zieht zurück</translation>
    </message>
    <message>
        <source>Withdrawal noted</source>
        <translation>Rückzug notiert</translation>
    </message>
    <message>
        <source>Somebody in the place of %1</source>
        <translation>Jemand an Stelle von %1</translation>
    </message>
    <message>
        <source>Say who plays here</source>
        <translation>Sagen, wer hier spielt</translation>
    </message>
    <message>
        <source>Player</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Partner, in doubles</source>
        <translation>Name im Doppel daneben</translation>
    </message>
    <message>
        <source>Put on line %1</source>
        <translation>Auf Zeile %1 setzen</translation>
    </message>
    <message>
        <source>Put into the draw</source>
        <translation>Ins Tableau gesetzt</translation>
    </message>
    <message>
        <source>after match %1</source>
        <translation>nach Match %1</translation>
    </message>
    <message>
        <source>Follows the match</source>
        <translation>Folgt auf das Match</translation>
    </message>
    <message>
        <source>Round and match of this draw, such as 2/7; empty where it has a time of its own</source>
        <translation>Runde und Match dieses Tableaus, etwa 2/7; leer, wenn es eine eigene Zeit hat</translation>
    </message>
</context>
<context>
    <name>MatchWords</name>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>short form of the name</source>
        <translation>Kurzform des Namens</translation>
    </message>
    <message>
        <source>part of the name</source>
        <translation>Teil des Namens</translation>
    </message>
    <message>
        <source>family name</source>
        <translation>Nachname</translation>
    </message>
    <message>
        <source>given name</source>
        <translation>Vorname</translation>
    </message>
    <message>
        <source>name nearly</source>
        <translation>Name beinahe</translation>
    </message>
    <message>
        <source>country</source>
        <translation>Land</translation>
    </message>
    <message>
        <source>birth year</source>
        <translation>Geburtsjahr</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>Schlaghand</translation>
    </message>
    <message>
        <source>tour number</source>
        <translation>Tournummer</translation>
    </message>
    <message>
        <source>rackets</source>
        <translation>Schläger</translation>
    </message>
    <message>
        <source>strings</source>
        <translation>Saiten</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s)</source>
        <translation>
            <numerusform>%n Schläger</numerusform>
            <numerusform>%n Schläger</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>vor %n Tag</numerusform>
            <numerusform>vor %n Tagen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>MemberSheet</name>
    <message>
        <source>Add somebody</source>
        <translation>Jemanden hinzufügen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Does</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>Head of the room</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>Desk</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>Stringer</source>
        <translation>Bespannen</translation>
    </message>
    <message>
        <source>Languages, such as: en pt</source>
        <translation>Sprachen, etwa: en pt</translation>
    </message>
    <message>
        <source>Good at, such as: natural gut, left-handed</source>
        <translation>Kann gut, etwa: Naturdarm, Linkshand</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>%1 is on the team</source>
        <translation>%1 ist im Team</translation>
    </message>
</context>
<context>
    <name>MetCard</name>
    <message>
        <source>Give players to %1</source>
        <translation>Spieler an %1 geben</translation>
    </message>
    <message>
        <source>It lets this tablet only get players, not bring any.</source>
        <translation>Es lässt dieses Tablet Spieler nur holen, keine bringen.</translation>
    </message>
    <message>
        <source>There is no event there: only whom you tick goes across, and what is newer of them whenever the two meet again.</source>
        <translation>Dort gibt es kein Turnier: nur wen Sie anhaken, geht hinüber, und Neueres davon, wenn sich beide wieder treffen.</translation>
    </message>
    <message numerus="yes">
        <source>Give %n player(s)</source>
        <translation>
            <numerusform>%n Spieler geben</numerusform>
            <numerusform>%n Spieler geben</numerusform>
        </translation>
    </message>
    <message>
        <source>Give</source>
        <translation>Geben</translation>
    </message>
    <message>
        <source>Both exchange: %1</source>
        <translation>Beide gleichen ab: %1</translation>
    </message>
</context>
<context>
    <name>MoneyAccounts</name>
    <message>
        <source>Find a player</source>
        <translation>Spieler suchen</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) owe something</source>
        <translation>
            <numerusform>%n Spieler schuldet etwas</numerusform>
            <numerusform>%n Spieler schulden etwas</numerusform>
        </translation>
    </message>
    <message>
        <source>Accounts</source>
        <translation>Konten</translation>
    </message>
    <message>
        <source>owes</source>
        <translation>schuldet</translation>
    </message>
    <message>
        <source>gets back</source>
        <translation>bekommt zurück</translation>
    </message>
    <message>
        <source>even</source>
        <translation>ausgeglichen</translation>
    </message>
    <message>
        <source>nothing charged yet</source>
        <translation>noch nichts berechnet</translation>
    </message>
    <message>
        <source>Nobody of that name</source>
        <translation>Niemand mit diesem Namen</translation>
    </message>
    <message>
        <source>No player has a racket here yet</source>
        <translation>Noch hat kein Spieler einen Schläger hier</translation>
    </message>
    <message>
        <source>All accounts</source>
        <translation>Alle Konten</translation>
    </message>
    <message>
        <source>Pick a player</source>
        <translation>Wählen Sie einen Spieler</translation>
    </message>
    <message>
        <source>What is due, and every line by its racket, appears here.</source>
        <translation>Hier erscheint, was offen ist, und jede Zeile nach Schläger.</translation>
    </message>
    <message>
        <source>Nobody owes anything</source>
        <translation>Niemand schuldet etwas</translation>
    </message>
</context>
<context>
    <name>MoneyDay</name>
    <message>
        <source>The day before</source>
        <translation>Der Tag davor</translation>
    </message>
    <message>
        <source>Today, %1</source>
        <translation>Heute, %1</translation>
    </message>
    <message>
        <source>The day after</source>
        <translation>Der Tag danach</translation>
    </message>
    <message>
        <source>Nothing was charged or paid on this day.</source>
        <translation>An diesem Tag wurde nichts berechnet oder bezahlt.</translation>
    </message>
    <message>
        <source>Charged</source>
        <translation>Berechnet</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Bezahlt</translation>
    </message>
    <message>
        <source>Closed: %1</source>
        <translation>Abgeschlossen: %1</translation>
    </message>
    <message>
        <source>Counted %1, as the lines say</source>
        <translation>Gezählt %1, wie die Zeilen sagen</translation>
    </message>
    <message>
        <source>Counted %1, %2 too much</source>
        <translation>Gezählt %1, %2 zu viel</translation>
    </message>
    <message>
        <source>Counted %1, %2 too little</source>
        <translation>Gezählt %1, %2 zu wenig</translation>
    </message>
    <message>
        <source>Written for this day since: charged %1, paid %2</source>
        <translation>Seither für diesen Tag geschrieben: berechnet %1, bezahlt %2</translation>
    </message>
    <message>
        <source>The box</source>
        <translation>Die Kasse</translation>
    </message>
    <message>
        <source>Cash taken this day, by the lines</source>
        <translation>Bar eingenommen an diesem Tag, laut Zeilen</translation>
    </message>
    <message>
        <source>Cash counted, without the change that was there in the morning, in %1</source>
        <translation>Gezähltes Bargeld ohne das Wechselgeld vom Morgen, in %1</translation>
    </message>
    <message>
        <source>It agrees with the lines</source>
        <translation>Es stimmt mit den Zeilen überein</translation>
    </message>
    <message>
        <source>%1 too much in the box</source>
        <translation>%1 zu viel in der Kasse</translation>
    </message>
    <message>
        <source>%1 too little in the box</source>
        <translation>%1 zu wenig in der Kasse</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Close the day again</source>
        <translation>Tag noch einmal abschließen</translation>
    </message>
    <message>
        <source>Close the day</source>
        <translation>Tag abschließen</translation>
    </message>
    <message>
        <source>Day closed</source>
        <translation>Tag abgeschlossen</translation>
    </message>
</context>
<context>
    <name>MoneyLineSheet</name>
    <message>
        <source>Two tablets charged different amounts</source>
        <translation>Zwei Tablets haben Verschiedenes berechnet</translation>
    </message>
    <message>
        <source>Close that under Questions first.</source>
        <translation>Klären Sie das erst unter Fragen.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>The line stays, and one of the opposite amount is written beside it.</source>
        <translation>Die Zeile bleibt, und eine mit dem Gegenbetrag wird danebengeschrieben.</translation>
    </message>
    <message>
        <source>Reverse this line</source>
        <translation>Diese Zeile stornieren</translation>
    </message>
    <message>
        <source>Reversed: %1</source>
        <translation>Storniert: %1</translation>
    </message>
</context>
<context>
    <name>MoneyPage</name>
    <message>
        <source>Money</source>
        <translation>Geld</translation>
    </message>
    <message>
        <source>Accounts</source>
        <translation>Konten</translation>
    </message>
    <message>
        <source>Day&apos;s money</source>
        <translation>Geld des Tages</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Preisliste</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Was gezeigt wird</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its price list and accounts come here by themselves.</source>
        <translation>Koppeln Sie unter Abgleich mit einem Turnierserver; Preisliste und Konten kommen dann von selbst hierher.</translation>
    </message>
    <message>
        <source>Players</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation>Preise</translation>
    </message>
</context>
<context>
    <name>MoneyPrices</name>
    <message>
        <source>no price</source>
        <translation>kein Preis</translation>
    </message>
    <message>
        <source>Nothing can be charged</source>
        <translation>Es lässt sich nichts berechnen</translation>
    </message>
    <message>
        <source>Currency of the event</source>
        <translation>Währung des Turniers</translation>
    </message>
    <message>
        <source>Three letters, such as EUR</source>
        <translation>Drei Buchstaben, etwa EUR</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Currency: %1</source>
        <translation>Währung: %1</translation>
    </message>
    <message>
        <source>What rackets are charged</source>
        <translation>Was für Schläger berechnet wird</translation>
    </message>
    <message>
        <source>In %1. A string without a price of its own costs what stands beside &quot;String&quot;; a hybrid costs half of each.</source>
        <translation>In %1. Eine Saite ohne eigenen Preis kostet, was bei „Saite“ steht; ein Hybrid kostet von jeder die Hälfte.</translation>
    </message>
    <message>
        <source>Price of one string</source>
        <translation>Preis einer Saite</translation>
    </message>
    <message>
        <source>What else is sold</source>
        <translation>Was sonst verkauft wird</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
</context>
<context>
    <name>MoneyText</name>
    <message>
        <source>The event has no currency yet.</source>
        <translation>Das Turnier hat noch keine Währung.</translation>
    </message>
    <message>
        <source>That is no amount; write it such as 25.50.</source>
        <translation>Das ist kein Betrag; schreiben Sie ihn etwa so: 25,50.</translation>
    </message>
    <message numerus="yes">
        <source>%n decimal(s) at most in this currency.</source>
        <translation>
            <numerusform>Höchstens %n Nachkommastelle in dieser Währung.</numerusform>
            <numerusform>Höchstens %n Nachkommastellen in dieser Währung.</numerusform>
        </translation>
    </message>
    <message>
        <source>That is too much.</source>
        <translation>Das ist zu viel.</translation>
    </message>
</context>
<context>
    <name>MoneyWords</name>
    <message>
        <source>Labour</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>String</source>
        <translation>Saite</translation>
    </message>
    <message>
        <source>Stencil</source>
        <translation>Schablone</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Eilt</translation>
    </message>
    <message>
        <source>On-court rush</source>
        <translation>Eilt vom Platz</translation>
    </message>
    <message>
        <source>Grommet strip</source>
        <translation>Ösenband</translation>
    </message>
    <message>
        <source>Tubing</source>
        <translation>Schlauch</translation>
    </message>
    <message>
        <source>String, mains</source>
        <translation>Saite, längs</translation>
    </message>
    <message>
        <source>String, crosses</source>
        <translation>Saite, quer</translation>
    </message>
    <message>
        <source>Discount</source>
        <translation>Nachlass</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Nicht gesagt</translation>
    </message>
    <message>
        <source>Cash</source>
        <translation>Bar</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>Room account</source>
        <translation>Zimmerrechnung</translation>
    </message>
    <message>
        <source>Prize money</source>
        <translation>Preisgeld</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Another way</source>
        <translation>Auf andere Art</translation>
    </message>
    <message>
        <source>Paid: %1</source>
        <translation>Bezahlt: %1</translation>
    </message>
    <message>
        <source>Reversed: %1</source>
        <translation>Storniert: %1</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Schild %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
</context>
<context>
    <name>NearCard</name>
    <message>
        <source>Near here</source>
        <translation>In der Nähe</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Verbunden</translation>
    </message>
    <message>
        <source>Paired</source>
        <translation>Gekoppelt</translation>
    </message>
    <message>
        <source>Not paired yet</source>
        <translation>Noch nicht gekoppelt</translation>
    </message>
    <message>
        <source>Looking ...</source>
        <translation>Suche läuft ...</translation>
    </message>
    <message>
        <source>Event servers, and tablets that let others in, on this network. Only pairing proves who they are.</source>
        <translation>Turnierserver, und Tablets, die andere hereinlassen, in diesem Netz. Erst das Koppeln beweist, wer sie sind.</translation>
    </message>
    <message>
        <source>Nobody answers here.</source>
        <translation>Hier antwortet niemand.</translation>
    </message>
    <message>
        <source>Join the Wi-Fi that the other one is in, and wait a moment; or type its address below. The code comes from its screen or from the head of the room.</source>
        <translation>Gehen Sie in das WLAN, in dem das andere Gerät ist, und warten Sie einen Moment; oder tippen Sie unten seine Adresse. Der Code steht auf seinem Bildschirm, oder die Leitung des Raums hat ihn.</translation>
    </message>
</context>
<context>
    <name>NeededNotice</name>
    <message>
        <source>No racket is chosen</source>
        <translation>Kein Schläger ist gewählt</translation>
    </message>
    <message>
        <source>Stringing cannot begin without this</source>
        <translation>Ohne dies kann nicht bespannt werden</translation>
    </message>
    <message>
        <source>Choose at least one.</source>
        <translation>Mindestens einen wählen.</translation>
    </message>
</context>
<context>
    <name>NewTimeSheet</name>
    <message>
        <source>New time: %1</source>
        <translation>Neue Zeit: %1</translation>
    </message>
    <message>
        <source>New time</source>
        <translation>Neue Zeit</translation>
    </message>
    <message>
        <source>Ready by %1, agreed with %2</source>
        <translation>Fertig bis %1, vereinbart mit %2</translation>
    </message>
    <message>
        <source>Promised for %1</source>
        <translation>Zugesagt für %1</translation>
    </message>
    <message>
        <source>No time was said so far</source>
        <translation>Bisher wurde keine Zeit genannt</translation>
    </message>
    <message>
        <source>On the machine or strung already: ask at the bench what is left to do.</source>
        <translation>Schon auf der Maschine oder bespannt: am Arbeitsplatz fragen, was noch zu tun ist.</translation>
    </message>
    <message>
        <source>Only this racket</source>
        <translation>Nur dieser Schläger</translation>
    </message>
    <message numerus="yes">
        <source>%n rackets were promised together.</source>
        <translation>
            <numerusform>%n Schläger wurde zugesagt.</numerusform>
            <numerusform>%n Schläger wurden zusammen zugesagt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Agreed with</source>
        <translation>Vereinbart mit</translation>
    </message>
    <message>
        <source>The player, or who speaks for them. Nothing is promised behind anybody’s back.</source>
        <translation>Mit dem Spieler oder wer für ihn spricht. Niemandem wird hinter seinem Rücken etwas zugesagt.</translation>
    </message>
    <message>
        <source>With %1</source>
        <translation>Mit %1</translation>
    </message>
    <message>
        <source>Promise %1</source>
        <translation>%1 zusagen</translation>
    </message>
    <message>
        <source>Choose another time</source>
        <translation>Eine andere Zeit wählen</translation>
    </message>
</context>
<context>
    <name>NoEvent</name>
    <message>
        <source>There is no event yet</source>
        <translation>Es gibt noch kein Turnier</translation>
    </message>
    <message>
        <source>Or work alone, with no network.</source>
        <translation>Oder arbeiten Sie allein, ohne Netz.</translation>
    </message>
    <message>
        <source>Work on your own: make an event</source>
        <translation>Allein arbeiten: ein Turnier anlegen</translation>
    </message>
</context>
<context>
    <name>NumbersModel</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
</context>
<context>
    <name>NumbersView</name>
    <message>
        <source>Whole event</source>
        <translation>Ganzes Turnier</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>What is counted</source>
        <translation>Was gezählt wird</translation>
    </message>
    <message>
        <source>Save as a table (CSV)</source>
        <translation>Als Tabelle sichern (CSV)</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>%1 in the room now</source>
        <translation>%1 jetzt im Raum</translation>
    </message>
    <message>
        <source>Strung</source>
        <translation>Bespannt</translation>
    </message>
    <message>
        <source>%1 strung again</source>
        <translation>%1 noch einmal bespannt</translation>
    </message>
    <message>
        <source>On time</source>
        <translation>Pünktlich</translation>
    </message>
    <message>
        <source>%1 late</source>
        <translation>%1 zu spät</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation>%1 überfällig</translation>
    </message>
    <message>
        <source>From drop-off to ready</source>
        <translation>Von Annahme bis fertig</translation>
    </message>
    <message>
        <source>nine of ten under %1</source>
        <translation>neun von zehn unter %1</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Eilig</translation>
    </message>
    <message>
        <source>%1 from the court</source>
        <translation>%1 vom Platz</translation>
    </message>
    <message>
        <source>Waiting for an answer</source>
        <translation>Warten auf Antwort</translation>
    </message>
    <message>
        <source>usually %1</source>
        <translation>meist %1</translation>
    </message>
    <message>
        <source>Collected</source>
        <translation>Abgeholt</translation>
    </message>
    <message>
        <source>%1 put aside</source>
        <translation>%1 beiseite</translation>
    </message>
    <message>
        <source>%1 now, %2 then</source>
        <translation>%1 jetzt, %2 damals</translation>
    </message>
    <message>
        <source>Made ready, by day</source>
        <translation>Fertig geworden, nach Tagen</translation>
    </message>
    <message>
        <source>Taken in, by hour</source>
        <translation>Angenommen, nach Stunden</translation>
    </message>
    <message>
        <source>Strung, by stringer</source>
        <translation>Bespannt, nach Bespannern</translation>
    </message>
    <message>
        <source>Strung, by string</source>
        <translation>Bespannt, nach Saiten</translation>
    </message>
    <message>
        <source>Strung, by tension of the mains</source>
        <translation>Bespannt, nach Spannung der Längssaiten</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabelle (*.csv)</translation>
    </message>
</context>
<context>
    <name>OffNotice</name>
    <message>
        <source>This racket is off</source>
        <translation>Dieser Schläger liegt daneben</translation>
    </message>
    <message>
        <source>This racket is even</source>
        <translation>Dieser Schläger passt</translation>
    </message>
</context>
<context>
    <name>OldNew</name>
    <message>
        <source>%1: was %2, now %3</source>
        <translation>%1: bisher %2, jetzt %3</translation>
    </message>
    <message>
        <source>%1: %2, as before</source>
        <translation>%1: %2, wie zuvor</translation>
    </message>
</context>
<context>
    <name>OtherNameSheet</name>
    <message>
        <source>Name kept</source>
        <translation>Name behalten</translation>
    </message>
    <message>
        <source>Another name</source>
        <translation>Anderer Name</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Familienname</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Vorname</translation>
    </message>
    <message>
        <source>Name in the own script</source>
        <translation>Name in eigener Schrift</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>From before</source>
        <translation>Von früher</translation>
    </message>
    <message>
        <source>Since a marriage</source>
        <translation>Seit einer Heirat</translation>
    </message>
    <message>
        <source>Short form</source>
        <translation>Kurzform</translation>
    </message>
    <message>
        <source>Another spelling</source>
        <translation>Andere Schreibweise</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
</context>
<context>
    <name>OthersCard</name>
    <message>
        <source>Let another tablet in</source>
        <translation>Ein anderes Tablet hereinlassen</translation>
    </message>
    <message>
        <source>For a tablet that works in this room: it exchanges with the event server from then on, whether this tablet is here or not.</source>
        <translation>Für ein Tablet, das in diesem Raum arbeitet: es gleicht von da an mit dem Turnierserver ab, ob dieses Tablet da ist oder nicht.</translation>
    </message>
    <message>
        <source>For a colleague, or where no event server can be reached: it exchanges with this very tablet, in one Wi-Fi and as long as this is on.</source>
        <translation>Für Kollegen, oder wo kein Turnierserver zu erreichen ist: es gleicht mit diesem Tablet selbst ab, im selben WLAN und solange dies hier an ist.</translation>
    </message>
    <message>
        <source>Where it comes in</source>
        <translation>Wo es hereinkommt</translation>
    </message>
    <message>
        <source>At the event server</source>
        <translation>Am Turnierserver</translation>
    </message>
    <message>
        <source>On this tablet</source>
        <translation>An diesem Tablet</translation>
    </message>
    <message>
        <source>This tablet lets others in as well, at %1.</source>
        <translation>Dieses Tablet lässt auch selbst andere herein, unter %1.</translation>
    </message>
</context>
<context>
    <name>PairCard</name>
    <message>
        <source>Code or five words</source>
        <translation>Code oder fünf Wörter</translation>
    </message>
    <message>
        <source>It stands beside the words, such as desk.local or 192.168.1.20:26110.</source>
        <translation>Sie steht neben den Wörtern, etwa desk.local oder 192.168.1.20:26110.</translation>
    </message>
    <message>
        <source>Pair</source>
        <translation>Koppeln</translation>
    </message>
    <message>
        <source>With an event server, or with a tablet that lets others in. It shows a code and five words, good for fifteen minutes and one tablet.</source>
        <translation>Mit einem Turnierserver, oder mit einem Tablet, das andere hereinlässt. Es zeigt einen Code und fünf Wörter; sie gelten fünfzehn Minuten und für ein Tablet.</translation>
    </message>
    <message>
        <source>Its address</source>
        <translation>Seine Adresse</translation>
    </message>
</context>
<context>
    <name>PartBooksSheet</name>
    <message>
        <source>Not the same person</source>
        <translation>Nicht dieselbe Person</translation>
    </message>
    <message>
        <source>This book is parted from the others. Each is as it was before they were linked; what was answered since for both stays in both.</source>
        <translation>Dieses Buch wird von den anderen getrennt. Jedes ist wie vor dem Verknüpfen; was seither für beide beantwortet wurde, bleibt in beiden.</translation>
    </message>
    <message>
        <source>Part the books</source>
        <translation>Bücher trennen</translation>
    </message>
</context>
<context>
    <name>PastColumnsCard</name>
    <message>
        <source>What its columns hold</source>
        <translation>Was in den Spalten steht</translation>
    </message>
    <message>
        <source>Found by their headings. Look whether it is right; what is not said is not used.</source>
        <translation>An den Überschriften erkannt. Bitte prüfen; was nicht gesagt ist, wird nicht benutzt.</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>Not used</source>
        <translation>Nicht benutzt</translation>
    </message>
    <message>
        <source>in %1, as its heading says</source>
        <translation>in %1, wie die Überschrift sagt</translation>
    </message>
</context>
<context>
    <name>PastJobsModel</name>
    <message>
        <source>Not used</source>
        <translation>Nicht benutzt</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Familienname</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Vorname</translation>
    </message>
    <message>
        <source>Whole name</source>
        <translation>Ganzer Name</translation>
    </message>
    <message>
        <source>Name in own script</source>
        <translation>Name in eigener Schrift</translation>
    </message>
    <message>
        <source>Country, three letters</source>
        <translation>Land, drei Buchstaben</translation>
    </message>
    <message>
        <source>Year of birth</source>
        <translation>Geburtsjahr</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Hand</translation>
    </message>
    <message>
        <source>Tour number</source>
        <translation>Nummer der Tour</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Event</source>
        <translation>Turnier</translation>
    </message>
    <message>
        <source>Racket’s mark</source>
        <translation>Zeichen des Schlägers</translation>
    </message>
    <message>
        <source>Racket’s maker</source>
        <translation>Hersteller des Schlägers</translation>
    </message>
    <message>
        <source>Racket’s model</source>
        <translation>Modell des Schlägers</translation>
    </message>
    <message>
        <source>String of the mains</source>
        <translation>Saite längs</translation>
    </message>
    <message>
        <source>Gauge of the mains</source>
        <translation>Stärke längs</translation>
    </message>
    <message>
        <source>Tension of the mains</source>
        <translation>Härte längs</translation>
    </message>
    <message>
        <source>String of the crosses</source>
        <translation>Saite quer</translation>
    </message>
    <message>
        <source>Gauge of the crosses</source>
        <translation>Stärke quer</translation>
    </message>
    <message>
        <source>Tension of the crosses</source>
        <translation>Härte quer</translation>
    </message>
    <message>
        <source>String (mains / crosses)</source>
        <translation>Saite (längs / quer)</translation>
    </message>
    <message>
        <source>Tension (mains / crosses)</source>
        <translation>Härte (längs / quer)</translation>
    </message>
    <message>
        <source>Pre-stretch</source>
        <translation>Vorstrecken</translation>
    </message>
    <message>
        <source>Who strung it</source>
        <translation>Wer bespannt hat</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>a tension, such as 25, 25.5 kg or 55 lb</source>
        <translation>eine Bespannungshärte wie 25, 25,5 kg oder 55 lb</translation>
    </message>
    <message>
        <source>a gauge in mm, such as 1.25</source>
        <translation>eine Stärke in mm wie 1,25</translation>
    </message>
    <message>
        <source>per cent from 0 to 30</source>
        <translation>Prozent von 0 bis 30</translation>
    </message>
    <message>
        <source>a day, such as 2031-05-26 or 26.05.2031</source>
        <translation>ein Tag wie 2031-05-26 oder 26.05.2031</translation>
    </message>
    <message>
        <source>three letters, such as POR</source>
        <translation>drei Buchstaben wie POR</translation>
    </message>
    <message>
        <source>a year from 1900 to 2099</source>
        <translation>ein Jahr von 1900 bis 2099</translation>
    </message>
    <message>
        <source>right or left</source>
        <translation>rechts oder links</translation>
    </message>
    <message>
        <source>a name</source>
        <translation>ein Name</translation>
    </message>
    <message>
        <source>a shorter text</source>
        <translation>ein kürzerer Text</translation>
    </message>
    <message>
        <source>Line %1, %2</source>
        <translation>Zeile %1, %2</translation>
    </message>
    <message>
        <source>this is no tension in the unit of the others; write its unit beside it.</source>
        <translation>das ist keine Bespannungshärte in der Einheit der anderen; die Einheit dazuschreiben.</translation>
    </message>
    <message>
        <source>nothing stands there.</source>
        <translation>dort steht nichts.</translation>
    </message>
    <message>
        <source>“%1” is still to come, by this tablet’s clock.</source>
        <translation>„%1“ kommt erst noch, nach der Uhr dieses Tablets.</translation>
    </message>
    <message>
        <source>“%1” is not %2.</source>
        <translation>„%1“ ist nicht: %2.</translation>
    </message>
    <message>
        <source>Choose it again, or copy it to this device first.</source>
        <translation>Wählen Sie sie noch einmal, oder kopieren Sie sie zuerst auf dieses Gerät.</translation>
    </message>
    <message>
        <source>The file is too large. Split it, or leave out what is not needed.</source>
        <translation>Die Datei ist zu groß. Teilen Sie sie, oder lassen Sie weg, was nicht nötig ist.</translation>
    </message>
    <message>
        <source>Two columns are taken for the same. Say which of them it is.</source>
        <translation>Zwei Spalten gelten als dieselbe. Sagen Sie, welche es ist.</translation>
    </message>
</context>
<context>
    <name>PastJobsSheet</name>
    <message>
        <source>Past jobs</source>
        <translation>Frühere Aufträge</translation>
    </message>
    <message>
        <source>A table of rackets strung before becomes the history of its players. Nothing is stored before you have looked at it, and an import can be taken back as one.</source>
        <translation>Eine Tabelle früher bespannter Schläger wird zur Geschichte ihrer Spieler. Nichts wird gespeichert, bevor Sie es gesehen haben, und alles lässt sich auf einmal zurücknehmen.</translation>
    </message>
    <message>
        <source>Choose the table (CSV)</source>
        <translation>Tabelle wählen (CSV)</translation>
    </message>
    <message>
        <source>Bringing in</source>
        <translation>Wird übernommen</translation>
    </message>
    <message>
        <source>Working on it</source>
        <translation>In Arbeit</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Brought in</source>
        <translation>Übernommen</translation>
    </message>
    <message>
        <source>Not all of it was brought in</source>
        <translation>Nicht alles wurde übernommen</translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation>Zurückgenommen</translation>
    </message>
    <message>
        <source>Taken back, but for players on whom work went on since</source>
        <translation>Zurückgenommen, außer bei denen, an denen seither weitergearbeitet wurde</translation>
    </message>
    <message>
        <source>Not taken back</source>
        <translation>Nicht zurückgenommen</translation>
    </message>
    <message>
        <source>The file can&apos;t be read</source>
        <translation>Die Datei ist nicht lesbar</translation>
    </message>
    <message>
        <source>This is no table that can be read</source>
        <translation>Das ist keine lesbare Tabelle</translation>
    </message>
    <message>
        <source>Which column holds the players&apos; names?</source>
        <translation>In welcher Spalte stehen die Namen?</translation>
    </message>
    <message>
        <source>Which column holds a string or a tension?</source>
        <translation>In welcher Spalte steht eine Saite oder Bespannungshärte?</translation>
    </message>
    <message>
        <source>The table can&apos;t be brought in like this</source>
        <translation>So lässt sich die Tabelle nicht übernehmen</translation>
    </message>
    <message>
        <source>How its letters are written</source>
        <translation>Wie ihre Buchstaben geschrieben sind</translation>
    </message>
    <message>
        <source>Unicode</source>
        <translation>Unicode</translation>
    </message>
    <message>
        <source>Windows, western</source>
        <translation>Windows, westlich</translation>
    </message>
    <message>
        <source>In which unit are tensions that say none? The figures do not tell.</source>
        <translation>In welcher Einheit sind Bespannungshärten ohne Einheit? Die Zahlen sagen es nicht.</translation>
    </message>
    <message>
        <source>Tensions that say no unit look like this one. Is that right?</source>
        <translation>Bespannungshärten ohne Einheit sehen nach dieser aus. Stimmt das?</translation>
    </message>
    <message>
        <source>Tensions that say no unit</source>
        <translation>Bespannungshärten ohne Einheit</translation>
    </message>
    <message>
        <source>What stands first in dates such as 03/04/2031? The table does not tell.</source>
        <translation>Was steht in Daten wie 03/04/2031 zuerst? Die Tabelle sagt es nicht.</translation>
    </message>
    <message>
        <source>What stands first in dates with slashes</source>
        <translation>Was in Daten mit Schrägstrichen zuerst steht</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Der Tag</translation>
    </message>
    <message>
        <source>The month</source>
        <translation>Der Monat</translation>
    </message>
    <message>
        <source>May be %1, who is known here. Rackets in the table: %2</source>
        <translation>Vielleicht %1, hier bekannt. Schläger in der Tabelle: %2</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>The same</source>
        <translation>Dieselbe Person</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation>Jemand anderes</translation>
    </message>
    <message>
        <source>Who %1 is</source>
        <translation>Wer %1 ist</translation>
    </message>
    <message numerus="yes">
        <source>Would come in: %n racket(s)</source>
        <translation>
            <numerusform>Würde übernommen: %n Schläger</numerusform>
            <numerusform>Würden übernommen: %n Schläger</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Here already: %n racket(s)</source>
        <translation>
            <numerusform>Schon hier: %n Schläger</numerusform>
            <numerusform>Schon hier: %n Schläger</numerusform>
        </translation>
    </message>
    <message>
        <source>Players known here: %1, new: %2</source>
        <translation>Hier bekannte Spieler: %1, neue: %2</translation>
    </message>
    <message numerus="yes">
        <source>Left out: %n row(s) with a mistake</source>
        <translation>
            <numerusform>Ausgelassen: %n Zeile mit einem Fehler</numerusform>
            <numerusform>Ausgelassen: %n Zeilen mit einem Fehler</numerusform>
        </translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Brought in on this device</source>
        <translation>Auf diesem Gerät übernommen</translation>
    </message>
    <message>
        <source>%1, players: %2</source>
        <translation>%1, Spieler: %2</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Take %1 back</source>
        <translation>%1 zurücknehmen</translation>
    </message>
    <message>
        <source>Every racket and player that came with it goes again, as one. What work has gone on with since stays.</source>
        <translation>Jeder Schläger und Spieler, der damit kam, geht wieder, auf einmal. Woran seither weitergearbeitet wurde, bleibt.</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Tables (*.csv *.CSV *.txt *.tsv)</source>
        <translation>Tabellen (*.csv *.CSV *.txt *.tsv)</translation>
    </message>
</context>
<context>
    <name>PastRowsCard</name>
    <message>
        <source>Its rows</source>
        <translation>Die Zeilen</translation>
    </message>
    <message numerus="yes">
        <source>Left out: %n row(s) with a mistake</source>
        <translation>
            <numerusform>Ausgelassen: %n Zeile mit einem Fehler</numerusform>
            <numerusform>Ausgelassen: %n Zeilen mit einem Fehler</numerusform>
        </translation>
    </message>
    <message>
        <source>... and %1 more</source>
        <translation>... und %1 weitere</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>PaymentCard</name>
    <message>
        <source>Take a payment</source>
        <translation>Zahlung annehmen</translation>
    </message>
    <message>
        <source>Amount in %1</source>
        <translation>Betrag in %1</translation>
    </message>
    <message>
        <source>Takes the payment</source>
        <translation>Nimmt die Zahlung an</translation>
    </message>
    <message>
        <source>%1 paid: %2</source>
        <translation>%1 bezahlt: %2</translation>
    </message>
</context>
<context>
    <name>PersonCard</name>
    <message>
        <source>Player</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Familienname</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Vorname</translation>
    </message>
    <message>
        <source>Name in the own script</source>
        <translation>Name in eigener Schrift</translation>
    </message>
    <message>
        <source>Country, three letters</source>
        <translation>Land, drei Buchstaben</translation>
    </message>
    <message>
        <source>How to reach the player</source>
        <translation>Wie der Spieler zu erreichen ist</translation>
    </message>
    <message>
        <source>Reads best</source>
        <translation>Liest am besten</translation>
    </message>
</context>
<context>
    <name>PersonLinks</name>
    <message numerus="yes">
        <source>%n racket(s)</source>
        <translation>
            <numerusform>%n Schläger</numerusform>
            <numerusform>%n Schläger</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PersonSheet</name>
    <message>
        <source>Change player</source>
        <translation>Spieler ändern</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Familienname</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Vorname</translation>
    </message>
    <message>
        <source>Name in the own script</source>
        <translation>Name in eigener Schrift</translation>
    </message>
    <message>
        <source>Country, three letters</source>
        <translation>Land, drei Buchstaben</translation>
    </message>
    <message>
        <source>How to reach the player</source>
        <translation>Wie der Spieler zu erreichen ist</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Reads best</source>
        <translation>Liest am besten</translation>
    </message>
    <message>
        <source>Says tensions in</source>
        <translation>Sagt Spannungen in</translation>
    </message>
</context>
<context>
    <name>PhotoPicture</name>
    <message>
        <source>The picture is damaged and can&apos;t be shown.</source>
        <translation>Das Bild ist beschädigt und lässt sich nicht zeigen.</translation>
    </message>
</context>
<context>
    <name>PhotoSheet</name>
    <message>
        <source>Take a photo</source>
        <translation>Foto aufnehmen</translation>
    </message>
    <message>
        <source>Photo kept</source>
        <translation>Foto gespeichert</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) kept</source>
        <translation>
            <numerusform>%n Foto gespeichert</numerusform>
            <numerusform>%n Fotos gespeichert</numerusform>
        </translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Aufnehmen</translation>
    </message>
</context>
<context>
    <name>Photos</name>
    <message>
        <source>The picture is damaged and can&apos;t be shown.</source>
        <translation>Das Bild ist beschädigt und lässt sich nicht zeigen.</translation>
    </message>
    <message>
        <source>Choose another file, or take the picture again.</source>
        <translation>Wählen Sie eine andere Datei oder nehmen Sie das Bild noch einmal auf.</translation>
    </message>
    <message>
        <source>This file is no picture.</source>
        <translation>Diese Datei ist kein Bild.</translation>
    </message>
    <message>
        <source>Choose a JPEG or PNG file.</source>
        <translation>Wählen Sie eine JPEG- oder PNG-Datei.</translation>
    </message>
    <message>
        <source>The picture has too many pixels.</source>
        <translation>Das Bild hat zu viele Pixel.</translation>
    </message>
    <message>
        <source>Make it smaller first: 64 megapixels at most.</source>
        <translation>Verkleinern Sie es zuerst: höchstens 64 Megapixel.</translation>
    </message>
</context>
<context>
    <name>PhotosCard</name>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>There is no picture of this racket yet.</source>
        <translation>Von diesem Schläger gibt es noch kein Bild.</translation>
    </message>
    <message>
        <source>Photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>Photo %1: not on this tablet yet</source>
        <translation>Foto %1: noch nicht auf diesem Tablet</translation>
    </message>
    <message>
        <source>It is being fetched</source>
        <translation>Es wird geholt</translation>
    </message>
    <message>
        <source>Waiting for the event server</source>
        <translation>Warten auf den Turnierserver</translation>
    </message>
    <message>
        <source>Fetch photo %1</source>
        <translation>Foto %1 holen</translation>
    </message>
    <message>
        <source>Add a photo from a file</source>
        <translation>Foto aus einer Datei hinzufügen</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG)</source>
        <translation>Bilder (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG)</translation>
    </message>
    <message>
        <source>Photo kept, without the place where it was taken</source>
        <translation>Foto behalten, ohne den Ort der Aufnahme</translation>
    </message>
    <message>
        <source>Add it again from where it came, or fetch it from the tablet on which it was taken.</source>
        <translation>Fügen Sie es noch einmal hinzu oder holen Sie es von dem Tablet, auf dem es aufgenommen wurde.</translation>
    </message>
    <message>
        <source>Take a photo</source>
        <translation>Foto aufnehmen</translation>
    </message>
</context>
<context>
    <name>PhotosModel</name>
    <message>
        <source>No device that is connected has this picture.</source>
        <translation>Kein verbundenes Gerät hat dieses Bild.</translation>
    </message>
    <message>
        <source>The event server runs an earlier version, which hands on no pictures.</source>
        <translation>Auf dem Turnierserver läuft eine frühere Version, die keine Bilder weitergibt.</translation>
    </message>
    <message>
        <source>The event server may not hand this picture on.</source>
        <translation>Der Turnierserver darf dieses Bild nicht weitergeben.</translation>
    </message>
    <message>
        <source>There is no space left for pictures on this tablet.</source>
        <translation>Auf diesem Tablet ist kein Platz mehr für Bilder.</translation>
    </message>
    <message>
        <source>It did not come. Try again.</source>
        <translation>Es ist nicht angekommen. Versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The file can&apos;t be read.</source>
        <translation>Die Datei lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>Choose another one.</source>
        <translation>Wählen Sie eine andere.</translation>
    </message>
    <message>
        <source>The file is larger than 40 MiB.</source>
        <translation>Die Datei ist größer als 40 MiB.</translation>
    </message>
    <message>
        <source>Choose a smaller one.</source>
        <translation>Wählen Sie eine kleinere.</translation>
    </message>
    <message>
        <source>This tablet is not connected to an event server.</source>
        <translation>Dieses Tablet ist mit keinem Turnierserver verbunden.</translation>
    </message>
    <message>
        <source>Connect it under Exchange, then fetch the picture.</source>
        <translation>Verbinden Sie es unter „Abgleich“ und holen Sie dann das Bild.</translation>
    </message>
</context>
<context>
    <name>PickList</name>
    <message>
        <source>Choose</source>
        <translation>Auswählen</translation>
    </message>
    <message>
        <source>Find in the list</source>
        <translation>In der Liste suchen</translation>
    </message>
</context>
<context>
    <name>PlaceBar</name>
    <message>
        <source>Places</source>
        <translation>Orte</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>More places</source>
        <translation>Weitere Orte</translation>
    </message>
</context>
<context>
    <name>PlaceButton</name>
    <message>
        <source>%1, %2 waiting</source>
        <translation>%1, %2 offen</translation>
    </message>
</context>
<context>
    <name>PlaceRail</name>
    <message>
        <source>Places</source>
        <translation>Orte</translation>
    </message>
</context>
<context>
    <name>PlanPage</name>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Draw</source>
        <translation>Tableau</translation>
    </message>
    <message>
        <source>Home benches</source>
        <translation>Stammbänke</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Was gezeigt wird</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its draws come here by themselves.</source>
        <translation>Unter Abgleich mit einem Turnierserver verbinden; seine Tableaus kommen von selbst hierher.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>To come</source>
        <translation>Vorschau</translation>
    </message>
</context>
<context>
    <name>PlayerCard</name>
    <message>
        <source>Player changed</source>
        <translation>Spieler geändert</translation>
    </message>
    <message>
        <source>Racket changed</source>
        <translation>Schläger geändert</translation>
    </message>
    <message>
        <source>Consent noted</source>
        <translation>Einwilligung vermerkt</translation>
    </message>
</context>
<context>
    <name>PlayerDetails</name>
    <message>
        <source>Open question: %1, %2</source>
        <translation>Offene Frage: %1, %2</translation>
    </message>
    <message>
        <source>Open question: %1</source>
        <translation>Offene Frage: %1</translation>
    </message>
    <message>
        <source>%1 (%2, %3)</source>
        <translation>%1 (%2, %3)</translation>
    </message>
    <message>
        <source>Rackets</source>
        <translation>Schläger</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
    <message>
        <source>Racket without a mark</source>
        <translation>Schläger ohne Zeichen</translation>
    </message>
    <message>
        <source>in the room</source>
        <translation>im Raum</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Noch keiner</translation>
    </message>
    <message>
        <source>Last jobs</source>
        <translation>Letzte Bespannungen</translation>
    </message>
    <message>
        <source>Older ones</source>
        <translation>Ältere</translation>
    </message>
    <message>
        <source>Who has this book</source>
        <translation>Wer dieses Buch hat</translation>
    </message>
    <message>
        <source>%1 has it from here, last %2</source>
        <translation>%1 hat es von hier, zuletzt %2</translation>
    </message>
    <message>
        <source>It came from %1, last %2</source>
        <translation>Es kam von %1, zuletzt %2</translation>
    </message>
    <message>
        <source>Devices that exchanged it with this tablet, and what was made of it for others. If the player withdraws, each device is told when it is met, and takes nothing of it any more.</source>
        <translation>Geräte, die es mit diesem Tablet ausgetauscht haben, und was daraus für andere gemacht wurde. Zieht der Spieler zurück, erfährt es jedes Gerät beim nächsten Treffen und nimmt nichts mehr davon an.</translation>
    </message>
    <message>
        <source>The player agreed to one room only</source>
        <translation>Der Spieler hat nur einem Raum zugestimmt</translation>
    </message>
    <message>
        <source>Devices of other rooms that have this from before keep it, and get nothing new. If the player wants it gone there, let them withdraw, and take them in anew.</source>
        <translation>Geräte anderer Räume, die dies von früher haben, behalten es und bekommen nichts Neues. Soll es auch dort weg, kann der Spieler zurückziehen und danach neu aufgenommen werden.</translation>
    </message>
    <message>
        <source>A player card was given, last %1</source>
        <translation>Eine Spielerkarte wurde gegeben, zuletzt %1</translation>
    </message>
    <message>
        <source>A backup holds it, last %1</source>
        <translation>Es ist in einer Sicherung, zuletzt %1</translation>
    </message>
    <message>
        <source>It is in a bundle for %1, last %2</source>
        <translation>Es ist in einem Bündel für %1, zuletzt %2</translation>
    </message>
</context>
<context>
    <name>PlayerPick</name>
    <message>
        <source>All of this event</source>
        <translation>Alle dieses Turniers</translation>
    </message>
    <message>
        <source>Nobody</source>
        <translation>Niemand</translation>
    </message>
    <message>
        <source>Find a player</source>
        <translation>Spieler finden</translation>
    </message>
    <message>
        <source>Nobody is chosen yet</source>
        <translation>Noch ist niemand ausgewählt</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) chosen</source>
        <translation>
            <numerusform>%n Spieler ausgewählt</numerusform>
            <numerusform>%n Spieler ausgewählt</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PlayersPage</name>
    <message>
        <source>Players</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>No player is known on this device</source>
        <translation>Auf diesem Gerät ist kein Spieler bekannt</translation>
    </message>
    <message>
        <source>Players come with an entry list, with an exchange, or are added at the desk.</source>
        <translation>Spieler kommen mit einer Meldeliste, mit einem Abgleich oder werden an der Annahme erfasst.</translation>
    </message>
    <message>
        <source>Known on this device: %1</source>
        <translation>Auf diesem Gerät bekannt: %1</translation>
    </message>
    <message>
        <source>Find a player</source>
        <translation>Spieler suchen</translation>
    </message>
    <message>
        <source>Nobody of that name</source>
        <translation>Niemand mit diesem Namen</translation>
    </message>
    <message>
        <source>Look at the spelling.</source>
        <translation>Schreibweise prüfen.</translation>
    </message>
    <message>
        <source>All players</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Change player</source>
        <translation>Spieler ändern</translation>
    </message>
    <message>
        <source>Consent</source>
        <translation>Einwilligung</translation>
    </message>
    <message>
        <source>Pick a player</source>
        <translation>Einen Spieler wählen</translation>
    </message>
    <message>
        <source>What was agreed, the rackets and the last jobs appear here.</source>
        <translation>Hier erscheinen Vereinbartes, Schläger und letzte Bespannungen.</translation>
    </message>
    <message>
        <source>Forget this player</source>
        <translation>Diesen Spieler vergessen</translation>
    </message>
    <message>
        <source>Take a card in</source>
        <translation>Karte annehmen</translation>
    </message>
    <message>
        <source>Make cards</source>
        <translation>Karten machen</translation>
    </message>
    <message>
        <source>Past jobs</source>
        <translation>Frühere Aufträge</translation>
    </message>
    <message>
        <source>Player card</source>
        <translation>Spielerkarte</translation>
    </message>
    <message>
        <source>All that is held on this player</source>
        <translation>Alles, was über diesen Spieler gespeichert ist</translation>
    </message>
</context>
<context>
    <name>PlayersView</name>
    <message>
        <source>Players</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>new here</source>
        <translation>neu hier</translation>
    </message>
</context>
<context>
    <name>PriceSheet</name>
    <message>
        <source>Price of one string</source>
        <translation>Preis einer Saite</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
    <message>
        <source>Name of the string, as jobs call it</source>
        <translation>Name der Saite, wie Aufträge sie nennen</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Price in %1</source>
        <translation>Preis in %1</translation>
    </message>
    <message>
        <source>0 if it is free.</source>
        <translation>0, wenn es nichts kostet.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Price: %1</source>
        <translation>Preis: %1</translation>
    </message>
    <message>
        <source>Take it off the list</source>
        <translation>Von der Liste nehmen</translation>
    </message>
    <message>
        <source>Off the list: %1</source>
        <translation>Von der Liste: %1</translation>
    </message>
</context>
<context>
    <name>PricesModel</name>
    <message>
        <source>A price is not below zero.</source>
        <translation>Ein Preis ist nicht unter null.</translation>
    </message>
    <message>
        <source>No such currency; write its three letters, such as EUR.</source>
        <translation>Diese Währung gibt es nicht; schreiben Sie ihre drei Buchstaben, etwa EUR.</translation>
    </message>
</context>
<context>
    <name>PrintSheet</name>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>In the order of</source>
        <translation>Geordnet nach</translation>
    </message>
    <message>
        <source>Family names</source>
        <translation>Familiennamen</translation>
    </message>
    <message>
        <source>Tag numbers</source>
        <translation>Nummern</translation>
    </message>
    <message>
        <source>First free label</source>
        <translation>Erstes freies Etikett</translation>
    </message>
    <message>
        <source>Counted from the top left, row by row.</source>
        <translation>Von oben links gezählt, Zeile für Zeile.</translation>
    </message>
    <message>
        <source>There is nothing to print</source>
        <translation>Es gibt nichts zu drucken</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Drucker</translation>
    </message>
    <message>
        <source>No printer is set up on this device</source>
        <translation>Auf diesem Gerät ist kein Drucker eingerichtet</translation>
    </message>
    <message>
        <source>Save the PDF and print it from a device that has one.</source>
        <translation>PDF sichern und von einem Gerät mit Drucker drucken.</translation>
    </message>
    <message>
        <source>On its way ...</source>
        <translation>Unterwegs …</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Print on %1</source>
        <translation>Drucken auf %1</translation>
    </message>
    <message>
        <source>Save PDF</source>
        <translation>PDF sichern</translation>
    </message>
    <message>
        <source>Handed to %1</source>
        <translation>An %1 übergeben</translation>
    </message>
    <message>
        <source>Not printed: the paper could not be written</source>
        <translation>Nicht gedruckt: Das Papier konnte nicht geschrieben werden</translation>
    </message>
    <message>
        <source>Not printed: this device has no printing system</source>
        <translation>Nicht gedruckt: Dieses Gerät hat kein Drucksystem</translation>
    </message>
    <message>
        <source>Not printed: the printing system does not answer</source>
        <translation>Nicht gedruckt: Das Drucksystem antwortet nicht</translation>
    </message>
    <message>
        <source>Not printed: the printer refused it</source>
        <translation>Nicht gedruckt: Der Drucker nahm es nicht an</translation>
    </message>
    <message>
        <source>One page</source>
        <translation>Eine Seite</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Seite davor</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <source>Page %1: %2</source>
        <translation>Seite %1: %2</translation>
    </message>
    <message>
        <source>Not on it</source>
        <translation>Nicht dabei</translation>
    </message>
    <message>
        <source>Save for programs (JSON)</source>
        <translation>Für Programme sichern (JSON)</translation>
    </message>
    <message>
        <source>It is saved</source>
        <translation>Es ist gesichert</translation>
    </message>
    <message>
        <source>It was not saved</source>
        <translation>Es wurde nicht gesichert</translation>
    </message>
</context>
<context>
    <name>PromiseAnswer</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1, promised for %2: %3 now, %4 then</source>
        <translation>%1, versprochen für %2: jetzt %3, dann %4</translation>
    </message>
</context>
<context>
    <name>PromiseNotice</name>
    <message>
        <source>The room can promise %1</source>
        <translation>Der Raum kann %1 versprechen</translation>
    </message>
    <message>
        <source>This time can be kept</source>
        <translation>Diese Zeit ist zu halten</translation>
    </message>
    <message>
        <source>This time can’t be kept with certainty. The room can promise %1</source>
        <translation>Diese Zeit ist nicht sicher zu halten. Der Raum kann %1 versprechen</translation>
    </message>
    <message>
        <source>This time can’t be kept, and no shift has room</source>
        <translation>Diese Zeit ist nicht zu halten, und keine Schicht hat Platz</translation>
    </message>
    <message>
        <source>Estimate: %1 of such promises are kept, by the queue, the shifts and how long rackets took so far.</source>
        <translation>Schätzung: %1 solcher Zusagen werden gehalten, nach Warteschlange, Schichten und bisheriger Dauer.</translation>
    </message>
    <message>
        <source>Estimate: %1.</source>
        <translation>Schätzung: %1.</translation>
    </message>
    <message>
        <source>Not even before all that waits.</source>
        <translation>Nicht einmal vor allem, was wartet.</translation>
    </message>
    <message>
        <source>In its turn: %1.</source>
        <translation>Der Reihe nach: %1.</translation>
    </message>
    <message>
        <source>For it would have to give way:</source>
        <translation>Dafür müssten weichen:</translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation>%1 nehmen</translation>
    </message>
    <message>
        <source>Not connected to %1: the benches there hear of these rackets later. Better agree on a time when they do.</source>
        <translation>Nicht verbunden mit %1: Die Arbeitsplätze dort erfahren von diesen Schlägern erst später. Besser dann eine Zeit vereinbaren.</translation>
    </message>
    <message>
        <source>No time can be reckoned: %1</source>
        <translation>Es lässt sich keine Zeit berechnen: %1</translation>
    </message>
</context>
<context>
    <name>PullLine</name>
    <message>
        <source>Calibration line of %1</source>
        <translation>Kalibrierlinie von %1</translation>
    </message>
    <message>
        <source>set to %1</source>
        <translation>eingestellt: %1</translation>
    </message>
</context>
<context>
    <name>QualityChart</name>
    <message numerus="yes">
        <source>Chart of %n racket(s)</source>
        <translation>
            <numerusform>Diagramm von %n Schläger</numerusform>
            <numerusform>Diagramm von %n Schlägern</numerusform>
        </translation>
    </message>
    <message>
        <source>The arrow keys choose a racket.</source>
        <translation>Die Pfeiltasten wählen einen Schläger.</translation>
    </message>
</context>
<context>
    <name>QualityModel</name>
    <message>
        <source>Give a pull from 1 to 100 kg.</source>
        <translation>Einen Zug von 1 bis 100 kg angeben.</translation>
    </message>
    <message>
        <source>All rackets</source>
        <translation>Alle Schläger</translation>
    </message>
    <message>
        <source>Machine: %1</source>
        <translation>Maschine: %1</translation>
    </message>
    <message>
        <source>Stringer: %1</source>
        <translation>Bespanner: %1</translation>
    </message>
    <message numerus="yes">
        <source>One reading scatters by about %1 % (estimate of %n reading(s)).</source>
        <translation>
            <numerusform>Ein Messwert streut um etwa %1 % (Schätzung aus %n Messwert).</numerusform>
            <numerusform>Ein Messwert streut um etwa %1 % (Schätzung aus %n Messwerten).</numerusform>
        </translation>
    </message>
    <message>
        <source>Too few readings to tell their scatter: %1 % is assumed, as such gauges and rooms usually have.</source>
        <translation>Zu wenige Messwerte, um ihre Streuung anzugeben: Angenommen sind %1 %, wie bei solchen Geräten und Räumen üblich.</translation>
    </message>
    <message numerus="yes">
        <source>%1 % of the variance (estimate, 95 %: %2 to %3 %), between %n of them</source>
        <translation>
            <numerusform>%1 % der Varianz (Schätzung, zu 95 %: %2 bis %3 %), unter %n</numerusform>
            <numerusform>%1 % der Varianz (Schätzung, zu 95 %: %2 bis %3 %), unter %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Stringers: %1</source>
        <translation>Bespanner: %1</translation>
    </message>
    <message>
        <source>Machines: %1</source>
        <translation>Maschinen: %1</translation>
    </message>
    <message>
        <source>Frames: %1</source>
        <translation>Rahmen: %1</translation>
    </message>
    <message>
        <source>; they differ clearly</source>
        <translation>; sie unterscheiden sich deutlich</translation>
    </message>
    <message>
        <source>; they seem to differ</source>
        <translation>; sie scheinen sich zu unterscheiden</translation>
    </message>
    <message>
        <source>; no clear difference</source>
        <translation>; kein deutlicher Unterschied</translation>
    </message>
    <message numerus="yes">
        <source>Of 100 rackets about %1 lie more than %2 % from what was to be expected (estimate, 95 %: %3 to %4). Of the %n read, %5 did.</source>
        <translation>
            <numerusform>Von 100 Schlägern liegen etwa %1 mehr als %2 % neben dem Erwarteten (Schätzung, zu 95 %: %3 bis %4). Von %n gemessenen: %5.</numerusform>
            <numerusform>Von 100 Schlägern liegen etwa %1 mehr als %2 % neben dem Erwarteten (Schätzung, zu 95 %: %3 bis %4). Von %n gemessenen: %5.</numerusform>
        </translation>
    </message>
    <message>
        <source>Too few readings to tell what can be held: %1 of at least %2 that can be compared.</source>
        <translation>Zu wenige Messwerte, um zu sagen, was sich einhalten lässt: %1 von mindestens %2 vergleichbaren.</translation>
    </message>
    <message>
        <source>%1 % (± %2, estimate)</source>
        <translation>%1 % (± %2, Schätzung)</translation>
    </message>
    <message>
        <source>nothing to compare it with yet</source>
        <translation>noch nichts zum Vergleichen</translation>
    </message>
    <message>
        <source>Racket %1: %2 % (± %3)</source>
        <translation>Schläger %1: %2 % (± %3)</translation>
    </message>
    <message numerus="yes">
        <source>Machine %1: %2 % (± %3) over %n racket(s)</source>
        <translation>
            <numerusform>Maschine %1: %2 % (± %3) über %n Schläger</numerusform>
            <numerusform>Maschine %1: %2 % (± %3) über %n Schläger</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stringer %1: %2 % (± %3) over %n racket(s)</source>
        <translation>
            <numerusform>Bespanner %1: %2 % (± %3) über %n Schläger</numerusform>
            <numerusform>Bespanner %1: %2 % (± %3) über %n Schläger</numerusform>
        </translation>
    </message>
    <message>
        <source>It was never held against a gauge.</source>
        <translation>Sie wurde noch nie mit dem Messgerät geprüft.</translation>
    </message>
    <message>
        <source>No pull against the gauge was noted.</source>
        <translation>Es ist kein Zug am Messgerät notiert.</translation>
    </message>
    <message numerus="yes">
        <source>%n pull(s) noted, too few for a line: at three settings or more, each twice, on one day.</source>
        <translation>
            <numerusform>%n Zug notiert, zu wenig für eine Linie: an einem Tag bei mindestens drei Einstellungen je zweimal ziehen.</numerusform>
            <numerusform>%n Züge notiert, zu wenig für eine Linie: an einem Tag bei mindestens drei Einstellungen je zweimal ziehen.</numerusform>
        </translation>
    </message>
    <message>
        <source>What to set for %1 is not known: the pulls noted do not reach it.</source>
        <translation>Was für %1 einzustellen ist, ist nicht bekannt: Die notierten Züge reichen nicht so weit.</translation>
    </message>
    <message>
        <source>At %1 it is off by %2 % (± %3, estimate); %4 % are tolerated.</source>
        <translation>Bei %1 liegt sie %2 % daneben (± %3, Schätzung); %4 % sind zulässig.</translation>
    </message>
    <message>
        <source>There is no chart yet.</source>
        <translation>Noch gibt es kein Diagramm.</translation>
    </message>
    <message>
        <source>Wait a moment and save it again.</source>
        <translation>Warten Sie einen Moment und speichern Sie noch einmal.</translation>
    </message>
</context>
<context>
    <name>QualityRulesSheet</name>
    <message>
        <source>The room’s rules</source>
        <translation>Regeln des Raums</translation>
    </message>
    <message>
        <source>Tolerance of a string bed, per cent either way</source>
        <translation>Toleranz einer Bespannung, Prozent nach oben und unten</translation>
    </message>
    <message>
        <source>Empty: 4 %, two pounds of fifty. Half of it is left to the machine.</source>
        <translation>Leer: 4 %, zwei Pfund von fünfzig. Die Hälfte davon darf die Maschine ausmachen.</translation>
    </message>
    <message>
        <source>Machines are held against the gauge every so many days</source>
        <translation>Maschinen werden alle so viele Tage mit dem Messgerät geprüft</translation>
    </message>
    <message>
        <source>Empty: every day.</source>
        <translation>Leer: jeden Tag.</translation>
    </message>
    <message>
        <source>Keep the rules</source>
        <translation>Regeln übernehmen</translation>
    </message>
    <message>
        <source>Rules kept</source>
        <translation>Regeln übernommen</translation>
    </message>
</context>
<context>
    <name>QualityView</name>
    <message>
        <source>a racket by itself</source>
        <translation>eines einzelnen Schlägers</translation>
    </message>
    <message>
        <source>a machine</source>
        <translation>einer Maschine</translation>
    </message>
    <message>
        <source>a stringer</source>
        <translation>eines Bespanners</translation>
    </message>
    <message>
        <source>Nothing can be told</source>
        <translation>Es lässt sich nichts sagen</translation>
    </message>
    <message>
        <source>No string bed was measured yet</source>
        <translation>Noch keine Bespannung gemessen</translation>
    </message>
    <message>
        <source>Measure each racket before it leaves the bench and enter the reading there; from the fifth of a kind on it is compared.</source>
        <translation>Jeden Schläger messen, bevor er die Werkbank verlässt, und den Wert dort eingeben; ab dem fünften einer Art wird verglichen.</translation>
    </message>
    <message>
        <source>Save as a table (CSV)</source>
        <translation>Als Tabelle speichern (CSV)</translation>
    </message>
    <message>
        <source>The room’s rules</source>
        <translation>Regeln des Raums</translation>
    </message>
    <message>
        <source>Racket after racket</source>
        <translation>Schläger um Schläger</translation>
    </message>
    <message>
        <source>The newest %1 of %2; per cent from what was to be expected, estimates</source>
        <translation>Die neuesten %1 von %2; Prozent neben dem Erwarteten, Schätzungen</translation>
    </message>
    <message>
        <source>Per cent from what was to be expected, estimates</source>
        <translation>Prozent neben dem Erwarteten, Schätzungen</translation>
    </message>
    <message>
        <source>Tap a racket to read it.</source>
        <translation>Einen Schläger antippen, um ihn zu lesen.</translation>
    </message>
    <message>
        <source>alarm of %1</source>
        <translation>Alarm %1</translation>
    </message>
    <message>
        <source>beyond the tolerance</source>
        <translation>außerhalb der Toleranz</translation>
    </message>
    <message>
        <source>beyond the tolerance (the band)</source>
        <translation>außerhalb der Toleranz (Band)</translation>
    </message>
    <message>
        <source>nothing to compare with yet</source>
        <translation>noch nichts zum Vergleichen</translation>
    </message>
    <message>
        <source>alarm of a racket (dashed: its limits)</source>
        <translation>Alarm eines Schlägers (gestrichelt: Grenzen)</translation>
    </message>
    <message>
        <source>alarm of a machine</source>
        <translation>Alarm einer Maschine</translation>
    </message>
    <message>
        <source>alarm of a stringer</source>
        <translation>Alarm eines Bespanners</translation>
    </message>
    <message>
        <source>moving average, begun anew after an alarm</source>
        <translation>gleitender Mittelwert, nach einem Alarm neu begonnen</translation>
    </message>
    <message>
        <source>What stands out</source>
        <translation>Was auffällt</translation>
    </message>
    <message numerus="yes">
        <source>The newest first; %n older one(s) are on the chart</source>
        <translation>
            <numerusform>Das Neueste zuerst; %n älterer steht im Diagramm</numerusform>
            <numerusform>Das Neueste zuerst; %n ältere stehen im Diagramm</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing stands out beyond what chance alone would do.</source>
        <translation>Nichts fällt mehr auf, als der Zufall allein es täte.</translation>
    </message>
    <message>
        <source>Likely causes (estimate): %1</source>
        <translation>Wahrscheinliche Ursachen (Schätzung): %1</translation>
    </message>
    <message>
        <source>%1, %2 %</source>
        <translation>%1, %2 %</translation>
    </message>
    <message>
        <source>Where the scatter comes from</source>
        <translation>Woher die Streuung kommt</translation>
    </message>
    <message>
        <source>Too few readings, or too few who strung them, to tell.</source>
        <translation>Zu wenige Messwerte oder zu wenige Beteiligte, um es zu sagen.</translation>
    </message>
    <message>
        <source>Left out: these readings can’t be of their rackets</source>
        <translation>Ausgelassen: Diese Messwerte können nicht von ihren Schlägern sein</translation>
    </message>
    <message>
        <source>Machines against the gauge</source>
        <translation>Maschinen am Messgerät</translation>
    </message>
    <message>
        <source>What to set for a pull of, in kg</source>
        <translation>Was einzustellen ist für einen Zug von, in kg</translation>
    </message>
    <message>
        <source>Enter a pull against the gauge</source>
        <translation>Zug am Messgerät eingeben</translation>
    </message>
    <message>
        <source>All figures are estimates of readings and say nothing on anybody’s health; whose arm hurts sees a physician.</source>
        <translation>Alle Zahlen sind Schätzungen aus Messwerten und sagen nichts über die Gesundheit; wem der Arm schmerzt, geht zum Arzt.</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabelle (*.csv)</translation>
    </message>
    <message>
        <source>Save as a sheet (PDF)</source>
        <translation>Als Blatt speichern (PDF)</translation>
    </message>
    <message>
        <source>Sheet (*.pdf)</source>
        <translation>Blatt (*.pdf)</translation>
    </message>
</context>
<context>
    <name>QuestionCard</name>
    <message>
        <source>Looked where it is: %1</source>
        <translation>Nachgesehen, wo er ist: %1</translation>
    </message>
    <message>
        <source>Tag %1: two people moved it on while apart</source>
        <translation>Schild %1: Zwei haben ihn unabhängig weitergegeben</translation>
    </message>
    <message>
        <source>Two people moved this racket on while apart</source>
        <translation>Zwei haben diesen Schläger unabhängig weitergegeben</translation>
    </message>
    <message>
        <source>Where is the racket now?</source>
        <translation>Wo ist der Schläger jetzt?</translation>
    </message>
    <message>
        <source>What does the player want?</source>
        <translation>Was will der Spieler?</translation>
    </message>
    <message>
        <source>Choose an answer</source>
        <translation>Antwort wählen</translation>
    </message>
    <message>
        <source>Close with: %1</source>
        <translation>Schließen mit: %1</translation>
    </message>
    <message>
        <source>Say the answer</source>
        <translation>Antwort angeben</translation>
    </message>
    <message>
        <source>Asked who has it: %1</source>
        <translation>Gefragt, wer ihn hat: %1</translation>
    </message>
    <message>
        <source>Who has the racket now?</source>
        <translation>Wer hat den Schläger jetzt?</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Schild %1</translation>
    </message>
    <message>
        <source>charged by two tablets while apart</source>
        <translation>von zwei Tablets unabhängig berechnet</translation>
    </message>
    <message>
        <source>What does it cost?</source>
        <translation>Was kostet es?</translation>
    </message>
    <message>
        <source>two linked books of this player differ</source>
        <translation>zwei verknüpfte Bücher dieses Spielers weichen ab</translation>
    </message>
    <message>
        <source>Which of them is right?</source>
        <translation>Was davon stimmt?</translation>
    </message>
    <message>
        <source>It was answered elsewhere meanwhile: %1 (%2). Nothing was written here.</source>
        <translation>Inzwischen anderswo beantwortet: %1 (%2). Hier wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>It was closed elsewhere meanwhile. Nothing was written here.</source>
        <translation>Inzwischen anderswo geschlossen. Hier wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>Another answer came in meanwhile. Look at all of them and choose again.</source>
        <translation>Inzwischen kam eine weitere Antwort. Alle ansehen und noch einmal wählen.</translation>
    </message>
    <message>
        <source>I see</source>
        <translation>Verstanden</translation>
    </message>
</context>
<context>
    <name>QuestionsModel</name>
    <message>
        <source>this question was answered at another tablet meanwhile</source>
        <translation>diese Frage wurde inzwischen an einem anderen Tablet beantwortet</translation>
    </message>
    <message>
        <source>look at what stands there now</source>
        <translation>ansehen, was jetzt dort steht</translation>
    </message>
</context>
<context>
    <name>QuestionsPage</name>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message numerus="yes">
        <source>%n open. Ask the player, then close it with the answer.</source>
        <translation>
            <numerusform>%n offen. Fragen Sie den Spieler und schließen Sie mit der Antwort.</numerusform>
            <numerusform>%n offen. Fragen Sie die Spieler und schließen Sie mit der Antwort.</numerusform>
        </translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Geschlossen</translation>
    </message>
    <message>
        <source>Good</source>
        <translation>Gut</translation>
    </message>
    <message>
        <source>No question is open</source>
        <translation>Keine Frage ist offen</translation>
    </message>
    <message>
        <source>Where two people gave different answers without seeing each other, both stand here until someone closes the question.</source>
        <translation>Haben zwei ohne voneinander zu wissen verschieden geantwortet, steht beides hier, bis jemand die Frage schließt.</translation>
    </message>
    <message>
        <source>%1, %2: %3. All devices follow.</source>
        <translation>%1, %2: %3. Alle Geräte folgen.</translation>
    </message>
</context>
<context>
    <name>RacketSheet</name>
    <message>
        <source>Change racket</source>
        <translation>Schläger ändern</translation>
    </message>
    <message>
        <source>Mark on the racket</source>
        <translation>Zeichen am Schläger</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>RacketsCard</name>
    <message>
        <source>Rackets</source>
        <translation>Schläger</translation>
    </message>
    <message>
        <source>Handed over: %1</source>
        <translation>Übergeben: %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
    <message>
        <source>Racket without a mark</source>
        <translation>Schläger ohne Zeichen</translation>
    </message>
    <message>
        <source>in the room already</source>
        <translation>schon im Raum</translation>
    </message>
    <message>
        <source>Add a racket</source>
        <translation>Schläger hinzufügen</translation>
    </message>
    <message>
        <source>Mark on racket %1</source>
        <translation>Zeichen an Schläger %1</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>Take racket %1 out</source>
        <translation>Schläger %1 herausnehmen</translation>
    </message>
</context>
<context>
    <name>ReadingSheet</name>
    <message>
        <source>What was measured</source>
        <translation>Was gemessen wurde</translation>
    </message>
    <message>
        <source>String bed</source>
        <translation>Saitenbett</translation>
    </message>
    <message>
        <source>Tone</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>Tension head</source>
        <translation>Spannkopf</translation>
    </message>
    <message>
        <source>Tone of the string bed</source>
        <translation>Ton des Saitenbetts</translation>
    </message>
    <message>
        <source>Pull of the tension head</source>
        <translation>Zug des Spannkopfs</translation>
    </message>
    <message>
        <source>String-bed stiffness</source>
        <translation>Härte des Saitenbetts</translation>
    </message>
    <message>
        <source>Unit on the instrument</source>
        <translation>Einheit am Messgerät</translation>
    </message>
    <message>
        <source>Its own scale</source>
        <translation>Eigene Skala</translation>
    </message>
    <message>
        <source>Instrument, or a note</source>
        <translation>Messgerät oder Hinweis</translation>
    </message>
    <message>
        <source>Keep this reading</source>
        <translation>Messwert behalten</translation>
    </message>
    <message>
        <source>Measured: %1 %2</source>
        <translation>Gemessen: %1 %2</translation>
    </message>
    <message>
        <source>What the machine was set to</source>
        <translation>Was an der Maschine eingestellt war</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Schild %1</translation>
    </message>
    <message>
        <source>Enter a reading: %1</source>
        <translation>Messwert eintragen: %1</translation>
    </message>
</context>
<context>
    <name>ReadingsCard</name>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Nothing was measured yet.</source>
        <translation>Noch wurde nichts gemessen.</translation>
    </message>
    <message>
        <source>Enter a reading</source>
        <translation>Messwert eintragen</translation>
    </message>
</context>
<context>
    <name>ReadyCard</name>
    <message>
        <source>Ready by</source>
        <translation>Fertig bis</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 Std.</translation>
    </message>
    <message>
        <source>Ready in %1 h</source>
        <translation>Fertig in %1 Std.</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>No time said</source>
        <translation>Keine Zeit gesagt</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Eilt</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>On court</source>
        <translation>Vom Platz</translation>
    </message>
    <message>
        <source>Bags that came with the rackets</source>
        <translation>Taschen, die mit den Schlägern kamen</translation>
    </message>
</context>
<context>
    <name>RoleWords</name>
    <message>
        <source>head of the room</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>desk</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>stringer</source>
        <translation>Bespanner</translation>
    </message>
    <message>
        <source>reader</source>
        <translation>Leser</translation>
    </message>
</context>
<context>
    <name>RoomBoard</name>
    <message numerus="yes">
        <source>%1: %n racket(s)</source>
        <translation>
            <numerusform>%1: %n Schläger</numerusform>
            <numerusform>%1: %n Schläger</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RoomList</name>
    <message numerus="yes">
        <source>%1: %n racket(s)</source>
        <translation>
            <numerusform>%1: %n Schläger</numerusform>
            <numerusform>%1: %n Schläger</numerusform>
        </translation>
    </message>
    <message>
        <source>No racket is at this stage.</source>
        <translation>Kein Schläger ist an diesem Stand.</translation>
    </message>
</context>
<context>
    <name>RoomModel</name>
    <message>
        <source>this racket moved on elsewhere meanwhile</source>
        <translation>dieser Schläger ist inzwischen anderswo weitergegangen</translation>
    </message>
    <message>
        <source>look at it again</source>
        <translation>noch einmal ansehen</translation>
    </message>
</context>
<context>
    <name>RoomPage</name>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>No racket is in the room</source>
        <translation>Kein Schläger ist im Raum</translation>
    </message>
    <message>
        <source>Every job of the event stands here under its stage, from taken in to handed over.</source>
        <translation>Jeder Auftrag des Turniers steht hier unter seinem Stand, von angenommen bis ausgegeben.</translation>
    </message>
    <message>
        <source>Tag %1: %2</source>
        <translation>Schild %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) here</source>
        <translation>
            <numerusform>%n Schläger hier</numerusform>
            <numerusform>%n Schläger hier</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n late</source>
        <translation>
            <numerusform>%n zu spät</numerusform>
            <numerusform>%n zu spät</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n collected</source>
        <translation>
            <numerusform>%n abgeholt</numerusform>
            <numerusform>%n abgeholt</numerusform>
        </translation>
    </message>
    <message>
        <source>By stage</source>
        <translation>Nach Stand</translation>
    </message>
    <message>
        <source>All jobs</source>
        <translation>Alle Bespannungen</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Was gezeigt wird</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its rackets come here by themselves.</source>
        <translation>Koppeln Sie unter Austausch einen Turnierserver; seine Schläger kommen von selbst hierher.</translation>
    </message>
    <message>
        <source>Compare two tags</source>
        <translation>Zwei Schilder vergleichen</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
</context>
<context>
    <name>RushMark</name>
    <message>
        <source>On court</source>
        <translation>Vom Platz</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Eilt</translation>
    </message>
</context>
<context>
    <name>SaidBy</name>
    <message>
        <source>Your name</source>
        <translation>Ihr Name</translation>
    </message>
</context>
<context>
    <name>SaleSheet</name>
    <message>
        <source>Charge something else</source>
        <translation>Etwas anderes berechnen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Price of one in %1</source>
        <translation>Stückpreis in %1</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Charge it</source>
        <translation>Berechnen</translation>
    </message>
    <message>
        <source>Charged: %1 × %2</source>
        <translation>Berechnet: %1 × %2</translation>
    </message>
    <message>
        <source>Charged: %1</source>
        <translation>Berechnet: %1</translation>
    </message>
</context>
<context>
    <name>SameFeelPart</name>
    <message>
        <source>Same feel with …</source>
        <translation>Gleiches Spielgefühl mit …</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Was sich ändert</translation>
    </message>
    <message>
        <source>String</source>
        <translation>Saite</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Stärke</translation>
    </message>
    <message>
        <source>Pre-stretch</source>
        <translation>Vorstrecken</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Beide</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Längssaiten</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Quersaiten</translation>
    </message>
    <message>
        <source>Another string of the stock</source>
        <translation>Eine andere Saite aus dem Vorrat</translation>
    </message>
    <message>
        <source>There is no string in the stock to choose from.</source>
        <translation>Im Vorrat ist keine Saite, die man wählen könnte.</translation>
    </message>
    <message>
        <source>Mains pulled by so much more or less</source>
        <translation>Längssaiten um so viel mehr oder weniger gezogen</translation>
    </message>
    <message>
        <source>Crosses pulled by so much more or less</source>
        <translation>Quersaiten um so viel mehr oder weniger gezogen</translation>
    </message>
    <message>
        <source>Mains ±</source>
        <translation>Längs ±</translation>
    </message>
    <message>
        <source>Crosses ±</source>
        <translation>Quer ±</translation>
    </message>
    <message>
        <source>The crosses make up for it</source>
        <translation>Die Quersaiten gleichen es aus</translation>
    </message>
    <message>
        <source>The mains make up for it</source>
        <translation>Die Längssaiten gleichen es aus</translation>
    </message>
    <message>
        <source>Head size</source>
        <translation>Kopfgröße</translation>
    </message>
    <message>
        <source>Another racket with the same strings</source>
        <translation>Ein anderer Schläger mit denselben Saiten</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Saitenbild</translation>
    </message>
    <message>
        <source>Head size of the other racket</source>
        <translation>Kopfgröße des anderen Schlägers</translation>
    </message>
    <message>
        <source>Mains of the other racket</source>
        <translation>Längssaiten des anderen Schlägers</translation>
    </message>
    <message>
        <source>Crosses of the other racket</source>
        <translation>Quersaiten des anderen Schlägers</translation>
    </message>
    <message>
        <source>For another racket: keep to the tensions printed on its own frame.</source>
        <translation>Für einen anderen Schläger: Halten Sie sich an die Spannungen, die auf dessen Rahmen stehen.</translation>
    </message>
</context>
<context>
    <name>SamePersonCard</name>
    <message>
        <source>Names and books</source>
        <translation>Namen und Bücher</translation>
    </message>
    <message>
        <source>Also %1</source>
        <translation>Auch %1</translation>
    </message>
    <message>
        <source>Before: %1</source>
        <translation>Früher: %1</translation>
    </message>
    <message>
        <source>Married: %1</source>
        <translation>Verheiratet: %1</translation>
    </message>
    <message>
        <source>Called %1</source>
        <translation>Gerufen %1</translation>
    </message>
    <message>
        <source>Also spelt %1</source>
        <translation>Auch geschrieben %1</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Zurücknehmen: %1</translation>
    </message>
    <message>
        <source>Name taken back</source>
        <translation>Name zurückgenommen</translation>
    </message>
    <message>
        <source>Another name</source>
        <translation>Anderer Name</translation>
    </message>
    <message>
        <source>One more book of this person, not on this device</source>
        <translation>Ein weiteres Buch dieser Person, nicht auf diesem Gerät</translation>
    </message>
    <message>
        <source>The books differ: %1, %2</source>
        <translation>Die Bücher sagen Verschiedenes: %1, %2</translation>
    </message>
    <message>
        <source>The books differ: %1</source>
        <translation>Die Bücher sagen Verschiedenes: %1</translation>
    </message>
    <message>
        <source>Both books say: %1</source>
        <translation>Beide Bücher sagen: %1</translation>
    </message>
    <message>
        <source>Another book of this person</source>
        <translation>Ein anderes Buch dieser Person</translation>
    </message>
    <message>
        <source>Not the same person</source>
        <translation>Nicht dieselbe Person</translation>
    </message>
</context>
<context>
    <name>SamePersonSheet</name>
    <message>
        <source>Another book of this person</source>
        <translation>Ein anderes Buch dieser Person</translation>
    </message>
    <message>
        <source>Linked books are shown together: history in order, the last time of either. Nothing is copied, and they can be parted again.</source>
        <translation>Verknüpfte Bücher werden zusammen gezeigt: der Verlauf der Reihe nach, das letzte Mal aus beiden. Nichts wird kopiert, und sie lassen sich wieder trennen.</translation>
    </message>
    <message>
        <source>Find a player</source>
        <translation>Spieler suchen</translation>
    </message>
    <message>
        <source>The same person</source>
        <translation>Dieselbe Person</translation>
    </message>
    <message>
        <source>Two different people</source>
        <translation>Zwei verschiedene Personen</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation>Jemand anderes</translation>
    </message>
</context>
<context>
    <name>SaveNote</name>
    <message>
        <source>There is something of that name that is no file; choose another name.</source>
        <translation>So heißt dort etwas, das keine Datei ist; wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>The folder is not there; choose another one.</source>
        <translation>Den Ordner gibt es nicht; wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>Nothing may be written there; choose another folder.</source>
        <translation>Dort darf nichts geschrieben werden; wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <source>Is there room left? Choose another folder, or make room.</source>
        <translation>Ist noch Platz? Wählen Sie einen anderen Ordner, oder schaffen Sie Platz.</translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation>Gespeichert als %1</translation>
    </message>
    <message>
        <source>Not saved as %1. %2</source>
        <translation>Nicht gespeichert als %1. %2</translation>
    </message>
</context>
<context>
    <name>ScanDoings</name>
    <message>
        <source>Scanned again. The next step:</source>
        <translation>Noch einmal gescannt. Der nächste Schritt:</translation>
    </message>
    <message>
        <source>This number was given out twice</source>
        <translation>Diese Nummer wurde zweimal vergeben</translation>
    </message>
    <message>
        <source>Look at the racket, and choose whose it is.</source>
        <translation>Sehen Sie sich den Schläger an und wählen Sie, wem er gehört.</translation>
    </message>
</context>
<context>
    <name>ScanModel</name>
    <message>
        <source>Tag %1, %2</source>
        <translation>Schild %1, %2</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Bis %1</translation>
    </message>
    <message>
        <source>There is no event yet</source>
        <translation>Es gibt noch kein Turnier</translation>
    </message>
    <message>
        <source>This tag is of another event</source>
        <translation>Dieses Schild gehört zu einem anderen Turnier</translation>
    </message>
    <message>
        <source>Find the racket by its player&apos;s name.</source>
        <translation>Suchen Sie den Schläger über den Namen.</translation>
    </message>
    <message>
        <source>The tag was misread</source>
        <translation>Das Schild wurde falsch gelesen</translation>
    </message>
    <message>
        <source>Scan it again, or type the number that stands on it.</source>
        <translation>Noch einmal scannen oder die Nummer eingeben, die darauf steht.</translation>
    </message>
    <message>
        <source>The scanner types for another keyboard</source>
        <translation>Der Scanner tippt für eine andere Tastatur</translation>
    </message>
    <message>
        <source>Set the scanner to the keyboard that this device is set to.</source>
        <translation>Stellen Sie den Scanner auf die Tastatur ein, die dieses Gerät verwendet.</translation>
    </message>
    <message>
        <source>This is no code of a tag</source>
        <translation>Das ist kein Code eines Schilds</translation>
    </message>
    <message>
        <source>Scan the tag, or type the number that stands on it.</source>
        <translation>Das Schild scannen oder die Nummer eingeben, die darauf steht.</translation>
    </message>
    <message>
        <source>No racket here has tag %1</source>
        <translation>Kein Schläger hier hat Schild %1</translation>
    </message>
    <message>
        <source>It may not have come to this device yet: look under Exchange.</source>
        <translation>Vielleicht ist er noch nicht auf diesem Gerät: sehen Sie unter Abgleich nach.</translation>
    </message>
    <message>
        <source>This number was given out twice</source>
        <translation>Diese Nummer wurde zweimal vergeben</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange, or make an event.</source>
        <translation>Unter Abgleich mit einem Turnierserver koppeln oder ein Turnier anlegen.</translation>
    </message>
</context>
<context>
    <name>ScopeBar</name>
    <message>
        <source>All %1</source>
        <translation>Alle %1</translation>
    </message>
    <message>
        <source>These answers are for</source>
        <translation>Diese Antworten gelten für</translation>
    </message>
</context>
<context>
    <name>SearchEntry</name>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Language and unit</source>
        <translation>Sprache und Einheit</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Tension is asked in</source>
        <translation>Spannung wird gefragt in</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>Light or dark</source>
        <translation>Hell oder dunkel</translation>
    </message>
    <message>
        <source>As the device</source>
        <translation>Wie das Gerät</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Size of text</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Klein</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Groß</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Sehr groß</translation>
    </message>
    <message>
        <source>Who works here</source>
        <translation>Wer hier arbeitet</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Ihr Name</translation>
    </message>
    <message>
        <source>It stands beside everything that you do with a racket.</source>
        <translation>Er steht neben allem, was Sie mit einem Schläger tun.</translation>
    </message>
    <message>
        <source>Name of this tablet</source>
        <translation>Name dieses Tablets</translation>
    </message>
    <message>
        <source>Others read it beside your answers; a new one holds from the next start.</source>
        <translation>Andere lesen ihn neben Ihren Antworten; ein neuer gilt ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Über das Programm</translation>
    </message>
    <message>
        <source>Weavelog %1</source>
        <translation>Weavelog %1</translation>
    </message>
    <message>
        <source>What it says about frames, strings and tension is no more than a reminder: the maker&apos;s instructions, local rules and licensed practice come first.</source>
        <translation>Was es über Rahmen, Saiten und Spannung sagt, ist nur eine Erinnerung: Die Anleitung des Herstellers, örtliche Regeln und zugelassene Praxis gehen vor.</translation>
    </message>
    <message>
        <source>Everything is kept in this folder:</source>
        <translation>Alles liegt in diesem Ordner:</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Scanner</source>
        <translation>Scanner</translation>
    </message>
    <message>
        <source>The second scan takes the next step</source>
        <translation>Der zweite Scan macht den nächsten Schritt</translation>
    </message>
    <message>
        <source>Off: it is offered, and one tap takes it. Each step can be taken back.</source>
        <translation>Aus: Er wird angeboten, ein Tippen macht ihn. Jeder Schritt lässt sich zurücknehmen.</translation>
    </message>
    <message>
        <source>They hold for this device only; what an event is called holds for all who work at it.</source>
        <translation>Sie gelten nur für dieses Gerät; wie ein Turnier heißt, gilt für alle, die daran arbeiten.</translation>
    </message>
</context>
<context>
    <name>SetupCard</name>
    <message>
        <source>Setup</source>
        <translation>Bespannung</translation>
    </message>
    <message>
        <source>What differs from the last job (%1) is marked.</source>
        <translation>Was von der letzten Bespannung (%1) abweicht, ist markiert.</translation>
    </message>
    <message>
        <source>The first job of this player that is known here.</source>
        <translation>Die erste hier bekannte Bespannung dieses Spielers.</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>There are changes that are not kept yet.</source>
        <translation>Es gibt Änderungen, die noch nicht übernommen sind.</translation>
    </message>
    <message>
        <source>Go on with them</source>
        <translation>Weiter damit</translation>
    </message>
    <message>
        <source>Throw them away</source>
        <translation>Verwerfen</translation>
    </message>
</context>
<context>
    <name>ShiftSheet</name>
    <message>
        <source>Plan a shift</source>
        <translation>Schicht planen</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>A time that is earlier than the beginning is on the next day.</source>
        <translation>Eine Zeit vor dem Beginn gilt am nächsten Tag.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Shift planned</source>
        <translation>Schicht geplant</translation>
    </message>
</context>
<context>
    <name>StageMark</name>
    <message>
        <source>%1, rush</source>
        <translation>%1, eilig</translation>
    </message>
</context>
<context>
    <name>StageWords</name>
    <message>
        <source>Not here yet</source>
        <translation>Noch nicht hier</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Inspected</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>Waiting for an answer</source>
        <translation>Wartet auf Antwort</translation>
    </message>
    <message>
        <source>Cut out</source>
        <translation>Ausgeschnitten</translation>
    </message>
    <message>
        <source>On the machine</source>
        <translation>Auf der Maschine</translation>
    </message>
    <message>
        <source>Strung</source>
        <translation>Bespannt</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Kontrolliert</translation>
    </message>
    <message>
        <source>Stencilled</source>
        <translation>Schabloniert</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Bereit</translation>
    </message>
    <message>
        <source>Collected</source>
        <translation>Abgeholt</translation>
    </message>
    <message>
        <source>Put aside</source>
        <translation>Beiseite</translation>
    </message>
    <message>
        <source>Another stage</source>
        <translation>Ein anderer Stand</translation>
    </message>
</context>
<context>
    <name>StencilBed</name>
    <message>
        <source>ink: %1</source>
        <translation>Farbe: %1</translation>
    </message>
    <message>
        <source>Ink: %1</source>
        <translation>Farbe: %1</translation>
    </message>
    <message>
        <source>Ink not said</source>
        <translation>Farbe nicht gesagt</translation>
    </message>
</context>
<context>
    <name>StencilSheet</name>
    <message>
        <source>Stencils: %1</source>
        <translation>Schablonen: %1</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Schild %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
    <message>
        <source>The player asked for no stencil.</source>
        <translation>Es ist keine Schablone gewünscht.</translation>
    </message>
    <message>
        <source>Mark of the string</source>
        <translation>Zeichen der Saite</translation>
    </message>
    <message>
        <source>Mark of the racket</source>
        <translation>Zeichen des Schlägers</translation>
    </message>
    <message>
        <source>The stencils are on</source>
        <translation>Die Schablonen sind aufgetragen</translation>
    </message>
    <message>
        <source>Tag %1: %2</source>
        <translation>Schild %1: %2</translation>
    </message>
</context>
<context>
    <name>StepSheet</name>
    <message>
        <source>Step added</source>
        <translation>Schritt hinzugefügt</translation>
    </message>
    <message>
        <source>Words changed</source>
        <translation>Worte geändert</translation>
    </message>
    <message>
        <source>New step</source>
        <translation>Neuer Schritt</translation>
    </message>
    <message>
        <source>Words of the step</source>
        <translation>Worte des Schritts</translation>
    </message>
    <message>
        <source>What is to be done</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>Left empty, the usual words come back.</source>
        <translation>Bleibt es leer, kommen die üblichen Worte zurück.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
</context>
<context>
    <name>StepsCard</name>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>%1 of %2 done. The room may change this list; the makers’ instructions come before it.</source>
        <translation>%1 von %2 getan. Der Raum kann diese Liste ändern; die Anleitungen der Hersteller gehen vor.</translation>
    </message>
</context>
<context>
    <name>StockItemSheet</name>
    <message>
        <source>New string</source>
        <translation>Neue Saite</translation>
    </message>
    <message>
        <source>Name of the string, as jobs call it</source>
        <translation>Name der Saite, wie Aufträge sie nennen</translation>
    </message>
    <message>
        <source>Gauge in mm</source>
        <translation>Stärke in mm</translation>
    </message>
    <message>
        <source>Counted in</source>
        <translation>Gezählt in</translation>
    </message>
    <message>
        <source>Metres of a reel</source>
        <translation>Meter einer Rolle</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Sets</translation>
    </message>
    <message>
        <source>Whose it is</source>
        <translation>Wem sie gehört</translation>
    </message>
    <message>
        <source>The room&apos;s</source>
        <translation>Dem Raum</translation>
    </message>
    <message>
        <source>A stringer&apos;s</source>
        <translation>Einem Bespanner</translation>
    </message>
    <message>
        <source>A player&apos;s</source>
        <translation>Einem Spieler</translation>
    </message>
    <message>
        <source>Name of the stringer</source>
        <translation>Name des Bespanners</translation>
    </message>
    <message>
        <source>Player</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>Metres that are there</source>
        <translation>Meter, die da sind</translation>
    </message>
    <message>
        <source>Sets that are there</source>
        <translation>Sets, die da sind</translation>
    </message>
    <message>
        <source>Call it low at so many metres</source>
        <translation>Knapp ab so vielen Metern</translation>
    </message>
    <message>
        <source>Call it low at so many sets</source>
        <translation>Knapp ab so vielen Sets</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>In stock: %1</source>
        <translation>Im Vorrat: %1</translation>
    </message>
    <message>
        <source>What it is made of</source>
        <translation>Woraus sie ist</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>Natural gut</source>
        <translation>Naturdarm</translation>
    </message>
    <message>
        <source>Multifilament</source>
        <translation>Multifilament</translation>
    </message>
    <message>
        <source>Synthetic gut</source>
        <translation>Kunstdarm</translation>
    </message>
    <message>
        <source>Polyester</source>
        <translation>Polyester</translation>
    </message>
    <message>
        <source>Aramid</source>
        <translation>Aramid</translation>
    </message>
</context>
<context>
    <name>StockModel</name>
    <message>
        <source>Give metres, such as 62.5.</source>
        <translation>Geben Sie Meter an, etwa 62,5.</translation>
    </message>
    <message>
        <source>Give a whole number of sets.</source>
        <translation>Geben Sie eine ganze Zahl von Sets an.</translation>
    </message>
    <message>
        <source>Give the gauge in mm, such as 1.25.</source>
        <translation>Geben Sie die Stärke in mm an, etwa 1,25.</translation>
    </message>
</context>
<context>
    <name>StockPage</name>
    <message>
        <source>Stock</source>
        <translation>Vorrat</translation>
    </message>
    <message numerus="yes">
        <source>%n string(s) low</source>
        <translation>
            <numerusform>%n Saite wird knapp</numerusform>
            <numerusform>%n Saiten werden knapp</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is low</source>
        <translation>Nichts ist knapp</translation>
    </message>
    <message>
        <source>New string</source>
        <translation>Neue Saite</translation>
    </message>
    <message>
        <source>Nothing is in stock</source>
        <translation>Nichts ist im Vorrat</translation>
    </message>
    <message>
        <source>Note every reel and set that comes; then you see what is left and until when.</source>
        <translation>Notieren Sie jede Rolle und jedes Set, das kommt; dann sehen Sie, was übrig ist und bis wann es reicht.</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its stock comes here by itself.</source>
        <translation>Koppeln Sie unter Abgleich mit einem Turnierserver; sein Vorrat kommt dann von selbst hierher.</translation>
    </message>
</context>
<context>
    <name>StockRow</name>
    <message>
        <source>gone by %1 at today&apos;s pace</source>
        <comment>time of day</comment>
        <translation>um %1 aufgebraucht, wenn es so weitergeht</translation>
    </message>
    <message>
        <source>gone by %1 at today&apos;s pace</source>
        <comment>day</comment>
        <translation>bis %1 aufgebraucht, wenn es so weitergeht</translation>
    </message>
    <message>
        <source>low</source>
        <translation>knapp</translation>
    </message>
    <message>
        <source>used today: %1</source>
        <translation>heute verbraucht: %1</translation>
    </message>
    <message>
        <source>Of the room</source>
        <translation>Vom Raum</translation>
    </message>
    <message>
        <source>Of the stringers</source>
        <translation>Von den Bespannern</translation>
    </message>
    <message>
        <source>Of the players</source>
        <translation>Von den Spielern</translation>
    </message>
</context>
<context>
    <name>StockSheet</name>
    <message>
        <source>Left</source>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>Called low at</source>
        <translation>Knapp ab</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>It came</source>
        <translation>Gekommen</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Gezählt</translation>
    </message>
    <message>
        <source>Taken out</source>
        <translation>Entnommen</translation>
    </message>
    <message>
        <source>Spoilt</source>
        <translation>Verdorben</translation>
    </message>
    <message>
        <source>Brought back</source>
        <translation>Zurückgebracht</translation>
    </message>
    <message>
        <source>Metres that are there</source>
        <translation>Meter, die da sind</translation>
    </message>
    <message>
        <source>Sets that are there</source>
        <translation>Sets, die da sind</translation>
    </message>
    <message>
        <source>Metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Sets</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Stock: %1</source>
        <translation>Vorrat: %1</translation>
    </message>
</context>
<context>
    <name>StockWords</name>
    <message numerus="yes">
        <source>%n set(s)</source>
        <translation>
            <numerusform>%n Set</numerusform>
            <numerusform>%n Sets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StoredPage</name>
    <message>
        <source>Taken in: %1</source>
        <translation>Angenommen: %1</translation>
    </message>
    <message>
        <source>Hang each number on its racket.</source>
        <translation>Jede Nummer an ihren Schläger hängen.</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Schläger %1</translation>
    </message>
    <message>
        <source>Racket without a mark</source>
        <translation>Schläger ohne Zeichen</translation>
    </message>
    <message>
        <source>The player’s card</source>
        <translation>Karte des Spielers</translation>
    </message>
    <message>
        <source>Next player</source>
        <translation>Nächster Spieler</translation>
    </message>
    <message>
        <source>Print tags</source>
        <translation>Anhänger drucken</translation>
    </message>
    <message>
        <source>There is no event yet</source>
        <translation>Es gibt noch kein Turnier</translation>
    </message>
    <message>
        <source>Without one these rackets have no number, and neither room nor bench shows them. They can come into an event later.</source>
        <translation>Ohne Turnier haben diese Schläger keine Nummer, und weder Raum noch Werkbank zeigt sie. Sie können später in ein Turnier kommen.</translation>
    </message>
    <message>
        <source>Make an event</source>
        <translation>Ein Turnier anlegen</translation>
    </message>
</context>
<context>
    <name>StringBedSheet</name>
    <message>
        <source>String bed: %1</source>
        <translation>Saitenbett: %1</translation>
    </message>
    <message>
        <source>String bed</source>
        <translation>Saitenbett</translation>
    </message>
    <message>
        <source>Nothing can be said of this bed</source>
        <translation>Über dieses Saitenbett lässt sich nichts sagen</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Wird berechnet …</translation>
    </message>
    <message>
        <source>Assumed, because nobody has said it</source>
        <translation>Angenommen, weil es niemand gesagt hat</translation>
    </message>
    <message>
        <source>What is left of the tension</source>
        <translation>Was von der Spannung bleibt</translation>
    </message>
    <message>
        <source>Tension over the time since stringing. %1</source>
        <translation>Spannung über die Zeit seit dem Bespannen. %1</translation>
    </message>
    <message>
        <source>Nothing here speaks of health: pain in the arm is a matter for a physician.</source>
        <translation>Nichts hiervon sagt etwas über die Gesundheit: Schmerzen im Arm gehören zum Arzt.</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabelle (*.csv)</translation>
    </message>
    <message>
        <source>Save the sheet (PDF)</source>
        <translation>Das Blatt speichern (PDF)</translation>
    </message>
    <message>
        <source>Save the figures as a table (CSV)</source>
        <translation>Die Zahlen als Tabelle speichern (CSV)</translation>
    </message>
    <message>
        <source>Sheet (*.pdf)</source>
        <translation>Blatt (*.pdf)</translation>
    </message>
</context>
<context>
    <name>StringPart</name>
    <message>
        <source>Gauge</source>
        <translation>Stärke</translation>
    </message>
    <message>
        <source>Taken from</source>
        <translation>Genommen von</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Nicht gesagt</translation>
    </message>
    <message>
        <source>Reel</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Set</translation>
    </message>
    <message>
        <source>Whose string</source>
        <translation>Wessen Saite</translation>
    </message>
    <message>
        <source>The room’s</source>
        <translation>Des Raums</translation>
    </message>
    <message>
        <source>The player’s</source>
        <translation>Des Spielers</translation>
    </message>
</context>
<context>
    <name>StringUseCard</name>
    <message numerus="yes">
        <source>%n set(s)</source>
        <translation>
            <numerusform>%n Set</numerusform>
            <numerusform>%n Sets</numerusform>
        </translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Längssaiten</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Quersaiten</translation>
    </message>
    <message>
        <source>Whole bed</source>
        <translation>Ganzes Saitenbett</translation>
    </message>
    <message>
        <source>String from the stock</source>
        <translation>Saite aus dem Lager</translation>
    </message>
    <message>
        <source>Noted.</source>
        <translation>Notiert.</translation>
    </message>
    <message>
        <source>An estimate of what this bed takes.</source>
        <translation>Geschätzt, was dieses Saitenbett braucht.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Taken from the stock</source>
        <translation>Aus dem Lager genommen</translation>
    </message>
    <message>
        <source>Taken: %1</source>
        <translation>Genommen: %1</translation>
    </message>
</context>
<context>
    <name>StringsCard</name>
    <message>
        <source>Strings</source>
        <translation>Saiten</translation>
    </message>
    <message>
        <source>Mains string</source>
        <translation>Längssaite</translation>
    </message>
    <message>
        <source>Crosses string</source>
        <translation>Quersaite</translation>
    </message>
    <message>
        <source>Crosses as the mains</source>
        <translation>Quer wie längs</translation>
    </message>
</context>
<context>
    <name>TagGuardSheet</name>
    <message>
        <source>The right racket?</source>
        <translation>Der richtige Schläger?</translation>
    </message>
    <message>
        <source>Scan the tag on the racket, then the tag on its bag or paper.</source>
        <translation>Zuerst das Schild am Schläger scannen, dann das an Tasche oder Zettel.</translation>
    </message>
    <message>
        <source>On the racket</source>
        <translation>Am Schläger</translation>
    </message>
    <message>
        <source>On the bag</source>
        <translation>An der Tasche</translation>
    </message>
    <message>
        <source>Scan it now</source>
        <translation>Jetzt scannen</translation>
    </message>
    <message>
        <source>Then this one</source>
        <translation>Danach dieses</translation>
    </message>
    <message>
        <source>Wrong racket: stop</source>
        <translation>Falscher Schläger: halt</translation>
    </message>
    <message>
        <source>Both tags are of %1, but of two rackets: %2 and %3. Look at both before anything goes on.</source>
        <translation>Beide Schilder sind von %1, aber von zwei Schlägern: %2 und %3. Sehen Sie beide an, bevor es weitergeht.</translation>
    </message>
    <message>
        <source>The racket is of %1, the bag is of %2. Look at both before anything goes on.</source>
        <translation>Der Schläger gehört %1, die Tasche %2. Sehen Sie beide an, bevor es weitergeht.</translation>
    </message>
    <message>
        <source>This tag says nothing that is known here. Scan it again, or type its number.</source>
        <translation>Dieser Code sagt nichts, was hier bekannt ist. Noch einmal scannen oder die Nummer eingeben.</translation>
    </message>
    <message>
        <source>Racket and bag belong together</source>
        <translation>Schläger und Tasche gehören zusammen</translation>
    </message>
    <message>
        <source>Number on the tag</source>
        <translation>Nummer auf dem Schild</translation>
    </message>
    <message>
        <source>For whoever has no scanner; Enter takes it.</source>
        <translation>Für alle ohne Scanner; Enter übernimmt sie.</translation>
    </message>
    <message>
        <source>Begin again</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <source>Scan with the camera</source>
        <translation>Mit der Kamera scannen</translation>
    </message>
</context>
<context>
    <name>TakeCardModel</name>
    <message>
        <source>Card of %1 taken in</source>
        <translation>Karte von %1 angenommen</translation>
    </message>
</context>
<context>
    <name>TakeCardSheet</name>
    <message>
        <source>Card of %1</source>
        <translation>Karte von %1</translation>
    </message>
    <message>
        <source>Take a card in</source>
        <translation>Karte annehmen</translation>
    </message>
    <message>
        <source>The picture can&apos;t be read</source>
        <translation>Das Bild ist nicht lesbar</translation>
    </message>
    <message>
        <source>No code is to be seen on the picture</source>
        <translation>Auf dem Bild ist kein Code zu sehen</translation>
    </message>
    <message>
        <source>This is no player card</source>
        <translation>Das ist keine Spielerkarte</translation>
    </message>
    <message>
        <source>The card is damaged</source>
        <translation>Die Karte ist beschädigt</translation>
    </message>
    <message>
        <source>The card is forged</source>
        <translation>Die Karte ist gefälscht</translation>
    </message>
    <message>
        <source>The card is of a newer version</source>
        <translation>Die Karte ist von einer neueren Version</translation>
    </message>
    <message>
        <source>Signed by a device that was shut out</source>
        <translation>Unterschrieben von einem ausgeschlossenen Gerät</translation>
    </message>
    <message>
        <source>This player was forgotten here</source>
        <translation>Dieser Spieler wurde hier vergessen</translation>
    </message>
    <message>
        <source>The player did not agree to this</source>
        <translation>Die Zustimmung dazu fehlt</translation>
    </message>
    <message>
        <source>The card is not taken</source>
        <translation>Die Karte wird nicht angenommen</translation>
    </message>
    <message>
        <source>Take a picture from nearer by, straight from above and without shine.</source>
        <translation>Ein Bild aus der Nähe machen, gerade von oben und ohne Glanz.</translation>
    </message>
    <message>
        <source>The code says something else. A card begins with WEAVELOG:CARD.</source>
        <translation>Der Code sagt etwas anderes. Eine Karte beginnt mit WEAVELOG:CARD.</translation>
    </message>
    <message>
        <source>Some of its letters are wrong or missing: scan it again.</source>
        <translation>Einige Zeichen sind falsch oder fehlen: noch einmal scannen.</translation>
    </message>
    <message>
        <source>The device that it names did not sign it. Do not use it: ask the player, and tell the head of the room.</source>
        <translation>Das genannte Gerät hat sie nicht unterschrieben. Nicht benutzen: im Gespräch nachfragen und die Leitung informieren.</translation>
    </message>
    <message>
        <source>Update Weavelog on this device.</source>
        <translation>Weavelog auf diesem Gerät aktualisieren.</translation>
    </message>
    <message>
        <source>The card is whole. But %1 signed it, which was lost or shut out, on %2. Ask the player, or somebody else for a card.</source>
        <translation>Die Karte ist heil. Aber %1 hat sie am %2 unterschrieben, ein verlorenes oder ausgeschlossenes Gerät. Im Gespräch nachfragen oder anderswo um eine Karte bitten.</translation>
    </message>
    <message>
        <source>The player withdrew. Who wants to be known again begins anew at the desk, and is asked for consent.</source>
        <translation>Die Einwilligung wurde zurückgezogen. Wer wieder bekannt sein will, fängt an der Annahme neu an und wird gefragt.</translation>
    </message>
    <message>
        <source>Withdrawn, or for one room only. Ask the player and record the answer first.</source>
        <translation>Zurückgezogen oder nur für einen Raum. Erst fragen und die Antwort festhalten.</translation>
    </message>
    <message>
        <source>With the camera</source>
        <translation>Mit der Kamera</translation>
    </message>
    <message>
        <source>Looking ...</source>
        <translation>Suche läuft ...</translation>
    </message>
    <message>
        <source>From a picture</source>
        <translation>Aus einem Bild</translation>
    </message>
    <message>
        <source>Or scan it with a scanner now, or paste its text here.</source>
        <translation>Oder jetzt mit einem Scanner scannen, oder ihren Text hier einfügen.</translation>
    </message>
    <message>
        <source>Text of the card</source>
        <translation>Text der Karte</translation>
    </message>
    <message>
        <source>Read it</source>
        <translation>Lesen</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Nothing new: all of it is here</source>
        <translation>Nichts Neues: alles ist schon hier</translation>
    </message>
    <message>
        <source>Signed by %1, on %2</source>
        <translation>Unterschrieben von %1 am %2</translation>
    </message>
    <message>
        <source>That is this device.</source>
        <translation>Das ist dieses Gerät.</translation>
    </message>
    <message>
        <source>An event server that this device was paired with.</source>
        <translation>Ein Turnierserver, mit dem dieses Gerät gekoppelt wurde.</translation>
    </message>
    <message>
        <source>A device of this room.</source>
        <translation>Ein Gerät dieses Raums.</translation>
    </message>
    <message>
        <source>A device whose work is held here.</source>
        <translation>Ein Gerät, dessen Arbeit hier vorliegt.</translation>
    </message>
    <message>
        <source>This device does not know it.</source>
        <translation>Dieses Gerät kennt es nicht.</translation>
    </message>
    <message>
        <source>Words of its key: %1</source>
        <translation>Wörter seines Schlüssels: %1</translation>
    </message>
    <message>
        <source>It was signed by a clock that is ahead of this device&apos;s: what seems newer on it may not be.</source>
        <translation>Die Uhr, mit der unterschrieben wurde, geht gegenüber dieser vor: was neuer scheint, muss es nicht sein.</translation>
    </message>
    <message>
        <source>This very card was taken in before.</source>
        <translation>Genau diese Karte wurde schon angenommen.</translation>
    </message>
    <message>
        <source>What is on it</source>
        <translation>Was darauf steht</translation>
    </message>
    <message>
        <source>Newer on the card</source>
        <translation>Auf der Karte neuer</translation>
    </message>
    <message>
        <source>Take these as well: the player says so</source>
        <translation>Auch das übernehmen: so wurde es gesagt</translation>
    </message>
    <message>
        <source>Older than what is held here: stays as it is here</source>
        <translation>Älter als das Hiesige: bleibt, wie es hier ist</translation>
    </message>
    <message>
        <source>Open questions: a person closes them first</source>
        <translation>Offene Fragen: erst schließt sie ein Mensch</translation>
    </message>
    <message>
        <source>The player is not known here yet: the card begins the book.</source>
        <translation>Hier noch nicht bekannt: die Karte beginnt das Buch.</translation>
    </message>
    <message numerus="yes">
        <source>New here: %n field(s)</source>
        <translation>
            <numerusform>Hier neu: %n Angabe</numerusform>
            <numerusform>Hier neu: %n Angaben</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing on it is missing here.</source>
        <translation>Hier fehlt nichts davon.</translation>
    </message>
    <message>
        <source>Agreed to here: %1</source>
        <translation>Hier zugestimmt: %1</translation>
    </message>
    <message>
        <source>A card carries no consent. Ask the player where this may go, and record the answer.</source>
        <translation>Eine Karte trägt keine Einwilligung. Fragen, wohin dies gehen darf, und die Antwort festhalten.</translation>
    </message>
    <message>
        <source>A stranger signed it</source>
        <translation>Ein fremdes Gerät hat sie unterschrieben</translation>
    </message>
    <message>
        <source>The signature holds, but no signature says that a stranger is honest. Read it to the player first.</source>
        <translation>Die Unterschrift stimmt, aber keine sagt, dass ein Fremder ehrlich ist. Erst vorlesen und bestätigen lassen.</translation>
    </message>
    <message>
        <source>The player says that it is right</source>
        <translation>Mir wurde gesagt, dass es stimmt</translation>
    </message>
    <message>
        <source>Ask the player before stringing by a card; the makers’ instructions for frame and string come first.</source>
        <translation>Vor dem Bespannen nach einer Karte nachfragen; die Anleitungen der Hersteller von Rahmen und Saite gehen vor.</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Annehmen</translation>
    </message>
    <message>
        <source>To the player</source>
        <translation>Zur Person</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.PNG *.JPG *.JPEG)</source>
        <translation>Bilder (*.png *.jpg *.jpeg *.PNG *.JPG *.JPEG)</translation>
    </message>
</context>
<context>
    <name>TeamModel</name>
    <message>
        <source>Somebody who is not on the team any more</source>
        <translation>Jemand, der nicht mehr im Team ist</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>Give a time such as 8:30.</source>
        <translation>Bitte eine Zeit angeben, etwa 8:30.</translation>
    </message>
</context>
<context>
    <name>TeamPage</name>
    <message>
        <source>Team</source>
        <translation>Team</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Leute</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Maschinen</translation>
    </message>
    <message>
        <source>Numbers</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Was gezeigt wird</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its team and machines come here by themselves.</source>
        <translation>Unter Abgleich mit einem Turnierserver koppeln; Team und Maschinen kommen dann von selbst.</translation>
    </message>
    <message>
        <source>Lists</source>
        <translation>Listen</translation>
    </message>
    <message>
        <source>Evenness</source>
        <translation>Gleichmaß</translation>
    </message>
</context>
<context>
    <name>TeamView</name>
    <message>
        <source>Head of the room</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>Desk</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>Stringer</source>
        <translation>Bespannen</translation>
    </message>
    <message>
        <source>Reader</source>
        <translation>Nur Lesen</translation>
    </message>
    <message>
        <source>%1 rests only %2 before %3</source>
        <translation>%1 ruht nur %2 vor %3</translation>
    </message>
    <message>
        <source>%1 works %2 on %3</source>
        <translation>%1 arbeitet %2 am %3</translation>
    </message>
    <message>
        <source>Eleven hours between two days are usual; local law and contracts say what holds.</source>
        <translation>Elf Stunden zwischen zwei Tagen sind üblich; was gilt, sagen örtliches Recht und Verträge.</translation>
    </message>
    <message>
        <source>Tired hands make uneven beds. Local law and contracts say how long a day may be.</source>
        <translation>Müde Hände bespannen ungleich. Wie lang ein Tag sein darf, sagen örtliches Recht und Verträge.</translation>
    </message>
    <message>
        <source>Team</source>
        <translation>Team</translation>
    </message>
    <message>
        <source>here until %1</source>
        <translation>hier bis %1</translation>
    </message>
    <message>
        <source>Add somebody</source>
        <translation>Jemanden hinzufügen</translation>
    </message>
    <message>
        <source>Shifts from today on</source>
        <translation>Schichten ab heute</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <translation>%1, %2 bis %3</translation>
    </message>
    <message>
        <source>Take the shift of %1 off the plan</source>
        <translation>Schicht von %1 streichen</translation>
    </message>
    <message>
        <source>Shift taken off the plan</source>
        <translation>Schicht gestrichen</translation>
    </message>
    <message>
        <source>No shift is planned.</source>
        <translation>Keine Schicht geplant.</translation>
    </message>
    <message>
        <source>Plan a shift</source>
        <translation>Schicht planen</translation>
    </message>
</context>
<context>
    <name>TensionCard</name>
    <message>
        <source>Tension</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Längssaiten</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Quersaiten</translation>
    </message>
    <message>
        <source>Spread over the rackets, from the first one</source>
        <translation>Auf die Schläger verteilen, vom ersten an</translation>
    </message>
    <message>
        <source>Each %1</source>
        <translation>Jeder %1</translation>
    </message>
    <message>
        <source>Each racket %1 above the one before</source>
        <translation>Jeder Schläger %1 gegenüber dem davor</translation>
    </message>
    <message>
        <source>Two and two %1</source>
        <translation>Je zwei %1</translation>
    </message>
    <message>
        <source>Two rackets alike, the next two %1 above them</source>
        <translation>Zwei Schläger gleich, die nächsten zwei %1</translation>
    </message>
    <message>
        <source>All as the first</source>
        <translation>Alle wie der erste</translation>
    </message>
    <message>
        <source>Racket %1: %2 / %3</source>
        <translation>Schläger %1: %2 / %3</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>night</source>
        <translation>Abend</translation>
    </message>
    <message>
        <source>new balls</source>
        <translation>neue Bälle</translation>
    </message>
    <message>
        <source>Racket %1 is kept as: %2</source>
        <translation>Schläger %1 wird behalten als: %2</translation>
    </message>
    <message>
        <source>Keep racket %1 as: %2</source>
        <translation>Schläger %1 behalten als: %2</translation>
    </message>
    <message>
        <source>other …</source>
        <translation>andere …</translation>
    </message>
    <message>
        <source>Another name for racket %1</source>
        <translation>Ein anderer Name für Schläger %1</translation>
    </message>
    <message>
        <source>Name of the setup, as the player says it</source>
        <translation>Name des Bespannungswunsches, wie man ihn hier sagt</translation>
    </message>
    <message>
        <source>Empty: as it was before</source>
        <translation>Leer: wie zuvor</translation>
    </message>
</context>
<context>
    <name>TensionPart</name>
    <message>
        <source>%1 by %2 %3</source>
        <translation>%1 um %2 %3</translation>
    </message>
    <message>
        <source>Said in</source>
        <translation>Gesagt in</translation>
    </message>
</context>
<context>
    <name>TimeStepper</name>
    <message>
        <source>A quarter of an hour sooner</source>
        <translation>Eine Viertelstunde früher</translation>
    </message>
    <message>
        <source>No time</source>
        <translation>Keine Zeit</translation>
    </message>
    <message>
        <source>A quarter of an hour later</source>
        <translation>Eine Viertelstunde später</translation>
    </message>
</context>
<context>
    <name>ToneModel</name>
    <message>
        <source>The microphone was taken away, or another program holds it. Choose a recording instead (WAV).</source>
        <translation>Das Mikrofon ist weg, oder ein anderes Programm hält es. Wählen Sie stattdessen eine Aufnahme (WAV).</translation>
    </message>
    <message>
        <source>The microphone delivers nothing. Look whether it is on, or choose a recording instead (WAV).</source>
        <translation>Das Mikrofon liefert nichts. Sehen Sie nach, ob es an ist, oder wählen Sie stattdessen eine Aufnahme (WAV).</translation>
    </message>
    <message>
        <source>This device has no microphone. Choose a recording instead (WAV).</source>
        <translation>Dieses Gerät hat kein Mikrofon. Wählen Sie stattdessen eine Aufnahme (WAV).</translation>
    </message>
    <message>
        <source>The microphone can’t be used: another program may hold it. Choose a recording instead (WAV).</source>
        <translation>Das Mikrofon ist nicht zu benutzen: vielleicht hält es ein anderes Programm. Wählen Sie stattdessen eine Aufnahme (WAV).</translation>
    </message>
    <message>
        <source>It can’t listen</source>
        <translation>Es kann nicht zuhören</translation>
    </message>
    <message>
        <source>The tone is not known</source>
        <translation>Der Ton ist nicht bekannt</translation>
    </message>
    <message>
        <source>Nothing was heard. Look whether the microphone is on, and tap the bed close to it.</source>
        <translation>Nichts war zu hören. Sehen Sie nach, ob das Mikrofon an ist, und klopfen Sie nahe daran auf die Bespannung.</translation>
    </message>
    <message>
        <source>It was too loud for the microphone. Tap more softly, or hold the racket further off.</source>
        <translation>Es war zu laut für das Mikrofon. Klopfen Sie sanfter, oder halten Sie den Schläger weiter weg.</translation>
    </message>
    <message>
        <source>That was too short. Let it listen until you have tapped three times.</source>
        <translation>Das war zu kurz. Lassen Sie es zuhören, bis Sie dreimal geklopft haben.</translation>
    </message>
    <message>
        <source>Tone: %1 Hz</source>
        <translation>Ton: %1 Hz</translation>
    </message>
    <message numerus="yes">
        <source>Estimate of %n tap(s), nine times of ten %1 to %2 Hz; %3 % sure that it is the bed’s own tone to half a per cent.</source>
        <translation>
            <numerusform>Schätzung aus %n Schlag, in neun von zehn Fällen %1 bis %2 Hz; zu %3 % sicher, dass es auf ein halbes Prozent der Eigenton ist.</numerusform>
            <numerusform>Schätzung aus %n Schlägen, in neun von zehn Fällen %1 bis %2 Hz; zu %3 % sicher, dass es auf ein halbes Prozent der Eigenton ist.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TonePart</name>
    <message>
        <source>too loud: tap more softly</source>
        <translation>zu laut: sanfter klopfen</translation>
    </message>
    <message>
        <source>loud enough</source>
        <translation>laut genug</translation>
    </message>
    <message>
        <source>silent</source>
        <translation>still</translation>
    </message>
    <message>
        <source>What a tone says</source>
        <translation>Was ein Ton sagt</translation>
    </message>
    <message>
        <source>Hold the racket at its handle close to the microphone, tap the middle of the bed three times (five where it is loud) with something light, and move the racket a little in between.</source>
        <translation>Halten Sie den Schläger am Griff nah ans Mikrofon, klopfen Sie dreimal (wo es laut ist, fünfmal) mit etwas Leichtem in die Mitte der Bespannung und bewegen Sie den Schläger dazwischen ein wenig.</translation>
    </message>
    <message>
        <source>That is enough</source>
        <translation>Das genügt</translation>
    </message>
    <message>
        <source>Listen</source>
        <translation>Zuhören</translation>
    </message>
    <message>
        <source>From a recording (WAV)</source>
        <translation>Aus einer Aufnahme (WAV)</translation>
    </message>
    <message>
        <source>Level: %1</source>
        <translation>Pegel: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n second(s) left</source>
        <translation>
            <numerusform>noch %n Sekunde</numerusform>
            <numerusform>noch %n Sekunden</numerusform>
        </translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Wird ausgerechnet …</translation>
    </message>
    <message>
        <source>Tone of the string bed, now</source>
        <translation>Ton des Saitenbetts, jetzt</translation>
    </message>
    <message>
        <source>Estimate from the tone</source>
        <translation>Schätzung aus dem Ton</translation>
    </message>
    <message>
        <source>Keep this tone as a reading</source>
        <translation>Diesen Ton als Messung behalten</translation>
    </message>
    <message>
        <source>listened to</source>
        <translation>gehört</translation>
    </message>
    <message>
        <source>Measured: %1 Hz</source>
        <translation>Gemessen: %1 Hz</translation>
    </message>
    <message>
        <source>Recording (*.wav)</source>
        <translation>Aufnahme (*.wav)</translation>
    </message>
</context>
<context>
    <name>TurnedScreen</name>
    <message>
        <source>Turn</source>
        <translation>Drehen</translation>
    </message>
</context>
<context>
    <name>UnchargedCard</name>
    <message>
        <source>Not charged yet</source>
        <translation>Noch nicht berechnet</translation>
    </message>
    <message>
        <source>a price is missing</source>
        <translation>ein Preis fehlt</translation>
    </message>
    <message>
        <source>The price list has no price for:</source>
        <translation>Die Preisliste hat keinen Preis für:</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Preisliste</translation>
    </message>
    <message numerus="yes">
        <source>Charge %n racket(s): %1</source>
        <translation>
            <numerusform>%n Schläger berechnen: %1</numerusform>
            <numerusform>%n Schläger berechnen: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose a racket</source>
        <translation>Wählen Sie einen Schläger</translation>
    </message>
    <message>
        <source>Charged: %1</source>
        <translation>Berechnet: %1</translation>
    </message>
</context>
<context>
    <name>UndoToast</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
</context>
<context>
    <name>UnfinishedRow</name>
    <message>
        <source>Unfinished drop-off: %1</source>
        <translation>Unfertige Abgabe: %1</translation>
    </message>
    <message>
        <source>Unfinished drop-off of a new player</source>
        <translation>Unfertige Abgabe eines neuen Spielers</translation>
    </message>
    <message>
        <source>Rackets: %1, begun %2</source>
        <translation>Schläger: %1, begonnen %2</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weitermachen</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Throw away the drop-off of %1?</source>
        <translation>Die Abgabe von %1 verwerfen?</translation>
    </message>
    <message>
        <source>Throw away the drop-off of a new player?</source>
        <translation>Die Abgabe eines neuen Spielers verwerfen?</translation>
    </message>
</context>
<context>
    <name>WishField</name>
    <message>
        <source>Choose one of the answers above first</source>
        <translation>Zuerst oben eine der Antworten wählen</translation>
    </message>
    <message>
        <source>The rackets differ: %1</source>
        <translation>Die Schläger unterscheiden sich: %1</translation>
    </message>
</context>
</TS>
