<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>AccountButton</name>
    <message>
        <source>Account: %1 due</source>
        <translation>Compte&#xa0;: %1 à payer</translation>
    </message>
    <message numerus="yes">
        <source>Account: %n racket(s) not charged</source>
        <translation>
            <numerusform>Compte&#xa0;: %n raquette non facturée</numerusform>
            <numerusform>Compte&#xa0;: %n raquettes non facturées</numerusform>
        </translation>
    </message>
    <message>
        <source>Account</source>
        <translation>Compte</translation>
    </message>
</context>
<context>
    <name>AccountDetails</name>
    <message>
        <source>Due</source>
        <translation>À payer</translation>
    </message>
    <message>
        <source>To give back</source>
        <translation>À rembourser</translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation>Rien n’est dû</translation>
    </message>
    <message>
        <source>Charged %1, paid %2</source>
        <translation>Facturé %1, payé %2</translation>
    </message>
    <message>
        <source>The event has no currency yet</source>
        <translation>Le tournoi n’a pas encore de monnaie</translation>
    </message>
    <message>
        <source>Give it one in the price list; then rackets can be charged.</source>
        <translation>Donnez-lui-en une dans le tarif&#xa0;; les raquettes pourront alors être facturées.</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Tarif</translation>
    </message>
    <message>
        <source>Two tablets charged different amounts</source>
        <translation>Deux tablettes ont facturé des montants différents</translation>
    </message>
    <message>
        <source>Until somebody closes that under Questions, the newer amount counts here, and nothing is taken off it.</source>
        <translation>Tant que personne ne le tranche sous Questions, le montant le plus récent compte ici, et rien n’en est déduit.</translation>
    </message>
    <message>
        <source>Charge something else</source>
        <translation>Facturer autre chose</translation>
    </message>
</context>
<context>
    <name>AccountModel</name>
    <message>
        <source>It has to be more than nothing.</source>
        <translation>Il faut plus que rien.</translation>
    </message>
</context>
<context>
    <name>AccountPart</name>
    <message>
        <source>A racket</source>
        <translation>Une raquette</translation>
    </message>
    <message>
        <source>Together %1</source>
        <translation>En tout %1</translation>
    </message>
    <message>
        <source>two tablets differ</source>
        <translation>deux tablettes diffèrent</translation>
    </message>
    <message>
        <source>reversed</source>
        <translation>annulé</translation>
    </message>
    <message>
        <source>Give a discount</source>
        <translation>Accorder une remise</translation>
    </message>
</context>
<context>
    <name>AgreedCard</name>
    <message>
        <source>Agreed now: rackets %1</source>
        <translation>Convenu&#xa0;: raquettes %1</translation>
    </message>
    <message>
        <source>Agreed now</source>
        <translation>Convenu</translation>
    </message>
    <message>
        <source>Last strung %1, %2</source>
        <translation>Dernier cordage&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Montants</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Travers</translation>
    </message>
    <message>
        <source>Taken in %1, %2; not yet strung</source>
        <translation>Reçue&#xa0;: %1, %2&#xa0;; pas encore cordée</translation>
    </message>
</context>
<context>
    <name>AlikeCard</name>
    <message>
        <source>This player is known here</source>
        <translation>Ce joueur est connu ici</translation>
    </message>
    <message>
        <source>Is it one of these players?</source>
        <translation>Est-ce l’un de ces joueurs&#xa0;?</translation>
    </message>
    <message>
        <source>Written down: %1</source>
        <translation>Noté&#xa0;: %1</translation>
    </message>
    <message>
        <source>None of these: somebody else</source>
        <translation>Aucun d’eux&#xa0;: quelqu’un d’autre</translation>
    </message>
</context>
<context>
    <name>AnswersForm</name>
    <message>
        <source>Another answer</source>
        <translation>Une autre réponse</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
    <message>
        <source>If the player says none of these</source>
        <translation>Si le joueur n’en dit aucune</translation>
    </message>
</context>
<context>
    <name>ArrivalAccount</name>
    <message>
        <source>Came and went</source>
        <translation>Arrivé et parti</translation>
    </message>
    <message>
        <source>Players who were not here before</source>
        <translation>Joueurs qui n’étaient pas encore ici</translation>
    </message>
    <message>
        <source>Rackets that came</source>
        <translation>Raquettes arrivées</translation>
    </message>
    <message>
        <source>Players who went to the room</source>
        <translation>Joueurs partis vers la salle</translation>
    </message>
    <message>
        <source>Rackets that went</source>
        <translation>Raquettes parties</translation>
    </message>
    <message numerus="yes">
        <source>Stayed here: %n player(s) of the list</source>
        <translation>
            <numerusform>Resté ici&#xa0;: %n joueur de la liste</numerusform>
            <numerusform>Restés ici&#xa0;: %n joueurs de la liste</numerusform>
        </translation>
    </message>
    <message>
        <source>Nobody of the list stayed behind</source>
        <translation>Personne de la liste n’est resté</translation>
    </message>
    <message>
        <source>Everybody else on this tablet stayed too; the event server does not learn of them.</source>
        <translation>Tous les autres de cette tablette sont restés aussi&#xa0;; le serveur du tournoi n’en apprend rien.</translation>
    </message>
    <message>
        <source>Have not agreed to it: %1</source>
        <translation>N’ont pas donné leur accord&#xa0;: %1</translation>
    </message>
    <message>
        <source>Nobody said whether it is them: %1</source>
        <translation>Personne n’a dit si c’est eux&#xa0;: %1</translation>
    </message>
    <message>
        <source>Were not ticked: %1</source>
        <translation>N’ont pas été cochés&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n question(s) need(s) an answer</source>
        <translation>
            <numerusform>%n question attend une réponse</numerusform>
            <numerusform>%n questions attendent une réponse</numerusform>
        </translation>
    </message>
    <message>
        <source>Where two rooms gave different answers both stand, until the player is asked.</source>
        <translation>Là où deux salles ont répondu différemment, les deux réponses restent jusqu’à ce qu’on demande au joueur.</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Questions</translation>
    </message>
    <message numerus="yes">
        <source>Set aside: %n entry(s)</source>
        <translation>
            <numerusform>Mis de côté&#xa0;: %n entrée</numerusform>
            <numerusform>Mis de côté&#xa0;: %n entrées</numerusform>
        </translation>
    </message>
    <message>
        <source>They broke a rule and were not taken over; the exchange shows them.</source>
        <translation>Elles enfreignent une règle et n’ont pas été reprises&#xa0;; l’échange les montre.</translation>
    </message>
    <message>
        <source>Some books could not be made equal</source>
        <translation>Certains livres n’ont pas pu être rendus égaux</translation>
    </message>
    <message>
        <source>One side may not hand them on, or holds them otherwise. Nothing is lost and everything else has crossed; compare those players at the desk.</source>
        <translation>Un côté n’a pas le droit de les transmettre, ou les détient autrement. Rien n’est perdu et tout le reste est passé&#xa0;; comparez ces joueurs à l’accueil.</translation>
    </message>
    <message numerus="yes">
        <source>Both hold the same, over %n book(s). The other side tells the same words: compare them.</source>
        <translation>
            <numerusform>Les deux ont la même chose, sur %n livre. L’autre côté donne les mêmes mots&#xa0;: comparez.</numerusform>
            <numerusform>Les deux ont la même chose, sur %n livres. L’autre côté donne les mêmes mots&#xa0;: comparez.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ArrivalMeet</name>
    <message>
        <source>Pairing ...</source>
        <translation>Association ...</translation>
    </message>
    <message>
        <source>Scan the code with the camera</source>
        <translation>Scanner le code avec la caméra</translation>
    </message>
    <message>
        <source>Met before</source>
        <translation>Déjà rencontrés</translation>
    </message>
    <message>
        <source>Paired already: it only has to be met again.</source>
        <translation>Déjà associé&#xa0;: il suffit de le retrouver.</translation>
    </message>
</context>
<context>
    <name>ArrivalPage</name>
    <message>
        <source>Arriving at an event</source>
        <translation>Arrivée à un tournoi</translation>
    </message>
    <message>
        <source>Not connected just now</source>
        <translation>Pas de connexion pour l’instant</translation>
    </message>
    <message>
        <source>Nothing is lost: everything goes on by itself where it stopped, also after the app was closed.</source>
        <translation>Rien n’est perdu&#xa0;: tout reprend de soi-même là où cela s’est arrêté, même après la fermeture de l’application.</translation>
    </message>
    <message>
        <source>Meet the event server</source>
        <translation>Rencontrer le serveur du tournoi</translation>
    </message>
    <message>
        <source>The entry list comes over</source>
        <translation>La liste des inscrits arrive</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(s)</source>
        <translation>
            <numerusform>%n inscrit</numerusform>
            <numerusform>%n inscrits</numerusform>
        </translation>
    </message>
    <message>
        <source>Who of it is known here, and what each side gains</source>
        <translation>Qui est connu ici, et ce que chaque côté gagne</translation>
    </message>
    <message>
        <source>%1 known, %2 to be looked at, %3 new</source>
        <translation>connus&#xa0;: %1, à regarder&#xa0;: %2, nouveaux&#xa0;: %3</translation>
    </message>
    <message>
        <source>Both bring each other up to date</source>
        <translation>Les deux se mettent à jour</translation>
    </message>
    <message>
        <source>What came of it</source>
        <translation>Ce qui en est sorti</translation>
    </message>
    <message>
        <source>Back to the exchange</source>
        <translation>Retour à l’échange</translation>
    </message>
    <message>
        <source>Look at the players again</source>
        <translation>Revoir les joueurs</translation>
    </message>
    <message numerus="yes">
        <source>Send %n player(s)</source>
        <translation>
            <numerusform>Envoyer %n joueur</numerusform>
            <numerusform>Envoyer %n joueurs</numerusform>
        </translation>
    </message>
    <message>
        <source>Go on, nobody is ticked</source>
        <translation>Continuer, personne n’est coché</translation>
    </message>
    <message>
        <source>Go on without an entry list</source>
        <translation>Continuer sans liste des inscrits</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
</context>
<context>
    <name>ArrivalPeople</name>
    <message>
        <source>Nobody is ticked that the room does not have: it gains nothing yet.</source>
        <translation>Personne n’est coché que la salle n’ait déjà&#xa0;: elle ne gagne encore rien.</translation>
    </message>
    <message numerus="yes">
        <source>The room gains %n player(s)</source>
        <translation>
            <numerusform>La salle gagne %n joueur</numerusform>
            <numerusform>La salle gagne %n joueurs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s)</source>
        <translation>
            <numerusform>%n raquette</numerusform>
            <numerusform>%n raquettes</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 all new to it</source>
        <translation>%1 tout nouveaux pour elle</translation>
    </message>
    <message>
        <source>%1 with a newer last time</source>
        <translation>%1 avec une dernière fois plus récente</translation>
    </message>
    <message>
        <source>The room had nothing of these players that was not here.</source>
        <translation>La salle n’avait rien de ces joueurs qui ne fût déjà ici.</translation>
    </message>
    <message numerus="yes">
        <source>From the room came %n player(s)</source>
        <translation>
            <numerusform>De la salle est venu %n joueur</numerusform>
            <numerusform>De la salle sont venus %n joueurs</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 all new here</source>
        <translation>%1 tout nouveaux ici</translation>
    </message>
    <message>
        <source>never answered: may go, and are asked at their first drop-off</source>
        <translation>jamais répondu&#xa0;: peuvent partir, et on leur demande au premier dépôt</translation>
    </message>
    <message>
        <source>for this room only</source>
        <translation>pour cette salle seulement</translation>
    </message>
    <message>
        <source>to events that they enter</source>
        <translation>pour les tournois où ils s’inscrivent</translation>
    </message>
    <message>
        <source>to any room</source>
        <translation>pour toute salle</translation>
    </message>
    <message>
        <source>What each side gains</source>
        <translation>Ce que chaque côté gagne</translation>
    </message>
    <message>
        <source>Ticked players&apos; histories go to the event server; it learns of nobody else.</source>
        <translation>L’historique des joueurs cochés va au serveur du tournoi&#xa0;; il n’apprend rien de personne d’autre.</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) stay(s) here</source>
        <translation>
            <numerusform>%n joueur reste ici</numerusform>
            <numerusform>%n joueurs restent ici</numerusform>
        </translation>
    </message>
    <message>
        <source>They have not agreed that their history goes to this room: %1. Ask them at the desk; their card there has the question.</source>
        <translation>Ils n’ont pas accepté que leur historique aille à cette salle&#xa0;: %1. Demandez-leur à l’accueil&#xa0;; leur fiche y pose la question.</translation>
    </message>
    <message>
        <source>Entry list</source>
        <translation>Liste des inscrits</translation>
    </message>
    <message numerus="yes">
        <source>%n to be answered: is it this one?</source>
        <translation>
            <numerusform>%n à répondre&#xa0;: est-ce lui&#xa0;?</numerusform>
            <numerusform>%n à répondre&#xa0;: est-ce lui&#xa0;?</numerusform>
        </translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Montrer</translation>
    </message>
    <message>
        <source>Tick all known players</source>
        <translation>Cocher tous les joueurs connus</translation>
    </message>
    <message numerus="yes">
        <source>Show more; %n still hidden</source>
        <translation>
            <numerusform>Montrer plus&#xa0;; encore %n caché</numerusform>
            <numerusform>Montrer plus&#xa0;; encore %n cachés</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 × agreed: %2</source>
        <translation>%1 × accepté&#xa0;: %2</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tous</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Connus</translation>
    </message>
    <message>
        <source>To look at</source>
        <translation>À regarder</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nouveaux</translation>
    </message>
</context>
<context>
    <name>ArrivalProgress</name>
    <message>
        <source>Waits for the connection</source>
        <translation>Attend la connexion</translation>
    </message>
    <message>
        <source>This event has no entry list yet</source>
        <translation>Ce tournoi n’a pas encore de liste des inscrits</translation>
    </message>
    <message>
        <source>Coming and going</source>
        <translation>En cours dans les deux sens</translation>
    </message>
    <message>
        <source>It comes by itself as soon as the room has one. You can go on without it and arrive once more later.</source>
        <translation>Elle viendra d’elle-même dès que la salle en aura une. Vous pouvez continuer sans elle et refaire l’arrivée plus tard.</translation>
    </message>
    <message>
        <source>Players that are here can be used already; the app may be closed meanwhile.</source>
        <translation>Les joueurs déjà ici sont utilisables&#xa0;; on peut fermer l’application entre-temps.</translation>
    </message>
    <message numerus="yes">
        <source>About %n second(s) left</source>
        <translation>
            <numerusform>Encore environ %n seconde</numerusform>
            <numerusform>Encore environ %n secondes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>About %n minute(s) left</source>
        <translation>
            <numerusform>Encore environ %n minute</numerusform>
            <numerusform>Encore environ %n minutes</numerusform>
        </translation>
    </message>
    <message>
        <source>From the room to this tablet: books</source>
        <translation>De la salle vers cette tablette&#xa0;: livres</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>From this tablet to the room: entries</source>
        <translation>De cette tablette vers la salle&#xa0;: entrées</translation>
    </message>
    <message>
        <source>Finding out what either side lacks</source>
        <translation>Cherche ce qui manque à chaque côté</translation>
    </message>
</context>
<context>
    <name>ArrivalRow</name>
    <message>
        <source>Known</source>
        <translation>Connu</translation>
    </message>
    <message>
        <source>Is it this one?</source>
        <translation>Est-ce lui&#xa0;?</translation>
    </message>
    <message>
        <source>New here</source>
        <translation>Nouveau ici</translation>
    </message>
    <message>
        <source>Has not agreed that this history goes to other events: ask the player</source>
        <translation>N’a pas accepté que cet historique passe à d’autres tournois&#xa0;: demandez au joueur</translation>
    </message>
    <message>
        <source>Both have it</source>
        <translation>Les deux l’ont</translation>
    </message>
    <message>
        <source>None of these: the room&apos;s %1 is somebody else</source>
        <translation>Aucun d’eux&#xa0;: le %1 de la salle est quelqu’un d’autre</translation>
    </message>
</context>
<context>
    <name>ArrivalStepHead</name>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>later</source>
        <translation>plus tard</translation>
    </message>
</context>
<context>
    <name>ArrivalWords</name>
    <message>
        <source>newer by hours</source>
        <translation>plus récent de quelques heures</translation>
    </message>
    <message numerus="yes">
        <source>newer by %n day(s)</source>
        <translation>
            <numerusform>plus récent de %n jour</numerusform>
            <numerusform>plus récent de %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>The room has this already</source>
        <translation>La salle l’a déjà</translation>
    </message>
    <message>
        <source>All new to the room</source>
        <translation>Tout nouveau pour la salle</translation>
    </message>
    <message>
        <source>All new to the room: %1</source>
        <translation>Tout nouveau pour la salle&#xa0;: %1</translation>
    </message>
    <message>
        <source>The room gets what was agreed</source>
        <translation>La salle reçoit ce qui est convenu</translation>
    </message>
    <message>
        <source>The room gets %1 more</source>
        <translation>La salle reçoit en plus&#xa0;: %1</translation>
    </message>
    <message>
        <source>Came from the room</source>
        <translation>Venu de la salle</translation>
    </message>
    <message>
        <source>Came from the room: %1</source>
        <translation>Venu de la salle&#xa0;: %1</translation>
    </message>
    <message>
        <source>Came from the room: %1 more</source>
        <translation>Venu de la salle en plus&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>AskedCard</name>
    <message>
        <source>What does the player want? %1</source>
        <translation>Que veut le joueur&#xa0;? %1</translation>
    </message>
    <message>
        <source>Rackets: %1</source>
        <translation>Raquettes&#xa0;: %1</translation>
    </message>
    <message>
        <source>Different answers stand here. Ask which one holds; nothing is read back before.</source>
        <translation>Plusieurs réponses figurent ici. Demandez laquelle vaut&#xa0;; rien n’est relu avant.</translation>
    </message>
    <message>
        <source>The yes to the read-back closes this question for everybody.</source>
        <translation>Le oui à la relecture clôt cette question pour tous.</translation>
    </message>
    <message>
        <source>It was answered elsewhere meanwhile: %1 (%2). That holds, not %3, which was chosen here.</source>
        <translation>Répondu ailleurs entre-temps&#xa0;: %1 (%2). C’est ce qui vaut, et non %3, choisi ici.</translation>
    </message>
    <message>
        <source>It was answered elsewhere meanwhile: %1 (%2). That holds.</source>
        <translation>Répondu ailleurs entre-temps&#xa0;: %1 (%2). C’est ce qui vaut.</translation>
    </message>
</context>
<context>
    <name>BandRow</name>
    <message>
        <source>%1: %2, between %3 and %4</source>
        <translation>%1&#xa0;: %2, entre %3 et %4</translation>
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
        <translation>%1 en retard</translation>
    </message>
</context>
<context>
    <name>BedDrawing</name>
    <message>
        <source>What is drawn</source>
        <translation>Ce qui est dessiné</translation>
    </message>
    <message>
        <source>Stiffness map</source>
        <translation>Carte de rigidité</translation>
    </message>
    <message>
        <source>Strings</source>
        <translation>Cordes</translation>
    </message>
    <message>
        <source>Stiffness over the string bed. %1</source>
        <translation>Rigidité sur tout le tamis. %1</translation>
    </message>
    <message>
        <source>The string bed as it is strung: %1</source>
        <translation>Le tamis tel qu’il est cordé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>BedFigures</name>
    <message>
        <source>Estimates</source>
        <translation>Estimations</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Maintenant</translation>
    </message>
    <message>
        <source>At the match, %1</source>
        <translation>Au match, %1</translation>
    </message>
    <message>
        <source>%1: estimate %2, %3; at the match %4, %5</source>
        <translation>%1&#xa0;: estimation %2, %3&#xa0;; au match %4, %5</translation>
    </message>
    <message>
        <source>The true figure lies in the band nine times of ten, as far as is known.</source>
        <translation>La vraie valeur est dans l’intervalle neuf fois sur dix, d’après ce qu’on sait.</translation>
    </message>
</context>
<context>
    <name>BedModel</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>string not named</source>
        <translation>cordage non nommé</translation>
    </message>
    <message>
        <source>pulled with %1 / %2</source>
        <translation>tendu à %1 / %2</translation>
    </message>
    <message>
        <source>Stiffness in the centre</source>
        <translation>Rigidité au centre</translation>
    </message>
    <message>
        <source>Tone</source>
        <translation>Son</translation>
    </message>
    <message>
        <source>Tension in the mains</source>
        <translation>Tension dans les montants</translation>
    </message>
    <message>
        <source>Tension in the crosses</source>
        <translation>Tension dans les travers</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) are of other players’ rackets that this device holds.</source>
        <translation>
            <numerusform>%n mesure vient de raquettes d’autres joueurs présentes sur cet appareil.</numerusform>
            <numerusform>%n mesures viennent de raquettes d’autres joueurs présentes sur cet appareil.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) are left out: on a scale of the instrument’s own, or nothing like this racket.</source>
        <translation>
            <numerusform>%n mesure est laissée de côté&#xa0;: sur l’échelle propre de l’appareil, ou sans rapport avec cette raquette.</numerusform>
            <numerusform>%n mesures sont laissées de côté&#xa0;: sur l’échelle propre de l’appareil, ou sans rapport avec cette raquette.</numerusform>
        </translation>
    </message>
    <message>
        <source>A head of %1 cm²</source>
        <translation>Un tamis de %1 cm²</translation>
    </message>
    <message>
        <source>A pattern of %1 x %2</source>
        <translation>Un plan de %1 x %2</translation>
    </message>
    <message>
        <source>A synthetic gut, where the stock does not say the material</source>
        <translation>Un boyau synthétique, où le stock ne dit pas la matière</translation>
    </message>
    <message>
        <source>A gauge of 1.30 mm, where none is said</source>
        <translation>Une jauge de 1,30 mm, où rien n’est dit</translation>
    </message>
    <message>
        <source>Mains and crosses pulled alike</source>
        <translation>Montants et travers tirés pareil</translation>
    </message>
    <message>
        <source>Two pieces of string</source>
        <translation>Deux longueurs de cordage</translation>
    </message>
    <message>
        <source>It comes off the machine now</source>
        <translation>Elle sort maintenant de la machine</translation>
    </message>
    <message>
        <source>Its material is not said in the stock</source>
        <translation>Sa matière n’est pas dite dans le stock</translation>
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
        <translation>1 jour</translation>
    </message>
    <message>
        <source>1 week</source>
        <translation>1 semaine</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>match</source>
        <translation>match</translation>
    </message>
    <message>
        <source>%1: estimate %2, nine times of ten %3 to %4; now %5</source>
        <translation>%1&#xa0;: estimation %2, neuf fois sur dix de %3 à %4&#xa0;; maintenant %5</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Montants</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Travers</translation>
    </message>
    <message>
        <source>Stiffness of a firm stroke at the match: %1 N/mm, before %2 N/mm</source>
        <translation>Rigidité pour une frappe ferme au match&#xa0;: %1 N/mm, avant %2 N/mm</translation>
    </message>
    <message>
        <source>Mean tension %1, nine times of ten %2 to %3</source>
        <translation>Tension moyenne %1, neuf fois sur dix de %2 à %3</translation>
    </message>
    <message>
        <source>That is %1 % of what was pulled, %2 to %3 %</source>
        <translation>C’est %1 % de ce qui a été tiré, de %2 à %3 %</translation>
    </message>
    <message>
        <source>Stiffness in the centre %1 N/mm, %2 to %3</source>
        <translation>Rigidité au centre %1 N/mm, de %2 à %3</translation>
    </message>
    <message>
        <source>A match at %1</source>
        <translation>Un match à %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>à partir de %1</translation>
    </message>
    <message>
        <source>In the middle %1 N/mm, near the tip %2, near the throat %3, near the sides %4 and %5 (estimates)</source>
        <translation>Au milieu %1 N/mm, près de la tête %2, près du cœur %3, près des côtés %4 et %5 (estimations)</translation>
    </message>
    <message>
        <source>Estimates of the stiffness now in N/mm, pressed on a disc of %1 mm radius, as a ball flattens. In the middle %2, nine times of ten %3 to %4; one place against another is good to %5 %.</source>
        <translation>Estimations de la rigidité actuelle en N/mm, sous un disque de %1 mm de rayon, comme une balle s’aplatit. Au milieu %2, neuf fois sur dix de %3 à %4&#xa0;; un endroit par rapport à un autre est juste à %5 % près.</translation>
    </message>
</context>
<context>
    <name>BenchHead</name>
    <message>
        <source>Late: %1</source>
        <translation>En retard&#xa0;: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Avant %1</translation>
    </message>
    <message>
        <source>promised</source>
        <translation>promis</translation>
    </message>
</context>
<context>
    <name>BenchPage</name>
    <message>
        <source>Bench</source>
        <translation>Établi</translation>
    </message>
    <message>
        <source>Tag %1: %2</source>
        <translation>Étiquette %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Nothing waits for a bench</source>
        <translation>Rien n’attend un établi</translation>
    </message>
    <message>
        <source>The racket to be strung next lies here with its setup in large figures, as soon as the desk has taken one in.</source>
        <translation>La prochaine raquette à corder se trouve ici, avec ses réglages en grands chiffres, dès que l’accueil en a reçu une.</translation>
    </message>
    <message>
        <source>On-court rush: %1</source>
        <translation>Urgence du court&#xa0;: %1</translation>
    </message>
    <message>
        <source>It goes before the racket on this bench. A racket already on the machine is finished first.</source>
        <translation>Elle passe avant la raquette de cet établi. Une raquette déjà sur la machine est d’abord terminée.</translation>
    </message>
    <message>
        <source>It goes before the racket on this bench.</source>
        <translation>Elle passe avant la raquette de cet établi.</translation>
    </message>
    <message>
        <source>Take it up</source>
        <translation>La prendre</translation>
    </message>
    <message>
        <source>Two answers: %1</source>
        <translation>Deux réponses&#xa0;: %1</translation>
    </message>
    <message>
        <source>Ask the desk which one the player wants before you string it; they are under Questions.</source>
        <translation>Demandez à l’accueil laquelle le joueur veut avant de corder&#xa0;; elles sont sous Questions.</translation>
    </message>
    <message>
        <source>Note to the stringer</source>
        <translation>Note au cordeur</translation>
    </message>
    <message>
        <source>Written beside this racket</source>
        <translation>Noté à côté de cette raquette</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>Choose another racket (%1)</source>
        <translation>Choisir une autre raquette (%1)</translation>
    </message>
    <message>
        <source>Rackets that wait</source>
        <translation>Raquettes en attente</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Étiquette %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
    <message>
        <source>Late: %1</source>
        <translation>En retard&#xa0;: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Avant %1</translation>
    </message>
    <message>
        <source>Inspect the frame</source>
        <translation>Examiner le cadre</translation>
    </message>
    <message>
        <source>Machine %1 does not pull what is set</source>
        <translation>La machine %1 ne tire pas ce qui est réglé</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its rackets come here by themselves.</source>
        <translation>Jumelez avec un serveur de tournoi sous Échange&#xa0;; ses raquettes arrivent ici d’elles-mêmes.</translation>
    </message>
</context>
<context>
    <name>BenchPeople</name>
    <message>
        <source>pinned</source>
        <translation>fixé</translation>
    </message>
    <message>
        <source>Carry %1 to another bench</source>
        <translation>Porter %1 à un autre poste</translation>
    </message>
</context>
<context>
    <name>BenchTime</name>
    <message numerus="yes">
        <source>%n minute(s) on the machine</source>
        <translation>
            <numerusform>%n minute sur la machine</numerusform>
            <numerusform>%n minutes sur la machine</numerusform>
        </translation>
    </message>
    <message>
        <source>on the machine</source>
        <translation>sur la machine</translation>
    </message>
    <message numerus="yes">
        <source>Done again: %n time(s)</source>
        <translation>
            <numerusform>Refait&#xa0;: %n fois</numerusform>
            <numerusform>Refait&#xa0;: %n fois</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BenchTop</name>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
    <message>
        <source>Late: %1</source>
        <translation>En retard&#xa0;: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Avant %1</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Étiquette %1</translation>
    </message>
    <message>
        <source>The racket</source>
        <translation>La raquette</translation>
    </message>
    <message>
        <source>%1 was taken on by %2 at another bench</source>
        <translation>%1&#xa0;: %2 a pris la raquette à un autre poste</translation>
    </message>
    <message>
        <source>%1 was taken on at another bench</source>
        <translation>%1&#xa0;: prise à un autre poste</translation>
    </message>
    <message>
        <source>%1 was taken on at two benches while apart. Look where it is; its stage is settled in the room.</source>
        <translation>%1&#xa0;: deux postes l’ont prise chacun de son côté. Regardez où elle est&#xa0;; son étape se règle dans la salle.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 waits for its player’s answer</source>
        <translation>%1&#xa0;: attend la réponse du joueur</translation>
    </message>
    <message>
        <source>%1 was put aside</source>
        <translation>%1&#xa0;: mise de côté</translation>
    </message>
    <message>
        <source>%1 was collected</source>
        <translation>%1&#xa0;: remise à son joueur</translation>
    </message>
    <message>
        <source>The drop-off of %1 was taken back</source>
        <translation>%1&#xa0;: le dépôt a été annulé</translation>
    </message>
    <message>
        <source>%1: the player withdrew, and the book was erased. Ask at the desk.</source>
        <translation>%1&#xa0;: le joueur s’est retiré et son carnet est effacé. Demandez à l’accueil.</translation>
    </message>
    <message>
        <source>Next racket</source>
        <translation>Raquette suivante</translation>
    </message>
</context>
<context>
    <name>BenchTray</name>
    <message>
        <source>Moved, and pinned there</source>
        <translation>Déplacé et fixé là</translation>
    </message>
    <message>
        <source>Let %1 go over a bench. The number says what the plan loses by it.</source>
        <translation>Lâchez %1 au-dessus d’un poste. Le nombre dit ce que le plan y perd.</translation>
    </message>
    <message>
        <source>here</source>
        <translation>ici</translation>
    </message>
    <message>
        <source>a wish forbids it</source>
        <translation>un souhait l’interdit</translation>
    </message>
</context>
<context>
    <name>BenchesModel</name>
    <message>
        <source>There is no event yet.</source>
        <translation>Il n’y a pas encore de tournoi.</translation>
    </message>
    <message>
        <source>%1: %2, %3 %</source>
        <translation>%1&#xa0;: %2, %3 %</translation>
    </message>
    <message>
        <source>Proven: no plan is better.</source>
        <translation>Prouvé&#xa0;: aucun plan n’est meilleur.</translation>
    </message>
    <message>
        <source>No plan is better by more than %1 %.</source>
        <translation>Aucun plan n’est meilleur de plus de %1 %.</translation>
    </message>
    <message>
        <source> Nobody shares a bench with somebody they can meet late in the draw.</source>
        <translation> Personne ne partage un poste avec une adversaire ou un adversaire possible de la fin du tableau.</translation>
    </message>
    <message>
        <source> Some who can meet late in the draw share a bench: there are too few benches to hold all apart.</source>
        <translation> Certains qui peuvent se rencontrer en fin de tableau partagent un poste&#xa0;: il y a trop peu de postes pour tous les séparer.</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) moved.</source>
        <translation>
            <numerusform>%n joueur déplacé.</numerusform>
            <numerusform>%n joueurs déplacés.</numerusform>
        </translation>
    </message>
    <message>
        <source>The draw or the team changed meanwhile.</source>
        <translation>Le tableau ou l’équipe a changé entre-temps.</translation>
    </message>
    <message>
        <source>Plan again.</source>
        <translation>Planifiez à nouveau.</translation>
    </message>
    <message>
        <source>never with %1</source>
        <translation>jamais avec %1</translation>
    </message>
    <message>
        <source>only with %1</source>
        <translation>seulement avec %1</translation>
    </message>
