<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>BenchPage</name>
    <message>
        <source>Bench</source>
        <translation>Banco</translation>
    </message>
    <message>
        <source>No racket is waiting for this bench</source>
        <translation>Ninguna raqueta espera en este banco</translation>
    </message>
    <message>
        <source>The next racket appears here with what was agreed, in large digits.</source>
        <translation>La próxima raqueta aparece aquí con lo acordado, en cifras grandes.</translation>
    </message>
</context>
<context>
    <name>CodeSquare</name>
    <message>
        <source>Code to scan</source>
        <translation>Código para escanear</translation>
    </message>
</context>
<context>
    <name>DeskPage</name>
    <message>
        <source>Desk</source>
        <translation>Recepción</translation>
    </message>
    <message>
        <source>Nobody has handed rackets over yet</source>
        <translation>Nadie ha entregado raquetas todavía</translation>
    </message>
    <message>
        <source>Drop-offs of this event appear here, the newest first.</source>
        <translation>Las entregas de este evento aparecen aquí, la más reciente primero.</translation>
    </message>
</context>
<context>
    <name>ExchangePage</name>
    <message>
        <source>Exchange</source>
        <translation>Intercambio</translation>
    </message>
    <message>
        <source>This device has met no other yet</source>
        <translation>Este dispositivo aún no ha encontrado a otro</translation>
    </message>
    <message>
        <source>Pair it with an event server, or bring a bundle in from a file.</source>
        <translation>Vincúlelo con un servidor del evento o traiga un paquete desde un archivo.</translation>
    </message>
</context>
<context>
    <name>FigureStepper</name>
    <message>
        <source>Between %1 and %2 %3</source>
        <translation>Entre %1 y %2 %3</translation>
    </message>
    <message>
        <source>Less: %1</source>
        <translation>Menos: %1</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Más: %1</translation>
    </message>
</context>
<context>
    <name>GalleryWindow</name>
    <message>
        <source>Weavelog: every part in every state</source>
        <translation>Weavelog: cada pieza en cada estado</translation>
    </message>
</context>
<context>
    <name>GiantFigure</name>
    <message>
        <source>Mains %1 %2, crosses %3 %4</source>
        <translation>Verticales %1 %2, horizontales %3 %4</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Verticales</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Horizontales</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Desk</source>
        <translation>Recepción</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Sala</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Banco</translation>
    </message>
    <message>
        <source>Players</source>
        <translation>Jugadores</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Preguntas</translation>
    </message>
    <message>
        <source>Exchange</source>
        <translation>Intercambio</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
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
        <translation>%1: antes %2, ahora %3</translation>
    </message>
    <message>
        <source>%1: %2, as before</source>
        <translation>%1: %2, como antes</translation>
    </message>
</context>
<context>
    <name>PickList</name>
    <message>
        <source>Choose</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>Find in the list</source>
        <translation>Buscar en la lista</translation>
    </message>
</context>
<context>
    <name>PlaceBar</name>
    <message>
        <source>Places</source>
        <translation>Lugares</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>More places</source>
        <translation>Más lugares</translation>
    </message>
</context>
<context>
    <name>PlaceButton</name>
    <message>
        <source>%1, %2 waiting</source>
        <translation>%1, %2 en espera</translation>
    </message>
</context>
<context>
    <name>PlaceRail</name>
    <message>
        <source>Places</source>
        <translation>Lugares</translation>
    </message>
</context>
<context>
    <name>PlayersPage</name>
    <message>
        <source>Players</source>
        <translation>Jugadores</translation>
    </message>
    <message>
        <source>No player is known on this device</source>
        <translation>Este dispositivo no conoce a ningún jugador</translation>
    </message>
    <message>
        <source>Players come with an entry list, with an exchange, or are added at the desk.</source>
        <translation>Los jugadores llegan con una lista de inscritos, con un intercambio o se añaden en recepción.</translation>
    </message>
</context>
<context>
    <name>QuestionsPage</name>
    <message>
        <source>Questions</source>
        <translation>Preguntas</translation>
    </message>
    <message>
        <source>No open question</source>
        <translation>Ninguna pregunta abierta</translation>
    </message>
    <message>
        <source>Where two devices hold different answers for one player, both are shown here until somebody picks one.</source>
        <translation>Cuando dos dispositivos tienen respuestas distintas para un jugador, ambas aparecen aquí hasta que alguien elija.</translation>
    </message>
</context>
<context>
    <name>RoomPage</name>
    <message>
        <source>Room</source>
        <translation>Sala</translation>
    </message>
    <message>
        <source>No racket is in the room</source>
        <translation>No hay raquetas en la sala</translation>
    </message>
    <message>
        <source>Every job of the event stands here under its stage, from taken in to handed over.</source>
        <translation>Cada encordado del evento aparece aquí en su etapa, desde recibido hasta entregado.</translation>
    </message>
</context>
<context>
    <name>SearchEntry</name>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Borrar</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>They hold for this device only.</source>
        <translation>Valen solo para este dispositivo.</translation>
    </message>
    <message>
        <source>Language and unit</source>
        <translation>Idioma y unidad</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Tension is asked in</source>
        <translation>La tensión se pide en</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aspecto</translation>
    </message>
    <message>
        <source>Light or dark</source>
        <translation>Claro u oscuro</translation>
    </message>
    <message>
        <source>As the device</source>
        <translation>Como el dispositivo</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Size of text</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Pequeño</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Grande</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Muy grande</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>There are changes that are not kept yet.</source>
        <translation>Hay cambios que aún no se han guardado.</translation>
    </message>
    <message>
        <source>Go on with them</source>
        <translation>Seguir con ellos</translation>
    </message>
    <message>
        <source>Throw them away</source>
        <translation>Descartarlos</translation>
    </message>
</context>
<context>
    <name>StageMark</name>
    <message>
        <source>Taken in</source>
        <translation>Recibida</translation>
    </message>
    <message>
        <source>Asked player</source>
        <translation>Jugador consultado</translation>
    </message>
    <message>
        <source>On the bench</source>
        <translation>En el banco</translation>
    </message>
    <message>
        <source>Strung</source>
        <translation>Encordada</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregada</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation>Detenida</translation>
    </message>
    <message>
        <source>%1, rush</source>
        <translation>%1, urgente</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Urgente</translation>
    </message>
</context>
<context>
    <name>UndoToast</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
</TS>
