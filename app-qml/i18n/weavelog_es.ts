<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>AccountButton</name>
    <message>
        <source>Account: %1 due</source>
        <translation>Cuenta: %1 pendiente</translation>
    </message>
    <message numerus="yes">
        <source>Account: %n racket(s) not charged</source>
        <translation>
            <numerusform>Cuenta: %n raqueta sin cobrar</numerusform>
            <numerusform>Cuenta: %n raquetas sin cobrar</numerusform>
        </translation>
    </message>
    <message>
        <source>Account</source>
        <translation>Cuenta</translation>
    </message>
</context>
<context>
    <name>AccountDetails</name>
    <message>
        <source>Due</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <source>To give back</source>
        <translation>A devolver</translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation>No hay nada pendiente</translation>
    </message>
    <message>
        <source>Charged %1, paid %2</source>
        <translation>Cobrado %1, pagado %2</translation>
    </message>
    <message>
        <source>The event has no currency yet</source>
        <translation>El torneo aún no tiene moneda</translation>
    </message>
    <message>
        <source>Give it one in the price list; then rackets can be charged.</source>
        <translation>Póngale una en la tarifa; entonces se podrán cobrar raquetas.</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Tarifa</translation>
    </message>
    <message>
        <source>Two tablets charged different amounts</source>
        <translation>Dos tabletas cobraron importes distintos</translation>
    </message>
    <message>
        <source>Until somebody closes that under Questions, the newer amount counts here, and nothing is taken off it.</source>
        <translation>Hasta que alguien lo resuelva en Preguntas, aquí cuenta el importe más reciente y no se le descuenta nada.</translation>
    </message>
    <message>
        <source>Charge something else</source>
        <translation>Cobrar otra cosa</translation>
    </message>
</context>
<context>
    <name>AccountModel</name>
    <message>
        <source>It has to be more than nothing.</source>
        <translation>Tiene que ser más que nada.</translation>
    </message>
</context>
<context>
    <name>AccountPart</name>
    <message>
        <source>A racket</source>
        <translation>Una raqueta</translation>
    </message>
    <message>
        <source>Together %1</source>
        <translation>En total %1</translation>
    </message>
    <message>
        <source>two tablets differ</source>
        <translation>dos tabletas difieren</translation>
    </message>
    <message>
        <source>reversed</source>
        <translation>anulado</translation>
    </message>
    <message>
        <source>Give a discount</source>
        <translation>Hacer un descuento</translation>
    </message>
</context>
<context>
    <name>AgreedCard</name>
    <message>
        <source>Agreed now: rackets %1</source>
        <translation>Acordado: raquetas %1</translation>
    </message>
    <message>
        <source>Agreed now</source>
        <translation>Acordado</translation>
    </message>
    <message>
        <source>Last strung %1, %2</source>
        <translation>Último encordado: %1, %2</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Verticales</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Horizontales</translation>
    </message>
    <message>
        <source>Taken in %1, %2; not yet strung</source>
        <translation>Recibida: %1, %2; aún sin encordar</translation>
    </message>
</context>
<context>
    <name>AlikeCard</name>
    <message>
        <source>This player is known here</source>
        <translation>Este jugador es conocido aquí</translation>
    </message>
    <message>
        <source>Is it one of these players?</source>
        <translation>¿Es uno de estos jugadores?</translation>
    </message>
    <message>
        <source>Written down: %1</source>
        <translation>Anotado: %1</translation>
    </message>
    <message>
        <source>None of these: somebody else</source>
        <translation>Ninguno de ellos: es otra persona</translation>
    </message>
</context>
<context>
    <name>AnswersForm</name>
    <message>
        <source>Another answer</source>
        <translation>Otra respuesta</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>If the player says none of these</source>
        <translation>Si el jugador no dice ninguna de estas</translation>
    </message>
</context>
<context>
    <name>ArrivalAccount</name>
    <message>
        <source>Came and went</source>
        <translation>Llegado y enviado</translation>
    </message>
    <message>
        <source>Players who were not here before</source>
        <translation>Jugadores que antes no estaban aquí</translation>
    </message>
    <message>
        <source>Rackets that came</source>
        <translation>Raquetas llegadas</translation>
    </message>
    <message>
        <source>Players who went to the room</source>
        <translation>Jugadores enviados a la sala</translation>
    </message>
    <message>
        <source>Rackets that went</source>
        <translation>Raquetas enviadas</translation>
    </message>
    <message numerus="yes">
        <source>Stayed here: %n player(s) of the list</source>
        <translation>
            <numerusform>Se quedó aquí: %n jugador de la lista</numerusform>
            <numerusform>Se quedaron aquí: %n jugadores de la lista</numerusform>
        </translation>
    </message>
    <message>
        <source>Nobody of the list stayed behind</source>
        <translation>Nadie de la lista se quedó atrás</translation>
    </message>
    <message>
        <source>Everybody else on this tablet stayed too; the event server does not learn of them.</source>
        <translation>Todos los demás de esta tableta también se quedaron; el servidor del torneo no sabe nada de ellos.</translation>
    </message>
    <message>
        <source>Have not agreed to it: %1</source>
        <translation>No han dado su acuerdo: %1</translation>
    </message>
    <message>
        <source>Nobody said whether it is them: %1</source>
        <translation>Nadie ha dicho si son ellos: %1</translation>
    </message>
    <message>
        <source>Were not ticked: %1</source>
        <translation>No se marcaron: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n question(s) need(s) an answer</source>
        <translation>
            <numerusform>%n pregunta necesita respuesta</numerusform>
            <numerusform>%n preguntas necesitan respuesta</numerusform>
        </translation>
    </message>
    <message>
        <source>Where two rooms gave different answers both stand, until the player is asked.</source>
        <translation>Donde dos salas dieron respuestas distintas quedan ambas hasta que se pregunte al jugador.</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Preguntas</translation>
    </message>
    <message numerus="yes">
        <source>Set aside: %n entry(s)</source>
        <translation>
            <numerusform>Apartado: %n entrada</numerusform>
            <numerusform>Apartado: %n entradas</numerusform>
        </translation>
    </message>
    <message>
        <source>They broke a rule and were not taken over; the exchange shows them.</source>
        <translation>Incumplen una regla y no se aceptaron; el intercambio las muestra.</translation>
    </message>
    <message>
        <source>Some books could not be made equal</source>
        <translation>Algunos libros no se pudieron igualar</translation>
    </message>
    <message>
        <source>One side may not hand them on, or holds them otherwise. Nothing is lost and everything else has crossed; compare those players at the desk.</source>
        <translation>Un lado no puede entregarlos o los tiene de otra forma. No se ha perdido nada y todo lo demás ha pasado; compare esos jugadores en recepción.</translation>
    </message>
    <message numerus="yes">
        <source>Both hold the same, over %n book(s). The other side tells the same words: compare them.</source>
        <translation>
            <numerusform>Ambos tienen lo mismo, en %n libro. El otro lado dice las mismas palabras: compárelas.</numerusform>
            <numerusform>Ambos tienen lo mismo, en %n libros. El otro lado dice las mismas palabras: compárelas.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ArrivalMeet</name>
    <message>
        <source>Pairing ...</source>
        <translation>Emparejando ...</translation>
    </message>
    <message>
        <source>Scan the code with the camera</source>
        <translation>Escanear el código con la cámara</translation>
    </message>
    <message>
        <source>Met before</source>
        <translation>Ya conocidos</translation>
    </message>
    <message>
        <source>Paired already: it only has to be met again.</source>
        <translation>Ya emparejado: basta con tocarlo.</translation>
    </message>
</context>
<context>
    <name>ArrivalPage</name>
    <message>
        <source>Arriving at an event</source>
        <translation>Llegada a un torneo</translation>
    </message>
    <message>
        <source>Not connected just now</source>
        <translation>Sin conexión por ahora</translation>
    </message>
    <message>
        <source>Nothing is lost: everything goes on by itself where it stopped, also after the app was closed.</source>
        <translation>No se pierde nada: todo sigue por sí solo donde se detuvo, también después de cerrar la aplicación.</translation>
    </message>
    <message>
        <source>Meet the event server</source>
        <translation>Encontrar el servidor del torneo</translation>
    </message>
    <message>
        <source>The entry list comes over</source>
        <translation>Llega la lista de inscritos</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(s)</source>
        <translation>
            <numerusform>%n inscrito</numerusform>
            <numerusform>%n inscritos</numerusform>
        </translation>
    </message>
    <message>
        <source>Who of it is known here, and what each side gains</source>
        <translation>Quién es conocido aquí y qué gana cada lado</translation>
    </message>
    <message>
        <source>%1 known, %2 to be looked at, %3 new</source>
        <translation>conocidos: %1, por mirar: %2, nuevos: %3</translation>
    </message>
    <message>
        <source>Both bring each other up to date</source>
        <translation>Ambos se ponen al día</translation>
    </message>
    <message>
        <source>What came of it</source>
        <translation>Qué resultó</translation>
    </message>
    <message>
        <source>Back to the exchange</source>
        <translation>Volver al intercambio</translation>
    </message>
    <message>
        <source>Look at the players again</source>
        <translation>Mirar otra vez a los jugadores</translation>
    </message>
    <message numerus="yes">
        <source>Send %n player(s)</source>
        <translation>
            <numerusform>Enviar %n jugador</numerusform>
            <numerusform>Enviar %n jugadores</numerusform>
        </translation>
    </message>
    <message>
        <source>Go on, nobody is ticked</source>
        <translation>Seguir, nadie está marcado</translation>
    </message>
    <message>
        <source>Go on without an entry list</source>
        <translation>Seguir sin lista de inscritos</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>ArrivalPeople</name>
    <message>
        <source>Nobody is ticked that the room does not have: it gains nothing yet.</source>
        <translation>No hay nadie marcado que la sala no tenga: todavía no gana nada.</translation>
    </message>
    <message numerus="yes">
        <source>The room gains %n player(s)</source>
        <translation>
            <numerusform>La sala gana %n jugador</numerusform>
            <numerusform>La sala gana %n jugadores</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s)</source>
        <translation>
            <numerusform>%n raqueta</numerusform>
            <numerusform>%n raquetas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 all new to it</source>
        <translation>%1 del todo nuevos para ella</translation>
    </message>
    <message>
        <source>%1 with a newer last time</source>
        <translation>%1 con una última vez más reciente</translation>
    </message>
    <message>
        <source>The room had nothing of these players that was not here.</source>
        <translation>La sala no tenía nada de estos jugadores que faltara aquí.</translation>
    </message>
    <message numerus="yes">
        <source>From the room came %n player(s)</source>
        <translation>
            <numerusform>De la sala llegó %n jugador</numerusform>
            <numerusform>De la sala llegaron %n jugadores</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 all new here</source>
        <translation>%1 del todo nuevos aquí</translation>
    </message>
    <message>
        <source>never answered: may go, and are asked at their first drop-off</source>
        <translation>nunca respondió: puede ir, y se pregunta en la primera entrega</translation>
    </message>
    <message>
        <source>for this room only</source>
        <translation>solo para esta sala</translation>
    </message>
    <message>
        <source>to events that they enter</source>
        <translation>a los torneos en que se inscriben</translation>
    </message>
    <message>
        <source>to any room</source>
        <translation>a cualquier sala</translation>
    </message>
    <message>
        <source>What each side gains</source>
        <translation>Qué gana cada lado</translation>
    </message>
    <message>
        <source>Ticked players&apos; histories go to the event server; it learns of nobody else.</source>
        <translation>El historial de los marcados va al servidor del torneo; de nadie más se entera.</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) stay(s) here</source>
        <translation>
            <numerusform>%n jugador se queda aquí</numerusform>
            <numerusform>%n jugadores se quedan aquí</numerusform>
        </translation>
    </message>
    <message>
        <source>They have not agreed that their history goes to this room: %1. Ask them at the desk; their card there has the question.</source>
        <translation>No han aceptado que su historial vaya a esta sala: %1. Pregúnteles en recepción; su ficha tiene la pregunta.</translation>
    </message>
    <message>
        <source>Entry list</source>
        <translation>Lista de inscritos</translation>
    </message>
    <message numerus="yes">
        <source>%n to be answered: is it this one?</source>
        <translation>
            <numerusform>%n por responder: ¿es este?</numerusform>
            <numerusform>%n por responder: ¿es este?</numerusform>
        </translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Tick all known players</source>
        <translation>Marcar todos los conocidos</translation>
    </message>
    <message numerus="yes">
        <source>Show more; %n still hidden</source>
        <translation>
            <numerusform>Mostrar más; queda %n oculto</numerusform>
            <numerusform>Mostrar más; quedan %n ocultos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 × agreed: %2</source>
        <translation>%1 × aceptado: %2</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Conocidos</translation>
    </message>
    <message>
        <source>To look at</source>
        <translation>Por mirar</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nuevos</translation>
    </message>
</context>
<context>
    <name>ArrivalProgress</name>
    <message>
        <source>Waits for the connection</source>
        <translation>Espera la conexión</translation>
    </message>
    <message>
        <source>This event has no entry list yet</source>
        <translation>Este torneo aún no tiene lista de inscritos</translation>
    </message>
    <message>
        <source>Coming and going</source>
        <translation>En camino en ambos sentidos</translation>
    </message>
    <message>
        <source>It comes by itself as soon as the room has one. You can go on without it and arrive once more later.</source>
        <translation>Llega sola en cuanto la sala tenga una. Puede seguir sin ella y repetir la llegada más tarde.</translation>
    </message>
    <message>
        <source>Players that are here can be used already; the app may be closed meanwhile.</source>
        <translation>Los jugadores que ya están aquí se pueden usar; entretanto la aplicación puede cerrarse.</translation>
    </message>
    <message numerus="yes">
        <source>About %n second(s) left</source>
        <translation>
            <numerusform>Queda alrededor de %n segundo</numerusform>
            <numerusform>Quedan alrededor de %n segundos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>About %n minute(s) left</source>
        <translation>
            <numerusform>Queda alrededor de %n minuto</numerusform>
            <numerusform>Quedan alrededor de %n minutos</numerusform>
        </translation>
    </message>
    <message>
        <source>From the room to this tablet: books</source>
        <translation>De la sala a esta tableta: libros</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>From this tablet to the room: entries</source>
        <translation>De esta tableta a la sala: entradas</translation>
    </message>
    <message>
        <source>Finding out what either side lacks</source>
        <translation>Busca lo que falta a cada lado</translation>
    </message>
</context>
<context>
    <name>ArrivalRow</name>
    <message>
        <source>Known</source>
        <translation>Conocido</translation>
    </message>
    <message>
        <source>Is it this one?</source>
        <translation>¿Es este?</translation>
    </message>
    <message>
        <source>New here</source>
        <translation>Nuevo aquí</translation>
    </message>
    <message>
        <source>Has not agreed that this history goes to other events: ask the player</source>
        <translation>No ha aceptado que este historial pase a otros torneos: pregunte al jugador</translation>
    </message>
    <message>
        <source>Both have it</source>
        <translation>Ambos lo tienen</translation>
    </message>
    <message>
        <source>None of these: the room&apos;s %1 is somebody else</source>
        <translation>Ninguno de ellos: %1 de la sala es otra persona</translation>
    </message>
</context>
<context>
    <name>ArrivalStepHead</name>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>later</source>
        <translation>después</translation>
    </message>
</context>
<context>
    <name>ArrivalWords</name>
    <message>
        <source>newer by hours</source>
        <translation>más reciente por horas</translation>
    </message>
    <message numerus="yes">
        <source>newer by %n day(s)</source>
        <translation>
            <numerusform>más reciente por %n día</numerusform>
            <numerusform>más reciente por %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>The room has this already</source>
        <translation>La sala ya lo tiene</translation>
    </message>
    <message>
        <source>All new to the room</source>
        <translation>Del todo nuevo para la sala</translation>
    </message>
    <message>
        <source>All new to the room: %1</source>
        <translation>Del todo nuevo para la sala: %1</translation>
    </message>
    <message>
        <source>The room gets what was agreed</source>
        <translation>La sala recibe lo acordado</translation>
    </message>
    <message>
        <source>The room gets %1 more</source>
        <translation>La sala recibe además: %1</translation>
    </message>
    <message>
        <source>Came from the room</source>
        <translation>Llegó de la sala</translation>
    </message>
    <message>
        <source>Came from the room: %1</source>
        <translation>Llegó de la sala: %1</translation>
    </message>
    <message>
        <source>Came from the room: %1 more</source>
        <translation>Llegó de la sala además: %1</translation>
    </message>
</context>
<context>
    <name>AskedCard</name>
    <message>
        <source>What does the player want? %1</source>
        <translation>¿Qué quiere el jugador? %1</translation>
    </message>
    <message>
        <source>Rackets: %1</source>
        <translation>Raquetas: %1</translation>
    </message>
    <message>
        <source>Different answers stand here. Ask which one holds; nothing is read back before.</source>
        <translation>Aquí constan varias respuestas. Pregunte cuál vale; antes no se lee nada de vuelta.</translation>
    </message>
    <message>
        <source>The yes to the read-back closes this question for everybody.</source>
        <translation>El sí a la lectura de vuelta cierra esta pregunta para todos.</translation>
    </message>
    <message>
        <source>It was answered elsewhere meanwhile: %1 (%2). That holds, not %3, which was chosen here.</source>
        <translation>Entretanto se respondió en otro lugar: %1 (%2). Eso vale, y no %3, que se eligió aquí.</translation>
    </message>
    <message>
        <source>It was answered elsewhere meanwhile: %1 (%2). That holds.</source>
        <translation>Entretanto se respondió en otro lugar: %1 (%2). Eso vale.</translation>
    </message>
</context>
<context>
    <name>BandRow</name>
    <message>
        <source>%1: %2, between %3 and %4</source>
        <translation>%1: %2, entre %3 y %4</translation>
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
        <translation>%1 con retraso</translation>
    </message>
</context>
<context>
    <name>BedDrawing</name>
    <message>
        <source>What is drawn</source>
        <translation>Qué se dibuja</translation>
    </message>
    <message>
        <source>Stiffness map</source>
        <translation>Mapa de rigidez</translation>
    </message>
    <message>
        <source>Strings</source>
        <translation>Cuerdas</translation>
    </message>
    <message>
        <source>Stiffness over the string bed. %1</source>
        <translation>Rigidez en todo el encordado. %1</translation>
    </message>
    <message>
        <source>The string bed as it is strung: %1</source>
        <translation>El encordado tal como está: %1</translation>
    </message>
</context>
<context>
    <name>BedFigures</name>
    <message>
        <source>Estimates</source>
        <translation>Estimaciones</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>At the match, %1</source>
        <translation>En el partido, %1</translation>
    </message>
    <message>
        <source>%1: estimate %2, %3; at the match %4, %5</source>
        <translation>%1: estimación %2, %3; en el partido %4, %5</translation>
    </message>
    <message>
        <source>The true figure lies in the band nine times of ten, as far as is known.</source>
        <translation>El valor real está en el intervalo nueve de cada diez veces, por lo que se sabe.</translation>
    </message>
</context>
<context>
    <name>BedModel</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>string not named</source>
        <translation>cordaje sin nombre</translation>
    </message>
    <message>
        <source>pulled with %1 / %2</source>
        <translation>tensado a %1 / %2</translation>
    </message>
    <message>
        <source>Stiffness in the centre</source>
        <translation>Rigidez en el centro</translation>
    </message>
    <message>
        <source>Tone</source>
        <translation>Tono</translation>
    </message>
    <message>
        <source>Tension in the mains</source>
        <translation>Tensión en las verticales</translation>
    </message>
    <message>
        <source>Tension in the crosses</source>
        <translation>Tensión en las horizontales</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) are of other players’ rackets that this device holds.</source>
        <translation>
            <numerusform>%n medición es de raquetas de otros jugadores en este dispositivo.</numerusform>
            <numerusform>%n mediciones son de raquetas de otros jugadores en este dispositivo.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) are left out: on a scale of the instrument’s own, or nothing like this racket.</source>
        <translation>
            <numerusform>%n medición queda fuera: en la escala propia del dispositivo, o nada parecida a esta raqueta.</numerusform>
            <numerusform>%n mediciones quedan fuera: en la escala propia del dispositivo, o nada parecidas a esta raqueta.</numerusform>
        </translation>
    </message>
    <message>
        <source>A head of %1 cm²</source>
        <translation>Una cabeza de %1 cm²</translation>
    </message>
    <message>
        <source>A pattern of %1 x %2</source>
        <translation>Un patrón de %1 x %2</translation>
    </message>
    <message>
        <source>A synthetic gut, where the stock does not say the material</source>
        <translation>Una tripa sintética, donde las existencias no dicen el material</translation>
    </message>
    <message>
        <source>A gauge of 1.30 mm, where none is said</source>
        <translation>Un calibre de 1,30 mm, donde no se dice ninguno</translation>
    </message>
    <message>
        <source>Mains and crosses pulled alike</source>
        <translation>Verticales y horizontales con la misma tensión</translation>
    </message>
    <message>
        <source>Two pieces of string</source>
        <translation>Dos tramos de cordaje</translation>
    </message>
    <message>
        <source>It comes off the machine now</source>
        <translation>Sale ahora de la máquina</translation>
    </message>
    <message>
        <source>Its material is not said in the stock</source>
        <translation>Su material no consta en las existencias</translation>
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
        <translation>1 día</translation>
    </message>
    <message>
        <source>1 week</source>
        <translation>1 semana</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>match</source>
        <translation>partido</translation>
    </message>
    <message>
        <source>%1: estimate %2, nine times of ten %3 to %4; now %5</source>
        <translation>%1: estimación %2, nueve de cada diez veces de %3 a %4; ahora %5</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Verticales</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Horizontales</translation>
    </message>
    <message>
        <source>Stiffness of a firm stroke at the match: %1 N/mm, before %2 N/mm</source>
        <translation>Rigidez con un golpe firme en el partido: %1 N/mm, antes %2 N/mm</translation>
    </message>
    <message>
        <source>Mean tension %1, nine times of ten %2 to %3</source>
        <translation>Tensión media %1, nueve de cada diez veces de %2 a %3</translation>
    </message>
    <message>
        <source>That is %1 % of what was pulled, %2 to %3 %</source>
        <translation>Es el %1 % de lo que se tensó, del %2 al %3 %</translation>
    </message>
    <message>
        <source>Stiffness in the centre %1 N/mm, %2 to %3</source>
        <translation>Rigidez en el centro %1 N/mm, de %2 a %3</translation>
    </message>
    <message>
        <source>A match at %1</source>
        <translation>Un partido a las %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>In the middle %1 N/mm, near the tip %2, near the throat %3, near the sides %4 and %5 (estimates)</source>
        <translation>En el centro %1 N/mm, cerca de la punta %2, cerca del corazón %3, cerca de los lados %4 y %5 (estimaciones)</translation>
    </message>
    <message>
        <source>Estimates of the stiffness now in N/mm, pressed on a disc of %1 mm radius, as a ball flattens. In the middle %2, nine times of ten %3 to %4; one place against another is good to %5 %.</source>
        <translation>Estimaciones de la rigidez actual en N/mm, bajo un disco de %1 mm de radio, como se aplana una pelota. En el centro %2, nueve de cada diez veces de %3 a %4; un punto frente a otro es exacto al %5 %.</translation>
    </message>
</context>
<context>
    <name>BenchHead</name>
    <message>
        <source>Late: %1</source>
        <translation>Con retraso: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Antes de %1</translation>
    </message>
    <message>
        <source>promised</source>
        <translation>prometido</translation>
    </message>
</context>
<context>
    <name>BenchPage</name>
    <message>
        <source>Bench</source>
        <translation>Banco</translation>
    </message>
    <message>
        <source>Tag %1: %2</source>
        <translation>Etiqueta %1: %2</translation>
    </message>
    <message>
        <source>Nothing waits for a bench</source>
        <translation>Nada espera un banco</translation>
    </message>
    <message>
        <source>The racket to be strung next lies here with its setup in large figures, as soon as the desk has taken one in.</source>
        <translation>Aquí está la próxima raqueta por encordar, con su ajuste en cifras grandes, en cuanto la recepción reciba una.</translation>
    </message>
    <message>
        <source>On-court rush: %1</source>
        <translation>Urgencia de pista: %1</translation>
    </message>
    <message>
        <source>It goes before the racket on this bench. A racket already on the machine is finished first.</source>
        <translation>Va antes que la raqueta de este banco. Una raqueta que ya está en la máquina se termina primero.</translation>
    </message>
    <message>
        <source>It goes before the racket on this bench.</source>
        <translation>Va antes que la raqueta de este banco.</translation>
    </message>
    <message>
        <source>Take it up</source>
        <translation>Tomarla</translation>
    </message>
    <message>
        <source>Two answers: %1</source>
        <translation>Dos respuestas: %1</translation>
    </message>
    <message>
        <source>Ask the desk which one the player wants before you string it; they are under Questions.</source>
        <translation>Pregunte en recepción cuál quiere el jugador antes de encordar; están en Preguntas.</translation>
    </message>
    <message>
        <source>Note to the stringer</source>
        <translation>Nota al encordador</translation>
    </message>
    <message>
        <source>Written beside this racket</source>
        <translation>Anotado junto a esta raqueta</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Choose another racket (%1)</source>
        <translation>Elegir otra raqueta (%1)</translation>
    </message>
    <message>
        <source>Rackets that wait</source>
        <translation>Raquetas en espera</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Etiqueta %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
    <message>
        <source>Late: %1</source>
        <translation>Con retraso: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Antes de %1</translation>
    </message>
    <message>
        <source>Inspect the frame</source>
        <translation>Revisar el marco</translation>
    </message>
    <message>
        <source>Machine %1 does not pull what is set</source>
        <translation>La máquina %1 no tira lo ajustado</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its rackets come here by themselves.</source>
        <translation>Vincule con un servidor de torneo en Intercambio; sus raquetas llegan aquí solas.</translation>
    </message>
</context>
<context>
    <name>BenchPeople</name>
    <message>
        <source>pinned</source>
        <translation>fijado</translation>
    </message>
    <message>
        <source>Carry %1 to another bench</source>
        <translation>Llevar a %1 a otro banco</translation>
    </message>
</context>
<context>
    <name>BenchTime</name>
    <message numerus="yes">
        <source>%n minute(s) on the machine</source>
        <translation>
            <numerusform>%n minuto en la máquina</numerusform>
            <numerusform>%n minutos en la máquina</numerusform>
        </translation>
    </message>
    <message>
        <source>on the machine</source>
        <translation>en la máquina</translation>
    </message>
    <message numerus="yes">
        <source>Done again: %n time(s)</source>
        <translation>
            <numerusform>Rehecho: %n vez</numerusform>
            <numerusform>Rehecho: %n veces</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BenchTop</name>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
    <message>
        <source>Late: %1</source>
        <translation>Con retraso: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Antes de %1</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Etiqueta %1</translation>
    </message>
    <message>
        <source>The racket</source>
        <translation>La raqueta</translation>
    </message>
    <message>
        <source>%1 was taken on by %2 at another bench</source>
        <translation>%1: %2 tomó la raqueta en otro banco</translation>
    </message>
    <message>
        <source>%1 was taken on at another bench</source>
        <translation>%1: la tomaron en otro banco</translation>
    </message>
    <message>
        <source>%1 was taken on at two benches while apart. Look where it is; its stage is settled in the room.</source>
        <translation>%1: dos bancos la tomaron sin verse. Mire dónde está; su etapa se aclara en la sala.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 waits for its player’s answer</source>
        <translation>%1: espera la respuesta del jugador</translation>
    </message>
    <message>
        <source>%1 was put aside</source>
        <translation>%1: apartada</translation>
    </message>
    <message>
        <source>%1 was collected</source>
        <translation>%1: recogida</translation>
    </message>
    <message>
        <source>The drop-off of %1 was taken back</source>
        <translation>%1: se anuló la entrega</translation>
    </message>
    <message>
        <source>%1: the player withdrew, and the book was erased. Ask at the desk.</source>
        <translation>%1: el jugador se retiró y su libro se borró. Pregunte en recepción.</translation>
    </message>
    <message>
        <source>Next racket</source>
        <translation>Raqueta siguiente</translation>
    </message>
</context>
<context>
    <name>BenchTray</name>
    <message>
        <source>Moved, and pinned there</source>
        <translation>Movido y fijado allí</translation>
    </message>
    <message>
        <source>Let %1 go over a bench. The number says what the plan loses by it.</source>
        <translation>Suelta a %1 sobre un banco. El número dice lo que pierde el plan.</translation>
    </message>
    <message>
        <source>here</source>
        <translation>aquí</translation>
    </message>
    <message>
        <source>a wish forbids it</source>
        <translation>un deseo lo prohíbe</translation>
    </message>
</context>
<context>
    <name>BenchesModel</name>
    <message>
        <source>There is no event yet.</source>
        <translation>Todavía no hay torneo.</translation>
    </message>
    <message>
        <source>%1: %2, %3 %</source>
        <translation>%1: %2, %3 %</translation>
    </message>
    <message>
        <source>Proven: no plan is better.</source>
        <translation>Demostrado: ningún plan es mejor.</translation>
    </message>
    <message>
        <source>No plan is better by more than %1 %.</source>
        <translation>Ningún plan es mejor en más de un %1 %.</translation>
    </message>
    <message>
        <source> Nobody shares a bench with somebody they can meet late in the draw.</source>
        <translation> Nadie comparte banco con quien podría encontrarse al final del cuadro.</translation>
    </message>
    <message>
        <source> Some who can meet late in the draw share a bench: there are too few benches to hold all apart.</source>
        <translation> Algunos que podrían encontrarse al final del cuadro comparten banco: hay muy pocos bancos para separarlos a todos.</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) moved.</source>
        <translation>
            <numerusform>%n persona movida.</numerusform>
            <numerusform>%n personas movidas.</numerusform>
        </translation>
    </message>
    <message>
        <source>The draw or the team changed meanwhile.</source>
        <translation>El cuadro o el equipo cambiaron entretanto.</translation>
    </message>
    <message>
        <source>Plan again.</source>
        <translation>Planifique de nuevo.</translation>
    </message>
    <message>
        <source>never with %1</source>
        <translation>nunca con %1</translation>
    </message>
    <message>
        <source>only with %1</source>
        <translation>solo con %1</translation>
    </message>