</context>
<context>
    <name>BenchesView</name>
    <message>
        <source>There can be no plan yet</source>
        <translation>Pas encore de plan possible</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) without a bench</source>
        <translation>
            <numerusform>%n joueur sans poste</numerusform>
            <numerusform>%n joueurs sans poste</numerusform>
        </translation>
    </message>
    <message>
        <source>A plan gives everybody one stringer and one machine for the event, and keeps apart who may soon meet.</source>
        <translation>Un plan donne à chacun un cordeur et une machine pour le tournoi, et sépare ceux qui pourraient bientôt se rencontrer.</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Calcul en cours …</translation>
    </message>
    <message>
        <source>Plan anew</source>
        <translation>Planifier à nouveau</translation>
    </message>
    <message>
        <source>Plan the benches</source>
        <translation>Planifier les postes</translation>
    </message>
    <message>
        <source>Benches planned</source>
        <translation>Postes planifiés</translation>
    </message>
    <message>
        <source>%1 rackets to come</source>
        <translation>%1 raquettes attendues</translation>
    </message>
    <message>
        <source>Nobody yet</source>
        <translation>Personne encore</translation>
    </message>
    <message>
        <source>Move to, and what it costs the plan</source>
        <translation>Déplacer vers, et ce que cela coûte au plan</translation>
    </message>
    <message>
        <source>here</source>
        <translation>ici</translation>
    </message>
    <message>
        <source>a wish forbids it</source>
        <translation>un souhait l’interdit</translation>
    </message>
    <message>
        <source>Moved, and pinned there</source>
        <translation>Déplacé et fixé là</translation>
    </message>
    <message>
        <source>Take the pin out</source>
        <translation>Ne plus fixer</translation>
    </message>
    <message>
        <source>The next plan may move them</source>
        <translation>Le prochain plan peut déplacer</translation>
    </message>
    <message>
        <source>Nobody shares a bench with somebody they can meet from here on</source>
        <translation>Personne ne partage un poste avec qui il peut rencontrer à partir d’ici</translation>
    </message>
    <message>
        <source>Quarter-finals</source>
        <translation>Quarts de finale</translation>
    </message>
    <message>
        <source>Semi-finals</source>
        <translation>Demi-finales</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Finale</translation>
    </message>
    <message>
        <source>No rule</source>
        <translation>Sans règle</translation>
    </message>
    <message>
        <source>The next plan goes by it</source>
        <translation>Le prochain plan en tient compte</translation>
    </message>
    <message>
        <source>What the plan goes by</source>
        <translation>Ce que suit le plan</translation>
    </message>
    <message>
        <source>Wishes</source>
        <translation>Souhaits</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>retirer</translation>
    </message>
    <message>
        <source>The wish is dropped</source>
        <translation>Le souhait est retiré</translation>
    </message>
    <message>
        <source>Add a wish</source>
        <translation>Ajouter un souhait</translation>
    </message>
    <message>
        <source>Only with</source>
        <translation>Seulement avec</translation>
    </message>
    <message>
        <source>Never with</source>
        <translation>Jamais avec</translation>
    </message>
    <message>
        <source>What is wished for</source>
        <translation>Ce qui est souhaité</translation>
    </message>
    <message>
        <source>Who wins a match</source>
        <translation>Qui gagne un match</translation>
    </message>
    <message>
        <source>As known best</source>
        <translation>Au mieux connu</translation>
    </message>
    <message>
        <source>Rating</source>
        <translation>Classement</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Tête de série</translation>
    </message>
    <message>
        <source>Even odds</source>
        <translation>Chances égales</translation>
    </message>
    <message>
        <source>What a meeting on one bench costs, the final’s first</source>
        <translation>Ce que coûte une rencontre à un même poste, la finale d’abord</translation>
    </message>
    <message>
        <source>The last number stands for all rounds before. Empty: as is usual.</source>
        <translation>Le dernier nombre vaut pour tous les tours d’avant. Vide&#xa0;: comme d’habitude.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
</context>
<context>
    <name>BringDrawSheet</name>
    <message>
        <source>Bring a draw in</source>
        <translation>Importer un tableau</translation>
    </message>
    <message>
        <source>Name of the draw</source>
        <translation>Nom du tableau</translation>
    </message>
    <message>
        <source>Women’s singles</source>
        <translation>Simple dames</translation>
    </message>
    <message>
        <source>So many come through</source>
        <translation>Nombre de qualifiés</translation>
    </message>
    <message>
        <source>Choose the table (CSV)</source>
        <translation>Choisir le tableau de données (CSV)</translation>
    </message>
    <message>
        <source>Columns: line (from 1), player; if they are known partner, seed, rating, entry. A free line of the draw is called bye.</source>
        <translation>Colonnes&#xa0;: line (à partir de 1), player&#xa0;; si connus partner, seed, rating, entry. Une ligne exempte s’appelle bye.</translation>
    </message>
    <message>
        <source>Bring it in</source>
        <translation>Importer</translation>
    </message>
    <message>
        <source>Draw brought in</source>
        <translation>Tableau importé</translation>
    </message>
    <message>
        <source>Tables (*.csv *.CSV)</source>
        <translation>Tables (*.csv *.CSV)</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Ce que c’est</translation>
    </message>
    <message>
        <source>Main draw</source>
        <translation>Tableau principal</translation>
    </message>
    <message>
        <source>Qualifying</source>
        <translation>Qualifications</translation>
    </message>
    <message>
        <source>Round-robin group</source>
        <translation>Poule</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>D’où il vient</translation>
    </message>
    <message>
        <source>A table</source>
        <translation>Un tableau</translation>
    </message>
    <message>
        <source>Typed in</source>
        <translation>Saisi</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Lignes</translation>
    </message>
    <message>
        <source>From top to bottom. Leave empty who is not known yet; they can be put in later.</source>
        <translation>De haut en bas. Laissez vide qui n’est pas encore connu&#xa0;; on pourra le placer plus tard.</translation>
    </message>
    <message>
        <source>bye</source>
        <translation>exempt</translation>
    </message>
    <message>
        <source>Player, or player / partner</source>
        <translation>Joueur, ou joueur / partenaire</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Ligne %1</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Tête de série</translation>
    </message>
    <message>
        <source>Seed of line %1</source>
        <translation>Tête de série de la ligne %1</translation>
    </message>
    <message>
        <source>Line %1 is free</source>
        <translation>La ligne %1 est libre</translation>
    </message>
    <message>
        <source>Columns: player; if they are known partner, seed, rating. Three to eight rows.</source>
        <translation>Colonnes&#xa0;: player&#xa0;; si connus partner, seed, rating. Trois à huit lignes.</translation>
    </message>
    <message>
        <source>Draw made</source>
        <translation>Tableau créé</translation>
    </message>
</context>
<context>
    <name>BundleModel</name>
    <message>
        <source>Your private kit</source>
        <translation>Votre matériel privé</translation>
    </message>
    <message>
        <source>Whoever knows a passphrase</source>
        <translation>Quiconque connaît une phrase secrète</translation>
    </message>
    <message>
        <source>whoever knows the passphrase</source>
        <translation>quiconque connaît la phrase secrète</translation>
    </message>
    <message>
        <source>taken in by %1, %2</source>
        <translation>reçu par %1, %2</translation>
    </message>
    <message>
        <source>taken in by %1 in part, %2</source>
        <translation>reçu en partie par %1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n book(s)</source>
        <translation>
            <numerusform>%n livre</numerusform>
            <numerusform>%n livres</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, for %2</source>
        <translation>%1, pour %2</translation>
    </message>
</context>
<context>
    <name>BundleSeal</name>
    <message>
        <source>Who can open it</source>
        <translation>Qui peut l’ouvrir</translation>
    </message>
    <message>
        <source>Only that device can read it. Nobody has to remember anything.</source>
        <translation>Seul cet appareil peut le lire. Personne n’a rien à retenir.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Phrase secrète</translation>
    </message>
    <message>
        <source>Four or five words that do not belong together.</source>
        <translation>Quatre ou cinq mots qui ne vont pas ensemble.</translation>
    </message>
    <message>
        <source>The same once more</source>
        <translation>La même encore une fois</translation>
    </message>
    <message>
        <source>It is not the same yet.</source>
        <translation>Ce n’est pas encore la même.</translation>
    </message>
    <message>
        <source>Write them down now, and tell them; do not leave them beside the stick. They are shown this once.</source>
        <translation>Notez-les maintenant et dites-les&#xa0;; ne les laissez pas à côté de la clé. Ils ne s’affichent que cette fois.</translation>
    </message>
    <message>
        <source>Nobody can open the file without it, this tablet neither.</source>
        <translation>Sans elle, personne n’ouvre le fichier, pas même cette tablette.</translation>
    </message>
    <message>
        <source>Make up others</source>
        <translation>En inventer d’autres</translation>
    </message>
    <message>
        <source>Make five words up</source>
        <translation>Inventer cinq mots</translation>
    </message>
    <message>
        <source>Hide what is typed</source>
        <translation>Masquer la saisie</translation>
    </message>
    <message>
        <source>Show what is typed</source>
        <translation>Montrer la saisie</translation>
    </message>
    <message>
        <source>Type my own</source>
        <translation>Saisir les miens</translation>
    </message>
</context>
<context>
    <name>BundleSheet</name>
    <message numerus="yes">
        <source>%n picture(s) could not be read and are not in it.</source>
        <translation>
            <numerusform>%n photo n’a pas pu être lue et n’y figure pas.</numerusform>
            <numerusform>%n photos n’ont pas pu être lues et n’y figurent pas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Everything, as a backup</source>
        <translation>Tout, en sauvegarde</translation>
    </message>
    <message>
        <source>Take this event with me</source>
        <translation>Emporter ce tournoi</translation>
    </message>
    <message>
        <source>Hand players to a colleague</source>
        <translation>Confier des joueurs à un collègue</translation>
    </message>
    <message>
        <source>All players, jobs, events, pictures and your private kit, for this tablet or for a new one that takes its place. Other tablets do not take it in. The pairing with event servers is not in it: pair again after putting it back.</source>
        <translation>Tous les joueurs, travaux, tournois, photos et votre matériel privé, pour cette tablette ou une nouvelle qui la remplace. Les autres tablettes ne la prennent pas. L’association aux serveurs n’y est pas&#xa0;: associez à nouveau après la remise en place.</translation>
    </message>
    <message>
        <source>%1 with its draws, order of play and the books of its players.</source>
        <translation>%1 avec ses tableaux, son programme et les livres de ses joueurs.</translation>
    </message>
    <message>
        <source>Whoever gets it works in the room of %1</source>
        <translation>Le destinataire travaille dans la salle de %1</translation>
    </message>
    <message>
        <source>Players who agreed to that room only go along then.</source>
        <translation>Les joueurs qui n’ont accepté que cette salle partent alors aussi.</translation>
    </message>
    <message>
        <source>Note for whoever opens it</source>
        <translation>Note pour qui l’ouvre</translation>
    </message>
    <message>
        <source>Working out how large it is ...</source>
        <translation>Calcul de la taille ...</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s)</source>
        <translation>
            <numerusform>%n joueur</numerusform>
            <numerusform>%n joueurs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n tournoi</numerusform>
            <numerusform>%n tournois</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s)</source>
        <translation>
            <numerusform>%n photo</numerusform>
            <numerusform>%n photos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, about %2</source>
        <translation>%1, environ %2</translation>
    </message>
    <message numerus="yes">
        <source>Stays here: %n book(s)</source>
        <translation>
            <numerusform>Reste ici&#xa0;: %n livre</numerusform>
            <numerusform>Restent ici&#xa0;: %n livres</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %n autre</numerusform>
            <numerusform>et %n autres</numerusform>
        </translation>
    </message>
    <message>
        <source>It is being made ...</source>
        <translation>Préparation ...</translation>
    </message>
    <message>
        <source>It is on its way to %1</source>
        <translation>En route vers %1</translation>
    </message>
    <message>
        <source>The file is whole on this tablet (%1, for %2). What has arrived at %3 stays; put the stick in again and go on, also later.</source>
        <translation>Le fichier est entier sur cette tablette (%1, pour %2). Ce qui est arrivé à %3 reste&#xa0;; remettez la clé et continuez, même plus tard.</translation>
    </message>
    <message>
        <source>It is written: %1, for %2</source>
        <translation>C’est écrit&#xa0;: %1, pour %2</translation>
    </message>
    <message>
        <source>Keep it apart from this tablet, and its passphrase apart from it.</source>
        <translation>Gardez-la à part de cette tablette, et la phrase secrète à part d’elle.</translation>
    </message>
    <message>
        <source>Whoever brings it in gets a receipt beside it. Bring that in here, and you know that it came.</source>
        <translation>Qui la reçoit trouve un reçu à côté. Faites-le lire ici, et vous saurez qu’elle est arrivée.</translation>
    </message>
    <message>
        <source>Choose folder or stick</source>
        <translation>Choisir dossier ou clé</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Another place</source>
        <translation>Autre endroit</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Jeter</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
</context>
<context>
    <name>CameraModel</name>
    <message>
        <source>No camera was found. Type the number that stands on the tag.</source>
        <translation>Aucune caméra trouvée. Saisissez le numéro inscrit sur l’étiquette.</translation>
    </message>
    <message>
        <source>The camera can’t be used: %1. Another program may hold it; or type the number that stands on the tag.</source>
        <translation>La caméra est inutilisable&#xa0;: %1. Un autre programme l’occupe peut-être&#xa0;; ou saisissez le numéro inscrit sur l’étiquette.</translation>
    </message>
    <message>
        <source>The pictures of this camera can’t be read. Type the number that stands on the tag.</source>
        <translation>Les images de cette caméra sont illisibles. Saisissez le numéro inscrit sur l’étiquette.</translation>
    </message>
    <message>
        <source>Several codes are in sight: hold one before the camera.</source>
        <translation>Plusieurs codes sont visibles&#xa0;: présentez-en un seul à la caméra.</translation>
    </message>
    <message>
        <source>No camera was found. Add a photo from a file.</source>
        <translation>Aucun appareil photo trouvé. Ajoutez une photo à partir d’un fichier.</translation>
    </message>
    <message>
        <source>The camera can’t be used: %1. Another program may hold it; or add a photo from a file.</source>
        <translation>L’appareil photo ne peut pas servir&#xa0;: %1. Un autre programme l’occupe peut-être&#xa0;; ou ajoutez une photo à partir d’un fichier.</translation>
    </message>
    <message>
        <source>The pictures of this camera can’t be read. Add a photo from a file.</source>
        <translation>Les images de cet appareil ne se lisent pas. Ajoutez une photo à partir d’un fichier.</translation>
    </message>
</context>
<context>
    <name>CameraSheet</name>
    <message>
        <source>Scan with the camera</source>
        <translation>Scanner avec la caméra</translation>
    </message>
    <message>
        <source>Hold the code of one tag or card in the frame.</source>
        <translation>Tenez le code d’une étiquette ou d’une carte dans le cadre.</translation>
    </message>
</context>
<context>
    <name>CandidateRow</name>
    <message>
        <source>Alike: %1</source>
        <translation>Concordent&#xa0;: %1</translation>
    </message>
    <message>
        <source>Differs: %1</source>
        <translation>Diffèrent&#xa0;: %1</translation>
    </message>
    <message>
        <source>Others are alike: a relative, or somebody of the same name</source>
        <translation>D’autres se ressemblent&#xa0;: un parent, ou un homonyme</translation>
    </message>
</context>
<context>
    <name>CardDifferences</name>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Here: %1</source>
        <translation>Ici&#xa0;: %1</translation>
    </message>
    <message>
        <source>Card: %1</source>
        <translation>Carte&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>CardLines</name>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
    <message>
        <source>No setup and no racket</source>
        <translation>Aucun réglage et aucune raquette</translation>
    </message>
</context>
<context>
    <name>CardPicksSheet</name>
    <message>
        <source>Cards for several players</source>
        <translation>Cartes pour plusieurs joueurs</translation>
    </message>
    <message>
        <source>A whole team</source>
        <translation>Toute une équipe</translation>
    </message>
    <message>
        <source>Everybody of a country</source>
        <translation>Tous ceux d’un pays</translation>
    </message>
    <message>
        <source>Everybody in the room</source>
        <translation>Tous ceux dont une raquette est ici</translation>
    </message>
    <message>
        <source>Nobody</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Find a player</source>
        <translation>Chercher un joueur</translation>
    </message>
    <message>
        <source>There are more: type a name.</source>
        <translation>Il y en a d’autres&#xa0;: tapez un nom.</translation>
    </message>
    <message>
        <source>Nobody of that name</source>
        <translation>Personne de ce nom</translation>
    </message>
    <message>
        <source>Make the cards (%1)</source>
        <translation>Faire les cartes (%1)</translation>
    </message>
    <message>
        <source>Make the cards</source>
        <translation>Faire les cartes</translation>
    </message>
</context>
<context>
    <name>CarryCard</name>
    <message>
        <source>Without a network</source>
        <translation>Sans réseau</translation>
    </message>
    <message>
        <source>In one file on a stick, sealed for one tablet or by a passphrase. It can be brought in twice without harm.</source>
        <translation>Dans un fichier sur une clé, scellé pour une tablette ou par une phrase secrète. Le recevoir deux fois ne nuit pas.</translation>
    </message>
    <message>
        <source>A file has not arrived yet</source>
        <translation>Un fichier n’est pas encore arrivé</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Take this event with me</source>
        <translation>Emporter ce tournoi</translation>
    </message>
    <message>
        <source>Hand players to a colleague</source>
        <translation>Confier des joueurs à un collègue</translation>
    </message>
    <message>
        <source>Everything, as a backup</source>
        <translation>Tout, en sauvegarde</translation>
    </message>
    <message>
        <source>Bring in a file</source>
        <translation>Recevoir un fichier</translation>
    </message>
    <message>
        <source>Made here</source>
        <translation>Faits ici</translation>
    </message>
    <message>
        <source>Words of this tablet’s key, for whoever brings in a file of it and does not know it: %1</source>
        <translation>Mots de la clé de cette tablette, pour qui reçoit un de ses fichiers sans la connaître&#xa0;: %1</translation>
    </message>
    <message>
        <source>Bundles and receipts (*.weavelog *.bundle *.receipt)</source>
        <translation>Lots et reçus (*.weavelog *.bundle *.receipt)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Tous les fichiers (*)</translation>
    </message>
</context>
<context>
    <name>CarryWords</name>
    <message>
        <source>The file could not be brought in</source>
        <translation>Le fichier n’a pas pu être reçu</translation>
    </message>
    <message>
        <source>The file could not be written</source>
        <translation>Le fichier n’a pas pu être écrit</translation>
    </message>
    <message>
        <source>Try again; if it stays, show the line below to whoever looks after the tablets.</source>
        <translation>Réessayez&#xa0;; si cela persiste, montrez la ligne ci-dessous à qui s’occupe des tablettes.</translation>
    </message>
    <message>
        <source>It was made by a newer Weavelog</source>
        <translation>Il vient d’un Weavelog plus récent</translation>
    </message>
    <message>
        <source>Update Weavelog on this tablet, then bring the file in again. Nothing was taken.</source>
        <translation>Mettez Weavelog à jour sur cette tablette, puis recevez le fichier à nouveau. Rien n’a été pris.</translation>
    </message>
    <message>
        <source>There is no room left</source>
        <translation>Il n’y a plus de place</translation>
    </message>
    <message>
        <source>Make room on the stick or on this tablet, then go on. What is there already stays.</source>
        <translation>Faites de la place sur la clé ou sur cette tablette, puis continuez. Ce qui y est déjà reste.</translation>
    </message>
    <message>
        <source>The folder or stick is not there</source>
        <translation>Le dossier ou la clé n’est pas là</translation>
    </message>
    <message>
        <source>Put the stick in again and go on, or choose another place. Nothing is lost.</source>
        <translation>Remettez la clé et continuez, ou choisissez un autre endroit. Rien n’est perdu.</translation>
    </message>
    <message>
        <source>There is a file of that name already</source>
        <translation>Un fichier de ce nom existe déjà</translation>
    </message>
    <message>
        <source>Choose another place; the file that is there stays as it is.</source>
        <translation>Choisissez un autre endroit&#xa0;; le fichier présent reste tel quel.</translation>
    </message>
    <message>
        <source>It does not open here</source>
        <translation>Il ne s’ouvre pas ici</translation>
    </message>
    <message>
        <source>It is for another tablet, the passphrase is another one, or somebody altered it. Nothing was taken.</source>
        <translation>Il est pour une autre tablette, la phrase secrète est autre, ou quelqu’un l’a modifié. Rien n’a été pris.</translation>
    </message>
    <message>
        <source>It may not be taken in here</source>
        <translation>Il ne peut pas être reçu ici</translation>
    </message>
    <message>
        <source>It was not written</source>
        <translation>Il n’a pas été écrit</translation>
    </message>
    <message>
        <source>This receipt does not count</source>
        <translation>Ce reçu ne compte pas</translation>
    </message>
    <message>
        <source>The line below says why. What is known of the bundle stays as it was.</source>
        <translation>La ligne ci-dessous dit pourquoi. Ce que l’on sait du lot reste comme c’était.</translation>
    </message>
    <message>
        <source>The line below says why and what to do. Nothing was taken.</source>
        <translation>La ligne ci-dessous dit pourquoi et que faire. Rien n’a été pris.</translation>
    </message>
    <message>
        <source>The line below says why and what to do.</source>
        <translation>La ligne ci-dessous dit pourquoi et que faire.</translation>
    </message>
    <message>
        <source>The file is damaged, or is no bundle</source>
        <translation>Le fichier est abîmé, ou n’est pas un lot</translation>
    </message>
    <message>
        <source>Have it copied again from where it was made. What could be read is kept.</source>
        <translation>Faites-le copier à nouveau là où il a été fait. Ce qui a pu être lu est gardé.</translation>
    </message>
    <message>
        <source>The file can&apos;t be read to its end</source>
        <translation>Le fichier ne se lit pas jusqu’au bout</translation>
    </message>
    <message>
        <source>The stick or disk does not take the file</source>
        <translation>La clé ou le disque n’accepte pas le fichier</translation>
    </message>
    <message>
        <source>Look at the stick, put it in again and go on. Nothing is lost.</source>
        <translation>Vérifiez la clé, remettez-la et continuez. Rien n’est perdu.</translation>
    </message>
    <message>
        <source>Something is missing or wrong</source>
        <translation>Il manque quelque chose, ou c’est faux</translation>
    </message>
    <message>
        <source>The line below says what.</source>
        <translation>La ligne ci-dessous dit quoi.</translation>
    </message>
    <message>
        <source>private, never goes to others</source>
        <translation>privé, ne va jamais à d’autres</translation>
    </message>
    <message>
        <source>withdrew the consent</source>
        <translation>a retiré son accord</translation>
    </message>
    <message>
        <source>agreed to one room only</source>
        <translation>n’a accepté qu’une salle</translation>
    </message>
    <message>
        <source>this tablet</source>
        <translation>cette tablette</translation>
    </message>
    <message>
        <source>paired with this tablet</source>
        <translation>associé à cette tablette</translation>
    </message>
    <message>
        <source>on this tablet&apos;s list</source>
        <translation>sur la liste de cette tablette</translation>
    </message>
    <message>
        <source>known by what it wrote</source>
        <translation>connu par ses écritures</translation>
    </message>
    <message>
        <source>not known here</source>
        <translation>inconnu ici</translation>
    </message>
    <message>
        <source>taken off the list</source>
        <translation>retiré de la liste</translation>
    </message>
    <message>
        <source>Too short: at least eight characters, better four or five words.</source>
        <translation>Trop court&#xa0;: au moins huit caractères, mieux quatre ou cinq mots.</translation>
    </message>
    <message>
        <source>Easy to guess: a stranger with the file opens it. Take more words.</source>
        <translation>Facile à deviner&#xa0;: un inconnu qui a le fichier l’ouvre. Prenez plus de mots.</translation>
    </message>
    <message>
        <source>Good enough against whoever finds the stick.</source>
        <translation>Suffisant contre qui trouve la clé.</translation>
    </message>
    <message>
        <source>Hard to guess, also for somebody who tries for years.</source>
        <translation>Difficile à deviner, même en essayant des années.</translation>
    </message>
    <message>
        <source>not known to be at that event</source>
        <translation>n’est pas connu comme présent à ce tournoi</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %n autre</numerusform>
            <numerusform>et %n autres</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CautionNotes</name>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
    <message>
        <source>Written beside it: %1</source>
        <translation>Noté à côté&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>ChangesCard</name>
    <message>
        <source>Changed</source>
        <translation>Modifié</translation>
    </message>
    <message>
        <source>Nothing changed: same as last time</source>
        <translation>Rien de changé&#xa0;: comme la dernière fois</translation>
    </message>
</context>
<context>
    <name>CheckRow</name>
    <message>
        <source>In order: %1</source>
        <translation>En ordre&#xa0;: %1</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Dit</translation>
    </message>
    <message>
        <source>Not in order: %1</source>
        <translation>Pas en ordre&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>CheckSheet</name>
    <message>
        <source>Check: %1</source>
        <translation>Contrôle&#xa0;: %1</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Étiquette %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
    <message>
        <source>A racket is checked once it is strung and before it is collected.</source>
        <translation>Une raquette se contrôle une fois cordée et avant d’être retirée.</translation>
    </message>
    <message numerus="yes">
        <source>Done again: %n time(s)</source>
        <translation>
            <numerusform>Refait&#xa0;: %n fois</numerusform>
            <numerusform>Refait&#xa0;: %n fois</numerusform>
        </translation>
    </message>
    <message>
        <source>The rest is in order</source>
        <translation>Le reste est en ordre</translation>
    </message>
    <message>
        <source>All is in order</source>
        <translation>Tout est en ordre</translation>
    </message>
    <message>
        <source>The racket goes back to</source>
        <translation>La raquette retourne à</translation>
    </message>
    <message>
        <source>Why it is done again</source>
        <translation>Pourquoi elle est refaite</translation>
    </message>
    <message>
        <source>Whoever strings it again reads this at the bench.</source>
        <translation>La personne qui la recorde lit ceci au poste.</translation>
    </message>
    <message>
        <source>Back to: %1</source>
        <translation>Retour à&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) to look at</source>
        <translation>
            <numerusform>%n point à regarder</numerusform>
            <numerusform>%n points à regarder</numerusform>
        </translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Contrôlée</translation>
    </message>
    <message>
        <source>Tag %1: %2</source>
        <translation>Étiquette %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Earlier checks</source>
        <translation>Contrôles précédents</translation>
    </message>
</context>
<context>
    <name>CodeShown</name>
    <message>
        <source>At %1, until %2</source>
        <translation>À %1, jusqu’à %2</translation>
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
    <name>ConfirmScreen</name>
    <message>
        <source>Read-back for %1</source>
        <translation>Relecture pour %1</translation>
    </message>
</context>
<context>
    <name>ConsentScreen</name>
    <message>
        <source>Consent of %1</source>
        <translation>Accord de %1</translation>
    </message>
</context>
<context>
    <name>CsvWords</name>
    <message>
        <source>The file is larger than %1. Split it, or leave out what is not needed.</source>
        <translation>Le fichier dépasse %1. Partagez-le, ou retirez ce qui est inutile.</translation>
    </message>
    <message>
        <source>Its letters can’t be read. Save the file as UTF-8.</source>
        <translation>Ses caractères sont illisibles. Enregistrez le fichier en UTF-8.</translation>
    </message>
    <message>
        <source>This is no text. Choose a table saved as CSV.</source>
        <translation>Ce n’est pas du texte. Choisissez un tableau enregistré en CSV.</translation>
    </message>
    <message>
        <source>A letter can’t be read. Save the file as UTF-8, or choose its encoding.</source>
        <translation>Un caractère est illisible. Enregistrez le fichier en UTF-8, ou choisissez son codage.</translation>
    </message>
    <message>
        <source>The file is empty. Choose one whose first line names the columns.</source>
        <translation>Le fichier est vide. Choisissez-en un dont la première ligne nomme les colonnes.</translation>
    </message>
    <message numerus="yes">
        <source>There are more than %n row(s). Split the file.</source>
        <translation>
            <numerusform>Il y a plus de %n ligne. Partagez le fichier.</numerusform>
            <numerusform>Il y a plus de %n lignes. Partagez le fichier.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>There are more than %n column(s). Leave out what is not needed.</source>
        <translation>
            <numerusform>Il y a plus de %n colonne. Retirez ce qui est inutile.</numerusform>
            <numerusform>Il y a plus de %n colonnes. Retirez ce qui est inutile.</numerusform>
        </translation>
    </message>
    <message>
        <source>The field is too long. Shorten it, or look for a missing quotation mark.</source>
        <translation>Le champ est trop long. Raccourcissez-le, ou cherchez un guillemet manquant.</translation>
    </message>
    <message numerus="yes">
        <source>The row has %n field(s)</source>
        <translation>
            <numerusform>La ligne a %n champ</numerusform>
            <numerusform>La ligne a %n champs</numerusform>
        </translation>
    </message>
    <message>
        <source>the first line %1. A separator is missing or too many, or a field that holds one needs quotation marks.</source>
        <translation>la première %1. Un séparateur manque ou est de trop, ou un champ qui en contient un veut des guillemets.</translation>
    </message>
    <message>
        <source>A quotation mark stands inside a field. Put the whole field in quotation marks and double those inside it.</source>
        <translation>Un guillemet se trouve dans un champ. Mettez tout le champ entre guillemets et doublez ceux qu’il contient.</translation>
    </message>
    <message>
        <source>Text stands after the closing quotation mark. Double the quotation marks inside a field.</source>
        <translation>Du texte suit le guillemet fermant. Doublez les guillemets à l’intérieur d’un champ.</translation>
    </message>
    <message>
        <source>A quotation mark opens here and is never closed.</source>
        <translation>Un guillemet s’ouvre ici et ne se ferme jamais.</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Ligne %1</translation>
    </message>
    <message>
        <source>Line %1, column %2</source>
        <translation>Ligne %1, colonne %2</translation>
    </message>
</context>
<context>
    <name>DayLine</name>
    <message>
        <source>%1 min late</source>
        <translation>%1 min de retard</translation>
    </message>
    <message>
        <source>on court</source>
        <translation>sur le court</translation>
    </message>
    <message>
        <source>on the machine now</source>
        <translation>sur la machine maintenant</translation>
    </message>
    <message>
        <source>not as told</source>
        <translation>pas comme annoncé</translation>
    </message>
    <message>
        <source>court</source>
        <translation>court</translation>
    </message>
    <message>
        <source>late %1′</source>
        <translation>%1′ retard</translation>
    </message>
</context>
<context>
    <name>DayModel</name>
    <message>
        <source>there is no event yet</source>
        <translation>il n’y a pas encore de tournoi</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 chez %2</translation>
    </message>
    <message>
        <source>%1: no shift has room any more; told was %2</source>
        <translation>%1&#xa0;: plus aucun service n’a de place&#xa0;; annoncé&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: strung %2 at %3, told was %4</source>
        <translation>%1&#xa0;: cordée %2 chez %3, annoncé&#xa0;: %4</translation>
    </message>
    <message>
        <source> – late now</source>
        <translation> – en retard maintenant</translation>
    </message>
    <message>
        <source>%1 has two rackets on the machine. Is %2 strung? Then tap it on.</source>
        <translation>%1 a deux raquettes sur la machine. %2 est-elle cordée&#xa0;? Alors faites-la avancer.</translation>
    </message>
    <message>
        <source>%1 is on a machine of somebody who is not in the team.</source>
        <translation>%1 est sur la machine de quelqu’un qui n’est pas dans l’équipe.</translation>
    </message>
    <message>
        <source>%1 has no machine: theirs is out of order, and no other is free.</source>
        <translation>%1 n’a pas de machine&#xa0;: la sienne est hors service, et aucune autre n’est libre.</translation>
    </message>
    <message>
        <source>%1 is planned on %2: their own machine is out of order.</source>
        <translation>%1 est prévu sur %2&#xa0;: sa propre machine est hors service.</translation>
    </message>
    <message>
        <source>There is no machine for %1.</source>
        <translation>Il n’y a pas de machine pour %1.</translation>
    </message>
    <message>
        <source>%1 waits for the player’s answer and is in no plan.</source>
        <translation>%1 attend la réponse du joueur et n’est dans aucun plan.</translation>
    </message>
    <message>
        <source>No shift has room for %1.</source>
        <translation>Aucun service n’a de place pour %1.</translation>
    </message>
    <message>
        <source>Nobody has said who is in the room when: everybody counts as there from 8 to 20 o’clock.</source>
        <translation>Personne n’a dit qui est là quand&#xa0;: tous comptent comme présents de 8 à 20 heures.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 will be late: ready %2</source>
        <translation>%1 sera en retard&#xa0;: prête %2</translation>
    </message>
    <message>
        <source>%1 will be late: no shift has room</source>
        <translation>%1 sera en retard&#xa0;: aucun service n’a de place</translation>
    </message>
    <message>
        <source>%1 withdrew</source>
        <translation>%1 s’est retiré</translation>
    </message>
    <message>
        <source>%1 moved from %2 to %3</source>
        <translation>%1 est passé de %2 à %3</translation>
    </message>
    <message>
        <source>%1: %3 strings it, not %2</source>
        <translation>%1&#xa0;: c’est %3 qui la corde, pas %2</translation>
    </message>
    <message>
        <source>%1: ready %3 instead of %2</source>
        <translation>%1&#xa0;: prête %3 au lieu de %2</translation>
    </message>
    <message>
        <source>%1 will be ready in time again</source>
        <translation>%1 sera de nouveau prête à temps</translation>
    </message>
    <message>
        <source>%1: already ready %2</source>
        <translation>%1&#xa0;: déjà prête %2</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n match(es) played</source>
        <translation>
            <numerusform>%1&#xa0;: %n match joué</numerusform>
            <numerusform>%1&#xa0;: %n matchs joués</numerusform>
        </translation>
    </message>
    <message>
        <source>Came in: %1</source>
        <translation>Arrivées&#xa0;: %1</translation>
    </message>
    <message>
        <source>Strung or gone: %1</source>
        <translation>Cordées ou parties&#xa0;: %1</translation>
    </message>
    <message>
        <source>pair with its server, or make one</source>
        <translation>associez son serveur, ou créez-en un</translation>
    </message>
    <message>
        <source>%1 is in no plan: it is wanted, or went on the machine, at a time that can’t be. Look at its times.</source>
        <translation>%1 n’est dans aucun plan&#xa0;: l’heure pour laquelle elle est voulue, ou à laquelle elle est passée sur la machine, est impossible. Regardez ses heures.</translation>
    </message>
