<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>BenchPage</name>
    <message>
        <source>Bench</source>
        <translation>Établi</translation>
    </message>
    <message>
        <source>No racket is waiting for this bench</source>
        <translation>Aucune raquette n’attend cet établi</translation>
    </message>
    <message>
        <source>The next racket appears here with what was agreed, in large digits.</source>
        <translation>La prochaine raquette apparaît ici avec ce qui a été convenu, en grands chiffres.</translation>
    </message>
</context>
<context>
    <name>CodeSquare</name>
    <message>
        <source>Code to scan</source>
        <translation>Code à scanner</translation>
    </message>
</context>
<context>
    <name>DeskPage</name>
    <message>
        <source>Desk</source>
        <translation>Accueil</translation>
    </message>
    <message>
        <source>Nobody has handed rackets over yet</source>
        <translation>Personne n’a encore déposé de raquette</translation>
    </message>
    <message>
        <source>Drop-offs of this event appear here, the newest first.</source>
        <translation>Les dépôts de ce tournoi apparaissent ici, le plus récent d’abord.</translation>
    </message>
</context>
<context>
    <name>ExchangePage</name>
    <message>
        <source>Exchange</source>
        <translation>Échange</translation>
    </message>
    <message>
        <source>This device has met no other yet</source>
        <translation>Cet appareil n’en a encore rencontré aucun autre</translation>
    </message>
    <message>
        <source>Pair it with an event server, or bring a bundle in from a file.</source>
        <translation>Associez-le à un serveur de tournoi, ou importez un paquet depuis un fichier.</translation>
    </message>
</context>
<context>
    <name>FigureStepper</name>
    <message>
        <source>Between %1 and %2 %3</source>
        <translation>Entre %1 et %2 %3</translation>
    </message>
    <message>
        <source>Less: %1</source>
        <translation>Moins : %1</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Plus : %1</translation>
    </message>
</context>
<context>
    <name>GalleryWindow</name>
    <message>
        <source>Weavelog: every part in every state</source>
        <translation>Weavelog : chaque élément dans chaque état</translation>
    </message>
</context>
<context>
    <name>GiantFigure</name>
    <message>
        <source>Mains %1 %2, crosses %3 %4</source>
        <translation>Montants %1 %2, travers %3 %4</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Montants</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Travers</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Desk</source>
        <translation>Accueil</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Salle</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Établi</translation>
    </message>
    <message>
        <source>Players</source>
        <translation>Joueurs</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Questions</translation>
    </message>
    <message>
        <source>Exchange</source>
        <translation>Échange</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
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
        <translation>%1 : avant %2, maintenant %3</translation>
    </message>
    <message>
        <source>%1: %2, as before</source>
        <translation>%1 : %2, comme avant</translation>
    </message>
</context>
<context>
    <name>PickList</name>
    <message>
        <source>Choose</source>
        <translation>Choisir</translation>
    </message>
    <message>
        <source>Find in the list</source>
        <translation>Chercher dans la liste</translation>
    </message>
</context>
<context>
    <name>PlaceBar</name>
    <message>
        <source>Places</source>
        <translation>Lieux</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>More places</source>
        <translation>Autres lieux</translation>
    </message>
</context>
<context>
    <name>PlaceButton</name>
    <message>
        <source>%1, %2 waiting</source>
        <translation>%1, %2 en attente</translation>
    </message>
</context>
<context>
    <name>PlaceRail</name>
    <message>
        <source>Places</source>
        <translation>Lieux</translation>
    </message>
</context>
<context>
    <name>PlayersPage</name>
    <message>
        <source>Players</source>
        <translation>Joueurs</translation>
    </message>
    <message>
        <source>No player is known on this device</source>
        <translation>Aucun joueur n’est connu sur cet appareil</translation>
    </message>
    <message>
        <source>Players come with an entry list, with an exchange, or are added at the desk.</source>
        <translation>Les joueurs arrivent par une liste d’engagés, par un échange, ou sont ajoutés à l’accueil.</translation>
    </message>
</context>
<context>
    <name>QuestionsPage</name>
    <message>
        <source>Questions</source>
        <translation>Questions</translation>
    </message>
    <message>
        <source>No open question</source>
        <translation>Aucune question ouverte</translation>
    </message>
    <message>
        <source>Where two devices hold different answers for one player, both are shown here until somebody picks one.</source>
        <translation>Quand deux appareils ont des réponses différentes pour un joueur, les deux figurent ici jusqu’à ce que quelqu’un choisisse.</translation>
    </message>
</context>
<context>
    <name>RoomPage</name>
    <message>
        <source>Room</source>
        <translation>Salle</translation>
    </message>
    <message>
        <source>No racket is in the room</source>
        <translation>Aucune raquette dans la salle</translation>
    </message>
    <message>
        <source>Every job of the event stands here under its stage, from taken in to handed over.</source>
        <translation>Chaque cordage du tournoi figure ici sous son étape, de la prise en charge à la remise.</translation>
    </message>
</context>
<context>
    <name>SearchEntry</name>
    <message>
        <source>Find</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Effacer</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>They hold for this device only.</source>
        <translation>Ils ne valent que pour cet appareil.</translation>
    </message>
    <message>
        <source>Language and unit</source>
        <translation>Langue et unité</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Tension is asked in</source>
        <translation>Tension demandée en</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aspect</translation>
    </message>
    <message>
        <source>Light or dark</source>
        <translation>Clair ou sombre</translation>
    </message>
    <message>
        <source>As the device</source>
        <translation>Comme l’appareil</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Clair</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Sombre</translation>
    </message>
    <message>
        <source>Size of text</source>
        <translation>Taille du texte</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Petite</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>Normale</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Grande</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Très grande</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>There are changes that are not kept yet.</source>
        <translation>Des modifications ne sont pas encore gardées.</translation>
    </message>
    <message>
        <source>Go on with them</source>
        <translation>Continuer avec elles</translation>
    </message>
    <message>
        <source>Throw them away</source>
        <translation>Les abandonner</translation>
    </message>
</context>
<context>
    <name>StageMark</name>
    <message>
        <source>Taken in</source>
        <translation>Prise en charge</translation>
    </message>
    <message>
        <source>Asked player</source>
        <translation>Joueur consulté</translation>
    </message>
    <message>
        <source>On the bench</source>
        <translation>Sur l’établi</translation>
    </message>
    <message>
        <source>Strung</source>
        <translation>Cordée</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Prête</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Remise</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation>Arrêtée</translation>
    </message>
    <message>
        <source>%1, rush</source>
        <translation>%1, urgent</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Urgent</translation>
    </message>
</context>
<context>
    <name>UndoToast</name>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
</context>
</TS>
