import QtQuick
import Weavelog.Parts
import Weavelog.View

// Whether the racket that `who` looks at (QualityModel.look) reads as it should: said once something was read of it.
Notice {
    property string who
    readonly property var verdict: QualityModel.verdicts[who] ?? { off: false, told: false, text: "" }

    objectName: "offNotice"
    visible: verdict.text.length > 0
    kind: verdict.off ? Notice.Attention : verdict.told ? Notice.Agreed : Notice.Info
    title: verdict.off ? qsTr("This racket is off") : verdict.told ? qsTr("This racket is even") : ""
    text: verdict.text
}