</context>
<context>
    <name>DayMoney</name>
    <message>
        <source>A box can&apos;t hold less than nothing.</source>
        <translation>Une caisse ne peut pas contenir moins que rien.</translation>
    </message>
</context>
<context>
    <name>DayStepper</name>
    <message>
        <source>%1: a day earlier</source>
        <translation>%1&#xa0;: un jour plus tôt</translation>
    </message>
    <message>
        <source>%1: a day later</source>
        <translation>%1&#xa0;: un jour plus tard</translation>
    </message>
</context>
<context>
    <name>DayView</name>
    <message>
        <source>There can be no plan of the day</source>
        <translation>Aucun plan du jour possible</translation>
    </message>
    <message>
        <source>Since you last looked (%1)</source>
        <translation>Depuis votre dernier regard (%1)</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Vu</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) to string</source>
        <translation>
            <numerusform>%n raquette à corder</numerusform>
            <numerusform>%n raquettes à corder</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them late</source>
        <translation>
            <numerusform>dont %n en retard</numerusform>
            <numerusform>dont %n en retard</numerusform>
        </translation>
    </message>
    <message>
        <source>all in time</source>
        <translation>toutes à temps</translation>
    </message>
    <message>
        <source>Plan anew</source>
        <translation>Replanifier</translation>
    </message>
    <message>
        <source>Not as it was told</source>
        <translation>Pas comme annoncé</translation>
    </message>
    <message numerus="yes">
        <source>Tell the room (%n change(s))</source>
        <translation>
            <numerusform>Annoncer à la salle (%n changement)</numerusform>
            <numerusform>Annoncer à la salle (%n changements)</numerusform>
        </translation>
    </message>
    <message>
        <source>Tell the room this plan</source>
        <translation>Annoncer ce plan à la salle</translation>
    </message>
    <message>
        <source>The room knows</source>
        <translation>La salle est au courant</translation>
    </message>
    <message>
        <source>To be looked at</source>
        <translation>À regarder</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Poste</translation>
    </message>
    <message>
        <source>On the machine, strung by about</source>
        <translation>Sur la machine, cordée vers</translation>
    </message>
    <message>
        <source>Strung</source>
        <translation>Cordée</translation>
    </message>
    <message>
        <source>Promised for</source>
        <translation>Promise pour</translation>
    </message>
    <message>
        <source>no time</source>
        <translation>sans heure</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s) late</source>
        <translation>
            <numerusform>%n minute de retard</numerusform>
            <numerusform>%n minutes de retard</numerusform>
        </translation>
    </message>
    <message>
        <source>Check, stencil and bag are counted in. Ask the player, or move what can wait.</source>
        <translation>Contrôle, pochoir et sac sont comptés. Demandez au joueur, ou déplacez ce qui peut attendre.</translation>
    </message>
    <message>
        <source>A rush from the court: it goes before all that waits.</source>
        <translation>Une urgence du court&#xa0;: elle passe avant tout ce qui attend.</translation>
    </message>
    <message>
        <source>Its home bench is %1; there it would be later.</source>
        <translation>Son poste attitré est %1&#xa0;; elle y serait prête plus tard.</translation>
    </message>
    <message>
        <source>The room was told something else.</source>
        <translation>La salle avait entendu autre chose.</translation>
    </message>
</context>
<context>
    <name>DeskFind</name>
    <message>
        <source>Desk</source>
        <translation>Accueil</translation>
    </message>
    <message>
        <source>No event yet: rackets get no tag numbers</source>
        <translation>Pas encore de tournoi&#xa0;: pas de numéros d’étiquette</translation>
    </message>
    <message>
        <source>New player</source>
        <translation>Nouveau joueur</translation>
    </message>
    <message>
        <source>Nobody of that name</source>
        <translation>Personne de ce nom</translation>
    </message>
    <message>
        <source>No player is known on this device</source>
        <translation>Aucun joueur n’est connu sur cet appareil</translation>
    </message>
    <message>
        <source>Look at the spelling, or begin a new player with this name.</source>
        <translation>Vérifiez l’orthographe, ou créez un joueur de ce nom.</translation>
    </message>
    <message>
        <source>Players come with an entry list, with an exchange, or are added here.</source>
        <translation>Les joueurs viennent d’une liste d’engagés, d’un échange, ou s’ajoutent ici.</translation>
    </message>
    <message>
        <source>Whose rackets? Name or tag</source>
        <translation>À qui&#xa0;? Nom ou étiquette</translation>
    </message>
    <message>
        <source>Scan a tag with the camera</source>
        <translation>Scanner une étiquette avec la caméra</translation>
    </message>
    <message>
        <source>Work on your own: make an event</source>
        <translation>Travailler seul&#xa0;: créer un tournoi</translation>
    </message>
    <message numerus="yes">
        <source>%n unfinished drop-off(s)</source>
        <translation>
            <numerusform>%n dépôt inachevé</numerusform>
            <numerusform>%n dépôts inachevés</numerusform>
        </translation>
    </message>
    <message>
        <source>Unfinished drop-offs</source>
        <translation>Dépôts inachevés</translation>
    </message>
</context>
<context>
    <name>DeskPlayer</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Ask everything</source>
        <translation>Tout demander</translation>
    </message>
    <message>
        <source>Take rackets in</source>
        <translation>Prendre des raquettes</translation>
    </message>
    <message>
        <source>Same as last time</source>
        <translation>Comme la dernière fois</translation>
    </message>
</context>
<context>
    <name>DeviceSheet</name>
    <message>
        <source>Shut out since %1. It comes in again with a new code; what it wrote stays.</source>
        <translation>Exclue depuis le %1&#xa0;; elle revient avec un nouveau code&#xa0;; ce qu’elle a écrit reste.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Its role</source>
        <translation>Son rôle</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Desk</source>
        <translation>Accueil</translation>
    </message>
    <message>
        <source>Stringer</source>
        <translation>Cordeur</translation>
    </message>
    <message>
        <source>Reader</source>
        <translation>Lecteur</translation>
    </message>
    <message>
        <source>May do everything, invite tablets and shut them out.</source>
        <translation>Peut tout faire, inviter des tablettes et les exclure.</translation>
    </message>
    <message>
        <source>Takes rackets in and hands them out, keeps money, stock and plans. Does not change team, prices or lists of steps.</source>
        <translation>Prend et rend les raquettes, tient l’argent, le stock et les plans. Ne change ni l’équipe, ni les prix, ni les listes d’étapes.</translation>
    </message>
    <message>
        <source>Strings, checks and takes rackets in. Does not change money, stock, plans or the event.</source>
        <translation>Corde, contrôle et prend des raquettes. Ne change ni l’argent, ni le stock, ni les plans, ni le tournoi.</translation>
    </message>
    <message>
        <source>Sees everything that may come to this room, changes nothing.</source>
        <translation>Voit tout ce qui peut venir dans cette salle, ne change rien.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Yes, shut it out now</source>
        <translation>Oui, l’exclure maintenant</translation>
    </message>
    <message>
        <source>Shut it out: it is lost or not ours</source>
        <translation>L’exclure&#xa0;: perdue ou pas à nous</translation>
    </message>
</context>
<context>
    <name>DevicesCard</name>
    <message>
        <source>Tablets of this room</source>
        <translation>Tablettes de cette salle</translation>
    </message>
    <message>
        <source>Touch one to give it another name or role, or to shut it out.</source>
        <translation>En toucher une pour changer son nom ou son rôle, ou pour l’exclure.</translation>
    </message>
    <message>
        <source>Needs a connection to the event server</source>
        <translation>Nécessite une connexion au serveur du tournoi</translation>
    </message>
    <message>
        <source>That was not done</source>
        <translation>Cela n’a pas été fait</translation>
    </message>
    <message>
        <source>%1 (this tablet)</source>
        <translation>%1 (cette tablette)</translation>
    </message>
    <message>
        <source>shut out since %1</source>
        <translation>exclue depuis le %1</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>depuis le %1</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(s) came later</source>
        <translation>
            <numerusform>%n entrée venue après</numerusform>
            <numerusform>%n entrées venues après</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DiscountSheet</name>
    <message>
        <source>Discount: %1</source>
        <translation>Remise&#xa0;: %1</translation>
    </message>
    <message>
        <source>Discount</source>
        <translation>Remise</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Say why; then choose how much.</source>
        <translation>Dites pourquoi, puis choisissez combien.</translation>
    </message>
    <message>
        <source>A tenth off</source>
        <translation>Un dixième en moins</translation>
    </message>
    <message>
        <source>A fifth off</source>
        <translation>Un cinquième en moins</translation>
    </message>
    <message>
        <source>Free of charge</source>
        <translation>Gratuit</translation>
    </message>
</context>
<context>
    <name>DoingsBar</name>
    <message>
        <source>I see</source>
        <translation>Compris</translation>
    </message>
</context>
<context>
    <name>DrawModel</name>
    <message>
        <source>Last round of qualifying</source>
        <translation>Dernier tour de qualification</translation>
    </message>
    <message>
        <source>Qualifying, round %1</source>
        <translation>Qualification, tour %1</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Finale</translation>
    </message>
    <message>
        <source>Semi-finals</source>
        <translation>Demi-finales</translation>
    </message>
    <message>
        <source>Quarter-finals</source>
        <translation>Quarts de finale</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Tour %1</translation>
    </message>
    <message>
        <source>wild card</source>
        <translation>invitation</translation>
    </message>
    <message>
        <source>qualifier</source>
        <translation>qualifié</translation>
    </message>
    <message>
        <source>lucky loser</source>
        <translation>repêché</translation>
    </message>
    <message>
        <source>alternate</source>
        <translation>remplaçant</translation>
    </message>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>%n place</numerusform>
            <numerusform>%n places</numerusform>
        </translation>
    </message>
    <message>
        <source>The file can&apos;t be read.</source>
        <translation>Le fichier ne se lit pas.</translation>
    </message>
    <message>
        <source>Choose another one.</source>
        <translation>Choisissez-en un autre.</translation>
    </message>
    <message>
        <source>The file is larger than a draw can be.</source>
        <translation>Le fichier est plus grand qu’un tableau ne peut l’être.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n win(s)</source>
        <translation>
            <numerusform>%1&#xa0;: %n victoire</numerusform>
            <numerusform>%1&#xa0;: %n victoires</numerusform>
        </translation>
    </message>
    <message>
        <source>Write round and match as 2/7.</source>
        <translation>Écrivez tour et match comme 2/7.</translation>
    </message>
</context>
<context>
    <name>DrawView</name>
    <message>
        <source>There is no draw yet</source>
        <translation>Il n’y a pas encore de tableau</translation>
    </message>
    <message>
        <source>Bring it in from a table with a line for each place: line, player, and if they are known seed and rating.</source>
        <translation>Importez-le d’une table avec une ligne par place&#xa0;: line, player et, si connus, seed et rating.</translation>
    </message>
    <message>
        <source>Draw: %1</source>
        <translation>Tableau&#xa0;: %1</translation>
    </message>
    <message>
        <source>Bring a draw in</source>
        <translation>Importer un tableau</translation>
    </message>
    <message>
        <source>Something in this draw does not fit together</source>
        <translation>Quelque chose ne concorde pas dans ce tableau</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>Montrer&#xa0;: %1</translation>
    </message>
    <message>
        <source>Which draw</source>
        <translation>Quel tableau</translation>
    </message>
    <message>
        <source>Take this draw away</source>
        <translation>Retirer ce tableau</translation>
    </message>
    <message>
        <source>Draw taken away</source>
        <translation>Tableau retiré</translation>
    </message>
    <message>
        <source>Standing: %1</source>
        <translation>Classement&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>DropOffDraft</name>
    <message>
        <source>Rackets taken in: %1</source>
        <translation>Raquettes prises&#xa0;: %1</translation>
    </message>
    <message>
        <source>another answer has come in</source>
        <translation>une autre réponse est arrivée</translation>
    </message>
    <message>
        <source>choose one of them and read back again</source>
        <translation>choisissez-en une et relisez</translation>
    </message>
    <message>
        <source>a question was answered at another tablet meanwhile</source>
        <translation>une question a reçu sa réponse sur une autre tablette entre-temps</translation>
    </message>
    <message>
        <source>look at the answer and read back again</source>
        <translation>regardez la réponse et relisez</translation>
    </message>
</context>
<context>
    <name>DropOffPage</name>
    <message>
        <source>Player</source>
        <translation>Joueur</translation>
    </message>
    <message>
        <source>Strings</source>
        <translation>Cordes</translation>
    </message>
    <message>
        <source>Tension</source>
        <translation>Tension</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>New player</source>
        <translation>Nouveau joueur</translation>
    </message>
    <message>
        <source>Ask what is known; everything but strings and tensions can wait.</source>
        <translation>Demandez ce qui est connu&#xa0;; tout sauf cordes et tensions peut attendre.</translation>
    </message>
    <message>
        <source>As last time. Say what is different.</source>
        <translation>Comme la dernière fois. Dites ce qui change.</translation>
    </message>
    <message>
        <source>%1, page %2 of 4</source>
        <translation>%1, page %2 sur 4</translation>
    </message>
    <message>
        <source>Something else is different</source>
        <translation>Autre chose change</translation>
    </message>
    <message>
        <source>The player is not here: store unconfirmed</source>
        <translation>Le joueur n’est pas là&#xa0;: enregistrer sans confirmation</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Leave it unfinished</source>
        <translation>Laisser inachevé</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Suite</translation>
    </message>
    <message>
        <source>Read back</source>
        <translation>Relire</translation>
    </message>
</context>
<context>
    <name>EventModel</name>
    <message>
        <source>Give the event a name.</source>
        <translation>Donnez un nom au tournoi.</translation>
    </message>
    <message>
        <source>Say which day.</source>
        <translation>Dites quel jour.</translation>
    </message>
    <message>
        <source>No such day; write it as %1.</source>
        <translation>Ce jour n’existe pas&#xa0;; écrivez-le comme %1.</translation>
    </message>
    <message>
        <source>It lies before the first day.</source>
        <translation>Il est avant le premier jour.</translation>
    </message>
    <message>
        <source>No such currency; write its three letters, such as EUR.</source>
        <translation>Cette monnaie n’existe pas&#xa0;; écrivez ses trois lettres, par exemple EUR.</translation>
    </message>
    <message>
        <source>No such time zone; write it as Europe/Lisbon.</source>
        <translation>Ce fuseau horaire n’existe pas&#xa0;; écrivez-le comme Europe/Lisbon.</translation>
    </message>
</context>
<context>
    <name>EventSheet</name>
    <message>
        <source>Event changed</source>
        <translation>Tournoi modifié</translation>
    </message>
    <message>
        <source>Name and days of the event</source>
        <translation>Nom et jours du tournoi</translation>
    </message>
    <message>
        <source>Make an event</source>
        <translation>Créer un tournoi</translation>
    </message>
    <message>
        <source>It is kept on this tablet and needs no network. Rackets get their numbers, and room, bench and money are there at once.</source>
        <translation>Il reste sur cette tablette et n’a besoin d’aucun réseau. Les raquettes reçoivent leurs numéros, et la salle, l’établi et l’argent sont là aussitôt.</translation>
    </message>
    <message>
        <source>Name of the event</source>
        <translation>Nom du tournoi</translation>
    </message>
    <message>
        <source>Stringing at …</source>
        <translation>Cordage à …</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Premier jour</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Dernier jour</translation>
    </message>
    <message>
        <source>Place, if wanted</source>
        <translation>Lieu, si souhaité</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Votre nom</translation>
    </message>
    <message>
        <source>Promises count with whoever is on the team, from 8 to 20 o&apos;clock until shifts are planned.</source>
        <translation>Les promesses comptent sur ceux de l’équipe, de 8 à 20 heures tant qu’aucun horaire n’est prévu.</translation>
    </message>
    <message>
        <source>Currency, such as EUR</source>
        <translation>Monnaie, par exemple EUR</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Fuseau horaire</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) taken in before belong to it</source>
        <translation>
            <numerusform>%n raquette reçue avant en fait partie</numerusform>
            <numerusform>%n raquettes reçues avant en font partie</numerusform>
        </translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Make the event</source>
        <translation>Créer le tournoi</translation>
    </message>
</context>
<context>
    <name>EventsCard</name>
    <message>
        <source>Event</source>
        <translation>Tournoi</translation>
    </message>
    <message>
        <source>There is no event yet</source>
        <translation>Il n’y a pas encore de tournoi</translation>
    </message>
    <message>
        <source>of the event server</source>
        <translation>du serveur de tournoi</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) here</source>
        <translation>
            <numerusform>%n raquette ici</numerusform>
            <numerusform>%n raquettes ici</numerusform>
        </translation>
    </message>
    <message>
        <source>Change name and days</source>
        <translation>Modifier nom et jours</translation>
    </message>
    <message>
        <source>Make an event</source>
        <translation>Créer un tournoi</translation>
    </message>
    <message>
        <source>Which one is shown</source>
        <translation>Lequel est montré</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Choisir</translation>
    </message>
    <message>
        <source>Desk, room, bench, plan, money, stock and team show this one. The others stay here as they are.</source>
        <translation>Accueil, salle, établi, plan, argent, stock et équipe montrent celui-ci. Les autres restent ici tels quels.</translation>
    </message>
</context>
<context>
    <name>ExchangeModel</name>
    <message>
        <source>That is no whole code. Scan it once more, or type the five words.</source>
        <translation>Ce n’est pas un code entier. Scannez-le encore une fois, ou tapez les cinq mots.</translation>
    </message>
    <message>
        <source>That is no address. One looks like desk.local or 192.168.1.20:26110.</source>
        <translation>Ce n’est pas une adresse. Elle ressemble à desk.local ou 192.168.1.20:26110.</translation>
    </message>
    <message>
        <source>Word %1 can’t be one of a code. Each has five letters; compare it letter by letter.</source>
        <translation>Le mot %1 ne peut pas être d’un code. Chacun a cinq lettres&#xa0;; comparez-le lettre par lettre.</translation>
    </message>
    <message>
        <source>A code has five words of five letters each. Compare them with the other screen.</source>
        <translation>Un code a cinq mots de cinq lettres. Comparez-les avec l’autre écran.</translation>
    </message>
</context>
<context>
    <name>ExchangeOverview</name>
    <message>
        <source>Exchange</source>
        <translation>Échange</translation>
    </message>
    <message>
        <source>Everything works without a network; here devices bring each other up to date.</source>
        <translation>Tout fonctionne sans réseau&#xa0;; ici, les appareils se mettent à jour entre eux.</translation>
    </message>
    <message>
        <source>This tablet&apos;s clock or theirs is off by %1</source>
        <translation>L’heure de cette tablette ou la leur est décalée de %1</translation>
    </message>
    <message>
        <source>This tablet&apos;s clock is ahead. Look at both and set the wrong one; nothing is lost meanwhile.</source>
        <translation>L’horloge de cette tablette avance. Regardez les deux et réglez la fausse&#xa0;; rien n’est perdu entre-temps.</translation>
    </message>
    <message>
        <source>A clock far ahead: %1</source>
        <translation>Une horloge très en avance&#xa0;: %1</translation>
    </message>
    <message>
        <source>What was written there carries a time to come. Everything is kept; set that device&apos;s clock before it is used again.</source>
        <translation>Ce qui y a été écrit porte une heure à venir. Tout est conservé&#xa0;; mettez cet appareil à l’heure avant de le réutiliser.</translation>
    </message>
    <message>
        <source>Some books could not be made equal</source>
        <translation>Certains livres n’ont pas pu être rendus égaux</translation>
    </message>
    <message>
        <source>One side may not hand them on, or holds them otherwise. Nothing is lost and everything else has crossed; compare those players at the desk.</source>
        <translation>Un côté n’a pas le droit de les transmettre, ou les détient autrement. Rien n’est perdu et tout le reste est passé&#xa0;; comparez ces joueurs à l’accueil.</translation>
    </message>
    <message>
        <source>An arrival is under way</source>
        <translation>Une arrivée est en cours</translation>
    </message>
    <message>
        <source>Arriving at an event</source>
        <translation>Arrivée à un tournoi</translation>
    </message>
    <message>
        <source>It goes on where it stopped.</source>
        <translation>Elle reprend là où elle s’est arrêtée.</translation>
    </message>
    <message>
        <source>Step by step: the event server, its entry list, who of it is known here, what goes across, and what came of it.</source>
        <translation>Pas à pas&#xa0;: le serveur du tournoi, sa liste des inscrits, qui est connu ici, ce qui part, et ce qui en est sorti.</translation>
    </message>
    <message>
        <source>Go on with the arrival</source>
        <translation>Continuer l’arrivée</translation>
    </message>
    <message>
        <source>Arrive</source>
        <translation>Arriver</translation>
    </message>
    <message>
        <source>Copied devices</source>
        <translation>Appareils copiés</translation>
    </message>
    <message>
        <source>The data of one device was copied, and both copies wrote on. The words of both are kept; where they differ, a question is open. Go on with one of them only.</source>
        <translation>Les données d’un appareil ont été copiées, et les deux copies ont continué à écrire. Les réponses des deux sont conservées&#xa0;; là où elles diffèrent, une question est ouverte. Ne continuez qu’avec l’un des deux.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n book(s)</source>
        <translation>
            <numerusform>%1&#xa0;: %n livre</numerusform>
            <numerusform>%1&#xa0;: %n livres</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Set aside: %n entry(s)</source>
        <translation>
            <numerusform>Mis de côté&#xa0;: %n entrée</numerusform>
            <numerusform>Mis de côté&#xa0;: %n entrées</numerusform>
        </translation>
    </message>
    <message>
        <source>They came in but break a rule, so they are kept and not taken over. Show them to whoever looks after the event server.</source>
        <translation>Elles sont arrivées mais enfreignent une règle&#xa0;: gardées, mais pas reprises. Montrez-les à la personne qui s’occupe du serveur.</translation>
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
            <numerusform>%n heure</numerusform>
            <numerusform>%n heures</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n jour</numerusform>
            <numerusform>%n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>The other clock is ahead. Look at both and set the wrong one; nothing is lost meanwhile.</source>
        <translation>L’autre horloge avance. Regardez les deux et réglez celle qui est fausse&#xa0;; rien n’est perdu entre-temps.</translation>
    </message>
    <message>
        <source>Pair with another one</source>
        <translation>Associer avec un autre</translation>
    </message>
    <message>
        <source>This tablet shows %1</source>
        <translation>Cette tablette montre %1</translation>
    </message>
    <message>
        <source>The event server’s is %1. Both are kept here; %2 does not go to the server.</source>
        <translation>Celui du serveur est %1. Les deux restent ici&#xa0;; %2 ne va pas au serveur.</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>Montrer %1</translation>
    </message>
</context>
<context>
    <name>ExchangeState</name>
    <message>
        <source>No event server yet</source>
        <translation>Pas encore de serveur</translation>
    </message>
    <message>
        <source>Work goes on without one. Pair when you arrive at an event.</source>
        <translation>Le travail continue sans lui. Associez la tablette en arrivant à un tournoi.</translation>
    </message>
    <message>
        <source>Pairing ...</source>
        <translation>Association ...</translation>
    </message>
    <message>
        <source>Not connected; tried again in the background.</source>
        <translation>Non connecté&#xa0;; nouvelle tentative en arrière-plan.</translation>
    </message>
    <message>
        <source>Greeting ...</source>
        <translation>Prise de contact ...</translation>
    </message>
    <message>
        <source>Connected, bringing each other up to date.</source>
        <translation>Connecté, mise à jour mutuelle.</translation>
    </message>
    <message>
        <source>Connected and up to date; changes cross at once.</source>
        <translation>Connecté et à jour&#xa0;; les changements passent aussitôt.</translation>
    </message>
    <message>
        <source>This tablet&apos;s role there: %1</source>
        <translation>Rôle de cette tablette&#xa0;: %1</translation>
    </message>
    <message>
        <source>Players coming in; those that are here can be used already</source>
        <translation>Les joueurs arrivent&#xa0;; ceux qui sont là sont déjà utilisables</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Nothing waits to be sent.</source>
        <translation>Rien n’attend d’être envoyé.</translation>
    </message>
    <message numerus="yes">
        <source>More than %n action(s) wait to be sent.</source>
        <translation>
            <numerusform>Plus de %n action attend d’être envoyée.</numerusform>
            <numerusform>Plus de %n actions attendent d’être envoyées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n action(s) wait to be sent.</source>
        <translation>
            <numerusform>%n action attend d’être envoyée.</numerusform>
            <numerusform>%n actions attendent d’être envoyées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Last agreement: %1, over %n book(s). Both screens show the same words.</source>
        <translation>
            <numerusform>Dernier accord&#xa0;: %1, sur %n livre. Les deux écrans montrent les mêmes mots.</numerusform>
            <numerusform>Dernier accord&#xa0;: %1, sur %n livres. Les deux écrans montrent les mêmes mots.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) stay on this tablet only. Whoever plays here is ticked under “Arrive”.</source>
        <translation>
            <numerusform>%n joueur reste sur cette tablette seulement. Cochez sous «&#xa0;Arriver&#xa0;» ceux qui jouent ici.</numerusform>
            <numerusform>%n joueurs restent sur cette tablette seulement. Cochez sous «&#xa0;Arriver&#xa0;» ceux qui jouent ici.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ExchangeTrouble</name>
    <message>
        <source>The code does not hold</source>
        <translation>Le code n’est pas valable</translation>
    </message>
    <message>
        <source>The code has expired</source>
        <translation>Le code a expiré</translation>
    </message>
    <message>
        <source>The other side speaks a newer protocol</source>
        <translation>L’autre côté parle un protocole plus récent</translation>
    </message>
    <message>
        <source>A clock is too far off</source>
        <translation>Une horloge est trop décalée</translation>
    </message>
    <message>
        <source>This tablet&apos;s disk is full</source>
        <translation>Le disque de cette tablette est plein</translation>
    </message>
    <message>
        <source>The exchange has stopped</source>
        <translation>L’échange s’est arrêté</translation>
    </message>
    <message>
        <source>It is not the one this tablet was paired with, or it was set up anew. Ask the head of the room, and pair again only if that is so.</source>
        <translation>Ce n’est pas celui auquel cette tablette a été associée, ou il a été réinstallé. Demandez au responsable de la salle et n’associez de nouveau que dans ce cas.</translation>
    </message>
    <message>
        <source>Ask the head of the room: this tablet may have been taken off the list, or the code was used already.</source>
        <translation>Demandez au responsable de la salle&#xa0;: la tablette a peut-être été retirée de la liste, ou le code a déjà servi.</translation>
    </message>
    <message>
        <source>Update Weavelog on the older device. Work goes on until then.</source>
        <translation>Mettez Weavelog à jour sur l’appareil le plus ancien. D’ici là, le travail continue.</translation>
    </message>
    <message>
        <source>Make room; nothing that was confirmed is lost. Then try again.</source>
        <translation>Faites de la place&#xa0;; rien de ce qui a été confirmé n’est perdu. Puis réessayez.</translation>
    </message>
    <message>
        <source>Try now</source>
        <translation>Essayer maintenant</translation>
    </message>
    <message>
        <source>The other side is out of reach</source>
        <translation>L’autre côté est hors d’atteinte</translation>
    </message>
    <message>
        <source>The other side shows another certificate</source>
        <translation>L’autre côté montre un autre certificat</translation>
    </message>
    <message>
        <source>The other side does not know this tablet</source>
        <translation>L’autre côté ne connaît pas cette tablette</translation>
    </message>
    <message>
        <source>The other side refuses this tablet</source>
        <translation>L’autre côté refuse cette tablette</translation>
    </message>
    <message>
        <source>Work goes on; this tablet tries again by itself. Are both in one network, and is the address right?</source>
        <translation>Le travail continue&#xa0;; cette tablette réessaie d’elle-même. Les deux sont-ils dans le même réseau, et l’adresse est-elle juste&#xa0;?</translation>
    </message>
    <message>
        <source>Ask for a new code and pair again. Nothing on this tablet is lost.</source>
        <translation>Demandez un nouveau code et associez à nouveau. Rien n’est perdu sur cette tablette.</translation>
    </message>
    <message>
        <source>Compare it with the other screen word by word, or ask for a new one.</source>
        <translation>Comparez-le mot à mot avec l’autre écran, ou demandez-en un nouveau.</translation>
    </message>
    <message>
        <source>Ask for a new one: a code is good for fifteen minutes and for one tablet.</source>
        <translation>Demandez-en un nouveau&#xa0;: un code vaut quinze minutes et pour une tablette.</translation>
    </message>
    <message>
        <source>Set the clock of this tablet, and have a look at the other one.</source>
        <translation>Réglez l’horloge de cette tablette, et regardez aussi l’autre.</translation>
    </message>
    <message>
        <source>Try again; if it stays, show the line below to whoever looks after the tablets.</source>
        <translation>Réessayez&#xa0;; si cela persiste, montrez la ligne ci-dessous à la personne qui s’occupe des tablettes.</translation>
    </message>
</context>
<context>
    <name>FactsBeside</name>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Naissance</translation>
    </message>
    <message>
        <source>Country</source>
        <translation>Pays</translation>
    </message>
    <message>
        <source>Rackets</source>
        <translation>Raquettes</translation>
    </message>
    <message>
        <source>Last setup</source>
        <translation>Dernier réglage</translation>
    </message>
    <message>
        <source>Last seen</source>
        <translation>Dernière fois</translation>
    </message>
    <message>
        <source>On the entry list</source>
        <translation>Sur la liste des inscrits</translation>
    </message>
    <message>
        <source>Known here</source>
        <translation>Connu ici</translation>
    </message>
</context>
<context>
    <name>FaultPage</name>
    <message>
        <source>What this device holds cannot be opened</source>
        <translation>Le contenu de cet appareil ne s’ouvre pas</translation>
    </message>
    <message>
        <source>Nothing was changed. Mend it, then start the app again.</source>
        <translation>Rien n’a été modifié. Corrigez, puis relancez l’application.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Quitter</translation>
    </message>
</context>
<context>
    <name>FieldsSheet</name>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
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
        <translation>Moins&#xa0;: %1</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Plus&#xa0;: %1</translation>
    </message>
    <message>
        <source>This is no figure. Between %1 and %2 %3</source>
        <translation>Ce n’est pas un nombre. Entre %1 et %2 %3</translation>
    </message>
</context>
<context>
    <name>FindingCard</name>
    <message>
        <source>The player has not answered yet</source>
        <translation>Pas encore de réponse</translation>
    </message>
    <message>
        <source>Two different answers were taken: ask again</source>
        <translation>Deux réponses différentes ont été notées&#xa0;: redemander</translation>
    </message>
    <message>
        <source>The player said not to string it</source>
        <translation>La réponse était&#xa0;: ne pas corder</translation>
    </message>
    <message>
        <source>Found earlier: %1</source>
        <translation>Constaté plus tôt&#xa0;: %1</translation>
    </message>
    <message>
        <source>Proposed: %1</source>
        <translation>Proposé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Answer: %1</source>
        <translation>Réponse&#xa0;: %1</translation>
    </message>
    <message>
        <source>Ask again</source>
        <translation>Redemander</translation>
    </message>
    <message>
        <source>Ask the player</source>
        <translation>Poser la question</translation>
    </message>
    <message>
        <source>Go on against it ...</source>
        <translation>Continuer malgré tout ...</translation>
    </message>
    <message>
        <source>Go on without it ...</source>
        <translation>Continuer sans réponse ...</translation>
    </message>
    <message>
        <source>It is put right</source>
        <translation>C’est réparé</translation>
    </message>
</context>
<context>
    <name>FindingForm</name>
    <message>
        <source>Tap where it is</source>
        <translation>Toucher l’endroit</translation>
    </message>
    <message>
        <source>Choose what it is</source>
        <translation>Choisir le constat</translation>
    </message>
    <message>
        <source>Write what it is</source>
        <translation>Décrire le constat</translation>
    </message>
    <message>
        <source>Choose what you propose</source>
        <translation>Choisir la proposition</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Tap the drawing, or choose here</source>
        <translation>Toucher le dessin ou choisir ici</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Autre chose</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>De quoi il s’agit</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>What is proposed to the player</source>
        <translation>Ce qui est proposé</translation>
    </message>
    <message>
        <source>Nothing, only noted</source>
        <translation>Rien, seulement noté</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Noter&#xa0;: %1</translation>
    </message>
    <message>
        <source>Noted: %1</source>
        <translation>Noté&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>FindingNote</name>
    <message>
        <source>%1: %2.</source>
        <translation>%1&#xa0;: %2. {1:?}</translation>
    </message>
