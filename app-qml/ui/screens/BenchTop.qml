import QtQuick
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Always in sight over the bench: whose racket lies there, its tag, and its tensions once the large figures are scrolled away; where it
// went, if it went, with the tap that brings the next one.
Rectangle {
    id: top

    property bool narrow: false
    property int margin: Theme.page
    property bool figuresInSight: true
    readonly property var away: BenchModel.away
    readonly property bool gone: away.how !== undefined
    readonly property string racketWords: Listing.dotted([
        BenchModel.racket.length > 0 ? qsTr("Racket %1").arg(BenchModel.racket) : "", top.narrow ? "" : BenchModel.racketModel])
    readonly property string dueWords: BenchModel.readyBy.length === 0 ? ""
        : BenchModel.due === 3 ? qsTr("Late: %1").arg(BenchModel.readyBy) : qsTr("By %1").arg(BenchModel.readyBy)

    function awayWords() {
        const it = top.away;
        const what = it.tag ? qsTr("Tag %1").arg(it.tag) : it.player ? it.player : qsTr("The racket");
        switch (it.how) {
        case BenchModel.Taken:
            return it.by.length > 0 ? qsTr("%1 was taken on by %2 at another bench").arg(what).arg(it.by)
                                    : qsTr("%1 was taken on at another bench").arg(what);
        case BenchModel.TwoTook:
            return qsTr("%1 was taken on at two benches while apart. Look where it is; its stage is settled in the room.").arg(what);
        case BenchModel.MovedOn: return qsTr("%1: %2").arg(what).arg(Listing.commas([StageWords.title(it.stage), it.by]));
        case BenchModel.Waits: return qsTr("%1 waits for its player’s answer").arg(what);
        case BenchModel.PutAside: return qsTr("%1 was put aside").arg(what);
        case BenchModel.Collected: return qsTr("%1 was collected").arg(what);
        case BenchModel.TakenBack: return qsTr("The drop-off of %1 was taken back").arg(what);
        case BenchModel.Forgotten: return qsTr("%1: the player withdrew, and the book was erased. Ask at the desk.").arg(what);
        default: return "";
        }
    }

    implicitHeight: column.implicitHeight + 2 * Theme.gap
    color: Theme.colour.raised

    Column {
        id: column
        x: top.margin
        y: Theme.gap
        width: top.width - 2 * top.margin
        spacing: Theme.gap

        Row {
            id: line
            visible: BenchModel.hasJob
            width: parent.width
            spacing: Theme.room

            Row {
                id: tag
                visible: BenchModel.tag.length > 0
                spacing: Theme.tight
                Icon { anchors.verticalCenter: parent.verticalCenter; name: "tag"; size: 28 }
                Words {
                    objectName: "tagInSight"
                    meaning: Words.Figure
                    text: BenchModel.tag
                    wrapMode: Text.NoWrap
                    Accessible.name: qsTr("Tag %1").arg(text)
                }
            }
            Column {
                width: line.width - (tag.visible ? tag.width + line.spacing : 0) - (beside.visible ? beside.width + line.spacing : 0)
                       - (pull.visible ? pull.width + line.spacing : 0)
                spacing: 0
                Words {
                    objectName: "nameInSight"
                    width: parent.width
                    meaning: Words.Heading
                    font.pixelSize: top.narrow ? Theme.type.title : Theme.type.heading
                    text: BenchModel.player
                }
                Words {
                    width: parent.width
                    // On a phone the tensions take its place, so that nothing moves.
                    readonly property bool tensions: top.narrow && !top.figuresInSight
                    quiet: !tensions
                    meaning: tensions ? Words.Strong : Words.Body
                    visible: text.length > 0
                    text: tensions ? BenchModel.tension : top.narrow ? Listing.dotted([top.racketWords, top.dueWords]) : top.racketWords
                }
            }
            Words {
                id: pull
                objectName: "tensionInSight"
                visible: !top.narrow && !top.figuresInSight
                meaning: Words.Heading
                text: BenchModel.tension
                wrapMode: Text.NoWrap
            }
            BenchHead {
                id: beside
                visible: !top.narrow
            }
        }
        Notice {
            objectName: "away"
            width: parent.width
            visible: top.gone
            kind: Notice.Attention
            title: top.gone ? top.awayWords() : ""
            actionText: qsTr("Next racket")
            onActed: BenchModel.next()
        }
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1
        color: Theme.colour.line
    }
}