</context>
<context>
    <name>BenchesView</name>
    <message>
        <source>There can be no plan yet</source>
        <translation>Todavía no puede haber un plan</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) without a bench</source>
        <translation>
            <numerusform>%n persona sin banco</numerusform>
            <numerusform>%n personas sin banco</numerusform>
        </translation>
    </message>
    <message>
        <source>A plan gives everybody one stringer and one machine for the event, and keeps apart who may soon meet.</source>
        <translation>Un plan da a cada quien una persona y una máquina para el torneo, y separa a quienes pronto podrían encontrarse.</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Planificando …</translation>
    </message>
    <message>
        <source>Plan anew</source>
        <translation>Planificar de nuevo</translation>
    </message>
    <message>
        <source>Plan the benches</source>
        <translation>Planificar los bancos</translation>
    </message>
    <message>
        <source>Benches planned</source>
        <translation>Bancos planificados</translation>
    </message>
    <message>
        <source>%1 rackets to come</source>
        <translation>%1 raquetas por venir</translation>
    </message>
    <message>
        <source>Nobody yet</source>
        <translation>Nadie todavía</translation>
    </message>
    <message>
        <source>Move to, and what it costs the plan</source>
        <translation>Mover a, y lo que cuesta al plan</translation>
    </message>
    <message>
        <source>here</source>
        <translation>aquí</translation>
    </message>
    <message>
        <source>a wish forbids it</source>
        <translation>un deseo lo impide</translation>
    </message>
    <message>
        <source>Moved, and pinned there</source>
        <translation>Movido y fijado allí</translation>
    </message>
    <message>
        <source>Take the pin out</source>
        <translation>Dejar de fijar</translation>
    </message>
    <message>
        <source>The next plan may move them</source>
        <translation>El próximo plan puede mover</translation>
    </message>
    <message>
        <source>Nobody shares a bench with somebody they can meet from here on</source>
        <translation>Nadie comparte banco con quien pueda encontrarse desde aquí</translation>
    </message>
    <message>
        <source>Quarter-finals</source>
        <translation>Cuartos de final</translation>
    </message>
    <message>
        <source>Semi-finals</source>
        <translation>Semifinales</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Final</translation>
    </message>
    <message>
        <source>No rule</source>
        <translation>Sin regla</translation>
    </message>
    <message>
        <source>The next plan goes by it</source>
        <translation>El próximo plan lo sigue</translation>
    </message>
    <message>
        <source>What the plan goes by</source>
        <translation>Según qué va el plan</translation>
    </message>
    <message>
        <source>Wishes</source>
        <translation>Deseos</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>quitar</translation>
    </message>
    <message>
        <source>The wish is dropped</source>
        <translation>El deseo ya no vale</translation>
    </message>
    <message>
        <source>Add a wish</source>
        <translation>Añadir un deseo</translation>
    </message>
    <message>
        <source>Only with</source>
        <translation>Solo con</translation>
    </message>
    <message>
        <source>Never with</source>
        <translation>Nunca con</translation>
    </message>
    <message>
        <source>What is wished for</source>
        <translation>Lo que se desea</translation>
    </message>
    <message>
        <source>Who wins a match</source>
        <translation>Quién gana un partido</translation>
    </message>
    <message>
        <source>As known best</source>
        <translation>Lo mejor conocido</translation>
    </message>
    <message>
        <source>Rating</source>
        <translation>Puntuación</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Cabeza de serie</translation>
    </message>
    <message>
        <source>Even odds</source>
        <translation>Iguales</translation>
    </message>
    <message>
        <source>What a meeting on one bench costs, the final’s first</source>
        <translation>Lo que cuesta un encuentro en un banco, la final primero</translation>
    </message>
    <message>
        <source>The last number stands for all rounds before. Empty: as is usual.</source>
        <translation>El último número vale para todas las rondas anteriores. Vacío: lo habitual.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>BringDrawSheet</name>
    <message>
        <source>Bring a draw in</source>
        <translation>Traer un cuadro</translation>
    </message>
    <message>
        <source>Name of the draw</source>
        <translation>Nombre del cuadro</translation>
    </message>
    <message>
        <source>Women’s singles</source>
        <translation>Individual femenino</translation>
    </message>
    <message>
        <source>So many come through</source>
        <translation>Cuántos se clasifican</translation>
    </message>
    <message>
        <source>Choose the table (CSV)</source>
        <translation>Elegir la tabla (CSV)</translation>
    </message>
    <message>
        <source>Columns: line (from 1), player; if they are known partner, seed, rating, entry. A free line of the draw is called bye.</source>
        <translation>Columnas: line (desde 1), player; si se conocen partner, seed, rating, entry. Una línea exenta se llama bye.</translation>
    </message>
    <message>
        <source>Bring it in</source>
        <translation>Traer</translation>
    </message>
    <message>
        <source>Draw brought in</source>
        <translation>Cuadro traído</translation>
    </message>
    <message>
        <source>Tables (*.csv *.CSV)</source>
        <translation>Tablas (*.csv *.CSV)</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>Main draw</source>
        <translation>Cuadro principal</translation>
    </message>
    <message>
        <source>Qualifying</source>
        <translation>Previa</translation>
    </message>
    <message>
        <source>Round-robin group</source>
        <translation>Grupo, todos contra todos</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>De dónde viene</translation>
    </message>
    <message>
        <source>A table</source>
        <translation>Una tabla</translation>
    </message>
    <message>
        <source>Typed in</source>
        <translation>Tecleado</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Líneas</translation>
    </message>
    <message>
        <source>From top to bottom. Leave empty who is not known yet; they can be put in later.</source>
        <translation>De arriba abajo. Deja vacío a quien aún no se conoce; se puede poner después.</translation>
    </message>
    <message>
        <source>bye</source>
        <translation>exento</translation>
    </message>
    <message>
        <source>Player, or player / partner</source>
        <translation>Jugador, o jugador / pareja</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Línea %1</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Cabeza de serie</translation>
    </message>
    <message>
        <source>Seed of line %1</source>
        <translation>Cabeza de serie de la línea %1</translation>
    </message>
    <message>
        <source>Line %1 is free</source>
        <translation>La línea %1 está libre</translation>
    </message>
    <message>
        <source>Columns: player; if they are known partner, seed, rating. Three to eight rows.</source>
        <translation>Columnas: player; si se conocen partner, seed, rating. De tres a ocho filas.</translation>
    </message>
    <message>
        <source>Draw made</source>
        <translation>Cuadro creado</translation>
    </message>
</context>
<context>
    <name>BundleModel</name>
    <message>
        <source>Your private kit</source>
        <translation>Su material privado</translation>
    </message>
    <message>
        <source>Whoever knows a passphrase</source>
        <translation>Quien conozca una frase de paso</translation>
    </message>
    <message>
        <source>whoever knows the passphrase</source>
        <translation>quien conozca la frase de paso</translation>
    </message>
    <message>
        <source>taken in by %1, %2</source>
        <translation>recibido por %1, %2</translation>
    </message>
    <message>
        <source>taken in by %1 in part, %2</source>
        <translation>recibido en parte por %1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n book(s)</source>
        <translation>
            <numerusform>%n libro</numerusform>
            <numerusform>%n libros</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, for %2</source>
        <translation>%1, para %2</translation>
    </message>
</context>
<context>
    <name>BundleSeal</name>
    <message>
        <source>Who can open it</source>
        <translation>Quién puede abrirlo</translation>
    </message>
    <message>
        <source>Only that device can read it. Nobody has to remember anything.</source>
        <translation>Solo ese dispositivo puede leerlo. Nadie tiene que recordar nada.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Frase de paso</translation>
    </message>
    <message>
        <source>Four or five words that do not belong together.</source>
        <translation>Cuatro o cinco palabras que no van juntas.</translation>
    </message>
    <message>
        <source>The same once more</source>
        <translation>La misma otra vez</translation>
    </message>
    <message>
        <source>It is not the same yet.</source>
        <translation>Aún no es la misma.</translation>
    </message>
    <message>
        <source>Write them down now, and tell them; do not leave them beside the stick. They are shown this once.</source>
        <translation>Anótelas ahora y dígalas; no las deje junto a la memoria. Solo se muestran esta vez.</translation>
    </message>
    <message>
        <source>Nobody can open the file without it, this tablet neither.</source>
        <translation>Sin ella nadie abre el archivo, tampoco esta tableta.</translation>
    </message>
    <message>
        <source>Make up others</source>
        <translation>Inventar otras</translation>
    </message>
    <message>
        <source>Make five words up</source>
        <translation>Inventar cinco palabras</translation>
    </message>
    <message>
        <source>Hide what is typed</source>
        <translation>Ocultar lo escrito</translation>
    </message>
    <message>
        <source>Show what is typed</source>
        <translation>Mostrar lo escrito</translation>
    </message>
    <message>
        <source>Type my own</source>
        <translation>Escribir las mías</translation>
    </message>
</context>
<context>
    <name>BundleSheet</name>
    <message numerus="yes">
        <source>%n picture(s) could not be read and are not in it.</source>
        <translation>
            <numerusform>%n foto no se pudo leer y no va incluida.</numerusform>
            <numerusform>%n fotos no se pudieron leer y no van incluidas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Everything, as a backup</source>
        <translation>Todo, como copia de seguridad</translation>
    </message>
    <message>
        <source>Take this event with me</source>
        <translation>Llevarme este torneo</translation>
    </message>
    <message>
        <source>Hand players to a colleague</source>
        <translation>Dar jugadores a un colega</translation>
    </message>
    <message>
        <source>All players, jobs, events, pictures and your private kit, for this tablet or for a new one that takes its place. Other tablets do not take it in. The pairing with event servers is not in it: pair again after putting it back.</source>
        <translation>Todos los jugadores, trabajos, torneos, fotos y su material privado, para esta tableta o una nueva que la sustituya. Otras tabletas no la aceptan. El emparejamiento con servidores no va incluido: vuelva a emparejar tras restaurarla.</translation>
    </message>
    <message>
        <source>%1 with its draws, order of play and the books of its players.</source>
        <translation>%1 con sus cuadros, su orden de juego y los libros de sus jugadores.</translation>
    </message>
    <message>
        <source>Whoever gets it works in the room of %1</source>
        <translation>Quien lo recibe trabaja en la sala de %1</translation>
    </message>
    <message>
        <source>Players who agreed to that room only go along then.</source>
        <translation>Entonces van también los jugadores que solo aceptaron esa sala.</translation>
    </message>
    <message>
        <source>Note for whoever opens it</source>
        <translation>Nota para quien lo abra</translation>
    </message>
    <message>
        <source>Working out how large it is ...</source>
        <translation>Calculando el tamaño ...</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s)</source>
        <translation>
            <numerusform>%n jugador</numerusform>
            <numerusform>%n jugadores</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n torneo</numerusform>
            <numerusform>%n torneos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s)</source>
        <translation>
            <numerusform>%n foto</numerusform>
            <numerusform>%n fotos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, about %2</source>
        <translation>%1, unos %2</translation>
    </message>
    <message numerus="yes">
        <source>Stays here: %n book(s)</source>
        <translation>
            <numerusform>Se queda aquí: %n libro</numerusform>
            <numerusform>Se quedan aquí: %n libros</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>It is being made ...</source>
        <translation>Se está preparando ...</translation>
    </message>
    <message>
        <source>It is on its way to %1</source>
        <translation>De camino a %1</translation>
    </message>
    <message>
        <source>The file is whole on this tablet (%1, for %2). What has arrived at %3 stays; put the stick in again and go on, also later.</source>
        <translation>El archivo está entero en esta tableta (%1, para %2). Lo que llegó a %3 se conserva; vuelva a poner la memoria y siga, también más tarde.</translation>
    </message>
    <message>
        <source>It is written: %1, for %2</source>
        <translation>Escrito: %1, para %2</translation>
    </message>
    <message>
        <source>Keep it apart from this tablet, and its passphrase apart from it.</source>
        <translation>Guárdela aparte de esta tableta, y la frase de paso aparte de ella.</translation>
    </message>
    <message>
        <source>Whoever brings it in gets a receipt beside it. Bring that in here, and you know that it came.</source>
        <translation>Quien lo recibe obtiene un recibo al lado. Léalo aquí y sabrá que llegó.</translation>
    </message>
    <message>
        <source>Choose folder or stick</source>
        <translation>Elegir carpeta o memoria</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Another place</source>
        <translation>Otro lugar</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Descartar</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>CameraModel</name>
    <message>
        <source>No camera was found. Type the number that stands on the tag.</source>
        <translation>No se encontró ninguna cámara. Escriba el número que figura en la etiqueta.</translation>
    </message>
    <message>
        <source>The camera can’t be used: %1. Another program may hold it; or type the number that stands on the tag.</source>
        <translation>La cámara no se puede usar: %1. Quizá la ocupe otro programa; o escriba el número que figura en la etiqueta.</translation>
    </message>
    <message>
        <source>The pictures of this camera can’t be read. Type the number that stands on the tag.</source>
        <translation>Las imágenes de esta cámara no se pueden leer. Escriba el número que figura en la etiqueta.</translation>
    </message>
    <message>
        <source>Several codes are in sight: hold one before the camera.</source>
        <translation>Se ven varios códigos: acerque uno solo a la cámara.</translation>
    </message>
    <message>
        <source>No camera was found. Add a photo from a file.</source>
        <translation>No se encontró ninguna cámara. Añada una foto desde un archivo.</translation>
    </message>
    <message>
        <source>The camera can’t be used: %1. Another program may hold it; or add a photo from a file.</source>
        <translation>La cámara no se puede usar: %1. Quizá la ocupa otro programa; o añada una foto desde un archivo.</translation>
    </message>
    <message>
        <source>The pictures of this camera can’t be read. Add a photo from a file.</source>
        <translation>Las imágenes de esta cámara no se pueden leer. Añada una foto desde un archivo.</translation>
    </message>
</context>
<context>
    <name>CameraSheet</name>
    <message>
        <source>Scan with the camera</source>
        <translation>Escanear con la cámara</translation>
    </message>
    <message>
        <source>Hold the code of one tag or card in the frame.</source>
        <translation>Ponga el código de una etiqueta o de una tarjeta en el marco.</translation>
    </message>
</context>
<context>
    <name>CandidateRow</name>
    <message>
        <source>Alike: %1</source>
        <translation>Coincide: %1</translation>
    </message>
    <message>
        <source>Differs: %1</source>
        <translation>Difiere: %1</translation>
    </message>
    <message>
        <source>Others are alike: a relative, or somebody of the same name</source>
        <translation>Otros se parecen: un familiar o alguien del mismo nombre</translation>
    </message>
</context>
<context>
    <name>CardDifferences</name>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Here: %1</source>
        <translation>Aquí: %1</translation>
    </message>
    <message>
        <source>Card: %1</source>
        <translation>Tarjeta: %1</translation>
    </message>
</context>
<context>
    <name>CardLines</name>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
    <message>
        <source>No setup and no racket</source>
        <translation>Ningún ajuste ni raqueta</translation>
    </message>
</context>
<context>
    <name>CardPicksSheet</name>
    <message>
        <source>Cards for several players</source>
        <translation>Tarjetas para varios jugadores</translation>
    </message>
    <message>
        <source>A whole team</source>
        <translation>Un equipo entero</translation>
    </message>
    <message>
        <source>Everybody of a country</source>
        <translation>Todos los de un país</translation>
    </message>
    <message>
        <source>Everybody in the room</source>
        <translation>Todos los que tienen raquetas aquí</translation>
    </message>
    <message>
        <source>Nobody</source>
        <translation>Nadie</translation>
    </message>
    <message>
        <source>Find a player</source>
        <translation>Buscar jugador</translation>
    </message>
    <message>
        <source>There are more: type a name.</source>
        <translation>Hay más: escriba un nombre.</translation>
    </message>
    <message>
        <source>Nobody of that name</source>
        <translation>Nadie con ese nombre</translation>
    </message>
    <message>
        <source>Make the cards (%1)</source>
        <translation>Hacer las tarjetas (%1)</translation>
    </message>
    <message>
        <source>Make the cards</source>
        <translation>Hacer las tarjetas</translation>
    </message>
</context>
<context>
    <name>CarryCard</name>
    <message>
        <source>Without a network</source>
        <translation>Sin red</translation>
    </message>
    <message>
        <source>In one file on a stick, sealed for one tablet or by a passphrase. It can be brought in twice without harm.</source>
        <translation>En un archivo en una memoria, sellado para una tableta o con una frase de paso. Recibirlo dos veces no hace daño.</translation>
    </message>
    <message>
        <source>A file has not arrived yet</source>
        <translation>Un archivo aún no ha llegado</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation>Seguir con él</translation>
    </message>
    <message>
        <source>Take this event with me</source>
        <translation>Llevarme este torneo</translation>
    </message>
    <message>
        <source>Hand players to a colleague</source>
        <translation>Dar jugadores a un colega</translation>
    </message>
    <message>
        <source>Everything, as a backup</source>
        <translation>Todo, como copia de seguridad</translation>
    </message>
    <message>
        <source>Bring in a file</source>
        <translation>Recibir un archivo</translation>
    </message>
    <message>
        <source>Made here</source>
        <translation>Hechos aquí</translation>
    </message>
    <message>
        <source>Words of this tablet’s key, for whoever brings in a file of it and does not know it: %1</source>
        <translation>Palabras de la clave de esta tableta, para quien reciba un archivo suyo y no la conozca: %1</translation>
    </message>
    <message>
        <source>Bundles and receipts (*.weavelog *.bundle *.receipt)</source>
        <translation>Paquetes y recibos (*.weavelog *.bundle *.receipt)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
</context>
<context>
    <name>CarryWords</name>
    <message>
        <source>The file could not be brought in</source>
        <translation>No se pudo recibir el archivo</translation>
    </message>
    <message>
        <source>The file could not be written</source>
        <translation>No se pudo escribir el archivo</translation>
    </message>
    <message>
        <source>Try again; if it stays, show the line below to whoever looks after the tablets.</source>
        <translation>Inténtelo otra vez; si sigue igual, muestre la línea de abajo a quien cuida las tabletas.</translation>
    </message>
    <message>
        <source>It was made by a newer Weavelog</source>
        <translation>Lo hizo un Weavelog más reciente</translation>
    </message>
    <message>
        <source>Update Weavelog on this tablet, then bring the file in again. Nothing was taken.</source>
        <translation>Actualice Weavelog en esta tableta y reciba el archivo de nuevo. No se tomó nada.</translation>
    </message>
    <message>
        <source>There is no room left</source>
        <translation>No queda espacio</translation>
    </message>
    <message>
        <source>Make room on the stick or on this tablet, then go on. What is there already stays.</source>
        <translation>Haga sitio en la memoria o en esta tableta y continúe. Lo que ya está se conserva.</translation>
    </message>
    <message>
        <source>The folder or stick is not there</source>
        <translation>La carpeta o la memoria no está</translation>
    </message>
    <message>
        <source>Put the stick in again and go on, or choose another place. Nothing is lost.</source>
        <translation>Vuelva a poner la memoria y continúe, o elija otro lugar. No se pierde nada.</translation>
    </message>
    <message>
        <source>There is a file of that name already</source>
        <translation>Ya hay un archivo con ese nombre</translation>
    </message>
    <message>
        <source>Choose another place; the file that is there stays as it is.</source>
        <translation>Elija otro lugar; el archivo que hay queda como está.</translation>
    </message>
    <message>
        <source>It does not open here</source>
        <translation>No se abre aquí</translation>
    </message>
    <message>
        <source>It is for another tablet, the passphrase is another one, or somebody altered it. Nothing was taken.</source>
        <translation>Es para otra tableta, la frase de paso es otra o alguien lo alteró. No se tomó nada.</translation>
    </message>
    <message>
        <source>It may not be taken in here</source>
        <translation>No puede recibirse aquí</translation>
    </message>
    <message>
        <source>It was not written</source>
        <translation>No se escribió</translation>
    </message>
    <message>
        <source>This receipt does not count</source>
        <translation>Este recibo no cuenta</translation>
    </message>
    <message>
        <source>The line below says why. What is known of the bundle stays as it was.</source>
        <translation>La línea de abajo dice por qué. Lo que se sabe del paquete queda como estaba.</translation>
    </message>
    <message>
        <source>The line below says why and what to do. Nothing was taken.</source>
        <translation>La línea de abajo dice por qué y qué hacer. No se tomó nada.</translation>
    </message>
    <message>
        <source>The line below says why and what to do.</source>
        <translation>La línea de abajo dice por qué y qué hacer.</translation>
    </message>
    <message>
        <source>The file is damaged, or is no bundle</source>
        <translation>El archivo está dañado o no es un paquete</translation>
    </message>
    <message>
        <source>Have it copied again from where it was made. What could be read is kept.</source>
        <translation>Haga que lo copien de nuevo donde se hizo. Lo que se pudo leer se conserva.</translation>
    </message>
    <message>
        <source>The file can&apos;t be read to its end</source>
        <translation>El archivo no se lee hasta el final</translation>
    </message>
    <message>
        <source>The stick or disk does not take the file</source>
        <translation>La memoria o el disco no acepta el archivo</translation>
    </message>
    <message>
        <source>Look at the stick, put it in again and go on. Nothing is lost.</source>
        <translation>Revise la memoria, vuelva a ponerla y continúe. No se pierde nada.</translation>
    </message>
    <message>
        <source>Something is missing or wrong</source>
        <translation>Falta algo o está mal</translation>
    </message>
    <message>
        <source>The line below says what.</source>
        <translation>La línea de abajo dice qué.</translation>
    </message>
    <message>
        <source>private, never goes to others</source>
        <translation>privado, nunca va a otros</translation>
    </message>
    <message>
        <source>withdrew the consent</source>
        <translation>retiró el consentimiento</translation>
    </message>
    <message>
        <source>agreed to one room only</source>
        <translation>solo aceptó una sala</translation>
    </message>
    <message>
        <source>this tablet</source>
        <translation>esta tableta</translation>
    </message>
    <message>
        <source>paired with this tablet</source>
        <translation>emparejado con esta tableta</translation>
    </message>
    <message>
        <source>on this tablet&apos;s list</source>
        <translation>en la lista de esta tableta</translation>
    </message>
    <message>
        <source>known by what it wrote</source>
        <translation>conocido por lo que escribió</translation>
    </message>
    <message>
        <source>not known here</source>
        <translation>desconocido aquí</translation>
    </message>
    <message>
        <source>taken off the list</source>
        <translation>retirado de la lista</translation>
    </message>
    <message>
        <source>Too short: at least eight characters, better four or five words.</source>
        <translation>Demasiado corta: al menos ocho caracteres, mejor cuatro o cinco palabras.</translation>
    </message>
    <message>
        <source>Easy to guess: a stranger with the file opens it. Take more words.</source>
        <translation>Fácil de adivinar: un extraño con el archivo lo abre. Use más palabras.</translation>
    </message>
    <message>
        <source>Good enough against whoever finds the stick.</source>
        <translation>Suficiente contra quien encuentre la memoria.</translation>
    </message>
    <message>
        <source>Hard to guess, also for somebody who tries for years.</source>
        <translation>Difícil de adivinar, incluso probando durante años.</translation>
    </message>
    <message>
        <source>not known to be at that event</source>
        <translation>no consta que esté en ese torneo</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CautionNotes</name>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
    <message>
        <source>Written beside it: %1</source>
        <translation>Escrito al lado: %1</translation>
    </message>
</context>
<context>
    <name>ChangesCard</name>
    <message>
        <source>Changed</source>
        <translation>Cambios</translation>
    </message>
    <message>
        <source>Nothing changed: same as last time</source>
        <translation>Sin cambios: igual que la última vez</translation>
    </message>
</context>
<context>
    <name>CheckRow</name>
    <message>
        <source>In order: %1</source>
        <translation>En orden: %1</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Dicho</translation>
    </message>
    <message>
        <source>Not in order: %1</source>
        <translation>No en orden: %1</translation>
    </message>
</context>
<context>
    <name>CheckSheet</name>
    <message>
        <source>Check: %1</source>
        <translation>Comprobación: %1</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Etiqueta %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
    <message>
        <source>A racket is checked once it is strung and before it is collected.</source>
        <translation>Una raqueta se comprueba cuando está encordada y antes de recogerse.</translation>
    </message>
    <message numerus="yes">
        <source>Done again: %n time(s)</source>
        <translation>
            <numerusform>Rehecho: %n vez</numerusform>
            <numerusform>Rehecho: %n veces</numerusform>
        </translation>
    </message>
    <message>
        <source>The rest is in order</source>
        <translation>El resto está en orden</translation>
    </message>
    <message>
        <source>All is in order</source>
        <translation>Todo está en orden</translation>
    </message>
    <message>
        <source>The racket goes back to</source>
        <translation>La raqueta vuelve a</translation>
    </message>
    <message>
        <source>Why it is done again</source>
        <translation>Por qué se rehace</translation>
    </message>
    <message>
        <source>Whoever strings it again reads this at the bench.</source>
        <translation>Quien la encuerde de nuevo lo lee en el puesto.</translation>
    </message>
    <message>
        <source>Back to: %1</source>
        <translation>Vuelve a: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) to look at</source>
        <translation>
            <numerusform>%n punto por mirar</numerusform>
            <numerusform>%n puntos por mirar</numerusform>
        </translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Comprobada</translation>
    </message>
    <message>
        <source>Tag %1: %2</source>
        <translation>Etiqueta %1: %2</translation>
    </message>
    <message>
        <source>Earlier checks</source>
        <translation>Comprobaciones anteriores</translation>
    </message>
</context>
<context>
    <name>CodeShown</name>
    <message>
        <source>At %1, until %2</source>
        <translation>En %1, hasta las %2</translation>
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
    <name>ConfirmScreen</name>
    <message>
        <source>Read-back for %1</source>
        <translation>Lectura para %1</translation>
    </message>
</context>
<context>
    <name>ConsentScreen</name>
    <message>
        <source>Consent of %1</source>
        <translation>Consentimiento de %1</translation>
    </message>
</context>
<context>
    <name>CsvWords</name>
    <message>
        <source>The file is larger than %1. Split it, or leave out what is not needed.</source>
        <translation>El archivo pasa de %1. Divídalo o quite lo que no haga falta.</translation>
    </message>
    <message>
        <source>Its letters can’t be read. Save the file as UTF-8.</source>
        <translation>Sus letras no se pueden leer. Guarde el archivo como UTF-8.</translation>
    </message>
    <message>
        <source>This is no text. Choose a table saved as CSV.</source>
        <translation>Esto no es texto. Elija una tabla guardada como CSV.</translation>
    </message>
    <message>
        <source>A letter can’t be read. Save the file as UTF-8, or choose its encoding.</source>
        <translation>Una letra no se puede leer. Guarde el archivo como UTF-8 o elija su codificación.</translation>
    </message>
    <message>
        <source>The file is empty. Choose one whose first line names the columns.</source>
        <translation>El archivo está vacío. Elija uno cuya primera línea nombre las columnas.</translation>
    </message>
    <message numerus="yes">
        <source>There are more than %n row(s). Split the file.</source>
        <translation>
            <numerusform>Hay más de %n fila. Divida el archivo.</numerusform>
            <numerusform>Hay más de %n filas. Divida el archivo.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>There are more than %n column(s). Leave out what is not needed.</source>
        <translation>
            <numerusform>Hay más de %n columna. Quite lo que no haga falta.</numerusform>
            <numerusform>Hay más de %n columnas. Quite lo que no haga falta.</numerusform>
        </translation>
    </message>
    <message>
        <source>The field is too long. Shorten it, or look for a missing quotation mark.</source>
        <translation>El campo es demasiado largo. Acórtelo o busque unas comillas que falten.</translation>
    </message>
    <message numerus="yes">
        <source>The row has %n field(s)</source>
        <translation>
            <numerusform>La fila tiene %n campo</numerusform>
            <numerusform>La fila tiene %n campos</numerusform>
        </translation>
    </message>
    <message>
        <source>the first line %1. A separator is missing or too many, or a field that holds one needs quotation marks.</source>
        <translation>la primera %1. Falta o sobra un separador, o un campo que contiene uno necesita comillas.</translation>
    </message>
    <message>
        <source>A quotation mark stands inside a field. Put the whole field in quotation marks and double those inside it.</source>
        <translation>Hay unas comillas dentro de un campo. Ponga el campo entero entre comillas y duplique las de dentro.</translation>
    </message>
    <message>
        <source>Text stands after the closing quotation mark. Double the quotation marks inside a field.</source>
        <translation>Hay texto tras las comillas de cierre. Duplique las comillas dentro de un campo.</translation>
    </message>
    <message>
        <source>A quotation mark opens here and is never closed.</source>
        <translation>Aquí se abren unas comillas que nunca se cierran.</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Línea %1</translation>
    </message>
    <message>
        <source>Line %1, column %2</source>
        <translation>Línea %1, columna %2</translation>
    </message>
</context>
<context>
    <name>DayLine</name>
    <message>
        <source>%1 min late</source>
        <translation>%1 min tarde</translation>
    </message>
    <message>
        <source>on court</source>
        <translation>en pista</translation>
    </message>
    <message>
        <source>on the machine now</source>
        <translation>ahora en la máquina</translation>
    </message>
    <message>
        <source>not as told</source>
        <translation>no como se dijo</translation>
    </message>
    <message>
        <source>court</source>
        <translation>pista</translation>
    </message>
    <message>
        <source>late %1′</source>
        <translation>%1′ tarde</translation>
    </message>
</context>
<context>
    <name>DayModel</name>
    <message>
        <source>there is no event yet</source>
        <translation>aún no hay torneo</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 con %2</translation>
    </message>
    <message>
        <source>%1: no shift has room any more; told was %2</source>
        <translation>%1: ya ningún turno tiene sitio; se dijo %2</translation>
    </message>
    <message>
        <source>%1: strung %2 at %3, told was %4</source>
        <translation>%1: encordada %2 con %3, se dijo %4</translation>
    </message>
    <message>
        <source> – late now</source>
        <translation> – ahora tarde</translation>
    </message>
    <message>
        <source>%1 has two rackets on the machine. Is %2 strung? Then tap it on.</source>
        <translation>%1 tiene dos raquetas en la máquina. ¿Está encordada %2? Entonces hazla avanzar.</translation>
    </message>
    <message>
        <source>%1 is on a machine of somebody who is not in the team.</source>
        <translation>%1 está en la máquina de alguien que no es del equipo.</translation>
    </message>
    <message>
        <source>%1 has no machine: theirs is out of order, and no other is free.</source>
        <translation>%1 no tiene máquina: la suya está averiada y no hay otra libre.</translation>
    </message>
    <message>
        <source>%1 is planned on %2: their own machine is out of order.</source>
        <translation>%1 está previsto en %2: su propia máquina está averiada.</translation>
    </message>
    <message>
        <source>There is no machine for %1.</source>
        <translation>No hay máquina para %1.</translation>
    </message>
    <message>
        <source>%1 waits for the player’s answer and is in no plan.</source>
        <translation>%1 espera la respuesta del jugador y no está en ningún plan.</translation>
    </message>
    <message>
        <source>No shift has room for %1.</source>
        <translation>Ningún turno tiene sitio para %1.</translation>
    </message>
    <message>
        <source>Nobody has said who is in the room when: everybody counts as there from 8 to 20 o’clock.</source>
        <translation>Nadie ha dicho quién está y cuándo: todos cuentan como presentes de 8 a 20 horas.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 will be late: ready %2</source>
        <translation>%1 llegará tarde: lista %2</translation>
    </message>
    <message>
        <source>%1 will be late: no shift has room</source>
        <translation>%1 llegará tarde: ningún turno tiene sitio</translation>
    </message>
    <message>
        <source>%1 withdrew</source>
        <translation>%1 se retiró</translation>
    </message>
    <message>
        <source>%1 moved from %2 to %3</source>
        <translation>%1 pasó de %2 a %3</translation>
    </message>
    <message>
        <source>%1: %3 strings it, not %2</source>
        <translation>%1: la encuerda %3, no %2</translation>
    </message>
    <message>
        <source>%1: ready %3 instead of %2</source>
        <translation>%1: lista %3 en vez de %2</translation>
    </message>
    <message>
        <source>%1 will be ready in time again</source>
        <translation>%1 estará otra vez lista a tiempo</translation>
    </message>
    <message>
        <source>%1: already ready %2</source>
        <translation>%1: ya lista %2</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n match(es) played</source>
        <translation>
            <numerusform>%1: %n partido jugado</numerusform>
            <numerusform>%1: %n partidos jugados</numerusform>
        </translation>
    </message>
    <message>
        <source>Came in: %1</source>
        <translation>Entraron: %1</translation>
    </message>
    <message>
        <source>Strung or gone: %1</source>
        <translation>Encordadas o fuera: %1</translation>
    </message>
    <message>
        <source>pair with its server, or make one</source>
        <translation>empareja con su servidor, o crea uno</translation>
    </message>
    <message>
        <source>%1 is in no plan: it is wanted, or went on the machine, at a time that can’t be. Look at its times.</source>
        <translation>%1 no está en ningún plan: la hora para la que se quiere, o a la que pasó a la máquina, no puede ser. Mira sus horas.</translation>
    </message>
