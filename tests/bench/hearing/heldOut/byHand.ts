// What a general recogniser may write for what is said to the panel, and what else is said near it. Written by hand before the
// matcher was changed, from knowing such recognisers; no recording behind it. See recipe.ts.

const of = (want: string, heard: string) => heard.split('|').map((one) => ({ want, heard: one.trim() }));

export const WANT: readonly { readonly want: string; readonly heard: string }[] = [
  ...of('pass', 'salad|okay, solid.|um solid|solid please|sol id|saw lid|solids|well it was solid|yeah that was solid|study|steadily|steady please|oh solid'),
  ...of(
    'late',
    'uh delayed|delay it|delays|okay late|it was delayed|day laid|de late|the laid|deleted it late|a late one|delay please|came in late|latest|relayed',
  ),
  ...of('flicker', 'flicker please|um, flicker|it flickered|flick her|flick a|flickr|flecker|flicker okay|it was flickering|fliker'),
  ...of('none', 'nothing please|okay nothing|nothing uh|nuffing|no thin|there was nothing|nothink|nothings|it was dark|darkened|doc'),
  ...of('left', 'left please|uh left|lift|arrow left please|the left arrow|um the left one|lefty'),
  ...of('right', 'right please|uh right|wright|the right arrow|um the right arrow please|arrow write'),
  ...of('even', 'balance|balanced please|okay both even|ballast|both even please|balanced okay|um balanced'),
  ...of('uneven', 'lopsided please|lop side it|lop-sided|okay uneven|un even|uneven please|locksided|lots sided'),
  ...of('hold', 'holding please|okay holding|holdings|holding um|and holding|okay hold|hold please|we are holding|holding on|hauling|olding'),
  ...of('undo', 'undo please|okay undo|uh undo that|undo that please|under do|undo the last|and undo|undo thanks|can you undo that'),
  ...of('repeat', 'please repeat|could you repeat that|repeat that please|okay repeat|repeats|repeated|can you say that again|say again please|repeat it'),
  ...of('pause', 'pause please|okay pause|pass|pause it|um pause|just pause|porz'),
  ...of('resume', 'resume please|okay resume|resume now|resumed|continue please|okay continue|please carry on|zoom|we resume'),
  ...of('skip', 'skip please|okay skip|uh skip it|skip that|skip this one please|skipped|skit|just skip it|skip it please'),
  ...of('accept', 'accept please|okay accept|accept it please|except it|accepts|finish please|okay finish|finished|finishing|i accept|yes accept'),
  ...of('go on', 'go on please|okay go on|goin on|keep going please|gone|just go on'),
  ...of('same', 'same please|its the same|okay same|still the same please|it is the same|sames|um same'),
  ...of('shifted', 'shifted please|it shifted please|okay shifted|shift it|shifting|it was shifted|it has shifted um'),
  ...of('help', 'okay help|help me please|um help|helps|helped'),
  ...of('set:5', 'set plus five please|sat plus five|okay set plus 5|set plus fi|plus 5th|set plus five okay|sets plus five|um plus five'),
  ...of('set:-3', 'minus three please|said minus tree|uh minus three|set my nose three|sent minus three|set minus 3 please|minus 3rd'),
  ...of('set:6', 'set plus six please|set plus sicks|plus sixth|set pluss 6|set it to plus 6|set plus sics'),
  ...of('set:-8', 'okay set minus eight|set minus hate|minus eighth|set minus 8 thanks|set the value to minus eight|set minus ate please'),
  ...of('set:7', 'set plus sevin|set plus seven please|set blush seven|plus 7 please|set plus sevens'),
  ...of('set:11', 'set plus elven|set plus a leaven|plus eleven please|set plus 11th'),
  ...of('set:-12', 'minus twelfth|set minus twelf|okay minus 12|set minors twelve please|set minus 12 uh'),
  ...of('set:15', 'set plus fifteenth|plus fif teen|um set plus fifteen'),
  ...of('set:-4', 'set minus for please|minus four|set minus fore|set minus 4th|okay set it to minus for'),
  ...of('set:2', 'set plus too please|plus two okay|set plus 2nd|set plus tu'),
  ...of('set:1', 'set plus won please|okay plus one|set plus wan'),
  ...of('set:-9', 'set minus mine|minus nine please|set minus nigh|set minus 9th|set minus nine um'),
  ...of('set:10', 'set plus tent|set plus then|plus ten please|set plus tenth'),
  ...of('set:20', 'set plus twenny|plus twenty please|set plus 20th'),
  ...of('set:0', 'set zero please|okay set zero|set to zero|set 0|set it to zero please'),
];