</context>
<context>
    <name>FinishCard</name>
    <message>
        <source>Stencils and notes</source>
        <translation>Marquages et notes</translation>
    </message>
    <message>
        <source>Racket stencil</source>
        <translation>Marquage de la raquette</translation>
    </message>
    <message>
        <source>Its ink</source>
        <translation>Son encre</translation>
    </message>
    <message>
        <source>String stencil</source>
        <translation>Marquage de la corde</translation>
    </message>
    <message>
        <source>Dampener</source>
        <translation>Antivibrateur</translation>
    </message>
    <message>
        <source>Overgrip</source>
        <translation>Surgrip</translation>
    </message>
    <message>
        <source>Brought by</source>
        <translation>Apportées par</translation>
    </message>
    <message>
        <source>May be collected by</source>
        <translation>Peuvent être reprises par</translation>
    </message>
    <message>
        <source>Note to the stringer</source>
        <translation>Note au cordeur</translation>
    </message>
</context>
<context>
    <name>ForecastModel</name>
    <message>
        <source>not known yet</source>
        <translation>pas encore connu</translation>
    </message>
</context>
<context>
    <name>ForecastView</name>
    <message>
        <source>There can be no forecast</source>
        <translation>Aucune prévision possible</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Calcul en cours …</translation>
    </message>
    <message>
        <source>Some %1 rackets are still to come (eight times of ten between %2 and %3), %4 for each player and match. Estimates, from the draws and from what came so far.</source>
        <translation>Environ %1 raquettes sont encore à venir (huit fois sur dix entre %2 et %3), %4 par joueur et par match. Estimations d’après les tableaux et ce qui est venu jusqu’ici.</translation>
    </message>
    <message>
        <source>Rackets, by day</source>
        <translation>Raquettes, par jour</translation>
    </message>
    <message>
        <source>Tap a day for its hours</source>
        <translation>Touchez un jour pour ses heures</translation>
    </message>
    <message numerus="yes">
        <source>%n bench(es)</source>
        <translation>
            <numerusform>%n poste</numerusform>
            <numerusform>%n postes</numerusform>
        </translation>
    </message>
    <message>
        <source>Rackets brought in each hour, and the benches on which they are ready within three hours</source>
        <translation>Raquettes apportées par heure, et les postes où elles sont prêtes en trois heures</translation>
    </message>
    <message>
        <source>String, metres of all days</source>
        <translation>Cordage, mètres de tous les jours</translation>
    </message>
    <message>
        <source>By what each player had most at this event</source>
        <translation>D’après ce que chaque joueur a eu le plus ici</translation>
    </message>
</context>
<context>
    <name>ForgetSheet</name>
    <message>
        <source>Forget %1?</source>
        <translation>Oublier %1&#xa0;?</translation>
    </message>
    <message>
        <source>This can&apos;t be undone</source>
        <translation>Cette action est définitive</translation>
    </message>
    <message>
        <source>Setups, rackets, jobs, notes and the name are erased on this device now, and on every other device at its next exchange. Only a mark stays that keeps them from coming back.</source>
        <translation>Réglages, raquettes, cordages, notes et nom sont effacés tout de suite sur cet appareil, et sur chaque autre appareil à son prochain échange. Seule reste une marque qui empêche leur retour.</translation>
    </message>
    <message>
        <source>Entry lists of events stay as they are.</source>
        <translation>Les listes d’engagés des tournois restent telles quelles.</translation>
    </message>
    <message>
        <source>The player has asked for it</source>
        <translation>Le joueur l’a demandé</translation>
    </message>
    <message>
        <source>Forget this player</source>
        <translation>Oublier ce joueur</translation>
    </message>
    <message numerus="yes">
        <source>All %n books of this person that are linked go together.</source>
        <translation>
            <numerusform>Le %n livre lié de cette personne part avec.</numerusform>
            <numerusform>Les %n livres liés de cette personne partent ensemble.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FrameDrawing</name>
    <message>
        <source>Drawing of the frame, 12 o&apos;clock at the head</source>
        <translation>Dessin du cadre, 12 h en tête</translation>
    </message>
    <message>
        <source>The arrow keys choose a place; so does the list of places.</source>
        <translation>Les flèches choisissent un endroit, tout comme la liste des endroits.</translation>
    </message>
</context>
<context>
    <name>FrameNotes</name>
    <message>
        <source>Frame: %1</source>
        <translation>Cadre&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>FrameQuestionScreen</name>
    <message>
        <source>Question to %1 about the frame</source>
        <translation>Question à %1 sur le cadre</translation>
    </message>
    <message>
        <source>Answer noted</source>
        <translation>Réponse notée</translation>
    </message>
    <message>
        <source>This was answered elsewhere meanwhile</source>
        <translation>La réponse a été notée ailleurs entre-temps</translation>
    </message>
</context>
<context>
    <name>GalleryWindow</name>
    <message>
        <source>Weavelog: every part in every state</source>
        <translation>Weavelog&#xa0;: chaque élément dans chaque état</translation>
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
    <message>
        <source>String not said</source>
        <translation>Corde pas dite</translation>
    </message>
</context>
<context>
    <name>GiveCardModel</name>
    <message>
        <source>card of %1</source>
        <translation>carte de %1</translation>
    </message>
</context>
<context>
    <name>GiveCardSheet</name>
    <message>
        <source>Card of %1</source>
        <translation>Carte de %1</translation>
    </message>
    <message>
        <source>There is no card</source>
        <translation>Il n’y a pas de carte</translation>
    </message>
    <message>
        <source>The player did not agree that this goes to others. Ask, and record the answer under Consent first.</source>
        <translation>Il manque l’accord pour que cela aille à d’autres. Demandez et notez d’abord la réponse sous Accord.</translation>
    </message>
    <message>
        <source>Scan it where the next racket is strung. Whoever sees it can read it.</source>
        <translation>Scannez-la là où la prochaine raquette est cordée. Qui la voit peut la lire.</translation>
    </message>
    <message>
        <source>Signed by %1, as of %2</source>
        <translation>Signée par %1, état au %2</translation>
    </message>
    <message>
        <source>What is on it</source>
        <translation>Ce qu’elle contient</translation>
    </message>
    <message>
        <source>Older setups and rackets for which there was no room: %1</source>
        <translation>Réglages plus anciens et raquettes sans place&#xa0;: %1</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Sur papier</translation>
    </message>
    <message>
        <source>Save as picture</source>
        <translation>Enregistrer en image</translation>
    </message>
    <message>
        <source>Save as text</source>
        <translation>Enregistrer en texte</translation>
    </message>
    <message>
        <source>Copy the text</source>
        <translation>Copier le texte</translation>
    </message>
    <message>
        <source>The picture is saved</source>
        <translation>L’image est enregistrée</translation>
    </message>
    <message>
        <source>The text is saved</source>
        <translation>Le texte est enregistré</translation>
    </message>
    <message>
        <source>The text is copied</source>
        <translation>Le texte est copié</translation>
    </message>
    <message>
        <source>The card was not saved</source>
        <translation>La carte n’a pas été enregistrée</translation>
    </message>
</context>
<context>
    <name>GoOnSheet</name>
    <message>
        <source>Go on without the player&apos;s word</source>
        <translation>Continuer sans accord</translation>
    </message>
    <message>
        <source>Your name and your reason stay beside this racket. A damaged frame can break under tension; the maker&apos;s advice and the rules of the place come first.</source>
        <translation>Votre nom et votre raison restent à côté de cette raquette. Un cadre abîmé peut casser sous la tension&#xa0;; les conseils du fabricant et les règles du lieu passent avant tout.</translation>
    </message>
    <message>
        <source>Who answers for it</source>
        <translation>Qui en répond</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Raison</translation>
    </message>
    <message>
        <source>I answer for it</source>
        <translation>J’en réponds</translation>
    </message>
    <message>
        <source>Give a name and a reason</source>
        <translation>Donner un nom et une raison</translation>
    </message>
    <message>
        <source>Going on: %1</source>
        <translation>On continue&#xa0;: %1</translation>
    </message>
    <message>
        <source>This was answered elsewhere meanwhile</source>
        <translation>La réponse a été notée ailleurs entre-temps</translation>
    </message>
    <message>
        <source>Nothing is to be answered here now</source>
        <translation>Il n’y a plus rien à répondre ici</translation>
    </message>
</context>
<context>
    <name>HostModel</name>
    <message>
        <source>This tablet is in no network</source>
        <translation>Cette tablette n’est dans aucun réseau</translation>
    </message>
    <message>
        <source>Others can&apos;t reach this tablet</source>
        <translation>Les autres ne peuvent pas joindre cette tablette</translation>
    </message>
    <message>
        <source>Join the Wi-Fi that the others are in, or open one on this tablet.</source>
        <translation>Rejoignez le Wi-Fi des autres, ou ouvrez-en un sur cette tablette.</translation>
    </message>
    <message>
        <source>Try again; if it stays, show the line below to whoever looks after the tablets.</source>
        <translation>Réessayez&#xa0;; si cela persiste, montrez la ligne ci-dessous à qui s’occupe des tablettes.</translation>
    </message>
    <message>
        <source>both agree</source>
        <translation>les deux concordent</translation>
    </message>
    <message>
        <source>being brought up to date</source>
        <translation>mise à jour en cours</translation>
    </message>
</context>
<context>
    <name>HostPart</name>
    <message>
        <source>What they get</source>
        <translation>Ce qu’ils reçoivent</translation>
    </message>
    <message>
        <source>This event</source>
        <translation>Ce tournoi</translation>
    </message>
    <message>
        <source>Chosen players</source>
        <translation>Joueurs choisis</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Rien</translation>
    </message>
    <message>
        <source>%1 and its players; they work at it with this tablet, and both see what the other does.</source>
        <translation>%1 et ses joueurs&#xa0;; ils y travaillent avec cette tablette, et chacun voit ce que fait l’autre.</translation>
    </message>
    <message>
        <source>The players that are ticked here, and nobody else: they do not even learn of others.</source>
        <translation>Les joueurs cochés ici et personne d’autre&#xa0;: ils n’apprennent même pas que d’autres existent.</translation>
    </message>
    <message>
        <source>Nothing: what they bring comes here, and they learn of nobody.</source>
        <translation>Rien&#xa0;: ce qu’ils apportent arrive ici, et ils n’apprennent rien de personne.</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Commencer</translation>
    </message>
    <message>
        <source>Others reach this tablet at %1</source>
        <translation>Cette tablette est joignable à %1</translation>
    </message>
    <message>
        <source>They get: %1</source>
        <translation>Ils reçoivent&#xa0;: %1</translation>
    </message>
    <message>
        <source>Nobody is here yet. Without a code may come: %1</source>
        <translation>Personne n’est encore là. Sans code peuvent venir&#xa0;: %1</translation>
    </message>
    <message>
        <source>Nobody is here yet. Make a code; on the other tablet it is taken under Exchange, Pair.</source>
        <translation>Personne n’est encore là. Créez un code&#xa0;; l’autre tablette le prend sous Échange, Associer.</translation>
    </message>
    <message>
        <source>The next tablet</source>
        <translation>La prochaine tablette</translation>
    </message>
    <message>
        <source>Gets and brings</source>
        <translation>Reçoit et apporte</translation>
    </message>
    <message>
        <source>Only gets</source>
        <translation>Reçoit seulement</translation>
    </message>
    <message>
        <source>Code of this tablet</source>
        <translation>Code de cette tablette</translation>
    </message>
    <message>
        <source>Make a code</source>
        <translation>Faire un code</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
</context>
<context>
    <name>HostsCard</name>
    <message>
        <source>Forget %1</source>
        <translation>Oublier %1</translation>
    </message>
    <message>
        <source>The players and jobs stay on this tablet. To exchange with it again you need a new code.</source>
        <translation>Les joueurs et les cordages restent sur cette tablette. Pour échanger de nouveau, il faut un nouveau code.</translation>
    </message>
    <message>
        <source>Forget it</source>
        <translation>L’oublier</translation>
    </message>
    <message>
        <source>Paired with</source>
        <translation>Associé avec</translation>
    </message>
</context>
<context>
    <name>InspectionModel</name>
    <message>
        <source>put right by %1, %2</source>
        <translation>réparé par %1, %2</translation>
    </message>
    <message>
        <source>said by %1, taken by %2, %3</source>
        <translation>dit par %1, noté par %2, %3</translation>
    </message>
    <message>
        <source>%1 answers for going on, %2: %3</source>
        <translation>%1 répond de la suite, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>The player&apos;s answer: %1</source>
        <translation>Réponse&#xa0;: %1</translation>
    </message>
    <message>
        <source>It is not there any more.</source>
        <translation>Il n’est plus là.</translation>
    </message>
    <message>
        <source>Two different answers were taken: ask again.</source>
        <translation>Deux réponses différentes ont été notées&#xa0;: redemander.</translation>
    </message>
    <message>
        <source>this was answered elsewhere meanwhile: %1</source>
        <translation>la réponse a été notée ailleurs entre-temps&#xa0;: %1</translation>
    </message>
    <message>
        <source>ask again if it does not hold</source>
        <translation>redemandez si elle ne vaut pas</translation>
    </message>
</context>
<context>
    <name>InspectionSheet</name>
    <message>
        <source>Tag %1, %2</source>
        <translation>Étiquette %1, %2</translation>
    </message>
    <message>
        <source>Frame: %1</source>
        <translation>Cadre&#xa0;: %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
    <message>
        <source>I see</source>
        <translation>Compris</translation>
    </message>
    <message>
        <source>This racket is past its inspection. Step it back with a reason to note something new.</source>
        <translation>Cette raquette a dépassé l’examen. Pour noter du nouveau, la ramener en arrière en disant pourquoi.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Votre nom</translation>
    </message>
    <message>
        <source>It stands beside what you find and the answers that you take.</source>
        <translation>Il figure à côté de vos constats et des réponses que vous notez.</translation>
    </message>
    <message>
        <source>Nothing new on the frame</source>
        <translation>Rien de nouveau sur le cadre</translation>
    </message>
    <message>
        <source>The frame is sound</source>
        <translation>Le cadre est sain</translation>
    </message>
    <message>
        <source>%1: inspected</source>
        <translation>%1&#xa0;: examiné</translation>
    </message>
    <message>
        <source>Note a finding</source>
        <translation>Noter un constat</translation>
    </message>
    <message>
        <source>Note another finding</source>
        <translation>Noter un autre constat</translation>
    </message>
    <message>
        <source>Found on this frame</source>
        <translation>Constaté sur ce cadre</translation>
    </message>
    <message>
        <source>Put right: %1</source>
        <translation>Réparé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Put right earlier</source>
        <translation>Réparé plus tôt</translation>
    </message>
</context>
<context>
    <name>IntakeModel</name>
    <message numerus="yes">
        <source>%n player(s)</source>
        <translation>
            <numerusform>%n joueur</numerusform>
            <numerusform>%n joueurs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n tournoi</numerusform>
            <numerusform>%n tournois</numerusform>
        </translation>
    </message>
    <message>
        <source>the private kit</source>
        <translation>le matériel privé</translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s)</source>
        <translation>
            <numerusform>%n photo</numerusform>
            <numerusform>%n photos</numerusform>
        </translation>
    </message>
    <message>
        <source>All of it is here already.</source>
        <translation>Tout est déjà ici.</translation>
    </message>
    <message>
        <source>New here: %1 of %2 entries.</source>
        <translation>Nouveau ici&#xa0;: %1 entrées sur %2.</translation>
    </message>
    <message numerus="yes">
        <source>Stays out, as the players agreed here: %n player(s)</source>
        <translation>
            <numerusform>Reste dehors, comme convenu ici&#xa0;: %n joueur</numerusform>
            <numerusform>Restent dehors, comme convenu ici&#xa0;: %n joueurs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stays out, because they were forgotten: %n player(s)</source>
        <translation>
            <numerusform>Reste dehors, car oublié&#xa0;: %n joueur</numerusform>
            <numerusform>Restent dehors, car oubliés&#xa0;: %n joueurs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new entry(s) came in.</source>
        <translation>
            <numerusform>%n nouvelle entrée est arrivée.</numerusform>
            <numerusform>%n nouvelles entrées sont arrivées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(s) were here already.</source>
        <translation>
            <numerusform>%n entrée était déjà ici.</numerusform>
            <numerusform>%n entrées étaient déjà ici.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) came in.</source>
        <translation>
            <numerusform>%n photo est arrivée.</numerusform>
            <numerusform>%n photos sont arrivées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) were lost already where it was made.</source>
        <translation>
            <numerusform>%n photo était déjà perdue à l’endroit où il a été fait.</numerusform>
            <numerusform>%n photos étaient déjà perdues à l’endroit où il a été fait.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) could not be stored.</source>
        <translation>
            <numerusform>%n photo n’a pas pu être gardée.</numerusform>
            <numerusform>%n photos n’ont pas pu être gardées.</numerusform>
        </translation>
    </message>
    <message>
        <source>Left out, as the players agreed here: %1</source>
        <translation>Laissés de côté, comme convenu ici&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>Left out, because they were forgotten: %n player(s)</source>
        <translation>
            <numerusform>Laissé de côté, car oublié&#xa0;: %n joueur</numerusform>
            <numerusform>Laissés de côté, car oubliés&#xa0;: %n joueurs</numerusform>
        </translation>
    </message>
    <message>
        <source>Stays out: the book of another event, which only the head of the room may bring.</source>
        <translation>Reste dehors&#xa0;: le livre d’un autre tournoi, que seul le responsable de la salle peut apporter.</translation>
    </message>
    <message>
        <source>Left out: the book of another event, which only the head of the room may bring.</source>
        <translation>Laissé de côté&#xa0;: le livre d’un autre tournoi, que seul le responsable de la salle peut apporter.</translation>
    </message>
    <message numerus="yes">
        <source>Forgotten here too, because they withdrew: %n player(s)</source>
        <translation>
            <numerusform>Oublié ici aussi, après retrait&#xa0;: %n joueur</numerusform>
            <numerusform>Oubliés ici aussi, après retrait&#xa0;: %n joueurs</numerusform>
        </translation>
    </message>
    <message>
        <source>The clock of %1 was far ahead.</source>
        <translation>L’horloge de %1 avançait beaucoup.</translation>
    </message>
    <message>
        <source>%1 took all of it in, %2.</source>
        <translation>%1 a tout reçu, %2.</translation>
    </message>
    <message>
        <source>%1 took a part of it in, %2.</source>
        <translation>%1 en a reçu une partie, %2.</translation>
    </message>
    <message numerus="yes">
        <source>It holds %n book(s) of it.</source>
        <translation>
            <numerusform>Il en détient %n livre.</numerusform>
            <numerusform>Il en détient %n livres.</numerusform>
        </translation>
    </message>
    <message>
        <source>The event</source>
        <translation>Le tournoi</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n newer entry(s) here that are not there yet.</source>
        <translation>
            <numerusform>%1&#xa0;: %n entrée plus récente ici, pas encore là-bas.</numerusform>
            <numerusform>%1&#xa0;: %n entrées plus récentes ici, pas encore là-bas.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: the two devices hold different entries.</source>
        <translation>%1&#xa0;: les deux appareils ont des entrées différentes.</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(s) were put aside; the Exchange page tells why.</source>
        <translation>
            <numerusform>%n entrée a été mise de côté, voir Échange.</numerusform>
            <numerusform>%n entrées ont été mises de côté, voir Échange.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>IntakeSheet</name>
    <message>
        <source>Looking into it ...</source>
        <translation>Lecture du fichier ...</translation>
    </message>
    <message>
        <source>It is being taken in; the app stays usable.</source>
        <translation>Réception en cours&#xa0;; l’application reste utilisable.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Phrase secrète</translation>
    </message>
    <message>
        <source>Whoever made the file told it to you.</source>
        <translation>Qui a fait le fichier vous l’a dite.</translation>
    </message>
    <message>
        <source>It does not open with that. Small and large letters count.</source>
        <translation>Il ne s’ouvre pas ainsi. Majuscules et minuscules comptent.</translation>
    </message>
    <message>
        <source>Backup of %1 (%2), made %3</source>
        <translation>Sauvegarde de %1 (%2), faite %3</translation>
    </message>
    <message>
        <source>From %1 (%2), made %3</source>
        <translation>De %1 (%2), fait %3</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>«&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>New here: %1</source>
        <translation>Nouveaux ici&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %n autre</numerusform>
            <numerusform>et %n autres</numerusform>
        </translation>
    </message>
    <message>
        <source>This tablet takes the place of %1</source>
        <translation>Cette tablette prend la place de %1</translation>
    </message>
    <message>
        <source>Everything of it comes here, the private kit too. From then on this tablet writes in its own name; pair it with the event servers again.</source>
        <translation>Tout vient ici, le matériel privé aussi. Dès lors cette tablette écrit en son nom&#xa0;; associez-la à nouveau aux serveurs.</translation>
    </message>
    <message>
        <source>Nobody here knows %1</source>
        <translation>Personne ici ne connaît %1</translation>
    </message>
    <message>
        <source>Its Exchange page shows the words of its key. Are they these? %1</source>
        <translation>Sa page Échange montre les mots de sa clé. Sont-ce ceux-ci&#xa0;? %1</translation>
    </message>
    <message>
        <source>The words are the same</source>
        <translation>Les mots sont les mêmes</translation>
    </message>
    <message>
        <source>All of it is here</source>
        <translation>Tout est ici</translation>
    </message>
    <message numerus="yes">
        <source>Two answers to one question: %n to be settled under Questions.</source>
        <translation>
            <numerusform>Deux réponses à une question&#xa0;: %n à régler sous Questions.</numerusform>
            <numerusform>Deux réponses à une question&#xa0;: %n à régler sous Questions.</numerusform>
        </translation>
    </message>
    <message>
        <source>The receipt for %1 lies at %2. Give it back with the stick.</source>
        <translation>Le reçu pour %1 est à %2. Rendez-le avec la clé.</translation>
    </message>
    <message>
        <source>The receipt for %1 could not be put beside the file; save it elsewhere.</source>
        <translation>Le reçu pour %1 n’a pas pu être mis à côté du fichier&#xa0;; enregistrez-le ailleurs.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Ouvrir</translation>
    </message>
    <message>
        <source>Put it back here</source>
        <translation>Remettre ici</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Recevoir</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Save the receipt elsewhere</source>
        <translation>Enregistrer le reçu ailleurs</translation>
    </message>
    <message>
        <source>Another file</source>
        <translation>Autre fichier</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Bring in a file</source>
        <translation>Recevoir un fichier</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Réessayer</translation>
    </message>
</context>
<context>
    <name>InvitePart</name>
    <message>
        <source>Its role</source>
        <translation>Son rôle</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Desk</source>
        <translation>Accueil</translation>
    </message>
    <message>
        <source>Stringer</source>
        <translation>Cordeur</translation>
    </message>
    <message>
        <source>Reader</source>
        <translation>Lecteur</translation>
    </message>
    <message>
        <source>Make a code</source>
        <translation>Faire un code</translation>
    </message>
    <message>
        <source>Needs a connection to the event server</source>
        <translation>Nécessite une connexion au serveur du tournoi</translation>
    </message>
    <message>
        <source>Code of the event server %1</source>
        <translation>Code du serveur du tournoi %1</translation>
    </message>
</context>
<context>
    <name>JobBrief</name>
    <message>
        <source>Mains</source>
        <translation>Montants</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>pas dit</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Travers</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Plan de cordage</translation>
    </message>
    <message>
        <source>Stencil</source>
        <translation>Marquage</translation>
    </message>
    <message>
        <source>Promised</source>
        <translation>Promise</translation>
    </message>
    <message>
        <source>Late: %1</source>
        <translation>En retard&#xa0;: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Avant %1</translation>
    </message>
    <message>
        <source>none agreed</source>
        <translation>aucun convenu</translation>
    </message>
    <message>
        <source>string stencil: %1</source>
        <translation>pochoir du cordage&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>JobCard</name>
    <message>
        <source>Late: %1</source>
        <translation>En retard&#xa0;: %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Avant %1</translation>
    </message>
    <message>
        <source>Tag %1, %2</source>
        <translation>Étiquette %1, %2</translation>
    </message>
    <message>
        <source>On-court rush</source>
        <translation>Urgence du court</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Urgent</translation>
    </message>
    <message>
        <source>Two people moved it on</source>
        <translation>Deux personnes l’ont fait avancer</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
    <message>
        <source>Look where it is</source>
        <translation>Regarder où elle est</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>The player’s answer</source>
        <translation>Réponse du joueur</translation>
    </message>
</context>
<context>
    <name>JobLine</name>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
</context>
<context>
    <name>JobList</name>
    <message numerus="yes">
        <source>%n job(s), newest first</source>
        <translation>
            <numerusform>%n cordage, le plus récent d’abord</numerusform>
            <numerusform>%n cordages, les plus récents d’abord</numerusform>
        </translation>
    </message>
    <message>
        <source>Only this event</source>
        <translation>Ce tournoi seulement</translation>
    </message>
    <message>
        <source>No racket was ever taken in here</source>
        <translation>Aucune raquette n’a encore été reçue ici</translation>
    </message>
    <message>
        <source>What the desk takes in and what comes by an exchange stands here, newest first.</source>
        <translation>Ce que l’accueil reçoit et ce qui arrive par un échange se trouve ici, le plus récent d’abord.</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Étiquette %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
</context>
<context>
    <name>JobSheet</name>
    <message>
        <source>Two people moved this racket on while apart</source>
        <translation>Deux personnes ont fait avancer cette raquette chacune de son côté</translation>
    </message>
    <message>
        <source>Look where it is, choose its stage below and say why.</source>
        <translation>Regardez où elle est, choisissez son étape ci-dessous et dites pourquoi.</translation>
    </message>
    <message>
        <source>With a reason</source>
        <translation>Avec un motif</translation>
    </message>
    <message>
        <source>Another stage</source>
        <translation>Une autre étape</translation>
    </message>
    <message>
        <source>Put aside, a step back, ...</source>
        <translation>Mise de côté, retour en arrière, ...</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Everybody who looks at this racket later reads it.</source>
        <translation>Quiconque regarde cette raquette plus tard le lit.</translation>
    </message>
    <message>
        <source>Set to: %1</source>
        <translation>Mettre sur&#xa0;: %1</translation>
    </message>
    <message>
        <source>Choose a stage first</source>
        <translation>Choisissez d’abord une étape</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>Inspect the frame</source>
        <translation>Examiner le cadre</translation>
    </message>
    <message>
        <source>Compare the tags on racket and bag</source>
        <translation>Comparer les étiquettes de la raquette et du sac</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimer</translation>
    </message>
    <message>
        <source>machine %1</source>
        <translation>machine %1</translation>
    </message>
    <message numerus="yes">
        <source>Hand over %n bag(s) with the rackets</source>
        <translation>
            <numerusform>Remettez %n sac avec les raquettes</numerusform>
            <numerusform>Remettez %n sacs avec les raquettes</numerusform>
        </translation>
    </message>
    <message>
        <source>May be collected by %1</source>
        <translation>Peut être retirée par %1</translation>
    </message>
    <message numerus="yes">
        <source>Came with %n bag(s)</source>
        <translation>
            <numerusform>Arrivée avec %n sac</numerusform>
            <numerusform>Arrivée avec %n sacs</numerusform>
        </translation>
    </message>
    <message>
        <source>String bed</source>
        <translation>Plan de cordage</translation>
    </message>
    <message>
        <source>New time</source>
        <translation>Nouvelle heure</translation>
    </message>
    <message>
        <source>Take the player’s answer</source>
        <translation>Noter la réponse du joueur</translation>
    </message>
    <message>
        <source>It waits for its player’s answer</source>
        <translation>Elle attend la réponse du joueur</translation>
    </message>
    <message>
        <source>What the player answered</source>
        <translation>Ce que le joueur a répondu</translation>
    </message>
    <message>
        <source>It stays beside this racket, for whoever strings it.</source>
        <translation>Cela reste à côté de cette raquette, pour qui la corde.</translation>
    </message>
    <message>
        <source>Write the answer first</source>
        <translation>Notez d’abord la réponse</translation>
    </message>
    <message>
        <source>it is not here any more</source>
        <translation>elle n’est plus ici</translation>
    </message>
    <message>
        <source>It moved on elsewhere meanwhile: %1</source>
        <translation>Entre-temps, elle a avancé ailleurs&#xa0;: %1</translation>
    </message>
    <message>
        <source>Look again; nothing was written</source>
        <translation>Regarder à nouveau&#xa0;; rien n’a été noté</translation>
    </message>
    <message>
        <source>It moved on meanwhile: %1. Look again</source>
        <translation>Elle a avancé&#xa0;: %1. Regarder à nouveau</translation>
    </message>
</context>
<context>
    <name>KeepCard</name>
    <message>
        <source>Players&apos; books on the event server</source>
        <translation>Livres des joueurs sur le serveur du tournoi</translation>
    </message>
    <message>
        <source>It keeps them. Tablets keep their own in any case.</source>
        <translation>Il les garde. Les tablettes gardent les leurs dans tous les cas.</translation>
    </message>
    <message>
        <source>It lets them go after %1. Tablets keep their own in any case.</source>
        <translation>Il les efface après le %1. Les tablettes gardent les leurs dans tous les cas.</translation>
    </message>
    <message>
        <source>Days after the last one</source>
        <translation>Jours après le dernier</translation>
    </message>
    <message>
        <source>Keep them</source>
        <translation>Les garder</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n jour</numerusform>
            <numerusform>%n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>Rule for players&apos; books set</source>
        <translation>Règle pour les livres fixée</translation>
    </message>
    <message>
        <source>Bring this tablet up to date before then: afterwards the server exchanges nothing any more.</source>
        <translation>Mettez cette tablette à jour avant&#xa0;: ensuite le serveur n’échange plus rien.</translation>
    </message>
</context>
<context>
    <name>ListsModel</name>
    <message>
        <source>Say what is to be done.</source>
        <translation>Dites ce qu’il faut faire.</translation>
    </message>
    <message numerus="yes">
        <source>Too long to be read at the bench: leave out about %n letter(s).</source>
        <translation>
            <numerusform>Trop long pour être lu à l’établi&#xa0;: enlevez environ %n lettre.</numerusform>
            <numerusform>Trop long pour être lu à l’établi&#xa0;: enlevez environ %n lettres.</numerusform>
        </translation>
    </message>
    <message>
        <source>Put a word before the equals sign.</source>
        <translation>Mettez un mot avant le signe égal.</translation>
    </message>
    <message>
        <source>The list has a step of these words.</source>
        <translation>La liste a déjà une étape avec ces mots.</translation>
    </message>
</context>
<context>
    <name>ListsView</name>
    <message>
        <source>Steps at the bench</source>
        <translation>Étapes à l’établi</translation>
    </message>
    <message>
        <source>List of the check</source>
        <translation>Liste du contrôle</translation>
    </message>
    <message>
        <source>Which list</source>
        <translation>Quelle liste</translation>
    </message>
    <message>
        <source>Common practice. What you change holds for every tablet of this event; the makers’ instructions come before it.</source>
        <translation>Pratique courante. Ce que vous changez vaut sur toutes les tablettes de ce tournoi&#xa0;; les notices des fabricants passent avant.</translation>
    </message>
    <message>
        <source>As this room has it. It holds for every tablet of this event; the makers’ instructions come before it.</source>
        <translation>Telle que cette salle l’a réglée. Elle vaut sur toutes les tablettes de ce tournoi&#xa0;; les notices des fabricants passent avant.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>added by this room</source>
        <translation>ajouté par cette salle</translation>
    </message>
    <message>
        <source>Tap to change the words</source>
        <translation>Toucher pour changer les mots</translation>
    </message>
    <message>
        <source>Up: %1</source>
        <translation>Vers le haut&#xa0;: %1</translation>
    </message>
    <message>
        <source>Down: %1</source>
        <translation>Vers le bas&#xa0;: %1</translation>
    </message>
    <message>
        <source>Take off: %1</source>
        <translation>Retirer&#xa0;: %1</translation>
    </message>
    <message>
        <source>Taken off the list</source>
        <translation>Retiré de la liste</translation>
    </message>
    <message>
        <source>The list is empty.</source>
        <translation>La liste est vide.</translation>
    </message>
    <message>
        <source>Add a step</source>
        <translation>Ajouter une étape</translation>
    </message>
    <message>
        <source>Back to the usual list</source>
        <translation>Revenir à la liste habituelle</translation>
    </message>
    <message>
        <source>The usual list again</source>
        <translation>De nouveau la liste habituelle</translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation>Retirés</translation>
    </message>
    <message>
        <source>Tap to put it on again</source>
        <translation>Toucher pour le remettre</translation>
    </message>
    <message>
        <source>On the list again</source>
        <translation>De nouveau dans la liste</translation>
    </message>