</context>
<context>
    <name>DayMoney</name>
    <message>
        <source>A box can&apos;t hold less than nothing.</source>
        <translation>Una caja no puede contener menos que nada.</translation>
    </message>
</context>
<context>
    <name>DayStepper</name>
    <message>
        <source>%1: a day earlier</source>
        <translation>%1: un día antes</translation>
    </message>
    <message>
        <source>%1: a day later</source>
        <translation>%1: un día después</translation>
    </message>
</context>
<context>
    <name>DayView</name>
    <message>
        <source>There can be no plan of the day</source>
        <translation>No puede haber plan del día</translation>
    </message>
    <message>
        <source>Since you last looked (%1)</source>
        <translation>Desde la última vez (%1)</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) to string</source>
        <translation>
            <numerusform>%n raqueta por encordar</numerusform>
            <numerusform>%n raquetas por encordar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them late</source>
        <translation>
            <numerusform>%n de ellas tarde</numerusform>
            <numerusform>%n de ellas tarde</numerusform>
        </translation>
    </message>
    <message>
        <source>all in time</source>
        <translation>todas a tiempo</translation>
    </message>
    <message>
        <source>Plan anew</source>
        <translation>Planificar de nuevo</translation>
    </message>
    <message>
        <source>Not as it was told</source>
        <translation>No como se dijo</translation>
    </message>
    <message numerus="yes">
        <source>Tell the room (%n change(s))</source>
        <translation>
            <numerusform>Comunicar a la sala (%n cambio)</numerusform>
            <numerusform>Comunicar a la sala (%n cambios)</numerusform>
        </translation>
    </message>
    <message>
        <source>Tell the room this plan</source>
        <translation>Comunicar este plan a la sala</translation>
    </message>
    <message>
        <source>The room knows</source>
        <translation>La sala lo sabe</translation>
    </message>
    <message>
        <source>To be looked at</source>
        <translation>Para mirar</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Banco</translation>
    </message>
    <message>
        <source>On the machine, strung by about</source>
        <translation>En la máquina, encordada hacia</translation>
    </message>
    <message>
        <source>Strung</source>
        <translation>Encordada</translation>
    </message>
    <message>
        <source>Promised for</source>
        <translation>Prometida para</translation>
    </message>
    <message>
        <source>no time</source>
        <translation>sin hora</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s) late</source>
        <translation>
            <numerusform>%n minuto tarde</numerusform>
            <numerusform>%n minutos tarde</numerusform>
        </translation>
    </message>
    <message>
        <source>Check, stencil and bag are counted in. Ask the player, or move what can wait.</source>
        <translation>Control, plantilla y bolsa están contados. Pregunta al jugador o mueve lo que pueda esperar.</translation>
    </message>
    <message>
        <source>A rush from the court: it goes before all that waits.</source>
        <translation>Una urgencia de la pista: va antes que todo lo que espera.</translation>
    </message>
    <message>
        <source>Its home bench is %1; there it would be later.</source>
        <translation>Su banco fijo es %1; allí estaría más tarde.</translation>
    </message>
    <message>
        <source>The room was told something else.</source>
        <translation>A la sala se le dijo otra cosa.</translation>
    </message>
</context>
<context>
    <name>DeskFind</name>
    <message>
        <source>Desk</source>
        <translation>Recepción</translation>
    </message>
    <message>
        <source>No event yet: rackets get no tag numbers</source>
        <translation>Aún sin torneo: las raquetas no llevan número</translation>
    </message>
    <message>
        <source>New player</source>
        <translation>Jugador nuevo</translation>
    </message>
    <message>
        <source>Nobody of that name</source>
        <translation>Nadie con ese nombre</translation>
    </message>
    <message>
        <source>No player is known on this device</source>
        <translation>Este dispositivo no conoce a ningún jugador</translation>
    </message>
    <message>
        <source>Look at the spelling, or begin a new player with this name.</source>
        <translation>Revise la ortografía o empiece un jugador nuevo con este nombre.</translation>
    </message>
    <message>
        <source>Players come with an entry list, with an exchange, or are added here.</source>
        <translation>Los jugadores llegan con una lista de inscritos, con un intercambio, o se añaden aquí.</translation>
    </message>
    <message>
        <source>Whose rackets? Name or tag</source>
        <translation>¿De quién? Nombre o etiqueta</translation>
    </message>
    <message>
        <source>Scan a tag with the camera</source>
        <translation>Escanear una etiqueta con la cámara</translation>
    </message>
    <message>
        <source>Work on your own: make an event</source>
        <translation>Trabajar por su cuenta: crear un torneo</translation>
    </message>
    <message numerus="yes">
        <source>%n unfinished drop-off(s)</source>
        <translation>
            <numerusform>%n entrega sin terminar</numerusform>
            <numerusform>%n entregas sin terminar</numerusform>
        </translation>
    </message>
    <message>
        <source>Unfinished drop-offs</source>
        <translation>Entregas sin terminar</translation>
    </message>
</context>
<context>
    <name>DeskPlayer</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Ask everything</source>
        <translation>Preguntar todo</translation>
    </message>
    <message>
        <source>Take rackets in</source>
        <translation>Recibir raquetas</translation>
    </message>
    <message>
        <source>Same as last time</source>
        <translation>Igual que la última vez</translation>
    </message>
</context>
<context>
    <name>DeviceSheet</name>
    <message>
        <source>Shut out since %1. It comes in again with a new code; what it wrote stays.</source>
        <translation>Excluida desde el %1; vuelve a entrar con un código nuevo; lo que escribió se queda.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Its role</source>
        <translation>Su papel</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Jefe</translation>
    </message>
    <message>
        <source>Desk</source>
        <translation>Recepción</translation>
    </message>
    <message>
        <source>Stringer</source>
        <translation>Encordador</translation>
    </message>
    <message>
        <source>Reader</source>
        <translation>Lector</translation>
    </message>
    <message>
        <source>May do everything, invite tablets and shut them out.</source>
        <translation>Puede hacerlo todo, invitar a tabletas y excluirlas.</translation>
    </message>
    <message>
        <source>Takes rackets in and hands them out, keeps money, stock and plans. Does not change team, prices or lists of steps.</source>
        <translation>Recibe y entrega raquetas, lleva dinero, existencias y planes. No cambia el equipo, los precios ni las listas de pasos.</translation>
    </message>
    <message>
        <source>Strings, checks and takes rackets in. Does not change money, stock, plans or the event.</source>
        <translation>Encorda, comprueba y recibe raquetas. No cambia dinero, existencias, planes ni el torneo.</translation>
    </message>
    <message>
        <source>Sees everything that may come to this room, changes nothing.</source>
        <translation>Ve todo lo que puede llegar a esta sala, no cambia nada.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Yes, shut it out now</source>
        <translation>Sí, excluirla ahora</translation>
    </message>
    <message>
        <source>Shut it out: it is lost or not ours</source>
        <translation>Excluirla: perdida o ajena</translation>
    </message>
</context>
<context>
    <name>DevicesCard</name>
    <message>
        <source>Tablets of this room</source>
        <translation>Tabletas de esta sala</translation>
    </message>
    <message>
        <source>Touch one to give it another name or role, or to shut it out.</source>
        <translation>Toque una para darle otro nombre o papel, o para excluirla.</translation>
    </message>
    <message>
        <source>Needs a connection to the event server</source>
        <translation>Necesita conexión con el servidor del torneo</translation>
    </message>
    <message>
        <source>That was not done</source>
        <translation>Eso no se hizo</translation>
    </message>
    <message>
        <source>%1 (this tablet)</source>
        <translation>%1 (esta tableta)</translation>
    </message>
    <message>
        <source>shut out since %1</source>
        <translation>excluida desde el %1</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>desde el %1</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(s) came later</source>
        <translation>
            <numerusform>%n entrada llegó después</numerusform>
            <numerusform>%n entradas llegaron después</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DiscountSheet</name>
    <message>
        <source>Discount: %1</source>
        <translation>Descuento: %1</translation>
    </message>
    <message>
        <source>Discount</source>
        <translation>Descuento</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Say why; then choose how much.</source>
        <translation>Diga por qué; después elija cuánto.</translation>
    </message>
    <message>
        <source>A tenth off</source>
        <translation>Una décima parte menos</translation>
    </message>
    <message>
        <source>A fifth off</source>
        <translation>Una quinta parte menos</translation>
    </message>
    <message>
        <source>Free of charge</source>
        <translation>Gratis</translation>
    </message>
</context>
<context>
    <name>DoingsBar</name>
    <message>
        <source>I see</source>
        <translation>Entendido</translation>
    </message>
</context>
<context>
    <name>DrawModel</name>
    <message>
        <source>Last round of qualifying</source>
        <translation>Última ronda de clasificación</translation>
    </message>
    <message>
        <source>Qualifying, round %1</source>
        <translation>Clasificación, ronda %1</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Final</translation>
    </message>
    <message>
        <source>Semi-finals</source>
        <translation>Semifinales</translation>
    </message>
    <message>
        <source>Quarter-finals</source>
        <translation>Cuartos de final</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Ronda %1</translation>
    </message>
    <message>
        <source>wild card</source>
        <translation>invitación</translation>
    </message>
    <message>
        <source>qualifier</source>
        <translation>clasificado</translation>
    </message>
    <message>
        <source>lucky loser</source>
        <translation>repescado</translation>
    </message>
    <message>
        <source>alternate</source>
        <translation>suplente</translation>
    </message>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>%n plaza</numerusform>
            <numerusform>%n plazas</numerusform>
        </translation>
    </message>
    <message>
        <source>The file can&apos;t be read.</source>
        <translation>El archivo no se puede leer.</translation>
    </message>
    <message>
        <source>Choose another one.</source>
        <translation>Elija otro.</translation>
    </message>
    <message>
        <source>The file is larger than a draw can be.</source>
        <translation>El archivo es mayor de lo que puede ser un cuadro.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n win(s)</source>
        <translation>
            <numerusform>%1: %n victoria</numerusform>
            <numerusform>%1: %n victorias</numerusform>
        </translation>
    </message>
    <message>
        <source>Write round and match as 2/7.</source>
        <translation>Escribe ronda y partido como 2/7.</translation>
    </message>
</context>
<context>
    <name>DrawView</name>
    <message>
        <source>There is no draw yet</source>
        <translation>Todavía no hay cuadro</translation>
    </message>
    <message>
        <source>Bring it in from a table with a line for each place: line, player, and if they are known seed and rating.</source>
        <translation>Tráigalo de una tabla con una fila por plaza: line, player y, si se conocen, seed y rating.</translation>
    </message>
    <message>
        <source>Draw: %1</source>
        <translation>Cuadro: %1</translation>
    </message>
    <message>
        <source>Bring a draw in</source>
        <translation>Traer un cuadro</translation>
    </message>
    <message>
        <source>Something in this draw does not fit together</source>
        <translation>Algo no concuerda en este cuadro</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>Mostrar: %1</translation>
    </message>
    <message>
        <source>Which draw</source>
        <translation>Qué cuadro</translation>
    </message>
    <message>
        <source>Take this draw away</source>
        <translation>Quitar este cuadro</translation>
    </message>
    <message>
        <source>Draw taken away</source>
        <translation>Cuadro quitado</translation>
    </message>
    <message>
        <source>Standing: %1</source>
        <translation>Clasificación: %1</translation>
    </message>
</context>
<context>
    <name>DropOffDraft</name>
    <message>
        <source>Rackets taken in: %1</source>
        <translation>Raquetas recibidas: %1</translation>
    </message>
    <message>
        <source>another answer has come in</source>
        <translation>ha llegado otra respuesta</translation>
    </message>
    <message>
        <source>choose one of them and read back again</source>
        <translation>elija una de ellas y léalo de vuelta otra vez</translation>
    </message>
    <message>
        <source>a question was answered at another tablet meanwhile</source>
        <translation>entretanto se respondió una pregunta en otra tableta</translation>
    </message>
    <message>
        <source>look at the answer and read back again</source>
        <translation>mire la respuesta y léalo de vuelta otra vez</translation>
    </message>
</context>
<context>
    <name>DropOffPage</name>
    <message>
        <source>Player</source>
        <translation>Jugador</translation>
    </message>
    <message>
        <source>Strings</source>
        <translation>Cuerdas</translation>
    </message>
    <message>
        <source>Tension</source>
        <translation>Tensión</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Final</translation>
    </message>
    <message>
        <source>New player</source>
        <translation>Jugador nuevo</translation>
    </message>
    <message>
        <source>Ask what is known; everything but strings and tensions can wait.</source>
        <translation>Pregunte lo que se sepa; todo salvo cuerdas y tensiones puede esperar.</translation>
    </message>
    <message>
        <source>As last time. Say what is different.</source>
        <translation>Como la última vez. Diga qué cambia.</translation>
    </message>
    <message>
        <source>%1, page %2 of 4</source>
        <translation>%1, página %2 de 4</translation>
    </message>
    <message>
        <source>Something else is different</source>
        <translation>Cambia otra cosa</translation>
    </message>
    <message>
        <source>The player is not here: store unconfirmed</source>
        <translation>El jugador no está: guardar sin confirmar</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Leave it unfinished</source>
        <translation>Dejarlo sin terminar</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Read back</source>
        <translation>Leer de vuelta</translation>
    </message>
</context>
<context>
    <name>EventModel</name>
    <message>
        <source>Give the event a name.</source>
        <translation>Dé un nombre al torneo.</translation>
    </message>
    <message>
        <source>Say which day.</source>
        <translation>Diga qué día.</translation>
    </message>
    <message>
        <source>No such day; write it as %1.</source>
        <translation>No existe ese día; escríbalo como %1.</translation>
    </message>
    <message>
        <source>It lies before the first day.</source>
        <translation>Es anterior al primer día.</translation>
    </message>
    <message>
        <source>No such currency; write its three letters, such as EUR.</source>
        <translation>No existe esa moneda; escriba sus tres letras, por ejemplo EUR.</translation>
    </message>
    <message>
        <source>No such time zone; write it as Europe/Lisbon.</source>
        <translation>No existe esa zona horaria; escríbala como Europe/Lisbon.</translation>
    </message>
</context>
<context>
    <name>EventSheet</name>
    <message>
        <source>Event changed</source>
        <translation>Torneo cambiado</translation>
    </message>
    <message>
        <source>Name and days of the event</source>
        <translation>Nombre y días del torneo</translation>
    </message>
    <message>
        <source>Make an event</source>
        <translation>Crear un torneo</translation>
    </message>
    <message>
        <source>It is kept on this tablet and needs no network. Rackets get their numbers, and room, bench and money are there at once.</source>
        <translation>Queda en esta tableta y no necesita red. Las raquetas reciben sus números, y la sala, el banco y el dinero están ahí al momento.</translation>
    </message>
    <message>
        <source>Name of the event</source>
        <translation>Nombre del torneo</translation>
    </message>
    <message>
        <source>Stringing at …</source>
        <translation>Encordado en …</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Primer día</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Último día</translation>
    </message>
    <message>
        <source>Place, if wanted</source>
        <translation>Lugar, si se quiere</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Su nombre</translation>
    </message>
    <message>
        <source>Promises count with whoever is on the team, from 8 to 20 o&apos;clock until shifts are planned.</source>
        <translation>Las promesas cuentan con quien está en el equipo, de 8 a 20 horas hasta que se planeen turnos.</translation>
    </message>
    <message>
        <source>Currency, such as EUR</source>
        <translation>Moneda, por ejemplo EUR</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zona horaria</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) taken in before belong to it</source>
        <translation>
            <numerusform>%n raqueta recibida antes pertenece a él</numerusform>
            <numerusform>%n raquetas recibidas antes pertenecen a él</numerusform>
        </translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Make the event</source>
        <translation>Crear el torneo</translation>
    </message>
</context>
<context>
    <name>EventsCard</name>
    <message>
        <source>Event</source>
        <translation>Torneo</translation>
    </message>
    <message>
        <source>There is no event yet</source>
        <translation>Aún no hay torneo</translation>
    </message>
    <message>
        <source>of the event server</source>
        <translation>del servidor del torneo</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) here</source>
        <translation>
            <numerusform>%n raqueta aquí</numerusform>
            <numerusform>%n raquetas aquí</numerusform>
        </translation>
    </message>
    <message>
        <source>Change name and days</source>
        <translation>Cambiar nombre y días</translation>
    </message>
    <message>
        <source>Make an event</source>
        <translation>Crear un torneo</translation>
    </message>
    <message>
        <source>Which one is shown</source>
        <translation>Cuál se muestra</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>Desk, room, bench, plan, money, stock and team show this one. The others stay here as they are.</source>
        <translation>Recepción, sala, banco, plan, dinero, existencias y equipo muestran este. Los demás quedan aquí como están.</translation>
    </message>
</context>
<context>
    <name>ExchangeModel</name>
    <message>
        <source>That is no whole code. Scan it once more, or type the five words.</source>
        <translation>No es un código completo. Escanéelo otra vez o escriba las cinco palabras.</translation>
    </message>
    <message>
        <source>That is no address. One looks like desk.local or 192.168.1.20:26110.</source>
        <translation>No es una dirección. Es como desk.local o 192.168.1.20:26110.</translation>
    </message>
    <message>
        <source>Word %1 can’t be one of a code. Each has five letters; compare it letter by letter.</source>
        <translation>La palabra %1 no puede ser de un código. Cada una tiene cinco letras; compárela letra por letra.</translation>
    </message>
    <message>
        <source>A code has five words of five letters each. Compare them with the other screen.</source>
        <translation>Un código tiene cinco palabras de cinco letras. Compárelas con la otra pantalla.</translation>
    </message>
</context>
<context>
    <name>ExchangeOverview</name>
    <message>
        <source>Exchange</source>
        <translation>Intercambio</translation>
    </message>
    <message>
        <source>Everything works without a network; here devices bring each other up to date.</source>
        <translation>Todo funciona sin red; aquí los dispositivos se ponen al día entre sí.</translation>
    </message>
    <message>
        <source>This tablet&apos;s clock or theirs is off by %1</source>
        <translation>El reloj de esta tableta o el suyo se desvía %1</translation>
    </message>
    <message>
        <source>This tablet&apos;s clock is ahead. Look at both and set the wrong one; nothing is lost meanwhile.</source>
        <translation>El reloj de esta tableta va adelantado. Mire ambos y ajuste el que esté mal; nada se pierde entretanto.</translation>
    </message>
    <message>
        <source>A clock far ahead: %1</source>
        <translation>Un reloj muy adelantado: %1</translation>
    </message>
    <message>
        <source>What was written there carries a time to come. Everything is kept; set that device&apos;s clock before it is used again.</source>
        <translation>Lo que se escribió allí lleva una hora futura. Todo se conserva; ponga en hora ese dispositivo antes de volver a usarlo.</translation>
    </message>
    <message>
        <source>Some books could not be made equal</source>
        <translation>Algunos libros no se pudieron igualar</translation>
    </message>
    <message>
        <source>One side may not hand them on, or holds them otherwise. Nothing is lost and everything else has crossed; compare those players at the desk.</source>
        <translation>Un lado no puede entregarlos o los tiene de otra forma. No se ha perdido nada y todo lo demás ha pasado; compare esos jugadores en recepción.</translation>
    </message>
    <message>
        <source>An arrival is under way</source>
        <translation>Hay una llegada en curso</translation>
    </message>
    <message>
        <source>Arriving at an event</source>
        <translation>Llegada a un torneo</translation>
    </message>
    <message>
        <source>It goes on where it stopped.</source>
        <translation>Sigue donde se detuvo.</translation>
    </message>
    <message>
        <source>Step by step: the event server, its entry list, who of it is known here, what goes across, and what came of it.</source>
        <translation>Paso a paso: el servidor del torneo, su lista de inscritos, quién es conocido aquí, qué se envía y qué resultó.</translation>
    </message>
    <message>
        <source>Go on with the arrival</source>
        <translation>Seguir con la llegada</translation>
    </message>
    <message>
        <source>Arrive</source>
        <translation>Llegar</translation>
    </message>
    <message>
        <source>Copied devices</source>
        <translation>Dispositivos copiados</translation>
    </message>
    <message>
        <source>The data of one device was copied, and both copies wrote on. The words of both are kept; where they differ, a question is open. Go on with one of them only.</source>
        <translation>Los datos de un dispositivo se copiaron y las dos copias siguieron escribiendo. Se conserva lo dicho en ambas; donde difieren hay una pregunta abierta. Siga solo con una de ellas.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n book(s)</source>
        <translation>
            <numerusform>%1: %n libro</numerusform>
            <numerusform>%1: %n libros</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Set aside: %n entry(s)</source>
        <translation>
            <numerusform>Apartado: %n entrada</numerusform>
            <numerusform>Apartado: %n entradas</numerusform>
        </translation>
    </message>
    <message>
        <source>They came in but break a rule, so they are kept and not taken over. Show them to whoever looks after the event server.</source>
        <translation>Llegaron pero incumplen una regla: se guardan y no se aplican. Muéstrelas a quien cuide del servidor del torneo.</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n minuto</numerusform>
            <numerusform>%n minutos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n hora</numerusform>
            <numerusform>%n horas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message>
        <source>The other clock is ahead. Look at both and set the wrong one; nothing is lost meanwhile.</source>
        <translation>El otro reloj va adelantado. Mire ambos y ponga en hora el que esté mal; mientras tanto no se pierde nada.</translation>
    </message>
    <message>
        <source>Pair with another one</source>
        <translation>Emparejar con otro</translation>
    </message>
    <message>
        <source>This tablet shows %1</source>
        <translation>Esta tableta muestra %1</translation>
    </message>
    <message>
        <source>The event server’s is %1. Both are kept here; %2 does not go to the server.</source>
        <translation>El del servidor es %1. Los dos quedan aquí; %2 no va al servidor.</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>Mostrar %1</translation>
    </message>
</context>
<context>
    <name>ExchangeState</name>
    <message>
        <source>No event server yet</source>
        <translation>Aún sin servidor del torneo</translation>
    </message>
    <message>
        <source>Work goes on without one. Pair when you arrive at an event.</source>
        <translation>El trabajo sigue sin él. Empareje al llegar a un torneo.</translation>
    </message>
    <message>
        <source>Pairing ...</source>
        <translation>Emparejando ...</translation>
    </message>
    <message>
        <source>Not connected; tried again in the background.</source>
        <translation>Sin conexión; se reintenta en segundo plano.</translation>
    </message>
    <message>
        <source>Greeting ...</source>
        <translation>Saludando ...</translation>
    </message>
    <message>
        <source>Connected, bringing each other up to date.</source>
        <translation>Conectado, poniéndose al día.</translation>
    </message>
    <message>
        <source>Connected and up to date; changes cross at once.</source>
        <translation>Conectado y al día; los cambios pasan al instante.</translation>
    </message>
    <message>
        <source>This tablet&apos;s role there: %1</source>
        <translation>Papel de esta tableta: %1</translation>
    </message>
    <message>
        <source>Players coming in; those that are here can be used already</source>
        <translation>Llegan jugadores; los que están ya se pueden usar</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Nothing waits to be sent.</source>
        <translation>Nada espera ser enviado.</translation>
    </message>
    <message numerus="yes">
        <source>More than %n action(s) wait to be sent.</source>
        <translation>
            <numerusform>Más de %n acción espera ser enviada.</numerusform>
            <numerusform>Más de %n acciones esperan ser enviadas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n action(s) wait to be sent.</source>
        <translation>
            <numerusform>%n acción espera ser enviada.</numerusform>
            <numerusform>%n acciones esperan ser enviadas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Last agreement: %1, over %n book(s). Both screens show the same words.</source>
        <translation>
            <numerusform>Último acuerdo: %1, sobre %n libro. Ambas pantallas muestran las mismas palabras.</numerusform>
            <numerusform>Último acuerdo: %1, sobre %n libros. Ambas pantallas muestran las mismas palabras.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) stay on this tablet only. Whoever plays here is ticked under “Arrive”.</source>
        <translation>
            <numerusform>%n jugador queda solo en esta tableta. Marque en «Llegar» a quienes juegan aquí.</numerusform>
            <numerusform>%n jugadores quedan solo en esta tableta. Marque en «Llegar» a quienes juegan aquí.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ExchangeTrouble</name>
    <message>
        <source>The code does not hold</source>
        <translation>El código no es válido</translation>
    </message>
    <message>
        <source>The code has expired</source>
        <translation>El código ha caducado</translation>
    </message>
    <message>
        <source>The other side speaks a newer protocol</source>
        <translation>El otro lado habla un protocolo más nuevo</translation>
    </message>
    <message>
        <source>A clock is too far off</source>
        <translation>Un reloj está demasiado desviado</translation>
    </message>
    <message>
        <source>This tablet&apos;s disk is full</source>
        <translation>El disco de esta tableta está lleno</translation>
    </message>
    <message>
        <source>The exchange has stopped</source>
        <translation>El intercambio se ha detenido</translation>
    </message>
    <message>
        <source>It is not the one this tablet was paired with, or it was set up anew. Ask the head of the room, and pair again only if that is so.</source>
        <translation>No es el que se emparejó con esta tableta, o se instaló de nuevo. Pregunte al jefe de la sala y empareje otra vez solo si es así.</translation>
    </message>
    <message>
        <source>Ask the head of the room: this tablet may have been taken off the list, or the code was used already.</source>
        <translation>Pregunte al jefe de la sala: quizá esta tableta se quitó de la lista, o el código ya se usó.</translation>
    </message>
    <message>
        <source>Update Weavelog on the older device. Work goes on until then.</source>
        <translation>Actualice Weavelog en el dispositivo más antiguo. Hasta entonces el trabajo sigue.</translation>
    </message>
    <message>
        <source>Make room; nothing that was confirmed is lost. Then try again.</source>
        <translation>Haga sitio; nada de lo confirmado se pierde. Luego reintente.</translation>
    </message>
    <message>
        <source>Try now</source>
        <translation>Intentar ahora</translation>
    </message>
    <message>
        <source>The other side is out of reach</source>
        <translation>El otro lado no está al alcance</translation>
    </message>
    <message>
        <source>The other side shows another certificate</source>
        <translation>El otro lado muestra otro certificado</translation>
    </message>
    <message>
        <source>The other side does not know this tablet</source>
        <translation>El otro lado no conoce esta tableta</translation>
    </message>
    <message>
        <source>The other side refuses this tablet</source>
        <translation>El otro lado rechaza esta tableta</translation>
    </message>
    <message>
        <source>Work goes on; this tablet tries again by itself. Are both in one network, and is the address right?</source>
        <translation>El trabajo sigue; esta tableta lo intenta sola otra vez. ¿Están ambos en la misma red y es correcta la dirección?</translation>
    </message>
    <message>
        <source>Ask for a new code and pair again. Nothing on this tablet is lost.</source>
        <translation>Pida un código nuevo y empareje otra vez. En esta tableta no se pierde nada.</translation>
    </message>
    <message>
        <source>Compare it with the other screen word by word, or ask for a new one.</source>
        <translation>Compárelo palabra por palabra con la otra pantalla o pida uno nuevo.</translation>
    </message>
    <message>
        <source>Ask for a new one: a code is good for fifteen minutes and for one tablet.</source>
        <translation>Pida uno nuevo: un código vale quince minutos y para una tableta.</translation>
    </message>
    <message>
        <source>Set the clock of this tablet, and have a look at the other one.</source>
        <translation>Ponga en hora esta tableta y mire también el otro reloj.</translation>
    </message>
    <message>
        <source>Try again; if it stays, show the line below to whoever looks after the tablets.</source>
        <translation>Inténtelo otra vez; si sigue, muestre la línea de abajo a quien cuide de las tabletas.</translation>
    </message>
</context>
<context>
    <name>FactsBeside</name>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Nacimiento</translation>
    </message>
    <message>
        <source>Country</source>
        <translation>País</translation>
    </message>
    <message>
        <source>Rackets</source>
        <translation>Raquetas</translation>
    </message>
    <message>
        <source>Last setup</source>
        <translation>Último ajuste</translation>
    </message>
    <message>
        <source>Last seen</source>
        <translation>Última vez</translation>
    </message>
    <message>
        <source>On the entry list</source>
        <translation>En la lista de inscritos</translation>
    </message>
    <message>
        <source>Known here</source>
        <translation>Conocido aquí</translation>
    </message>
</context>
<context>
    <name>FaultPage</name>
    <message>
        <source>What this device holds cannot be opened</source>
        <translation>No se puede abrir lo que guarda este dispositivo</translation>
    </message>
    <message>
        <source>Nothing was changed. Mend it, then start the app again.</source>
        <translation>No se ha cambiado nada. Corríjalo y vuelva a abrir la aplicación.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
</context>
<context>
    <name>FieldsSheet</name>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
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
    <message>
        <source>This is no figure. Between %1 and %2 %3</source>
        <translation>Eso no es un número. Entre %1 y %2 %3</translation>
    </message>
</context>
<context>
    <name>FindingCard</name>
    <message>
        <source>The player has not answered yet</source>
        <translation>Aún no hay respuesta</translation>
    </message>
    <message>
        <source>Two different answers were taken: ask again</source>
        <translation>Se anotaron dos respuestas distintas: pregunte de nuevo</translation>
    </message>
    <message>
        <source>The player said not to string it</source>
        <translation>La respuesta fue: no encordar</translation>
    </message>
    <message>
        <source>Found earlier: %1</source>
        <translation>Encontrado antes: %1</translation>
    </message>
    <message>
        <source>Proposed: %1</source>
        <translation>Propuesto: %1</translation>
    </message>
    <message>
        <source>Answer: %1</source>
        <translation>Respuesta: %1</translation>
    </message>
    <message>
        <source>Ask again</source>
        <translation>Preguntar de nuevo</translation>
    </message>
    <message>
        <source>Ask the player</source>
        <translation>Preguntar</translation>
    </message>
    <message>
        <source>Go on against it ...</source>
        <translation>Seguir a pesar de ello ...</translation>
    </message>
    <message>
        <source>Go on without it ...</source>
        <translation>Seguir sin respuesta ...</translation>
    </message>
    <message>
        <source>It is put right</source>
        <translation>Está arreglado</translation>
    </message>
</context>
<context>
    <name>FindingForm</name>
    <message>
        <source>Tap where it is</source>
        <translation>Toque el sitio</translation>
    </message>
    <message>
        <source>Choose what it is</source>
        <translation>Elija qué es</translation>
    </message>
    <message>
        <source>Write what it is</source>
        <translation>Escriba qué es</translation>
    </message>
    <message>
        <source>Choose what you propose</source>
        <translation>Elija qué propone</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Tap the drawing, or choose here</source>
        <translation>Toque el dibujo o elija aquí</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>What is proposed to the player</source>
        <translation>Qué se propone</translation>
    </message>
    <message>
        <source>Nothing, only noted</source>
        <translation>Nada, solo anotado</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Anotar: %1</translation>
    </message>
    <message>
        <source>Noted: %1</source>
        <translation>Anotado: %1</translation>
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
        <translation>Plantillas y notas</translation>
    </message>
    <message>
        <source>Racket stencil</source>
        <translation>Plantilla de la raqueta</translation>
    </message>
    <message>
        <source>Its ink</source>
        <translation>Su tinta</translation>
    </message>
    <message>
        <source>String stencil</source>
        <translation>Plantilla de la cuerda</translation>
    </message>
    <message>
        <source>Dampener</source>
        <translation>Antivibrador</translation>
    </message>
    <message>
        <source>Overgrip</source>
        <translation>Sobregrip</translation>
    </message>
    <message>
        <source>Brought by</source>
        <translation>Traídas por</translation>
    </message>
    <message>
        <source>May be collected by</source>
        <translation>Puede recogerlas</translation>
    </message>
    <message>
        <source>Note to the stringer</source>
        <translation>Nota al encordador</translation>
    </message>
