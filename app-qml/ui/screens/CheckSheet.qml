pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The check of one strung racket, item by item; what is not in order goes back with a reason.
Sheet {
    id: sheet

    readonly property var items: CheckModel.items
    readonly property string looked: opened ? CheckModel.job : ""

    onLookedChanged: QualityModel.look("check", looked)

    title: qsTr("Check: %1").arg(CheckModel.player)
    hasChanges: CheckModel.begun
    onDiscarded: CheckModel.startAgain()
    footShown: CheckModel.open
    foot: [
        ActionButton {
            objectName: "rest"
            Layout.fillWidth: true
            visible: CheckModel.open && CheckModel.unseen > 0
            kind: ActionButton.Secondary
            iconName: "check"
            text: CheckModel.unseen < sheet.items.length ? qsTr("The rest is in order") : qsTr("All is in order")
            onClicked: CheckModel.restIsRight()
        },
        ActionButton {
            objectName: "storeCheck"
            Layout.fillWidth: true
            visible: CheckModel.open
            enabled: CheckModel.complete
            kind: CheckModel.wrong > 0 ? ActionButton.Danger : ActionButton.Primary
            iconName: CheckModel.wrong > 0 ? "turn" : "check"
            text: CheckModel.wrong > 0 ? qsTr("Back to: %1").arg(StageWords.title(CheckModel.backTo))
                : CheckModel.unseen > 0 ? qsTr("%n item(s) to look at", "", CheckModel.unseen) : qsTr("Checked")
            onClicked: {
                const what = CheckModel.wrong > 0 ? StageWords.title(CheckModel.backTo) : StageWords.title(7);
                if (CheckModel.store(CheckModel.tag.length > 0 ? qsTr("Tag %1: %2").arg(CheckModel.tag).arg(what) : what)) sheet.close();
            }
        }
    ]

    RowLayout {
        Layout.fillWidth: true
        spacing: Theme.gap
        Words {
            visible: CheckModel.tag.length > 0
            meaning: Words.Figure
            text: CheckModel.tag
            wrapMode: Text.NoWrap
            Accessible.name: qsTr("Tag %1").arg(text)
        }
        Words {
            Layout.fillWidth: true
            text: CheckModel.racket.length > 0 ? qsTr("Racket %1").arg(CheckModel.racket) : ""
        }
        StageMark { stage: CheckModel.stage }
    }
    JobBrief {
        objectName: "brief"
        Layout.fillWidth: true
        brief: CheckModel.brief
    }
    Notice {
        Layout.fillWidth: true
        visible: !CheckModel.open
        kind: Notice.Attention
        text: qsTr("A racket is checked once it is strung and before it is collected.")
    }
    Notice {
        Layout.fillWidth: true
        visible: CheckModel.redos > 0
        kind: Notice.Attention
        title: qsTr("Done again: %n time(s)", "", CheckModel.redos)
        text: CheckModel.history[0]?.text ?? ""
    }
    OffNotice { Layout.fillWidth: true; who: "check" }
    Repeater {
        // The rows stay while they are answered.
        model: CheckModel.open ? sheet.items.length : 0

        CheckRow {
            id: item
            required property int index
            objectName: "item" + item.index
            Layout.fillWidth: true
            text: sheet.items[item.index]?.text ?? ""
            found: sheet.items[item.index]?.found ?? CheckModel.Unseen
            onSaid: found => CheckModel.find(item.index, found)
        }
    }
    PickList {
        objectName: "backTo"
        Layout.fillWidth: true
        visible: CheckModel.wrong > 0
        label: qsTr("The racket goes back to")
        value: CheckModel.backTo
        options: Array.from(CheckModel.waysBack).map(stage => ({ value: stage, text: StageWords.title(stage) }))
        onPicked: value => CheckModel.backTo = value
    }
    TextEntry {
        objectName: "redoReason"
        Layout.fillWidth: true
        visible: CheckModel.wrong > 0
        label: qsTr("Why it is done again")
        hint: qsTr("Whoever strings it again reads this at the bench.")
        text: CheckModel.reason
        onEdited: text => CheckModel.reason = text
    }
    Words {
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        visible: CheckModel.history.length > 0
        meaning: Words.Title
        text: qsTr("Earlier checks")
    }
    Repeater {
        model: CheckModel.history
        RowLayout {
            id: done
            required property var modelData
            spacing: Theme.gap
            Icon {
                Layout.alignment: Qt.AlignTop
                name: done.modelData.passed ? "ready" : "turn"
                colour: done.modelData.passed ? Theme.colour.agreed : Theme.colour.attention
            }
            Words {
                Layout.fillWidth: true
                text: Listing.commas([done.modelData.text].concat(done.modelData.detail))
            }
        }
    }
}