</context>
<context>
    <name>MachineCareSheet</name>
    <message>
        <source>Calibration</source>
        <translation>Étalonnage</translation>
    </message>
    <message>
        <source>Tension that was set, in kg</source>
        <translation>Tension réglée, en kg</translation>
    </message>
    <message>
        <source>What the gauge showed, in kg</source>
        <translation>Ce que le dynamomètre indiquait, en kg</translation>
    </message>
    <message>
        <source>Hold the gauge as its maker says; eyes protected while it is under tension.</source>
        <translation>Tenir le dynamomètre comme l’indique son fabricant&#xa0;; yeux protégés tant qu’il est sous tension.</translation>
    </message>
    <message>
        <source>Keep the calibration</source>
        <translation>Garder l’étalonnage</translation>
    </message>
    <message>
        <source>Calibration kept</source>
        <translation>Étalonnage gardé</translation>
    </message>
    <message>
        <source>Out of order</source>
        <translation>Hors service</translation>
    </message>
    <message>
        <source>What is wrong with it</source>
        <translation>Ce qui ne va pas</translation>
    </message>
    <message>
        <source>Take it out of order</source>
        <translation>Mettre hors service</translation>
    </message>
    <message>
        <source>%1 is out of order</source>
        <translation>%1 est hors service</translation>
    </message>
    <message>
        <source>Keep it, and enter another pull</source>
        <translation>Garder et saisir une autre traction</translation>
    </message>
</context>
<context>
    <name>MachineChips</name>
    <message>
        <source>On which machine it is</source>
        <translation>Sur quelle machine elle est</translation>
    </message>
    <message>
        <source>On which machine it goes</source>
        <translation>Sur quelle machine elle va</translation>
    </message>
    <message>
        <source>%1: machine %2</source>
        <translation>%1&#xa0;: machine %2</translation>
    </message>
    <message>
        <source>Take another machine, or ask at the desk; the machine maker’s instructions come first.</source>
        <translation>Prenez une autre machine ou demandez à l’accueil&#xa0;; la notice du fabricant de la machine passe avant tout.</translation>
    </message>
</context>
<context>
    <name>MachineChoice</name>
    <message>
        <source>Out of order: %1</source>
        <translation>Hors service&#xa0;: %1</translation>
    </message>
    <message>
        <source>Its clamps are due for cleaning</source>
        <translation>Ses pinces sont à nettoyer</translation>
    </message>
</context>
<context>
    <name>MachineSheet</name>
    <message>
        <source>New machine</source>
        <translation>Nouvelle machine</translation>
    </message>
    <message>
        <source>What the room calls it</source>
        <translation>Comment la salle l’appelle</translation>
    </message>
    <message>
        <source>How it pulls</source>
        <translation>Comment elle tire</translation>
    </message>
    <message>
        <source>Constant-pull</source>
        <translation>Traction constante</translation>
    </message>
    <message>
        <source>Lockout</source>
        <translation>Manivelle à blocage</translation>
    </message>
    <message>
        <source>Drop-weight</source>
        <translation>Contrepoids</translation>
    </message>
    <message>
        <source>Maker and model</source>
        <translation>Fabricant et modèle</translation>
    </message>
    <message>
        <source>Highest tension that its maker allows, in kg</source>
        <translation>Tension maximale permise par son fabricant, en kg</translation>
    </message>
    <message>
        <source>Pre-stretch that can be set, per cent: 0 10 20</source>
        <translation>Pré-étirages réglables, en pour cent&#xa0;: 0 10 20</translation>
    </message>
    <message>
        <source>Clean the clamps after so many rackets (empty: every evening)</source>
        <translation>Nettoyer les pinces après tant de raquettes (vide&#xa0;: chaque soir)</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Machine %1 listed</source>
        <translation>Machine %1 inscrite</translation>
    </message>
</context>
<context>
    <name>MachinesModel</name>
    <message>
        <source>Give a tension such as 25 or 55 lb.</source>
        <translation>Indiquer une tension, par exemple 25 ou 55 lb.</translation>
    </message>
</context>
<context>
    <name>MachinesView</name>
    <message>
        <source>Constant-pull</source>
        <translation>Traction constante</translation>
    </message>
    <message>
        <source>Lockout</source>
        <translation>Manivelle à blocage</translation>
    </message>
    <message>
        <source>Drop-weight</source>
        <translation>Contrepoids</translation>
    </message>
    <message>
        <source>New machine</source>
        <translation>Nouvelle machine</translation>
    </message>
    <message>
        <source>No machine is listed</source>
        <translation>Aucune machine inscrite</translation>
    </message>
    <message>
        <source>List the machines; then rackets are counted for each, and you see when clamps are due.</source>
        <translation>Inscrivez les machines&#xa0;; les raquettes sont alors comptées pour chacune, et vous voyez quand nettoyer les pinces.</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>jusqu’à %1</translation>
    </message>
    <message>
        <source>pre-stretch %1 %</source>
        <translation>pré-étirage %1 %</translation>
    </message>
    <message>
        <source>Out of order</source>
        <translation>Hors service</translation>
    </message>
    <message>
        <source>Clean the clamps</source>
        <translation>Nettoyer les pinces</translation>
    </message>
    <message>
        <source>Dirty clamps slip and leave marks. Follow the maker’s instructions.</source>
        <translation>Des pinces sales glissent et marquent le cordage. Suivre les instructions du fabricant.</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) since its clamps were cleaned</source>
        <translation>
            <numerusform>%n raquette depuis le nettoyage des pinces</numerusform>
            <numerusform>%n raquettes depuis le nettoyage des pinces</numerusform>
        </translation>
    </message>
    <message>
        <source>Calibration: %1 set, %2 read (%3 %)</source>
        <translation>Étalonnage&#xa0;: %1 réglé, %2 mesuré (%3 %)</translation>
    </message>
    <message>
        <source>Clamps cleaned</source>
        <translation>Pinces nettoyées</translation>
    </message>
    <message>
        <source>%1: clamps cleaned</source>
        <translation>%1&#xa0;: pinces nettoyées</translation>
    </message>
    <message>
        <source>Back in order</source>
        <translation>De nouveau en service</translation>
    </message>
    <message>
        <source>Calibration, or out of order</source>
        <translation>Étalonnage ou hors service</translation>
    </message>
    <message>
        <source>%1 is back in order</source>
        <translation>%1 est de nouveau en service</translation>
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
    <message>
        <source>Team</source>
        <translation>Équipe</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>Argent</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Stock</translation>
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
        <translation>Pré-étirage, longueurs et nœuds</translation>
    </message>
    <message>
        <source>Pre-stretch of the mains</source>
        <translation>Pré-étirage des montants</translation>
    </message>
    <message>
        <source>Pre-stretch of the crosses</source>
        <translation>Pré-étirage des travers</translation>
    </message>
    <message>
        <source>Lengths of string</source>
        <translation>Longueurs de corde</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Non dit</translation>
    </message>
    <message>
        <source>One</source>
        <translation>Une</translation>
    </message>
    <message>
        <source>Two</source>
        <translation>Deux</translation>
    </message>
    <message>
        <source>Knots</source>
        <translation>Nœuds</translation>
    </message>
    <message>
        <source>Four</source>
        <translation>Quatre</translation>
    </message>
    <message>
        <source>%1: %2 %</source>
        <translation>%1&#xa0;: %2 %</translation>
    </message>
    <message>
        <source>One length for mains and crosses, usually two knots: one string for both. Which end the crosses begin at follows from the pattern; the frame maker’s instructions decide.</source>
        <translation>Une longueur pour montants et travers, en général deux nœuds&#xa0;: un seul cordage pour les deux. Le côté où commencent les travers dépend du plan de cordage&#xa0;; la notice du fabricant du cadre décide.</translation>
    </message>
    <message>
        <source>Mains and crosses each with a length of their own, usually four knots: the crosses may be another string. Some frames need them strung from the head down, so that the load on the frame stays even; the frame maker’s instructions decide.</source>
        <translation>Montants et travers ont chacun leur longueur, en général quatre nœuds&#xa0;: les travers peuvent être un autre cordage. Certains cadres les demandent de la tête vers le bas, pour que la charge sur le cadre reste égale&#xa0;; la notice du fabricant du cadre décide.</translation>
    </message>
    <message>
        <source>Two knots go with one length: each end is tied off once, and nothing parts mains and crosses.</source>
        <translation>Deux nœuds vont avec une longueur&#xa0;: chaque bout est noué une fois, rien ne sépare montants et travers.</translation>
    </message>
    <message>
        <source>Four knots go with two lengths: mains and crosses are tied off apart, so each can have its own string and tension.</source>
        <translation>Quatre nœuds vont avec deux longueurs&#xa0;: montants et travers sont noués à part, chacun peut avoir son cordage et sa tension.</translation>
    </message>
    <message>
        <source>Knot pre-tension</source>
        <translation>Pré-tension au nœud</translation>
    </message>
    <message>
        <source>So much more on the last string before a knot: it makes up for what the knot gives way. Common practice; the instructions of frame and machine come first.</source>
        <translation>Autant de plus sur la dernière corde avant un nœud&#xa0;: cela compense ce que le nœud relâche. Pratique courante&#xa0;; les notices du cadre et de la machine priment.</translation>
    </message>
</context>
<context>
    <name>MatchCard</name>
    <message>
        <source>bye</source>
        <translation>exempt</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>pas encore connu</translation>
    </message>
    <message>
        <source>won by %1</source>
        <translation>gagné par %1</translation>
    </message>
    <message>
        <source>Not known yet who meets here</source>
        <translation>On ne sait pas encore qui se rencontre ici</translation>
    </message>
</context>
<context>
    <name>MatchSheet</name>
    <message>
        <source>%1, match %2</source>
        <translation>%1, match %2</translation>
    </message>
    <message>
        <source>Decided without a match.</source>
        <translation>Décidé sans match.</translation>
    </message>
    <message>
        <source>It is not known yet who meets here.</source>
        <translation>On ne sait pas encore qui se rencontre ici.</translation>
    </message>
    <message>
        <source>How it ended</source>
        <translation>Comment il s’est terminé</translation>
    </message>
    <message>
        <source>Played</source>
        <translation>Joué</translation>
    </message>
    <message>
        <source>Retired</source>
        <translation>Abandon</translation>
    </message>
    <message>
        <source>Walkover</source>
        <translation>Forfait</translation>
    </message>
    <message>
        <source>Score, if wanted</source>
        <translation>Score, si souhaité</translation>
    </message>
    <message>
        <source>%1 won</source>
        <translation>%1 a gagné</translation>
    </message>
    <message>
        <source>Result noted</source>
        <translation>Résultat noté</translation>
    </message>
    <message>
        <source>by a walkover</source>
        <translation>par forfait</translation>
    </message>
    <message>
        <source>the other retired</source>
        <translation>par abandon</translation>
    </message>
    <message>
        <source>Won by %1</source>
        <translation>Gagné par %1</translation>
    </message>
    <message>
        <source>Take the result back</source>
        <translation>Annuler le résultat</translation>
    </message>
    <message>
        <source>Result taken back</source>
        <translation>Résultat annulé</translation>
    </message>
    <message>
        <source>not before %1</source>
        <translation>pas avant %1</translation>
    </message>
    <message>
        <source>Court and time</source>
        <translation>Court et heure</translation>
    </message>
    <message>
        <source>Court</source>
        <translation>Court</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>Pas avant</translation>
    </message>
    <message>
        <source>A time such as 14:05, or a day with it: 2031-05-26T14:05</source>
        <translation>Une heure comme 14:05, ou avec le jour&#xa0;: 2031-05-26T14:05</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Court and time kept</source>
        <translation>Court et heure gardés</translation>
    </message>
    <message>
        <source>%1 withdraws</source>
        <translation>%1 déclare forfait</translation>
    </message>
    <message>
        <source>Withdrawal noted</source>
        <translation>Forfait noté</translation>
    </message>
    <message>
        <source>Somebody in the place of %1</source>
        <translation>Quelqu’un à la place de %1</translation>
    </message>
    <message>
        <source>Say who plays here</source>
        <translation>Dire qui joue ici</translation>
    </message>
    <message>
        <source>Player</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Partner, in doubles</source>
        <translation>Partenaire, en double</translation>
    </message>
    <message>
        <source>Put on line %1</source>
        <translation>Mettre à la ligne %1</translation>
    </message>
    <message>
        <source>Put into the draw</source>
        <translation>Mis dans le tableau</translation>
    </message>
    <message>
        <source>after match %1</source>
        <translation>après le match %1</translation>
    </message>
    <message>
        <source>Follows the match</source>
        <translation>Suit le match</translation>
    </message>
    <message>
        <source>Round and match of this draw, such as 2/7; empty where it has a time of its own</source>
        <translation>Tour et match de ce tableau, par exemple 2/7&#xa0;; vide s’il a sa propre heure</translation>
    </message>
</context>
<context>
    <name>MatchWords</name>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>short form of the name</source>
        <translation>forme courte du nom</translation>
    </message>
    <message>
        <source>part of the name</source>
        <translation>partie du nom</translation>
    </message>
    <message>
        <source>family name</source>
        <translation>nom de famille</translation>
    </message>
    <message>
        <source>given name</source>
        <translation>prénom</translation>
    </message>
    <message>
        <source>name nearly</source>
        <translation>nom presque</translation>
    </message>
    <message>
        <source>country</source>
        <translation>pays</translation>
    </message>
    <message>
        <source>birth year</source>
        <translation>année de naissance</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>main</translation>
    </message>
    <message>
        <source>tour number</source>
        <translation>numéro de circuit</translation>
    </message>
    <message>
        <source>rackets</source>
        <translation>raquettes</translation>
    </message>
    <message>
        <source>strings</source>
        <translation>cordages</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s)</source>
        <translation>
            <numerusform>%n raquette</numerusform>
            <numerusform>%n raquettes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>il y a %n jour</numerusform>
            <numerusform>il y a %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>MemberSheet</name>
    <message>
        <source>Add somebody</source>
        <translation>Ajouter quelqu’un</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Does</source>
        <translation>Rôle</translation>
    </message>
    <message>
        <source>Head of the room</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Desk</source>
        <translation>Accueil</translation>
    </message>
    <message>
        <source>Stringer</source>
        <translation>Cordage</translation>
    </message>
    <message>
        <source>Languages, such as: en pt</source>
        <translation>Langues, par exemple&#xa0;: en pt</translation>
    </message>
    <message>
        <source>Good at, such as: natural gut, left-handed</source>
        <translation>Doué pour, par exemple&#xa0;: boyau naturel, gaucher</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>%1 is on the team</source>
        <translation>%1 est dans l’équipe</translation>
    </message>
</context>
<context>
    <name>MetCard</name>
    <message>
        <source>Give players to %1</source>
        <translation>Donner des joueurs à %1</translation>
    </message>
    <message>
        <source>It lets this tablet only get players, not bring any.</source>
        <translation>Elle laisse cette tablette recevoir des joueurs, pas en apporter.</translation>
    </message>
    <message>
        <source>There is no event there: only whom you tick goes across, and what is newer of them whenever the two meet again.</source>
        <translation>Il n’y a pas de tournoi là-bas&#xa0;: ne passent que ceux que vous cochez, et ce qu’ils ont de plus récent quand les deux se retrouvent.</translation>
    </message>
    <message numerus="yes">
        <source>Give %n player(s)</source>
        <translation>
            <numerusform>Donner %n joueur</numerusform>
            <numerusform>Donner %n joueurs</numerusform>
        </translation>
    </message>
    <message>
        <source>Give</source>
        <translation>Donner</translation>
    </message>
    <message>
        <source>Both exchange: %1</source>
        <translation>Les deux échangent&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>MoneyAccounts</name>
    <message>
        <source>Find a player</source>
        <translation>Chercher un joueur</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) owe something</source>
        <translation>
            <numerusform>%n joueur doit quelque chose</numerusform>
            <numerusform>%n joueurs doivent quelque chose</numerusform>
        </translation>
    </message>
    <message>
        <source>Accounts</source>
        <translation>Comptes</translation>
    </message>
    <message>
        <source>owes</source>
        <translation>doit</translation>
    </message>
    <message>
        <source>gets back</source>
        <translation>à rembourser</translation>
    </message>
    <message>
        <source>even</source>
        <translation>soldé</translation>
    </message>
    <message>
        <source>nothing charged yet</source>
        <translation>rien de facturé</translation>
    </message>
    <message>
        <source>Nobody of that name</source>
        <translation>Personne de ce nom</translation>
    </message>
    <message>
        <source>No player has a racket here yet</source>
        <translation>Aucun joueur n’a encore de raquette ici</translation>
    </message>
    <message>
        <source>All accounts</source>
        <translation>Tous les comptes</translation>
    </message>
    <message>
        <source>Pick a player</source>
        <translation>Choisissez un joueur</translation>
    </message>
    <message>
        <source>What is due, and every line by its racket, appears here.</source>
        <translation>Ce qui est dû, et chaque ligne par raquette, apparaît ici.</translation>
    </message>
    <message>
        <source>Nobody owes anything</source>
        <translation>Personne ne doit rien</translation>
    </message>
</context>
<context>
    <name>MoneyDay</name>
    <message>
        <source>The day before</source>
        <translation>Le jour d’avant</translation>
    </message>
    <message>
        <source>Today, %1</source>
        <translation>Aujourd’hui, %1</translation>
    </message>
    <message>
        <source>The day after</source>
        <translation>Le jour d’après</translation>
    </message>
    <message>
        <source>Nothing was charged or paid on this day.</source>
        <translation>Rien n’a été facturé ni payé ce jour-là.</translation>
    </message>
    <message>
        <source>Charged</source>
        <translation>Facturé</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>En tout</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Payé</translation>
    </message>
    <message>
        <source>Closed: %1</source>
        <translation>Clôturé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Counted %1, as the lines say</source>
        <translation>Compté %1, comme le disent les lignes</translation>
    </message>
    <message>
        <source>Counted %1, %2 too much</source>
        <translation>Compté %1, %2 de trop</translation>
    </message>
    <message>
        <source>Counted %1, %2 too little</source>
        <translation>Compté %1, il manque %2</translation>
    </message>
    <message>
        <source>Written for this day since: charged %1, paid %2</source>
        <translation>Inscrit depuis pour ce jour&#xa0;: facturé %1, payé %2</translation>
    </message>
    <message>
        <source>The box</source>
        <translation>La caisse</translation>
    </message>
    <message>
        <source>Cash taken this day, by the lines</source>
        <translation>Espèces encaissées ce jour, d’après les lignes</translation>
    </message>
    <message>
        <source>Cash counted, without the change that was there in the morning, in %1</source>
        <translation>Espèces comptées, sans le fonds de caisse du matin, en %1</translation>
    </message>
    <message>
        <source>It agrees with the lines</source>
        <translation>Cela concorde avec les lignes</translation>
    </message>
    <message>
        <source>%1 too much in the box</source>
        <translation>%1 de trop dans la caisse</translation>
    </message>
    <message>
        <source>%1 too little in the box</source>
        <translation>Il manque %1 dans la caisse</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Close the day again</source>
        <translation>Clôturer de nouveau la journée</translation>
    </message>
    <message>
        <source>Close the day</source>
        <translation>Clôturer la journée</translation>
    </message>
    <message>
        <source>Day closed</source>
        <translation>Journée clôturée</translation>
    </message>
</context>
<context>
    <name>MoneyLineSheet</name>
    <message>
        <source>Two tablets charged different amounts</source>
        <translation>Deux tablettes ont facturé des montants différents</translation>
    </message>
    <message>
        <source>Close that under Questions first.</source>
        <translation>Tranchez d’abord cela sous Questions.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>The line stays, and one of the opposite amount is written beside it.</source>
        <translation>La ligne reste, et une autre du montant opposé est inscrite à côté.</translation>
    </message>
    <message>
        <source>Reverse this line</source>
        <translation>Annuler cette ligne</translation>
    </message>
    <message>
        <source>Reversed: %1</source>
        <translation>Annulé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>MoneyPage</name>
    <message>
        <source>Money</source>
        <translation>Argent</translation>
    </message>
    <message>
        <source>Accounts</source>
        <translation>Comptes</translation>
    </message>
    <message>
        <source>Day&apos;s money</source>
        <translation>Argent du jour</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Tarif</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Ce qui est montré</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its price list and accounts come here by themselves.</source>
        <translation>Associez-vous à un serveur de tournoi sous Échange&#xa0;; son tarif et ses comptes arrivent ici d’eux-mêmes.</translation>
    </message>
    <message>
        <source>Players</source>
        <translation>Joueurs</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation>Tarif</translation>
    </message>
</context>
<context>
    <name>MoneyPrices</name>
    <message>
        <source>no price</source>
        <translation>pas de prix</translation>
    </message>
    <message>
        <source>Nothing can be charged</source>
        <translation>Rien ne peut être facturé</translation>
    </message>
    <message>
        <source>Currency of the event</source>
        <translation>Monnaie du tournoi</translation>
    </message>
    <message>
        <source>Three letters, such as EUR</source>
        <translation>Trois lettres, par exemple EUR</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Currency: %1</source>
        <translation>Monnaie&#xa0;: %1</translation>
    </message>
    <message>
        <source>What rackets are charged</source>
        <translation>Ce qui est facturé pour les raquettes</translation>
    </message>
    <message>
        <source>In %1. A string without a price of its own costs what stands beside &quot;String&quot;; a hybrid costs half of each.</source>
        <translation>En %1. Un cordage sans prix propre coûte ce qui figure à «&#xa0;Cordage&#xa0;»&#xa0;; un hybride coûte la moitié de chacun.</translation>
    </message>
    <message>
        <source>Price of one string</source>
        <translation>Prix d’un cordage</translation>
    </message>
    <message>
        <source>What else is sold</source>
        <translation>Ce qui se vend d’autre</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Autre chose</translation>
    </message>
</context>
<context>
    <name>MoneyText</name>
    <message>
        <source>The event has no currency yet.</source>
        <translation>Le tournoi n’a pas encore de monnaie.</translation>
    </message>
    <message>
        <source>That is no amount; write it such as 25.50.</source>
        <translation>Ce n’est pas un montant&#xa0;; écrivez par exemple 25,50.</translation>
    </message>
    <message numerus="yes">
        <source>%n decimal(s) at most in this currency.</source>
        <translation>
            <numerusform>%n décimale au plus dans cette monnaie.</numerusform>
            <numerusform>%n décimales au plus dans cette monnaie.</numerusform>
        </translation>
    </message>
    <message>
        <source>That is too much.</source>
        <translation>C’est trop.</translation>
    </message>
</context>
<context>
    <name>MoneyWords</name>
    <message>
        <source>Labour</source>
        <translation>Main-d’œuvre</translation>
    </message>
    <message>
        <source>String</source>
        <translation>Cordage</translation>
    </message>
    <message>
        <source>Stencil</source>
        <translation>Marquage</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Urgent</translation>
    </message>
    <message>
        <source>On-court rush</source>
        <translation>Urgence du court</translation>
    </message>
    <message>
        <source>Grommet strip</source>
        <translation>Bande d’œillets</translation>
    </message>
    <message>
        <source>Tubing</source>
        <translation>Gaine</translation>
    </message>
    <message>
        <source>String, mains</source>
        <translation>Cordage, montants</translation>
    </message>
    <message>
        <source>String, crosses</source>
        <translation>Cordage, travers</translation>
    </message>
    <message>
        <source>Discount</source>
        <translation>Remise</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Non précisé</translation>
    </message>
    <message>
        <source>Cash</source>
        <translation>Espèces</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Carte</translation>
    </message>
    <message>
        <source>Room account</source>
        <translation>Note de chambre</translation>
    </message>
    <message>
        <source>Prize money</source>
        <translation>Prix gagné</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Another way</source>
        <translation>Autrement</translation>
    </message>
    <message>
        <source>Paid: %1</source>
        <translation>Payé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Reversed: %1</source>
        <translation>Annulé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Étiquette %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
</context>
<context>
    <name>NearCard</name>
    <message>
        <source>Near here</source>
        <translation>À proximité</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Connecté</translation>
    </message>
    <message>
        <source>Paired</source>
        <translation>Associé</translation>
    </message>
    <message>
        <source>Not paired yet</source>
        <translation>Pas encore associé</translation>
    </message>
    <message>
        <source>Looking ...</source>
        <translation>Recherche ...</translation>
    </message>
    <message>
        <source>Event servers, and tablets that let others in, on this network. Only pairing proves who they are.</source>
        <translation>Serveurs de tournoi, et tablettes qui laissent entrer les autres, dans ce réseau. Seule l’association prouve qui ils sont.</translation>
    </message>
    <message>
        <source>Nobody answers here.</source>
        <translation>Personne ne répond ici.</translation>
    </message>
    <message>
        <source>Join the Wi-Fi that the other one is in, and wait a moment; or type its address below. The code comes from its screen or from the head of the room.</source>
        <translation>Rejoignez le Wi-Fi où se trouve l’autre appareil et attendez un instant&#xa0;; ou tapez son adresse ci-dessous. Le code est sur son écran, ou chez le responsable de la salle.</translation>
    </message>
</context>
<context>
    <name>NeededNotice</name>
    <message>
        <source>No racket is chosen</source>
        <translation>Aucune raquette n’est choisie</translation>
    </message>
    <message>
        <source>Stringing cannot begin without this</source>
        <translation>Sans cela, le cordage ne peut commencer</translation>
    </message>
    <message>
        <source>Choose at least one.</source>
        <translation>Choisissez-en au moins une.</translation>
    </message>
</context>
<context>
    <name>NewTimeSheet</name>
    <message>
        <source>New time: %1</source>
        <translation>Nouvelle heure&#xa0;: %1</translation>
    </message>
    <message>
        <source>New time</source>
        <translation>Nouvelle heure</translation>
    </message>
    <message>
        <source>Ready by %1, agreed with %2</source>
        <translation>Prêt pour %1, convenu avec %2</translation>
    </message>
    <message>
        <source>Promised for %1</source>
        <translation>Promis pour %1</translation>
    </message>
    <message>
        <source>No time was said so far</source>
        <translation>Aucune heure n’a été dite jusqu’ici</translation>
    </message>
    <message>
        <source>On the machine or strung already: ask at the bench what is left to do.</source>
        <translation>Déjà sur la machine ou cordée&#xa0;: demander au poste ce qu’il reste à faire.</translation>
    </message>
    <message>
        <source>Only this racket</source>
        <translation>Seulement cette raquette</translation>
    </message>
    <message numerus="yes">
        <source>%n rackets were promised together.</source>
        <translation>
            <numerusform>%n raquette a été promise.</numerusform>
            <numerusform>%n raquettes ont été promises ensemble.</numerusform>
        </translation>
    </message>
    <message>
        <source>Agreed with</source>
        <translation>Convenu avec</translation>
    </message>
    <message>
        <source>The player, or who speaks for them. Nothing is promised behind anybody’s back.</source>
        <translation>Le joueur, ou qui parle pour lui. Rien n’est promis dans le dos de personne.</translation>
    </message>
    <message>
        <source>With %1</source>
        <translation>Avec %1</translation>
    </message>
    <message>
        <source>Promise %1</source>
        <translation>Promettre %1</translation>
    </message>
    <message>
        <source>Choose another time</source>
        <translation>Choisir une autre heure</translation>
    </message>
</context>
<context>
    <name>NoEvent</name>
    <message>
        <source>There is no event yet</source>
        <translation>Il n’y a pas encore de tournoi</translation>
    </message>
    <message>
        <source>Or work alone, with no network.</source>
        <translation>Ou travaillez seul, sans réseau.</translation>
    </message>
    <message>
        <source>Work on your own: make an event</source>
        <translation>Travailler seul&#xa0;: créer un tournoi</translation>
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
        <translation>Tout le tournoi</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>What is counted</source>
        <translation>Ce qui est compté</translation>
    </message>
    <message>
        <source>Save as a table (CSV)</source>
        <translation>Enregistrer en tableau (CSV)</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Reçues</translation>
    </message>
    <message>
        <source>%1 in the room now</source>
        <translation>%1 dans la salle</translation>
    </message>
    <message>
        <source>Strung</source>
        <translation>Cordées</translation>
    </message>
    <message>
        <source>%1 strung again</source>
        <translation>%1 recordées</translation>
    </message>
    <message>
        <source>On time</source>
        <translation>À l’heure</translation>
    </message>
    <message>
        <source>%1 late</source>
        <translation>%1 en retard</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation>%1 attendues</translation>
    </message>
    <message>
        <source>From drop-off to ready</source>
        <translation>Du dépôt à la raquette prête</translation>
    </message>
    <message>
        <source>nine of ten under %1</source>
        <translation>neuf sur dix en moins de %1</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Urgentes</translation>
    </message>
    <message>
        <source>%1 from the court</source>
        <translation>%1 depuis le court</translation>
    </message>
    <message>
        <source>Waiting for an answer</source>
        <translation>En attente de réponse</translation>
    </message>
    <message>
        <source>usually %1</source>
        <translation>en général %1</translation>
    </message>
    <message>
        <source>Collected</source>
        <translation>Retirées</translation>
    </message>
    <message>
        <source>%1 put aside</source>
        <translation>%1 mises de côté</translation>
    </message>
    <message>
        <source>%1 now, %2 then</source>
        <translation>%1 cette année, %2 alors</translation>
    </message>
    <message>
        <source>Made ready, by day</source>
        <translation>Prêtes, par jour</translation>
    </message>
    <message>
        <source>Taken in, by hour</source>
        <translation>Reçues, par heure</translation>
    </message>
    <message>
        <source>Strung, by stringer</source>
        <translation>Cordées, par cordeur</translation>
    </message>
    <message>
        <source>Strung, by string</source>
        <translation>Cordées, par cordage</translation>
    </message>
    <message>
        <source>Strung, by tension of the mains</source>
        <translation>Cordées, par tension des montants</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tableau (*.csv)</translation>
    </message>
</context>
<context>
    <name>OffNotice</name>
    <message>
        <source>This racket is off</source>
        <translation>Cette raquette s’écarte</translation>
    </message>
    <message>
        <source>This racket is even</source>
        <translation>Cette raquette est conforme</translation>
    </message>
</context>
<context>
    <name>OldNew</name>
    <message>
        <source>%1: was %2, now %3</source>
        <translation>%1&#xa0;: avant %2, maintenant %3</translation>
    </message>
    <message>
        <source>%1: %2, as before</source>
        <translation>%1&#xa0;: %2, comme avant</translation>
    </message>
</context>
<context>
    <name>OtherNameSheet</name>
    <message>
        <source>Name kept</source>
        <translation>Nom gardé</translation>
    </message>
    <message>
        <source>Another name</source>
        <translation>Autre nom</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Nom de famille</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Prénom</translation>
    </message>
    <message>
        <source>Name in the own script</source>
        <translation>Nom dans sa propre écriture</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>From before</source>
        <translation>D’avant</translation>
    </message>
    <message>
        <source>Since a marriage</source>
        <translation>Depuis un mariage</translation>
    </message>
    <message>
        <source>Short form</source>
        <translation>Forme courte</translation>
    </message>
    <message>
        <source>Another spelling</source>
        <translation>Autre orthographe</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
</context>
<context>
    <name>OthersCard</name>
    <message>
        <source>Let another tablet in</source>
        <translation>Laisser entrer une autre tablette</translation>
    </message>
    <message>
        <source>For a tablet that works in this room: it exchanges with the event server from then on, whether this tablet is here or not.</source>
        <translation>Pour une tablette qui travaille dans cette salle&#xa0;: elle échange dès lors avec le serveur du tournoi, que cette tablette soit là ou non.</translation>
    </message>
    <message>
        <source>For a colleague, or where no event server can be reached: it exchanges with this very tablet, in one Wi-Fi and as long as this is on.</source>
        <translation>Pour un collègue, ou là où aucun serveur n’est joignable&#xa0;: elle échange avec cette tablette même, dans le même Wi-Fi et tant que ceci est en marche.</translation>
    </message>
    <message>
        <source>Where it comes in</source>
        <translation>Par où elle entre</translation>
    </message>
    <message>
        <source>At the event server</source>
        <translation>Au serveur</translation>
    </message>
    <message>
        <source>On this tablet</source>
        <translation>Sur cette tablette</translation>
    </message>
    <message>
        <source>This tablet lets others in as well, at %1.</source>
        <translation>Cette tablette laisse aussi entrer d’autres, à %1.</translation>
    </message>
