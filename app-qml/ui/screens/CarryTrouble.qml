import QtQuick
import Weavelog.Parts

// What went wrong with a file or with hosting, and what to do: {title, text, detail}; nothing is shown for an empty one.
Notice {
    property var trouble: ({})

    visible: title.length > 0
    kind: Notice.Danger
    title: trouble.title ?? ""
    text: [trouble.text ?? "", trouble.detail ?? ""].filter(one => one.length > 0).join("\n")
}
