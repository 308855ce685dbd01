pragma ComponentBehavior: Bound
import QtQuick
import Weavelog.Parts
import Weavelog.Theme

// The time of one bench from left to right: rackets as long as they take, hatched where nobody is there.
Item {
    id: line

    property var bench: null    // as DayModel.benches has it
    property real perMinute: 3     // pixels a minute
    signal opened(var job)

    Repeater {
        model: line.bench?.closed ?? []
        Rectangle {
            required property var modelData
            x: modelData.from * line.perMinute
            width: (modelData.until - modelData.from) * line.perMinute
            height: line.height
            color: Theme.colour.disabledGround
            Accessible.ignored: true
        }
    }
    Repeater {
        model: line.bench?.jobs ?? []
        TouchButton {
            id: job
            required property var modelData
            readonly property bool late: modelData.late > 0
            objectName: "dayJob" + modelData.tag
            x: modelData.from * line.perMinute + 1
            y: 4
            width: Math.max(28, (modelData.until - modelData.from) * line.perMinute - 2)
            height: line.height - 8
            padding: 0
            ringInside: true
            text: modelData.whole
            Accessible.name: [modelData.whole, modelData.times, job.late ? qsTr("%1 min late").arg(modelData.late) : "", modelData.onCourt ? qsTr("on court") : "",
                              modelData.inWork ? qsTr("on the machine now") : "", modelData.changed ? qsTr("not as told") : ""].filter(one => one.length > 0).join(", ")
            background: Rectangle {
                radius: Theme.radius
                color: job.late ? Theme.colour.dangerGround : job.modelData.inWork ? Theme.colour.agreedGround : job.down ? Theme.colour.chosenGround : Theme.colour.raised
                border.width: job.late || job.modelData.changed ? 2 : 1
                border.color: job.late ? Theme.colour.danger : job.modelData.changed ? Theme.colour.attention : Theme.colour.controlLine
            }
            contentItem: Column {
                leftPadding: 6
                topPadding: 4
                Words {
                    width: job.width - 10
                    meaning: Words.Strong
                    maximumLineCount: 1
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                    text: job.modelData.tag.length > 0 ? job.modelData.tag + (job.modelData.onCourt ? " " + qsTr("court") : "") : job.modelData.name
                    Accessible.ignored: true
                }
                Words {
                    width: job.width - 10
                    meaning: Words.Caption
                    maximumLineCount: 1
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                    text: job.late ? qsTr("late %1′").arg(job.modelData.late) : job.modelData.tag.length > 0 ? job.modelData.name : ""
                    Accessible.ignored: true
                }
            }
            onClicked: line.opened(modelData)
        }
    }
}