</context>
<context>
    <name>PairCard</name>
    <message>
        <source>Code or five words</source>
        <translation>Code ou cinq mots</translation>
    </message>
    <message>
        <source>It stands beside the words, such as desk.local or 192.168.1.20:26110.</source>
        <translation>Elle figure à côté des mots, par exemple desk.local ou 192.168.1.20:26110.</translation>
    </message>
    <message>
        <source>Pair</source>
        <translation>Associer</translation>
    </message>
    <message>
        <source>With an event server, or with a tablet that lets others in. It shows a code and five words, good for fifteen minutes and one tablet.</source>
        <translation>Avec un serveur de tournoi, ou une tablette qui laisse entrer les autres. Il montre un code et cinq mots, valables quinze minutes et pour une tablette.</translation>
    </message>
    <message>
        <source>Its address</source>
        <translation>Son adresse</translation>
    </message>
</context>
<context>
    <name>PartBooksSheet</name>
    <message>
        <source>Not the same person</source>
        <translation>Pas la même personne</translation>
    </message>
    <message>
        <source>This book is parted from the others. Each is as it was before they were linked; what was answered since for both stays in both.</source>
        <translation>Ce livre est séparé des autres. Chacun est tel qu’avant la liaison&#xa0;; ce qui a été répondu depuis pour les deux reste dans les deux.</translation>
    </message>
    <message>
        <source>Part the books</source>
        <translation>Séparer les livres</translation>
    </message>
</context>
<context>
    <name>PastColumnsCard</name>
    <message>
        <source>What its columns hold</source>
        <translation>Ce que contiennent ses colonnes</translation>
    </message>
    <message>
        <source>Found by their headings. Look whether it is right; what is not said is not used.</source>
        <translation>Reconnu à leurs titres. Vérifiez&#xa0;; ce qui n’est pas dit n’est pas utilisé.</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>Not used</source>
        <translation>Non utilisée</translation>
    </message>
    <message>
        <source>in %1, as its heading says</source>
        <translation>en %1, comme le dit son titre</translation>
    </message>
</context>
<context>
    <name>PastJobsModel</name>
    <message>
        <source>Not used</source>
        <translation>Non utilisée</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Nom de famille</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Prénom</translation>
    </message>
    <message>
        <source>Whole name</source>
        <translation>Nom complet</translation>
    </message>
    <message>
        <source>Name in own script</source>
        <translation>Nom dans son écriture</translation>
    </message>
    <message>
        <source>Country, three letters</source>
        <translation>Pays, trois lettres</translation>
    </message>
    <message>
        <source>Year of birth</source>
        <translation>Année de naissance</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Main</translation>
    </message>
    <message>
        <source>Tour number</source>
        <translation>Numéro du circuit</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Event</source>
        <translation>Tournoi</translation>
    </message>
    <message>
        <source>Racket’s mark</source>
        <translation>Marque sur la raquette</translation>
    </message>
    <message>
        <source>Racket’s maker</source>
        <translation>Fabricant de la raquette</translation>
    </message>
    <message>
        <source>Racket’s model</source>
        <translation>Modèle de la raquette</translation>
    </message>
    <message>
        <source>String of the mains</source>
        <translation>Cordage des montants</translation>
    </message>
    <message>
        <source>Gauge of the mains</source>
        <translation>Jauge des montants</translation>
    </message>
    <message>
        <source>Tension of the mains</source>
        <translation>Tension des montants</translation>
    </message>
    <message>
        <source>String of the crosses</source>
        <translation>Cordage des travers</translation>
    </message>
    <message>
        <source>Gauge of the crosses</source>
        <translation>Jauge des travers</translation>
    </message>
    <message>
        <source>Tension of the crosses</source>
        <translation>Tension des travers</translation>
    </message>
    <message>
        <source>String (mains / crosses)</source>
        <translation>Cordage (montants / travers)</translation>
    </message>
    <message>
        <source>Tension (mains / crosses)</source>
        <translation>Tension (montants / travers)</translation>
    </message>
    <message>
        <source>Pre-stretch</source>
        <translation>Pré-étirage</translation>
    </message>
    <message>
        <source>Who strung it</source>
        <translation>Qui a cordé</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>a tension, such as 25, 25.5 kg or 55 lb</source>
        <translation>une tension comme 25, 25,5 kg ou 55 lb</translation>
    </message>
    <message>
        <source>a gauge in mm, such as 1.25</source>
        <translation>une jauge en mm comme 1,25</translation>
    </message>
    <message>
        <source>per cent from 0 to 30</source>
        <translation>un pourcentage de 0 à 30</translation>
    </message>
    <message>
        <source>a day, such as 2031-05-26 or 26.05.2031</source>
        <translation>un jour comme 2031-05-26 ou 26.05.2031</translation>
    </message>
    <message>
        <source>three letters, such as POR</source>
        <translation>trois lettres comme POR</translation>
    </message>
    <message>
        <source>a year from 1900 to 2099</source>
        <translation>une année de 1900 à 2099</translation>
    </message>
    <message>
        <source>right or left</source>
        <translation>droite ou gauche</translation>
    </message>
    <message>
        <source>a name</source>
        <translation>un nom</translation>
    </message>
    <message>
        <source>a shorter text</source>
        <translation>un texte plus court</translation>
    </message>
    <message>
        <source>Line %1, %2</source>
        <translation>Ligne %1, %2</translation>
    </message>
    <message>
        <source>this is no tension in the unit of the others; write its unit beside it.</source>
        <translation>ce n’est pas une tension dans l’unité des autres&#xa0;; écrivez son unité à côté.</translation>
    </message>
    <message>
        <source>nothing stands there.</source>
        <translation>il n’y a rien.</translation>
    </message>
    <message>
        <source>“%1” is still to come, by this tablet’s clock.</source>
        <translation>«&#xa0;%1&#xa0;» est encore à venir, d’après l’horloge de cette tablette.</translation>
    </message>
    <message>
        <source>“%1” is not %2.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas %2.</translation>
    </message>
    <message>
        <source>Choose it again, or copy it to this device first.</source>
        <translation>Choisissez-le encore une fois, ou copiez-le d’abord sur cet appareil.</translation>
    </message>
    <message>
        <source>The file is too large. Split it, or leave out what is not needed.</source>
        <translation>Le fichier est trop grand. Partagez-le, ou retirez ce qui est inutile.</translation>
    </message>
    <message>
        <source>Two columns are taken for the same. Say which of them it is.</source>
        <translation>Deux colonnes sont prises pour la même. Dites laquelle c’est.</translation>
    </message>
</context>
<context>
    <name>PastJobsSheet</name>
    <message>
        <source>Past jobs</source>
        <translation>Anciens cordages</translation>
    </message>
    <message>
        <source>A table of rackets strung before becomes the history of its players. Nothing is stored before you have looked at it, and an import can be taken back as one.</source>
        <translation>Un tableau de raquettes cordées autrefois devient l’historique de ses joueurs. Rien n’est enregistré avant que vous l’ayez vu, et tout se reprend en une fois.</translation>
    </message>
    <message>
        <source>Choose the table (CSV)</source>
        <translation>Choisir le tableau (CSV)</translation>
    </message>
    <message>
        <source>Bringing in</source>
        <translation>Reprise en cours</translation>
    </message>
    <message>
        <source>Working on it</source>
        <translation>En cours</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Brought in</source>
        <translation>Repris</translation>
    </message>
    <message>
        <source>Not all of it was brought in</source>
        <translation>Tout n’a pas été repris</translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation>Annulé</translation>
    </message>
    <message>
        <source>Taken back, but for players on whom work went on since</source>
        <translation>Annulé, sauf pour ceux sur qui le travail a continué</translation>
    </message>
    <message>
        <source>Not taken back</source>
        <translation>Pas annulé</translation>
    </message>
    <message>
        <source>The file can&apos;t be read</source>
        <translation>Le fichier est illisible</translation>
    </message>
    <message>
        <source>This is no table that can be read</source>
        <translation>Ce n’est pas un tableau lisible</translation>
    </message>
    <message>
        <source>Which column holds the players&apos; names?</source>
        <translation>Quelle colonne contient les noms&#xa0;?</translation>
    </message>
    <message>
        <source>Which column holds a string or a tension?</source>
        <translation>Quelle colonne contient un cordage ou une tension&#xa0;?</translation>
    </message>
    <message>
        <source>The table can&apos;t be brought in like this</source>
        <translation>Le tableau ne peut pas être repris ainsi</translation>
    </message>
    <message>
        <source>How its letters are written</source>
        <translation>Comment ses lettres sont écrites</translation>
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
        <translation>En quelle unité sont les tensions qui n’en disent pas&#xa0;? Les chiffres ne le disent pas.</translation>
    </message>
    <message>
        <source>Tensions that say no unit look like this one. Is that right?</source>
        <translation>Les tensions sans unité semblent être dans celle-ci. Est-ce juste&#xa0;?</translation>
    </message>
    <message>
        <source>Tensions that say no unit</source>
        <translation>Tensions sans unité</translation>
    </message>
    <message>
        <source>What stands first in dates such as 03/04/2031? The table does not tell.</source>
        <translation>Qu’est-ce qui vient d’abord dans des dates comme 03/04/2031&#xa0;? Le tableau ne le dit pas.</translation>
    </message>
    <message>
        <source>What stands first in dates with slashes</source>
        <translation>Ce qui vient d’abord dans les dates à barres</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Le jour</translation>
    </message>
    <message>
        <source>The month</source>
        <translation>Le mois</translation>
    </message>
    <message>
        <source>May be %1, who is known here. Rackets in the table: %2</source>
        <translation>Peut-être %1, connu ici. Raquettes dans le tableau&#xa0;: %2</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Laisser de côté</translation>
    </message>
    <message>
        <source>The same</source>
        <translation>La même personne</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation>Quelqu’un d’autre</translation>
    </message>
    <message>
        <source>Who %1 is</source>
        <translation>Qui est %1</translation>
    </message>
    <message numerus="yes">
        <source>Would come in: %n racket(s)</source>
        <translation>
            <numerusform>Serait reprise&#xa0;: %n raquette</numerusform>
            <numerusform>Seraient reprises&#xa0;: %n raquettes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Here already: %n racket(s)</source>
        <translation>
            <numerusform>Déjà ici&#xa0;: %n raquette</numerusform>
            <numerusform>Déjà ici&#xa0;: %n raquettes</numerusform>
        </translation>
    </message>
    <message>
        <source>Players known here: %1, new: %2</source>
        <translation>Joueurs connus ici&#xa0;: %1, nouveaux&#xa0;: %2</translation>
    </message>
    <message numerus="yes">
        <source>Left out: %n row(s) with a mistake</source>
        <translation>
            <numerusform>Laissée de côté&#xa0;: %n ligne avec une erreur</numerusform>
            <numerusform>Laissées de côté&#xa0;: %n lignes avec une erreur</numerusform>
        </translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>Brought in on this device</source>
        <translation>Repris sur cet appareil</translation>
    </message>
    <message>
        <source>%1, players: %2</source>
        <translation>%1, joueurs&#xa0;: %2</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Take %1 back</source>
        <translation>Annuler %1</translation>
    </message>
    <message>
        <source>Every racket and player that came with it goes again, as one. What work has gone on with since stays.</source>
        <translation>Chaque raquette et joueur venus avec repartent, en une fois. Ce sur quoi le travail a continué reste.</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Tables (*.csv *.CSV *.txt *.tsv)</source>
        <translation>Tableaux (*.csv *.CSV *.txt *.tsv)</translation>
    </message>
</context>
<context>
    <name>PastRowsCard</name>
    <message>
        <source>Its rows</source>
        <translation>Ses lignes</translation>
    </message>
    <message numerus="yes">
        <source>Left out: %n row(s) with a mistake</source>
        <translation>
            <numerusform>Laissée de côté&#xa0;: %n ligne avec une erreur</numerusform>
            <numerusform>Laissées de côté&#xa0;: %n lignes avec une erreur</numerusform>
        </translation>
    </message>
    <message>
        <source>... and %1 more</source>
        <translation>... et %1 de plus</translation>
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
        <translation>Encaisser</translation>
    </message>
    <message>
        <source>Amount in %1</source>
        <translation>Montant en %1</translation>
    </message>
    <message>
        <source>Takes the payment</source>
        <translation>Encaisse le paiement</translation>
    </message>
    <message>
        <source>%1 paid: %2</source>
        <translation>%1 payés&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>PersonCard</name>
    <message>
        <source>Player</source>
        <translation>Joueur</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Nom de famille</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Prénom</translation>
    </message>
    <message>
        <source>Name in the own script</source>
        <translation>Nom dans sa propre écriture</translation>
    </message>
    <message>
        <source>Country, three letters</source>
        <translation>Pays, trois lettres</translation>
    </message>
    <message>
        <source>How to reach the player</source>
        <translation>Comment joindre le joueur</translation>
    </message>
    <message>
        <source>Reads best</source>
        <translation>Lit le mieux</translation>
    </message>
</context>
<context>
    <name>PersonLinks</name>
    <message numerus="yes">
        <source>%n racket(s)</source>
        <translation>
            <numerusform>%n raquette</numerusform>
            <numerusform>%n raquettes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PersonSheet</name>
    <message>
        <source>Change player</source>
        <translation>Modifier le joueur</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Nom de famille</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Prénom</translation>
    </message>
    <message>
        <source>Name in the own script</source>
        <translation>Nom dans sa propre écriture</translation>
    </message>
    <message>
        <source>Country, three letters</source>
        <translation>Pays, trois lettres</translation>
    </message>
    <message>
        <source>How to reach the player</source>
        <translation>Comment joindre le joueur</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Reads best</source>
        <translation>Lit le mieux</translation>
    </message>
    <message>
        <source>Says tensions in</source>
        <translation>Donne les tensions en</translation>
    </message>
</context>
<context>
    <name>PhotoPicture</name>
    <message>
        <source>The picture is damaged and can&apos;t be shown.</source>
        <translation>L’image est endommagée et ne peut pas être affichée.</translation>
    </message>
</context>
<context>
    <name>PhotoSheet</name>
    <message>
        <source>Take a photo</source>
        <translation>Prendre une photo</translation>
    </message>
    <message>
        <source>Photo kept</source>
        <translation>Photo gardée</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) kept</source>
        <translation>
            <numerusform>%n photo gardée</numerusform>
            <numerusform>%n photos gardées</numerusform>
        </translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Prendre</translation>
    </message>
</context>
<context>
    <name>Photos</name>
    <message>
        <source>The picture is damaged and can&apos;t be shown.</source>
        <translation>L’image est endommagée et ne peut pas être affichée.</translation>
    </message>
    <message>
        <source>Choose another file, or take the picture again.</source>
        <translation>Choisissez un autre fichier, ou reprenez la photo.</translation>
    </message>
    <message>
        <source>This file is no picture.</source>
        <translation>Ce fichier n’est pas une image.</translation>
    </message>
    <message>
        <source>Choose a JPEG or PNG file.</source>
        <translation>Choisissez un fichier JPEG ou PNG.</translation>
    </message>
    <message>
        <source>The picture has too many pixels.</source>
        <translation>L’image a trop de pixels.</translation>
    </message>
    <message>
        <source>Make it smaller first: 64 megapixels at most.</source>
        <translation>Réduisez-la d’abord&#xa0;: 64 mégapixels au plus.</translation>
    </message>
</context>
<context>
    <name>PhotosCard</name>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>There is no picture of this racket yet.</source>
        <translation>Il n’y a pas encore d’image de cette raquette.</translation>
    </message>
    <message>
        <source>Photo %1</source>
        <translation>Photo %1</translation>
    </message>
    <message>
        <source>Photo %1: not on this tablet yet</source>
        <translation>Photo %1&#xa0;: pas encore sur cette tablette</translation>
    </message>
    <message>
        <source>It is being fetched</source>
        <translation>Elle est en cours de réception</translation>
    </message>
    <message>
        <source>Waiting for the event server</source>
        <translation>En attente du serveur du tournoi</translation>
    </message>
    <message>
        <source>Fetch photo %1</source>
        <translation>Chercher la photo %1</translation>
    </message>
    <message>
        <source>Add a photo from a file</source>
        <translation>Ajouter une photo depuis un fichier</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG)</source>
        <translation>Images (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG)</translation>
    </message>
    <message>
        <source>Photo kept, without the place where it was taken</source>
        <translation>Photo gardée, sans le lieu de la prise de vue</translation>
    </message>
    <message>
        <source>Add it again from where it came, or fetch it from the tablet on which it was taken.</source>
        <translation>Ajoutez-la de nouveau depuis son fichier, ou cherchez-la sur la tablette où elle a été prise.</translation>
    </message>
    <message>
        <source>Take a photo</source>
        <translation>Prendre une photo</translation>
    </message>
</context>
<context>
    <name>PhotosModel</name>
    <message>
        <source>No device that is connected has this picture.</source>
        <translation>Aucun appareil connecté n’a cette image.</translation>
    </message>
    <message>
        <source>The event server runs an earlier version, which hands on no pictures.</source>
        <translation>Le serveur du tournoi a une version antérieure, qui ne transmet pas d’images.</translation>
    </message>
    <message>
        <source>The event server may not hand this picture on.</source>
        <translation>Le serveur du tournoi n’a pas le droit de transmettre cette image.</translation>
    </message>
    <message>
        <source>There is no space left for pictures on this tablet.</source>
        <translation>Il n’y a plus de place pour les images sur cette tablette.</translation>
    </message>
    <message>
        <source>It did not come. Try again.</source>
        <translation>Elle n’est pas arrivée. Réessayez.</translation>
    </message>
    <message>
        <source>The file can&apos;t be read.</source>
        <translation>Le fichier est illisible.</translation>
    </message>
    <message>
        <source>Choose another one.</source>
        <translation>Choisissez-en un autre.</translation>
    </message>
    <message>
        <source>The file is larger than 40 MiB.</source>
        <translation>Le fichier dépasse 40 Mio.</translation>
    </message>
    <message>
        <source>Choose a smaller one.</source>
        <translation>Choisissez-en un plus petit.</translation>
    </message>
    <message>
        <source>This tablet is not connected to an event server.</source>
        <translation>Cette tablette n’est reliée à aucun serveur de tournoi.</translation>
    </message>
    <message>
        <source>Connect it under Exchange, then fetch the picture.</source>
        <translation>Reliez-la sous «&#xa0;Échange&#xa0;», puis cherchez l’image.</translation>
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
        <translation>Postes attitrés</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Ce qui est montré</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its draws come here by themselves.</source>
        <translation>Associez-vous à un serveur de tournoi sous Échange&#xa0;; ses tableaux arrivent ici d’eux-mêmes.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>To come</source>
        <translation>À venir</translation>
    </message>
</context>
<context>
    <name>PlayerCard</name>
    <message>
        <source>Player changed</source>
        <translation>Joueur modifié</translation>
    </message>
    <message>
        <source>Racket changed</source>
        <translation>Raquette modifiée</translation>
    </message>
    <message>
        <source>Consent noted</source>
        <translation>Accord noté</translation>
    </message>
</context>
<context>
    <name>PlayerDetails</name>
    <message>
        <source>Open question: %1, %2</source>
        <translation>Question ouverte&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>Open question: %1</source>
        <translation>Question ouverte&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 (%2, %3)</source>
        <translation>%1 (%2, %3)</translation>
    </message>
    <message>
        <source>Rackets</source>
        <translation>Raquettes</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
    <message>
        <source>Racket without a mark</source>
        <translation>Raquette sans repère</translation>
    </message>
    <message>
        <source>in the room</source>
        <translation>à l’atelier</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Aucune encore</translation>
    </message>
    <message>
        <source>Last jobs</source>
        <translation>Derniers cordages</translation>
    </message>
    <message>
        <source>Older ones</source>
        <translation>Plus anciens</translation>
    </message>
    <message>
        <source>Who has this book</source>
        <translation>Qui a ce livre</translation>
    </message>
    <message>
        <source>%1 has it from here, last %2</source>
        <translation>%1 l’a reçu d’ici, dernière fois %2</translation>
    </message>
    <message>
        <source>It came from %1, last %2</source>
        <translation>Il est venu de %1, dernière fois %2</translation>
    </message>
    <message>
        <source>Devices that exchanged it with this tablet, and what was made of it for others. If the player withdraws, each device is told when it is met, and takes nothing of it any more.</source>
        <translation>Appareils qui l’ont échangé avec cette tablette, et ce qui en a été fait pour d’autres. Si le joueur se retire, chaque appareil l’apprend à la prochaine rencontre et n’en prend plus rien.</translation>
    </message>
    <message>
        <source>The player agreed to one room only</source>
        <translation>Le joueur n’a donné son accord qu’à une seule salle</translation>
    </message>
    <message>
        <source>Devices of other rooms that have this from before keep it, and get nothing new. If the player wants it gone there, let them withdraw, and take them in anew.</source>
        <translation>Les appareils d’autres salles qui l’ont déjà le gardent et ne reçoivent rien de nouveau. Si le joueur veut qu’il y disparaisse, qu’il se retire, puis reprenez-le à neuf.</translation>
    </message>
    <message>
        <source>A player card was given, last %1</source>
        <translation>Une carte de joueur a été donnée, dernière fois %1</translation>
    </message>
    <message>
        <source>A backup holds it, last %1</source>
        <translation>Une sauvegarde le contient, dernière fois %1</translation>
    </message>
    <message>
        <source>It is in a bundle for %1, last %2</source>
        <translation>Il est dans un lot pour %1, dernière fois %2</translation>
    </message>
</context>
<context>
    <name>PlayerPick</name>
    <message>
        <source>All of this event</source>
        <translation>Tous ceux de ce tournoi</translation>
    </message>
    <message>
        <source>Nobody</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Find a player</source>
        <translation>Chercher un joueur</translation>
    </message>
    <message>
        <source>Nobody is chosen yet</source>
        <translation>Personne n’est encore choisi</translation>
    </message>
    <message numerus="yes">
        <source>%n player(s) chosen</source>
        <translation>
            <numerusform>%n joueur choisi</numerusform>
            <numerusform>%n joueurs choisis</numerusform>
        </translation>
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
    <message>
        <source>Known on this device: %1</source>
        <translation>Connus sur cet appareil&#xa0;: %1</translation>
    </message>
    <message>
        <source>Find a player</source>
        <translation>Chercher un joueur</translation>
    </message>
    <message>
        <source>Nobody of that name</source>
        <translation>Personne de ce nom</translation>
    </message>
    <message>
        <source>Look at the spelling.</source>
        <translation>Vérifiez l’orthographe.</translation>
    </message>
    <message>
        <source>All players</source>
        <translation>Tous</translation>
    </message>
    <message>
        <source>Change player</source>
        <translation>Modifier le joueur</translation>
    </message>
    <message>
        <source>Consent</source>
        <translation>Accord</translation>
    </message>
    <message>
        <source>Pick a player</source>
        <translation>Choisissez un joueur</translation>
    </message>
    <message>
        <source>What was agreed, the rackets and the last jobs appear here.</source>
        <translation>Ce qui est convenu, les raquettes et les derniers cordages apparaissent ici.</translation>
    </message>
    <message>
        <source>Forget this player</source>
        <translation>Oublier ce joueur</translation>
    </message>
    <message>
        <source>Take a card in</source>
        <translation>Prendre une carte</translation>
    </message>
    <message>
        <source>Make cards</source>
        <translation>Faire des cartes</translation>
    </message>
    <message>
        <source>Past jobs</source>
        <translation>Anciens cordages</translation>
    </message>
    <message>
        <source>Player card</source>
        <translation>Carte</translation>
    </message>
    <message>
        <source>All that is held on this player</source>
        <translation>Tout ce qui est conservé sur ce joueur</translation>
    </message>
</context>
<context>
    <name>PlayersView</name>
    <message>
        <source>Players</source>
        <translation>Joueurs</translation>
    </message>
    <message>
        <source>new here</source>
        <translation>nouveau ici</translation>
    </message>
</context>
<context>
    <name>PriceSheet</name>
    <message>
        <source>Price of one string</source>
        <translation>Prix d’un cordage</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Autre chose</translation>
    </message>
    <message>
        <source>Name of the string, as jobs call it</source>
        <translation>Nom du cordage, tel que les travaux l’appellent</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Price in %1</source>
        <translation>Prix en %1</translation>
    </message>
    <message>
        <source>0 if it is free.</source>
        <translation>0 si c’est gratuit.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Price: %1</source>
        <translation>Prix&#xa0;: %1</translation>
    </message>
    <message>
        <source>Take it off the list</source>
        <translation>Retirer du tarif</translation>
    </message>
    <message>
        <source>Off the list: %1</source>
        <translation>Retiré du tarif&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>PricesModel</name>
    <message>
        <source>A price is not below zero.</source>
        <translation>Un prix n’est pas inférieur à zéro.</translation>
    </message>
    <message>
        <source>No such currency; write its three letters, such as EUR.</source>
        <translation>Cette monnaie n’existe pas&#xa0;; écrivez ses trois lettres, par exemple EUR.</translation>
    </message>
</context>
<context>
    <name>PrintSheet</name>
    <message>
        <source>Paper</source>
        <translation>Document</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Format</translation>
    </message>
    <message>
        <source>In the order of</source>
        <translation>Dans l’ordre des</translation>
    </message>
    <message>
        <source>Family names</source>
        <translation>Noms de famille</translation>
    </message>
    <message>
        <source>Tag numbers</source>
        <translation>Numéros</translation>
    </message>
    <message>
        <source>First free label</source>
        <translation>Première étiquette libre</translation>
    </message>
    <message>
        <source>Counted from the top left, row by row.</source>
        <translation>Comptée depuis le haut à gauche, ligne par ligne.</translation>
    </message>
    <message>
        <source>There is nothing to print</source>
        <translation>Il n’y a rien à imprimer</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Imprimante</translation>
    </message>
    <message>
        <source>No printer is set up on this device</source>
        <translation>Aucune imprimante n’est installée sur cet appareil</translation>
    </message>
    <message>
        <source>Save the PDF and print it from a device that has one.</source>
        <translation>Enregistrez le PDF et imprimez-le depuis un appareil qui en a une.</translation>
    </message>
    <message>
        <source>On its way ...</source>
        <translation>En cours …</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimer</translation>
    </message>
    <message>
        <source>Print on %1</source>
        <translation>Imprimer sur %1</translation>
    </message>
    <message>
        <source>Save PDF</source>
        <translation>Enregistrer le PDF</translation>
    </message>
    <message>
        <source>Handed to %1</source>
        <translation>Remis à %1</translation>
    </message>
    <message>
        <source>Not printed: the paper could not be written</source>
        <translation>Non imprimé&#xa0;: le document n’a pas pu être écrit</translation>
    </message>
    <message>
        <source>Not printed: this device has no printing system</source>
        <translation>Non imprimé&#xa0;: cet appareil n’a pas de système d’impression</translation>
    </message>
    <message>
        <source>Not printed: the printing system does not answer</source>
        <translation>Non imprimé&#xa0;: le système d’impression ne répond pas</translation>
    </message>
    <message>
        <source>Not printed: the printer refused it</source>
        <translation>Non imprimé&#xa0;: l’imprimante l’a refusé</translation>
    </message>
    <message>
        <source>One page</source>
        <translation>Une page</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 sur %2</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Page précédente</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Page suivante</translation>
    </message>
    <message>
        <source>Page %1: %2</source>
        <translation>Page %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Not on it</source>
        <translation>Absents</translation>
    </message>
    <message>
        <source>Save for programs (JSON)</source>
        <translation>Enregistrer pour programmes (JSON)</translation>
    </message>
    <message>
        <source>It is saved</source>
        <translation>C’est enregistré</translation>
    </message>
    <message>
        <source>It was not saved</source>
        <translation>Cela n’a pas été enregistré</translation>
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
        <translation>%1, promise pour %2&#xa0;: %3 maintenant, %4 alors</translation>
    </message>
</context>
<context>
    <name>PromiseNotice</name>
    <message>
        <source>The room can promise %1</source>
        <translation>La salle peut promettre %1</translation>
    </message>
    <message>
        <source>This time can be kept</source>
        <translation>Cette heure peut être tenue</translation>
    </message>
    <message>
        <source>This time can’t be kept with certainty. The room can promise %1</source>
        <translation>Cette heure ne peut être tenue à coup sûr. La salle peut promettre %1</translation>
    </message>
    <message>
        <source>This time can’t be kept, and no shift has room</source>
        <translation>Cette heure ne peut être tenue, et aucun service n’a de place</translation>
    </message>
    <message>
        <source>Estimate: %1 of such promises are kept, by the queue, the shifts and how long rackets took so far.</source>
        <translation>Estimation&#xa0;: %1 de ces promesses sont tenues, d’après la file, les services et la durée jusqu’ici.</translation>
    </message>
    <message>
        <source>Estimate: %1.</source>
        <translation>Estimation&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Not even before all that waits.</source>
        <translation>Même pas avant tout ce qui attend.</translation>
    </message>
    <message>
        <source>In its turn: %1.</source>
        <translation>À son tour&#xa0;: %1.</translation>
    </message>
    <message>
        <source>For it would have to give way:</source>
        <translation>Devraient céder la place&#xa0;:</translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation>Prendre %1</translation>
    </message>
    <message>
        <source>Not connected to %1: the benches there hear of these rackets later. Better agree on a time when they do.</source>
        <translation>Pas de liaison avec %1&#xa0;: les postes là-bas n’apprendront l’existence de ces raquettes que plus tard. Mieux vaut convenir d’une heure à ce moment-là.</translation>
    </message>
    <message>
        <source>No time can be reckoned: %1</source>
        <translation>Aucune heure ne peut être calculée&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>PullLine</name>
    <message>
        <source>Calibration line of %1</source>
        <translation>Droite d’étalonnage de %1</translation>
    </message>
    <message>
        <source>set to %1</source>
        <translation>réglé sur %1</translation>
    </message>
</context>
<context>
    <name>QualityChart</name>
    <message numerus="yes">
        <source>Chart of %n racket(s)</source>
        <translation>
            <numerusform>Graphique de %n raquette</numerusform>
            <numerusform>Graphique de %n raquettes</numerusform>
        </translation>
    </message>
    <message>
        <source>The arrow keys choose a racket.</source>
        <translation>Les flèches choisissent une raquette.</translation>
    </message>