</context>
<context>
    <name>ForecastModel</name>
    <message>
        <source>not known yet</source>
        <translation>aún no se sabe</translation>
    </message>
</context>
<context>
    <name>ForecastView</name>
    <message>
        <source>There can be no forecast</source>
        <translation>No puede haber previsión</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Calculando …</translation>
    </message>
    <message>
        <source>Some %1 rackets are still to come (eight times of ten between %2 and %3), %4 for each player and match. Estimates, from the draws and from what came so far.</source>
        <translation>Aún vendrán unas %1 raquetas (ocho de cada diez veces entre %2 y %3), %4 por jugador y partido. Estimaciones según los cuadros y lo que ha llegado hasta ahora.</translation>
    </message>
    <message>
        <source>Rackets, by day</source>
        <translation>Raquetas, por día</translation>
    </message>
    <message>
        <source>Tap a day for its hours</source>
        <translation>Toca un día para ver sus horas</translation>
    </message>
    <message numerus="yes">
        <source>%n bench(es)</source>
        <translation>
            <numerusform>%n banco</numerusform>
            <numerusform>%n bancos</numerusform>
        </translation>
    </message>
    <message>
        <source>Rackets brought in each hour, and the benches on which they are ready within three hours</source>
        <translation>Raquetas por hora y los bancos en que están listas en tres horas</translation>
    </message>
    <message>
        <source>String, metres of all days</source>
        <translation>Cordaje, metros de todos los días</translation>
    </message>
    <message>
        <source>By what each player had most at this event</source>
        <translation>Según lo que cada jugador más usó aquí</translation>
    </message>
</context>
<context>
    <name>ForgetSheet</name>
    <message>
        <source>Forget %1?</source>
        <translation>¿Olvidar a %1?</translation>
    </message>
    <message>
        <source>This can&apos;t be undone</source>
        <translation>Esto no se puede deshacer</translation>
    </message>
    <message>
        <source>Setups, rackets, jobs, notes and the name are erased on this device now, and on every other device at its next exchange. Only a mark stays that keeps them from coming back.</source>
        <translation>Los ajustes, raquetas, encordados, notas y el nombre se borran ahora en este dispositivo, y en cada uno de los demás en su próximo intercambio. Solo queda una marca que impide que vuelvan.</translation>
    </message>
    <message>
        <source>Entry lists of events stay as they are.</source>
        <translation>Las listas de inscritos de los torneos quedan como están.</translation>
    </message>
    <message>
        <source>The player has asked for it</source>
        <translation>El jugador lo ha pedido</translation>
    </message>
    <message>
        <source>Forget this player</source>
        <translation>Olvidar a este jugador</translation>
    </message>
    <message numerus="yes">
        <source>All %n books of this person that are linked go together.</source>
        <translation>
            <numerusform>El %n libro vinculado de esta persona va junto.</numerusform>
            <numerusform>Los %n libros vinculados de esta persona van juntos.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FrameDrawing</name>
    <message>
        <source>Drawing of the frame, 12 o&apos;clock at the head</source>
        <translation>Dibujo del marco, las 12 en la cabeza</translation>
    </message>
    <message>
        <source>The arrow keys choose a place; so does the list of places.</source>
        <translation>Las flechas eligen un sitio, igual que la lista de sitios.</translation>
    </message>
</context>
<context>
    <name>FrameNotes</name>
    <message>
        <source>Frame: %1</source>
        <translation>Marco: %1</translation>
    </message>
</context>
<context>
    <name>FrameQuestionScreen</name>
    <message>
        <source>Question to %1 about the frame</source>
        <translation>Pregunta a %1 sobre el marco</translation>
    </message>
    <message>
        <source>Answer noted</source>
        <translation>Respuesta anotada</translation>
    </message>
    <message>
        <source>This was answered elsewhere meanwhile</source>
        <translation>Entretanto se respondió en otro lugar</translation>
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
    <message>
        <source>String not said</source>
        <translation>Cuerda sin decir</translation>
    </message>
</context>
<context>
    <name>GiveCardModel</name>
    <message>
        <source>card of %1</source>
        <translation>tarjeta de %1</translation>
    </message>
</context>
<context>
    <name>GiveCardSheet</name>
    <message>
        <source>Card of %1</source>
        <translation>Tarjeta de %1</translation>
    </message>
    <message>
        <source>There is no card</source>
        <translation>No hay tarjeta</translation>
    </message>
    <message>
        <source>The player did not agree that this goes to others. Ask, and record the answer under Consent first.</source>
        <translation>Falta el acuerdo para que esto llegue a otros. Pregunte y anote antes la respuesta en Consentimiento.</translation>
    </message>
    <message>
        <source>Scan it where the next racket is strung. Whoever sees it can read it.</source>
        <translation>Escanéela donde se encuerde la próxima raqueta. Quien la vea puede leerla.</translation>
    </message>
    <message>
        <source>Signed by %1, as of %2</source>
        <translation>Firmada por %1, a fecha de %2</translation>
    </message>
    <message>
        <source>What is on it</source>
        <translation>Lo que contiene</translation>
    </message>
    <message>
        <source>Older setups and rackets for which there was no room: %1</source>
        <translation>Ajustes anteriores y raquetas sin sitio: %1</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>En papel</translation>
    </message>
    <message>
        <source>Save as picture</source>
        <translation>Guardar como imagen</translation>
    </message>
    <message>
        <source>Save as text</source>
        <translation>Guardar como texto</translation>
    </message>
    <message>
        <source>Copy the text</source>
        <translation>Copiar el texto</translation>
    </message>
    <message>
        <source>The picture is saved</source>
        <translation>La imagen está guardada</translation>
    </message>
    <message>
        <source>The text is saved</source>
        <translation>El texto está guardado</translation>
    </message>
    <message>
        <source>The text is copied</source>
        <translation>El texto está copiado</translation>
    </message>
    <message>
        <source>The card was not saved</source>
        <translation>La tarjeta no se guardó</translation>
    </message>
</context>
<context>
    <name>GoOnSheet</name>
    <message>
        <source>Go on without the player&apos;s word</source>
        <translation>Seguir sin conformidad</translation>
    </message>
    <message>
        <source>Your name and your reason stay beside this racket. A damaged frame can break under tension; the maker&apos;s advice and the rules of the place come first.</source>
        <translation>Su nombre y su motivo quedan junto a esta raqueta. Un marco dañado puede romperse bajo tensión; el consejo del fabricante y las reglas del lugar van primero.</translation>
    </message>
    <message>
        <source>Who answers for it</source>
        <translation>Quién responde de ello</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>I answer for it</source>
        <translation>Respondo de ello</translation>
    </message>
    <message>
        <source>Give a name and a reason</source>
        <translation>Dé un nombre y un motivo</translation>
    </message>
    <message>
        <source>Going on: %1</source>
        <translation>Se sigue: %1</translation>
    </message>
    <message>
        <source>This was answered elsewhere meanwhile</source>
        <translation>Entretanto se respondió en otro lugar</translation>
    </message>
    <message>
        <source>Nothing is to be answered here now</source>
        <translation>Aquí ya no hay nada que responder</translation>
    </message>
</context>
<context>
    <name>HostModel</name>
    <message>
        <source>This tablet is in no network</source>
        <translation>Esta tableta no está en ninguna red</translation>
    </message>
    <message>
        <source>Others can&apos;t reach this tablet</source>
        <translation>Otros no pueden llegar a esta tableta</translation>
    </message>
    <message>
        <source>Join the Wi-Fi that the others are in, or open one on this tablet.</source>
        <translation>Únase a la wifi de los demás o abra una en esta tableta.</translation>
    </message>
    <message>
        <source>Try again; if it stays, show the line below to whoever looks after the tablets.</source>
        <translation>Inténtelo otra vez; si sigue igual, muestre la línea de abajo a quien cuida las tabletas.</translation>
    </message>
    <message>
        <source>both agree</source>
        <translation>ambas coinciden</translation>
    </message>
    <message>
        <source>being brought up to date</source>
        <translation>poniéndose al día</translation>
    </message>
</context>
<context>
    <name>HostPart</name>
    <message>
        <source>What they get</source>
        <translation>Lo que reciben</translation>
    </message>
    <message>
        <source>This event</source>
        <translation>Este torneo</translation>
    </message>
    <message>
        <source>Chosen players</source>
        <translation>Jugadores elegidos</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nada</translation>
    </message>
    <message>
        <source>%1 and its players; they work at it with this tablet, and both see what the other does.</source>
        <translation>%1 y sus jugadores; trabajan en él con esta tableta y ambos ven lo que hace el otro.</translation>
    </message>
    <message>
        <source>The players that are ticked here, and nobody else: they do not even learn of others.</source>
        <translation>Los jugadores marcados aquí y nadie más: de otros ni siquiera se enteran.</translation>
    </message>
    <message>
        <source>Nothing: what they bring comes here, and they learn of nobody.</source>
        <translation>Nada: lo que traigan llega aquí, y no se enteran de nadie.</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>Others reach this tablet at %1</source>
        <translation>Otros encuentran esta tableta en %1</translation>
    </message>
    <message>
        <source>They get: %1</source>
        <translation>Reciben: %1</translation>
    </message>
    <message>
        <source>Nobody is here yet. Without a code may come: %1</source>
        <translation>Aún no hay nadie. Sin código pueden venir: %1</translation>
    </message>
    <message>
        <source>Nobody is here yet. Make a code; on the other tablet it is taken under Exchange, Pair.</source>
        <translation>Aún no hay nadie. Haga un código; en la otra tableta se toma en Intercambio, Emparejar.</translation>
    </message>
    <message>
        <source>The next tablet</source>
        <translation>La próxima tableta</translation>
    </message>
    <message>
        <source>Gets and brings</source>
        <translation>Recibe y trae</translation>
    </message>
    <message>
        <source>Only gets</source>
        <translation>Solo recibe</translation>
    </message>
    <message>
        <source>Code of this tablet</source>
        <translation>Código de esta tableta</translation>
    </message>
    <message>
        <source>Make a code</source>
        <translation>Hacer un código</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
</context>
<context>
    <name>HostsCard</name>
    <message>
        <source>Forget %1</source>
        <translation>Olvidar %1</translation>
    </message>
    <message>
        <source>The players and jobs stay on this tablet. To exchange with it again you need a new code.</source>
        <translation>Los jugadores y encordados quedan en esta tableta. Para intercambiar de nuevo hace falta otro código.</translation>
    </message>
    <message>
        <source>Forget it</source>
        <translation>Olvidarlo</translation>
    </message>
    <message>
        <source>Paired with</source>
        <translation>Emparejado con</translation>
    </message>
</context>
<context>
    <name>InspectionModel</name>
    <message>
        <source>put right by %1, %2</source>
        <translation>arreglado por %1, %2</translation>
    </message>
    <message>
        <source>said by %1, taken by %2, %3</source>
        <translation>dicho por %1, anotado por %2, %3</translation>
    </message>
    <message>
        <source>%1 answers for going on, %2: %3</source>
        <translation>%1 responde de seguir, %2: %3</translation>
    </message>
    <message>
        <source>The player&apos;s answer: %1</source>
        <translation>Respuesta: %1</translation>
    </message>
    <message>
        <source>It is not there any more.</source>
        <translation>Ya no está.</translation>
    </message>
    <message>
        <source>Two different answers were taken: ask again.</source>
        <translation>Se anotaron dos respuestas distintas: pregunte de nuevo.</translation>
    </message>
    <message>
        <source>this was answered elsewhere meanwhile: %1</source>
        <translation>entretanto se respondió en otro lugar: %1</translation>
    </message>
    <message>
        <source>ask again if it does not hold</source>
        <translation>pregunte de nuevo si no vale</translation>
    </message>
</context>
<context>
    <name>InspectionSheet</name>
    <message>
        <source>Tag %1, %2</source>
        <translation>Etiqueta %1, %2</translation>
    </message>
    <message>
        <source>Frame: %1</source>
        <translation>Marco: %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
    <message>
        <source>I see</source>
        <translation>Entendido</translation>
    </message>
    <message>
        <source>This racket is past its inspection. Step it back with a reason to note something new.</source>
        <translation>Esta raqueta ya pasó la revisión. Para anotar algo nuevo, devuélvala atrás con un motivo.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Su nombre</translation>
    </message>
    <message>
        <source>It stands beside what you find and the answers that you take.</source>
        <translation>Figura junto a lo que encuentra y a las respuestas que anota.</translation>
    </message>
    <message>
        <source>Nothing new on the frame</source>
        <translation>Nada nuevo en el marco</translation>
    </message>
    <message>
        <source>The frame is sound</source>
        <translation>El marco está bien</translation>
    </message>
    <message>
        <source>%1: inspected</source>
        <translation>%1: revisado</translation>
    </message>
    <message>
        <source>Note a finding</source>
        <translation>Anotar un hallazgo</translation>
    </message>
    <message>
        <source>Note another finding</source>
        <translation>Anotar otro hallazgo</translation>
    </message>
    <message>
        <source>Found on this frame</source>
        <translation>Encontrado en este marco</translation>
    </message>
    <message>
        <source>Put right: %1</source>
        <translation>Arreglado: %1</translation>
    </message>
    <message>
        <source>Put right earlier</source>
        <translation>Arreglado antes</translation>
    </message>
</context>
<context>
    <name>IntakeModel</name>
    <message numerus="yes">
        <source>%n player(s)</source>
        <translation>
            <numerusform>%n jugador</numerusform>
            <numerusform>%n jugadores</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n torneo</numerusform>
            <numerusform>%n torneos</numerusform>
        </translation>
    </message>
    <message>
        <source>the private kit</source>
        <translation>el material privado</translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s)</source>
        <translation>
            <numerusform>%n foto</numerusform>
            <numerusform>%n fotos</numerusform>
        </translation>
    </message>
    <message>
        <source>All of it is here already.</source>
        <translation>Todo está ya aquí.</translation>
    </message>
    <message>
        <source>New here: %1 of %2 entries.</source>
        <translation>Nuevo aquí: %1 de %2 entradas.</translation>
    </message>
    <message numerus="yes">
        <source>Stays out, as the players agreed here: %n player(s)</source>
        <translation>
            <numerusform>Queda fuera, según lo acordado aquí: %n jugador</numerusform>
            <numerusform>Quedan fuera, según lo acordado aquí: %n jugadores</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stays out, because they were forgotten: %n player(s)</source>
        <translation>
            <numerusform>Queda fuera, por haber sido olvidado: %n jugador</numerusform>
            <numerusform>Quedan fuera, por haber sido olvidados: %n jugadores</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new entry(s) came in.</source>
        <translation>
            <numerusform>Llegó %n entrada nueva.</numerusform>
            <numerusform>Llegaron %n entradas nuevas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(s) were here already.</source>
        <translation>
            <numerusform>%n entrada ya estaba aquí.</numerusform>
            <numerusform>%n entradas ya estaban aquí.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) came in.</source>
        <translation>
            <numerusform>Llegó %n foto.</numerusform>
            <numerusform>Llegaron %n fotos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) were lost already where it was made.</source>
        <translation>
            <numerusform>%n foto ya se había perdido donde se hizo.</numerusform>
            <numerusform>%n fotos ya se habían perdido donde se hizo.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) could not be stored.</source>
        <translation>
            <numerusform>No se pudo guardar %n foto.</numerusform>
            <numerusform>No se pudieron guardar %n fotos.</numerusform>
        </translation>
    </message>
    <message>
        <source>Left out, as the players agreed here: %1</source>
        <translation>Omitidos, según lo acordado aquí: %1</translation>
    </message>
    <message numerus="yes">
        <source>Left out, because they were forgotten: %n player(s)</source>
        <translation>
            <numerusform>Omitido, por haber sido olvidado: %n jugador</numerusform>
            <numerusform>Omitidos, por haber sido olvidados: %n jugadores</numerusform>
        </translation>
    </message>
    <message>
        <source>Stays out: the book of another event, which only the head of the room may bring.</source>
        <translation>Se queda fuera: el libro de otro torneo, que solo puede traer el jefe de la sala.</translation>
    </message>
    <message>
        <source>Left out: the book of another event, which only the head of the room may bring.</source>
        <translation>Se dejó fuera: el libro de otro torneo, que solo puede traer el jefe de la sala.</translation>
    </message>
    <message numerus="yes">
        <source>Forgotten here too, because they withdrew: %n player(s)</source>
        <translation>
            <numerusform>Olvidado también aquí, tras retirarse: %n jugador</numerusform>
            <numerusform>Olvidados también aquí, tras retirarse: %n jugadores</numerusform>
        </translation>
    </message>
    <message>
        <source>The clock of %1 was far ahead.</source>
        <translation>El reloj de %1 iba muy adelantado.</translation>
    </message>
    <message>
        <source>%1 took all of it in, %2.</source>
        <translation>%1 lo recibió todo, %2.</translation>
    </message>
    <message>
        <source>%1 took a part of it in, %2.</source>
        <translation>%1 recibió una parte, %2.</translation>
    </message>
    <message numerus="yes">
        <source>It holds %n book(s) of it.</source>
        <translation>
            <numerusform>Tiene %n libro de él.</numerusform>
            <numerusform>Tiene %n libros de él.</numerusform>
        </translation>
    </message>
    <message>
        <source>The event</source>
        <translation>El torneo</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n newer entry(s) here that are not there yet.</source>
        <translation>
            <numerusform>%1: %n entrada más nueva aquí que aún no está allí.</numerusform>
            <numerusform>%1: %n entradas más nuevas aquí que aún no están allí.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: the two devices hold different entries.</source>
        <translation>%1: los dos dispositivos tienen entradas distintas.</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(s) were put aside; the Exchange page tells why.</source>
        <translation>
            <numerusform>%n entrada quedó apartada, véase Intercambio.</numerusform>
            <numerusform>%n entradas quedaron apartadas, véase Intercambio.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>IntakeSheet</name>
    <message>
        <source>Looking into it ...</source>
        <translation>Mirando el archivo ...</translation>
    </message>
    <message>
        <source>It is being taken in; the app stays usable.</source>
        <translation>Se está recibiendo; la aplicación sigue utilizable.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Frase de paso</translation>
    </message>
    <message>
        <source>Whoever made the file told it to you.</source>
        <translation>Quien hizo el archivo se la dijo.</translation>
    </message>
    <message>
        <source>It does not open with that. Small and large letters count.</source>
        <translation>No se abre con eso. Mayúsculas y minúsculas cuentan.</translation>
    </message>
    <message>
        <source>Backup of %1 (%2), made %3</source>
        <translation>Copia de %1 (%2), hecha %3</translation>
    </message>
    <message>
        <source>From %1 (%2), made %3</source>
        <translation>De %1 (%2), hecho %3</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>«%1»</translation>
    </message>
    <message>
        <source>New here: %1</source>
        <translation>Nuevos aquí: %1</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>This tablet takes the place of %1</source>
        <translation>Esta tableta ocupa el lugar de %1</translation>
    </message>
    <message>
        <source>Everything of it comes here, the private kit too. From then on this tablet writes in its own name; pair it with the event servers again.</source>
        <translation>Todo viene aquí, también el material privado. Desde entonces esta tableta escribe en su propio nombre; emparéjela de nuevo con los servidores.</translation>
    </message>
    <message>
        <source>Nobody here knows %1</source>
        <translation>Nadie aquí conoce %1</translation>
    </message>
    <message>
        <source>Its Exchange page shows the words of its key. Are they these? %1</source>
        <translation>Su página Intercambio muestra las palabras de su clave. ¿Son estas? %1</translation>
    </message>
    <message>
        <source>The words are the same</source>
        <translation>Las palabras son las mismas</translation>
    </message>
    <message>
        <source>All of it is here</source>
        <translation>Todo está aquí</translation>
    </message>
    <message numerus="yes">
        <source>Two answers to one question: %n to be settled under Questions.</source>
        <translation>
            <numerusform>Dos respuestas a una pregunta: %n por resolver en Preguntas.</numerusform>
            <numerusform>Dos respuestas a una pregunta: %n por resolver en Preguntas.</numerusform>
        </translation>
    </message>
    <message>
        <source>The receipt for %1 lies at %2. Give it back with the stick.</source>
        <translation>El recibo para %1 está en %2. Devuélvalo con la memoria.</translation>
    </message>
    <message>
        <source>The receipt for %1 could not be put beside the file; save it elsewhere.</source>
        <translation>El recibo para %1 no se pudo dejar junto al archivo; guárdelo en otro sitio.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Put it back here</source>
        <translation>Restaurar aquí</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Recibir</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Save the receipt elsewhere</source>
        <translation>Guardar el recibo en otro sitio</translation>
    </message>
    <message>
        <source>Another file</source>
        <translation>Otro archivo</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Bring in a file</source>
        <translation>Recibir un archivo</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Intentar otra vez</translation>
    </message>
</context>
<context>
    <name>InvitePart</name>
    <message>
        <source>Its role</source>
        <translation>Su papel</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Jefe</translation>
    </message>
    <message>
        <source>Desk</source>
        <translation>Recepción</translation>
    </message>
    <message>
        <source>Stringer</source>
        <translation>Encordador</translation>
    </message>
    <message>
        <source>Reader</source>
        <translation>Lector</translation>
    </message>
    <message>
        <source>Make a code</source>
        <translation>Hacer un código</translation>
    </message>
    <message>
        <source>Needs a connection to the event server</source>
        <translation>Necesita conexión con el servidor del torneo</translation>
    </message>
    <message>
        <source>Code of the event server %1</source>
        <translation>Código del servidor del torneo %1</translation>
    </message>
</context>
<context>
    <name>JobBrief</name>
    <message>
        <source>Mains</source>
        <translation>Verticales</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin decir</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Horizontales</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Patrón</translation>
    </message>
    <message>
        <source>Stencil</source>
        <translation>Plantilla</translation>
    </message>
    <message>
        <source>Promised</source>
        <translation>Prometida</translation>
    </message>
    <message>
        <source>Late: %1</source>
        <translation>Con retraso: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Antes de %1</translation>
    </message>
    <message>
        <source>none agreed</source>
        <translation>ninguna acordada</translation>
    </message>
    <message>
        <source>string stencil: %1</source>
        <translation>marca del cordaje: %1</translation>
    </message>
</context>
<context>
    <name>JobCard</name>
    <message>
        <source>Late: %1</source>
        <translation>Con retraso: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Antes de %1</translation>
    </message>
    <message>
        <source>Tag %1, %2</source>
        <translation>Etiqueta %1, %2</translation>
    </message>
    <message>
        <source>On-court rush</source>
        <translation>Urgencia de pista</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Urgente</translation>
    </message>
    <message>
        <source>Two people moved it on</source>
        <translation>Dos personas la movieron</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
    <message>
        <source>Look where it is</source>
        <translation>Mirar dónde está</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The player’s answer</source>
        <translation>Respuesta del jugador</translation>
    </message>
</context>
<context>
    <name>JobLine</name>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
</context>
<context>
    <name>JobList</name>
    <message numerus="yes">
        <source>%n job(s), newest first</source>
        <translation>
            <numerusform>%n encordado, lo más nuevo primero</numerusform>
            <numerusform>%n encordados, lo más nuevo primero</numerusform>
        </translation>
    </message>
    <message>
        <source>Only this event</source>
        <translation>Solo este torneo</translation>
    </message>
    <message>
        <source>No racket was ever taken in here</source>
        <translation>Aún no se recibió ninguna raqueta aquí</translation>
    </message>
    <message>
        <source>What the desk takes in and what comes by an exchange stands here, newest first.</source>
        <translation>Lo que recibe la recepción y lo que llega por un intercambio está aquí, lo más nuevo primero.</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Etiqueta %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
</context>
<context>
    <name>JobSheet</name>
    <message>
        <source>Two people moved this racket on while apart</source>
        <translation>Dos personas movieron esta raqueta sin verse</translation>
    </message>
    <message>
        <source>Look where it is, choose its stage below and say why.</source>
        <translation>Mire dónde está, elija su etapa abajo y diga por qué.</translation>
    </message>
    <message>
        <source>With a reason</source>
        <translation>Con un motivo</translation>
    </message>
    <message>
        <source>Another stage</source>
        <translation>Otra etapa</translation>
    </message>
    <message>
        <source>Put aside, a step back, ...</source>
        <translation>Apartada, un paso atrás, ...</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Everybody who looks at this racket later reads it.</source>
        <translation>Lo lee todo el que mire esta raqueta más tarde.</translation>
    </message>
    <message>
        <source>Set to: %1</source>
        <translation>Poner en: %1</translation>
    </message>
    <message>
        <source>Choose a stage first</source>
        <translation>Elija primero una etapa</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Lo que se hizo</translation>
    </message>
    <message>
        <source>Inspect the frame</source>
        <translation>Revisar el marco</translation>
    </message>
    <message>
        <source>Compare the tags on racket and bag</source>
        <translation>Comparar las etiquetas de raqueta y bolsa</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>machine %1</source>
        <translation>máquina %1</translation>
    </message>
    <message numerus="yes">
        <source>Hand over %n bag(s) with the rackets</source>
        <translation>
            <numerusform>Entregue %n bolsa con las raquetas</numerusform>
            <numerusform>Entregue %n bolsas con las raquetas</numerusform>
        </translation>
    </message>
    <message>
        <source>May be collected by %1</source>
        <translation>La puede recoger %1</translation>
    </message>
    <message numerus="yes">
        <source>Came with %n bag(s)</source>
        <translation>
            <numerusform>Llegó con %n bolsa</numerusform>
            <numerusform>Llegó con %n bolsas</numerusform>
        </translation>
    </message>
    <message>
        <source>String bed</source>
        <translation>Encordado</translation>
    </message>
    <message>
        <source>New time</source>
        <translation>Nueva hora</translation>
    </message>
    <message>
        <source>Take the player’s answer</source>
        <translation>Anotar la respuesta del jugador</translation>
    </message>
    <message>
        <source>It waits for its player’s answer</source>
        <translation>Espera la respuesta del jugador</translation>
    </message>
    <message>
        <source>What the player answered</source>
        <translation>Qué respondió el jugador</translation>
    </message>
    <message>
        <source>It stays beside this racket, for whoever strings it.</source>
        <translation>Queda junto a esta raqueta, para quien la encuerde.</translation>
    </message>
    <message>
        <source>Write the answer first</source>
        <translation>Anote primero la respuesta</translation>
    </message>
    <message>
        <source>it is not here any more</source>
        <translation>ya no está aquí</translation>
    </message>
    <message>
        <source>It moved on elsewhere meanwhile: %1</source>
        <translation>Entretanto avanzó en otro lugar: %1</translation>
    </message>
    <message>
        <source>Look again; nothing was written</source>
        <translation>Mirar de nuevo; no se anotó nada</translation>
    </message>
    <message>
        <source>It moved on meanwhile: %1. Look again</source>
        <translation>Entretanto avanzó: %1. Mirar de nuevo</translation>
    </message>
</context>
<context>
    <name>KeepCard</name>
    <message>
        <source>Players&apos; books on the event server</source>
        <translation>Libros de jugadores en el servidor del torneo</translation>
    </message>
    <message>
        <source>It keeps them. Tablets keep their own in any case.</source>
        <translation>Los conserva. Las tabletas conservan los suyos en todo caso.</translation>
    </message>
    <message>
        <source>It lets them go after %1. Tablets keep their own in any case.</source>
        <translation>Los borra después del %1. Las tabletas conservan los suyos en todo caso.</translation>
    </message>
    <message>
        <source>Days after the last one</source>
        <translation>Días después del último</translation>
    </message>
    <message>
        <source>Keep them</source>
        <translation>Conservarlos</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message>
        <source>Rule for players&apos; books set</source>
        <translation>Regla para los libros fijada</translation>
    </message>
    <message>
        <source>Bring this tablet up to date before then: afterwards the server exchanges nothing any more.</source>
        <translation>Ponga al día esta tableta antes: después el servidor ya no intercambia nada.</translation>
    </message>
</context>
<context>
    <name>ListsModel</name>
    <message>
        <source>Say what is to be done.</source>
        <translation>Diga qué hay que hacer.</translation>
    </message>
    <message numerus="yes">
        <source>Too long to be read at the bench: leave out about %n letter(s).</source>
        <translation>
            <numerusform>Demasiado largo para leerlo en el banco: quite aproximadamente %n letra.</numerusform>
            <numerusform>Demasiado largo para leerlo en el banco: quite aproximadamente %n letras.</numerusform>
        </translation>
    </message>
    <message>
        <source>Put a word before the equals sign.</source>
        <translation>Ponga una palabra antes del signo igual.</translation>
    </message>
    <message>
        <source>The list has a step of these words.</source>
        <translation>La lista ya tiene un paso con estas palabras.</translation>
    </message>
</context>
<context>
    <name>ListsView</name>
    <message>
        <source>Steps at the bench</source>
        <translation>Pasos en el banco</translation>
    </message>
    <message>
        <source>List of the check</source>
        <translation>Lista de la revisión</translation>
    </message>
    <message>
        <source>Which list</source>
        <translation>Qué lista</translation>
    </message>
    <message>
        <source>Common practice. What you change holds for every tablet of this event; the makers’ instructions come before it.</source>
        <translation>Práctica habitual. Lo que cambie vale en todas las tabletas de este torneo; las instrucciones de los fabricantes van primero.</translation>
    </message>
    <message>
        <source>As this room has it. It holds for every tablet of this event; the makers’ instructions come before it.</source>
        <translation>Tal como la tiene esta sala. Vale en todas las tabletas de este torneo; las instrucciones de los fabricantes van primero.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>added by this room</source>
        <translation>añadido por esta sala</translation>
    </message>
    <message>
        <source>Tap to change the words</source>
        <translation>Toque para cambiar las palabras</translation>
    </message>
    <message>
        <source>Up: %1</source>
        <translation>Subir: %1</translation>
    </message>
    <message>
        <source>Down: %1</source>
        <translation>Bajar: %1</translation>
    </message>
    <message>
        <source>Take off: %1</source>
        <translation>Quitar: %1</translation>
    </message>
    <message>
        <source>Taken off the list</source>
        <translation>Quitado de la lista</translation>
    </message>
    <message>
        <source>The list is empty.</source>
        <translation>La lista está vacía.</translation>
    </message>
    <message>
        <source>Add a step</source>
        <translation>Añadir un paso</translation>
    </message>
    <message>
        <source>Back to the usual list</source>
        <translation>Volver a la lista habitual</translation>
    </message>
    <message>
        <source>The usual list again</source>
        <translation>De nuevo la lista habitual</translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation>Quitados</translation>
    </message>
    <message>
        <source>Tap to put it on again</source>
        <translation>Toque para volver a ponerlo</translation>
    </message>
    <message>
        <source>On the list again</source>
        <translation>De nuevo en la lista</translation>
    </message>
