pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What is open on the frame of the racket that lies here, for whoever strings it.
ColumnLayout {
    id: notes

    required property string book
    required property string job
    property var findings: []

    function look() {
        const now = job.length > 0 ? InspectionModel.findingsOn(book, job) : [];
        if (JSON.stringify(now) !== JSON.stringify(findings)) findings = now;
    }

    visible: findings.length > 0
    spacing: Theme.gap
    onJobChanged: look()
    Component.onCompleted: look()

    Connections {
        target: InspectionModel
        function onChanged() { notes.look(); }
    }
    Repeater {
        model: notes.findings
        Notice {
            required property var modelData
            objectName: "frameNote"
            Layout.fillWidth: true
            kind: Notice.Attention
            title: qsTr("Frame: %1").arg(modelData.text)
            text: modelData.detail
        }
    }
}
