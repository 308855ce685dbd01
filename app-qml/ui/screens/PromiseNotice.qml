import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What the room can promise, whether the time that was said can be kept, and whose promises it would cost; and why nothing can be reckoned.
ColumnLayout {
    id: part

    required property PromiseAnswer promise
    readonly property bool known: promise.earliest.length > 0 || promise.answered

    spacing: Theme.tight
    visible: known || promise.fault.length > 0

    Notice {
        objectName: "promise"
        Layout.fillWidth: true
        visible: part.known
        kind: !part.promise.answered ? Notice.Info : part.promise.canBeKept ? Notice.Agreed : Notice.Attention
        title: !part.promise.answered ? qsTr("The room can promise %1").arg(part.promise.earliest)
             : part.promise.canBeKept ? qsTr("This time can be kept")
             : part.promise.earliest.length > 0 ? qsTr("This time can’t be kept with certainty. The room can promise %1").arg(part.promise.earliest)
             : qsTr("This time can’t be kept, and no shift has room")
        text: !part.promise.answered ? qsTr("Estimate: %1 of such promises are kept, by the queue, the shifts and how long rackets took so far.").arg(part.promise.confidence)
            : part.promise.canBeKept ? qsTr("Estimate: %1.").arg(part.promise.chance)
            : (part.promise.impossible ? qsTr("Not even before all that waits.") : qsTr("In its turn: %1.").arg(part.promise.chance))
              + (part.promise.mustMove.length > 0 ? "\n" + qsTr("For it would have to give way:") + "\n" + Array.from(part.promise.mustMove).join("\n") : "")
        actionText: part.promise.earliest.length > 0 && (!part.promise.answered || !part.promise.canBeKept) ? qsTr("Take %1").arg(part.promise.earliest) : ""
        onActed: part.promise.takeEarliest()
    }
    IconLine {
        objectName: "promiseApart"
        Layout.fillWidth: true
        visible: part.known && ExchangeModel.host.length > 0 && ExchangeModel.state === ExchangeModel.Trying
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
        text: part.promise.fault.length > 0 ? qsTr("No time can be reckoned: %1").arg(part.promise.fault) : ""
    }
}