</context>
<context>
    <name>MachineCareSheet</name>
    <message>
        <source>Calibration</source>
        <translation>Calibración</translation>
    </message>
    <message>
        <source>Tension that was set, in kg</source>
        <translation>Tensión ajustada, en kg</translation>
    </message>
    <message>
        <source>What the gauge showed, in kg</source>
        <translation>Lo que marcó el dinamómetro, en kg</translation>
    </message>
    <message>
        <source>Hold the gauge as its maker says; eyes protected while it is under tension.</source>
        <translation>Sujete el dinamómetro como indica su fabricante; ojos protegidos mientras esté en tensión.</translation>
    </message>
    <message>
        <source>Keep the calibration</source>
        <translation>Guardar la calibración</translation>
    </message>
    <message>
        <source>Calibration kept</source>
        <translation>Calibración guardada</translation>
    </message>
    <message>
        <source>Out of order</source>
        <translation>Fuera de servicio</translation>
    </message>
    <message>
        <source>What is wrong with it</source>
        <translation>Qué le pasa</translation>
    </message>
    <message>
        <source>Take it out of order</source>
        <translation>Dejar fuera de servicio</translation>
    </message>
    <message>
        <source>%1 is out of order</source>
        <translation>%1 está fuera de servicio</translation>
    </message>
    <message>
        <source>Keep it, and enter another pull</source>
        <translation>Guardar e introducir otro tiro</translation>
    </message>
</context>
<context>
    <name>MachineChips</name>
    <message>
        <source>On which machine it is</source>
        <translation>En qué máquina está</translation>
    </message>
    <message>
        <source>On which machine it goes</source>
        <translation>A qué máquina va</translation>
    </message>
    <message>
        <source>%1: machine %2</source>
        <translation>%1: máquina %2</translation>
    </message>
    <message>
        <source>Take another machine, or ask at the desk; the machine maker’s instructions come first.</source>
        <translation>Tome otra máquina o pregunte en recepción; las instrucciones del fabricante de la máquina van primero.</translation>
    </message>
</context>
<context>
    <name>MachineChoice</name>
    <message>
        <source>Out of order: %1</source>
        <translation>Fuera de servicio: %1</translation>
    </message>
    <message>
        <source>Its clamps are due for cleaning</source>
        <translation>Toca limpiar sus mordazas</translation>
    </message>
</context>
<context>
    <name>MachineSheet</name>
    <message>
        <source>New machine</source>
        <translation>Máquina nueva</translation>
    </message>
    <message>
        <source>What the room calls it</source>
        <translation>Cómo la llama la sala</translation>
    </message>
    <message>
        <source>How it pulls</source>
        <translation>Cómo tira</translation>
    </message>
    <message>
        <source>Constant-pull</source>
        <translation>Tracción constante</translation>
    </message>
    <message>
        <source>Lockout</source>
        <translation>Manivela con bloqueo</translation>
    </message>
    <message>
        <source>Drop-weight</source>
        <translation>Contrapeso</translation>
    </message>
    <message>
        <source>Maker and model</source>
        <translation>Fabricante y modelo</translation>
    </message>
    <message>
        <source>Highest tension that its maker allows, in kg</source>
        <translation>Tensión máxima que permite su fabricante, en kg</translation>
    </message>
    <message>
        <source>Pre-stretch that can be set, per cent: 0 10 20</source>
        <translation>Preestirados ajustables, por ciento: 0 10 20</translation>
    </message>
    <message>
        <source>Clean the clamps after so many rackets (empty: every evening)</source>
        <translation>Limpiar las pinzas tras tantas raquetas (vacío: cada noche)</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Machine %1 listed</source>
        <translation>Máquina %1 anotada</translation>
    </message>
</context>
<context>
    <name>MachinesModel</name>
    <message>
        <source>Give a tension such as 25 or 55 lb.</source>
        <translation>Indique una tensión, por ejemplo 25 o 55 lb.</translation>
    </message>
</context>
<context>
    <name>MachinesView</name>
    <message>
        <source>Constant-pull</source>
        <translation>Tracción constante</translation>
    </message>
    <message>
        <source>Lockout</source>
        <translation>Manivela con bloqueo</translation>
    </message>
    <message>
        <source>Drop-weight</source>
        <translation>Contrapeso</translation>
    </message>
    <message>
        <source>New machine</source>
        <translation>Máquina nueva</translation>
    </message>
    <message>
        <source>No machine is listed</source>
        <translation>No hay máquinas anotadas</translation>
    </message>
    <message>
        <source>List the machines; then rackets are counted for each, and you see when clamps are due.</source>
        <translation>Anote las máquinas; así se cuentan las raquetas de cada una y se ve cuándo tocan las pinzas.</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>pre-stretch %1 %</source>
        <translation>preestirado %1 %</translation>
    </message>
    <message>
        <source>Out of order</source>
        <translation>Fuera de servicio</translation>
    </message>
    <message>
        <source>Clean the clamps</source>
        <translation>Limpiar las pinzas</translation>
    </message>
    <message>
        <source>Dirty clamps slip and leave marks. Follow the maker’s instructions.</source>
        <translation>Las pinzas sucias resbalan y dejan marcas. Siga las instrucciones del fabricante.</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) since its clamps were cleaned</source>
        <translation>
            <numerusform>%n raqueta desde la limpieza de las pinzas</numerusform>
            <numerusform>%n raquetas desde la limpieza de las pinzas</numerusform>
        </translation>
    </message>
    <message>
        <source>Calibration: %1 set, %2 read (%3 %)</source>
        <translation>Calibración: %1 ajustado, %2 medido (%3 %)</translation>
    </message>
    <message>
        <source>Clamps cleaned</source>
        <translation>Pinzas limpias</translation>
    </message>
    <message>
        <source>%1: clamps cleaned</source>
        <translation>%1: pinzas limpias</translation>
    </message>
    <message>
        <source>Back in order</source>
        <translation>De nuevo en servicio</translation>
    </message>
    <message>
        <source>Calibration, or out of order</source>
        <translation>Calibración o fuera de servicio</translation>
    </message>
    <message>
        <source>%1 is back in order</source>
        <translation>%1 está de nuevo en servicio</translation>
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
    <message>
        <source>Team</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>Dinero</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Existencias</translation>
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
        <translation>Preestirado, tramos y nudos</translation>
    </message>
    <message>
        <source>Pre-stretch of the mains</source>
        <translation>Preestirado de las verticales</translation>
    </message>
    <message>
        <source>Pre-stretch of the crosses</source>
        <translation>Preestirado de las horizontales</translation>
    </message>
    <message>
        <source>Lengths of string</source>
        <translation>Tramos de cuerda</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Sin decir</translation>
    </message>
    <message>
        <source>One</source>
        <translation>Uno</translation>
    </message>
    <message>
        <source>Two</source>
        <translation>Dos</translation>
    </message>
    <message>
        <source>Knots</source>
        <translation>Nudos</translation>
    </message>
    <message>
        <source>Four</source>
        <translation>Cuatro</translation>
    </message>
    <message>
        <source>%1: %2 %</source>
        <translation>%1: %2 %</translation>
    </message>
    <message>
        <source>One length for mains and crosses, usually two knots: one string for both. Which end the crosses begin at follows from the pattern; the frame maker’s instructions decide.</source>
        <translation>Un solo tramo para verticales y horizontales, normalmente dos nudos: la misma cuerda para ambas. Por qué extremo empiezan las horizontales depende del patrón; deciden las instrucciones del fabricante del marco.</translation>
    </message>
    <message>
        <source>Mains and crosses each with a length of their own, usually four knots: the crosses may be another string. Some frames need them strung from the head down, so that the load on the frame stays even; the frame maker’s instructions decide.</source>
        <translation>Verticales y horizontales tienen cada una su tramo, normalmente cuatro nudos: las horizontales pueden ser otra cuerda. Algunos marcos piden encordarlas desde la cabeza hacia abajo, para que la carga del marco sea pareja; deciden las instrucciones del fabricante del marco.</translation>
    </message>
    <message>
        <source>Two knots go with one length: each end is tied off once, and nothing parts mains and crosses.</source>
        <translation>Dos nudos van con un tramo: cada extremo se anuda una vez y nada separa verticales y horizontales.</translation>
    </message>
    <message>
        <source>Four knots go with two lengths: mains and crosses are tied off apart, so each can have its own string and tension.</source>
        <translation>Cuatro nudos van con dos tramos: verticales y horizontales se anudan aparte, cada una puede tener su cuerda y su tensión.</translation>
    </message>
    <message>
        <source>Knot pre-tension</source>
        <translation>Pretensión del nudo</translation>
    </message>
    <message>
        <source>So much more on the last string before a knot: it makes up for what the knot gives way. Common practice; the instructions of frame and machine come first.</source>
        <translation>Ese tanto más en la última cuerda antes de un nudo: compensa lo que cede el nudo. Práctica habitual; las instrucciones del marco y de la máquina van primero.</translation>
    </message>
</context>
<context>
    <name>MatchCard</name>
    <message>
        <source>bye</source>
        <translation>exento</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>aún no se sabe</translation>
    </message>
    <message>
        <source>won by %1</source>
        <translation>ganado por %1</translation>
    </message>
    <message>
        <source>Not known yet who meets here</source>
        <translation>Aún no se sabe quiénes se encuentran aquí</translation>
    </message>
</context>
<context>
    <name>MatchSheet</name>
    <message>
        <source>%1, match %2</source>
        <translation>%1, partido %2</translation>
    </message>
    <message>
        <source>Decided without a match.</source>
        <translation>Decidido sin partido.</translation>
    </message>
    <message>
        <source>It is not known yet who meets here.</source>
        <translation>Aún no se sabe quiénes se encuentran aquí.</translation>
    </message>
    <message>
        <source>How it ended</source>
        <translation>Cómo terminó</translation>
    </message>
    <message>
        <source>Played</source>
        <translation>Jugado</translation>
    </message>
    <message>
        <source>Retired</source>
        <translation>Retirada</translation>
    </message>
    <message>
        <source>Walkover</source>
        <translation>No presentado</translation>
    </message>
    <message>
        <source>Score, if wanted</source>
        <translation>Resultado, si se quiere</translation>
    </message>
    <message>
        <source>%1 won</source>
        <translation>%1 ganó</translation>
    </message>
    <message>
        <source>Result noted</source>
        <translation>Resultado anotado</translation>
    </message>
    <message>
        <source>by a walkover</source>
        <translation>por no presentación</translation>
    </message>
    <message>
        <source>the other retired</source>
        <translation>por retirada</translation>
    </message>
    <message>
        <source>Won by %1</source>
        <translation>Ganado por %1</translation>
    </message>
    <message>
        <source>Take the result back</source>
        <translation>Retirar el resultado</translation>
    </message>
    <message>
        <source>Result taken back</source>
        <translation>Resultado retirado</translation>
    </message>
    <message>
        <source>not before %1</source>
        <translation>no antes de las %1</translation>
    </message>
    <message>
        <source>Court and time</source>
        <translation>Pista y hora</translation>
    </message>
    <message>
        <source>Court</source>
        <translation>Pista</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>No antes de</translation>
    </message>
    <message>
        <source>A time such as 14:05, or a day with it: 2031-05-26T14:05</source>
        <translation>Una hora como 14:05, o con el día: 2031-05-26T14:05</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Court and time kept</source>
        <translation>Pista y hora guardadas</translation>
    </message>
    <message>
        <source>%1 withdraws</source>
        <translation>%1 se retira</translation>
    </message>
    <message>
        <source>Withdrawal noted</source>
        <translation>Retirada anotada</translation>
    </message>
    <message>
        <source>Somebody in the place of %1</source>
        <translation>Alguien en lugar de %1</translation>
    </message>
    <message>
        <source>Say who plays here</source>
        <translation>Decir quién juega aquí</translation>
    </message>
    <message>
        <source>Player</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Partner, in doubles</source>
        <translation>Pareja, en dobles</translation>
    </message>
    <message>
        <source>Put on line %1</source>
        <translation>Poner en la línea %1</translation>
    </message>
    <message>
        <source>Put into the draw</source>
        <translation>Puesto en el cuadro</translation>
    </message>
    <message>
        <source>after match %1</source>
        <translation>tras el partido %1</translation>
    </message>
    <message>
        <source>Follows the match</source>
        <translation>Sigue al partido</translation>
    </message>
    <message>
        <source>Round and match of this draw, such as 2/7; empty where it has a time of its own</source>
        <translation>Ronda y partido de este cuadro, como 2/7; vacío si tiene su propia hora</translation>
    </message>
</context>
<context>
    <name>MatchWords</name>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>short form of the name</source>
        <translation>forma corta del nombre</translation>
    </message>
    <message>
        <source>part of the name</source>
        <translation>parte del nombre</translation>
    </message>
    <message>
        <source>family name</source>
        <translation>apellido</translation>
    </message>
    <message>
        <source>given name</source>
        <translation>nombre de pila</translation>
    </message>
    <message>
        <source>name nearly</source>
        <translation>nombre casi</translation>
    </message>
    <message>
        <source>country</source>
        <translation>país</translation>
    </message>
    <message>
        <source>birth year</source>
        <translation>año de nacimiento</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>mano</translation>
    </message>
    <message>
        <source>tour number</source>
        <translation>número del circuito</translation>
    </message>
    <message>
        <source>rackets</source>
        <translation>raquetas</translation>
    </message>
    <message>
        <source>strings</source>
        <translation>cuerdas</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s)</source>
        <translation>
            <numerusform>%n raqueta</numerusform>
            <numerusform>%n raquetas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>hace %n día</numerusform>
            <numerusform>hace %n días</numerusform>
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
        <translation>Añadir a alguien</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Does</source>
        <translation>Tarea</translation>
    </message>
    <message>
        <source>Head of the room</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Desk</source>
        <translation>Recepción</translation>
    </message>
    <message>
        <source>Stringer</source>
        <translation>Encordado</translation>
    </message>
    <message>
        <source>Languages, such as: en pt</source>
        <translation>Idiomas, por ejemplo: en pt</translation>
    </message>
    <message>
        <source>Good at, such as: natural gut, left-handed</source>
        <translation>Se le da bien, por ejemplo: tripa natural, zurdo</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>%1 is on the team</source>
        <translation>%1 está en el equipo</translation>
    </message>
</context>
<context>
    <name>MetCard</name>
    <message>
        <source>Give players to %1</source>
        <translation>Dar jugadores a %1</translation>
    </message>
    <message>
        <source>It lets this tablet only get players, not bring any.</source>
        <translation>Solo deja que esta tableta reciba jugadores, no que los traiga.</translation>
    </message>
    <message>
        <source>There is no event there: only whom you tick goes across, and what is newer of them whenever the two meet again.</source>
        <translation>Allí no hay torneo: solo pasan los que marque, y lo más nuevo de ellos cuando las dos vuelvan a encontrarse.</translation>
    </message>
    <message numerus="yes">
        <source>Give %n player(s)</source>
        <translation>
            <numerusform>Dar %n jugador</numerusform>
            <numerusform>Dar %n jugadores</numerusform>
        </translation>
    </message>
    <message>
        <source>Give</source>
        <translation>Dar</translation>
    </message>
    <message>
        <source>Both exchange: %1</source>
        <translation>Ambas intercambian: %1</translation>
    </message>
</context>
<context>
    <name>MoneyAccounts</name>
    <message>
        <source>Find a player</source>
        <translation>Buscar un jugador</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) owe something</source>
        <translation>
            <numerusform>%n jugador debe algo</numerusform>
            <numerusform>%n jugadores deben algo</numerusform>
        </translation>
    </message>
    <message>
        <source>Accounts</source>
        <translation>Cuentas</translation>
    </message>
    <message>
        <source>owes</source>
        <translation>debe</translation>
    </message>
    <message>
        <source>gets back</source>
        <translation>a devolver</translation>
    </message>
    <message>
        <source>even</source>
        <translation>saldado</translation>
    </message>
    <message>
        <source>nothing charged yet</source>
        <translation>nada cobrado aún</translation>
    </message>
    <message>
        <source>Nobody of that name</source>
        <translation>Nadie con ese nombre</translation>
    </message>
    <message>
        <source>No player has a racket here yet</source>
        <translation>Ningún jugador tiene aún una raqueta aquí</translation>
    </message>
    <message>
        <source>All accounts</source>
        <translation>Todas las cuentas</translation>
    </message>
    <message>
        <source>Pick a player</source>
        <translation>Elija un jugador</translation>
    </message>
    <message>
        <source>What is due, and every line by its racket, appears here.</source>
        <translation>Aquí aparece lo pendiente y cada línea por raqueta.</translation>
    </message>
    <message>
        <source>Nobody owes anything</source>
        <translation>Nadie debe nada</translation>
    </message>
</context>
<context>
    <name>MoneyDay</name>
    <message>
        <source>The day before</source>
        <translation>El día anterior</translation>
    </message>
    <message>
        <source>Today, %1</source>
        <translation>Hoy, %1</translation>
    </message>
    <message>
        <source>The day after</source>
        <translation>El día siguiente</translation>
    </message>
    <message>
        <source>Nothing was charged or paid on this day.</source>
        <translation>Ese día no se cobró ni se pagó nada.</translation>
    </message>
    <message>
        <source>Charged</source>
        <translation>Cobrado</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>En total</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Pagado</translation>
    </message>
    <message>
        <source>Closed: %1</source>
        <translation>Cerrado: %1</translation>
    </message>
    <message>
        <source>Counted %1, as the lines say</source>
        <translation>Contado %1, como dicen las líneas</translation>
    </message>
    <message>
        <source>Counted %1, %2 too much</source>
        <translation>Contado %1, sobran %2</translation>
    </message>
    <message>
        <source>Counted %1, %2 too little</source>
        <translation>Contado %1, faltan %2</translation>
    </message>
    <message>
        <source>Written for this day since: charged %1, paid %2</source>
        <translation>Anotado después para ese día: cobrado %1, pagado %2</translation>
    </message>
    <message>
        <source>The box</source>
        <translation>La caja</translation>
    </message>
    <message>
        <source>Cash taken this day, by the lines</source>
        <translation>Efectivo recibido ese día, según las líneas</translation>
    </message>
    <message>
        <source>Cash counted, without the change that was there in the morning, in %1</source>
        <translation>Efectivo contado, sin el cambio que había por la mañana, en %1</translation>
    </message>
    <message>
        <source>It agrees with the lines</source>
        <translation>Coincide con las líneas</translation>
    </message>
    <message>
        <source>%1 too much in the box</source>
        <translation>Sobran %1 en la caja</translation>
    </message>
    <message>
        <source>%1 too little in the box</source>
        <translation>Faltan %1 en la caja</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Close the day again</source>
        <translation>Cerrar el día de nuevo</translation>
    </message>
    <message>
        <source>Close the day</source>
        <translation>Cerrar el día</translation>
    </message>
    <message>
        <source>Day closed</source>
        <translation>Día cerrado</translation>
    </message>
</context>
<context>
    <name>MoneyLineSheet</name>
    <message>
        <source>Two tablets charged different amounts</source>
        <translation>Dos tabletas cobraron importes distintos</translation>
    </message>
    <message>
        <source>Close that under Questions first.</source>
        <translation>Resuélvalo antes en Preguntas.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>The line stays, and one of the opposite amount is written beside it.</source>
        <translation>La línea queda, y se escribe al lado otra por el importe contrario.</translation>
    </message>
    <message>
        <source>Reverse this line</source>
        <translation>Anular esta línea</translation>
    </message>
    <message>
        <source>Reversed: %1</source>
        <translation>Anulado: %1</translation>
    </message>
</context>
<context>
    <name>MoneyPage</name>
    <message>
        <source>Money</source>
        <translation>Dinero</translation>
    </message>
    <message>
        <source>Accounts</source>
        <translation>Cuentas</translation>
    </message>
    <message>
        <source>Day&apos;s money</source>
        <translation>Dinero del día</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Tarifa</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Lo que se muestra</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its price list and accounts come here by themselves.</source>
        <translation>Enlace con un servidor del torneo en Intercambio; su tarifa y sus cuentas llegan aquí por sí solas.</translation>
    </message>
    <message>
        <source>Players</source>
        <translation>Jugadores</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation>Precios</translation>
    </message>
</context>
<context>
    <name>MoneyPrices</name>
    <message>
        <source>no price</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>Nothing can be charged</source>
        <translation>No se puede cobrar nada</translation>
    </message>
    <message>
        <source>Currency of the event</source>
        <translation>Moneda del torneo</translation>
    </message>
    <message>
        <source>Three letters, such as EUR</source>
        <translation>Tres letras, por ejemplo EUR</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Currency: %1</source>
        <translation>Moneda: %1</translation>
    </message>
    <message>
        <source>What rackets are charged</source>
        <translation>Lo que se cobra por las raquetas</translation>
    </message>
    <message>
        <source>In %1. A string without a price of its own costs what stands beside &quot;String&quot;; a hybrid costs half of each.</source>
        <translation>En %1. Un cordaje sin precio propio cuesta lo que figura en «Cordaje»; un híbrido cuesta la mitad de cada uno.</translation>
    </message>
    <message>
        <source>Price of one string</source>
        <translation>Precio de un cordaje</translation>
    </message>
    <message>
        <source>What else is sold</source>
        <translation>Qué más se vende</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
</context>
<context>
    <name>MoneyText</name>
    <message>
        <source>The event has no currency yet.</source>
        <translation>El torneo aún no tiene moneda.</translation>
    </message>
    <message>
        <source>That is no amount; write it such as 25.50.</source>
        <translation>Eso no es un importe; escríbalo así: 25,50.</translation>
    </message>
    <message numerus="yes">
        <source>%n decimal(s) at most in this currency.</source>
        <translation>
            <numerusform>Como mucho %n decimal en esta moneda.</numerusform>
            <numerusform>Como mucho %n decimales en esta moneda.</numerusform>
        </translation>
    </message>
    <message>
        <source>That is too much.</source>
        <translation>Es demasiado.</translation>
    </message>
</context>
<context>
    <name>MoneyWords</name>
    <message>
        <source>Labour</source>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>String</source>
        <translation>Cordaje</translation>
    </message>
    <message>
        <source>Stencil</source>
        <translation>Plantilla</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Urgente</translation>
    </message>
    <message>
        <source>On-court rush</source>
        <translation>Urgencia de pista</translation>
    </message>
    <message>
        <source>Grommet strip</source>
        <translation>Tira de ojales</translation>
    </message>
    <message>
        <source>Tubing</source>
        <translation>Tubo</translation>
    </message>
    <message>
        <source>String, mains</source>
        <translation>Cordaje, verticales</translation>
    </message>
    <message>
        <source>String, crosses</source>
        <translation>Cordaje, horizontales</translation>
    </message>
    <message>
        <source>Discount</source>
        <translation>Descuento</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Sin indicar</translation>
    </message>
    <message>
        <source>Cash</source>
        <translation>Efectivo</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Tarjeta</translation>
    </message>
    <message>
        <source>Room account</source>
        <translation>Cuenta de la habitación</translation>
    </message>
    <message>
        <source>Prize money</source>
        <translation>Premio en metálico</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Another way</source>
        <translation>De otra forma</translation>
    </message>
    <message>
        <source>Paid: %1</source>
        <translation>Pagado: %1</translation>
    </message>
    <message>
        <source>Reversed: %1</source>
        <translation>Anulado: %1</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Etiqueta %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
</context>
<context>
    <name>NearCard</name>
    <message>
        <source>Near here</source>
        <translation>Cerca de aquí</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Conectado</translation>
    </message>
    <message>
        <source>Paired</source>
        <translation>Emparejado</translation>
    </message>
    <message>
        <source>Not paired yet</source>
        <translation>Aún sin emparejar</translation>
    </message>
    <message>
        <source>Looking ...</source>
        <translation>Buscando ...</translation>
    </message>
    <message>
        <source>Event servers, and tablets that let others in, on this network. Only pairing proves who they are.</source>
        <translation>Servidores de torneo, y tabletas que dejan entrar a otras, en esta red. Solo el emparejamiento prueba quiénes son.</translation>
    </message>
    <message>
        <source>Nobody answers here.</source>
        <translation>Aquí no responde nadie.</translation>
    </message>
    <message>
        <source>Join the Wi-Fi that the other one is in, and wait a moment; or type its address below. The code comes from its screen or from the head of the room.</source>
        <translation>Entre en la Wi-Fi del otro dispositivo y espere un momento; o escriba abajo su dirección. El código está en su pantalla o lo tiene el jefe de la sala.</translation>
    </message>
</context>
<context>
    <name>NeededNotice</name>
    <message>
        <source>No racket is chosen</source>
        <translation>No se ha elegido ninguna raqueta</translation>
    </message>
    <message>
        <source>Stringing cannot begin without this</source>
        <translation>Sin esto no se puede encordar</translation>
    </message>
    <message>
        <source>Choose at least one.</source>
        <translation>Elija al menos una.</translation>
    </message>
</context>
<context>
    <name>NewTimeSheet</name>
    <message>
        <source>New time: %1</source>
        <translation>Nueva hora: %1</translation>
    </message>
    <message>
        <source>New time</source>
        <translation>Nueva hora</translation>
    </message>
    <message>
        <source>Ready by %1, agreed with %2</source>
        <translation>Listo para las %1, acordado con %2</translation>
    </message>
    <message>
        <source>Promised for %1</source>
        <translation>Prometido para las %1</translation>
    </message>
    <message>
        <source>No time was said so far</source>
        <translation>Hasta ahora no se dijo ninguna hora</translation>
    </message>
    <message>
        <source>On the machine or strung already: ask at the bench what is left to do.</source>
        <translation>Ya en la máquina o encordada: preguntar en el puesto qué falta por hacer.</translation>
    </message>
    <message>
        <source>Only this racket</source>
        <translation>Solo esta raqueta</translation>
    </message>
    <message numerus="yes">
        <source>%n rackets were promised together.</source>
        <translation>
            <numerusform>Se prometió %n raqueta.</numerusform>
            <numerusform>Se prometieron %n raquetas juntas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Agreed with</source>
        <translation>Acordado con</translation>
    </message>
    <message>
        <source>The player, or who speaks for them. Nothing is promised behind anybody’s back.</source>
        <translation>El jugador, o quien habla por él. No se promete nada a espaldas de nadie.</translation>
    </message>
    <message>
        <source>With %1</source>
        <translation>Con %1</translation>
    </message>
    <message>
        <source>Promise %1</source>
        <translation>Prometer %1</translation>
    </message>
    <message>
        <source>Choose another time</source>
        <translation>Elegir otra hora</translation>
    </message>
</context>
<context>
    <name>NoEvent</name>
    <message>
        <source>There is no event yet</source>
        <translation>Aún no hay torneo</translation>
    </message>
    <message>
        <source>Or work alone, with no network.</source>
        <translation>O trabaje por su cuenta, sin red.</translation>
    </message>
    <message>
        <source>Work on your own: make an event</source>
        <translation>Trabajar por su cuenta: crear un torneo</translation>
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
        <translation>Todo el torneo</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>What is counted</source>
        <translation>Qué se cuenta</translation>
    </message>
    <message>
        <source>Save as a table (CSV)</source>
        <translation>Guardar como tabla (CSV)</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Recibidas</translation>
    </message>
    <message>
        <source>%1 in the room now</source>
        <translation>%1 ahora en la sala</translation>
    </message>
    <message>
        <source>Strung</source>
        <translation>Encordadas</translation>
    </message>
    <message>
        <source>%1 strung again</source>
        <translation>%1 encordadas de nuevo</translation>
    </message>
    <message>
        <source>On time</source>
        <translation>A tiempo</translation>
    </message>
    <message>
        <source>%1 late</source>
        <translation>%1 con retraso</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation>%1 vencidas</translation>
    </message>
    <message>
        <source>From drop-off to ready</source>
        <translation>De la entrega a lista</translation>
    </message>
    <message>
        <source>nine of ten under %1</source>
        <translation>nueve de diez en menos de %1</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Urgentes</translation>
    </message>
    <message>
        <source>%1 from the court</source>
        <translation>%1 desde la pista</translation>
    </message>
    <message>
        <source>Waiting for an answer</source>
        <translation>Esperan respuesta</translation>
    </message>
    <message>
        <source>usually %1</source>
        <translation>normalmente %1</translation>
    </message>
    <message>
        <source>Collected</source>
        <translation>Recogidas</translation>
    </message>
    <message>
        <source>%1 put aside</source>
        <translation>%1 apartadas</translation>
    </message>
    <message>
        <source>%1 now, %2 then</source>
        <translation>%1 ahora, %2 entonces</translation>
    </message>
    <message>
        <source>Made ready, by day</source>
        <translation>Listas, por día</translation>
    </message>
    <message>
        <source>Taken in, by hour</source>
        <translation>Recibidas, por hora</translation>
    </message>
    <message>
        <source>Strung, by stringer</source>
        <translation>Encordadas, por encordador</translation>
    </message>
    <message>
        <source>Strung, by string</source>
        <translation>Encordadas, por cuerda</translation>
    </message>
    <message>
        <source>Strung, by tension of the mains</source>
        <translation>Encordadas, por tensión de las principales</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabla (*.csv)</translation>
    </message>
</context>
<context>
    <name>OffNotice</name>
    <message>
        <source>This racket is off</source>
        <translation>Esta raqueta se desvía</translation>
    </message>
    <message>
        <source>This racket is even</source>
        <translation>Esta raqueta cuadra</translation>
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
    <name>OtherNameSheet</name>
    <message>
        <source>Name kept</source>
        <translation>Nombre guardado</translation>
    </message>
    <message>
        <source>Another name</source>
        <translation>Otro nombre</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Apellido</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Name in the own script</source>
        <translation>Nombre en su escritura</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>From before</source>
        <translation>De antes</translation>
    </message>
    <message>
        <source>Since a marriage</source>
        <translation>Desde una boda</translation>
    </message>
    <message>
        <source>Short form</source>
        <translation>Forma corta</translation>
    </message>
    <message>
        <source>Another spelling</source>
        <translation>Otra grafía</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>OthersCard</name>
    <message>
        <source>Let another tablet in</source>
        <translation>Dejar entrar a otra tableta</translation>
    </message>
    <message>
        <source>For a tablet that works in this room: it exchanges with the event server from then on, whether this tablet is here or not.</source>
        <translation>Para una tableta que trabaja en esta sala: desde entonces intercambia con el servidor del torneo, esté o no esta tableta.</translation>
    </message>
    <message>
        <source>For a colleague, or where no event server can be reached: it exchanges with this very tablet, in one Wi-Fi and as long as this is on.</source>
        <translation>Para un compañero, o donde no se alcanza ningún servidor: intercambia con esta misma tableta, en la misma Wi-Fi y mientras esto esté activo.</translation>
    </message>
    <message>
        <source>Where it comes in</source>
        <translation>Por dónde entra</translation>
    </message>
    <message>
        <source>At the event server</source>
        <translation>En el servidor</translation>
    </message>
    <message>
        <source>On this tablet</source>
        <translation>En esta tableta</translation>
    </message>
    <message>
        <source>This tablet lets others in as well, at %1.</source>
        <translation>Esta tableta también deja entrar a otras, en %1.</translation>
    </message>
</context>
<context>
    <name>PairCard</name>
    <message>
        <source>Code or five words</source>
        <translation>Código o cinco palabras</translation>
    </message>
    <message>
        <source>It stands beside the words, such as desk.local or 192.168.1.20:26110.</source>
        <translation>Está junto a las palabras, como desk.local o 192.168.1.20:26110.</translation>
    </message>
    <message>
        <source>Pair</source>
        <translation>Emparejar</translation>
    </message>
    <message>
        <source>With an event server, or with a tablet that lets others in. It shows a code and five words, good for fifteen minutes and one tablet.</source>
        <translation>Con un servidor de torneo, o con una tableta que deja entrar a otras. Muestra un código y cinco palabras, válidos quince minutos y para una tableta.</translation>
    </message>
    <message>
        <source>Its address</source>
        <translation>Su dirección</translation>
    </message>
