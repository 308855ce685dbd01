pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

// Where a player's setups may go: what is kept, and each answer in the very words that are stored.
ColumnLayout {
    id: question

    // As consentWords() says them, in the player's language.
    required property var words
    property int choice: 0
    property int wordSize: Theme.type.title
    signal answered(int choice)

    spacing: Theme.gap

    Words {
        Layout.fillWidth: true
        meaning: Words.Strong
        font.pixelSize: question.wordSize
        text: question.words["title"] ?? ""
    }
    Words {
        objectName: "consentAbout"
        Layout.fillWidth: true
        text: question.words["about"] ?? ""
    }
    Repeater {
        model: question.words["choices"] ?? []

        AnswerChoice {
            id: answer
            required property var modelData
            objectName: "consent" + answer.modelData.value
            Layout.fillWidth: true
            font.pixelSize: question.wordSize
            text: answer.modelData.text
            on: question.choice === answer.modelData.value
            onClicked: question.answered(answer.modelData.value)
        }
    }
}
