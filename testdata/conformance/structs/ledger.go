// Go specification, "Struct types": a bank ledger with typed money and sorted report.

package main

import "fmt"

type Cents int64

func (c Cents) String() string {
	sign := ""
	if c < 0 {
		sign, c = "-", -c
	}
	return fmt.Sprintf("%s%d.%02d", sign, c/100, c%100)
}

type Account struct {
	Owner   string
	Balance Cents
	History []Entry
}

type Entry struct {
	Memo   string
	Amount Cents
}

func (a *Account) Post(memo string, amount Cents) bool {
	if a.Balance+amount < 0 {
		return false
	}
	a.Balance += amount
	a.History = append(a.History, Entry{memo, amount})
	return true
}

type Bank map[string]*Account

func (b Bank) Transfer(from, to string, amount Cents) bool {
	src, dst := b[from], b[to]
	if src == nil || dst == nil || !src.Post("to "+to, -amount) {
		return false
	}
	return dst.Post("from "+from, amount)
}

func main() {
	bank := Bank{"ada": {Owner: "Ada"}, "bo": {Owner: "Bo", Balance: 500}}
	bank["ada"].Post("wages", 123456)
	fmt.Println(bank.Transfer("ada", "bo", 23450), bank.Transfer("bo", "ada", 1e6), bank.Transfer("x", "bo", 1))
	for _, k := range []string{"ada", "bo"} {
		fmt.Println(*bank[k])
	}
	fmt.Println(Cents(-5), []Cents{7, -1234}, map[string]Cents{"till": 99})
	fmt.Printf("%v %d %+v\n", bank["bo"].Balance, bank["bo"].Balance, bank["bo"].History)
}