</context>
<context>
    <name>PartBooksSheet</name>
    <message>
        <source>Not the same person</source>
        <translation>No es la misma persona</translation>
    </message>
    <message>
        <source>This book is parted from the others. Each is as it was before they were linked; what was answered since for both stays in both.</source>
        <translation>Este libro se separa de los demás. Cada uno queda como antes de vincularlos; lo que se respondió desde entonces para ambos queda en ambos.</translation>
    </message>
    <message>
        <source>Part the books</source>
        <translation>Separar los libros</translation>
    </message>
</context>
<context>
    <name>PastColumnsCard</name>
    <message>
        <source>What its columns hold</source>
        <translation>Lo que contienen sus columnas</translation>
    </message>
    <message>
        <source>Found by their headings. Look whether it is right; what is not said is not used.</source>
        <translation>Reconocido por sus títulos. Compruébelo; lo que no se dice no se usa.</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vacía</translation>
    </message>
    <message>
        <source>Not used</source>
        <translation>No se usa</translation>
    </message>
    <message>
        <source>in %1, as its heading says</source>
        <translation>en %1, como dice su título</translation>
    </message>
</context>
<context>
    <name>PastJobsModel</name>
    <message>
        <source>Not used</source>
        <translation>No se usa</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Apellido</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Whole name</source>
        <translation>Nombre completo</translation>
    </message>
    <message>
        <source>Name in own script</source>
        <translation>Nombre en su escritura</translation>
    </message>
    <message>
        <source>Country, three letters</source>
        <translation>País, tres letras</translation>
    </message>
    <message>
        <source>Year of birth</source>
        <translation>Año de nacimiento</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Mano</translation>
    </message>
    <message>
        <source>Tour number</source>
        <translation>Número del circuito</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Event</source>
        <translation>Torneo</translation>
    </message>
    <message>
        <source>Racket’s mark</source>
        <translation>Marca en la raqueta</translation>
    </message>
    <message>
        <source>Racket’s maker</source>
        <translation>Fabricante de la raqueta</translation>
    </message>
    <message>
        <source>Racket’s model</source>
        <translation>Modelo de la raqueta</translation>
    </message>
    <message>
        <source>String of the mains</source>
        <translation>Cuerda de las verticales</translation>
    </message>
    <message>
        <source>Gauge of the mains</source>
        <translation>Calibre de las verticales</translation>
    </message>
    <message>
        <source>Tension of the mains</source>
        <translation>Tensión de las verticales</translation>
    </message>
    <message>
        <source>String of the crosses</source>
        <translation>Cuerda de las horizontales</translation>
    </message>
    <message>
        <source>Gauge of the crosses</source>
        <translation>Calibre de las horizontales</translation>
    </message>
    <message>
        <source>Tension of the crosses</source>
        <translation>Tensión de las horizontales</translation>
    </message>
    <message>
        <source>String (mains / crosses)</source>
        <translation>Cuerda (verticales / horizontales)</translation>
    </message>
    <message>
        <source>Tension (mains / crosses)</source>
        <translation>Tensión (verticales / horizontales)</translation>
    </message>
    <message>
        <source>Pre-stretch</source>
        <translation>Preestirado</translation>
    </message>
    <message>
        <source>Who strung it</source>
        <translation>Quién encordó</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>a tension, such as 25, 25.5 kg or 55 lb</source>
        <translation>una tensión como 25, 25,5 kg o 55 lb</translation>
    </message>
    <message>
        <source>a gauge in mm, such as 1.25</source>
        <translation>un calibre en mm como 1,25</translation>
    </message>
    <message>
        <source>per cent from 0 to 30</source>
        <translation>un porcentaje de 0 a 30</translation>
    </message>
    <message>
        <source>a day, such as 2031-05-26 or 26.05.2031</source>
        <translation>un día como 2031-05-26 o 26.05.2031</translation>
    </message>
    <message>
        <source>three letters, such as POR</source>
        <translation>tres letras como POR</translation>
    </message>
    <message>
        <source>a year from 1900 to 2099</source>
        <translation>un año de 1900 a 2099</translation>
    </message>
    <message>
        <source>right or left</source>
        <translation>derecha o izquierda</translation>
    </message>
    <message>
        <source>a name</source>
        <translation>un nombre</translation>
    </message>
    <message>
        <source>a shorter text</source>
        <translation>un texto más corto</translation>
    </message>
    <message>
        <source>Line %1, %2</source>
        <translation>Línea %1, %2</translation>
    </message>
    <message>
        <source>this is no tension in the unit of the others; write its unit beside it.</source>
        <translation>no es una tensión en la unidad de las demás; escriba su unidad al lado.</translation>
    </message>
    <message>
        <source>nothing stands there.</source>
        <translation>no hay nada.</translation>
    </message>
    <message>
        <source>“%1” is still to come, by this tablet’s clock.</source>
        <translation>«%1» aún está por llegar, según el reloj de esta tableta.</translation>
    </message>
    <message>
        <source>“%1” is not %2.</source>
        <translation>«%1» no es %2.</translation>
    </message>
    <message>
        <source>Choose it again, or copy it to this device first.</source>
        <translation>Elíjalo otra vez o cópielo antes a este dispositivo.</translation>
    </message>
    <message>
        <source>The file is too large. Split it, or leave out what is not needed.</source>
        <translation>El archivo es demasiado grande. Divídalo o quite lo que no haga falta.</translation>
    </message>
    <message>
        <source>Two columns are taken for the same. Say which of them it is.</source>
        <translation>Dos columnas se toman por la misma. Diga cuál de ellas es.</translation>
    </message>
</context>
<context>
    <name>PastJobsSheet</name>
    <message>
        <source>Past jobs</source>
        <translation>Encordados anteriores</translation>
    </message>
    <message>
        <source>A table of rackets strung before becomes the history of its players. Nothing is stored before you have looked at it, and an import can be taken back as one.</source>
        <translation>Una tabla de raquetas encordadas antes pasa a ser el historial de sus jugadores. No se guarda nada antes de que lo vea, y todo se puede deshacer de una vez.</translation>
    </message>
    <message>
        <source>Choose the table (CSV)</source>
        <translation>Elegir la tabla (CSV)</translation>
    </message>
    <message>
        <source>Bringing in</source>
        <translation>Incorporando</translation>
    </message>
    <message>
        <source>Working on it</source>
        <translation>Trabajando</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Brought in</source>
        <translation>Incorporado</translation>
    </message>
    <message>
        <source>Not all of it was brought in</source>
        <translation>No se incorporó todo</translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation>Deshecho</translation>
    </message>
    <message>
        <source>Taken back, but for players on whom work went on since</source>
        <translation>Deshecho, salvo los que han tenido trabajo desde entonces</translation>
    </message>
    <message>
        <source>Not taken back</source>
        <translation>No se deshizo</translation>
    </message>
    <message>
        <source>The file can&apos;t be read</source>
        <translation>El archivo no se puede leer</translation>
    </message>
    <message>
        <source>This is no table that can be read</source>
        <translation>No es una tabla que se pueda leer</translation>
    </message>
    <message>
        <source>Which column holds the players&apos; names?</source>
        <translation>¿Qué columna tiene los nombres?</translation>
    </message>
    <message>
        <source>Which column holds a string or a tension?</source>
        <translation>¿Qué columna tiene una cuerda o una tensión?</translation>
    </message>
    <message>
        <source>The table can&apos;t be brought in like this</source>
        <translation>La tabla no se puede incorporar así</translation>
    </message>
    <message>
        <source>How its letters are written</source>
        <translation>Cómo están escritas sus letras</translation>
    </message>
    <message>
        <source>Unicode</source>
        <translation>Unicode</translation>
    </message>
    <message>
        <source>Windows, western</source>
        <translation>Windows, occidental</translation>
    </message>
    <message>
        <source>In which unit are tensions that say none? The figures do not tell.</source>
        <translation>¿En qué unidad están las tensiones sin unidad? Las cifras no lo dicen.</translation>
    </message>
    <message>
        <source>Tensions that say no unit look like this one. Is that right?</source>
        <translation>Las tensiones sin unidad parecen estar en esta. ¿Es así?</translation>
    </message>
    <message>
        <source>Tensions that say no unit</source>
        <translation>Tensiones sin unidad</translation>
    </message>
    <message>
        <source>What stands first in dates such as 03/04/2031? The table does not tell.</source>
        <translation>¿Qué va primero en fechas como 03/04/2031? La tabla no lo dice.</translation>
    </message>
    <message>
        <source>What stands first in dates with slashes</source>
        <translation>Lo que va primero en fechas con barras</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>El día</translation>
    </message>
    <message>
        <source>The month</source>
        <translation>El mes</translation>
    </message>
    <message>
        <source>May be %1, who is known here. Rackets in the table: %2</source>
        <translation>Quizá %1, conocido aquí. Raquetas en la tabla: %2</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Dejar fuera</translation>
    </message>
    <message>
        <source>The same</source>
        <translation>La misma persona</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation>Otra persona</translation>
    </message>
    <message>
        <source>Who %1 is</source>
        <translation>Quién es %1</translation>
    </message>
    <message numerus="yes">
        <source>Would come in: %n racket(s)</source>
        <translation>
            <numerusform>Se incorporaría: %n raqueta</numerusform>
            <numerusform>Se incorporarían: %n raquetas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Here already: %n racket(s)</source>
        <translation>
            <numerusform>Ya aquí: %n raqueta</numerusform>
            <numerusform>Ya aquí: %n raquetas</numerusform>
        </translation>
    </message>
    <message>
        <source>Players known here: %1, new: %2</source>
        <translation>Jugadores conocidos aquí: %1, nuevos: %2</translation>
    </message>
    <message numerus="yes">
        <source>Left out: %n row(s) with a mistake</source>
        <translation>
            <numerusform>Fuera: %n fila con un error</numerusform>
            <numerusform>Fuera: %n filas con un error</numerusform>
        </translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation>Incorporar</translation>
    </message>
    <message>
        <source>Brought in on this device</source>
        <translation>Incorporado en este dispositivo</translation>
    </message>
    <message>
        <source>%1, players: %2</source>
        <translation>%1, jugadores: %2</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Take %1 back</source>
        <translation>Deshacer %1</translation>
    </message>
    <message>
        <source>Every racket and player that came with it goes again, as one. What work has gone on with since stays.</source>
        <translation>Se van de nuevo, de una vez, las raquetas y jugadores que llegaron con ella. Lo que ha tenido trabajo desde entonces se queda.</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Tables (*.csv *.CSV *.txt *.tsv)</source>
        <translation>Tablas (*.csv *.CSV *.txt *.tsv)</translation>
    </message>
</context>
<context>
    <name>PastRowsCard</name>
    <message>
        <source>Its rows</source>
        <translation>Sus filas</translation>
    </message>
    <message numerus="yes">
        <source>Left out: %n row(s) with a mistake</source>
        <translation>
            <numerusform>Fuera: %n fila con un error</numerusform>
            <numerusform>Fuera: %n filas con un error</numerusform>
        </translation>
    </message>
    <message>
        <source>... and %1 more</source>
        <translation>... y %1 más</translation>
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
        <translation>Recibir un pago</translation>
    </message>
    <message>
        <source>Amount in %1</source>
        <translation>Importe en %1</translation>
    </message>
    <message>
        <source>Takes the payment</source>
        <translation>Recibe el pago</translation>
    </message>
    <message>
        <source>%1 paid: %2</source>
        <translation>%1 pagado: %2</translation>
    </message>
</context>
<context>
    <name>PersonCard</name>
    <message>
        <source>Player</source>
        <translation>Jugador</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Apellido</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Name in the own script</source>
        <translation>Nombre en su escritura</translation>
    </message>
    <message>
        <source>Country, three letters</source>
        <translation>País, tres letras</translation>
    </message>
    <message>
        <source>How to reach the player</source>
        <translation>Cómo contactar al jugador</translation>
    </message>
    <message>
        <source>Reads best</source>
        <translation>Lee mejor</translation>
    </message>
</context>
<context>
    <name>PersonLinks</name>
    <message numerus="yes">
        <source>%n racket(s)</source>
        <translation>
            <numerusform>%n raqueta</numerusform>
            <numerusform>%n raquetas</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PersonSheet</name>
    <message>
        <source>Change player</source>
        <translation>Cambiar jugador</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Apellido</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Name in the own script</source>
        <translation>Nombre en su escritura</translation>
    </message>
    <message>
        <source>Country, three letters</source>
        <translation>País, tres letras</translation>
    </message>
    <message>
        <source>How to reach the player</source>
        <translation>Cómo contactar al jugador</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Reads best</source>
        <translation>Lee mejor</translation>
    </message>
    <message>
        <source>Says tensions in</source>
        <translation>Dice las tensiones en</translation>
    </message>
</context>
<context>
    <name>PhotoPicture</name>
    <message>
        <source>The picture is damaged and can&apos;t be shown.</source>
        <translation>La imagen está dañada y no se puede mostrar.</translation>
    </message>
</context>
<context>
    <name>PhotoSheet</name>
    <message>
        <source>Take a photo</source>
        <translation>Tomar una foto</translation>
    </message>
    <message>
        <source>Photo kept</source>
        <translation>Foto guardada</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) kept</source>
        <translation>
            <numerusform>%n foto guardada</numerusform>
            <numerusform>%n fotos guardadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Tomar</translation>
    </message>
</context>
<context>
    <name>Photos</name>
    <message>
        <source>The picture is damaged and can&apos;t be shown.</source>
        <translation>La imagen está dañada y no se puede mostrar.</translation>
    </message>
    <message>
        <source>Choose another file, or take the picture again.</source>
        <translation>Elija otro archivo o vuelva a tomar la foto.</translation>
    </message>
    <message>
        <source>This file is no picture.</source>
        <translation>Este archivo no es una imagen.</translation>
    </message>
    <message>
        <source>Choose a JPEG or PNG file.</source>
        <translation>Elija un archivo JPEG o PNG.</translation>
    </message>
    <message>
        <source>The picture has too many pixels.</source>
        <translation>La imagen tiene demasiados píxeles.</translation>
    </message>
    <message>
        <source>Make it smaller first: 64 megapixels at most.</source>
        <translation>Redúzcala primero: 64 megapíxeles como máximo.</translation>
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
        <translation>Aún no hay ninguna imagen de esta raqueta.</translation>
    </message>
    <message>
        <source>Photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>Photo %1: not on this tablet yet</source>
        <translation>Foto %1: aún no está en esta tableta</translation>
    </message>
    <message>
        <source>It is being fetched</source>
        <translation>Se está trayendo</translation>
    </message>
    <message>
        <source>Waiting for the event server</source>
        <translation>Esperando al servidor del torneo</translation>
    </message>
    <message>
        <source>Fetch photo %1</source>
        <translation>Traer la foto %1</translation>
    </message>
    <message>
        <source>Add a photo from a file</source>
        <translation>Añadir una foto de un archivo</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG)</source>
        <translation>Imágenes (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG)</translation>
    </message>
    <message>
        <source>Photo kept, without the place where it was taken</source>
        <translation>Foto guardada, sin el lugar donde se tomó</translation>
    </message>
    <message>
        <source>Add it again from where it came, or fetch it from the tablet on which it was taken.</source>
        <translation>Añádala otra vez desde su archivo, o tráigala de la tableta en que se tomó.</translation>
    </message>
    <message>
        <source>Take a photo</source>
        <translation>Tomar una foto</translation>
    </message>
</context>
<context>
    <name>PhotosModel</name>
    <message>
        <source>No device that is connected has this picture.</source>
        <translation>Ningún dispositivo conectado tiene esta imagen.</translation>
    </message>
    <message>
        <source>The event server runs an earlier version, which hands on no pictures.</source>
        <translation>El servidor del torneo tiene una versión anterior, que no transmite imágenes.</translation>
    </message>
    <message>
        <source>The event server may not hand this picture on.</source>
        <translation>El servidor del torneo no puede transmitir esta imagen.</translation>
    </message>
    <message>
        <source>There is no space left for pictures on this tablet.</source>
        <translation>No queda espacio para imágenes en esta tableta.</translation>
    </message>
    <message>
        <source>It did not come. Try again.</source>
        <translation>No ha llegado. Inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The file can&apos;t be read.</source>
        <translation>No se puede leer el archivo.</translation>
    </message>
    <message>
        <source>Choose another one.</source>
        <translation>Elija otro.</translation>
    </message>
    <message>
        <source>The file is larger than 40 MiB.</source>
        <translation>El archivo ocupa más de 40 MiB.</translation>
    </message>
    <message>
        <source>Choose a smaller one.</source>
        <translation>Elija uno más pequeño.</translation>
    </message>
    <message>
        <source>This tablet is not connected to an event server.</source>
        <translation>Esta tableta no está conectada a ningún servidor de torneo.</translation>
    </message>
    <message>
        <source>Connect it under Exchange, then fetch the picture.</source>
        <translation>Conéctela en «Intercambio» y traiga después la imagen.</translation>
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
    <name>PlanPage</name>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Draw</source>
        <translation>Cuadro</translation>
    </message>
    <message>
        <source>Home benches</source>
        <translation>Bancos fijos</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Qué se muestra</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its draws come here by themselves.</source>
        <translation>Vincúlese con un servidor de torneo en Intercambio; sus cuadros llegan aquí solos.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>To come</source>
        <translation>Por venir</translation>
    </message>
</context>
<context>
    <name>PlayerCard</name>
    <message>
        <source>Player changed</source>
        <translation>Jugador cambiado</translation>
    </message>
    <message>
        <source>Racket changed</source>
        <translation>Raqueta cambiada</translation>
    </message>
    <message>
        <source>Consent noted</source>
        <translation>Consentimiento anotado</translation>
    </message>
</context>
<context>
    <name>PlayerDetails</name>
    <message>
        <source>Open question: %1, %2</source>
        <translation>Pregunta abierta: %1, %2</translation>
    </message>
    <message>
        <source>Open question: %1</source>
        <translation>Pregunta abierta: %1</translation>
    </message>
    <message>
        <source>%1 (%2, %3)</source>
        <translation>%1 (%2, %3)</translation>
    </message>
    <message>
        <source>Rackets</source>
        <translation>Raquetas</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
    <message>
        <source>Racket without a mark</source>
        <translation>Raqueta sin marca</translation>
    </message>
    <message>
        <source>in the room</source>
        <translation>en la sala</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Ninguna aún</translation>
    </message>
    <message>
        <source>Last jobs</source>
        <translation>Últimos encordados</translation>
    </message>
    <message>
        <source>Older ones</source>
        <translation>Más antiguos</translation>
    </message>
    <message>
        <source>Who has this book</source>
        <translation>Quién tiene este cuaderno</translation>
    </message>
    <message>
        <source>%1 has it from here, last %2</source>
        <translation>%1 lo tiene de aquí, última vez %2</translation>
    </message>
    <message>
        <source>It came from %1, last %2</source>
        <translation>Llegó de %1, última vez %2</translation>
    </message>
    <message>
        <source>Devices that exchanged it with this tablet, and what was made of it for others. If the player withdraws, each device is told when it is met, and takes nothing of it any more.</source>
        <translation>Dispositivos que lo intercambiaron con esta tableta, y lo que se hizo de él para otros. Si el jugador se retira, cada dispositivo lo sabrá al encontrarse y ya no acepta nada de él.</translation>
    </message>
    <message>
        <source>The player agreed to one room only</source>
        <translation>El jugador dio su consentimiento a una sola sala</translation>
    </message>
    <message>
        <source>Devices of other rooms that have this from before keep it, and get nothing new. If the player wants it gone there, let them withdraw, and take them in anew.</source>
        <translation>Los dispositivos de otras salas que ya lo tienen lo conservan y no reciben nada nuevo. Si el jugador quiere que desaparezca allí, que se retire y vuelva a darse de alta.</translation>
    </message>
    <message>
        <source>A player card was given, last %1</source>
        <translation>Se dio una tarjeta de jugador, última vez %1</translation>
    </message>
    <message>
        <source>A backup holds it, last %1</source>
        <translation>Está en una copia de seguridad, última vez %1</translation>
    </message>
    <message>
        <source>It is in a bundle for %1, last %2</source>
        <translation>Está en un paquete para %1, última vez %2</translation>
    </message>
</context>
<context>
    <name>PlayerPick</name>
    <message>
        <source>All of this event</source>
        <translation>Todos los de este torneo</translation>
    </message>
    <message>
        <source>Nobody</source>
        <translation>Nadie</translation>
    </message>
    <message>
        <source>Find a player</source>
        <translation>Buscar un jugador</translation>
    </message>
    <message>
        <source>Nobody is chosen yet</source>
        <translation>Aún no se ha elegido a nadie</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) chosen</source>
        <translation>
            <numerusform>%n jugador elegido</numerusform>
            <numerusform>%n jugadores elegidos</numerusform>
        </translation>
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
    <message>
        <source>Known on this device: %1</source>
        <translation>Conocidos en este dispositivo: %1</translation>
    </message>
    <message>
        <source>Find a player</source>
        <translation>Buscar un jugador</translation>
    </message>
    <message>
        <source>Nobody of that name</source>
        <translation>Nadie con ese nombre</translation>
    </message>
    <message>
        <source>Look at the spelling.</source>
        <translation>Revise la ortografía.</translation>
    </message>
    <message>
        <source>All players</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>Change player</source>
        <translation>Cambiar jugador</translation>
    </message>
    <message>
        <source>Consent</source>
        <translation>Acuerdo</translation>
    </message>
    <message>
        <source>Pick a player</source>
        <translation>Elija un jugador</translation>
    </message>
    <message>
        <source>What was agreed, the rackets and the last jobs appear here.</source>
        <translation>Aquí aparecen lo acordado, las raquetas y los últimos encordados.</translation>
    </message>
    <message>
        <source>Forget this player</source>
        <translation>Olvidar a este jugador</translation>
    </message>
    <message>
        <source>Take a card in</source>
        <translation>Recibir tarjeta</translation>
    </message>
    <message>
        <source>Make cards</source>
        <translation>Hacer tarjetas</translation>
    </message>
    <message>
        <source>Past jobs</source>
        <translation>Encordados anteriores</translation>
    </message>
    <message>
        <source>Player card</source>
        <translation>Tarjeta</translation>
    </message>
    <message>
        <source>All that is held on this player</source>
        <translation>Todo lo guardado sobre este jugador</translation>
    </message>
</context>
<context>
    <name>PlayersView</name>
    <message>
        <source>Players</source>
        <translation>Jugadores</translation>
    </message>
    <message>
        <source>new here</source>
        <translation>nuevo aquí</translation>
    </message>
</context>
<context>
    <name>PriceSheet</name>
    <message>
        <source>Price of one string</source>
        <translation>Precio de un cordaje</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>Name of the string, as jobs call it</source>
        <translation>Nombre del cordaje, como lo llaman los trabajos</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Price in %1</source>
        <translation>Precio en %1</translation>
    </message>
    <message>
        <source>0 if it is free.</source>
        <translation>0 si es gratis.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Price: %1</source>
        <translation>Precio: %1</translation>
    </message>
    <message>
        <source>Take it off the list</source>
        <translation>Quitar de la tarifa</translation>
    </message>
    <message>
        <source>Off the list: %1</source>
        <translation>Fuera de la tarifa: %1</translation>
    </message>
</context>
<context>
    <name>PricesModel</name>
    <message>
        <source>A price is not below zero.</source>
        <translation>Un precio no es menor que cero.</translation>
    </message>
    <message>
        <source>No such currency; write its three letters, such as EUR.</source>
        <translation>No existe esa moneda; escriba sus tres letras, por ejemplo EUR.</translation>
    </message>
</context>
<context>
    <name>PrintSheet</name>
    <message>
        <source>Paper</source>
        <translation>Documento</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>In the order of</source>
        <translation>Ordenado por</translation>
    </message>
    <message>
        <source>Family names</source>
        <translation>Apellidos</translation>
    </message>
    <message>
        <source>Tag numbers</source>
        <translation>Números</translation>
    </message>
    <message>
        <source>First free label</source>
        <translation>Primera etiqueta libre</translation>
    </message>
    <message>
        <source>Counted from the top left, row by row.</source>
        <translation>Contada desde arriba a la izquierda, fila por fila.</translation>
    </message>
    <message>
        <source>There is nothing to print</source>
        <translation>No hay nada que imprimir</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Impresora</translation>
    </message>
    <message>
        <source>No printer is set up on this device</source>
        <translation>No hay ninguna impresora en este dispositivo</translation>
    </message>
    <message>
        <source>Save the PDF and print it from a device that has one.</source>
        <translation>Guarde el PDF e imprímalo desde un dispositivo que tenga una.</translation>
    </message>
    <message>
        <source>On its way ...</source>
        <translation>En camino …</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Print on %1</source>
        <translation>Imprimir en %1</translation>
    </message>
    <message>
        <source>Save PDF</source>
        <translation>Guardar PDF</translation>
    </message>
    <message>
        <source>Handed to %1</source>
        <translation>Entregado a %1</translation>
    </message>
    <message>
        <source>Not printed: the paper could not be written</source>
        <translation>No impreso: no se pudo escribir el documento</translation>
    </message>
    <message>
        <source>Not printed: this device has no printing system</source>
        <translation>No impreso: este dispositivo no tiene sistema de impresión</translation>
    </message>
    <message>
        <source>Not printed: the printing system does not answer</source>
        <translation>No impreso: el sistema de impresión no responde</translation>
    </message>
    <message>
        <source>Not printed: the printer refused it</source>
        <translation>No impreso: la impresora lo rechazó</translation>
    </message>
    <message>
        <source>One page</source>
        <translation>Una página</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Página anterior</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Página siguiente</translation>
    </message>
    <message>
        <source>Page %1: %2</source>
        <translation>Página %1: %2</translation>
    </message>
    <message>
        <source>Not on it</source>
        <translation>No están</translation>
    </message>
    <message>
        <source>Save for programs (JSON)</source>
        <translation>Guardar para programas (JSON)</translation>
    </message>
    <message>
        <source>It is saved</source>
        <translation>Está guardado</translation>
    </message>
    <message>
        <source>It was not saved</source>
        <translation>No se guardó</translation>
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
        <translation>%1, prometida para %2: ahora %3, después %4</translation>
    </message>
</context>
<context>
    <name>PromiseNotice</name>
    <message>
        <source>The room can promise %1</source>
        <translation>La sala puede prometer %1</translation>
    </message>
    <message>
        <source>This time can be kept</source>
        <translation>Esta hora se puede cumplir</translation>
    </message>
    <message>
        <source>This time can’t be kept with certainty. The room can promise %1</source>
        <translation>Esta hora no se puede cumplir con certeza. La sala puede prometer %1</translation>
    </message>
    <message>
        <source>This time can’t be kept, and no shift has room</source>
        <translation>Esta hora no se puede cumplir y ningún turno tiene sitio</translation>
    </message>
    <message>
        <source>Estimate: %1 of such promises are kept, by the queue, the shifts and how long rackets took so far.</source>
        <translation>Estimación: se cumple el %1 de tales promesas, según la cola, los turnos y lo que han tardado hasta ahora.</translation>
    </message>
    <message>
        <source>Estimate: %1.</source>
        <translation>Estimación: %1.</translation>
    </message>
    <message>
        <source>Not even before all that waits.</source>
        <translation>Ni siquiera antes que todo lo que espera.</translation>
    </message>
    <message>
        <source>In its turn: %1.</source>
        <translation>En su turno: %1.</translation>
    </message>
    <message>
        <source>For it would have to give way:</source>
        <translation>Tendrían que ceder:</translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation>Tomar %1</translation>
    </message>
    <message>
        <source>Not connected to %1: the benches there hear of these rackets later. Better agree on a time when they do.</source>
        <translation>Sin conexión con %1: los puestos de allí sabrán de estas raquetas más tarde. Mejor acordar entonces una hora.</translation>
    </message>
    <message>
        <source>No time can be reckoned: %1</source>
        <translation>No se puede calcular una hora: %1</translation>
    </message>
</context>
<context>
    <name>PullLine</name>
    <message>
        <source>Calibration line of %1</source>
        <translation>Línea de calibración de %1</translation>
    </message>
    <message>
        <source>set to %1</source>
        <translation>ajustado a %1</translation>
    </message>
</context>
<context>
    <name>QualityChart</name>
    <message numerus="yes">
        <source>Chart of %n racket(s)</source>
        <translation>
            <numerusform>Gráfico de %n raqueta</numerusform>
            <numerusform>Gráfico de %n raquetas</numerusform>
        </translation>
    </message>
    <message>
        <source>The arrow keys choose a racket.</source>
        <translation>Las flechas eligen una raqueta.</translation>
    </message>
</context>
<context>
    <name>QualityModel</name>
    <message>
        <source>Give a pull from 1 to 100 kg.</source>
        <translation>Indique un tiro de 1 a 100 kg.</translation>
    </message>
    <message>
        <source>All rackets</source>
        <translation>Todas las raquetas</translation>
    </message>
    <message>
        <source>Machine: %1</source>
        <translation>Máquina: %1</translation>
    </message>
    <message>
        <source>Stringer: %1</source>
        <translation>Encordador: %1</translation>
    </message>
    <message numerus="yes">
        <source>One reading scatters by about %1 % (estimate of %n reading(s)).</source>
        <translation>
            <numerusform>Una medida se dispersa alrededor de %1 % (estimación de %n medida).</numerusform>
            <numerusform>Una medida se dispersa alrededor de %1 % (estimación de %n medidas).</numerusform>
        </translation>
    </message>
    <message>
        <source>Too few readings to tell their scatter: %1 % is assumed, as such gauges and rooms usually have.</source>
        <translation>Muy pocas medidas para conocer su dispersión: se supone %1 %, lo habitual en estos aparatos y salas.</translation>
    </message>
    <message numerus="yes">
        <source>%1 % of the variance (estimate, 95 %: %2 to %3 %), between %n of them</source>
        <translation>
            <numerusform>%1 % de la varianza (estimación, al 95 %: %2 a %3 %), entre %n</numerusform>
            <numerusform>%1 % de la varianza (estimación, al 95 %: %2 a %3 %), entre %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Stringers: %1</source>
        <translation>Encordadores: %1</translation>
    </message>
    <message>
        <source>Machines: %1</source>
        <translation>Máquinas: %1</translation>
    </message>
    <message>
        <source>Frames: %1</source>
        <translation>Marcos: %1</translation>
    </message>
    <message>
        <source>; they differ clearly</source>
        <translation>; difieren claramente</translation>
    </message>
    <message>
        <source>; they seem to differ</source>
        <translation>; parecen diferir</translation>
    </message>
    <message>
        <source>; no clear difference</source>
        <translation>; sin diferencia clara</translation>
    </message>
    <message numerus="yes">
        <source>Of 100 rackets about %1 lie more than %2 % from what was to be expected (estimate, 95 %: %3 to %4). Of the %n read, %5 did.</source>
        <translation>
            <numerusform>De 100 raquetas, unas %1 se apartan más de %2 % de lo esperado (estimación, al 95 %: %3 a %4). De %n medida: %5.</numerusform>
            <numerusform>De 100 raquetas, unas %1 se apartan más de %2 % de lo esperado (estimación, al 95 %: %3 a %4). De %n medidas: %5.</numerusform>
        </translation>
    </message>
    <message>
        <source>Too few readings to tell what can be held: %1 of at least %2 that can be compared.</source>
        <translation>Muy pocas medidas para decir qué se puede mantener: %1 de al menos %2 comparables.</translation>
    </message>
    <message>
        <source>%1 % (± %2, estimate)</source>
        <translation>%1 % (± %2, estimación)</translation>
    </message>
    <message>
        <source>nothing to compare it with yet</source>
        <translation>aún nada con qué compararla</translation>
    </message>
    <message>
        <source>Racket %1: %2 % (± %3)</source>
        <translation>Raqueta %1: %2 % (± %3)</translation>
    </message>
    <message numerus="yes">
        <source>Machine %1: %2 % (± %3) over %n racket(s)</source>
        <translation>
            <numerusform>Máquina %1: %2 % (± %3) en %n raqueta</numerusform>
            <numerusform>Máquina %1: %2 % (± %3) en %n raquetas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stringer %1: %2 % (± %3) over %n racket(s)</source>
        <translation>
            <numerusform>Encordador %1: %2 % (± %3) en %n raqueta</numerusform>
            <numerusform>Encordador %1: %2 % (± %3) en %n raquetas</numerusform>
        </translation>
    </message>
    <message>
        <source>It was never held against a gauge.</source>
        <translation>Nunca se ha comprobado con el calibrador.</translation>
    </message>
    <message>
        <source>No pull against the gauge was noted.</source>
        <translation>No se ha anotado ningún tiro con el calibrador.</translation>
    </message>
    <message numerus="yes">
        <source>%n pull(s) noted, too few for a line: at three settings or more, each twice, on one day.</source>
        <translation>
            <numerusform>%n tiro anotado, muy pocos para una línea: tirar en un mismo día con tres ajustes o más, dos veces cada uno.</numerusform>
            <numerusform>%n tiros anotados, muy pocos para una línea: tirar en un mismo día con tres ajustes o más, dos veces cada uno.</numerusform>
        </translation>
    </message>
    <message>
        <source>What to set for %1 is not known: the pulls noted do not reach it.</source>
        <translation>No se sabe qué ajustar para %1: los tiros anotados no llegan hasta ahí.</translation>
    </message>
    <message>
        <source>At %1 it is off by %2 % (± %3, estimate); %4 % are tolerated.</source>
        <translation>A %1 se desvía %2 % (± %3, estimación); se tolera %4 %.</translation>
    </message>
    <message>
        <source>There is no chart yet.</source>
        <translation>Todavía no hay gráfico.</translation>
    </message>
    <message>
        <source>Wait a moment and save it again.</source>
        <translation>Espere un momento y guárdelo otra vez.</translation>
    </message>
