// A part that is drawn anew only when one of its properties is another one: in a list of hundreds, a change to one of them then costs what
// one of them costs.
import { Component, type ComponentChild, type ComponentClass, type FunctionComponent } from 'preact';

export function steady<Props extends object>(Drawn: FunctionComponent<Props>): ComponentClass<Props> {
  return class Steady extends Component<Props> {
    override shouldComponentUpdate(next: Props): boolean {
      const now: Props = this.props;
      return (Object.keys({ ...now, ...next }) as (keyof Props)[]).some((name) => now[name] !== next[name]);
    }

    override render(): ComponentChild {
      return <Drawn {...this.props} />;
    }
  };
}