export const REJECT: readonly string[] = (
  'that is what she said|I think the weather is good|can you bring the coffee|the train was delayed by an hour|delete|delete that photo|deleted|right now|right away|all right|' +
  'alright then|right there|left over pizza|nothing else matters|hold the door|holding hands with her|next door|come back later|same old story|finish your dinner first|' +
  'flick the switch over there|quicker|thicker|vicar|relate|related|diluted|bank balance|balance sheet|set the table for two|set it down there|upset|plus size|' +
  'two plus two is four|minus ten degrees outside this morning|plus or minus|repeat offender|skip to my lou|skip breakfast today|expected|help yourself to a drink|helpful people|' +
  'undo the damage|same here|he shifted in his chair|on hold|hold my beer|exit|access|excerpt|health|hell|selfish|shelves|the writing on the wall|light bulb|write it down|' +
  'left my keys at home|what is left of it|he left early|dark chocolate|it is getting dark outside|late for work again|see you later|good night|how are you today|no way|yes please|' +
  'okay|okay then|please|um|thanks|thank you very much|never mind|battery|memory card|lens cap|what do you think|wait a second|one moment|seven|set|minus|plus|twenty five|' +
  'continue to the next exit on the right|turn left at the corner|keep right|go on holiday|shift key|gear shift|finished reading the book|paused for a moment then|resume writing that letter|' +
  'acceptance speech|the same to you|nothing to see here|is there anything left|right or wrong|salad for lunch|steady job|rock and roll|under the table'
).split('|');

const asks = (query: string, heard: string) => heard.split('|').map((one) => ({ heard: one.trim(), query }));

export const LOOKUP: readonly { readonly heard: string; readonly query: string }[] = [
  ...asks(
    'eighty five',
    'please look up 85|look up 85 please|okay look up eighty five|uh look up 85|can you look up 85|could you look up eighty-five please|looking up 85|look up uh 85|loop up 85|looked up 85',
  ),
  ...asks(
    'fifty',
    'look it up 50|book up 50|look at 50|search 50|search for fifty|look up fifty thanks|look a 50|just look up fifty|I want to look up 50|took up fifty',
  ),
  ...asks('one thirty five', 'look up one thirty five|look up one 35|look up one thirty-five um|lookup one thirty five please'),
  ...asks('the twenty four to seventy', 'look up the 24 to 70 please|please look up the twenty four to seventy|what was the 24 to 70|what is the 24 to 70'),
  ...asks('two hundred', 'look up 200|check 200|what is 200|find two hundred|show me two hundred'),
  ...asks('thirty five', "what's 35|what was 35|check the 35|find the 35|luck up 35|show me 35|lock up 35"),
];

/** Other talk that begins as a question might. */
export const NO_LOOKUP: readonly string[] = (
  'look out|look at that|look here|check please|check the door|what was that|what is this|what was I saying|find my keys|show me the way|look up at the sky|what is it|check the batteries|search me|cook up something|' +
  'hook up later|what was she wearing|luck of the draw|look what you did|check it out'
).split('|');

export const CONFIRM: readonly { readonly heard: string; readonly value: number }[] = [
  { heard: 'set plus fifty', value: 15 },
  { heard: 'set minus seventy please', value: -17 },
  { heard: 'okay set plus 40', value: 14 },
  { heard: 'minus ninety', value: -19 },
  { heard: 'set plus thirty', value: 13 },
  { heard: 'set it to minus sixty', value: -16 },
];