</context>
<context>
    <name>QualityRulesSheet</name>
    <message>
        <source>The room’s rules</source>
        <translation>Reglas de la sala</translation>
    </message>
    <message>
        <source>Tolerance of a string bed, per cent either way</source>
        <translation>Tolerancia de un encordado, por ciento a cada lado</translation>
    </message>
    <message>
        <source>Empty: 4 %, two pounds of fifty. Half of it is left to the machine.</source>
        <translation>Vacío: 4 %, dos libras de cincuenta. La mitad queda para la máquina.</translation>
    </message>
    <message>
        <source>Machines are held against the gauge every so many days</source>
        <translation>Las máquinas se comprueban con el calibrador cada tantos días</translation>
    </message>
    <message>
        <source>Empty: every day.</source>
        <translation>Vacío: cada día.</translation>
    </message>
    <message>
        <source>Keep the rules</source>
        <translation>Guardar las reglas</translation>
    </message>
    <message>
        <source>Rules kept</source>
        <translation>Reglas guardadas</translation>
    </message>
</context>
<context>
    <name>QualityView</name>
    <message>
        <source>a racket by itself</source>
        <translation>de una sola raqueta</translation>
    </message>
    <message>
        <source>a machine</source>
        <translation>de una máquina</translation>
    </message>
    <message>
        <source>a stringer</source>
        <translation>de un encordador</translation>
    </message>
    <message>
        <source>Nothing can be told</source>
        <translation>No se puede decir nada</translation>
    </message>
    <message>
        <source>No string bed was measured yet</source>
        <translation>Aún no se ha medido ningún encordado</translation>
    </message>
    <message>
        <source>Measure each racket before it leaves the bench and enter the reading there; from the fifth of a kind on it is compared.</source>
        <translation>Mide cada raqueta antes de que deje el puesto e introduce allí la medida; a partir de la quinta de un tipo se compara.</translation>
    </message>
    <message>
        <source>Save as a table (CSV)</source>
        <translation>Guardar como tabla (CSV)</translation>
    </message>
    <message>
        <source>The room’s rules</source>
        <translation>Reglas de la sala</translation>
    </message>
    <message>
        <source>Racket after racket</source>
        <translation>Raqueta tras raqueta</translation>
    </message>
    <message>
        <source>The newest %1 of %2; per cent from what was to be expected, estimates</source>
        <translation>Las %1 más recientes de %2; por ciento respecto a lo esperado, estimaciones</translation>
    </message>
    <message>
        <source>Per cent from what was to be expected, estimates</source>
        <translation>Por ciento respecto a lo esperado, estimaciones</translation>
    </message>
    <message>
        <source>Tap a racket to read it.</source>
        <translation>Toca una raqueta para leerla.</translation>
    </message>
    <message>
        <source>alarm of %1</source>
        <translation>alarma %1</translation>
    </message>
    <message>
        <source>beyond the tolerance</source>
        <translation>fuera de tolerancia</translation>
    </message>
    <message>
        <source>beyond the tolerance (the band)</source>
        <translation>fuera de tolerancia (la banda)</translation>
    </message>
    <message>
        <source>nothing to compare with yet</source>
        <translation>aún nada que comparar</translation>
    </message>
    <message>
        <source>alarm of a racket (dashed: its limits)</source>
        <translation>alarma de una raqueta (guiones: límites)</translation>
    </message>
    <message>
        <source>alarm of a machine</source>
        <translation>alarma de una máquina</translation>
    </message>
    <message>
        <source>alarm of a stringer</source>
        <translation>alarma de un encordador</translation>
    </message>
    <message>
        <source>moving average, begun anew after an alarm</source>
        <translation>media móvil, reiniciada tras una alarma</translation>
    </message>
    <message>
        <source>What stands out</source>
        <translation>Lo que destaca</translation>
    </message>
    <message numerus="yes">
        <source>The newest first; %n older one(s) are on the chart</source>
        <translation>
            <numerusform>Lo más reciente primero; %n anterior está en el gráfico</numerusform>
            <numerusform>Lo más reciente primero; %n anteriores están en el gráfico</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing stands out beyond what chance alone would do.</source>
        <translation>Nada destaca más de lo que haría el azar.</translation>
    </message>
    <message>
        <source>Likely causes (estimate): %1</source>
        <translation>Causas probables (estimación): %1</translation>
    </message>
    <message>
        <source>%1, %2 %</source>
        <translation>%1, %2 %</translation>
    </message>
    <message>
        <source>Where the scatter comes from</source>
        <translation>De dónde viene la dispersión</translation>
    </message>
    <message>
        <source>Too few readings, or too few who strung them, to tell.</source>
        <translation>Muy pocas medidas, o muy pocos encordadores, para decirlo.</translation>
    </message>
    <message>
        <source>Left out: these readings can’t be of their rackets</source>
        <translation>Excluidas: estas medidas no pueden ser de sus raquetas</translation>
    </message>
    <message>
        <source>Machines against the gauge</source>
        <translation>Máquinas frente al calibrador</translation>
    </message>
    <message>
        <source>What to set for a pull of, in kg</source>
        <translation>Qué ajustar para un tiro de, en kg</translation>
    </message>
    <message>
        <source>Enter a pull against the gauge</source>
        <translation>Introducir un tiro con el calibrador</translation>
    </message>
    <message>
        <source>All figures are estimates of readings and say nothing on anybody’s health; whose arm hurts sees a physician.</source>
        <translation>Todas las cifras son estimaciones de medidas y no dicen nada sobre la salud; a quien le duela el brazo, que consulte al médico.</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabla (*.csv)</translation>
    </message>
    <message>
        <source>Save as a sheet (PDF)</source>
        <translation>Guardar como hoja (PDF)</translation>
    </message>
    <message>
        <source>Sheet (*.pdf)</source>
        <translation>Hoja (*.pdf)</translation>
    </message>
</context>
<context>
    <name>QuestionCard</name>
    <message>
        <source>Looked where it is: %1</source>
        <translation>Se miró dónde está: %1</translation>
    </message>
    <message>
        <source>Tag %1: two people moved it on while apart</source>
        <translation>Etiqueta %1: dos personas la movieron sin verse</translation>
    </message>
    <message>
        <source>Two people moved this racket on while apart</source>
        <translation>Dos personas movieron esta raqueta sin verse</translation>
    </message>
    <message>
        <source>Where is the racket now?</source>
        <translation>¿Dónde está ahora la raqueta?</translation>
    </message>
    <message>
        <source>What does the player want?</source>
        <translation>¿Qué quiere el jugador?</translation>
    </message>
    <message>
        <source>Choose an answer</source>
        <translation>Elija una respuesta</translation>
    </message>
    <message>
        <source>Close with: %1</source>
        <translation>Cerrar con: %1</translation>
    </message>
    <message>
        <source>Say the answer</source>
        <translation>Diga la respuesta</translation>
    </message>
    <message>
        <source>Asked who has it: %1</source>
        <translation>Se preguntó quién la tiene: %1</translation>
    </message>
    <message>
        <source>Who has the racket now?</source>
        <translation>¿Quién tiene la raqueta ahora?</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Etiqueta %1</translation>
    </message>
    <message>
        <source>charged by two tablets while apart</source>
        <translation>cobrado por dos tabletas por separado</translation>
    </message>
    <message>
        <source>What does it cost?</source>
        <translation>¿Cuánto cuesta?</translation>
    </message>
    <message>
        <source>two linked books of this player differ</source>
        <translation>dos libros vinculados de este jugador difieren</translation>
    </message>
    <message>
        <source>Which of them is right?</source>
        <translation>¿Cuál es la correcta?</translation>
    </message>
    <message>
        <source>It was answered elsewhere meanwhile: %1 (%2). Nothing was written here.</source>
        <translation>Entretanto se respondió en otro lugar: %1 (%2). Aquí no se anotó nada.</translation>
    </message>
    <message>
        <source>It was closed elsewhere meanwhile. Nothing was written here.</source>
        <translation>Entretanto se cerró en otro lugar. Aquí no se anotó nada.</translation>
    </message>
    <message>
        <source>Another answer came in meanwhile. Look at all of them and choose again.</source>
        <translation>Entretanto llegó otra respuesta. Mírelas todas y elija de nuevo.</translation>
    </message>
    <message>
        <source>I see</source>
        <translation>Entendido</translation>
    </message>
</context>
<context>
    <name>QuestionsModel</name>
    <message>
        <source>this question was answered at another tablet meanwhile</source>
        <translation>entretanto se respondió esta pregunta en otra tableta</translation>
    </message>
    <message>
        <source>look at what stands there now</source>
        <translation>mire lo que consta ahora</translation>
    </message>
</context>
<context>
    <name>QuestionsPage</name>
    <message>
        <source>Questions</source>
        <translation>Preguntas</translation>
    </message>
    <message numerus="yes">
        <source>%n open. Ask the player, then close it with the answer.</source>
        <translation>
            <numerusform>%n abierta. Pregunte al jugador y ciérrela con la respuesta.</numerusform>
            <numerusform>%n abiertas. Pregunte a los jugadores y ciérrelas con la respuesta.</numerusform>
        </translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Cerrada</translation>
    </message>
    <message>
        <source>Good</source>
        <translation>Bien</translation>
    </message>
    <message>
        <source>No question is open</source>
        <translation>No hay preguntas abiertas</translation>
    </message>
    <message>
        <source>Where two people gave different answers without seeing each other, both stand here until someone closes the question.</source>
        <translation>Cuando dos personas dieron respuestas distintas sin verse, ambas quedan aquí hasta que alguien cierre la pregunta.</translation>
    </message>
    <message>
        <source>%1, %2: %3. All devices follow.</source>
        <translation>%1, %2: %3. Todos los dispositivos lo siguen.</translation>
    </message>
</context>
<context>
    <name>RacketSheet</name>
    <message>
        <source>Change racket</source>
        <translation>Cambiar raqueta</translation>
    </message>
    <message>
        <source>Mark on the racket</source>
        <translation>Marca en la raqueta</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Fabricante</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modelo</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Número de serie</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
</context>
<context>
    <name>RacketsCard</name>
    <message>
        <source>Rackets</source>
        <translation>Raquetas</translation>
    </message>
    <message>
        <source>Handed over: %1</source>
        <translation>Entregadas: %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
    <message>
        <source>Racket without a mark</source>
        <translation>Raqueta sin marca</translation>
    </message>
    <message>
        <source>in the room already</source>
        <translation>ya en la sala</translation>
    </message>
    <message>
        <source>Add a racket</source>
        <translation>Añadir una raqueta</translation>
    </message>
    <message>
        <source>Mark on racket %1</source>
        <translation>Marca en la raqueta %1</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Fabricante</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modelo</translation>
    </message>
    <message>
        <source>Take racket %1 out</source>
        <translation>Quitar la raqueta %1</translation>
    </message>
</context>
<context>
    <name>ReadingSheet</name>
    <message>
        <source>What was measured</source>
        <translation>Qué se ha medido</translation>
    </message>
    <message>
        <source>String bed</source>
        <translation>Encordado</translation>
    </message>
    <message>
        <source>Tone</source>
        <translation>Tono</translation>
    </message>
    <message>
        <source>Tension head</source>
        <translation>Cabezal de tensión</translation>
    </message>
    <message>
        <source>Tone of the string bed</source>
        <translation>Tono del encordado</translation>
    </message>
    <message>
        <source>Pull of the tension head</source>
        <translation>Tracción del cabezal de tensión</translation>
    </message>
    <message>
        <source>String-bed stiffness</source>
        <translation>Rigidez del encordado</translation>
    </message>
    <message>
        <source>Unit on the instrument</source>
        <translation>Unidad del dispositivo</translation>
    </message>
    <message>
        <source>Its own scale</source>
        <translation>Su propia escala</translation>
    </message>
    <message>
        <source>Instrument, or a note</source>
        <translation>Aparato o una nota</translation>
    </message>
    <message>
        <source>Keep this reading</source>
        <translation>Guardar esta medición</translation>
    </message>
    <message>
        <source>Measured: %1 %2</source>
        <translation>Medido: %1 %2</translation>
    </message>
    <message>
        <source>What the machine was set to</source>
        <translation>A qué estaba ajustada la máquina</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Etiqueta %1</translation>
    </message>
    <message>
        <source>Enter a reading: %1</source>
        <translation>Anotar una medición: %1</translation>
    </message>
</context>
<context>
    <name>ReadingsCard</name>
    <message>
        <source>Readings</source>
        <translation>Mediciones</translation>
    </message>
    <message>
        <source>Nothing was measured yet.</source>
        <translation>Aún no se ha medido nada.</translation>
    </message>
    <message>
        <source>Enter a reading</source>
        <translation>Anotar una medición</translation>
    </message>
</context>
<context>
    <name>ReadyCard</name>
    <message>
        <source>Ready by</source>
        <translation>Lista para</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>Ready in %1 h</source>
        <translation>Lista en %1 h</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>No time said</source>
        <translation>Ninguna hora dicha</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Urgente</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>On court</source>
        <translation>De pista</translation>
    </message>
    <message>
        <source>Bags that came with the rackets</source>
        <translation>Bolsas que llegaron con las raquetas</translation>
    </message>
</context>
<context>
    <name>RoleWords</name>
    <message>
        <source>head of the room</source>
        <translation>jefe de la sala</translation>
    </message>
    <message>
        <source>desk</source>
        <translation>recepción</translation>
    </message>
    <message>
        <source>stringer</source>
        <translation>encordador</translation>
    </message>
    <message>
        <source>reader</source>
        <translation>lector</translation>
    </message>
</context>
<context>
    <name>RoomBoard</name>
    <message numerus="yes">
        <source>%1: %n racket(s)</source>
        <translation>
            <numerusform>%1: %n raqueta</numerusform>
            <numerusform>%1: %n raquetas</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RoomList</name>
    <message numerus="yes">
        <source>%1: %n racket(s)</source>
        <translation>
            <numerusform>%1: %n raqueta</numerusform>
            <numerusform>%1: %n raquetas</numerusform>
        </translation>
    </message>
    <message>
        <source>No racket is at this stage.</source>
        <translation>Ninguna raqueta está en esta etapa.</translation>
    </message>
</context>
<context>
    <name>RoomModel</name>
    <message>
        <source>this racket moved on elsewhere meanwhile</source>
        <translation>esta raqueta avanzó entretanto en otro lugar</translation>
    </message>
    <message>
        <source>look at it again</source>
        <translation>mírela de nuevo</translation>
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
    <message>
        <source>Tag %1: %2</source>
        <translation>Etiqueta %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) here</source>
        <translation>
            <numerusform>%n raqueta aquí</numerusform>
            <numerusform>%n raquetas aquí</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n late</source>
        <translation>
            <numerusform>%n con retraso</numerusform>
            <numerusform>%n con retraso</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n collected</source>
        <translation>
            <numerusform>%n recogida</numerusform>
            <numerusform>%n recogidas</numerusform>
        </translation>
    </message>
    <message>
        <source>By stage</source>
        <translation>Por etapa</translation>
    </message>
    <message>
        <source>All jobs</source>
        <translation>Todos los encordados</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Lo que se muestra</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its rackets come here by themselves.</source>
        <translation>Empareje un servidor en Intercambio; sus raquetas llegan aquí solas.</translation>
    </message>
    <message>
        <source>Compare two tags</source>
        <translation>Comparar dos etiquetas</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
</context>
<context>
    <name>RushMark</name>
    <message>
        <source>On court</source>
        <translation>De pista</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Urgente</translation>
    </message>
</context>
<context>
    <name>SaidBy</name>
    <message>
        <source>Your name</source>
        <translation>Su nombre</translation>
    </message>
</context>
<context>
    <name>SaleSheet</name>
    <message>
        <source>Charge something else</source>
        <translation>Cobrar otra cosa</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Price of one in %1</source>
        <translation>Precio por unidad en %1</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántos</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Charge it</source>
        <translation>Cobrar</translation>
    </message>
    <message>
        <source>Charged: %1 × %2</source>
        <translation>Cobrado: %1 × %2</translation>
    </message>
    <message>
        <source>Charged: %1</source>
        <translation>Cobrado: %1</translation>
    </message>
</context>
<context>
    <name>SameFeelPart</name>
    <message>
        <source>Same feel with …</source>
        <translation>La misma sensación con …</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Qué cambia</translation>
    </message>
    <message>
        <source>String</source>
        <translation>Cordaje</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Calibre</translation>
    </message>
    <message>
        <source>Pre-stretch</source>
        <translation>Preestirado</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Ambas</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Verticales</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Horizontales</translation>
    </message>
    <message>
        <source>Another string of the stock</source>
        <translation>Otro cordaje de las existencias</translation>
    </message>
    <message>
        <source>There is no string in the stock to choose from.</source>
        <translation>No hay ningún cordaje en las existencias para elegir.</translation>
    </message>
    <message>
        <source>Mains pulled by so much more or less</source>
        <translation>Verticales con tanto más o menos de tensión</translation>
    </message>
    <message>
        <source>Crosses pulled by so much more or less</source>
        <translation>Horizontales con tanto más o menos de tensión</translation>
    </message>
    <message>
        <source>Mains ±</source>
        <translation>Verticales ±</translation>
    </message>
    <message>
        <source>Crosses ±</source>
        <translation>Horizontales ±</translation>
    </message>
    <message>
        <source>The crosses make up for it</source>
        <translation>Las horizontales lo compensan</translation>
    </message>
    <message>
        <source>The mains make up for it</source>
        <translation>Las verticales lo compensan</translation>
    </message>
    <message>
        <source>Head size</source>
        <translation>Tamaño de la cabeza</translation>
    </message>
    <message>
        <source>Another racket with the same strings</source>
        <translation>Otra raqueta con las mismas cuerdas</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Patrón</translation>
    </message>
    <message>
        <source>Head size of the other racket</source>
        <translation>Tamaño de la cabeza de la otra raqueta</translation>
    </message>
    <message>
        <source>Mains of the other racket</source>
        <translation>Verticales de la otra raqueta</translation>
    </message>
    <message>
        <source>Crosses of the other racket</source>
        <translation>Horizontales de la otra raqueta</translation>
    </message>
    <message>
        <source>For another racket: keep to the tensions printed on its own frame.</source>
        <translation>Para otra raqueta: respete las tensiones impresas en su propio marco.</translation>
    </message>
</context>
<context>
    <name>SamePersonCard</name>
    <message>
        <source>Names and books</source>
        <translation>Nombres y libros</translation>
    </message>
    <message>
        <source>Also %1</source>
        <translation>También %1</translation>
    </message>
    <message>
        <source>Before: %1</source>
        <translation>Antes: %1</translation>
    </message>
    <message>
        <source>Married: %1</source>
        <translation>De casada o casado: %1</translation>
    </message>
    <message>
        <source>Called %1</source>
        <translation>Llamado %1</translation>
    </message>
    <message>
        <source>Also spelt %1</source>
        <translation>También escrito %1</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Retirar: %1</translation>
    </message>
    <message>
        <source>Name taken back</source>
        <translation>Nombre retirado</translation>
    </message>
    <message>
        <source>Another name</source>
        <translation>Otro nombre</translation>
    </message>
    <message>
        <source>One more book of this person, not on this device</source>
        <translation>Otro libro de esta persona, que no está en este dispositivo</translation>
    </message>
    <message>
        <source>The books differ: %1, %2</source>
        <translation>Los libros no coinciden: %1, %2</translation>
    </message>
    <message>
        <source>The books differ: %1</source>
        <translation>Los libros no coinciden: %1</translation>
    </message>
    <message>
        <source>Both books say: %1</source>
        <translation>Ambos libros dicen: %1</translation>
    </message>
    <message>
        <source>Another book of this person</source>
        <translation>Otro libro de esta persona</translation>
    </message>
    <message>
        <source>Not the same person</source>
        <translation>No es la misma persona</translation>
    </message>
</context>
<context>
    <name>SamePersonSheet</name>
    <message>
        <source>Another book of this person</source>
        <translation>Otro libro de esta persona</translation>
    </message>
    <message>
        <source>Linked books are shown together: history in order, the last time of either. Nothing is copied, and they can be parted again.</source>
        <translation>Los libros vinculados se muestran juntos: el historial en orden, la última vez de cualquiera. No se copia nada y se pueden separar de nuevo.</translation>
    </message>
    <message>
        <source>Find a player</source>
        <translation>Buscar un jugador</translation>
    </message>
    <message>
        <source>The same person</source>
        <translation>La misma persona</translation>
    </message>
    <message>
        <source>Two different people</source>
        <translation>Dos personas distintas</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation>Otra persona</translation>
    </message>
</context>
<context>
    <name>SaveNote</name>
    <message>
        <source>There is something of that name that is no file; choose another name.</source>
        <translation>Algo con ese nombre no es un archivo; elija otro nombre.</translation>
    </message>
    <message>
        <source>The folder is not there; choose another one.</source>
        <translation>La carpeta no existe; elija otra.</translation>
    </message>
    <message>
        <source>Nothing may be written there; choose another folder.</source>
        <translation>Allí no se puede escribir; elija otra carpeta.</translation>
    </message>
    <message>
        <source>Is there room left? Choose another folder, or make room.</source>
        <translation>¿Queda sitio? Elija otra carpeta o haga sitio.</translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation>Guardado como %1</translation>
    </message>
    <message>
        <source>Not saved as %1. %2</source>
        <translation>No guardado como %1. %2</translation>
    </message>
</context>
<context>
    <name>ScanDoings</name>
    <message>
        <source>Scanned again. The next step:</source>
        <translation>Escaneada de nuevo. El paso siguiente:</translation>
    </message>
    <message>
        <source>This number was given out twice</source>
        <translation>Este número se dio dos veces</translation>
    </message>
    <message>
        <source>Look at the racket, and choose whose it is.</source>
        <translation>Mire la raqueta y elija de quién es.</translation>
    </message>
</context>
<context>
    <name>ScanModel</name>
    <message>
        <source>Tag %1, %2</source>
        <translation>Etiqueta %1, %2</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Antes de %1</translation>
    </message>
    <message>
        <source>There is no event yet</source>
        <translation>Aún no hay torneo</translation>
    </message>
    <message>
        <source>This tag is of another event</source>
        <translation>Esta etiqueta es de otro torneo</translation>
    </message>
    <message>
        <source>Find the racket by its player&apos;s name.</source>
        <translation>Busque la raqueta por el nombre.</translation>
    </message>
    <message>
        <source>The tag was misread</source>
        <translation>La etiqueta se leyó mal</translation>
    </message>
    <message>
        <source>Scan it again, or type the number that stands on it.</source>
        <translation>Escanéela de nuevo o escriba el número que lleva.</translation>
    </message>
    <message>
        <source>The scanner types for another keyboard</source>
        <translation>El lector teclea para otro teclado</translation>
    </message>
    <message>
        <source>Set the scanner to the keyboard that this device is set to.</source>
        <translation>Ajuste el lector al teclado de este dispositivo.</translation>
    </message>
    <message>
        <source>This is no code of a tag</source>
        <translation>Esto no es el código de una etiqueta</translation>
    </message>
    <message>
        <source>Scan the tag, or type the number that stands on it.</source>
        <translation>Escanee la etiqueta o escriba el número que lleva.</translation>
    </message>
    <message>
        <source>No racket here has tag %1</source>
        <translation>Ninguna raqueta de aquí lleva la etiqueta %1</translation>
    </message>
    <message>
        <source>It may not have come to this device yet: look under Exchange.</source>
        <translation>Quizá aún no ha llegado a este dispositivo: mire en Intercambio.</translation>
    </message>
    <message>
        <source>This number was given out twice</source>
        <translation>Este número se dio dos veces</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange, or make an event.</source>
        <translation>Vincule con un servidor de torneo en Intercambio, o cree un torneo.</translation>
    </message>
</context>
<context>
    <name>ScopeBar</name>
    <message>
        <source>All %1</source>
        <translation>Las %1</translation>
    </message>
    <message>
        <source>These answers are for</source>
        <translation>Estas respuestas valen para</translation>
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
    <message>
        <source>Who works here</source>
        <translation>Quién trabaja aquí</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Su nombre</translation>
    </message>
    <message>
        <source>It stands beside everything that you do with a racket.</source>
        <translation>Figura junto a todo lo que haga con una raqueta.</translation>
    </message>
    <message>
        <source>Name of this tablet</source>
        <translation>Nombre de esta tableta</translation>
    </message>
    <message>
        <source>Others read it beside your answers; a new one holds from the next start.</source>
        <translation>Otros lo leen junto a sus respuestas; uno nuevo vale desde el próximo inicio.</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Acerca de</translation>
    </message>
    <message>
        <source>Weavelog %1</source>
        <translation>Weavelog %1</translation>
    </message>
    <message>
        <source>What it says about frames, strings and tension is no more than a reminder: the maker&apos;s instructions, local rules and licensed practice come first.</source>
        <translation>Lo que dice sobre marcos, cuerdas y tensión es solo un recordatorio: primero van las instrucciones del fabricante, las reglas locales y la práctica autorizada.</translation>
    </message>
    <message>
        <source>Everything is kept in this folder:</source>
        <translation>Todo se guarda en esta carpeta:</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Carpeta</translation>
    </message>
    <message>
        <source>Scanner</source>
        <translation>Lector de códigos</translation>
    </message>
    <message>
        <source>The second scan takes the next step</source>
        <translation>La segunda lectura da el paso siguiente</translation>
    </message>
    <message>
        <source>Off: it is offered, and one tap takes it. Each step can be taken back.</source>
        <translation>Desactivado: se ofrece, y un toque lo da. Cada paso se puede deshacer.</translation>
    </message>
    <message>
        <source>They hold for this device only; what an event is called holds for all who work at it.</source>
        <translation>Valen solo para este dispositivo; cómo se llama un torneo vale para todos los que trabajan en él.</translation>
    </message>
</context>
<context>
    <name>SetupCard</name>
    <message>
        <source>Setup</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>What differs from the last job (%1) is marked.</source>
        <translation>Lo que difiere del último encordado (%1) está marcado.</translation>
    </message>
    <message>
        <source>The first job of this player that is known here.</source>
        <translation>El primer encordado de este jugador que se conoce aquí.</translation>
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
    <name>ShiftSheet</name>
    <message>
        <source>Plan a shift</source>
        <translation>Planear un turno</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>A time that is earlier than the beginning is on the next day.</source>
        <translation>Una hora anterior al comienzo es la del día siguiente.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Shift planned</source>
        <translation>Turno planeado</translation>
    </message>
</context>
<context>
    <name>StageMark</name>
    <message>
        <source>%1, rush</source>
        <translation>%1, urgente</translation>
    </message>
</context>
<context>
    <name>StageWords</name>
    <message>
        <source>Not here yet</source>
        <translation>Aún no está aquí</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Recibida</translation>
    </message>
    <message>
        <source>Inspected</source>
        <translation>Revisada</translation>
    </message>
    <message>
        <source>Waiting for an answer</source>
        <translation>Espera respuesta</translation>
    </message>
    <message>
        <source>Cut out</source>
        <translation>Cortada</translation>
    </message>
    <message>
        <source>On the machine</source>
        <translation>En la máquina</translation>
    </message>
    <message>
        <source>Strung</source>
        <translation>Encordada</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Comprobada</translation>
    </message>
    <message>
        <source>Stencilled</source>
        <translation>Con plantilla</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>Collected</source>
        <translation>Recogida</translation>
    </message>
    <message>
        <source>Put aside</source>
        <translation>Apartada</translation>
    </message>
    <message>
        <source>Another stage</source>
        <translation>Otra etapa</translation>
    </message>
</context>
<context>
    <name>StencilBed</name>
    <message>
        <source>ink: %1</source>
        <translation>tinta: %1</translation>
    </message>
    <message>
        <source>Ink: %1</source>
        <translation>Tinta: %1</translation>
    </message>
    <message>
        <source>Ink not said</source>
        <translation>Tinta sin indicar</translation>
    </message>
</context>
<context>
    <name>StencilSheet</name>
    <message>
        <source>Stencils: %1</source>
        <translation>Marcas: %1</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Etiqueta %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
    <message>
        <source>The player asked for no stencil.</source>
        <translation>No se ha pedido ninguna marca.</translation>
    </message>
    <message>
        <source>Mark of the string</source>
        <translation>Marca del cordaje</translation>
    </message>
    <message>
        <source>Mark of the racket</source>
        <translation>Marca de la raqueta</translation>
    </message>
    <message>
        <source>The stencils are on</source>
        <translation>Las marcas están puestas</translation>
    </message>
    <message>
        <source>Tag %1: %2</source>
        <translation>Etiqueta %1: %2</translation>
    </message>
</context>
<context>
    <name>StepSheet</name>
    <message>
        <source>Step added</source>
        <translation>Paso añadido</translation>
    </message>
    <message>
        <source>Words changed</source>
        <translation>Palabras cambiadas</translation>
    </message>
    <message>
        <source>New step</source>
        <translation>Paso nuevo</translation>
    </message>
    <message>
        <source>Words of the step</source>
        <translation>Palabras del paso</translation>
    </message>
    <message>
        <source>What is to be done</source>
        <translation>Qué hay que hacer</translation>
    </message>
    <message>
        <source>Left empty, the usual words come back.</source>
        <translation>Si queda vacío, vuelven las palabras habituales.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>StepsCard</name>
    <message>
        <source>Steps</source>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>%1 of %2 done. The room may change this list; the makers’ instructions come before it.</source>
        <translation>%1 de %2 hechos. La sala puede cambiar esta lista; las instrucciones de los fabricantes van antes.</translation>
    </message>
