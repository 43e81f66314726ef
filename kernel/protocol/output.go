package protocol

import (
	"context"

	"swanneck/kernel/display"
	"swanneck/kernel/engine"
)

// displayID is the key of a bundle under which it says how it is called, so that it can be updated.
const displayID = "swanneck/display_id"

// output publishes what a cell says. Its methods are called by the goroutine of the shell.
type output struct {
	k       *Kernel
	ctx     context.Context
	request *Message
	silent  bool
	stdin   bool // the front end takes questions
	count   int
	value   string // the text of the cell's value, for the history
}

var _ engine.Output = (*output)(nil)

func (o *output) say(msgType string, content any) {
	if !o.silent {
		o.k.publish(msgType, o.request, content, true)
	}
}

// Stream publishes text of a stream.
func (o *output) Stream(name, text string) {
	o.say("stream", map[string]any{"name": name, "text": text})
}

// Display publishes something to show.
func (o *output) Display(b display.Bundle) { o.say("display_data", shown(b)) }

// Value publishes the value of the last expression.
func (o *output) Value(b display.Bundle) {
	o.value, _ = b[display.Plain].(string)
	content := shown(b)
	content["execution_count"] = o.count
	o.say("execute_result", content)
}

// Update replaces what was shown under a name.
func (o *output) Update(id string, b display.Bundle) {
	content := shown(b)
	content["transient"] = map[string]any{"display_id": id}
	o.say("update_display_data", content)
}

// Clear clears what the cell has shown; wait says that it stays until the next thing is shown.
func (o *output) Clear(wait bool) { o.say("clear_output", map[string]any{"wait": wait}) }

// Ask asks the person at the front end.
func (o *output) Ask(prompt string, secret bool) (string, error) {
	return o.k.ask(o.ctx, o.request, o.stdin, prompt, secret)
}

// shown makes the content of a message from a bundle.
func shown(b display.Bundle) map[string]any {
	transient := map[string]any{}
	if id, ok := b[displayID].(string); ok && id != "" {
		transient["display_id"] = id
	}
	return map[string]any{"data": data(b), "metadata": map[string]any{}, "transient": transient}
}

// data returns a bundle without what is not a MIME type.
func data(b display.Bundle) map[string]any {
	out := make(map[string]any, len(b))
	for k, v := range b {
		if k != displayID {
			out[k] = v
		}
	}
	return out
}
