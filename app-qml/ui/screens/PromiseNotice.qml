import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What the room can promise, whether the time that was said can be kept, and whose promises it would cost; and why nothing can be reckoned.
// The answer comes while fingers are at the time: it stands below what is tapped, and keeps the room that it once took.
Item {
    id: place

    required property PromiseAnswer promise
    readonly property bool known: promise.earliest.length > 0 || promise.answered
    property real held: 0

    implicitHeight: Math.max(held, part.implicitHeight)
    visible: known || promise.fault.length > 0 || held > 0
    onWidthChanged: held = 0

    // Not what stands there for a moment while the lines are broken anew.
    Timer {
        id: settling
        interval: 150
        onTriggered: place.held = Math.max(place.held, part.implicitHeight)
    }
    ColumnLayout {
        id: part
        width: parent.width
        spacing: Theme.tight
        onImplicitHeightChanged: settling.restart()

        Notice {
            objectName: "promise"
            Layout.fillWidth: true
            visible: place.known
            kind: !place.promise.answered ? Notice.Info : place.promise.canBeKept ? Notice.Agreed : Notice.Attention
            title: !place.promise.answered ? qsTr("The room can promise %1").arg(place.promise.earliest)
                 : place.promise.canBeKept ? qsTr("This time can be kept")
                 : place.promise.earliest.length > 0 ? qsTr("This time can’t be kept with certainty. The room can promise %1").arg(place.promise.earliest)
                 : qsTr("This time can’t be kept, and no shift has room")
            text: !place.promise.answered ? qsTr("Estimate: %1 of such promises are kept, by the queue, the shifts and how long rackets took so far.").arg(place.promise.confidence)
                : place.promise.canBeKept ? qsTr("Estimate: %1.").arg(place.promise.chance)
                : (place.promise.impossible ? qsTr("Not even before all that waits.") : qsTr("In its turn: %1.").arg(place.promise.chance))
                  + (place.promise.mustMove.length > 0 ? "\n" + qsTr("For it would have to give way:") + "\n" + Array.from(place.promise.mustMove).join("\n") : "")
            actionText: place.promise.earliest.length > 0 && (!place.promise.answered || !place.promise.canBeKept) ? qsTr("Take %1").arg(place.promise.earliest) : ""
            onActed: place.promise.takeEarliest()
        }
        IconLine {
            objectName: "promiseApart"
            Layout.fillWidth: true
            visible: place.known && ExchangeModel.host.length > 0 && ExchangeModel.state === ExchangeModel.Trying
            iconName: "warning"
            colour: Theme.colour.attention
            text: qsTr("Not connected to %1: the benches there hear of these rackets later. Better agree on a time when they do.").arg(ExchangeModel.host)
        }
        Words {
            objectName: "promiseFault"
            Layout.fillWidth: true
            visible: text.length > 0
            meaning: Words.Caption
            quiet: true
            text: place.promise.fault.length > 0 ? qsTr("No time can be reckoned: %1").arg(place.promise.fault) : ""
        }
    }
}