</context>
<context>
    <name>QualityModel</name>
    <message>
        <source>Give a pull from 1 to 100 kg.</source>
        <translation>Indiquer une traction de 1 à 100 kg.</translation>
    </message>
    <message>
        <source>All rackets</source>
        <translation>Toutes les raquettes</translation>
    </message>
    <message>
        <source>Machine: %1</source>
        <translation>Machine&#xa0;: %1</translation>
    </message>
    <message>
        <source>Stringer: %1</source>
        <translation>Cordeur&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>One reading scatters by about %1 % (estimate of %n reading(s)).</source>
        <translation>
            <numerusform>Une mesure se disperse d’environ %1 % (estimation de %n mesure).</numerusform>
            <numerusform>Une mesure se disperse d’environ %1 % (estimation de %n mesures).</numerusform>
        </translation>
    </message>
    <message>
        <source>Too few readings to tell their scatter: %1 % is assumed, as such gauges and rooms usually have.</source>
        <translation>Trop peu de mesures pour dire leur dispersion&#xa0;: %1 % sont supposés, comme d’habitude avec de tels appareils et ateliers.</translation>
    </message>
    <message numerus="yes">
        <source>%1 % of the variance (estimate, 95 %: %2 to %3 %), between %n of them</source>
        <translation>
            <numerusform>%1 % de la variance (estimation, à 95 %&#xa0;: %2 à %3 %), sur %n</numerusform>
            <numerusform>%1 % de la variance (estimation, à 95 %&#xa0;: %2 à %3 %), sur %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Stringers: %1</source>
        <translation>Cordeurs&#xa0;: %1</translation>
    </message>
    <message>
        <source>Machines: %1</source>
        <translation>Machines&#xa0;: %1</translation>
    </message>
    <message>
        <source>Frames: %1</source>
        <translation>Cadres&#xa0;: %1</translation>
    </message>
    <message>
        <source>; they differ clearly</source>
        <translation>&#xa0;; ils diffèrent nettement</translation>
    </message>
    <message>
        <source>; they seem to differ</source>
        <translation>&#xa0;; ils semblent différer</translation>
    </message>
    <message>
        <source>; no clear difference</source>
        <translation>&#xa0;; pas de différence nette</translation>
    </message>
    <message numerus="yes">
        <source>Of 100 rackets about %1 lie more than %2 % from what was to be expected (estimate, 95 %: %3 to %4). Of the %n read, %5 did.</source>
        <translation>
            <numerusform>Sur 100 raquettes, environ %1 s’écartent de plus de %2 % de l’attendu (estimation, à 95 %&#xa0;: %3 à %4). Sur %n mesurée&#xa0;: %5.</numerusform>
            <numerusform>Sur 100 raquettes, environ %1 s’écartent de plus de %2 % de l’attendu (estimation, à 95 %&#xa0;: %3 à %4). Sur %n mesurées&#xa0;: %5.</numerusform>
        </translation>
    </message>
    <message>
        <source>Too few readings to tell what can be held: %1 of at least %2 that can be compared.</source>
        <translation>Trop peu de mesures pour dire ce qui peut être tenu&#xa0;: %1 sur au moins %2 comparables.</translation>
    </message>
    <message>
        <source>%1 % (± %2, estimate)</source>
        <translation>%1 % (± %2, estimation)</translation>
    </message>
    <message>
        <source>nothing to compare it with yet</source>
        <translation>rien à quoi la comparer encore</translation>
    </message>
    <message>
        <source>Racket %1: %2 % (± %3)</source>
        <translation>Raquette %1&#xa0;: %2 % (± %3)</translation>
    </message>
    <message numerus="yes">
        <source>Machine %1: %2 % (± %3) over %n racket(s)</source>
        <translation>
            <numerusform>Machine %1&#xa0;: %2 % (± %3) sur %n raquette</numerusform>
            <numerusform>Machine %1&#xa0;: %2 % (± %3) sur %n raquettes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stringer %1: %2 % (± %3) over %n racket(s)</source>
        <translation>
            <numerusform>Cordeur %1&#xa0;: %2 % (± %3) sur %n raquette</numerusform>
            <numerusform>Cordeur %1&#xa0;: %2 % (± %3) sur %n raquettes</numerusform>
        </translation>
    </message>
    <message>
        <source>It was never held against a gauge.</source>
        <translation>Elle n’a jamais été vérifiée au peson.</translation>
    </message>
    <message>
        <source>No pull against the gauge was noted.</source>
        <translation>Aucune traction au peson n’a été notée.</translation>
    </message>
    <message numerus="yes">
        <source>%n pull(s) noted, too few for a line: at three settings or more, each twice, on one day.</source>
        <translation>
            <numerusform>%n traction notée, trop peu pour une droite&#xa0;: tirer le même jour à trois réglages ou plus, deux fois chacun.</numerusform>
            <numerusform>%n tractions notées, trop peu pour une droite&#xa0;: tirer le même jour à trois réglages ou plus, deux fois chacun.</numerusform>
        </translation>
    </message>
    <message>
        <source>What to set for %1 is not known: the pulls noted do not reach it.</source>
        <translation>Le réglage pour %1 n’est pas connu&#xa0;: les tractions notées ne vont pas jusque-là.</translation>
    </message>
    <message>
        <source>At %1 it is off by %2 % (± %3, estimate); %4 % are tolerated.</source>
        <translation>À %1, elle s’écarte de %2 % (± %3, estimation)&#xa0;; %4 % sont tolérés.</translation>
    </message>
    <message>
        <source>There is no chart yet.</source>
        <translation>Il n’y a pas encore de graphique.</translation>
    </message>
    <message>
        <source>Wait a moment and save it again.</source>
        <translation>Attendez un instant et enregistrez à nouveau.</translation>
    </message>
</context>
<context>
    <name>QualityRulesSheet</name>
    <message>
        <source>The room’s rules</source>
        <translation>Règles de la salle</translation>
    </message>
    <message>
        <source>Tolerance of a string bed, per cent either way</source>
        <translation>Tolérance d’un cordage, pour cent de part et d’autre</translation>
    </message>
    <message>
        <source>Empty: 4 %, two pounds of fifty. Half of it is left to the machine.</source>
        <translation>Vide&#xa0;: 4 %, deux livres sur cinquante. La moitié revient à la machine.</translation>
    </message>
    <message>
        <source>Machines are held against the gauge every so many days</source>
        <translation>Les machines sont vérifiées au peson tous les tant de jours</translation>
    </message>
    <message>
        <source>Empty: every day.</source>
        <translation>Vide&#xa0;: chaque jour.</translation>
    </message>
    <message>
        <source>Keep the rules</source>
        <translation>Garder les règles</translation>
    </message>
    <message>
        <source>Rules kept</source>
        <translation>Règles gardées</translation>
    </message>
</context>
<context>
    <name>QualityView</name>
    <message>
        <source>a racket by itself</source>
        <translation>d’une seule raquette</translation>
    </message>
    <message>
        <source>a machine</source>
        <translation>d’une machine</translation>
    </message>
    <message>
        <source>a stringer</source>
        <translation>d’un cordeur</translation>
    </message>
    <message>
        <source>Nothing can be told</source>
        <translation>Rien ne peut être dit</translation>
    </message>
    <message>
        <source>No string bed was measured yet</source>
        <translation>Aucun cordage n’a encore été mesuré</translation>
    </message>
    <message>
        <source>Measure each racket before it leaves the bench and enter the reading there; from the fifth of a kind on it is compared.</source>
        <translation>Mesurer chaque raquette avant qu’elle quitte le poste et y saisir la mesure&#xa0;; à partir de la cinquième d’un type, elle est comparée.</translation>
    </message>
    <message>
        <source>Save as a table (CSV)</source>
        <translation>Enregistrer en tableau (CSV)</translation>
    </message>
    <message>
        <source>The room’s rules</source>
        <translation>Règles de la salle</translation>
    </message>
    <message>
        <source>Racket after racket</source>
        <translation>Raquette après raquette</translation>
    </message>
    <message>
        <source>The newest %1 of %2; per cent from what was to be expected, estimates</source>
        <translation>Les %1 plus récentes sur %2&#xa0;; pour cent d’écart à l’attendu, estimations</translation>
    </message>
    <message>
        <source>Per cent from what was to be expected, estimates</source>
        <translation>Pour cent d’écart à l’attendu, estimations</translation>
    </message>
    <message>
        <source>Tap a racket to read it.</source>
        <translation>Toucher une raquette pour la lire.</translation>
    </message>
    <message>
        <source>alarm of %1</source>
        <translation>alarme %1</translation>
    </message>
    <message>
        <source>beyond the tolerance</source>
        <translation>hors tolérance</translation>
    </message>
    <message>
        <source>beyond the tolerance (the band)</source>
        <translation>hors tolérance (la bande)</translation>
    </message>
    <message>
        <source>nothing to compare with yet</source>
        <translation>rien à comparer encore</translation>
    </message>
    <message>
        <source>alarm of a racket (dashed: its limits)</source>
        <translation>alarme d’une raquette (tirets&#xa0;: limites)</translation>
    </message>
    <message>
        <source>alarm of a machine</source>
        <translation>alarme d’une machine</translation>
    </message>
    <message>
        <source>alarm of a stringer</source>
        <translation>alarme d’un cordeur</translation>
    </message>
    <message>
        <source>moving average, begun anew after an alarm</source>
        <translation>moyenne mobile, recommencée après une alarme</translation>
    </message>
    <message>
        <source>What stands out</source>
        <translation>Ce qui ressort</translation>
    </message>
    <message numerus="yes">
        <source>The newest first; %n older one(s) are on the chart</source>
        <translation>
            <numerusform>Le plus récent d’abord&#xa0;; %n plus ancien est sur le graphique</numerusform>
            <numerusform>Le plus récent d’abord&#xa0;; %n plus anciens sont sur le graphique</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing stands out beyond what chance alone would do.</source>
        <translation>Rien ne ressort au-delà de ce que ferait le hasard seul.</translation>
    </message>
    <message>
        <source>Likely causes (estimate): %1</source>
        <translation>Causes probables (estimation)&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1, %2 %</source>
        <translation>%1, %2 %</translation>
    </message>
    <message>
        <source>Where the scatter comes from</source>
        <translation>D’où vient la dispersion</translation>
    </message>
    <message>
        <source>Too few readings, or too few who strung them, to tell.</source>
        <translation>Trop peu de mesures, ou trop peu de cordeurs, pour le dire.</translation>
    </message>
    <message>
        <source>Left out: these readings can’t be of their rackets</source>
        <translation>Écartées&#xa0;: ces mesures ne peuvent pas être de leurs raquettes</translation>
    </message>
    <message>
        <source>Machines against the gauge</source>
        <translation>Machines face au peson</translation>
    </message>
    <message>
        <source>What to set for a pull of, in kg</source>
        <translation>Que régler pour une traction de, en kg</translation>
    </message>
    <message>
        <source>Enter a pull against the gauge</source>
        <translation>Saisir une traction au peson</translation>
    </message>
    <message>
        <source>All figures are estimates of readings and say nothing on anybody’s health; whose arm hurts sees a physician.</source>
        <translation>Tous les chiffres sont des estimations tirées de mesures et ne disent rien de la santé&#xa0;; qui a mal au bras consulte un médecin.</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tableau (*.csv)</translation>
    </message>
    <message>
        <source>Save as a sheet (PDF)</source>
        <translation>Enregistrer en feuille (PDF)</translation>
    </message>
    <message>
        <source>Sheet (*.pdf)</source>
        <translation>Feuille (*.pdf)</translation>
    </message>
</context>
<context>
    <name>QuestionCard</name>
    <message>
        <source>Looked where it is: %1</source>
        <translation>Vérifié où elle est&#xa0;: %1</translation>
    </message>
    <message>
        <source>Tag %1: two people moved it on while apart</source>
        <translation>Étiquette %1&#xa0;: deux personnes l’ont fait avancer chacune de son côté</translation>
    </message>
    <message>
        <source>Two people moved this racket on while apart</source>
        <translation>Deux personnes ont fait avancer cette raquette chacune de son côté</translation>
    </message>
    <message>
        <source>Where is the racket now?</source>
        <translation>Où est la raquette maintenant&#xa0;?</translation>
    </message>
    <message>
        <source>What does the player want?</source>
        <translation>Que veut le joueur&#xa0;?</translation>
    </message>
    <message>
        <source>Choose an answer</source>
        <translation>Choisissez une réponse</translation>
    </message>
    <message>
        <source>Close with: %1</source>
        <translation>Clore avec&#xa0;: %1</translation>
    </message>
    <message>
        <source>Say the answer</source>
        <translation>Dites la réponse</translation>
    </message>
    <message>
        <source>Asked who has it: %1</source>
        <translation>Demandé qui l’a&#xa0;: %1</translation>
    </message>
    <message>
        <source>Who has the racket now?</source>
        <translation>Qui a la raquette maintenant&#xa0;?</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Étiquette %1</translation>
    </message>
    <message>
        <source>charged by two tablets while apart</source>
        <translation>facturé par deux tablettes séparément</translation>
    </message>
    <message>
        <source>What does it cost?</source>
        <translation>Combien cela coûte-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>two linked books of this player differ</source>
        <translation>deux livres liés de ce joueur diffèrent</translation>
    </message>
    <message>
        <source>Which of them is right?</source>
        <translation>Laquelle est juste&#xa0;?</translation>
    </message>
    <message>
        <source>It was answered elsewhere meanwhile: %1 (%2). Nothing was written here.</source>
        <translation>Répondu ailleurs entre-temps&#xa0;: %1 (%2). Rien n’a été noté ici.</translation>
    </message>
    <message>
        <source>It was closed elsewhere meanwhile. Nothing was written here.</source>
        <translation>Fermée ailleurs entre-temps. Rien n’a été noté ici.</translation>
    </message>
    <message>
        <source>Another answer came in meanwhile. Look at all of them and choose again.</source>
        <translation>Une autre réponse est arrivée entre-temps. Regardez-les toutes et choisissez à nouveau.</translation>
    </message>
    <message>
        <source>I see</source>
        <translation>Compris</translation>
    </message>
</context>
<context>
    <name>QuestionsModel</name>
    <message>
        <source>this question was answered at another tablet meanwhile</source>
        <translation>cette question a reçu sa réponse sur une autre tablette entre-temps</translation>
    </message>
    <message>
        <source>look at what stands there now</source>
        <translation>regardez ce qui y figure maintenant</translation>
    </message>
</context>
<context>
    <name>QuestionsPage</name>
    <message>
        <source>Questions</source>
        <translation>Questions</translation>
    </message>
    <message numerus="yes">
        <source>%n open. Ask the player, then close it with the answer.</source>
        <translation>
            <numerusform>%n ouverte. Demandez au joueur, puis fermez-la avec la réponse.</numerusform>
            <numerusform>%n ouvertes. Demandez aux joueurs, puis fermez-les avec la réponse.</numerusform>
        </translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Close</translation>
    </message>
    <message>
        <source>Good</source>
        <translation>Bien</translation>
    </message>
    <message>
        <source>No question is open</source>
        <translation>Aucune question n’est ouverte</translation>
    </message>
    <message>
        <source>Where two people gave different answers without seeing each other, both stand here until someone closes the question.</source>
        <translation>Quand deux personnes ont donné des réponses différentes sans se voir, les deux restent ici jusqu’à ce que quelqu’un ferme la question.</translation>
    </message>
    <message>
        <source>%1, %2: %3. All devices follow.</source>
        <translation>%1, %2&#xa0;: %3. Tous les appareils suivent.</translation>
    </message>
</context>
<context>
    <name>RacketSheet</name>
    <message>
        <source>Change racket</source>
        <translation>Modifier la raquette</translation>
    </message>
    <message>
        <source>Mark on the racket</source>
        <translation>Repère sur la raquette</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Fabricant</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modèle</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Numéro de série</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
</context>
<context>
    <name>RacketsCard</name>
    <message>
        <source>Rackets</source>
        <translation>Raquettes</translation>
    </message>
    <message>
        <source>Handed over: %1</source>
        <translation>Remises&#xa0;: %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
    <message>
        <source>Racket without a mark</source>
        <translation>Raquette sans repère</translation>
    </message>
    <message>
        <source>in the room already</source>
        <translation>déjà à l’atelier</translation>
    </message>
    <message>
        <source>Add a racket</source>
        <translation>Ajouter une raquette</translation>
    </message>
    <message>
        <source>Mark on racket %1</source>
        <translation>Repère sur la raquette %1</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Fabricant</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modèle</translation>
    </message>
    <message>
        <source>Take racket %1 out</source>
        <translation>Retirer la raquette %1</translation>
    </message>
</context>
<context>
    <name>ReadingSheet</name>
    <message>
        <source>What was measured</source>
        <translation>Ce qui a été mesuré</translation>
    </message>
    <message>
        <source>String bed</source>
        <translation>Plan de cordage</translation>
    </message>
    <message>
        <source>Tone</source>
        <translation>Son</translation>
    </message>
    <message>
        <source>Tension head</source>
        <translation>Tête de tension</translation>
    </message>
    <message>
        <source>Tone of the string bed</source>
        <translation>Son du plan de cordage</translation>
    </message>
    <message>
        <source>Pull of the tension head</source>
        <translation>Traction de la tête de tension</translation>
    </message>
    <message>
        <source>String-bed stiffness</source>
        <translation>Rigidité du plan de cordage</translation>
    </message>
    <message>
        <source>Unit on the instrument</source>
        <translation>Unité de l’appareil</translation>
    </message>
    <message>
        <source>Its own scale</source>
        <translation>Sa propre échelle</translation>
    </message>
    <message>
        <source>Instrument, or a note</source>
        <translation>Appareil, ou une note</translation>
    </message>
    <message>
        <source>Keep this reading</source>
        <translation>Garder cette mesure</translation>
    </message>
    <message>
        <source>Measured: %1 %2</source>
        <translation>Mesuré&#xa0;: %1 %2</translation>
    </message>
    <message>
        <source>What the machine was set to</source>
        <translation>Sur quoi la machine était réglée</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Étiquette %1</translation>
    </message>
    <message>
        <source>Enter a reading: %1</source>
        <translation>Saisir une mesure&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>ReadingsCard</name>
    <message>
        <source>Readings</source>
        <translation>Mesures</translation>
    </message>
    <message>
        <source>Nothing was measured yet.</source>
        <translation>Rien n’a encore été mesuré.</translation>
    </message>
    <message>
        <source>Enter a reading</source>
        <translation>Saisir une mesure</translation>
    </message>
</context>
<context>
    <name>ReadyCard</name>
    <message>
        <source>Ready by</source>
        <translation>Prêt pour</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>Ready in %1 h</source>
        <translation>Prêt dans %1 h</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Aucune</translation>
    </message>
    <message>
        <source>No time said</source>
        <translation>Aucune heure dite</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Urgent</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>On court</source>
        <translation>Du court</translation>
    </message>
    <message>
        <source>Bags that came with the rackets</source>
        <translation>Sacs arrivés avec les raquettes</translation>
    </message>
</context>
<context>
    <name>RoleWords</name>
    <message>
        <source>head of the room</source>
        <translation>responsable de la salle</translation>
    </message>
    <message>
        <source>desk</source>
        <translation>accueil</translation>
    </message>
    <message>
        <source>stringer</source>
        <translation>cordeur</translation>
    </message>
    <message>
        <source>reader</source>
        <translation>lecteur</translation>
    </message>
</context>
<context>
    <name>RoomBoard</name>
    <message numerus="yes">
        <source>%1: %n racket(s)</source>
        <translation>
            <numerusform>%1&#xa0;: %n raquette</numerusform>
            <numerusform>%1&#xa0;: %n raquettes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RoomList</name>
    <message numerus="yes">
        <source>%1: %n racket(s)</source>
        <translation>
            <numerusform>%1&#xa0;: %n raquette</numerusform>
            <numerusform>%1&#xa0;: %n raquettes</numerusform>
        </translation>
    </message>
    <message>
        <source>No racket is at this stage.</source>
        <translation>Aucune raquette n’est à cette étape.</translation>
    </message>
</context>
<context>
    <name>RoomModel</name>
    <message>
        <source>this racket moved on elsewhere meanwhile</source>
        <translation>cette raquette a avancé ailleurs entre-temps</translation>
    </message>
    <message>
        <source>look at it again</source>
        <translation>regardez-la à nouveau</translation>
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
    <message>
        <source>Tag %1: %2</source>
        <translation>Étiquette %1&#xa0;: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n racket(s) here</source>
        <translation>
            <numerusform>%n raquette ici</numerusform>
            <numerusform>%n raquettes ici</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n late</source>
        <translation>
            <numerusform>%n en retard</numerusform>
            <numerusform>%n en retard</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n collected</source>
        <translation>
            <numerusform>%n reprise</numerusform>
            <numerusform>%n reprises</numerusform>
        </translation>
    </message>
    <message>
        <source>By stage</source>
        <translation>Par étape</translation>
    </message>
    <message>
        <source>All jobs</source>
        <translation>Tous les cordages</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Ce qui est montré</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its rackets come here by themselves.</source>
        <translation>Associez un serveur sous Échange&#xa0;; ses raquettes arrivent ici d’elles-mêmes.</translation>
    </message>
    <message>
        <source>Compare two tags</source>
        <translation>Comparer deux étiquettes</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimer</translation>
    </message>
</context>
<context>
    <name>RushMark</name>
    <message>
        <source>On court</source>
        <translation>Du court</translation>
    </message>
    <message>
        <source>Rush</source>
        <translation>Urgent</translation>
    </message>
</context>
<context>
    <name>SaidBy</name>
    <message>
        <source>Your name</source>
        <translation>Votre nom</translation>
    </message>
</context>
<context>
    <name>SaleSheet</name>
    <message>
        <source>Charge something else</source>
        <translation>Facturer autre chose</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Price of one in %1</source>
        <translation>Prix à l’unité en %1</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Combien</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Charge it</source>
        <translation>Facturer</translation>
    </message>
    <message>
        <source>Charged: %1 × %2</source>
        <translation>Facturé&#xa0;: %1 × %2</translation>
    </message>
    <message>
        <source>Charged: %1</source>
        <translation>Facturé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>SameFeelPart</name>
    <message>
        <source>Same feel with …</source>
        <translation>Même sensation avec …</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Ce qui change</translation>
    </message>
    <message>
        <source>String</source>
        <translation>Cordage</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Jauge</translation>
    </message>
    <message>
        <source>Pre-stretch</source>
        <translation>Pré-étirage</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Les deux</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Montants</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Travers</translation>
    </message>
    <message>
        <source>Another string of the stock</source>
        <translation>Un autre cordage du stock</translation>
    </message>
    <message>
        <source>There is no string in the stock to choose from.</source>
        <translation>Il n’y a aucun cordage à choisir dans le stock.</translation>
    </message>
    <message>
        <source>Mains pulled by so much more or less</source>
        <translation>Montants tirés d’autant de plus ou de moins</translation>
    </message>
    <message>
        <source>Crosses pulled by so much more or less</source>
        <translation>Travers tirés d’autant de plus ou de moins</translation>
    </message>
    <message>
        <source>Mains ±</source>
        <translation>Montants ±</translation>
    </message>
    <message>
        <source>Crosses ±</source>
        <translation>Travers ±</translation>
    </message>
    <message>
        <source>The crosses make up for it</source>
        <translation>Les travers compensent</translation>
    </message>
    <message>
        <source>The mains make up for it</source>
        <translation>Les montants compensent</translation>
    </message>
    <message>
        <source>Head size</source>
        <translation>Taille du tamis</translation>
    </message>
    <message>
        <source>Another racket with the same strings</source>
        <translation>Une autre raquette avec les mêmes cordes</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Plan (montants x travers)</translation>
    </message>
    <message>
        <source>Head size of the other racket</source>
        <translation>Taille du tamis de l’autre raquette</translation>
    </message>
    <message>
        <source>Mains of the other racket</source>
        <translation>Montants de l’autre raquette</translation>
    </message>
    <message>
        <source>Crosses of the other racket</source>
        <translation>Travers de l’autre raquette</translation>
    </message>
    <message>
        <source>For another racket: keep to the tensions printed on its own frame.</source>
        <translation>Pour une autre raquette&#xa0;: respectez les tensions imprimées sur son cadre.</translation>
    </message>
</context>
<context>
    <name>SamePersonCard</name>
    <message>
        <source>Names and books</source>
        <translation>Noms et livres</translation>
    </message>
    <message>
        <source>Also %1</source>
        <translation>Aussi %1</translation>
    </message>
    <message>
        <source>Before: %1</source>
        <translation>Avant&#xa0;: %1</translation>
    </message>
    <message>
        <source>Married: %1</source>
        <translation>Nom de mariage&#xa0;: %1</translation>
    </message>
    <message>
        <source>Called %1</source>
        <translation>Appelé %1</translation>
    </message>
    <message>
        <source>Also spelt %1</source>
        <translation>S’écrit aussi %1</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Retirer&#xa0;: %1</translation>
    </message>
    <message>
        <source>Name taken back</source>
        <translation>Nom retiré</translation>
    </message>
    <message>
        <source>Another name</source>
        <translation>Autre nom</translation>
    </message>
    <message>
        <source>One more book of this person, not on this device</source>
        <translation>Un autre livre de cette personne, pas sur cet appareil</translation>
    </message>
    <message>
        <source>The books differ: %1, %2</source>
        <translation>Les livres diffèrent&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>The books differ: %1</source>
        <translation>Les livres diffèrent&#xa0;: %1</translation>
    </message>
    <message>
        <source>Both books say: %1</source>
        <translation>Les deux livres disent&#xa0;: %1</translation>
    </message>
    <message>
        <source>Another book of this person</source>
        <translation>Un autre livre de cette personne</translation>
    </message>
    <message>
        <source>Not the same person</source>
        <translation>Pas la même personne</translation>
    </message>
</context>
<context>
    <name>SamePersonSheet</name>
    <message>
        <source>Another book of this person</source>
        <translation>Un autre livre de cette personne</translation>
    </message>
    <message>
        <source>Linked books are shown together: history in order, the last time of either. Nothing is copied, and they can be parted again.</source>
        <translation>Les livres liés sont montrés ensemble&#xa0;: l’historique dans l’ordre, la dernière fois de l’un ou de l’autre. Rien n’est copié, et on peut les séparer de nouveau.</translation>
    </message>
    <message>
        <source>Find a player</source>
        <translation>Chercher un joueur</translation>
    </message>
    <message>
        <source>The same person</source>
        <translation>La même personne</translation>
    </message>
    <message>
        <source>Two different people</source>
        <translation>Deux personnes différentes</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation>Quelqu’un d’autre</translation>
    </message>
</context>
<context>
    <name>SaveNote</name>
    <message>
        <source>There is something of that name that is no file; choose another name.</source>
        <translation>Quelque chose porte ce nom sans être un fichier&#xa0;; choisissez un autre nom.</translation>
    </message>
    <message>
        <source>The folder is not there; choose another one.</source>
        <translation>Le dossier n’existe pas&#xa0;; choisissez-en un autre.</translation>
    </message>
    <message>
        <source>Nothing may be written there; choose another folder.</source>
        <translation>Rien ne peut y être écrit&#xa0;; choisissez un autre dossier.</translation>
    </message>
    <message>
        <source>Is there room left? Choose another folder, or make room.</source>
        <translation>Reste-t-il de la place&#xa0;? Choisissez un autre dossier, ou faites de la place.</translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation>Enregistré sous %1</translation>
    </message>
    <message>
        <source>Not saved as %1. %2</source>
        <translation>Pas enregistré sous %1. %2</translation>
    </message>
</context>
<context>
    <name>ScanDoings</name>
    <message>
        <source>Scanned again. The next step:</source>
        <translation>Scannée de nouveau. L’étape suivante&#xa0;:</translation>
    </message>
    <message>
        <source>This number was given out twice</source>
        <translation>Ce numéro a été donné deux fois</translation>
    </message>
    <message>
        <source>Look at the racket, and choose whose it is.</source>
        <translation>Regardez la raquette et choisissez à qui elle est.</translation>
    </message>
</context>
<context>
    <name>ScanModel</name>
    <message>
        <source>Tag %1, %2</source>
        <translation>Étiquette %1, %2</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Avant %1</translation>
    </message>
    <message>
        <source>There is no event yet</source>
        <translation>Il n’y a pas encore de tournoi</translation>
    </message>
    <message>
        <source>This tag is of another event</source>
        <translation>Cette étiquette est d’un autre tournoi</translation>
    </message>
    <message>
        <source>Find the racket by its player&apos;s name.</source>
        <translation>Cherchez la raquette par le nom.</translation>
    </message>
    <message>
        <source>The tag was misread</source>
        <translation>L’étiquette a été mal lue</translation>
    </message>
    <message>
        <source>Scan it again, or type the number that stands on it.</source>
        <translation>Scannez-la de nouveau ou saisissez le numéro qu’elle porte.</translation>
    </message>
    <message>
        <source>The scanner types for another keyboard</source>
        <translation>Le lecteur tape pour un autre clavier</translation>
    </message>
    <message>
        <source>Set the scanner to the keyboard that this device is set to.</source>
        <translation>Réglez le lecteur sur le clavier de cet appareil.</translation>
    </message>
    <message>
        <source>This is no code of a tag</source>
        <translation>Ce n’est pas le code d’une étiquette</translation>
    </message>
    <message>
        <source>Scan the tag, or type the number that stands on it.</source>
        <translation>Scannez l’étiquette ou saisissez le numéro qu’elle porte.</translation>
    </message>
    <message>
        <source>No racket here has tag %1</source>
        <translation>Aucune raquette ici n’a l’étiquette %1</translation>
    </message>
    <message>
        <source>It may not have come to this device yet: look under Exchange.</source>
        <translation>Elle n’est peut-être pas encore arrivée sur cet appareil&#xa0;: voyez sous Échange.</translation>
    </message>
    <message>
        <source>This number was given out twice</source>
        <translation>Ce numéro a été donné deux fois</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange, or make an event.</source>
        <translation>Jumelez avec un serveur de tournoi sous Échange, ou créez un tournoi.</translation>
    </message>
</context>
<context>
    <name>ScopeBar</name>
    <message>
        <source>All %1</source>
        <translation>Les %1</translation>
    </message>
    <message>
        <source>These answers are for</source>
        <translation>Ces réponses valent pour</translation>
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
    <message>
        <source>Who works here</source>
        <translation>Qui travaille ici</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Votre nom</translation>
    </message>
    <message>
        <source>It stands beside everything that you do with a racket.</source>
        <translation>Il figure à côté de tout ce que vous faites avec une raquette.</translation>
    </message>
    <message>
        <source>Name of this tablet</source>
        <translation>Nom de cette tablette</translation>
    </message>
    <message>
        <source>Others read it beside your answers; a new one holds from the next start.</source>
        <translation>Les autres le lisent à côté de vos réponses&#xa0;; un nouveau vaut dès le prochain démarrage.</translation>
    </message>
    <message>
        <source>About</source>
        <translation>À propos</translation>
    </message>
    <message>
        <source>Weavelog %1</source>
        <translation>Weavelog %1</translation>
    </message>
    <message>
        <source>What it says about frames, strings and tension is no more than a reminder: the maker&apos;s instructions, local rules and licensed practice come first.</source>
        <translation>Ce qu’il dit des cadres, des cordages et de la tension n’est qu’un rappel&#xa0;: les instructions du fabricant, les règles locales et la pratique agréée passent d’abord.</translation>
    </message>
    <message>
        <source>Everything is kept in this folder:</source>
        <translation>Tout est conservé dans ce dossier&#xa0;:</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>Scanner</source>
        <translation>Lecteur de codes</translation>
    </message>
    <message>
        <source>The second scan takes the next step</source>
        <translation>La deuxième lecture fait l’étape suivante</translation>
    </message>
    <message>
        <source>Off: it is offered, and one tap takes it. Each step can be taken back.</source>
        <translation>Désactivé&#xa0;: elle est proposée, une touche la fait. Chaque étape peut être annulée.</translation>
    </message>
    <message>
        <source>They hold for this device only; what an event is called holds for all who work at it.</source>
        <translation>Ils ne valent que pour cet appareil&#xa0;; le nom d’un tournoi vaut pour tous ceux qui y travaillent.</translation>
    </message>
</context>
<context>
    <name>SetupCard</name>
    <message>
        <source>Setup</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>What differs from the last job (%1) is marked.</source>
        <translation>Ce qui diffère du dernier cordage (%1) est marqué.</translation>
    </message>
    <message>
        <source>The first job of this player that is known here.</source>
        <translation>Le premier cordage de ce joueur connu ici.</translation>
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
    <name>ShiftSheet</name>
    <message>
        <source>Plan a shift</source>
        <translation>Prévoir un service</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>À</translation>
    </message>
    <message>
        <source>A time that is earlier than the beginning is on the next day.</source>
        <translation>Une heure avant le début est celle du lendemain.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Shift planned</source>
        <translation>Service prévu</translation>
    </message>
</context>
<context>
    <name>StageMark</name>
    <message>
        <source>%1, rush</source>
        <translation>%1, urgent</translation>
    </message>
</context>
<context>
    <name>StageWords</name>
    <message>
        <source>Not here yet</source>
        <translation>Pas encore ici</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Reçue</translation>
    </message>
    <message>
        <source>Inspected</source>
        <translation>Examinée</translation>
    </message>
    <message>
        <source>Waiting for an answer</source>
        <translation>Attend une réponse</translation>
    </message>
    <message>
        <source>Cut out</source>
        <translation>Décordée</translation>
    </message>
    <message>
        <source>On the machine</source>
        <translation>Sur la machine</translation>
    </message>
    <message>
        <source>Strung</source>
        <translation>Cordée</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Contrôlée</translation>
    </message>
    <message>
        <source>Stencilled</source>
        <translation>Pochoir posé</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Prête</translation>
    </message>
    <message>
        <source>Collected</source>
        <translation>Reprise</translation>
    </message>
    <message>
        <source>Put aside</source>
        <translation>Mise de côté</translation>
    </message>
    <message>
        <source>Another stage</source>
        <translation>Une autre étape</translation>
    </message>
</context>
<context>
    <name>StencilBed</name>
    <message>
        <source>ink: %1</source>
        <translation>encre&#xa0;: %1</translation>
    </message>
    <message>
        <source>Ink: %1</source>
        <translation>Encre&#xa0;: %1</translation>
    </message>
    <message>
        <source>Ink not said</source>
        <translation>Encre non précisée</translation>
    </message>
</context>
<context>
    <name>StencilSheet</name>
    <message>
        <source>Stencils: %1</source>
        <translation>Marquages&#xa0;: %1</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Étiquette %1</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
    <message>
        <source>The player asked for no stencil.</source>
        <translation>Aucun marquage n’est demandé.</translation>
    </message>
    <message>
        <source>Mark of the string</source>
        <translation>Marque du cordage</translation>
    </message>
    <message>
        <source>Mark of the racket</source>
        <translation>Marque de la raquette</translation>
    </message>
    <message>
        <source>The stencils are on</source>
        <translation>Les marquages sont posés</translation>
    </message>
    <message>
        <source>Tag %1: %2</source>
        <translation>Étiquette %1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>StepSheet</name>
    <message>
        <source>Step added</source>
        <translation>Étape ajoutée</translation>
    </message>
    <message>
        <source>Words changed</source>
        <translation>Mots changés</translation>
    </message>
    <message>
        <source>New step</source>
        <translation>Nouvelle étape</translation>
    </message>
    <message>
        <source>Words of the step</source>
        <translation>Mots de l’étape</translation>
    </message>
    <message>
        <source>What is to be done</source>
        <translation>Ce qu’il faut faire</translation>
    </message>
    <message>
        <source>Left empty, the usual words come back.</source>
        <translation>Laissé vide, les mots habituels reviennent.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
</context>
<context>
    <name>StepsCard</name>
    <message>
        <source>Steps</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source>%1 of %2 done. The room may change this list; the makers’ instructions come before it.</source>
        <translation>%1 sur %2 faites. La salle peut changer cette liste&#xa0;; les notices des fabricants passent avant.</translation>
    </message>
</context>
<context>
    <name>StockItemSheet</name>
    <message>
        <source>New string</source>
        <translation>Nouveau cordage</translation>
    </message>
    <message>
        <source>Name of the string, as jobs call it</source>
        <translation>Nom du cordage, tel que les travaux l’appellent</translation>
    </message>
    <message>
        <source>Gauge in mm</source>
        <translation>Jauge en mm</translation>
    </message>
    <message>
        <source>Counted in</source>
        <translation>Compté en</translation>
    </message>
    <message>
        <source>Metres of a reel</source>
        <translation>Mètres d’une bobine</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Garnitures</translation>
    </message>
    <message>
        <source>Whose it is</source>
        <translation>À qui il est</translation>
    </message>
    <message>
        <source>The room&apos;s</source>
        <translation>À la salle</translation>
    </message>
    <message>
        <source>A stringer&apos;s</source>
        <translation>À un cordeur</translation>
    </message>
    <message>
        <source>A player&apos;s</source>
        <translation>À un joueur</translation>
    </message>
    <message>
        <source>Name of the stringer</source>
        <translation>Nom du cordeur</translation>
    </message>
    <message>
        <source>Player</source>
        <translation>Joueur</translation>
    </message>
    <message>
        <source>Metres that are there</source>
        <translation>Mètres présents</translation>
    </message>
    <message>
        <source>Sets that are there</source>
        <translation>Garnitures présentes</translation>
    </message>
    <message>
        <source>Call it low at so many metres</source>
        <translation>Bientôt épuisé à tant de mètres</translation>
    </message>
    <message>
        <source>Call it low at so many sets</source>
        <translation>Bientôt épuisé à tant de garnitures</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>In stock: %1</source>
        <translation>En stock&#xa0;: %1</translation>
    </message>
    <message>
        <source>What it is made of</source>
        <translation>En quoi il est</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>pas dit</translation>
    </message>
    <message>
        <source>Natural gut</source>
        <translation>Boyau naturel</translation>
    </message>
    <message>
        <source>Multifilament</source>
        <translation>Multifilament</translation>
    </message>
    <message>
        <source>Synthetic gut</source>
        <translation>Boyau synthétique</translation>
    </message>
    <message>
        <source>Polyester</source>
        <translation>Polyester</translation>
    </message>
    <message>
        <source>Aramid</source>
        <translation>Aramide</translation>
    </message>
</context>
<context>
    <name>StockModel</name>
    <message>
        <source>Give metres, such as 62.5.</source>
        <translation>Donnez des mètres, par exemple 62,5.</translation>
    </message>
    <message>
        <source>Give a whole number of sets.</source>
        <translation>Donnez un nombre entier de garnitures.</translation>
    </message>
    <message>
        <source>Give the gauge in mm, such as 1.25.</source>
        <translation>Donnez la jauge en mm, par exemple 1,25.</translation>
    </message>
</context>
<context>
    <name>StockPage</name>
    <message>
        <source>Stock</source>
        <translation>Stock</translation>
    </message>
    <message numerus="yes">
        <source>%n string(s) low</source>
        <translation>
            <numerusform>%n cordage bientôt épuisé</numerusform>
            <numerusform>%n cordages bientôt épuisés</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is low</source>
        <translation>Rien ne manque</translation>
    </message>
    <message>
        <source>New string</source>
        <translation>Nouveau cordage</translation>
    </message>
    <message>
        <source>Nothing is in stock</source>
        <translation>Rien en stock</translation>
    </message>
    <message>
        <source>Note every reel and set that comes; then you see what is left and until when.</source>
        <translation>Notez chaque bobine et chaque garniture qui arrive&#xa0;; vous verrez ce qui reste et jusqu’à quand.</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its stock comes here by itself.</source>
        <translation>Associez-vous à un serveur de tournoi sous Échange&#xa0;; son stock arrive ici de lui-même.</translation>
    </message>
</context>
<context>
    <name>StockRow</name>
    <message>
        <source>gone by %1 at today&apos;s pace</source>
        <comment>time of day</comment>
        <translation>épuisé vers %1 au rythme d’aujourd’hui</translation>
    </message>
    <message>
        <source>gone by %1 at today&apos;s pace</source>
        <comment>day</comment>
        <translation>épuisé d’ici %1 au rythme d’aujourd’hui</translation>
    </message>
    <message>
        <source>low</source>
        <translation>bientôt épuisé</translation>
    </message>
    <message>
        <source>used today: %1</source>
        <translation>utilisé aujourd’hui&#xa0;: %1</translation>
    </message>
    <message>
        <source>Of the room</source>
        <translation>De la salle</translation>
    </message>
    <message>
        <source>Of the stringers</source>
        <translation>Des cordeurs</translation>
    </message>
    <message>
        <source>Of the players</source>
        <translation>Des joueurs</translation>
    </message>
</context>
<context>
    <name>StockSheet</name>
    <message>
        <source>Left</source>
        <translation>Reste</translation>
    </message>
    <message>
        <source>Called low at</source>
        <translation>Bientôt épuisé à</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Ce qui s’est passé</translation>
    </message>
    <message>
        <source>It came</source>
        <translation>Arrivé</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Compté</translation>
    </message>
    <message>
        <source>Taken out</source>
        <translation>Sorti</translation>
    </message>
    <message>
        <source>Spoilt</source>
        <translation>Gâché</translation>
    </message>
    <message>
        <source>Brought back</source>
        <translation>Rapporté</translation>
    </message>
    <message>
        <source>Metres that are there</source>
        <translation>Mètres présents</translation>
    </message>
    <message>
        <source>Sets that are there</source>
        <translation>Garnitures présentes</translation>
    </message>
    <message>
        <source>Metres</source>
        <translation>Mètres</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Garnitures</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Stock: %1</source>
        <translation>Stock&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>StockWords</name>
    <message numerus="yes">
        <source>%n set(s)</source>
        <translation>
            <numerusform>%n garniture</numerusform>
            <numerusform>%n garnitures</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StoredPage</name>
    <message>
        <source>Taken in: %1</source>
        <translation>Pris&#xa0;: %1</translation>
    </message>
    <message>
        <source>Hang each number on its racket.</source>
        <translation>Accrochez chaque numéro à sa raquette.</translation>
    </message>
    <message>
        <source>Racket %1</source>
        <translation>Raquette %1</translation>
    </message>
    <message>
        <source>Racket without a mark</source>
        <translation>Raquette sans repère</translation>
    </message>
    <message>
        <source>The player’s card</source>
        <translation>La fiche du joueur</translation>
    </message>
    <message>
        <source>Next player</source>
        <translation>Joueur suivant</translation>
    </message>
    <message>
        <source>Print tags</source>
        <translation>Imprimer les étiquettes</translation>
    </message>
    <message>
        <source>There is no event yet</source>
        <translation>Il n’y a pas encore de tournoi</translation>
    </message>
    <message>
        <source>Without one these rackets have no number, and neither room nor bench shows them. They can come into an event later.</source>
        <translation>Sans tournoi, ces raquettes n’ont pas de numéro, et ni la salle ni l’établi ne les montrent. Elles peuvent entrer dans un tournoi plus tard.</translation>
    </message>
    <message>
        <source>Make an event</source>
        <translation>Créer un tournoi</translation>
    </message>
</context>
<context>
    <name>StringBedSheet</name>
    <message>
        <source>String bed: %1</source>
        <translation>Plan de cordage&#xa0;: %1</translation>
    </message>
    <message>
        <source>String bed</source>
        <translation>Plan de cordage</translation>
    </message>
    <message>
        <source>Nothing can be said of this bed</source>
        <translation>On ne peut rien dire de ce plan de cordage</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Calcul en cours …</translation>
    </message>
    <message>
        <source>Assumed, because nobody has said it</source>
        <translation>Supposé, car personne ne l’a dit</translation>
    </message>
    <message>
        <source>What is left of the tension</source>
        <translation>Ce qui reste de la tension</translation>
    </message>
    <message>
        <source>Tension over the time since stringing. %1</source>
        <translation>Tension au fil du temps depuis le cordage. %1</translation>
    </message>
    <message>
        <source>Nothing here speaks of health: pain in the arm is a matter for a physician.</source>
        <translation>Rien ici ne parle de santé&#xa0;: une douleur au bras relève d’un médecin.</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tableau (*.csv)</translation>
    </message>
    <message>
        <source>Save the sheet (PDF)</source>
        <translation>Enregistrer la feuille (PDF)</translation>
    </message>
    <message>
        <source>Save the figures as a table (CSV)</source>
        <translation>Enregistrer les chiffres en tableau (CSV)</translation>
    </message>
    <message>
        <source>Sheet (*.pdf)</source>
        <translation>Feuille (*.pdf)</translation>
    </message>
</context>
<context>
    <name>StringPart</name>
    <message>
        <source>Gauge</source>
        <translation>Jauge</translation>
    </message>
    <message>
        <source>Taken from</source>
        <translation>Prise sur</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Non dit</translation>
    </message>
    <message>
        <source>Reel</source>
        <translation>Bobine</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Garniture</translation>
    </message>
    <message>
        <source>Whose string</source>
        <translation>Corde de qui</translation>
    </message>
    <message>
        <source>The room’s</source>
        <translation>De l’atelier</translation>
    </message>
    <message>
        <source>The player’s</source>
        <translation>Du joueur</translation>
    </message>
</context>
<context>
    <name>StringUseCard</name>
    <message numerus="yes">
        <source>%n set(s)</source>
        <translation>
            <numerusform>%n garniture</numerusform>
            <numerusform>%n garnitures</numerusform>
        </translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Montants</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Travers</translation>
    </message>
    <message>
        <source>Whole bed</source>
        <translation>Plan entier</translation>
    </message>
    <message>
        <source>String from the stock</source>
        <translation>Cordage du stock</translation>
    </message>
    <message>
        <source>Noted.</source>
        <translation>Noté.</translation>
    </message>
    <message>
        <source>An estimate of what this bed takes.</source>
        <translation>Estimation de ce que prend ce plan.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Taken from the stock</source>
        <translation>Pris dans le stock</translation>
    </message>
    <message>
        <source>Taken: %1</source>
        <translation>Pris&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>StringsCard</name>
    <message>
        <source>Strings</source>
        <translation>Cordes</translation>
    </message>
    <message>
        <source>Mains string</source>
        <translation>Corde des montants</translation>
    </message>
    <message>
        <source>Crosses string</source>
        <translation>Corde des travers</translation>
    </message>
    <message>
        <source>Crosses as the mains</source>
        <translation>Travers comme les montants</translation>
    </message>
</context>
<context>
    <name>TagGuardSheet</name>
    <message>
        <source>The right racket?</source>
        <translation>La bonne raquette&#xa0;?</translation>
    </message>
    <message>
        <source>Scan the tag on the racket, then the tag on its bag or paper.</source>
        <translation>Scannez l’étiquette de la raquette, puis celle du sac ou du papier.</translation>
    </message>
    <message>
        <source>On the racket</source>
        <translation>Sur la raquette</translation>
    </message>
    <message>
        <source>On the bag</source>
        <translation>Sur le sac</translation>
    </message>
    <message>
        <source>Scan it now</source>
        <translation>Scanner maintenant</translation>
    </message>
    <message>
        <source>Then this one</source>
        <translation>Ensuite celle-ci</translation>
    </message>
    <message>
        <source>Wrong racket: stop</source>
        <translation>Mauvaise raquette&#xa0;: stop</translation>
    </message>
    <message>
        <source>Both tags are of %1, but of two rackets: %2 and %3. Look at both before anything goes on.</source>
        <translation>Les deux étiquettes sont de %1, mais de deux raquettes&#xa0;: %2 et %3. Regardez les deux avant de continuer.</translation>
    </message>
    <message>
        <source>The racket is of %1, the bag is of %2. Look at both before anything goes on.</source>
        <translation>La raquette est à %1, le sac à %2. Regardez les deux avant de continuer.</translation>
    </message>
    <message>
        <source>This tag says nothing that is known here. Scan it again, or type its number.</source>
        <translation>Cette étiquette ne dit rien de connu ici. Scannez-la de nouveau ou saisissez son numéro.</translation>
    </message>
    <message>
        <source>Racket and bag belong together</source>
        <translation>La raquette et le sac vont ensemble</translation>
    </message>
    <message>
        <source>Number on the tag</source>
        <translation>Numéro de l’étiquette</translation>
    </message>
    <message>
        <source>For whoever has no scanner; Enter takes it.</source>
        <translation>Pour qui n’a pas de lecteur&#xa0;; Entrée le prend.</translation>
    </message>
    <message>
        <source>Begin again</source>
        <translation>Recommencer</translation>
    </message>
    <message>
        <source>Scan with the camera</source>
        <translation>Scanner avec la caméra</translation>
    </message>
</context>
<context>
    <name>TakeCardModel</name>
    <message>
        <source>Card of %1 taken in</source>
        <translation>Carte de %1 prise</translation>
    </message>
</context>
<context>
    <name>TakeCardSheet</name>
    <message>
        <source>Card of %1</source>
        <translation>Carte de %1</translation>
    </message>
    <message>
        <source>Take a card in</source>
        <translation>Prendre une carte</translation>
    </message>
    <message>
        <source>The picture can&apos;t be read</source>
        <translation>L’image est illisible</translation>
    </message>
    <message>
        <source>No code is to be seen on the picture</source>
        <translation>On ne voit aucun code sur l’image</translation>
    </message>
    <message>
        <source>This is no player card</source>
        <translation>Ce n’est pas une carte de joueur</translation>
    </message>
    <message>
        <source>The card is damaged</source>
        <translation>La carte est abîmée</translation>
    </message>
    <message>
        <source>The card is forged</source>
        <translation>La carte est falsifiée</translation>
    </message>
    <message>
        <source>The card is of a newer version</source>
        <translation>La carte vient d’une version plus récente</translation>
    </message>
    <message>
        <source>Signed by a device that was shut out</source>
        <translation>Signée par un appareil exclu</translation>
    </message>
    <message>
        <source>This player was forgotten here</source>
        <translation>Ce joueur a été oublié ici</translation>
    </message>
    <message>
        <source>The player did not agree to this</source>
        <translation>L’accord manque pour cela</translation>
    </message>
    <message>
        <source>The card is not taken</source>
        <translation>La carte n’est pas prise</translation>
    </message>
    <message>
        <source>Take a picture from nearer by, straight from above and without shine.</source>
        <translation>Prenez une image de plus près, bien d’en haut et sans reflet.</translation>
    </message>
    <message>
        <source>The code says something else. A card begins with WEAVELOG:CARD.</source>
        <translation>Le code dit autre chose. Une carte commence par WEAVELOG:CARD.</translation>
    </message>
    <message>
        <source>Some of its letters are wrong or missing: scan it again.</source>
        <translation>Des lettres sont fausses ou manquent&#xa0;: scannez-la de nouveau.</translation>
    </message>
    <message>
        <source>The device that it names did not sign it. Do not use it: ask the player, and tell the head of the room.</source>
        <translation>L’appareil qu’elle nomme ne l’a pas signée. Ne l’utilisez pas&#xa0;: demandez au joueur et prévenez le responsable de l’atelier.</translation>
    </message>
    <message>
        <source>Update Weavelog on this device.</source>
        <translation>Mettez Weavelog à jour sur cet appareil.</translation>
    </message>
    <message>
        <source>The card is whole. But %1 signed it, which was lost or shut out, on %2. Ask the player, or somebody else for a card.</source>
        <translation>La carte est intacte. Mais %1 l’a signée le %2, un appareil perdu ou exclu. Demandez au joueur, ou une carte à quelqu’un d’autre.</translation>
    </message>
    <message>
        <source>The player withdrew. Who wants to be known again begins anew at the desk, and is asked for consent.</source>
        <translation>L’accord a été retiré. Qui veut être connu de nouveau recommence à l’accueil, et on lui demande son accord.</translation>
    </message>
    <message>
        <source>Withdrawn, or for one room only. Ask the player and record the answer first.</source>
        <translation>Retiré, ou pour un seul atelier. Demandez et notez d’abord la réponse.</translation>
    </message>
    <message>
        <source>With the camera</source>
        <translation>Avec l’appareil photo</translation>
    </message>
    <message>
        <source>Looking ...</source>
        <translation>Recherche ...</translation>
    </message>
    <message>
        <source>From a picture</source>
        <translation>D’une image</translation>
    </message>
    <message>
        <source>Or scan it with a scanner now, or paste its text here.</source>
        <translation>Ou scannez-la maintenant avec un lecteur, ou collez son texte ici.</translation>
    </message>
    <message>
        <source>Text of the card</source>
        <translation>Texte de la carte</translation>
    </message>
    <message>
        <source>Read it</source>
        <translation>La lire</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Prise</translation>
    </message>
    <message>
        <source>Nothing new: all of it is here</source>
        <translation>Rien de nouveau&#xa0;: tout est ici</translation>
    </message>
    <message>
        <source>Signed by %1, on %2</source>
        <translation>Signée par %1 le %2</translation>
    </message>
    <message>
        <source>That is this device.</source>
        <translation>C’est cet appareil.</translation>
    </message>
    <message>
        <source>An event server that this device was paired with.</source>
        <translation>Un serveur de tournoi auquel cet appareil a été jumelé.</translation>
    </message>
    <message>
        <source>A device of this room.</source>
        <translation>Un appareil de cet atelier.</translation>
    </message>
    <message>
        <source>A device whose work is held here.</source>
        <translation>Un appareil dont le travail est gardé ici.</translation>
    </message>
    <message>
        <source>This device does not know it.</source>
        <translation>Cet appareil ne le connaît pas.</translation>
    </message>
    <message>
        <source>Words of its key: %1</source>
        <translation>Mots de sa clé&#xa0;: %1</translation>
    </message>
    <message>
        <source>It was signed by a clock that is ahead of this device&apos;s: what seems newer on it may not be.</source>
        <translation>L’horloge de la signature avance sur celle-ci&#xa0;: ce qui semble plus récent ne l’est peut-être pas.</translation>
    </message>
    <message>
        <source>This very card was taken in before.</source>
        <translation>Cette carte même a déjà été prise.</translation>
    </message>
    <message>
        <source>What is on it</source>
        <translation>Ce qu’elle contient</translation>
    </message>
    <message>
        <source>Newer on the card</source>
        <translation>Plus récent sur la carte</translation>
    </message>
    <message>
        <source>Take these as well: the player says so</source>
        <translation>Prendre aussi ceci&#xa0;: le joueur le dit</translation>
    </message>
    <message>
        <source>Older than what is held here: stays as it is here</source>
        <translation>Plus ancien que ce qui est ici&#xa0;: reste comme ici</translation>
    </message>
    <message>
        <source>Open questions: a person closes them first</source>
        <translation>Questions ouvertes&#xa0;: une personne les règle d’abord</translation>
    </message>
    <message>
        <source>The player is not known here yet: the card begins the book.</source>
        <translation>Pas encore connu ici&#xa0;: la carte commence le livre.</translation>
    </message>
    <message numerus="yes">
        <source>New here: %n field(s)</source>
        <translation>
            <numerusform>Nouveau ici&#xa0;: %n donnée</numerusform>
            <numerusform>Nouveau ici&#xa0;: %n données</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing on it is missing here.</source>
        <translation>Rien n’en manque ici.</translation>
    </message>
    <message>
        <source>Agreed to here: %1</source>
        <translation>Accepté ici&#xa0;: %1</translation>
    </message>
    <message>
        <source>A card carries no consent. Ask the player where this may go, and record the answer.</source>
        <translation>Une carte ne porte pas d’accord. Demandez où cela peut aller, et notez la réponse.</translation>
    </message>
    <message>
        <source>A stranger signed it</source>
        <translation>Un inconnu l’a signée</translation>
    </message>
    <message>
        <source>The signature holds, but no signature says that a stranger is honest. Read it to the player first.</source>
        <translation>La signature est bonne, mais aucune ne dit qu’un inconnu est honnête. Lisez-la d’abord au joueur.</translation>
    </message>
    <message>
        <source>The player says that it is right</source>
        <translation>Le joueur dit que c’est juste</translation>
    </message>
    <message>
        <source>Ask the player before stringing by a card; the makers’ instructions for frame and string come first.</source>
        <translation>Demandez au joueur avant de corder d’après une carte&#xa0;; les consignes des fabricants du cadre et du cordage passent d’abord.</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>La prendre</translation>
    </message>
    <message>
        <source>To the player</source>
        <translation>Vers le joueur</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.PNG *.JPG *.JPEG)</source>
        <translation>Images (*.png *.jpg *.jpeg *.PNG *.JPG *.JPEG)</translation>
    </message>
</context>
<context>
    <name>TeamModel</name>
    <message>
        <source>Somebody who is not on the team any more</source>
        <translation>Quelqu’un qui n’est plus dans l’équipe</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>Give a time such as 8:30.</source>
        <translation>Indiquer une heure, par exemple 8:30.</translation>
    </message>
</context>
<context>
    <name>TeamPage</name>
    <message>
        <source>Team</source>
        <translation>Équipe</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Machines</translation>
    </message>
    <message>
        <source>Numbers</source>
        <translation>Chiffres</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Ce qui est montré</translation>
    </message>
    <message>
        <source>Pair with an event server under Exchange; its team and machines come here by themselves.</source>
        <translation>Associez un serveur de tournoi sous Échange&#xa0;; son équipe et ses machines arrivent d’elles-mêmes.</translation>
    </message>
    <message>
        <source>Lists</source>
        <translation>Listes</translation>
    </message>
    <message>
        <source>Evenness</source>
        <translation>Régularité</translation>
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
        <translation>Accueil</translation>
    </message>
    <message>
        <source>Stringer</source>
        <translation>Cordage</translation>
    </message>
    <message>
        <source>Reader</source>
        <translation>Lecture seule</translation>
    </message>
    <message>
        <source>%1 rests only %2 before %3</source>
        <translation>%1 ne se repose que %2 avant %3</translation>
    </message>
    <message>
        <source>%1 works %2 on %3</source>
        <translation>%1 travaille %2 le %3</translation>
    </message>
    <message>
        <source>Eleven hours between two days are usual; local law and contracts say what holds.</source>
        <translation>Onze heures entre deux jours sont d’usage&#xa0;; la loi locale et les contrats décident.</translation>
    </message>
    <message>
        <source>Tired hands make uneven beds. Local law and contracts say how long a day may be.</source>
        <translation>Des mains fatiguées cordent de façon inégale. La loi locale et les contrats disent la durée d’une journée.</translation>
    </message>
    <message>
        <source>Team</source>
        <translation>Équipe</translation>
    </message>
    <message>
        <source>here until %1</source>
        <translation>là jusqu’à %1</translation>
    </message>
    <message>
        <source>Add somebody</source>
        <translation>Ajouter quelqu’un</translation>
    </message>
    <message>
        <source>Shifts from today on</source>
        <translation>Services à partir d’aujourd’hui</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <translation>%1, de %2 à %3</translation>
    </message>
    <message>
        <source>Take the shift of %1 off the plan</source>
        <translation>Retirer le service de %1</translation>
    </message>
    <message>
        <source>Shift taken off the plan</source>
        <translation>Service retiré</translation>
    </message>
    <message>
        <source>No shift is planned.</source>
        <translation>Aucun service prévu.</translation>
    </message>
    <message>
        <source>Plan a shift</source>
        <translation>Prévoir un service</translation>
    </message>
</context>
<context>
    <name>TensionCard</name>
    <message>
        <source>Tension</source>
        <translation>Tension</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Montants</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Travers</translation>
    </message>
    <message>
        <source>Spread over the rackets, from the first one</source>
        <translation>Répartir sur les raquettes, à partir de la première</translation>
    </message>
    <message>
        <source>Each %1</source>
        <translation>Chacune %1</translation>
    </message>
    <message>
        <source>Each racket %1 above the one before</source>
        <translation>Chaque raquette %1 par rapport à la précédente</translation>
    </message>
    <message>
        <source>Two and two %1</source>
        <translation>Deux par deux %1</translation>
    </message>
    <message>
        <source>Two rackets alike, the next two %1 above them</source>
        <translation>Deux raquettes pareilles, les deux suivantes %1</translation>
    </message>
    <message>
        <source>All as the first</source>
        <translation>Toutes comme la première</translation>
    </message>
    <message>
        <source>Racket %1: %2 / %3</source>
        <translation>Raquette %1&#xa0;: %2 / %3</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>night</source>
        <translation>soir</translation>
    </message>
    <message>
        <source>new balls</source>
        <translation>balles neuves</translation>
    </message>
    <message>
        <source>Racket %1 is kept as: %2</source>
        <translation>Raquette %1 gardée comme&#xa0;: %2</translation>
    </message>
    <message>
        <source>Keep racket %1 as: %2</source>
        <translation>Garder la raquette %1 comme&#xa0;: %2</translation>
    </message>
    <message>
        <source>other …</source>
        <translation>autre …</translation>
    </message>
    <message>
        <source>Another name for racket %1</source>
        <translation>Un autre nom pour la raquette %1</translation>
    </message>
    <message>
        <source>Name of the setup, as the player says it</source>
        <translation>Nom du réglage, comme la joueuse ou le joueur le dit</translation>
    </message>
    <message>
        <source>Empty: as it was before</source>
        <translation>Vide&#xa0;: comme avant</translation>
    </message>
</context>
<context>
    <name>TensionPart</name>
    <message>
        <source>%1 by %2 %3</source>
        <translation>%1 de %2 %3</translation>
    </message>
    <message>
        <source>Said in</source>
        <translation>Dite en</translation>
    </message>
</context>
<context>
    <name>TimeStepper</name>
    <message>
        <source>A quarter of an hour sooner</source>
        <translation>Un quart d’heure plus tôt</translation>
    </message>
    <message>
        <source>No time</source>
        <translation>Sans heure</translation>
    </message>
    <message>
        <source>A quarter of an hour later</source>
        <translation>Un quart d’heure plus tard</translation>
    </message>
</context>
<context>
    <name>ToneModel</name>
    <message>
        <source>The microphone was taken away, or another program holds it. Choose a recording instead (WAV).</source>
        <translation>Le microphone a été retiré, ou un autre programme l’occupe. Choisissez plutôt un enregistrement (WAV).</translation>
    </message>
    <message>
        <source>The microphone delivers nothing. Look whether it is on, or choose a recording instead (WAV).</source>
        <translation>Le microphone ne donne rien. Regardez s’il est allumé, ou choisissez plutôt un enregistrement (WAV).</translation>
    </message>
    <message>
        <source>This device has no microphone. Choose a recording instead (WAV).</source>
        <translation>Cet appareil n’a pas de microphone. Choisissez plutôt un enregistrement (WAV).</translation>
    </message>
    <message>
        <source>The microphone can’t be used: another program may hold it. Choose a recording instead (WAV).</source>
        <translation>Le microphone ne peut pas servir&#xa0;: un autre programme l’occupe peut-être. Choisissez plutôt un enregistrement (WAV).</translation>
    </message>
    <message>
        <source>It can’t listen</source>
        <translation>Écoute impossible</translation>
    </message>
    <message>
        <source>The tone is not known</source>
        <translation>Le son n’est pas connu</translation>
    </message>
    <message>
        <source>Nothing was heard. Look whether the microphone is on, and tap the bed close to it.</source>
        <translation>Rien n’a été entendu. Regardez si le microphone est allumé, et tapez le tamis tout près.</translation>
    </message>
    <message>
        <source>It was too loud for the microphone. Tap more softly, or hold the racket further off.</source>
        <translation>C’était trop fort pour le microphone. Tapez plus doucement, ou éloignez la raquette.</translation>
    </message>
    <message>
        <source>That was too short. Let it listen until you have tapped three times.</source>
        <translation>C’était trop court. Laissez écouter jusqu’à trois coups.</translation>
    </message>
    <message>
        <source>Tone: %1 Hz</source>
        <translation>Son&#xa0;: %1 Hz</translation>
    </message>
    <message numerus="yes">
        <source>Estimate of %n tap(s), nine times of ten %1 to %2 Hz; %3 % sure that it is the bed’s own tone to half a per cent.</source>
        <translation>
            <numerusform>Estimation de %n coup, neuf fois sur dix de %1 à %2 Hz&#xa0;; sûr à %3 % que c’est le son propre à un demi pour cent près.</numerusform>
            <numerusform>Estimation de %n coups, neuf fois sur dix de %1 à %2 Hz&#xa0;; sûr à %3 % que c’est le son propre à un demi pour cent près.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TonePart</name>
    <message>
        <source>too loud: tap more softly</source>
        <translation>trop fort&#xa0;: tapez plus doucement</translation>
    </message>
    <message>
        <source>loud enough</source>
        <translation>assez fort</translation>
    </message>
    <message>
        <source>silent</source>
        <translation>silence</translation>
    </message>
    <message>
        <source>What a tone says</source>
        <translation>Ce que dit un son</translation>
    </message>
    <message>
        <source>Hold the racket at its handle close to the microphone, tap the middle of the bed three times (five where it is loud) with something light, and move the racket a little in between.</source>
        <translation>Tenez la raquette par le manche près du microphone, tapez trois fois (cinq là où c’est bruyant) au milieu du tamis avec un objet léger et déplacez un peu la raquette entre les coups.</translation>
    </message>
    <message>
        <source>That is enough</source>
        <translation>Cela suffit</translation>
    </message>
    <message>
        <source>Listen</source>
        <translation>Écouter</translation>
    </message>
    <message>
        <source>From a recording (WAV)</source>
        <translation>D’un enregistrement (WAV)</translation>
    </message>
    <message>
        <source>Level: %1</source>
        <translation>Niveau&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n second(s) left</source>
        <translation>
            <numerusform>encore %n seconde</numerusform>
            <numerusform>encore %n secondes</numerusform>
        </translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Calcul en cours …</translation>
    </message>
    <message>
        <source>Tone of the string bed, now</source>
        <translation>Son du plan de cordage, maintenant</translation>
    </message>
    <message>
        <source>Estimate from the tone</source>
        <translation>Estimation d’après le son</translation>
    </message>
    <message>
        <source>Keep this tone as a reading</source>
        <translation>Garder ce son comme mesure</translation>
    </message>
    <message>
        <source>listened to</source>
        <translation>écouté</translation>
    </message>
    <message>
        <source>Measured: %1 Hz</source>
        <translation>Mesuré&#xa0;: %1 Hz</translation>
    </message>
    <message>
        <source>Recording (*.wav)</source>
        <translation>Enregistrement (*.wav)</translation>
    </message>
</context>
<context>
    <name>TurnedScreen</name>
    <message>
        <source>Turn</source>
        <translation>Tourner</translation>
    </message>
</context>
<context>
    <name>UnchargedCard</name>
    <message>
        <source>Not charged yet</source>
        <translation>Pas encore facturé</translation>
    </message>
    <message>
        <source>a price is missing</source>
        <translation>il manque un prix</translation>
    </message>
    <message>
        <source>The price list has no price for:</source>
        <translation>Le tarif n’a pas de prix pour&#xa0;:</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Tarif</translation>
    </message>
    <message numerus="yes">
        <source>Charge %n racket(s): %1</source>
        <translation>
            <numerusform>Facturer %n raquette&#xa0;: %1</numerusform>
            <numerusform>Facturer %n raquettes&#xa0;: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose a racket</source>
        <translation>Choisissez une raquette</translation>
    </message>
    <message>
        <source>Charged: %1</source>
        <translation>Facturé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>UndoToast</name>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>UnfinishedRow</name>
    <message>
        <source>Unfinished drop-off: %1</source>
        <translation>Dépôt inachevé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Unfinished drop-off of a new player</source>
        <translation>Dépôt inachevé d’un nouveau joueur</translation>
    </message>
    <message>
        <source>Rackets: %1, begun %2</source>
        <translation>Raquettes&#xa0;: %1, commencé %2</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Le garder</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Jeter</translation>
    </message>
    <message>
        <source>Throw away the drop-off of %1?</source>
        <translation>Jeter le dépôt de %1&#xa0;?</translation>
    </message>
    <message>
        <source>Throw away the drop-off of a new player?</source>
        <translation>Jeter le dépôt d’un nouveau joueur&#xa0;?</translation>
    </message>
</context>
<context>
    <name>WishField</name>
    <message>
        <source>Choose one of the answers above first</source>
        <translation>Choisissez d’abord une des réponses ci-dessus</translation>
    </message>
    <message>
        <source>The rackets differ: %1</source>
        <translation>Les raquettes diffèrent&#xa0;: %1</translation>
    </message>
</context>
</TS>
