// What people say to each other beside a camera, in English: none of it is meant for the panel.
export const TALK: readonly string[] = `
What are you doing tonight?
Is anybody at the door?
It is getting late, I have to go home.
The train was late again.
See you later.
I'll be right back.
Give me a second.
All right then.
That's all right with me.
You're absolutely right.
Turn left at the lights and then go straight.
There's nothing left in the fridge.
He's left the building.
Can you hold the ladder for a moment?
Hold on, my phone is ringing.
Hold this for me, will you?
Nothing much, how about you?
There's nothing on television.
Nothing ever happens around here.
It doesn't matter.
My back hurts.
Come back when you are done.
Back in five minutes.
I need a coffee break.
Let's have lunch at the place next door.
Next week I'm on holiday.
Who's next?
The next bus leaves at ten past.
Same to you.
It's the same every year.
We met at the same time last week.
Could you help me carry this table?
That doesn't help.
I can't help it.
Have you finished your homework?
When we are finished we'll go out.
The finish on that table is lovely.
The meeting was shifted to Monday.
She works the night shift.
They accept cards here.
I accept your apology.
Please accept my thanks.
Don't skip breakfast.
He skipped school today.
The kids are skipping outside.
Let's pause the film and order pizza.
There was a long pause before she answered.
Will you repeat that joke for my brother?
I've got a job interview, so I need a resume.
That's a solid plan.
The ground is solid rock.
The flight was delayed by an hour.
The candle flickers in the wind.
He has a balanced diet.
Set the table, please.
What a lovely sunset.
A set of spare keys.
The sun sets at nine.
It's minus five outside.
Two plus two is four.
That costs twenty pounds plus postage.
Twelve people are coming.
Eighty-five percent.
Three of them, I think.
Zero chance.
Where did I put the lens cap?
Have you seen my tripod?
Turn the camera round.
The batteries are nearly empty.
Mind the cable.
Close the window, it's cold.
Switch the light on.
Switch off the light, would you?
It's too bright in here.
It's dark outside already.
The light is lovely this evening.
Look at that cloud.
Look out!
Look what I found.
Find your shoes and put them on.
What is that noise?
What was her name again?
Show me your hands.
Check the oven.
I'm looking for my glasses.
Thank you very much.
Yes, of course.
No, thanks.
Well, I suppose so.
Hmm.
Okay.
Never mind.
Sorry, what did you say?
You know what I mean.
I haven't got a clue.
Did you hear that?
She's a bit under the weather.
He entered the room without knocking.
I've entered a competition.
Undo your coat.
Your laces have come undone.
Go on, tell me more.
What's going on?
The dog wants to go out.
We're almost out of milk.
`
  .trim()
  .split('\n');