</context>
<context>
    <name>StockItemSheet</name>
    <message>
        <source>New string</source>
        <translation>Nuevo cordaje</translation>
    </message>
    <message>
        <source>Name of the string, as jobs call it</source>
        <translation>Nombre del cordaje, como lo llaman los trabajos</translation>
    </message>
    <message>
        <source>Gauge in mm</source>
        <translation>Calibre en mm</translation>
    </message>
    <message>
        <source>Counted in</source>
        <translation>Se cuenta en</translation>
    </message>
    <message>
        <source>Metres of a reel</source>
        <translation>Metros de una bobina</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Juegos</translation>
    </message>
    <message>
        <source>Whose it is</source>
        <translation>De quién es</translation>
    </message>
    <message>
        <source>The room&apos;s</source>
        <translation>De la sala</translation>
    </message>
    <message>
        <source>A stringer&apos;s</source>
        <translation>De un encordador</translation>
    </message>
    <message>
        <source>A player&apos;s</source>
        <translation>De un jugador</translation>
    </message>
    <message>
        <source>Name of the stringer</source>
        <translation>Nombre del encordador</translation>
    </message>
    <message>
        <source>Player</source>
        <translation>Jugador</translation>
    </message>
    <message>
        <source>Metres that are there</source>
        <translation>Metros que hay</translation>
    </message>
    <message>
        <source>Sets that are there</source>
        <translation>Juegos que hay</translation>
    </message>
    <message>
        <source>Call it low at so many metres</source>
        <translation>Queda poco con tantos metros</translation>
    </message>
    <message>
        <source>Call it low at so many sets</source>
        <translation>Queda poco con tantos juegos</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>In stock: %1</source>
        <translation>En existencias: %1</translation>
    </message>
    <message>
        <source>What it is made of</source>
        <translation>De qué es</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin decir</translation>
    </message>
    <message>
        <source>Natural gut</source>
        <translation>Tripa natural</translation>
    </message>
    <message>
        <source>Multifilament</source>
        <translation>Multifilamento</translation>
    </message>
    <message>
        <source>Synthetic gut</source>
        <translation>Tripa sintética</translation>
    </message>
    <message>
        <source>Polyester</source>
        <translation>Poliéster</translation>
    </message>
    <message>
        <source>Aramid</source>
        <translation>Aramida</translation>
    </message>
</context>
<context>
    <name>StockModel</name>
    <message>
        <source>Give metres, such as 62.5.</source>
        <translation>Indique metros, por ejemplo 62,5.</translation>
    </message>
    <message>
        <source>Give a whole number of sets.</source>
        <translation>Indique un número entero de juegos.</translation>
    </message>
    <message>
        <source>Give the gauge in mm, such as 1.25.</source>
        <translation>Indique el calibre en mm, por ejemplo 1,25.</translation>
    </message>
</context>
<context>
    <name>StockPage</name>
    <message>
        <source>Stock</source>
        <translation>Existencias</translation>
    </message>
    <message numerus="yes">
        <source>%n string(s) low</source>
        <translation>
            <numerusform>queda poco de %n cordaje</numerusform>
            <numerusform>queda poco de %n cordajes</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is low</source>
        <translation>No falta nada</translation>
    </message>
    <message>
        <source>New string</source>
        <translation>Nuevo cordaje</translation>
    </message>
    <message>
        <source>Nothing is in stock</source>
        <translation>No hay existencias</translation>
    </message>
    <message>
        <source>Note every reel and set that comes; then you see what is left and until when.</source>
        <translation>Anote cada bobina y cada juego que llegue; verá lo que queda y hasta cuándo.</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its stock comes here by itself.</source>
        <translation>Enlace con un servidor del torneo en Intercambio; sus existencias llegan aquí por sí solas.</translation>
    </message>
</context>
<context>
    <name>StockRow</name>
    <message>
        <source>gone by %1 at today&apos;s pace</source>
        <comment>time of day</comment>
        <translation>se acaba hacia las %1 al ritmo de hoy</translation>
    </message>
    <message>
        <source>gone by %1 at today&apos;s pace</source>
        <comment>day</comment>
        <translation>se acaba el %1 al ritmo de hoy</translation>
    </message>
    <message>
        <source>low</source>
        <translation>queda poco</translation>
    </message>
    <message>
        <source>used today: %1</source>
        <translation>usado hoy: %1</translation>
    </message>
    <message>
        <source>Of the room</source>
        <translation>De la sala</translation>
    </message>
    <message>
        <source>Of the stringers</source>
        <translation>De los encordadores</translation>
    </message>
    <message>
        <source>Of the players</source>
        <translation>De los jugadores</translation>
    </message>
</context>
<context>
    <name>StockSheet</name>
    <message>
        <source>Left</source>
        <translation>Queda</translation>
    </message>
    <message>
        <source>Called low at</source>
        <translation>Queda poco con</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Qué pasó</translation>
    </message>
    <message>
        <source>It came</source>
        <translation>Llegó</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Contado</translation>
    </message>
    <message>
        <source>Taken out</source>
        <translation>Sacado</translation>
    </message>
    <message>
        <source>Spoilt</source>
        <translation>Estropeado</translation>
    </message>
    <message>
        <source>Brought back</source>
        <translation>Devuelto</translation>
    </message>
    <message>
        <source>Metres that are there</source>
        <translation>Metros que hay</translation>
    </message>
    <message>
        <source>Sets that are there</source>
        <translation>Juegos que hay</translation>
    </message>
    <message>
        <source>Metres</source>
        <translation>Metros</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Juegos</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Stock: %1</source>
        <translation>Existencias: %1</translation>
    </message>
</context>
<context>
    <name>StockWords</name>
    <message numerus="yes">
        <source>%n set(s)</source>
        <translation>
            <numerusform>%n juego</numerusform>
            <numerusform>%n juegos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StoredPage</name>
    <message>
        <source>Taken in: %1</source>
        <translation>Recibido: %1</translation>
    </message>
    <message>
        <source>Hang each number on its racket.</source>
        <translation>Cuelgue cada número en su raqueta.</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raqueta %1</translation>
    </message>
    <message>
        <source>Racket without a mark</source>
        <translation>Raqueta sin marca</translation>
    </message>
    <message>
        <source>The player’s card</source>
        <translation>La ficha del jugador</translation>
    </message>
    <message>
        <source>Next player</source>
        <translation>Siguiente jugador</translation>
    </message>
    <message>
        <source>Print tags</source>
        <translation>Imprimir etiquetas</translation>
    </message>
    <message>
        <source>There is no event yet</source>
        <translation>Aún no hay torneo</translation>
    </message>
    <message>
        <source>Without one these rackets have no number, and neither room nor bench shows them. They can come into an event later.</source>
        <translation>Sin torneo, estas raquetas no tienen número, y ni la sala ni el banco las muestran. Pueden entrar en un torneo después.</translation>
    </message>
    <message>
        <source>Make an event</source>
        <translation>Crear un torneo</translation>
    </message>
</context>
<context>
    <name>StringBedSheet</name>
    <message>
        <source>String bed: %1</source>
        <translation>Encordado: %1</translation>
    </message>
    <message>
        <source>String bed</source>
        <translation>Encordado</translation>
    </message>
    <message>
        <source>Nothing can be said of this bed</source>
        <translation>De este encordado no se puede decir nada</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Calculando …</translation>
    </message>
    <message>
        <source>Assumed, because nobody has said it</source>
        <translation>Supuesto, porque nadie lo ha dicho</translation>
    </message>
    <message>
        <source>What is left of the tension</source>
        <translation>Lo que queda de la tensión</translation>
    </message>
    <message>
        <source>Tension over the time since stringing. %1</source>
        <translation>Tensión a lo largo del tiempo desde el encordado. %1</translation>
    </message>
    <message>
        <source>Nothing here speaks of health: pain in the arm is a matter for a physician.</source>
        <translation>Nada de esto habla de la salud: el dolor en el brazo es cosa de un médico.</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabla (*.csv)</translation>
    </message>
    <message>
        <source>Save the sheet (PDF)</source>
        <translation>Guardar la hoja (PDF)</translation>
    </message>
    <message>
        <source>Save the figures as a table (CSV)</source>
        <translation>Guardar las cifras como tabla (CSV)</translation>
    </message>
    <message>
        <source>Sheet (*.pdf)</source>
        <translation>Hoja (*.pdf)</translation>
    </message>
</context>
<context>
    <name>StringPart</name>
    <message>
        <source>Gauge</source>
        <translation>Calibre</translation>
    </message>
    <message>
        <source>Taken from</source>
        <translation>Se toma de</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Sin decir</translation>
    </message>
    <message>
        <source>Reel</source>
        <translation>Bobina</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Juego</translation>
    </message>
    <message>
        <source>Whose string</source>
        <translation>De quién es la cuerda</translation>
    </message>
    <message>
        <source>The room’s</source>
        <translation>De la sala</translation>
    </message>
    <message>
        <source>The player’s</source>
        <translation>Del jugador</translation>
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
    <message>
        <source>Mains</source>
        <translation>Verticales</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Horizontales</translation>
    </message>
    <message>
        <source>Whole bed</source>
        <translation>Encordado entero</translation>
    </message>
    <message>
        <source>String from the stock</source>
        <translation>Cordaje del almacén</translation>
    </message>
    <message>
        <source>Noted.</source>
        <translation>Anotado.</translation>
    </message>
    <message>
        <source>An estimate of what this bed takes.</source>
        <translation>Estimación de lo que lleva este encordado.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Taken from the stock</source>
        <translation>Tomado del almacén</translation>
    </message>
    <message>
        <source>Taken: %1</source>
        <translation>Tomado: %1</translation>
    </message>
</context>
<context>
    <name>StringsCard</name>
    <message>
        <source>Strings</source>
        <translation>Cuerdas</translation>
    </message>
    <message>
        <source>Mains string</source>
        <translation>Cuerda de las verticales</translation>
    </message>
    <message>
        <source>Crosses string</source>
        <translation>Cuerda de las horizontales</translation>
    </message>
    <message>
        <source>Crosses as the mains</source>
        <translation>Horizontales como verticales</translation>
    </message>
</context>
<context>
    <name>TagGuardSheet</name>
    <message>
        <source>The right racket?</source>
        <translation>¿La raqueta correcta?</translation>
    </message>
    <message>
        <source>Scan the tag on the racket, then the tag on its bag or paper.</source>
        <translation>Escanee la etiqueta de la raqueta y luego la de la bolsa o el papel.</translation>
    </message>
    <message>
        <source>On the racket</source>
        <translation>En la raqueta</translation>
    </message>
    <message>
        <source>On the bag</source>
        <translation>En la bolsa</translation>
    </message>
    <message>
        <source>Scan it now</source>
        <translation>Escanear ahora</translation>
    </message>
    <message>
        <source>Then this one</source>
        <translation>Después esta</translation>
    </message>
    <message>
        <source>Wrong racket: stop</source>
        <translation>Raqueta equivocada: alto</translation>
    </message>
    <message>
        <source>Both tags are of %1, but of two rackets: %2 and %3. Look at both before anything goes on.</source>
        <translation>Las dos etiquetas son de %1, pero de dos raquetas: %2 y %3. Mire ambas antes de seguir.</translation>
    </message>
    <message>
        <source>The racket is of %1, the bag is of %2. Look at both before anything goes on.</source>
        <translation>La raqueta es de %1, la bolsa es de %2. Mire ambas antes de seguir.</translation>
    </message>
    <message>
        <source>This tag says nothing that is known here. Scan it again, or type its number.</source>
        <translation>Esta etiqueta no dice nada conocido aquí. Escanéela de nuevo o escriba su número.</translation>
    </message>
    <message>
        <source>Racket and bag belong together</source>
        <translation>La raqueta y la bolsa van juntas</translation>
    </message>
    <message>
        <source>Number on the tag</source>
        <translation>Número de la etiqueta</translation>
    </message>
    <message>
        <source>For whoever has no scanner; Enter takes it.</source>
        <translation>Para quien no tiene lector; Intro lo toma.</translation>
    </message>
    <message>
        <source>Begin again</source>
        <translation>Empezar de nuevo</translation>
    </message>
    <message>
        <source>Scan with the camera</source>
        <translation>Escanear con la cámara</translation>
    </message>
</context>
<context>
    <name>TakeCardModel</name>
    <message>
        <source>Card of %1 taken in</source>
        <translation>Tarjeta de %1 recibida</translation>
    </message>
</context>
<context>
    <name>TakeCardSheet</name>
    <message>
        <source>Card of %1</source>
        <translation>Tarjeta de %1</translation>
    </message>
    <message>
        <source>Take a card in</source>
        <translation>Recibir tarjeta</translation>
    </message>
    <message>
        <source>The picture can&apos;t be read</source>
        <translation>La imagen no se puede leer</translation>
    </message>
    <message>
        <source>No code is to be seen on the picture</source>
        <translation>En la imagen no se ve ningún código</translation>
    </message>
    <message>
        <source>This is no player card</source>
        <translation>No es una tarjeta de jugador</translation>
    </message>
    <message>
        <source>The card is damaged</source>
        <translation>La tarjeta está dañada</translation>
    </message>
    <message>
        <source>The card is forged</source>
        <translation>La tarjeta está falsificada</translation>
    </message>
    <message>
        <source>The card is of a newer version</source>
        <translation>La tarjeta es de una versión más nueva</translation>
    </message>
    <message>
        <source>Signed by a device that was shut out</source>
        <translation>Firmada por un dispositivo excluido</translation>
    </message>
    <message>
        <source>This player was forgotten here</source>
        <translation>Este jugador se olvidó aquí</translation>
    </message>
    <message>
        <source>The player did not agree to this</source>
        <translation>Falta el acuerdo para esto</translation>
    </message>
    <message>
        <source>The card is not taken</source>
        <translation>La tarjeta no se recibe</translation>
    </message>
    <message>
        <source>Take a picture from nearer by, straight from above and without shine.</source>
        <translation>Haga una foto de más cerca, recta desde arriba y sin brillo.</translation>
    </message>
    <message>
        <source>The code says something else. A card begins with WEAVELOG:CARD.</source>
        <translation>El código dice otra cosa. Una tarjeta empieza por WEAVELOG:CARD.</translation>
    </message>
    <message>
        <source>Some of its letters are wrong or missing: scan it again.</source>
        <translation>Hay letras equivocadas o que faltan: escanéela otra vez.</translation>
    </message>
    <message>
        <source>The device that it names did not sign it. Do not use it: ask the player, and tell the head of the room.</source>
        <translation>El dispositivo que nombra no la firmó. No la use: pregunte al jugador y avise a quien dirige la sala.</translation>
    </message>
    <message>
        <source>Update Weavelog on this device.</source>
        <translation>Actualice Weavelog en este dispositivo.</translation>
    </message>
    <message>
        <source>The card is whole. But %1 signed it, which was lost or shut out, on %2. Ask the player, or somebody else for a card.</source>
        <translation>La tarjeta está entera. Pero la firmó %1 el %2, un dispositivo perdido o excluido. Pregunte al jugador, o pida una tarjeta a otra persona.</translation>
    </message>
    <message>
        <source>The player withdrew. Who wants to be known again begins anew at the desk, and is asked for consent.</source>
        <translation>Se retiró el acuerdo. Quien quiera que se le conozca de nuevo empieza otra vez en recepción, y se le pregunta.</translation>
    </message>
    <message>
        <source>Withdrawn, or for one room only. Ask the player and record the answer first.</source>
        <translation>Retirado, o solo para una sala. Pregunte y anote antes la respuesta.</translation>
    </message>
    <message>
        <source>With the camera</source>
        <translation>Con la cámara</translation>
    </message>
    <message>
        <source>Looking ...</source>
        <translation>Buscando ...</translation>
    </message>
    <message>
        <source>From a picture</source>
        <translation>De una imagen</translation>
    </message>
    <message>
        <source>Or scan it with a scanner now, or paste its text here.</source>
        <translation>O escanéela ahora con un lector, o pegue aquí su texto.</translation>
    </message>
    <message>
        <source>Text of the card</source>
        <translation>Texto de la tarjeta</translation>
    </message>
    <message>
        <source>Read it</source>
        <translation>Leerla</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Recibida</translation>
    </message>
    <message>
        <source>Nothing new: all of it is here</source>
        <translation>Nada nuevo: todo está aquí</translation>
    </message>
    <message>
        <source>Signed by %1, on %2</source>
        <translation>Firmada por %1 el %2</translation>
    </message>
    <message>
        <source>That is this device.</source>
        <translation>Es este dispositivo.</translation>
    </message>
    <message>
        <source>An event server that this device was paired with.</source>
        <translation>Un servidor de torneo con el que se emparejó este dispositivo.</translation>
    </message>
    <message>
        <source>A device of this room.</source>
        <translation>Un dispositivo de esta sala.</translation>
    </message>
    <message>
        <source>A device whose work is held here.</source>
        <translation>Un dispositivo cuyo trabajo está aquí.</translation>
    </message>
    <message>
        <source>This device does not know it.</source>
        <translation>Este dispositivo no lo conoce.</translation>
    </message>
    <message>
        <source>Words of its key: %1</source>
        <translation>Palabras de su clave: %1</translation>
    </message>
    <message>
        <source>It was signed by a clock that is ahead of this device&apos;s: what seems newer on it may not be.</source>
        <translation>El reloj con que se firmó va adelantado respecto a este: lo que parece más nuevo quizá no lo sea.</translation>
    </message>
    <message>
        <source>This very card was taken in before.</source>
        <translation>Esta misma tarjeta ya se recibió.</translation>
    </message>
    <message>
        <source>What is on it</source>
        <translation>Lo que contiene</translation>
    </message>
    <message>
        <source>Newer on the card</source>
        <translation>Más nuevo en la tarjeta</translation>
    </message>
    <message>
        <source>Take these as well: the player says so</source>
        <translation>Tomar también esto: lo dice el jugador</translation>
    </message>
    <message>
        <source>Older than what is held here: stays as it is here</source>
        <translation>Más antiguo que lo de aquí: se queda como aquí</translation>
    </message>
    <message>
        <source>Open questions: a person closes them first</source>
        <translation>Preguntas abiertas: antes las cierra una persona</translation>
    </message>
    <message>
        <source>The player is not known here yet: the card begins the book.</source>
        <translation>Aún no se le conoce aquí: la tarjeta empieza el libro.</translation>
    </message>
    <message numerus="yes">
        <source>New here: %n field(s)</source>
        <translation>
            <numerusform>Nuevo aquí: %n dato</numerusform>
            <numerusform>Nuevo aquí: %n datos</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing on it is missing here.</source>
        <translation>Aquí no falta nada de ella.</translation>
    </message>
    <message>
        <source>Agreed to here: %1</source>
        <translation>Aceptado aquí: %1</translation>
    </message>
    <message>
        <source>A card carries no consent. Ask the player where this may go, and record the answer.</source>
        <translation>Una tarjeta no lleva consentimiento. Pregunte adónde puede ir esto y anote la respuesta.</translation>
    </message>
    <message>
        <source>A stranger signed it</source>
        <translation>La firmó un desconocido</translation>
    </message>
    <message>
        <source>The signature holds, but no signature says that a stranger is honest. Read it to the player first.</source>
        <translation>La firma es buena, pero ninguna dice que un desconocido sea honrado. Léasela antes al jugador.</translation>
    </message>
    <message>
        <source>The player says that it is right</source>
        <translation>El jugador dice que es correcto</translation>
    </message>
    <message>
        <source>Ask the player before stringing by a card; the makers’ instructions for frame and string come first.</source>
        <translation>Pregunte al jugador antes de encordar según una tarjeta; las instrucciones de los fabricantes del marco y de la cuerda van primero.</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Recibirla</translation>
    </message>
    <message>
        <source>To the player</source>
        <translation>Al jugador</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.PNG *.JPG *.JPEG)</source>
        <translation>Imágenes (*.png *.jpg *.jpeg *.PNG *.JPG *.JPEG)</translation>
    </message>
</context>
<context>
    <name>TeamModel</name>
    <message>
        <source>Somebody who is not on the team any more</source>
        <translation>Alguien que ya no está en el equipo</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>Give a time such as 8:30.</source>
        <translation>Indique una hora, por ejemplo 8:30.</translation>
    </message>
</context>
<context>
    <name>TeamPage</name>
    <message>
        <source>Team</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Máquinas</translation>
    </message>
    <message>
        <source>Numbers</source>
        <translation>Cifras</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Qué se muestra</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its team and machines come here by themselves.</source>
        <translation>Empareje con un servidor del torneo en Intercambio; su equipo y sus máquinas llegan solos.</translation>
    </message>
    <message>
        <source>Lists</source>
        <translation>Listas</translation>
    </message>
    <message>
        <source>Evenness</source>
        <translation>Regularidad</translation>
    </message>
</context>
<context>
    <name>TeamView</name>
    <message>
        <source>Head of the room</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Desk</source>
        <translation>Recepción</translation>
    </message>
    <message>
        <source>Stringer</source>
        <translation>Encordado</translation>
    </message>
    <message>
        <source>Reader</source>
        <translation>Solo lectura</translation>
    </message>
    <message>
        <source>%1 rests only %2 before %3</source>
        <translation>%1 descansa solo %2 antes de %3</translation>
    </message>
    <message>
        <source>%1 works %2 on %3</source>
        <translation>%1 trabaja %2 el %3</translation>
    </message>
    <message>
        <source>Eleven hours between two days are usual; local law and contracts say what holds.</source>
        <translation>Lo usual son once horas entre dos días; deciden la ley local y los contratos.</translation>
    </message>
    <message>
        <source>Tired hands make uneven beds. Local law and contracts say how long a day may be.</source>
        <translation>Las manos cansadas encordan desigual. La ley local y los contratos dicen cuánto puede durar un día.</translation>
    </message>
    <message>
        <source>Team</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>here until %1</source>
        <translation>aquí hasta %1</translation>
    </message>
    <message>
        <source>Add somebody</source>
        <translation>Añadir a alguien</translation>
    </message>
    <message>
        <source>Shifts from today on</source>
        <translation>Turnos desde hoy</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <translation>%1, de %2 a %3</translation>
    </message>
    <message>
        <source>Take the shift of %1 off the plan</source>
        <translation>Quitar el turno de %1</translation>
    </message>
    <message>
        <source>Shift taken off the plan</source>
        <translation>Turno quitado</translation>
    </message>
    <message>
        <source>No shift is planned.</source>
        <translation>No hay turnos planeados.</translation>
    </message>
    <message>
        <source>Plan a shift</source>
        <translation>Planear un turno</translation>
    </message>
</context>
<context>
    <name>TensionCard</name>
    <message>
        <source>Tension</source>
        <translation>Tensión</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Verticales</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Horizontales</translation>
    </message>
    <message>
        <source>Spread over the rackets, from the first one</source>
        <translation>Repartir entre las raquetas, desde la primera</translation>
    </message>
    <message>
        <source>Each %1</source>
        <translation>Cada una %1</translation>
    </message>
    <message>
        <source>Each racket %1 above the one before</source>
        <translation>Cada raqueta %1 respecto a la anterior</translation>
    </message>
    <message>
        <source>Two and two %1</source>
        <translation>De dos en dos %1</translation>
    </message>
    <message>
        <source>Two rackets alike, the next two %1 above them</source>
        <translation>Dos raquetas iguales, las dos siguientes %1</translation>
    </message>
    <message>
        <source>All as the first</source>
        <translation>Todas como la primera</translation>
    </message>
    <message>
        <source>Racket %1: %2 / %3</source>
        <translation>Raqueta %1: %2 / %3</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>night</source>
        <translation>noche</translation>
    </message>
    <message>
        <source>new balls</source>
        <translation>bolas nuevas</translation>
    </message>
    <message>
        <source>Racket %1 is kept as: %2</source>
        <translation>La raqueta %1 se guarda como: %2</translation>
    </message>
    <message>
        <source>Keep racket %1 as: %2</source>
        <translation>Guardar la raqueta %1 como: %2</translation>
    </message>
    <message>
        <source>other …</source>
        <translation>otro …</translation>
    </message>
    <message>
        <source>Another name for racket %1</source>
        <translation>Otro nombre para la raqueta %1</translation>
    </message>
    <message>
        <source>Name of the setup, as the player says it</source>
        <translation>Nombre del ajuste, como lo dice quien juega</translation>
    </message>
    <message>
        <source>Empty: as it was before</source>
        <translation>Vacío: como antes</translation>
    </message>
</context>
<context>
    <name>TensionPart</name>
    <message>
        <source>%1 by %2 %3</source>
        <translation>%1 en %2 %3</translation>
    </message>
    <message>
        <source>Said in</source>
        <translation>Dicha en</translation>
    </message>
</context>
<context>
    <name>TimeStepper</name>
    <message>
        <source>A quarter of an hour sooner</source>
        <translation>Un cuarto de hora antes</translation>
    </message>
    <message>
        <source>No time</source>
        <translation>Sin hora</translation>
    </message>
    <message>
        <source>A quarter of an hour later</source>
        <translation>Un cuarto de hora después</translation>
    </message>
</context>
<context>
    <name>ToneModel</name>
    <message>
        <source>The microphone was taken away, or another program holds it. Choose a recording instead (WAV).</source>
        <translation>Se retiró el micrófono o lo ocupa otro programa. Elija en su lugar una grabación (WAV).</translation>
    </message>
    <message>
        <source>The microphone delivers nothing. Look whether it is on, or choose a recording instead (WAV).</source>
        <translation>El micrófono no da nada. Mire si está encendido, o elija en su lugar una grabación (WAV).</translation>
    </message>
    <message>
        <source>This device has no microphone. Choose a recording instead (WAV).</source>
        <translation>Este dispositivo no tiene micrófono. Elija en su lugar una grabación (WAV).</translation>
    </message>
    <message>
        <source>The microphone can’t be used: another program may hold it. Choose a recording instead (WAV).</source>
        <translation>No se puede usar el micrófono: quizá lo ocupa otro programa. Elija en su lugar una grabación (WAV).</translation>
    </message>
    <message>
        <source>It can’t listen</source>
        <translation>No puede escuchar</translation>
    </message>
    <message>
        <source>The tone is not known</source>
        <translation>No se conoce el tono</translation>
    </message>
    <message>
        <source>Nothing was heard. Look whether the microphone is on, and tap the bed close to it.</source>
        <translation>No se oyó nada. Mire si el micrófono está encendido y golpee el encordado cerca de él.</translation>
    </message>
    <message>
        <source>It was too loud for the microphone. Tap more softly, or hold the racket further off.</source>
        <translation>Fue demasiado fuerte para el micrófono. Golpee más suave o aleje la raqueta.</translation>
    </message>
    <message>
        <source>That was too short. Let it listen until you have tapped three times.</source>
        <translation>Fue demasiado corto. Deje que escuche hasta haber golpeado tres veces.</translation>
    </message>
    <message>
        <source>Tone: %1 Hz</source>
        <translation>Tono: %1 Hz</translation>
    </message>
    <message numerus="yes">
        <source>Estimate of %n tap(s), nine times of ten %1 to %2 Hz; %3 % sure that it is the bed’s own tone to half a per cent.</source>
        <translation>
            <numerusform>Estimación de %n golpe, nueve de cada diez veces de %1 a %2 Hz; seguro al %3 % de que es el tono propio con medio por ciento de margen.</numerusform>
            <numerusform>Estimación de %n golpes, nueve de cada diez veces de %1 a %2 Hz; seguro al %3 % de que es el tono propio con medio por ciento de margen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TonePart</name>
    <message>
        <source>too loud: tap more softly</source>
        <translation>demasiado fuerte: golpee más suave</translation>
    </message>
    <message>
        <source>loud enough</source>
        <translation>suficiente</translation>
    </message>
    <message>
        <source>silent</source>
        <translation>silencio</translation>
    </message>
    <message>
        <source>What a tone says</source>
        <translation>Lo que dice un tono</translation>
    </message>
    <message>
        <source>Hold the racket at its handle close to the microphone, tap the middle of the bed three times (five where it is loud) with something light, and move the racket a little in between.</source>
        <translation>Sujete la raqueta por el mango cerca del micrófono, golpee tres veces (cinco donde haya ruido) el centro del encordado con algo ligero y mueva un poco la raqueta entre golpes.</translation>
    </message>
    <message>
        <source>That is enough</source>
        <translation>Es suficiente</translation>
    </message>
    <message>
        <source>Listen</source>
        <translation>Escuchar</translation>
    </message>
    <message>
        <source>From a recording (WAV)</source>
        <translation>De una grabación (WAV)</translation>
    </message>
    <message>
        <source>Level: %1</source>
        <translation>Nivel: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n second(s) left</source>
        <translation>
            <numerusform>queda %n segundo</numerusform>
            <numerusform>quedan %n segundos</numerusform>
        </translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Calculando …</translation>
    </message>
    <message>
        <source>Tone of the string bed, now</source>
        <translation>Tono del encordado, ahora</translation>
    </message>
    <message>
        <source>Estimate from the tone</source>
        <translation>Estimación según el tono</translation>
    </message>
    <message>
        <source>Keep this tone as a reading</source>
        <translation>Guardar este tono como medición</translation>
    </message>
    <message>
        <source>listened to</source>
        <translation>escuchado</translation>
    </message>
    <message>
        <source>Measured: %1 Hz</source>
        <translation>Medido: %1 Hz</translation>
    </message>
    <message>
        <source>Recording (*.wav)</source>
        <translation>Grabación (*.wav)</translation>
    </message>
</context>
<context>
    <name>TurnedScreen</name>
    <message>
        <source>Turn</source>
        <translation>Girar</translation>
    </message>
</context>
<context>
    <name>UnchargedCard</name>
    <message>
        <source>Not charged yet</source>
        <translation>Aún sin cobrar</translation>
    </message>
    <message>
        <source>a price is missing</source>
        <translation>falta un precio</translation>
    </message>
    <message>
        <source>The price list has no price for:</source>
        <translation>La tarifa no tiene precio para:</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Tarifa</translation>
    </message>
    <message numerus="yes">
        <source>Charge %n racket(s): %1</source>
        <translation>
            <numerusform>Cobrar %n raqueta: %1</numerusform>
            <numerusform>Cobrar %n raquetas: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose a racket</source>
        <translation>Elija una raqueta</translation>
    </message>
    <message>
        <source>Charged: %1</source>
        <translation>Cobrado: %1</translation>
    </message>
</context>
<context>
    <name>UndoToast</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>UnfinishedRow</name>
    <message>
        <source>Unfinished drop-off: %1</source>
        <translation>Entrega sin terminar: %1</translation>
    </message>
    <message>
        <source>Unfinished drop-off of a new player</source>
        <translation>Entrega sin terminar de un jugador nuevo</translation>
    </message>
    <message>
        <source>Rackets: %1, begun %2</source>
        <translation>Raquetas: %1, empezado %2</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Conservarla</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Descartar</translation>
    </message>
    <message>
        <source>Throw away the drop-off of %1?</source>
        <translation>¿Descartar la entrega de %1?</translation>
    </message>
    <message>
        <source>Throw away the drop-off of a new player?</source>
        <translation>¿Descartar la entrega de un jugador nuevo?</translation>
    </message>
</context>
<context>
    <name>WishField</name>
    <message>
        <source>Choose one of the answers above first</source>
        <translation>Elija antes una de las respuestas de arriba</translation>
    </message>
    <message>
        <source>The rackets differ: %1</source>
        <translation>Las raquetas difieren: %1</translation>
    </message>
</context>
</TS>
