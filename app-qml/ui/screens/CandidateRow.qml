import QtQuick
import Weavelog.Parts

// Somebody whom it may be, with what was last, what speaks for it and against.
AnswerRow {
    id: row

    required property var candidate  // as candidateShown() gives it
    property string heading          // instead of the name
    property string about            // what choosing it means
    property bool compared: false    // name, country and last time are told in `more`
    property bool sure: false        // who it is needs no reasons, only what speaks against it

    readonly property string inShort: compared ? "" : Listing.dotted([candidate.detail, candidate.last])

    text: heading.length > 0 ? heading : candidate.name
    detail: heading.length > 0 ? "" : Listing.said([inShort, about,
        candidate.like.length > 0 && !sure && !compared ? qsTr("Alike: %1").arg(candidate.like) : "",
        candidate.unlike.length > 0 ? qsTr("Differs: %1").arg(candidate.unlike) : "",
        candidate.othersAlike && !sure ? qsTr("Others are alike: a relative, or somebody of the same name") : ""]).join("\n")
}
