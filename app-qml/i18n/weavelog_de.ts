<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>BenchPage</name>
    <message>
        <source>Bench</source>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>No racket is waiting for this bench</source>
        <translation>Kein Schläger wartet auf diese Werkbank</translation>
    </message>
    <message>
        <source>The next racket appears here with what was agreed, in large digits.</source>
        <translation>Der nächste Schläger erscheint hier mit dem Vereinbarten, in großen Ziffern.</translation>
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
    <name>DeskPage</name>
    <message>
        <source>Desk</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>Nobody has handed rackets over yet</source>
        <translation>Noch niemand hat Schläger abgegeben</translation>
    </message>
    <message>
        <source>Drop-offs of this event appear here, the newest first.</source>
        <translation>Hier stehen die Abgaben dieser Veranstaltung, die neueste zuerst.</translation>
    </message>
</context>
<context>
    <name>ExchangePage</name>
    <message>
        <source>Exchange</source>
        <translation>Abgleich</translation>
    </message>
    <message>
        <source>This device has met no other yet</source>
        <translation>Dieses Gerät ist noch keinem anderen begegnet</translation>
    </message>
    <message>
        <source>Pair it with an event server, or bring a bundle in from a file.</source>
        <translation>Mit einem Veranstaltungsserver koppeln oder ein Bündel aus einer Datei holen.</translation>
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
</context>
<context>
    <name>QuestionsPage</name>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>No open question</source>
        <translation>Keine offene Frage</translation>
    </message>
    <message>
        <source>Where two devices hold different answers for one player, both are shown here until somebody picks one.</source>
        <translation>Haben zwei Geräte verschiedene Antworten für einen Spieler, stehen hier beide, bis jemand eine wählt.</translation>
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
        <translation>Jeder Auftrag der Veranstaltung steht hier unter seinem Stand, von angenommen bis ausgegeben.</translation>
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
        <source>They hold for this device only.</source>
        <translation>Sie gelten nur für dieses Gerät.</translation>
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
    <name>StageMark</name>
    <message>
        <source>Taken in</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Asked player</source>
        <translation>Spieler gefragt</translation>
    </message>
    <message>
        <source>On the bench</source>
        <translation>Auf der Werkbank</translation>
    </message>
    <message>
        <source>Strung</source>
        <translation>Bespannt</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Ausgegeben</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation>Angehalten</translation>
    </message>
    <message>
        <source>%1, rush</source>
        <translation>%1, eilig</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Eilig</translation>
    </message>
</context>
<context>
    <name>UndoToast</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
</context>
</TS>
